// Numbers as they are spoken at a counter: "ten seventy-five" is 1075, "two oh eight" 208.
#pragma once
#include <string>
#include <string_view>

namespace endbell::inline words {

/// Numbers of three and four digits, spoken in two parts, in figures; everything else as it is.
std::string spoken_in_figures(std::string_view text);

}  // namespace endbell::inline words
