#include <boost/test/unit_test.hpp>

#include "engine/select/select.hpp"
#include "tests/match/books.hpp"

using namespace endbell;

namespace {

/// A complete plain condenser motor: everything a rule may ask of it is stated.
Part condenser_motor(const std::string& id) {
    Part part;
    part.id = id;
    part.maker = "Quillby";
    part.number = id;
    Motor m;
    m.family = Family::capacitor_run;
    m.loads = {Load::outdoor_fan};
    m.phase = 1;
    m.frequency = hertz(60);
    m.poles = 6;
    m.rotation = Rotation::cw_shaft_end;
    m.double_shaft = false;
    m.shaft_diameter = inch(0.5);
    m.shaft_length = inch(5);
    m.shaft_flat = inch(4);
    m.shaft_cuttable = true;
    m.body_diameter = inch(5.6);
    m.body_length = inch(5);
    m.mount = Mount::band;
    m.enclosure = Enclosure::enclosed_air_over;
    m.bearing = Bearing::ball;
    m.positions = {ShaftPosition::all};
    m.ambient = Temperature::celsius(60);
    m.service_factor = 1.0;
    m.protection = Protection::automatic;
    m.capacitor = microfarad(5);
    m.capacitor_volts = volt(370);
    m.speeds = 1;
    m.signal = SignalClass::switched_line;
    m.ratings = {
        Rating{horsepower(0.25), plate_volts(208, 230), ampere(1.8), rpm(1075), VoltageSelection::none}};
    m.terminals = {{"black", "line", "leads"},
                   {"white", "second line", "leads"},
                   {"brown", "capacitor", "leads"},
                   {"green", "earth", "leads"}};
    part.motor = m;
    return part;
}

FailedUnit condenser_job() {
    FailedUnit job;
    job.unit.load = known(Load::outdoor_fan);
    job.unit.outdoors = known(true);
    job.unit.shaft_points = known(ShaftPosition::down);
    job.plate.family = known(Family::capacitor_run, Origin::plate);
    job.plate.power = known(std::vector<Power>{horsepower(0.25)}, Origin::plate);
    job.plate.volts = known(std::vector<PlateVolts>{plate_volts(208, 230)}, Origin::plate);
    job.plate.phase = known(1, Origin::plate);
    job.plate.frequency = known(hertz(60), Origin::plate);
    job.plate.speed = known(rpm(1075), Origin::plate);
    job.plate.current = known(ampere(1.9), Origin::plate);
    job.plate.rotation = known(Rotation::cw_shaft_end, Origin::plate);
    job.plate.double_shaft = known(false, Origin::plate);
    job.plate.shaft_diameter = known(inch(0.5), Origin::plate);
    job.plate.shaft_length = known(inch(5), Origin::plate);
    job.plate.body_diameter = known(inch(5.6), Origin::plate);
    job.plate.mount = known(Mount::band, Origin::plate);
    job.plate.enclosure = known(Enclosure::enclosed_air_over, Origin::plate);
    job.plate.bearing = known(Bearing::ball, Origin::plate);
    job.plate.ambient = known(Temperature::celsius(60), Origin::plate);
    job.plate.capacitor = known(microfarad(5), Origin::plate);
    job.plate.speeds = known(1, Origin::plate);
    job.plate.signal = known(SignalClass::switched_line, Origin::plate);
    job.equipment.supply = known(bare_supply(volt(230)), Origin::equipment);
    job.measured.line_volts = known<LineVolts>(volt(236), Origin::measured);
    return job;
}

Part capacitor_part() {
    Part part;
    part.id = "C-5";
    part.kind = PartKind::accessory;
    CureRow row{};
    row.cure = Cure::run_capacitor;
    row.capacitor = microfarad(5);
    row.capacitor_volts = volt(440);
    part.accessory = Accessory{{row}, {}};
    return part;
}

Selection answer(const FailedUnit& job, const PlainCatalog& catalog) {
    return select_part(job, books_of(catalog), policy_of(job));
}

}  // namespace

BOOST_AUTO_TEST_CASE(an_empty_catalog_fits_nothing) {
    const Selection s = answer(condenser_job(), PlainCatalog{});
    BOOST_TEST((s.outcome == Outcome::nothing_fits));
    BOOST_TEST(!s.pick);
}

BOOST_AUTO_TEST_CASE(the_same_motor_with_its_own_new_capacitor_is_picked) {
    PlainCatalog catalog;
    catalog.parts_list = {condenser_motor("M-1"), capacitor_part()};
    const Selection s = answer(condenser_job(), catalog);
    BOOST_TEST((s.outcome == Outcome::something_fits));
    BOOST_REQUIRE(s.pick.has_value());
    const Option& pick = s.options[static_cast<std::size_t>(*s.pick)];
    BOOST_TEST(pick.candidate.part.id == "M-1");
    BOOST_REQUIRE_EQUAL(pick.kit.parts.size(), 1u);
    BOOST_TEST(pick.kit.parts[0].part_id == "C-5");
}

BOOST_AUTO_TEST_CASE(a_cure_that_the_catalog_lacks_stops_a_part_that_passes_every_rule) {
    PlainCatalog catalog;
    catalog.parts_list = {condenser_motor("M-1")};
    const Selection s = answer(condenser_job(), catalog);
    BOOST_TEST(!s.pick);
    BOOST_REQUIRE_EQUAL(s.stopped.size(), 1u);
    BOOST_TEST(s.stopped[0].candidate.part.id == "M-1");
}

BOOST_AUTO_TEST_CASE(an_unknown_rotation_of_the_job_is_asked_and_never_picked) {
    PlainCatalog catalog;
    catalog.parts_list = {condenser_motor("M-1"), capacitor_part()};
    FailedUnit job = condenser_job();
    job.plate.rotation = Reading<Rotation>{};
    const Selection s = answer(job, catalog);
    BOOST_TEST((s.outcome == Outcome::undecided));
    BOOST_TEST(!s.pick);
    BOOST_REQUIRE(!s.questions.empty());
    BOOST_TEST(s.questions.front() == "plate.rotation");
}

BOOST_AUTO_TEST_CASE(a_fault_elsewhere_picks_nothing_although_a_part_fits) {
    PlainCatalog catalog;
    catalog.parts_list = {condenser_motor("M-1"), capacitor_part()};
    FailedUnit job = condenser_job();
    // Plate 5 microfarad, read 3: 40 % low, beyond the 10 % at which shops replace; hums and spins free.
    job.measured.capacitor = known(microfarad(3), Origin::measured);
    job.measured.spins_free = known(true, Origin::measured);
    job.measured.symptoms = known(std::vector<Symptom>{Symptom::hums}, Origin::measured);
    const Selection s = answer(job, catalog);
    BOOST_TEST((s.outcome == Outcome::do_not_replace));
    BOOST_TEST(!s.pick);
}

BOOST_AUTO_TEST_CASE(a_maker_the_shop_excludes_is_told_apart_from_what_does_not_fit) {
    PlainCatalog catalog;
    catalog.parts_list = {condenser_motor("M-1"), capacitor_part()};
    FailedUnit job = condenser_job();
    job.shop.exclude_makers = known(std::vector<std::string>{"Quillby"}, Origin::shop);
    const Selection s = answer(job, catalog);
    BOOST_TEST(!s.pick);
    BOOST_REQUIRE_EQUAL(s.barred.size(), 1u);
    BOOST_TEST(s.barred[0] == "M-1");
    BOOST_TEST(s.report.near_misses.empty());
}

BOOST_AUTO_TEST_CASE(the_order_of_the_catalog_changes_nothing) {
    PlainCatalog forward, backward;
    forward.parts_list = {condenser_motor("M-1"), condenser_motor("M-2"), capacitor_part()};
    backward.parts_list = {capacitor_part(), condenser_motor("M-2"), condenser_motor("M-1")};
    const Selection a = answer(condenser_job(), forward);
    const Selection b = answer(condenser_job(), backward);
    BOOST_REQUIRE_EQUAL(a.options.size(), b.options.size());
    for (std::size_t i = 0; i < a.options.size(); ++i)
        BOOST_TEST(a.options[i].candidate.part.id == b.options[i].candidate.part.id);
}
