// The smallest tree of change-over contacts that leads from one conductor to the right leaf in every
// combination of its coils.
#pragma once
#include <cstdint>
#include <vector>

namespace endbell::inline wiring {

/// A set of leaves as bits.
using Leaves = std::uint32_t;

/// Node 0 is the root. A node with coil < 0 is a leaf; else `rest` is taken while that coil is dead and
/// `drawn` while it is live. Both are node numbers.
struct ContactTree {
    struct Node {
        int coil = -1;
        int leaf = 0;
        int rest = 0;
        int drawn = 0;
    };
    std::vector<Node> nodes;

    int contacts() const;
    int leaf_at(unsigned coils_live) const;  // bit i: coil i
};

/// `allowed[p]` are the leaves permitted in coil position p; size 2^coils; none may be empty. The tree has
/// the fewest contacts possible: every subcube of positions is solved once. Where several leaves would do,
/// the highest.
ContactTree smallest_tree(int coils, const std::vector<Leaves>& allowed);

}  // namespace endbell::inline wiring
