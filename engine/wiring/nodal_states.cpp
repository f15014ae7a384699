// Where the relays go by the volts on their coils, and what is live and fed there.
#include <algorithm>
#include <set>

#include "engine/facts/rating.hpp"
#include "engine/model/limit.hpp"
#include "engine/wiring/feed.hpp"
#include "engine/wiring/nodal.hpp"

namespace endbell::inline wiring {

/// What is known while the relays of one state are followed.
struct Nodal::Walk {
    SignalSet live = 0;
    const SingleFault& fault;
    std::set<Drawn> under_way;  // on the present way
    std::set<Drawn> seen;       // and on all of them
    std::set<std::vector<int>> outcomes;
    NodalState state;

    /// Relays at rest here: what is live and what is fed.
    void record(const NodalVolts& volts, Drawn drawn, const ElectricalLoads& loads, Voltage tap,
                Voltage call) {
        std::vector<int> running;
        for (const auto& [number, across] : volts.taps) {
            const double share = across / tap.in(volt);
            if (share >= loads.tap_runs) running.push_back(number);
            if (share >= loads.drop_out && share < loads.tap_runs) state.half_live_tap = true;
        }
        outcomes.insert(running);
        state.rests.push_back(drawn);
        for (std::size_t s = 0; s < volts.calls.size(); ++s) {
            const bool idle = (live >> s & 1U) == 0;
            if (idle && volts.calls[s] >= loads.drop_out * call.in(volt)) state.fed |= SignalSet{1} << s;
        }
    }
};

void Nodal::follow(Walk& walk, Drawn drawn) {
    if (walk.under_way.count(drawn) != 0) walk.state.chatters = true;
    if (!walk.seen.insert(drawn).second) return;
    const NodalVolts volts = hold(walk.live, drawn, walk.fault);
    Drawn sure = 0, either = 0;
    for (std::size_t r = 0; r < relays_.size(); ++r) {
        const double share = volts.coils[r] / rated(plan_->relays[r].line_coil).in(volt);
        if (share >= loads_->pull_in) {
            sure |= Drawn{1} << r;
        } else if (share >= loads_->drop_out) {
            either |= Drawn{1} << r;
        }
    }
    walk.state.undecided |= either;
    const bool rests = (drawn & ~either) == sure;
    if (rests) walk.record(volts, drawn, *loads_, rated(plan_->line_taps), rated(plan_->line_signals));
    if (rests && either == 0) return;
    walk.under_way.insert(drawn);
    for (Drawn some = either;; some = (some - 1) & either) {
        if ((sure | some) != drawn) follow(walk, sure | some);
        if (some == 0) break;
    }
    walk.under_way.erase(drawn);
}

NodalState Nodal::run(SignalSet live, const std::vector<Drawn>& starts, const SingleFault& fault) {
    Walk walk{live, fault, {}, {}, {}, {}};
    for (const Drawn start : starts) follow(walk, start);
    walk.state.outcomes.assign(walk.outcomes.begin(), walk.outcomes.end());
    return walk.state;
}

std::vector<SignalSet> disagreements(const WiringPlan& plan, const ElectricalLoads& loads) {
    Nodal nodal(plan, loads);
    const std::vector<Drawn> starts = nodal.starts();
    std::vector<SignalSet> found;
    for (const TruthRow& row : plan.truth) {
        const NodalState state = nodal.run(row.live, starts);
        const bool same = state.outcomes.size() == 1 && state.outcomes.front() == row.live_taps;
        if (!same || state.fed != 0 || state.undecided != 0 || state.half_live_tap || state.chatters)
            found.push_back(row.live);
    }
    return found;
}

ElectricalLoads loads_of(const WiringPlan& plan, const Facts& facts, const Part& part, const Limits& limits) {
    ElectricalLoads loads;
    loads.control = limits.value(limit::tap_volts);
    if (const auto line = facts.supply.at_motor()) loads.line = *line;
    loads.coil = limits.value(limit::relay_coil);
    loads.call = limits.value(limit::call_load);
    loads.pull_in = limits.value(limit::relay_pull_in);
    loads.drop_out = limits.value(limit::relay_drop_out);
    // A winding runs within its band; an input from the lowest volts that enable it.
    loads.tap_runs = plan.line_taps ? 1.0 - limits.value(limit::voltage_band)
                                    : limits.value(limit::tap_low) / limits.value(limit::tap_volts);
    const auto label = [&part](std::string_view function) {
        const PartTerminal* found = terminal(part, function);
        return found != nullptr ? found->label : std::string();
    };
    loads.common = label("common");
    loads.line_return = label("second line");
    loads.tap = limits.value(limit::tap_current);
    const auto rating = rating_in_use(facts, part, limits);
    // Where the catalog has no amps, one: beside a coil or a call any winding is a thick wire.
    const Current amps = rating && rating->amps ? *rating->amps : ampere(1);
    const bool always_fed = std::any_of(plan.wires.begin(), plan.wires.end(), [](const Wire& each) {
        return each.note == WireNote::constant_line_power;
    });
    if (always_fed) {
        loads.line_feed = label("line");
        loads.motor = amps;
    } else if (plan.line_taps) {
        loads.tap = amps;
    }
    return loads;
}

}  // namespace endbell::inline wiring
