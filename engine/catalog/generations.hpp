// The catalog's current generation and the last three before it, each a whole file:
//     shop.db   shop.db-generation-7   shop.db-generation-6   shop.db-generation-5
#pragma once
#include <filesystem>
#include <string>
#include <vector>

namespace endbell::inline catalog {

struct Generation {
    int number = 0;
    std::string digest;
    std::filesystem::path file;
    bool damaged = false;  // an earlier one that can no longer be opened
};

inline constexpr int generations_kept = 3;

/// The current one, then the earlier ones, newest first. Throws BadData when the current one is no catalog.
std::vector<Generation> generations(const std::filesystem::path& catalog);

/// Makes the content of an earlier generation the newest one: numbers only rise, the digest is the old one.
/// Also when the current file is damaged. Throws BadData when generation `number` is not kept or is damaged.
Generation restore(const std::filesystem::path& catalog, int number);

}  // namespace endbell::inline catalog
