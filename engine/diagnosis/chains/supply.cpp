// The supply is at fault: find where it is lost. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain supply() {
    return {{},
            {Fault::supply},
            {Culprit::supply},
            false,
            {{"equipment.supply", Test::supply_system, Condition::supply_unknown},
             {"measured.door_switch_closed", Test::door_switch},
             {"measured.transformer_volts", Test::transformer},
             {"measured.fuse_drop", Test::fuse_drop},
             {"measured.contactor_drop", Test::contactor_drop},
             {"measured.primary_volts", Test::primary}}};
}

}  // namespace endbell::inline diagnosis::chain
