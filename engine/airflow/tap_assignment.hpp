// Which tap serves which call: a small assignment, solved exactly.
#pragma once
#include <compare>
#include <optional>
#include <vector>

#include "engine/airflow/air_plan.hpp"

namespace endbell::inline airflow {

/// A call's window. low <= target <= high.
struct CallWindow {
    Call call = Call::circulate;
    Airflow low, target, high;
    bool hard = false;
};

struct TapFlow {
    Airflow airflow;
    Airflow plus_minus;
};

/// What an assignment is worth, most important first. A later field never buys back an earlier one.
struct TapScore {
    int hard_met = 0;  // hard calls with a tap in their window
    int soft_met = 0;
    int apart = 0;         // minus the pairs of calls on one tap of which one has a nearer tap in its window
    int hard_assured = 0;  // of the hard calls that are met, how many hold over the whole uncertainty
    int comfort = 0;       // sum over calls of `comfort_of`
    friend auto operator<=>(const TapScore&, const TapScore&) = default;
};

struct TapAssignment {
    std::vector<std::optional<int>> tap;  // index into the flows, one for each window; none: unmet
    TapScore score;
};

/// 1000 at the target, 0 at the edge of the window, straight between; never below 0.
int comfort_of(const CallWindow& window, Airflow airflow);
bool in_window(const CallWindow& window, Airflow airflow);
bool assured_in(const CallWindow& window, const TapFlow& flow);

/// Airflow never falls from the first call to the second: low stage before high stage, dehumidify before
/// cooling, circulation before cooling. One tap may serve both.
bool must_not_exceed(Call lesser, Call greater);

/// Another tap of the window is nearer to its target than this one.
bool has_nearer(const CallWindow& window, const std::vector<TapFlow>& flows, int tap);

/// Whether two calls may share a tap: a lead that each output of a board feeds by itself takes one.
enum class Sharing { allowed, one_call_a_tap };

/// Every call gets a tap in its window or none, stages are monotone, the score is the greatest possible; of
/// equal scores the one whose tap indices come first in order (unmet last). Exact: a search with a bound.
TapAssignment assign_taps(const std::vector<CallWindow>& windows, const std::vector<TapFlow>& flows,
                          Sharing sharing = Sharing::allowed);

}  // namespace endbell::inline airflow
