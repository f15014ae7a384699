#include <algorithm>

#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the motor is made for what it has to turn";
constexpr std::string_view id = rule_id::load;

// Cooling, enclosure and approval follow from what is turned; of an inducer it is a matter of safety. So a part that
// lists nothing is asked about, however much else agrees.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const std::vector<Load>& loads = part.motor->loads;
    std::string listed;
    for (const Load l : loads) listed += (listed.empty() ? "" : ";") + std::string(word(l));
    FindingDraft say(id, "common-practice", wanted(q.job.unit.load),
                     loads.empty() ? Datum{} : Datum{listed, Origin::catalog});
    const auto load = q.job.unit.load.said();
    if (!load) return say.ask(Reason::load_not_stated, {"unit.load"});
    if (loads.empty()) return say.ask(Reason::part_does_not_say, {"motors.loads"});
    if (std::find(loads.begin(), loads.end(), *load) == loads.end()) return say.fails(Reason::other_load);
    return say.fits(Reason::same_load);
}

}  // namespace

Rule load() {
    return {id,
            claim,
            Weight::hard,
            {Reason::not_concerned, Reason::load_not_stated, Reason::part_does_not_say, Reason::other_load,
             Reason::same_load},
            {"common-practice"},
            {},
            {"unit.load"},
            {"motors.loads"},
            {{"motors.loads"}},
            judge};
}

}  // namespace endbell::inline rules::rule
