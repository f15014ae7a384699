// The best few of many, kept while they come by.
#pragma once
#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace endbell::inline index {

template <class Item, class Better>
class Best {
  public:
    /// At least one is kept.
    explicit Best(std::size_t most, Better better = {}) : most_(most), better_(std::move(better)) {}

    void offer(const Item& item) {
        if (full()) {
            if (!better_(item, worst())) return;
            std::pop_heap(kept_.begin(), kept_.end(), better_);
            kept_.pop_back();
        }
        kept_.push_back(item);
        std::push_heap(kept_.begin(), kept_.end(), better_);
    }
    bool full() const { return kept_.size() == most_; }
    const Item& worst() const { return kept_.front(); }

    /// Best first.
    std::vector<Item> take() {
        std::sort_heap(kept_.begin(), kept_.end(), better_);
        return std::move(kept_);
    }

  private:
    std::size_t most_;
    Better better_;
    std::vector<Item> kept_;  // a heap: the worst in front
};

}  // namespace endbell::inline index
