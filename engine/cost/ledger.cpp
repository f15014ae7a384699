#include "engine/cost/ledger.hpp"

#include <algorithm>
#include <cmath>

#include "engine/base/ensure.hpp"
#include "engine/cost/bill.hpp"
#include "engine/cost/energy.hpp"
#include "engine/cost/lives.hpp"
#include "engine/cost/ways.hpp"
#include "engine/cost/yearly.hpp"

namespace endbell::inline cost {

namespace {

class Pricer {
  public:
    Pricer(const FailedUnit& job, const Facts& facts, const Diagnosis& diagnosis, const Books& books,
           const Policy& policy)
        : job_(job), facts_(facts), diagnosis_(diagnosis), books_(books), policy_(policy) {}

    Ledger run(const std::vector<PricedCandidate>& candidates, const std::optional<Repair>& repair) {
        ledger_.repairs_only = diagnosis_.replace_nothing();
        if (ledger_.repairs_only) add_keeping(candidates, repair);
        for (const PricedCandidate& candidate : candidates) add_candidate(candidate);
        add_equipment();
        price_cure();
        for (CostOption& option : ledger_.options) finish(option);
        put_on_years(job_, ledger_);
        const Reading<Money>& price = job_.shop.electricity;
        if (price && price->currency() != policy_.currency) ledger_.lacking.emplace_back("shop.electricity");
        return std::move(ledger_);
    }

  private:
    // -- the ways out

    /// The motor is not at fault: capacitor, control, or the cause alone is put right.
    void add_keeping(const std::vector<PricedCandidate>& candidates, const std::optional<Repair>& repair) {
        CostOption option;
        Bill bill(job_, books_, policy_);
        std::optional<int> lead = 0;
        if (diagnosis_.fault == Fault::capacitor) {
            option.way = WayOut::capacitor;
            ensure(repair.has_value(), "a capacitor at fault is bought");
            lead = add_repair(bill, option, *repair);
        } else if (repair && repair->complete()) {
            option.way =
                diagnosis_.fault == Fault::control_signal ? WayOut::control_repair : WayOut::keep_and_cure;
            lead = add_repair(bill, option, *repair);
        } else if (diagnosis_.fault == Fault::control_signal) {
            option.way = WayOut::control_repair;
            bill.add_labour(ShopTask::control_repair);
            bill.leaves_out(NotCounted::control_parts);
        } else {
            option.way = WayOut::keep_and_cure;
            add_cures(bill);
        }
        bill.add_visit(lead);
        bill.close(option);
        option.lead_days = lead;
        option.loses.push_back(Loss::warranty);  // the old motor goes on without one
        const Life& part = capacitor_life();
        if (option.way == WayOut::capacitor && part.middle() < half_life()) {
            set_life(option, part.middle(), part.source);
        } else {
            set_life(option, half_life(), "common-practice");
        }
        option.energy_lines = energy_lines_of_old(job_, calls_of(candidates));
        ledger_.options.push_back(std::move(option));
    }

    /// Bought as a kit of one remedy, so that the same policy picks it. Gives the days until it is there.
    static std::optional<int> add_repair(Bill& bill, CostOption& option, const Repair& repair) {
        for (const std::string& key : repair.asks) bill.lacks(key);
        if (!repair.asks.empty()) return std::nullopt;
        if (!repair.complete()) {
            bill.lacks("offers " + std::string(word(repair.cure)));
            return std::nullopt;
        }
        option.part_id = repair.kit.parts.front().part_id;
        bill.add_kit(repair.kit);
        return repair.kit.lead_known ? std::optional<int>(repair.kit.longest_lead_days) : std::nullopt;
    }

    void add_cures(Bill& bill) const {
        std::vector<ShopTask> tasks = cure_tasks(diagnosis_.causes);
        const bool supply = std::find(tasks.begin(), tasks.end(), ShopTask::supply_repair) != tasks.end();
        if (diagnosis_.fault == Fault::supply && !supply)
            tasks.insert(tasks.begin(), ShopTask::supply_repair);
        for (const ShopTask task : tasks) bill.add_labour(task);
        for (const RootCause& root : diagnosis_.causes) {
            if (!cure_task(root.cause)) bill.leaves_out(NotCounted::unpriced_cause);
        }
        if (diagnosis_.fault == Fault::airflow && diagnosis_.causes.empty())
            bill.lacks_hours(ShopTask::duct_repair);
        bill.leaves_out(NotCounted::materials);
    }

    void add_candidate(const PricedCandidate& candidate) {
        const Part& part = candidate.candidate.part;
        CostOption option =
            price_today(job_, facts_, candidate.candidate, candidate.kit, candidate.offer, books_, policy_);
        option.loses = losses(job_, facts_, part);
        option.warranty_months = part.motor    ? part.motor->warranty_months
                                 : part.module ? part.module->warranty_months
                                               : std::nullopt;
        const Life& life =
            option.way == WayOut::module
                ? module_life()
                : motor_life(job_.unit.load.said(), part.motor ? part.motor->family : std::nullopt);
        set_life(option, life.middle(), life.source);
        option.energy_lines = energy_lines(job_, candidate.air);
        ledger_.options.push_back(std::move(option));
    }

    void add_equipment() {
        if (!job_.equipment.replacement_price) return;
        CostOption option;
        option.way = WayOut::equipment;
        Bill bill(job_, books_, policy_);
        bill.add_quote(*job_.equipment.replacement_price, "equipment.replacement_price");
        bill.close(option);
        const Life& life = equipment_life(facts_.heat.kind);
        option.life = life.middle();
        option.life_source = life.source;
        ledger_.options.push_back(std::move(option));
    }

    // -- what holds for all of them

    void set_life(CostOption& option, Period life, std::string_view source) const {
        option.life = life;
        option.life_source = source;
        const Reading<double>& left = job_.equipment.remaining_years;
        if (left && *left > 0 && calendar_year(*left) < life) {
            option.life = calendar_year(*left);
            option.life_source = "equipment.remaining_years";
        }
    }

    /// A motor of unknown age is taken to be half through its life (common practice).
    Period half_life() const { return motor_life(job_.unit.load.said(), facts_.family.value).middle() / 2; }

    static std::vector<Call> calls_of(const std::vector<PricedCandidate>& candidates) {
        for (const PricedCandidate& candidate : candidates) {
            std::vector<Call> calls;
            for (const CallAir& call : candidate.air.calls) calls.push_back(call.call);
            if (!calls.empty()) return calls;
        }
        return {Call::circulate, Call::cool_high, Call::heat_high};
    }

    void price_cure() {
        Bill bill(job_, books_, policy_);
        for (const ShopTask task : cure_tasks(diagnosis_.causes)) bill.add_labour(task);
        for (const RootCause& root : diagnosis_.causes) {
            if (!cure_task(root.cause)) ledger_.cure.causes.push_back(root.cause);
        }
        ledger_.cure.lines = bill.lines();
        ledger_.cure.lacking = bill.lacking();
        if (!bill.lacking().empty()) return;
        ledger_.cure.total = Money(0, policy_.currency);
        for (const CostLine& line : bill.lines()) ledger_.cure.total = *ledger_.cure.total + line.amount;
    }

    void finish(CostOption& option) const {
        const Reading<Money>& price = job_.shop.electricity;
        if (!option.energy_lines.empty()) option.energy_per_year = energy_of(option.energy_lines);
        const bool priced = price && price->currency() == policy_.currency;
        if (option.energy_per_year && priced) {
            option.energy_cost = energy_cost(*option.energy_per_year, *price);
        } else {
            option.not_counted.push_back(NotCounted::energy);
        }
        option.causes_left = causes_left(option, diagnosis_.causes);
        const bool fault_left = ledger_.repairs_only && !is_repair(option.way);
        if (fault_left || !option.causes_left.empty()) option.loses.push_back(Loss::cause_stays);
        if (option.today && option.way != WayOut::equipment) add_recurrence(option);
    }

    /// What losing the motor once more would cost: the same way again; where it was kept, the least of those
    /// that replace it.
    Money cost_of_losing(const CostOption& option) const {
        std::optional<Money> least;
        for (const CostOption& other : ledger_.options) {
            const bool replaces = !is_repair(other.way) && other.way != WayOut::equipment;
            if (replaces && other.today && (!least || *other.today < *least)) least = other.today;
        }
        return is_repair(option.way) && least ? *least : *option.today;
    }

    /// With the root cause's own chance a year; several root causes are not independent, so the largest chance
    /// counts.
    void add_recurrence(CostOption& option) const {
        double uncured = 0;
        double cured = 0;
        for (const RootCause& root : diagnosis_.causes) {
            uncured = std::max(uncured, root.yearly_hazard_uncured);
            cured = std::max(cured, root.yearly_hazard_cured);
        }
        if (diagnosis_.causes.empty()) return;
        const auto share = [](double hazard) { return Share{std::llround(hazard * 1e6)}; };
        const Money lost = cost_of_losing(option);
        option.recurrence_uncured = lost.of(share(uncured));
        option.recurrence_cured = lost.of(share(cured));
    }

    const FailedUnit& job_;
    const Facts& facts_;
    const Diagnosis& diagnosis_;
    const Books books_;
    const Policy& policy_;
    Ledger ledger_;
};

}  // namespace

CostOption price_today(const FailedUnit& job, const Facts& facts, const Candidate& candidate,
                       const KitChoice& kit, const std::optional<Offer>& offer, const Books& books,
                       const Policy& policy) {
    const std::string& id = candidate.part.id;
    CostOption option;
    option.way = way_of(job, facts, candidate);
    option.part_id = id;
    Bill bill(job, books, policy);
    bill.add_part(LineKind::part, id, offer);
    bill.add_kit(kit);
    if (!kit.complete()) bill.lacks("kit " + id);
    bill.add_labour(swap_task(job, option.way));
    const std::optional<int> own = offer ? lead_of(*offer, policy) : std::nullopt;
    if (own && kit.lead_known) option.lead_days = std::max(*own, kit.longest_lead_days);
    bill.add_visit(option.lead_days);
    bill.close(option);
    return option;
}

namespace {

/// The least that any way of this offer comes to: at hand, with this swap and these tasks.
CostOption at_hand_today(const FailedUnit& job, const Offer& offer, ShopTask swap,
                         const std::vector<ShopTask>& tasks, const Books& books, const Policy& policy) {
    CostOption option;
    Bill bill(job, books, policy);
    bill.add_part(LineKind::part, "", offer);
    for (const ShopTask task : tasks) bill.add_labour(task);
    bill.add_labour(swap);
    bill.add_visit(0);
    bill.close(option);
    return option;
}

}  // namespace

Offer offer_at(const Money& price, const Policy& policy) {
    Offer offer;
    offer.price = price;
    offer.as_of = policy.as_of;
    return offer;
}

CostOption least_today(const FailedUnit& job, const Money& price, const Books& books, const Policy& policy) {
    ShopTask lightest = swap_task(job, WayOut::motor);
    std::optional<int> least;
    for (const WayOut way : {WayOut::motor, WayOut::module, WayOut::retrofit}) {
        const ShopTask swap = swap_task(job, way);
        const std::optional<LabourTask> hours = books.catalog.labour(word(swap));
        if (!hours || (least && hours->thousandth_hours >= *least)) continue;
        lightest = swap;
        least = hours->thousandth_hours;
    }
    return at_hand_today(job, offer_at(price, policy), lightest, {}, books, policy);
}

CostOption least_today(const FailedUnit& job, const Facts& facts, const Offer& offer, const Alike& alike,
                       const Books& books, const Policy& policy) {
    const ShopTask swap = swap_task(job, way_by_family(facts, alike.kind, alike.family));
    return at_hand_today(job, offer, swap, alike.tasks, books, policy);
}

Ledger price_options(const FailedUnit& job, const Facts& facts, const Diagnosis& diagnosis,
                     const std::vector<PricedCandidate>& candidates, const std::optional<Repair>& repair,
                     const Books& books, const Policy& policy) {
    return Pricer(job, facts, diagnosis, books, policy).run(candidates, repair);
}

}  // namespace endbell::inline cost
