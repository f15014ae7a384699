// Taps chosen for the cooling call, for tests/outside/old_duty.py. Reads houses of plain numbers from standard input, in this order:
//   HP PLATE_RPM TONS LINE_VOLTS AIRFLOW STATIC RPM AMPS WATTS NEW_HP TAPS, then TAPS torques in ounce-feet, the lowest first
// (0 for RPM, AMPS or WATTS: not read). Writes a line a house: TAP (0: none serves it), the airflow said of it and its spread,
// and what the old torque was found by.
#include <iostream>

#include "engine/airflow/air_plan.hpp"

namespace {

using namespace endbell;

struct House {
    double hp = 0, plate_rpm = 0, tons = 0, volts = 0, airflow = 0, pressure = 0, speed = 0, amps = 0,
           watts = 0, new_hp = 0;
};

FailedUnit job_of(const House& house) {
    FailedUnit job;
    job.unit.load = known(Load::indoor_blower);
    job.plate.family = known(Family::capacitor_run);
    job.plate.power = known(std::vector<Power>{horsepower(house.hp)});
    job.plate.speed = known(rpm(house.plate_rpm));
    job.equipment.cooling = known(ton_cooling(house.tons));
    job.equipment.altitude = known(foot(0));
    job.equipment.return_air = known(Temperature::fahrenheit(70));
    job.equipment.climate = known(Climate::normal);
    job.measured.line_volts = known<LineVolts>(volt(house.volts));
    job.measured.airflow = known(cfm(house.airflow));
    job.measured.static_total = known(inch_water(house.pressure));
    if (house.speed > 0) job.measured.speed = known(rpm(house.speed));
    if (house.amps > 0) job.measured.amps = known<LineAmps>(ampere(house.amps));
    if (house.watts > 0) job.measured.watts = known(watt(house.watts));
    return job;
}

Part motor_of(double hp, const std::vector<double>& torques) {
    Part part;
    part.id = "M";
    part.motor = Motor{};
    part.motor->family = Family::constant_torque;
    Rating rating;
    rating.power = horsepower(hp);
    rating.volts = plate_volts(115);
    part.motor->ratings.push_back(rating);
    for (std::size_t i = 0; i < torques.size(); ++i) {
        Tap tap;
        tap.number = static_cast<int>(i) + 1;
        tap.torque = ounce_foot(torques[i]);
        part.motor->taps.push_back(tap);
    }
    return part;
}

}  // namespace

int main() {
    const Limits limits;
    House h;
    std::size_t taps = 0;
    while (std::cin >> h.hp >> h.plate_rpm >> h.tons >> h.volts >> h.airflow >> h.pressure >> h.speed >>
           h.amps >> h.watts >> h.new_hp >> taps) {
        std::vector<double> torques(taps);
        for (double& torque : torques) std::cin >> torque;
        const FailedUnit job = job_of(h);
        const AirPlan plan = plan_air(job, facts_of(job, limits), motor_of(h.new_hp, torques), limits);
        const CallAir* call = find_call(plan, Call::cool_high);
        const TapAir* air = air_of(plan, Call::cool_high);
        const EstimatedNumber said = air ? air->airflow.in(cfm) : EstimatedNumber{};
        std::cout << (call && call->tap ? *call->tap : 0) << ' ' << said.value << ' ' << said.plus_minus
                  << ' ' << (plan.point.torque_from ? word(*plan.point.torque_from) : "none") << '\n';
    }
}
