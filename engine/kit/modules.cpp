// The module that goes with a motor half: a part of its own, judged by the rules of the job.
#include <algorithm>
#include <tuple>

#include "engine/base/text.hpp"
#include "engine/kit/kit.hpp"
#include "engine/kit/reach.hpp"

namespace endbell::inline kit {

namespace {

/// What every rule says of the module on this job, but the one that asks which half failed: here both halves are new. A module
/// that must itself be changed is shown nowhere.
Verdict by_the_rules(const Query& query, const Part& module) {
    Verdict worst = Verdict::fits;
    for (const Finding& f : examine(query, module).findings) {
        if (f.rule != rule_id::wanted_part) worst = std::max(worst, f.verdict);
    }
    return worst == Verdict::fits_with_changes ? Verdict::not_shown : worst;
}

/// The module's own list names the half; else both state one power.
Verdict by_the_half(const Part& half, const Module& module) {
    const bool listed = std::any_of(module.fits.begin(), module.fits.end(), [&](const std::string& number) {
        const std::string key = number_key(number);
        return key == number_key(half.id) || key == number_key(half.number);
    });
    if (listed) return Verdict::fits;
    const std::vector<Rating>& ratings = half.motor->ratings;
    const bool stated =
        module.power && !ratings.empty() &&
        std::all_of(ratings.begin(), ratings.end(), [](const Rating& r) { return r.power.has_value(); });
    if (!stated) return Verdict::not_shown;
    const bool same = std::all_of(ratings.begin(), ratings.end(),
                                  [&](const Rating& r) { return *r.power == *module.power; });
    return same ? Verdict::fits : Verdict::does_not_fit;
}

}  // namespace

std::vector<ModuleBeside> modules_beside(const Query& query, const Candidate& half, const Books& books,
                                         const Policy& policy) {
    std::vector<ModuleBeside> found;
    for (const Remedy& remedy : remedies_of(half)) {
        if (remedy.cure != Cure::control_module || !remedy.program) continue;
        for (Part& part : books.catalog.modules_of(*remedy.program)) {
            const Verdict verdict = std::max(by_the_rules(query, part), by_the_half(half.part, *part.module));
            KitShelf::Item item = KitShelf::item_of(std::move(part), books.catalog, policy);
            if (!item.gone()) found.push_back({std::move(item), verdict});
        }
    }
    return found;
}

const ModuleBeside* best_module(const std::vector<ModuleBeside>& modules) {
    const auto rank = [](const ModuleBeside& m) {
        const bool takes = m.verdict == Verdict::fits && !m.item.barred;
        return std::tuple(!takes, !m.item.price, m.item.price.value_or(0),
                          m.item.lead.value_or(unknown_lead));
    };
    const auto best = std::min_element(modules.begin(), modules.end(), [&](const auto& a, const auto& b) {
        return rank(a) < rank(b);  // the first of equals has the lowest id
    });
    if (best == modules.end() || best->verdict != Verdict::fits || best->item.barred) return nullptr;
    return &*best;
}

}  // namespace endbell::inline kit
