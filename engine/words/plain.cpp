#include "engine/words/plain.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/base/text.hpp"
#include "engine/words/fold.hpp"
#include "engine/words/number.hpp"

namespace endbell::inline words {

namespace {

template <std::size_t N>
bool is_one_of(std::string_view word, const std::array<std::string_view, N>& known) {
    return std::find(known.begin(), known.end(), word) != known.end();
}

std::string with_unit(double value, std::string_view unit) {
    return shortest(value) + std::string(unit);
}

}  // namespace

Read<bool> read_yes_no(const Folded& words) {
    if (is_missing(words)) return not_written<bool>();
    static constexpr std::array<std::string_view, 6> yes{"yes", "y", "true", "1", "on", "x"};
    static constexpr std::array<std::string_view, 6> no{"no", "n", "false", "0", "off", "none"};
    const std::string& word = words.text();
    if (is_one_of(word, yes)) return read_as<bool>(words, true);
    if (is_one_of(word, no)) return read_as<bool>(words, false);
    return unreadable<bool>(words, "'yes' or 'no'");
}

Read<int> read_count(const Folded& words) {
    if (is_missing(words)) return not_written<int>();
    const auto number = whole_number(words.text());
    if (!number || number->fraction || number->value != std::floor(number->value) || number->value > 1e6) {
        return unreadable<int>(words, "a whole number from 0");
    }
    return read_as<int>(words, static_cast<int>(number->value));
}

Read<double> read_number(const Folded& words) {
    if (is_missing(words)) return not_written<double>();
    const auto number = whole_number(words.text());
    if (!number || number->value > 1e9) return unreadable<double>(words, "a number from 0");
    return read_as<double>(words, number->value);
}

Read<double> read_service_factor(const Folded& words) {
    constexpr std::string_view expected = "a service factor from 1 to 2, such as '1.0' or 'SF 1.15'";
    if (is_missing(words)) return not_written<double>();
    const auto m = measure(words.text());
    const bool labelled = m && (m->before.empty() || m->before == "sf" || m->before == "servicefactor");
    if (!labelled || m->negative || !m->after.empty() || m->number.value < 1 || m->number.value > 2) {
        return unreadable<double>(words, expected);
    }
    return read_as<double>(words, m->number.value);
}

Read<double> read_efficiency(const Folded& words) {
    constexpr std::string_view expected = "an efficiency, such as '0.8', '80 %' or 'AFUE 96'";
    if (is_missing(words) || words.text() == "0") return not_written<double>();
    const auto m = measure(words.text());
    const bool labelled = m && (m->before.empty() || m->before == "afue" || m->before == "eff");
    if (!labelled || m->negative ||
        (!m->after.empty() && m->after != "%" && m->after != "afue" && m->after != "%afue")) {
        return unreadable<double>(words, expected);
    }
    const bool percent = m->after.starts_with('%') || m->number.value > 1;
    const double share = percent ? m->number.value / 100 : m->number.value;
    if (share <= 0 || share > 1) return unreadable<double>(words, expected);
    return read_as<double>(words, share);
}

Read<std::vector<int>> read_counts(const Folded& words) {
    using List = std::vector<int>;
    if (is_missing(words)) return not_written<List>();
    std::string text = words.text();
    for (char& c : text) {
        if (c == ',' || c == ' ' || c == '+') c = ';';
    }
    List list;
    for (const std::string& part : split(text, ';')) {
        if (part.empty()) continue;
        const Read<int> one = read_count(words.left_with(part));
        if (!one.reading) return unreadable<List>(words, "whole numbers, such as '2; 3'");
        list.push_back(*one.reading);
    }
    return read_as<List>(words, list);
}

Read<std::string> read_text(const Folded& words) {
    if (is_missing(words)) return not_written<std::string>();
    return read_as<std::string>(words, std::string(trimmed(words.raw())));
}

Read<std::vector<std::string>> read_texts(const Folded& words) {
    if (is_missing(words)) return not_written<std::vector<std::string>>();
    std::string text = words.raw();
    std::replace(text.begin(), text.end(), ',', ';');
    std::vector<std::string> list;
    for (const std::string& part : split(text, ';')) {
        if (!trimmed(part).empty()) list.emplace_back(trimmed(part));
    }
    return read_as<std::vector<std::string>>(words, list);
}

Read<std::string> read_part_number(const Folded& words) {
    if (is_missing(words)) return not_written<std::string>();
    const std::string& text = words.text();
    // A month in a part number is no damage; an exponent is.
    if (is_spreadsheet_damage(words) && text.find("e+") != std::string::npos) {
        return ask<std::string>(
            words, "a spreadsheet made a number of this part number: what are all its digits?", {});
    }
    return read_as<std::string>(words, std::string(trimmed(words.raw())));
}

std::optional<Date> date_of_digits(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    std::array<unsigned, 3> numbers{};  // year, month, day
    std::size_t number = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (i == 4 || i == 7) {
            ++number;
        } else if (text[i] >= '0' && text[i] <= '9') {
            numbers[number] = numbers[number] * 10 + static_cast<unsigned>(text[i] - '0');
        } else {
            return std::nullopt;
        }
    }
    return date_of(static_cast<int>(numbers[0]), numbers[1], numbers[2]);
}

Read<Date> read_date(const Folded& words) {
    if (is_missing(words)) return not_written<Date>();
    const std::optional<Date> date = date_of_digits(trimmed(words.raw()));
    if (!date || !date->ok()) return unreadable<Date>(words, "a date as YYYY-MM-DD");
    return read_as<Date>(words, *date);
}

Read<std::string> read_currency(const Folded& words) {
    if (is_missing(words)) return not_written<std::string>();
    const std::string code(trimmed(words.raw()));
    if (!currency(code)) return unreadable<std::string>(words, "a currency code of ISO 4217, such as 'USD'");
    return read_as<std::string>(words, code);
}

Read<Climate> read_climate(const Folded& words) {
    if (is_missing(words)) return not_written<Climate>();
    const std::optional<Climate> climate = from_word<Climate>(words.text());
    return climate ? read_as(words, *climate) : unreadable<Climate>(words, "'humid', 'normal' or 'dry'");
}

Read<Money> read_money(const Folded& words, const Currency& currency) {
    if (is_missing(words)) return not_written<Money>();
    std::string text(trimmed(words.raw()));
    if (text.starts_with(currency.code)) text.erase(0, currency.code.size());
    const auto amount = read_amount(text, currency);
    if (!amount || amount->minor() < 0) {
        return unreadable<Money>(words, "an amount in " + std::string(currency.code) + ", such as '" +
                                            (currency.digits == 0 ? "135" : "135.50") + "'");
    }
    return read_as<Money>(words, *amount);
}

Read<Money> read_price(const Folded& words, const Currency& currency) {
    Read<Money> read = read_money(words, currency);
    if (read.reading && read.reading->minor() == 0) return not_written<Money>();
    return read;
}

Read<Share> read_share(const Folded& words) {
    if (is_missing(words)) return not_written<Share>();
    const auto share = read_percent(words.raw());
    if (!share || share->millionths < 0) return unreadable<Share>(words, "a percentage, such as '8.25 %'");
    const bool sign = words.raw().find('%') != std::string_view::npos;
    if (!sign && share->millionths > 0 && share->millionths < 10'000) {
        const double number = static_cast<double>(share->millionths) / 10'000;
        return ask<Share>(words, "a part of one, or a percentage? Write it with a % sign",
                          {with_unit(number * 100, " %"), with_unit(number, " %")});
    }
    return read_as<Share>(words, *share);
}

Read<Share> read_factor(const Folded& words) {
    if (is_missing(words)) return not_written<Share>();
    const auto m = measure(words.text());
    const bool times = m && m->before.empty() && !m->negative && (m->after == "x" || m->after == "times");
    if (times && m->number.value < 100) {
        return read_as<Share>(words, Share{static_cast<std::int64_t>(std::llround(m->number.value * 1e6))});
    }
    if (m && m->after.empty() && m->number.value > 0 && m->number.value < 10) {
        return ask<Share>(words, "times, or percent? Write '1.5x' or '150 %'",
                          {shortest(m->number.value) + "x", shortest(m->number.value) + " %"});
    }
    return read_share(words);
}

Read<int> read_selling_unit(const Folded& words) {
    if (is_missing(words)) return not_written<int>();
    const std::string key = spelling_key(words);
    if (key == "each" || key == "ea" || key == "pc" || key == "1") return read_as<int>(words, 1);
    if (key.starts_with("pk") || key.starts_with("pack") || key.starts_with("box") || key == "kit" ||
        key == "pr" || key == "pair") {
        return ask<int>(words, "is the price for one piece, or for the whole pack?",
                        {"one piece", "the whole pack"});
    }
    return unreadable<int>(words, "a selling unit, such as 'each'");
}

}  // namespace endbell::inline words
