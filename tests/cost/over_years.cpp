// What a way out has cost by the end of each year, worked out by hand.
#include "engine/cost/over_years.hpp"

#include <boost/test/unit_test.hpp>

using namespace endbell;

namespace {

Money usd(std::int64_t cents) {
    return Money(cents, Currency{});
}

CostOption thousand_dollars_over_three_years() {
    CostOption option;
    option.today = usd(100'000);
    option.energy_cost = usd(10'000);
    option.life = calendar_year(3.6);
    return option;
}

}  // namespace

BOOST_AUTO_TEST_CASE(each_year_adds_its_electricity_and_the_last_year_is_a_whole_one) {
    const std::vector<double> wanted{100'000, 110'000, 120'000, 130'000};
    const std::vector<double> spent = spent_by_year(thousand_dollars_over_three_years(), 0);
    BOOST_TEST(spent == wanted, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(a_price_that_grows_by_a_tenth_has_grown_once_by_the_first_year) {
    // 1000 + 110 = 1110; + 121 = 1231; + 133.10 = 1364.10.
    const std::vector<double> wanted{100'000, 111'000, 123'100, 136'410};
    const std::vector<double> spent = spent_by_year(thousand_dollars_over_three_years(), 0.1);
    BOOST_TEST(spent == wanted, boost::test_tools::tolerance(1e-9) << boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(a_cause_that_stays_adds_the_dearer_loss) {
    CostOption option = thousand_dollars_over_three_years();
    option.recurrence_cured = usd(1'000);
    option.recurrence_uncured = usd(30'000);
    BOOST_TEST(spent_by_year(option, 0)[1] == 111'000);
    option.causes_left.push_back(Cause::high_static);
    BOOST_TEST(spent_by_year(option, 0)[1] == 140'000);
}

BOOST_AUTO_TEST_CASE(without_a_total_or_a_life_there_is_nothing_to_draw) {
    CostOption option = thousand_dollars_over_three_years();
    option.life = Period();
    BOOST_TEST(spent_by_year(option, 0).empty());
    option = thousand_dollars_over_three_years();
    option.today.reset();
    BOOST_TEST(spent_by_year(option, 0).empty());
}
