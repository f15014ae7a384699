// Speeds, poles, speed counts, torque and the direction of rotation.
#pragma once
#include <string_view>
#include <vector>

#include "engine/model/rotation.hpp"
#include "engine/units/units.hpp"
#include "engine/words/scale.hpp"

namespace endbell::inline words {

/// A plate's speed, the highest where several are listed. "variable" and "300-1300" are questions.
Read<Speed> read_speed(const Folded& words);
/// A measured speed: 0 is a reading.
Read<Speed> read_measured_speed(const Folded& words);
/// 2 to 12, even: "6P", "6 pole", "6".
Read<int> read_poles(const Folded& words);
/// How many speeds are used: "3SPD", "4T", "HI-MED-LO", "3". "5 tap" is a question: 24 V taps or five line
/// leads.
Read<int> read_speeds(const Folded& words);

/// "1075/3SPD", "1075/1000/900": the highest speed, and how many there are.
struct SpeedText {
    Read<Speed> speed;
    Read<int> speeds;
};
SpeedText read_speed_text(const Folded& words);

Read<Torque> read_torque(const Folded& words);  // bare numbers are ounce-feet

/// A direction alone, for a text that has its viewing end elsewhere: "CW", "counterclockwise".
Read<Spin> read_spin(const Folded& words);
/// "SE", "drive end"; "OSE", "lead end" and their like. "OE" is a question.
Read<ViewedFrom> read_viewing_end(const Folded& words);
/// A direction with its viewing end: "CWLE" is CCW from the shaft end. A bare "CW" is a question, and so is
/// "OE".
Read<Rotation> read_rotation(const Folded& words);
/// "DS CCWLE": the direction, and whether the text says double shaft. A double shaft needs the lead end.
struct RotationText {
    Read<Rotation> rotation;
    bool double_shaft = false;
};
RotationText read_rotation_text(const Folded& words);

}  // namespace endbell::inline words
