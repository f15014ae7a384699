// A stored catalog with its index and its price column, FILE-index and FILE-prices: side files that are made when they are
// missing or of another state of the catalog, and may be deleted at any time.
#pragma once
#include <filesystem>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "engine/catalog/stored_catalog.hpp"
#include "engine/index/lookup_cache.hpp"
#include "engine/index/part_index.hpp"

namespace endbell::inline index {

/// What many jobs ask again is read once: accessories with their offers, hours of work, and the parts looked up last.
class IndexedCatalog : public StoredCatalog {
  public:
    /// Where nothing can be written beside the catalog, every part is asked: slower, and the same answers.
    /// Throws BadData when the catalog is none.
    explicit IndexedCatalog(const std::filesystem::path& file);
    /// Another connection to the same catalog, for a thread with many jobs: remembers more. Shares the index, which is
    /// only read.
    IndexedCatalog(const IndexedCatalog& other);

    /// Null where nothing could be written beside the catalog.
    const PartIndex* index() const { return index_.get(); }
    void each_accessory(const std::function<void(const Part&)>& visit) const override;
    std::optional<Part> part(std::string_view id) const override;
    std::vector<Offer> offers(std::string_view part_id) const override;
    std::optional<LabourTask> labour(std::string_view task) const override;

  private:
    void read_accessories() const;

    std::filesystem::path file_;
    std::shared_ptr<const PartIndex> index_;
    mutable bool accessories_read_ = false;
    mutable std::vector<Part> accessories_;
    mutable std::map<std::string, std::vector<Offer>, std::less<>> accessory_offers_;
    mutable LookupCache<std::optional<Part>> parts_;
    mutable LookupCache<std::vector<Offer>> offers_;
    mutable std::map<std::string, std::optional<LabourTask>, std::less<>> tasks_;
};

/// Brings the side files of a finished catalog up to date; what is up to date stays. Null when they cannot be
/// written.
std::shared_ptr<const PartIndex> index_of(const std::filesystem::path& file, const StoredCatalog& catalog);

}  // namespace endbell::inline index
