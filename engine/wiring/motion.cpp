#include "engine/wiring/motion.hpp"

#include <algorithm>
#include <cstdint>

namespace endbell::inline wiring {

namespace {

constexpr std::size_t most_poles = 64;  // one bit each
constexpr std::size_t most_passages = 20000;

/// Poles on their open side (dead while the coil is) and on their closed side.
struct Throws {
    std::uint64_t open = 0, closed = 0;
    bool together_with(const Throws& o) const { return (open & o.closed) == 0 && (closed & o.open) == 0; }
};

/// From a source along wires and throws to a source or a tap. Sources are signals, and the constant supply as number `signals`.
struct Passage {
    int from = 0;
    bool to_tap = false;
    int to = 0;
    Throws throws;
};

class Search {
  public:
    explicit Search(const WiringPlan& plan) : plan_(plan) {
        for (const Wire& wire : plan.wires) link(wire.from, wire.to, {});
        for (int r = 0; r < static_cast<int>(plan.relays.size()); ++r) {
            for (int pole = 1; pole <= plan.relays[static_cast<std::size_t>(r)].contacts; ++pole) {
                if (poles_ == most_poles) {
                    too_large_ = true;
                    return;
                }
                const std::uint64_t bit = std::uint64_t{1} << poles_++;
                of_relay_.resize(static_cast<std::size_t>(r) + 1, 0);
                of_relay_.back() |= bit;
                link(NetPlace::common(r, pole), NetPlace::open(r, pole), {bit, 0});
                link(NetPlace::common(r, pole), NetPlace::closed(r, pole), {0, bit});
            }
        }
        of_relay_.resize(plan.relays.size(), 0);
        for (std::size_t i = 0; i < places_.size() && !too_large_; ++i) {
            if (source_at(i) < 0) continue;
            from_ = source_at(i);
            walk(i, {});
        }
    }

    bool too_large() const { return too_large_; }
    const std::vector<Passage>& passages() const { return passages_; }
    std::uint64_t poles_of(std::size_t relay) const { return of_relay_[relay]; }

  private:
    struct Link {
        std::size_t to = 0;
        Throws needs;
    };

    std::size_t place(const NetPlace& wanted) {
        const auto found = std::find(places_.begin(), places_.end(), wanted);
        if (found != places_.end()) return static_cast<std::size_t>(found - places_.begin());
        places_.push_back(wanted);
        links_.emplace_back();
        passed_.push_back(0);
        return places_.size() - 1;
    }
    void link(const NetPlace& a, const NetPlace& b, Throws needs) {
        const std::size_t from = place(a), to = place(b);
        links_[from].push_back({to, needs});
        links_[to].push_back({from, needs});
    }

    /// -1: none. Board outputs and line power that no relay of the plan switches are none either.
    int source_at(std::size_t at) const {
        const NetPlace& here = places_[at];
        const auto supply = plan_.line_taps ? NetPlace::Kind::line_1 : NetPlace::Kind::supply_24v;
        if (here.kind == NetPlace::Kind::signal) return here.number;
        return here.kind == supply ? static_cast<int>(plan_.signals.size()) : -1;
    }

    void walk(std::size_t at, Throws used) {
        if (too_large_) return;
        passed_[at] = 1;
        for (const Link& link : links_[at]) {
            if (passed_[link.to] != 0 || !used.together_with(link.needs)) continue;
            const Throws so_far{used.open | link.needs.open, used.closed | link.needs.closed};
            const int source = source_at(link.to);
            const bool tap = places_[link.to].kind == NetPlace::Kind::tap;
            if (source >= 0) passages_.push_back({from_, false, source, so_far});
            if (tap) passages_.push_back({from_, true, places_[link.to].number, so_far});
            too_large_ = too_large_ || passages_.size() > most_passages;
            if (source < 0) walk(link.to, so_far);
        }
        passed_[at] = 0;
    }

    const WiringPlan& plan_;
    std::vector<NetPlace> places_;
    std::vector<std::vector<Link>> links_;
    std::vector<char> passed_;
    std::vector<std::uint64_t> of_relay_;
    std::vector<Passage> passages_;
    std::size_t poles_ = 0;
    int from_ = 0;
    bool too_large_ = false;
};

/// From one reachable state to another: calls go and come in any order, and every relay whose call does is on its passage.
struct Transition {
    SignalSet before = 0, after = 0;
    Throws fixed;  // poles of relays that stay as they are

    bool allows(const Passage& passage) const { return fixed.together_with(passage.throws); }
    bool may_be_live(int source, int supply) const {
        return source == supply || ((before | after) >> source & 1U) != 0;
    }
    bool may_be_idle(int source, int supply) const {
        return source != supply && ((before & after) >> source & 1U) == 0;
    }
};

std::vector<Transition> transitions_of(const WiringPlan& plan, const Search& search) {
    std::vector<Transition> changes;
    for (std::size_t a = 0; a < plan.states.size(); ++a) {
        for (std::size_t b = a + 1; b < plan.states.size(); ++b) {
            Transition change{plan.states[a].live, plan.states[b].live, {}};
            bool moves = false;
            for (std::size_t r = 0; r < plan.relays.size(); ++r) {
                const bool up = (change.before >> plan.relays[r].coil_signal & 1U) != 0;
                const bool stays = up == ((change.after >> plan.relays[r].coil_signal & 1U) != 0);
                moves = moves || !stays;
                if (stays) (up ? change.fixed.open : change.fixed.closed) |= search.poles_of(r);
            }
            if (moves) changes.push_back(change);
        }
    }
    return changes;
}

bool ties(const Transition& change, const std::vector<Passage>& passages, int supply) {
    return std::any_of(passages.begin(), passages.end(), [&](const Passage& passage) {
        return !passage.to_tap && change.allows(passage) && change.may_be_live(passage.from, supply) &&
               change.may_be_idle(passage.to, supply);
    });
}

/// Two passages to two taps that one moment can make.
std::vector<std::pair<Passage, Passage>> forks(const std::vector<Passage>& passages) {
    std::vector<std::pair<Passage, Passage>> found;
    for (std::size_t a = 0; a < passages.size(); ++a) {
        for (std::size_t b = a + 1; b < passages.size(); ++b) {
            if (!passages[a].to_tap || !passages[b].to_tap || passages[a].to == passages[b].to) continue;
            if (passages[a].throws.together_with(passages[b].throws))
                found.emplace_back(passages[a], passages[b]);
        }
    }
    return found;
}

}  // namespace

Motion motion_of(const WiringPlan& plan) {
    if (plan.relays.empty()) return {};
    const bool one_tap = plan.tap_rule != TapRule::highest_tap_wins;
    const Search search(plan);
    if (search.too_large()) return {true, one_tap};
    const int supply = static_cast<int>(plan.signals.size());
    const auto forked = one_tap ? forks(search.passages()) : std::vector<std::pair<Passage, Passage>>{};
    Motion motion;
    for (const Transition& change : transitions_of(plan, search)) {
        motion.ties_calls = motion.ties_calls || ties(change, search.passages(), supply);
        const auto live = [&](const Passage& passage) {
            return change.allows(passage) && change.may_be_live(passage.from, supply);
        };
        motion.two_taps_live =
            motion.two_taps_live || std::any_of(forked.begin(), forked.end(), [&](const auto& fork) {
                return live(fork.first) && live(fork.second);
            });
    }
    return motion;
}

}  // namespace endbell::inline wiring
