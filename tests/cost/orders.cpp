#include "engine/cost/orders.hpp"

#include <boost/test/unit_test.hpp>

#include "cost_world.hpp"

using namespace endbell;
using namespace endbell::cost_world;

namespace {

Purchase buys(std::string job, std::string part, std::int64_t price, std::string seller = "counter",
              int stock = 3) {
    Offer o = offer(part, price, stock);
    o.seller = std::move(seller);
    return {std::move(job), std::move(part), o};
}

}  // namespace

BOOST_AUTO_TEST_CASE(one_part_for_three_jobs_is_one_line_of_three) {
    const OrderList list =
        order_list({buys("attic", "M-1", 100), buys("cellar", "M-1", 100), buys("attic", "M-1", 100)});
    BOOST_REQUIRE(list.lines.size() == 1);
    BOOST_TEST(list.lines[0].count == 3);
    BOOST_TEST(list.lines[0].total->minor() == 300);
    BOOST_TEST(list.lines[0].jobs == (std::vector<std::string>{"attic", "cellar"}));
    BOOST_TEST(*list.lines[0].short_of == 0);
}

BOOST_AUTO_TEST_CASE(stock_that_does_not_reach_is_said) {
    const OrderList list =
        order_list({buys("a", "M-1", 100, "counter", 1), buys("b", "M-1", 100, "counter", 1)});
    BOOST_TEST(*list.lines.at(0).short_of == 1);
}

BOOST_AUTO_TEST_CASE(sellers_and_prices_are_kept_apart_and_ordered) {
    const OrderList list =
        order_list({buys("a", "M-2", 5, "west"), buys("a", "M-1", 7, "west"), buys("b", "M-1", 6, "east")});
    BOOST_REQUIRE(list.lines.size() == 3);
    BOOST_TEST(list.lines[0].seller == "east");
    BOOST_TEST(list.lines[1].part_id == "M-1");
    BOOST_TEST(list.lines[2].part_id == "M-2");
    BOOST_TEST(list.totals.at(0).minor() == 18);
}

BOOST_AUTO_TEST_CASE(two_currencies_have_two_totals_and_a_part_without_a_price_none) {
    Purchase foreign = buys("a", "M-1", 5);
    foreign.offer->price = Money(9, *currency("CAD"));
    const OrderList list = order_list({buys("a", "M-1", 5), foreign, {"a", "M-3", std::nullopt}});
    BOOST_REQUIRE(list.totals.size() == 2);
    BOOST_TEST(list.totals[0].currency().code == "CAD");
    BOOST_TEST(list.totals[1].minor() == 5);
    BOOST_TEST(list.unpriced == 1);
    BOOST_TEST(list.lines.at(0).part_id == "M-3");
}

BOOST_AUTO_TEST_CASE(the_list_does_not_depend_on_the_order_of_the_jobs) {
    std::vector<Purchase> all{buys("a", "M-1", 5), buys("b", "M-2", 6), buys("c", "M-1", 5),
                              buys("d", "M-3", 1, "east")};
    const OrderList before = order_list(all);
    std::reverse(all.begin(), all.end());
    const OrderList after = order_list(all);
    BOOST_REQUIRE(before.lines.size() == after.lines.size());
    int bought = 0;
    for (std::size_t i = 0; i < before.lines.size(); ++i) {
        BOOST_TEST(before.lines[i].part_id == after.lines[i].part_id);
        BOOST_TEST(before.lines[i].jobs == after.lines[i].jobs);
        bought += before.lines[i].count;
    }
    BOOST_TEST(bought == 4);
}

BOOST_AUTO_TEST_CASE(a_job_buys_its_part_and_its_kit) {
    PricedCandidate c = priced(motor("M-1"), offer("M-1", 18'500));
    c.kit.parts.push_back({"B-1", offer("B-1", 400), {0}});
    const auto purchases = purchases_of("attic", c);
    BOOST_REQUIRE(purchases.size() == 2);
    BOOST_TEST(purchases[1].part_id == "B-1");
    BOOST_TEST(purchases[1].job == "attic");
}
