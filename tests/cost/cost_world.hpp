// One invented job, shop and part for the tests of the ledger.
#pragma once
#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "engine/cost/ledger.hpp"
#include "tests/match/books.hpp"

namespace endbell::cost_world {

inline Currency dollars() {
    return *currency("USD");
}
inline Money cents(std::int64_t minor) {
    return Money(minor, dollars());
}
inline Share percent(double p) {
    return Share{static_cast<std::int64_t>(p * 10'000 + .5)};
}

inline Offer offer(std::string part, std::int64_t price, int stock = 3, int lead = 0) {
    Offer o;
    o.part_id = std::move(part);
    o.seller = "counter";
    o.branch = "north";
    o.price = cents(price);
    o.stock = stock;
    o.lead_days = lead;
    o.as_of = date_of(2026, 1, 10);
    return o;
}

/// Labour 125.00 an hour, trip 95.00, 60 % margin, 7 % tax on parts; an indoor capacitor-run motor.
inline FailedUnit job() {
    FailedUnit j;
    j.unit.load = known(Load::indoor_blower);
    j.plate.family = known(Family::capacitor_run);
    j.shop.branch = known(std::string("north"));
    j.shop.as_of = known(date_of(2026, 1, 15));
    j.shop.currency = known(std::string("USD"));
    j.shop.labour_rate = known(cents(12'500));
    j.shop.trip = known(cents(9'500));
    j.shop.margin = known(percent(60));
    j.shop.parts_tax = known(percent(7));
    j.shop.electricity = known(cents(1'600));
    return j;
}

inline PlainCatalog shop() {
    PlainCatalog c;
    c.labour_list = {{"motor swap", 2500, "shop table"},     {"retrofit swap", 3000, "shop table"},
                     {"module swap", 1000, "shop table"},    {"capacitor swap", 500, "shop table"},
                     {"duct repair", 4000, "shop table"},    {"filter change", 200, "shop table"},
                     {"airflow setup", 1000, "shop table"},  {"condenser motor swap", 1250, "shop table"},
                     {"control repair", 1500, "shop table"}, {"inducer swap", 1500, "shop table"}};
    return c;
}

inline Part motor(std::string id, Family family = Family::capacitor_run) {
    Part p;
    p.id = p.number = std::move(id);
    p.maker = "Ferncroft";
    p.motor = Motor{};
    p.motor->family = family;
    return p;
}

/// A motor whose two taps draw these watts for cooling and for heating.
inline AirPlan air(double cooling_watts, double heating_watts) {
    AirPlan plan;
    plan.computed = true;
    plan.taps.resize(2);
    plan.taps[0].tap = 1;
    plan.taps[0].input_power = estimate(watt(heating_watts), 0);
    plan.taps[1].tap = 2;
    plan.taps[1].input_power = estimate(watt(cooling_watts), 0);
    plan.calls.resize(2);
    plan.calls[0].call = Call::cool_high;
    plan.calls[0].tap = 2;
    plan.calls[0].met = true;
    plan.calls[1].call = Call::heat_high;
    plan.calls[1].tap = 1;
    plan.calls[1].met = true;
    return plan;
}

inline PricedCandidate priced(Part part, std::optional<Offer> at) {
    PricedCandidate c;
    c.candidate.part = std::move(part);
    c.offer = std::move(at);
    c.kit.parts_total = cents(0);
    return c;
}

inline Ledger ledger(const FailedUnit& j, const std::vector<PricedCandidate>& list,
                     const PlainCatalog& c = shop(), const Diagnosis& d = {}) {
    const Facts facts = facts_of(j, {});
    const Books books = books_of(c);
    const Policy policy = policy_of(j);
    const auto repair = repair_of(j, facts, d, KitShelf(books, policy), books.limits);
    return price_options(j, facts, d, list, repair, books, policy);
}

inline std::optional<Money> line(const CostOption& option, LineKind kind) {
    std::optional<Money> sum;
    for (const CostLine& l : option.lines) {
        if (l.kind == kind) sum = sum ? *sum + l.amount : l.amount;
    }
    return sum;
}

template <class T>
bool has(const std::vector<T>& list, T what) {
    return std::find(list.begin(), list.end(), what) != list.end();
}
inline bool has(const std::vector<std::string>& list, std::string_view what) {
    for (const std::string& one : list) {
        if (one == what) return true;
    }
    return false;
}

}  // namespace endbell::cost_world
