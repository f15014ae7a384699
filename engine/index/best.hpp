// The best few of many positions, kept while they come by.
#pragma once
#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace endbell {

template <class Better>
class Best {
  public:
    /// At least one is kept.
    Best(std::size_t most, Better better) : most_(most), better_(std::move(better)) {}

    void offer(std::uint32_t position) {
        if (full()) {
            if (!better_(position, worst())) return;
            std::pop_heap(kept_.begin(), kept_.end(), better_);
            kept_.pop_back();
        }
        kept_.push_back(position);
        std::push_heap(kept_.begin(), kept_.end(), better_);
    }
    bool full() const { return kept_.size() == most_; }
    std::uint32_t worst() const { return kept_.front(); }

    /// Best first.
    std::vector<std::uint32_t> take() {
        std::sort_heap(kept_.begin(), kept_.end(), better_);
        return std::move(kept_);
    }

  private:
    std::size_t most_;
    Better better_;
    std::vector<std::uint32_t> kept_;  // a heap: the worst in front
};

}  // namespace endbell
