// The least price of each part as the catalog gives it: by id, before a part has its position in an index.
#pragma once
#include <cstdint>
#include <functional>
#include <string_view>
#include <vector>

#include "engine/base/ids.hpp"
#include "engine/model/catalog.hpp"

namespace endbell::inline index {

/// Stands for a price that nobody states; greater than any price, so that such parts come last.
inline constexpr std::uint32_t unpriced = 0xFFFFFFFF;

/// The price that least_price() gives of every part that has one.
class PricesById {
  public:
    /// `look` is called for each; what it throws ends it.
    explicit PricesById(const Catalog& catalog, const std::function<void()>& look = {});
    /// Of parts 0 to `parts` - 1 in ascending order of `id`; `unpriced` where a part has none.
    std::vector<std::uint32_t> of(std::size_t parts,
                                  const std::function<std::string_view(std::size_t)>& id) const;

  private:
    Ids ids_;  // ascending
    std::vector<std::uint32_t> prices_;
};

}  // namespace endbell::inline index
