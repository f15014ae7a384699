// A line of several words that are read by themselves, together and in pieces: a plate at the counter. The line is folded
// once; what its words fold to is cut out of the line's folding.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/words/fold.hpp"

namespace endbell::inline words {

/// Some bytes of a line as it was written, and the sign between them and the piece in front.
struct Piece {
    std::size_t begin = 0;
    std::size_t end = 0;
    char joint = ' ';
};

class FoldedLine {
  public:
    explicit FoldedLine(std::string_view raw);

    const std::string& raw() const { return raw_; }

    /// As if these pieces were all that somebody had written, with their joints between them.
    /// REQUIRES: no piece begins or ends inside a sign, or at a fraction sign behind a figure ("1½").
    Folded of(const std::vector<Piece>& pieces) const;

  private:
    std::string raw_;
    std::string text_;
    std::vector<std::size_t> place_;  // of each byte of raw_, and of its end, in text_
};

}  // namespace endbell::inline words
