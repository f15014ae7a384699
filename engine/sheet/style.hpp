// How a page looks: one style for every sheet.
#pragma once
#include <string_view>

namespace endbell::inline sheet {

/// CSS without anything from outside. Ink and paper only: what a page says, it says without colour.
std::string_view page_style();

}  // namespace endbell::inline sheet
