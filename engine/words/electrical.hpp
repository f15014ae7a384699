// Plate and meter electricity: volts, amps, hertz, phases, ohms, microfarads, volt-amperes.
#pragma once
#include <optional>
#include <string_view>
#include <vector>

#include "engine/model/kinds.hpp"
#include "engine/model/legs.hpp"
#include "engine/model/supply.hpp"
#include "engine/units/units.hpp"
#include "engine/words/scale.hpp"

namespace endbell::inline words {

/// The nominal that a written voltage stands for: 110, 115, 120 are 115; 220, 230, 240 are 230; 200, 208 are
/// 208; 265, 270, 277; 440, 460, 480; 575, 600. Any other figure stands for itself.
double nominal_volts(double written);

/// Plate supply: "115", "208-230", "115/208-230" (two: reconnectable), "230/460". "230" is 230 and no proof
/// of 208. "115/230" is a question unless the motor is electronic (a jumper selects). "460-3-60", "440" and
/// "370" are questions. 24 V is control, not supply: unreadable here.
Read<std::vector<PlateVolts>> read_plate_volts(const Folded& words, std::optional<Family> family = {});
/// One catalog rating: as above, but exactly one span.
Read<PlateVolts> read_rating_volts(const Folded& words);
/// A measured voltage; 0 is a reading.
Read<Voltage> read_voltage(const Folded& words);
/// The voltage printed on a capacitor: 370, 440.
Read<Voltage> read_capacitor_volts(const Folded& words);
/// What feeds the equipment: a figure of one of the classes, or a system as the trade writes it ("120/240", "208Y/120",
/// "480Y/277", "240 high leg", "460-3-60"). "208-230" is a question here, and so is "240 delta".
Read<SupplySystem> read_supply(const Folded& words);

/// Full-load amps of a plate: "3.6", "FLA 3.6", "1.4-1.4" (at 208 and at 230). "3.6/1.8" and RLA are
/// questions.
Read<Current> read_plate_amps(const Folded& words);
/// A measured current; 0 is a reading.
Read<Current> read_current(const Folded& words);
/// One reading, or three of the legs: "118", "460/467/450".
Read<LineVolts> read_line_volts(const Folded& words);
Read<LineAmps> read_line_amps(const Folded& words);
Read<ApparentPower> read_apparent_power(const Folded& words);
/// Ohm; "OL" is an open circuit and reads as infinity; kilohm and megohm are known.
Read<Resistance> read_resistance(const Folded& words);
/// Exactly three, pin to pin: "0.9;0.9;1.0" or with slashes or commas and blanks.
Read<std::vector<Resistance>> read_windings(const Folded& words);
Read<Frequency> read_frequency(const Folded& words);
/// 1 or 3.
Read<int> read_phase(const Folded& words);

/// A capacitor's text: "7.5/370", "45/5 MFD 440V" (compressor and fan). The fan's side is `farads`.
struct CapacitorText {
    Read<Capacitance> farads;
    Read<Voltage> volts;
};
CapacitorText read_capacitor(const Folded& words);
/// Only the capacitance of such a text.
Read<Capacitance> read_capacitance(const Folded& words);
/// The compressor's side of a dual one, "45/5 MFD": the larger. Of a lone value that value.
Read<Capacitance> read_compressor_capacitance(const Folded& words);
/// The same where the text names both sides; a lone value says nothing of a compressor.
Read<Capacitance> compressor_side(const Folded& words);
/// A metered capacitance; 0 is a reading (a dead capacitor).
Read<Capacitance> read_metered_capacitance(const Folded& words);

}  // namespace endbell::inline words
