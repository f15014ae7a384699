// Which parts are carried through wiring, kit and price, and which need not be.
#pragma once
#include "engine/select/select.hpp"

namespace endbell::inline select {

/// Fills in the options, ranked, and what stopped or barred others, from the names of the report and then of `more`,
/// which is used up. None that is left out can come to less than the options wanted.
void carry_the_best(Selection& s, std::unique_ptr<MoreNames> more, const Query& query, const Books& books,
                    const KitShelf& shelf, const SelectionScope& scope);

}  // namespace endbell::inline select
