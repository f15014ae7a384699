// The supply is at fault: find where it is lost. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain supply() {
    return {{},
            {Fault::supply},
            {Culprit::supply},
            false,
            {{"equipment.supply", Test::supply_system, Condition::supply_unknown},
             {"measured.door_switch_closed", Test::door_switch, Condition::no_line},
             {"measured.transformer_volts", Test::transformer, Condition::no_line},
             {"measured.amps", Test::amps, Condition::three_phase},
             {"measured.fuse_drop", Test::fuse_drop, Condition::not_too_high},
             {"measured.contactor_drop", Test::contactor_drop, Condition::not_too_high},
             {"measured.primary_volts", Test::primary}}};
}

}  // namespace endbell::inline diagnosis::chain
