// The least price of every part, by position, and the cheapest parts of a set. A side file of its own, because prices change
// nightly and parts do not.
#pragma once
#include <cstdint>
#include <filesystem>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "engine/index/bits.hpp"
#include "engine/index/block.hpp"
#include "engine/index/prices_by_id.hpp"
#include "engine/index/side_file.hpp"

namespace endbell::inline index {

class PriceColumn {
  public:
    /// Empty as SideFile::open is, and where the prices are not of so many parts.
    static std::optional<PriceColumn> open(const std::filesystem::path& path, std::string_view stamp,
                                           std::size_t parts);

    /// `prices` by position. Finished, and not yet in place.
    static SideFileWriter write(std::span<const std::uint32_t> prices, const std::filesystem::path& path,
                                std::string_view stamp);

    /// `unpriced` where there is none.
    std::uint32_t at(std::size_t position) const { return prices_[position]; }

    /// Positions of the `most` cheapest parts of a set, cheapest first; equal prices by rank of id.
    std::vector<std::uint32_t> cheapest(const BitSet& set, const OccupiedBlocks& occupied, std::size_t most,
                                        std::span<const std::uint32_t> ranks) const;

  private:
    std::optional<SideFile> file_;
    std::span<const std::uint32_t> prices_;
    /// A zone is half a block. The search goes through zones by their least price and ends when no zone that is left can
    /// hold a cheaper part.
    std::span<const std::uint32_t> least_of_zone_;
    std::span<const std::uint32_t> zones_cheapest_first_;
};

}  // namespace endbell::inline index
