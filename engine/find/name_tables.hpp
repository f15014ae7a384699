// The tables of a name index as they lie in its file, and how they are made of a catalog.
#pragma once
#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "engine/catalog/stored_catalog.hpp"

namespace endbell::inline find {

/// Sight keys are of digits and letters; what else a key may have shares one place.
constexpr std::size_t places = 37;
constexpr std::size_t place_of(char c) {
    if (c >= '0' && c <= '9') return static_cast<std::size_t>(c - '0');
    if (c >= 'A' && c <= 'Z') return static_cast<std::size_t>(c - 'A') + 10;
    return 36;
}
constexpr std::size_t pieces = places * places * places;
/// REQUIRES: three characters.
constexpr std::size_t piece_of(const char* three) {
    return (place_of(three[0]) * places + place_of(three[1])) * places + place_of(three[2]);
}

/// Made in memory. Where a list is divided, entry i of its starts is where part i begins, and one more ends the last.
struct NameTables {
    std::string texts;                        // key, number and part id of each name, each ended by a zero
    std::vector<std::uint32_t> starts;        // of each name in texts
    std::vector<std::uint32_t> piece_starts;  // of each piece in piece_names
    std::vector<std::uint32_t> piece_names;   // ascending within a piece
    std::string words;                        // of descriptions, ascending, each ended by a zero
    std::vector<std::uint32_t> words_at;      // of each word in words
    std::vector<std::uint32_t> word_starts;   // of each word in word_names
    std::vector<std::uint32_t> word_names;    // ascending within a word
};

NameTables tables_of_names(const StoredCatalog& catalog);

}  // namespace endbell::inline find
