#include "engine/index/indexed_catalog.hpp"

#include "engine/base/problem.hpp"
#include "engine/index/build.hpp"

namespace endbell {

std::shared_ptr<const PartIndex> index_of(const std::filesystem::path& file, const StoredCatalog& catalog) {
    const std::string parts =
        rules_stamp() + " " +
        catalog.digest_of({"parts", "motors", "motor_ratings", "taps", "terminals", "modules"});
    const std::string prices = parts + " " + catalog.digest_of({"offers"});
    const std::filesystem::path index_file = file.string() + "-index";
    const std::filesystem::path price_file = file.string() + "-prices";
    try {
        std::unique_ptr<PartIndex> index = PartIndex::open(index_file, parts);
        if (!index) {
            build_index(catalog, index_file, parts);
            index = PartIndex::open(index_file, parts);
        }
        if (index && !index->open_prices(price_file, prices)) {
            Prices::write(catalog, index->ids(), price_file, prices);
            if (!index->open_prices(price_file, prices)) return nullptr;
        }
        return index;
    } catch (const BadData&) {
        return nullptr;  // a read-only place or a full disk: the rules answer without it
    }
}

IndexedCatalog::IndexedCatalog(const std::filesystem::path& file)
    : file_(file), stored_(file), index_(index_of(file, stored_)) {}

IndexedCatalog::IndexedCatalog(const IndexedCatalog& other)
    : file_(other.file_), stored_(other.file_), index_(other.index_) {}

}  // namespace endbell
