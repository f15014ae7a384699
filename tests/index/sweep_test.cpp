// What a sweep counts, part by part, for every kind of processor that this one can stand for.
#include <array>
#include <boost/test/unit_test.hpp>
#include <map>

#include "engine/index/sweep.hpp"
#include "tests/match/pairs.hpp"

namespace endbell::index_tests {

namespace {

using match_tests::Dice;

constexpr std::size_t parts = stretch_parts + 300;
constexpr std::size_t words = words_for(parts);

BitSet random_set(Dice& dice, std::uint64_t one_in) {
    BitSet set(words);
    for (std::size_t p = 0; p < parts; ++p) {
        if (dice.below(one_in) == 0) add_bit(set.data(), p);
    }
    return set;
}

bool has(const BitSet& set, std::size_t p) {
    return (set[p / 64] >> (p % 64) & 1) != 0;
}

/// The verdict of each saying, one rule each, and the parts that it is said of.
struct Sayings {
    std::vector<Verdict> verdicts;
    std::vector<BitSet> sets;
    std::vector<Said> list;

    explicit Sayings(Dice& dice) {
        for (int s = 0; s < 24; ++s) {
            verdicts.push_back(std::array{Verdict::does_not_fit, Verdict::not_shown,
                                          Verdict::fits_with_changes}[dice.below(3)]);
            sets.push_back(random_set(dice, 4 + dice.below(40)));
        }
        for (std::size_t s = 0; s < sets.size(); ++s)
            list.push_back({s, nullptr, verdicts[s], {nullptr, {}, {sets[s].data()}}});
    }
    int said(Verdict verdict, std::size_t p) const {
        int count = 0;
        for (std::size_t s = 0; s < sets.size(); ++s)
            count += verdicts[s] == verdict && has(sets[s], p) ? 1 : 0;
        return count;
    }
};

}  // namespace

BOOST_AUTO_TEST_CASE(every_gait_counts_what_counting_part_by_part_gives) {
    Dice dice(41);
    for (int round = 0; round < 3; ++round) {
        const Sayings all_said(dice);
        BitSet all(words);
        for (std::size_t p = 0; p < parts; ++p) add_bit(all.data(), p);
        std::vector<std::uint32_t> ranks(parts);
        for (std::uint32_t p = 0; p < parts; ++p) ranks[p] = static_cast<std::uint32_t>(parts) - p;
        const std::vector<std::size_t> asking{0, 3, 5};

        std::map<std::size_t, FailCount> fails;
        std::int64_t asked = 0;
        // (open, changes, how early the one failure comes, rank) -> part
        std::map<std::array<std::size_t, 4>, std::uint32_t> misses;
        for (std::size_t p = 0; p < parts; ++p) {
            const int ends = all_said.said(Verdict::does_not_fit, p);
            const int open = all_said.said(Verdict::not_shown, p);
            const int changes = all_said.said(Verdict::fits_with_changes, p);
            for (std::size_t s = 0; s < all_said.sets.size(); ++s) {
                if (all_said.verdicts[s] != Verdict::does_not_fit || !has(all_said.sets[s], p)) continue;
                ++fails[s].parts;
                if (ends == 1) ++fails[s].only;
                if (ends == 1 && open == 0) ++fails[s].would_fit;
                if (ends == 1)
                    misses[{static_cast<std::size_t>(open), static_cast<std::size_t>(changes), 100 - s,
                            ranks[p]}] = static_cast<std::uint32_t>(p);
            }
            bool asks = false;
            for (const std::size_t s : asking) asks = asks || has(all_said.sets[s], p);
            asked += ends == 0 && open > 0 && asks ? 1 : 0;
        }
        std::vector<std::uint32_t> nearest;
        for (const auto& [distance, p] : misses) {
            if (nearest.size() < 10) nearest.push_back(p);
        }

        for (const Gait& gait : gaits()) BOOST_TEST_CONTEXT(gait.name << " round " << round) {
                NearMisses found(10, ranks);
                const Count count{{asking}, &found};
                const Swept swept = sweep(all_said.list, &count, all.data(), words, gait);
                const Swept brief = sweep(all_said.list, nullptr, all.data(), words, gait);
                for (std::size_t p = 0; p < parts; ++p) {
                    const bool lives = all_said.said(Verdict::does_not_fit, p) == 0;
                    const bool open = all_said.said(Verdict::not_shown, p) > 0;
                    const bool changes = all_said.said(Verdict::fits_with_changes, p) > 0;
                    for (const Swept* s : {&swept, &brief}) {
                        const bool right = has(s->fitting, p) == (lives && !open && !changes) &&
                                           has(s->changing, p) == (lives && !open && changes) &&
                                           has(s->open, p) == (lives && open && !changes) &&
                                           has(s->open_changing, p) == (lives && open && changes);
                        if (!right) BOOST_ERROR("part " << p);
                    }
                }
                for (const auto& [s, counted] : fails) {
                    BOOST_TEST(swept.fails[s].parts == counted.parts);
                    BOOST_TEST(swept.fails[s].only == counted.only);
                    BOOST_TEST(swept.fails[s].would_fit == counted.would_fit);
                }
                BOOST_TEST(swept.asked[0] == asked);
                BOOST_TEST(found.take() == nearest, boost::test_tools::per_element());
            }
    }
}

}  // namespace endbell::index_tests
