#include "engine/base/text.hpp"
#include "engine/facts/rating.hpp"
#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim = "the equipment's plug goes on, or a harness joins them";
constexpr std::string_view id = rule_id::connector;

// Between motors of one family; a retrofit is wired lead by lead, and the equipment's plugs go on the module of a motor half.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor || includes_module(*part.motor).is(false)) return not_concerned(id);
    const auto was = q.facts.family.value;
    if (was && part.motor->family && *was != *part.motor->family) return not_concerned(id);
    const auto needs = q.job.plate.connector.said();
    const auto has = part.motor->connector;
    FindingDraft say(id, "common-practice", wanted(q.job.plate.connector), offered(has));
    if (specified_assembly(q.job, part)) return FindingDraft(id, "inducer").fits(Reason::specified_assembly);
    if (!needs) return say.not_stated("plate.connector");
    if (!has) return say.ask(Reason::part_does_not_say, {"motors.connector"});
    if (lower(trimmed(*needs)) == lower(trimmed(*has))) return say.fits(Reason::same_plug);
    Remedy harness = remedy(Cure::harness);
    harness.connector_from = *needs;  // the equipment's plug
    harness.connector_to = *has;      // the motor's
    return say.changes(Reason::other_plug, {harness});
}

}  // namespace

Rule connector() {
    return {id,
            claim,
            Weight::curable,
            {Reason::not_concerned, Reason::specified_assembly, Reason::not_stated, Reason::part_does_not_say,
             Reason::same_plug, Reason::other_plug},
            {"common-practice", "inducer"},
            {},
            {"plate.connector", "plate.family"},
            {"motors.family", "motors.connector", "motors.includes_module"},
            {{"motors.connector", Concerns::plugged}},
            judge};
}

}  // namespace endbell::inline rules::rule
