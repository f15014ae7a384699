// Voltages as plates and buildings have them: classes of nominal volts, a plate's volts, and a supply as a system.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <compare>
#include <optional>
#include <vector>

#include "engine/units/units.hpp"

namespace endbell::inline model {

/// low == high for a single nominal. 208-230 has low 208, high 230. A reconnectable 115/208-230 is two of
/// these.
struct PlateVolts {
    Voltage low;
    Voltage high;
    friend auto operator<=>(const PlateVolts&, const PlateVolts&) = default;
};

constexpr PlateVolts plate_volts(double nominal) {
    return {volt(nominal), volt(nominal)};
}
constexpr PlateVolts plate_volts(double low, double high) {
    return {volt(low), volt(high)};
}

/// A class of nominal volts in North America, by the figure that motor plates print (ANSI C84.1, from memory).
struct VoltageClass {
    Voltage nominal;
    std::array<double, 3> written;  // figures that stand for it; 0: none
    bool to_neutral = false;        // to be had from a line conductor to the neutral, and only so
    bool only_60_hertz = true;      // 220 to 240 V are the world's 50 Hz supply, too
};
inline constexpr std::array voltage_classes{VoltageClass{volt(115), {110, 115, 120}, true},
                                            VoltageClass{volt(208), {200, 208, 0}},
                                            VoltageClass{volt(230), {220, 230, 240}, false, false},
                                            VoltageClass{volt(277), {265, 270, 277}, true},
                                            VoltageClass{volt(460), {440, 460, 480}},
                                            VoltageClass{volt(575), {575, 600, 0}}};

/// The class that a written figure stands for; null for a figure that stands for itself.
constexpr const VoltageClass* class_of(double written) {
    for (const VoltageClass& c : voltage_classes) {
        for (const double figure : c.written) {
            if (figure == written) return &c;
        }
    }
    return nullptr;
}

/// The class whose nominal lies nearest to a reading.
inline const VoltageClass& nearest_class(Voltage reading) {
    const auto off = [&](const VoltageClass& c) { return std::abs((c.nominal - reading).in(volt)); };
    return *std::min_element(voltage_classes.begin(), voltage_classes.end(),
                             [&](const VoltageClass& a, const VoltageClass& b) { return off(a) < off(b); });
}

/// A coil is named by its plate class: 110 to 120 V is one, 208 to 240 V another, any other voltage its own (common
/// practice).
constexpr Voltage coil_class(Voltage coil) {
    if (coil >= volt(110) && coil <= volt(120)) return volt(115);
    if (coil >= volt(208) && coil <= volt(240)) return volt(230);
    return coil;
}

/// How a building is fed, as the trade writes it.
enum class SupplyKind {
    bare,          // a figure alone, "230": says nothing of conductors or phases
    split,         // "120/240": single phase, the neutral in the middle
    wye,           // "208Y/120", "480Y/277"
    high_leg,      // "240 high leg": a delta with one leg 208 V to ground, never loaded to the neutral
    single_phase,  // "230-1-60"
    three_phase    // "460-3-60"
};

struct SupplySystem {
    SupplyKind kind = SupplyKind::bare;
    Voltage line;                    // between line conductors; of a bare figure and of 115-1-60: the figure
    std::optional<Voltage> neutral;  // from a line conductor to the neutral, where the name has one
    std::optional<Frequency> frequency;
    friend bool operator==(const SupplySystem&, const SupplySystem&) = default;
};

/// A bare figure.
constexpr SupplySystem bare_supply(Voltage volts) {
    return {SupplyKind::bare, volts, std::nullopt, std::nullopt};
}

/// The nominal volts that a load can be put on, ascending.
inline std::vector<Voltage> volts_of(const SupplySystem& system) {
    if (system.neutral) return {*system.neutral, system.line};
    return {system.line};
}

/// The line conductors that feed a motor, its earth apart.
enum class Conductors { line_and_neutral, two_lines, three_lines };

}  // namespace endbell::inline model
