// What a shelf can do about some remedies, before anything is chosen.
#pragma once
#include <vector>

#include "engine/kit/cover.hpp"
#include "engine/kit/kit.hpp"

namespace endbell {

/// One way to put remedies right: an accessory, or a chain of two bushings (the outside of one is the inside
/// of the other). A bushing used in a chain is used for nothing else.
///
/// Relays are counted: a remedy of two takes two of them, and one relay serves one remedy. So an accessory
/// that could serve several counted remedies is a way for each choice of them.
struct Way {
    std::vector<int> shelf;  // indices of shelf items, ascending
    std::vector<int> cures;  // remedies, ascending
    int count = 1;           // how many of each are bought
};

/// Indices into the remedies, ascending; work-only ones are in none of the lists.
struct Reach {
    std::vector<int> needs;      // an allowed part cures it
    std::vector<int> not_shown;  // a deciding size is missing on either side
    std::vector<int> uncured;    // nothing cures it
    std::vector<int> barred;     // of `uncured`: a part would, but the policy bars it
    std::vector<Way> ways;       // single accessories by id, then chains
};

Reach reach_of(const std::vector<Remedy>& remedies, const KitShelf& shelf);

/// An offer that does not state its lead is the slowest there is.
inline constexpr int unknown_lead = 1'000'000;
std::optional<int> lead_of(const KitShelf::Item& item, const Policy& policy);

/// The ways as items of a cover of these needs: bit i stands for needs[i].
std::vector<CoverItem> cover_items(const std::vector<Way>& ways, const std::vector<int>& needs,
                                   const KitShelf& shelf);

}  // namespace endbell
