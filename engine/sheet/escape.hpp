// Catalog text can hold anything; nothing it says becomes markup.
#pragma once
#include <string>
#include <string_view>

namespace endbell {

/// Text as HTML or SVG text: markup characters escaped, control characters and direction marks visible.
std::string escape_html(std::string_view text);

}  // namespace endbell
