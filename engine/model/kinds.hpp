// The enumerations of the trade. Each word is the spelling in catalog tables, job files and JSON.
#pragma once
#include "engine/model/family.hpp"
#include "engine/model/word.hpp"

namespace endbell::inline model {

/// What the motor turns.
enum class Load { indoor_blower, outdoor_fan, draft_inducer };
constexpr auto words_of(Load) {
    return std::array{Word<Load>{Load::indoor_blower, "indoor blower"},
                      Word<Load>{Load::outdoor_fan, "outdoor fan"},
                      Word<Load>{Load::draft_inducer, "draft inducer"}};
}

/// What tells the motor to run, and how fast.
enum class SignalClass {
    switched_line,  // the speed leads carry the motor's own line current
    line_signal,    // line-voltage signal leads beside constant line power
    control_24v,    // 24 V ac taps beside constant line power
    pulse,          // pulse-width command
    serial          // serial command
};
constexpr auto words_of(SignalClass) {
    return std::array{Word<SignalClass>{SignalClass::switched_line, "switched line"},
                      Word<SignalClass>{SignalClass::line_signal, "line signal"},
                      Word<SignalClass>{SignalClass::control_24v, "24 V"},
                      Word<SignalClass>{SignalClass::pulse, "pulse"},
                      Word<SignalClass>{SignalClass::serial, "serial"}};
}

/// What the part's own sheet says of two live taps.
enum class TapRule { one_tap_only, highest_tap_wins, not_stated };
constexpr auto words_of(TapRule) {
    return std::array{Word<TapRule>{TapRule::one_tap_only, "one tap only"},
                      Word<TapRule>{TapRule::highest_tap_wins, "highest tap wins"},
                      Word<TapRule>{TapRule::not_stated, "not stated"}};
}

/// The one canonical direction: as seen from the shaft end. A bare CW is none of these: it is a question.
enum class Rotation { cw_shaft_end, ccw_shaft_end, reversible };
constexpr auto words_of(Rotation) {
    return std::array{Word<Rotation>{Rotation::cw_shaft_end, "CWSE"},
                      Word<Rotation>{Rotation::ccw_shaft_end, "CCWSE"},
                      Word<Rotation>{Rotation::reversible, "reversible"}};
}

enum class Mount { band, studs, lugs, ring, base, face };
constexpr auto words_of(Mount) {
    return std::array{Word<Mount>{Mount::band, "band"}, Word<Mount>{Mount::studs, "studs"},
                      Word<Mount>{Mount::lugs, "lugs"}, Word<Mount>{Mount::ring, "ring"},
                      Word<Mount>{Mount::base, "base"}, Word<Mount>{Mount::face, "face"}};
}

/// What a motor is made to drive: a wheel or blade on its own shaft, or a belt, whose pull its bearings, base and start bear.
enum class Drive { direct, belt, either };
constexpr auto words_of(Drive) {
    return std::array{Word<Drive>{Drive::direct, "direct"}, Word<Drive>{Drive::belt, "belt"},
                      Word<Drive>{Drive::either, "either"}};
}

enum class Enclosure {
    open_drip_proof,
    open_air_over,
    enclosed_air_over,
    enclosed_non_ventilated,
    enclosed_fan_cooled
};
constexpr auto words_of(Enclosure) {
    return std::array{Word<Enclosure>{Enclosure::open_drip_proof, "ODP"},
                      Word<Enclosure>{Enclosure::open_air_over, "OPAO"},
                      Word<Enclosure>{Enclosure::enclosed_air_over, "TEAO"},
                      Word<Enclosure>{Enclosure::enclosed_non_ventilated, "TENV"},
                      Word<Enclosure>{Enclosure::enclosed_fan_cooled, "TEFC"}};
}
/// Cooled by the air that its own wheel or blade moves over it.
constexpr bool is_air_over(Enclosure e) {
    return e == Enclosure::open_air_over || e == Enclosure::enclosed_air_over;
}
constexpr bool is_enclosed(Enclosure e) {
    return e == Enclosure::enclosed_air_over || e == Enclosure::enclosed_non_ventilated ||
           e == Enclosure::enclosed_fan_cooled;
}

enum class Bearing { ball, sleeve };
constexpr auto words_of(Bearing) {
    return std::array{Word<Bearing>{Bearing::ball, "ball"}, Word<Bearing>{Bearing::sleeve, "sleeve"}};
}

/// Which way the shaft points where the motor sits; a part's plate may allow all.
enum class ShaftPosition { up, down, horizontal, all };
constexpr auto words_of(ShaftPosition) {
    return std::array{Word<ShaftPosition>{ShaftPosition::up, "shaft up"},
                      Word<ShaftPosition>{ShaftPosition::down, "shaft down"},
                      Word<ShaftPosition>{ShaftPosition::horizontal, "horizontal"},
                      Word<ShaftPosition>{ShaftPosition::all, "all positions"}};
}

enum class Protection { automatic, manual, impedance, none };
constexpr auto words_of(Protection) {
    return std::array{Word<Protection>{Protection::automatic, "thermal automatic"},
                      Word<Protection>{Protection::manual, "thermal manual"},
                      Word<Protection>{Protection::impedance, "impedance"},
                      Word<Protection>{Protection::none, "none"}};
}

/// How a two-voltage motor is set to one of its ratings.
enum class VoltageSelection { none, jumper, plug, leads };
constexpr auto words_of(VoltageSelection) {
    return std::array{Word<VoltageSelection>{VoltageSelection::none, "none"},
                      Word<VoltageSelection>{VoltageSelection::jumper, "jumper"},
                      Word<VoltageSelection>{VoltageSelection::plug, "plug"},
                      Word<VoltageSelection>{VoltageSelection::leads, "leads"}};
}

enum class PartKind { motor, module, accessory };
constexpr auto words_of(PartKind) {
    return std::array{Word<PartKind>{PartKind::motor, "motor"}, Word<PartKind>{PartKind::module, "module"},
                      Word<PartKind>{PartKind::accessory, "accessory"}};
}

enum class PartStatus { active, superseded, discontinued };
constexpr auto words_of(PartStatus) {
    return std::array{Word<PartStatus>{PartStatus::active, "active"},
                      Word<PartStatus>{PartStatus::superseded, "superseded"},
                      Word<PartStatus>{PartStatus::discontinued, "discontinued"}};
}

/// `supersedes` and `superseded by` point opposite ways. Both are somebody's word, with its source.
enum class Relation { replaces, supersedes, superseded_by, equivalent };
constexpr auto words_of(Relation) {
    return std::array{Word<Relation>{Relation::replaces, "replaces"},
                      Word<Relation>{Relation::supersedes, "supersedes"},
                      Word<Relation>{Relation::superseded_by, "superseded by"},
                      Word<Relation>{Relation::equivalent, "equivalent"}};
}

/// What an accessory or a piece of work puts right.
enum class Cure {
    shaft_bushing,       // thinner shaft into a larger bore
    shaft_cut,           // work only: shorten the shaft
    mount_band,          // hold a round body where another mount was
    mount_adapter,       // studs, lugs or ring of another pattern
    body_ring,           // smaller body into a larger band or ring
    run_capacitor,       // the new motor's own capacitor
    capacitor_removal,   // work only: take out the capacitor an electronic motor must not see
    isolation_relay,     // one live tap at a time
    line_relay,          // line-voltage board output turned into a 24 V signal, or the reverse
    harness,             // another plug
    transformer,         // control power
    voltage_selection,   // work only: jumper, plug or leads set for the supply
    rotation_selection,  // work only: reversing plug or jumper set
    rain_shield,         // shaft-up slinger outdoors
    lead_parking,        // work only: cap and insulate unused speed leads
    control_module,      // the module of a motor half: a part of its own, and no accessory
    airflow_setup,       // work only: choose and verify taps after the change
    // What is at fault outside the motor, and bought in its place.
    start_capacitor,
    line_fuse,
    control_fuse,  // of the 24 V circuit
    float_switch,
    door_switch,
    contactor,
    board_relay  // a relay in the place of a board's own blower output that failed
};
constexpr auto words_of(Cure) {
    return std::array{Word<Cure>{Cure::shaft_bushing, "shaft bushing"},
                      Word<Cure>{Cure::shaft_cut, "shaft cut"},
                      Word<Cure>{Cure::mount_band, "mount band"},
                      Word<Cure>{Cure::mount_adapter, "mount adapter"},
                      Word<Cure>{Cure::body_ring, "body ring"},
                      Word<Cure>{Cure::run_capacitor, "run capacitor"},
                      Word<Cure>{Cure::capacitor_removal, "capacitor removal"},
                      Word<Cure>{Cure::isolation_relay, "isolation relay"},
                      Word<Cure>{Cure::line_relay, "line relay"},
                      Word<Cure>{Cure::harness, "harness"},
                      Word<Cure>{Cure::transformer, "transformer"},
                      Word<Cure>{Cure::voltage_selection, "voltage selection"},
                      Word<Cure>{Cure::rotation_selection, "rotation selection"},
                      Word<Cure>{Cure::rain_shield, "rain shield"},
                      Word<Cure>{Cure::lead_parking, "lead parking"},
                      Word<Cure>{Cure::control_module, "control module"},
                      Word<Cure>{Cure::airflow_setup, "airflow setup"},
                      Word<Cure>{Cure::start_capacitor, "start capacitor"},
                      Word<Cure>{Cure::line_fuse, "line fuse"},
                      Word<Cure>{Cure::control_fuse, "control fuse"},
                      Word<Cure>{Cure::float_switch, "float switch"},
                      Word<Cure>{Cure::door_switch, "door switch"},
                      Word<Cure>{Cure::contactor, "contactor"},
                      Word<Cure>{Cure::board_relay, "board relay"}};
}
/// Work only: no part is bought for it.
constexpr bool is_work_only(Cure c) {
    return c == Cure::shaft_cut || c == Cure::capacitor_removal || c == Cure::voltage_selection ||
           c == Cure::rotation_selection || c == Cure::lead_parking || c == Cure::airflow_setup;
}

/// What gives the blower its calls today.
enum class ControlSource { thermostat, board_24v, board_line, pulse_or_serial };
constexpr auto words_of(ControlSource) {
    return std::array{Word<ControlSource>{ControlSource::thermostat, "thermostat"},
                      Word<ControlSource>{ControlSource::board_24v, "24 V board"},
                      Word<ControlSource>{ControlSource::board_line, "line-voltage board"},
                      Word<ControlSource>{ControlSource::pulse_or_serial, "pulse or serial"}};
}

enum class HeatKind { none, gas, oil, electric, heat_pump, dual_fuel };
constexpr auto words_of(HeatKind) {
    return std::array{
        Word<HeatKind>{HeatKind::none, "none"},           Word<HeatKind>{HeatKind::gas, "gas furnace"},
        Word<HeatKind>{HeatKind::oil, "oil furnace"},     Word<HeatKind>{HeatKind::electric, "electric heat"},
        Word<HeatKind>{HeatKind::heat_pump, "heat pump"}, Word<HeatKind>{HeatKind::dual_fuel, "dual fuel"}};
}

/// What heated the air while its rise was read. Beside a compressor nobody can tell by the rise alone.
enum class RiseHeat { burner, compressor, elements, compressor_and_elements };
constexpr auto words_of(RiseHeat) {
    return std::array{Word<RiseHeat>{RiseHeat::burner, "burner"},
                      Word<RiseHeat>{RiseHeat::compressor, "compressor"},
                      Word<RiseHeat>{RiseHeat::elements, "elements"},
                      Word<RiseHeat>{RiseHeat::compressor_and_elements, "compressor and elements"}};
}

/// How much moisture cooling has to take out: sets cfm a ton.
enum class Climate { humid, normal, dry };
constexpr auto words_of(Climate) {
    return std::array{Word<Climate>{Climate::humid, "humid"}, Word<Climate>{Climate::normal, "normal"},
                      Word<Climate>{Climate::dry, "dry"}};
}

/// Which call energises a heat pump's reversing valve.
enum class ReversingValve { in_cooling, in_heating };
constexpr auto words_of(ReversingValve) {
    return std::array{Word<ReversingValve>{ReversingValve::in_cooling, "O"},
                      Word<ReversingValve>{ReversingValve::in_heating, "B"}};
}

/// What a live dehumidify terminal means. Ask: both are sold.
enum class DehumidifyLogic { not_used, live_is_normal, live_is_dehumidify };
constexpr auto words_of(DehumidifyLogic) {
    return std::array{Word<DehumidifyLogic>{DehumidifyLogic::not_used, "not used"},
                      Word<DehumidifyLogic>{DehumidifyLogic::live_is_normal, "live is normal"},
                      Word<DehumidifyLogic>{DehumidifyLogic::live_is_dehumidify, "live is dehumidify"}};
}

/// A speed lead by its place among the motor's own. Colours of leads are a habit that varies, and are never read.
enum class SpeedLead { low, medium_low, medium, medium_high, high };
constexpr auto words_of(SpeedLead) {
    return std::array{
        Word<SpeedLead>{SpeedLead::low, "low"}, Word<SpeedLead>{SpeedLead::medium_low, "medium low"},
        Word<SpeedLead>{SpeedLead::medium, "medium"}, Word<SpeedLead>{SpeedLead::medium_high, "medium high"},
        Word<SpeedLead>{SpeedLead::high, "high"}};
}

/// What switches an outdoor fan. A fan that hangs on the compressor's contactor alone runs on in defrost.
enum class FanCommand { contactor, fan_relay, board };
constexpr auto words_of(FanCommand) {
    return std::array{Word<FanCommand>{FanCommand::contactor, "contactor"},
                      Word<FanCommand>{FanCommand::fan_relay, "fan relay"},
                      Word<FanCommand>{FanCommand::board, "board"}};
}

/// What a person asks the blower for. Each has its own airflow window.
enum class Call { circulate, cool_low, cool_high, heat_low, heat_high, electric_heat, dehumidify };
constexpr auto words_of(Call) {
    return std::array{
        Word<Call>{Call::circulate, "circulate"},  Word<Call>{Call::cool_low, "cool low"},
        Word<Call>{Call::cool_high, "cool"},       Word<Call>{Call::heat_low, "heat low"},
        Word<Call>{Call::heat_high, "heat"},       Word<Call>{Call::electric_heat, "electric heat"},
        Word<Call>{Call::dehumidify, "dehumidify"}};
}

enum class Symptom {
    no_run,
    hums,
    rocks_then_starts,
    rocks_never_starts,
    runs_slow,
    runs_on_after_call,
    trips_hot,
    noisy,
    runs_backwards,
    weak_air,
    wrong_speed,
    wet
};
constexpr auto words_of(Symptom) {
    return std::array{Word<Symptom>{Symptom::no_run, "no run"},
                      Word<Symptom>{Symptom::hums, "hums"},
                      Word<Symptom>{Symptom::rocks_then_starts, "rocks then starts"},
                      Word<Symptom>{Symptom::rocks_never_starts, "rocks never starts"},
                      Word<Symptom>{Symptom::runs_slow, "runs slow"},
                      Word<Symptom>{Symptom::runs_on_after_call, "runs on after call"},
                      Word<Symptom>{Symptom::trips_hot, "trips hot"},
                      Word<Symptom>{Symptom::noisy, "noisy"},
                      Word<Symptom>{Symptom::runs_backwards, "runs backwards"},
                      Word<Symptom>{Symptom::weak_air, "weak air"},
                      Word<Symptom>{Symptom::wrong_speed, "wrong speed"},
                      Word<Symptom>{Symptom::wet, "wet"}};
}

/// What a meter on a control wire shows: dc and pulses on an ac meter are another signal class, not a weak one.
enum class ControlVoltsKind { ac, dc, pulsing };
constexpr auto words_of(ControlVoltsKind) {
    return std::array{Word<ControlVoltsKind>{ControlVoltsKind::ac, "ac"},
                      Word<ControlVoltsKind>{ControlVoltsKind::dc, "dc"},
                      Word<ControlVoltsKind>{ControlVoltsKind::pulsing, "pulsing"}};
}

/// A belt as looked at and pressed by hand.
enum class BeltState { sound, slack, worn, broken };
constexpr auto words_of(BeltState) {
    return std::array{Word<BeltState>{BeltState::sound, "sound"}, Word<BeltState>{BeltState::slack, "slack"},
                      Word<BeltState>{BeltState::worn, "worn"}, Word<BeltState>{BeltState::broken, "broken"}};
}

/// As looked at: a filter, or the blades of a wheel.
enum class Cleanness { clean, dirty };
constexpr auto words_of(Cleanness) {
    return std::array{Word<Cleanness>{Cleanness::clean, "clean"}, Word<Cleanness>{Cleanness::dirty, "dirty"}};
}

/// What the eye or the nose finds on motor, module, board or wires.
enum class Sign { burnt, swollen, wet };
constexpr auto words_of(Sign) {
    return std::array{Word<Sign>{Sign::burnt, "burnt"}, Word<Sign>{Sign::swollen, "swollen"},
                      Word<Sign>{Sign::wet, "wet"}};
}

/// What somebody changed on the unit before this job.
enum class ChangedPart { motor, module, capacitor, board, wheel, thermostat, filter, fuel };
constexpr auto words_of(ChangedPart) {
    return std::array{Word<ChangedPart>{ChangedPart::motor, "motor"},
                      Word<ChangedPart>{ChangedPart::module, "module"},
                      Word<ChangedPart>{ChangedPart::capacitor, "capacitor"},
                      Word<ChangedPart>{ChangedPart::board, "board"},
                      Word<ChangedPart>{ChangedPart::wheel, "wheel"},
                      Word<ChangedPart>{ChangedPart::thermostat, "thermostat"},
                      Word<ChangedPart>{ChangedPart::filter, "filter"},
                      Word<ChangedPart>{ChangedPart::fuel, "fuel"}};
}

}  // namespace endbell::inline model
