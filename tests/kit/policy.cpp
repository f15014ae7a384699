#include <boost/test/unit_test.hpp>

#include "kit_world.hpp"

using namespace endbell;
using namespace endbell::kit_world;

namespace {

Offer from(std::string branch, std::string seller, std::int64_t cents, int stock, std::optional<int> lead) {
    Offer o = offer("X", cents, stock);
    o.branch = std::move(branch);
    o.seller = std::move(seller);
    o.lead_days = lead;
    return o;
}

}  // namespace

BOOST_AUTO_TEST_CASE(own_stock_comes_before_a_lower_price_elsewhere) {
    const auto best = best_offer({from("south", "a", 100, 9, 1), from("north", "b", 200, 1, 0)}, policy());
    BOOST_TEST(best->seller == "b");
}

BOOST_AUTO_TEST_CASE(without_own_stock_the_lower_price_then_the_shorter_lead_then_the_seller_decides) {
    BOOST_TEST(best_offer({from("south", "a", 200, 0, 1), from("south", "b", 100, 0, 7)}, policy())->seller ==
               "b");
    BOOST_TEST(best_offer({from("south", "a", 100, 0, 7), from("south", "b", 100, 0, 1)}, policy())->seller ==
               "b");
    BOOST_TEST(
        best_offer({from("south", "b", 100, 0, std::nullopt), from("south", "a", 100, 0, 30)}, policy())
            ->seller == "a");
    BOOST_TEST(best_offer({from("south", "b", 100, 0, 1), from("south", "a", 100, 0, 1)}, policy())->seller ==
               "a");
}

BOOST_AUTO_TEST_CASE(an_offer_without_a_price_in_the_shop_s_currency_comes_after_one_with) {
    Offer foreign = from("north", "a", 1, 0, 0);
    foreign.price = Money(1, *currency("CAD"));
    BOOST_TEST(best_offer({foreign, from("south", "b", 90'000, 0, 20)}, policy())->seller == "b");
    BOOST_TEST(!price_of(foreign, policy()));
}

BOOST_AUTO_TEST_CASE(a_cap_on_stock_or_lead_passes_only_what_is_known_to_keep_it) {
    Policy p = policy();
    p.in_stock_only = true;
    BOOST_TEST(!best_offer({from("south", "a", 100, 9, 0), from("north", "b", 100, 0, 0)}, p));
    p.in_stock_only = false;
    p.longest_lead_days = 2;
    BOOST_TEST(best_offer({from("south", "a", 100, 0, 3), from("south", "b", 900, 0, 2)}, p)->seller == "b");
    BOOST_TEST(!best_offer({from("south", "a", 100, 0, std::nullopt)}, p));
}

BOOST_AUTO_TEST_CASE(what_stands_on_the_shop_s_own_shelf_has_no_lead) {
    BOOST_TEST(*lead_of(from("north", "a", 100, 1, 4), policy()) == 0);
    BOOST_TEST(*lead_of(from("south", "a", 100, 1, 4), policy()) == 4);
    BOOST_TEST(!lead_of(from("south", "a", 100, 1, std::nullopt), policy()));
}

BOOST_AUTO_TEST_CASE(the_policy_is_what_the_job_says_of_the_shop) {
    FailedUnit job;
    BOOST_TEST(policy_of(job).currency.code == "USD");
    job.shop.labour_rate = known(Money(9'500, *currency("CAD")));
    BOOST_TEST(policy_of(job).currency.code == "CAD");
    job.shop.currency = known(std::string("EUR"));
    job.shop.branch = known(std::string("north"));
    job.shop.longest_lead_days = known(5);
    const Policy p = policy_of(job);
    BOOST_TEST(p.currency.code == "EUR");
    BOOST_TEST(p.branch == "north");
    BOOST_TEST(*p.longest_lead_days == 5);
    BOOST_TEST(!p.in_stock_only);
}
