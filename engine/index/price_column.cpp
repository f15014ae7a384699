#include "engine/index/price_column.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>

#include "engine/index/top_k.hpp"

namespace endbell::inline index {

namespace {

constexpr std::size_t zone_words = 64;
constexpr std::size_t zone_parts = zone_words * 64;
static_assert(block_words % zone_words == 0, "a zone lies in one block");

/// Of a whole zone: most hold none of a set's parts, and a loop of known length tells it quickly.
bool any_in_zone(const Word64* set) {
    Word64 any = 0;
    for (std::size_t w = 0; w < zone_words; ++w) any |= set[w];
    return any != 0;
}

}  // namespace

std::optional<PriceColumn> PriceColumn::open(const std::filesystem::path& path, std::string_view stamp,
                                             std::size_t parts) {
    PriceColumn all;
    all.file_ = SideFile::open(path, stamp);
    if (!all.file_ || all.file_->sections() != 3) return std::nullopt;
    all.prices_ = all.file_->numbers<std::uint32_t>(0);
    all.least_of_zone_ = all.file_->numbers<std::uint32_t>(1);
    all.zones_cheapest_first_ = all.file_->numbers<std::uint32_t>(2);
    const std::size_t zones = (parts + zone_parts - 1) / zone_parts;
    if (all.prices_.size() != parts || all.least_of_zone_.size() != zones ||
        all.zones_cheapest_first_.size() != zones)
        return std::nullopt;
    const auto beyond = [&](std::uint32_t zone) { return zone >= zones; };
    if (std::any_of(all.zones_cheapest_first_.begin(), all.zones_cheapest_first_.end(), beyond))
        return std::nullopt;
    return all;
}

SideFileWriter PriceColumn::write(std::span<const std::uint32_t> prices, const std::filesystem::path& path,
                                  std::string_view stamp) {
    std::vector<std::uint32_t> least;
    for (std::size_t first = 0; first < prices.size(); first += zone_parts) {
        const auto begin = prices.begin() + static_cast<std::ptrdiff_t>(first);
        const auto size = static_cast<std::ptrdiff_t>(std::min(zone_parts, prices.size() - first));
        least.push_back(*std::min_element(begin, begin + size));
    }
    std::vector<std::uint32_t> order(least.size());
    std::iota(order.begin(), order.end(), 0u);
    std::stable_sort(order.begin(), order.end(),
                     [&](std::uint32_t a, std::uint32_t b) { return least[a] < least[b]; });

    SideFileWriter file(path, stamp, 3);
    file.begin();
    file.append(prices.data(), prices.size_bytes());
    file.section(least);
    file.section(order);
    file.finish();
    return file;
}

std::vector<std::uint32_t> PriceColumn::cheapest(const BitSet& set, const OccupiedBlocks& occupied,
                                                 std::size_t most,
                                                 std::span<const std::uint32_t> ranks) const {
    if (most == 0) return {};
    const auto cheaper = [&](std::uint32_t a, std::uint32_t b) {
        return std::tie(prices_[a], ranks[a]) < std::tie(prices_[b], ranks[b]);
    };
    TopK<std::uint32_t, decltype(cheaper)> best(most, cheaper);
    const std::size_t words = words_for(prices_.size());
    for (const std::uint32_t zone : zones_cheapest_first_) {
        if (best.full() && least_of_zone_[zone] > prices_[best.worst()]) break;
        if (!occupied[zone * zone_words / block_words]) continue;
        const std::size_t begin = zone * zone_words;
        const std::size_t end = std::min(words, begin + zone_words);
        if (end - begin == zone_words && !any_in_zone(set.data() + begin)) continue;
        for (std::size_t w = begin; w < end; ++w)
            each_bit(set[w], w,
                     [&](std::size_t position) { best.offer(static_cast<std::uint32_t>(position)); });
    }
    return best.take();
}

}  // namespace endbell::inline index
