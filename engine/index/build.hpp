// Makes the index of a catalog.
#pragma once
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/catalog.hpp"

namespace endbell {

/// Names the fields and rules of this program: an index made for others is made again.
std::string rules_stamp();

/// The index of a catalog, in memory until it is written. Parts alike in kind, load, volts, family, power and speed
/// stand together, and among them in the order of least price, then id, as they are now: cheap parts are then found
/// first, and stay right when prices move.
class IndexDraft {
  public:
    /// Reads every motor and module once, and on another thread every offer: `offers` is the same catalog, opened once
    /// more where a catalog is for one thread. `stopped` is asked for each part: true ends it with BrokenOff.
    IndexDraft(const Catalog& catalog, const Catalog& offers, const std::function<bool()>& stopped = {});
    ~IndexDraft();
    IndexDraft(const IndexDraft&) = delete;
    IndexDraft& operator=(const IndexDraft&) = delete;

    struct BrokenOff {};

    /// By position, for `Prices::write`.
    const std::vector<std::uint32_t>& prices() const;
    /// Throws BadData when it cannot be written.
    void write(const std::filesystem::path& path, std::string_view stamp) const;

  private:
    class Builder;
    std::unique_ptr<const Builder> built_;
};

}  // namespace endbell
