// Weighted set cover with exclusions, solved exactly, on plain numbers. Knows nothing of motors or money.
//
// Bound:  price_bound[S] is the least price of any items that cure the needs S, exclusions ignored; likewise
// for
//         lead and parts. Each is found by dynamic programming over the 2^n sets of needs.
// Branch: on the open need with the fewest items, cheapest item first; a branch is cut as soon as its bound
//         cannot beat the best cover found. Ends only when every branch is searched or cut: the answer is
//         proven.
#pragma once
#include <compare>
#include <cstdint>
#include <optional>
#include <vector>

namespace endbell {

/// Ordered first by how many prices are unknown: a kit that can be priced beats one that cannot.
struct CoverPrice {
    int unknown = 0;
    std::int64_t minor = 0;
    friend auto operator<=>(const CoverPrice&, const CoverPrice&) = default;
    friend CoverPrice operator+(CoverPrice a, CoverPrice b) {
        return {a.unknown + b.unknown, a.minor + b.minor};
    }
};

struct CoverItem {
    std::uint32_t cures = 0;  // bit i: cures need i
    CoverPrice price;         // not negative
    int lead = 0;
    int parts = 1;
    std::vector<int> excludes;  // indices of items it cannot stand beside; one direction is enough
};

/// Compared as the tuple (price, lead, parts, items): the smallest wins, and no two covers are equal.
struct Cover {
    CoverPrice price;
    int lead = 0;  // of the slowest item
    int parts = 0;
    std::vector<int> items;  // ascending indices
    friend auto operator<=>(const Cover&, const Cover&) = default;
};

inline constexpr int most_needs = 16;

/// The smallest cover of needs 0 .. needs-1, or nothing where none exists. REQUIRES: needs <= most_needs.
/// `without` names items that may not be used.
std::optional<Cover> solve_cover(int needs, const std::vector<CoverItem>& items,
                                 const std::vector<int>& without = {});

}  // namespace endbell
