#include "engine/facts/facts.hpp"

namespace endbell::inline facts {

/// Field by field, and not by the job's own keys: those are made in job/, which stands to the right.
void forget(FailedUnit& job, std::string_view key) {
    const auto drop = [&](std::string_view name, auto& reading) {
        if (key == name) reading = {};
    };
    drop("plate.family", job.plate.family);
    drop("plate.phase", job.plate.phase);
    drop("plate.speed", job.plate.speed);
    drop("plate.capacitor", job.plate.capacitor);
    MeasuredReadings& m = job.measured;
    drop("measured.symptoms", m.symptoms);
    drop("measured.line_volts", m.line_volts);
    drop("measured.transformer_volts", m.transformer_volts);
    drop("measured.board_volts", m.board_volts);
    drop("measured.primary_volts", m.primary_volts);
    drop("measured.control_fuse_good", m.control_fuse_good);
    drop("measured.spins_free", m.spins_free);
    drop("measured.free_with_wheel_loose", m.free_with_wheel_loose);
    drop("measured.filter", m.filter);
    drop("measured.filter_drop", m.filter_drop);
    drop("measured.control_volts", m.control_volts);
    drop("measured.live_taps", m.live_taps);
    drop("measured.capacitor", m.capacitor);
    drop("measured.capacitor_volts", m.capacitor_volts);
    drop("measured.capacitor_amps", m.capacitor_amps);
    drop("measured.capacitor_bulged", m.capacitor_bulged);
    drop("measured.amps", m.amps);
    drop("measured.speed", m.speed);
    drop("measured.watts", m.watts);
    drop("measured.belt", m.belt);
    drop("unit.belt_drive", job.unit.belt_drive);
    drop("measured.airflow", m.airflow);
    drop("measured.rise", m.rise);
    drop("measured.static_total", m.static_total);
    drop("measured.static_supply", m.static_supply);
    drop("measured.static_return", m.static_return);
    drop("measured.rise_heat", m.rise_heat);
    drop("equipment.heat_input", job.equipment.heat_input);
    drop("equipment.heat_least_air", job.equipment.heat_least_air);
    drop("equipment.heat_output", job.equipment.heat_output);
    drop("equipment.efficiency", job.equipment.efficiency);
    drop("equipment.supply", job.equipment.supply);
    drop("controls.heat", job.controls.heat);
    drop("controls.common_present", job.controls.common_present);
    drop("equipment.rise_low", job.equipment.rise_low);
    drop("equipment.rise_high", job.equipment.rise_high);
}

}  // namespace endbell::inline facts
