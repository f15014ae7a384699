// What is at fault outside the motor is named: did it take the motor with it, or blow for it? Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain after() {
    return {{},
            {},
            {Culprit::run_capacitor, Culprit::start_capacitor, Culprit::line_fuse, Culprit::control_fuse,
             Culprit::contactor},
            false,
            {{"measured.spins_free", Test::spins_free},
             {"measured.winding_to_shell", Test::winding_to_shell},
             {"measured.amps", Test::amps}}};
}

}  // namespace endbell::inline diagnosis::chain
