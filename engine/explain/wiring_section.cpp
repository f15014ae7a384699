#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/explain/drawing.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/site_words.hpp"
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

/// What the part runs at by itself where none is live.
std::string default_of(const WiringPlan& plan, const std::vector<int>& live) {
    if (!live.empty() || !plan.default_tap) return "";
    return " (so " + std::to_string(*plan.default_tap) + " by default)";
}

template <class E>
std::string word_list(const std::vector<E>& values) {
    std::vector<std::string> all;
    for (const E value : values) all.emplace_back(word(value));
    return joined(all, ", ");
}

/// The states that nothing brings about, counted by what keeps them away.
std::string say_kept_away(const WiringPlan& plan) {
    std::string out;
    int all = 0, two_live = 0;
    for (const auto& entry : Words<Interlock>::table) {
        const auto count = std::count_if(plan.truth.begin(), plan.truth.end(), [&](const TruthRow& row) {
            return row.kept_away_by == entry.value;
        });
        if (count == 0) continue;
        all += static_cast<int>(count);
        out += (out.empty() ? "" : "; ") + std::string(entry.text) + ": " + std::to_string(count);
    }
    for (const TruthRow& row : plan.truth) two_live += row.kept_away_by && !row.effective_tap ? 1 : 0;
    if (all == 0) return "; each of them comes about.";
    std::string text =
        "; " + std::to_string(all) + (all == 1 ? " is" : " are") + " left out here, kept away (" + out + ").";
    if (two_live > 0)
        text += " Two taps would be live in " + std::to_string(two_live) + " of those: they do not hold.";
    return text;
}

std::string say_proof(const WiringPlan& plan) {
    std::string text = plan.proven ? "Proven" : "NOT PROVEN";
    if (plan.condition) text += " only while " + std::string(word(*plan.condition));
    return text + ": all " + std::to_string(plan.truth.size()) + " states of the signals were simulated" +
           say_kept_away(plan);
}

/// States that nothing brings about are counted by what keeps them away, unless one is not as it is meant to be.
void add_truth(Document& to, const WiringPlan& plan) {
    Grid table{{"signals live", "state", "made by", "taps live", "obeyed", "wanted", "holds"}, {}, ""};
    for (const TruthRow& row : plan.truth) {
        if (!row.reachable && row.as_meant) continue;
        table.rows.push_back(
            {signal_names(plan, row.live), row.state, word_list(row.makers), tap_list(row.live_taps),
             row.effective_tap ? (*row.effective_tap == 0 ? "off" : std::to_string(*row.effective_tap))
                               : "not stated",
             !row.reachable ? "any" : (row.wanted_tap == 0 ? "off" : std::to_string(row.wanted_tap)),
             row.holds ? "yes" : "NO"});
    }
    table.caption = say_proof(plan);
    to.add(Heading{"Truth table"});
    to.add(table);
    for (const KeptAway& state : plan.kept_away) {
        if (state.by == Interlock::one_board_output_at_a_time)
            continue;  // the condition says it, and the count
        to.add(Paragraph{state.state + " (made by the " + std::string(word(state.maker)) + "): air by the " +
                         std::string(word(state.by)) +
                         (state.shown ? "." : ", which nobody has shown yet.")});
    }
}

void add_idle(Document& to, const WiringPlan& plan) {
    if (plan.idle.empty()) return;
    std::string text;
    for (const IdleTerminal& terminal : plan.idle)
        text += (text.empty() ? "" : "; ") + terminal.name + ": " + std::string(word(terminal.why));
    to.add(Paragraph{"These terminals command no tap: " + text + "."});
}

/// The one lead of a motor of one speed is better known by what is printed on it.
std::string landing_of(const WiringPlan& plan, const NetPlace& place) {
    const bool one_lead = place.kind == NetPlace::Kind::tap && plan.taps.size() == 1;
    std::string name = text_of(plan, place);
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
        // Another tap comes or goes beside the one that is obeyed: nobody sees that.
        const bool priority = plan.tap_rule == TapRule::highest_tap_wins;
        if (priority && !e.live_taps.empty() && e.live_taps.back() == e.wanted_tap) continue;
        out += (out.empty() ? "" : "; ") + (e.state.empty() ? signal_names(plan, e.live) : e.state) +
               ": tap " + tap_list(e.live_taps) + default_of(plan, e.live_taps) + " instead of " +
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
        const std::string seen =
            effect_text(plan, fault) + (fault.back_feed ? "; one call feeds another" : "") +
            (fault.heat_without_air() ? "; WITHOUT AIR: " + word_list(fault.without_air) : "");
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

std::string secondary_side(std::string_view whose, ApparentPower rating, Current rated, Current fuse) {
    return std::string(whose) + " " + say_number(rating.in(volt_ampere), 0) + " VA give " +
           say_number(rated.in(ampere), 2) + " A at 24 V: a secondary fuse of " +
           say_number(fuse.in(ampere), 1) + " A, unless the equipment names another.";
}

void add_power(Document& to, const ControlPower& power) {
    if (!power.judgement) return;
    const std::string added = say_number(power.added.in(volt_ampere), 1) + " VA";
    std::string text = "Control transformer: " + added + " added";
    if (power.share) text += ", " + say_number(*power.share * 100, 0) + " % of its rating in use";
    text += " (" + std::string(word(*power.judgement)) + ").";
    if (power.rating && !power.fitted)
        text += " " + secondary_side("Its", *power.rating, *power.rated, *power.fuse);
    if (!power.share)
        text += " Before power: read its rating, add up what hangs on it, and see that " + added +
                " are left within the planned share.";
    if (power.fitted)
        text += " With the kit's, " + say_number(power.fitted->share * 100, 0) + " %. " +
                secondary_side("Its", power.fitted->rating, power.fitted->rated, power.fitted->fuse);
    to.add(Paragraph{text});
}

}  // namespace

/// A plan that is not possible says why and what would rescue it, and shows no wire that somebody might land.
void add_wiring(Document& to, const WiringPlan& plan) {
    to.add(Heading{"Wiring"});
    add_settings(to, plan);
    if (!plan.possible) {
        if (plan.refusal) {
            std::vector<std::string> about = plan.refused_terminals;
            for (const Call call : plan.refused_calls) about.emplace_back(word(call));
            to.add(Paragraph{"No wiring is given: " + say(*plan.refusal) +
                             (about.empty() ? "" : " (" + joined(about, ", ") + ")") + "."});
        }
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
    add_idle(to, plan);
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
        to.add(Heading{"Another way to wire it: " + std::string(word(other.method)) +
                       (other.condition ? ", only while " + std::string(word(*other.condition)) : "")});
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
    for (const SiteCheck check : plan.checks) checks.items.push_back(say(check));
    to.add(checks);
}

}  // namespace endbell::inline explain
