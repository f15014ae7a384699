// Jobs of every kind, generated: the same in every run.
#pragma once
#include "tests/wiring/fixtures.hpp"
#include "tests/wiring/tables.hpp"

namespace fixture {

struct Case {
    FailedUnit job;
    Part part;
    AirPlan air;
};

inline AirPlan any_air(Dice& dice, int taps) {
    AirPlan plan;
    plan.computed = true;
    for (const auto& entry : Words<Call>::table) {
        CallAir call;
        call.call = entry.value;
        call.tap = 1 + dice.below(taps);
        plan.calls.push_back(call);
    }
    return plan;
}

inline TapRule any_rule(Dice& dice) {
    return Words<TapRule>::table[static_cast<std::size_t>(dice.below(3))].value;
}

inline void any_thermostat(Dice& dice, FailedUnit& job) {
    std::vector<Terminal> list = letters({"G", "Y1"});
    if (dice.one_in(2)) list.push_back({"Y2", Call::cool_high});
    if (*job.controls.heat != HeatKind::none) list.push_back({"W1", Call::heat_high});
    if (*job.controls.heat == HeatKind::electric && dice.one_in(2)) list.push_back({"W2", Call::heat_high});
    if (*job.controls.heat == HeatKind::heat_pump && dice.one_in(2))
        list.push_back({"E", Call::electric_heat});
    if (dice.one_in(3)) {
        list.push_back({"DH", Call::dehumidify});
        job.controls.dehumidify =
            known(dice.one_in(2) ? DehumidifyLogic::live_is_normal : DehumidifyLogic::live_is_dehumidify);
    }
    if (dice.one_in(2)) job.controls.fan_with_heat = known(dice.one_in(2));
    job.controls.terminals = known(list);
}

inline void any_board(Dice& dice, FailedUnit& job) {
    std::vector<Terminal> list = terminals({{"COOL", Call::cool_high}, {"HEAT", Call::heat_high}});
    if (dice.one_in(2)) list.push_back({"CONT", Call::circulate});
    if (dice.one_in(3)) list.push_back({"LO COOL", Call::cool_low});
    if (dice.one_in(3)) list.push_back({"LO HEAT", Call::heat_low});
    if (dice.one_in(3)) list.push_back({"R", Call::circulate});  // a label that the netlist keeps for itself
    job.controls.terminals = known(list);
}

inline Case any_case(Dice& dice, ControlSource source) {
    Case c;
    const HeatKind heat = Words<HeatKind>::table[static_cast<std::size_t>(dice.below(6))].value;
    c.job = blower_job(source, heat);
    c.job.equipment.supply = known(bare_supply(volt(dice.one_in(2) ? 120 : 240)));
    if (source == ControlSource::thermostat) {
        any_thermostat(dice, c.job);
    } else {
        any_board(dice, c.job);
    }
    const bool leads = dice.one_in(4);
    c.part = leads ? three_lead_motor() : five_tap_motor(any_rule(dice));
    if (!leads && dice.one_in(3)) {
        c.part.motor->terminals.push_back({"RUN", "run signal", ""});
        c.job.controls.run_signal_available = known(true);
    }
    if (!leads && dice.one_in(4)) {
        c.part.motor->signal = SignalClass::line_signal;
        for (Tap& t : c.part.motor->taps) t.signal = SignalClass::line_signal;
    }
    c.air = any_air(dice, leads ? 3 : 5);
    return c;
}

}  // namespace fixture
