// engine/base: what serves every room and knows nothing of motors: text, ids, places, problems, pages of memory. Here:
// small text tools that never look at the locale.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace endbell::inline base {

/// No byte beyond 0x7f.
bool is_ascii(std::string_view text);

std::string_view trimmed(std::string_view text);
std::string lower(std::string_view ascii);
std::vector<std::string> split(std::string_view text, char separator);
std::string joined(const std::vector<std::string>& parts, std::string_view separator);

/// Letters and digits only, upper case: two spellings of one part number give the same key.
std::string number_key(std::string_view part_number);

/// Control characters, escape sequences, direction marks, invisible characters and bytes that are no UTF-8 as
/// visible \xNN, so that catalog text can never drive a terminal or reorder a line. Other UTF-8 passes.
std::string visible(std::string_view text);

/// The first `most` characters, or all; a byte that is no UTF-8 counts as one. For columns of a terminal: `fitting`.
std::string_view beginning(std::string_view text, std::size_t most);

/// At most `most` characters; what is left out is said: "abc… [9997 more characters]".
std::string shortened(std::string_view text, std::size_t most);

/// The number of single-character edits between two words; two neighbours exchanged are one edit.
int edit_distance(std::string_view a, std::string_view b);

/// The word nearest to `wanted` for a "did you mean", or empty when none is near enough.
std::string nearest(std::string_view wanted, const std::vector<std::string>& known);

}  // namespace endbell::inline base
