// A second, dumber reading of a netlist, for the tests only: walk from every live source along wires and
// closed contacts, by name, and look where one arrives.
#pragma once
#include <map>
#include <set>
#include <string>

#include "engine/wiring/wiring.hpp"

namespace fixture {

using Places = std::set<std::string>;

struct Walk {
    std::vector<int> live_taps;
    bool wrong_meeting = false;  // a source met another source, a return, earth, or the other voltage
    bool rests = true;
    friend bool operator==(const Walk&, const Walk&) = default;
};

class Walker {
  public:
    explicit Walker(const endbell::WiringPlan& plan) : plan_(plan) {
        for (const endbell::Wire& w : plan.wires) link(key(w.from), key(w.to), "", false);
        for (const endbell::Relay& r : plan.relays) {
            for (int pole = 1; pole <= r.contacts; ++pole) {
                const std::string n = std::to_string(pole);
                link(r.name + ".COM" + n, r.name + ".NO" + n, r.name, true);
                link(r.name + ".COM" + n, r.name + ".NC" + n, r.name, false);
            }
        }
    }

    /// Everything one reaches from `starts`. `any_contact`: through contacts in either position.
    Places reached(std::vector<std::string> starts, const std::set<std::string>& drawn,
                   bool any_contact = false) const {
        Places seen(starts.begin(), starts.end());
        while (!starts.empty()) {
            const std::string at = starts.back();
            starts.pop_back();
            const auto [first, last] = links_.equal_range(at);
            for (auto l = first; l != last; ++l) {
                const Link& link = l->second;
                const bool closed =
                    link.relay.empty() || any_contact || (drawn.count(link.relay) != 0) == link.drawn;
                if (closed && seen.insert(link.to).second) starts.push_back(link.to);
            }
        }
        return seen;
    }
    Places reached(const std::string& start, const std::set<std::string>& drawn) const {
        return reached(std::vector<std::string>{start}, drawn);
    }

    Walk walk(endbell::SignalSet live) const {
        std::set<std::string> drawn;
        for (std::size_t round = 0; round < plan_.relays.size() + 2; ++round) {
            std::set<std::string> next;
            for (const endbell::Relay& r : plan_.relays) {
                const Places a = reached(r.name + ".A1", drawn), b = reached(r.name + ".A2", drawn);
                if (a.count(r.name + ".A2")) continue;
                if ((is_live(a, live) && is_return(b)) || (is_live(b, live) && is_return(a)))
                    next.insert(r.name);
            }
            if (next == drawn) return look(live, drawn);
            drawn = next;
        }
        Walk walk = look(live, drawn);
        walk.rests = false;
        return walk;
    }

  private:
    /// What a reader of the plan sees; each cap stands alone.
    std::string key(const endbell::NetPlace& place) const {
        const bool cap = place.kind == endbell::NetPlace::Kind::cap;
        return endbell::text_of(plan_, place) + (cap ? " " + std::to_string(place.number) : "");
    }

    bool is_live(const Places& places, endbell::SignalSet live) const {
        if (places.count("R") || places.count("L1")) return true;
        for (std::size_t i = 0; i < plan_.signals.size(); ++i) {
            if ((live >> i & 1u) && places.count(plan_.signals[i])) return true;
        }
        return false;
    }
    static bool is_return(const Places& p) { return p.count("C") || p.count("L2") || p.count("N"); }

    std::vector<std::string> sources() const {
        std::vector<std::string> all = plan_.signals;
        all.push_back("R");
        all.push_back("L1");
        return all;
    }

    Walk look(endbell::SignalSet live, const std::set<std::string>& drawn) const {
        Walk walk;
        for (int tap = 1; tap <= 9; ++tap) {
            if (is_live(reached("tap " + std::to_string(tap), drawn), live)) walk.live_taps.push_back(tap);
        }
        for (const std::string& source : sources()) {
            const Places there = reached(source, drawn);
            if (is_return(there) || there.count("earth")) walk.wrong_meeting = true;
            for (const std::string& other : sources()) {
                if (other != source && there.count(other)) walk.wrong_meeting = true;
            }
        }
        return walk;
    }

    struct Link {
        std::string to, relay;
        bool drawn;
    };
    void link(const std::string& a, const std::string& b, const std::string& relay, bool drawn) {
        links_.insert({a, Link{b, relay, drawn}});
        links_.insert({b, Link{a, relay, drawn}});
    }

    const endbell::WiringPlan& plan_;
    std::multimap<std::string, Link> links_;
};

/// Places where 24 V may be and line voltage may not, or the reverse. Coils part the two.
inline bool voltages_meet(const endbell::WiringPlan& plan) {
    const Walker walker(plan);
    std::vector<std::string> line{"L1", "L2", "N"}, low{"R", "C"};
    for (const std::string& signal : plan.signals) (plan.line_signals ? line : low).push_back(signal);
    for (int tap = 1; tap <= 9; ++tap) (plan.line_taps ? line : low).push_back("tap " + std::to_string(tap));
    const Places on_low = walker.reached(low, {}, true);
    for (const std::string& p : walker.reached(line, {}, true)) {
        if (on_low.count(p)) return true;
    }
    return false;
}

}  // namespace fixture
