// Netlists for tests/outside/nodal_spice.py, and what the witness by volts says of them. Lines of words parted by tabs.
//   probe_nodal plans SEED COUNT   prints plans of generated jobs
//   probe_nodal solve              reads plans, and says of each what comes of every set of signals; after a line "volts",
//                                  also the volts in every position of its relays
// A plan: "plan NAME", "signals ...", "lines SIGNALS TAPS" (1: at line voltage), "rule WORD", "loads NAME=VALUE ...",
// "labels COMMON LINE RETURN", "relay NAME POLES BODIES LINECOIL", "tap N", "wire FROM TO", "row SIGNALS TAPS,...",
// "lost PLACE", "end".
#include <fmt/format.h>

#include <iostream>
#include <map>
#include <sstream>

#include "engine/base/text.hpp"
#include "engine/wiring/nodal.hpp"
#include "tests/wiring/generated.hpp"

using namespace fixture;

namespace {

using Kind = NetPlace::Kind;
using Texts = std::vector<std::string>;

struct Net {
    std::string name;
    WiringPlan plan;
    ElectricalLoads loads;
    std::optional<Kind> lost;
    bool volts = false;
};

std::string taps_text(const std::vector<int>& taps) {
    std::string out;
    for (const int tap : taps) out += (out.empty() ? "" : ",") + std::to_string(tap);
    return out.empty() ? "-" : out;
}

void print(const std::string& name, const WiringPlan& plan, const ElectricalLoads& loads) {
    fmt::print("plan\t{}\nsignals", name);
    for (const std::string& signal : plan.signals) fmt::print("\t{}", signal);
    fmt::print("\nlines\t{:d}\t{:d}\nrule\t{}\n", plan.line_signals, plan.line_taps, word(plan.tap_rule));
    fmt::print(
        "loads\tcontrol={}\tline={}\tcoil={}\tcall={}\ttap={}\tmotor={}\tpull_in={}\tdrop_out={}\ttap_runs={}"
        "\n",
        loads.control.in(volt), loads.line.in(volt), loads.coil.in(volt_ampere), loads.call.in(volt_ampere),
        loads.tap.in(ampere), loads.motor.in(ampere), loads.pull_in, loads.drop_out, loads.tap_runs);
    fmt::print("labels\t{}\t{}\t{}\n", loads.common, loads.line_feed, loads.line_return);
    for (const Relay& r : plan.relays)
        fmt::print("relay\t{}\t{}\t{}\t{:d}\n", r.name, r.contacts, r.bodies, r.line_coil);
    for (const TapRow& tap : plan.taps) fmt::print("tap\t{}\n", tap.tap);
    for (const Wire& w : plan.wires) {
        if (w.to.kind != Kind::cap) fmt::print("wire\t{}\t{}\n", text_of(plan, w.from), text_of(plan, w.to));
    }
    for (const TruthRow& row : plan.truth) fmt::print("row\t{}\t{}\n", row.live, taps_text(row.live_taps));
    fmt::print("end\n");
}

void print_plans(std::uint64_t seed, int count) {
    Dice dice(seed);
    for (int printed = 0; printed < count;) {
        const ControlSource source =
            Words<ControlSource>::table[static_cast<std::size_t>(dice.below(3))].value;
        const Case c = any_case(dice, source);
        const Facts facts = facts_of(c.job, limits);
        const WiringPlan plan = plan_wiring(c.job, c.part, c.air, limits);
        if (!plan.possible) continue;
        print(fmt::format("generated {}", ++printed), plan, loads_of(plan, facts, c.part, limits));
    }
}

/// A place by its words, as text_of writes it.
NetPlace place_of(const Net& net, const std::string& text) {
    static const std::map<std::string, Kind> single{
        {"R", Kind::supply_24v}, {"C", Kind::common_24v}, {"L1", Kind::line_1},  {"L2", Kind::line_2},
        {"L3", Kind::line_3},    {"N", Kind::neutral},    {"earth", Kind::earth}};
    for (std::size_t s = 0; s < net.plan.signals.size(); ++s) {
        if (net.plan.signals[s] == text) return NetPlace::signal(static_cast<int>(s));
    }
    if (const auto found = single.find(text); found != single.end()) return {found->second};
    if (text.rfind("tap ", 0) == 0) return NetPlace::tap(std::stoi(text.substr(4)));
    if (text.rfind("motor ", 0) == 0) return NetPlace::motor(text.substr(6));
    if (text.size() > 3 && text.substr(text.size() - 3) == " T2") return {Kind::load_2};
    if (text.size() > 3 && text.substr(text.size() - 3) == " T3") return {Kind::load_3};
    for (std::size_t r = 0; r < net.plan.relays.size(); ++r) {
        const std::string stem = net.plan.relays[r].name + ".";
        if (text.rfind(stem, 0) != 0) continue;
        const int relay = static_cast<int>(r);
        const std::string end = text.substr(stem.size());
        if (end == "A1") return NetPlace::coil_feed(relay);
        if (end == "A2") return NetPlace::coil_return(relay);
        const std::size_t digits = end.find_first_of("0123456789");
        const int pole = std::stoi(end.substr(digits));
        const std::string side = end.substr(0, digits);
        return side == "COM"  ? NetPlace::common(relay, pole)
               : side == "NO" ? NetPlace::open(relay, pole)
                              : NetPlace::closed(relay, pole);
    }
    return NetPlace::board_output(text);
}

void set_load(ElectricalLoads& loads, const std::string& text) {
    const std::size_t equals = text.find('=');
    const std::string name = text.substr(0, equals);
    const double value = std::stod(text.substr(equals + 1));
    if (name == "control") loads.control = volt(value);
    if (name == "line") loads.line = volt(value);
    if (name == "coil") loads.coil = volt_ampere(value);
    if (name == "call") loads.call = volt_ampere(value);
    if (name == "tap") loads.tap = ampere(value);
    if (name == "motor") loads.motor = ampere(value);
    if (name == "pull_in") loads.pull_in = value;
    if (name == "drop_out") loads.drop_out = value;
    if (name == "tap_runs") loads.tap_runs = value;
}

std::vector<int> taps_of(const std::string& text) {
    std::vector<int> taps;
    if (text == "-") return taps;
    for (const std::string& tap : split(text, ',')) taps.push_back(std::stoi(tap));
    return taps;
}

void take(Net& net, const Texts& words) {
    const std::string& what = words.front();
    if (what == "plan") net.name = words.at(1);
    if (what == "signals") net.plan.signals.assign(words.begin() + 1, words.end());
    if (what == "lines") {
        net.plan.line_signals = words.at(1) == "1";
        net.plan.line_taps = words.at(2) == "1";
    }
    if (what == "loads") {
        for (std::size_t i = 1; i < words.size(); ++i) set_load(net.loads, words[i]);
    }
    if (what == "labels") {
        net.loads.common = words.at(1);
        net.loads.line_feed = words.at(2);
        net.loads.line_return = words.at(3);
    }
    if (what == "relay") {
        Relay relay;
        relay.name = words.at(1);
        relay.contacts = std::stoi(words.at(2));
        relay.bodies = std::stoi(words.at(3));
        relay.line_coil = words.at(4) == "1";
        net.plan.relays.push_back(relay);
    }
    if (what == "tap") net.plan.taps.push_back({std::stoi(words.at(1)), {}, {}, {}, false, {}});
    if (what == "wire") net.plan.wires.push_back({place_of(net, words.at(1)), place_of(net, words.at(2))});
    if (what == "row") {
        TruthRow row;
        row.live = static_cast<SignalSet>(std::stoul(words.at(1)));
        row.live_taps = taps_of(words.at(2));
        net.plan.truth.push_back(row);
    }
    if (what == "lost") net.lost = place_of(net, words.at(1)).kind;
    if (what == "volts") net.volts = true;
}

void solve(const Net& net) {
    SingleFault fault;
    if (net.lost) fault = {true, FaultKind::lost_common, 0, 0, -1, *net.lost};
    Nodal nodal(net.plan, net.loads);
    const std::vector<Drawn> starts = nodal.starts();
    fmt::print("plan\t{}\t{}\n", net.name, disagreements(net.plan, net.loads).size());
    for (const TruthRow& row : net.plan.truth) {
        const NodalState state = nodal.run(row.live, starts, fault);
        fmt::print("state\t{}\t{}\t{}\t{:d}\t{:d}", row.live, state.fed, state.undecided, state.half_live_tap,
                   state.chatters);
        for (const std::vector<int>& taps : state.outcomes) fmt::print("\t{}", taps_text(taps));
        fmt::print("\n");
        for (Drawn drawn = 0; net.volts && drawn < Drawn{1} << net.plan.relays.size(); ++drawn) {
            const NodalVolts volts = nodal.hold(row.live, drawn, fault);
            fmt::print("volts\t{}\t{}", row.live, drawn);
            for (const double coil : volts.coils) fmt::print("\t{:.4f}", coil);
            for (const auto& [number, across] : volts.taps) fmt::print("\t{:.4f}", across);
            for (const double call : volts.calls) fmt::print("\t{:.4f}", call);
            fmt::print("\n");
        }
    }
    fmt::print("end\n");
}

}  // namespace

int main(int argc, char** argv) {
    const Texts typed(argv + 1, argv + argc);
    if (typed.size() == 3 && typed[0] == "plans") {
        print_plans(std::stoull(typed[1]), std::stoi(typed[2]));
        return 0;
    }
    if (typed != Texts{"solve"}) return 64;
    Net net;
    for (std::string line; std::getline(std::cin, line);) {
        if (line != "end") {
            take(net, split(line, '\t'));
            continue;
        }
        solve(net);
        net = {};
    }
}
