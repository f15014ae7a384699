// Three readings of a line: electrical.md 3.6 and its worked examples 27 and 28.
#include <boost/test/unit_test.hpp>

#include "tests/diagnosis/jobs.hpp"

using namespace endbell;
using namespace endbell::jobs;

namespace {

struct LegCase {
    std::array<double, 3> volts;
    double unbalance;  // by hand
    Verdict verdict;
    TestReason reason;
};

Diagnosis read(std::array<double, 3> v, const Limits& in_force = limits) {
    FailedUnit job = of(Family::three_phase, {Symptom::hums});
    job.plate.volts = known(std::vector{v[0] > 400 ? plate_volts(460) : plate_volts(208, 230)});
    job.measured.line_volts = known(LineVolts(volt(v[0]), volt(v[1]), volt(v[2])));
    return diagnose(job, facts_of(job, in_force), in_force);
}

}  // namespace

BOOST_AUTO_TEST_CASE(unbalance_is_the_largest_deviation_over_the_mean) {
    const LegCase cases[] = {
        // mean 216.333, 3.667 off: 1.695 %, not the rounded 1.8
        {{220, 216, 213}, 0.01695, Verdict::fits_with_changes, TestReason::derate},
        {{460, 467, 450}, 0.01961, Verdict::fits_with_changes, TestReason::derate},   // 9 of 459
        {{230, 231, 229}, 0.00435, Verdict::fits, TestReason::within},                // 1 of 230
        {{232.3, 230, 227.7}, 0.01, Verdict::fits, TestReason::within},               // exactly 1 % of 230
        {{241.5, 230, 218.5}, 0.05, Verdict::fits_with_changes, TestReason::derate},  // exactly 5 %
        {{242, 230, 218}, 0.05217, Verdict::does_not_fit, TestReason::beyond},        // 12 of 230
        {{229, 118, 112}, 0.49673, Verdict::does_not_fit, TestReason::lost_leg},      // 76 of 153
    };
    for (const LegCase& c : cases) {
        const Diagnosis d = read(c.volts);
        const Evidence* legs = row(d, Test::legs);
        BOOST_REQUIRE(legs != nullptr);
        BOOST_TEST_CONTEXT(c.volts[0] << "/" << c.volts[1] << "/" << c.volts[2]) {
            BOOST_TEST(std::get<double>(legs->measured.value) == c.unbalance,
                       boost::test_tools::tolerance(0.001));
            BOOST_TEST(legs->verdict == c.verdict);
            BOOST_TEST(legs->reason == c.reason);
        }
    }
}

BOOST_AUTO_TEST_CASE(the_limit_in_force_decides) {
    Limits strict;
    strict.tighten("voltage.unbalance", 0.004, "the shop");
    BOOST_TEST(row(read({230, 231, 229}, strict), Test::legs)->reason == TestReason::derate);
    BOOST_TEST(row(read({230, 231, 229}), Test::legs)->reason == TestReason::within);
}

BOOST_AUTO_TEST_CASE(the_lowest_leg_judges_low_and_the_highest_high) {
    FailedUnit job = of(Family::three_phase, {Symptom::hums});
    job.equipment.supply = known(bare_supply(volt(230)));
    job.measured.line_volts = known(LineVolts(volt(208), volt(206), volt(210)));
    BOOST_TEST(row(diagnose(job, facts_of(job, limits), limits), Test::line_volts)->reason ==
               TestReason::too_low);
    job.measured.line_volts = known(LineVolts(volt(252), volt(254), volt(250)));
    BOOST_TEST(row(diagnose(job, facts_of(job, limits), limits), Test::line_volts)->reason ==
               TestReason::too_high);
}

BOOST_AUTO_TEST_CASE(a_lost_leg_is_no_supply_to_match_a_part_by) {
    FailedUnit job = of(Family::three_phase, {Symptom::hums});
    job.measured.line_volts = known(LineVolts(volt(229), volt(118), volt(112)));
    const Facts facts = facts_of(job, limits);
    BOOST_TEST(facts.supply.lost_leg);
    BOOST_TEST(facts.supply.dead);
    BOOST_TEST(!facts.supply.measured);
    BOOST_TEST(!facts.supply.from_reading);
}
