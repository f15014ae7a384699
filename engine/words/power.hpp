// Horsepower and watts. A plate's hp is shaft output; a meter's watts are electrical input: never one reader.
#pragma once
#include <string_view>
#include <vector>

#include "engine/units/units.hpp"
#include "engine/words/scale.hpp"

namespace endbell::inline words {

/// The standard ratings, ascending, in hp: 1/60 to 1 of NEMA MG 1 10.32 and the trade's extra steps, then 1.5
/// to 10.
const std::vector<double>& power_ladder();

/// A power within 5 % of a standard rating is that rating; any other stays as it is.
Power snapped(Power power);

/// Shaft power: "1/2", ".5 HP", "3/2", "half horse", "373 W" (746 W a horsepower). Nought is missing. "1-1/2"
/// is a question (one and a half, or a range), "2-Jan" and "45293" are questions, watts that are no standard
/// rating are a question.
Read<Power> read_power(const Folded& words);

/// One power, or several high to low: "1/6-1/2" and "1/6 thru 1/2" (the ends of a wide range),
/// "1/10-1/15-1/25". "3/2" is a question: one and a half, or two ratings.
Read<std::vector<Power>> read_powers(const Folded& words);

/// Shaft power as a blower's sheet prints it: never moved to a standard rating. Watts are not read.
Read<Power> read_brake_power(const Folded& words);

/// Electrical input by meter; bare numbers are watts, 0 is a reading.
Read<Power> read_watts(const Folded& words);

/// Electric heat: "10 kW", "10KW strip"; bare numbers are kilowatts. "2 banks" is a question.
Read<Power> read_electric_heat(const Folded& words);

}  // namespace endbell::inline words
