#include "engine/fields/cell.hpp"

#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/fields/cell_tools.hpp"
#include "engine/units/money.hpp"
#include "engine/words/air.hpp"
#include "engine/words/electrical.hpp"
#include "engine/words/fold.hpp"
#include "engine/words/number.hpp"
#include "engine/words/plain.hpp"
#include "engine/words/power.hpp"
#include "engine/words/size.hpp"
#include "engine/words/turning.hpp"
#include "engine/words/write.hpp"

namespace endbell::inline fields {

namespace {

using cells::from_read;
using cells::refused;
using cells::stored;

template <class D>
Cell quantity(const Read<Quantity<D>>& read, Unit<D> unit) {
    return from_read(read, [unit](Quantity<D> value) { return Stored(value.in(unit)); });
}

Cell whole(const std::optional<NumberText>& number, std::string_view expected) {
    const bool fits = number && number->value >= 0 && number->value <= 1e9 && !number->fraction &&
                      !number->comma_unclear &&
                      number->value == static_cast<double>(static_cast<std::int64_t>(number->value));
    if (!fits) return refused(std::string(expected), "correct the cell");
    return stored(static_cast<std::int64_t>(number->value));
}

bool is_control(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte < 0x20 || byte == 0x7f;
}
/// Line breaks and tabs aside.
bool has_control(std::string_view text) {
    return std::any_of(text.begin(), text.end(),
                       [](char c) { return is_control(c) && c != '\n' && c != '\r' && c != '\t'; });
}

bool all_digits(std::string_view text) {
    return !text.empty() &&
           std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

/// Without control characters and two blanks in a row, as nearly all are.
bool is_one_line(std::string_view trimmed) {
    unsigned char before = 0;
    for (const char c : trimmed) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte <= ' ' && (byte != ' ' || before == ' ')) return false;
        before = byte;
    }
    return true;
}

/// Line breaks and tabs inside a cell become single blanks.
std::string one_line(std::string_view text) {
    if (is_one_line(text)) return std::string(text);
    std::string line;
    line.reserve(text.size());
    for (const char c : text) {
        const bool blank = c == ' ' || c == '\n' || c == '\r' || c == '\t';
        if (!blank) line += c;
        if (blank && !line.empty() && line.back() != ' ') line += ' ';
    }
    return std::string(trimmed(line));
}

/// Zero of a thing that cannot be zero: nobody knew.
Cell zero_is_unknown(Cell cell) {
    if (const double* number = std::get_if<double>(&cell.value); number != nullptr && *number == 0)
        return stored({});
    return cell;
}

/// No-break spaces, wide and narrow, as blanks.
std::string with_plain_blanks(std::string_view text) {
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool no_break = text.substr(i, 2) == "\xc2\xa0";
        const bool narrow = text.substr(i, 3) == "\xe2\x80\xaf" || text.substr(i, 3) == "\xe2\x80\x87";
        plain += no_break || narrow ? ' ' : text[i];
        i += no_break ? 1 : narrow ? 2 : 0;
    }
    return plain;
}

constexpr std::size_t longest_text = 4000;

}  // namespace

std::string_view cleaned(std::string_view text, std::string& room) {
    const bool ascii = is_ascii(text);
    if (!ascii) room = with_plain_blanks(text);
    std::string_view inner = trimmed(ascii ? text : room);
    if (inner.size() >= 3 && inner.substr(0, 2) == "=\"" && inner.back() == '"') {
        inner = trimmed(inner.substr(2, inner.size() - 3));
    }
    return inner;
}

std::string cleaned(std::string_view text) {
    std::string room;
    return std::string(cleaned(text, room));
}

bool says_nothing(std::string_view cleaned) {
    return cleaned.empty() || is_missing(cleaned);
}

std::string number_damage(std::string_view part_number) {
    if (!is_spreadsheet_damage(fold(part_number))) return "";
    const bool exponent = part_number.find('+') != std::string_view::npos;
    return exponent ? "a part number, not a spreadsheet's exponent"
                    : "a part number, not a spreadsheet's date";
}

namespace cells {

Cell text(std::string_view text) {
    if (has_control(text)) return refused("text without control characters", "retype the cell");
    if (text.size() > longest_text) return refused("at most 4000 characters", "shorten the text");
    return stored(one_line(text));
}

Cell number_text(std::string_view text) {
    if (std::any_of(text.begin(), text.end(), is_control))
        return refused("text without control characters", "retype the cell");
    if (text.size() > 100) return refused("at most 100 characters", "check the column");
    if (const std::string damage = number_damage(text); !damage.empty())
        return refused(damage, "copy it again from the source, in a column formatted as text");
    return stored(std::string(text));
}

Cell count(std::string_view text) {
    return whole(whole_number(fold(text).text()), "a whole number");
}

Cell plain_number(std::string_view text) {
    std::string_view digits = text;
    const bool negative = !digits.empty() && digits.front() == '-';
    if (negative) digits.remove_prefix(1);
    const std::optional<NumberText> number = whole_number(fold(digits).text());
    if (!number || number->comma_unclear) return refused("a number such as 1.15", "correct the cell");
    return stored(negative ? -number->value : number->value);
}

Cell yes_no(std::string_view text) {
    return from_read(read_yes_no(fold(text)),
                     [](bool value) { return Stored(std::string(value ? "yes" : "no")); });
}

Cell date(std::string_view text) {
    return from_read(read_date(fold(text)), [](Date value) { return Stored(write(value)); });
}

Cell currency_code(std::string_view text) {
    const std::optional<Currency> known = currency(text);
    if (!known) return refused("an ISO 4217 code such as USD", "write the three capital letters");
    return stored(std::string(known->code));
}

Cell hours(std::string_view text) {
    const std::size_t point = text.find('.');
    std::string before(text.substr(0, point));
    std::string after(point == std::string_view::npos ? "" : text.substr(point + 1));
    while (!after.empty() && after.back() == '0') after.pop_back();
    if (before.empty()) before = "0";
    const bool read =
        all_digits(before) && before.size() <= 3 && after.size() <= 3 && (after.empty() || all_digits(after));
    if (!read) return refused("hours such as 1.25, at most three places", "correct the cell");
    before.erase(0, std::min(before.find_first_not_of('0'), before.size() - 1));
    return stored(after.empty() ? before : before + "." + after);
}

Cell phase(std::string_view text) {
    return from_read(read_phase(fold(text)), [](int value) { return Stored(std::int64_t{value}); });
}
Cell hertz(std::string_view text) {
    return quantity(read_frequency(fold(text)), endbell::hertz);
}
Cell volts(std::string_view text) {
    return from_read(read_rating_volts(fold(text)), [](const PlateVolts& span) {
        const std::string low = shortest(span.low.in(volt));
        return Stored(span.low == span.high ? low : low + "-" + shortest(span.high.in(volt)));
    });
}
Cell single_volts(std::string_view text) {
    return zero_is_unknown(quantity(read_voltage(fold(text)), volt));
}
Cell amps(std::string_view text) {
    return quantity(read_plate_amps(fold(text)), ampere);
}
Cell microfarad(std::string_view text) {
    return quantity(read_capacitance(fold(text)), endbell::microfarad);
}
Cell volt_amperes(std::string_view text) {
    return quantity(read_apparent_power(fold(text)), volt_ampere);
}
Cell poles(std::string_view text) {
    return from_read(read_poles(fold(text)), [](int value) { return Stored(std::int64_t{value}); });
}
Cell speeds(std::string_view text) {
    return from_read(read_speeds(fold(text)), [](int value) { return Stored(std::int64_t{value}); });
}
Cell horsepower(std::string_view text) {
    return quantity(read_power(fold(text)), endbell::horsepower);
}
Cell rpm(std::string_view text) {
    return quantity(read_speed(fold(text)), endbell::rpm);
}
Cell inches(std::string_view text) {
    return quantity(read_length(fold(text)), inch);
}
Cell ounce_feet(std::string_view text) {
    return quantity(read_torque(fold(text)), ounce_foot);
}
Cell seconds(std::string_view text) {
    return quantity(read_duration(fold(text)), second);
}
Cell celsius(std::string_view text) {
    return from_read(read_temperature(fold(text), Degrees::celsius),
                     [](Temperature value) { return Stored(value.in_celsius()); });
}
Cell service_factor(std::string_view text) {
    return from_read(read_service_factor(fold(text)), [](double value) { return Stored(value); });
}
Cell efficiency(std::string_view text) {
    return from_read(read_efficiency(fold(text)), [](double value) { return Stored(value); });
}

}  // namespace cells

}  // namespace endbell::inline fields
