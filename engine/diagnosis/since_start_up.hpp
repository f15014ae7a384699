// What has changed since the unit was started, where a file keeps what was read then.
#pragma once
#include <optional>
#include <string_view>
#include <vector>

#include "engine/model/failed_unit.hpp"
#include "engine/model/limits.hpp"

namespace endbell::inline diagnosis {

enum class StartUpChange { as_then, higher, lower };
constexpr auto words_of(StartUpChange) {
    return std::array{Word<StartUpChange>{StartUpChange::as_then, "as then"},
                      Word<StartUpChange>{StartUpChange::higher, "higher"},
                      Word<StartUpChange>{StartUpChange::lower, "lower"}};
}

/// One quantity now, beside one reading of it at start-up. Nobody says which call ran while the later reading was taken: it is
/// higher or lower only where it is so beside every call of the record.
struct SinceStartUp {
    StartUpQuantity what = StartUpQuantity::amps;
    std::optional<Call> call;  // under which it was read then
    int leg = 0;
    double then = 0, now = 0;  // in the quantity's own unit
    StartUpChange change = StartUpChange::as_then;
    std::string_view job_key;
};

/// `limit start_up.change` apart is a change.
std::vector<SinceStartUp> since_start_up(const FailedUnit& job, const Limits& limits);

}  // namespace endbell::inline diagnosis
