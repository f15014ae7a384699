// The air is at fault: filter, coil, wheel, duct, tap or burner. Source: common practice, but where a test names another.
#include "engine/diagnosis/tree.hpp"

namespace endbell::inline diagnosis::chain {

Chain air() {
    return {{},
            {Fault::airflow},
            {},
            false,
            {{"measured.filter", Test::filter_drop},
             {"measured.iced", Test::iced, Condition::duct},
             {"measured.wheel", Test::wheel},
             {"measured.live_taps", Test::live_taps, Condition::tapped},
             {"measured.coil_drop", Test::coil_drop, Condition::thawed},
             {"measured.static_total", Test::static_total, Condition::thawed},
             {"measured.burner_input", Test::burner_input, Condition::burner}}};
}

}  // namespace endbell::inline diagnosis::chain
