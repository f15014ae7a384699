#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_protection {

constexpr std::string_view id = "protection";

Finding judge(const Question& q, const Part& part) {
    if (!part.motor) return not_concerned(id);
    const auto has = part.motor->protection;
    Answer say(id, "nec-430.32", wanted(q.job.plate.protection), offered(has));
    if (specified_assembly(q.job, part)) return say.from("inducer").fits("specified assembly");
    if (!has) {
        // An electronic motor's own control limits its current (common practice).
        const bool electronic = part.motor->family && is_electronic(*part.motor->family);
        return electronic ? say.from("common-practice").fits("limited by its control")
                          : say.ask("part does not say", {"motors.protection"});
    }
    if (*has == Protection::none) return say.fails("not protected");
    if (said(q.job.plate.protection) == Protection::manual && *has == Protection::automatic) {
        return say.caution("restarts by itself");
    }
    return say.fits("protected");
}

}  // namespace of_protection

Rule protection() {
    using namespace of_protection;
    return {id,
            "the motor is thermally or impedance protected",
            Weight::hard,
            {"nec-430.32", "common-practice", "inducer"},
            {},
            {"plate.protection"},
            {"motors.family electronic", "motors.protection"},
            judge};
}

}  // namespace endbell::rule
