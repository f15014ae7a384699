#include <boost/test/unit_test.hpp>
#include <cmath>
#include <set>

#include "engine/base/hash.hpp"
#include "engine/base/text.hpp"
#include "engine/job/job.hpp"

using namespace endbell;

namespace {

std::vector<Problem> problems_of(std::string_view text) {
    try {
        read_job(text, "job.toml");
    } catch (const BadData& bad) {
        return bad.problems();
    }
    return {};
}

constexpr std::string_view attic = R"([unit]
name = "attic air handler"
load = "blower"
[plate]
power = "1/2 hp"
volts = "208-230"
speed = "1075/3SPD"
rotation = "CCWLE"
shaft_diameter = 0.5
family = "PSC"
capacitor = "7.5/370"
[measured]
line_volts = 228
windings = [0.9, 0.9, "OL"]
static_return = -0.22
symptoms = ["hums", "trips hot"]
[equipment]
cooling = "3 ton"
rise_low = "40-70"
[controls]
terminals = {G = "circulate", Y1 = "cool", W1 = "heat"}
[shop]
currency = "CAD"
labour_rate = 135.5
as_of = 2025-06-30
parts_tax = "8.25 %"
prefer_makers = ["Inventa", "Quorble"]
)";

}  // namespace

BOOST_AUTO_TEST_SUITE(job)

BOOST_AUTO_TEST_CASE(a_job_reads_in_the_words_of_the_trade) {
    const FailedUnit job = read_job(attic, "job.toml");
    BOOST_CHECK_EQUAL(*job.unit.name, "attic air handler");
    BOOST_CHECK(*job.unit.load == Load::indoor_blower);
    BOOST_CHECK(job.plate.power->front() == horsepower(0.5));
    BOOST_CHECK(*job.plate.rotation == Rotation::cw_shaft_end);
    BOOST_CHECK(*job.plate.shaft_diameter == inch(0.5));
    BOOST_CHECK_EQUAL(*job.plate.speeds, 3);  // out of the speed's text
    BOOST_CHECK(*job.plate.capacitor_volts == volt(370));
    BOOST_REQUIRE_EQUAL(job.measured.windings->size(), 3U);
    BOOST_CHECK(std::isinf(job.measured.windings->at(2).in(ohm)));
    BOOST_CHECK(*job.measured.static_return == inch_water(-0.22));
    BOOST_CHECK(job.measured.symptoms->at(1) == Symptom::trips_hot);
    BOOST_CHECK(*job.equipment.cooling == ton_cooling(3));
    BOOST_CHECK(*job.equipment.rise_high == fahrenheit_degree(70));
    BOOST_CHECK_EQUAL(job.controls.terminals->size(), 3U);
    BOOST_CHECK_EQUAL(job.shop.labour_rate->minor(), 13550);
    BOOST_CHECK_EQUAL(job.shop.labour_rate->currency().code, "CAD");
    BOOST_TEST((*job.shop.as_of == date_of(2025, 6, 30)));
    BOOST_CHECK_EQUAL(job.shop.parts_tax->millionths, 82'500);
    BOOST_CHECK_EQUAL(job.shop.prefer_makers->at(1), "Quorble");
    BOOST_CHECK(open_fields(job).empty());
}

BOOST_AUTO_TEST_CASE(a_value_keeps_its_raw_text_its_origin_and_its_line) {
    const FailedUnit job = read_job(attic, "job.toml");
    BOOST_CHECK_EQUAL(job.plate.rotation.raw, "CCWLE");
    BOOST_CHECK(job.plate.rotation.origin == Origin::plate);
    BOOST_CHECK(job.measured.line_volts.origin == Origin::measured);
    BOOST_CHECK(job.equipment.cooling.origin == Origin::equipment);
    BOOST_CHECK(job.shop.labour_rate.origin == Origin::shop);
    BOOST_CHECK_EQUAL(to_text(job.plate.rotation.at), "job.toml:8:12");
}

BOOST_AUTO_TEST_CASE(the_digest_is_the_fingerprint_of_the_text) {
    BOOST_CHECK_EQUAL(read_job(attic, "a.toml").digest, fingerprint(attic));
    BOOST_CHECK_EQUAL(read_job(attic, "b.toml").digest, read_job(attic, "a.toml").digest);
}

BOOST_AUTO_TEST_CASE(an_ambiguous_value_is_a_question_and_no_error) {
    const FailedUnit job = read_job("[plate]\nrotation = \"CW\"\nvolts = \"115/230\"\n", "job.toml");
    const auto open = open_fields(job);
    BOOST_REQUIRE_EQUAL(open.size(), 2U);
    BOOST_CHECK_EQUAL(open[0].job_key, "plate.volts");
    BOOST_CHECK_EQUAL(open[1].job_key, "plate.rotation");
    BOOST_CHECK_EQUAL(open[1].raw, "CW");
    BOOST_CHECK_EQUAL(open[1].readings.at(0), "CWSE");
    BOOST_CHECK_EQUAL(open[1].at.line, 2);
}

BOOST_AUTO_TEST_CASE(a_jumper_selects_the_voltage_of_an_electronic_motor_whichever_line_comes_first) {
    for (const char* text : {"[plate]\nfamily = \"constant torque\"\nvolts = \"120/240\"\n",
                             "[plate]\nvolts = \"120/240\"\nfamily = \"CT\"\n"}) {
        const FailedUnit job = read_job(text, "job.toml");
        BOOST_REQUIRE(job.plate.volts);
        BOOST_CHECK_EQUAL(job.plate.volts->size(), 2U);
    }
}

BOOST_AUTO_TEST_CASE(several_problems_are_told_together_in_the_order_of_the_lines) {
    const auto problems = problems_of(
        "[plate]\npower = \"lots\"\nrotatoin = \"CCWLE\"\n[measurd]\nline_volts = 118\n[shop]\nlabour_rate = "
        "\"much\"\n");
    BOOST_REQUIRE_EQUAL(problems.size(), 4U);
    BOOST_CHECK_EQUAL(problems[0].at.line, 2);
    BOOST_CHECK_EQUAL(problems[0].subject, "plate.power");
    BOOST_CHECK_EQUAL(problems[0].value, "lots");
    BOOST_CHECK(!problems[0].expected.empty() && !problems[0].todo.empty());
    BOOST_CHECK_EQUAL(problems[1].todo, "did you mean 'rotation'?");
    BOOST_CHECK_EQUAL(problems[2].todo, "did you mean 'measured'?");
    BOOST_CHECK_EQUAL(problems[3].at.line, 7);
}

BOOST_AUTO_TEST_CASE(a_key_in_the_wrong_group_is_sent_home) {
    BOOST_CHECK_EQUAL(problems_of("[unit]\nrotation = \"CCWLE\"\n").at(0).todo, "it belongs under [plate]");
    BOOST_CHECK_EQUAL(problems_of("rotation = \"CCWLE\"\n").at(0).todo, "put it under [plate]");
}

BOOST_AUTO_TEST_CASE(text_that_is_not_toml_is_refused_with_its_line) {
    const auto problems = problems_of("[plate]\nvolts = 208-230\n");
    BOOST_REQUIRE_EQUAL(problems.size(), 1U);
    BOOST_CHECK_EQUAL(problems[0].at.line, 2);
}

BOOST_AUTO_TEST_CASE(a_part_number_must_stand_in_quotes) {
    BOOST_CHECK_EQUAL(problems_of("[unit]\nold_part_number = 123\n").at(0).at.line, 2);
    BOOST_CHECK_EQUAL(*read_job("[unit]\nold_part_number = \"00123\"\n", "j").unit.old_part_number, "00123");
}

BOOST_AUTO_TEST_CASE(impossible_values_are_refused_with_their_line) {
    for (const char* text :
         {"[plate]\npower = -0.5\n", "[plate]\npower = \"-1/2 hp\"\n",
          "[measured]\nwindings = [1, 1, 1, 1]\n", "[equipment]\nheat_output = 90000\nheat_input = 80000\n",
          "[plate]\nphase = 2\n", "[plate]\npoles = 5\n", "[equipment]\nrise_low = 70\nrise_high = 40\n",
          "[equipment]\nefficiency = 140\n", "[shop]\nas_of = \"2025-02-30\"\n",
          "[shop]\ncurrency = \"XYZ\"\n", "[measured]\nline_volts = nan\n", "[plate]\npower = inf\n",
          "[measured]\nlive_taps = [0]\n", "[plate]\nshaft_flat = 6\nshaft_length = 5\n",
          "[measured]\nstatic_total = \"-0.5\"\n", "[measured]\nfilter_drop = -0.1\n",
          "[equipment]\nstatic_limit = -0.5\n", "[controls]\nterminals = {G = \"sing\"}\n",
          "[plate]\nspeed = {a = [1]}\n"}) {
        const auto problems = problems_of(text);
        BOOST_REQUIRE_MESSAGE(problems.size() == 1, text);
        BOOST_CHECK_MESSAGE(problems[0].at.line == 2, text);
    }
}

BOOST_AUTO_TEST_CASE(states_of_its_own_are_a_table_of_live_terminals_and_calls) {
    const FailedUnit job = read_job(
        "[controls]\nterminals = {G = \"circulate\", Y1 = \"cool\", O = \"cool\"}\n"
        "[controls.states]\nboost = \"Y1 + G + O: cool\"\nidle = \"O: off\"\n",
        "job.toml");
    BOOST_REQUIRE(job.controls.states);
    BOOST_REQUIRE_EQUAL(job.controls.states->size(), 2U);
    const CustomState& boost = job.controls.states->at(0);
    BOOST_CHECK_EQUAL(boost.name, "boost");
    BOOST_CHECK(boost.live == (std::vector<std::string>{"Y1", "G", "O"}));
    BOOST_CHECK(boost.call == Call::cool_high);
    BOOST_CHECK(!job.controls.states->at(1).call);
}

BOOST_AUTO_TEST_CASE(a_bad_state_is_refused_with_its_line_and_name) {
    for (const char* states : {"boost = \"Y1 + G\"", "boost = \"Y1 + G: sing\"", "boost = \": cool\"",
                               "boost = \"Y1 + + G: cool\"", "boost = \"Y9 + G: cool\"",
                               "boost = \"Y1 + G: cool\", calm = \"G + Y1: circulate\""}) {
        const auto problems =
            problems_of("[controls]\nterminals = {G = \"circulate\", Y1 = \"cool\"}\nstates = {" +
                        std::string(states) + "}\n");
        BOOST_REQUIRE_MESSAGE(problems.size() == 1, states);
        BOOST_CHECK_MESSAGE(problems[0].at.line == 3, states);
        BOOST_CHECK_MESSAGE(problems[0].expected.find("boost") != std::string::npos, states);
    }
}

BOOST_AUTO_TEST_CASE(a_positive_return_static_is_a_question_about_its_sign) {
    const FailedUnit job = read_job("[measured]\nstatic_return = 0.22\nstatic_supply = -0.3\n", "job.toml");
    BOOST_CHECK(job.measured.static_return.is_open());
    BOOST_CHECK(job.measured.static_supply.is_open());
}

BOOST_AUTO_TEST_CASE(a_negative_total_is_refused_by_its_key_wherever_it_is_written) {
    const auto problems = problems_of("[measured]\nline_volts = 238\nstatic_total = -0.5\n");
    BOOST_REQUIRE_EQUAL(problems.size(), 1U);
    BOOST_CHECK_EQUAL(problems[0].subject, "measured.static_total");
    BOOST_CHECK_EQUAL(problems[0].at.line, 3);
    FailedUnit job;
    BOOST_CHECK_THROW(set_field(job, "measured.static_total=-0.5"), BadData);
    BOOST_CHECK(job.measured.static_total.raw.empty());
    set_field(job, "measured.static_total=0");
    BOOST_CHECK(job.measured.static_total.value == inch_water(0));
}

BOOST_AUTO_TEST_CASE(a_blower_table_is_a_list_of_rows) {
    const FailedUnit job = read_job(
        "[equipment]\nblower_table = [[1200, 0.50, 989, 0.376], [\"1,400 cfm\", \"0.30 in\", \"1010 rpm\", "
        "\"0.45 hp\"],\n  [900, 0, 940, 0.34]]\n",
        "job.toml");
    BOOST_REQUIRE(job.equipment.blower_table);
    const std::vector<BlowerRow> expected{{cfm(1200), inch_water(0.5), rpm(989), horsepower(0.376)},
                                          {cfm(1400), inch_water(0.3), rpm(1010), horsepower(0.45)},
                                          {cfm(900), inch_water(0), rpm(940), horsepower(0.34)}};
    BOOST_CHECK(*job.equipment.blower_table == expected);
    BOOST_CHECK(job.equipment.blower_table.origin == Origin::equipment);
}

BOOST_AUTO_TEST_CASE(a_blower_row_that_cannot_be_is_refused_by_its_number) {
    for (const char* row :
         {"[1200, 0.5, 989]", "[1200, 0.5, 989, 0.4, 1]", "[0, 0.5, 989, 0.4]", "[-1200, 0.5, 989, 0.4]",
          "[1200, -0.5, 989, 0.4]", "[1200, 0.5, 0, 0.4]", "[1200, 0.5, 989, 0]",
          "[1200, 0.5, 989, \"280 W\"]", "[1200, 0.5, \"high\", 0.4]", "[]", "1200"}) {
        const auto problems =
            problems_of("[equipment]\nblower_table = [[1200, 0.5, 989, 0.376], " + std::string(row) + "]\n");
        BOOST_REQUIRE_MESSAGE(problems.size() == 1, row);
        BOOST_CHECK_EQUAL(problems[0].subject, "equipment.blower_table");
        BOOST_CHECK_EQUAL(problems[0].at.line, 2);
        BOOST_CHECK_MESSAGE(problems[0].expected.starts_with("in row 2 "), problems[0].expected);
    }
}

BOOST_AUTO_TEST_CASE(what_the_equipments_plate_asks_of_the_air_is_read) {
    const FailedUnit job = read_job(
        "[equipment]\nelectric_stages = [\"5 kW\", \"5 kW\", \"10 kW\"]\nreturn_size = \"20x25\"\n"
        "low_rise_low = \"30-60\"\nelectric_heat_volts = 240\nheat_least_air = 1000\n",
        "job.toml");
    BOOST_REQUIRE(job.equipment.electric_stages);
    const std::vector<Power> stages{kilowatt(5), kilowatt(5), kilowatt(10)};
    BOOST_CHECK(*job.equipment.electric_stages == stages);
    BOOST_CHECK_EQUAL(*job.equipment.return_size, 500);
    BOOST_CHECK_EQUAL(job.equipment.low_rise_low->in(fahrenheit_degree), 30);
    BOOST_CHECK_EQUAL(job.equipment.low_rise_high->in(fahrenheit_degree), 60);
    BOOST_CHECK(!job.equipment.rise_low && !job.equipment.rise_high);
    BOOST_CHECK_EQUAL(job.equipment.electric_heat_volts->in(volt), 240);
    BOOST_CHECK_EQUAL(job.equipment.heat_least_air->in(cfm), 1000);
    for (const char* wrong : {"electric_stages = \"two banks\"", "return_size = \"20x25x2\"",
                              "return_size = \"0x25\"", "return_size = \"large\""})
        BOOST_CHECK_EQUAL(problems_of("[equipment]\n" + std::string(wrong) + "\n").size(), 1U);
}

BOOST_AUTO_TEST_CASE(a_dead_line_and_a_standing_rotor_are_readings) {
    const FailedUnit job =
        read_job("[measured]\nline_volts = 0\namps = 0\nspeed = 0\ncapacitor = 0\n", "job.toml");
    BOOST_CHECK(job.measured.line_volts.value == volt(0));
    BOOST_CHECK(job.measured.amps.value == ampere(0));
    BOOST_CHECK(job.measured.speed.value == rpm(0));
    BOOST_CHECK(job.measured.capacitor.value == microfarad(0));
}

BOOST_AUTO_TEST_CASE(nought_on_a_plate_is_nothing_written) {
    const FailedUnit job = read_job("[plate]\npower = 0\ncurrent = \"N/A\"\n", "job.toml");
    BOOST_CHECK(!job.plate.power && !job.plate.power.is_open());
    BOOST_CHECK(!job.plate.current && !job.plate.current.is_open());
}

BOOST_AUTO_TEST_CASE(an_empty_job_is_a_job_without_facts) {
    BOOST_CHECK(open_fields(read_job("", "job.toml")).empty());
    BOOST_CHECK(open_fields(read_job("[plate]\n", "job.toml")).empty());
}

BOOST_AUTO_TEST_CASE(a_missing_file_is_bad_data) {
    BOOST_CHECK_THROW(read_job_file("/nowhere/at/all.toml"), BadData);
    BOOST_CHECK_THROW(read_job_file("/"), BadData);
}

BOOST_AUTO_TEST_CASE(the_command_line_sets_one_key) {
    FailedUnit job = read_job(attic, "job.toml");
    const std::string before = job.digest;
    set_field(job, "plate.rotation=CWLE");
    BOOST_CHECK(*job.plate.rotation == Rotation::ccw_shaft_end);
    BOOST_CHECK(job.digest != before);
    set_field(job, "controls.terminals=G = circulate; Y1 = cool");
    BOOST_CHECK_EQUAL(job.controls.terminals->size(), 2U);
    BOOST_CHECK_THROW(set_field(job, "plate.rotatoin=CWLE"), BadUsage);
    BOOST_CHECK_THROW(set_field(job, "plate.rotation"), BadUsage);
    BOOST_CHECK_THROW(set_field(job, "plate.power=lots"), BadData);
    BOOST_CHECK(job.plate.power->front() == horsepower(0.5));
}

BOOST_AUTO_TEST_CASE(setting_the_family_reads_the_voltage_again) {
    FailedUnit job = read_job("[plate]\nvolts = \"120/240\"\n", "job.toml");
    BOOST_CHECK(job.plate.volts.is_open());
    set_field(job, "plate.family=constant torque");
    BOOST_CHECK(job.plate.volts);
}

BOOST_AUTO_TEST_CASE(setting_the_currency_reads_the_money_again) {
    FailedUnit job = read_job("[shop]\nlabour_rate = 135\n", "job.toml");
    set_field(job, "shop.currency=CAD");
    BOOST_CHECK_EQUAL(job.shop.labour_rate->currency().code, "CAD");
}

// What the trade means by 120/240 depends on the family; what 135 is, on the currency.
BOOST_AUTO_TEST_CASE(values_set_together_may_stand_in_any_order) {
    const std::vector<std::vector<std::string>> orders{
        {"plate.family=constant torque", "plate.volts=120/240", "shop.currency=CAD", "shop.labour_rate=135"},
        {"shop.labour_rate=135", "plate.volts=120/240", "shop.currency=CAD", "plate.family=constant torque"}};
    for (const std::vector<std::string>& order : orders) {
        FailedUnit job;
        set_fields(job, order);
        BOOST_CHECK(job.plate.volts);
        BOOST_CHECK(job.shop.labour_rate && job.shop.labour_rate->currency().code == std::string("CAD"));
        BOOST_CHECK_EQUAL(job.shop.labour_rate->minor(), 13'500);
    }
    FailedUnit twice;
    set_fields(twice, {"plate.speeds=2", "plate.speeds=3"});
    BOOST_CHECK_EQUAL(*twice.plate.speeds, 3);
}

BOOST_AUTO_TEST_CASE(all_that_is_wrong_with_values_set_together_is_told) {
    FailedUnit job;
    try {
        const JobKey* power = job_key("plate.power");
        const JobKey* speeds = job_key("plate.speeds");
        set_keys(job, {{speeds, "many", {"jobs.csv", 2, 7}}, {power, "lots", {"jobs.csv", 2, 3}}});
        BOOST_ERROR("two values that cannot be read were taken");
    } catch (const BadData& wrong) {
        BOOST_REQUIRE_EQUAL(wrong.problems().size(), 2U);
        BOOST_CHECK_EQUAL(wrong.problems()[0].subject, "plate.power");  // by column
        BOOST_CHECK_EQUAL(wrong.problems()[1].subject, "plate.speeds");
    }
    BOOST_CHECK_THROW(set_fields(job, {"plate.speeds=2", "plate.speed"}), BadUsage);
}

BOOST_AUTO_TEST_CASE(a_plate_line_fills_what_the_file_leaves_open) {
    FailedUnit job = read_job("[plate]\nrotation = \"CCW\"\nspeed = 1075\n", "job.toml");
    const auto left = add_plate(job, "1/2 hp CCWLE 1075 zonk");
    BOOST_CHECK(*job.plate.rotation == Rotation::cw_shaft_end);
    BOOST_CHECK(job.plate.power->front() == horsepower(0.5));
    BOOST_REQUIRE_EQUAL(left.size(), 1U);
    BOOST_CHECK_EQUAL(left[0], "zonk");
}

BOOST_AUTO_TEST_CASE(a_plate_line_that_contradicts_the_file_leaves_the_field_open) {
    FailedUnit job = read_job("[plate]\nspeed = 1075\n", "job.toml");
    add_plate(job, "825 rpm");
    BOOST_CHECK(job.plate.speed.is_open());
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_SUITE(keys)

BOOST_AUTO_TEST_CASE(every_example_reads_to_a_value_and_its_text_reads_back) {
    for (const JobKey& key : job_keys()) {
        FailedUnit job;
        const auto problem = set_key(job, key.id(), key.example);
        BOOST_REQUIRE_MESSAGE(!problem, key.id() << " does not read its example " << key.example);
        BOOST_CHECK_MESSAGE(!key.open(job), key.id() << " asks about its example");
        const std::string text = key.text(job);
        BOOST_REQUIRE_MESSAGE(!text.empty(), key.id());
        FailedUnit again;
        BOOST_REQUIRE_MESSAGE(!set_key(again, key.id(), text), key.id() << " does not read back " << text);
        BOOST_CHECK_EQUAL(key.text(again), text);
    }
}

BOOST_AUTO_TEST_CASE(no_two_keys_share_an_id_and_each_is_told) {
    std::set<std::string> ids;
    for (const JobKey& key : job_keys()) {
        BOOST_CHECK(ids.insert(key.id()).second);
        BOOST_CHECK(!key.meaning.empty() && !key.example.empty());
        BOOST_CHECK(key.follows.empty() || job_key(key.follows));
    }
    // One a field of the six groups: 14 + 32 + 53 + 32 + 22 + 19, counted in engine/model/failed_unit.hpp.
    BOOST_CHECK_EQUAL(ids.size(), 173U);
}

BOOST_AUTO_TEST_SUITE_END()

BOOST_AUTO_TEST_CASE(a_value_of_which_a_part_was_not_read_is_open) {
    const std::pair<const char*, const char*> torn[] = {{"plate.program", "PR-1?-3K"},
                                                        {"plate.program", "...-3K"},
                                                        {"plate.power", "1/? HP"},
                                                        {"plate.rotation", "CCW?E"},
                                                        {"plate.current", "3.? A"},
                                                        {"plate.volts", "2?0"},
                                                        {"unit.old_part_number", "B-050 (worn off)"},
                                                        {"plate.frame", "48 torn"}};
    for (const auto& [key, text] : torn) {
        FailedUnit job;
        set_field(job, std::string(key) + "=" + text);
        const std::vector<OpenField> open = open_fields(job);
        BOOST_REQUIRE_MESSAGE(open.size() == 1, key);
        BOOST_CHECK_EQUAL(open.front().job_key, key);
        BOOST_CHECK_EQUAL(open.front().raw, text);
    }
    FailedUnit job;
    set_field(job, "unit.name=Which blower? The second");
    BOOST_CHECK(open_fields(job).empty());
    BOOST_CHECK(job.unit.name.value.has_value());
}

BOOST_AUTO_TEST_CASE(a_plate_that_is_not_trusted_is_open_until_it_is) {
    FailedUnit job = read_job(
        "[unit]\nplate_trusted = \"no\"\n[plate]\nfamily = \"PSC\"\npower = \"1/2\"\n"
        "volts = \"208-230\"\nmount = \"band\"\n[measured]\nbore = \"1/2\"\n",
        "job.toml");
    BOOST_CHECK(!job.plate.family.value && !job.plate.power.value && !job.plate.volts.value &&
                !job.plate.mount.value);
    BOOST_CHECK_EQUAL(job.plate.power.raw, "1/2");
    BOOST_CHECK(job.measured.bore.value.has_value());
    set_field(job, "plate.speed=1075");  // as doubtful as the rest
    BOOST_CHECK(!job.plate.speed.value);
    set_field(job, "unit.plate_trusted=yes");
    BOOST_CHECK(job.plate.family.value == Family::capacitor_run);
    BOOST_CHECK(job.plate.volts.value->front() == plate_volts(208, 230));
    BOOST_CHECK_EQUAL(job.plate.speed->in(rpm), 1075);
}
