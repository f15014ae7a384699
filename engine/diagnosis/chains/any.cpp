// Whatever the motor does: what makes other readings unsure. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain any() {
    return {{},
            {},
            {},
            true,
            {{"measured.under_water", Test::under_water, Condition::wet, true},
             {"measured.free_with_wheel_loose", Test::wheel_loose, Condition::stuck, true},
             {"measured.windings", Test::winding_open, Condition::hot_open, true},
             {"measured.windings", Test::winding_balance, Condition::near_short, true},
             {"measured.winding_to_shell", Test::winding_to_shell, Condition::burnt, true}}};
}

}  // namespace endbell::inline diagnosis::chain
