// It trips hot and restarts cold: air, volts, capacitor, wheel, ambient, rotation, then the motor. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain trips() {
    return {{Symptom::trips_hot},
            {},
            {},
            false,
            {{"measured.filter", Test::filter_drop, Condition::duct},
             {"measured.wheel", Test::wheel},
             {"measured.spins_free", Test::spins_free, Condition::nothing, true},
             {"measured.capacitor", Test::capacitor, Condition::capacitor, true},
             {"measured.line_volts", Test::line_volts, Condition::nothing, true},
             {"measured.line_volts", Test::legs, Condition::three_phase, true},
             {"measured.amps", Test::amps, Condition::nothing, true},
             {"measured.static_total", Test::static_total, Condition::duct, true}}};
}

}  // namespace endbell::inline diagnosis::chain
