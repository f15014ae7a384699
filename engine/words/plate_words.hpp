// The recognisers behind read_plate: each takes a run of words when it is unmistakably one thing.
#pragma once
#include <string>
#include <vector>

#include "engine/words/plate_text.hpp"

namespace endbell::inline words {

struct Recogniser {
    std::string_view key;  // the job key it fills
    /// Takes `words` into `out`, or says no and changes nothing.
    bool (*take)(const std::string& words, PlateText& out);
};

/// In the order in which they are asked; an earlier one is the more specific.
const std::vector<Recogniser>& recognisers();

}  // namespace endbell::inline words
