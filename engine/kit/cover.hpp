// Weighted set cover with exclusions, solved exactly, on plain numbers. Knows nothing of motors or money.
//
// Bound:  bound[S] is the least that any items cost that cure the needs S, exclusions ignored: found by dynamic
//         programming over the 2^n sets of needs.
// Branch: on the open need with the fewest items, cheapest item first; a branch is cut as soon as its bound
//         cannot beat the best cover found. Ends only when every branch is searched or cut: the answer is
//         proven.
#pragma once
#include <compare>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace endbell::inline kit {

/// A set of needs: bit i is need i.
using Needs = std::uint32_t;
inline constexpr int most_needs = 16;

/// Indices are int here: -1 and differences mean something; containers count otherwise.
constexpr std::size_t as_index(int i) {
    return static_cast<std::size_t>(i);
}

/// Ordered first by how many prices are unknown: a kit that can be priced beats one that cannot.
struct CoverPrice {
    int unknown = 0;
    std::int64_t minor = 0;
    friend auto operator<=>(const CoverPrice&, const CoverPrice&) = default;
    friend CoverPrice operator+(CoverPrice a, CoverPrice b) {
        return {a.unknown + b.unknown, a.minor + b.minor};
    }
};

/// What an item, or some items together, cost. Compared as the tuple: the smaller is better.
struct CoverCost {
    CoverPrice price;
    int lead = 0;  // of the slowest item
    int parts = 0;
    friend auto operator<=>(const CoverCost&, const CoverCost&) = default;
    friend CoverCost operator+(const CoverCost& a, const CoverCost& b) {
        return {a.price + b.price, a.lead < b.lead ? b.lead : a.lead, a.parts + b.parts};
    }
};

struct CoverItem {
    Needs cures = 0;
    CoverCost cost;  // no negative price, at least one part
};

/// Which items cannot stand beside which: a square of bits, a row an item. It goes both ways, and no item clashes
/// with itself.
class Clashes {
  public:
    explicit Clashes(std::size_t items = 0) : words_((items + 63) / 64), rows_(items * words_) {}

    void add(std::size_t a, std::size_t b) {
        if (a == b) return;
        set(a, b);
        set(b, a);
    }
    bool between(std::size_t a, std::size_t b) const {
        return (rows_[a * words_ + b / 64] >> b % 64 & 1U) != 0;
    }
    /// Whatever `a` cannot stand beside, `b` cannot either; `b` itself apart.
    bool fewer(std::size_t a, std::size_t b) const {
        for (std::size_t w = 0; w < words_; ++w) {
            std::uint64_t only_a = rows_[a * words_ + w] & ~rows_[b * words_ + w];
            if (w == b / 64) only_a &= ~(std::uint64_t{1} << b % 64);
            if (only_a != 0) return false;
        }
        return true;
    }

  private:
    void set(std::size_t row, std::size_t bit) {
        rows_[row * words_ + bit / 64] |= std::uint64_t{1} << bit % 64;
    }
    std::size_t words_;
    std::vector<std::uint64_t> rows_;
};

struct CoverProblem {
    std::vector<CoverItem> items;
    Clashes clashes;  // of as many items
};

/// Compared as the tuple (price, lead, parts, items): the smallest wins, and no two covers are equal.
struct Cover {
    CoverCost cost;
    std::vector<int> items;  // ascending indices
    friend auto operator<=>(const Cover&, const Cover&) = default;
};

/// The smallest cover of the `wanted` needs, or nothing where none exists. REQUIRES: needs below most_needs.
std::optional<Cover> solve_cover(const CoverProblem& problem, Needs wanted);

struct RankedCovers {
    std::optional<Cover> best;
    std::vector<Cover>
        runners_up;  // the smallest without an item of the best, for each item; ascending, each once
};
/// As solve_cover, with the covers that come next.
RankedCovers rank_covers(const CoverProblem& problem, Needs wanted);

}  // namespace endbell::inline kit
