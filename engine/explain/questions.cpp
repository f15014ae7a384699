#include "engine/explain/questions.hpp"

#include <array>

namespace endbell::inline explain {

namespace {

struct Entry {
    std::string_view key;
    std::string_view question;
};

constexpr std::array entries{
    Entry{"unit.load",
          "What does it turn: an indoor blower wheel, an outdoor fan blade, or a draft inducer?"},
    Entry{"unit.shaft_points", "Which way does the shaft point where it sits: up, down, or horizontal?"},
    Entry{"unit.outdoors", "Is it outdoors, in the rain?"},
    Entry{"unit.old_part_number", "What is the old part number?"},
    Entry{"unit.old_module_number", "What is the number on the old control module?"},
    Entry{"unit.equipment_model", "What is the model number on the equipment's plate?"},
    Entry{"unit.equipment_serial", "What is the serial number on the equipment's plate?"},
    Entry{"unit.assembly_number", "Which inducer assembly does the equipment's parts list name?"},
    Entry{"unit.plate_trusted",
          "May the plate be trusted: is this the motor that the equipment's own papers name, without signs "
          "of an "
          "earlier replacement? Correct what it says from those papers first."},
    Entry{"plate.service_factor", "Which service factor does the plate say?"},
    Entry{"plate.family",
          "Is there a capacitor with two brown leads, or a plug with thin wires? How many pins?"},
    Entry{"plate.power", "How many horsepower does the plate say?"},
    Entry{"plate.volts", "Which volts does the plate say?"},
    Entry{"plate.phase", "Single phase or three phase?"},
    Entry{"plate.frequency", "Which hertz does the plate say?"},
    Entry{"plate.speed", "Which rpm does the plate say?"},
    Entry{"plate.poles", "How many poles, or which rpm?"},
    Entry{"plate.current", "Which full-load amps does the plate say?"},
    Entry{"plate.rotation", "Which way does the shaft turn, and seen from which end: shaft end or lead end?"},
    Entry{"plate.double_shaft", "Does a shaft come out at both ends?"},
    Entry{"plate.shaft_diameter", "How thick is the shaft, by caliper?"},
    Entry{"plate.shaft_length", "How long is the shaft, from the motor's face to its end?"},
    Entry{"plate.shaft_flat", "How long is the flat on the shaft?"},
    Entry{"plate.body_diameter", "What is the body's diameter, by tape?"},
    Entry{"plate.mount", "How is it held: belly band, studs, lugs, ring, or base?"},
    Entry{"plate.bolt_circle", "What is the bolt circle of the studs or lugs?"},
    Entry{"plate.enclosure", "Is the shell open or closed?"},
    Entry{"plate.bearing", "Ball or sleeve bearings?"},
    Entry{"plate.ambient", "Which ambient temperature does the plate say?"},
    Entry{"plate.protection", "Does the plate say thermally or impedance protected?"},
    Entry{"plate.capacitor", "Which microfarads and volts does the plate ask for?"},
    Entry{"plate.speeds", "How many speeds are really used?"},
    Entry{"plate.signal",
          "What tells it how fast to run: line-voltage leads, 24 V taps, or a data wire? Measure it."},
    Entry{"plate.tap_rule", "What does the motor's own sheet say happens when two taps are live?"},
    Entry{"plate.program", "Which program number is on the module?"},
    Entry{"plate.connector", "Which plugs does it have, and how many pins?"},
    Entry{"measured.line_volts", "Volts at the motor, line to line or line to neutral, under load?"},
    Entry{"measured.control_volts", "Volts from the called tap to C, with the call present?"},
    Entry{"measured.live_taps", "Which taps are live during the call?"},
    Entry{"measured.windings", "Ohms between the three winding pins, rotor held still?"},
    Entry{"measured.rotor_held", "Was the rotor held still while the windings were read?"},
    Entry{"measured.winding_to_shell", "Ohms from a winding pin to the bare end shield?"},
    Entry{"measured.spins_free", "Does the shaft spin free by hand?"},
    Entry{"measured.shaft_play", "Does the shaft have play, up and down or in and out?"},
    Entry{"measured.capacitor", "What does the capacitor read, by meter, out of circuit?"},
    Entry{"measured.capacitor_volts", "Volts across the capacitor, running?"},
    Entry{"measured.capacitor_amps", "Amps in the start lead, running?"},
    Entry{"measured.amps", "Line amps, running, door on?"},
    Entry{"measured.speed", "Rpm, running, door on?"},
    Entry{"measured.watts", "Watts drawn, running, door on?"},
    Entry{"measured.airflow", "How much air moves, in cfm, and on which speed?"},
    Entry{"measured.static_supply", "Static pressure after the blower?"},
    Entry{"measured.static_return", "Static pressure before the blower? It reads negative."},
    Entry{"measured.static_total", "Total external static pressure, both sides of the blower?"},
    Entry{"measured.filter_drop", "Pressure drop across the filter?"},
    Entry{"measured.rise", "Temperature rise from return to supply, after ten minutes?"},
    Entry{"measured.bore", "What is the bore of the wheel's or blade's hub?"},
    Entry{"measured.shaft_needed", "How far from the motor's face to the far end of the hub?"},
    Entry{"measured.shaft_room", "How long may a shaft be before it touches?"},
    Entry{"measured.band_diameter", "What is the diameter of the band or ring that stays?"},
    Entry{"measured.body_room", "How long may a motor body be before it touches?"},
    Entry{"measured.symptoms", "What does it do: hum, rock, run slow, trip, or nothing?"},
    Entry{"equipment.supply", "Which supply serves the equipment: 115, 208, 230, 277, 460?"},
    Entry{"equipment.minimum_circuit_ampacity",
          "Which minimum circuit ampacity does the equipment's plate say?"},
    Entry{"equipment.maximum_overcurrent", "Which maximum fuse or breaker does the equipment's plate say?"},
    Entry{"equipment.fan_amps", "Which fan amps does the equipment's plate say?"},
    Entry{"equipment.compressor_amps", "Which compressor amps (RLA) does the equipment's plate say?"},
    Entry{"equipment.cooling", "How many tons of cooling does it serve?"},
    Entry{"equipment.heat_input", "Heat input, in Btu/h?"},
    Entry{"equipment.heat_output", "Heat output, in Btu/h?"},
    Entry{"equipment.efficiency", "Heating efficiency?"},
    Entry{"equipment.rise_low", "Lowest temperature rise on the plate?"},
    Entry{"equipment.rise_high", "Highest temperature rise on the plate?"},
    Entry{"equipment.electric_heat", "How many kilowatts of electric heat?"},
    Entry{"equipment.static_limit", "Highest external static on the plate?"},
    Entry{"equipment.altitude", "Altitude above the sea?"},
    Entry{"controls.source",
          "What gives the blower its calls: thermostat wires, a board with 24 V outputs, or a board with "
          "line-voltage outputs?"},
    Entry{"controls.heat", "What heats: gas, oil, electric elements, a heat pump, or both pump and furnace?"},
    Entry{"controls.reversing_valve", "Is the reversing valve live in cooling (O) or in heating (B)?"},
    Entry{"controls.dehumidify", "Is a dehumidify terminal wired, and does live mean normal or dehumidify?"},
    Entry{"controls.fan_with_heat", "Does the thermostat send G together with W?"},
    Entry{"controls.terminals",
          "Which thermostat or board terminals reach the motor, and for which call is each?"},
    Entry{"controls.transformer", "How many VA is the control transformer?"},
    Entry{"controls.transformer_load", "How many VA are already on the control transformer?"},
    Entry{"controls.common_present", "Does a 24 V common (C) reach the motor?"},
    Entry{"controls.run_signal_available", "Does the board give a line-voltage blower output?"},
    Entry{"shop.branch", "Which branch sells it?"},
    Entry{"shop.as_of", "For which date is the price?"},
    Entry{"shop.labour_rate", "What does an hour of labour cost?"},
    Entry{"shop.electricity", "What do 100 kWh of electricity cost?"},
};

}  // namespace

std::string question_for(std::string_view job_key) {
    for (const Entry& entry : entries) {
        if (entry.key == job_key) return std::string(entry.question);
    }
    return "What is " + std::string(job_key) + "?";
}

std::vector<std::string> keys_with_questions() {
    std::vector<std::string> keys;
    for (const Entry& entry : entries) keys.emplace_back(entry.key);
    return keys;
}

}  // namespace endbell::inline explain
