#include <algorithm>
#include <bit>

#include "engine/kit/kit.hpp"
#include "engine/kit/reach.hpp"

namespace endbell::inline kit {

namespace {

LostOn lost_on(const Cover& loser, const Cover& winner) {
    const CoverCost& lost = loser.cost;
    const CoverCost& won = winner.cost;
    if (lost.price.unknown != won.price.unknown) return LostOn::no_price;
    if (lost.price != won.price) return LostOn::price;
    if (lost.lead != won.lead) return LostOn::lead_time;
    return lost.parts != won.parts ? LostOn::added_parts : LostOn::part_id;
}

class Chooser {
  public:
    Chooser(const Candidate& candidate, const KitShelf& shelf, const std::vector<ModuleBeside>& modules)
        : shelf_(shelf) {
        kit_.remedies = remedies_of(candidate);
        reach_ = reach_of(kit_.remedies, shelf);
        kit_.uncured = reach_.uncured;
        kit_.not_shown = reach_.not_shown;
        kit_.barred = reach_.barred;
        wanted_ = (Needs{1} << reach_.needs.size()) - 1;
        for (int r = 0; r < static_cast<int>(kit_.remedies.size()); ++r) {
            if (kit_.remedies[as_index(r)].cure == Cure::control_module) sort_module(r, modules);
        }
    }

    KitChoice run() {
        choose();
        add_work();
        for (std::vector<int>* list : {&kit_.uncured, &kit_.not_shown, &kit_.barred})
            std::sort(list->begin(), list->end());
        return std::move(kit_);
    }

  private:
    /// As Reach sorts what accessories cure.
    void sort_module(int r, const std::vector<ModuleBeside>& modules) {
        module_ = best_module(modules);
        if (module_ != nullptr) return;
        const auto some = [&](Verdict verdict, bool barred) {
            return std::any_of(modules.begin(), modules.end(), [&](const ModuleBeside& m) {
                return m.verdict == verdict && m.item.barred == barred;
            });
        };
        const bool open = some(Verdict::not_shown, false) || !kit_.remedies[as_index(r)].program;
        if (!open && some(Verdict::fits, true)) {
            kit_.uncured.push_back(r);
            kit_.barred.push_back(r);
        } else {
            (open || some(Verdict::not_shown, true) ? kit_.not_shown : kit_.uncured).push_back(r);
        }
    }

    void choose() {
        const CoverProblem problem = cover_problem(reach_.uses, shelf_);
        RankedCovers ranked = rank_covers(problem, wanted_);
        if (!ranked.best) {
            leave_least_out(problem);
            ranked = rank_covers(problem, wanted_);
        }
        add_parts(*ranked.best);
        add_module();
        kit_.parts_total = total(*ranked.best);
        for (const Cover& loser : ranked.runners_up) add_runner_up(loser, *ranked.best);
    }

    /// Exclusions leave no whole kit: shrinks wanted_ to the most needs that some cover cures, those of the
    /// smallest cover.
    void leave_least_out(const CoverProblem& problem) {
        const Needs all = wanted_;
        std::optional<Cover> best;
        for (int size = std::popcount(all) - 1; size >= 0 && !best; --size) {
            for (Needs set = 0; set < all; ++set) {
                if (std::popcount(set) != size) continue;
                std::optional<Cover> cover = solve_cover(problem, set);
                if (!cover || (best && *best <= *cover)) continue;
                best = std::move(cover);
                wanted_ = set;
            }
        }
        for (std::size_t n = 0; n < reach_.needs.size(); ++n) {
            if ((wanted_ >> n & 1U) != 0) continue;
            kit_.uncured.push_back(reach_.needs[n]);
            kit_.excluded.push_back(reach_.needs[n]);
        }
    }

    void add_parts(const Cover& cover) {
        for (int w : cover.items) {
            const AccessoryUse& use = reach_.uses[as_index(w)];
            for (int i : use.shelf()) {
                const KitShelf::Item& item = shelf_.items()[as_index(i)];
                kit_.parts.push_back({item.part.id, item.offer, remedies_in(use.cures & wanted_), use.count});
                kit_.lead_known = kit_.lead_known && item.lead.has_value();
                kit_.longest_lead_days = std::max(kit_.longest_lead_days, item.lead.value_or(0));
            }
        }
    }

    void add_module() {
        if (module_ != nullptr) {
            const KitShelf::Item& item = module_->item;
            kit_.parts.push_back({item.part.id, item.offer, {module_remedy()}});
            kit_.lead_known = kit_.lead_known && item.lead.has_value();
            kit_.longest_lead_days = std::max(kit_.longest_lead_days, item.lead.value_or(0));
        }
        std::sort(kit_.parts.begin(), kit_.parts.end(),
                  [](const KitPart& a, const KitPart& b) { return a.part_id < b.part_id; });
    }

    int module_remedy() const {
        const auto found = std::find_if(kit_.remedies.begin(), kit_.remedies.end(),
                                        [](const Remedy& r) { return r.cure == Cure::control_module; });
        return static_cast<int>(found - kit_.remedies.begin());
    }

    std::vector<int> remedies_in(Needs needs) const {
        std::vector<int> found;
        for (; needs != 0; needs &= needs - 1)
            found.push_back(reach_.needs[as_index(std::countr_zero(needs))]);
        return found;
    }

    std::optional<Money> total(const Cover& cover) const {
        const bool unpriced = module_ != nullptr && !module_->item.price;
        if (cover.cost.price.unknown > 0 || unpriced) return std::nullopt;
        const std::int64_t module = module_ != nullptr ? *module_->item.price : 0;
        return Money(cover.cost.price.minor + module, shelf_.policy().currency);
    }

    void add_runner_up(const Cover& loser, const Cover& winner) {
        RunnerUp up{{}, total(loser), lost_on(loser, winner)};
        up.part_ids.reserve(static_cast<std::size_t>(loser.cost.parts));
        for (int w : loser.items) {
            const AccessoryUse& use = reach_.uses[as_index(w)];
            for (int i : use.shelf())
                up.part_ids.insert(up.part_ids.end(), static_cast<std::size_t>(use.count),
                                   shelf_.items()[as_index(i)].part.id);
        }
        if (module_ != nullptr) up.part_ids.push_back(module_->item.part.id);
        std::sort(up.part_ids.begin(), up.part_ids.end());
        kit_.runners_up.push_back(std::move(up));
    }

    /// Work-only tasks of one name are done once; a part's own work is done for each remedy.
    void add_work() {
        kit_.labour_total = Money(0, shelf_.policy().currency);
        for (int r = 0; r < static_cast<int>(kit_.remedies.size()); ++r) {
            const Remedy& remedy = kit_.remedies[as_index(r)];
            const bool work_only = is_work_only(remedy.cure);
            if (!work_only && !is_cured(r)) continue;
            const ShopTask task = task_of(remedy.cure);
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

    /// One task without hours, or without a rate, leaves no total of the work at all: half a sum would look like one.
    void add_task(ShopTask task, int r) {
        const std::optional<LabourTask> hours = shelf_.labour(task);
        const int count = kit_.remedies[as_index(r)].count;
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

    bool is_cured(int r) const {
        if (kit_.remedies[as_index(r)].cure == Cure::control_module) return module_ != nullptr;
        const auto need = std::find(reach_.needs.begin(), reach_.needs.end(), r);
        return need != reach_.needs.end() && (wanted_ >> (need - reach_.needs.begin()) & 1U) != 0;
    }

    const KitShelf& shelf_;
    KitChoice kit_;
    Reach reach_;
    const ModuleBeside* module_ = nullptr;  // that goes with a motor half
    Needs wanted_ = 0;                      // what the chosen parts cure
};

}  // namespace

bool may_be_cured(const Remedy& remedy, const KitShelf& shelf) {
    constexpr std::size_t remembered = 256;
    auto& known = shelf.looked_at_;
    const auto found =
        std::find_if(known.begin(), known.end(), [&](const auto& k) { return k.first == remedy; });
    if (found != known.end()) return found->second;
    if (known.size() == remembered) known.clear();
    known.emplace_back(remedy, reach_of({remedy}, shelf).uncured.empty());
    return known.back().second;
}

bool may_be_cured(const std::vector<Remedy>& remedies, const KitShelf& shelf) {
    return std::all_of(remedies.begin(), remedies.end(),
                       [&](const Remedy& remedy) { return may_be_cured(remedy, shelf); });
}

KitChoice choose_kit(const Candidate& candidate, const KitShelf& shelf,
                     const std::vector<ModuleBeside>& modules) {
    return Chooser(candidate, shelf, modules).run();
}

KitChoice choose_kit(const Candidate& candidate, const Books& books, const Policy& policy) {
    return choose_kit(candidate, KitShelf(books, policy));
}

}  // namespace endbell::inline kit
