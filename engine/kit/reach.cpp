#include "engine/kit/reach.hpp"

#include <algorithm>
#include <bit>
#include <utility>

#include "engine/base/ensure.hpp"

namespace endbell::inline kit {

namespace {

/// What is left to bridge behind this bushing, for each of its rows that takes the shaft.
std::vector<Remedy> left_behind(const KitShelf::Item& inner, const Remedy& wanted, const SizeLimits& limits) {
    std::vector<Remedy> left;
    for (const CureRow& row : inner.part.accessory->cures) {
        if (row.cure != Cure::shaft_bushing || !row.to || *row.to >= *wanted.to) continue;
        Remedy first = wanted;
        first.to = row.to;
        if (cures(row, first, limits) != Verdict::fits) continue;
        left.push_back(wanted);
        left.back().from = row.to;
    }
    return left;
}

bool cures_one(const KitShelf::Item& item, const std::vector<Remedy>& remedies, const SizeLimits& limits) {
    for (const CureRow& row : item.part.accessory->cures) {
        for (const Remedy& remedy : remedies) {
            if (cures(row, remedy, limits) == Verdict::fits) return true;
        }
    }
    return false;
}

class Reacher {
  public:
    Reacher(const std::vector<Remedy>& remedies, const KitShelf& shelf)
        : remedies_(remedies), shelf_(shelf), cured_by_(shelf.items().size(), 0) {}

    Reach run() {
        for (int r = 0; r < static_cast<int>(remedies_.size()); ++r) {
            const Cure cure = remedies_[as_index(r)].cure;
            if (!is_work_only(cure) && cure != Cure::control_module) sort_remedy(r);
        }
        reach_.uses.reserve(cured_by_.size() + chains_.size());
        for (std::size_t i = 0; i < cured_by_.size(); ++i) {
            if (cured_by_[i] != 0) add_ways_with(static_cast<int>(i));
        }
        reach_.uses.insert(reach_.uses.end(), chains_.begin(), chains_.end());
        return std::move(reach_);
    }

  private:
    const KitShelf::Item& item(int i) const { return shelf_.items()[as_index(i)]; }

    /// Whether it can be cured, and if not why: what the policy bars would do, what states no size may do, and the rest
    /// does not.
    void sort_remedy(int r) {
        const Remedy& remedy = remedies_[as_index(r)];
        const Needs bit = Needs{1} << reach_.needs.size();
        Verdict allowed = Verdict::does_not_fit;
        Verdict barred = Verdict::does_not_fit;
        for (const KitShelf::Row& row : shelf_.curing(remedy.cure)) {
            const KitShelf::Item& holder = item(row.item);
            const Verdict verdict =
                cures(holder.part.accessory->cures[row.number], remedy, shelf_.size_limits());
            Verdict& best = holder.barred ? barred : allowed;
            best = std::min(best, verdict);
            if (verdict == Verdict::fits && !holder.barred) cured_by_[as_index(row.item)] |= bit;
        }
        const bool chained = add_chains(remedy, bit);
        if (allowed == Verdict::fits || chained) {
            ensure(reach_.needs.size() < most_needs, "a candidate needs at most 16 parts");
            if (is_counted(remedy)) counted_ |= bit;
            counts_[reach_.needs.size()] = remedy.count;
            reach_.needs.push_back(r);
        } else if (allowed != Verdict::not_shown && barred == Verdict::fits) {
            reach_.uncured.push_back(r);
            reach_.barred.push_back(r);
        } else if (allowed == Verdict::not_shown || barred == Verdict::not_shown) {
            reach_.not_shown.push_back(r);
        } else {
            reach_.uncured.push_back(r);
        }
    }

    /// One relay, or one bushing, serves one remedy.
    static bool is_counted(const Remedy& remedy) {
        return remedy.count > 1 || remedy.cure == Cure::isolation_relay || remedy.cure == Cure::line_relay ||
               remedy.cure == Cure::shaft_bushing;
    }

    /// One use for each set of counted remedies that this accessory could serve.
    void add_ways_with(int i) {
        const Needs counted = cured_by_[as_index(i)] & counted_;
        const Needs plain = cured_by_[as_index(i)] & ~counted_;
        Needs set = 0;
        do {
            int count = 0;
            for (Needs rest = set; rest != 0; rest &= rest - 1)
                count += counts_[as_index(std::countr_zero(rest))];
            if ((plain | set) != 0) reach_.uses.push_back({{i}, false, plain | set, std::max(1, count)});
            set = (set - counted) & counted;  // the next greater of its subsets, then none again
        } while (set != 0);
    }

    /// Two bushings that go from the shaft to the bore together. False where no two do.
    bool add_chains(const Remedy& wanted, Needs bit) {
        if (wanted.cure != Cure::shaft_bushing || !wanted.from || !wanted.to) return false;
        std::vector<int> bushings;
        for (const KitShelf::Row& row : shelf_.curing(Cure::shaft_bushing)) {
            const bool seen = !bushings.empty() && bushings.back() == row.item;
            if (!seen && !item(row.item).barred) bushings.push_back(row.item);
        }
        const std::size_t before = chains_.size();
        for (int inner : bushings) {
            const std::vector<Remedy> left = left_behind(item(inner), wanted, shelf_.size_limits());
            if (left.empty()) continue;
            for (int outer : bushings) {
                const std::vector<int>& clashes = item(inner).clashes;
                const bool apart =
                    inner == outer || std::binary_search(clashes.begin(), clashes.end(), outer);
                if (!apart && cures_one(item(outer), left, shelf_.size_limits()))
                    chains_.push_back(
                        {{std::min(inner, outer), std::max(inner, outer)}, true, bit, wanted.count});
            }
        }
        return chains_.size() > before;
    }

    const std::vector<Remedy>& remedies_;
    const KitShelf& shelf_;
    Reach reach_;
    std::vector<Needs> cured_by_;  // item -> the needs that it cures alone
    std::vector<AccessoryUse> chains_;
    Needs counted_ = 0;
    std::array<int, most_needs> counts_{};  // of each need
};

/// The uses that hold each item of a shelf: a list in two arrays, so that it costs no memory an item.
class Holders {
  public:
    Holders(const std::vector<AccessoryUse>& uses, std::size_t items)
        : last_(items, none), before_(2 * uses.size()) {
        for (std::size_t w = 0; w < uses.size(); ++w) {
            std::size_t entry = 2 * w;
            for (int i : uses[w].shelf()) {
                before_[entry] = std::exchange(last_[as_index(i)], entry);
                ++entry;
            }
        }
    }

    template <class Visit>
    void each(int item, const Visit& visit) const {
        for (std::size_t entry = last_[as_index(item)]; entry != none; entry = before_[entry])
            visit(entry / 2);
    }

  private:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);
    std::vector<std::size_t> last_;    // item -> its last entry
    std::vector<std::size_t> before_;  // entry -> the one before it; two entries a use
};

}  // namespace

Reach reach_of(const std::vector<Remedy>& remedies, const KitShelf& shelf) {
    return Reacher(remedies, shelf).run();
}

CoverProblem cover_problem(const std::vector<AccessoryUse>& uses, const KitShelf& shelf) {
    CoverProblem problem{{}, Clashes(uses.size())};
    problem.items.reserve(uses.size());
    const Holders holders(uses, shelf.items().size());
    for (std::size_t w = 0; w < uses.size(); ++w) {
        const AccessoryUse& use = uses[w];
        CoverItem made{use.cures, {}};
        for (int i : use.shelf()) {
            const KitShelf::Item& item = shelf.items()[as_index(i)];
            const CoverPrice price = item.price ? CoverPrice{0, *item.price * use.count} : CoverPrice{1, 0};
            made.cost = made.cost + CoverCost{price, item.lead.value_or(unknown_lead), use.count};
            const auto clash = [&](std::size_t other) { problem.clashes.add(w, other); };
            holders.each(i, clash);
            for (int other : item.clashes) holders.each(other, clash);
        }
        problem.items.push_back(made);
    }
    return problem;
}

}  // namespace endbell::inline kit
