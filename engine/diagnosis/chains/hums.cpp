// It hums or rocks and will not start: capacitor, shaft, wheel, windings, legs. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain hums() {
    return {{Symptom::hums, Symptom::rocks_never_starts},
            {},
            {},
            false,
            {{"measured.capacitor", Test::capacitor, Condition::capacitor, true},
             {"measured.spins_free", Test::spins_free, Condition::shaft_tells, true},
             {"measured.winding_to_shell", Test::winding_to_shell, Condition::two_piece, true},
             {"measured.windings", Test::winding_balance, Condition::two_piece, true},
             {"measured.control_volts", Test::control_volts, Condition::electronic, true},
             {"measured.line_volts", Test::line_volts, Condition::nothing, true},
             {"measured.line_volts", Test::legs, Condition::three_phase, true},
             {"measured.spins_free", Test::spins_free},
             {"measured.shaft_play", Test::shaft_play},
             {"measured.winding_to_shell", Test::winding_to_shell},
             {"measured.fuse_drop", Test::fuse_drop, Condition::three_phase},
             {"measured.contactor_drop", Test::contactor_drop, Condition::three_phase}}};
}

}  // namespace endbell::inline diagnosis::chain
