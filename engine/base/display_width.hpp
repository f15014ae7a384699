// How many columns of a terminal a text takes: letters of East Asia take two, marks upon a letter none. The table is
// the Unicode standard's own (width_table.hpp), since a C library's answer hangs on its locale and its age.
#pragma once
#include <string_view>

namespace endbell::inline base {

/// A byte that is no UTF-8 counts one. What `visible` escapes is not asked for: it never reaches a terminal.
int display_width(std::string_view utf8);

/// What fits into `columns` from the beginning: whole characters with the marks upon them, and at least one, so that who
/// cuts a text up comes to its end.
std::string_view fitting(std::string_view utf8, int columns);

}  // namespace endbell::inline base
