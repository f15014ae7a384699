// Every reading against its threshold. Values: worked examples of trade practice, computed by hand beside
// each line; thresholds from the documents that the rows of limits name.
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "tests/diagnosis/jobs.hpp"

using namespace endbell;
using namespace endbell::jobs;

namespace {

Evidence tested(const FailedUnit& job, Test test) {
    const Diagnosis d = diagnose(job, facts_of(job, limits), limits);
    const Evidence* found = row(d, test);
    BOOST_REQUIRE_MESSAGE(found != nullptr, "a row of " << test);
    return *found;
}

struct LineCase {
    PlateVolts plate;
    double supply;  // nominal, 0: not known
    double measured;
    Verdict verdict;
    TestReason reason;
};

}  // namespace

BOOST_AUTO_TEST_CASE(line_volts_pass_within_ten_percent_of_the_plate) {
    // NEMA MG 1 12.44.1: +/-10 %. 230: 207.0 to 253.0; 208-230: 187.2 to 253.0; 115: 103.5 to 126.5.
    const LineCase cases[] = {
        // 206 V is low at 230 V and usual at 208: what feeds the building decides.
        {plate_volts(230), 0, 206, Verdict::not_shown, TestReason::supply_not_stated},
        {plate_volts(230), 230, 206, Verdict::does_not_fit, TestReason::too_low},
        {plate_volts(230), 208, 200, Verdict::fits, TestReason::in_band},
        {plate_volts(230), 0, 207, Verdict::fits, TestReason::in_band},
        {plate_volts(230), 208, 208, Verdict::fits, TestReason::in_band},
        {plate_volts(230), 0, 253, Verdict::fits, TestReason::in_band},
        {plate_volts(230), 230, 254, Verdict::does_not_fit, TestReason::too_high},  // +10.43 %
        {plate_volts(208, 230), 0, 187.2, Verdict::fits, TestReason::in_band},
        {plate_volts(208, 230), 0, 187.0, Verdict::does_not_fit, TestReason::too_low},
        {plate_volts(208, 230), 208, 190, Verdict::fits_with_changes, TestReason::below_range_a},
        {plate_volts(208, 230), 208, 204, Verdict::fits, TestReason::in_band},
        {plate_volts(115), 0, 126.5, Verdict::fits, TestReason::in_band},
        {plate_volts(230), 230, 277, Verdict::does_not_fit, TestReason::too_high},  // +20.4 %
        {plate_volts(230), 0, 277, Verdict::not_shown, TestReason::supply_not_stated},
        {plate_volts(265), 0, 277, Verdict::fits, TestReason::in_band},  // +4.53 %
        {plate_volts(208), 0, 240, Verdict::not_shown, TestReason::supply_not_stated},
        {plate_volts(208), 208, 240, Verdict::does_not_fit, TestReason::too_high},  // +15.38 %
        {plate_volts(230), 0, 0, Verdict::does_not_fit, TestReason::no_voltage},
        {plate_volts(230), 0, 4, Verdict::does_not_fit, TestReason::no_voltage},
    };
    for (const LineCase& c : cases) {
        FailedUnit job = of(Family::constant_torque, {Symptom::no_run});
        job.plate.volts = known(std::vector{c.plate});
        if (c.supply > 0) job.equipment.supply = known(bare_supply(volt(c.supply)));
        job.measured.line_volts = known<LineVolts>(volt(c.measured));
        const Evidence found = tested(job, Test::line_volts);
        BOOST_TEST_CONTEXT(c.plate.low.in(volt)
                           << "-" << c.plate.high.in(volt) << " V, measured " << c.measured) {
            BOOST_TEST(found.verdict == c.verdict);
            BOOST_TEST(found.reason == c.reason);
        }
    }
}

BOOST_AUTO_TEST_CASE(a_reconnectable_plate_is_judged_by_its_nearest_rating) {
    FailedUnit job = of(Family::capacitor_run, {Symptom::no_run});
    job.plate.volts = known(std::vector{plate_volts(115), plate_volts(208, 230)});
    for (double good : {118.0, 200.0, 240.0}) {
        job.measured.line_volts = known<LineVolts>(volt(good));
        BOOST_TEST(tested(job, Test::line_volts).verdict == Verdict::fits);
    }
    job.measured.line_volts = known<LineVolts>(volt(160));
    BOOST_TEST(tested(job, Test::line_volts).verdict == Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(line_volts_without_plate_volts_are_open) {
    FailedUnit job = of(Family::constant_torque, {Symptom::no_run});
    job.plate.volts = {};
    job.measured.line_volts = known<LineVolts>(volt(236));
    const Evidence found = tested(job, Test::line_volts);
    BOOST_TEST(found.verdict == Verdict::not_shown);
    BOOST_TEST(found.asks == "plate.volts");
}

// A guess is shown and never decides: it neither agrees nor stands in a band.
BOOST_AUTO_TEST_CASE(a_guess_is_no_reading) {
    FailedUnit job = of(Family::capacitor_run, {Symptom::hums});
    job.measured.line_volts = known<LineVolts>(volt(236), Origin::guessed);
    job.measured.capacitor = known(microfarad(7.5), Origin::guessed);
    job.measured.spins_free = known(true, Origin::guessed);
    BOOST_TEST(tested(job, Test::line_volts).verdict == Verdict::not_shown);
    BOOST_TEST(tested(job, Test::capacitor).verdict == Verdict::not_shown);
    BOOST_TEST(tested(job, Test::spins_free).verdict == Verdict::not_shown);
    job.plate.current = known(ampere(2.4), Origin::guessed);
    job.equipment.fan_amps = known(ampere(2.4));
    BOOST_TEST(row(diagnose(job, facts_of(job, limits), limits), Test::plate_agrees) == nullptr);
}

BOOST_AUTO_TEST_CASE(what_agrees_is_named) {
    FailedUnit job = of(Family::capacitor_run, {Symptom::hums});
    job.equipment.supply = known(bare_supply(volt(230)));
    const Evidence volts_alone = tested(job, Test::plate_agrees);
    BOOST_TEST(volts_alone.job_key == "plate.volts");
    BOOST_TEST(volts_alone.measured.known());
    job.plate.current = known(ampere(2.4));
    job.equipment.fan_amps = known(ampere(2.4));
    BOOST_TEST(tested(job, Test::plate_agrees).job_key == "plate.current");
}

BOOST_AUTO_TEST_CASE(a_tap_enables_from_12_to_33_volts) {
    // Two equipment manuals: 12 to 33 V ac between tap and C.
    const std::pair<double, Verdict> cases[] = {{11.9, Verdict::does_not_fit}, {12, Verdict::fits},
                                                {24, Verdict::fits},           {33, Verdict::fits},
                                                {33.1, Verdict::does_not_fit}, {0, Verdict::does_not_fit}};
    for (const auto& [volts, verdict] : cases) {
        FailedUnit job = of(Family::constant_torque, {Symptom::no_run});
        job.measured.control_volts = known(volt(volts));
        BOOST_TEST(tested(job, Test::control_volts).verdict == verdict);
    }
}

BOOST_AUTO_TEST_CASE(each_signal_class_has_its_own_window) {
    FailedUnit job = of(Family::communicating, {Symptom::no_run});
    job.measured.control_volts = known(volt(12));
    BOOST_TEST(tested(job, Test::control_volts).verdict == Verdict::not_shown);  // class not known
    BOOST_TEST(tested(job, Test::control_volts).asks == "plate.signal");
    job.plate.signal = known(SignalClass::serial);  // 3 to 15 V dc idle
    BOOST_TEST(tested(job, Test::control_volts).verdict == Verdict::fits);
    job.measured.control_volts = known(volt(2));
    BOOST_TEST(tested(job, Test::control_volts).verdict == Verdict::does_not_fit);
    job.plate.signal = known(SignalClass::pulse);  // 9 to 23 V dc
    job.measured.control_volts = known(volt(22.9));
    BOOST_TEST(tested(job, Test::control_volts).verdict == Verdict::fits);
    job.measured.control_volts = known(volt(24));  // a little over one manual's window: no control fault
    BOOST_TEST(tested(job, Test::control_volts).verdict == Verdict::not_shown);
    BOOST_TEST(tested(job, Test::control_volts).asks == "measured.control_kind");
    job.measured.control_kind = known(ControlVoltsKind::dc);
    BOOST_TEST(tested(job, Test::control_volts).asks == "plate.program");
    job.plate.program = known(std::string("P-1"));
    BOOST_TEST(tested(job, Test::control_volts).verdict == Verdict::fits_with_changes);
    job.measured.control_kind = known(ControlVoltsKind::ac);
    BOOST_TEST(tested(job, Test::control_volts).asks == "plate.signal");
    job.measured.control_kind = known(ControlVoltsKind::dc);
    job.measured.control_volts = known(volt(31));
    BOOST_TEST(tested(job, Test::control_volts).verdict == Verdict::does_not_fit);

    FailedUnit line = of(Family::constant_torque, {Symptom::no_run});
    line.plate.signal = known(SignalClass::line_signal);
    line.measured.control_volts = known(volt(24));
    BOOST_TEST(tested(line, Test::control_volts).verdict == Verdict::does_not_fit);
    line.measured.control_volts = known(volt(231));
    BOOST_TEST(tested(line, Test::control_volts).verdict == Verdict::fits);
    line.plate.signal = {};
    BOOST_TEST(tested(line, Test::control_volts).verdict == Verdict::not_shown);
    BOOST_TEST(tested(line, Test::control_volts).asks == "plate.signal");
}

BOOST_AUTO_TEST_CASE(two_live_taps_are_judged_by_the_tap_rule) {
    FailedUnit job = of(Family::constant_torque, {Symptom::runs_slow});
    job.measured.live_taps = known(std::vector{1, 4});
    BOOST_TEST(tested(job, Test::live_taps).verdict == Verdict::not_shown);
    BOOST_TEST(tested(job, Test::live_taps).reason == TestReason::priority_not_stated);
    job.plate.tap_rule = known(TapRule::highest_tap_wins);  // one documented design runs tap 4
    BOOST_TEST(tested(job, Test::live_taps).verdict == Verdict::fits_with_changes);
    BOOST_TEST(tested(job, Test::live_taps).reason == TestReason::highest_tap_runs);
    job.plate.tap_rule = known(TapRule::one_tap_only);
    BOOST_TEST(tested(job, Test::live_taps).verdict == Verdict::does_not_fit);
    job.measured.live_taps = known(std::vector{4});
    BOOST_TEST(tested(job, Test::live_taps).verdict == Verdict::fits);
    job.measured.live_taps = known(std::vector<int>{});
    BOOST_TEST(tested(job, Test::live_taps).reason == TestReason::no_tap_live);
}

namespace {
struct WindingCase {
    std::vector<double> ohms;
    Verdict most, balance, spread;
};
}  // namespace

BOOST_AUTO_TEST_CASE(three_windings_pass_only_when_all_three_manuals_pass_them) {
    constexpr Verdict good = Verdict::fits, bad = Verdict::does_not_fit;
    const WindingCase cases[] = {
        {{4.9, 5.0, 5.1}, good, good, good},    // off mean 2.0 %
        {{4.0, 5.0, 5.0}, good, bad, good},     // mean 4.667, off 14.29 %: within an ohm, not within 10 %
        {{2.0, 2.2, 2.3}, good, good, good},    // mean 2.167, off 7.69 %
        {{21.0, 21.5, 22.0}, bad, good, good},  // 2.3 %, 1.0 ohm apart, but over 20 ohm
        {{20.0, 20.0, 20.0}, bad, good, good},  // "below 20": 20 is not
        {{19.9, 19.9, 19.9}, good, good, good},
        {{13.0, 14.0, 14.5}, good, good, bad},   // 1.5 ohm apart; mean 13.83, off 6.0 %
        {{9.0, 10.0, 11.0}, good, good, bad},    // exactly 10 % of the mean passes; 2 ohm apart
        {{15.1, 15.6, 16.1}, good, good, good},  // exactly an ohm apart
        {{0.6, 0.6, 0.8}, good, bad, good},      // mean 0.6667, off 20 %
    };
    for (const WindingCase& c : cases) {
        FailedUnit job = of(Family::constant_airflow, {Symptom::no_run});
        set_windings(job, c.ohms);
        BOOST_TEST_CONTEXT(c.ohms[0] << "/" << c.ohms[1] << "/" << c.ohms[2]) {
            BOOST_TEST(tested(job, Test::winding_most).verdict == c.most);
            BOOST_TEST(tested(job, Test::winding_balance).verdict == c.balance);
            BOOST_TEST(tested(job, Test::winding_spread).verdict == c.spread);
        }
    }
}

BOOST_AUTO_TEST_CASE(balance_is_the_largest_deviation_over_the_mean) {
    FailedUnit job = of(Family::constant_airflow, {Symptom::no_run});
    set_windings(job, {2.0, 2.2, 2.3});  // (2.16667 - 2.0) / 2.16667 = 0.076923
    BOOST_TEST(std::get<double>(tested(job, Test::winding_balance).measured.value) == 0.076923,
               boost::test_tools::tolerance(1e-4));
    set_windings(job, {4.0, 5.0, 5.0});  // (4.66667 - 4) / 4.66667 = 0.142857
    BOOST_TEST(std::get<double>(tested(job, Test::winding_balance).measured.value) == 0.142857,
               boost::test_tools::tolerance(1e-4));
}

BOOST_AUTO_TEST_CASE(windings_count_only_with_the_rotor_held) {
    FailedUnit job = of(Family::constant_airflow, {Symptom::no_run});
    set_windings(job, {2.0, 9.0, 18.0});  // swinging ohms
    job.measured.rotor_held = {};
    BOOST_TEST(tested(job, Test::winding_balance).verdict == Verdict::not_shown);
    BOOST_TEST(tested(job, Test::winding_balance).asks == "measured.rotor_held");
    job.measured.rotor_held = known(false);
    BOOST_TEST(tested(job, Test::winding_balance).verdict == Verdict::not_shown);
    BOOST_TEST(tested(job, Test::winding_balance).asks == "measured.windings");
    BOOST_TEST(diagnose(job, facts_of(job, limits), limits).fault == Fault::not_shown);
}

BOOST_AUTO_TEST_CASE(zero_negative_or_too_few_ohms_are_not_usable) {
    for (const std::vector<double>& ohms : {std::vector{0.0, 0.0, 0.0}, {-3.0, 5.0, 9.0}, {5.0, 5.0}}) {
        FailedUnit job = of(Family::constant_torque, {Symptom::no_run});
        set_windings(job, ohms);
        BOOST_TEST(tested(job, Test::winding_balance).verdict == Verdict::not_shown);
        BOOST_TEST(diagnose(job, facts_of(job, limits), limits).fault == Fault::not_shown);
    }
}

BOOST_AUTO_TEST_CASE(an_open_winding_fails_unless_it_may_only_be_hot) {
    FailedUnit job = of(Family::constant_airflow, {Symptom::no_run});
    set_windings(job, {5.0, open_line, open_line});
    BOOST_TEST(tested(job, Test::winding_open).verdict == Verdict::does_not_fit);
    job.measured.symptoms = known(std::vector{Symptom::no_run, Symptom::trips_hot});
    BOOST_TEST(tested(job, Test::winding_open).verdict == Verdict::not_shown);
    BOOST_TEST(tested(job, Test::winding_open).reason == TestReason::test_again_cold);
}

BOOST_AUTO_TEST_CASE(only_an_open_winding_speaks_on_a_single_phase_induction_motor) {
    FailedUnit job = of(Family::capacitor_run, {Symptom::no_run});
    set_windings(job, {12.0, 31.0, 43.0});  // run, start, and both in series: unequal by design
    const Diagnosis d = diagnose(job, facts_of(job, limits), limits);
    BOOST_TEST(row(d, Test::winding_open)->verdict == Verdict::fits);
    BOOST_TEST(row(d, Test::winding_balance) == nullptr);
    BOOST_TEST(d.fault == Fault::not_shown);
}

BOOST_AUTO_TEST_CASE(insulation_passes_above_100_kilohm_only) {
    const std::pair<double, Verdict> cases[] = {{85e3, Verdict::does_not_fit},
                                                {100e3, Verdict::does_not_fit},
                                                {100.1e3, Verdict::fits},
                                                {open_line, Verdict::fits},
                                                {0.0, Verdict::does_not_fit}};
    for (const auto& [ohms, verdict] : cases) {
        FailedUnit job = of(Family::constant_airflow, {Symptom::no_run});
        job.measured.winding_to_shell = known(ohm(ohms));
        BOOST_TEST(tested(job, Test::winding_to_shell).verdict == verdict);
    }
}

namespace {
struct CapacitorCase {
    double plate, reading;
    Verdict verdict;
    TestReason reason;
};
}  // namespace

BOOST_AUTO_TEST_CASE(a_metered_capacitor_is_good_marginal_or_to_be_replaced) {
    // Trade practice: good within 6 %, to be replaced beyond 10 %.
    const CapacitorCase cases[] = {
        {10, 9.4, Verdict::fits, TestReason::good},
        {10, 9.39, Verdict::fits_with_changes, TestReason::marginal},
        {10, 9.0, Verdict::fits_with_changes, TestReason::marginal},
        {10, 8.99, Verdict::does_not_fit, TestReason::replace},
        {5, 5.3, Verdict::fits, TestReason::good},
        {5, 5.6, Verdict::does_not_fit, TestReason::replace},
        {7.5, 0, Verdict::does_not_fit, TestReason::open},
        {7.5, open_line, Verdict::does_not_fit, TestReason::over_range},
    };
    for (const CapacitorCase& c : cases) {
        FailedUnit job = of(Family::capacitor_run, {Symptom::hums});
        job.plate.capacitor = known(microfarad(c.plate));
        job.measured.capacitor = known(microfarad(c.reading));
        BOOST_TEST_CONTEXT(c.reading << " of " << c.plate) {
            BOOST_TEST(tested(job, Test::capacitor).verdict == c.verdict);
            BOOST_TEST(tested(job, Test::capacitor).reason == c.reason);
        }
    }
}

BOOST_AUTO_TEST_CASE(a_running_capacitor_is_found_from_volts_and_amps) {
    // C = 1e6 I / (2 pi f V): 2652.58 I/V at 60 Hz, 3183.10 I/V at 50 Hz.
    FailedUnit job = of(Family::capacitor_run, {Symptom::runs_slow});
    const auto found = [&] { return tested(job, Test::capacitor); };
    job.plate.frequency = known(hertz(60));
    job.plate.capacitor = known(microfarad(70));
    job.measured.capacitor_amps = known(ampere(8.3));
    job.measured.capacitor_volts = known(volt(295.4));  // 74.53 uF, +6.47 %
    BOOST_TEST(std::get<Capacitance>(found().measured.value).in(microfarad) == 74.53,
               boost::test_tools::tolerance(1e-3));
    BOOST_TEST(found().verdict == Verdict::fits_with_changes);

    job.plate.capacitor = known(microfarad(10));
    job.measured.capacitor_amps = known(ampere(1.43));
    job.measured.capacitor_volts = known(volt(379));  // 10.008 uF
    BOOST_TEST(std::get<Capacitance>(found().measured.value).in(microfarad) == 10.006,
               boost::test_tools::tolerance(1e-3));
    BOOST_TEST(found().verdict == Verdict::fits);
    job.plate.frequency = known(hertz(50));  // 12.01 uF
    BOOST_TEST(std::get<Capacitance>(found().measured.value).in(microfarad) == 12.01,
               boost::test_tools::tolerance(1e-3));
    BOOST_TEST(found().verdict == Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(the_hertz_of_a_running_capacitor_is_not_guessed_from_230_volts) {
    FailedUnit job = of(Family::capacitor_run, {Symptom::runs_slow});
    job.measured.capacitor_amps = known(ampere(1.0));
    job.measured.capacitor_volts = known(volt(354));                    // 7.49 uF at 60 Hz
    BOOST_TEST(tested(job, Test::capacitor).verdict == Verdict::fits);  // 208-230: a 60 Hz system
    BOOST_CHECK(tested(job, Test::capacitor).measured.origin == Origin::implied);
    job.plate.volts = known(std::vector{plate_volts(230)});
    job.plate.speed = known(rpm(825));  // eight poles at 60 Hz, six at 50
    BOOST_TEST(tested(job, Test::capacitor).verdict == Verdict::not_shown);
    BOOST_TEST(tested(job, Test::capacitor).asks == "plate.frequency");
}

BOOST_AUTO_TEST_CASE(a_bulged_capacitor_is_replaced_whatever_it_reads) {
    FailedUnit job = of(Family::capacitor_run, {Symptom::hums});
    job.measured.capacitor = known(microfarad(7.5));
    job.measured.capacitor_bulged = known(true);
    BOOST_TEST(diagnose(job, facts_of(job, limits), limits).fault == Fault::capacitor);
}

BOOST_AUTO_TEST_CASE(the_total_static_needs_both_sides_with_their_signs) {
    FailedUnit job = of(Family::capacitor_run, {Symptom::weak_air});
    job.measured.static_supply = known(inch_water(0.85));
    BOOST_TEST(tested(job, Test::static_total).verdict == Verdict::not_shown);
    BOOST_TEST(tested(job, Test::static_total).asks == "measured.static_return");
    job.measured.static_return = known(inch_water(0.2));  // a return side cannot push
    BOOST_TEST(tested(job, Test::static_total).reason == TestReason::wrong_signs);
    job.measured.static_supply = known(inch_water(0.35));
    job.measured.static_return = known(inch_water(-0.45));  // 0.80: not above 0.8
    BOOST_TEST(tested(job, Test::static_total).verdict == Verdict::fits_with_changes);
    BOOST_TEST(tested(job, Test::static_total).reason == TestReason::above_plate);
    job.measured.static_return = known(inch_water(-0.46));  // 0.81
    BOOST_TEST(tested(job, Test::static_total).verdict == Verdict::does_not_fit);
    job.measured.static_return = known(inch_water(-0.15));  // 0.50: the usual plate maximum
    BOOST_TEST(tested(job, Test::static_total).verdict == Verdict::fits);
    job.equipment.static_limit = known(inch_water(0.4));
    BOOST_TEST(tested(job, Test::static_total).verdict == Verdict::fits_with_changes);
}

BOOST_AUTO_TEST_CASE(rise_filter_air_and_amps_have_their_thresholds) {
    FailedUnit job = of(Family::capacitor_run, {Symptom::weak_air});
    job.equipment.rise_low = known(fahrenheit_degree(35));
    job.equipment.rise_high = known(fahrenheit_degree(65));
    job.measured.rise = known(fahrenheit_degree(65.43));
    BOOST_TEST(tested(job, Test::rise).reason == TestReason::too_little_air);
    job.measured.rise = known(fahrenheit_degree(65));
    BOOST_TEST(tested(job, Test::rise).verdict == Verdict::fits);
    job.measured.rise = known(fahrenheit_degree(30));
    BOOST_TEST(tested(job, Test::rise).reason == TestReason::too_much_air);

    job.measured.filter_drop = known(inch_water(0.30));
    BOOST_TEST(tested(job, Test::filter_drop).verdict == Verdict::fits);
    job.measured.filter_drop = known(inch_water(0.31));
    BOOST_TEST(tested(job, Test::filter_drop).verdict == Verdict::does_not_fit);

    job.equipment.cooling = known(ton_cooling(3));
    job.measured.airflow = known(cfm(870));  // 290 a ton
    BOOST_TEST(tested(job, Test::airflow).verdict == Verdict::does_not_fit);
    job.measured.airflow = known(cfm(900));
    BOOST_TEST(tested(job, Test::airflow).verdict == Verdict::fits);
    // At 5,000 ft air has .8321 of the density (psychrolib): 1,050 cfm carry what 291 a ton of standard air do, 1,085 what 301.
    job.equipment.altitude = known(foot(5000));
    job.measured.airflow = known(cfm(1050));
    BOOST_TEST(tested(job, Test::airflow).verdict == Verdict::does_not_fit);
    job.measured.airflow = known(cfm(1085));
    BOOST_TEST(tested(job, Test::airflow).verdict == Verdict::fits);

    job.plate.current = known(ampere(2.6));
    job.measured.amps = known<LineAmps>(ampere(2.6));
    BOOST_TEST(tested(job, Test::amps).verdict == Verdict::fits);
    job.measured.amps = known<LineAmps>(ampere(2.7));
    BOOST_TEST(tested(job, Test::amps).verdict == Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(a_plate_that_disagrees_with_the_unit_is_seen) {
    FailedUnit job = of(Family::capacitor_run, {Symptom::no_run});
    job.plate.current = known(ampere(3.1));
    job.equipment.fan_amps = known(ampere(1.9));
    BOOST_TEST(tested(job, Test::plate_agrees).reason == TestReason::amps_over_unit);
    job.equipment.supply = known(bare_supply(volt(115)));
    BOOST_TEST(tested(job, Test::plate_agrees).reason == TestReason::volts_not_of_unit);
}

BOOST_AUTO_TEST_CASE(every_row_names_a_source_and_a_limit_that_exist) {
    for (Family family : {Family::shaded_pole, Family::capacitor_run, Family::three_phase,
                          Family::constant_torque, Family::constant_airflow, Family::communicating}) {
        FailedUnit job = of(family, {Symptom::no_run, Symptom::weak_air});
        all_good(job);
        job.measured.static_total = known(inch_water(0.9));
        job.measured.filter_drop = known(inch_water(0.1));
        job.measured.live_taps = known(std::vector{1});
        for (const Evidence& e : diagnose(job, facts_of(job, limits), limits).evidence) {
            BOOST_TEST_CONTEXT(e.test) {
                BOOST_CHECK_NO_THROW(source(e.source));
                if (!e.limit_id.empty()) BOOST_TEST((limits.find(e.limit_id) != nullptr));
                BOOST_TEST(!e.job_key.empty());
                BOOST_TEST(word(e.reason) != "?");
            }
        }
    }
}

BOOST_AUTO_TEST_CASE(a_tightened_limit_decides) {
    Limits shop;
    BOOST_CHECK(shop.tighten("winding.balance", 0.05, "this shop") == Limits::Tightening::accepted);
    FailedUnit job = of(Family::constant_airflow, {Symptom::no_run});
    set_windings(job, {2.0, 2.2, 2.3});  // off 7.69 %
    BOOST_TEST(diagnose(job, facts_of(job, shop), shop).fault == Fault::motor_and_module);
    BOOST_TEST(diagnose(job, facts_of(job, limits), limits).fault == Fault::not_shown);
}
