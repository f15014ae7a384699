// Prices invoices for tests/outside/invoices.py and estimate_sheet.py. A line on stdin is words KEY=VALUE:
// amounts in minor units, shares in millionths, hours in thousandths, lists joined by commas. Answers one
// line an invoice:
//     today=N per_year=N energy=N life=X KIND:AMOUNT ...
#include <fmt/format.h>

#include <array>
#include <iostream>
#include <map>
#include <sstream>

#include "engine/base/text.hpp"
#include "engine/cost/ledger.hpp"
#include "tests/match/books.hpp"

using namespace endbell;

namespace {

struct Request {
    std::map<std::string, std::string> values;
    Currency currency;

    explicit Request(const std::string& line) {
        std::istringstream in(line);
        std::string word;
        while (in >> word) {
            const std::size_t equals = word.find('=');
            values[word.substr(0, equals)] = word.substr(equals + 1);
        }
        currency = *endbell::currency(values.at("currency"));
    }
    bool has(const char* key) const { return values.count(key) != 0; }
    std::int64_t number(const char* key) const { return std::stoll(values.at(key)); }
    std::vector<std::int64_t> list(const char* key) const {
        std::vector<std::int64_t> found;
        if (!has(key)) return found;
        for (const std::string& one : split(values.at(key), ',')) found.push_back(std::stoll(one));
        return found;
    }
    Reading<Money> money(const char* key) const {
        return has(key) ? known(Money(number(key), currency)) : Reading<Money>{};
    }
    Reading<Share> share(const char* key) const {
        return has(key) ? known(Share{number(key)}) : Reading<Share>{};
    }
};

Offer offer(const Request& request, const std::string& part, std::int64_t price) {
    Offer made;
    made.part_id = part;
    made.branch = "north";
    made.price = Money(price, request.currency);
    made.lead_days = static_cast<int>(request.number("lead"));
    made.as_of = date_of(2026, 1, 15);
    return made;
}

FailedUnit job_of(const Request& request) {
    FailedUnit job;
    job.unit.load = known(Load::indoor_blower);
    job.plate.family = known(Family::capacitor_run);
    job.shop.as_of = known(date_of(2026, 1, 15));
    job.shop.currency = known(std::string(request.currency.code));
    job.shop.labour_rate = request.money("rate");
    job.shop.trip = request.money("trip");
    job.shop.diagnosis_fee = request.money("diagnosis");
    job.shop.markup = request.share("markup");
    job.shop.margin = request.share("margin");
    job.shop.parts_tax = request.share("parts_tax");
    job.shop.labour_tax = request.share("labour_tax");
    job.shop.emergency = request.share("emergency");
    job.shop.real_discount_rate = request.share("real");
    job.shop.electricity = request.money("electricity");
    if (request.has("cool_hours"))
        job.controls.cool_hours = known(static_cast<double>(request.number("cool_hours")));
    return job;
}

/// One call, cooling, on one tap.
AirPlan air_of_watts(const Request& request) {
    AirPlan plan;
    if (!request.has("watts")) return plan;
    plan.computed = true;
    plan.taps.resize(1);
    plan.taps[0].tap = 1;
    plan.taps[0].input_power = estimate(watt(static_cast<double>(request.number("watts"))), 0);
    plan.calls.resize(1);
    plan.calls[0].call = Call::cool_high;
    plan.calls[0].tap = 1;
    plan.calls[0].met = true;
    return plan;
}

CostOption price(const Request& request) {
    PlainCatalog catalog;
    PricedCandidate candidate;
    candidate.candidate.part.id = "M-1";
    candidate.candidate.part.motor = Motor{};
    candidate.candidate.part.motor->family = Family::capacitor_run;
    candidate.offer = offer(request, "M-1", request.number("part"));
    if (request.has("core")) candidate.offer->core_credit = Money(request.number("core"), request.currency);
    int count = 0;
    for (std::int64_t cost : request.list("kit")) {
        const std::string id = fmt::format("X-{}", ++count);
        candidate.kit.parts.push_back({id, offer(request, id, cost), {}});
    }
    catalog.labour_list.push_back({"motor swap", static_cast<int>(request.number("hours")), "shop table"});
    constexpr std::array of_kits{ShopTask::shaft_cut, ShopTask::bushing_fit, ShopTask::band_fit,
                                 ShopTask::relay_fit};
    std::size_t works = 0;
    for (std::int64_t hours : request.list("work")) {
        KitWork work{};
        work.task = of_kits.at(works++);
        catalog.labour_list.push_back({std::string(word(work.task)), static_cast<int>(hours), "shop table"});
        candidate.kit.work.push_back(work);
    }
    if (request.has("again"))
        catalog.labour_list.push_back(
            {"second visit", static_cast<int>(request.number("again")), "shop table"});
    candidate.air = air_of_watts(request);
    const FailedUnit job = job_of(request);
    return price_options(job, facts_of(job, {}), Diagnosis{}, {candidate}, {}, books_of(catalog),
                         policy_of(job))
        .options.at(0);
}

std::string minor(const std::optional<Money>& amount) {
    return amount ? std::to_string(amount->minor()) : "none";
}

}  // namespace

int main() {
    std::string line;
    while (std::getline(std::cin, line)) {
        const CostOption option = price(Request(line));
        fmt::print("today={} per_year={} energy={} life={}", minor(option.today), minor(option.per_year),
                   minor(option.energy_cost), option.life.in(calendar_year));
        for (const CostLine& one : option.lines) {
            std::string kind(word(one.kind));
            for (char& c : kind) c = c == ' ' ? '_' : c;
            fmt::print(" {}:{}", kind, one.amount.minor());
        }
        fmt::print("\n");
    }
}
