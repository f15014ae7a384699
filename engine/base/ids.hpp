// Part ids by the million.
#pragma once
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/check.hpp"

namespace endbell {

/// Ids as a catalog gives them, which is ascending: the order of two is that of their places.
class Ids {
  public:
    void push_back(std::string_view id) {
        check(size() == 0 || (*this)[size() - 1] < id, "a catalog gives its parts by ascending id");
        all_ += id;
        check(all_.size() <= UINT32_MAX, "ids begin within 32 bits");
        starts_.push_back(static_cast<std::uint32_t>(all_.size()));
    }
    std::string_view operator[](std::size_t i) const {
        return std::string_view(all_).substr(starts_[i], starts_[i + 1] - starts_[i]);
    }
    std::size_t size() const { return starts_.size() - 1; }

  private:
    std::string all_;
    std::vector<std::uint32_t> starts_{0};
};

}  // namespace endbell
