// The side files of a catalog made ahead: while an import is at work, written under other names, and put in place when the
// catalog stands.
#pragma once
#include <atomic>
#include <filesystem>
#include <functional>
#include <future>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/catalog/stored_catalog.hpp"
#include "engine/index/index_draft.hpp"
#include "engine/index/part_index.hpp"

namespace endbell::inline index {

/// FILE-index and FILE-prices, and of which state of the catalog they must be.
struct SideFiles {
    SideFiles(const std::filesystem::path& file, const StoredCatalog& catalog);
    /// Null where either is missing or of another state.
    std::shared_ptr<const PartIndex> open() const;

    std::filesystem::path index, prices;
    std::string index_stamp, price_stamp;
};

/// What the side files of a catalog lack.
class SideDraft {
  public:
    /// Reads the parts of `catalog`, which is or will be `file`, unless FILE-index is of their state. `again` is the same
    /// state, opened once more: two threads read. `look` is called for each part; what it throws ends it.
    SideDraft(std::filesystem::path file, const StoredCatalog& catalog, const StoredCatalog& again,
              const std::function<void()>& look = {});
    /// Writes them under other names. `catalog` has the same parts as before. Throws BadData when they cannot be written.
    void write(const StoredCatalog& catalog, const PricesById& prices);
    /// When `file` stands.
    void put_in_place();

  private:
    std::filesystem::path file_;
    std::unique_ptr<const PartIndex> known_;
    std::optional<IndexDraft> index_;  // where none is known
    std::optional<SideFileWriter> new_index_, new_prices_;
};

/// Makes the side files of a catalog on threads of its own while an import stores its other tables, makes the search keys of
/// numbers, and brings it to the disk.
class IndexAhead {
  public:
    explicit IndexAhead(std::filesystem::path catalog) : catalog_(std::move(catalog)) {}
    /// What is still at work is broken off.
    ~IndexAhead();
    IndexAhead(const IndexAhead&) = delete;
    IndexAhead& operator=(const IndexAhead&) = delete;

    /// `importing`, which will become the catalog, has all parts.
    void read_parts(const std::filesystem::path& importing);
    /// It has all offers too. After `read_parts`.
    void read_prices(const std::filesystem::path& importing);
    /// The catalog was replaced, or no prices were read. Not needed for an answer, only for a quick one: where the files
    /// cannot be written they are left out.
    void put_in_place();

  private:
    struct BrokenOff {};
    void look() const;

    std::filesystem::path catalog_;
    std::atomic<bool> stopped_ = false;
    std::future<std::unique_ptr<SideDraft>> parts_, all_;  // null: nothing is lacking
};

}  // namespace endbell::inline index
