#include "engine/index/indexed_catalog.hpp"

#include <future>

#include "engine/base/problem.hpp"
#include "engine/index/index_ahead.hpp"

namespace endbell::inline index {

std::shared_ptr<const PartIndex> index_of(const std::filesystem::path& file, const StoredCatalog& catalog) {
    try {
        const SideFiles files(file, catalog);
        if (auto index = files.open()) return index;
        auto prices = std::async(std::launch::async, [&file] { return PricesById(StoredCatalog(file)); });
        SideDraft draft(file, catalog, StoredCatalog(file));
        draft.write(catalog, prices.get());
        draft.put_in_place();
        return files.open();
    } catch (const BadData&) {
        return nullptr;  // a read-only place or a full disk: the rules answer without it
    }
}

namespace {

// Parts with their taps and terminals, some 3 kB each.
constexpr std::size_t remembered_by_one_answer = 256;
constexpr std::size_t remembered_by_many = 6144;

}  // namespace

IndexedCatalog::IndexedCatalog(const std::filesystem::path& file)
    : StoredCatalog(file),
      file_(file),
      index_(index_of(file, *this)),
      parts_(remembered_by_one_answer),
      offers_(remembered_by_one_answer) {}

IndexedCatalog::IndexedCatalog(const IndexedCatalog& other)
    : StoredCatalog(other.file_),
      file_(other.file_),
      index_(other.index_),
      parts_(remembered_by_many),
      offers_(remembered_by_many) {
    map_pages();
}

void IndexedCatalog::read_accessories() const {
    if (accessories_read_) return;
    StoredCatalog::each_accessory([&](const Part& part) { accessories_.push_back(part); });
    for (const Part& part : accessories_) accessory_offers_[part.id] = StoredCatalog::offers(part.id);
    accessories_read_ = true;
}

void IndexedCatalog::each_accessory(const std::function<void(const Part&)>& visit) const {
    read_accessories();
    for (const Part& part : accessories_) visit(part);
}

std::vector<Offer> IndexedCatalog::offers(std::string_view part_id) const {
    const auto known = accessory_offers_.find(part_id);
    if (known != accessory_offers_.end()) return known->second;
    return offers_.of(part_id, [&] { return StoredCatalog::offers(part_id); });
}

std::optional<Part> IndexedCatalog::part(std::string_view id) const {
    return parts_.of(id, [&] { return StoredCatalog::part(id); });
}

std::optional<LabourTask> IndexedCatalog::labour(std::string_view task) const {
    auto known = tasks_.find(task);
    if (known == tasks_.end()) known = tasks_.emplace(std::string(task), StoredCatalog::labour(task)).first;
    return known->second;
}

}  // namespace endbell::inline index
