#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the motor is thermally or impedance protected";
constexpr std::string_view id = rule_id::protection;

// A small motor that starts by itself must protect itself. Where the old one waited for a hand, one that restarts by
// itself is said.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto has = part.motor->protection;
    FindingDraft say(id, "nec-430.32", wanted(q.job.plate.protection), offered(has));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits(Reason::specified_assembly);
    if (!has) {
        // An electronic motor's own control limits its current (common practice).
        const bool electronic = part.motor->family && is_electronic(*part.motor->family);
        return electronic ? say.from("common-practice").fits(Reason::limited_by_its_control)
                          : say.ask(Reason::part_does_not_say, {"motors.protection"});
    }
    if (*has == Protection::none) return say.fails(Reason::not_protected);
    if (q.job.plate.protection.said() == Protection::manual && *has == Protection::automatic) {
        return say.caution(Reason::restarts_by_itself);
    }
    return say.fits(Reason::is_protected);
}

}  // namespace

Rule protection() {
    return {
        id,
        claim,
        Weight::hard,
        {Reason::not_concerned, Reason::specified_assembly, Reason::limited_by_its_control,
         Reason::part_does_not_say, Reason::not_protected, Reason::restarts_by_itself, Reason::is_protected},
        {"nec-430.32", "common-practice", "inducer"},
        {},
        {"plate.protection"},
        {"motors.family electronic", "motors.protection"},
        {{"motors.protection", Concerns::induction}},
        judge};
}

}  // namespace endbell::inline rules::rule
