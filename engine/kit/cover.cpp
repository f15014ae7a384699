#include "engine/kit/cover.hpp"

#include <algorithm>
#include <limits>
#include <tuple>

#include "engine/base/check.hpp"

namespace endbell {

namespace {

using Needs = std::uint32_t;
constexpr int far = std::numeric_limits<int>::max() / 4;
constexpr CoverPrice dear{far, 0};

class Search {
  public:
    Search(int needs, const std::vector<CoverItem>& items, const std::vector<int>& without)
        : all_((Needs{1} << needs) - 1), items_(items), clash_(items.size()), blocked_(items.size(), 0) {
        for (int i : without) ++blocked_[at(i)];
        for (std::size_t i = 0; i < items.size(); ++i) {
            check(items[i].price >= CoverPrice{} && items[i].parts >= 1,
                  "an item is at least one part and has no negative price");
            for (int other : items[i].excludes) {
                if (at(other) == i) continue;
                clash_[i].push_back(other);
                clash_[at(other)].push_back(static_cast<int>(i));
            }
        }
        for (std::vector<int>& list : clash_) {
            std::sort(list.begin(), list.end());
            list.erase(std::unique(list.begin(), list.end()), list.end());
        }
        gather(needs);
        bound();
    }

    std::optional<Cover> run() {
        if (price_bound_[all_] < dear) descend(all_);
        if (best_) std::sort(best_->items.begin(), best_->items.end());
        return best_;
    }

  private:
    static std::size_t at(int i) { return static_cast<std::size_t>(i); }

    /// Whatever cover holds `b` is made smaller by taking `a` in its place.
    bool outdone(int b, int a) const {
        const CoverItem& x = items_[at(a)];
        const CoverItem& y = items_[at(b)];
        if ((x.cures & y.cures & all_) != (y.cures & all_)) return false;
        const bool better =
            x.price < y.price || (x.price == y.price && x.lead <= y.lead && x.parts <= y.parts && a < b);
        if (!better) return false;
        for (int other : clash_[at(a)]) {
            if (other != b && !std::binary_search(clash_[at(b)].begin(), clash_[at(b)].end(), other))
                return false;
        }
        return true;
    }

    /// The items worth trying for each need, cheapest first.
    void gather(int needs) {
        std::vector<int> useful;
        for (std::size_t i = 0; i < items_.size(); ++i) {
            if ((items_[i].cures & all_) != 0 && blocked_[i] == 0) useful.push_back(static_cast<int>(i));
        }
        for_need_.resize(at(needs));
        for (int b : useful) {
            const bool lost =
                std::any_of(useful.begin(), useful.end(), [&](int a) { return a != b && outdone(b, a); });
            if (lost) continue;
            for (int n = 0; n < needs; ++n) {
                if ((items_[at(b)].cures >> n & 1U) != 0) for_need_[at(n)].push_back(b);
            }
        }
        for (std::vector<int>& list : for_need_) {
            std::stable_sort(list.begin(), list.end(),
                             [&](int a, int b) { return items_[at(a)].price < items_[at(b)].price; });
        }
    }

    void bound() {
        price_bound_.assign(std::size_t{all_} + 1, dear);
        lead_bound_.assign(std::size_t{all_} + 1, far);
        parts_bound_.assign(std::size_t{all_} + 1, far);
        price_bound_[0] = CoverPrice{};
        lead_bound_[0] = parts_bound_[0] = 0;
        for (Needs open = 1; open <= all_; ++open) {
            int need = 0;
            while ((open >> need & 1U) == 0) ++need;
            for (int i : for_need_[at(need)]) {
                const CoverItem& item = items_[at(i)];
                const Needs rest = open & ~item.cures;
                if (price_bound_[rest] >= dear) continue;
                price_bound_[open] = std::min(price_bound_[open], item.price + price_bound_[rest]);
                lead_bound_[open] = std::min(lead_bound_[open], std::max(item.lead, lead_bound_[rest]));
                parts_bound_[open] = std::min(parts_bound_[open], item.parts + parts_bound_[rest]);
            }
        }
    }

    bool hopeless(Needs open) const {
        if (price_bound_[open] >= dear) return true;
        if (!best_) return false;
        const CoverPrice price = taken_.price + price_bound_[open];
        const int lead = std::max(taken_.lead, lead_bound_[open]);
        const int parts = taken_.parts + parts_bound_[open];
        return std::tie(price, lead, parts) > std::tie(best_->price, best_->lead, best_->parts);
    }

    void keep() {
        Cover cover = taken_;
        std::sort(cover.items.begin(), cover.items.end());
        if (!best_ || cover < *best_) best_ = std::move(cover);
    }

    void descend(Needs open) {
        if (hopeless(open)) return;
        if (open == 0) return keep();
        int need = -1;
        for (std::size_t n = 0; n < for_need_.size(); ++n) {
            if ((open >> n & 1U) == 0) continue;
            if (need < 0 || for_need_[n].size() < for_need_[at(need)].size()) need = static_cast<int>(n);
        }
        for (int i : for_need_[at(need)]) {
            if (blocked_[at(i)] == 0) take(i, open);
        }
    }

    void take(int i, Needs open) {
        const CoverItem& item = items_[at(i)];
        const Cover before = taken_;
        taken_.price = taken_.price + item.price;
        taken_.lead = std::max(taken_.lead, item.lead);
        taken_.parts += item.parts;
        taken_.items.push_back(i);
        for (int other : clash_[at(i)]) ++blocked_[at(other)];
        descend(open & ~item.cures);
        for (int other : clash_[at(i)]) --blocked_[at(other)];
        taken_ = before;
    }

    Needs all_;
    const std::vector<CoverItem>& items_;
    std::vector<std::vector<int>> clash_;     // item -> items it cannot stand beside, both directions
    std::vector<int> blocked_;                // item -> how many reasons against it now
    std::vector<std::vector<int>> for_need_;  // need -> items, cheapest first
    std::vector<CoverPrice> price_bound_;
    std::vector<int> lead_bound_;
    std::vector<int> parts_bound_;
    Cover taken_;
    std::optional<Cover> best_;
};

}  // namespace

std::optional<Cover> solve_cover(int needs, const std::vector<CoverItem>& items,
                                 const std::vector<int>& without) {
    check(needs >= 0 && needs <= most_needs, "a kit has at most 16 needs");
    return Search(needs, items, without).run();
}

}  // namespace endbell
