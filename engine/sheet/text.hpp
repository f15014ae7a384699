// A document as text for a terminal, a label printer or a pipe.
#pragma once
#include <string>

#include "engine/explain/document.hpp"

namespace endbell::inline sheet {

/// `width` in characters, at least 40. Control characters in the document's text come out visible.
std::string render_text(const Document& document, int width);

}  // namespace endbell::inline sheet
