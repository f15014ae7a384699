#include <algorithm>

#include "engine/rules/registry.hpp"

namespace endbell::inline rules::rule {

namespace {

constexpr std::string_view claim =
    "a plate voltage of the part lies within its band of the supply, nominal and measured";
constexpr std::string_view id = rule_id::supply_voltage;

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

Reason weakness(VoltageFit fit) {
    return fit == VoltageFit::far_from_plate ? Reason::far_from_plate_volts : Reason::below_range_a;
}

// True when a reading inside a plate's band speaks for it although the nearest nominal class does not.
bool reading_in_a_band(const std::vector<Rating>& ratings, const Supply& supply, const Limits& limits) {
    return supply.from_reading && std::any_of(ratings.begin(), ratings.end(), [&](const Rating& r) {
               return r.volts &&
                      voltage_fit(*r.volts, *supply.measured, supply, limits) != VoltageFit::outside;
           });
}

// A job may leave several nominals open: a part that suits none of them fails, one that suits all of them fits, and
// between the two lies a question.
Finding judge(const Query& q, const Part& part) {
    if (!part.motor && !part.module) return not_concerned(id);
    const std::vector<Rating> ratings = ratings_of(part);
    const Supply& supply = q.facts.supply;
    FindingDraft say(id, "mg1-12.44", supply.wanted);
    if (supply.dead) return say.ask(Reason::no_live_supply, {"measured.line_volts"});
    if (supply.nominal.empty())
        return say.ask(Reason::supply_not_stated, {"equipment.supply", "measured.line_volts"});

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
        return say.ask(Reason::part_does_not_say, {part.module ? "modules.volts" : "motor_ratings.volts"});
    }
    const Voltage judged = supply.measured.value_or(supply.nominal.front());
    say = FindingDraft(id, "mg1-12.44", supply.wanted, {*used->volts, Origin::catalog});
    say.limit(q.limits, limit::voltage_band, nearest_edge(*used->volts, judged, q.limits));
    if (best == VoltageFit::outside && !reading_in_a_band(ratings, supply, q.limits))
        return say.fails(Reason::outside_band);
    if (worst == VoltageFit::outside)
        return say.ask(Reason::supply_class_open, {"equipment.supply", "measured.line_volts"});

    if (used->selection != VoltageSelection::none) {
        return say.changes(Reason::voltage_to_be_set, {remedy(Cure::voltage_selection)},
                           worst != VoltageFit::good);
    }
    if (worst == VoltageFit::below_range_a)
        say.limit(q.limits, limit::voltage_range_a_208, q.limits.value(limit::voltage_range_a_208));
    if (worst != VoltageFit::good) return say.caution(weakness(worst));
    return say.fits(Reason::within_band);
}

}  // namespace

Rule supply_voltage() {
    return {id,
            claim,
            Weight::hard,
            {Reason::far_from_plate_volts, Reason::below_range_a, Reason::not_concerned,
             Reason::no_live_supply, Reason::supply_not_stated, Reason::part_does_not_say,
             Reason::outside_band, Reason::supply_class_open, Reason::voltage_to_be_set, Reason::within_band},
            {"mg1-12.44", "c84.1", "common-practice"},
            {limit::voltage_band, limit::voltage_guard, limit::voltage_caution, limit::voltage_live,
             limit::voltage_range_a_208},
            {"equipment.supply", "measured.line_volts", "plate.volts", "unit.plate_trusted"},
            {"motor_ratings.volts"},
            {{"motor_ratings.volts"}, {"modules.volts"}},
            judge};
}

}  // namespace endbell::inline rules::rule
