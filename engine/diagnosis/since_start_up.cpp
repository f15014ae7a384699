#include "engine/diagnosis/since_start_up.hpp"

#include <algorithm>
#include <cmath>

#include "engine/airflow/duct_point.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline diagnosis {

namespace {

struct Now {
    StartUpQuantity what;
    std::optional<double> value;
    std::string_view job_key;
    std::vector<double> legs = {};  // where each of three was read
    /// Beside the same leg where both have legs.
    double beside(int leg) const {
        return leg > 0 && !legs.empty() ? legs[static_cast<std::size_t>(leg) - 1] : *value;
    }
};

/// The worst leg stands for all: of volts the lowest, of amps the highest.
template <class Q, class Unit>
Now of_legs(StartUpQuantity what, const Reading<Legs<Q>>& reading, const Unit& unit, bool lowest,
            std::string_view job_key) {
    Now now{what, std::nullopt, job_key};
    const std::optional<Legs<Q>> said = reading.said();
    if (!said) return now;
    now.value = (lowest ? said->lowest() : said->highest()).in(unit);
    if (said->three()) {
        for (const Q& leg : said->each()) now.legs.push_back(leg.in(unit));
    }
    return now;
}

template <class Q, class Unit>
std::optional<double> in(const Reading<Q>& reading, const Unit& unit) {
    const std::optional<Q> said = reading.said();
    return said ? std::optional<double>(said->in(unit)) : std::nullopt;
}

Now static_now(const MeasuredReadings& m) {
    const std::optional<Pressure> total = total_static(m);
    const bool of_halves = total && !m.static_total.said();
    return {StartUpQuantity::static_total,
            total ? std::optional<double>(total->in(inch_water)) : std::nullopt,
            of_halves ? "measured.static_supply" : "measured.static_total"};
}

std::vector<Now> read_now(const FailedUnit& job) {
    const MeasuredReadings& m = job.measured;
    return {of_legs(StartUpQuantity::line_volts, m.line_volts, volt, true, "measured.line_volts"),
            of_legs(StartUpQuantity::amps, m.amps, ampere, false, "measured.amps"),
            static_now(m),
            {StartUpQuantity::speed, in(m.speed, rpm), "measured.speed"},
            {StartUpQuantity::airflow, in(m.airflow, cfm), "measured.airflow"},
            {StartUpQuantity::rise, in(m.rise, fahrenheit_degree), "measured.rise"}};
}

/// The middle one: of two the mean.
double middle(std::vector<double> found) {
    std::sort(found.begin(), found.end());
    const std::size_t half = found.size() / 2;
    return found.size() % 2 == 1 ? found[half] : (found[half - 1] + found[half]) / 2;
}

StartUpChange change_of(double then, double now, double allowed) {
    const double apart = std::abs(then) * allowed + 1e-9;
    if (now > then + apart) return StartUpChange::higher;
    return now < then - apart ? StartUpChange::lower : StartUpChange::as_then;
}

}  // namespace

std::vector<SinceStartUp> since_start_up(const FailedUnit& job, const Limits& limits) {
    std::vector<SinceStartUp> all;
    if (!job.start_up) return all;
    for (const Now& now : read_now(job)) {
        if (!now.value) continue;
        const auto first = all.size();
        bool same = true;
        for (const StartUpFound& then : job.start_up->readings) {
            if (then.what != now.what || then.found.empty()) continue;
            const double was = middle(then.found);
            const double is = now.beside(then.leg);
            const StartUpChange change = change_of(was, is, limits.value(limit::start_up_change));
            same = same && (all.size() == first || all[first].change == change);
            all.push_back({now.what, then.call, then.leg, was, is, change, now.job_key});
        }
        for (std::size_t i = first; !same && i < all.size(); ++i) all[i].change = StartUpChange::as_then;
    }
    return all;
}

}  // namespace endbell::inline diagnosis
