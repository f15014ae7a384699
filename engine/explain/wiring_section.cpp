#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/explain/drawing.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/values.hpp"
#include "engine/explain/wiring_words.hpp"

namespace endbell::inline explain {

namespace {

std::string signal_names(const WiringPlan& plan, SignalSet live) {
    std::string out;
    for (std::size_t i = 0; i < plan.signals.size(); ++i) {
        if (live >> i & 1U) out += (out.empty() ? "" : " ") + plan.signals[i];
    }
    return out.empty() ? "-" : out;
}

std::string tap_list(const std::vector<int>& taps) {
    std::string out;
    for (int tap : taps) out += (out.empty() ? "" : " ") + std::to_string(tap);
    return out.empty() ? "-" : out;
}

/// States that the controls cannot reach are counted and left out, unless one of them does not hold.
void add_truth(Document& to, const WiringPlan& plan) {
    Grid table{{"signals live", "state", "taps live", "tap obeyed", "tap wanted", "holds"}, {}, ""};
    int unreachable = 0;
    for (const TruthRow& row : plan.truth) {
        if (!row.reachable && row.holds) {
            ++unreachable;
            continue;
        }
        table.rows.push_back(
            {signal_names(plan, row.live), row.state, tap_list(row.live_taps),
             row.effective_tap ? (*row.effective_tap == 0 ? "off" : std::to_string(*row.effective_tap))
                               : "not stated",
             !row.reachable ? "any" : (row.wanted_tap == 0 ? "off" : std::to_string(row.wanted_tap)),
             row.holds ? "yes" : "NO"});
    }
    table.caption = std::string(plan.proven ? "Proven: " : "NOT PROVEN: ") + "all " +
                    std::to_string(plan.truth.size()) + " states of the signals were simulated; " +
                    std::to_string(unreachable) +
                    " that the controls cannot reach hold too and are left out here.";
    to.add(Heading{"Truth table"});
    to.add(table);
}

/// The one lead of a motor of one speed is better known by what is printed on it.
std::string landing_of(const WiringPlan& plan, const NetPlace& place) {
    const bool one_lead = place.kind == NetPlace::Kind::tap && plan.taps.size() == 1;
    const std::string name = text_of(plan, place);
    if (!one_lead || plan.taps.front().terminal.empty()) return name;
    return name + " (lead " + plan.taps.front().terminal + ")";
}

std::string place_list(const WiringPlan& plan, const std::vector<NetPlace>& places) {
    std::string out;
    for (const NetPlace& place : places) out += (out.empty() ? "" : ", ") + text_of(plan, place);
    return out;
}

void add_settings(Document& to, const WiringPlan& plan) {
    if (plan.settings.empty()) return;
    to.add(Heading{"Set first"});
    Steps steps;
    for (const Setting& setting : plan.settings) steps.items.push_back(say(setting));
    to.add(steps);
}

void add_taps(Document& to, const WiringPlan& plan) {
    if (plan.taps.empty()) return;
    Grid table{{"tap", "on the part", "from", "serves"},
               {},
               "By the terminals in the catalog, never by wire colour."};
    for (const TapRow& tap : plan.taps) {
        table.rows.push_back(
            {std::to_string(tap.tap), tap.terminal.empty() ? "not in the catalog" : tap.terminal,
             tap.parked ? "cap and insulate on its own"
                        : (tap.from.empty() ? "leave open" : place_list(plan, tap.from)),
             (tap.states.empty() ? "-" : joined(tap.states, ", ")) +
                 (tap.provisional ? "; provisional: " + std::string(word(*tap.provisional)) : "")});
    }
    to.add(table);
}

void add_relays(Document& to, const WiringPlan& plan) {
    if (plan.relays.empty() && !plan.truth.empty()) {
        to.add(Paragraph{"No isolation relay is needed."});
        return;
    }
    for (const Relay& relay : plan.relays) {
        to.add(Paragraph{"Relay " + relay.name + ": coil from " +
                         plan.signals[static_cast<std::size_t>(relay.coil_signal)] + " to " +
                         (relay.line_coil ? "the return conductor (line-voltage coil)" : "C") + ", " +
                         std::to_string(relay.contacts) + " change-over contact" +
                         (relay.contacts == 1 ? "" : "s") + ", break before make" +
                         (relay.bodies > 1 ? ", made of " + std::to_string(relay.bodies) +
                                                 " relays with coils side by side"
                                           : "") +
                         "."});
    }
    if (plan.fewest_relays)
        to.add(Paragraph{"No plan of this kind needs fewer coils: every smaller set was tried."});
}

std::string effect_text(const WiringPlan& plan, const FaultRow& fault) {
    std::string out;
    for (const FaultEffect& e : fault.effects) {
        out += (out.empty() ? "" : "; ") + (e.state.empty() ? signal_names(plan, e.live) : e.state) +
               ": tap " + tap_list(e.live_taps) + " instead of " +
               (e.wanted_tap == 0 ? "off" : std::to_string(e.wanted_tap));
    }
    return out.empty() ? "nothing is seen" : out;
}

/// Faults that look alike from outside stand in one row: what is seen, then where to look.
void add_faults(Document& to, const WiringPlan& plan) {
    if (plan.faults.empty()) return;
    to.add(Heading{"If one thing breaks"});
    Grid table{{"what is seen", "look at", "two taps live"}, {}, ""};
    for (const FaultRow& fault : plan.faults) {
        const std::string seen = effect_text(plan, fault) +
                                 (fault.back_feed ? "; one call feeds another" : "") +
                                 (fault.heat_without_air ? "; HEAT WITHOUT AIR" : "");
        const std::string where = std::string(word(fault.kind)) + " " + fault.where;
        const std::string two = fault.two_taps ? "YES" : "no";
        const auto alike = std::find_if(table.rows.begin(), table.rows.end(),
                                        [&](const auto& row) { return row[0] == seen && row[2] == two; });
        if (alike == table.rows.end()) {
            table.rows.push_back({seen, where, two});
        } else {
            (*alike)[1] += "; " + where;
        }
    }
    to.add(table);
}

void add_power(Document& to, const ControlPower& power) {
    if (!power.judgement) return;
    std::string text = "Control transformer: " + say_number(power.added.in(volt_ampere), 1) + " VA added";
    if (power.share) text += ", " + say_number(*power.share * 100, 0) + " % of its rating in use";
    to.add(Paragraph{text + " (" + std::string(word(*power.judgement)) + ")."});
}

}  // namespace

/// A plan that is not possible says why and what would rescue it, and shows no wire that somebody might land.
void add_wiring(Document& to, const WiringPlan& plan) {
    to.add(Heading{"Wiring"});
    add_settings(to, plan);
    if (!plan.possible) {
        if (plan.refusal) to.add(Paragraph{"No wiring is given: " + say(*plan.refusal) + "."});
        for (const WiringRescue rescue : plan.rescues)
            to.add(Paragraph{"It would become possible with: " + say(rescue) + "."});
        if (!plan.lacking.empty()) to.add(Paragraph{"It needs: " + joined(plan.lacking, ", ") + "."});
        return;
    }
    if (plan.condition)
        to.add(Warning{"CAUTION", "This holds only while: " + std::string(word(*plan.condition)) + "."});
    if (!plan.assumed.empty())
        to.add(Paragraph{"Assumed, since the job does not say: " + joined(plan.assumed, ", ") +
                         ". Hold it against the unit before a wire is moved."});
    if (plan.method == WiringMethod::plug_for_plug)
        to.add(Paragraph{
            "Plug for plug: each pin carries what it carried before. Compare the labels of both plugs."});
    add_taps(to, plan);
    Grid wires{{"from", "to", "note"}, {}, ""};
    for (const Wire& wire : plan.wires)
        wires.rows.push_back(
            {text_of(plan, wire.from), landing_of(plan, wire.to), std::string(word(wire.note))});
    if (!wires.rows.empty()) to.add(wires);
    if (!plan.lacking.empty())
        to.add(
            Paragraph{"The catalog does not list: " + joined(plan.lacking, ", ") +
                      (plan.method == WiringMethod::plug_for_plug
                           ? ". A plug without listed pins goes back as it was; tell who keeps the catalog."
                           : ". There the part's own diagram decides; tell who keeps the catalog.")});
    if (!plan.assumed.empty())
        to.add(Paragraph{"Assumed, because the job does not say it: " + joined(plan.assumed, ", ") + "."});
    add_relays(to, plan);
    if (!plan.wires.empty()) to.add(Figure{draw(plan), "The wires of the table above as a ladder."});
    add_power(to, plan.power);
    for (const WiringCaution caution : plan.cautions) to.add(Warning{"CAUTION", say(caution)});
    if (!plan.truth.empty()) add_truth(to, plan);
    add_faults(to, plan);
    for (const WiringPlan& other : plan.alternatives) {
        if (!other.possible) {
            to.add(Paragraph{"Another way (" + std::string(word(other.method)) +
                             ") is not given: " + (other.refusal ? say(*other.refusal) : "") + "."});
            continue;
        }
        to.add(Heading{"Another way to wire it: " + std::string(word(other.method))});
        if (other.condition)
            to.add(Warning{"CAUTION", "This holds only while: " + std::string(word(*other.condition)) + "."});
        add_taps(to, other);
        add_relays(to, other);
        if (!other.truth.empty()) add_truth(to, other);
    }
}

void add_checks(Document& to, const WiringPlan& plan) {
    if (!plan.possible || plan.checks.empty()) return;
    to.add(Heading{"Before and after power-on"});
    Bullets checks;
    for (const WiringCheck check : plan.checks) checks.items.push_back(say(check));
    to.add(checks);
}

}  // namespace endbell::inline explain
