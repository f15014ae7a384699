// engine/model: the plain structs that one stage hands to the next, and the rows of numbers that they decide by. Here:
// the job: what failed, what its plate says, what was measured, what it sits in, what controls it, whose shop. Each
// group is one table of the job file. Keys have the names of the fields.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/model/kinds.hpp"
#include "engine/model/legs.hpp"
#include "engine/model/reading.hpp"
#include "engine/model/start_up_record.hpp"
#include "engine/model/supply.hpp"
#include "engine/units/date.hpp"
#include "engine/units/money.hpp"
#include "engine/units/units.hpp"

namespace endbell::inline model {

/// [unit] what the motor turns, and where it sits.
struct UnitReadings {
    Reading<std::string> name;  // what this job is called on paper
    Reading<Load> load;
    Reading<bool> belt_drive;
    Reading<ShaftPosition> shaft_points;
    Reading<bool> outdoors;
    Reading<std::string> old_part_number;
    Reading<std::string> old_module_number;
    Reading<std::string> equipment_model;  // needed for an inducer: no inference is allowed
    Reading<std::string> equipment_serial;
    Reading<std::string> assembly_number;  // the specified inducer assembly
    Reading<bool> plate_trusted;           // false: signs of an earlier, possibly wrong replacement
    Reading<std::vector<ChangedPart>> changed_before;  // by anybody, before this job
    Reading<std::string> changed_by;
    Reading<std::string> baseline;  // file of the readings kept at this unit's start-up
};

/// [plate] the old motor's nameplate, as read. Lengths are of the shaft as the motor was made.
struct PlateReadings {
    Reading<Family> family;
    Reading<std::vector<Power>> power;  // one entry; several when the plate lists hp per tap, high to low
    Reading<std::vector<PlateVolts>> volts;  // several: reconnectable
    Reading<int> phase;
    Reading<Frequency> frequency;
    Reading<Speed> speed;
    Reading<int> poles;
    Reading<Current> current;
    Reading<double> service_factor;
    Reading<Rotation> rotation;
    Reading<bool> double_shaft;
    Reading<Length> shaft_diameter;
    Reading<Length> shaft_length;
    Reading<Length> shaft_flat;
    Reading<Length> second_shaft_diameter;  // of the end at the leads, where a shaft comes out at both
    Reading<Length> second_shaft_length;
    Reading<Length> body_diameter;
    Reading<std::string> frame;
    Reading<Mount> mount;
    Reading<Length> bolt_circle;
    Reading<Enclosure> enclosure;
    Reading<Bearing> bearing;
    Reading<Temperature> ambient;
    Reading<Protection> protection;
    Reading<Capacitance> capacitor;
    Reading<Voltage> capacitor_volts;
    Reading<Capacitance> compressor_capacitor;  // the other side of a dual capacitor, as printed on it
    Reading<int> speeds;                        // how many speeds are really used
    Reading<SignalClass> signal;
    Reading<TapRule> tap_rule;
    Reading<std::string> program;  // of a constant-airflow module
    Reading<std::string> connector;
};

/// Every reading of a plate, in the order of the fields.
template <class Visit>
void each_plate_reading(PlateReadings& plate, const Visit& visit) {
    const auto each = [&](auto&... readings) { (visit(readings), ...); };
    auto& [family, power, volts, phase, frequency, speed, poles, current, service_factor, rotation,
           double_shaft, shaft_diameter, shaft_length, shaft_flat, second_shaft_diameter, second_shaft_length,
           body_diameter, frame, mount, bolt_circle, enclosure, bearing, ambient, protection, capacitor,
           capacitor_volts, compressor_capacitor, speeds, signal, tap_rule, program, connector] = plate;
    each(family, power, volts, phase, frequency, speed, poles, current, service_factor, rotation,
         double_shaft, shaft_diameter, shaft_length, shaft_flat, second_shaft_diameter, second_shaft_length,
         body_diameter, frame, mount, bolt_circle, enclosure, bearing, ambient, protection, capacitor,
         capacitor_volts, compressor_capacitor, speeds, signal, tap_rule, program, connector);
}

/// [measured] readings taken now. Resistances in ohm; an open line ("OL") reads as infinity.
struct MeasuredReadings {
    Reading<LineVolts> line_volts;  // at the motor, under load where it runs; three phase: each pair of lines
    Reading<Voltage> fuse_drop;     // across the worst closed line fuse, under load: about nought is good
    Reading<Voltage> contactor_drop;  // across the worst closed pole of the contactor, under load
    Reading<Voltage> control_volts;   // tap to C with the call present
    Reading<ControlVoltsKind> control_kind;
    Reading<Voltage> transformer_volts;  // R to C at the board
    Reading<Voltage> board_volts;        // the called output to C at the board, with the call present
    Reading<Voltage> primary_volts;      // at the control transformer's primary
    Reading<bool> thermostat_calls;
    Reading<bool> float_switch_closed;
    Reading<bool> door_switch_closed;
    Reading<bool> control_fuse_good;  // the 3 A or 5 A fuse of the 24 V circuit
    Reading<std::vector<int>> live_taps;
    Reading<std::vector<Resistance>> windings;  // three, pin to pin, rotor held still
    Reading<bool> rotor_held;
    Reading<bool> windings_hot;  // read hot: a protector may stand open
    Reading<Resistance> winding_to_shell;
    Reading<bool> spins_free;             // by hand, power and plugs off: a shorted module brakes the rotor
    Reading<bool> free_with_wheel_loose;  // by hand, the wheel loosened on the shaft
    Reading<bool> shaft_play;
    Reading<bool> module_good;                  // the old module, shown to run another motor half
    Reading<Capacitance> capacitor;             // by meter, out of circuit
    Reading<Capacitance> compressor_capacitor;  // of a dual one: common to compressor, by meter
    Reading<Voltage> capacitor_volts;           // across the capacitor, running
    Reading<Current> capacitor_amps;            // in the start lead, running
    Reading<bool> capacitor_bulged;
    Reading<LineAmps> amps;  // three phase: of each line conductor
    Reading<Speed> speed;
    Reading<Power> watts;  // electrical input
    Reading<Airflow> airflow;
    Reading<Pressure> static_supply;  // positive, after the blower
    Reading<Pressure> static_return;  // negative, before the blower; the sign carries the side
    Reading<Pressure> static_total;
    Reading<Pressure> filter_drop;
    Reading<Cleanness> filter;
    Reading<Cleanness> wheel;
    Reading<BeltState> belt;
    Reading<bool> iced;  // ice on the coil, or a frosted suction line
    Reading<Pressure> coil_drop;
    Reading<TemperatureRise> rise;
    Reading<RiseHeat> rise_heat;     // what heated while the rise was read
    Reading<HeatRate> burner_input;  // by the clock at the gas meter
    Reading<Length> bore;            // of the wheel or blade hub
    Reading<Length> shaft_needed;    // motor face to the far end of the hub
    Reading<Length> shaft_room;      // the longest shaft that clears
    Reading<Length> second_bore;     // of the wheel at the other end, where there are two
    Reading<Length> second_shaft_needed;
    Reading<Length> second_shaft_room;
    Reading<Length> band_diameter;  // of the mount that stays in the equipment
    Reading<Length> body_room;      // the longest motor body that clears
    Reading<std::vector<Symptom>> symptoms;
    Reading<std::vector<Sign>> signs;
    Reading<bool> under_water;          // motor, module, board or gas valve stood in water
    Reading<int> earlier_replacements;  // motors or modules already lost here
};

/// One cell of a published blower table, in standard air.
struct BlowerRow {
    Airflow airflow;
    Pressure static_total;
    Speed speed;
    Power shaft;  // brake horsepower
    friend bool operator==(const BlowerRow&, const BlowerRow&) = default;
};

/// [equipment] the plate of the unit the motor sits in, and the house around it.
struct EquipmentReadings {
    Reading<Current> minimum_circuit_ampacity;
    Reading<Current> maximum_overcurrent;
    Reading<Current> fan_amps;  // the fan's full-load current on the equipment plate
    Reading<Current>
        circuit_amps;  // what the least of breaker, wire and relay of this motor's circuit carries
    Reading<Current> compressor_amps;
    Reading<SupplySystem> supply;   // what feeds it: a figure, or a system as the trade writes it
    Reading<HeatRate> cooling;      // total; one ton is 12,000 Btu/h
    Reading<HeatRate> low_cooling;  // of the low stage
    Reading<int> cooling_stages;
    Reading<int> heating_stages;
    Reading<HeatRate> heat_input;
    Reading<HeatRate> altitude_input;  // heat input that plate or label gives for this altitude
    Reading<HeatRate> heat_output;
    Reading<HeatRate> low_heat_output;  // of the low stage
    Reading<double> efficiency;         // heat output over input, 0 to 1
    Reading<TemperatureRise> rise_low;  // the plate's permitted rise
    Reading<TemperatureRise> rise_high;
    Reading<TemperatureRise> low_rise_low;  // the same of the low stage, where the plate has one of its own
    Reading<TemperatureRise> low_rise_high;
    Reading<Power> electric_heat;                 // all elements at their own rated volts
    Reading<Voltage> electric_heat_volts;         // that the elements' power is rated at
    Reading<std::vector<Power>> electric_stages;  // of each stage, in the order in which they come on
    Reading<Airflow> heat_least_air;              // the plate's least airflow in heat, of standard air
    Reading<Pressure> static_limit;               // the plate's maximum external static
    Reading<Pressure> coil_limit;                 // the most static that the coil or the heat exchanger takes
    Reading<double> return_size;                  // face of the return's grille or filter, in square inches
    Reading<Length> altitude;
    Reading<Temperature> return_air;
    Reading<double> remaining_years;
    Reading<std::vector<BlowerRow>>
        blower_table;  // of this unit's own blower, where its sheet prints rpm and hp
    Reading<Climate> climate;
    Reading<Money> replacement_price;  // a quote for new equipment, where the user has one
};

/// One terminal that gives a call today, and the call it stands for.
struct Terminal {
    std::string name;          // G, Y1, W1, ... or a board's own label
    std::optional<Call> call;  // none: not known
    friend bool operator==(const Terminal&, const Terminal&) = default;
};

/// The speed lead of the old motor that ran in one call.
struct LeadInUse {
    Call call;
    SpeedLead lead;
    friend bool operator==(const LeadInUse&, const LeadInUse&) = default;
};

/// One state of controls that follow no usual pattern: the terminals live together, and what they ask for.
struct CustomState {
    std::string name;
    std::vector<std::string> live;  // labels of ControlReadings::terminals, one at least
    std::optional<Call> call;       // none: the motor is to stand still
    friend bool operator==(const CustomState&, const CustomState&) = default;
};

/// [controls] what tells the blower to run.
struct ControlReadings {
    Reading<ControlSource> source;
    Reading<HeatKind> heat;
    Reading<ReversingValve> reversing_valve;
    Reading<DehumidifyLogic> dehumidify;
    Reading<bool> fan_with_heat;      // the thermostat sends G with W
    Reading<FanCommand> fan_command;  // of an outdoor fan
    Reading<bool> fan_interlock;      // sequencer or element relay runs the blower while an element is hot
    Reading<bool> zone_panel;         // dampers close parts of the duct
    Reading<Airflow> least_zone;      // what the least open zone and its by-pass take at the static limit
    Reading<std::vector<Terminal>> terminals;
    Reading<std::vector<LeadInUse>> leads;
    Reading<std::vector<CustomState>> states;  // all that occur, in place of those usual for `heat`
    Reading<ApparentPower> transformer;
    Reading<ApparentPower> transformer_load;
    Reading<Current> fuse;         // of the 24 V circuit, as printed beside it
    Reading<Voltage> coil;         // of the contactor or relay that switches the motor, as printed on it
    Reading<Voltage> output;       // what the board's blower outputs carry
    Reading<bool> common_present;  // a C wire reaches the motor
    Reading<bool> run_signal_available;
    Reading<double> cool_hours;  // per year
    Reading<double> heat_hours;
    Reading<double> circulate_hours;
};

/// [shop] whose money and whose rules. `as_of` stands in for a clock: the engine never reads one.
struct ShopReadings {
    Reading<std::string> branch;
    Reading<Date> as_of;
    Reading<std::string> currency;  // ISO 4217
    Reading<Money> labour_rate;     // per hour
    Reading<Money> trip;
    Reading<Money> diagnosis_fee;
    Reading<Share> markup;  // on cost
    Reading<Share> margin;  // of price: told apart from markup
    Reading<Share> parts_tax;
    Reading<Share> labour_tax;
    Reading<Share> emergency;  // 1.5 times labour is 150 %
    Reading<Share> real_discount_rate;
    Reading<Share> nominal_discount_rate;
    Reading<Share> energy_escalation;
    Reading<Money> electricity;  // per 100 kWh, so that 0.1545 USD/kWh is 15.45
    Reading<std::vector<std::string>> prefer_makers;
    Reading<std::vector<std::string>> exclude_makers;
    Reading<int> longest_lead_days;
    Reading<bool> in_stock_only;
};

struct FailedUnit {
    UnitReadings unit;
    PlateReadings plate;
    MeasuredReadings measured;
    EquipmentReadings equipment;
    ControlReadings controls;
    ShopReadings shop;
    std::optional<StartUpRecord>
        start_up;        // what was found when this unit was started, where a file keeps it
    std::string digest;  // fingerprint of the job's text
};

}  // namespace endbell::inline model
