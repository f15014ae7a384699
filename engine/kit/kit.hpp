// The cheapest set of accessories and work that cures everything curable about one candidate.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/match/match.hpp"
#include "engine/units/money.hpp"

namespace endbell {

/// Something bought for the kit, and which remedies (indices into KitChoice::remedies) it puts right.
struct KitPart {
    std::string part_id;
    std::optional<Offer> offer;  // the offer it is priced from; none: price unknown
    std::vector<int> cures;
};

struct KitWork {
    std::string task;
    int thousandth_hours = 0;
    std::vector<int> cures;
};

/// A kit that would also do, and the one line on which it lost.
struct RunnerUp {
    std::vector<std::string> part_ids;
    std::optional<Money> parts_total;
    std::string_view lost_on;  // "price", "lead time", "added parts"
};

struct KitChoice {
    std::vector<Remedy> remedies;   // from the candidate's findings, in rule order
    std::vector<KitPart> parts;     // ascending part id
    std::vector<KitWork> work;
    std::vector<int> uncured;       // remedies that nothing in this catalog cures
    std::optional<Money> parts_total;  // absent when a price is missing
    int longest_lead_days = 0;
    std::vector<RunnerUp> runners_up;
    bool complete() const { return uncured.empty(); }
};

/// Where to buy and what counts: the shop's policy as the job and catalog state it.
struct Policy {
    std::string branch;
    std::string as_of;  // YYYY-MM-DD; empty: price age cannot be judged
    Currency currency;
    std::optional<Money> labour_rate;  // per hour
    std::vector<std::string> prefer_makers;
    std::vector<std::string> exclude_makers;
    std::optional<int> longest_lead_days;
    bool in_stock_only = false;
};
Policy policy_of(const FailedUnit& job);

/// Exact: proven cheapest by (total of parts and work, longest lead, number of parts, ids).
KitChoice choose_kit(const Candidate& candidate, const Catalog& catalog, const Policy& policy);

/// The offer a shop would buy from: own branch in stock first, then price, lead, seller.
std::optional<Offer> best_offer(const std::vector<Offer>& offers, const Policy& policy);

}  // namespace endbell
