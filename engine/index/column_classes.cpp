#include "engine/index/column_classes.hpp"

#include <algorithm>
#include <numeric>

namespace endbell::inline index {

Code ColumnClasses::class_of(const std::u32string& tuple) {
    const auto [entry, fresh] = classes_.try_emplace(tuple, static_cast<Code>(tuples_.size()));
    if (fresh) tuples_.push_back(tuple);
    return entry->second;
}

void ColumnClasses::take_other(const std::vector<Code>& codes) {
    key_.clear();
    for (const int f : *fields_) key_.push_back(static_cast<char32_t>(codes[static_cast<std::size_t>(f)]));
    const Code next = class_of(key_);
    if (next == now_) return;
    settle();
    now_ = next;
}

void ColumnClasses::settle() {
    of_part_.push_back(now_, run_);
    run_ = 0;
}

void ColumnClasses::append(ColumnClasses& later, const std::vector<std::vector<Code>>& ours) {
    settle();
    later.settle();
    std::vector<Code> classes;
    for (std::u32string tuple : later.tuples_) {
        for (std::size_t f = 0; f < fields_->size(); ++f)
            tuple[f] = static_cast<char32_t>(ours[static_cast<std::size_t>((*fields_)[f])][tuple[f]]);
        classes.push_back(class_of(tuple));
    }
    for (std::size_t row = 0; row < later.of_part_.size(); ++row)
        of_part_.push_back(classes[later.of_part_[row]]);
}

void ColumnClasses::put_in_order(const std::vector<std::vector<Code>>& ranks) {
    settle();
    for (std::u32string& tuple : tuples_) {
        for (std::size_t f = 0; f < fields_->size(); ++f)
            tuple[f] = static_cast<char32_t>(ranks[static_cast<std::size_t>((*fields_)[f])][tuple[f]]);
    }
    std::vector<Code> order(tuples_.size());
    std::iota(order.begin(), order.end(), Code{0});
    std::sort(order.begin(), order.end(), [&](Code a, Code b) { return tuples_[a] < tuples_[b]; });
    std::vector<Code> places(order.size());
    for (Code place = 0; place < order.size(); ++place) places[order[place]] = place;
    std::vector<std::u32string> sorted(tuples_.size());
    for (Code c = 0; c < places.size(); ++c) sorted[places[c]] = std::move(tuples_[c]);
    tuples_ = std::move(sorted);
    for (std::size_t row = 0; row < of_part_.size(); ++row) of_part_.set(row, places[of_part_[row]]);
}

}  // namespace endbell::inline index
