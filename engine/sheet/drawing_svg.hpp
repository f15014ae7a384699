// A drawing as inline SVG: in the page's own ink and paper, so that it can be printed without colour and read in the
// dark.
#pragma once
#include <string>

#include "engine/explain/drawing.hpp"

namespace endbell::inline sheet {

/// The opening tag with what a reader who cannot see the drawing is told. `id` is unique on the page.
std::string svg_head(double width, double height, const std::string& title, const std::string& description,
                     const std::string& id, const std::string& more);

std::string to_svg(const Drawing& drawing, const std::string& description, const std::string& id);

}  // namespace endbell::inline sheet
