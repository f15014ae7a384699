// Weak air: filter, coil, belt, wheel, tap, rotation; thaw first what is iced. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain weak_air() {
    return {{Symptom::weak_air},
            {},
            {},
            false,
            {{"measured.filter", Test::filter_drop, Condition::duct},
             {"measured.iced", Test::iced, Condition::duct},
             {"measured.belt", Test::belt, Condition::belt, true},
             {"measured.wheel", Test::wheel},
             {"measured.capacitor", Test::capacitor, Condition::capacitor, true},
             {"measured.control_volts", Test::control_volts, Condition::electronic, true},
             {"measured.live_taps", Test::live_taps, Condition::tapped},
             {"measured.line_volts", Test::line_volts, Condition::nothing, true},
             {"measured.line_volts", Test::legs, Condition::three_phase, true},
             {"measured.filter_drop", Test::filter_drop, Condition::duct, true},
             {"measured.coil_drop", Test::coil_drop, Condition::thawed},
             {"measured.static_total", Test::static_total, Condition::duct, true}}};
}

}  // namespace endbell::inline diagnosis::chain
