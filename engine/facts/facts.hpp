// engine/facts: what follows from a job, derived once for everybody: no other folder reads the fields it is derived
// from.
//
//     FailedUnit + Limits -> Facts
//
// Each fact is a plain value with its origin and reason. docs/decisions/2026-11-30-one-fact-in-one-place.md lists them, and a
// gate of tests/house keeps other folders from reading the raw fields again.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/facts/derived.hpp"
#include "engine/facts/supply_fact.hpp"
#include "engine/model/failed_unit.hpp"
#include "engine/model/limits.hpp"

namespace endbell::inline facts {

/// What an output of heat rests on, where a job leaves more than one possible.
enum class HeatCase {
    as_rated,     // by the plate, at sea level or nearly
    at_altitude,  // by the input that plate or label gives for this altitude
    clocked,      // by the clocked meter
    not_derated,  // by the plate, at an altitude at which burners are derated
    derated,      // limit altitude.derate
    at_volts      // elements: power goes with the square of volts over rated volts (physics)
};
constexpr auto words_of(HeatCase) {
    return std::array{Word<HeatCase>{HeatCase::as_rated, "as rated"},
                      Word<HeatCase>{HeatCase::at_altitude, "as rated for this altitude"},
                      Word<HeatCase>{HeatCase::clocked, "as clocked at the meter"},
                      Word<HeatCase>{HeatCase::not_derated, "burner not derated"},
                      Word<HeatCase>{HeatCase::derated, "burner derated"},
                      Word<HeatCase>{HeatCase::at_volts, "at the volts at work"}};
}

struct HeatOutput {
    HeatCase when = HeatCase::as_rated;
    HeatRate heat;
    std::optional<Voltage> rated,
        at;  // of elements: the volts they are rated at, and those they are fed with
    friend bool operator==(const HeatOutput&, const HeatOutput&) = default;
};

/// What makes heat in the equipment. Empty: not known.
struct Heat {
    /// Every output that the job leaves possible, the greatest first: one where it is decided, two where it is not.
    std::vector<HeatOutput> fuel_heat, low_fuel_heat, element_heat;  // low: only where its output is stated
    std::optional<double> first_stage;  // share of the elements' power, where the stages are stated
    /// Job keys that would decide between two.
    std::vector<std::string> fuel_asks, element_asks;

    std::optional<HeatKind> kind;        // as the job says it
    DerivedFact<bool> burner;            // gas or oil: its board keeps the blower
    DerivedFact<bool> elements;          // electric: never without air
    DerivedFact<bool> compressor;        // a heat pump's: heats on the cooling calls
    std::optional<Power> element_power;  // as rated
    std::optional<HeatRate> fuel_input;
    std::optional<HeatRate> fuel_output;  // as stated, else input times efficiency
    bool fuel_shown() const { return fuel_input || fuel_output; }
    bool none() const { return kind == HeatKind::none; }
    friend bool operator==(const Heat&, const Heat&) = default;
};

struct Facts {
    // Of the old motor.
    bool plate_trusted = true;  // false: signs of an earlier replacement
    DerivedFact<Family> family;
    DerivedFact<int> phase;
    DerivedFact<Frequency> frequency;
    DerivedFact<Speed> speed;         // full-load, as its plate says it
    DerivedFact<int> poles;           // induction motors have them; of an electronic one it means nothing
    DerivedFact<Power> power;         // the largest that the plate lists
    DerivedFact<Torque> torque;       // of that power at the plate's speed
    DerivedFact<SignalClass> signal;  // what the equipment gives the motor today
    DerivedFact<std::vector<PlateVolts>> volts;
    DerivedFact<Capacitance> capacitor;  // the run capacitor that its plate asks for
    DerivedFact<Voltage> capacitor_volts;
    bool had_capacitor = false;  // there is one to take out: stated, or its family needs one

    // Around it.
    Supply supply;
    Heat heat;
    DerivedFact<bool> outdoors;
    DerivedFact<bool> belt;  // between motor and wheel
    /// What an output of the board carries at line voltage: as stated; else what the old motor ran on, where it hung on
    /// speed leads; else the class of a live reading on the called lead.
    DerivedFact<Voltage> output;
    /// What the meter showed on the called tap: as said, else by the unit that was written beside the volts.
    DerivedFact<ControlVoltsKind> control_kind;

    friend bool operator==(const Facts&, const Facts&) = default;
};

Facts facts_of(const FailedUnit& job, const Limits& limits);

/// Three line conductors reach the motor: by the supply's name, or because a three-phase motor hung there before. A
/// system of three phases may feed a unit by two of its lines.
bool has_three_lines(const Facts& facts);

/// Of a plate that is not trusted every field is open: it may be the wrong motor's. What was read stays as raw text. Whoever
/// makes or changes a job calls it (job/ does).
void open_untrusted_plate(FailedUnit& job);

/// Empties the field of one job key, of those that readings can contradict: nothing rests on it, and facts derived
/// again say what is left.
void forget(FailedUnit& job, std::string_view key);

/// Smallest even pole count whose synchronous speed 120 f / P lies above `speed` with 2 to 20 % slip. PSC fan motors
/// slip 8 to 13 %, general motors 3 to 5 %; outside that range the speed proves nothing.
std::optional<int> poles_from(Speed speed, Frequency frequency);
/// 120 f / P. REQUIRES: poles above 0.
Speed synchronous(int poles, Frequency frequency);

/// Shaded-pole and capacitor-run motors are single-phase and their speed leads carry line current, by construction;
/// electronic ones do not say.
std::optional<int> phase_by_construction(Family family);
std::optional<SignalClass> signal_by_construction(Family family);

}  // namespace endbell::inline facts
