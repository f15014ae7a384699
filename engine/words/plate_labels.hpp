// The labels of a plate, "HP 1/2 VOLTS 115" or "1/2 HP 115 VOLTS": which figure each belongs to. A plate prints them in front of
// its values, a person types them behind; of two figures at its sides a label takes the one that it can name.
#pragma once
#include <string>
#include <vector>

#include "engine/words/folded_line.hpp"
#include "engine/words/plate_text.hpp"

namespace endbell::inline words {

/// A word of the line: where it stands, and what it says. Slashes may have cut it into several pieces.
struct PlateWord {
    std::vector<Piece> pieces;
    Folded words;
};

/// `length` words from `at` on, as if they stood alone.
Folded run_of(const FoldedLine& line, const std::vector<PlateWord>& words, std::size_t at,
              std::size_t length);

/// Takes what is labelled in front, and the numbers of a serial, a type or a locked rotor, into `out`. What is left, in
/// stretches that no value reaches across.
std::vector<std::vector<PlateWord>> without_labelled(const FoldedLine& line,
                                                     const std::vector<PlateWord>& words, PlateText& out);

}  // namespace endbell::inline words
