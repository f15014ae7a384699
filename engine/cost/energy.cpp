#include "engine/cost/energy.hpp"

#include <cmath>

namespace endbell {

namespace {

// Source: appendix-aa (from memory).
constexpr double cooling_hours = 640;
constexpr double heating_hours = 830;
constexpr double circulating_hours = 400;

enum class Group { circulate, cool, heat, none };

/// Dehumidify runs inside cooling hours, and electric elements inside heating hours when other heat has
/// calls.
Group group_of(Call call) {
    switch (call) {
        case Call::circulate:
            return Group::circulate;
        case Call::cool_low:
        case Call::cool_high:
            return Group::cool;
        case Call::heat_low:
        case Call::heat_high:
        case Call::electric_heat:
            return Group::heat;
        case Call::dehumidify:
            return Group::none;
    }
    return Group::none;
}

struct Hours {
    double hours;
    bool assumed;
};

Hours hours_of(const FailedUnit& job, Group group) {
    const ControlFacts& c = job.controls;
    const Reading<double>& stated = group == Group::cool   ? c.cool_hours
                                    : group == Group::heat ? c.heat_hours
                                                           : c.circulate_hours;
    if (stated) return {*stated, false};
    const double rated = group == Group::cool   ? cooling_hours
                         : group == Group::heat ? heating_hours
                                                : circulating_hours;
    return {rated, true};
}

/// The calls that run, each with its group.
std::vector<Call> running(const std::vector<Call>& calls) {
    bool other_heat = false;
    for (Call call : calls) other_heat = other_heat || call == Call::heat_low || call == Call::heat_high;
    std::vector<Call> found;
    for (Call call : calls) {
        const bool counted = group_of(call) != Group::none && !(call == Call::electric_heat && other_heat);
        if (counted) found.push_back(call);
    }
    return found;
}

/// Two stages of one group share its hours equally: nobody says how long each runs.
std::vector<EnergyLine> share_hours(const FailedUnit& job, const std::vector<Call>& calls) {
    std::vector<EnergyLine> lines;
    for (Call call : calls) {
        int stages = 0;
        for (Call other : calls) stages += group_of(other) == group_of(call) ? 1 : 0;
        const Hours hours = hours_of(job, group_of(call));
        EnergyLine line;
        line.call = call;
        line.hours = hours.hours / stages;
        line.hours_assumed = hours.assumed || stages > 1;
        lines.push_back(line);
    }
    return lines;
}

}  // namespace

std::vector<EnergyLine> energy_lines(const FailedUnit& job, const AirPlan& air) {
    std::vector<Call> calls;
    for (const CallAir& call : air.calls) calls.push_back(call.call);
    std::vector<EnergyLine> lines = share_hours(job, running(calls));
    for (EnergyLine& line : lines) {
        const TapAir* point = air_of(air, line.call);
        if (point == nullptr || !point->input_power.known() || point->input_power.value() <= watt(0))
            return {};
        line.tap = point->tap;
        line.watts = point->input_power.value().in(watt);
    }
    return lines;
}

std::vector<EnergyLine> energy_lines_of_old(const FailedUnit& job, const std::vector<Call>& calls) {
    if (!job.measured.watts) return {};
    std::vector<EnergyLine> lines = share_hours(job, running(calls));
    for (EnergyLine& line : lines) line.watts = job.measured.watts->in(watt);
    return lines;
}

Energy energy_of(const std::vector<EnergyLine>& lines) {
    double watt_hours = 0;
    for (const EnergyLine& line : lines) watt_hours += line.watts * line.hours;
    return kilowatt_hour(watt_hours / 1000.0);
}

Money energy_cost(Energy energy, const Money& per_100_kwh) {
    return per_100_kwh.scaled(std::llround(energy.in(kilowatt_hour)*1000.0), 100'000);
}

double fan_energy_rating(double cooling_watts, double heating_watts, double circulating_watts,
                         double most_cfm) {
    const double watt_hours =
        cooling_hours * cooling_watts + heating_hours * heating_watts + circulating_hours * circulating_watts;
    return watt_hours / ((cooling_hours + heating_hours + circulating_hours) * most_cfm) * 1000.0;
}

}  // namespace endbell
