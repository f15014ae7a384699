// Part ids by the million.
#pragma once
#include <cstddef>
#include <string_view>
#include <vector>

#include "engine/base/ensure.hpp"
#include "engine/base/texts.hpp"

namespace endbell::inline base {

/// Ids as a catalog gives them, which is ascending: the order of two is that of their places.
class Ids {
  public:
    void push_back(std::string_view id) {
        ensure(size() == 0 || (*this)[size() - 1] < id, "a catalog gives its parts by ascending id");
        places_.push_back(texts_.keep(id));
    }
    std::string_view operator[](std::size_t i) const { return texts_[places_[i]]; }
    std::size_t size() const { return places_.size(); }

  private:
    Texts texts_;
    std::vector<Texts::Offset> places_;
};

}  // namespace endbell::inline base
