// One catalog cell: from the text that somebody typed to the value that is stored, or to what was expected.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace endbell::inline fields {

/// As SQLite holds it. monostate is unknown.
using Stored = std::variant<std::monostate, std::int64_t, double, std::string>;

/// Why a text was not read.
struct Refusal {
    std::string expected;
    std::string todo;
};

struct Cell {
    Stored value;
    std::optional<Refusal> refusal = {};

    bool is_read() const { return !refusal; }
    bool is_unknown() const { return is_read() && std::holds_alternative<std::monostate>(value); }
};

/// The text of a cell without what spreadsheets put around it: outer spaces, no-break spaces, ="001".
std::string cleaned(std::string_view text);
/// The same without a copy where there is nothing to replace: in `text` or in `room`.
std::string_view cleaned(std::string_view text, std::string& room);

/// "", "N/A", "-", "TBD", "see note" and their kin: nobody knew.
bool says_nothing(std::string_view cleaned);

/// Why a part number cannot be what was printed ("1.23E+11", "2-Jan"), or empty.
std::string number_damage(std::string_view part_number);

// Readers. All take cleaned text that says something.
namespace cells {

Cell text(std::string_view text);         // one line of words
Cell number_text(std::string_view text);  // a part number or a program: text for ever
Cell count(std::string_view text);        // 0, 1, 2...
Cell plain_number(std::string_view text);
Cell yes_no(std::string_view text);
Cell date(std::string_view text);  // YYYY-MM-DD
Cell currency_code(std::string_view text);
Cell hours(std::string_view text);  // decimal, at most three places
Cell terminal_function(std::string_view text);

Cell part_kind(std::string_view text);
Cell part_status(std::string_view text);
Cell family(std::string_view text);
Cell families(std::string_view text);
Cell loads(std::string_view text);
Cell positions(std::string_view text);
Cell rotation(std::string_view text);  // CW and CCW may bring their viewing end: "CWSE"
Cell viewed_from(std::string_view text);
Cell mount(std::string_view text);
Cell drive(std::string_view text);
Cell enclosure(std::string_view text);
Cell bearing(std::string_view text);
Cell protection(std::string_view text);
Cell signal(std::string_view text);
Cell tap_rule(std::string_view text);
Cell selection(std::string_view text);
Cell cure(std::string_view text);
Cell relation(std::string_view text);
Cell labour_task(std::string_view text);
Cell limit_id(std::string_view text);

Cell phase(std::string_view text);
Cell hertz(std::string_view text);
Cell poles(std::string_view text);
Cell speeds(std::string_view text);
Cell service_factor(std::string_view text);
Cell efficiency(std::string_view text);
Cell horsepower(std::string_view text);
Cell volts(std::string_view text);  // "115" or "208-230"
Cell single_volts(std::string_view text);
Cell amps(std::string_view text);
Cell rpm(std::string_view text);
Cell inches(std::string_view text);
Cell microfarad(std::string_view text);
Cell celsius(std::string_view text);
Cell ounce_feet(std::string_view text);
Cell volt_amperes(std::string_view text);
Cell seconds(std::string_view text);

}  // namespace cells

}  // namespace endbell::inline fields
