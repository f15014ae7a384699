#include "engine/cost/bill.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>

#include "engine/base/text.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline cost {

namespace {

constexpr std::int64_t whole = 1'000'000;  // millionths

/// None where nobody wrote a date, or one that no calendar has.
std::optional<std::chrono::sys_days> day_of(const std::optional<Date>& date) {
    if (!date || !date->ok()) return std::nullopt;
    return std::chrono::sys_days(*date);
}

/// The last day on which a price of this day is not older than limit price.age.
Date last_good_day(std::chrono::sys_days priced, const Limits& limits) {
    return priced +
           std::chrono::days(static_cast<int>(std::floor(limits.value(limit::price_age).in(calendar_day))));
}

}  // namespace

bool is_stale(const Offer& offer, const Policy& policy, const Limits& limits) {
    const auto priced = day_of(offer.as_of);
    const auto now = day_of(policy.as_of);
    if (!priced || !now) return true;
    return static_cast<double>((*now - *priced).count()) > limits.value(limit::price_age).in(calendar_day);
}

Bill::Bill(const FailedUnit& job, const Books& books, const Policy& policy)
    : job_(job), books_(books), policy_(policy) {
    lines_.reserve(12);
}

void Bill::lacks(std::string what) {
    if (std::find(lacking_.begin(), lacking_.end(), what) == lacking_.end())
        lacking_.push_back(std::move(what));
}

void Bill::lacks_hours(ShopTask task) {
    lacks("labour " + std::string(word(task)));
}

void Bill::leaves_out(NotCounted what) {
    if (std::find(not_counted_.begin(), not_counted_.end(), what) == not_counted_.end())
        not_counted_.push_back(what);
}

bool Bill::usable(const Reading<Money>& amount, const char* job_key) {
    if (amount && amount->currency() == policy_.currency && amount->minor() >= 0) return true;
    if (amount || amount.is_open()) lacks(job_key);
    return false;
}

/// price = cost (1 + markup) or cost / (1 - margin): 100 % markup is a 50 % margin.
void Bill::add_markup(CostLine& line) {
    const ShopReadings& shop = job_.shop;
    line.priced_by = PricedBy::cost;
    line.amount = *line.cost;
    if (shop.markup && shop.margin) return lacks("shop.markup and shop.margin");
    if (shop.markup) {
        line.priced_by = PricedBy::markup;
        line.share = *shop.markup;
        line.amount = line.cost->scaled(whole + line.share.millionths, whole);
    } else if (shop.margin) {
        if (shop.margin->millionths >= whole) return lacks("shop.margin");
        line.priced_by = PricedBy::margin;
        line.share = *shop.margin;
        line.amount = line.cost->scaled(whole, whole - line.share.millionths);
    } else {
        leaves_out(NotCounted::markup);
    }
}

/// An old price stands on the bill and keeps it from a total: a customer may see it, and nobody is held to it.
void Bill::add_part(LineKind kind, const std::string& part_id, const std::optional<Offer>& offer, int count) {
    const std::optional<Money> cost = price_of(offer, policy_);
    if (!cost) return lacks("offers " + part_id);
    CostLine line;
    line.kind = kind;
    line.part_id = part_id;
    line.offer = OfferName{offer->branch, offer->seller, offer->as_of};
    line.cost = cost;
    line.stale = is_stale(*offer, policy_, books_.limits);
    const auto priced = day_of(offer->as_of);
    undated_ = undated_ || !priced;
    if (priced) oldest_price_ = oldest_price_ ? std::min(*oldest_price_, *priced) : *priced;
    add_markup(line);
    line.count = count;
    line.amount = line.amount.times(count);
    if (line.stale) lacks(policy_.as_of ? "offers " + part_id : "shop.as_of");
    if (offer->core_credit && offer->core_credit->minor() > 0) {
        if (offer->core_credit->currency() != policy_.currency) return lacks("offers " + part_id);
        CostLine credit;
        credit.kind = LineKind::core_credit;
        credit.part_id = part_id;
        credit.amount = zero() - offer->core_credit->times(count);
        credit.offer = line.offer;
        credits_.push_back(std::move(credit));
    }
    lines_.push_back(std::move(line));
}

void Bill::add_labour(ShopTask task, int count) {
    const std::optional<LabourTask> hours = books_.catalog.labour(word(task));
    if (!hours) return lacks_hours(task);
    if (!policy_.labour_rate || policy_.labour_rate->currency() != policy_.currency)
        return lacks("shop.labour_rate");
    CostLine line;
    line.kind = LineKind::labour;
    line.task = task;
    line.thousandth_hours = hours->thousandth_hours * count;
    line.amount = policy_.labour_rate->scaled(line.thousandth_hours, 1000);
    line.source = "shop.labour_rate";
    lines_.push_back(std::move(line));
}

void Bill::add_kit(const KitChoice& kit) {
    for (const KitPart& part : kit.parts) add_part(LineKind::kit_part, part.part_id, part.offer, part.count);
    for (const KitWork& work : kit.work) add_labour(work.task, work.count);
}

/// The emergency rate is on the labour that stands here already: the visit comes after all work.
void Bill::add_visit(std::optional<int> lead_days) {
    const ShopReadings& shop = job_.shop;
    if (shop.emergency) {
        if (shop.emergency->millionths < whole) {
            lacks("shop.emergency");
        } else {
            CostLine line;
            line.kind = LineKind::emergency;
            line.share = Share{shop.emergency->millionths - whole};
            line.amount = sum(false).of(line.share);
            line.source = "shop.emergency";
            lines_.push_back(std::move(line));
        }
    }
    const auto fee = [&](LineKind kind, NotCounted otherwise, const Reading<Money>& amount,
                         const char* job_key) {
        if (!usable(amount, job_key)) return leaves_out(otherwise);
        CostLine line;
        line.kind = kind;
        line.amount = *amount;
        line.source = job_key;
        lines_.push_back(std::move(line));
    };
    fee(LineKind::trip, NotCounted::trip, shop.trip, "shop.trip");
    fee(LineKind::diagnosis, NotCounted::diagnosis, shop.diagnosis_fee, "shop.diagnosis_fee");
    if (!lead_days) leaves_out(NotCounted::lead_time);
    if (lead_days.value_or(0) > 0) add_second_visit();
}

/// Another trip, and the hours that the shop's table gives for coming again.
void Bill::add_second_visit() {
    const std::optional<LabourTask> hours = books_.catalog.labour(word(ShopTask::second_visit));
    const bool trip = usable(job_.shop.trip, "shop.trip");
    const bool work = hours && policy_.labour_rate && policy_.labour_rate->currency() == policy_.currency;
    if (!trip && !work) return lacks_hours(ShopTask::second_visit);
    CostLine line;
    line.kind = LineKind::second_visit;
    line.amount = zero();
    if (trip) line.amount = line.amount + *job_.shop.trip;
    if (work) {
        line.thousandth_hours = hours->thousandth_hours;
        line.amount = line.amount + policy_.labour_rate->scaled(hours->thousandth_hours, 1000);
    }
    line.source = trip ? "shop.trip" : "shop.labour_rate";
    lines_.push_back(std::move(line));
    leaves_out(NotCounted::waiting);
}

void Bill::add_quote(const Money& price, const std::string& job_key) {
    if (price.currency() != policy_.currency || price.minor() < 0) return lacks(job_key);
    CostLine line;
    line.kind = LineKind::equipment;
    line.amount = price;
    line.source = job_key;
    lines_.push_back(std::move(line));
}

/// What the customer pays for parts, or for all the rest but a whole quote.
Money Bill::sum(bool of_parts) const {
    Money total = zero();
    for (const CostLine& line : lines_) {
        if (is_part(line.kind) == of_parts && line.kind != LineKind::equipment) total = total + line.amount;
    }
    return total;
}

/// Work, visits and fees are one tax base; parts the other. A core credit lowers neither.
void Bill::add_tax() {
    const ShopReadings& shop = job_.shop;
    if (!shop.parts_tax && !shop.labour_tax) return leaves_out(NotCounted::tax);
    CostLine line;
    line.kind = LineKind::tax;
    line.amount = shares_of(sum(true), shop.parts_tax.value.value_or(Share{}), sum(false),
                            shop.labour_tax.value.value_or(Share{}));
    line.source = !shop.labour_tax  ? "shop.parts_tax"
                  : !shop.parts_tax ? "shop.labour_tax"
                                    : "shop.parts_tax and shop.labour_tax";
    if (line.amount.minor() != 0) lines_.push_back(std::move(line));
}

void Bill::close(CostOption& option) {
    const bool quoted = std::any_of(lines_.begin(), lines_.end(),
                                    [](const CostLine& l) { return l.kind == LineKind::equipment; });
    if (!quoted && !lines_.empty()) add_tax();
    lines_.insert(lines_.end(), std::make_move_iterator(credits_.begin()),
                  std::make_move_iterator(credits_.end()));
    if (!lines_.empty()) {
        option.so_far = zero();
        for (const CostLine& line : lines_) option.so_far = *option.so_far + line.amount;
    }
    if (lacking_.empty()) option.today = option.so_far ? option.so_far : zero();
    option.lines = std::move(lines_);
    option.lacking = std::move(lacking_);
    option.not_counted = std::move(not_counted_);
    if (oldest_price_ && !undated_) option.good_until = last_good_day(*oldest_price_, books_.limits);
}

}  // namespace endbell::inline cost
