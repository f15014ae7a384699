#include "engine/kit/cover.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <limits>
#include <span>
#include <utility>

#include "engine/base/ensure.hpp"

namespace endbell::inline kit {

namespace {

constexpr int nothing = -1;
/// What needs cost that no items cure.
constexpr CoverCost impossible{{std::numeric_limits<int>::max() / 4, 0}, 0, 0};

template <class Visit>
void each(Needs needs, const Visit& visit) {
    for (; needs != 0; needs &= needs - 1) visit(std::countr_zero(needs));
}

/// One problem, made ready once: the best cover is asked of it, then the best without one item of that.
class CoverSearch {
  public:
    CoverSearch(const CoverProblem& problem, Needs wanted) : problem_(problem) {
        ensure(wanted >> most_needs == 0, "a kit has at most 16 needs");
        gather(wanted);
        leave_outdone();
        number_needs(wanted);
        bound_.resize(std::size_t{all_} + 1);
    }

    std::optional<Cover> best() {
        if (!list(nothing)) return std::nullopt;
        bound();
        return least();
    }

    /// The bounds of best() are kept: an item fewer makes nothing cheaper, and one that comes back cures no more
    /// for less than what outdid it. Making them anew would take longer than they could save.
    std::optional<Cover> best_without(int item) {
        if (!list(item)) return std::nullopt;
        return least();
    }

  private:
    struct Item {
        Needs cures;
        int index;  // in the problem
        CoverCost cost;
        int outdone = 0;           // by how many others: 2 stands for any more
        int outdone_by = nothing;  // the index of one that does
    };

    /// The items that cure something wanted, cheapest first.
    void gather(Needs wanted) {
        const std::vector<CoverItem>& items = problem_.items;
        items_.reserve(items.size());
        for (std::size_t i = 0; i < items.size(); ++i) {
            const CoverItem& item = items[i];
            ensure(item.cost.price >= CoverPrice{} && item.cost.parts >= 1,
                   "an item is at least one part and has no negative price");
            if ((item.cures & wanted) == 0) continue;
            items_.push_back({item.cures & wanted, static_cast<int>(i), item.cost});
        }
        std::sort(items_.begin(), items_.end(), [](const Item& a, const Item& b) {
            return a.cost.price != b.cost.price ? a.cost.price < b.cost.price : a.index < b.index;
        });
    }

    /// Whatever cover holds `b` is made smaller by taking `a`, which stands before it, in its place.
    bool outdoes(const Item& a, const Item& b) const {
        if ((b.cures & ~a.cures) != 0) return false;
        if (a.cost.price == b.cost.price && (a.cost.lead > b.cost.lead || a.cost.parts > b.cost.parts))
            return false;
        return problem_.clashes.fewer(as_index(a.index), as_index(b.index));
    }

    /// An item that one other outdoes is tried only without that one. At most one is left out at a time, so an
    /// item that two outdo is never tried.
    void leave_outdone() {
        for (auto b = items_.begin(); b != items_.end(); ++b) {
            for (auto a = items_.begin(); a != b && b->outdone < 2; ++a) {
                if (!outdoes(*a, *b)) continue;
                ++b->outdone;
                b->outdone_by = a->index;
            }
        }
        std::erase_if(items_, [](const Item& item) { return item.outdone == 2; });
    }

    /// Numbers the needs anew, the one with the fewest items first: the lowest open need is the one to branch on.
    void number_needs(Needs wanted) {
        std::array<int, most_needs> curing{};
        for (const Item& item : items_) {
            if (item.outdone == 0) each(item.cures, [&](int need) { ++curing[as_index(need)]; });
        }
        std::array<int, most_needs> order{};
        each(wanted, [&](int need) { order[as_index(needs_++)] = need; });
        std::sort(order.begin(), order.begin() + needs_, [&](int a, int b) {
            return std::pair(curing[as_index(a)], a) < std::pair(curing[as_index(b)], b);
        });
        std::array<Needs, most_needs> renumbered{};
        for (int n = 0; n < needs_; ++n) renumbered[as_index(order[as_index(n)])] = Needs{1} << n;
        for (Item& item : items_) {
            const Needs cures = std::exchange(item.cures, 0);
            each(cures, [&](int need) { item.cures |= renumbered[as_index(need)]; });
        }
        all_ = (Needs{1} << needs_) - 1;
    }

    /// The items worth trying for each need, cheapest first. False where a need has none.
    bool list(int without) {
        listed_.resize(as_index(needs_) * items_.size());
        listed_for_.fill(0);
        for (const Item& item : items_) {
            if (item.index == without || (item.outdone != 0 && item.outdone_by != without)) continue;
            each(item.cures,
                 [&](int n) { listed_[as_index(n) * items_.size() + listed_for_[as_index(n)]++] = &item; });
        }
        return std::count(listed_for_.begin(), listed_for_.begin() + needs_, 0U) == 0;
    }

    std::span<const Item* const> for_lowest(Needs open) const {
        const std::size_t need = as_index(std::countr_zero(open));
        return {listed_.data() + need * items_.size(), listed_for_[need]};
    }

    /// Least price; of what costs that, the least lead and, apart, the fewest parts.
    void bound() {
        for (Needs open = 1; open <= all_; ++open) {
            CoverCost least = impossible;
            for (const Item* item : for_lowest(open)) {
                const CoverCost cost = item->cost + bound_[open & ~item->cures];
                if (cost.price > least.price) continue;
                if (cost.price < least.price) {
                    least = cost;
                } else {
                    least.lead = std::min(least.lead, cost.lead);
                    least.parts = std::min(least.parts, cost.parts);
                }
            }
            bound_[open] = least;
        }
    }

    /// Of the items listed; nothing where exclusions leave no cover.
    std::optional<Cover> least() {
        best_cost_ = impossible;
        descend(all_, CoverCost{}, 0);
        if (best_cost_ == impossible) return std::nullopt;
        return Cover{best_cost_, {best_items_.begin(), best_items_.begin() + best_count_}};
    }

    bool stands_apart(int item, int taken) const {
        return std::none_of(taken_.begin(), taken_.begin() + taken, [&](int other) {
            return problem_.clashes.between(as_index(item), as_index(other));
        });
    }

    void descend(Needs open, const CoverCost& so_far, int taken) {
        if (open == 0) return keep(so_far, taken);
        for (const Item* item : for_lowest(open)) {
            const Needs rest = open & ~item->cures;
            const CoverCost cost = so_far + item->cost;
            if (cost + bound_[rest] > best_cost_ || !stands_apart(item->index, taken)) continue;
            taken_[as_index(taken)] = item->index;
            descend(rest, cost, taken + 1);
        }
    }

    void keep(const CoverCost& cost, int taken) {
        std::array<int, most_needs> items = taken_;
        std::sort(items.begin(), items.begin() + taken);
        if (cost == best_cost_ &&
            !std::lexicographical_compare(items.begin(), items.begin() + taken, best_items_.begin(),
                                          best_items_.begin() + best_count_)) {
            return;
        }
        best_cost_ = cost;
        best_items_ = items;
        best_count_ = taken;
    }

    const CoverProblem& problem_;
    std::vector<Item> items_;
    int needs_ = 0;
    Needs all_ = 0;
    std::vector<const Item*> listed_;                   // a row of places for each need
    std::array<std::size_t, most_needs> listed_for_{};  // how many of the row are taken
    std::vector<CoverCost> bound_;                      // of each set of needs
    std::array<int, most_needs> taken_{};
    CoverCost best_cost_;
    std::array<int, most_needs> best_items_{};
    int best_count_ = 0;
};

}  // namespace

std::optional<Cover> solve_cover(const CoverProblem& problem, Needs wanted) {
    return CoverSearch(problem, wanted).best();
}

RankedCovers rank_covers(const CoverProblem& problem, Needs wanted) {
    CoverSearch search(problem, wanted);
    RankedCovers ranked{search.best(), {}};
    if (!ranked.best) return ranked;
    std::vector<Cover>& up = ranked.runners_up;
    for (const int item : ranked.best->items) {
        if (std::optional<Cover> cover = search.best_without(item)) up.push_back(std::move(*cover));
    }
    std::sort(up.begin(), up.end());
    up.erase(std::unique(up.begin(), up.end()), up.end());
    return ranked;
}

}  // namespace endbell::inline kit
