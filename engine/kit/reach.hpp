// What a shelf can do about some remedies, before anything is chosen.
#pragma once
#include <array>
#include <span>
#include <vector>

#include "engine/kit/cover.hpp"
#include "engine/kit/kit.hpp"

namespace endbell::inline kit {

/// Accessories put to use on some remedies: one accessory, or a chain of two bushings (the outside of one is the inside
/// of the other). A bushing used in a chain is used for nothing else.
///
/// Relays and bushings are counted: a remedy of two takes two of them, and one serves one remedy. So an accessory
/// that could serve several counted remedies is a way for each choice of them.
struct AccessoryUse {
    std::array<int, 2> items{};  // of the shelf, ascending; the second in a chain only
    bool chain = false;
    Needs cures = 0;  // bit n: Reach::needs[n]
    int count = 1;    // how many of each are bought

    std::span<const int> shelf() const { return {items.data(), chain ? 2U : 1U}; }
};

/// Indices into the remedies, ascending; work-only ones are in none of the lists.
struct Reach {
    std::vector<int> needs;          // an allowed part cures it
    std::vector<int> not_shown;      // a deciding size is missing on either side
    std::vector<int> uncured;        // nothing cures it
    std::vector<int> barred;         // of `uncured`: a part would, but the policy bars it
    std::vector<AccessoryUse> uses;  // single accessories by id, then chains
};

Reach reach_of(const std::vector<Remedy>& remedies, const KitShelf& shelf);

/// An offer that does not state its lead is the slowest there is.
inline constexpr int unknown_lead = 1'000'000;

/// The uses as items of a cover. Two clash that hold one part (a part is chosen once) or parts that exclude
/// each other.
CoverProblem cover_problem(const std::vector<AccessoryUse>& uses, const KitShelf& shelf);

}  // namespace endbell::inline kit
