// Which parts are carried through wiring, kit and price, and which need not be.
#pragma once
#include "engine/select/select.hpp"

namespace endbell {

/// Fills in the options, ranked, and what stopped or barred others, from the names of the report. None that is left
/// out can come to less than the options wanted.
void carry_the_best(Selection& s, const Question& question, const Catalog& catalog, const KitShelf& shelf,
                    const Wanted& wanted);

}  // namespace endbell
