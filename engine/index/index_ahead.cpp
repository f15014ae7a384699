#include "engine/index/index_ahead.hpp"

#include <utility>

#include "engine/base/problem.hpp"
#include "engine/fields/tables.hpp"

namespace endbell::inline index {

namespace {

/// On the importing thread, before it writes anything more: the state that is read.
std::shared_ptr<const StoredCatalog> opened(const std::filesystem::path& importing) {
    auto state = std::make_shared<const StoredCatalog>(importing);
    state->map_pages();
    return state;
}

}  // namespace

SideFiles::SideFiles(const std::filesystem::path& file, const StoredCatalog& catalog)
    : index(file.string() + "-index"),
      prices(file.string() + "-prices"),
      index_stamp(rules_stamp() + " " + catalog.digest_of(tables_of_parts())),
      price_stamp(index_stamp + " " + catalog.digest_of({"offers"})) {}

std::shared_ptr<const PartIndex> SideFiles::open() const {
    std::unique_ptr<PartIndex> opened = PartIndex::open(index, index_stamp);
    if (!opened || !opened->open_prices(prices, price_stamp)) return nullptr;
    return opened;
}

SideDraft::SideDraft(std::filesystem::path file, const StoredCatalog& catalog, const StoredCatalog& again,
                     const std::function<void()>& look)
    : file_(std::move(file)) {
    const SideFiles files(file_, catalog);
    known_ = PartIndex::open(files.index, files.index_stamp);
    if (known_) return;
    const std::string middle = catalog.middle_id();
    auto later = std::async(std::launch::async, [&] { return IndexDraft(again, IdRange{middle, ""}, look); });
    index_.emplace(catalog, IdRange{"", middle}, look);
    index_->append(later.get());
}

void SideDraft::write(const StoredCatalog& catalog, const PricesById& prices) {
    const SideFiles files(file_, catalog);
    if (index_) {
        index_->put_in_order(prices);
        new_index_.emplace(index_->write(files.index, files.index_stamp));
    }
    new_prices_.emplace(PriceColumn::write(index_ ? index_->prices() : known_->in_place(prices), files.prices,
                                           files.price_stamp));
}

void SideDraft::put_in_place() {
    if (new_index_) new_index_->put_in_place();
    if (new_prices_) new_prices_->put_in_place();
}

IndexAhead::~IndexAhead() {
    stopped_ = true;  // those who wait for the futures wait not long
}

void IndexAhead::look() const {
    if (stopped_) throw BrokenOff();
}

void IndexAhead::read_parts(const std::filesystem::path& importing) {
    parts_ = std::async(std::launch::async, [this, state = opened(importing), again = opened(importing)] {
        return std::make_unique<SideDraft>(catalog_, *state, *again, [this] { look(); });
    });
}

void IndexAhead::read_prices(const std::filesystem::path& importing) {
    all_ = std::async(std::launch::async, [this, state = opened(importing)]() -> std::unique_ptr<SideDraft> {
        if (SideFiles(catalog_, *state).open()) return nullptr;
        const PricesById prices(*state, [this] { look(); });
        std::unique_ptr<SideDraft> draft = parts_.get();
        draft->write(*state, prices);
        return draft;
    });
}

void IndexAhead::put_in_place() {
    if (!all_.valid()) return;
    try {
        if (const auto draft = all_.get()) draft->put_in_place();
    } catch (const BadData&) {
        return;
    }
}

}  // namespace endbell::inline index
