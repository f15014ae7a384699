// A stored catalog with its side files: FILE-index holds the parts, FILE-prices their least prices. Both are made
// when they are missing or of another state of the catalog, and may be deleted at any time.
#pragma once
#include <filesystem>
#include <memory>

#include "engine/catalog/stored_catalog.hpp"
#include "engine/index/part_index.hpp"

namespace endbell {

class IndexedCatalog : public Catalog {
  public:
    /// Where nothing can be written beside the catalog, every part is asked: slower, and the same answers.
    /// Throws BadData when the catalog is none.
    explicit IndexedCatalog(const std::filesystem::path& file);
    /// Another connection to the same catalog, for another thread; shares the index, which is only read.
    explicit IndexedCatalog(const IndexedCatalog& other);

    void each_part(const std::function<void(const Part&)>& visit) const override { stored_.each_part(visit); }
    void each_accessory(const std::function<void(const Part&)>& visit) const override {
        stored_.each_accessory(visit);
    }
    void each_least_price(const std::function<void(std::string_view, std::int64_t)>& visit) const override {
        stored_.each_least_price(visit);
    }
    std::optional<Part> part(std::string_view id) const override { return stored_.part(id); }
    std::vector<Offer> offers(std::string_view part_id) const override { return stored_.offers(part_id); }
    std::vector<CrossReference> references(std::string_view old_number) const override {
        return stored_.references(old_number);
    }
    std::optional<LabourTask> labour(std::string_view task) const override { return stored_.labour(task); }
    const Limits& limits() const override { return stored_.limits(); }
    std::string stamp() const override { return stored_.stamp(); }
    const Sieve* sieve() const override { return index_.get(); }

    const StoredCatalog& stored() const { return stored_; }

  private:
    std::filesystem::path file_;
    StoredCatalog stored_;
    std::shared_ptr<const PartIndex> index_;
};

/// Brings the side files of a finished catalog up to date; what is up to date stays. Null when they cannot be
/// written.
std::shared_ptr<const PartIndex> index_of(const std::filesystem::path& file, const StoredCatalog& catalog);

}  // namespace endbell
