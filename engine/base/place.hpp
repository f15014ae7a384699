// Where a value was written: a file, a command line, a catalog cell.
#pragma once
#include <string>

namespace endbell::inline base {

/// line and column count from 1; 0 means "not known".
struct Place {
    std::string file;
    int line = 0;
    int column = 0;

    friend bool operator==(const Place&, const Place&) = default;
};

/// "jobs/attic.toml:12:9", as far as it is known.
std::string to_text(const Place& place);

}  // namespace endbell::inline base
