#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <limits>

#include "engine/diagnosis/diagnosis.hpp"
#include "engine/explain/cautions.hpp"
#include "engine/explain/findings.hpp"
#include "engine/explain/questions.hpp"
#include "engine/explain/values.hpp"
#include "engine/rules/rule.hpp"
#include "engine/wiring/commissioning.hpp"

using namespace endbell;

BOOST_AUTO_TEST_CASE(values_are_said_in_the_words_of_the_trade) {
    BOOST_TEST(say(Value(horsepower(0.5))) == "1/2 hp");
    BOOST_TEST(say(Value(inch(0.3125))) == "5/16 in");
    BOOST_TEST(say(Value(plate_volts(208, 230))) == "208-230 V");
    BOOST_TEST(say(Value(ohm(std::numeric_limits<double>::infinity()))) == "open (OL)");
    BOOST_TEST(say(Value()) == "not known");
}

BOOST_AUTO_TEST_CASE(a_worked_out_length_is_rounded_and_not_a_long_decimal) {
    BOOST_TEST(say(Value(inch(0.439500001))) == "0.44 in");
}

BOOST_AUTO_TEST_CASE(both_names_of_a_rotation_are_said) {
    const std::string text = say(Value(Rotation::ccw_shaft_end));
    BOOST_TEST(text.find("CCWSE") != std::string::npos);
    BOOST_TEST(text.find("CWLE") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(numbers_never_depend_on_a_locale_and_drop_trailing_zeros) {
    BOOST_TEST(say_number(1200.0, 2) == "1200");
    BOOST_TEST(say_number(0.5, 3) == "0.5");
    BOOST_TEST(say_number(-0.0001, 2) == "0");
}

BOOST_AUTO_TEST_CASE(every_job_key_that_a_rule_asks_for_has_a_question) {
    const std::vector<std::string> known = keys_with_questions();
    for (const Rule& rule : all_rules()) {
        for (std::string_view key : rule.job_keys) {
            BOOST_TEST((std::find(known.begin(), known.end(), std::string(key)) != known.end()),
                       std::string(key) << " has no question");
        }
    }
}

BOOST_AUTO_TEST_CASE(every_reading_that_an_empty_diagnosis_misses_has_a_question) {
    const std::vector<std::string> known = keys_with_questions();
    for (const MissingReading& missing : diagnose(FailedUnit{}, Facts{}, Limits{}).missing) {
        BOOST_TEST((std::find(known.begin(), known.end(), missing.job_key) != known.end()),
                   missing.job_key << " has no question");
    }
}

BOOST_AUTO_TEST_CASE(a_finding_says_its_reason_as_a_sentence_and_its_facts) {
    Finding f;
    f.rule = "shaft-diameter";
    f.verdict = Verdict::does_not_fit;
    f.reason = Reason::too_thick;
    f.wanted = Datum{inch(0.5), Origin::measured};
    f.offered = Datum{inch(0.625), Origin::catalog};
    BOOST_TEST(sentence(f) ==
               "The shaft is thicker than the bore and does not go in. Wanted 1/2 in, offered 5/8 in.");
}

namespace {

/// The warnings of a sheet about this job.
std::string warned(const FailedUnit& job, bool live = false) {
    Document d{"", {}, ""};
    add_safety(d, checks_of(job, facts_of(job, Limits()), nullptr), live);
    std::string text;
    for (const Block& block : d.blocks) {
        if (const auto* warning = std::get_if<Warning>(&block)) text += warning->text + "\n";
    }
    return text;
}

bool says(const std::string& text, const char* what) {
    return text.find(what) != std::string::npos;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_sheet_for_an_electronic_motor_says_wait_and_never_mate_the_plug_live) {
    FailedUnit job;
    job.plate.family = known(Family::constant_torque);
    BOOST_TEST(says(warned(job), "Wait 5 minutes"));
    BOOST_TEST(says(warned(job), "Never mate or part the power plug"));
    BOOST_TEST(!says(warned(job), "Discharge a run capacitor"));
}

BOOST_AUTO_TEST_CASE(a_shaded_pole_motor_has_no_capacitor_to_warn_of_and_others_beside_it_may) {
    FailedUnit job;
    job.plate.family = known(Family::shaded_pole);
    job.unit.load = known(Load::indoor_blower);
    job.unit.outdoors = known(false);
    job.controls.heat = known(HeatKind::electric);
    BOOST_TEST(!says(warned(job), "apacitor"));
    job.controls.heat = known(HeatKind::gas);
    BOOST_TEST(says(warned(job), "The inducer or burner motor in the same cabinet may have a run capacitor"));
    job.unit.load = known(Load::draft_inducer);
    BOOST_TEST(says(warned(job), "The blower in the same cabinet may have a run capacitor, or a module"));
    job.unit.load = known(Load::outdoor_fan);
    BOOST_TEST(says(warned(job), "the compressor's may stand in the same cabinet"));
    BOOST_TEST(!says(warned(job), "gas or oil"));  // a condenser burns nothing, whatever heats the house
    job.plate.family = known(Family::capacitor_run);
    BOOST_TEST(says(warned(job), "Discharge a run capacitor"));
}

BOOST_AUTO_TEST_CASE(a_burner_nobody_named_is_warned_of_and_a_live_test_has_its_own_warning) {
    FailedUnit job;
    job.unit.load = known(Load::indoor_blower);
    BOOST_TEST(says(warned(job), "Nobody has said whether it burns gas or oil"));
    BOOST_TEST(says(warned(job), "The kind of motor is not known"));
    BOOST_TEST(!says(warned(job), "live work"));
    BOOST_TEST(says(warned(job, true), "live work"));
    job.controls.heat = known(HeatKind::oil);
    BOOST_TEST(says(warned(job), "Shut off gas or oil before the unit is opened"));
}
