// Readings that cannot all be true are named together, and nothing rests on them.
#include <boost/test/unit_test.hpp>

#include "tests/diagnosis/jobs.hpp"

using namespace endbell;
using namespace endbell::jobs;

namespace {

struct Pair {
    Family family;
    std::vector<Symptom> symptoms;
    void (*read)(FailedUnit&);
    std::string_view named;
};

const Pair pairs[] = {
    {Family::constant_torque,
     {Symptom::no_run},
     [](FailedUnit& j) { j.measured.capacitor = known(microfarad(5)); },
     "plate.family and measured.capacitor"},
    {Family::constant_airflow,
     {Symptom::no_run},
     [](FailedUnit& j) { j.plate.capacitor = known(microfarad(5)); },
     "plate.family and plate.capacitor"},
    {Family::three_phase,
     {Symptom::no_run},
     [](FailedUnit& j) { j.measured.capacitor_bulged = known(true); },
     "plate.family and measured.capacitor_bulged"},
    {Family::shaded_pole,
     {Symptom::no_run},
     [](FailedUnit& j) { j.measured.capacitor_amps = known(ampere(1)); },
     "plate.family and measured.capacitor_amps"},
    {Family::three_phase,
     {Symptom::no_run},
     [](FailedUnit& j) { j.plate.phase = known(1); },
     "plate.family and plate.phase"},
    {Family::capacitor_run,
     {Symptom::no_run},
     [](FailedUnit& j) { j.plate.phase = known(3); },
     "plate.family and plate.phase"},
    {Family::constant_torque,
     {Symptom::runs_slow},
     [](FailedUnit& j) { j.measured.line_volts = known<LineVolts>(volt(0)); },
     "measured.line_volts and measured.symptoms"},
    {Family::constant_torque,
     {},
     [](FailedUnit& j) {
         j.measured.line_volts = known<LineVolts>(volt(0));
         j.measured.speed = known(rpm(900));
     },
     "measured.line_volts and measured.speed"},
    {Family::capacitor_run,
     {Symptom::hums},
     [](FailedUnit& j) { j.measured.line_volts = known<LineVolts>(volt(0)); },
     "measured.line_volts and measured.symptoms"},
    {Family::capacitor_run,
     {Symptom::no_run, Symptom::runs_on_after_call},
     [](FailedUnit&) {},
     "measured.symptoms"},
    {Family::constant_torque,
     {Symptom::no_run},
     [](FailedUnit& j) {
         j.measured.live_taps = known(std::vector<int>{});
         j.measured.control_volts = known(volt(24));
     },
     "measured.live_taps and measured.control_volts"},
    {Family::constant_torque,
     {Symptom::weak_air},
     [](FailedUnit& j) {
         j.measured.static_total = known(inch_water(0.5));
         j.measured.static_supply = known(inch_water(0.4));
         j.measured.static_return = known(inch_water(-0.5));
     },
     "measured.static_total and measured.static_supply and measured.static_return"},
    {Family::capacitor_run,
     {},
     [](FailedUnit& j) {
         j.measured.watts = known(watt(700));
         j.measured.line_volts = known<LineVolts>(volt(240));
         j.measured.amps = known<LineAmps>(ampere(2));
     },  // 480 VA
     "measured.watts and measured.line_volts and measured.amps"},
    {Family::capacitor_run,
     {Symptom::no_run},
     [](FailedUnit& j) {
         j.equipment.heat_input = known(btu_per_hour(60000));
         j.equipment.heat_output = known(btu_per_hour(64000));
     },
     "equipment.heat_output and equipment.heat_input"},
};

}  // namespace

BOOST_AUTO_TEST_CASE(each_contradiction_is_named_with_all_that_takes_part) {
    for (const Pair& p : pairs) {
        FailedUnit job = of(p.family, p.symptoms);
        p.read(job);
        const Diagnosis d = diagnose(job, facts_of(job, limits), limits);
        BOOST_TEST_CONTEXT(p.named) {
            BOOST_REQUIRE_EQUAL(d.contradictions.size(), 1U);
            BOOST_TEST(d.contradictions[0] == p.named);
            BOOST_TEST(d.fault == Fault::not_shown);
            const std::string first = d.contradictions[0].substr(0, d.contradictions[0].find(" and "));
            const auto again = std::find_if(d.missing.begin(), d.missing.end(),
                                            [&](const MissingReading& m) { return m.job_key == first; });
            BOOST_REQUIRE((again != d.missing.end()));
            BOOST_TEST(again->test == Test::read_again);
            // First of what is as dangerous.
            BOOST_TEST((again == d.missing.begin() || std::prev(again)->danger < again->danger));
        }
    }
}

BOOST_AUTO_TEST_CASE(three_phase_watts_have_the_root_of_three) {
    FailedUnit job = of(Family::three_phase, {});
    job.measured.watts = known(watt(700));
    job.measured.line_volts = known<LineVolts>(volt(240));
    job.measured.amps = known<LineAmps>(ampere(2));  // 831 VA
    BOOST_TEST(diagnose(job, facts_of(job, limits), limits).contradictions.empty());
}

BOOST_AUTO_TEST_CASE(what_does_not_take_part_still_decides) {
    FailedUnit job = of(Family::constant_torque, {Symptom::no_run});
    job.measured.capacitor = known(microfarad(0));  // of the condenser, perhaps
    job.measured.winding_to_shell = known(ohm(40));
    const Diagnosis d = diagnose(job, facts_of(job, limits), limits);
    BOOST_TEST(d.contradictions.size() == 1U);
    BOOST_TEST(d.fault == Fault::motor);
    BOOST_TEST(carried_by(d) == "winding to shell");
}

BOOST_AUTO_TEST_CASE(statics_within_a_twentieth_of_an_inch_agree) {
    FailedUnit job = of(Family::constant_torque, {Symptom::weak_air});
    job.measured.static_total = known(inch_water(0.90));
    job.measured.static_supply = known(inch_water(0.40));
    job.measured.static_return = known(inch_water(-0.45));
    BOOST_TEST(diagnose(job, facts_of(job, limits), limits).contradictions.empty());
    BOOST_TEST(diagnose(job, facts_of(job, limits), limits).fault == Fault::airflow);
}

BOOST_AUTO_TEST_CASE(running_readings_of_a_motor_that_stands_are_of_its_last_good_run) {
    FailedUnit job = of(Family::constant_torque, {Symptom::no_run});
    job.measured.line_volts = known<LineVolts>(volt(0));
    job.measured.speed = known(rpm(955));
    job.measured.watts = known(watt(352));
    job.measured.amps = known<LineAmps>(ampere(2.4));
    BOOST_TEST(diagnose(job, facts_of(job, limits), limits).contradictions.empty());
    BOOST_TEST(diagnose(job, facts_of(job, limits), limits).fault == Fault::supply);
}
