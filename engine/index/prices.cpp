#include "engine/index/prices.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>

#include "engine/index/best.hpp"

namespace endbell::inline index {

namespace {

constexpr std::size_t block_words = 64;
constexpr std::size_t block_parts = block_words * 64;
static_assert(stretch_words % block_words == 0, "a block lies in one stretch");

/// Of a whole block: most hold none of a set's parts, and a loop of known length tells it quickly.
bool any_in_block(const Word64* set) {
    Word64 any = 0;
    for (std::size_t w = 0; w < block_words; ++w) any |= set[w];
    return any != 0;
}

}  // namespace

LeastPrices::LeastPrices(const Catalog& catalog, const std::function<void()>& look) {
    catalog.each_least_price([&](std::string_view part_id, std::int64_t price) {
        if (look) look();
        ids_.push_back(part_id);
        prices_.push_back(static_cast<std::uint32_t>(price));
    });
}

std::vector<std::uint32_t> LeastPrices::of(std::size_t parts,
                                           const std::function<std::string_view(std::size_t)>& id) const {
    std::vector<std::uint32_t> prices(parts, unpriced);
    std::size_t next = 0;
    for (std::size_t i = 0; i < ids_.size(); ++i) {
        while (next < parts && id(next) < ids_[i]) ++next;
        if (next < parts && id(next) == ids_[i]) prices[next] = prices_[i];
    }
    return prices;
}

std::optional<Prices> Prices::open(const std::filesystem::path& path, std::string_view stamp,
                                   std::size_t parts) {
    Prices all;
    all.file_ = SideFile::open(path, stamp);
    if (!all.file_ || all.file_->sections() != 3) return std::nullopt;
    all.prices_ = all.file_->numbers<std::uint32_t>(0);
    all.least_ = all.file_->numbers<std::uint32_t>(1);
    all.order_ = all.file_->numbers<std::uint32_t>(2);
    const std::size_t blocks = (parts + block_parts - 1) / block_parts;
    if (all.prices_.size() != parts || all.least_.size() != blocks || all.order_.size() != blocks)
        return std::nullopt;
    const auto beyond = [&](std::uint32_t block) { return block >= blocks; };
    if (std::any_of(all.order_.begin(), all.order_.end(), beyond)) return std::nullopt;
    return all;
}

SideFileWriter Prices::write(std::span<const std::uint32_t> prices, const std::filesystem::path& path,
                             std::string_view stamp) {
    std::vector<std::uint32_t> least;
    for (std::size_t first = 0; first < prices.size(); first += block_parts) {
        const auto begin = prices.begin() + static_cast<std::ptrdiff_t>(first);
        const auto size = static_cast<std::ptrdiff_t>(std::min(block_parts, prices.size() - first));
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

std::vector<std::uint32_t> Prices::cheapest(const BitSet& set, const Lives& lives, std::size_t most,
                                            std::span<const std::uint32_t> ranks) const {
    if (most == 0) return {};
    const auto cheaper = [&](std::uint32_t a, std::uint32_t b) {
        return std::tie(prices_[a], ranks[a]) < std::tie(prices_[b], ranks[b]);
    };
    Best<std::uint32_t, decltype(cheaper)> best(most, cheaper);
    const std::size_t words = words_for(prices_.size());
    for (const std::uint32_t block : order_) {
        if (best.full() && least_[block] > prices_[best.worst()]) break;
        if (!lives[block * block_words / stretch_words]) continue;
        const std::size_t begin = block * block_words;
        const std::size_t end = std::min(words, begin + block_words);
        if (end - begin == block_words && !any_in_block(set.data() + begin)) continue;
        for (std::size_t w = begin; w < end; ++w)
            each_bit(set[w], w,
                     [&](std::size_t position) { best.offer(static_cast<std::uint32_t>(position)); });
    }
    return best.take();
}

}  // namespace endbell::inline index
