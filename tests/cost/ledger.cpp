#include <boost/test/unit_test.hpp>

#include "cost_world.hpp"

using namespace endbell;
using namespace endbell::cost_world;

BOOST_AUTO_TEST_CASE(margin_labour_trip_and_tax_on_parts_add_up_to_902_38) {
    // 185 at 60 % margin 462.50; 2.5 h at 125 = 312.50; trip 95; 7 % of 462.50 = 32.375, half away from
    // zero 32.38.
    const CostOption option = ledger(job(), {priced(motor("M-1"), offer("M-1", 18'500))}).options.at(0);
    BOOST_TEST(line(option, LineKind::part)->minor() == 46'250);
    BOOST_TEST(line(option, LineKind::labour)->minor() == 31'250);
    BOOST_TEST(line(option, LineKind::trip)->minor() == 9'500);
    BOOST_TEST(line(option, LineKind::tax)->minor() == 3'238);
    BOOST_REQUIRE(option.today);
    BOOST_TEST(option.today->minor() == 90'238);
    BOOST_TEST((option.way == WayOut::motor));
    BOOST_TEST((option.lines.at(0).priced_by == PricedBy::margin));
    BOOST_TEST(option.lines.at(0).cost->minor() == 18'500);
}

BOOST_AUTO_TEST_CASE(tax_on_parts_and_labour_is_rounded_once) {
    FailedUnit j = job();
    j.shop.labour_tax = known(percent(7));
    // 7 % of 462.50 + 312.50 + 95.00 = 60.90; two roundings would give 60.91.
    BOOST_TEST(
        line(ledger(j, {priced(motor("M-1"), offer("M-1", 18'500))}).options.at(0), LineKind::tax)->minor() ==
        6'090);
}

BOOST_AUTO_TEST_CASE(an_emergency_rate_adds_half_of_the_labour) {
    FailedUnit j = job();
    j.shop.emergency = known(percent(150));
    BOOST_TEST(
        line(ledger(j, {priced(motor("M-1"), offer("M-1", 18'500))}).options.at(0), LineKind::emergency)
            ->minor() == 15'625);
}

BOOST_AUTO_TEST_CASE(a_markup_is_on_cost_and_a_margin_is_of_price) {
    FailedUnit j = job();
    j.shop.margin = {};
    j.shop.markup = known(percent(100));
    const CostOption marked = ledger(j, {priced(motor("M-1"), offer("M-1", 18'500))}).options.at(0);
    BOOST_TEST(line(marked, LineKind::part)->minor() == 37'000);
    BOOST_TEST((marked.lines.at(0).priced_by == PricedBy::markup));
    j.shop.margin = known(percent(60));
    const CostOption both = ledger(j, {priced(motor("M-1"), offer("M-1", 18'500))}).options.at(0);
    BOOST_TEST(!both.today);
    BOOST_TEST(has(both.lacking, "shop.markup and shop.margin"));
}

BOOST_AUTO_TEST_CASE(a_missing_price_a_stale_one_and_another_currency_each_leave_the_total_open) {
    for (const auto& spoil :
         {+[](Offer& o) { o.price.reset(); }, +[](Offer& o) { o.as_of = date_of(2025, 12, 1); },
          +[](Offer& o) { o.as_of.reset(); }, +[](Offer& o) { o.as_of = date_of(2026, 2, 30); },
          +[](Offer& o) { o.price = Money(18'500, *currency("CAD")); }}) {
        Offer o = offer("M-1", 18'500);
        spoil(o);
        const CostOption option = ledger(job(), {priced(motor("M-1"), o)}).options.at(0);
        BOOST_TEST(!option.today);
        BOOST_TEST(!option.per_year);
        BOOST_TEST(has(option.lacking, "offers M-1"));
        BOOST_TEST(option.so_far.has_value());
    }
    BOOST_TEST(has(ledger(job(), {priced(motor("M-1"), std::nullopt)}).options.at(0).lacking, "offers M-1"));
}

BOOST_AUTO_TEST_CASE(a_stale_price_is_shown_as_stale_and_thirty_days_are_not_yet_stale) {
    Offer o = offer("M-1", 18'500);
    o.as_of = date_of(2025, 12, 16);  // 30 days before 2026-01-15: limit price.age
    BOOST_TEST(ledger(job(), {priced(motor("M-1"), o)}).options.at(0).today.has_value());
    BOOST_TEST((ledger(job(), {priced(motor("M-1"), o)}).options.at(0).good_until == date_of(2026, 1, 15)));
    o.as_of = date_of(2025, 12, 15);
    const CostOption option = ledger(job(), {priced(motor("M-1"), o)}).options.at(0);
    BOOST_TEST(option.lines.at(0).stale);
    BOOST_TEST(!option.today);
}

BOOST_AUTO_TEST_CASE(without_a_date_the_age_of_a_price_is_a_question) {
    FailedUnit j = job();
    j.shop.as_of = {};
    const CostOption option = ledger(j, {priced(motor("M-1"), offer("M-1", 18'500))}).options.at(0);
    BOOST_TEST(!option.today);
    BOOST_TEST(has(option.lacking, "shop.as_of"));
}

BOOST_AUTO_TEST_CASE(an_unknown_hour_figure_or_labour_rate_is_a_question) {
    PlainCatalog c = shop();
    c.labour_list.clear();
    BOOST_TEST(has(ledger(job(), {priced(motor("M-1"), offer("M-1", 18'500))}, c).options.at(0).lacking,
                   "labour motor swap"));
    FailedUnit j = job();
    j.shop.labour_rate = {};
    const CostOption option = ledger(j, {priced(motor("M-1"), offer("M-1", 18'500))}).options.at(0);
    BOOST_TEST(has(option.lacking, "shop.labour_rate"));
    BOOST_TEST(!option.today);
}

BOOST_AUTO_TEST_CASE(a_part_that_comes_later_costs_a_second_visit) {
    const CostOption option = ledger(job(), {priced(motor("M-1"), offer("M-1", 18'500, 0, 4))}).options.at(0);
    BOOST_TEST(line(option, LineKind::second_visit)->minor() == 9'500);
    BOOST_TEST(*option.lead_days == 4);
    Offer o = offer("M-1", 18'500, 0);
    o.lead_days.reset();
    const CostOption unknown = ledger(job(), {priced(motor("M-1"), o)}).options.at(0);
    BOOST_TEST(!unknown.lead_days);
    BOOST_TEST(has(unknown.not_counted, NotCounted::lead_time));
    BOOST_TEST(!line(unknown, LineKind::second_visit));
}

BOOST_AUTO_TEST_CASE(a_core_credit_comes_off_after_tax) {
    Offer o = offer("M-1", 18'500);
    o.core_credit = cents(2'000);
    const CostOption option = ledger(job(), {priced(motor("M-1"), o)}).options.at(0);
    BOOST_TEST(line(option, LineKind::tax)->minor() == 3'238);
    BOOST_TEST(line(option, LineKind::core_credit)->minor() == -2'000);
    BOOST_TEST(option.today->minor() == 88'238);
}

BOOST_AUTO_TEST_CASE(kit_parts_and_their_work_are_lines_of_their_own) {
    PricedCandidate c = priced(motor("M-1", Family::constant_torque), offer("M-1", 18'500));
    c.kit.parts.push_back({"B-1", offer("B-1", 400), {0}});
    c.kit.work.push_back({ShopTask::airflow_setup, 1000, {1}, true, "shop table"});
    const CostOption option = ledger(job(), {c}).options.at(0);
    BOOST_TEST(line(option, LineKind::kit_part)->minor() == 1'000);
    BOOST_TEST(line(option, LineKind::labour)->minor() == 50'000);  // 3.0 h retrofit swap + 1.0 h setup
    BOOST_TEST((option.way == WayOut::retrofit));
}

BOOST_AUTO_TEST_CASE(two_of_a_part_cost_its_rounded_price_twice) {
    PricedCandidate c = priced(motor("M-1"), offer("M-1", 18'500));
    c.kit.parts.push_back({"R-1", offer("R-1", 333), {0}, 2});
    const CostOption option = ledger(job(), {c}).options.at(0);
    BOOST_TEST(line(option, LineKind::kit_part)->minor() ==
               1'666);  // 3.33 at 60 % margin is 8.325, each 8.33
    BOOST_TEST(option.lines.at(1).count == 2);
}

BOOST_AUTO_TEST_CASE(a_kit_that_does_not_cure_everything_leaves_the_total_open) {
    PricedCandidate c = priced(motor("M-1"), offer("M-1", 18'500));
    c.kit.uncured.push_back(0);
    BOOST_TEST(has(ledger(job(), {c}).options.at(0).lacking, "kit M-1"));
}

BOOST_AUTO_TEST_CASE(ways_are_told_apart) {
    FailedUnit j = job();
    j.unit.old_part_number = known(std::string("m 1"));
    Part module;
    module.id = "C-1";
    module.kind = PartKind::module;
    module.module = Module{};
    j.equipment.replacement_price = known(cents(400'000));
    const Ledger all = ledger(
        j, {priced(motor("M-1"), offer("M-1", 1)), priced(motor("M-2"), offer("M-2", 1)),
            priced(motor("M-3", Family::constant_torque), offer("M-3", 1)), priced(module, offer("C-1", 1))});
    BOOST_REQUIRE(all.options.size() == 5);
    BOOST_TEST((all.options[0].way == WayOut::same_motor));
    BOOST_TEST((all.options[1].way == WayOut::motor));
    BOOST_TEST((all.options[2].way == WayOut::retrofit));
    BOOST_TEST((all.options[3].way == WayOut::module));
    BOOST_TEST((all.options[4].way == WayOut::equipment));
    BOOST_TEST(all.options[4].today->minor() == 400'000);
}

BOOST_AUTO_TEST_CASE(a_claimed_equal_of_the_plate_s_family_and_rating_is_the_same_motor) {
    FailedUnit j = job();
    j.plate.power = known(std::vector<Power>{horsepower(.5)});
    j.plate.volts = known(std::vector<PlateVolts>{plate_volts(115)});
    PricedCandidate c = priced(motor("M-1"), offer("M-1", 1));
    Rating rating;
    rating.power = horsepower(.5);
    rating.volts = plate_volts(115);
    c.candidate.part.motor->ratings = {rating};
    const auto way = [&] { return ledger(j, {c}).options.at(0).way; };
    BOOST_TEST((way() == WayOut::motor));
    c.candidate.cross_references.push_back({"OLD-1", "M-1", Relation::equivalent, "maker's table"});
    BOOST_TEST((way() == WayOut::same_motor));
    c.candidate.cross_references.front().relation = Relation::replaces;  // replaces says less than equal
    BOOST_TEST((way() == WayOut::motor));
    c.candidate.cross_references.front().relation = Relation::superseded_by;
    BOOST_TEST((way() == WayOut::same_motor));
    c.candidate.part.motor->ratings.front().power = horsepower(.75);
    BOOST_TEST((way() == WayOut::motor));
    j.unit.old_part_number = known(std::string("M 1"));
    BOOST_TEST((way() == WayOut::same_motor));
}

BOOST_AUTO_TEST_CASE(only_a_motor_made_to_stand_in_for_many_is_universal) {
    PricedCandidate c = priced(motor("M-1"), offer("M-1", 1));
    Motor& m = *c.candidate.part.motor;
    const auto way = [&] { return ledger(job(), {c}).options.at(0).way; };
    Rating low;
    low.power = horsepower(.25);
    low.volts = plate_volts(115);
    Rating other_volts = low;
    other_volts.volts = plate_volts(208, 230);
    m.ratings = {low, other_volts};  // two voltages: an ordinary motor
    BOOST_TEST((way() == WayOut::motor));
    Rating high = low;
    high.power = horsepower(.5);
    m.ratings = {low, high};
    BOOST_TEST((way() == WayOut::universal));
    m.ratings = {low};
    m.retrofit_for = {Family::shaded_pole};
    BOOST_TEST((way() == WayOut::universal));
}

BOOST_AUTO_TEST_CASE(energy_comes_from_each_call_s_tap_and_its_hours) {
    FailedUnit j = job();
    j.controls.cool_hours = known(1000.0);
    PricedCandidate c = priced(motor("M-1"), offer("M-1", 18'500));
    c.air = air(500, 400);
    const CostOption option = ledger(j, {c}).options.at(0);
    BOOST_REQUIRE(option.energy_lines.size() == 2);
    BOOST_TEST(!option.energy_lines[0].hours_assumed);
    BOOST_TEST(option.energy_lines[1].runs.in(hour) == 830);  // 10 CFR 430 App. AA, from memory
    BOOST_TEST(option.energy_lines[1].hours_assumed);
    BOOST_TEST(option.energy_per_year->in(kilowatt_hour) == 832, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(option.energy_cost->minor() == 13'312);  // 832 kWh at 0.16
}

BOOST_AUTO_TEST_CASE(a_call_of_unknown_power_makes_the_whole_energy_unknown) {
    PricedCandidate c = priced(motor("M-1"), offer("M-1", 18'500));
    c.air = air(500, 400);
    c.air.calls[1].tap.reset();
    c.air.calls[1].met = false;
    const CostOption option = ledger(job(), {c}).options.at(0);
    BOOST_TEST(!option.energy_per_year);
    BOOST_TEST(has(option.not_counted, NotCounted::energy));
}

BOOST_AUTO_TEST_CASE(yearly_costs_are_not_ranked_when_energy_is_known_for_some_only) {
    PricedCandidate a = priced(motor("M-1"), offer("M-1", 18'500));
    PricedCandidate b = priced(motor("M-2"), offer("M-2", 19'500));
    a.air = air(500, 400);
    const Ledger some = ledger(job(), {a, b});
    BOOST_TEST(*some.cheapest_today == 0);
    BOOST_TEST(!some.cheapest_per_year);
    b.air = air(200, 150);
    BOOST_TEST(*ledger(job(), {a, b}).cheapest_per_year == 1);
}

BOOST_AUTO_TEST_CASE(a_rate_is_real_or_nominal_never_both) {
    FailedUnit j = job();
    const PricedCandidate c = priced(motor("M-1"), offer("M-1", 18'500));
    BOOST_TEST((ledger(j, {c}).rate_kind == RateKind::real));
    BOOST_TEST(ledger(j, {c}).discount_rate == .03);
    BOOST_TEST(ledger(j, {c}).rate_source == "10-cfr-436.14");
    j.shop.nominal_discount_rate = known(percent(5));
    BOOST_TEST((ledger(j, {c}).rate_kind == RateKind::nominal));
    j.shop.energy_escalation = known(percent(1));
    const Ledger refused = ledger(j, {c});
    BOOST_TEST(has(refused.lacking, "shop.nominal_discount_rate and shop.energy_escalation"));
    BOOST_TEST(!refused.options.at(0).per_year);
    j.shop.real_discount_rate = known(percent(3));
    BOOST_TEST(has(ledger(j, {c}).lacking, "shop.real_discount_rate and shop.nominal_discount_rate"));
}

BOOST_AUTO_TEST_CASE(a_cost_a_year_is_over_the_option_s_own_life) {
    FailedUnit j = job();
    const PricedCandidate c = priced(motor("M-1"), offer("M-1", 18'500));
    BOOST_TEST(ledger(j, {c}).options.at(0).life.in(calendar_year) == 15);
    BOOST_TEST(ledger(j, {c}).options.at(0).per_year->minor() == 7'559);  // 902.38 x CRF(3 %, 15) = .0837666
    j.equipment.remaining_years = known(5.0);
    const CostOption ends = ledger(j, {c}).options.at(0);
    BOOST_TEST(ends.life_source == "equipment.remaining_years");
    BOOST_TEST(ends.per_year->minor() == 19'704);  // 902.38 x .2183546
}

BOOST_AUTO_TEST_CASE(a_cause_left_alone_is_expected_to_cost_the_job_again) {
    Diagnosis d;
    d.fault = Fault::motor;
    d.causes.push_back({Cause::high_static, "measured.static_total", "static-0.8", .12, .05});
    const Ledger l = ledger(job(), {priced(motor("M-1"), offer("M-1", 18'500))}, shop(), d);
    BOOST_TEST(l.options.at(0).recurrence_uncured->minor() == 10'829);  // 902.38 x .12 = 108.2856
    BOOST_TEST(l.options.at(0).recurrence_cured->minor() == 4'512);     // x .05 = 45.119
    BOOST_TEST(l.options.at(0).per_year->minor() == 7'559 + 10'829);
    BOOST_TEST(l.cure.total->minor() == 50'000);  // 4 h of duct repair
}

BOOST_AUTO_TEST_CASE(a_way_that_leaves_the_cause_says_so_and_a_capacitor_of_its_own_cures_a_failed_one) {
    Diagnosis d;
    d.fault = Fault::motor;
    d.causes.push_back({Cause::failed_capacitor, "measured.capacitor", "common-practice", .12, .05});
    PricedCandidate c = priced(motor("M-1"), offer("M-1", 18'500));
    const CostOption left = ledger(job(), {c}, shop(), d).options.at(0);
    BOOST_TEST(has(left.loses, Loss::cause_stays));
    BOOST_TEST(has(left.causes_left, Cause::failed_capacitor));
    c.kit.work.push_back({ShopTask::capacitor_swap, 500, {0}, true, "shop table"});
    const CostOption cured = ledger(job(), {c}, shop(), d).options.at(0);
    BOOST_TEST(!has(cured.loses, Loss::cause_stays));
    // 902.38 and 0.5 h at 125 = 964.88: x CRF(3 %, 15) .0837666 = 80.8247, and .05 of it 48.24
    BOOST_TEST(cured.per_year->minor() == 12'906);
}

BOOST_AUTO_TEST_CASE(one_duct_repair_cures_all_that_a_duct_does) {
    Diagnosis d;
    d.fault = Fault::airflow;
    d.causes.push_back({Cause::high_static, "measured.static_total", "static-0.8", .12, .05});
    d.causes.push_back({Cause::too_little_air, "measured.rise", "common-practice", .12, .05});
    const Ledger l = ledger(job(), {}, shop(), d);
    BOOST_TEST(l.options.at(0).today->minor() == 50'000 + 9'500);  // 4 h once, and the trip
    BOOST_TEST(l.cure.total->minor() == 50'000);
}

BOOST_AUTO_TEST_CASE(where_nothing_should_be_replaced_no_motor_is_the_cheapest) {
    Diagnosis d;
    d.fault = Fault::airflow;
    d.causes.push_back({Cause::high_static, "measured.static_total", "static-0.8", .12, .05});
    FailedUnit j = job();
    j.equipment.replacement_price = known(cents(10'000));
    PlainCatalog c = shop();
    c.labour_list.front().thousandth_hours = 100;
    const Ledger l = ledger(j, {priced(motor("M-1"), offer("M-1", 1'000))}, c, d);
    BOOST_REQUIRE(l.options.size() == 3);
    BOOST_TEST(l.repairs_only);
    BOOST_TEST(*l.cheapest_today == 0);
    BOOST_TEST(*l.cheapest_per_year == 0);
    BOOST_TEST(l.options[1].today->minor() == 13'425);  // 25.00, 0.1 h 12.50, trip 95.00, tax 1.75
    BOOST_TEST(!has(l.options[0].loses, Loss::cause_stays));
    BOOST_TEST(has(l.options[1].loses, Loss::cause_stays));
    BOOST_TEST(has(l.options[2].loses, Loss::cause_stays));
    // The kept motor, once lost, costs that motor: .05 of 134.25 is 6.7125.
    BOOST_TEST(l.options[0].recurrence_cured->minor() == 671);
    BOOST_TEST(l.options[1].recurrence_uncured->minor() == 1'611);
    // Without a total for the repair nothing is cheapest: the rest answers nothing.
    c.labour_list.clear();
    BOOST_TEST(!ledger(j, {priced(motor("M-1"), offer("M-1", 1'000))}, c, d).cheapest_today);
}

BOOST_AUTO_TEST_CASE(the_least_of_a_price_takes_the_lightest_swap_of_the_jobs_own_load) {
    FailedUnit j = job();
    j.unit.load = known(Load::outdoor_fan);
    PlainCatalog c = shop();
    for (LabourTask& task : c.labour_list) {
        if (task.id == "condenser motor swap") task.thousandth_hours = 500;  // less than any other swap
    }
    // 100.00 at 60 % margin 250.00, tax 17.50, 0.5 h 62.50, trip 95.00
    BOOST_TEST(least_today(j, cents(10'000), books_of(c), policy_of(j)).today->minor() == 42'500);
}

BOOST_AUTO_TEST_CASE(a_failed_capacitor_is_priced_as_a_capacitor_and_the_motor_stays) {
    FailedUnit j = job();
    j.plate.capacitor = known(microfarad(7.5));
    j.plate.capacitor_volts = known(volt(370));
    PlainCatalog c = shop();
    Part cap;
    cap.id = "C-1";
    cap.kind = PartKind::accessory;
    CureRow row{};
    row.cure = Cure::run_capacitor;
    row.capacitor = microfarad(7.5);
    row.capacitor_volts = volt(440);
    cap.accessory = Accessory{{row}, {}};
    c.parts_list.push_back(cap);
    c.offer_list.push_back(offer("C-1", 1'000));
    Diagnosis d;
    d.fault = Fault::capacitor;
    d.culprit = Culprit::run_capacitor;
    const Ledger l = ledger(j, {priced(motor("M-1"), offer("M-1", 18'500))}, c, d);
    BOOST_REQUIRE(l.options.size() == 2);
    BOOST_TEST((l.options[0].way == WayOut::capacitor));
    BOOST_TEST(l.options[0].part_id == "C-1");
    // 10.00 at 60 % margin 25.00; 0.5 h 62.50; trip 95.00; tax 1.75
    BOOST_TEST(l.options[0].today->minor() == 18'425);
    BOOST_TEST(*l.cheapest_today == 0);
    j.plate.capacitor_volts = {};
    BOOST_TEST(has(ledger(j, {}, c, d).options.at(0).lacking, "plate.capacitor_volts"));
}

BOOST_AUTO_TEST_CASE(an_airflow_fault_is_cured_and_the_motor_kept) {
    Diagnosis d;
    d.fault = Fault::airflow;
    d.causes.push_back({Cause::loaded_filter, "measured.filter_drop", "common-practice", .12, .05});
    const Ledger l = ledger(job(), {}, shop(), d);
    BOOST_TEST((l.options.at(0).way == WayOut::keep_and_cure));
    BOOST_TEST(l.options.at(0).today->minor() == 12'000);       // 0.2 h 25.00, trip 95.00
    BOOST_TEST(l.options.at(0).life.in(calendar_year) == 7.5);  // half of 12 to 18: age unknown
}

BOOST_AUTO_TEST_CASE(what_each_option_gives_up_is_said) {
    FailedUnit j = job();
    j.plate.family = known(Family::constant_airflow);
    j.controls.dehumidify = known(DehumidifyLogic::live_is_normal);
    const CostOption option = ledger(j, {priced(motor("M-1"), offer("M-1", 18'500))}).options.at(0);
    BOOST_TEST(has(option.loses, Loss::constant_airflow));
    BOOST_TEST(has(option.loses, Loss::humidity_control));
    BOOST_TEST(has(option.loses, Loss::efficiency));
    BOOST_TEST(ledger(job(), {priced(motor("M-1"), offer("M-1", 18'500))}).options.at(0).loses.empty());
}

BOOST_AUTO_TEST_CASE(every_total_is_the_sum_of_its_lines) {
    FailedUnit j = job();
    j.shop.emergency = known(percent(150));
    j.shop.labour_tax = known(percent(8.875));
    const CostOption option = ledger(j, {priced(motor("M-1"), offer("M-1", 18'533, 0, 2))}).options.at(0);
    Money sum = cents(0);
    for (const CostLine& l : option.lines) sum = sum + l.amount;
    BOOST_TEST(option.today->minor() == sum.minor());
}

BOOST_AUTO_TEST_CASE(new_equipment_stands_apart_from_a_ranking_by_the_year_that_knows_energy) {
    FailedUnit j = job();
    j.equipment.replacement_price = known(cents(10'000));
    PricedCandidate c = priced(motor("M-1"), offer("M-1", 18'500));
    const Ledger without = ledger(j, {c});
    BOOST_TEST(*without.cheapest_today == 1);
    BOOST_TEST(*without.cheapest_per_year == 1);
    c.air = air(500, 400);
    BOOST_TEST(*ledger(j, {c}).cheapest_per_year == 0);
}

BOOST_AUTO_TEST_CASE(electricity_in_another_currency_is_a_question_and_no_energy_cost) {
    FailedUnit j = job();
    j.shop.electricity = known(Money(1'600, *currency("CAD")));
    PricedCandidate c = priced(motor("M-1"), offer("M-1", 18'500));
    c.air = air(500, 400);
    const Ledger l = ledger(j, {c});
    BOOST_TEST(has(l.lacking, "shop.electricity"));
    BOOST_TEST(!l.options.at(0).energy_cost);
    BOOST_TEST(l.options.at(0).energy_per_year.has_value());
}

BOOST_AUTO_TEST_CASE(a_fault_in_the_control_is_priced_as_a_control_repair) {
    Diagnosis d;
    d.fault = Fault::control_signal;
    const CostOption option = ledger(job(), {}, shop(), d).options.at(0);
    BOOST_TEST((option.way == WayOut::control_repair));
    BOOST_TEST(option.today->minor() == 18'750 + 9'500);  // 1.5 h and the trip
    BOOST_TEST(has(option.not_counted, NotCounted::control_parts));
}
