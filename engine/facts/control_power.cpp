#include "engine/facts/control_power.hpp"

#include <algorithm>
#include <array>

#include "engine/model/limit.hpp"

namespace endbell::inline facts {

namespace {

/// Glass and blade fuses of control circuits (common practice).
constexpr std::array made{1.0, 2.0, 3.0, 4.0, 5.0, 7.5, 10.0};

}  // namespace

ApparentPower tap_load(const Limits& limits) {
    return volt_ampere(limits.value(limit::tap_current).in(ampere)*limits.value(limit::tap_volts).in(volt));
}

Current secondary_current(ApparentPower rating) {
    return ampere(rating.in(volt_ampere) / control_volts.in(volt));
}

Current secondary_fuse(ApparentPower rating, const Limits& limits) {
    const double wanted = secondary_current(rating).in(ampere)*limits.value(limit::transformer_fuse);
    const double most = secondary_current(limits.value(limit::class2_power)).in(ampere);
    const auto* next =
        std::find_if(made.begin(), made.end(), [&](double size) { return size >= wanted - rounding; });
    const auto* beyond = std::upper_bound(made.begin() + 1, made.end(), most + rounding);
    return ampere(*std::min(next, beyond - 1));
}

Remedy transformer_for(ApparentPower total, const Supply& supply, const Limits& limits) {
    Remedy r{};
    r.cure = Cure::transformer;
    r.power = total / limits.value(limit::transformer_plan);
    r.primary = supply.at_motor();
    return r;
}

}  // namespace endbell::inline facts
