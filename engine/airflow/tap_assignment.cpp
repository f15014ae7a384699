#include "engine/airflow/tap_assignment.hpp"

#include <algorithm>
#include <cmath>

namespace endbell::inline airflow {

namespace {

TapScore worth(const CallWindow& window, const TapFlow& flow) {
    TapScore score;
    score.hard_met = window.hard;
    score.soft_met = !window.hard;
    score.hard_assured = window.hard && assured_in(window, flow);
    score.comfort = comfort_of(window, flow.airflow);
    return score;
}

TapScore sum(const TapScore& a, const TapScore& b) {
    return {a.hard_met + b.hard_met, a.soft_met + b.soft_met, a.apart + b.apart,
            a.hard_assured + b.hard_assured, a.comfort + b.comfort};
}

/// Calls are decided in order, taps tried in ascending index with "unmet" last: the first best found is the
/// first in order, so only a strictly better score replaces it. `hope[i]` is what calls i.. could add at
/// most.
class TapSearch {
  public:
    TapSearch(const std::vector<CallWindow>& windows, const std::vector<TapFlow>& flows, Sharing sharing)
        : windows_(windows),
          flows_(flows),
          sharing_(sharing),
          hope_(windows.size() + 1),
          now_(windows.size()) {
        for (std::size_t i = windows.size(); i-- > 0;) {
            hope_[i] = sum(hope_[i + 1], most(windows[i]));
        }
        best_.tap.resize(windows.size());
        best_.score.hard_met = -1;
    }

    TapAssignment run() {
        descend(0, {});
        return best_;
    }

  private:
    /// The greatest of each field over the taps of one window: an upper bound, perhaps of no single tap.
    TapScore most(const CallWindow& window) const {
        TapScore most;
        for (const TapFlow& flow : flows_) {
            if (!in_window(window, flow.airflow)) continue;
            const TapScore one = worth(window, flow);
            most = {std::max(most.hard_met, one.hard_met), std::max(most.soft_met, one.soft_met), 0,
                    std::max(most.hard_assured, one.hard_assured), std::max(most.comfort, one.comfort)};
        }
        return most;
    }

    bool monotone(std::size_t call, Airflow airflow) const {
        for (std::size_t j = 0; j < call; ++j) {
            if (!now_[j]) continue;
            const Airflow other = flows_[static_cast<std::size_t>(*now_[j])].airflow;
            if (must_not_exceed(windows_[j].call, windows_[call].call) && other > airflow) return false;
            if (must_not_exceed(windows_[call].call, windows_[j].call) && airflow > other) return false;
        }
        return true;
    }

    /// The calls before this one that are on the tap already.
    int sharers(std::size_t call, int tap) const {
        return static_cast<int>(
            std::count(now_.begin(), now_.begin() + static_cast<std::ptrdiff_t>(call), tap));
    }

    /// Of the pairs that this call makes on the tap, minus those of which one has a nearer tap.
    int merged(std::size_t call, int tap) const {
        const bool mine = has_nearer(windows_[call], flows_, tap);
        int pairs = 0;
        for (std::size_t j = 0; j < call; ++j)
            pairs += now_[j] == tap && (mine || has_nearer(windows_[j], flows_, tap)) ? 1 : 0;
        return -pairs;
    }

    void descend(std::size_t call, const TapScore& so_far) {
        if (sum(so_far, hope_[call]) <= best_.score) return;
        if (call == windows_.size()) {
            best_ = {now_, so_far};
            return;
        }
        for (std::size_t t = 0; t < flows_.size(); ++t) {
            if (!in_window(windows_[call], flows_[t].airflow) || !monotone(call, flows_[t].airflow)) continue;
            const int tap = static_cast<int>(t);
            const bool shared = sharers(call, tap) > 0;
            if (shared && sharing_ == Sharing::one_call_a_tap) continue;
            TapScore score = worth(windows_[call], flows_[t]);
            if (shared) score.apart = merged(call, tap);
            now_[call] = tap;
            descend(call + 1, sum(so_far, score));
        }
        now_[call].reset();
        descend(call + 1, so_far);
    }

    const std::vector<CallWindow>& windows_;
    const std::vector<TapFlow>& flows_;
    Sharing sharing_;
    std::vector<TapScore> hope_;
    std::vector<std::optional<int>> now_;
    TapAssignment best_;
};

}  // namespace

bool in_window(const CallWindow& window, Airflow airflow) {
    return airflow >= window.low && airflow <= window.high;
}

bool assured_in(const CallWindow& window, const TapFlow& flow) {
    return in_window(window, flow.airflow - flow.plus_minus) &&
           in_window(window, flow.airflow + flow.plus_minus);
}

int comfort_of(const CallWindow& window, Airflow airflow) {
    const bool short_of = airflow < window.target;
    const Airflow room = short_of ? window.target - window.low : window.high - window.target;
    const Airflow off = short_of ? window.target - airflow : airflow - window.target;
    if (off >= room) return off == Airflow() ? 1000 : 0;
    return static_cast<int>(std::floor(1000 * (room - off) / room));
}

bool has_nearer(const CallWindow& window, const std::vector<TapFlow>& flows, int tap) {
    const auto off = [&](const TapFlow& flow) {
        const Airflow more = flow.airflow - window.target;
        return more < Airflow() ? Airflow() - more : more;
    };
    const Airflow mine = off(flows[static_cast<std::size_t>(tap)]);
    return std::any_of(flows.begin(), flows.end(), [&](const TapFlow& other) {
        return in_window(window, other.airflow) && off(other) < mine;
    });
}

bool must_not_exceed(Call lesser, Call greater) {
    switch (lesser) {
        case Call::circulate:
            return greater == Call::cool_low || greater == Call::cool_high;
        case Call::cool_low:
            return greater == Call::cool_high;
        case Call::heat_low:
            return greater == Call::heat_high;
        case Call::dehumidify:
            return greater == Call::cool_high;
        default:
            return false;
    }
}

TapAssignment assign_taps(const std::vector<CallWindow>& windows, const std::vector<TapFlow>& flows,
                          Sharing sharing) {
    return TapSearch(windows, flows, sharing).run();
}

}  // namespace endbell::inline airflow
