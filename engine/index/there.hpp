// What of all sayings has parts in one stretch, told by where its tiles begin before any set is read.
#pragma once
#include <algorithm>
#include <cstddef>
#include <optional>
#include <vector>

#include "engine/index/sweep.hpp"

namespace endbell::inline index {

/// A set that has parts in the stretch: all of them where `full`, turned over by each of the `mixed` sets, which hold
/// some of its parts.
struct Present {
    std::size_t said = 0;  // index into the list
    Verdict verdict = Verdict::fits;
    bool full = false;
    std::size_t first = 0;  // index of the mixed sets
    std::size_t mixed = 0;
};

/// One stretch of all parts.
struct StretchAt {
    std::size_t first = 0;           // word
    std::size_t size = 0;            // words
    const Word64* all = nullptr;     // the parts to be judged, from `first` on
    std::span<const Word64> bodies;  // of the stretch's tiles
    std::size_t parts() const { return static_cast<std::size_t>(count_bits(all, size)); }
};

/// Looks at the edges in one stretch; puts the sets that must be read into `mixed`.
inline Present look(const Edges& edges, const StretchAt& at, std::vector<const Word64*>& mixed,
                    Scratch& scratch) {
    Present present;
    present.first = mixed.size();
    std::optional<Tile> tile;
    const std::size_t stretch = at.first / stretch_words;
    for (const std::uint32_t c : edges.classes) {
        const TileStart& start = edges.column->start(stretch);
        if (c < start.least) continue;
        if (c >= start.greatest) {
            present.full = !present.full;
            continue;
        }
        if (!tile) tile.emplace(edges.column->tile(stretch, at.size, at.bodies));
        mixed.push_back(tile->up_to(c, scratch));
    }
    for (const Word64* set : edges.others) mixed.push_back(set + at.first);
    present.mixed = mixed.size() - present.first;
    return present;
}

/// Only its tile tells which parts of the stretch are in it.
inline bool is_mixed(const Edges& edges, std::size_t stretch) {
    if (edges.column == nullptr) return false;
    const TileStart& start = edges.column->start(stretch);
    return std::any_of(edges.classes.begin(), edges.classes.end(),
                       [&](std::uint32_t c) { return c >= start.least && c < start.greatest; });
}

/// Every part of the stretch is in it.
inline bool holds_all(const Edges& edges, const StretchAt& at) {
    if (!edges.others.empty()) return false;
    const std::size_t stretch = at.first / stretch_words;
    bool all = false;
    for (const std::uint32_t c : edges.classes) {
        const TileStart& start = edges.column->start(stretch);
        if (c >= start.least && c < start.greatest) return false;
        all = all != (c >= start.greatest);
    }
    return all;
}

/// How many of the stretch's parts, `all` in all, are in it: each set of the list holds the one before.
inline std::size_t count_parts(const Edges& edges, const StretchAt& at, std::size_t all) {
    const std::size_t stretch = at.first / stretch_words;
    std::optional<Tile> tile;
    std::size_t parts = 0;
    for (const std::uint32_t c : edges.classes) {
        const TileStart& start = edges.column->start(stretch);
        if (c < start.least) continue;
        std::size_t up_to = all;
        if (c < start.greatest) {
            if (!tile) tile.emplace(edges.column->tile(stretch, at.size, at.bodies));
            up_to = tile->count_up_to(c);
        }
        parts = up_to - parts;
    }
    return parts;
}

/// A stretch, what it is worked out from, and where its results go.
struct SetsThere {
    explicit SetsThere(Swept& results) : out(results) {}

    void look_at(const std::vector<Said>& list) {
        present.clear();
        mixed.clear();
        scratch.clear();
        const auto some =
            std::find_if(list.begin(), list.end(), [](const Said& s) { return s.edges.column; });
        const Bodies* bodies = some != list.end() ? &some->edges.column->bodies() : nullptr;
        const std::size_t stretch = at.first / stretch_words;
        if (bodies != nullptr) at.bodies = bodies->of(stretch);
        shut = falls_everywhere(list) && count_shut(list);
        if (shut) return;
        if (bodies != nullptr) {
            wanted.clear();
            if (bodies->is_new(stretch)) want_mixed(list, stretch);
            at.bodies = bodies->much_of(stretch, wanted, room);
        }
        if (keys != nullptr) place.assign(list.size(), nullptr);
        for (std::size_t s = 0; s < list.size(); ++s) {
            Present here = look(list[s].edges, at, mixed, scratch);
            if (!here.full && here.mixed == 0) continue;
            here.said = s;
            here.verdict = list[s].verdict;
            if (keys != nullptr) place[s] = sets[present.size()].data();
            present.push_back(here);
        }
    }

    void want_mixed(const std::vector<Said>& list, std::size_t stretch) {
        for (const Said& said : list) {
            if (is_mixed(said.edges, stretch)) wanted.push_back(said.edges.column->body(stretch));
        }
    }

    /// Nothing lives in the stretch; and where reasons are counted, nothing in it falls by one finding alone.
    bool falls_everywhere(const std::vector<Said>& list) const {
        std::size_t left = keys != nullptr ? 2 : 1;  // rules that end all
        for (const Said& said : list) {
            if (said.verdict == Verdict::does_not_fit && holds_all(said.edges, at) && --left == 0)
                return true;
        }
        return false;
    }

    /// All that is left to know of it is how many parts each saying ends, and heads tell that. False: not of this list.
    bool count_shut(const std::vector<Said>& list) {
        if (keys == nullptr) return true;
        if (std::any_of(list.begin(), list.end(), [](const Said& s) { return !s.edges.others.empty(); }))
            return false;
        const std::size_t all = at.parts();
        for (std::size_t s = 0; s < list.size(); ++s) {
            if (list[s].verdict == Verdict::does_not_fit)
                out.fails[s].parts += static_cast<std::int64_t>(count_parts(list[s].edges, at, all));
        }
        return true;
    }

    StretchAt at;
    const std::vector<std::vector<std::size_t>>* keys = nullptr;  // null: nothing is counted
    bool shut = false;
    bool lives = false;  // some part does
    std::vector<Present> present;
    std::vector<const Word64*> mixed;
    Scratch scratch;
    std::vector<BodyWords> wanted;     // bodies that are read
    BodyRoom room;                     // for bodies that are copied
    std::vector<Stretch> sets;         // of those present
    std::vector<const Word64*> place;  // of each of the list, its set; null: not present
    Planes open_count, change_count;
    Stretch single{};
    Swept& out;
};

}  // namespace endbell::inline index
