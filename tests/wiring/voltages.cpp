// Line voltage and 24 V, over generated jobs: no wire and no contact, in either of its positions, leads from
// one to the other.
#include <boost/test/unit_test.hpp>

#include "tests/wiring/generated.hpp"
#include "tests/wiring/walker.hpp"

using namespace fixture;

namespace {

int check_all(ControlSource source, int count, std::uint64_t seed) {
    Dice dice(seed);
    int possible = 0;
    for (int i = 0; i < count; ++i) {
        const Case c = any_case(dice, source);
        const WiringPlan plan = plan_wiring(c.job, c.part, c.air, limits);
        if (!plan.possible) continue;
        ++possible;
        BOOST_TEST(!voltages_meet(plan));
        for (const WiringPlan& other : plan.alternatives) BOOST_TEST(!voltages_meet(other));
    }
    return possible;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_board_with_line_voltage_outputs_never_puts_line_voltage_on_a_24_v_tap) {
    BOOST_TEST(check_all(ControlSource::board_line, 400, 7) >= 200);
}

BOOST_AUTO_TEST_CASE(a_thermostat_never_meets_line_voltage) {
    BOOST_TEST(check_all(ControlSource::thermostat, 200, 8) >= 60);
    BOOST_TEST(check_all(ControlSource::board_24v, 200, 9) >= 100);
}

BOOST_AUTO_TEST_CASE(a_board_output_straight_on_a_24_v_tap_would_be_seen) {
    WiringPlan plan;
    plan.signals = {"COOL"};
    plan.line_signals = true;
    plan.wires = {{NetPlace::signal(0), NetPlace::tap(4)}};
    BOOST_TEST(voltages_meet(plan));
}

BOOST_AUTO_TEST_CASE(a_line_tap_on_a_part_of_24_v_taps_is_refused) {
    Part part = five_tap_motor(TapRule::one_tap_only);
    part.motor->taps[3].signal = SignalClass::line_signal;
    const WiringPlan plan = plan_wiring(thermostat_job(HeatKind::none, {"G", "Y1"}), part,
                                        air({{Call::circulate, 1}, {Call::cool_high, 4}}), limits);
    BOOST_TEST((plan.refusal == WiringRefusal::line_voltage_on_24v_tap));
}
