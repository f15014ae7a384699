#include "tests/wiring/drawn.hpp"

#include <algorithm>

#include "tests/wiring/generated.hpp"
#include "tests/wiring/line_parts.hpp"

namespace fixture {

namespace {

template <class T>
T any_of(Dice& dice, std::initializer_list<T> list) {
    return *(list.begin() + dice.below(static_cast<int>(list.size())));
}

bool burns_fuel(HeatKind heat) {
    return heat == HeatKind::gas || heat == HeatKind::oil || heat == HeatKind::dual_fuel;
}

void add(FailedUnit& job, const char* label, std::optional<Call> call) {
    if (!job.controls.terminals) job.controls.terminals = known(std::vector<Terminal>{});
    job.controls.terminals.value->push_back({label, call});
}

void draw_cooling(Dice& dice, FailedUnit& job) {
    job.equipment.cooling = known(ton_cooling(3));
    const bool two = dice.one_in(3);
    job.equipment.cooling_stages = known(two ? 2 : 1);
    add(job, two ? "Y1" : any_of(dice, {"Y", "Y1"}), two ? Call::cool_low : Call::cool_high);
    if (two) add(job, "Y2", Call::cool_high);
}

void draw_heat(Dice& dice, FailedUnit& job, HeatKind heat) {
    if (burns_fuel(heat)) {
        const bool two = dice.one_in(3);
        job.equipment.heating_stages = known(two ? 2 : 1);
        add(job, any_of(dice, {"W", "W1"}), two ? Call::heat_low : Call::heat_high);
        if (two) add(job, "W2", Call::heat_high);
        if (heat == HeatKind::dual_fuel && dice.one_in(3)) add(job, "E", Call::heat_high);
    } else if (heat != HeatKind::none) {
        job.equipment.electric_heat = known(kilowatt(10));
        add(job, any_of(dice, {"W", "W1", "W2", "AUX"}), Call::electric_heat);
        if (dice.one_in(3)) add(job, "W3", Call::electric_heat);
        if (heat == HeatKind::heat_pump && dice.one_in(2))
            add(job, any_of(dice, {"E", "EM"}), Call::electric_heat);
        if (dice.one_in(2)) job.controls.fan_with_heat = known(dice.one_in(2));
    }
}

void draw_thermostat(Dice& dice, FailedUnit& job, HeatKind heat) {
    if (!dice.one_in(5)) add(job, "G", Call::circulate);
    draw_cooling(dice, job);
    draw_heat(dice, job, heat);
    for (const char* idle : {"R", "C", "O", "L"}) {
        if (dice.one_in(4)) add(job, idle, Call::circulate);
    }
    if (!dice.one_in(4)) return;
    add(job, "DH", Call::dehumidify);
    job.controls.dehumidify =
        known(any_of(dice, {DehumidifyLogic::live_is_normal, DehumidifyLogic::live_is_dehumidify,
                            DehumidifyLogic::not_used}));
}

void draw_board(Dice& dice, FailedUnit& job, HeatKind heat) {
    job.equipment.cooling = known(ton_cooling(3));
    add(job, "COOL", Call::cool_high);
    if (heat != HeatKind::none) add(job, "HEAT", Call::heat_high);
    if (dice.one_in(2)) add(job, "CONT", Call::circulate);
    if (dice.one_in(3)) add(job, "LO COOL", Call::cool_low);
    if (burns_fuel(heat) && dice.one_in(3)) {
        add(job, "LO HEAT", Call::heat_low);
        job.equipment.heating_stages = known(2);
    }
    if (!burns_fuel(heat) && heat != HeatKind::none) job.equipment.electric_heat = known(kilowatt(10));
}

Part draw_blower(Dice& dice, DrawnJob& drawn) {
    drawn.leads = dice.one_in(5);
    if (drawn.leads) return three_lead_motor();
    Part part = five_tap_motor(any_rule(dice));
    const double off_delay = any_of(dice, {0.0, 60.0, 120.0});
    for (Tap& tap : part.motor->taps) {
        if (off_delay > 0) tap.off_delay = second(off_delay);
    }
    if (dice.one_in(3)) {
        part.motor->terminals.push_back({"RUN", "run signal", ""});
    } else if (dice.one_in(5)) {
        part.motor->signal = SignalClass::line_signal;
        for (Tap& tap : part.motor->taps) tap.signal = SignalClass::line_signal;
    }
    return part;
}

/// A supply of one phase at the motor, read there, with the conductor that the motor returns on.
void draw_supply(Dice& dice, DrawnJob& drawn, const char* behind_a_contactor) {
    struct Fed {
        SupplySystem system;
        double read;
        bool neutral;
    };
    const Fed fed = any_of(dice, {Fed{bare_supply(volt(120)), 118, true},
                                  {bare_supply(volt(240)), 239, false},
                                  {{SupplyKind::split, volt(240), volt(120), {}}, 121, true},
                                  {{SupplyKind::single_phase, volt(230), {}, hertz(60)}, 236, false},
                                  {{SupplyKind::wye, volt(208), volt(120), {}}, 207, false},
                                  {{SupplyKind::wye, volt(480), volt(277), {}}, 276, true},
                                  {{SupplyKind::three_phase, volt(460), {}, {}}, 462, false},
                                  {{SupplyKind::high_leg, volt(240), volt(120), {}}, 239, false}});
    drawn.job.plate.phase = known(1);
    drawn.job.equipment.supply = known(fed.system);
    drawn.job.measured.line_volts = known<LineVolts>(volt(fed.read), Origin::measured);
    drawn.back = fed.neutral ? "N" : behind_a_contactor;
}

void draw_transformer(Dice& dice, FailedUnit& job) {
    if (dice.one_in(4)) return;
    job.controls.transformer = known(volt_ampere(any_of(dice, {20, 40, 50, 75})));
    if (!dice.one_in(4)) job.controls.transformer_load = known(volt_ampere(2.0 + dice.below(50)));
}

/// One thing wrong with the job's list or the part's; it may still be wired where the fault does no harm.
void spoil(Dice& dice, DrawnJob& drawn) {
    std::vector<Terminal>& list = *drawn.job.controls.terminals.value;
    std::vector<PartTerminal>& landed = drawn.part.motor->terminals;
    drawn.curable = false;
    switch (dice.below(7)) {
        case 0:
            list.erase(list.begin() + dice.below(static_cast<int>(list.size())));
            break;
        case 1:
            list.push_back({"Z9", std::nullopt});
            break;
        case 2:
            list.push_back({any_of(dice, {"E", "W2", "W3", "AUX", "Y2", "DH"}), Call::heat_high});
            break;
        case 3:
            drawn.job.controls.heat = {};
            break;
        case 4:
            drawn.job.equipment.electric_heat = {};
            drawn.job.controls.fan_interlock = known(false);
            break;
        case 5:
            landed.erase(landed.begin() + dice.below(static_cast<int>(landed.size())));
            break;
        default:
            drawn.job.controls.circulate_hours = known(400.0);
            drawn.job.controls.common_present = known(!dice.one_in(2));
            break;
    }
}

DrawnJob indoors(Dice& dice) {
    const HeatKind heat = Words<HeatKind>::table[static_cast<std::size_t>(dice.below(6))].value;
    const ControlSource source =
        any_of(dice, {ControlSource::thermostat, ControlSource::board_24v, ControlSource::board_line});
    DrawnJob drawn;
    drawn.job = blower_job(source, heat);
    drawn.part = draw_blower(dice, drawn);
    const bool run_lead = drawn.part.motor->terminals.back().function == "run signal";
    drawn.board = source != ControlSource::thermostat && !(burns_fuel(heat) && run_lead);
    if (drawn.board) {
        draw_board(dice, drawn.job, heat);
    } else {
        draw_thermostat(dice, drawn.job, heat);
        drawn.run_line = run_lead;
        drawn.job.controls.run_signal_available = known(run_lead);
        drawn.curable =
            !burns_fuel(heat) || run_lead;  // a thermostat alone never commands a furnace's blower
    }
    if (dice.one_in(2)) drawn.job.controls.fan_interlock = known(true);
    draw_supply(dice, drawn, "L2");
    draw_transformer(dice, drawn.job);
    drawn.air = any_air(dice, drawn.leads ? 3 : 5);
    if (dice.one_in(4)) spoil(dice, drawn);
    const std::vector<PartTerminal>& left = drawn.part.motor->terminals;
    drawn.run_line = drawn.run_line && std::any_of(left.begin(), left.end(), [](const PartTerminal& t) {
                         return t.function == "run signal";
                     });
    return drawn;
}

DrawnJob three_phase(Dice& dice) {
    DrawnJob drawn;
    drawn.job = three_phase_job(any_of(dice, {208.0, 230.0, 460.0}));
    drawn.part = three_phase_motor();
    drawn.leads = drawn.switched = true;
    drawn.hot = "starter T1";
    drawn.back = "starter T2";
    drawn.third = "starter T3";
    if (!dice.one_in(4)) return drawn;
    drawn.curable = false;
    drawn.part.motor->terminals.erase(drawn.part.motor->terminals.begin() + dice.below(3));
    return drawn;
}

DrawnJob outdoors(Dice& dice) {
    DrawnJob drawn;
    drawn.job.unit.load = known(Load::outdoor_fan);
    const HeatKind heat = any_of(dice, {HeatKind::none, HeatKind::heat_pump, HeatKind::gas});
    const auto command = any_of(dice, {FanCommand::contactor, FanCommand::fan_relay, FanCommand::board});
    const bool two_speeds = dice.one_in(3);
    drawn.job.controls.heat = known(heat);
    drawn.job.controls.fan_command = known(command);
    drawn.part = two_speeds ? two_speed_fan() : fan_motor(1 + dice.below(2));
    drawn.leads = drawn.switched = true;
    draw_supply(dice, drawn, "contactor T2");
    drawn.hot = command == FanCommand::contactor   ? "contactor T1"
                : command == FanCommand::fan_relay ? "fan relay NO"
                                                   : "board FAN";
    if (two_speeds && command == FanCommand::board) {
        add(drawn.job, "LOW", Call::cool_low);
        add(drawn.job, "HIGH", Call::cool_high);
        drawn.hot = "HIGH";
        drawn.board = true;
    }
    drawn.curable = heat != HeatKind::heat_pump || command != FanCommand::contactor;
    if (!dice.one_in(5)) return drawn;
    drawn.curable = false;
    drawn.part.motor->terminals.erase(drawn.part.motor->terminals.begin() + dice.below(2));
    return drawn;
}

}  // namespace

DrawnJob draw(Dice& dice) {
    const int kind = dice.below(10);
    return kind == 0 ? three_phase(dice) : kind == 1 ? outdoors(dice) : indoors(dice);
}

}  // namespace fixture
