#include <algorithm>

#include "engine/match/rules/rules.hpp"

namespace endbell::rule {

namespace of_supply_voltage {

constexpr std::string_view id = "supply-voltage";

struct BestRating {
    VoltageFit fit = VoltageFit::outside;
    const Rating* rating = nullptr;
};

// The best rating for one nominal; of equals the one that needs no setting.
BestRating best_for(Voltage nominal, const std::vector<Rating>& ratings, const Supply& supply,
                    const Limits& limits) {
    BestRating best;
    for (const Rating& r : ratings) {
        if (!r.volts) continue;
        const VoltageFit fit = voltage_fit(*r.volts, nominal, supply, limits);
        const bool simpler = best.rating && fit == best.fit && r.selection == VoltageSelection::none &&
                             best.rating->selection != VoltageSelection::none;
        if (!best.rating || fit < best.fit || simpler) best = {fit, &r};
    }
    return best;
}

std::string_view weakness(VoltageFit fit) {
    return fit == VoltageFit::far_from_plate ? "far from plate volts" : "below range A";
}

// True when a reading inside a plate's band speaks for it although the nearest nominal class does not.
bool reading_in_a_band(const std::vector<Rating>& ratings, const Supply& supply, const Limits& limits) {
    return supply.from_reading && std::any_of(ratings.begin(), ratings.end(), [&](const Rating& r) {
               return r.volts &&
                      voltage_fit(*r.volts, *supply.measured, supply, limits) != VoltageFit::outside;
           });
}

Finding judge(const Question& q, const Part& part) {
    if (!part.motor && !part.module) return not_concerned(id);
    const std::vector<Rating> ratings = ratings_of(part);
    const Supply supply = supply_of(q);
    Answer say(id, "mg1-12.44", supply.wanted);
    if (supply.dead) return say.ask("no live supply", {"measured.line_volts"});
    if (supply.nominal.empty())
        return say.ask("supply not stated", {"equipment.supply", "measured.line_volts"});

    VoltageFit worst = VoltageFit::good;
    VoltageFit best = VoltageFit::outside;
    const Rating* used = nullptr;
    for (const Voltage nominal : supply.nominal) {
        const BestRating b = best_for(nominal, ratings, supply, q.limits);
        if (!b.rating) break;
        if (!used || b.fit < best) used = b.rating;
        worst = std::max(worst, b.fit);
        best = std::min(best, b.fit);
    }
    const bool blank = std::any_of(ratings.begin(), ratings.end(), [](const Rating& r) { return !r.volts; });
    if (!used || (worst == VoltageFit::outside && blank)) {
        return say.ask("part does not say", {part.module ? "modules.volts" : "motor_ratings.volts"});
    }
    const Voltage judged = supply.measured.value_or(supply.nominal.front());
    say = Answer(id, "mg1-12.44", supply.wanted, {*used->volts, Origin::catalog});
    say.limit(q.limits, "voltage.band", nearest_edge(*used->volts, judged, q.limits));
    if (best == VoltageFit::outside && !reading_in_a_band(ratings, supply, q.limits))
        return say.fails("outside band");
    if (worst == VoltageFit::outside)
        return say.ask("supply class open", {"equipment.supply", "measured.line_volts"});

    if (used->selection != VoltageSelection::none) {
        return say.changes("voltage to be set", {remedy(Cure::voltage_selection)}, worst != VoltageFit::good);
    }
    if (worst == VoltageFit::below_range_a)
        say.limit(q.limits, "voltage.range_a_208", volt(q.limits.value("voltage.range_a_208")));
    if (worst != VoltageFit::good) return say.caution(weakness(worst));
    return say.fits("within band");
}

}  // namespace of_supply_voltage

Rule supply_voltage() {
    using namespace of_supply_voltage;
    return {id,
            "a plate voltage of the part lies within its band of the supply, nominal and measured",
            Weight::hard,
            {"mg1-12.44", "c84.1", "common-practice"},
            {"voltage.band", "voltage.guard", "voltage.caution", "voltage.live", "voltage.range_a_208"},
            {"equipment.supply", "measured.line_volts", "plate.volts", "unit.plate_trusted"},
            {"motor_ratings.volts"},
            judge};
}

}  // namespace endbell::rule
