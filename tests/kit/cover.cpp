#include "engine/kit/cover.hpp"

#include <boost/test/unit_test.hpp>

using namespace endbell;

namespace {

CoverItem item(std::uint32_t cures, int price, int lead = 0, std::vector<int> excludes = {}) {
    return {cures, {0, price}, lead, 1, std::move(excludes)};
}

/// Tries all subsets: the dumb judge of the clever search.
std::optional<Cover> by_trying_all(int needs, const std::vector<CoverItem>& items) {
    std::optional<Cover> best;
    for (std::uint32_t set = 0; set < (1U << items.size()); ++set) {
        Cover cover;
        std::uint32_t cured = 0;
        bool clash = false;
        for (std::size_t i = 0; i < items.size(); ++i) {
            if ((set >> i & 1U) == 0) continue;
            cured |= items[i].cures;
            cover.price = cover.price + items[i].price;
            cover.lead = std::max(cover.lead, items[i].lead);
            cover.parts += items[i].parts;
            cover.items.push_back(static_cast<int>(i));
            for (int other : items[i].excludes) clash = clash || (set >> other & 1U) != 0;
        }
        const std::uint32_t all = (1U << needs) - 1;
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
    const auto cover = solve_cover(0, {item(1, 5)});
    BOOST_REQUIRE(cover);
    BOOST_TEST(cover->items.empty());
}

BOOST_AUTO_TEST_CASE(one_item_that_cures_both_beats_two_dearer_ones) {
    const auto cover = solve_cover(2, {item(1, 300), item(2, 450), item(3, 600)});
    BOOST_REQUIRE(cover);
    BOOST_TEST(cover->items == std::vector<int>{2});
    BOOST_TEST(cover->price.minor == 600);
}

BOOST_AUTO_TEST_CASE(a_need_that_nothing_cures_has_no_cover) {
    BOOST_TEST(!solve_cover(2, {item(1, 300)}));
}

BOOST_AUTO_TEST_CASE(items_that_exclude_each_other_are_never_taken_together) {
    // 100 + 100 would be cheapest, but the first two exclude each other; only one of them says so.
    const auto cover = solve_cover(2, {item(1, 100), item(2, 100, 0, {0}), item(2, 150)});
    BOOST_REQUIRE(cover);
    BOOST_TEST(cover->items == (std::vector<int>{0, 2}));
}

BOOST_AUTO_TEST_CASE(exclusions_alone_can_leave_no_cover) {
    BOOST_TEST(!solve_cover(2, {item(1, 100), item(2, 100, 0, {0})}));
}

BOOST_AUTO_TEST_CASE(equal_price_goes_to_the_shorter_lead_then_to_fewer_parts_then_to_the_first_item) {
    BOOST_TEST(solve_cover(1, {item(1, 100, 5), item(1, 100, 2)})->items == std::vector<int>{1});
    BOOST_TEST(solve_cover(2, {item(1, 50, 1), item(2, 50, 1), item(3, 100, 1)})->items ==
               std::vector<int>{2});
    BOOST_TEST(solve_cover(1, {item(1, 100), item(1, 100)})->items == std::vector<int>{0});
}

BOOST_AUTO_TEST_CASE(a_known_price_beats_an_unknown_one_however_high) {
    std::vector<CoverItem> items{item(1, 0), item(1, 999'999)};
    items[0].price = {1, 0};
    BOOST_TEST(solve_cover(1, items)->items == std::vector<int>{1});
}

BOOST_AUTO_TEST_CASE(a_forbidden_item_is_not_used) {
    BOOST_TEST(solve_cover(1, {item(1, 100), item(1, 200)}, {0})->items == std::vector<int>{1});
}

BOOST_AUTO_TEST_CASE(the_search_equals_trying_every_subset_on_two_thousand_instances) {
    Numbers numbers{20'261'125};
    int none = 0;
    int ties = 0;
    for (int round = 0; round < 2000; ++round) {
        const int needs = 1 + numbers.below(5);
        const int count = 1 + numbers.below(10);
        std::vector<CoverItem> items;
        for (int i = 0; i < count; ++i) {
            CoverItem one;
            one.cures = static_cast<std::uint32_t>(numbers.below(1 << needs));
            one.price = {numbers.below(12) == 0 ? 1 : 0, numbers.below(4) * 100};
            one.lead = numbers.below(3);
            one.parts = 1 + (numbers.below(6) == 0 ? 1 : 0);
            for (int other = 0; other < count; ++other) {
                if (numbers.below(8) == 0) one.excludes.push_back(other);
            }
            std::erase(one.excludes, i);
            items.push_back(one);
        }
        const auto wanted = by_trying_all(needs, items);
        const auto found = solve_cover(needs, items);
        BOOST_REQUIRE(wanted.has_value() == found.has_value());
        none += wanted ? 0 : 1;
        if (!wanted) continue;
        BOOST_TEST(found->items == wanted->items);
        BOOST_TEST(
            (found->price == wanted->price && found->lead == wanted->lead && found->parts == wanted->parts));
        const auto second = solve_cover(needs, items, {found->items.empty() ? 0 : found->items.front()});
        ties += second && second->price == found->price ? 1 : 0;
    }
    BOOST_TEST(none > 200);  // infeasible instances occurred
    BOOST_TEST(ties > 200);  // and ties in price
}
