// A TOML document as flat text: one entry a key, every value as the text a reader takes. The only place that
// knows the TOML library.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/problem.hpp"

namespace endbell::inline job {

struct TomlEntry {
    std::string group;  // empty: a key outside any group
    std::string name;
    std::string value;  // arrays joined with "; ", rows inside them with " | ", tables as "key = value; ...",
                        // booleans as yes and no
    bool number = false;  // a bare number
    Place group_at;
    Place key_at;
    Place value_at;
    Place value_end;  // behind its last character
};

struct TomlDocument {
    std::vector<TomlEntry> entries;  // in the order of the text
    std::vector<Problem> problems;   // values of a shape that no key has
};

/// Throws BadData when the text is not TOML.
TomlDocument parse_toml(std::string_view text, const std::string& filename);

}  // namespace endbell::inline job
