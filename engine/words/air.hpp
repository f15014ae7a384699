// Air, heat, temperature and time.
#pragma once
#include <string_view>

#include "engine/units/units.hpp"
#include "engine/words/scale.hpp"

namespace endbell::inline words {

/// Bare numbers are cfm; "400/ton" is a question.
Read<Airflow> read_airflow(const Folded& words);

/// Bare numbers are inches of water; pascals where written. The sign is kept: it carries the side of the
/// blower.
Read<Pressure> read_pressure(const Folded& words);

/// Cooling: "3 ton", "36k", "36000". A bare number up to 25 is tons, from 6000 Btu/h, between them a
/// question. "036" comes out of a model number: read, with origin `inferred`.
Read<HeatRate> read_cooling(const Folded& words);

/// Which side of a furnace a figure is: a plate prints both. `not_said`: only "in" or "out" in the text
/// decides.
enum class HeatSide { input, output, not_said };
/// "80K", "80 MBH", "80,000 in", "64 out". Contradicting the field's own side is a question.
Read<HeatRate> read_heat(const Folded& words, HeatSide side);

/// On what scale a bare number lies.
enum class Degrees { fahrenheit, celsius };
Read<Temperature> read_temperature(const Folded& words, Degrees bare);

/// A difference; Fahrenheit degrees unless C is written.
Read<TemperatureRise> read_rise(const Folded& words);
/// "40-70", "40/70 rise".
struct RiseRange {
    Read<TemperatureRise> low;
    Read<TemperatureRise> high;
};
RiseRange read_rise_range(const Folded& words);

Read<Duration> read_duration(const Folded& words);  // bare numbers are seconds

}  // namespace endbell::inline words
