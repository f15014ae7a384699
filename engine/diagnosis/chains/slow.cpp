// It runs slow: of an inducer vent, drain, wheel and volts, of a belt drive its belt, come before the motor. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain slow() {
    return {{Symptom::runs_slow},
            {},
            {},
            false,
            {{"measured.capacitor", Test::capacitor, Condition::capacitor, true},
             {"measured.spins_free", Test::spins_free, Condition::shaft_tells, true},
             {"measured.winding_to_shell", Test::winding_to_shell, Condition::two_piece, true},
             {"measured.windings", Test::winding_balance, Condition::two_piece, true},
             {"measured.wheel", Test::wheel, Condition::inducer, true},
             {"measured.belt", Test::belt, Condition::belt, true},
             {"measured.wheel", Test::wheel},
             {"measured.control_volts", Test::control_volts, Condition::electronic, true},
             {"measured.line_volts", Test::line_volts, Condition::nothing, true},
             {"measured.line_volts", Test::legs, Condition::three_phase, true},
             {"measured.static_total", Test::static_total, Condition::duct, true},
             {"measured.amps", Test::amps}}};
}

}  // namespace endbell::inline diagnosis::chain
