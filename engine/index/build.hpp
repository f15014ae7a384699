// Makes the index of a catalog.
#pragma once
#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/catalog.hpp"

namespace endbell {

/// Names the fields and rules of this program: an index made for others is made again.
std::string rules_stamp();

/// Reads every motor and module once, and writes the index to `path`. Parts alike in kind, load, volts, family, power
/// and speed stand together, and among them in the order of least price, then id, as they are today: cheap parts are
/// then found first, and stay right when prices move.
/// Gives the prices by position, for `Prices::write`. Throws BadData when the index cannot be written.
std::vector<std::uint32_t> build_index(const Catalog& catalog, const std::filesystem::path& path,
                                       std::string_view stamp);

}  // namespace endbell
