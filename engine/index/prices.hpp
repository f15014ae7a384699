// The least price of every part, by position: its own side file, because prices change nightly and parts do not.
#pragma once
#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "engine/base/ids.hpp"
#include "engine/index/bits.hpp"
#include "engine/index/side_file.hpp"
#include "engine/index/stretch.hpp"
#include "engine/model/catalog.hpp"

namespace endbell::inline index {

/// Stands for a price that nobody states; dearer than any.
inline constexpr std::uint32_t unpriced = 0xFFFFFFFF;

/// The price that least_price() gives of every part that has one.
class LeastPrices {
  public:
    /// `look` is called for each; what it throws ends it.
    explicit LeastPrices(const Catalog& catalog, const std::function<void()>& look = {});
    /// Of parts 0 to `parts` - 1 in ascending order of `id`.
    std::vector<std::uint32_t> of(std::size_t parts,
                                  const std::function<std::string_view(std::size_t)>& id) const;

  private:
    Ids ids_;
    std::vector<std::uint32_t> prices_;
};

class Prices {
  public:
    static std::optional<Prices> open(const std::filesystem::path& path, std::string_view stamp,
                                      std::size_t parts);

    /// `prices` by position. Finished, and not yet in place.
    static SideFileWriter write(std::span<const std::uint32_t> prices, const std::filesystem::path& path,
                                std::string_view stamp);

    std::uint32_t at(std::size_t position) const { return prices_[position]; }

    /// The `most` cheapest parts of a set, then by rank of id; their positions in that order.
    std::vector<std::uint32_t> cheapest(const BitSet& set, const Lives& lives, std::size_t most,
                                        std::span<const std::uint32_t> ranks) const;

  private:
    std::optional<SideFile> file_;
    std::span<const std::uint32_t> prices_;
    std::span<const std::uint32_t> least_;  // of each block of parts
    std::span<const std::uint32_t> order_;  // blocks, cheapest first
};

}  // namespace endbell::inline index
