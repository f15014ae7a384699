// It does not run: fed, called, free, and whole. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain dead() {
    return {{Symptom::no_run},
            {},
            {},
            false,
            {{"measured.line_volts", Test::line_volts, Condition::nothing, true},
             {"measured.line_volts", Test::legs, Condition::three_phase, true},
             {"measured.control_volts", Test::control_volts, Condition::electronic, true},
             {"measured.spins_free", Test::spins_free, Condition::shaft_tells, true},
             {"measured.winding_to_shell", Test::winding_to_shell, Condition::two_piece, true},
             {"measured.windings", Test::winding_balance, Condition::two_piece, true},
             {"measured.capacitor", Test::capacitor, Condition::capacitor, true},
             {"measured.spins_free", Test::spins_free},
             {"measured.signs", Test::signs}}};
}

}  // namespace endbell::inline diagnosis::chain
