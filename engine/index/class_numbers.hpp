// The number of its class for each part, while an index is made.
#pragma once
#include <cstddef>
#include <cstdint>
#include <memory>
#include <span>
#include <vector>

namespace endbell::inline index {

/// Numbers of 16 bits by the million, in chunks: they stay where they are while more come.
class ChunkedArray {
  public:
    void push_back(std::uint16_t number, std::size_t times = 1) {
        if (times == 1 && size_ % chunk != 0)
            chunks_.back()[size_++ % chunk] = number;
        else
            push_many(number, times);
    }
    std::uint16_t& operator[](std::size_t i) { return chunks_[i / chunk][i % chunk]; }
    std::uint16_t operator[](std::size_t i) const { return chunks_[i / chunk][i % chunk]; }
    std::size_t size() const { return size_; }

  private:
    void push_many(std::uint16_t number, std::size_t times);

    static constexpr std::size_t chunk = std::size_t{128} * 1024;
    std::vector<std::unique_ptr<std::uint16_t[]>> chunks_;
    std::size_t size_ = 0;
};

/// A column has nearly always few classes, so that the upper halves are kept only from the first number on that needs one.
class ClassNumbers {
  public:
    void push_back(std::uint32_t number, std::size_t times = 1) {
        if (number > low) high_.push_back(0, low_.size() - high_.size());
        if (number > low || high_.size() > 0)
            high_.push_back(static_cast<std::uint16_t>(number >> 16), times);
        low_.push_back(static_cast<std::uint16_t>(number & low), times);
    }
    std::uint32_t operator[](std::size_t i) const {
        return low_[i] | (high_.size() > 0 ? std::uint32_t{high_[i]} << 16 : 0);
    }
    /// Of some parts, in their order.
    void copy(std::span<const std::uint32_t> parts, std::vector<std::uint32_t>& to) const;
    /// REQUIRES: none greater than the greatest that was pushed.
    void set(std::size_t i, std::uint32_t number) {
        low_[i] = static_cast<std::uint16_t>(number & low);
        if (high_.size() > 0) high_[i] = static_cast<std::uint16_t>(number >> 16);
    }
    std::size_t size() const { return low_.size(); }

  private:
    static constexpr std::uint32_t low = 0xFFFF;
    ChunkedArray low_, high_;
};

}  // namespace endbell::inline index
