// engine/kit: the cheapest set of accessories and work that cures everything curable about one candidate.
#pragma once
#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/match/match.hpp"
#include "engine/model/task.hpp"
#include "engine/units/money.hpp"

namespace endbell::inline kit {

/// Something bought for the kit, and which remedies (indices into KitChoice::remedies) it puts right.
struct KitPart {
    std::string part_id;
    std::optional<Offer> offer;  // the offer it is priced from; none: price unknown
    std::vector<int> cures;
    int count = 1;  // how many are bought: relays and bushings are counted, any other part cures all at once
};

/// Work depends on the remedy, not on the part that cures it: every kit for a candidate has the same work.
struct KitWork {
    ShopTask task;
    int thousandth_hours = 0;  // of all of it: the task's hours times `count`
    std::vector<int> cures;
    bool hours_known = true;  // false: the shop's table has no such task
    std::string source;       // of the hours
    int count = 1;            // how often the task is done
};

/// The first of these in which a kit is worse than the chosen one: no two kits have the same parts.
enum class LostOn { no_price, price, lead_time, added_parts, part_id };
constexpr auto words_of(LostOn) {
    return std::array{Word<LostOn>{LostOn::no_price, "no price"}, Word<LostOn>{LostOn::price, "price"},
                      Word<LostOn>{LostOn::lead_time, "lead time"},
                      Word<LostOn>{LostOn::added_parts, "added parts"},
                      Word<LostOn>{LostOn::part_id, "part id"}};
}

/// A kit that would also do, and the one line on which it lost: the best kit without one chosen part.
struct RunnerUp {
    std::vector<std::string> part_ids;  // as often as it is bought
    std::optional<Money> parts_total;
    LostOn lost_on = LostOn::part_id;
};

struct KitChoice {
    std::vector<Remedy> remedies;  // from the candidate's findings, in rule order, each once
    std::vector<KitPart> parts;    // ascending part id
    std::vector<KitWork> work;     // in the order of the remedies
    std::vector<int> uncured;      // remedies that nothing in this catalog cures
    std::vector<int>
        not_shown;              // remedies, or their only parts, with a size missing: may be cured, not shown
    std::vector<int> barred;    // of `uncured`: only the shop's policy stands in the way
    std::vector<int> excluded;  // of `uncured`: curable alone, but its parts exclude the others'
    std::optional<Money> parts_total;   // absent when a price is missing; cost before markup
    std::optional<Money> labour_total;  // of the work above; absent without a labour rate or an hour figure
    int longest_lead_days = 0;
    bool lead_known = true;
    std::vector<RunnerUp> runners_up;  // best first
    bool complete() const { return uncured.empty() && not_shown.empty(); }
};

/// Where to buy and what counts: the shop's policy as the job and catalog state it.
struct Policy {
    std::string branch;
    std::optional<Date> as_of;  // none: price age cannot be judged
    Currency currency;
    std::optional<Money> labour_rate;  // per hour
    std::vector<std::string> prefer_makers;
    std::vector<std::string> exclude_makers;
    std::optional<int> longest_lead_days;
    bool in_stock_only = false;
    friend bool operator==(const Policy&, const Policy&) = default;
};
/// The currency is shop.currency, else that of the labour rate, else US dollars.
Policy policy_of(const FailedUnit& job);

/// The offer a shop would buy from: own branch in stock first, then a price in the shop's currency, the lower
/// one, lead, seller, branch. Offers that the policy bars are passed over; none left: nothing.
std::optional<Offer> best_offer(const std::vector<Offer>& offers, const Policy& policy);

/// In stock at the shop's own branch; at any branch where the shop names none.
bool at_hand(const Offer& offer, const Policy& policy);
/// Days until the part is there; 0 when at hand; empty when the offer does not say.
std::optional<int> lead_of(const Offer& offer, const Policy& policy);
/// The offer's price where it is one in the shop's currency and not negative.
std::optional<Money> price_of(const std::optional<Offer>& offer, const Policy& policy);
bool is_excluded_maker(std::string_view maker, const Policy& policy);

/// The limits of sizes: looked up once, compared with by the hundred.
struct SizeLimits {
    SizeLimits(const Limits& limits);  // any Limits will do where these are asked for
    Length bore;                       // shaft.bore_clearance
    Length body;                       // body.band
    Length bolt_circle;                // bolt_circle.match
    ApparentPower class2;              // class2.power
};

/// The accessories of a catalog with the offer a shop would take for each: read once, used for every
/// candidate. Holds on to the catalog for hours of work; must not outlive it.
class KitShelf {
  public:
    KitShelf(const Books& books, Policy policy);

    struct Item {
        Part part;
        std::optional<Offer> offer;
        bool barred = false;       // a maker the shop excludes, or no offer that its policy allows
        std::vector<int> clashes;  // items it cannot stand beside, whichever of the two says so; ascending
        std::optional<std::int64_t> price;  // price_of() the offer, in minor units
        std::optional<int> lead;            // lead_of() the offer
        bool gone() const;                  // no longer made, and in nobody's stock
    };
    const std::vector<Item>& items() const { return items_; }  // ascending id

    /// A row of an item's accessory.
    struct Row {
        int item;
        std::size_t number;
    };
    /// The rows for this cure, ascending.
    const std::vector<Row>& curing(Cure cure) const;
    /// A part with the offer that the policy takes for it.
    static Item item_of(Part part, const Catalog& catalog, const Policy& policy);
    const Policy& policy() const { return policy_; }
    const SizeLimits& size_limits() const { return size_limits_; }
    std::optional<LabourTask> labour(ShopTask task) const { return catalog_.labour(word(task)); }

  private:
    const Catalog& catalog_;
    Policy policy_;
    SizeLimits size_limits_;
    std::vector<Item> items_;
    std::map<Cure, std::vector<Row>> by_cure_;

    friend bool may_be_cured(const Remedy& remedy, const KitShelf& shelf);
    /// Remedies that were looked at, and whether anything cures them: most candidates ask for the same few.
    mutable std::vector<std::pair<Remedy, bool>> looked_at_;
};

/// A module that may go with a motor half, and what the rules and its own list of motors say of it there.
struct ModuleBeside {
    KitShelf::Item item;
    Verdict verdict = Verdict::not_shown;
};
/// The modules of the program that the half's remedy names, ascending by id; none where it needs none. Every rule but the one
/// that asks which half failed must pass; and the module lists the half, or its power is the half's.
std::vector<ModuleBeside> modules_beside(const Query& query, const Candidate& half, const Books& books,
                                         const Policy& policy);
/// The module to buy: the best of those that fit and that the policy allows, by (price, lead, id). Null: none does.
const ModuleBeside* best_module(const std::vector<ModuleBeside>& modules);

/// Exact: proven best by (parts without a price, total of parts and work, longest lead, number of parts,
/// ids). A module goes with its motor half whatever else is bought: the cheapest is that of every best kit.
KitChoice choose_kit(const Candidate& candidate, const KitShelf& shelf,
                     const std::vector<ModuleBeside>& modules = {});
KitChoice choose_kit(const Candidate& candidate, const Books& books, const Policy& policy);

/// False where nothing on the shelf cures it: no kit that needs it is whole. Not for relays: how many there must be is
/// the wiring's to say.
bool may_be_cured(const Remedy& remedy, const KitShelf& shelf);
/// All of them.
bool may_be_cured(const std::vector<Remedy>& remedies, const KitShelf& shelf);

/// Does this row put the remedy right? `not_shown`: a size that decides is not stated by the row or the
/// remedy. A bushing slips over the shaft and into the bore within limit shaft.bore_clearance; other sizes agree within
/// it (shields), within body.band (bands, rings, adapters between mounts) or within bolt_circle.match (adapters between
/// bolt circles).
Verdict cures(const CureRow& row, const Remedy& remedy, const SizeLimits& limits);

}  // namespace endbell::inline kit
