// Money is a whole number of minor units (cents) of one ISO 4217 currency. No floating point.
#pragma once
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace endbell::inline units {

/// An ISO 4217 code and how many decimal digits its minor unit has (USD 2, JPY 0, KWD 3).
struct Currency {
    std::string_view code = "USD";  // stays for ever, as a literal or what `currency` gives
    int digits = 2;
    friend bool operator==(const Currency&, const Currency&) = default;
};

/// The currency of an ISO 4217 code in capital letters, or nothing when the code is not one we know.
std::optional<Currency> currency(std::string_view code);

/// A share in whole parts per million: 7.25 % is Share{72'500}. May be above one.
struct Share {
    std::int64_t millionths = 0;
    friend auto operator<=>(const Share&, const Share&) = default;
};

class Money {
  public:
    Money() = default;
    Money(std::int64_t minor, Currency currency) : minor_(minor), currency_(currency) {}

    std::int64_t minor() const { return minor_; }
    const Currency& currency() const { return currency_; }

    /// Throws OurBug when the currencies differ: mixing them is refused before any sum is formed.
    friend Money operator+(const Money& a, const Money& b);
    friend Money operator-(const Money& a, const Money& b);
    friend bool operator==(const Money&, const Money&) = default;
    /// Orders amounts of one currency; throws OurBug on two.
    friend std::strong_ordering operator<=>(const Money& a, const Money& b);

    Money times(std::int64_t count) const { return Money(minor_ * count, currency_); }
    /// `this * numerator / denominator`, rounded half away from zero: the one rounding of this program.
    Money scaled(std::int64_t numerator, std::int64_t denominator) const;
    Money of(Share share) const { return scaled(share.millionths, 1'000'000); }

    /// "1234.50": plain digits, no sign of the currency, read back by `read_amount`.
    std::string amount() const;

  private:
    std::int64_t minor_ = 0;
    Currency currency_;
};

/// A share of one amount and a share of another, added exactly and rounded once: tax on parts and on labour.
Money shares_of(const Money& a, Share of_a, const Money& b, Share of_b);

/// "USD 1,234.50".
std::string to_text(const Money& money);

/// "1234.5", "$1,234.50", "1 234,50" are refused or read exactly: digits, one point, at most the currency's
/// number of decimals; a leading "$" and thousands commas are allowed. Empty when it is not an amount.
std::optional<Money> read_amount(std::string_view text, const Currency& currency);

/// "7.25", "7.25 %" -> 72,500 millionths. Empty when it is not a share with at most four decimals.
std::optional<Share> read_percent(std::string_view text);

}  // namespace endbell::inline units
