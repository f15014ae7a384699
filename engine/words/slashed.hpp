// Plates whose words are joined by slashes: "1/2HP/1075/208-230". The same sign stands in fractions and
// inside lists.
#pragma once
#include <vector>

#include "engine/words/folded_line.hpp"

namespace endbell::inline words {

/// A word of `line` cut into the longest that are one thing on a plate each ("208/230", "1075/3SPD"); empty when
/// none of them is.
std::vector<std::vector<Piece>> slash_pieces(const FoldedLine& line, const std::vector<Piece>& word);

}  // namespace endbell::inline words
