#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Trade practice on what may replace what; the retrofit pattern is that of a universal motor's wiring guide.
BOOST_AUTO_TEST_CASE(like_for_like_fits) {
    SAYS(blower()("family"), Verdict::fits, "same family");
}

BOOST_AUTO_TEST_CASE(a_retrofit_needs_its_own_sheet_to_list_it) {
    World w = retrofit();
    const Finding f = w("family");
    SAYS(f, Verdict::fits_with_changes, "listed retrofit");
    BOOST_TEST(f.remedies.size() == 1u);
    BOOST_TEST((task_of(f.remedies.at(0).cure) == ShopTask::airflow_setup));
    w.motor().retrofit_for.clear();
    SAYS(w("family"), Verdict::does_not_fit, "not listed as retrofit");
}

BOOST_AUTO_TEST_CASE(constant_airflow_is_never_replaced_by_a_plain_motor_without_saying_what_is_lost) {
    World w = blower();
    w.job.plate.family = known(Family::constant_airflow);
    w.motor().retrofit_for = {Family::constant_airflow};  // not even where a sheet claims it
    SAYS(w("family"), Verdict::does_not_fit, "loses constant airflow");
    w.job.plate.family = known(Family::constant_torque);
    SAYS(w("family"), Verdict::does_not_fit, "loses constant torque");
}

BOOST_AUTO_TEST_CASE(a_universal_motor_for_constant_airflow_is_said) {
    World w = retrofit();
    w.job.plate.family = known(Family::constant_airflow);
    SAYS(w("family"), Verdict::does_not_fit, "not listed as retrofit");
    w.motor().retrofit_for = {Family::constant_airflow};
    SAYS(w("family"), Verdict::fits_with_changes, "retrofit without constant airflow");
    BOOST_TEST(w("family").caution);
}

// A fault list of a furnace board: "blower fails to communicate".
BOOST_AUTO_TEST_CASE(a_communicating_system_gets_no_universal_motor) {
    World w = retrofit();
    w.job.plate.family = known(Family::communicating);
    w.motor().retrofit_for = {Family::communicating};
    SAYS(w("family"), Verdict::does_not_fit, "board gets no reply");
    w = blower();
    w.motor().family = Family::communicating;
    SAYS(w("family"), Verdict::does_not_fit, "nothing commands it");
}

BOOST_AUTO_TEST_CASE(the_other_barriers) {
    World w = blower();
    w.motor().family = Family::shaded_pole;
    SAYS(w("family"), Verdict::does_not_fit, "loses torque");
    w.motor().family = Family::three_phase;
    SAYS(w("family"), Verdict::does_not_fit, "other phase");
    w.motor().family = Family::constant_airflow;
    SAYS(w("family"), Verdict::does_not_fit, "needs its own program");
    w = inducer();
    w.motor().family = Family::capacitor_run;
    SAYS(w("family"), Verdict::does_not_fit, "not the specified kind");
}

// Field practice: on a belt its own kind, or one that starts with as much torque or more; a permanent-split motor has little.
BOOST_AUTO_TEST_CASE(a_motor_with_a_start_switch_is_replaced_by_one_that_starts_as_well) {
    using enum Family;
    struct Row {
        Family was, now;
        Verdict verdict;
        const char* reason;
    };
    for (const Row& row :
         {Row{split_phase, split_phase, Verdict::fits, "same family"},
          Row{split_phase, capacitor_start, Verdict::fits, "starts at least as well"},
          Row{split_phase, capacitor_start_and_run, Verdict::fits, "starts at least as well"},
          Row{capacitor_start, capacitor_start_and_run, Verdict::fits, "starts at least as well"},
          Row{capacitor_start_and_run, capacitor_start, Verdict::fits, "starts at least as well"},
          Row{capacitor_start, split_phase, Verdict::does_not_fit, "loses torque"},
          Row{split_phase, capacitor_run, Verdict::does_not_fit, "loses torque"},
          Row{capacitor_start, shaded_pole, Verdict::does_not_fit, "loses torque"},
          Row{split_phase, three_phase, Verdict::does_not_fit, "other phase"},
          Row{capacitor_run, split_phase, Verdict::does_not_fit, "not listed as retrofit"},
          Row{split_phase, constant_torque, Verdict::does_not_fit, "not listed as retrofit"}}) {
        World w = blower();
        w.job.plate.family = known(row.was);
        w.motor().family = row.now;
        w.motor().retrofit_for = {};
        SAYS(w("family"), row.verdict, row.reason);
        BOOST_TEST(w("family").caution == (std::string_view(row.reason) == "starts at least as well"));
    }
}

BOOST_AUTO_TEST_CASE(an_unknown_or_inferred_family_is_a_question) {
    World w = blower();
    w.motor().family.reset();
    SAYS(w("family"), Verdict::not_shown, "part does not say");
    w.job.plate.family = known(Family::capacitor_run, Origin::guessed);
    SAYS(w("family"), Verdict::not_shown, "family not stated");
    SAYS(module_job()("family"), Verdict::fits, "same family");
}

}  // namespace endbell::rule_tests
