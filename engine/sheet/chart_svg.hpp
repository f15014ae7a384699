// A chart's numbers as inline SVG: lines told apart by dashes and marks, each named where it ends.
#pragma once
#include <string>

#include "engine/explain/document.hpp"

namespace endbell::inline sheet {

/// `id` is unique on the page: it ties the title and the description to the drawing.
std::string chart_svg(const Chart& chart, const std::string& id);

}  // namespace endbell::inline sheet
