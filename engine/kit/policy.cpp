#include <algorithm>
#include <limits>
#include <tuple>

#include "engine/base/text.hpp"
#include "engine/kit/kit.hpp"

namespace endbell::inline kit {

namespace {

/// The policy's caps on stock and lead. What it does not know, a cap does not pass.
bool is_allowed(const Offer& offer, const Policy& policy) {
    if (policy.in_stock_only && !at_hand(offer, policy)) return false;
    if (!policy.longest_lead_days) return true;
    const std::optional<int> lead = lead_of(offer, policy);
    return lead && *lead <= *policy.longest_lead_days;
}

/// Smaller is better.
auto rank(const Offer& offer, const Policy& policy) {
    const std::optional<Money> price = price_of(offer, policy);
    return std::tuple(!at_hand(offer, policy), !price, price ? price->minor() : 0,
                      lead_of(offer, policy).value_or(std::numeric_limits<int>::max()), offer.seller,
                      offer.branch);
}

}  // namespace

Policy policy_of(const FailedUnit& job) {
    Policy policy;
    const ShopReadings& shop = job.shop;
    policy.branch = shop.branch.value.value_or("");
    policy.as_of = shop.as_of.value;
    const std::optional<Currency> stated = shop.currency ? currency(*shop.currency) : std::nullopt;
    if (stated) {
        policy.currency = *stated;
    } else if (shop.labour_rate) {
        policy.currency = shop.labour_rate->currency();
    }
    policy.labour_rate = shop.labour_rate.value;
    policy.prefer_makers = shop.prefer_makers.value.value_or(std::vector<std::string>{});
    policy.exclude_makers = shop.exclude_makers.value.value_or(std::vector<std::string>{});
    policy.longest_lead_days = shop.longest_lead_days.value;
    policy.in_stock_only = shop.in_stock_only.value.value_or(false);
    return policy;
}

bool at_hand(const Offer& offer, const Policy& policy) {
    return offer.stock.value_or(0) > 0 && (policy.branch.empty() || offer.branch == policy.branch);
}

std::optional<int> lead_of(const Offer& offer, const Policy& policy) {
    if (at_hand(offer, policy)) return 0;
    if (offer.lead_days && *offer.lead_days >= 0) return offer.lead_days;
    return std::nullopt;
}

std::optional<Money> price_of(const std::optional<Offer>& offer, const Policy& policy) {
    if (!offer || !offer->price || offer->price->currency() != policy.currency) return std::nullopt;
    if (offer->price->minor() < 0) return std::nullopt;
    return offer->price;
}

bool is_excluded_maker(std::string_view maker, const Policy& policy) {
    const std::string wanted = lower(trimmed(maker));
    return std::any_of(policy.exclude_makers.begin(), policy.exclude_makers.end(),
                       [&](const std::string& name) { return lower(trimmed(name)) == wanted; });
}

std::optional<Offer> best_offer(const std::vector<Offer>& offers, const Policy& policy) {
    const Offer* best = nullptr;
    for (const Offer& offer : offers) {
        if (!is_allowed(offer, policy)) continue;
        if (best == nullptr || rank(offer, policy) < rank(*best, policy)) best = &offer;
    }
    return best != nullptr ? std::optional<Offer>(*best) : std::nullopt;
}

}  // namespace endbell::inline kit
