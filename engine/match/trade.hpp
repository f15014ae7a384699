// What follows from a job or a part by definition, shared by several rules.
#pragma once
#include <optional>

#include "engine/match/answer.hpp"

namespace endbell {

/// Outdoors by the job's word, or because it turns an outdoor fan. Empty: neither is stated.
std::optional<bool> sits_outdoors(const FailedUnit& job);

/// The inducer assembly that the equipment specifies, by number: its mechanics come with it.
bool specified_assembly(const FailedUnit& job, const Part& part);

/// Shaded-pole and capacitor-run motors are single-phase and their speed leads carry line current, by
/// construction; electronic ones do not say.
std::optional<int> phase_by_construction(Family family);
std::optional<SignalClass> signal_by_construction(Family family);

constexpr bool is_induction(Family family) {
    return !is_electronic(family);
}

/// Smallest even pole count whose synchronous speed 120 f / P lies above `speed` with 2 to 20 % slip.
/// PSC fan motors slip 8 to 13 %, general motors 3 to 5 %; outside that range the speed proves nothing.
std::optional<int> poles_from(Speed speed, Frequency frequency);
Speed synchronous(int poles, Frequency frequency);

/// The job's pole count, stated or from the plate's speed (60 Hz where the plate gives no frequency).
/// `disagree`: the plate states one that its own speed contradicts.
struct Poles {
    std::optional<int> count;
    bool disagree = false;
};
Poles old_poles(const FailedUnit& job);

/// Shaft power grows with the cube of speed on one wheel or blade (fan laws).
double cube_law(Speed from, Speed to);

/// The largest power of the old plate.
std::optional<Power> old_power(const FailedUnit& job);

/// The signal that the equipment gives the motor today. `disagree`: the plate states one that its family
/// cannot take.
struct Signal {
    std::optional<SignalClass> value;
    bool disagree = false;
};
Signal signal_given(const FailedUnit& job);
/// A stated signal beside what the family takes by construction.
Signal signal_of(std::optional<SignalClass> stated, std::optional<Family> family);

/// Comparisons at a limit include the limit; this much is the rounding of binary fractions.
inline constexpr double rounding = 1e-9;

}  // namespace endbell
