#include <algorithm>

#include "engine/kit/kit.hpp"
#include "engine/kit/reach.hpp"

namespace endbell {

namespace {

std::size_t at(int i) {
    return static_cast<std::size_t>(i);
}

bool holds(const std::vector<int>& list, int i) {
    return std::find(list.begin(), list.end(), i) != list.end();
}

std::string_view lost_on(const Cover& loser, const Cover& winner) {
    if (loser.price.unknown != winner.price.unknown) return "no price";
    if (loser.price != winner.price) return "price";
    if (loser.lead != winner.lead) return "lead time";
    return loser.parts != winner.parts ? "added parts" : "part id";
}

class Chooser {
  public:
    Chooser(const Candidate& candidate, const KitShelf& shelf) : shelf_(shelf) {
        kit_.remedies = remedies_of(candidate);
        reach_ = reach_of(kit_.remedies, shelf);
        kit_.uncured = reach_.uncured;
        kit_.not_shown = reach_.not_shown;
        kit_.barred = reach_.barred;
        needs_ = reach_.needs;
    }

    KitChoice run() {
        choose();
        add_work();
        std::sort(kit_.uncured.begin(), kit_.uncured.end());
        return std::move(kit_);
    }

  private:
    std::optional<Cover> solve(const std::vector<int>& needs) const {
        return solve_cover(static_cast<int>(needs.size()), cover_items(reach_.ways, needs, shelf_));
    }

    void choose() {
        std::optional<Cover> cover = solve(needs_);
        if (!cover) cover = largest_part();
        for (int w : cover->items) add_parts(reach_.ways[at(w)]);
        std::sort(kit_.parts.begin(), kit_.parts.end(),
                  [](const KitPart& a, const KitPart& b) { return a.part_id < b.part_id; });
        kit_.parts_total = total(*cover);
        add_runners_up(*cover);
    }

    /// Exclusions leave no whole kit: the cover of the most needs, the smallest of those. Shrinks needs_ to
    /// it.
    Cover largest_part() {
        const std::vector<int> all = needs_;
        std::optional<Cover> best;
        for (std::size_t size = all.size(); size-- > 0 && !best;) {
            for (std::uint32_t set = 0; set < (1U << all.size()); ++set) {
                std::vector<int> needs;
                for (std::size_t n = 0; n < all.size(); ++n) {
                    if ((set >> n & 1U) != 0) needs.push_back(all[n]);
                }
                if (needs.size() != size) continue;
                const std::optional<Cover> cover = solve(needs);
                if (cover && (!best || *cover < *best)) {
                    best = cover;
                    needs_ = needs;
                }
            }
        }
        for (int r : all) {
            if (holds(needs_, r)) continue;
            kit_.uncured.push_back(r);
            kit_.excluded.push_back(r);
        }
        return best.value_or(Cover{});
    }

    void add_parts(const Way& way) {
        for (int i : way.shelf) {
            const KitShelf::Item& item = shelf_.items()[at(i)];
            KitPart part{item.part.id, item.offer, {}, way.count};
            for (int r : way.cures) {
                if (holds(needs_, r)) part.cures.push_back(r);
            }
            kit_.parts.push_back(std::move(part));
            const std::optional<int> lead = lead_of(item, shelf_.policy());
            kit_.lead_known = kit_.lead_known && lead.has_value();
            kit_.longest_lead_days = std::max(kit_.longest_lead_days, lead.value_or(0));
        }
    }

    std::optional<Money> total(const Cover& cover) const {
        if (cover.price.unknown > 0) return std::nullopt;
        return Money(cover.price.minor, shelf_.policy().currency);
    }

    void add_runners_up(const Cover& winner) {
        const std::vector<CoverItem> items = cover_items(reach_.ways, needs_, shelf_);
        std::vector<Cover> losers;
        for (int w : winner.items) {
            const std::optional<Cover> cover = solve_cover(static_cast<int>(needs_.size()), items, {w});
            if (cover && std::find(losers.begin(), losers.end(), *cover) == losers.end())
                losers.push_back(*cover);
        }
        std::sort(losers.begin(), losers.end());
        for (const Cover& loser : losers) {
            RunnerUp up{{}, total(loser), lost_on(loser, winner)};
            for (int w : loser.items) {
                const Way& way = reach_.ways[at(w)];
                for (int i : way.shelf) {
                    up.part_ids.insert(up.part_ids.end(), static_cast<std::size_t>(way.count),
                                       shelf_.items()[at(i)].part.id);
                }
            }
            std::sort(up.part_ids.begin(), up.part_ids.end());
            kit_.runners_up.push_back(std::move(up));
        }
    }

    /// Work-only tasks of one name are done once; a part's own work is done for each remedy.
    void add_work() {
        kit_.labour_total = Money(0, shelf_.policy().currency);
        for (int r = 0; r < static_cast<int>(kit_.remedies.size()); ++r) {
            const Remedy& remedy = kit_.remedies[at(r)];
            const bool work_only = is_work_only(remedy.cure);
            if (!work_only && !holds(needs_, r)) continue;
            std::string task = remedy.task;
            if (task.empty() && work_only) task = word(remedy.cure);
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
        const int count = kit_.remedies[at(r)].count;
        KitWork work{task, 0, {r}, hours.has_value(), "", count};
        if (hours) {
            work.thousandth_hours = hours->thousandth_hours * count;
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
    Reach reach_;
    std::vector<int> needs_;  // what the chosen parts cure, ascending
};

}  // namespace

bool may_be_cured(const std::vector<Remedy>& remedies, const KitShelf& shelf) {
    constexpr std::size_t remembered = 256;
    return std::all_of(remedies.begin(), remedies.end(), [&](const Remedy& remedy) {
        auto& known = shelf.looked_at_;
        const auto found =
            std::find_if(known.begin(), known.end(), [&](const auto& k) { return k.first == remedy; });
        if (found != known.end()) return found->second;
        if (known.size() == remembered) known.clear();
        known.emplace_back(remedy, reach_of({remedy}, shelf).uncured.empty());
        return known.back().second;
    });
}

KitChoice choose_kit(const Candidate& candidate, const KitShelf& shelf) {
    return Chooser(candidate, shelf).run();
}

KitChoice choose_kit(const Candidate& candidate, const Catalog& catalog, const Policy& policy) {
    return choose_kit(candidate, KitShelf(catalog, policy));
}

}  // namespace endbell
