#include "engine/wiring/wiring.hpp"

namespace endbell::inline wiring {

Verdict verdict_of(WiringRefusal refusal) {
    using enum WiringRefusal;
    switch (refusal) {
        case fewer_than_three_line_wires:
        case supply_not_known:
        case electrical_check_disagrees:
        case load_on_the_high_leg:
        case terminal_not_known:
        case terminal_without_a_state:
        case motor_still_while_heating:
            return Verdict::not_shown;
        case terminals_not_listed:
        case signal_class_not_known:
        case source_not_known:
        case controls_not_known:
        case taps_not_chosen:
            return Verdict::fits;
        case no_motor:
        case inducer_by_its_own_diagram:
        case contactor_feeds_line_leads_only:
        case fan_runs_in_defrost:
        case serial_control:
        case too_many_signals:
        case heat_call_past_the_board:
        case blower_off_its_board:
        case call_without_a_wire:
        case elements_hot_after_their_call:
        case runs_without_a_call:
        case no_common_wire:
        case states_not_told_apart:
        case line_voltage_on_24v_tap:
        case no_circuit:
        case two_taps_on_one_tap_part:
            break;
    }
    return Verdict::does_not_fit;
}

Verdict verdict_of(const WiringPlan& plan) {
    return plan.refusal ? verdict_of(*plan.refusal) : Verdict::fits;
}

}  // namespace endbell::inline wiring
