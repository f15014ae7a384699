#include "engine/rules/trade.hpp"

#include "engine/base/text.hpp"

namespace endbell::inline rules {

bool specified_assembly(const FailedUnit& job, const Part& part) {
    const auto number = job.unit.assembly_number.said();
    return job.unit.load.said() == Load::draft_inducer && number && part.motor && part.motor->assembly &&
           number_key(*number) == number_key(*part.motor->assembly);
}

bool held_by_its_frame(Mount mount) {
    return mount == Mount::base || mount == Mount::ring;
}

std::optional<Power> power_in_use(const Query& q, const Part& part) {
    const auto rating = rating_in_use(q.facts, part, q.limits);
    return rating ? rating->power : std::nullopt;
}

std::optional<Current> amps_in_use(const Query& q, const Part& part) {
    const auto rating = rating_in_use(q.facts, part, q.limits);
    return rating ? rating->amps : std::nullopt;
}

std::optional<Speed> speed_in_use(const Query& q, const Part& part) {
    const auto rating = rating_in_use(q.facts, part, q.limits);
    return rating ? rating->speed : std::nullopt;
}

double cube_law(Speed from, Speed to) {
    const double ratio = to / from;
    return ratio * ratio * ratio;
}

}  // namespace endbell::inline rules
