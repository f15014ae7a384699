#include <boost/test/unit_test.hpp>

#include "engine/words/plate_text.hpp"
#include "engine/words/words.hpp"
#include "tests/words/outcome.hpp"

using namespace endbell;

BOOST_AUTO_TEST_SUITE(plate_text)

BOOST_AUTO_TEST_CASE(the_counter_line_gives_every_field_it_names) {
    const PlateText read = read_plate("1/2 hp 208-230 1075 3spd CCWLE 1/2x5 psc");
    const PlateReadings& p = read.plate;
    BOOST_REQUIRE(p.power && p.volts && p.speed && p.speeds && p.rotation && p.shaft_diameter &&
                  p.shaft_length && p.family);
    BOOST_CHECK(*p.power == std::vector<Power>{horsepower(0.5)});
    BOOST_CHECK(*p.volts == std::vector<PlateVolts>{plate_volts(208, 230)});
    BOOST_CHECK(*p.speed == rpm(1075));
    BOOST_CHECK_EQUAL(*p.speeds, 3);
    BOOST_CHECK(*p.rotation == Rotation::cw_shaft_end);  // the lead end sees the mirror image
    BOOST_CHECK(*p.shaft_diameter == inch(0.5));
    BOOST_CHECK(*p.shaft_length == inch(5));
    BOOST_CHECK(*p.family == Family::capacitor_run);
    BOOST_CHECK(p.power.origin == Origin::plate);
    BOOST_CHECK(read.not_understood.empty());
}

BOOST_AUTO_TEST_CASE(the_order_of_the_words_does_not_matter) {
    const PlateText read = read_plate(
        "psc, CCW LE; 3 speed 1075 RPM 208/230V 1/2 x 5 1/2 HP condenser fan 5 MFD 370V 48Y TEAO ball SF "
        "1.0");
    const PlateReadings& p = read.plate;
    BOOST_REQUIRE(p.power && p.rotation && p.capacitor && p.capacitor_volts && p.enclosure &&
                  p.service_factor);
    BOOST_CHECK(*p.rotation == Rotation::cw_shaft_end);
    BOOST_CHECK(*p.capacitor == microfarad(5));
    BOOST_CHECK(*p.capacitor_volts == volt(370));
    BOOST_CHECK(*p.enclosure == Enclosure::enclosed_air_over);
    BOOST_CHECK_EQUAL(*p.frame, "48Y");
    BOOST_CHECK(*p.bearing == Bearing::ball);
    BOOST_REQUIRE(read.unit.load);
    BOOST_CHECK(*read.unit.load == Load::outdoor_fan);
    BOOST_CHECK_MESSAGE(read.not_understood.empty(), joined(read.not_understood, " "));
}

BOOST_AUTO_TEST_CASE(a_bare_fraction_asks_about_power_and_shaft) {
    const PlateText read = read_plate("1/2 208-230 1075");
    BOOST_CHECK(read.plate.power.is_open());
    BOOST_CHECK(read.plate.shaft_diameter.is_open());
}

BOOST_AUTO_TEST_CASE(a_bare_fraction_beside_a_known_shaft_asks_about_power_only) {
    const PlateText read = read_plate("1/2 1/2x5");
    BOOST_CHECK(read.plate.power.is_open());
    BOOST_CHECK(read.plate.shaft_diameter.value == inch(0.5));
}

BOOST_AUTO_TEST_CASE(a_bare_direction_stays_open) {
    BOOST_CHECK(read_plate("1/2 hp CW").plate.rotation.is_open());
    BOOST_CHECK(read_plate("1/2 hp dbl shaft CCW").plate.rotation.is_open());
    BOOST_CHECK(read_plate("1/2 hp dbl shaft CCW").plate.double_shaft.value == true);
}

BOOST_AUTO_TEST_CASE(a_word_said_twice_differently_leaves_the_field_open) {
    const PlateText read = read_plate("1/2 hp 1/3 hp");
    BOOST_CHECK(read.plate.power.is_open());
    BOOST_CHECK_EQUAL(read.plate.power.readings.size(), 2U);
}

BOOST_AUTO_TEST_CASE(a_label_between_two_figures_that_it_can_name_is_a_question) {
    BOOST_CHECK(read_plate("2.0 AMPS 4.1").plate.current.is_open());
    BOOST_CHECK(read_plate("115 V 230").plate.volts.is_open());
    // A fraction is a power or a shaft, and no second value of the amps.
    BOOST_CHECK(*read_plate("5 AMPS 1/2").plate.current == ampere(5));
    BOOST_CHECK(read_plate("5 AMPS 1/2").plate.power.is_open());
    // The other labels of the line say on which side theirs stand.
    BOOST_CHECK(*read_plate("HP 1/2 2.0 AMPS 4.1").plate.current == ampere(4.1));
    BOOST_CHECK(*read_plate("1/2 HP 2.0 AMPS 4.1").plate.current == ampere(2));
}

BOOST_AUTO_TEST_CASE(a_torn_figure_is_asked_under_its_label) {
    BOOST_CHECK(read_plate("6? POLES 1/2 HP").plate.poles.is_open());
    BOOST_CHECK(read_plate("PH ?1 HP 1/2").plate.phase.is_open());
    BOOST_CHECK(read_plate("1/2 HP 10?5 RPM").plate.speed.is_open());
}

BOOST_AUTO_TEST_CASE(a_supply_triple_gives_no_voltage_and_no_phase) {
    const PlateText read = read_plate("208/230-1-60 1/4 hp");
    BOOST_CHECK(read.plate.volts.is_open());
    BOOST_CHECK(!read.plate.phase);
}

BOOST_AUTO_TEST_CASE(three_phase_beside_a_capacitor_is_doubted) {
    BOOST_CHECK(read_plate("3PH 460V 1 hp").plate.phase.value == 3);
    BOOST_CHECK(read_plate("3PH 460V 1 hp 10 MFD").plate.phase.is_open());
}

BOOST_AUTO_TEST_CASE(figures_side_by_side_are_not_glued_together) {
    const PlateText read = read_plate("1 15 2 30");
    BOOST_CHECK(read.plate.volts.raw.empty());
    BOOST_CHECK_EQUAL(read.not_understood.size(), 4U);
}

BOOST_AUTO_TEST_CASE(unknown_words_are_handed_back) {
    const PlateText read = read_plate("1/2 hp frobnicated 1075 keyed");
    const std::vector<std::string> expected{"frobnicated", "keyed"};
    BOOST_CHECK_EQUAL_COLLECTIONS(read.not_understood.begin(), read.not_understood.end(), expected.begin(),
                                  expected.end());
}

BOOST_AUTO_TEST_CASE(a_voltage_beside_a_speed_count_is_no_speed) {
    for (const char* text : {"115 four speed", "115 3spd", "115 3 speed 1/2 hp"}) {
        const PlateText read = read_plate(text);
        BOOST_CHECK_MESSAGE(!read.plate.speed, text);
        BOOST_CHECK_MESSAGE(read.plate.volts.value == std::vector<PlateVolts>{plate_volts(115)}, text);
        BOOST_CHECK_MESSAGE(read.plate.speeds.value.has_value(), text);
    }
}

BOOST_AUTO_TEST_CASE(labels_may_stand_in_front_of_their_values) {
    for (const char* text : {"hp 1/5 volts 208/230 rpm 1075 amps 1.4 rot CWLE ph 1 hz 60 fr 48",
                             "HP: 1/5 V: 208-230 RPM: 1075 A: 1.4 ROT: CWLE PH: 1 HZ: 60 FR: 48"}) {
        const PlateText read = read_plate(text);
        const PlateReadings& p = read.plate;
        BOOST_REQUIRE_MESSAGE(
            p.power && p.volts && p.speed && p.current && p.rotation && p.phase && p.frequency && p.frame,
            text);
        BOOST_CHECK(p.power->front() == horsepower(0.2));
        BOOST_CHECK(*p.volts == std::vector<PlateVolts>{plate_volts(208, 230)});
        BOOST_CHECK(*p.speed == rpm(1075));
        BOOST_CHECK(*p.current == ampere(1.4));
        BOOST_CHECK(*p.rotation == Rotation::ccw_shaft_end);
        BOOST_CHECK_EQUAL(*p.phase, 1);
        BOOST_CHECK(*p.frequency == hertz(60));
        BOOST_CHECK_EQUAL(*p.frame, "48");
        BOOST_CHECK_MESSAGE(read.not_understood.empty(), joined(read.not_understood, " "));
    }
}

BOOST_AUTO_TEST_CASE(an_old_number_stands_behind_its_label) {
    BOOST_CHECK_EQUAL(*read_plate("p/n 00-17A 1/2 hp").unit.old_part_number, "00-17A");
}

BOOST_AUTO_TEST_CASE(words_joined_by_slashes_are_read_as_if_by_blanks) {
    for (const char* text : {"1/2HP/1075/208-230", "1/2HP/ 1075 /208-230", "1/2HP/1075/208/230",
                             "208-230/1/2HP/1075", "\u00bdHP/1075/208-230"}) {
        const PlateText read = read_plate(text);
        BOOST_REQUIRE_MESSAGE(read.plate.power && read.plate.speed && read.plate.volts, text);
        BOOST_CHECK(*read.plate.power == std::vector<Power>{horsepower(0.5)});
        BOOST_CHECK(*read.plate.speed == rpm(1075));
        BOOST_CHECK(read.plate.speeds.raw.empty());
        BOOST_CHECK(*read.plate.volts == std::vector<PlateVolts>{plate_volts(208, 230)});
        BOOST_CHECK_MESSAGE(read.not_understood.empty(), text);
    }
}

BOOST_AUTO_TEST_CASE(a_slash_that_belongs_to_a_word_stays) {
    const PlateText read = read_plate("PSC/1/2HP/1075/3SPD/7.5/370/1/2x5/CCWLE");
    const PlateReadings& p = read.plate;
    BOOST_REQUIRE(p.power && p.speed && p.speeds && p.capacitor && p.capacitor_volts && p.shaft_length &&
                  p.rotation && p.family);
    BOOST_CHECK_EQUAL(*p.speeds, 3);
    BOOST_CHECK(*p.capacitor == microfarad(7.5));
    BOOST_CHECK(*p.capacitor_volts == volt(370));
    BOOST_CHECK(*p.shaft_diameter == inch(0.5));
    BOOST_CHECK(read.not_understood.empty());
}

BOOST_AUTO_TEST_CASE(a_bare_fraction_between_slashes_is_asked_about_too) {
    const PlateText read = read_plate("1/2/1075/208-230");
    BOOST_CHECK(read.plate.power.is_open());
    BOOST_CHECK(read.plate.speed.value == rpm(1075));
    BOOST_CHECK(read.plate.volts.value.has_value());
}

BOOST_AUTO_TEST_CASE(a_supply_triple_behind_a_speed_takes_no_other_word_with_it) {
    const PlateText read = read_plate("1/2HP/1075/208-230/1/60");
    BOOST_CHECK(read.plate.power.value.has_value());
    BOOST_CHECK(read.plate.speed.value == rpm(1075));
    BOOST_CHECK(read.plate.volts.is_open());
}

BOOST_AUTO_TEST_CASE(a_piece_is_never_glued_to_the_next_word) {
    const PlateText read = read_plate("208-230/60/1 1/4HP");
    BOOST_CHECK(read.plate.power.value == std::vector<Power>{horsepower(0.25)});
    const PlateText amps = read_plate("FLA 2.5/1/4HP");
    BOOST_CHECK(amps.plate.power.value == std::vector<Power>{horsepower(0.25)});
}

BOOST_AUTO_TEST_CASE(a_voltage_behind_a_speed_is_no_second_speed) {
    for (const char* text : {"1075/230", "1075/115"}) {
        const PlateText read = read_plate(text);
        BOOST_CHECK_MESSAGE(read.plate.speed.value == rpm(1075), text);
        BOOST_CHECK_MESSAGE(read.plate.speeds.raw.empty() && read.plate.volts, text);
    }
    BOOST_CHECK(read_plate("1075/1000/900").plate.speeds.value == 3);
}

BOOST_AUTO_TEST_CASE(what_a_slash_joins_and_nobody_knows_is_handed_back) {
    BOOST_CHECK_EQUAL(joined(read_plate("1/2HP/zonk/1075").not_understood, " "), "zonk");
    BOOST_CHECK_EQUAL(joined(read_plate("w/o O/B").not_understood, " "), "w/o O/B");
}

BOOST_AUTO_TEST_CASE(a_bare_size_is_the_body_beside_a_whole_shaft) {
    for (const char* text : {"1/2x5 5.6\"", "5.6\" 1/2x5", "1/2 x 5 5.6 in", "1/2HP/1/2x5/5.6\""}) {
        const PlateText read = read_plate(text);
        BOOST_CHECK_MESSAGE(read.plate.body_diameter.value == inch(5.6), text);
        BOOST_CHECK_MESSAGE(read.plate.shaft_length.value == inch(5), text);
        BOOST_CHECK_MESSAGE(read.not_understood.empty(), text);
    }
}

BOOST_AUTO_TEST_CASE(a_bare_size_without_a_whole_shaft_is_a_question) {
    for (const char* text : {"1/2 hp 5.6\"", "1/2\" 5.6\"", "1/2 hp 5.6 in"}) {
        const PlateText read = read_plate(text);
        BOOST_CHECK_MESSAGE(read.plate.body_diameter.is_open() && read.plate.shaft_length.is_open(), text);
    }
    const PlateText body = read_plate("5.6\" body 5\"");
    BOOST_CHECK(body.plate.body_diameter.value == inch(5.6) && body.plate.shaft_length.is_open());
    BOOST_CHECK_EQUAL(read_plate("12\"").not_understood.at(0), "12\"");
}

BOOST_AUTO_TEST_SUITE_END()
