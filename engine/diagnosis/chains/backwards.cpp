// It turns the wrong way round: a dead capacitor starts it either way. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain backwards() {
    return {{Symptom::runs_backwards},
            {},
            {},
            false,
            {{"measured.capacitor", Test::capacitor, Condition::capacitor, true},
             {"unit.changed_before", Test::changed_before}}};
}

}  // namespace endbell::inline diagnosis::chain
