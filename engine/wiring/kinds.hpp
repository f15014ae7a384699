// What this folder answers with a word. Each word is the spelling in JSON; a sheet has the sentences of
// explain/wiring_words.hpp.
#pragma once
#include "engine/wiring/refusals.hpp"

namespace endbell::inline wiring {

enum class WiringMethod { direct, one_conductor, priority_of_the_part, plug_for_plug };
constexpr auto words_of(WiringMethod) {
    return std::array{Word<WiringMethod>{WiringMethod::direct, "direct"},
                      Word<WiringMethod>{WiringMethod::one_conductor, "one conductor"},
                      Word<WiringMethod>{WiringMethod::priority_of_the_part, "priority of the part"},
                      Word<WiringMethod>{WiringMethod::plug_for_plug, "plug for plug"}};
}

/// A plan with a condition holds only while that is true.
enum class WiringCondition { one_board_output_at_a_time, blower_runs_while_elements_are_hot };
constexpr auto words_of(WiringCondition) {
    return std::array{
        Word<WiringCondition>{WiringCondition::one_board_output_at_a_time, "one board output at a time"},
        Word<WiringCondition>{WiringCondition::blower_runs_while_elements_are_hot,
                              "the elements' own interlock runs the blower while they are hot"}};
}

/// Who brings a state about.
enum class StateMaker { thermostat, board, contactor, sequencer, defrost_board, zone_panel, job };
constexpr auto words_of(StateMaker) {
    return std::array{Word<StateMaker>{StateMaker::thermostat, "thermostat"},
                      Word<StateMaker>{StateMaker::board, "board"},
                      Word<StateMaker>{StateMaker::contactor, "contactor"},
                      Word<StateMaker>{StateMaker::sequencer, "sequencer"},
                      Word<StateMaker>{StateMaker::defrost_board, "defrost board"},
                      Word<StateMaker>{StateMaker::zone_panel, "zone panel"},
                      Word<StateMaker>{StateMaker::job, "the job's own list"}};
}

/// What keeps a state from coming about. A broken wire or a stuck contact can bring it about all the same.
enum class Interlock {
    stages_in_order,
    heat_or_cool,
    emergency_alone,
    fan_sent_with_heat,
    no_such_call,
    not_in_the_jobs_list,
    one_board_output_at_a_time,
    off_delay_of_the_tap,
    fan_interlock_of_the_elements,
    tap_held_live
};
constexpr auto words_of(Interlock) {
    return std::array{
        Word<Interlock>{Interlock::stages_in_order, "a stage comes after the one below it"},
        Word<Interlock>{Interlock::heat_or_cool, "the thermostat heats or cools, never both"},
        Word<Interlock>{Interlock::emergency_alone, "emergency heat keeps the compressor off"},
        Word<Interlock>{Interlock::fan_sent_with_heat, "the thermostat sends G with W"},
        Word<Interlock>{Interlock::no_such_call, "these controls have no such call"},
        Word<Interlock>{Interlock::not_in_the_jobs_list, "the job's list of states has none such"},
        Word<Interlock>{Interlock::one_board_output_at_a_time, "one board output at a time"},
        Word<Interlock>{Interlock::off_delay_of_the_tap, "off-delay of the tap"},
        Word<Interlock>{Interlock::fan_interlock_of_the_elements, "fan interlock of the elements"},
        Word<Interlock>{Interlock::tap_held_live, "tap that is held live without a call"}};
}

/// Why a listed terminal commands nothing here.
enum class IdleReason {
    supply_24v,
    common_24v,
    reversing_valve,
    fault_lamp,
    humidifier,
    common_or_lamp,
    dehumidify_not_used,
    call_of_the_thermostat,
    output_on_the_run_signal
};
constexpr auto words_of(IdleReason) {
    return std::array{
        Word<IdleReason>{IdleReason::supply_24v, "24 V hot"},
        Word<IdleReason>{IdleReason::common_24v, "24 V common"},
        Word<IdleReason>{IdleReason::reversing_valve, "reversing valve"},
        Word<IdleReason>{IdleReason::fault_lamp, "fault lamp"},
        Word<IdleReason>{IdleReason::humidifier, "humidifier"},
        Word<IdleReason>{IdleReason::common_or_lamp, "common or lamp of an old thermostat"},
        Word<IdleReason>{IdleReason::dehumidify_not_used, "dehumidify not used"},
        Word<IdleReason>{IdleReason::call_of_the_thermostat, "thermostat call that the board answers"},
        Word<IdleReason>{IdleReason::output_on_the_run_signal, "board output on the run signal"}};
}

/// What makes heat or cold that the blower has to carry away.
enum class HeatSource { elements, burner, compressor };
constexpr auto words_of(HeatSource) {
    return std::array{Word<HeatSource>{HeatSource::elements, "elements"},
                      Word<HeatSource>{HeatSource::burner, "burner"},
                      Word<HeatSource>{HeatSource::compressor, "compressor"}};
}

/// What a wire of the line side is for. A control wire has none.
enum class WireNote {
    constant_line_power,
    second_line_conductor,
    third_line_conductor,
    neutral,
    earth,
    same_transformer,
    run_signal,
    capacitor,
    capacitor_common,
    winding,
    jumper,
    as_before,
    parked
};
constexpr auto words_of(WireNote) {
    return std::array{Word<WireNote>{WireNote::constant_line_power, "constant line power"},
                      Word<WireNote>{WireNote::second_line_conductor, "second line conductor"},
                      Word<WireNote>{WireNote::third_line_conductor, "third line conductor"},
                      Word<WireNote>{WireNote::neutral, "neutral"},
                      Word<WireNote>{WireNote::earth, "earth"},
                      Word<WireNote>{WireNote::same_transformer, "same transformer"},
                      Word<WireNote>{WireNote::run_signal, "run signal"},
                      Word<WireNote>{WireNote::capacitor, "capacitor"},
                      Word<WireNote>{WireNote::capacitor_common, "capacitor common"},
                      Word<WireNote>{WireNote::winding, "winding"},
                      Word<WireNote>{WireNote::jumper, "jumper"},
                      Word<WireNote>{WireNote::as_before, "as before"},
                      Word<WireNote>{WireNote::parked, "parked"}};
}

/// What switches the line conductors of a motor that hangs on its load side.
enum class LoadSwitch { contactor, fan_contactor, starter };
constexpr auto words_of(LoadSwitch) {
    return std::array{Word<LoadSwitch>{LoadSwitch::contactor, "contactor"},
                      Word<LoadSwitch>{LoadSwitch::fan_contactor, "fan contactor"},
                      Word<LoadSwitch>{LoadSwitch::starter, "starter"}};
}

/// What is set, fitted or removed before power, in the order in which it is done.
enum class SettingKind { jumper, plug, leads, power, rotation, rotation_leads, speed, overload, capacitor };
constexpr auto words_of(SettingKind) {
    return std::array{Word<SettingKind>{SettingKind::jumper, "jumper"},
                      Word<SettingKind>{SettingKind::plug, "plug"},
                      Word<SettingKind>{SettingKind::leads, "leads"},
                      Word<SettingKind>{SettingKind::power, "power lead"},
                      Word<SettingKind>{SettingKind::rotation, "rotation"},
                      Word<SettingKind>{SettingKind::rotation_leads, "rotation by two leads"},
                      Word<SettingKind>{SettingKind::speed, "speed"},
                      Word<SettingKind>{SettingKind::overload, "overload"},
                      Word<SettingKind>{SettingKind::capacitor, "capacitor"}};
}

/// What is done with it. `ask`: what would decide it is not known, and nothing is printed as set.
enum class SettingDone { ask, in, out, low, high, set, clockwise, counterclockwise, fitted, removed };
constexpr auto words_of(SettingDone) {
    return std::array{Word<SettingDone>{SettingDone::ask, "ask"},
                      Word<SettingDone>{SettingDone::in, "in"},
                      Word<SettingDone>{SettingDone::out, "out"},
                      Word<SettingDone>{SettingDone::low, "low"},
                      Word<SettingDone>{SettingDone::high, "high"},
                      Word<SettingDone>{SettingDone::set, "set"},
                      Word<SettingDone>{SettingDone::clockwise, "CWSE"},
                      Word<SettingDone>{SettingDone::counterclockwise, "CCWSE"},
                      Word<SettingDone>{SettingDone::fitted, "fitted"},
                      Word<SettingDone>{SettingDone::removed, "removed"}};
}
/// Decided by the supply: these are looked at twice before power.
constexpr bool is_for_the_supply(SettingKind kind) {
    return kind <= SettingKind::leads;
}

/// The control transformer with all that a plan adds, against its rating and limit transformer.plan.
enum class PowerJudgement { within_plan, over_plan, over_rating, not_known };
constexpr auto words_of(PowerJudgement) {
    return std::array{Word<PowerJudgement>{PowerJudgement::within_plan, "within plan"},
                      Word<PowerJudgement>{PowerJudgement::over_plan, "over plan"},
                      Word<PowerJudgement>{PowerJudgement::over_rating, "over rating"},
                      Word<PowerJudgement>{PowerJudgement::not_known, "not known"}};
}

/// What must be said about a plan.
enum class WiringCaution {
    line_power_always_present,
    both_line_conductors_live,
    a_high_leg_is_there,
    line_to_line_is_480,
    load_side_only,
    fourth_lead_on_a_dual_capacitor,
    reverse_by_this_motors_leads,
    fan_stops_in_defrost,
    earth_g_is_not_fan_g,
    common_from_the_same_transformer,
    one_relay_group_only,
    parked_leads_are_live,
    leads_are_provisional,
    fuel_heat_lead_needs_a_rise,
    line_coils_and_24v_contacts,
    control_coils_and_line_contacts,
    tap_rule_not_stated,
    verify_the_priority,
    one_board_output_at_a_time,
    elements_hold_the_blower,
    stops_without_a_tap,
    tap_held_without_a_call,
    default_tap_gives_other_air,
    runs_at_its_default_tap,
    zone_air_not_known,
    zone_static_over_the_limit,
    the_board_keeps_the_blower,
    compressor_heat_at_the_cooling_tap,
    fault_makes_two_taps_live,
    fault_back_feeds,
    fault_heats_without_air,
    lost_common_feeds_calls,
    moving_relays_tie_calls,
    moving_relays_make_two_taps_live,
    leaking_thermostat_outputs,
    runs_on_after_the_call,
    transformer_above_its_planned_load,
    transformer_overloaded
};
constexpr auto words_of(WiringCaution) {
    return std::array{
        Word<WiringCaution>{WiringCaution::line_power_always_present, "line power always present"},
        Word<WiringCaution>{WiringCaution::both_line_conductors_live, "both line conductors live"},
        Word<WiringCaution>{WiringCaution::a_high_leg_is_there, "a high leg is there"},
        Word<WiringCaution>{WiringCaution::line_to_line_is_480, "line to line is 480 V"},
        Word<WiringCaution>{WiringCaution::load_side_only, "load side only"},
        Word<WiringCaution>{WiringCaution::fourth_lead_on_a_dual_capacitor,
                            "fourth lead on a dual capacitor"},
        Word<WiringCaution>{WiringCaution::reverse_by_this_motors_leads, "reverse by this motor's leads"},
        Word<WiringCaution>{WiringCaution::fan_stops_in_defrost, "fan stops in defrost"},
        Word<WiringCaution>{WiringCaution::earth_g_is_not_fan_g, "earth G is not fan G"},
        Word<WiringCaution>{WiringCaution::common_from_the_same_transformer,
                            "common from the same transformer"},
        Word<WiringCaution>{WiringCaution::one_relay_group_only, "outputs of one relay group only"},
        Word<WiringCaution>{WiringCaution::parked_leads_are_live, "parked leads are live"},
        Word<WiringCaution>{WiringCaution::leads_are_provisional, "speed leads are provisional"},
        Word<WiringCaution>{WiringCaution::fuel_heat_lead_needs_a_rise, "heat lead needs a rise"},
        Word<WiringCaution>{WiringCaution::line_coils_and_24v_contacts, "line coils and 24 V contacts apart"},
        Word<WiringCaution>{WiringCaution::control_coils_and_line_contacts,
                            "24 V coils and line contacts apart"},
        Word<WiringCaution>{WiringCaution::tap_rule_not_stated, "tap rule not stated"},
        Word<WiringCaution>{WiringCaution::verify_the_priority, "verify the priority of the taps"},
        Word<WiringCaution>{WiringCaution::one_board_output_at_a_time, "one board output at a time"},
        Word<WiringCaution>{WiringCaution::elements_hold_the_blower, "the elements hold the blower"},
        Word<WiringCaution>{WiringCaution::stops_without_a_tap, "stops without a tap"},
        Word<WiringCaution>{WiringCaution::tap_held_without_a_call, "a tap is held without a call"},
        Word<WiringCaution>{WiringCaution::default_tap_gives_other_air, "default tap gives other air"},
        Word<WiringCaution>{WiringCaution::runs_at_its_default_tap, "runs at its default tap"},
        Word<WiringCaution>{WiringCaution::zone_air_not_known, "air of the least open zone not known"},
        Word<WiringCaution>{WiringCaution::zone_static_over_the_limit,
                            "static over the limit on the least open zone"},
        Word<WiringCaution>{WiringCaution::the_board_keeps_the_blower, "the board keeps the blower"},
        Word<WiringCaution>{WiringCaution::compressor_heat_at_the_cooling_tap,
                            "compressor heat at the cooling tap"},
        Word<WiringCaution>{WiringCaution::fault_makes_two_taps_live, "a fault can make two taps live"},
        Word<WiringCaution>{WiringCaution::fault_back_feeds, "a fault can back-feed"},
        Word<WiringCaution>{WiringCaution::fault_heats_without_air, "a fault can heat without air"},
        Word<WiringCaution>{WiringCaution::lost_common_feeds_calls, "a lost common feeds calls"},
        Word<WiringCaution>{WiringCaution::moving_relays_tie_calls, "moving relays tie calls"},
        Word<WiringCaution>{WiringCaution::moving_relays_make_two_taps_live,
                            "moving relays make two taps live"},
        Word<WiringCaution>{WiringCaution::leaking_thermostat_outputs, "leaking thermostat outputs"},
        Word<WiringCaution>{WiringCaution::runs_on_after_the_call, "runs on after the call"},
        Word<WiringCaution>{WiringCaution::transformer_above_its_planned_load,
                            "transformer above its planned load"},
        Word<WiringCaution>{WiringCaution::transformer_overloaded, "transformer overloaded"}};
}

}  // namespace endbell::inline wiring
