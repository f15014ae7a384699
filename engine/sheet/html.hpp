// A document as one HTML file that asks for nothing from outside: style and drawings are inline.
#pragma once
#include <string>
#include <string_view>

#include "engine/explain/document.hpp"

namespace endbell {

/// Text as HTML text: markup characters escaped, control characters and direction marks visible.
std::string escape_html(std::string_view text);

std::string render_html(const Document& document);

}  // namespace endbell
