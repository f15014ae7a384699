// What holds of every rule at once. That file, test and page exist is a gate of tests/house.
#include <algorithm>
#include <set>

#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

BOOST_AUTO_TEST_CASE(every_rule_has_its_own_name_a_claim_and_sources_and_limits_that_exist) {
    std::set<std::string_view> ids;
    const Limits limits;
    for (const Rule& r : all_rules()) {
        BOOST_TEST_CONTEXT(r.id) {
            BOOST_TEST(ids.insert(r.id).second);
            BOOST_TEST(!r.claim.empty());
            BOOST_TEST(!r.sources.empty());
            for (const std::string_view id : r.sources) BOOST_TEST(source(id).id == id);
            for (const LimitId& id : r.limits) BOOST_TEST(limits.row(id).id == id.text);
        }
    }
}

BOOST_AUTO_TEST_CASE(every_rule_answers_for_every_kind_of_part_and_names_only_what_it_declares) {
    Part accessory;
    accessory.id = "x-1";
    accessory.kind = PartKind::accessory;
    accessory.accessory = Accessory{};
    World blank;
    blank.part.motor = Motor{};
    World with_accessory;
    with_accessory.part = accessory;
    for (const World& w :
         {blower(), condenser(), five_taps(), retrofit(), module_job(), inducer(), blank, with_accessory}) {
        for (const Rule& r : all_rules()) {
            BOOST_TEST_CONTEXT(r.id << " on " << w.part.id) {
                const Finding f = w(r.id);
                BOOST_TEST(f.rule == r.id);
                BOOST_TEST(is_declared(f));
                const bool declared =
                    std::find(r.sources.begin(), r.sources.end(), f.source) != r.sources.end();
                const bool by_limit = !f.limit_id.empty() && w.limits.find(f.limit_id)->source == f.source;
                BOOST_TEST((declared || by_limit || f.reason == Reason::not_concerned));
                if (!f.limit_id.empty()) {
                    BOOST_TEST(std::any_of(r.limits.begin(), r.limits.end(),
                                           [&](const LimitId& row) { return row.text == f.limit_id; }));
                }
                BOOST_TEST((f.verdict == Verdict::not_shown) <= !f.asks.empty());
                if (w.part.kind == PartKind::accessory && r.id != "part-status")
                    BOOST_TEST((f.reason == Reason::not_concerned));
            }
        }
    }
}

// A preference may speak, but never end a candidate or keep it open.
BOOST_AUTO_TEST_CASE(a_preference_always_fits) {
    World blank;
    blank.part.motor = Motor{};
    for (const Rule& r : all_rules()) {
        if (r.weight != Weight::preference) continue;
        for (const World& w : {blower(), condenser(), blank}) BOOST_TEST(word(w(r.id).verdict) == "fits");
    }
}

// A blank part against a full job: what a rule compares is never passed for want of a value.
BOOST_AUTO_TEST_CASE(a_blank_motor_fits_no_hard_rule_that_the_job_states) {
    World w = condenser();
    w.part.motor = Motor{};
    for (const std::string_view id :
         {"load", "family", "supply-voltage", "phase", "poles", "power", "rotation", "shaft-diameter",
          "mount", "enclosure", "position", "ambient", "protection", "capacitor", "signal-class"}) {
        BOOST_TEST_CONTEXT(id) {
            BOOST_TEST(word(w(id).verdict) == "not shown to fit");
        }
    }
}

}  // namespace endbell::rule_tests
