#include "engine/explain/cautions.hpp"

#include <array>

namespace endbell {

namespace {

struct Entry {
    std::string_view word;
    std::string_view sentence;
};

// Wiring words. Sources: equipment and motor service manuals, as named in docs/wiring-proof.md.
constexpr std::array sentences{
    Entry{"line power constant", "Line power stays on the motor with or without a call. Never put a relay or contactor in its line: switch the 24 V signal."},
    Entry{"second line conductor", "On 208-240 V the terminal marked N takes the second line conductor. Both are live to ground."},
    Entry{"earth is not fan", "The terminal marked G on the power header is earth. It never meets the thermostat's G, which is the fan call."},
    Entry{"common same transformer", "C comes from the transformer that feeds the calls, even where its terminal sits beside the line terminals."},
};

}  // namespace

void add_safety(Document& to, bool electronic) {
    to.add(Heading{"Before you open anything"});
    to.add(Warning{"WARNING", "Lock out and tag out all supplies. Test the meter on a live source, test pole to pole and each pole to ground, test the meter again."});
    if (electronic) {
        to.add(Warning{"WARNING", "Line voltage is at an electronic motor at all times, with or without a call. Wait 5 minutes after lock-out: its capacitors hold a charge."});
        to.add(Warning{"CAUTION", "Never mate or unmate the power plug live. Look at the plug's keying before inserting it."});
    }
    to.add(Warning{"WARNING", "Discharge a run capacitor through a resistor (about 20 kilohm, 2 W or more) and confirm with a meter."});
    to.add(Warning{"WARNING", "The wheel or blade can start by itself: thermostat, off-delay, or a protector that resets. Block it before reaching in."});
}

void add_deference(Document& to) {
    to.add(Warning{"NOTICE", "The equipment's own instructions, local code and licensed practice come first. Where they differ from this sheet, follow them."});
}

std::string wiring_sentence(std::string_view word) {
    for (const Entry& entry : sentences) {
        if (entry.word == word) return std::string(entry.sentence);
    }
    return std::string(word);
}

}  // namespace endbell
