// The index of a catalog in memory, until it is written: rows in the order in which their parts will stand.
#pragma once
#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/index/index_rows.hpp"
#include "engine/index/prices_by_id.hpp"
#include "engine/index/side_file.hpp"
#include "engine/model/catalog.hpp"

namespace endbell::inline index {

/// Names the fields and rules of this program: an index made for others is made again.
std::string rules_stamp();

/// Parts alike in kind, load, volts, family, power and speed stand together, and among them in the order of least price, then
/// id, as they are then: cheap parts are then found first, and stay right when prices move.
class IndexDraft {
  public:
    /// As IndexRows.
    IndexDraft(const Catalog& catalog, const IdRange& range, const std::function<void()>& look = {});

    /// Takes the parts of another one, whose ids are all greater.
    void append(IndexDraft&& later);
    /// Once, before all that follows.
    void put_in_order(const PricesById& prices);
    /// By position, for `PriceColumn::write`.
    const std::vector<std::uint32_t>& prices() const { return prices_; }
    /// Finished, and not yet in place.
    SideFileWriter write(const std::filesystem::path& path, std::string_view stamp) const;

  private:
    struct ColumnBlocks;
    ColumnBlocks column_blocks(std::size_t first) const;
    void write_dictionaries(SideFileWriter& file) const;
    void write_classes(SideFileWriter& file) const;
    void write_ids(SideFileWriter& file) const;
    void write_assemblies(SideFileWriter& file) const;
    void write_column_blocks(SideFileWriter& file) const;

    IndexRows rows_;
    std::vector<Code> row_at_;           // by position
    std::vector<Code> position_of_;      // by row: the inverse
    std::vector<std::uint32_t> prices_;  // by position
};

}  // namespace endbell::inline index
