#include "engine/airflow/duct_point.hpp"

#include "engine/airflow/air.hpp"
#include "engine/airflow/assumptions.hpp"
#include "engine/airflow/old_torque.hpp"
#include "engine/airflow/spread.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline airflow {

namespace {

class Finder {
  public:
    Finder(const FailedUnit& job, const Facts& facts, const AirNeeds& needs, const BlowerCurve* blower)
        : job_(job), facts_(facts), needs_(needs), blower_(blower) {}

    FoundPoint run() {
        found_.point.static_total = measured_static(job_);
        const Reading<Speed>& speed = job_.measured.speed;
        if (speed && *speed > rpm(0)) {
            found_.point.speed = estimate(*speed, assumed::speed_reading);
        }
        find_airflow();
        find_torque();
        if (!found_.point.static_total.known()) lack("measured.static_total");
        return found_;
    }

  private:
    void lack(const std::string& key) { found_.lacking.push_back(key); }
    DuctPoint& point() { return found_.point; }

    void find_airflow() {
        const Reading<Airflow>& read = job_.measured.airflow;
        if (read && *read > cfm(0)) {
            point().airflow = estimate(*read, assumed::airflow_reading);
            point().airflow_from = AirflowSource::reading;
            return;
        }
        if (airflow_from_rise() || airflow_from_table()) return;
        lack("measured.airflow");
        if (!job_.measured.rise) lack("measured.rise");
    }

    bool airflow_from_rise() {
        const Reading<TemperatureRise>& rise = job_.measured.rise;
        if (!rise || *rise <= fahrenheit_degree(0)) return false;
        const EquipmentReadings& equipment = job_.equipment;
        if (rise_heat_open(job_, facts_.heat)) {
            lack("measured.rise_heat");
            return false;
        }
        const std::optional<Warmth> warmth = heat_in_the_air(job_, facts_.heat);
        if (!warmth || warmth->heat <= btu_per_hour(0)) {
            const Reading<RiseHeat>& ran = job_.measured.rise_heat;
            if (ran && *ran != RiseHeat::burner && *ran != RiseHeat::elements) return false;
            lack(facts_.heat.fuel_input ? "equipment.efficiency" : "equipment.heat_output");
            return false;
        }
        const bool place_known = equipment.altitude && equipment.return_air;
        const double share = root_sum({assumed::rise_reading / *rise, assumed::heat_output,
                                       place_known ? 0.0 : assumed::standard_place, warmth->share});
        for (const std::string& key : warmth->asks) lack(key);
        point().airflow = estimate(airflow_for(warmth->heat, *rise, needs_.heat_factor), share,
                                   !place_known || warmth->share > 0);
        point().airflow_from = AirflowSource::temperature_rise;
        return true;
    }

    bool airflow_from_table() {
        if (!blower_ || !point().speed.known() || !point().static_total.known()) return false;
        const auto at = [&](Speed speed, Pressure pressure) {
            return airflow_for(*blower_, speed, pressure, needs_.density_ratio);
        };
        const Speed speed = point().speed.value(), faster = speed + point().speed.plus_minus();
        const Pressure pressure = point().static_total.value(),
                       more = pressure + point().static_total.plus_minus();
        const auto middle = at(speed, pressure), tighter = at(speed, more), quicker = at(faster, pressure);
        if (!middle || !tighter || !quicker) return false;
        const double share = root_sum({1 - *tighter / *middle, *quicker / *middle - 1});
        point().airflow = estimate(*middle, share);
        point().airflow_from = AirflowSource::blower_table;
        return true;
    }

    void find_torque() {
        const std::optional<TorqueEstimate> old =
            old_torque(job_, facts_, point(), blower_, needs_.density_ratio);
        if (old) {
            point().torque = old->torque;
            point().torque_from = old->from;
            point().torque_with = old->with;
            if (!point().speed.known()) point().speed = old->speed;
            found_.assumed = old->assumed;
            return;
        }
        lack("measured.watts");
        if (!point().speed.known()) lack("measured.speed");
        if (!facts_.power) lack("plate.power");
        if (!facts_.speed) lack("plate.speed");
    }

    const FailedUnit& job_;
    const Facts& facts_;
    const AirNeeds& needs_;
    const BlowerCurve* blower_;
    FoundPoint found_;
};

}  // namespace

bool rise_heat_open(const FailedUnit& job, const Heat& heat) {
    return job.measured.rise && heat.compressor.is(true) && !job.measured.rise_heat;
}

std::optional<Warmth> heat_in_the_air(const FailedUnit& job, const Heat& heat) {
    if (rise_heat_open(job, heat)) return std::nullopt;
    const bool burns = heat.fuel_shown() || !heat.fuel_heat.empty();
    const RiseHeat ran = job.measured.rise_heat ? *job.measured.rise_heat
                         : burns                ? RiseHeat::burner
                                                : RiseHeat::elements;
    if (ran != RiseHeat::burner && ran != RiseHeat::elements) return std::nullopt;
    const bool fuel = ran == RiseHeat::burner;
    const std::vector<HeatOutput>& outputs = fuel ? heat.fuel_heat : heat.element_heat;
    if (outputs.empty()) return std::nullopt;
    const HeatRate most = outputs.front().heat, least = outputs.back().heat;
    if (outputs.size() == 1) return Warmth{most, 0, {}};
    return Warmth{(most + least) / 2, (most - least) / (most + least),
                  fuel ? heat.fuel_asks : heat.element_asks};
}

std::optional<Pressure> static_of_halves(const MeasuredReadings& measured) {
    const auto supply = measured.static_supply.said();
    const auto back = measured.static_return.said();
    if (!supply || !back || *supply < Pressure() || *back > Pressure()) return std::nullopt;
    return *supply - *back;
}

std::optional<Pressure> total_static(const MeasuredReadings& measured) {
    const auto stated = measured.static_total.said();
    return stated ? stated : static_of_halves(measured);
}

Estimate<Pressure> measured_static(const FailedUnit& job) {
    const std::optional<Pressure> total = total_static(job.measured);
    if (!total || !(*total > Pressure())) return {};
    return estimate_within(*total, assumed::static_reading);
}

Pressure allowed_static(const FailedUnit& job, const Limits& limits) {
    const Reading<Pressure>& plate = job.equipment.static_limit;
    return plate ? *plate : limits.value(limit::static_plate_default);
}

FoundPoint find_point(const FailedUnit& job, const Facts& facts, const AirNeeds& needs,
                      const BlowerCurve* blower) {
    return Finder(job, facts, needs, blower).run();
}

}  // namespace endbell::inline airflow
