#include "engine/index/index_ahead.hpp"

#include "engine/base/problem.hpp"

namespace endbell {

SideFiles::SideFiles(const std::filesystem::path& file, const StoredCatalog& catalog)
    : index(file.string() + "-index"),
      prices(file.string() + "-prices"),
      index_stamp(rules_stamp() + " " +
                  catalog.digest_of({"parts", "motors", "motor_ratings", "taps", "terminals", "modules"})),
      price_stamp(index_stamp + " " + catalog.digest_of({"offers"})) {}

std::shared_ptr<const PartIndex> SideFiles::open() const {
    std::unique_ptr<PartIndex> opened = PartIndex::open(index, index_stamp);
    if (!opened || !opened->open_prices(prices, price_stamp)) return nullptr;
    return opened;
}

SideDraft::SideDraft(const std::filesystem::path& file, const StoredCatalog& catalog,
                     const StoredCatalog& offers, const std::function<bool()>& stopped)
    : files_(file, catalog) {
    const std::unique_ptr<PartIndex> known = PartIndex::open(files_.index, files_.index_stamp);
    if (!known) {
        index_.emplace(catalog, offers, stopped);
    } else if (!known->open_prices(files_.prices, files_.price_stamp)) {
        prices_ = known->prices_now(catalog);
    }
}

void SideDraft::write() const {
    if (index_) index_->write(files_.index, files_.index_stamp);
    if (index_ || prices_)
        Prices::write(index_ ? index_->prices() : *prices_, files_.prices, files_.price_stamp);
}

IndexAhead::~IndexAhead() {
    stopped_ = true;
    finish();
}

void IndexAhead::finish() {
    if (maker_.joinable()) maker_.join();
}

void IndexAhead::begin(const std::filesystem::path& importing, const std::filesystem::path& catalog) {
    // Opened before anything more is written: the state that it reads.
    const auto state = std::make_shared<const StoredCatalog>(importing);
    const auto offers = std::make_shared<const StoredCatalog>(importing);
    state->map_pages();
    offers->map_pages();
    maker_ = std::thread([this, state, offers, catalog] {
        try {
            draft_.emplace(catalog, *state, *offers, [this] { return stopped_.load(); });
        } catch (const IndexDraft::BrokenOff&) {
        } catch (...) {
            failure_ = std::current_exception();
        }
    });
}

void IndexAhead::write() {
    finish();
    try {
        if (failure_) std::rethrow_exception(failure_);
        if (draft_) draft_->write();
    } catch (const BadData&) {
        return;
    }
}

}  // namespace endbell
