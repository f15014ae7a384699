// The recognisers behind read_plate: each takes a run of words when it is unmistakably one thing.
#pragma once
#include <string_view>
#include <vector>

#include "engine/words/fold.hpp"
#include "engine/words/plate_text.hpp"
#include "engine/words/read.hpp"

namespace endbell::inline words {

/// Puts what was read into its field. A second, different value leaves the field open; a value settles a
/// question.
template <class T>
bool put(Reading<T>& field, const Read<T>& read) {
    if (read.failed() || read.reading.raw.empty()) return false;
    if (field && read.reading && *field != *read.reading) {
        const std::string first = field.raw;
        field.value.reset();
        field.question = "the plate text says two things: which is right?";
        field.readings = {first, read.reading.raw};
        field.raw = first + " " + read.reading.raw;
        return true;
    }
    if (field) return true;
    field = read.reading;
    field.origin = Origin::plate;
    return true;
}

struct Recogniser {
    std::string_view key;  // the job key it fills
    /// Takes `words` into `out`, or says no and changes nothing.
    bool (*take)(const Folded& words, PlateText& out);
};

/// In the order in which they are asked; an earlier one is the more specific.
const std::vector<Recogniser>& recognisers();

/// "48Y", "FR 56": a recogniser of plate_frame.cpp.
bool take_frame(const Folded& words, PlateText& out);
/// "460-3-60": volts, phases and hertz, of the motor or of the unit that feeds it.
bool take_supply_triple(const Folded& words, PlateText& out);

/// "p/n 00A-123": two words, of which the second is kept as it was written. Asked when no recogniser takes the two.
bool take_old_number(const Folded& label, const Folded& number, PlateText& out);

}  // namespace endbell::inline words
