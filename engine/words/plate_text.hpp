// A nameplate in one line of text, in any order, as it is typed at the counter:
//     1/2 hp 208-230 1075 3spd CCWLE 1/2x5 psc
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/failed_unit.hpp"

namespace endbell::inline words {

/// Some words of the text, and the job key they were read as ("plate.power"). `key` "noted": understood, but
/// nothing in a choice depends on it (insulation class, duty).
struct UnderstoodWords {
    std::string text;
    std::string key;
};

struct PlateText {
    UnitReadings unit;    // the load, where words like "condenser" say it; the old part number behind "p/n"
    PlateReadings plate;  // origin plate
    std::vector<UnderstoodWords> understood;
    std::vector<std::string> not_understood;  // every word is here or in `understood`
};

/// Never throws. Words joined by slashes, "1/2HP/1075/208-230", are read as if by blanks. Two words that
/// contradict each other leave the field open. A bare fraction is a question about power and shaft; 370 and
/// 440 beside a capacitor are its volts.
PlateText read_plate(std::string_view text);

}  // namespace endbell::inline words
