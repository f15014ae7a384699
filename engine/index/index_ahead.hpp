// The side files of a catalog: what they lack is made in memory, and written when the catalog stands.
#pragma once
#include <atomic>
#include <exception>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <thread>
#include <vector>

#include "engine/catalog/stored_catalog.hpp"
#include "engine/index/build.hpp"
#include "engine/index/part_index.hpp"

namespace endbell {

/// FILE-index and FILE-prices, and of which state of the catalog they must be.
struct SideFiles {
    SideFiles(const std::filesystem::path& file, const StoredCatalog& catalog);
    /// Null where either is missing or of another state.
    std::shared_ptr<const PartIndex> open() const;

    std::filesystem::path index, prices;
    std::string index_stamp, price_stamp;
};

/// What the side files of `file` lack for the state that `catalog` is in.
class SideDraft {
  public:
    /// `offers` is the same state, opened once more: two threads read. Throws IndexDraft::BrokenOff where `stopped` says
    /// so.
    SideDraft(const std::filesystem::path& file, const StoredCatalog& catalog, const StoredCatalog& offers,
              const std::function<bool()>& stopped = {});
    /// Throws BadData when they cannot be written.
    void write() const;

  private:
    SideFiles files_;
    std::optional<IndexDraft> index_;
    std::optional<std::vector<std::uint32_t>> prices_;
};

/// Makes them on a thread of its own while an import brings its rows, which all are there, to the disk.
class IndexAhead {
  public:
    IndexAhead() = default;
    /// Breaks off.
    ~IndexAhead();
    IndexAhead(const IndexAhead&) = delete;
    IndexAhead& operator=(const IndexAhead&) = delete;

    /// `importing` will become `catalog`.
    void begin(const std::filesystem::path& importing, const std::filesystem::path& catalog);
    /// Not needed for an answer, only for a quick one: where they cannot be written they are left out.
    void write();

  private:
    void finish();

    std::optional<SideDraft> draft_;
    std::exception_ptr failure_;
    std::atomic<bool> stopped_ = false;
    std::thread maker_;
};

}  // namespace endbell
