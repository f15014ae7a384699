#include "engine/match/match.hpp"

#include <algorithm>

#include "tests/match/shelf.hpp"

namespace endbell::match_tests {

namespace {

using namespace rule_tests;

const Tally* tally(const MatchReport& r, std::string_view rule, std::string_view reason) {
    for (const Tally& t : r.tallies) {
        if (t.rule == rule && word(t.reason) == reason) return &t;
    }
    return nullptr;
}

std::vector<std::string> ids(const std::vector<Candidate>& list) {
    std::vector<std::string> out;
    for (const Candidate& c : list) out.push_back(c.part.id);
    return out;
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_motor_and_module_is_asked_every_rule_and_no_accessory) {
    Shelf s;
    s.add("a");
    Part& accessory = s.add("x");
    accessory.kind = PartKind::accessory;
    accessory.motor.reset();
    accessory.accessory = Accessory{};
    const MatchReport r = s.report();
    BOOST_TEST(r.parts_asked == 1);
    const Candidate only = s.living().at(0);
    BOOST_TEST(only.findings.size() == all_rules().size());
    for (std::size_t i = 0; i < all_rules().size(); ++i)
        BOOST_TEST(only.findings[i].rule == all_rules()[i].id);
    BOOST_TEST(word(only.verdict) == "fits with changes");  // its own capacitor
}

BOOST_AUTO_TEST_CASE(parts_stand_worst_verdict_last_then_by_id) {
    Shelf s;
    s.add("c").motor->rotation.reset();  // not shown
    s.add("b");
    s.add("a");
    s.add("d").motor->rotation = Rotation::ccw_shaft_end;  // ended
    BOOST_TEST(ids(s.living()) == (std::vector<std::string>{"a", "b", "c"}),
               boost::test_tools::per_element());
}

// Fits before fits with changes; then the lowest price that anybody asks, whoever would buy; then id.
BOOST_AUTO_TEST_CASE(shown_parts_stand_cheapest_first_and_a_price_that_nobody_states_is_the_dearest) {
    Shelf s;
    for (const char* id : {"a", "b", "c", "d"}) s.add(id);
    const auto offer = [&](const char* id, std::int64_t cents, std::int64_t credit) {
        Offer o;
        o.part_id = id;
        o.price = Money(cents, Currency{});
        if (credit > 0) o.core_credit = Money(credit, Currency{});
        s.catalog.offer_list.push_back(o);
    };
    offer("b", 9'000, 0);
    offer("b", 8'000, 0);
    offer("d", 9'500, 2'000);  // 7,500 after the core
    offer("c", 8'000, 0);
    const MatchReport r = s.report();
    BOOST_REQUIRE(r.matches.size() == 4u);
    BOOST_TEST(r.matches[0].part_id == "d");
    BOOST_TEST(*r.matches[0].least_price == 7'500);
    BOOST_TEST(r.matches[1].part_id == "b");
    BOOST_TEST(r.matches[2].part_id == "c");
    BOOST_TEST(r.matches[3].part_id == "a");
    BOOST_TEST(!r.matches[3].least_price);
    BOOST_TEST(match_parts(s.query(), books_of(s.catalog), Keep{1}).report.matches.size() == 1u);
    BOOST_TEST(match_parts(s.query(), books_of(s.catalog), Keep{1}).report.changing == 4);
}

// "2 parts: shaft too thick; 1 of them nothing else."
BOOST_AUTO_TEST_CASE(equal_ends_are_merged_and_counted_with_those_that_end_by_nothing_else) {
    Shelf s;
    s.add("a").motor->shaft_diameter = inch(0.625);
    Part& both = s.add("b");
    both.motor->shaft_diameter = inch(0.625);
    both.motor->rotation = Rotation::ccw_shaft_end;
    Part& open = s.add("c");
    open.motor->shaft_diameter = inch(0.625);
    open.motor->mount.reset();
    const MatchReport r = s.report();
    const Tally* thick = tally(r, "shaft-diameter", "too thick");
    BOOST_REQUIRE(thick);
    BOOST_TEST(thick->parts == 3);
    BOOST_TEST(thick->parts_only == 2);
    BOOST_TEST(thick->would_fit == 1);
    BOOST_TEST(tally(r, "rotation", "turns the other way")->parts_only == 0);
    BOOST_TEST(r.tallies.at(0).parts == 3);  // most parts first
}

BOOST_AUTO_TEST_CASE(near_misses_end_by_one_finding_and_are_few_at_any_size) {
    Shelf s;
    for (int i = 0; i < 40; ++i) s.add("p" + std::to_string(100 + i)).motor->shaft_diameter = inch(0.625);
    Part& two = s.add("a-two");
    two.motor->shaft_diameter = inch(0.625);
    two.motor->rotation = Rotation::ccw_shaft_end;
    Part& open = s.add("a-open");
    open.motor->shaft_diameter = inch(0.625);
    open.motor->mount.reset();
    const MatchReport r = s.report();
    BOOST_TEST(r.fitting + r.changing + r.open == 0);
    BOOST_TEST(r.near_misses.size() == 10u);
    BOOST_TEST(r.near_misses.front().part.id == "p100");  // the open one is further off than its letter
    for (const Candidate& c : r.near_misses) {
        BOOST_TEST(std::count_if(c.findings.begin(), c.findings.end(),
                                 [](const Finding& f) { return f.verdict == Verdict::does_not_fit; }) == 1);
    }
}

BOOST_AUTO_TEST_CASE(open_fields_are_job_keys_with_the_parts_that_they_keep_open) {
    Shelf s;
    s.w.job.plate.mount = {};
    s.add("a");
    s.add("b").motor->rotation.reset();
    s.add("c").motor->rotation = Rotation::ccw_shaft_end;  // ended anyway: no answer helps it
    const MatchReport r = s.report();
    BOOST_TEST(r.open_keys.at("plate.mount") == 2);
    BOOST_TEST(r.open_keys.count("motors.rotation") == 0u);
}

BOOST_AUTO_TEST_CASE(a_cross_reference_is_a_claim_and_every_rule_still_checks) {
    Shelf s;
    s.w.job.unit.old_part_number = known(std::string("OLD 55-1"));
    s.add("a");
    s.add("b").motor->rotation = Rotation::ccw_shaft_end;
    s.catalog.reference_list = {{"OLD-551", "a", Relation::replaces, "a list"},
                                {"OLD-551", "b", Relation::replaces, "a list"}};
    const MatchReport r = s.report();
    BOOST_TEST(s.living().at(0).cross_references.size() == 1u);
    BOOST_TEST(r.near_misses.at(0).part.id == "b");
    BOOST_TEST(r.near_misses.at(0).cross_references.at(0).source == "a list");
}

BOOST_AUTO_TEST_CASE(an_empty_catalog_is_an_answer) {
    const MatchReport r = Shelf().report();
    BOOST_TEST(r.fitting + r.changing + r.open == 0);
    BOOST_TEST(r.parts_asked == 0);
}

// A counter line: 1/2 hp, 208-230, 1075 rpm, 3 speeds, CCWLE, 1/2 x 5, PSC, and "blower". Body and mount stay
// open.
BOOST_AUTO_TEST_CASE(a_plate_line_leaves_only_the_hard_questions) {
    Shelf s;
    FailedUnit line;
    line.unit.load = known(Load::indoor_blower);
    line.plate.family = known(Family::capacitor_run);
    line.plate.power = hp(0.5);
    line.plate.volts = volts(plate_volts(208, 230));
    line.plate.speed = known(rpm(1075));
    line.plate.speeds = known(3);
    line.plate.rotation = known(Rotation::cw_shaft_end);
    line.plate.shaft_diameter = known(inch(0.5));
    line.plate.shaft_length = known(inch(5));
    s.w.job = line;
    s.add("a").motor->ratings = {rating(0.5, plate_volts(208, 230), 3, 1075)};
    const MatchReport r = s.report();
    BOOST_REQUIRE(r.open == 1);
    std::vector<std::string> keys;
    for (const auto& field : r.open_keys) keys.push_back(field.first);
    BOOST_TEST(
        keys == (std::vector<std::string>{"measured.band_diameter", "plate.body_diameter", "plate.mount"}),
        boost::test_tools::per_element());
    s.w.job.plate.mount = known(Mount::band);
    s.w.job.plate.body_diameter = known(inch(5.6));
    BOOST_TEST(word(s.living().at(0).verdict) == "fits with changes");
}

}  // namespace endbell::match_tests
