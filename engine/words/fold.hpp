// One spelling for what people spell in many: lower case, one dash, one fraction, one mu. A text is folded once, where it
// comes in: every reader of this folder takes it Folded, and only fold() and a FoldedLine (folded_line.hpp) make one.
#pragma once
#include <string>
#include <string_view>
#include <utility>

namespace endbell::inline words {

/// A text as somebody wrote it, and what it folds to. Readers look at the folding; a Reading keeps what was written.
class Folded {
  public:
    /// As it was written: for `Reading::raw`, for messages, and where the case tells M from m.
    const std::string& raw() const { return raw_; }
    /// ASCII lower case; typographic dashes, quotes, fractions, mu, degree, ohm, phase and times signs as ASCII;
    /// runs of white space as one blank, none at the ends. Other bytes pass.
    const std::string& text() const { return text_; }

    /// The same writing, of which `text` is what is left to read: its volts taken off, " thru " as ";".
    /// REQUIRES: `text` is made of folded text; only its blanks are tidied again.
    Folded left_with(std::string_view text) const;

  private:
    friend Folded fold(std::string_view raw);
    friend class FoldedLine;
    Folded(std::string raw, std::string text) : raw_(std::move(raw)), text_(std::move(text)) {}

    std::string raw_;
    std::string text_;
};

/// Idempotent: what is folded folds to itself.
Folded fold(std::string_view raw);

/// The letters, digits and signs of a folded text that tell two spellings apart: no blanks, dots, dashes,
/// slashes, commas, underscores, unless between two digits. "O.P.A.O." and "opao" are one key, "5.6" and "56"
/// two.
std::string spelling_key(const Folded& words);

/// What people put where they know nothing: blank, "N/A", "-", "TBD", "see note", "#N/A". Not "0": whether
/// nought is a value depends on the field.
bool is_missing(const Folded& words);
/// The same of a text that nobody has folded: most say something, and are known by their first sign.
bool is_missing(std::string_view raw);

/// A cell that a spreadsheet turned into a date or into an exponent: "2-Jan", "Jan-02", "1.23E+11".
bool is_spreadsheet_damage(const Folded& words);

/// Of the ten, whatever the locale.
inline bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

/// A whole number that is a date of 2000 to 2049 in spreadsheet days (36526 to 54788): "45293" was once 1/2.
bool is_spreadsheet_day(double number);

}  // namespace endbell::inline words
