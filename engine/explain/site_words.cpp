#include "engine/explain/site_words.hpp"

#include <array>

namespace endbell::inline explain {

namespace {

// Sources: wiring/commissioning.cpp names each check's own. Nothing else is read.
constexpr auto check_sentences = [] {
    using enum SiteCheck;
    return std::to_array<English<SiteCheck>>({
        {lock_out, "Lock out and tag out."},
        {absence_of_voltage, "Test for absence of voltage: pole to pole and each pole to ground."},
        {fuel_off, "Gas or oil off at the unit's own valve before it is opened."},
        {fuel_off_if_it_burns,
         "See whether it burns gas or oil: nobody has said. If it does, shut that off before it is opened."},
        {wait_five_minutes, "Wait five minutes for the module's capacitors."},
        {discharge_the_capacitor,
         "Discharge each run or start capacitor through a resistor; confirm with a meter."},
        {charge_not_known,
         "The kind of motor is not known: wait five minutes, look for a capacitor, discharge it and meter "
         "it."},
        {charge_of_the_compressor,
         "The compressor's capacitor may stand beside it: discharge it and meter it before a hand goes "
         "near."},
        {charge_of_the_blower,
         "The blower beside it may have a run capacitor or a module: wait five minutes, discharge, meter."},
        {charge_of_the_inducer,
         "The inducer or burner motor beside it may have a run capacitor: discharge it and meter it."},
        {wheel_free_and_clean, "Wheel or blade is clean, whole, and turns free by hand."},
        {set_screw_on_the_flat, "Set screw on the shaft's flat and tight; the hub touches nothing."},
        {specified_assembly, "The assembly is the one that the equipment's parts list names."},
        {wheel_side_gasket, "The gasket on the wheel side is new and whole."},
        {drain_and_trap, "Condensate drain and trap are clear and full of water."},
        {vent_drain_and_gasket,
         "Vent whole and open, drain clear where there is one, every gasket that was moved is whole."},
        {blade_height, "Blade at its old height in the orifice."},
        {rain_shield_above, "Rain shield above the motor where the shaft points up."},
        {lead_loop_down, "The leads loop down before they enter the motor: water drips off the loop."},
        {drain_holes, "The lowest drain hole of the motor is open, the others plugged."},
        {sheaves_in_line, "Both sheaves in line, by a straight edge."},
        {belt_tension, "Belt tension as the belt's maker says: neither slack nor singing."},
        {same_sheave_pitch,
         "The motor's sheave sets the blower's speed: the same pitch as before, or a new calculation."},
        {bearings_free, "Blower bearings turn free with the belt off."},
        {guard_back, "Belt guard back in its place before power."},
        {coil_and_pan_clean, "Coil and drain pan are clean, and the pan drains."},
        {earth_continuous, "Earth is continuous from the motor's shell to the cabinet."},
        {settings_match_the_supply,
         "Jumper, plug or leads match the measured supply. Look twice before power."},
        {dual_voltage_connection,
         "High or low voltage connection by the motor's own diagram, against the measured supply."},
        {overload_set, "The starter's overload is set to the new motor's own amps."},
        {plugs_in_before_power, "Every plug is home before power is on."},
        {rotation, "It turns the right way; stop at once if not."},
        {rotation_by_two_leads,
         "Wrong way round on three phases: exchange two leads of this motor, never the unit's supply."},
        {line_without_a_call, "Line voltage is at the motor without a call."},
        {tap_volts_with_each_call, "12 to 33 V ac from the called tap to C, with each call in turn."},
        {one_tap_live_in_each_call, "Only the tap in the table is live in each call."},
        {amps_at_or_below_plate,
         "Amps with every panel on, at or below the lower of the motor's plate and the equipment's."},
        {amps_after_fifteen_minutes, "Motor amps against its plate once more after fifteen minutes."},
        {amps_of_each_leg,
         "Volts and amps of each of the three legs: near equal, none above the plate. Read the volts across "
         "each closed pole."},
        {fan_stops_in_a_forced_defrost, "In a forced defrost the fan stops, and starts again after it."},
        {air_up_and_out, "Air goes up and out of the cabinet."},
        {head_pressure_steady, "Head pressure holds steady with every panel on."},
        {static_and_airflow, "Total static and airflow are as the equipment's own table says."},
        {cooling_air_at_its_call, "Cooling air at the compressor's call, not before it and not after."},
        {charge_after_the_air, "Superheat or subcooling are read only once the air is right."},
        {air_before_elements, "Air is proven before an element comes on."},
        {element_amps, "Amps of each element against its rating."},
        {element_limit, "The elements' limit opens when the air is held back, and closes again."},
        {pressure_at_the_switch, "Pressure at the switch against the setting printed on it."},
        {pressure_switch_proves,
         "The pressure switch, where there is one, proves at its own setting. It is never jumpered."},
        {limit_and_rollout, "Limit and roll-out are in circuit, and open when they should."},
        {burner_lights_smoothly, "The burner lights smoothly from edge to edge."},
        {no_spillage, "Flue gas does not spill at the draft opening or the joints."},
        {temperature_rise,
         "Temperature rise lies inside the plate's range at every stage, after ten minutes."},
        {combustion_analysis,
         "Combustion analysis: air-free CO in the flue within the appliance's limit, before and with the "
         "blower running. CO at the supply replaces none of it."},
        {room_carbon_monoxide, "Watch CO in the room: a change when the blower starts stops the job."},
        {combustion_if_it_burns,
         "If it burns gas or oil: vent, pressure switch (never jumpered), limit and roll-out, rise at every "
         "stage, and a combustion analysis with air-free CO, before and with the blower running."},
        {record, "Write every reading into the start-up form, and leave a copy at the unit."},
    });
}();

constexpr auto warnings = [] {
    using enum SiteCheck;
    return std::to_array<English<SiteCheck>>({
        {lock_out,
         "Lock out and tag out all supplies (29 CFR 1910.147, 1910.333). Test the meter on a live source, "
         "test "
         "pole to pole and each pole to ground, test the meter again (NFPA 70E 120, from memory)."},
        {fuel_off, "Shut off gas or oil before the unit is opened, and check for leaks after it is closed."},
        {fuel_off_if_it_burns,
         "Nobody has said whether it burns gas or oil. If it does, shut that off first, and treat every step "
         "below as work on a burner."},
        {wait_five_minutes,
         "Line voltage is at an electronic motor at all times, with or without a call. Wait 5 minutes after "
         "lock-out: its capacitors hold a charge (motor makers' manuals). Never mate or part the power plug "
         "live; look at its keying first."},
        {discharge_the_capacitor,
         "Discharge a run capacitor through a resistor (about 20 kilohm, 2 W or more) and confirm with a "
         "meter "
         "(29 CFR 1910.333, from memory)."},
        {charge_not_known,
         "The kind of motor is not known: it may be electronic (live without a call, wait 5 minutes) or have "
         "a capacitor (discharge through about 20 kilohm, 2 W or more, and meter it)."},
        {charge_of_the_compressor,
         "This motor has no capacitor of its own; the compressor's may stand in the same cabinet. Discharge "
         "it through about 20 kilohm, 2 W or more, and meter it."},
        {charge_of_the_blower,
         "The blower in the same cabinet may have a run capacitor, or a module that is live without a call: "
         "wait 5 minutes, discharge through about 20 kilohm, 2 W or more, and meter it."},
        {charge_of_the_inducer,
         "The inducer or burner motor in the same cabinet may have a run capacitor. Discharge it through "
         "about "
         "20 kilohm, 2 W or more, and meter it."},
    });
}();

}  // namespace

std::string say(SiteCheck check) {
    return english_of(check_sentences, check);
}

std::optional<std::string> warning_of(SiteCheck check) {
    const auto found =
        std::find_if(warnings.begin(), warnings.end(), [check](const auto& w) { return w.key == check; });
    return found != warnings.end() ? std::optional(std::string(found->text)) : std::nullopt;
}

std::vector<English<SiteCheck>> english_of_site_checks() {
    return std::vector(check_sentences.begin(), check_sentences.end());
}

std::vector<English<SiteCheck>> english_of_site_warnings() {
    return std::vector(warnings.begin(), warnings.end());
}

}  // namespace endbell::inline explain
