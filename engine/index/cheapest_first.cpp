#include "engine/index/cheapest_first.hpp"

#include <algorithm>
#include <utility>

namespace endbell::inline index {

CheapestFirst::CheapestFirst(const PartIndex& index, const Query& query, const Catalog& catalog,
                             std::vector<std::shared_ptr<const RuleFindings>> by_rule, ScanResult result)
    : index_(index),
      query_(query),
      catalog_(catalog),
      alike_(index.columns(), words_for(index.parts()), std::move(by_rule)),
      occupied_(std::move(result.occupied)),
      fitting_{std::move(result.fitting), {}},
      changing_{std::move(result.changing), {}} {}

std::vector<CandidateName> CheapestFirst::next(std::size_t most, const Curable& curable) {
    std::vector<CandidateName> names;
    take(names, fitting_, most, Verdict::fits, curable);
    take(names, changing_, most, Verdict::fits_with_changes, curable);
    return names;
}

void CheapestFirst::take(std::vector<CandidateName>& to, Queue& from, std::size_t most, Verdict verdict,
                         const Curable& curable) {
    while (to.size() < most && (!from.next.empty() || refill(from, most))) {
        const std::uint32_t position = from.next.back();
        from.next.pop_back();
        if (std::shared_ptr<const Alike> known = alike(position, curable)) {
            to.push_back(index_.standing(position, verdict));
            to.back().alike = std::move(known);
        }
    }
}

/// Takes more at once than are asked for: each time, all of the set is gone through.
bool CheapestFirst::refill(Queue& queue, std::size_t most) const {
    constexpr std::size_t at_once = 8;
    queue.next = index_.cheapest(queue.parts, occupied_, at_once * most);
    std::reverse(queue.next.begin(), queue.next.end());
    for (const std::uint32_t p : queue.next) remove_bit(queue.parts.data(), p);
    return !queue.next.empty();
}

/// Null where the part asks for an adapter that is not curable.
std::shared_ptr<const Alike> CheapestFirst::alike(std::uint32_t position, const Curable& curable) {
    if (!names_inducer(query_)) return alike_.of(position, curable);
    // A specified inducer is judged by more than its classes.
    auto own = std::make_shared<const Alike>(alike_of(candidate(query_, catalog_, index_.id(position))));
    return all_curable(own->adapters, curable) ? own : nullptr;
}

}  // namespace endbell::inline index
