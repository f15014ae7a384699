// engine/cost: each way out as cash flows: today's total to the cent, and its cost a year over its own life. Rounding:
// every line is rounded once, half away from zero, when it is formed; tax is one line, rounded once over the whole
// invoice. Totals are sums of lines: no floating point enters them.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/airflow/air_plan.hpp"
#include "engine/cost/kinds.hpp"
#include "engine/diagnosis/diagnosis.hpp"
#include "engine/kit/kit.hpp"
#include "engine/kit/repair.hpp"

namespace endbell::inline cost {

/// Which offer a price is from.
struct OfferName {
    std::string branch, seller;
    std::optional<Date> as_of;
};

/// One line of a quote.
struct CostLine {
    LineKind kind = LineKind::part;
    std::string part_id;                // of a part or its core credit
    std::optional<ShopTask> task;       // of labour
    Money amount;                       // what the customer pays, for all of it
    std::string source;                 // the job key or keys that it comes of: "shop.labour_rate"
    std::optional<OfferName> offer;     // of a part and its core credit, which come of no key
    bool stale = false;                 // older than limit price.age, or of no known date
    std::optional<Money> cost;          // of one part: what the shop pays
    std::optional<PricedBy> priced_by;  // of a part
    Share share;                        // the markup or margin
    int thousandth_hours = 0;           // of labour, all of it
    int count = 1;                      // parts of one kind; each one's price is rounded, then counted

    /// Part id or task; empty of any other line.
    std::string_view subject() const { return task ? word(*task) : std::string_view(part_id); }
};

/// What one call's tap draws in a year.
struct EnergyLine {
    Call call = Call::circulate;
    int tap = 0;  // 0: the old motor as it ran
    Power draws;
    Duration runs;  // a year
    bool hours_assumed =
        false;  // not from the job: 10 CFR 430 App. AA (from memory), or two stages shared equally
};

/// This option beside the one that is cheapest today, over the shorter of the two lives (whole years),
/// without residual value. Savings are energy and expected recurrence.
struct Comparison {
    Period over;                               // whole years
    double extra_first_cost = 0;               // minor units; negative: the option is also cheaper today
    double saving_per_year = 0;                // minor units, first year
    double net_saving = 0;                     // present value, minor units
    std::optional<Period> simple_payback;      // absent when nothing is saved
    std::optional<Period> discounted_payback;  // absent when the saving never pays the extra
    std::optional<double> savings_to_investment;
    std::optional<double> adjusted_return;  // a year
    /// Where the order of the two costs a year turns over: the value of one input with all others held.
    std::optional<Money> flips_at_electricity;  // per 100 kWh
    std::optional<double> flips_at_hours;       // factor on every call's hours
    std::optional<Period> flips_at_life;        // this option's
};

struct CostOption {
    WayOut way = WayOut::motor;
    std::string part_id;  // empty where no part is bought
    std::vector<CostLine> lines;
    std::optional<Money> so_far;     // the sum of the lines that are known; absent when none is
    std::optional<Money> today;      // absent when `lacking` is not empty
    std::optional<int> lead_days;    // until everything is there
    std::optional<Date> good_until;  // the last day on which no price is older than limit price.age
    std::vector<EnergyLine> energy_lines;
    std::optional<Energy> energy_per_year;
    std::optional<Money> energy_cost;  // a year, at today's price
    Period life;  // nothing where it is not known; ends with the equipment where that is known to end first
    std::string life_source;         // id of a Source; lives are common practice unless it says otherwise
    std::vector<Cause> causes_left;  // root causes that this way does not cure
    /// Expected a year for losing the motor again: while a root cause stays, and with all of them cured.
    std::optional<Money> recurrence_uncured;
    std::optional<Money> recurrence_cured;
    std::optional<Money> per_year;  // equivalent annual cost over its own life, expected recurrence in it
    std::optional<Comparison> against_cheapest;
    std::optional<int> warranty_months;
    std::vector<std::string> lacking;  // job keys, "offers PART" or "labour TASK": the questions
    std::vector<Loss> loses;           // cause_stays: see price_options
    std::vector<NotCounted> not_counted;
};

/// What curing the root cause would cost, where no option has it among its lines.
struct CureCost {
    std::vector<CostLine> lines;
    std::optional<Money> total;        // labour only, before tax; absent when `lacking` is not empty
    std::vector<std::string> lacking;  // "labour TASK", "shop.labour_rate"
    std::vector<Cause> causes;         // root causes for which no task is known: not priced
};

struct Ledger {
    std::vector<CostOption>
        options;  // keep and repair first, then the candidates in their own order, then equipment
    bool repairs_only = false;          // the motor is not at fault: only a way that keeps it can be cheapest
    std::optional<int> cheapest_today;  // index into options; absent when no total is known
    std::optional<int>
        cheapest_per_year;  // absent too when energy is known for some options and not for others
    CureCost cure;
    std::optional<RateKind> rate_kind;  // none where the job states rates that exclude each other
    double discount_rate = 0;
    std::string rate_source;           // a job key or the id of a Source
    std::vector<std::string> lacking;  // job keys without which nothing can be put on a yearly footing
};

/// One candidate with what the stages before found.
struct PricedCandidate {
    Candidate candidate;
    KitChoice kit;
    std::optional<Offer> offer;
    AirPlan air;
};

/// Today's bill of one candidate: way, lines, totals and lead time; nothing of later years.
CostOption price_today(const FailedUnit& job, const Facts& facts, const Candidate& candidate,
                       const KitChoice& kit, const std::optional<Offer>& offer, const Books& books,
                       const Policy& policy);

/// What a part of this price comes to today at the least: the part alone, at hand, with the lightest swap. No
/// candidate whose least_price() is this or more comes to less, in `today` or in `so_far`.
CostOption least_today(const FailedUnit& job, const Money& price, const Books& books, const Policy& policy);

/// What a part that is alike to others comes to today at the least by this offer: at hand, with the work that all of
/// them ask for and without the parts of a kit. No such candidate with a whole kit and this offer, or a dearer one,
/// comes to less, in `today` or in `so_far`.
CostOption least_today(const FailedUnit& job, const Facts& facts, const Offer& offer, const Alike& alike,
                       const Books& books, const Policy& policy);
/// An offer of which only the price is known.
Offer offer_at(const Money& price, const Policy& policy);

/// A way that leaves a root cause, or the fault itself, as it is loses cause_stays, and its cost a year carries
/// the expected recurrence of a stayed cause. Where nothing should be replaced, such a way is shown for
/// comparison and is never the cheapest. `repair`: what is bought there instead (repair_of), where anything is.
Ledger price_options(const FailedUnit& job, const Facts& facts, const Diagnosis& diagnosis,
                     const std::vector<PricedCandidate>& candidates, const std::optional<Repair>& repair,
                     const Books& books, const Policy& policy);

}  // namespace endbell::inline cost
