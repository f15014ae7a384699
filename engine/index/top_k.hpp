// The k best of many, kept in a heap while they come by.
#pragma once
#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace endbell::inline index {

template <class Item, class Better>
class TopK {
  public:
    /// REQUIRES: k > 0, where anything is offered.
    explicit TopK(std::size_t k, Better better = {}) : k_(k), better_(std::move(better)) {}

    void offer(const Item& item) {
        if (full()) {
            if (!better_(item, worst())) return;
            std::pop_heap(kept_.begin(), kept_.end(), better_);
            kept_.pop_back();
        }
        kept_.push_back(item);
        std::push_heap(kept_.begin(), kept_.end(), better_);
    }
    bool full() const { return kept_.size() == k_; }
    /// REQUIRES: full.
    const Item& worst() const { return kept_.front(); }

    /// Best first.
    std::vector<Item> take() {
        std::sort_heap(kept_.begin(), kept_.end(), better_);
        return std::move(kept_);
    }

  private:
    std::size_t k_;
    Better better_;
    std::vector<Item> kept_;  // a heap: the worst in front
};

}  // namespace endbell::inline index
