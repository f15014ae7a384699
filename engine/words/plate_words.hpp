// The recognisers behind read_plate: each takes a run of words when it is unmistakably one thing.
#pragma once
#include <string_view>
#include <vector>

#include "engine/words/fold.hpp"
#include "engine/words/plate_text.hpp"

namespace endbell::inline words {

struct Recogniser {
    std::string_view key;  // the job key it fills
    /// Takes `words` into `out`, or says no and changes nothing.
    bool (*take)(const Folded& words, PlateText& out);
};

/// In the order in which they are asked; an earlier one is the more specific.
const std::vector<Recogniser>& recognisers();

/// "p/n 00A-123": two words, of which the second is kept as it was written. Asked when no recogniser takes the two.
bool take_old_number(const Folded& label, const Folded& number, PlateText& out);

}  // namespace endbell::inline words
