#include <algorithm>

#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_load {

constexpr std::string_view id = "load";

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const std::vector<Load>& loads = part.motor->loads;
    std::string listed;
    for (const Load l : loads) listed += (listed.empty() ? "" : ";") + std::string(word(l));
    Answer say(id, "common-practice", wanted(q.job.unit.load),
               loads.empty() ? Fact{} : Fact{listed, Origin::catalog});
    const auto load = said(q.job.unit.load);
    if (!load) return say.ask("load not stated", {"unit.load"});
    if (loads.empty()) return say.ask("part does not say", {"motors.loads"});
    if (std::find(loads.begin(), loads.end(), *load) == loads.end()) return say.fails("other load");
    return say.fits("same load");
}

}  // namespace of_load

Rule load() {
    using namespace of_load;
    return {id,
            "the motor is made for what it has to turn",
            Weight::hard,
            {"common-practice"},
            {},
            {"unit.load"},
            {"motors.loads"},
            judge};
}

}  // namespace endbell::rule
