#include "engine/airflow/duct_point.hpp"

#include <algorithm>
#include <cmath>

#include "engine/airflow/air.hpp"
#include "engine/airflow/assumptions.hpp"
#include "engine/airflow/electric.hpp"
#include "engine/airflow/induction.hpp"
#include "engine/airflow/spread.hpp"

namespace endbell {

namespace {

bool is_induction(Family family) {
    return !is_electronic(family);
}

/// The old motor's plate as a slip line, where the plate says enough. Several powers: the high tap's, which
/// is first.
std::optional<SlipLine> old_slip_line(const PlateFacts& plate) {
    if (!plate.power || plate.power->empty() || !plate.speed || !plate.family ||
        !is_induction(*plate.family)) {
        return std::nullopt;
    }
    const Frequency line = plate.frequency ? *plate.frequency : hertz(60);
    const std::optional<int> poles = plate.poles ? plate.poles.value : poles_of(*plate.speed, line);
    if (!poles || plate.power->front() <= watt(0)) return std::nullopt;
    const Speed synchronous = synchronous_speed(line, *poles);
    if (synchronous <= *plate.speed || *plate.speed <= rpm(0)) return std::nullopt;
    return SlipLine{synchronous, *plate.speed, torque_of(plate.power->front(), *plate.speed)};
}

class Finder {
  public:
    Finder(const FailedUnit& job, const AirNeeds& needs, const BlowerCurve* blower)
        : job_(job), needs_(needs), blower_(blower), line_(old_slip_line(job.plate)) {}

    FoundPoint run() {
        found_.point.static_total = measured_static(job_);
        find_speed();
        find_airflow();
        find_torque();
        if (!found_.point.static_total.known) lack("measured.static_total");
        return found_;
    }

  private:
    void lack(const std::string& key) { found_.lacking.push_back(key); }
    void assume(const std::string& key) { found_.assumed.push_back(key); }
    DuctPoint& point() { return found_.point; }

    void find_speed() {
        const Reading<Speed>& read = job_.measured.speed;
        if (read && *read > rpm(0)) {
            point().speed = {read->in(rpm), read->in(rpm)*assumed::speed_reading};
        }
    }

    /// Plate rpm in place of a measured one: close for induction motors, loose for electronic ones.
    void assume_speed() {
        const PlateFacts& plate = job_.plate;
        if (point().speed.known || !plate.speed || *plate.speed <= rpm(0)) return;
        const bool loose = !plate.family || is_electronic(*plate.family);
        const double share = loose ? assumed::plate_speed_electronic : assumed::plate_speed;
        point().speed = {plate.speed->in(rpm), plate.speed->in(rpm)*share, true};
        assume("measured.speed");
    }

    void find_airflow() {
        const Reading<Airflow>& read = job_.measured.airflow;
        if (read && *read > cfm(0)) {
            point().airflow = {read->in(cfm), read->in(cfm)*assumed::airflow_reading};
            point().airflow_from = "reading";
            return;
        }
        if (airflow_from_rise() || airflow_from_table()) return;
        lack("measured.airflow");
        if (!job_.measured.rise) lack("measured.rise");
    }

    bool airflow_from_rise() {
        const Reading<TemperatureRise>& rise = job_.measured.rise;
        const EquipmentFacts& equipment = job_.equipment;
        if (!rise || *rise <= fahrenheit_degree(0)) return false;
        std::optional<HeatRate> heat = equipment.heat_output.value;
        if (!heat && equipment.heat_input && equipment.efficiency)
            heat = *equipment.heat_input * *equipment.efficiency;
        if (!heat && !equipment.heat_input && equipment.electric_heat) {
            heat = kilowatt_heat(equipment.electric_heat->in(kilowatt));
        }
        if (!heat || *heat <= btu_per_hour(0)) {
            lack(equipment.heat_input ? "equipment.efficiency" : "equipment.heat_output");
            return false;
        }
        const double value = airflow_for(*heat, *rise, needs_.heat_factor).in(cfm);
        const bool place_known = equipment.altitude && equipment.return_air;
        const double share = root_sum({assumed::rise_reading / rise->in(fahrenheit_degree),
                                       assumed::heat_output, place_known ? 0.0 : assumed::standard_place});
        point().airflow = {value, value * share, !place_known};
        point().airflow_from = "temperature rise";
        return true;
    }

    bool airflow_from_table() {
        if (!blower_ || !point().speed.known || !point().static_total.known) return false;
        const Speed speed = rpm(point().speed.value);
        const auto at = [&](double inches) {
            return airflow_for(*blower_, speed, inch_water(inches), needs_.density_ratio);
        };
        const double read = point().static_total.value, off = point().static_total.plus_minus;
        const std::optional<Airflow> middle = at(read), least = at(read + off), most = at(read - off);
        if (!middle || !least || !most) return false;
        const double by_static = (*most - *least).in(cfm) / 2;
        const double value = middle->in(cfm);
        // A forward-curved wheel's pressure curve is flat, so a speed error weighs about three times in
        // airflow.
        point().airflow = {value, root_sum({by_static, value * 3 * assumed::speed_reading})};
        point().airflow_from = "blower table";
        return true;
    }

    void find_torque() {
        if (torque_from_table() || torque_from_watts() || torque_from_slip() || torque_from_amps() ||
            torque_from_plate()) {
            return;
        }
        lack("measured.watts");
        lack("measured.speed");
        if (!job_.plate.power) lack("plate.power");
        if (!job_.plate.speed) lack("plate.speed");
    }

    void set_torque(double pound_feet, double share, bool guess, std::string_view from) {
        point().torque = {pound_feet, pound_feet * share, guess};
        point().torque_from = from;
    }

    bool torque_from_table() {
        if (!blower_ || !point().airflow.known || !point().speed.known) return false;
        const Torque torque =
            torque_of(*blower_, rpm(point().speed.value), cfm(point().airflow.value), needs_.density_ratio);
        if (torque <= pound_foot(0)) return false;
        set_torque(torque.in(pound_foot), root_sum({assumed::torque_by_table, relative(point().airflow)}),
                   false, "blower table");
        return true;
    }

    /// Shaft torque of an electrical input at the point's speed; assumes the old family's usual efficiency.
    bool torque_from_input(Power input, double share, bool guess, std::string_view from) {
        const PlateFacts& plate = job_.plate;
        if (!plate.family || input <= watt(0)) return false;
        assume_speed();
        if (!point().speed.known) return false;
        const Speed speed = rpm(point().speed.value);
        double efficiency = electronic_efficiency(0.5);  // a blower's tap seldom asks for more than half
        if (is_induction(*plate.family)) {
            const Speed synchronous = line_ ? line_->synchronous : speed * 1.1;
            efficiency = induction_efficiency(*plate.family, std::min(speed, synchronous), synchronous);
        }
        const double torque = torque_of(input * efficiency, speed).in(pound_foot);
        set_torque(torque, root_sum({share, relative(point().speed)}), guess, from);
        return true;
    }

    bool torque_from_watts() {
        const Reading<Power>& watts = job_.measured.watts;
        if (!watts || !torque_from_input(*watts, assumed::torque_by_watts, false, "watts")) return false;
        assume("plate.efficiency");
        return true;
    }

    bool torque_from_slip() {
        if (!line_ || !job_.measured.speed || !point().speed.known) return false;
        const Torque torque = line_->at(rpm(point().speed.value));
        if (torque <= pound_foot(0)) return false;
        const double slip = line_->synchronous.in(rpm)-point().speed.value;
        set_torque(torque.in(pound_foot),
                   root_sum({assumed::torque_by_slip, point().speed.plus_minus / slip}), false, "slip line");
        assume("measured.live_taps");  // that the speed was read on the high tap
        return true;
    }

    bool torque_from_amps() {
        const Reading<Current>& amps = job_.measured.amps;
        const std::optional<Voltage> volts =
            job_.measured.line_volts ? job_.measured.line_volts.value : job_.equipment.supply.value;
        if (!amps || !volts || !job_.plate.family) return false;
        const double root = job_.plate.phase && *job_.plate.phase == 3 ? std::sqrt(3.0) : 1.0;
        const Power input = watt(amps->in(ampere)*volts->in(volt)*root * power_factor(*job_.plate.family));
        if (!torque_from_input(input, assumed::torque_by_amps, true, "amps")) return false;
        assume("measured.watts");
        return true;
    }

    bool torque_from_plate() {
        const PlateFacts& plate = job_.plate;
        if (!plate.power || plate.power->empty() || !plate.speed || *plate.speed <= rpm(0)) return false;
        assume_speed();
        const Torque full_load = torque_of(plate.power->front(), *plate.speed);
        set_torque(full_load.in(pound_foot)*assumed::plate_share, assumed::torque_by_plate, true,
                   "plate power");
        assume("measured.watts");
        return true;
    }

    const FailedUnit& job_;
    const AirNeeds& needs_;
    const BlowerCurve* blower_;
    std::optional<SlipLine> line_;
    FoundPoint found_;
};

}  // namespace

Estimate measured_static(const FailedUnit& job) {
    const MeasuredFacts& measured = job.measured;
    double inches = 0;
    if (measured.static_total) {
        inches = measured.static_total->in(inch_water);
    } else if (measured.static_supply && measured.static_return) {
        inches = (*measured.static_supply - *measured.static_return).in(inch_water);
    }
    if (!(inches > 0)) return unknown_estimate();
    return {inches, assumed::static_reading};
}

FoundPoint find_point(const FailedUnit& job, const AirNeeds& needs, const BlowerCurve* blower) {
    return Finder(job, needs, blower).run();
}

}  // namespace endbell
