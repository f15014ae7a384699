#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/model/catalog.hpp"

namespace endbell::inline model {

std::optional<std::int64_t> asked_price(const std::optional<Money>& price,
                                        const std::optional<Money>& core_credit) {
    if (!price) return std::nullopt;
    const std::int64_t credit = core_credit ? core_credit->minor() : 0;
    return std::clamp<std::int64_t>(price->minor() - credit, 0, 0xFFFFFFFE);
}

std::optional<std::int64_t> least_price(const std::vector<Offer>& offers) {
    std::optional<std::int64_t> least;
    for (const Offer& offer : offers) {
        const std::optional<std::int64_t> price = asked_price(offer.price, offer.core_credit);
        if (price && (!least || *price < *least)) least = price;
    }
    return least;
}

void Catalog::each_least_price(const std::function<void(std::string_view, std::int64_t)>& visit) const {
    each_part([&](const Part& part) {
        if (const auto price = least_price(offers(part.id))) visit(part.id, *price);
    });
}

std::vector<Part> Catalog::modules_of(std::string_view program) const {
    std::vector<Part> found;
    each_part([&](const Part& p) {
        const bool same =
            p.module && p.module->program && number_key(*p.module->program) == number_key(program);
        if (same) found.push_back(p);
    });
    return found;
}

void PlainCatalog::each_part(const std::function<void(const Part&)>& visit) const {
    std::vector<const Part*> order;
    for (const Part& p : parts_list) order.push_back(&p);
    std::sort(order.begin(), order.end(), [](const Part* a, const Part* b) { return a->id < b->id; });
    for (const Part* p : order) visit(*p);
}

std::optional<Part> PlainCatalog::part(std::string_view id) const {
    for (const Part& p : parts_list) {
        if (p.id == id) return p;
    }
    return std::nullopt;
}

std::vector<Offer> PlainCatalog::offers(std::string_view part_id) const {
    std::vector<Offer> found;
    for (const Offer& o : offer_list) {
        if (o.part_id == part_id) found.push_back(o);
    }
    std::sort(found.begin(), found.end(), [](const Offer& a, const Offer& b) {
        return a.branch != b.branch ? a.branch < b.branch : a.seller < b.seller;
    });
    return found;
}

std::vector<CrossReference> PlainCatalog::references(std::string_view old_number) const {
    std::vector<CrossReference> found;
    for (const CrossReference& r : reference_list) {
        if (number_key(r.old_number) == number_key(old_number)) found.push_back(r);
    }
    return found;
}

std::optional<LabourTask> PlainCatalog::labour(std::string_view task) const {
    for (const LabourTask& t : labour_list) {
        if (t.id == task) return t;
    }
    return std::nullopt;
}

}  // namespace endbell::inline model
