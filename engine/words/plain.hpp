// Yes and no, counts, bare ratios, lists, dates, texts, money and shares.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/kinds.hpp"
#include "engine/units/date.hpp"
#include "engine/units/money.hpp"
#include "engine/words/read.hpp"

namespace endbell::inline words {

Read<bool> read_yes_no(const Folded& words);
/// A whole number from 0: "3", "1,200".
Read<int> read_count(const Folded& words);
/// A bare number from 0: hours, years.
Read<double> read_number(const Folded& words);
/// 1 to 2: "1.0", "SF 1.15".
Read<double> read_service_factor(const Folded& words);
/// 0 to 1, not 0: "0.8", "80 %", "80", "AFUE 96".
Read<double> read_efficiency(const Folded& words);
/// "2;3", "2, 3" or "2 3": the numbers of taps.
Read<std::vector<int>> read_counts(const Folded& words);

/// Any text, trimmed.
Read<std::string> read_text(const Folded& words);
/// Texts separated by ';' or ','.
Read<std::vector<std::string>> read_texts(const Folded& words);
/// A part number stays text: zeros, dashes, blanks. "1.23E+11" is a question: a spreadsheet has eaten it.
Read<std::string> read_part_number(const Folded& words);
/// YYYY-MM-DD, a day that exists.
Read<Date> read_date(const Folded& words);
/// Ten characters YYYY-MM-DD, whether or not the day exists; nothing where they are not.
std::optional<Date> date_of_digits(std::string_view text);
/// ISO 4217, capital letters.
Read<std::string> read_currency(const Folded& words);
/// "humid", "normal" or "dry".
Read<Climate> read_climate(const Folded& words);

/// An amount that may be nought, such as a trip charge.
Read<Money> read_money(const Folded& words, const Currency& currency);
/// A price: nought is missing.
Read<Money> read_price(const Folded& words, const Currency& currency);
/// "7.25", "7.25 %". A bare number under 1 is a question: 0.07 is 7 % to some.
Read<Share> read_share(const Folded& words);
/// A factor on labour: "150 %", "1.5x", "1.5 times".
Read<Share> read_factor(const Folded& words);
/// How many pieces a price is for: "each" 1; "PK2" and "KIT" are questions.
Read<int> read_selling_unit(const Folded& words);

}  // namespace endbell::inline words
