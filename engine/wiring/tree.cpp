#include "engine/wiring/tree.hpp"

#include <bit>

#include "engine/base/ensure.hpp"

namespace endbell::inline wiring {

namespace {

/// Dynamic programming over subcubes. A subcube is a number in base 3: digit i is 0 or 1 where coil i is
/// decided, 2 where it is open.
class Cubes {
  public:
    Cubes(int coils, const std::vector<Leaves>& allowed) : coils_(coils) {
        for (int i = 0, power = 1; i <= coils; ++i, power *= 3) powers_.push_back(power);
        solved_.resize(static_cast<std::size_t>(powers_.back()));
        for (int cube = 0; cube < powers_.back(); ++cube)
            solved_[static_cast<std::size_t>(cube)] = solve(cube, allowed);
    }

    ContactTree tree() const {
        ContactTree result;
        build(powers_.back() - 1, result);
        return result;
    }

  private:
    struct Solved {
        Leaves common = 0;  // leaves that every position of the subcube permits
        int contacts = 0;
        int coil = -1;
    };

    int digit(int cube, int coil) const { return cube / powers_[static_cast<std::size_t>(coil)] % 3; }
    int with(int cube, int coil, int value) const {
        return cube + (value - digit(cube, coil)) * powers_[static_cast<std::size_t>(coil)];
    }
    const Solved& at(int cube) const { return solved_[static_cast<std::size_t>(cube)]; }

    // The halves of a subcube have smaller numbers, so they are solved before it.
    Solved solve(int cube, const std::vector<Leaves>& allowed) const {
        Solved best;
        bool decided = true;
        std::size_t position = 0;
        for (int coil = 0; coil < coils_; ++coil) {
            const int d = digit(cube, coil);
            if (d == 1) position |= std::size_t{1} << coil;
            if (d != 2) continue;
            const Solved& rest = at(with(cube, coil, 0));
            const Solved& drawn = at(with(cube, coil, 1));
            const int contacts = 1 + rest.contacts + drawn.contacts;
            if (decided || contacts < best.contacts) {
                best.contacts = contacts;
                best.coil = coil;
            }
            best.common = rest.common & drawn.common;
            decided = false;
        }
        if (decided) best.common = allowed[position];
        if (best.common != 0) {
            best.contacts = 0;
            best.coil = -1;
        }
        return best;
    }

    int build(int cube, ContactTree& into) const {
        const int index = static_cast<int>(into.nodes.size());
        into.nodes.emplace_back();
        ContactTree::Node node;
        node.coil = at(cube).coil;
        if (node.coil < 0) {
            node.leaf = static_cast<int>(std::bit_width(at(cube).common)) - 1;
        } else {
            node.rest = build(with(cube, node.coil, 0), into);
            node.drawn = build(with(cube, node.coil, 1), into);
        }
        into.nodes[static_cast<std::size_t>(index)] = node;
        return index;
    }

    int coils_;
    std::vector<int> powers_;
    std::vector<Solved> solved_;
};

}  // namespace

int ContactTree::contacts() const {
    int count = 0;
    for (const Node& n : nodes) count += n.coil >= 0 ? 1 : 0;
    return count;
}

int ContactTree::leaf_at(unsigned coils_live) const {
    const Node* node = &nodes.front();
    while (node->coil >= 0) {
        const bool live = (coils_live >> node->coil & 1u) != 0;
        node = &nodes[static_cast<std::size_t>(live ? node->drawn : node->rest)];
    }
    return node->leaf;
}

ContactTree smallest_tree(int coils, const std::vector<Leaves>& allowed) {
    ensure(allowed.size() == std::size_t{1} << coils, "one set of leaves a coil position");
    for (const Leaves leaves : allowed) ensure(leaves != 0, "every coil position has a permitted leaf");
    return Cubes(coils, allowed).tree();
}

}  // namespace endbell::inline wiring
