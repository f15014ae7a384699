// A drawing as an SVG element: black lines on white, no style from outside, text escaped.
#pragma once
#include <string>

#include "engine/wiring/drawing.hpp"

namespace endbell {

/// `description` is what a screen reader says instead of the picture. Scales to the width it is given.
std::string to_svg(const Drawing& drawing, const std::string& description);

}  // namespace endbell
