#include "engine/job/truth.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "engine/facts/facts.hpp"
#include "engine/words/write.hpp"

namespace endbell::inline job {

namespace {

template <class T>
Problem refused(const Reading<T>& reading, const char* key, std::string expected, const char* todo) {
    return {reading.at, key, reading.raw, std::move(expected), todo};
}

template <class T>
void open(Reading<T>& reading, const std::string& question, const std::vector<std::string>& readings) {
    reading.value.reset();
    reading.question = question;
    reading.readings = readings;
}

void refuse_negative(std::vector<Problem>& problems, const Reading<Pressure>& difference, const char* key) {
    if (!difference || difference->in(inch_water) >= 0) return;
    problems.push_back(refused(difference, key, "a difference of pressures, which has no sign",
                               "drop the sign, or write the one side under its own key"));
}

/// The sign carries the side of the blower: return negative, supply positive.
void doubt_sign(Reading<Pressure>& reading, bool negative, const char* side) {
    if (!reading) return;
    const double value = reading->in(inch_water);
    if (value == 0 || (value < 0) == negative) return;
    open(reading,
         std::string("the ") + side + " side reads " + (negative ? "below" : "above") +
             " zero: was the sign dropped, or was the other side measured?",
         {write(*reading * -1.0), "the other side of the blower"});
}

/// Where the job names no terminals, its states do.
bool has_terminal(const ControlReadings& controls, const std::string& label) {
    if (!controls.terminals) return true;
    return std::any_of(controls.terminals->begin(), controls.terminals->end(),
                       [&](const Terminal& t) { return t.name == label; });
}

/// Custom states name terminals of the job, and no two of them ask for different things by the same signals.
void refuse_states(std::vector<Problem>& problems, const ControlReadings& controls) {
    if (!controls.states) return;
    std::map<std::set<std::string>, const CustomState*> seen;
    for (const CustomState& state : *controls.states) {
        for (const std::string& label : state.live) {
            if (has_terminal(controls, label)) continue;
            problems.push_back(
                refused(controls.states, "controls.states",
                        "for the state " + state.name + " a terminal of controls.terminals, not " + label,
                        "correct the label, or add it to controls.terminals"));
        }
        const auto [other, fresh] = seen.try_emplace({state.live.begin(), state.live.end()}, &state);
        if (fresh || other->second->call == state.call) continue;
        problems.push_back(refused(controls.states, "controls.states",
                                   "other signals in " + state.name + " than in " + other->second->name +
                                       ", since the two ask for different air",
                                   "name what is live in each of the two"));
    }
}

}  // namespace

/// Refused, and not doubted: no reading of either value makes both true.
std::vector<Problem> impossible(const FailedUnit& job) {
    std::vector<Problem> problems;
    refuse_negative(problems, job.measured.static_total, "measured.static_total");
    refuse_negative(problems, job.measured.filter_drop, "measured.filter_drop");
    refuse_negative(problems, job.equipment.static_limit, "equipment.static_limit");
    const auto& equipment = job.equipment;
    if (equipment.heat_input && equipment.heat_output && *equipment.heat_output > *equipment.heat_input) {
        problems.push_back(refused(equipment.heat_output, "equipment.heat_output",
                                   "no more than heat_input, " + write(*equipment.heat_input),
                                   "check which of the two is which"));
    }
    if (equipment.rise_low && equipment.rise_high && *equipment.rise_low > *equipment.rise_high) {
        problems.push_back(
            refused(equipment.rise_low, "equipment.rise_low", "no more than rise_high", "exchange the two"));
    }
    const auto& plate = job.plate;
    if (plate.shaft_flat && plate.shaft_length && *plate.shaft_flat > *plate.shaft_length) {
        problems.push_back(refused(plate.shaft_flat, "plate.shaft_flat",
                                   "no longer than the shaft, " + write(*plate.shaft_length),
                                   "measure both again"));
    }
    if (plate.shaft_diameter && plate.body_diameter && *plate.shaft_diameter >= *plate.body_diameter) {
        problems.push_back(refused(plate.body_diameter, "plate.body_diameter",
                                   "more than the shaft's diameter", "measure both again"));
    }
    refuse_states(problems, job.controls);
    return problems;
}

void doubt(FailedUnit& job) {
    open_untrusted_plate(job);
    MeasuredReadings& measured = job.measured;
    doubt_sign(measured.static_return, true, "return");
    doubt_sign(measured.static_supply, false, "supply");
    PlateReadings& plate = job.plate;
    if (plate.phase && *plate.phase == 3 && plate.capacitor) {
        open(plate.phase, "three phase, and yet a run capacitor: which is right?", {"1", "3"});
    }
}

}  // namespace endbell::inline job
