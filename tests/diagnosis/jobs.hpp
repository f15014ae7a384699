// Small jobs for the tests of a diagnosis: an invented unit, and readings set one by one.
#pragma once
#include <algorithm>
#include <limits>
#include <ostream>
#include <string>
#include <vector>

#include "engine/diagnosis/diagnosis.hpp"

namespace endbell {

inline const Limits limits;  // the program's own

inline std::ostream& operator<<(std::ostream& out, Fault fault) {
    return out << word(fault);
}
inline std::ostream& operator<<(std::ostream& out, Verdict verdict) {
    return out << word(verdict);
}
inline std::ostream& operator<<(std::ostream& out, Test test) {
    return out << word(test);
}
inline std::ostream& operator<<(std::ostream& out, TestReason reason) {
    return out << word(reason);
}
inline std::ostream& operator<<(std::ostream& out, Cause cause) {
    return out << word(cause);
}

namespace jobs {

inline constexpr double open_line = std::numeric_limits<double>::infinity();

inline FailedUnit of(Family family, std::vector<Symptom> symptoms) {
    FailedUnit job;
    job.unit.load = known(Load::indoor_blower);
    job.plate.family = known(family);
    job.plate.volts = known(std::vector{plate_volts(208, 230)});
    if (family == Family::three_phase) job.plate.phase = known(3);
    if (family == Family::capacitor_run) job.plate.capacitor = known(microfarad(7.5));
    if (family == Family::constant_torque || family == Family::constant_airflow) {
        job.plate.signal = known(SignalClass::control_24v);
    }
    if (!symptoms.empty()) job.measured.symptoms = known(std::move(symptoms));
    return job;
}

inline void set_windings(FailedUnit& job, std::vector<double> ohms) {
    std::vector<Resistance> readings;
    for (double r : ohms) readings.push_back(ohm(r));
    job.measured.windings = known(std::move(readings));
    job.measured.rotor_held = known(true);
}

inline void feed(FailedUnit& job, double line, double control) {
    job.measured.line_volts = known<LineVolts>(volt(line));
    job.measured.control_volts = known(volt(control));
}

/// Line, signal, windings, insulation and shaft all good.
inline void all_good(FailedUnit& job) {
    feed(job, 236, 26.4);
    set_windings(job, {4.9, 5.0, 5.1});
    job.measured.winding_to_shell = known(ohm(open_line));
    job.measured.spins_free = known(true);
}

inline const Evidence* row(const Diagnosis& diagnosis, Test test) {
    for (const Evidence& e : diagnosis.evidence) {
        if (e.test == test) return &e;
    }
    return nullptr;
}

inline std::string missing(const Diagnosis& diagnosis) {
    std::string text;
    for (const MissingReading& m : diagnosis.missing) text += (text.empty() ? "" : " ") + m.job_key;
    return text;
}

inline std::string carried_by(const Diagnosis& diagnosis) {
    std::string text;
    for (const Evidence& e : diagnosis.evidence) {
        if (e.carries) text += (text.empty() ? "" : ", ") + std::string(word(e.test));
    }
    return text;
}

}  // namespace jobs
}  // namespace endbell
