// What a scan counts, part by part, for every kind of processor that this one can stand for.
#include <array>
#include <boost/test/unit_test.hpp>
#include <map>

#include "engine/index/scan.hpp"
#include "tests/match/pairs.hpp"

namespace endbell::index_tests {

namespace {

using match_tests::Dice;

constexpr std::size_t parts = block_parts + 300;
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

/// 24 rules, each with one finding of the parts of one random set.
struct Rules {
    std::vector<Verdict> verdicts;
    std::vector<BitSet> sets;
    std::vector<FindingSet> list;

    explicit Rules(Dice& dice) {
        for (int r = 0; r < 24; ++r) {
            verdicts.push_back(std::array{Verdict::does_not_fit, Verdict::not_shown,
                                          Verdict::fits_with_changes}[dice.below(3)]);
            sets.push_back(random_set(dice, 4 + dice.below(40)));
        }
        for (std::size_t r = 0; r < sets.size(); ++r)
            list.push_back({r, nullptr, verdicts[r], {nullptr, {}, {sets[r].data()}}});
    }
    int count(Verdict verdict, std::size_t p) const {
        int found = 0;
        for (std::size_t r = 0; r < sets.size(); ++r)
            found += verdicts[r] == verdict && has(sets[r], p) ? 1 : 0;
        return found;
    }
};

const std::vector<std::size_t> asking{0, 3, 5};  // the rules that ask for the one key

/// What a scan must give, counted part by part.
struct Expected {
    std::map<std::size_t, FailCount> fails;
    std::int64_t asked = 0;
    std::vector<std::uint32_t> nearest;

    Expected(const Rules& rules, const std::vector<std::uint32_t>& ranks) {
        // (open, changes, how early the one failure comes, rank) -> part
        std::map<std::array<std::size_t, 4>, std::uint32_t> misses;
        for (std::size_t p = 0; p < parts; ++p) {
            const int ends = rules.count(Verdict::does_not_fit, p);
            const int open = rules.count(Verdict::not_shown, p);
            const int changes = rules.count(Verdict::fits_with_changes, p);
            for (std::size_t r = 0; r < rules.sets.size(); ++r) {
                if (rules.verdicts[r] != Verdict::does_not_fit || !has(rules.sets[r], p)) continue;
                ++fails[r].parts;
                if (ends == 1) ++fails[r].only;
                if (ends == 1 && open == 0) ++fails[r].would_fit;
                if (ends == 1)
                    misses[{static_cast<std::size_t>(open), static_cast<std::size_t>(changes), 100 - r,
                            ranks[p]}] = static_cast<std::uint32_t>(p);
            }
            bool asks = false;
            for (const std::size_t r : asking) asks = asks || has(rules.sets[r], p);
            asked += ends == 0 && open > 0 && asks ? 1 : 0;
        }
        for (const auto& [distance, p] : misses) {
            if (nearest.size() < 10) nearest.push_back(p);
        }
    }
};

void check_sets(const ScanResult& result, const Rules& rules) {
    for (std::size_t p = 0; p < parts; ++p) {
        const bool lives = rules.count(Verdict::does_not_fit, p) == 0;
        const bool open = rules.count(Verdict::not_shown, p) > 0;
        const bool changes = rules.count(Verdict::fits_with_changes, p) > 0;
        const bool right = has(result.fitting, p) == (lives && !open && !changes) &&
                           has(result.changing, p) == (lives && !open && changes) &&
                           has(result.open, p) == (lives && open && !changes) &&
                           has(result.open_changing, p) == (lives && open && changes);
        if (!right) BOOST_ERROR("part " << p);
    }
}

void check_counts(const ScanResult& result, const Expected& expected) {
    for (const auto& [r, counted] : expected.fails) {
        BOOST_TEST(result.fails[r].parts == counted.parts);
        BOOST_TEST(result.fails[r].only == counted.only);
        BOOST_TEST(result.fails[r].would_fit == counted.would_fit);
    }
    BOOST_TEST(result.asked[0] == expected.asked);
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_kernel_counts_what_counting_part_by_part_gives) {
    Dice dice(41);
    for (int round = 0; round < 3; ++round) {
        const Rules rules(dice);
        BitSet all(words);
        for (std::size_t p = 0; p < parts; ++p) add_bit(all.data(), p);
        std::vector<std::uint32_t> ranks(parts);
        for (std::uint32_t p = 0; p < parts; ++p) ranks[p] = static_cast<std::uint32_t>(parts) - p;
        const Expected expected(rules, ranks);

        for (const Kernel& kernel : kernels()) BOOST_TEST_CONTEXT(kernel.name << " round " << round) {
                NearMisses found(10, ranks);
                const Count count{{asking}, &found};
                const ScanResult result = scan(rules.list, &count, all.data(), words, kernel);
                check_sets(result, rules);
                check_sets(scan(rules.list, nullptr, all.data(), words, kernel), rules);
                check_counts(result, expected);
                BOOST_TEST(found.take() == expected.nearest, boost::test_tools::per_element());
            }
    }
}

}  // namespace endbell::index_tests
