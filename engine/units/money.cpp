#include "engine/units/money.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/ensure.hpp"
#include "engine/base/text.hpp"

namespace endbell::inline units {

namespace {

// ISO 4217: minor-unit digits of the currencies this program has been asked for; from memory.
constexpr std::array<std::pair<std::string_view, int>, 12> currencies{{{"USD", 2},
                                                                       {"CAD", 2},
                                                                       {"MXN", 2},
                                                                       {"EUR", 2},
                                                                       {"GBP", 2},
                                                                       {"AUD", 2},
                                                                       {"NZD", 2},
                                                                       {"CHF", 2},
                                                                       {"INR", 2},
                                                                       {"JPY", 0},
                                                                       {"KWD", 3},
                                                                       {"BHD", 3}}};

std::int64_t power_of_ten(int digits) {
    std::int64_t value = 1;
    for (int i = 0; i < digits; ++i) value *= 10;
    return value;
}

/// Plain digits with at most one point and at most `decimals` digits behind it, times 10^decimals.
std::optional<std::int64_t> read_fixed(std::string_view text, int decimals) {
    bool negative = false;
    if (!text.empty() && (text.front() == '-' || text.front() == '+')) {
        negative = text.front() == '-';
        text.remove_prefix(1);
    }
    std::int64_t value = 0;
    int behind_point = -1;
    int digits = 0;
    for (char c : text) {
        if (c == '.' && behind_point < 0) {
            behind_point = 0;
        } else if (c >= '0' && c <= '9') {
            if (behind_point >= 0 && ++behind_point > decimals) return std::nullopt;
            if (++digits > 15) return std::nullopt;
            value = value * 10 + (c - '0');
        } else {
            return std::nullopt;
        }
    }
    if (digits == 0) return std::nullopt;
    value *= power_of_ten(decimals - std::max(behind_point, 0));
    return negative ? -value : value;
}

__extension__ using Wide = __int128;

/// Rounded half away from zero.
std::int64_t divided(Wide number, std::int64_t by) {
    const Wide half = by / 2;
    return static_cast<std::int64_t>(number >= 0 ? (number + half) / by : -((-number + half) / by));
}

std::optional<Money> money_of(std::optional<std::int64_t> minor, const Currency& currency) {
    if (!minor) return std::nullopt;
    return Money(*minor, currency);
}

void same_currency(const Money& a, const Money& b) {
    ensure(a.currency() == b.currency(), "a sum has one currency");
}

}  // namespace

std::optional<Currency> currency(std::string_view code) {
    for (const auto& known : currencies) {
        if (known.first == code) return Currency{known.first, known.second};
    }
    return std::nullopt;
}

Money operator+(const Money& a, const Money& b) {
    same_currency(a, b);
    return Money(a.minor_ + b.minor_, a.currency_);
}

Money operator-(const Money& a, const Money& b) {
    same_currency(a, b);
    return Money(a.minor_ - b.minor_, a.currency_);
}

std::strong_ordering operator<=>(const Money& a, const Money& b) {
    same_currency(a, b);
    return a.minor_ <=> b.minor_;
}

Money Money::scaled(std::int64_t numerator, std::int64_t denominator) const {
    ensure(denominator > 0, "a share has a positive denominator");
    return Money(divided(static_cast<Wide>(minor_) * numerator, denominator), currency_);
}

Money shares_of(const Money& a, Share of_a, const Money& b, Share of_b) {
    same_currency(a, b);
    const Wide sum =
        static_cast<Wide>(a.minor()) * of_a.millionths + static_cast<Wide>(b.minor()) * of_b.millionths;
    return Money(divided(sum, 1'000'000), a.currency());
}

std::string Money::amount() const {
    std::array<char, 32> room{};
    char* const end = room.data() + room.size();
    char* at = end;
    std::uint64_t left =
        minor_ < 0 ? 0 - static_cast<std::uint64_t>(minor_) : static_cast<std::uint64_t>(minor_);
    for (int digit = 0; digit <= currency_.digits || left > 0; ++digit, left /= 10) {
        if (digit > 0 && digit == currency_.digits) *--at = '.';
        *--at = static_cast<char>('0' + left % 10);
    }
    if (minor_ < 0) *--at = '-';
    return {at, end};
}

std::string to_text(const Money& money) {
    std::string digits = money.amount();
    const std::size_t first = digits.front() == '-' ? 1 : 0;
    std::size_t point = digits.find('.');
    if (point == std::string::npos) point = digits.size();
    for (std::size_t at = point; at > first + 3; at -= 3) digits.insert(at - 3, ",");
    return std::string(money.currency().code) + " " + digits;
}

std::optional<Money> read_amount(std::string_view text, const Currency& currency) {
    text = trimmed(text);
    if (!text.empty() && text.front() == '$') text.remove_prefix(1);
    if (text.find(',') == std::string_view::npos)
        return money_of(read_fixed(text, currency.digits), currency);
    std::string plain(text);
    // A comma is a thousands mark only where three digits follow it; "12,50" is not guessed.
    for (std::size_t comma = plain.find(','); comma != std::string::npos; comma = plain.find(',')) {
        const std::size_t end = std::min(plain.find_first_of(",.", comma + 1), plain.size());
        if (comma == 0 || end - comma != 4) return std::nullopt;
        plain.erase(comma, 1);
    }
    return money_of(read_fixed(plain, currency.digits), currency);
}

std::optional<Share> read_percent(std::string_view text) {
    std::string plain(trimmed(text));
    if (!plain.empty() && plain.back() == '%')
        plain = std::string(trimmed(std::string_view(plain).substr(0, plain.size() - 1)));
    const auto millionths = read_fixed(plain, 4);
    if (!millionths) return std::nullopt;
    return Share{*millionths};
}

}  // namespace endbell::inline units
