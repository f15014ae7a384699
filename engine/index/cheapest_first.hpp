// The names of all parts that fit, cheapest first: as they are, then with changes. Taken out of the sets of a scan as they
// are asked for, because seldom all of them are.
#pragma once
#include <cstdint>
#include <memory>
#include <string_view>
#include <vector>

#include "engine/index/alike_parts.hpp"
#include "engine/index/part_index.hpp"
#include "engine/index/scan.hpp"
#include "engine/match/match.hpp"

namespace endbell::inline index {

class CheapestFirst : public MoreNames {
  public:
    /// `by_rule`: what each rule finds, by registry order. All but what is moved here must outlive it.
    CheapestFirst(const PartIndex& index, const Query& query, const Catalog& catalog,
                  std::vector<std::shared_ptr<const RuleFindings>> by_rule, ScanResult result);

    using MoreNames::next;
    std::vector<CandidateName> next(std::size_t most, const Curable& curable) override;

  private:
    struct Queue {
        BitSet parts;                     // that are left
        std::vector<std::uint32_t> next;  // taken out of `parts`: the cheapest last
    };
    void take(std::vector<CandidateName>& to, Queue& from, std::size_t most, Verdict verdict,
              const Curable& curable);
    bool refill(Queue& queue, std::size_t most) const;
    std::shared_ptr<const Alike> alike(std::uint32_t position, const Curable& curable);

    const PartIndex& index_;
    const Query query_;
    const Catalog& catalog_;
    AlikeParts alike_;
    const OccupiedBlocks occupied_;
    Queue fitting_, changing_;
};

}  // namespace endbell::inline index
