#include <algorithm>

#include "engine/base/check.hpp"
#include "engine/kit/cover.hpp"
#include "engine/kit/kit.hpp"

namespace endbell {

namespace {

/// An offer that does not state its lead is the slowest there is.
constexpr int unknown_lead = 1'000'000;

std::size_t at(int i) {
    return static_cast<std::size_t>(i);
}

/// One way to put remedies right: an accessory, or a chain of two bushings.
struct Way {
    std::vector<int> shelf;  // indices of shelf items, ascending
    std::vector<int> cures;  // remedies, ascending
};

std::vector<Remedy> gather_remedies(const Candidate& candidate) {
    std::vector<Remedy> remedies;
    for (const Finding& finding : candidate.findings) {
        for (const Remedy& remedy : finding.remedies) {
            if (std::find(remedies.begin(), remedies.end(), remedy) == remedies.end())
                remedies.push_back(remedy);
        }
    }
    return remedies;
}

/// The best any row of the part does for this remedy.
Verdict best_row(const Part& part, const Remedy& remedy, const Limits& limits) {
    Verdict best = Verdict::does_not_fit;
    for (const CureRow& row : part.accessory->cures) best = std::min(best, cures(row, remedy, limits));
    return best;
}

class Chooser {
  public:
    Chooser(const Candidate& candidate, const KitShelf& shelf) : shelf_(shelf) {
        kit_.remedies = gather_remedies(candidate);
    }

    KitChoice run() {
        for (int r = 0; r < count(); ++r) {
            if (!is_work_only(remedy(r).cure)) sort_remedy(r);
        }
        find_ways();
        solve();
        add_work();
        std::sort(kit_.uncured.begin(), kit_.uncured.end());
        return std::move(kit_);
    }

  private:
    int count() const { return static_cast<int>(kit_.remedies.size()); }
    const Remedy& remedy(int r) const { return kit_.remedies[at(r)]; }
    const KitShelf::Item& item(int i) const { return shelf_.items()[at(i)]; }

    // -- which remedies can be cured at all, and by what

    void sort_remedy(int r) {
        Verdict allowed = Verdict::does_not_fit;
        Verdict barred = Verdict::does_not_fit;
        for (int i : shelf_.curing(remedy(r).cure)) {
            const Verdict v = best_row(item(i).part, remedy(r), shelf_.limits());
            Verdict& best = item(i).barred ? barred : allowed;
            best = std::min(best, v);
        }
        if (allowed == Verdict::fits || !chains(r).empty()) {
            needs_.push_back(r);
        } else if (allowed == Verdict::not_shown) {
            kit_.not_shown.push_back(r);
        } else if (barred == Verdict::fits) {
            kit_.uncured.push_back(r);
            kit_.barred.push_back(r);
        } else if (barred == Verdict::not_shown) {
            kit_.not_shown.push_back(r);
        } else {
            kit_.uncured.push_back(r);
        }
    }

    /// Pairs of bushings that together go from the shaft to the bore: the first one's outside is the second's
    /// inside.
    std::vector<Way> chains(int r) const {
        std::vector<Way> found;
        const Remedy& wanted = remedy(r);
        if (wanted.cure != Cure::shaft_bushing || !wanted.from || !wanted.to) return found;
        const std::vector<int>& bushings = shelf_.curing(Cure::shaft_bushing);
        for (int inner : bushings) {
            for (int outer : bushings) {
                if (inner != outer && !item(inner).barred && !item(outer).barred &&
                    is_chain(inner, outer, wanted)) {
                    found.push_back({{std::min(inner, outer), std::max(inner, outer)}, {r}});
                }
            }
        }
        return found;
    }

    bool is_chain(int inner, int outer, const Remedy& wanted) const {
        for (const CureRow& row : item(inner).part.accessory->cures) {
            if (row.cure != Cure::shaft_bushing || !row.to || *row.to >= *wanted.to) continue;
            Remedy first = wanted;
            first.to = row.to;
            Remedy second = wanted;
            second.from = row.to;
            if (cures(row, first, shelf_.limits()) == Verdict::fits &&
                best_row(item(outer).part, second, shelf_.limits()) == Verdict::fits &&
                !exclude(inner, outer)) {
                return true;
            }
        }
        return false;
    }

    bool exclude(int a, int b) const { return names(a, b) || names(b, a); }
    bool names(int a, int b) const {
        const std::vector<std::string>& list = item(a).part.accessory->excludes;
        return std::find(list.begin(), list.end(), item(b).part.id) != list.end();
    }

    void find_ways() {
        check(needs_.size() <= most_needs, "a candidate needs at most 16 parts");
        for (int i = 0; i < static_cast<int>(shelf_.items().size()); ++i) {
            if (item(i).barred) continue;
            Way way{{i}, {}};
            for (int r : needs_) {
                if (best_row(item(i).part, remedy(r), shelf_.limits()) == Verdict::fits)
                    way.cures.push_back(r);
            }
            if (!way.cures.empty()) ways_.push_back(std::move(way));
        }
        for (int r : needs_) {
            for (Way& way : chains(r)) ways_.push_back(std::move(way));
        }
    }

    // -- the choice

    std::vector<CoverItem> cover_items(const std::vector<int>& needs) const {
        std::vector<CoverItem> items;
        for (const Way& way : ways_) {
            CoverItem out;
            for (std::size_t n = 0; n < needs.size(); ++n) {
                if (std::binary_search(way.cures.begin(), way.cures.end(), needs[n])) out.cures |= 1U << n;
            }
            out.parts = static_cast<int>(way.shelf.size());
            for (int i : way.shelf) {
                const std::optional<Money> price = price_of(item(i).offer, shelf_.policy());
                out.price = out.price + (price ? CoverPrice{0, price->minor()} : CoverPrice{1, 0});
                out.lead = std::max(out.lead, lead(i).value_or(unknown_lead));
            }
            out.excludes = clashes(way);
            items.push_back(std::move(out));
        }
        return items;
    }

    std::optional<int> lead(int i) const {
        return item(i).offer ? lead_of(*item(i).offer, shelf_.policy()) : std::nullopt;
    }

    /// Ways that hold a part this one excludes, or share a part with it: a part is bought once.
    std::vector<int> clashes(const Way& way) const {
        std::vector<int> found;
        for (int w = 0; w < static_cast<int>(ways_.size()); ++w) {
            if (&ways_[at(w)] == &way) continue;
            bool clash = false;
            for (int a : way.shelf) {
                for (int b : ways_[at(w)].shelf) clash = clash || a == b || names(a, b);
            }
            if (clash) found.push_back(w);
        }
        return found;
    }

    void solve() {
        std::optional<Cover> cover = solve_cover(static_cast<int>(needs_.size()), cover_items(needs_));
        if (!cover) cover = largest_part();
        const std::vector<CoverItem> items = cover_items(needs_);
        for (int w : cover->items) add_parts(ways_[at(w)]);
        std::sort(kit_.parts.begin(), kit_.parts.end(),
                  [](const KitPart& a, const KitPart& b) { return a.part_id < b.part_id; });
        kit_.parts_total = total(*cover);
        kit_.lead_known = cover->lead < unknown_lead;
        kit_.longest_lead_days = 0;
        for (int w : cover->items) {
            for (int i : ways_[at(w)].shelf)
                kit_.longest_lead_days = std::max(kit_.longest_lead_days, lead(i).value_or(0));
        }
        add_runners_up(*cover, items);
    }

    /// Exclusions leave no whole kit: the cover of the most needs, the smallest of those. Shrinks needs_ to
    /// it.
    std::optional<Cover> largest_part() {
        const std::vector<int> all = needs_;
        for (std::size_t size = all.size(); size-- > 0;) {
            std::optional<Cover> best;
            for (std::uint32_t set = 0; set < (1U << all.size()); ++set) {
                std::vector<int> needs;
                for (std::size_t n = 0; n < all.size(); ++n) {
                    if ((set >> n & 1U) != 0) needs.push_back(all[n]);
                }
                if (needs.size() != size) continue;
                const std::optional<Cover> cover = solve_cover(static_cast<int>(size), cover_items(needs));
                if (cover && (!best || *cover < *best)) {
                    best = cover;
                    needs_ = needs;
                }
            }
            if (best) {
                for (int r : all) {
                    if (std::find(needs_.begin(), needs_.end(), r) != needs_.end()) continue;
                    kit_.uncured.push_back(r);
                    kit_.excluded.push_back(r);
                }
                return best;
            }
        }
        return std::nullopt;
    }

    void add_parts(const Way& way) {
        for (int i : way.shelf) {
            KitPart part{item(i).part.id, item(i).offer, {}};
            for (int r : way.cures) {
                if (std::find(needs_.begin(), needs_.end(), r) != needs_.end()) part.cures.push_back(r);
            }
            kit_.parts.push_back(std::move(part));
        }
    }

    std::optional<Money> total(const Cover& cover) const {
        if (cover.price.unknown > 0) return std::nullopt;
        return Money(cover.price.minor, shelf_.policy().currency);
    }

    static std::string_view lost_on(const Cover& loser, const Cover& winner) {
        if (loser.price.unknown != winner.price.unknown) return "no price";
        if (loser.price != winner.price) return "price";
        if (loser.lead != winner.lead) return "lead time";
        return loser.parts != winner.parts ? "added parts" : "part id";
    }

    void add_runners_up(const Cover& winner, const std::vector<CoverItem>& items) {
        std::vector<Cover> losers;
        for (int w : winner.items) {
            const auto cover = solve_cover(static_cast<int>(needs_.size()), items, {w});
            if (cover && std::find(losers.begin(), losers.end(), *cover) == losers.end())
                losers.push_back(*cover);
        }
        std::sort(losers.begin(), losers.end());
        for (const Cover& loser : losers) {
            RunnerUp up{{}, total(loser), lost_on(loser, winner)};
            for (int w : loser.items) {
                for (int i : ways_[at(w)].shelf) up.part_ids.push_back(item(i).part.id);
            }
            std::sort(up.part_ids.begin(), up.part_ids.end());
            kit_.runners_up.push_back(std::move(up));
        }
    }

    // -- the work

    /// Work-only tasks of one name are done once; a part's own work is done for each remedy.
    void add_work() {
        kit_.labour_total = Money(0, shelf_.policy().currency);
        for (int r = 0; r < count(); ++r) {
            const bool work_only = is_work_only(remedy(r).cure);
            if (!work_only && std::find(needs_.begin(), needs_.end(), r) == needs_.end()) continue;
            std::string task = remedy(r).task;
            if (task.empty() && work_only) task = word(remedy(r).cure);
            if (task.empty()) continue;
            KitWork* same = nullptr;
            for (KitWork& done : kit_.work) {
                if (work_only && done.task == task) same = &done;
            }
            if (same != nullptr) {
                same->cures.push_back(r);
            } else {
                add_task(task, r);
            }
        }
    }

    void add_task(const std::string& task, int r) {
        const std::optional<LabourTask> hours = shelf_.labour(task);
        KitWork work{task, 0, {r}, hours.has_value(), ""};
        if (hours) {
            work.thousandth_hours = hours->thousandth_hours;
            work.source = hours->source;
        }
        const std::optional<Money>& rate = shelf_.policy().labour_rate;
        if (!hours || !rate || rate->currency() != shelf_.policy().currency) {
            kit_.labour_total.reset();
        } else if (kit_.labour_total) {
            kit_.labour_total = *kit_.labour_total + rate->scaled(work.thousandth_hours, 1000);
        }
        kit_.work.push_back(std::move(work));
    }

    const KitShelf& shelf_;
    KitChoice kit_;
    std::vector<int> needs_;  // remedies that parts must cure and can, ascending
    std::vector<Way> ways_;
};

}  // namespace

KitChoice choose_kit(const Candidate& candidate, const KitShelf& shelf) {
    return Chooser(candidate, shelf).run();
}

KitChoice choose_kit(const Candidate& candidate, const Catalog& catalog, const Policy& policy) {
    return choose_kit(candidate, KitShelf(catalog, policy));
}

}  // namespace endbell
