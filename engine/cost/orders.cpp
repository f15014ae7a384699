#include "engine/cost/orders.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "engine/base/ensure.hpp"

namespace endbell::inline cost {

namespace {

/// Seller, branch, part, currency, price: what makes two purchases one line.
using Key = std::tuple<std::string, std::string, std::string, std::string_view, std::int64_t>;

Key key_of(const Purchase& p) {
    if (!p.offer) return {"", "", p.part_id, "", 0};
    const std::optional<Money>& price = p.offer->price;
    return {p.offer->seller, p.offer->branch, p.part_id, price ? price->currency().code : "",
            price ? price->minor() : 0};
}

struct Gathered {
    std::optional<Offer> offer;
    int count = 0;
    std::set<std::string> jobs;
};

OrderLine line_of(const Key& key, const Gathered& all) {
    OrderLine line;
    line.seller = std::get<0>(key);
    line.branch = std::get<1>(key);
    line.part_id = std::get<2>(key);
    line.count = all.count;
    line.jobs.assign(all.jobs.begin(), all.jobs.end());
    if (!all.offer) return line;
    line.each = all.offer->price;
    if (line.each) line.total = line.each->times(all.count);
    if (all.offer->stock) line.short_of = std::max(0, all.count - std::max(0, *all.offer->stock));
    return line;
}

}  // namespace

std::vector<Purchase> purchases_of(const std::string& job, const PricedCandidate& candidate) {
    return purchases_of(job, candidate.candidate.part.id, candidate.offer, candidate.kit);
}

std::vector<Purchase> purchases_of(const std::string& job, const std::string& part_id,
                                   const std::optional<Offer>& offer, const KitChoice& kit) {
    std::vector<Purchase> found{{job, part_id, offer}};
    for (const KitPart& part : kit.parts) found.push_back({job, part.part_id, part.offer, part.count});
    return found;
}

OrderList order_list(const std::vector<Purchase>& purchases) {
    std::map<Key, Gathered> gathered;
    for (const Purchase& p : purchases) {
        ensure(p.count > 0, "a purchase is of at least one");
        Gathered& all = gathered[key_of(p)];
        if (!all.offer) all.offer = p.offer;
        all.count += p.count;
        all.jobs.insert(p.job);
    }
    OrderList list;
    std::map<std::string_view, Money> totals;
    for (const auto& entry : gathered) {
        OrderLine line = line_of(entry.first, entry.second);
        if (line.total) {
            const auto sum =
                totals.try_emplace(line.total->currency().code, Money(0, line.total->currency())).first;
            sum->second = sum->second + *line.total;
        } else {
            list.unpriced += line.count;
        }
        list.lines.push_back(std::move(line));
    }
    for (const auto& entry : totals) list.totals.push_back(entry.second);
    return list;
}

}  // namespace endbell::inline cost
