// A reading of a plan's wires for the property test: places numbered by the name that a reader sees, a flood from whatever
// is live, relays drawn in until nothing moves. It knows neither the planner nor its simulator.
#pragma once
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "engine/wiring/wiring.hpp"

namespace fixture {

class PlainRelays {
  public:
    explicit PlainRelays(const endbell::WiringPlan& plan) : plan_(plan) {
        for (const endbell::Wire& w : plan.wires) join(name_of(w.from), name_of(w.to), -1, false);
        for (std::size_t r = 0; r < plan.relays.size(); ++r) {
            const std::string& name = plan.relays[r].name;
            for (int pole = 1; pole <= plan.relays[r].contacts; ++pole) {
                const std::string n = std::to_string(pole);
                join(name + ".COM" + n, name + ".NO" + n, static_cast<int>(r), true);
                join(name + ".COM" + n, name + ".NC" + n, static_cast<int>(r), false);
            }
        }
    }

    /// Ascending.
    std::vector<int> taps(endbell::SignalSet live) {
        std::vector<bool> drawn(plan_.relays.size(), false);
        for (std::size_t round = 0; round <= plan_.relays.size() + 1; ++round) {
            const std::vector<bool> hot = flood(hot_places(live), drawn);
            const std::vector<bool> back = flood(places({"C", "L2", "N"}), drawn);
            std::vector<bool> next;
            for (const endbell::Relay& r : plan_.relays) {
                const std::size_t a = number(r.name + ".A1"), b = number(r.name + ".A2");
                next.push_back((hot[a] && back[b]) || (hot[b] && back[a]));
            }
            if (next == drawn) return taps_among(hot);
            drawn = next;
        }
        return {-1, -2};  // never at rest
    }

  private:
    struct Link {
        std::size_t to;
        int relay;
        bool when_drawn;
    };
    std::string name_of(const endbell::NetPlace& place) const {
        const bool cap = place.kind == endbell::NetPlace::Kind::cap;
        return endbell::text_of(plan_, place) + (cap ? " " + std::to_string(place.number) : "");
    }
    std::size_t number(const std::string& name) {
        const auto [at, fresh] = numbers_.try_emplace(name, links_.size());
        if (fresh) links_.emplace_back();
        return at->second;
    }
    void join(const std::string& a, const std::string& b, int relay, bool when_drawn) {
        const std::size_t one = number(a), other = number(b);
        links_[one].push_back({other, relay, when_drawn});
        links_[other].push_back({one, relay, when_drawn});
    }
    std::vector<std::size_t> places(const std::vector<std::string>& names) {
        std::vector<std::size_t> all;
        for (const std::string& name : names) all.push_back(number(name));
        return all;
    }
    std::vector<std::size_t> hot_places(endbell::SignalSet live) {
        std::vector<std::size_t> all = places({"R", "L1"});
        for (std::size_t i = 0; i < plan_.signals.size(); ++i) {
            if (live >> i & 1u) all.push_back(number(plan_.signals[i]));
        }
        return all;
    }
    std::vector<bool> flood(std::vector<std::size_t> from, const std::vector<bool>& drawn) const {
        std::vector<bool> seen(links_.size(), false);
        for (const std::size_t place : from) seen[place] = true;
        while (!from.empty()) {
            const std::size_t at = from.back();
            from.pop_back();
            for (const Link& link : links_[at]) {
                const bool closed =
                    link.relay < 0 || drawn[static_cast<std::size_t>(link.relay)] == link.when_drawn;
                if (!closed || seen[link.to]) continue;
                seen[link.to] = true;
                from.push_back(link.to);
            }
        }
        return seen;
    }
    std::vector<int> taps_among(const std::vector<bool>& hot) const {
        std::vector<int> taps;
        for (int tap = 1; tap <= 9; ++tap) {
            const auto at = numbers_.find("tap " + std::to_string(tap));
            if (at != numbers_.end() && at->second < hot.size() && hot[at->second]) taps.push_back(tap);
        }
        return taps;
    }

    const endbell::WiringPlan& plan_;
    std::map<std::string, std::size_t> numbers_;
    std::vector<std::vector<Link>> links_;
};

}  // namespace fixture
