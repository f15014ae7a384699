// Why a wiring plan is refused, and what would rescue it.
#pragma once
#include "engine/model/finding.hpp"

namespace endbell::inline wiring {

/// Why no wiring is given.
enum class WiringRefusal {
    no_motor,
    inducer_by_its_own_diagram,
    fewer_than_three_line_wires,
    terminals_not_listed,
    load_on_the_high_leg,
    fan_runs_in_defrost,
    signal_class_not_known,
    source_not_known,
    supply_not_known,
    controls_not_known,
    contactor_feeds_line_leads_only,
    serial_control,
    too_many_signals,
    heat_call_past_the_board,
    blower_off_its_board,
    terminal_not_known,         // a listed terminal whose call nobody has told
    call_without_a_wire,        // the equipment needs it, and no state of these signals calls it
    terminal_without_a_state,   // it should command the blower, and no state of these controls uses it
    motor_still_while_heating,  // a state of the job's own heats and wants the motor off
    elements_hot_after_their_call,
    runs_without_a_call,  // line power alone starts it at its default tap
    no_common_wire,
    taps_not_chosen,        // readings are missing, or no tap gives the air
    states_not_told_apart,  // two states that need different taps look alike on these signals
    line_voltage_on_24v_tap,
    no_circuit,
    two_taps_on_one_tap_part,
    electrical_check_disagrees
};
constexpr auto words_of(WiringRefusal) {
    return std::array{
        Word<WiringRefusal>{WiringRefusal::no_motor, "no motor"},
        Word<WiringRefusal>{WiringRefusal::inducer_by_its_own_diagram, "inducer by its own diagram"},
        Word<WiringRefusal>{WiringRefusal::fewer_than_three_line_wires, "fewer than three line wires"},
        Word<WiringRefusal>{WiringRefusal::terminals_not_listed, "terminals not listed"},
        Word<WiringRefusal>{WiringRefusal::load_on_the_high_leg, "load on the high leg"},
        Word<WiringRefusal>{WiringRefusal::fan_runs_in_defrost, "fan runs in defrost"},
        Word<WiringRefusal>{WiringRefusal::signal_class_not_known, "signal class not known"},
        Word<WiringRefusal>{WiringRefusal::source_not_known, "source not known"},
        Word<WiringRefusal>{WiringRefusal::supply_not_known, "supply not known"},
        Word<WiringRefusal>{WiringRefusal::controls_not_known, "controls not known"},
        Word<WiringRefusal>{WiringRefusal::contactor_feeds_line_leads_only,
                            "contactor feeds line leads only"},
        Word<WiringRefusal>{WiringRefusal::serial_control, "serial control"},
        Word<WiringRefusal>{WiringRefusal::too_many_signals, "too many signals"},
        Word<WiringRefusal>{WiringRefusal::heat_call_past_the_board, "heat call past the board"},
        Word<WiringRefusal>{WiringRefusal::blower_off_its_board, "blower off its board"},
        Word<WiringRefusal>{WiringRefusal::terminal_not_known, "terminal not known"},
        Word<WiringRefusal>{WiringRefusal::call_without_a_wire, "call without a wire"},
        Word<WiringRefusal>{WiringRefusal::terminal_without_a_state, "terminal without a state"},
        Word<WiringRefusal>{WiringRefusal::motor_still_while_heating, "motor still while heating"},
        Word<WiringRefusal>{WiringRefusal::elements_hot_after_their_call, "elements hot after their call"},
        Word<WiringRefusal>{WiringRefusal::runs_without_a_call, "runs without a call"},
        Word<WiringRefusal>{WiringRefusal::no_common_wire, "no common wire"},
        Word<WiringRefusal>{WiringRefusal::taps_not_chosen, "taps not chosen"},
        Word<WiringRefusal>{WiringRefusal::states_not_told_apart, "states not told apart"},
        Word<WiringRefusal>{WiringRefusal::line_voltage_on_24v_tap, "line voltage on a 24 V tap"},
        Word<WiringRefusal>{WiringRefusal::no_circuit, "no circuit"},
        Word<WiringRefusal>{WiringRefusal::two_taps_on_one_tap_part, "two taps on a one-tap part"},
        Word<WiringRefusal>{WiringRefusal::electrical_check_disagrees, "electrical check disagrees"}};
}
/// What a refusal comes to for the part. Not shown: how it is fed is not known, or has no place in a plan yet. What
/// waits for readings of the controls or of the air says nothing of the part.
Verdict verdict_of(WiringRefusal refusal);

/// What would make a refused plan possible.
enum class WiringRescue {
    speed_leads,
    assembly_and_its_diagram,
    equipment_makers_part,
    fewer_terminals,
    board_blower_outputs,
    part_with_run_signal,
    terminal_of_the_call,
    meaning_of_the_terminal,
    run_on_of_the_elements,
    part_that_stops,
    common_wire,
    fan_output_of_the_defrost_board
};
constexpr auto words_of(WiringRescue) {
    return std::array{
        Word<WiringRescue>{WiringRescue::speed_leads, "a motor with speed leads"},
        Word<WiringRescue>{WiringRescue::assembly_and_its_diagram, "the specified assembly and its diagram"},
        Word<WiringRescue>{WiringRescue::equipment_makers_part, "the equipment maker's own part"},
        Word<WiringRescue>{WiringRescue::fewer_terminals, "fewer terminals on the motor"},
        Word<WiringRescue>{WiringRescue::board_blower_outputs, "blower outputs of the furnace board"},
        Word<WiringRescue>{WiringRescue::part_with_run_signal, "a part with a line-voltage run signal"},
        Word<WiringRescue>{WiringRescue::terminal_of_the_call, "the terminal that gives the call"},
        Word<WiringRescue>{WiringRescue::meaning_of_the_terminal, "what the terminal calls"},
        Word<WiringRescue>{WiringRescue::run_on_of_the_elements,
                           "a tap off-delay or a fan interlock of the elements"},
        Word<WiringRescue>{WiringRescue::part_that_stops, "a part that stops with no tap live"},
        Word<WiringRescue>{WiringRescue::common_wire, "a common wire from the same transformer"},
        Word<WiringRescue>{WiringRescue::fan_output_of_the_defrost_board,
                           "the fan output of the defrost board"}};
}

}  // namespace endbell::inline wiring
