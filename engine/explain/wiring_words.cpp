#include "engine/explain/wiring_words.hpp"

#include <array>

namespace endbell::inline explain {

namespace {

// Sources: equipment and motor service manuals, as named in docs/explanation/wiring-proof.md.

constexpr auto caution_sentences = std::to_array<English<WiringCaution>>({
    {WiringCaution::line_power_always_present,
     "Line power stays on the motor with or without a call. Never put a relay or contactor in its line: "
     "switch the 24 V signal."},
    {WiringCaution::both_line_conductors_live,
     "Between two lines the terminal marked N takes the second line conductor. Both are live to ground."},
    {WiringCaution::a_high_leg_is_there,
     "One leg of this supply stands at 208 V to ground. No neutral and no 120 V load ever lands on it: "
     "read each leg to ground before one is landed."},
    {WiringCaution::line_to_line_is_480,
     "277 V is from a line to the neutral. Line to line is 480 V here: a second line conductor destroys the "
     "motor."},
    {WiringCaution::load_side_only,
     "Every lead of the motor and its capacitor lands on the load side (T). A line-side terminal (L) "
     "stays live with the contacts open. The coil of contactor or starter stays wired as it is."},
    {WiringCaution::fourth_lead_on_a_dual_capacitor,
     "Both capacitor leads go to a capacitor of its own. Hooked up with three wires on a dual capacitor, "
     "the lead that is the other end of the run lead is capped by itself: on the wrong leg it is a "
     "line-to-line short. The motor's own diagram says which it is."},
    {WiringCaution::reverse_by_this_motors_leads,
     "To turn it the other way exchange two leads of this motor at the load side. Never exchange the "
     "unit's supply: a scroll compressor there would run backwards."},
    {WiringCaution::fan_stops_in_defrost,
     "The fan must stand still in defrost, while the compressor runs on: its command comes by way of the "
     "defrost control."},
    {WiringCaution::earth_g_is_not_fan_g,
     "G on the power header is earth. It never meets the thermostat's G, which is the fan call."},
    {WiringCaution::common_from_the_same_transformer,
     "C comes from the transformer that feeds the calls, even where its terminal sits beside the line "
     "terminals."},
    {WiringCaution::one_relay_group_only,
     "Join board outputs only where one relay group of one phase feeds them all: never two legs."},
    {WiringCaution::parked_leads_are_live,
     "Unused speed leads carry voltage while the motor runs: cap and insulate each on its own, never join "
     "them."},
    {WiringCaution::leads_are_provisional,
     "No airflow shows that these speed leads are right. Set them by static pressure and temperature rise at "
     "start-up: move a call to the next lead up or down until it is inside its window."},
    {WiringCaution::fuel_heat_lead_needs_a_rise,
     "The heat lead is not final: measure the temperature rise at every stage and change the lead until the "
     "rise is "
     "inside the plate's range. Do not leave the furnace before that."},
    {WiringCaution::line_coils_and_24v_contacts,
     "The relays' coils are at line voltage and their contacts at 24 V: keep the two wirings apart, in "
     "rated boxes."},
    {WiringCaution::control_coils_and_line_contacts,
     "The relays' coils are at 24 V and their contacts at line voltage: keep the two wirings apart, in "
     "rated boxes."},
    {WiringCaution::tap_rule_not_stated,
     "The motor's sheet does not say what two live taps do. This plan never makes two live; keep it so."},
    {WiringCaution::verify_the_priority,
     "Two taps are live in some states and the motor obeys the higher, as its sheet says: verify it at "
     "start-up."},
    {WiringCaution::one_board_output_at_a_time,
     "The plan holds only while the board drives one blower output at a time: check it in its sequence."},
    {WiringCaution::elements_hold_the_blower,
     "The plan holds only while the sequencer or element relay keeps the blower running as long as an "
     "element is hot: see it "
     "run on after a heat call."},
    {WiringCaution::stops_without_a_tap,
     "The board runs the motor on after a call and while a limit is open, and this part stops with no tap "
     "live: so a tap "
     "stays live without a call, and the motor stands still by its run signal alone. Never take that wire "
     "off to stop it."},
    {WiringCaution::tap_held_without_a_call,
     "The board runs the motor on after a call and while a limit is open. What this part does with its run "
     "signal live and no tap "
     "live the catalog does not say: so a tap stays live without a call, and the motor stands still by its "
     "run signal alone. Ask who keeps the catalog."},
    {WiringCaution::default_tap_gives_other_air,
     "The board runs the motor on after a call and while a limit is open. With no tap live this part runs at "
     "its default tap, "
     "which is not shown to give the air that is wanted then: so another tap stays live without a call, and "
     "the motor stands "
     "still by its run signal alone."},
    {WiringCaution::runs_at_its_default_tap,
     "With its run signal live and no tap live this part runs at its default tap, and that tap gives the air "
     "that is wanted "
     "then: no wire holds it. See it run on after a heat call."},
    {WiringCaution::zone_air_not_known,
     "A zone panel closes parts of the duct, and nobody has said how much air the least open zone takes "
     "(controls.least_zone): read the static with that zone alone."},
    {WiringCaution::zone_static_over_the_limit,
     "The least open zone does not take the least air of some call at the static limit: open its by-pass or "
     "more of the duct, "
     "or the static lies over the limit."},
    {WiringCaution::the_board_keeps_the_blower,
     "The furnace board keeps its fan delays and its limit: only its own blower output starts the blower. A "
     "heat call may choose the speed, never start it."},
    {WiringCaution::compressor_heat_at_the_cooling_tap,
     "Compressor heating runs at the cooling tap: never less air than in cooling."},
    {WiringCaution::fault_makes_two_taps_live,
     "A single fault can make two taps live: see the table of faults."},
    {WiringCaution::fault_back_feeds,
     "A single fault can let one call feed another: see the table of faults."},
    {WiringCaution::fault_heats_without_air,
     "A single fault can leave elements, a burner or a compressor running without air, as the table of "
     "faults names it: its own "
     "limit must be in place and tested."},
    {WiringCaution::lost_common_feeds_calls,
     "If the common comes off, a live call feeds idle ones through coils or windings: land each common on "
     "its "
     "own screw and tug it."},
    {WiringCaution::moving_relays_tie_calls,
     "While the relays move, one call can feed another for a moment, and no other plan of this part avoids "
     "it."},
    {WiringCaution::moving_relays_make_two_taps_live,
     "While the relays move, two taps can be live for a moment, and no other plan of this part avoids it."},
    {WiringCaution::leaking_thermostat_outputs,
     "A thermostat with triac outputs can leak enough to hold a tap on: if the blower does not stop, add a "
     "load resistor or a relay."},
    {WiringCaution::runs_on_after_the_call,
     "Some taps run on after the call ends: the wheel still turns. It is not a fault."},
    {WiringCaution::transformer_above_its_planned_load,
     "The control transformer is loaded above its planned share: fit the larger one of the kit."},
    {WiringCaution::transformer_overloaded,
     "The control transformer is overloaded with this plan: fit the larger one of the kit first."},
});

// Each ends "No wiring is given: ..." or "passes every rule, but ...".
constexpr auto refusal_sentences = std::to_array<English<WiringRefusal>>({
    {WiringRefusal::no_motor, "this part is no motor"},
    {WiringRefusal::inducer_by_its_own_diagram, "a draft inducer is wired by the equipment's own diagram"},
    {WiringRefusal::fewer_than_three_line_wires,
     "a three-phase motor takes three line conductors, each through its starter and overload, and one of "
     "them or the terminal for it is not known: on two it does not start, and burns"},
    {WiringRefusal::terminals_not_listed,
     "the catalog does not list, each once, the terminals of the part on which these conductors land"},
    {WiringRefusal::load_on_the_high_leg,
     "about 208 V on a 240 V delta with a high leg is that leg to the neutral or to ground, where no "
     "motor belongs: read line to line again"},
    {WiringRefusal::fan_runs_in_defrost,
     "on the compressor's contactor alone the outdoor fan of a heat pump would run on in defrost"},
    {WiringRefusal::signal_class_not_known, "the catalog does not say what tells this part to run"},
    {WiringRefusal::source_not_known, "the job does not say what gives the calls"},
    {WiringRefusal::supply_not_known,
     "nobody has said what feeds the motor, and the old plate does not tell two lines from line and neutral"},
    {WiringRefusal::controls_not_known, "the job does not say enough about its controls"},
    {WiringRefusal::contactor_feeds_line_leads_only,
     "the outdoor contactor switches line power: only a motor with line-voltage leads can hang on it"},
    {WiringRefusal::serial_control,
     "a serial or pulse command from the board has no counterpart on this part"},
    {WiringRefusal::too_many_signals, "more signals reach the motor than can be proven"},
    {WiringRefusal::heat_call_past_the_board,
     "in a furnace the heat call may not go past the board to a tap"},
    {WiringRefusal::blower_off_its_board,
     "a fuel furnace's board keeps the blower's delays and runs it while a limit is open: thermostat wires "
     "alone never command it"},
    {WiringRefusal::terminal_not_known,
     "nobody has told what this terminal calls, and nobody may take it for another call"},
    {WiringRefusal::call_without_a_wire,
     "the equipment needs this call, and no terminal that reaches the motor gives it"},
    {WiringRefusal::terminal_without_a_state,
     "this terminal should command the blower, and these controls have no state in which it does"},
    {WiringRefusal::motor_still_while_heating,
     "a state of the job's own list heats or cools and wants the motor off"},
    {WiringRefusal::elements_hot_after_their_call,
     "elements stay hot after their call, and neither this part nor the equipment keeps the blower running"},
    {WiringRefusal::runs_without_a_call,
     "line power alone starts this part at its default tap, and it has no run signal that would stop it"},
    {WiringRefusal::no_common_wire, "no 24 V common reaches the motor"},
    {WiringRefusal::taps_not_chosen,
     "no tap is chosen for every call, because readings are missing or no tap gives the air"},
    {WiringRefusal::states_not_told_apart, "two states that need different taps look alike on these signals"},
    {WiringRefusal::line_voltage_on_24v_tap,
     "the board's outputs are at line voltage and the part's taps take 24 V"},
    {WiringRefusal::no_circuit, "no circuit of this kind gives every state its own tap"},
    {WiringRefusal::two_taps_on_one_tap_part,
     "two outputs live together would make two taps live, and this part takes one"},
    {WiringRefusal::electrical_check_disagrees,
     "solved for its volts, the plan does not do what its table says: wire nothing by it and report it"},
});

// Each ends "It would become possible with: ...".
constexpr auto rescue_sentences = std::to_array<English<WiringRescue>>({
    {WiringRescue::speed_leads, "a motor with speed leads"},
    {WiringRescue::assembly_and_its_diagram, "the specified assembly and its diagram"},
    {WiringRescue::equipment_makers_part, "the equipment maker's own part"},
    {WiringRescue::fewer_terminals, "fewer terminals on the motor"},
    {WiringRescue::board_blower_outputs, "blower outputs of the furnace board"},
    {WiringRescue::part_with_run_signal, "a part with a line-voltage run signal"},
    {WiringRescue::terminal_of_the_call,
     "the terminal that gives the call (elements: W, W1, W2, W3, AUX, E or EM; a board: its output), at "
     "controls.terminals"},
    {WiringRescue::meaning_of_the_terminal,
     "what the terminal calls, at controls.terminals; or the list without it, where it does not reach the "
     "motor"},
    {WiringRescue::run_on_of_the_elements,
     "a part whose heat tap has an off-delay, or a sequencer or element relay that runs the blower "
     "(controls.fan_interlock)"},
    {WiringRescue::fan_output_of_the_defrost_board,
     "the fan output of the defrost board, or a fan relay that it drops out, at controls.fan_command"},
    {WiringRescue::part_that_stops, "a part that stops with no tap live, or one with a run signal"},
    {WiringRescue::common_wire, "a common wire from the transformer that feeds the calls"},
});

}  // namespace

std::string say(WiringCaution caution) {
    return english_of(caution_sentences, caution);
}

std::string say(WiringRefusal refusal) {
    return english_of(refusal_sentences, refusal);
}

std::string say(WiringRescue rescue) {
    return english_of(rescue_sentences, rescue);
}

std::vector<English<WiringCaution>> english_of_wiring_cautions() {
    return std::vector(caution_sentences.begin(), caution_sentences.end());
}

std::vector<English<WiringRefusal>> english_of_wiring_refusals() {
    return std::vector(refusal_sentences.begin(), refusal_sentences.end());
}

std::vector<English<WiringRescue>> english_of_wiring_rescues() {
    return std::vector(rescue_sentences.begin(), rescue_sentences.end());
}

}  // namespace endbell::inline explain
