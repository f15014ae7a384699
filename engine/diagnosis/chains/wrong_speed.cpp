// It runs at another speed than is called for. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain wrong_speed() {
    return {{Symptom::wrong_speed},
            {},
            {},
            false,
            {{"unit.changed_before", Test::changed_before},
             {"measured.capacitor", Test::capacitor, Condition::capacitor, true},
             {"measured.live_taps", Test::live_taps, Condition::tapped},
             {"measured.control_volts", Test::control_volts, Condition::electronic, true},
             {"measured.board_volts", Test::board_output},
             {"measured.line_volts", Test::line_volts, Condition::nothing, true}}};
}

}  // namespace endbell::inline diagnosis::chain
