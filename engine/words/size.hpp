// Lengths: shafts, bodies, bolt circles, altitude. A bare number is in the field's own unit where it can be,
// else asked.
#pragma once
#include <string_view>

#include "engine/units/units.hpp"
#include "engine/words/scale.hpp"

namespace endbell::inline words {

/// Inches, also as "5-5/8" (mixed, never a range); mm, cm and ft where written.
Read<Length> read_length(const Folded& words);
/// A bare number up to 2 is inches, from 6 to 60 millimetres ("12.7"), between them a question.
Read<Length> read_shaft_diameter(const Folded& words);
/// A bare number up to 20 is inches, from 25 millimetres, between them a question.
Read<Length> read_shaft_length(const Folded& words);
/// "full" is a question: how long is the shaft? Otherwise as a shaft length.
Read<Length> read_shaft_flat(const Folded& words);
/// "5.6", "5-5/8"; "48" and "56" are frames here: a question. From 60 a bare number is millimetres.
Read<Length> read_body_diameter(const Folded& words);
/// A bare number is feet.
Read<Length> read_altitude(const Folded& words);

/// A shaft written in one go: "1/2 x 6", "6 x 1/2", "1/2 dia x 6 lg", ".5 by 6", "1/2 x 4-1/2 flat".
struct ShaftText {
    Read<Length> diameter;
    Read<Length> length;
    Read<Length> flat;
};
/// The larger figure is the length. With "flat" the larger figure is a question. All three fail together.
ShaftText read_shaft(const Folded& words);

}  // namespace endbell::inline words
