#include "engine/cost/energy.hpp"

#include <cmath>

#include "engine/airflow/fan_energy.hpp"

namespace endbell::inline cost {

namespace {

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

struct Running {
    Duration a_year;
    bool assumed;
};

Running running_time(const FailedUnit& job, Group group) {
    const ControlReadings& c = job.controls;
    const Reading<double>& stated = group == Group::cool   ? c.cool_hours
                                    : group == Group::heat ? c.heat_hours
                                                           : c.circulate_hours;
    if (stated) return {hour(*stated), false};
    constexpr FanHours rated;
    return {group == Group::cool   ? rated.cooling
            : group == Group::heat ? rated.heating
                                   : rated.circulation,
            true};
}

/// The calls that run.
std::vector<Call> running_calls(const std::vector<Call>& calls) {
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
        const Running running = running_time(job, group_of(call));
        EnergyLine line;
        line.call = call;
        line.runs = running.a_year / stages;
        line.hours_assumed = running.assumed || stages > 1;
        lines.push_back(line);
    }
    return lines;
}

}  // namespace

std::vector<EnergyLine> energy_lines(const FailedUnit& job, const AirPlan& air) {
    std::vector<Call> calls;
    for (const CallAir& call : air.calls) calls.push_back(call.call);
    std::vector<EnergyLine> lines = share_hours(job, running_calls(calls));
    for (EnergyLine& line : lines) {
        const TapAir* point = air_of(air, line.call);
        if (point == nullptr || !point->input_power.known() || point->input_power.value() <= watt(0))
            return {};
        line.tap = point->tap;
        line.draws = point->input_power.value();
    }
    return lines;
}

std::vector<EnergyLine> energy_lines_of_old(const FailedUnit& job, const std::vector<Call>& calls) {
    if (!job.measured.watts) return {};
    std::vector<EnergyLine> lines = share_hours(job, running_calls(calls));
    for (EnergyLine& line : lines) line.draws = *job.measured.watts;
    return lines;
}

Energy energy_of(const std::vector<EnergyLine>& lines) {
    double watt_hours = 0;
    for (const EnergyLine& line : lines) watt_hours += line.draws.in(watt)*line.runs.in(hour);
    return kilowatt_hour(watt_hours / 1000.0);
}

Money energy_cost(Energy energy, const Money& per_100_kwh) {
    return per_100_kwh.scaled(std::llround(energy.in(kilowatt_hour)*1000.0), 100'000);
}

}  // namespace endbell::inline cost
