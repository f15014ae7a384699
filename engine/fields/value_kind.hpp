// What a column holds: how its cells are read, how the store keeps the value, and what a person is told of it. A column
// adds its name, its meaning and its bounds.
#pragma once
#include <array>
#include <optional>
#include <string_view>
#include <vector>

#include "engine/fields/cell.hpp"

namespace endbell::inline fields {

struct ValueKind {
    Cell (*read)(std::string_view cleaned);
    std::string_view stored;     // SQLite's type
    std::string_view described;  // Frictionless Table Schema's type
    std::string_view unit = {};  // of a bare number, in the dictionary's words
    std::array<std::string_view, 5> spellings = {};
    /// An enumeration's words, in its order.
    std::vector<std::string_view> (*words)() = nullptr;
    bool several = false;           // words separated by ';'
    std::string_view pattern = {};  // of a cell that has one, as a regular expression
    bool unit_may_follow = false;   // "24 V"
    bool thousands = false;         // "1,075"
    double above_zero = 0.001;      // the least value that the descriptor gives for "above zero"
    std::optional<double> least = {}, most = {};  // that its reader takes
    std::string_view numbers = {};                // an enumeration of numbers, as JSON lists them
    std::string_view condition = {};  // what the store checks of every such column; {} is the column
    std::string_view told = {};       // how that condition is told when a value breaks it
};

/// One constant a kind.
namespace kinds {
extern const ValueKind part_number, text, amount, part_kind, part_status, family, loads, families, phase,
    hertz, poles, rotation, viewed_from, yes_no, inches, mount, drive, enclosure, bearing, positions, celsius,
    service_factor, protection, microfarad, single_volts, speeds, signal, tap_rule, rpm, efficiency, count,
    horsepower, volts, amps, selection, ounce_feet, seconds, terminal_function, cure, volt_amperes, relation,
    currency, date, labour_task, hours, limit_id, plain_number;
}

}  // namespace endbell::inline fields
