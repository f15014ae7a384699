// It runs on after the call: the delay, the thermostat, the board's relay. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain runs_on() {
    return {{Symptom::runs_on_after_call},
            {},
            {},
            false,
            {{"measured.thermostat_calls", Test::thermostat},
             {"measured.live_taps", Test::live_taps, Condition::tapped},
             {"measured.control_volts", Test::control_volts, Condition::electronic},
             {"measured.board_volts", Test::board_output}}};
}

}  // namespace endbell::inline diagnosis::chain
