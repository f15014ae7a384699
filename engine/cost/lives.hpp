// How long things last, and the chance that they do not. Most published lives are opinion surveys, not
// tracked installations: they order options, they promise nothing.
#pragma once
#include <optional>
#include <string_view>

#include "engine/model/kinds.hpp"
#include "engine/units/units.hpp"

namespace endbell::inline cost {

struct Life {
    std::string_view what;
    Period low, high;
    std::string_view source;  // id of a Source
    Period middle() const { return (low + high) / 2; }
};

/// Of a motor by what it turns and its family; of an unknown family the widest range.
const Life& motor_life(std::optional<Load> load, std::optional<Family> family);
const Life& module_life();
const Life& capacitor_life();
/// Of the whole equipment: a furnace, else a split system.
const Life& equipment_life(std::optional<HeatKind> heat);

/// Survival as exp(-(t / scale)^shape). A shape of about 2 is a part that wears out (common practice).
struct Weibull {
    Period scale;
    double shape = 2;
};
Weibull weibull_with_median(Period median, double shape);
double survival(const Weibull& w, Period age);
/// The chance of failing before `until`, given that it lives at `age`.
double chance_of_failure(const Weibull& w, Period age, Period until);
/// The mean of the time still to come, given that it lives at `age`.
Period mean_remaining(const Weibull& w, Period age);

}  // namespace endbell::inline cost
