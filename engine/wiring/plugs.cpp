#include "engine/wiring/plugs.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/facts/rating.hpp"
#include "engine/wiring/feed.hpp"
#include "engine/wiring/line_side.hpp"
#include "engine/wiring/settings.hpp"
#include "engine/wiring/simulate.hpp"

namespace endbell::inline wiring {

namespace {

using Kind = NetPlace::Kind;

NetPlace pin_of(const PartTerminal& t) {
    return NetPlace::pin(t.connector.empty() ? t.label : fmt::format("{} {}", t.connector, t.label));
}

/// What the pin carries. A jumper is a matter of the settings, and carries nothing from outside.
std::optional<Wire> wire_to(const PartTerminal& t, Conductors conductors) {
    const bool to_neutral = conductors == Conductors::line_and_neutral;
    const NetPlace pin = pin_of(t);
    if (t.function == "line") return Wire{{Kind::line_1}, pin, WireNote::constant_line_power};
    if (t.function == "second line")
        return to_neutral ? Wire{{Kind::neutral}, pin, WireNote::neutral}
                          : Wire{{Kind::line_2}, pin, WireNote::second_line_conductor};
    if (t.function == "third line") return Wire{{Kind::line_3}, pin, WireNote::third_line_conductor};
    if (t.function == "earth") return Wire{{Kind::earth}, pin, WireNote::earth};
    if (t.function == "common") return Wire{{Kind::common_24v}, pin, WireNote::same_transformer};
    if (t.function == "winding" || t.function == "thermistor")
        return Wire{pin, {Kind::motor_half, 0, 0, t.label}, WireNote::winding};
    if (t.function == "jumper" || t.function == "park") return std::nullopt;
    return Wire{{Kind::old_plug}, pin, WireNote::as_before};
}

/// Where the setting is "in": two pins joined.
void wire_jumper(const Part& part, const Supply& supply, WiringPlan& plan) {
    if (jumper_for(supply).done != SettingDone::in) return;
    std::vector<NetPlace> ends;
    for (const PartTerminal& t : terminals_of(part)) {
        if (t.function == "jumper") ends.push_back(pin_of(t));
    }
    if (ends.size() == 2) plan.wires.push_back({ends.front(), ends.back(), WireNote::jumper});
}

/// The line and control plugs of a motor half are its module's.
void name_what_is_not_listed(const Part& part, WiringPlan& plan) {
    if (part.motor && includes_module(*part.motor).is(false)) {
        if (terminal(part, "winding") == nullptr) plan.lacking.emplace_back("terminals.winding");
        return;
    }
    for (const char* function : {"line", "second line", "earth"}) {
        if (terminal(part, function) == nullptr)
            plan.lacking.push_back(fmt::format("terminals.{}", function));
    }
    const auto& list = terminals_of(part);
    const bool calls = std::any_of(list.begin(), list.end(), [](const PartTerminal& t) {
        return t.function == "common" || t.function == "run signal" || t.function.rfind("tap ", 0) == 0;
    });
    if (!calls) plan.lacking.push_back("terminals.common");
}

}  // namespace

WiringPlan plug_for_plug(const Facts& facts, const Part& part) {
    WiringPlan plan;
    const MotorFeed feed = line_feed(facts, part);
    if (feed.refused) {
        plan.refusal = feed.refused->why;
        plan.lacking = feed.refused->lacking;
        return plan;
    }
    plan.possible = true;
    plan.method = WiringMethod::plug_for_plug;
    for (const PartTerminal& t : terminals_of(part)) {
        if (const auto wire = wire_to(t, feed.conductors)) plan.wires.push_back(*wire);
    }
    wire_jumper(part, facts.supply, plan);
    name_what_is_not_listed(part, plan);
    const bool joined = lands_twice(plan) || Simulator(plan).run(0).short_circuit;
    if (!joined) return plan;
    WiringPlan none;
    none.refusal = WiringRefusal::terminals_not_listed;
    none.lacking = {"terminals.label"};
    return none;
}

}  // namespace endbell::inline wiring
