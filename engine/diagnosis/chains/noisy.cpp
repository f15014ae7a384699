// Noise: shaft, bearing, belt, wheel, duct. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain noisy() {
    return {{Symptom::noisy},
            {},
            {},
            false,
            {{"measured.spins_free", Test::spins_free, Condition::nothing, true},
             {"measured.shaft_play", Test::shaft_play, Condition::nothing, true},
             {"measured.belt", Test::belt, Condition::belt, true},
             {"measured.wheel", Test::wheel},
             {"measured.static_total", Test::static_total, Condition::duct, true}}};
}

}  // namespace endbell::inline diagnosis::chain
