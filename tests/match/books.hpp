// Books for a test's own catalog.
#pragma once
#include "engine/match/match.hpp"

namespace endbell {

/// Under the program's own limits, every part asked.
inline Books books_of(const Catalog& catalog) {
    static const Limits own;
    return {catalog, own};
}

}  // namespace endbell
