#include "engine/wiring/landing.hpp"

#include <fmt/format.h>

#include "engine/facts/rating.hpp"
#include "engine/wiring/feed.hpp"
#include "engine/wiring/signals.hpp"
#include "engine/wiring/tap_choice.hpp"

namespace endbell::inline wiring {

namespace {

std::string printed(const Part& part, int tap) {
    if (const PartTerminal* t = terminal(part, fmt::format("tap {}", tap))) return t->label;
    const PartTerminal* line = terminal(part, "line");
    const bool one_lead =
        signal_of(*part.motor).is(SignalClass::switched_line) && part.motor->taps.size() <= 1;
    if (one_lead && line != nullptr) return line->label;
    const Tap* known = tap_of(part, tap);
    return known != nullptr ? known->label : "";
}

}  // namespace

void land_taps(const Part& part, int highest_tap, WiringPlan& plan) {
    for (int tap = 1; tap <= highest_tap; ++tap) {
        const bool on_part = part.motor->taps.empty() || tap_of(part, tap) != nullptr;
        if (!on_part) continue;
        TapRow row;
        row.tap = tap;
        row.terminal = printed(part, tap);
        for (const Wire& w : plan.wires) {
            if (w.to == NetPlace::tap(tap)) row.from.push_back(w.from);
        }
        for (const ControlState& s : plan.states) {
            if (s.wanted_tap != tap) continue;
            row.states.push_back(s.name);
            if (s.provisional) row.provisional = s.provisional;
        }
        row.parked = plan.line_taps && row.from.empty();
        if (row.parked) plan.wires.push_back({NetPlace::tap(tap), NetPlace::cap(tap), WireNote::parked});
        plan.taps.push_back(std::move(row));
    }
}

void wire_run_signal(const FailedUnit& job, const Part& part, WiringPlan& plan) {
    const NetPlace lead = NetPlace::motor(terminal(part, "run signal")->label);
    bool any = false;
    if (job.controls.terminals) {
        for (const Terminal& t : *job.controls.terminals) {
            if (is_thermostat_letter(t.name)) continue;
            plan.wires.push_back({NetPlace::board_output(t.name), lead, WireNote::run_signal});
            any = true;
        }
    }
    if (!any) plan.wires.push_back({{NetPlace::Kind::board_outputs}, lead, WireNote::run_signal});
}

}  // namespace endbell::inline wiring
