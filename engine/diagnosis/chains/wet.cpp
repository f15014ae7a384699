// Water: what stood in it is not judged by readings. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain wet() {
    return {{Symptom::wet},
            {},
            {},
            false,
            {{"measured.under_water", Test::under_water, Condition::nothing, true},
             {"measured.signs", Test::signs},
             {"measured.winding_to_shell", Test::winding_to_shell, Condition::nothing, true}}};
}

}  // namespace endbell::inline diagnosis::chain
