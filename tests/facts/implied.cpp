// What follows from a plate, and what never does. Values worked out by hand: 120 f / P less 2 to 20 % of slip; 5252 hp / rpm.
#include <boost/test/unit_test.hpp>

#include "engine/facts/rating.hpp"

using namespace endbell;

namespace {

const Limits limits;  // the program's own

Facts of(const FailedUnit& job) {
    return facts_of(job, limits);
}

FailedUnit with_capacitor(double microfarads, double volts) {
    FailedUnit job;
    job.plate.capacitor = known(microfarad(microfarads), Origin::plate);
    if (volts > 0) job.plate.capacitor_volts = known(volt(volts), Origin::plate);
    return job;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_run_capacitor_makes_a_permanent_split_motor_of_one_phase_on_switched_line) {
    for (const double microfarads : {1.0, 5.0, 100.0}) {
        const Facts facts = of(with_capacitor(microfarads, 370));
        BOOST_TEST(facts.family.is(Family::capacitor_run));
        BOOST_TEST(
            (facts.family.because == Because::run_capacitor && facts.family.origin == Origin::implied));
        BOOST_TEST(facts.phase.is(1));
        BOOST_TEST(facts.signal.is(SignalClass::switched_line));
    }
}

BOOST_AUTO_TEST_CASE(a_start_capacitor_says_one_phase_and_no_more) {
    for (const auto& [microfarads, volts] :
         {std::pair(189.0, 165.0), {100.1, 370.0}, {5.0, 330.0}, {0.9, 440.0}, {5.0, 0.0}}) {
        const Facts facts = of(with_capacitor(microfarads, volts));
        BOOST_TEST(!facts.family);
        BOOST_TEST(!facts.signal);
        BOOST_TEST(facts.phase.is(1));
        BOOST_TEST((facts.phase.because == Because::any_capacitor));
    }
}

BOOST_AUTO_TEST_CASE(what_the_plate_says_goes_before_what_it_implies) {
    FailedUnit job = with_capacitor(7.5, 370);
    job.plate.family = known(Family::shaded_pole, Origin::plate);
    BOOST_TEST(of(job).family.is(Family::shaded_pole));
    job.plate.phase = known(3, Origin::plate);  // and has a capacitor: one of them is wrong
    BOOST_TEST(!of(job).phase);
    BOOST_TEST(of(job).phase.disagree);
}

BOOST_AUTO_TEST_CASE(a_guess_never_decides) {
    FailedUnit job;
    job.plate.family = known(Family::capacitor_run, Origin::guessed);
    job.plate.phase = known(1, Origin::assumed);
    job.plate.power = known(std::vector{horsepower(0.5)}, Origin::guessed);
    job.plate.volts = known(std::vector{plate_volts(115)}, Origin::guessed);
    job.equipment.supply = known(bare_supply(volt(115)), Origin::guessed);
    job.controls.heat = known(HeatKind::gas, Origin::guessed);
    BOOST_TEST((of(job) == of(FailedUnit{})));
}

BOOST_AUTO_TEST_CASE(poles_follow_from_the_speed_where_one_frequency_is_left) {
    FailedUnit job;
    job.plate.family = known(Family::capacitor_run);
    job.plate.volts = known(std::vector{plate_volts(230)});  // 60 Hz here, 50 elsewhere
    const auto poles_at = [&](double speed) {
        job.plate.speed = known(rpm(speed));
        return of(job).poles;
    };
    BOOST_TEST(poles_at(1075).is(6));  // 1200 less 10.4 %; 1500 less 28 %
    BOOST_TEST(poles_at(1625).is(4));
    BOOST_TEST(poles_at(1380).is(4));  // 1500 less 8 %, at 50 Hz; 1800 less 23 %
    BOOST_TEST(!poles_at(825));        // 900 less 8.3 %, or 1000 less 17.5 %
    job.plate.frequency = known(hertz(60));
    BOOST_TEST(poles_at(825).is(8));
    job.plate.frequency = known(hertz(50));
    BOOST_TEST(poles_at(825).is(6));
    job.plate.poles = known(8);
    BOOST_TEST(!poles_at(825));
    BOOST_TEST(poles_at(825).disagree);
    job.plate.frequency = {};
    job.plate.volts = known(std::vector{plate_volts(208, 230)});  // 208 V: 60 Hz
    job.plate.poles = {};
    BOOST_TEST(poles_at(825).is(8));
}

BOOST_AUTO_TEST_CASE(the_largest_power_and_its_torque_are_the_old_motors) {
    FailedUnit job;
    job.plate.power = known(std::vector{horsepower(1.0 / 3), horsepower(0.5)}, Origin::plate);
    BOOST_TEST(of(job).power->in(horsepower) == 0.5, boost::test_tools::tolerance(1e-12));
    BOOST_TEST(!of(job).torque);
    job.plate.speed = known(rpm(1075));
    BOOST_TEST(of(job).torque->in(pound_foot) == 2.4428,
               boost::test_tools::tolerance(1e-4));  // 5252.1 x 0.5 / 1075
}

BOOST_AUTO_TEST_CASE(heat_is_known_by_its_kind_or_by_what_the_plate_of_the_unit_gives) {
    FailedUnit job;
    const auto made_by = [&] {
        const Heat heat = of(job).heat;
        const auto letter = [](const DerivedFact<bool>& fact, char yes, char no) {
            return !fact ? '?' : *fact ? yes : no;
        };
        return std::string{letter(heat.burner, 'B', '-'), letter(heat.elements, 'E', '-'),
                           letter(heat.compressor, 'C', '-')};
    };
    BOOST_TEST(made_by() == "???");
    for (const auto& [kind, wanted] : {std::pair(HeatKind::none, "---"),
                                       {HeatKind::gas, "B--"},
                                       {HeatKind::oil, "B--"},
                                       {HeatKind::electric, "-E-"},
                                       {HeatKind::heat_pump, "-?C"},
                                       {HeatKind::dual_fuel, "B-C"}}) {
        job.controls.heat = known(kind);
        BOOST_TEST(made_by() == wanted);
    }
    job.controls.heat = known(HeatKind::heat_pump);
    job.equipment.electric_heat = known(kilowatt(10));
    BOOST_TEST(made_by() == "-EC");
    job.controls.heat = {};
    BOOST_TEST(made_by() == "?E?");
    job.equipment.electric_heat = {};
    job.equipment.heat_input = known(btu_per_hour(80'000));
    BOOST_TEST(made_by() == "B??");
    BOOST_TEST(!of(job).heat.fuel_output);
    job.equipment.efficiency = known(0.8);
    BOOST_TEST(of(job).heat.fuel_output->in(btu_per_hour) == 64'000, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(of_a_plate_that_is_not_trusted_nothing_is_left) {
    FailedUnit job = with_capacitor(7.5, 370);
    job.plate.family = known(Family::capacitor_run);
    job.plate.volts = known(std::vector{plate_volts(115)});
    job.plate.mount = known(Mount::band);
    job.plate.mount.raw = "band";
    open_untrusted_plate(job);
    BOOST_TEST(job.plate.mount.value.has_value());  // nobody said that it is not
    job.unit.plate_trusted = known(false);
    open_untrusted_plate(job);
    BOOST_TEST(!job.plate.mount.value);
    BOOST_TEST(job.plate.mount.raw == "band");
    const Facts facts = of(job);
    BOOST_TEST(!facts.family);
    BOOST_TEST(!facts.phase);
    BOOST_TEST(facts.supply.nominal.empty());
    BOOST_TEST(!facts.plate_trusted);
}

BOOST_AUTO_TEST_CASE(one_rating_is_in_use_by_volts_then_power_then_speed) {
    Part part;
    part.motor = Motor{};
    const auto add = [&](double volts, double hp, double speed) {
        Rating r;
        r.volts = plate_volts(volts);
        r.power = horsepower(hp);
        r.speed = rpm(speed);
        part.motor->ratings.push_back(r);
    };
    add(115, 0.5, 1075);
    add(230, 0.5, 1075);
    add(230, 0.75, 1075);
    add(230, 0.5, 825);
    FailedUnit job;
    const auto used = [&] { return *rating_in_use(of(job), part, limits); };
    job.equipment.supply = known(bare_supply(volt(230)));
    job.plate.power = known(std::vector{horsepower(0.5)});
    job.plate.speed = known(rpm(825));
    BOOST_TEST(used().volts->low.in(volt) == 230);
    BOOST_TEST(used().speed->in(rpm) == 825);
    job.plate.power = known(std::vector{horsepower(0.6)});  // none is equal: the next larger
    BOOST_TEST(used().power->in(horsepower) == 0.75, boost::test_tools::tolerance(1e-12));
    job.equipment.supply = known(bare_supply(volt(115)));
    BOOST_TEST(used().volts->low.in(volt) == 115);
}
