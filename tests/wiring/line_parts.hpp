// Motors that hang on a contactor or starter, and jobs for them.
#pragma once
#include "tests/wiring/fixtures.hpp"

namespace fixture {

inline FailedUnit fan_job(SupplySystem supply) {
    FailedUnit job;
    job.unit.load = known(Load::outdoor_fan);
    job.equipment.supply = known(supply);
    job.plate.phase = known(1);
    return job;
}

/// A condenser fan's motor of one speed: run lead, common, and one or two capacitor leads.
inline Part fan_motor(int capacitor_leads) {
    Part part;
    part.id = "fan";
    Motor motor;
    motor.family = Family::capacitor_run;
    motor.capacitor = microfarad(5);
    motor.capacitor_volts = volt(370);
    motor.terminals = {{"BLK", "line", ""}, {"PUR", "second line", ""}, {"GRN", "earth", ""}};
    for (int i = 1; i <= capacitor_leads; ++i)
        motor.terminals.push_back({"CAP " + std::to_string(i), "capacitor", ""});
    part.motor = motor;
    return part;
}

inline Part two_speed_fan() {
    Part part = fan_motor(2);
    part.motor->terminals.erase(part.motor->terminals.begin());
    for (int n = 1; n <= 2; ++n) {
        Tap tap;
        tap.number = n;
        tap.label = n == 1 ? "LO" : "HI";
        part.motor->taps.push_back(tap);
        part.motor->terminals.push_back({tap.label, "tap " + std::to_string(n), ""});
    }
    return part;
}

inline Part three_phase_motor() {
    Part part;
    part.id = "three-phase";
    Motor motor;
    motor.family = Family::three_phase;
    motor.rotation = Rotation::reversible;
    motor.terminals = {
        {"T1", "line", ""}, {"T2", "second line", ""}, {"T3", "third line", ""}, {"GND", "earth", ""}};
    Rating low, high;
    low.volts = plate_volts(208, 230);
    low.amps = ampere(3.5);
    high.volts = plate_volts(460);
    high.amps = ampere(1.8);
    low.selection = high.selection = VoltageSelection::leads;
    motor.ratings = {low, high};
    part.motor = motor;
    return part;
}

inline FailedUnit three_phase_job(double volts) {
    FailedUnit job;
    job.unit.load = known(Load::indoor_blower);
    job.plate.phase = known(3);
    job.plate.family = known(Family::three_phase);
    job.equipment.supply = known(bare_supply(volt(volts)));
    return job;
}

}  // namespace fixture
