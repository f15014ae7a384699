// Money is whole minor units; one rounding, half away from zero. Currency digits: ISO 4217.
#include "engine/units/money.hpp"

#include <boost/test/unit_test.hpp>

#include "engine/base/ensure.hpp"

using namespace endbell;

namespace {

const Currency usd{"USD", 2};

Money cents(std::int64_t minor) {
    return Money(minor, usd);
}
std::optional<std::int64_t> minor_of(std::string_view text) {
    const auto read = read_amount(text, usd);
    return read ? std::optional(read->minor()) : std::nullopt;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_half_cent_rounds_away_from_zero) {
    BOOST_TEST(cents(5).scaled(1, 2).minor() == 3);    // 2.5
    BOOST_TEST(cents(-5).scaled(1, 2).minor() == -3);  // -2.5
    BOOST_TEST(cents(7).scaled(1, 2).minor() == 4);    // 3.5
    BOOST_TEST(cents(1).scaled(1, 3).minor() == 0);
    BOOST_TEST(cents(2).scaled(1, 3).minor() == 1);
    BOOST_TEST(cents(-2).scaled(1, 3).minor() == -1);
    BOOST_TEST(cents(5).scaled(1, 3).minor() == 2);
}

BOOST_AUTO_TEST_CASE(quotes_worked_out_by_hand) {
    // 7 % of 462.50 is 32.375: 32.38. 185.00 at 60 % margin is 185 / 0.4 = 462.50. Half of 312.50 is 156.25.
    BOOST_TEST(cents(46250).of(Share{70'000}).minor() == 3238);
    BOOST_TEST(cents(18500).scaled(1'000'000, 400'000).minor() == 46250);
    BOOST_TEST(cents(31250).of(Share{500'000}).minor() == 15625);
    BOOST_TEST(cents(12500).scaled(2500, 1000).minor() == 31250);  // 2.5 h at 125.00
    BOOST_TEST(cents(46250 + 31250 + 9500 + 3238).minor() == 90238);
}

BOOST_AUTO_TEST_CASE(a_large_amount_does_not_overflow_on_the_way) {
    const Money million = cents(100'000'000);
    BOOST_TEST(million.scaled(999'999'999'999, 1'000'000'000'000).minor() == 100'000'000);
    BOOST_TEST(million.times(1000).minor() == 100'000'000'000);
}

BOOST_AUTO_TEST_CASE(two_currencies_are_never_added_or_compared) {
    const Money dollars = cents(100);
    const Money yen(100, *currency("JPY"));
    BOOST_CHECK_THROW(dollars + yen, OurBug);
    BOOST_CHECK_THROW(dollars - yen, OurBug);
    BOOST_CHECK_THROW(static_cast<void>(dollars < yen), OurBug);
    BOOST_CHECK(!(dollars == yen));
    BOOST_CHECK(cents(99) < dollars);
    BOOST_CHECK_THROW(dollars.scaled(1, 0), OurBug);
}

BOOST_AUTO_TEST_CASE(amounts_are_read_exactly) {
    BOOST_TEST(*minor_of("1234.5") == 123450);
    BOOST_TEST(*minor_of("$1,234.50") == 123450);
    BOOST_TEST(*minor_of("1,234,567") == 123456700);
    BOOST_TEST(*minor_of("0.07") == 7);
    BOOST_TEST(*minor_of(" 12 ") == 1200);
    BOOST_TEST(*minor_of("-3.10") == -310);
    BOOST_TEST(*minor_of(".5") == 50);
}

BOOST_AUTO_TEST_CASE(what_is_not_plainly_an_amount_is_refused) {
    for (const char* text : {"", " ", "$", "12,50", "1.234,50", "1,23", "12,3456", ",123", "12.345", "1.2.3",
                             "12a", "1e3", "1 234", "--1", "NaN", "9999999999999999", "\u20ac12"}) {
        BOOST_TEST_CONTEXT("'" << text << "'") {
            BOOST_TEST(!minor_of(text).has_value());
        }
    }
}

BOOST_AUTO_TEST_CASE(each_currency_has_its_own_decimals) {
    BOOST_TEST(read_amount("1200", *currency("JPY"))->minor() == 1200);
    BOOST_TEST(!read_amount("12.5", *currency("JPY")).has_value());
    BOOST_TEST(read_amount("1.234", *currency("KWD"))->minor() == 1234);
    BOOST_TEST(!currency("usd").has_value());
    BOOST_TEST(!currency("XXX").has_value());
}

BOOST_AUTO_TEST_CASE(amounts_are_written_back_as_they_are_read) {
    for (std::int64_t minor : {0L, 5L, 50L, 100L, 123456789L, -7L, -12345L}) {
        BOOST_TEST(read_amount(cents(minor).amount(), usd)->minor() == minor);
    }
    BOOST_TEST(cents(5).amount() == "0.05");
    BOOST_TEST(cents(-5).amount() == "-0.05");
    BOOST_TEST(Money(1200, *currency("JPY")).amount() == "1200");
    BOOST_TEST(to_text(cents(123450)) == "USD 1,234.50");
    BOOST_TEST(to_text(cents(99999)) == "USD 999.99");
    BOOST_TEST(to_text(cents(-123456700)) == "USD -1,234,567.00");
    BOOST_TEST(to_text(Money(1234567, *currency("JPY"))) == "JPY 1,234,567");
}

BOOST_AUTO_TEST_CASE(shares_are_read_to_four_decimals) {
    BOOST_TEST(read_percent("7.25")->millionths == 72'500);
    BOOST_TEST(read_percent("7.25 %")->millionths == 72'500);
    BOOST_TEST(read_percent("150%")->millionths == 1'500'000);
    BOOST_TEST(read_percent("0")->millionths == 0);
    for (const char* text : {"", "%", "7,25", "7.25678", "seven", "7 % 8"})
        BOOST_TEST(!read_percent(text).has_value());
}
