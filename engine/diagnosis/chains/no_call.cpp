// No call reaches the motor: from the thermostat to the plug. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain no_call() {
    return {{},
            {Fault::control_signal},
            {},
            false,
            {{"measured.float_switch_closed", Test::float_switch, Condition::no_24v},
             {"measured.door_switch_closed", Test::door_switch, Condition::no_24v},
             {"measured.control_fuse_good", Test::control_fuse, Condition::no_24v},
             {"measured.transformer_volts", Test::transformer, Condition::no_24v},
             {"measured.thermostat_calls", Test::thermostat, Condition::no_call},
             {"measured.board_volts", Test::board_output, Condition::has_24v},
             {"measured.primary_volts", Test::primary, Condition::no_24v}}};
}

}  // namespace endbell::inline diagnosis::chain
