// What many jobs buy, merged into one order a seller and branch.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/cost/ledger.hpp"

namespace endbell::inline cost {

/// One part that one job needs.
struct Purchase {
    std::string job;  // its name on paper
    std::string part_id;
    std::optional<Offer> offer;  // none: where to buy it is not known
    int count = 1;
};

/// The candidate's own part and every part of its kit.
std::vector<Purchase> purchases_of(const std::string& job, const PricedCandidate& candidate);
std::vector<Purchase> purchases_of(const std::string& job, const std::string& part_id,
                                   const std::optional<Offer>& offer, const KitChoice& kit);

struct OrderLine {
    std::string seller, branch;  // empty: no offer
    std::string part_id;
    int count = 0;
    std::optional<Money> each;      // what the shop pays, before markup
    std::optional<Money> total;     // each times count
    std::optional<int> short_of;    // how many more are needed than are in stock; empty: stock not stated
    std::vector<std::string> jobs;  // ascending, each once
};

struct OrderList {
    std::vector<OrderLine>
        lines;                  // ascending by seller, branch, part id, price; lines without an offer first
    std::vector<Money> totals;  // one a currency, ascending by its code
    int unpriced = 0;           // parts without a price: in no total
};

/// Counts and totals add up to the purchases, whatever their order. REQUIRES: every count is above 0.
OrderList order_list(const std::vector<Purchase>& purchases);

}  // namespace endbell::inline cost
