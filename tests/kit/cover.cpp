#include "engine/kit/cover.hpp"

#include <algorithm>
#include <boost/test/unit_test.hpp>

using namespace endbell;

namespace {

/// As a test writes it down: one direction of an exclusion is enough.
struct Listed {
    CoverItem item;
    std::vector<int> excludes;
};

Listed item(Needs cures, int price, int lead = 0, std::vector<int> excludes = {}) {
    return {{cures, {{0, price}, lead, 1}}, std::move(excludes)};
}

RankedCovers ranked(int needs, const std::vector<Listed>& listed) {
    CoverProblem problem{{}, Clashes(listed.size())};
    for (std::size_t i = 0; i < listed.size(); ++i) {
        problem.items.push_back(listed[i].item);
        for (int other : listed[i].excludes) problem.clashes.add(i, static_cast<std::size_t>(other));
    }
    const Needs wanted = (Needs{1} << needs) - 1;
    RankedCovers found = rank_covers(problem, wanted);
    BOOST_TEST((solve_cover(problem, wanted) == found.best));
    return found;
}

std::optional<Cover> solve(int needs, const std::vector<Listed>& listed) {
    return ranked(needs, listed).best;
}

/// Tries all subsets: the dumb judge of the clever search.
std::optional<Cover> by_trying_all(int needs, const std::vector<Listed>& listed, int without = -1) {
    std::optional<Cover> best;
    for (std::uint32_t set = 0; set < (1U << listed.size()); ++set) {
        if (without >= 0 && (set >> without & 1U) != 0) continue;
        Cover cover;
        Needs cured = 0;
        bool clash = false;
        for (std::size_t i = 0; i < listed.size(); ++i) {
            if ((set >> i & 1U) == 0) continue;
            const CoverItem& taken = listed[i].item;
            cured |= taken.cures;
            cover.cost.price = cover.cost.price + taken.cost.price;
            cover.cost.lead = std::max(cover.cost.lead, taken.cost.lead);
            cover.cost.parts += taken.cost.parts;
            cover.items.push_back(static_cast<int>(i));
            for (int other : listed[i].excludes) clash = clash || (set >> other & 1U) != 0;
        }
        const Needs all = (1U << needs) - 1;
        if (!clash && (cured & all) == all && (!best || cover < *best)) best = cover;
    }
    return best;
}

/// A fixed sequence of numbers below `end` (a linear congruential generator: the same on every machine).
struct Numbers {
    std::uint64_t state;
    int below(int end) {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<int>((state >> 33) % static_cast<std::uint64_t>(end));
    }
};

}  // namespace

BOOST_AUTO_TEST_CASE(no_needs_are_covered_by_nothing) {
    const auto cover = solve(0, {item(1, 5)});
    BOOST_REQUIRE(cover);
    BOOST_TEST(cover->items.empty());
}

BOOST_AUTO_TEST_CASE(one_item_that_cures_both_beats_two_dearer_ones) {
    const auto cover = solve(2, {item(1, 300), item(2, 450), item(3, 600)});
    BOOST_REQUIRE(cover);
    BOOST_TEST(cover->items == std::vector<int>{2});
    BOOST_TEST(cover->cost.price.minor == 600);
}

BOOST_AUTO_TEST_CASE(a_need_that_nothing_cures_has_no_cover) {
    BOOST_TEST(!solve(2, {item(1, 300)}));
}

BOOST_AUTO_TEST_CASE(items_that_exclude_each_other_are_never_taken_together) {
    // 100 + 100 would be cheapest, but the first two exclude each other; only one of them says so.
    const auto cover = solve(2, {item(1, 100), item(2, 100, 0, {0}), item(2, 150)});
    BOOST_REQUIRE(cover);
    BOOST_TEST(cover->items == (std::vector<int>{0, 2}));
}

BOOST_AUTO_TEST_CASE(exclusions_alone_can_leave_no_cover) {
    BOOST_TEST(!solve(2, {item(1, 100), item(2, 100, 0, {0})}));
}

BOOST_AUTO_TEST_CASE(equal_price_goes_to_the_shorter_lead_then_to_fewer_parts_then_to_the_first_item) {
    BOOST_TEST(solve(1, {item(1, 100, 5), item(1, 100, 2)})->items == std::vector<int>{1});
    BOOST_TEST(solve(2, {item(1, 50, 1), item(2, 50, 1), item(3, 100, 1)})->items == std::vector<int>{2});
    BOOST_TEST(solve(1, {item(1, 100), item(1, 100)})->items == std::vector<int>{0});
}

BOOST_AUTO_TEST_CASE(a_known_price_beats_an_unknown_one_however_high) {
    std::vector<Listed> items{item(1, 0), item(1, 999'999)};
    items[0].item.cost.price = {1, 0};
    BOOST_TEST(solve(1, items)->items == std::vector<int>{1});
}

BOOST_AUTO_TEST_CASE(runners_up_are_the_best_without_each_item_of_the_best_each_once) {
    // The best is 0 and 1. Without 0: 2 and 1. Without 1: 0 and 3. Item 4 in place of both is the dearest.
    const RankedCovers found =
        ranked(2, {item(1, 100), item(2, 100), item(1, 300), item(2, 200), item(3, 900)});
    BOOST_TEST(found.best->items == (std::vector<int>{0, 1}));
    BOOST_REQUIRE(found.runners_up.size() == 2);
    BOOST_TEST(found.runners_up[0].items == (std::vector<int>{0, 3}));
    BOOST_TEST(found.runners_up[1].items == (std::vector<int>{1, 2}));
    const RankedCovers once = ranked(2, {item(1, 100), item(2, 100), item(3, 900)});
    BOOST_REQUIRE(once.runners_up.size() == 1);
    BOOST_TEST(once.runners_up[0].items == std::vector<int>{2});
}

BOOST_AUTO_TEST_CASE(an_item_that_only_the_best_outdoes_comes_back_where_that_is_left_out) {
    const RankedCovers found = ranked(1, {item(1, 100), item(1, 200), item(1, 300)});
    BOOST_REQUIRE(found.runners_up.size() == 1);
    BOOST_TEST(found.runners_up[0].items == std::vector<int>{1});
}

BOOST_AUTO_TEST_CASE(needs_that_are_not_wanted_cost_nothing) {
    const CoverProblem problem{{item(1, 100).item, item(2, 100).item, item(5, 900).item}, Clashes(3)};
    BOOST_TEST(solve_cover(problem, 1)->items == std::vector<int>{0});
    BOOST_TEST(solve_cover(problem, 4)->items == std::vector<int>{2});
    BOOST_TEST(solve_cover(problem, 6)->items == (std::vector<int>{1, 2}));
    BOOST_TEST(solve_cover(problem, 0)->items.empty());
}

BOOST_AUTO_TEST_CASE(more_items_than_a_word_has_bits_clash_as_they_say) {
    std::vector<Listed> items(70, item(0, 0));
    for (int i = 0; i < 70; ++i) items[static_cast<std::size_t>(i)] = item(i % 2 == 0 ? 1 : 2, 100 + i);
    for (int other = 1; other < 69; other += 2) items[0].excludes.push_back(other);
    // 0 stands beside 69 alone: 100 + 169; 2 and 1 cost 102 + 101.
    BOOST_TEST(solve(2, items)->items == (std::vector<int>{1, 2}));
    items[2].excludes = items[4].excludes = items[0].excludes;
    items[69] = item(2, 101);
    BOOST_TEST(solve(2, items)->items == (std::vector<int>{0, 69}));
}

BOOST_AUTO_TEST_CASE(the_search_equals_trying_every_subset_on_two_thousand_instances) {
    Numbers numbers{20'261'125};
    int none = 0;
    int ties = 0;
    for (int round = 0; round < 2000; ++round) {
        const int needs = 1 + numbers.below(5);
        const int count = 1 + numbers.below(10);
        std::vector<Listed> items;
        for (int i = 0; i < count; ++i) {
            Listed one;
            one.item.cures = static_cast<Needs>(numbers.below(1 << needs));
            one.item.cost.price = {numbers.below(12) == 0 ? 1 : 0, numbers.below(4) * 100};
            one.item.cost.lead = numbers.below(3);
            one.item.cost.parts = 1 + (numbers.below(6) == 0 ? 1 : 0);
            for (int other = 0; other < count; ++other) {
                if (numbers.below(8) == 0) one.excludes.push_back(other);
            }
            std::erase(one.excludes, i);
            items.push_back(one);
        }
        const auto wanted = by_trying_all(needs, items);
        const RankedCovers found = ranked(needs, items);
        BOOST_TEST((found.best == wanted));
        none += wanted ? 0 : 1;
        if (!wanted) continue;
        std::vector<Cover> others;
        for (int taken : wanted->items) {
            if (auto other = by_trying_all(needs, items, taken)) others.push_back(std::move(*other));
        }
        std::sort(others.begin(), others.end());
        others.erase(std::unique(others.begin(), others.end()), others.end());
        BOOST_TEST((found.runners_up == others));
        ties += !others.empty() && others.front().cost.price == wanted->cost.price ? 1 : 0;
    }
    BOOST_TEST(none > 200);  // infeasible instances occurred
    BOOST_TEST(ties > 200);  // and ties in price
}
