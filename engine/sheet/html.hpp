// A document as one HTML file that asks for nothing from outside: style and drawings are inline.
#pragma once
#include <string>

#include "engine/explain/document.hpp"
#include "engine/sheet/escape.hpp"

namespace endbell::inline sheet {

std::string render_html(const Document& document);

}  // namespace endbell::inline sheet
