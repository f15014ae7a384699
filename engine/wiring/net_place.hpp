// Where a wire of a plan ends, as a value. Words are made of it for whoever reads a plan, and never read back.
#pragma once
#include <string>
#include <string_view>
#include <utility>

namespace endbell::inline wiring {

struct NetPlace {
    enum class Kind {
        signal,  // `number` of WiringPlan::signals
        supply_24v,
        common_24v,
        line_1,
        line_2,
        line_3,
        load_2,  // load side of WiringPlan::load_switch; its first is a signal
        load_3,
        neutral,
        earth,
        coil_feed,    // of relay `number` of WiringPlan::relays
        coil_return,  // of it, too
        pole_common,  // of its `pole`, from 1
        pole_open,    // dead while the coil is
        pole_closed,
        tap,         // `number` of the part
        motor,       // `label` printed on the part
        pin,         // `label`: a connector of the part and its pin
        motor_half,  // `label`: what a module hands on to its motor half
        old_plug,    // the same pin of the plug that is there
        capacitor,   // the new motor's own; of a dual one its fan terminal
        capacitor_common,
        board_output,   // `label` of the job's terminal
        board_outputs,  // those that used to feed the old motor, where the job names none
        cap             // of the unused lead of tap `number`, each on its own
    };
    Kind kind = Kind::earth;
    int number = 0;
    int pole = 0;
    std::string label = {};
    friend bool operator==(const NetPlace&, const NetPlace&) = default;

    static NetPlace signal(int number) { return {Kind::signal, number}; }
    static NetPlace coil_feed(int relay) { return {Kind::coil_feed, relay}; }
    static NetPlace coil_return(int relay) { return {Kind::coil_return, relay}; }
    static NetPlace common(int relay, int pole) { return {Kind::pole_common, relay, pole}; }
    static NetPlace open(int relay, int pole) { return {Kind::pole_open, relay, pole}; }
    static NetPlace closed(int relay, int pole) { return {Kind::pole_closed, relay, pole}; }
    static NetPlace tap(int number) { return {Kind::tap, number}; }
    static NetPlace motor(std::string label) { return {Kind::motor, 0, 0, std::move(label)}; }
    static NetPlace pin(std::string label) { return {Kind::pin, 0, 0, std::move(label)}; }
    static NetPlace board_output(std::string label) { return {Kind::board_output, 0, 0, std::move(label)}; }
    static NetPlace cap(int tap) { return {Kind::cap, tap}; }

    bool is_coil() const { return kind == Kind::coil_feed || kind == Kind::coil_return; }
    bool is_pole() const {
        return kind == Kind::pole_common || kind == Kind::pole_open || kind == Kind::pole_closed;
    }
};

/// Would a reader take this label of a job for another place of the netlist?
bool reads_like_a_place(std::string_view label);

}  // namespace endbell::inline wiring
