// The names of a catalog, laid out for looking up: every number under its sight key, fragments by their three-character
// pieces, descriptions by their words. A side file, FILE-names, or the same in memory where none can be written.
#pragma once
#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/catalog/stored_catalog.hpp"

namespace endbell::inline find {

/// One number of one part. Texts are good as long as the index.
struct Name {
    std::string_view key, number, part_id;
};

/// Of all names, in their order by (key, number, part_id): from `begin` on, and below `end`.
struct NameRange {
    std::uint32_t begin = 0, end = 0;
    bool empty() const { return begin == end; }
};

using NameList = std::vector<std::uint32_t>;

class NameIndex {
  public:
    /// Opens FILE-names where it is of this state of the catalog, else makes it. Throws BadData for a damaged catalog.
    NameIndex(const std::filesystem::path& file, const StoredCatalog& catalog);
    ~NameIndex();
    NameIndex(const NameIndex&) = delete;
    NameIndex& operator=(const NameIndex&) = delete;

    Name name(std::uint32_t at) const;
    NameRange exactly(std::string_view key) const;
    NameRange beginning_with(std::string_view start) const;
    /// Whose key becomes `key` by one character exchanged, added or left out, or two neighbours swapped; ascending.
    NameList one_off(std::string_view key) const;
    /// Whose key holds this fragment of at least three characters; ascending.
    NameList holding(std::string_view fragment) const;
    /// The parts, each by one name, whose description has each of these words, or one that begins with it from four
    /// characters on; ascending.
    NameList described_by(const std::vector<std::string>& words) const;

  private:
    struct Tables;
    struct Held;
    NameRange narrowed(NameRange range, std::string_view start) const;
    NameList with_word(std::string_view start) const;

    std::unique_ptr<const Held> held_;
};

/// Words of a description as they are looked up: letters and digits in lower case, from two characters on.
std::vector<std::string> words_to_find(std::string_view text);

}  // namespace endbell::inline find
