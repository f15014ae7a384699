// Random jobs from a seed, for what must hold of every job.
#pragma once
#include <array>
#include <random>
#include <vector>

#include "tests/diagnosis/jobs.hpp"

namespace endbell::jobs {

class Maker {
  public:
    explicit Maker(unsigned seed) : random_(seed) {}

    FailedUnit job() {
        FailedUnit job;
        if (often()) job.plate.family = known(pick(Words<Family>::table).value);
        if (often()) job.plate.volts = known(std::vector{plate_volts(208, 230)});
        if (often()) job.plate.signal = known(pick(Words<SignalClass>::table).value);
        if (seldom()) job.plate.capacitor = known(microfarad(7.5));
        if (seldom()) job.measured.free_with_wheel_loose = known(often());
        if (seldom()) job.measured.transformer_volts = known(volt(pick(std::array{0.0, 26.0})));
        if (seldom()) job.measured.thermostat_calls = known(often());
        if (often()) job.unit.load = known(pick(Words<Load>::table).value);
        if (often()) job.measured.symptoms = known(std::vector{pick(Words<Symptom>::table).value});
        if (often())
            job.measured.line_volts = known<LineVolts>(volt(pick(std::array{0.0, 190.0, 236.0, 260.0})));
        if (often()) job.measured.control_volts = known(volt(pick(std::array{0.0, 8.0, 13.0, 25.0, 40.0})));
        if (often()) job.measured.spins_free = known(often());
        if (seldom()) job.measured.shaft_play = known(seldom());
        if (often())
            job.measured.winding_to_shell = known(ohm(pick(std::array{50e3, 100e3, 2e6, open_line})));
        if (often())
            set_windings(job, pick(std::array<std::vector<double>, 5>{
                                  {{5, 5, 5}, {4, 5, 5}, {5, open_line, 5}, {-2, 5, 9}, {5, 5}}}));
        if (seldom()) job.measured.rotor_held = known(often());
        if (seldom()) job.measured.capacitor = known(microfarad(pick(std::array{0.0, 5.0, 7.0, 7.5})));
        if (seldom()) job.measured.static_total = known(inch_water(pick(std::array{0.3, 0.7, 0.9})));
        if (seldom()) job.measured.static_supply = known(inch_water(0.4));
        if (seldom()) job.measured.filter_drop = known(inch_water(pick(std::array{0.1, 0.4})));
        if (seldom()) job.measured.amps = known<LineAmps>(ampere(2.2));
        if (seldom()) job.plate.current = known(ampere(2.0));
        return job;
    }

    /// Every field that a diagnosis reads may be there, with values on each side of what decides.
    FailedUnit any_job() {
        FailedUnit job = this->job();
        PlateReadings& plate = job.plate;
        MeasuredReadings& m = job.measured;
        EquipmentReadings& equipment = job.equipment;
        if (seldom()) plate.volts = known(std::vector{pick(std::array{plate_volts(115), plate_volts(230)})});
        if (seldom()) plate.tap_rule = known(pick(Words<TapRule>::table).value);
        if (seldom()) plate.frequency = known(hertz(60));
        if (seldom()) m.live_taps = known(pick(std::array<std::vector<int>, 3>{{{}, {1}, {1, 4}}}));
        if (seldom())
            m.symptoms =
                known(std::vector{pick(Words<Symptom>::table).value, pick(Words<Symptom>::table).value});
        if (seldom()) set_windings(job, {20, 22, 24});
        if (seldom()) m.rotor_held = {};
        if (seldom()) m.capacitor_bulged = known(often());
        if (seldom()) m.capacitor = known(microfarad(open_line));
        if (seldom()) m.capacitor_volts = known(volt(pick(std::array{0.0, 354.0})));
        if (seldom()) m.capacitor_amps = known(ampere(pick(std::array{0.7, 1.0})));
        if (seldom()) m.static_supply = known(inch_water(pick(std::array{-0.2, 0.4})));
        if (seldom()) m.static_return = known(inch_water(pick(std::array{0.2, -0.2, -0.5})));
        if (seldom()) job.controls.heat = known(HeatKind::heat_pump);
        if (seldom()) m.rise = known(fahrenheit_degree(pick(std::array{30.0, 50.0, 80.0})));
        if (often()) equipment.rise_low = known(fahrenheit_degree(35));
        if (often()) equipment.rise_high = known(fahrenheit_degree(65));
        if (seldom()) m.airflow = known(cfm(pick(std::array{800.0, 1200.0})));
        if (often()) equipment.cooling = known(ton_cooling(3));
        if (seldom()) equipment.supply = known(bare_supply(volt(pick(std::array{115.0, 208.0, 230.0}))));
        if (seldom()) equipment.fan_amps = known(ampere(pick(std::array{1.5, 2.0})));
        if (seldom()) m.watts = known(watt(700));
        if (seldom())
            m.line_volts = known(pick(std::array{
                LineVolts(volt(236), volt(237), volt(238)), LineVolts(volt(230), volt(236), volt(240)),
                LineVolts(volt(210), volt(236), volt(240)), LineVolts(volt(238), volt(119), volt(115))}));
        if (seldom()) m.line_volts = known<LineVolts>(volt(208));
        if (seldom()) m.filter_drop = known(inch_water(0.6));
        if (seldom()) m.fuse_drop = known(volt(pick(std::array{0.1, 40.0})));
        if (seldom()) m.contactor_drop = known(volt(pick(std::array{0.1, 40.0})));
        if (seldom()) m.control_kind = known(pick(Words<ControlVoltsKind>::table).value);
        if (seldom()) m.control_volts = known(volt(24));
        if (seldom()) m.control_volts.raw = pick(std::array{"24 Vdc", "24 Vac", "24 V"});
        if (seldom()) plate.program = known(std::string("P-1"));
        if (seldom()) m.board_volts = known(volt(pick(std::array{0.0, 26.0})));
        if (seldom()) m.primary_volts = known(volt(pick(std::array{0.0, 120.0})));
        if (seldom()) m.float_switch_closed = known(often());
        if (seldom()) m.door_switch_closed = known(often());
        if (seldom()) m.control_fuse_good = known(often());
        if (seldom()) m.windings_hot = known(often());
        if (seldom())
            set_windings(
                job, pick(std::array<std::vector<double>, 2>{{{0.1, 0.1, 0.1}, {5, open_line, open_line}}}));
        if (seldom()) m.under_water = known(seldom());
        if (seldom()) m.signs = known(std::vector{pick(Words<Sign>::table).value});
        if (seldom()) m.filter = known(pick(Words<Cleanness>::table).value);
        if (seldom()) m.wheel = known(pick(Words<Cleanness>::table).value);
        if (seldom()) m.belt = known(pick(Words<BeltState>::table).value);
        if (seldom()) job.unit.belt_drive = known(true);
        if (seldom()) m.iced = known(often());
        if (seldom()) m.coil_drop = known(inch_water(pick(std::array{0.2, 0.5})));
        if (seldom()) m.burner_input = known(btu_per_hour(pick(std::array{60e3, 80e3})));
        if (often()) equipment.heat_input = known(btu_per_hour(60e3));
        if (seldom()) m.amps = known<LineAmps>(ampere(1.8));
        if (seldom()) m.amps = known(LineAmps(ampere(1.8), ampere(1.9), ampere(0.1)));
        return job;
    }

  private:
    bool often() { return random_() % 10 < 7; }
    bool seldom() { return random_() % 10 < 3; }
    template <class List>
    typename List::value_type pick(const List& list) {
        return list[random_() % list.size()];
    }
    std::mt19937 random_;
};

}  // namespace endbell::jobs
