#include "engine/index/class_numbers.hpp"

#include <algorithm>

#include "engine/base/pages.hpp"

namespace endbell::inline index {

void ChunkedArray::push_many(std::uint16_t number, std::size_t times) {
    while (times > 0) {
        if (size_ % chunk == 0) {
            chunks_.push_back(std::make_unique_for_overwrite<std::uint16_t[]>(chunk));
            bring_in_to_write(chunks_.back().get(), chunk * sizeof(std::uint16_t));
        }
        const std::size_t room = std::min(times, chunk - size_ % chunk);
        std::fill_n(&chunks_.back()[size_ % chunk], room, number);
        size_ += room;
        times -= room;
    }
}

void ClassNumbers::copy(std::span<const std::uint32_t> parts, std::vector<std::uint32_t>& to) const {
    to.resize(parts.size());
    // Two plain loops: the parts lie anywhere, and while one is fetched the next is asked for.
    for (std::size_t i = 0; i < parts.size(); ++i) to[i] = low_[parts[i]];
    if (high_.size() == 0) return;
    for (std::size_t i = 0; i < parts.size(); ++i) to[i] |= std::uint32_t{high_[parts[i]]} << 16;
}

}  // namespace endbell::inline index
