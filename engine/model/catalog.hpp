// The catalog as the engine sees it: parts, offers and hours behind an interface, so that the store or a test can stand
// there. The limits in force and an index go beside it.
#pragma once
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/part.hpp"

namespace endbell::inline model {

/// A price less its core credit, in whatever currency: whole minor units from 0 to 4,294,967,294. Empty without a price.
std::optional<std::int64_t> asked_price(const std::optional<Money>& price,
                                        const std::optional<Money>& core_credit);
/// The lowest that anybody asks: no total can be lower. Empty when nobody states a price.
std::optional<std::int64_t> least_price(const std::vector<Offer>& offers);

/// A piece of work and its hours, from the shop's own table. Hours in thousandths: no floating point in a
/// total.
struct LabourTask {
    std::string id;  // "motor swap", "shaft cut"
    int thousandth_hours = 0;
    std::string source;
};

/// Ids from one on, and below another: an empty end is open.
struct IdRange {
    std::string from, below;
    bool holds(std::string_view id) const { return id >= from && (below.empty() || id < below); }
};

class Catalog {
  public:
    virtual ~Catalog() = default;

    /// Every part, ascending by id. `visit` must not call back into the catalog's writers.
    virtual void each_part(const std::function<void(const Part&)>& visit) const = 0;
    /// Every motor and module of the range, ascending by id, as far as rules look at parts. A store may leave out the rest.
    virtual void each_part_to_match(const IdRange& range,
                                    const std::function<void(const Part&)>& visit) const {
        each_part([&](const Part& p) {
            if (p.kind != PartKind::accessory && range.holds(p.id)) visit(p);
        });
    }
    virtual std::optional<Part> part(std::string_view id) const = 0;
    /// Every accessory that cures something, ascending by id. A store may answer it without reading the motors.
    virtual void each_accessory(const std::function<void(const Part&)>& visit) const {
        each_part([&](const Part& p) {
            if (p.kind == PartKind::accessory) visit(p);
        });
    }
    /// Every module of this program, letters and digits alone, ascending by id. A store may answer it without reading the
    /// motors.
    virtual std::vector<Part> modules_of(std::string_view program) const;
    /// least_price() of each part that has one, ascending by id. A store may answer it without reading the parts.
    virtual void each_least_price(const std::function<void(std::string_view, std::int64_t)>& visit) const;
    /// All offers of one part, ascending by (branch, seller).
    virtual std::vector<Offer> offers(std::string_view part_id) const = 0;
    /// Cross references whose old number has the same letters and digits.
    virtual std::vector<CrossReference> references(std::string_view old_number) const = 0;
    virtual std::optional<LabourTask> labour(std::string_view task) const = 0;
    /// Names this state of the catalog on every sheet: "generation 3, digest 0123456789abcdef".
    virtual std::string stamp() const = 0;
};

/// A catalog of plain vectors: for tests, and the naive picture of what the store must equal.
class PlainCatalog : public Catalog {
  public:
    std::vector<Part> parts_list;
    std::vector<Offer> offer_list;
    std::vector<CrossReference> reference_list;
    std::vector<LabourTask> labour_list;

    void each_part(const std::function<void(const Part&)>& visit) const override;
    std::optional<Part> part(std::string_view id) const override;
    std::vector<Offer> offers(std::string_view part_id) const override;
    std::vector<CrossReference> references(std::string_view old_number) const override;
    std::optional<LabourTask> labour(std::string_view task) const override;
    std::string stamp() const override { return "plain"; }
};

}  // namespace endbell::inline model
