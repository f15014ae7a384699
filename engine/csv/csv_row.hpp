// One row of a CSV file.
#pragma once
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace endbell::inline csv {

/// Where a cell stands in a text.
struct CellPlace {
    std::uint32_t start = 0;
    std::uint32_t size = 0;
};

class CsvRow {
  public:
    int line = 0;        // of its first line in the file, from 1
    std::string bytes;   // as they stand in the file, line ends included
    std::string damage;  // why the cells cannot be told apart; empty: they can

    std::size_t size() const { return places_.size(); }
    /// UTF-8, good while the row stays as it is.
    std::string_view operator[](std::size_t cell) const {
        const CellPlace& place = places_[cell];
        return {(apart_ ? text_ : bytes).data() + place.start, place.size};
    }
    std::vector<std::string> cells() const {
        std::vector<std::string> all;
        for (std::size_t i = 0; i < size(); ++i) all.emplace_back((*this)[i]);
        return all;
    }

    /// Forgets the cells, and takes those that are added.
    void begin() {
        apart_ = true;
        text_.clear();
        places_.clear();
    }
    void add(std::string_view cell) {
        places_.push_back(
            {static_cast<std::uint32_t>(text_.size()), static_cast<std::uint32_t>(cell.size())});
        text_ += cell;
    }
    /// Takes the cells out of the bytes, where these need no parser; else false, and no cells.
    bool cut(char delimiter);

  private:
    bool apart_ = false;  // in `text_`, not in `bytes`: most rows need no copy
    std::string text_;
    std::vector<CellPlace> places_;
};

}  // namespace endbell::inline csv
