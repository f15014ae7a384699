// A job and a part that agree in every respect; each test spoils what it is about. Every maker is invented.
#pragma once
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <string>
#include <string_view>

#include "engine/base/ensure.hpp"
#include "engine/match/match.hpp"
#include "engine/model/rotation.hpp"

namespace endbell::rule_tests {

struct World {
    FailedUnit job;
    Part part;
    Diagnosis diagnosis;
    Limits limits;

    Finding operator()(std::string_view rule) const {
        for (const Rule& r : all_rules()) {
            if (r.id == rule) return r.judge(Query{job, facts_of(job, limits), diagnosis, limits}, part);
        }
        throw OurBug("no such rule: " + std::string(rule));
    }
    Motor& motor() { return *part.motor; }
};

/// The rule says in the registry that it can give this reason.
inline bool is_declared(const Finding& finding) {
    for (const Rule& r : all_rules()) {
        if (r.id == finding.rule)
            return std::find(r.reasons.begin(), r.reasons.end(), finding.reason) != r.reasons.end();
    }
    return false;
}

inline Rating rating(double hp, PlateVolts volts, double amps, double speed,
                     VoltageSelection selection = VoltageSelection::none) {
    Rating r;
    r.power = horsepower(hp);
    r.volts = volts;
    r.amps = ampere(amps);
    r.speed = rpm(speed);
    r.selection = selection;
    return r;
}

inline Reading<std::vector<Power>> hp(double power) {
    return known(std::vector<Power>{horsepower(power)}, Origin::plate);
}
inline Reading<std::vector<PlateVolts>> volts(PlateVolts v) {
    return known(std::vector<PlateVolts>{v}, Origin::plate);
}

/// 1/2 hp, 115 V, 6 poles, 1/2 in. shaft in a furnace with a line-voltage board.
inline World blower() {
    World w;
    w.job.unit.load = known(Load::indoor_blower);
    PlateReadings& p = w.job.plate;
    p.family = known(Family::capacitor_run, Origin::plate);
    p.power = hp(0.5);
    p.volts = volts(plate_volts(115));
    p.frequency = known(hertz(60), Origin::plate);
    p.speed = known(rpm(1075), Origin::plate);
    p.current = known(ampere(6.0), Origin::plate);
    p.rotation = known(Rotation::cw_shaft_end, Origin::plate);
    p.double_shaft = known(false, Origin::plate);
    p.shaft_diameter = known(inch(0.5), Origin::plate);
    p.shaft_length = known(inch(5), Origin::plate);
    p.shaft_flat = known(inch(4.5), Origin::plate);
    p.body_diameter = known(inch(5.6), Origin::plate);
    p.mount = known(Mount::band, Origin::plate);
    p.capacitor = known(microfarad(7.5), Origin::plate);
    p.speeds = known(3, Origin::plate);
    w.part.id = "p-1";
    w.part.maker = "Ploverby";
    w.part.motor = Motor{};
    Motor& m = *w.part.motor;
    m.family = Family::capacitor_run;
    m.loads = {Load::indoor_blower};
    m.phase = 1;
    m.frequency = hertz(60);
    m.poles = 6;
    m.rotation = Rotation::cw_shaft_end;
    m.double_shaft = false;
    m.shaft_diameter = inch(0.5);
    m.shaft_length = inch(5);
    m.shaft_flat = inch(4.5);
    m.shaft_cuttable = true;
    m.body_diameter = inch(5.6);
    m.body_length = inch(5.5);
    m.mount = Mount::band;
    m.enclosure = Enclosure::open_air_over;
    m.bearing = Bearing::sleeve;
    m.positions = {ShaftPosition::all};
    m.ambient = Temperature::celsius(40);
    m.protection = Protection::automatic;
    m.capacitor = microfarad(7.5);
    m.capacitor_volts = volt(370);
    m.speeds = 3;
    m.signal = SignalClass::switched_line;
    m.ratings = {rating(0.5, plate_volts(115), 6.0, 1075)};
    return w;
}

/// The same with two wheels on 1/2 in. bores: at the leads 4 in. of shaft is needed, and 4.5 in. clears.
inline World two_wheels() {
    World w = blower();
    w.job.plate.double_shaft = known(true);
    w.job.measured.second_bore = known(inch(0.5));
    w.job.measured.second_shaft_needed = known(inch(4));
    w.job.measured.second_shaft_room = known(inch(4.5));
    w.motor().double_shaft = true;
    w.motor().second_shaft_diameter = inch(0.5);
    w.motor().second_shaft_length = inch(4.25);
    return w;
}

/// 1/4 hp condenser fan on studs, shaft up.
inline World condenser() {
    World w = blower();
    w.job.unit.load = known(Load::outdoor_fan);
    w.job.unit.shaft_points = known(ShaftPosition::up);
    w.job.plate.power = hp(0.25);
    w.job.plate.volts = volts(plate_volts(208, 230));
    w.job.plate.ambient = known(Temperature::celsius(60), Origin::plate);
    w.job.plate.mount = known(Mount::studs, Origin::plate);
    w.job.plate.bolt_circle = known(inch(4.75), Origin::plate);
    w.motor().loads = {Load::outdoor_fan};
    w.motor().mount = Mount::studs;
    w.motor().bolt_circle = inch(4.75);
    w.motor().enclosure = Enclosure::enclosed_air_over;
    w.motor().bearing = Bearing::ball;
    w.motor().ambient = Temperature::celsius(60);
    w.motor().ratings = {rating(0.25, plate_volts(208, 230), 1.4, 1075)};
    return w;
}

/// A five-tap 24 V constant-torque motor for another, in an air handler.
inline World five_taps() {
    World w = blower();
    w.job.plate.family = known(Family::constant_torque, Origin::plate);
    w.job.plate.phase = known(1, Origin::plate);
    w.job.plate.signal = known(SignalClass::control_24v, Origin::plate);
    w.job.plate.speed = known(rpm(1050), Origin::plate);
    w.job.plate.capacitor = {};
    w.job.plate.speeds = known(5, Origin::plate);
    w.motor().family = Family::constant_torque;
    w.motor().poles.reset();
    w.motor().capacitor.reset();
    w.motor().speeds = 5;
    w.motor().signal = SignalClass::control_24v;
    w.motor().tap_rule = TapRule::highest_tap_wins;
    // Torques of one equipment manual's five-tap table, 80 oz-ft full output.
    int number = 0;
    for (const double torque : {25.73, 37.96, 47.38, 50.51, 57.73}) {
        Tap tap;
        tap.number = ++number;
        tap.torque = ounce_foot(torque);
        w.motor().taps.push_back(tap);
    }
    return w;
}

/// The same five-tap motor offered for the capacitor-run blower, as a listed retrofit with a run-signal lead.
inline World retrofit() {
    World w = blower();
    const World five = five_taps();
    w.part = five.part;
    w.motor().retrofit_for = {Family::capacitor_run};
    w.motor().terminals = {{"RUN", "run signal", "lead"}};
    w.job.controls.source = known(ControlSource::board_line);
    w.job.controls.common_present = known(true);
    return w;
}

/// A module for a constant-airflow motor whose motor half is proven good.
inline World module_job() {
    World w = five_taps();
    w.job.plate.family = known(Family::constant_airflow, Origin::plate);
    w.job.plate.program = known(std::string("PR-1"), Origin::plate);
    w.diagnosis.fault = Fault::module;
    w.diagnosis.motor_half_proven_good = true;
    w.part.kind = PartKind::module;
    w.part.motor.reset();
    w.part.module = Module{};
    w.part.module->program = "PR-1";
    w.part.module->volts = plate_volts(115);
    w.part.module->signal = SignalClass::control_24v;
    w.part.module->power = horsepower(0.5);
    return w;
}

/// A shaded-pole draft inducer by its specified assembly.
inline World inducer() {
    World w = blower();
    w.job.unit.load = known(Load::draft_inducer);
    w.job.unit.assembly_number = known(std::string("AS-1"));
    w.job.plate = PlateReadings{};
    w.job.plate.family = known(Family::shaded_pole, Origin::plate);
    w.job.plate.volts = volts(plate_volts(115));
    w.motor().family = Family::shaded_pole;
    w.motor().loads = {Load::draft_inducer};
    w.motor().capacitor.reset();
    w.motor().assembly = "AS 1";
    return w;
}

}  // namespace endbell::rule_tests

/// Ids, never prose: the verdict and the stable reason.
#define SAYS(finding, expected, why)                                 \
    do {                                                             \
        const endbell::Finding said_here = (finding);                \
        BOOST_TEST(endbell::rule_tests::is_declared(said_here));     \
        BOOST_TEST(word(said_here.verdict) == word(expected));       \
        BOOST_TEST(word(said_here.reason) == std::string_view(why)); \
    } while (false)
