// One spelling for what people spell in many: lower case, one dash, one fraction, one mu.
#pragma once
#include <string>
#include <string_view>

namespace endbell::inline words {

/// ASCII lower case; typographic dashes, quotes, fractions, mu, degree, ohm, phase and times signs as ASCII;
/// runs of white space as one blank, none at the ends. Other bytes pass. Idempotent.
std::string folded(std::string_view raw);

/// The letters, digits and signs of `folded` text that tell two spellings apart: no blanks, dots, dashes,
/// slashes, commas, underscores, unless between two digits. "O.P.A.O." and "opao" are one key, "5.6" and "56"
/// two.
std::string spelling_key(std::string_view raw);

/// What people put where they know nothing: blank, "N/A", "-", "TBD", "see note", "#N/A". Not "0": whether
/// nought is a value depends on the field.
bool is_missing(std::string_view raw);

/// A cell that a spreadsheet turned into a date or into an exponent: "2-Jan", "Jan-02", "1.23E+11".
bool is_spreadsheet_damage(std::string_view raw);

/// Of the ten, whatever the locale.
inline bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// A whole number that is a date of 2000 to 2049 in spreadsheet days (36526 to 54788): "45293" was once 1/2.
bool is_spreadsheet_day(double number);

}  // namespace endbell::inline words
