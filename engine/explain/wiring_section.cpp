#include "engine/base/text.hpp"
#include "engine/explain/cautions.hpp"
#include "engine/explain/parts_of_documents.hpp"

namespace endbell {

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

void add_truth(Document& to, const WiringPlan& plan) {
    Table table{{"signals live", "state", "taps live", "tap obeyed", "tap wanted", "holds"}, {}, ""};
    int unreachable = 0;
    for (const TruthRow& row : plan.truth) {
        if (!row.reachable && row.holds) {
            ++unreachable;
            continue;
        }
        table.rows.push_back({signal_names(plan, row.live), row.state, tap_list(row.live_taps),
                              row.effective_tap ? (*row.effective_tap == 0 ? "off" : std::to_string(*row.effective_tap)) : "not stated",
                              !row.reachable ? "any" : (row.wanted_tap == 0 ? "off" : std::to_string(row.wanted_tap)),
                              row.holds ? "yes" : "NO"});
    }
    table.caption = std::string(plan.proven ? "Proven: " : "NOT PROVEN: ") + "all " + std::to_string(plan.truth.size()) +
                    " states of the signals were simulated; " + std::to_string(unreachable) +
                    " that the controls cannot reach hold too and are left out here.";
    to.add(Heading{"Truth table"});
    to.add(table);
}

}  // namespace

void add_wiring(Document& to, const WiringPlan& plan) {
    to.add(Heading{"Wiring"});
    if (!plan.possible) {
        if (!plan.refusal.empty()) to.add(Paragraph{"No wiring is given: " + wiring_sentence(plan.refusal) + "."});
        if (!plan.lacking.empty()) to.add(Paragraph{"It needs: " + joined(plan.lacking, ", ") + "."});
        return;
    }
    Table wires{{"from", "to", "note"}, {}, "By the terminals in the catalog, never by wire colour."};
    for (const Wire& wire : plan.wires) wires.rows.push_back({wire.from, wire.to, wire.note_id});
    to.add(wires);
    if (plan.relays.empty() && !plan.truth.empty()) to.add(Paragraph{"No isolation relay is needed."});
    for (const Relay& relay : plan.relays) {
        to.add(Paragraph{"Relay " + relay.name + ": coil from " + plan.signals[static_cast<std::size_t>(relay.coil_signal)] + " to C, " +
                         std::to_string(relay.contacts) + " change-over contact" + (relay.contacts == 1 ? "" : "s") + "."});
    }
    for (std::string_view caution : plan.cautions) to.add(Warning{"CAUTION", wiring_sentence(caution)});
    if (!plan.truth.empty()) add_truth(to, plan);
}

}  // namespace endbell
