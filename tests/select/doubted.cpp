// A plan that is looked at for the first time, and does not do what its table says.
#include <boost/test/unit_test.hpp>

#include "engine/select/select.hpp"
#include "tests/wiring/fixtures.hpp"

using namespace fixture;

namespace {

/// One option, picked, with one wire on another tap than its table says, or with none.
Selection picked(const FailedUnit& job, bool spoiled) {
    Selection s;
    s.facts = facts_of(job, limits);
    Option option;
    option.candidate.part = five_tap_motor(TapRule::one_tap_only);
    option.wiring =
        lay_wiring(job, option.candidate.part, air({{Call::circulate, 1}, {Call::cool_high, 4}}), limits);
    for (Wire& each : option.wiring.wires) {
        if (spoiled && each.to == NetPlace::tap(4)) each.to = NetPlace::tap(5);
    }
    option.standing = Verdict::fits_with_changes;
    s.options.push_back(option);
    s.outcome = Outcome::something_fits;
    s.pick = 0;
    return s;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_pick_whose_plan_its_volts_contradict_is_no_pick) {
    const FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    Selection s = picked(job, true);
    annotate(s, 0, job, limits);
    BOOST_TEST(!s.pick.has_value());
    BOOST_CHECK(s.outcome == Outcome::undecided);
    BOOST_CHECK(s.options.front().standing == Verdict::not_shown);
}

BOOST_AUTO_TEST_CASE(a_sound_plan_leaves_the_pick_as_it_is) {
    const FailedUnit job = thermostat_job(HeatKind::none, {"G", "Y1"});
    Selection s = picked(job, false);
    annotate(s, 0, job, limits);
    BOOST_TEST(s.pick.value_or(-1) == 0);
    BOOST_CHECK(s.outcome == Outcome::something_fits);
    BOOST_CHECK(s.options.front().standing == Verdict::fits_with_changes);
    BOOST_TEST(!s.options.front().wiring.faults.empty());
}
