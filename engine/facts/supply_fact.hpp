// The supply that a motor meets: a system with conductors, not a number.
#pragma once
#include <optional>
#include <vector>

#include "engine/facts/derived.hpp"
#include "engine/model/failed_unit.hpp"
#include "engine/model/finding.hpp"
#include "engine/model/limits.hpp"

namespace endbell::inline facts {

struct Supply {
    /// Every nominal at the motor that the job leaves possible, ascending; empty: it says nothing.
    std::vector<Voltage> nominal;
    std::optional<LineVolts> legs;    // at the motor, as measured: one reading, or three
    std::optional<Voltage> reading;   // the lowest of them: what is too low is judged by it
    std::optional<Voltage> highest;   // what is too high, by this
    bool lost_leg = false;            // of three one is far below: no motor runs on it
    std::optional<Voltage> measured;  // the same where it is live; a dead line is none
    bool dead = false;                // there is a reading, and no motor could run on it
    bool stated = false;              // somebody said what feeds the equipment
    bool from_reading = false;        // `nominal` is only the class nearest to the live reading
    /// Only the old plate speaks: enough to match volts by, never to land conductors by. It tells neither 208 from 240,
    /// nor two lines from line and neutral (common practice).
    bool from_plate = false;
    std::optional<int> phases;  // where the system's name says it
    bool high_leg = false;  // one line conductor is at 208 V to ground: nothing lands from it to the neutral
    Datum wanted;

    /// The one nominal at the motor, where the job leaves one and it is no word of the old plate alone.
    std::optional<Voltage> at_motor() const;
    /// What the motor runs on: the live reading, where it can be one of a stated nominal; else the nominal.
    std::optional<Voltage> at_work() const;
    /// The reading is that of the high leg to the neutral or to ground: no motor belongs there.
    bool on_the_high_leg() const;
    friend bool operator==(const Supply& a, const Supply& b) {
        return a.nominal == b.nominal && a.legs == b.legs && a.dead == b.dead && a.stated == b.stated &&
               a.from_reading == b.from_reading && a.from_plate == b.from_plate && a.phases == b.phases &&
               a.high_leg == b.high_leg;
    }
};

/// `phase` and `volts` are the old motor's.
Supply supply_of(const FailedUnit& job, const DerivedFact<int>& phase,
                 const DerivedFact<std::vector<PlateVolts>>& volts, const Limits& limits);

/// The line conductors of a motor of so many phases on this supply; empty where it is not known.
std::optional<Conductors> conductors_for(const Supply& supply, std::optional<int> phases);

}  // namespace endbell::inline facts
