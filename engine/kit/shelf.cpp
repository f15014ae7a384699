#include <algorithm>

#include "engine/kit/kit.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline kit {

namespace {

/// One accessory names the other, and neither stands beside the other then.
void note_clashes(std::vector<KitShelf::Item>& items) {
    std::map<std::string, int> place;
    for (std::size_t i = 0; i < items.size(); ++i) place.emplace(items[i].part.id, static_cast<int>(i));
    for (std::size_t i = 0; i < items.size(); ++i) {
        for (const std::string& id : items[i].part.accessory->excludes) {
            const auto other = place.find(id);
            if (other == place.end() || other->second == static_cast<int>(i)) continue;
            items[i].clashes.push_back(other->second);
            items[static_cast<std::size_t>(other->second)].clashes.push_back(static_cast<int>(i));
        }
    }
    for (KitShelf::Item& item : items) {
        std::sort(item.clashes.begin(), item.clashes.end());
        item.clashes.erase(std::unique(item.clashes.begin(), item.clashes.end()), item.clashes.end());
    }
}

}  // namespace

SizeLimits::SizeLimits(const Limits& limits)
    : bore(limits.value(limit::bore_clearance)),
      body(limits.value(limit::body_band)),
      bolt_circle(limits.value(limit::bolt_circle_match)),
      class2(limits.value(limit::class2_power)) {}

KitShelf::Item KitShelf::item_of(Part part, const Catalog& catalog, const Policy& policy) {
    const bool capped = policy.in_stock_only || policy.longest_lead_days;
    Item item{std::move(part), std::nullopt, false, {}, std::nullopt, std::nullopt};
    item.offer = best_offer(catalog.offers(item.part.id), policy);
    item.barred = is_excluded_maker(item.part.maker, policy) || (capped && !item.offer);
    if (const std::optional<Money> price = price_of(item.offer, policy)) item.price = price->minor();
    if (item.offer) item.lead = lead_of(*item.offer, policy);
    return item;
}

bool KitShelf::Item::gone() const {
    return part.status != PartStatus::active && !(offer && offer->stock.value_or(0) > 0);
}

KitShelf::KitShelf(const Books& books, Policy policy)
    : catalog_(books.catalog), policy_(std::move(policy)), size_limits_(books.limits) {
    std::vector<Part> accessories;
    catalog_.each_accessory([&](const Part& part) {
        if (part.accessory) accessories.push_back(part);
    });
    for (Part& part : accessories) {
        Item item = item_of(std::move(part), catalog_, policy_);
        if (!item.gone()) items_.push_back(std::move(item));
    }
    note_clashes(items_);
    for (std::size_t i = 0; i < items_.size(); ++i) {
        const std::vector<CureRow>& rows = items_[i].part.accessory->cures;
        for (std::size_t r = 0; r < rows.size(); ++r)
            by_cure_[rows[r].cure].push_back({static_cast<int>(i), r});
    }
}

const std::vector<KitShelf::Row>& KitShelf::curing(Cure cure) const {
    static const std::vector<Row> none;
    const auto found = by_cure_.find(cure);
    return found != by_cure_.end() ? found->second : none;
}

}  // namespace endbell::inline kit
