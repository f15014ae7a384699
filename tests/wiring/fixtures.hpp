// Jobs, parts and air plans for the wiring tests, small enough to read beside a test.
#pragma once
#include <algorithm>
#include <initializer_list>
#include <string>
#include <utility>
#include <vector>

#include "engine/wiring/wiring.hpp"

namespace fixture {

using namespace endbell;

inline const Limits limits;  // the program's own

/// As the engine's, with the facts of the job.
inline WiringPlan plan_wiring(const FailedUnit& job, const Part& part, const AirPlan& air,
                              const Limits& in_force) {
    return endbell::plan_wiring(job, facts_of(job, in_force), part, air, in_force);
}
inline WiringPlan lay_wiring(const FailedUnit& job, const Part& part, const AirPlan& air,
                             const Limits& in_force) {
    return endbell::lay_wiring(job, facts_of(job, in_force), part, air, in_force);
}

inline std::vector<Terminal> terminals(std::initializer_list<std::pair<const char*, Call>> list) {
    std::vector<Terminal> all;
    for (const auto& [name, call] : list) all.push_back({name, call});
    return all;
}

/// Thermostat letters only: their meaning is in the letter.
inline std::vector<Terminal> letters(std::initializer_list<const char*> names) {
    std::vector<Terminal> all;
    for (const char* name : names) all.push_back({name, Call::circulate});
    return all;
}

inline FailedUnit blower_job(ControlSource source, HeatKind heat) {
    FailedUnit job;
    job.unit.load = known(Load::indoor_blower);
    job.controls.source = known(source);
    job.controls.heat = known(heat);
    job.controls.common_present = known(true);
    job.equipment.supply = known(bare_supply(volt(240)));
    if (heat == HeatKind::heat_pump) job.equipment.electric_heat = known(kilowatt(10));
    return job;
}

inline FailedUnit thermostat_job(HeatKind heat, std::initializer_list<const char*> names) {
    FailedUnit job = blower_job(ControlSource::thermostat, heat);
    job.controls.terminals = known(letters(names));
    return job;
}

/// Five 24 V taps with the terminals of a power header L, G, N and a signal header C, 1 to 5.
inline Part five_tap_motor(TapRule rule) {
    Part part;
    part.id = "five-tap";
    Motor motor;
    motor.family = Family::constant_torque;
    motor.phase = 1;
    motor.signal = SignalClass::control_24v;
    motor.tap_rule = rule;
    for (int n = 1; n <= 5; ++n) {
        Tap tap;
        tap.number = n;
        tap.label = std::to_string(n);
        tap.signal = SignalClass::control_24v;
        motor.taps.push_back(tap);
        motor.terminals.push_back({std::to_string(n), "tap " + std::to_string(n), "signal"});
    }
    motor.terminals.push_back({"L", "line", "power"});
    motor.terminals.push_back({"G", "earth", "power"});
    motor.terminals.push_back({"N", "second line", "power"});
    motor.terminals.push_back({"C", "common", "signal"});
    part.motor = motor;
    return part;
}

/// A capacitor-run motor with three speed leads; lead 3 is the fastest.
inline Part three_lead_motor() {
    Part part;
    part.id = "three-lead";
    Motor motor;
    motor.family = Family::capacitor_run;
    motor.signal = SignalClass::switched_line;
    motor.capacitor = microfarad(7.5);
    motor.capacitor_volts = volt(370);
    for (int n = 1; n <= 3; ++n) {
        Tap tap;
        tap.number = n;
        tap.label = "speed " + std::to_string(n);
        tap.signal = SignalClass::switched_line;
        motor.taps.push_back(tap);
        motor.terminals.push_back({tap.label, "tap " + std::to_string(n), ""});
    }
    motor.terminals.push_back({"return", "second line", ""});
    motor.terminals.push_back({"frame", "earth", ""});
    part.motor = motor;
    return part;
}

inline AirPlan air(std::initializer_list<std::pair<Call, int>> taps) {
    AirPlan plan;
    plan.computed = true;
    for (const auto& [call, tap] : taps) {
        CallAir entry;
        entry.call = call;
        entry.tap = tap;
        entry.met = true;
        plan.calls.push_back(entry);
    }
    return plan;
}

/// The row of a set of live signals given by name; the signals must exist.
inline const TruthRow& row(const WiringPlan& plan, std::initializer_list<const char*> live) {
    SignalSet set = 0;
    for (const char* name : live) {
        for (std::size_t i = 0; i < plan.signals.size(); ++i) {
            if (plan.signals[i] == name) set |= 1u << i;
        }
    }
    return plan.truth.at(set);
}

inline std::size_t coils(const WiringPlan& plan) {
    return plan.relays.size();
}

template <class E>
bool has(const std::vector<E>& list, E value) {
    return std::find(list.begin(), list.end(), value) != list.end();
}

inline bool wired(const WiringPlan& plan, const std::string& from, const std::string& to) {
    for (const Wire& w : plan.wires) {
        if (text_of(plan, w.from) == from && text_of(plan, w.to) == to) return true;
    }
    return false;
}

}  // namespace fixture
