// engine/sheet: a document, or all that was worked out, in a form that leaves the program: text, HTML with drawings,
// JSON. Decides nothing. Here: text for a terminal, a label printer or a pipe.
#pragma once
#include <string>

#include "engine/explain/document.hpp"

namespace endbell::inline sheet {

/// `width` in characters, at least 40. Control characters in the document's text come out visible.
std::string render_text(const Document& document, int width);

}  // namespace endbell::inline sheet
