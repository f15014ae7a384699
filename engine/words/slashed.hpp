// Plates whose words are joined by slashes: "1/2HP/1075/208-230". The same sign stands in fractions and
// inside lists.
#pragma once
#include <string>
#include <vector>

namespace endbell::inline words {

/// The pieces of a word, each the longest that is one thing on a plate ("208/230", "1075/3SPD"); empty when
/// none of them is.
std::vector<std::string> slash_pieces(const std::string& word);

}  // namespace endbell::inline words
