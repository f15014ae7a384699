// engine/diagnosis: readings to a reasoned conclusion: what failed, what made it fail, what is still to be measured.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/diagnosis/kinds.hpp"
#include "engine/diagnosis/since_start_up.hpp"
#include "engine/facts/facts.hpp"
#include "engine/model/failed_unit.hpp"
#include "engine/model/finding.hpp"
#include "engine/model/limits.hpp"

namespace endbell::inline diagnosis {

enum class Fault {
    motor,
    module,
    motor_and_module,
    capacitor,
    supply,
    control_signal,
    airflow,
    wheel,     // it rubs, its own bearing binds, or it is caked: the motor turns free without it
    rotation,  // all is good, and it turns the wrong way round
    flooded,   // what stood in water is not judged by readings
    none,
    not_shown
};
constexpr auto words_of(Fault) {
    return std::array{Word<Fault>{Fault::motor, "motor"},
                      Word<Fault>{Fault::module, "module"},
                      Word<Fault>{Fault::motor_and_module, "motor and module"},
                      Word<Fault>{Fault::capacitor, "capacitor"},
                      Word<Fault>{Fault::supply, "supply"},
                      Word<Fault>{Fault::control_signal, "control signal"},
                      Word<Fault>{Fault::airflow, "airflow"},
                      Word<Fault>{Fault::wheel, "wheel"},
                      Word<Fault>{Fault::rotation, "rotation"},
                      Word<Fault>{Fault::flooded, "flooded"},
                      Word<Fault>{Fault::none, "no fault found"},
                      Word<Fault>{Fault::not_shown, "not shown yet"}};
}

/// One reading against one threshold.
struct Evidence {
    Test test = Test::symptom;
    std::string job_key;  // "measured.windings"
    /// fits: passes; fits_with_changes: passes, but must be said; does_not_fit: fails; not_shown: missing or
    /// open.
    Verdict verdict = Verdict::not_shown;
    TestReason reason = TestReason::not_measured;
    Datum measured;
    Datum limit;           // a band of volts is a PlateVolts from its low to its high edge
    std::string limit_id;  // row of limits, where one decided
    std::string source;    // id of a Source
    std::string asks;      // open: the job key that would settle it
    bool carries = false;  // the conclusion stands on it
};

/// A reading still to be taken. Ordered as a person takes them: what is asked, then everything behind the lockout and
/// the wait for the motor's own capacitors (5 minutes, an air-handler service manual), then live readings.
struct MissingReading {
    std::string job_key;
    Test test = Test::symptom;  // wanted for it
    int seconds = 0;            // about how long it takes on site; common practice
    Danger danger = Danger::power_off;
    /// Only with power locked out and the wait over.
    bool power_off() const { return danger == Danger::power_off; }
};

/// A test that the fault tree puts next: one that no reading answers yet.
struct NextTest {
    std::string job_key;  // the reading that it takes
    Test test = Test::symptom;
    Danger danger = Danger::power_off;
    int seconds = 0;     // about how long it takes on site; common practice
    std::string source;  // id of a Source
    int minutes() const { return (seconds + 59) / 60; }
};

/// What killed the part, where the readings show it.
struct RootCause {
    Cause cause = Cause::not_found;
    std::string job_key;
    std::string source;
    double yearly_hazard_uncured = 0;  // chance a year of losing the new part too; common practice
    double yearly_hazard_cured = 0;    // two causes do not add up: take the largest
};

struct Diagnosis {
    Fault fault = Fault::not_shown;
    std::optional<Culprit> culprit;       // outside the motor; none: not shown, or the motor itself
    std::string source;                   // id of the Source of the reasoning; empty while nothing is shown
    std::vector<Evidence> evidence;       // every test, passed, failed or open
    std::vector<MissingReading> missing;  // empty when the conclusion is shown
    /// The tests that narrow the fault down: five at most, the safest class first, within it the quickest. Empty where
    /// nothing is left to find.
    std::vector<NextTest> next;
    std::vector<RootCause> causes;
    std::vector<SinceStartUp> since_start_up;  // beside the readings kept at start-up, where there are some
    std::vector<std::string> contradictions;   // job keys that cannot all be true, joined by " and "

    /// The winding and shaft tests passed: a two-piece motor's module alone may be replaced.
    bool motor_half_proven_good = false;
    /// No reading that tells a dead motor from a live one was given (volts at the motor and air readings
    /// alone serve the match): that the motor failed is then the customer's word, and the sheet says so.
    bool nothing_measured = true;
    /// Nothing should be replaced until the fault elsewhere is cured.
    bool replace_nothing() const {
        return fault == Fault::capacitor || fault == Fault::supply || fault == Fault::control_signal ||
               fault == Fault::airflow || fault == Fault::wheel || fault == Fault::rotation ||
               fault == Fault::flooded || fault == Fault::none;
    }
};

/// A job that says nothing of what was measured gives `not_shown` with the list of readings to take.
/// `facts` are the job's.
Diagnosis diagnose(const FailedUnit& job, const Facts& facts, const Limits& limits);

/// The fault is not shown and a reading speaks against taking the customer's word for it: one that is out of order,
/// contradicts another, or may be either. Readings that are in order or not complete never stop a match.
bool stops_match(const Diagnosis& diagnosis);

/// The job as if what contradicts itself had not been read: whatever is decided rests on this one. None: nothing in it does.
/// `facts` are the job's.
std::optional<FailedUnit> settled(const FailedUnit& job, const Facts& facts, const Limits& limits);

/// What takes part in a contradiction, each key once: to be read again.
std::vector<std::string> keys_to_read_again(const Diagnosis& diagnosis);

}  // namespace endbell::inline diagnosis
