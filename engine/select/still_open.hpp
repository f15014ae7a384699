// Which readings that nobody has taken could still change the answer: found by trying their answers, not by what rules say
// of themselves. Only where none can is there nothing more to ask.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/kit/kit.hpp"
#include "engine/select/select.hpp"

namespace endbell::inline select {

/// What an answer has somebody do.
Upshot upshot_of(const Selection& s);

/// How much is tried before it is given up: whole answers worked out (common practice: some seconds).
struct Patience {
    int singles = 40'000;
    int pairs = 12'000;
    bool whether = false;  // only whether there is any: the first is enough
};

/// Each key alone that the job leaves open, the shop's terms aside: every word, and both sides of every limit, of every
/// size that the job states or a part that is still in question has. Where none changes what is done, pairs of the keys that
/// an open finding or a test asks for, now or after one of them. An answer that contradicts what is stated is none.
StillOpen still_open(const FailedUnit& job, const Books& books, const KitShelf& shelf,
                     Patience patience = {});

/// The keys whose values reach the later stages as they stand, beside facts and rules: of others what follows is enough.
bool later_stages_read(std::string_view key);

}  // namespace endbell::inline select
