#include "engine/airflow/contrary.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "engine/airflow/air.hpp"
#include "engine/airflow/air_needs.hpp"
#include "engine/airflow/assumptions.hpp"
#include "engine/airflow/blower_fit.hpp"
#include "engine/airflow/duct_point.hpp"
#include "engine/airflow/old_torque.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline airflow {

namespace {

struct Readings {
    const FailedUnit& job;
    const Facts& facts;
    const Limits& limits;
    const MeasuredReadings& measured = job.measured;
};

/// The keys that cannot all be true; empty: nothing says so.
using Row = ContraryKeys (*)(const Readings&);

bool airflow_read(const MeasuredReadings& measured) {
    return measured.airflow && *measured.airflow > cfm(0);
}

/// Both sides of the blower against their stated total.
ContraryKeys statics(const Readings& read) {
    const MeasuredReadings& m = read.measured;
    const std::optional<Pressure> halves = static_of_halves(m);
    if (!m.static_total || !halves) return {};
    const double agree = read.limits.value(limit::static_agree).in(inch_water);
    if (std::abs((*halves - *m.static_total).in(inch_water)) <= agree + rounding) return {};
    return {"measured.static_total", "measured.static_supply", "measured.static_return"};
}

/// True power is at most volts times amps (times the square root of three); 10 % allows for three meters.
ContraryKeys watts_over_volt_amperes(const Readings& read) {
    const MeasuredReadings& m = read.measured;
    const std::optional<Voltage>& line = read.facts.supply.highest;
    if (!m.watts || !m.amps || !line || *line < read.limits.value(limit::voltage_absent)) return {};
    const double apparent =
        line->in(volt)*m.amps->highest().in(ampere) * (read.facts.phase.is(3) ? std::sqrt(3.0) : 1.0);
    constexpr double meters = 1.10;
    if (m.watts->in(watt) <= apparent * meters) return {};
    return {"measured.watts", "measured.line_volts", "measured.amps"};
}

ContraryKeys heat_from_nowhere(const Readings& read) {
    const Heat& heat = read.facts.heat;
    if (!heat.fuel_input || !heat.fuel_output || *heat.fuel_output <= *heat.fuel_input) return {};
    return {"equipment.heat_output", "equipment.heat_input"};
}

ContraryKeys rise_range(const Readings& read) {
    const EquipmentReadings& plate = read.job.equipment;
    if (!plate.rise_low || !plate.rise_high || *plate.rise_low <= *plate.rise_high) return {};
    return {"equipment.rise_low", "equipment.rise_high"};
}

/// More air than the least rise lets through, whatever of two outputs the burner has.
ContraryKeys least_air_over_rise(const Readings& read) {
    const EquipmentReadings& plate = read.job.equipment;
    const Heat& heat = read.facts.heat;
    if (!plate.heat_least_air || !plate.rise_low || *plate.rise_low <= fahrenheit_degree(0)) return {};
    if (!heat.burner.is(true) || heat.fuel_heat.empty()) return {};
    const AirNeeds needs = air_needs(read.job, read.facts, read.limits);
    const Airflow most = airflow_for(heat.fuel_heat.front().heat, *plate.rise_low, needs.heat_factor);
    if (here(*plate.heat_least_air, needs) <= most) return {};
    return {"equipment.heat_least_air", "equipment.rise_low"};
}

/// An induction motor stays below its synchronous speed.
ContraryKeys speed_over_synchronous(const Readings& read) {
    const std::optional<SlipLine> line = old_slip_line(read.facts);
    const Reading<Speed>& speed = read.measured.speed;
    if (!line || !speed || *speed * (1 - assumed::speed_reading) < line->synchronous) return {};
    return {"measured.speed", "plate.speed"};
}

/// The airflow, the static as it was read, and another reading.
ContraryKeys air_against_static_and(const MeasuredReadings& m, const char* other) {
    ContraryKeys keys{"measured.airflow"};
    if (m.static_total) {
        keys.emplace_back("measured.static_total");
    } else {
        keys.insert(keys.end(), {"measured.static_supply", "measured.static_return"});
    }
    keys.emplace_back(other);
    return keys;
}

/// The air carries away a share of what the motor draws, and no blower makes more of it than assumed::best_blower.
ContraryKeys air_over_watts(const Readings& read) {
    const MeasuredReadings& m = read.measured;
    const Estimate<Pressure> total = measured_static(read.job);
    if (!m.watts || !airflow_read(m) || !total.known()) return {};
    if (air_power(*m.airflow, total.value()) < *m.watts * assumed::best_blower) return {};
    return air_against_static_and(m, "measured.watts");
}

/// The air that a rise stands for, against the air that was read. Beside a compressor nobody has said which heat ran.
ContraryKeys rise_against_airflow(const Readings& read) {
    const MeasuredReadings& m = read.measured;
    const std::optional<Warmth> warmth = heat_in_the_air(read.job, read.facts.heat);
    if (!airflow_read(m) || !m.rise || *m.rise <= fahrenheit_degree(0)) return {};
    if (!warmth || warmth->heat <= btu_per_hour(0)) return {};
    if (!m.rise_heat && !read.facts.heat.compressor.is(false)) return {};
    const AirNeeds needs = air_needs(read.job, read.facts, read.limits);
    const double apart = *m.airflow / airflow_for(warmth->heat, *m.rise, needs.heat_factor);
    const double most = assumed::taps_apart * (1 + warmth->share);
    if (apart <= most && apart >= (1 - warmth->share) / assumed::taps_apart) return {};
    return {"measured.airflow", "measured.rise"};
}

/// A blower's own sheet says what it moves at a speed against a static; a wheel clogged by half still moves half.
ContraryKeys airflow_against_table(const Readings& read) {
    const MeasuredReadings& m = read.measured;
    const Estimate<Pressure> total = measured_static(read.job);
    const bool belt = read.facts.belt.is(true);  // the table's rpm is the wheel's
    if (!read.job.equipment.blower_table || belt || !airflow_read(m) || !m.speed || !total.known()) return {};
    const std::optional<BlowerCurve> curve = fit_blower(*read.job.equipment.blower_table).curve;
    if (!curve || *m.speed <= rpm(0)) return {};
    const double density = air_needs(read.job, read.facts, read.limits).density_ratio;
    const std::optional<Airflow> by_table = airflow_for(*curve, *m.speed, total.value(), density);
    if (!by_table) return {};
    const double apart = *m.airflow / *by_table;
    if (apart <= assumed::table_apart && apart >= 1 / assumed::taps_apart) return {};
    return air_against_static_and(m, "measured.speed");
}

/// A wheel that stands moves no air.
ContraryKeys air_at_standstill(const Readings& read) {
    const MeasuredReadings& m = read.measured;
    if (!airflow_read(m) || !m.speed || *m.speed > rpm(0)) return {};
    return {"measured.airflow", "measured.speed"};
}

/// What is stated in threes: output is input times efficiency.
ContraryKeys output_against_efficiency(const Readings& read) {
    const Heat& heat = read.facts.heat;
    const Reading<double>& efficiency = read.job.equipment.efficiency;
    if (!heat.fuel_input || !heat.fuel_output || !efficiency) return {};
    const double apart = *heat.fuel_output / (*heat.fuel_input * *efficiency);
    if (std::abs(apart - 1) <= assumed::plate_figures_agree) return {};
    return {"equipment.heat_output", "equipment.heat_input", "equipment.efficiency"};
}

/// What is said to have heated, against what there is.
ContraryKeys heat_that_is_not_there(const Readings& read) {
    const Reading<RiseHeat>& ran = read.measured.rise_heat;
    const Heat& heat = read.facts.heat;
    if (!ran || !heat.kind) return {};
    const bool compressor = *ran == RiseHeat::compressor || *ran == RiseHeat::compressor_and_elements;
    const bool burner = *ran == RiseHeat::burner;
    if (!(compressor && heat.compressor.is(false)) && !(burner && heat.burner.is(false))) return {};
    return {"measured.rise_heat", "controls.heat"};
}

/// Fewer watts than any motor of this trade draws for its volts and amps.
ContraryKeys watts_under_volt_amperes(const Readings& read) {
    const MeasuredReadings& m = read.measured;
    const std::optional<Voltage>& line = read.facts.supply.reading;
    if (!m.watts || *m.watts <= Power() || !m.amps || !line) return {};
    if (*line < read.limits.value(limit::voltage_absent)) return {};
    const double root = read.facts.phase.is(3) ? std::sqrt(3.0) : 1.0;
    if (m.watts->in(watt) >= line->in(volt)*m.amps->lowest().in(ampere)*root * assumed::least_power_factor)
        return {};
    return {"measured.watts", "measured.line_volts", "measured.amps"};
}

/// A further law is a further row. A row names readings that facts::forget knows, so that they can be left out.
constexpr std::array rows{Row(statics),
                          Row(watts_over_volt_amperes),
                          Row(heat_from_nowhere),
                          Row(rise_range),
                          Row(least_air_over_rise),
                          Row(speed_over_synchronous),
                          Row(air_over_watts),
                          Row(rise_against_airflow),
                          Row(airflow_against_table),
                          Row(air_at_standstill),
                          Row(output_against_efficiency),
                          Row(heat_that_is_not_there),
                          Row(watts_under_volt_amperes)};

}  // namespace

std::vector<ContraryKeys> contrary_air(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    const Readings read{job, facts, limits};
    std::vector<ContraryKeys> found;
    for (const Row row : rows) {
        if (ContraryKeys keys = row(read); !keys.empty()) found.push_back(std::move(keys));
    }
    return found;
}

FailedUnit without_contrary(FailedUnit job, const std::vector<ContraryKeys>& contrary) {
    for (const ContraryKeys& keys : contrary) {
        for (const std::string& key : keys) forget(job, key);
    }
    return job;
}

}  // namespace endbell::inline airflow
