#include "engine/index/prices_by_id.hpp"

namespace endbell::inline index {

PricesById::PricesById(const Catalog& catalog, const std::function<void()>& look) {
    catalog.each_least_price([&](std::string_view part_id, std::int64_t price) {
        if (look) look();
        ids_.push_back(part_id);
        prices_.push_back(static_cast<std::uint32_t>(price));
    });
}

std::vector<std::uint32_t> PricesById::of(std::size_t parts,
                                          const std::function<std::string_view(std::size_t)>& id) const {
    std::vector<std::uint32_t> prices(parts, unpriced);
    std::size_t next = 0;
    for (std::size_t i = 0; i < ids_.size(); ++i) {
        while (next < parts && id(next) < ids_[i]) ++next;
        if (next < parts && id(next) == ids_[i]) prices[next] = prices_[i];
    }
    return prices;
}

}  // namespace endbell::inline index
