#include "engine/job/truth.hpp"

#include "engine/words/write.hpp"

namespace endbell::job {

namespace {

template <class T>
Problem refused(const Reading<T>& reading, const char* key, std::string expected, const char* todo) {
    return {reading.at, key, reading.raw, std::move(expected), todo};
}

template <class T>
void open(Reading<T>& reading, std::string question, std::vector<std::string> readings) {
    reading.value.reset();
    reading.question = std::move(question);
    reading.readings = std::move(readings);
}

void doubt_sign(Reading<Pressure>& reading, bool negative, const char* side) {
    if (!reading) return;
    const double value = reading->in(inch_water);
    if (value == 0 || (value < 0) == negative) return;
    open(reading,
         std::string("the ") + side + " side reads " + (negative ? "below" : "above") +
             " zero: was the sign dropped, or was the other side measured?",
         {write(*reading * -1.0), "the other side of the blower"});
}

}  // namespace

std::vector<Problem> impossible(const FailedUnit& job) {
    std::vector<Problem> problems;
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
    return problems;
}

void doubt(FailedUnit& job) {
    MeasuredFacts& measured = job.measured;
    doubt_sign(measured.static_return, true, "return");
    doubt_sign(measured.static_supply, false, "supply");
    for (Reading<Pressure>* drop :
         {&measured.static_total, &measured.filter_drop, &job.equipment.static_limit}) {
        if (*drop && (*drop)->in(inch_water) < 0) {
            open(*drop, "a difference of pressures has no sign: is this the return side alone?",
                 {write(*drop->value * -1.0)});
        }
    }
    PlateFacts& plate = job.plate;
    if (plate.phase && *plate.phase == 3 && plate.capacitor) {
        open(plate.phase, "three phase, and yet a run capacitor: which is right?", {"1", "3"});
    }
}

}  // namespace endbell::job
