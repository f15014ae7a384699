#include "engine/kit/reach.hpp"

#include <algorithm>

#include "engine/base/check.hpp"

namespace endbell {

namespace {

std::size_t at(int i) {
    return static_cast<std::size_t>(i);
}

/// The best any row of the part does for this remedy.
Verdict best_row(const Part& part, const Remedy& remedy, const Limits& limits) {
    Verdict best = Verdict::does_not_fit;
    for (const CureRow& row : part.accessory->cures) best = std::min(best, cures(row, remedy, limits));
    return best;
}

/// Together the two bushings go from the shaft to the bore.
bool is_chain(const KitShelf::Item& inner, const KitShelf::Item& outer, const Remedy& wanted,
              const Limits& limits) {
    for (const CureRow& row : inner.part.accessory->cures) {
        if (row.cure != Cure::shaft_bushing || !row.to || *row.to >= *wanted.to) continue;
        Remedy first = wanted;
        first.to = row.to;
        Remedy second = wanted;
        second.from = row.to;
        if (cures(row, first, limits) == Verdict::fits &&
            best_row(outer.part, second, limits) == Verdict::fits) {
            return true;
        }
    }
    return false;
}

class Reacher {
  public:
    Reacher(const std::vector<Remedy>& remedies, const KitShelf& shelf)
        : remedies_(remedies), shelf_(shelf) {}

    Reach run() {
        for (int r = 0; r < static_cast<int>(remedies_.size()); ++r) {
            if (!is_work_only(remedies_[at(r)].cure)) sort_remedy(r);
        }
        check(reach_.needs.size() <= most_needs, "a candidate needs at most 16 parts");
        add_single_ways();
        for (int r : reach_.needs) {
            for (Way& way : chains(r)) reach_.ways.push_back(std::move(way));
        }
        return std::move(reach_);
    }

  private:
    const KitShelf::Item& item(int i) const { return shelf_.items()[at(i)]; }

    void sort_remedy(int r) {
        const Remedy& remedy = remedies_[at(r)];
        Verdict allowed = Verdict::does_not_fit;
        Verdict barred = Verdict::does_not_fit;
        for (int i : shelf_.curing(remedy.cure)) {
            Verdict& best = item(i).barred ? barred : allowed;
            best = std::min(best, best_row(item(i).part, remedy, shelf_.limits()));
        }
        if (allowed == Verdict::fits || !chains(r).empty()) {
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

    void add_single_ways() {
        std::vector<int> concerned;
        for (int r : reach_.needs) {
            const std::vector<int>& list = shelf_.curing(remedies_[at(r)].cure);
            concerned.insert(concerned.end(), list.begin(), list.end());
        }
        std::sort(concerned.begin(), concerned.end());
        concerned.erase(std::unique(concerned.begin(), concerned.end()), concerned.end());
        for (int i : concerned) {
            if (!item(i).barred) add_ways_with(i);
        }
    }

    bool is_counted(int r) const {
        const Remedy& remedy = remedies_[at(r)];
        return remedy.count > 1 || remedy.cure == Cure::isolation_relay || remedy.cure == Cure::line_relay;
    }

    /// One way for each set of counted remedies that this accessory could serve.
    void add_ways_with(int i) {
        std::vector<int> counted;
        Way plain{{i}, {}};
        for (int r : reach_.needs) {
            if (best_row(item(i).part, remedies_[at(r)], shelf_.limits()) != Verdict::fits) continue;
            (is_counted(r) ? counted : plain.cures).push_back(r);
        }
        for (std::uint32_t set = 0; set < (1U << counted.size()); ++set) {
            Way way = plain;
            int count = 0;
            for (std::size_t n = 0; n < counted.size(); ++n) {
                if ((set >> n & 1U) == 0) continue;
                way.cures.push_back(counted[n]);
                count += remedies_[at(counted[n])].count;
            }
            way.count = std::max(1, count);
            std::sort(way.cures.begin(), way.cures.end());
            if (!way.cures.empty()) reach_.ways.push_back(std::move(way));
        }
    }

    std::vector<Way> chains(int r) const {
        std::vector<Way> found;
        const Remedy& wanted = remedies_[at(r)];
        if (wanted.cure != Cure::shaft_bushing || !wanted.from || !wanted.to) return found;
        std::vector<int> bushings;
        for (int i : shelf_.curing(Cure::shaft_bushing)) {
            if (!item(i).barred) bushings.push_back(i);
        }
        for (int inner : bushings) {
            for (int outer : bushings) {
                const std::vector<int>& clashes = item(inner).clashes;
                const bool apart =
                    inner == outer || std::binary_search(clashes.begin(), clashes.end(), outer);
                if (!apart && is_chain(item(inner), item(outer), wanted, shelf_.limits())) {
                    found.push_back({{std::min(inner, outer), std::max(inner, outer)}, {r}});
                }
            }
        }
        return found;
    }

    const std::vector<Remedy>& remedies_;
    const KitShelf& shelf_;
    Reach reach_;
};

/// For each way the others that hold one of its parts (a part is chosen once) or one that excludes it.
std::vector<std::vector<int>> clashes_of(const std::vector<Way>& ways, const KitShelf& shelf) {
    std::vector<std::vector<int>> holding(shelf.items().size());
    for (std::size_t w = 0; w < ways.size(); ++w) {
        for (int i : ways[w].shelf) holding[at(i)].push_back(static_cast<int>(w));
    }
    std::vector<std::vector<int>> found(ways.size());
    for (std::size_t w = 0; w < ways.size(); ++w) {
        for (int i : ways[w].shelf) {
            for (int other : holding[at(i)]) {
                if (at(other) != w) found[w].push_back(other);
            }
            for (int clash : shelf.items()[at(i)].clashes) {
                found[w].insert(found[w].end(), holding[at(clash)].begin(), holding[at(clash)].end());
            }
        }
    }
    return found;
}

}  // namespace

Reach reach_of(const std::vector<Remedy>& remedies, const KitShelf& shelf) {
    return Reacher(remedies, shelf).run();
}

std::optional<int> lead_of(const KitShelf::Item& item, const Policy& policy) {
    return item.offer ? lead_of(*item.offer, policy) : std::nullopt;
}

std::vector<CoverItem> cover_items(const std::vector<Way>& ways, const std::vector<int>& needs,
                                   const KitShelf& shelf) {
    const std::vector<std::vector<int>> clashes = clashes_of(ways, shelf);
    std::vector<CoverItem> items;
    for (std::size_t w = 0; w < ways.size(); ++w) {
        CoverItem made;
        for (std::size_t n = 0; n < needs.size(); ++n) {
            if (std::binary_search(ways[w].cures.begin(), ways[w].cures.end(), needs[n]))
                made.cures |= 1U << n;
        }
        const std::int64_t count = ways[w].count;
        made.parts = static_cast<int>(ways[w].shelf.size()) * ways[w].count;
        for (int i : ways[w].shelf) {
            const KitShelf::Item& item = shelf.items()[at(i)];
            const std::optional<Money> price = price_of(item.offer, shelf.policy());
            made.price = made.price + (price ? CoverPrice{0, price->minor() * count} : CoverPrice{1, 0});
            made.lead = std::max(made.lead, lead_of(item, shelf.policy()).value_or(unknown_lead));
        }
        made.excludes = clashes[w];
        items.push_back(std::move(made));
    }
    return items;
}

}  // namespace endbell
