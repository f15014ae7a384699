// The supply as a system: systems, volts and conductors as the trade's own table of supplies has them (common practice),
// worked out by hand beside each row.
#include <boost/test/unit_test.hpp>

#include "engine/facts/facts.hpp"
#include "engine/words/electrical.hpp"

using namespace endbell;

namespace {

const Limits in_force;  // the program's own

struct Row {
    const char* supply;  // as the trade writes it; empty: not stated
    double reading;      // volts; below 0: none
    const char* plate;   // volts of the old motor; empty: none
    int phases;          // of the motor; 0: not known
    std::vector<double> nominal;
    std::string conductors;  // "L1 N", "L1 L2", "L1 L2 L3" or "?"
};

FailedUnit job_of(const Row& row) {
    FailedUnit job;
    if (*row.supply != '\0') job.equipment.supply = read_supply(fold(row.supply)).reading;
    if (row.reading >= 0) job.measured.line_volts = known<LineVolts>(volt(row.reading), Origin::measured);
    if (*row.plate != '\0')
        job.plate.volts = read_plate_volts(fold(row.plate), Family::constant_torque).reading;
    if (row.phases > 0) job.plate.phase = known(row.phases);
    return job;
}

std::string text_of(std::optional<Conductors> conductors) {
    if (!conductors) return "?";
    switch (*conductors) {
        case Conductors::line_and_neutral:
            return "L1 N";
        case Conductors::two_lines:
            return "L1 L2";
        case Conductors::three_lines:
            return "L1 L2 L3";
    }
    return "";
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_supply_gives_a_motor_its_volts_and_its_conductors) {
    const std::vector<Row> rows{
        // A bare figure, with the motor's own phase.
        {"115", -1, "", 1, {115}, "L1 N"},
        {"115", -1, "", 0, {115}, "L1 N"},  // 120 V is to be had to the neutral only
        {"230", -1, "", 1, {230}, "L1 L2"},
        {"230", -1, "", 3, {230}, "L1 L2 L3"},
        {"230", -1, "", 0, {230}, "?"},  // one phase or three
        {"208", 200, "", 1, {208}, "L1 L2"},
        {"277", -1, "", 1, {277}, "L1 N"},
        {"460", -1, "", 1, {460}, "L1 L2"},  // a rooftop's condenser fan on two of the three lines
        {"460", -1, "", 3, {460}, "L1 L2 L3"},
        {"277", -1, "", 3, {277}, "?"},  // three phase never hangs on the neutral
        // Systems: which of their volts the motor sits on.
        {"120/240", 118, "", 1, {115}, "L1 N"},
        {"120/240", 241, "", 1, {230}, "L1 L2"},
        {"120/240", -1, "115", 1, {115}, "L1 N"},
        {"120/240", -1, "208-230", 1, {230}, "L1 L2"},
        {"120/240", -1, "", 1, {115, 230}, "?"},
        {"208Y/120", 206, "", 1, {208}, "L1 L2"},
        {"208Y/120", 119, "", 1, {115}, "L1 N"},
        {"208Y/120", -1, "208-230", 1, {208}, "L1 L2"},
        {"208Y/120", -1, "", 3, {208}, "L1 L2 L3"},
        {"480Y/277", 276, "", 1, {277}, "L1 N"},
        {"480Y/277", 479, "", 1, {460}, "L1 L2"},
        {"480Y/277", -1, "277", 1, {277}, "L1 N"},
        {"480Y/277", -1, "460", 3, {460}, "L1 L2 L3"},
        {"240 high leg", 239, "", 1, {230}, "L1 L2"},
        {"240 high leg", -1, "230", 3, {230}, "L1 L2 L3"},
        {"460-3-60", -1, "", 3, {460}, "L1 L2 L3"},
        {"460-3-60", -1, "", 1, {460}, "L1 L2"},  // a single-phase load on two of them
        {"230-1-60", -1, "", 0, {230}, "L1 L2"},
        // A reading alone: the class nearest to it.
        {"", 118, "", 1, {115}, "L1 N"},
        {"", 206, "", 1, {208}, "L1 L2"},
        {"", 238, "", 1, {230}, "L1 L2"},
        {"", 271, "", 1, {277}, "L1 N"},
        // The old plate alone lands nothing, whatever it says.
        {"", -1, "115", 1, {115}, "?"},
        {"", -1, "208-230", 1, {208, 230}, "?"},
        {"", 0, "115", 1, {115}, "?"},  // a dead line says nothing of what it was
        {"", -1, "", 1, {}, "?"},
        {"115", 0, "", 1, {115}, "?"},  // stated, and dead: read again
    };
    for (const Row& row : rows) {
        BOOST_TEST_CONTEXT(row.supply << ", reads " << row.reading << ", plate " << row.plate << ", phases "
                                      << row.phases) {
            const FailedUnit job = job_of(row);
            const Facts facts = facts_of(job, in_force);
            std::vector<double> nominal;
            for (const Voltage v : facts.supply.nominal) nominal.push_back(v.in(volt));
            BOOST_TEST(nominal == row.nominal, boost::test_tools::per_element());
            BOOST_TEST(text_of(conductors_for(facts.supply, facts.phase.value)) == row.conductors);
        }
    }
}

BOOST_AUTO_TEST_CASE(a_system_of_one_phase_gives_no_motor_three) {
    FailedUnit job;
    job.equipment.supply = read_supply(fold("120/240")).reading;
    BOOST_TEST(facts_of(job, in_force).phase.is(1));
    BOOST_TEST((facts_of(job, in_force).phase.because == Because::supply_system));
    job.plate.phase = known(3);
    BOOST_TEST(!facts_of(job, in_force).phase);
    BOOST_TEST(facts_of(job, in_force).phase.disagree);
}

BOOST_AUTO_TEST_CASE(a_motor_works_on_the_live_reading_where_that_can_be_one_of_the_stated_supply) {
    FailedUnit job;
    job.equipment.supply = known(bare_supply(volt(230)));
    BOOST_TEST(facts_of(job, in_force).supply.at_work()->in(volt) == 230);
    job.measured.line_volts = known<LineVolts>(volt(221));
    BOOST_TEST(facts_of(job, in_force).supply.at_work()->in(volt) == 221);
    job.measured.line_volts = known<LineVolts>(volt(118));  // half of it: another pair was read
    BOOST_TEST(facts_of(job, in_force).supply.at_work()->in(volt) == 230);
}
