// What may not be wired as it stands: each case sold as proven once. Facts: common practice for supplies and fuel
// furnaces (the trade's own papers), the part's own sheet for what two live taps do.
#include <boost/test/unit_test.hpp>

#include "tests/wiring/fixtures.hpp"

using namespace fixture;

namespace {

const AirPlan every_tap = air({{Call::circulate, 1},
                               {Call::cool_low, 2},
                               {Call::cool_high, 4},
                               {Call::electric_heat, 5},
                               {Call::heat_low, 2},
                               {Call::heat_high, 3}});

WiringPlan laid(const FailedUnit& job, const Part& part) {
    return plan_wiring(job, part, every_tap, limits);
}

/// 24 V taps and a run-signal lead that the board's line-voltage outputs drive.
Part run_signal_motor() {
    Part part = five_tap_motor(TapRule::one_tap_only);
    part.motor->terminals.push_back({"RUN", "run signal", "power"});
    return part;
}

FailedUnit board_job(HeatKind heat, std::initializer_list<std::pair<const char*, Call>> outputs) {
    FailedUnit job = blower_job(ControlSource::board_24v, heat);
    job.controls.terminals = known(terminals(outputs));
    return job;
}

bool two_taps_live(const WiringPlan& p) {
    return std::any_of(p.truth.begin(), p.truth.end(),
                       [](const TruthRow& row) { return row.live_taps.size() > 1; });
}

}  // namespace

BOOST_AUTO_TEST_CASE(on_277_v_the_return_is_the_neutral) {
    // 480Y/277: line to line is 480 V. A motor for 277 V between two lines is destroyed.
    FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    for (const double volts : {265.0, 277.0, 290.0}) {
        job.equipment.supply = known(volt(volts));
        const WiringPlan p = laid(job, five_tap_motor(TapRule::one_tap_only));
        BOOST_TEST(wired(p, "N", "motor N"));
        BOOST_TEST(!wired(p, "L2", "motor N"));
    }
}
