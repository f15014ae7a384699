#include "engine/airflow/speed_leads.hpp"

#include <algorithm>
#include <array>

#include "engine/airflow/tap_assignment.hpp"
#include "engine/facts/rating.hpp"

namespace endbell::inline airflow {

namespace {

/// Numbers of the motor's speed leads, lowest speed first. A part may count its speeds without listing them.
std::vector<int> leads_of(const Motor& motor) {
    std::vector<int> leads;
    for (const Tap& tap : motor.taps) leads.push_back(tap.number);
    if (leads.empty() && motor.speeds) {
        for (int number = 1; number <= *motor.speeds; ++number) leads.push_back(number);
    }
    std::sort(leads.begin(), leads.end());
    return leads;
}

/// Calls in the order in which they choose: cooling has the first choice, circulation the last.
constexpr std::array by_rank{Call::cool_high, Call::heat_high,  Call::electric_heat, Call::cool_low,
                             Call::heat_low,  Call::dehumidify, Call::circulate};

/// Steps below the highest lead, where nobody knows better.
int usual_steps_down(Call call, int leads) {
    switch (call) {
        case Call::cool_high:
            return 0;
        case Call::heat_high:
        case Call::electric_heat:
        case Call::cool_low:
        case Call::dehumidify:
            return 1;
        case Call::heat_low:
            return 2;
        case Call::circulate:
            return leads - 1;
    }
    return 0;
}

/// The lead at the same place among `leads` others; a place between two is the faster one: more air neither freezes a
/// coil nor trips a limit.
int place_among(SpeedLead lead, int leads) {
    return (static_cast<int>(lead) * (leads - 1) + 3) / 4;
}

std::optional<SpeedLead> in_use(const FailedUnit& job, Call call) {
    if (!job.controls.leads) return std::nullopt;
    for (const LeadInUse& one : *job.controls.leads) {
        if (one.call == call) return one.lead;
    }
    return std::nullopt;
}

/// Hands out leads; a lead is given once.
class Leads {
  public:
    Leads(const AirPlan& plan, const FailedUnit& job, std::vector<int> numbers)
        : plan_(plan), job_(job), numbers_(std::move(numbers)), taken_(numbers_.size(), false) {
        for (const CallAir& call : plan.calls) {
            if (call.tap && takes_a_lead(job, call.call)) take(*call.tap);
        }
    }

    void give(CallAir& call) {
        if (const auto was = in_use(job_, call.call)) {
            put(call, free_near(call.call, place_among(*was, count())), LeadBasis::in_use);
        } else if (const auto near = nearest(call)) {
            put(call, near, LeadBasis::nearest);
        } else {
            const int place = std::max(0, count() - 1 - usual_steps_down(call.call, count()));
            put(call, free_near(call.call, place), LeadBasis::usual_order);
        }
    }

  private:
    int count() const { return static_cast<int>(numbers_.size()); }

    void take(int number) {
        const auto found = std::find(numbers_.begin(), numbers_.end(), number);
        if (found != numbers_.end()) taken_[static_cast<std::size_t>(found - numbers_.begin())] = true;
    }

    /// The free lead at this place, else the next lower, else the next higher; what must not exceed cooling stays below it.
    std::optional<int> free_near(Call call, int place) const {
        for (int p = place; p >= 0; --p) {
            if (is_free(p)) return numbers_[static_cast<std::size_t>(p)];
        }
        const CallAir* cooling = find_call(plan_, Call::cool_high);
        const bool bound = cooling && cooling->tap && must_not_exceed(call, Call::cool_high);
        for (int p = place + 1; p < count(); ++p) {
            if (bound && numbers_[static_cast<std::size_t>(p)] > *cooling->tap) break;
            if (is_free(p)) return numbers_[static_cast<std::size_t>(p)];
        }
        return std::nullopt;
    }
    bool is_free(int place) const { return !taken_[static_cast<std::size_t>(place)]; }

    /// By the airflows that the plan worked out.
    std::optional<int> nearest(const CallAir& call) const {
        if (call.high <= Airflow()) return std::nullopt;
        std::optional<int> best;
        Airflow least;
        for (std::size_t i = 0; i < numbers_.size(); ++i) {
            const auto tap = std::find_if(plan_.taps.begin(), plan_.taps.end(),
                                          [&](const TapAir& t) { return t.tap == numbers_[i]; });
            if (taken_[i] || tap == plan_.taps.end() || tap->caution == LoadCaution::overload) continue;
            const Airflow off =
                std::max(tap->airflow.value() - call.target, call.target - tap->airflow.value());
            if (best && off >= least) continue;
            best = numbers_[i];
            least = off;
        }
        return best;
    }

    void put(CallAir& call, std::optional<int> lead, LeadBasis basis) {
        if (!lead) {
            call.lacking.push_back("controls.leads");
            return;
        }
        call.tap = lead;
        call.provisional = basis;
        take(*lead);
    }

    const AirPlan& plan_;
    const FailedUnit& job_;
    std::vector<int> numbers_;
    std::vector<bool> taken_;
};

}  // namespace

bool takes_over_leads(const FailedUnit& job, const Facts& facts, const Part& part) {
    if (!part.motor || !facts.family || !is_induction(*facts.family)) return false;
    if (!job.controls.source || *job.controls.source != ControlSource::board_line) return false;
    const Motor& motor = *part.motor;
    return motor.family && is_induction(*motor.family) && signal_of(motor).is(SignalClass::switched_line) &&
           leads_of(motor).size() > 1;
}

bool takes_a_lead(const FailedUnit& job, Call call) {
    return call != Call::circulate || job.controls.terminals || job.controls.states;
}

void give_leads(AirPlan& plan, const FailedUnit& job, const Part& part) {
    Leads leads(plan, job, leads_of(*part.motor));
    for (const Call call : by_rank) {
        for (CallAir& one : plan.calls) {
            if (one.call == call && !one.tap && takes_a_lead(job, call)) leads.give(one);
        }
    }
}

}  // namespace endbell::inline airflow
