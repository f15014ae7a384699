#include "tests/wiring/judge.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include <fmt/format.h>

#include "engine/wiring/nodal.hpp"

namespace fixture {

namespace {

using Labels = std::vector<std::string>;
constexpr std::initializer_list<const char*> heat_letters = {"W", "W1", "W2", "W3", "AUX"};

bool among(const std::string& label, std::initializer_list<const char*> list) {
    return std::find(list.begin(), list.end(), label) != list.end();
}

/// A state that these controls can make, and the calls of which one chooses the tap. None: the motor stands.
struct OwnState {
    Labels live;
    std::vector<Call> calls;
};

class Judge {
  public:
    Judge(const WiringPlan& plan, const DrawnJob& drawn)
        : plan_(plan),
          drawn_(drawn),
          loads_(loads_of(plan, facts_of(drawn.job, limits), drawn.part, limits)),
          nodal_(plan, loads_),
          starts_(nodal_.starts()) {
        const auto rule = drawn.part.motor->tap_rule;
        one_tap_ = drawn.leads || rule != TapRule::highest_tap_wins;
        if (drawn.job.controls.terminals) terminals_ = *drawn.job.controls.terminals;
    }

    std::string fault() {
        std::string found = unlanded();
        for (const TruthRow& row : plan_.truth) {
            if (found.empty()) found = fault_of_row(row);
        }
        if (found.empty() && drawn_.curable && !drawn_.switched) found = fault_of_states();
        if (found.empty()) found = fault_of_power();
        return found;
    }

  private:
    std::string named(SignalSet live) const {
        std::string names;
        for (std::size_t i = 0; i < plan_.signals.size(); ++i) {
            if (live >> i & 1u) names += plan_.signals[i] + " ";
        }
        return "with " + (names.empty() ? "nothing live " : names) + ": ";
    }

    // Conductors.
    bool has_wire(const std::string& from, const NetPlace& to) const {
        return std::any_of(plan_.wires.begin(), plan_.wires.end(), [&](const Wire& wire) {
            return text_of(plan_, wire.from) == from && wire.to == to;
        });
    }
    bool lands(const std::string& from, std::string_view function) const {
        const auto& list = drawn_.part.motor->terminals;
        return std::any_of(list.begin(), list.end(), [&](const PartTerminal& t) {
            return t.function == function && has_wire(from, NetPlace::motor(t.label));
        });
    }
    /// A lead carries current, or hangs insulated by itself.
    bool lead_is_free(const std::string& label, int tap) const {
        const bool printed = std::any_of(plan_.taps.begin(), plan_.taps.end(), [&](const TapRow& row) {
            return row.tap == tap && row.terminal == label;
        });
        return !printed || std::none_of(plan_.wires.begin(), plan_.wires.end(), [&](const Wire& wire) {
            return wire.to == NetPlace::tap(tap) || wire.from == NetPlace::tap(tap);
        });
    }
    std::string unlanded() const {
        if (!lands(drawn_.back, "second line")) return drawn_.back + " is not landed";
        if (!drawn_.third.empty() && !lands(drawn_.third, "third line"))
            return drawn_.third + " is not landed";
        const auto earth = std::any_of(plan_.wires.begin(), plan_.wires.end(), [](const Wire& wire) {
            return wire.from == NetPlace{NetPlace::Kind::earth};
        });
        if (!earth) return "no earth";
        if (drawn_.leads) return unlanded_lead();
        if (!lands("L1", "line")) return "L1 is not landed";
        const bool at_24v = drawn_.part.motor->signal == SignalClass::control_24v;
        return at_24v && !lands("C", "common") ? "C is not landed" : "";
    }
    std::string unlanded_lead() const {
        const Motor& motor = *drawn_.part.motor;
        for (const Tap& tap : motor.taps) {
            if (lead_is_free(tap.label, tap.number)) return tap.label + " hangs free";
        }
        const bool one = motor.taps.empty();
        if (!one) return "";
        const auto& list = motor.terminals;
        const auto line = std::find_if(list.begin(), list.end(),
                                       [](const PartTerminal& t) { return t.function == "line"; });
        if (line == list.end() || lead_is_free(line->label, 1)) return "the run lead hangs free";
        return has_wire(drawn_.hot, NetPlace::tap(1)) ? "" : drawn_.hot + " is not landed";
    }

    // States.
    /// Anything but the terminal that only asks for drier air; what the board runs has always a call.
    bool wants_air(SignalSet live) const {
        for (std::size_t i = 0; i < plan_.signals.size(); ++i) {
            if ((live >> i & 1u) && plan_.signals[i].rfind("DH", 0) != 0) return true;
        }
        return drawn_.run_line;
    }
    std::string fault_of_row(const TruthRow& row) {
        const std::string where = named(row.live);
        if (!row.holds) {
            const bool two_outputs = drawn_.board && (row.live & (row.live - 1)) != 0;
            const bool told = plan_.condition == WiringCondition::one_board_output_at_a_time;
            if (row.reachable || !two_outputs || !told)
                return where + "does not hold, and nothing keeps it away";
            return "";
        }
        const NodalState state = nodal_.run(row.live, starts_);
        if (state.undecided != 0) return where + "a relay is half drawn in";
        if (state.half_live_tap) return where + "a tap is half live";
        if (state.chatters) return where + "a relay chatters";
        if (state.fed != 0) return where + "an idle call is fed";
        for (const std::vector<int>& taps : state.outcomes) {
            if (wants_air(row.live) && taps.empty()) return where + "no air";
            if (one_tap_ && taps.size() > 1) return where + "two taps";
            most_live_ = std::max(most_live_, taps.size());
        }
        return "";
    }

    /// Of a terminal that is a signal; the letters' meaning is the trade's.
    Labels listed(std::initializer_list<const char*> letters) const {
        Labels found;
        for (const Terminal& t : terminals_) {
            if (among(t.name, letters)) found.push_back(t.name);
        }
        return found;
    }
    using States = std::vector<OwnState>;
    States own_states() const {
        States all;
        if (!drawn_.run_line) all.push_back({{}, {}});
        if (drawn_.board) {
            for (const Terminal& t : terminals_) all.push_back({{t.name}, {*t.call}});
            return all;
        }
        const States heating = heating_states();
        for (const States& some : {cooling_states(), heating})
            all.insert(all.end(), some.begin(), some.end());
        if (listed({"G"}).empty()) return with_dry_normal(all);
        States fan;
        for (OwnState state : all) {
            if (state.live.empty()) state.calls = {Call::circulate};
            state.live.emplace_back("G");
            fan.push_back(std::move(state));
        }
        if (drawn_.run_line) fan.push_back({{"G"}, {Call::circulate}});
        // Where the thermostat sends G with a heat call, none comes without it.
        const auto& sent = drawn_.job.controls.fan_with_heat;
        if (sent && *sent) all.resize(all.size() - heating.size());
        all.insert(all.end(), fan.begin(), fan.end());
        return with_dry_normal(all);
    }
    States cooling_states() const {
        using enum Call;
        const Labels cool = listed({"Y", "Y1", "Y2"}), heat = listed(heat_letters);
        States all{{{cool.front()}, {cool_low, cool_high}}, {cool, {cool_high}}};
        if (!heat.empty() && drawn_.job.controls.heat.value == HeatKind::heat_pump)
            all.push_back({{cool.front(), heat.front()}, {cool_low, cool_high, electric_heat}});
        return all;
    }
    States heating_states() const {
        const std::vector<Call> calls{Call::heat_low, Call::heat_high, Call::electric_heat};
        const Labels heat = listed(heat_letters);
        States all;
        if (!heat.empty()) all = {{{heat.front()}, calls}, {heat, calls}};
        for (const std::string& alone : listed({"E", "EM"})) {
            all.push_back({{alone}, calls});
            if (!heat.empty()) all.push_back({{alone, heat.front()}, calls});
        }
        return all;
    }
    /// Where live means normal, every state has it live.
    States with_dry_normal(States all) const {
        const auto& dry = drawn_.job.controls.dehumidify;
        const bool normal = dry && *dry == DehumidifyLogic::live_is_normal;
        if (!normal || listed({"DH"}).empty()) return all;
        for (OwnState& state : all) state.live.emplace_back("DH");
        return all;
    }
    std::string fault_of_states() {
        for (const OwnState& state : own_states()) {
            SignalSet live = 0;
            for (const std::string& label : state.live) {
                const auto at =
                    std::find_if(plan_.signals.begin(), plan_.signals.end(),
                                 [&](const std::string& s) { return s == label || s == "board " + label; });
                if (at == plan_.signals.end()) return label + " has no wire";
                live |= SignalSet{1} << (at - plan_.signals.begin());
            }
            if (!plan_.truth[live].holds) return named(live) + "these controls make it, and it does not hold";
            std::set<int> wanted;
            for (const CallAir& call : drawn_.air.calls) {
                if (std::find(state.calls.begin(), state.calls.end(), call.call) != state.calls.end())
                    wanted.insert(*call.tap);
            }
            for (const std::vector<int>& taps : nodal_.run(live, starts_).outcomes) {
                if (taps.empty() ? !wanted.empty() : wanted.count(taps.back()) == 0)
                    return named(live) + "another tap than its call's";
            }
        }
        return "";
    }

    // The transformer: 6 VA a coil of 24 V, 20 mA a live tap of 24 V, 80 % of the rating as its plan.
    std::string fault_of_power() const {
        double added = 0;
        for (const Relay& relay : plan_.relays) added += relay.line_coil ? 0.0 : 6.0 * relay.bodies;
        if (drawn_.part.motor->signal == SignalClass::control_24v)
            added += 0.020 * 24 * static_cast<double>(std::max<std::size_t>(1, most_live_));
        if (std::abs(plan_.power.added.in(volt_ampere)-added) > 1e-6) {
            return fmt::format("{} VA are added, not {}", added, plan_.power.added.in(volt_ampere));
        }
        const auto& controls = drawn_.job.controls;
        if (!controls.transformer || !controls.transformer_load || added == 0) return "";
        const double total = controls.transformer_load->in(volt_ampere) + added;
        const bool over = total > 0.80 * controls.transformer->in(volt_ampere) + 1e-9;
        if (over && !is_over(plan_.power)) return "over the transformer's plan, and no larger one wanted";
        return !over && is_over(plan_.power) ? "a larger transformer than is needed" : "";
    }

    const WiringPlan& plan_;
    const DrawnJob& drawn_;
    ElectricalLoads loads_;
    Nodal nodal_;
    std::vector<Drawn> starts_;
    std::vector<Terminal> terminals_;
    bool one_tap_ = true;
    std::size_t most_live_ = 0;
};

}  // namespace

std::string fault_of(const WiringPlan& plan, const DrawnJob& drawn) {
    return Judge(plan, drawn).fault();
}

}  // namespace fixture
