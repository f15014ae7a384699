// Makes the index of a catalog.
#pragma once
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "engine/index/prices.hpp"
#include "engine/index/side_file.hpp"
#include "engine/model/catalog.hpp"

namespace endbell::inline index {

/// Names the fields and rules of this program: an index made for others is made again.
std::string rules_stamp();

/// The index of a catalog, in memory until it is written. Parts alike in kind, load, volts, family, power and speed
/// stand together, and among them in the order of least price, then id, as they are then: cheap parts are then found
/// first, and stay right when prices move.
class IndexDraft {
  public:
    /// Reads every motor and module of the range once. `look` is called for each; what it throws ends it.
    IndexDraft(const Catalog& catalog, const IdRange& range, const std::function<void()>& look = {});
    ~IndexDraft();
    IndexDraft(IndexDraft&&) noexcept;
    IndexDraft& operator=(IndexDraft&&) = delete;

    /// Takes the parts of another one, whose ids are all greater.
    void append(IndexDraft&& later);
    /// Once, before all that follows.
    void put_in_order(const LeastPrices& prices);
    /// By position, for `Prices::write`.
    const std::vector<std::uint32_t>& prices() const;
    /// Finished, and not yet in place.
    SideFileWriter write(const std::filesystem::path& path, std::string_view stamp) const;

  private:
    class Builder;
    std::unique_ptr<Builder> built_;
};

}  // namespace endbell::inline index
