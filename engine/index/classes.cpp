#include "engine/index/classes.hpp"

#include <algorithm>
#include <numeric>

#include "engine/base/pages.hpp"

namespace endbell::inline index {

std::vector<Number> Numbered::numbers_of(const Numbered& other) {
    std::vector<Number> ours(other.numbers_.size());
    for (const auto& [text, number] : other.numbers_) ours[number] = number_of(text);
    return ours;
}

std::vector<std::string> Numbered::in_order() const {
    std::vector<std::string> all;
    for (const auto& entry : numbers_) all.push_back(entry.first);
    std::sort(all.begin(), all.end());
    return all;
}

std::vector<Number> Numbered::ranks() const {
    const std::vector<std::string> all = in_order();
    std::vector<Number> ranks(all.size());
    for (Number rank = 0; rank < all.size(); ++rank) ranks[numbers_.at(all[rank])] = rank;
    return ranks;
}

void Growing::push_many(std::uint16_t number, std::size_t times) {
    while (times > 0) {
        if (size_ % block == 0) {
            blocks_.push_back(std::make_unique_for_overwrite<std::uint16_t[]>(block));
            bring_in_to_write(blocks_.back().get(), block * sizeof(std::uint16_t));
        }
        const std::size_t room = std::min(times, block - size_ % block);
        std::fill_n(&blocks_.back()[size_ % block], room, number);
        size_ += room;
        times -= room;
    }
}

void ClassNumbers::copy(std::span<const Number> parts, std::vector<Number>& to) const {
    to.resize(parts.size());
    // Two plain loops: the parts lie anywhere, and while one is fetched the next is asked for.
    for (std::size_t i = 0; i < parts.size(); ++i) to[i] = low_[parts[i]];
    if (high_.size() == 0) return;
    for (std::size_t i = 0; i < parts.size(); ++i) to[i] |= Number{high_[parts[i]]} << 16;
}

Number Classes::class_of(const std::u32string& tuple) {
    const auto [entry, fresh] = classes_.try_emplace(tuple, static_cast<Number>(tuples_.size()));
    if (fresh) tuples_.push_back(tuple);
    return entry->second;
}

void Classes::take_other(const std::vector<Number>& numbers) {
    key_.clear();
    for (const int f : *fields_) key_.push_back(static_cast<char32_t>(numbers[static_cast<std::size_t>(f)]));
    const Number next = class_of(key_);
    if (next == now_) return;
    settle();
    now_ = next;
}

void Classes::settle() {
    of_part_.push_back(now_, alike_);
    alike_ = 0;
}

void Classes::append(Classes& later, const std::vector<std::vector<Number>>& ours) {
    settle();
    later.settle();
    std::vector<Number> classes;
    for (std::u32string tuple : later.tuples_) {
        for (std::size_t f = 0; f < fields_->size(); ++f)
            tuple[f] = static_cast<char32_t>(ours[static_cast<std::size_t>((*fields_)[f])][tuple[f]]);
        classes.push_back(class_of(tuple));
    }
    for (std::size_t came = 0; came < later.of_part_.size(); ++came)
        of_part_.push_back(classes[later.of_part_[came]]);
}

void Classes::put_in_order(const std::vector<std::vector<Number>>& ranks) {
    settle();
    for (std::u32string& tuple : tuples_) {
        for (std::size_t f = 0; f < fields_->size(); ++f)
            tuple[f] = static_cast<char32_t>(ranks[static_cast<std::size_t>((*fields_)[f])][tuple[f]]);
    }
    std::vector<Number> order(tuples_.size());
    std::iota(order.begin(), order.end(), Number{0});
    std::sort(order.begin(), order.end(), [&](Number a, Number b) { return tuples_[a] < tuples_[b]; });
    std::vector<Number> places(order.size());
    for (Number place = 0; place < order.size(); ++place) places[order[place]] = place;
    std::vector<std::u32string> sorted(tuples_.size());
    for (Number c = 0; c < places.size(); ++c) sorted[places[c]] = std::move(tuples_[c]);
    tuples_ = std::move(sorted);
    for (std::size_t came = 0; came < of_part_.size(); ++came) of_part_.set(came, places[of_part_[came]]);
}

}  // namespace endbell::inline index
