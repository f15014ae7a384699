// Each assumption of an air plan is explained: what it would change.
#include "engine/explain/air_words.hpp"

#include <boost/test/unit_test.hpp>
#include <set>

#include "engine/fields/job_key.hpp"
#include "tests/airflow/fixtures.hpp"

using namespace endbell;
using namespace endbell::test;

namespace {

/// Everything that plans of very different jobs assume.
std::set<std::string> assumed_anywhere() {
    std::set<std::string> all;
    const auto add = [&](const FailedUnit& job) {
        Part program = motor_part(Family::constant_airflow, .5);
        for (const Part& part : {constant_torque(.5, {20, 32}), capacitor_run(.5, {825, 1075}), program}) {
            for (const std::string& name : plan_air(job, part, limits).assumed) all.insert(name);
        }
    };
    FailedUnit job = furnace();
    job.equipment.altitude = {};
    job.equipment.return_air = {};
    job.equipment.climate = {};
    job.controls.terminals = known(std::vector<Terminal>{
        {"W1", Call::heat_low}, {"W2", Call::heat_high}, {"Y1", Call::cool_low}, {"Y2", Call::cool_high}});
    add(job);
    job.measured.watts = known(watt(420));
    add(job);
    job.measured.watts = {};
    job.measured.speed = {};
    add(job);
    job.measured.amps = known<LineAmps>(ampere(4));
    add(job);
    job.controls.heat = known(HeatKind::electric);
    job.equipment.electric_heat = known(kilowatt(10));
    add(job);
    return all;
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_assumption_says_what_it_would_change) {
    const std::set<std::string> all = assumed_anywhere();
    BOOST_TEST(all.size() >= 12u);
    for (const std::string& name : all) BOOST_TEST(!what_it_changes(name).empty(), name);
}

BOOST_AUTO_TEST_CASE(what_is_explained_is_a_key_a_column_or_an_assumption) {
    for (const std::string_view name : explained_assumptions()) {
        const bool column = name.substr(0, 7) == "motors.";
        const bool word_of_it =
            name == word(Assumption::power_factor) || name == word(Assumption::duct_curve);
        const bool old_plate = name == "plate.efficiency";  // no plate prints it
        BOOST_TEST((column || word_of_it || old_plate || job_key(name) != nullptr), name);
    }
}

BOOST_AUTO_TEST_CASE(an_output_says_what_it_rests_on) {
    BOOST_TEST(say(HeatOutput{HeatCase::derated, btu_per_hour(51200), {}, {}}) == "burner derated");
    BOOST_TEST(say(HeatOutput{HeatCase::at_volts, btu_per_hour(38443), volt(240), volt(208)}) ==
               "rated 240 V, fed with 208 V");
}
