// Catalog text can hold anything; nothing it says becomes markup.
#pragma once
#include <cstddef>
#include <string>
#include <string_view>

namespace endbell::inline sheet {

/// Characters of one paragraph or cell that a page or a terminal shows; what is left out is said. JSON has all.
inline constexpr std::size_t longest_text = 1500;

/// Text as HTML or SVG text: markup characters escaped, control characters and direction marks visible, what is
/// longer than `longest_text` cut.
std::string escape_html(std::string_view text);

}  // namespace endbell::inline sheet
