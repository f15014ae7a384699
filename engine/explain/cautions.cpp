#include "engine/explain/cautions.hpp"

namespace endbell::inline explain {

void add_safety(Document& to, bool electronic) {
    to.add(Heading{"Before you open anything"});
    to.add(Warning{"WARNING",
                   "Lock out and tag out all supplies. Test the meter on a live source, test pole to pole "
                   "and each pole to ground, test the meter again."});
    if (electronic) {
        to.add(Warning{"WARNING",
                       "Line voltage is at an electronic motor at all times, with or without a call. Wait 5 "
                       "minutes after lock-out: its capacitors hold a charge."});
        to.add(Warning{
            "CAUTION",
            "Never mate or unmate the power plug live. Look at the plug's keying before inserting it."});
    }
    to.add(Warning{"WARNING",
                   "Discharge a run capacitor through a resistor (about 20 kilohm, 2 W or more) and confirm "
                   "with a meter."});
    to.add(Warning{"WARNING",
                   "The wheel or blade can start by itself: thermostat, off-delay, or a protector that "
                   "resets. Block it before reaching in."});
}

void add_deference(Document& to) {
    to.add(Warning{"NOTICE",
                   "The equipment's own instructions, local code and licensed practice come first. Where "
                   "they differ from this sheet, follow them."});
}

}  // namespace endbell::inline explain
