#include "engine/wiring/needed_calls.hpp"

#include <algorithm>

namespace endbell::inline wiring {

namespace {

class Calls {
  public:
    explicit Calls(const Controls& controls) {
        for (const Demand& d : controls.demands) {
            if (!d.overlap && d.live != 0) called_.insert(called_.end(), d.calls.begin(), d.calls.end());
        }
    }
    bool has(Call call) const { return std::find(called_.begin(), called_.end(), call) != called_.end(); }
    bool any_heat() const { return has(Call::heat_low) || has(Call::heat_high) || has(Call::electric_heat); }
    void need(Call call) {
        if (!has(call)) missing_.push_back(call);
    }
    std::vector<Call> missing() && { return std::move(missing_); }

  private:
    std::vector<Call> called_;
    std::vector<Call> missing_;
};

bool several(const Reading<int>& stages) {
    return stages && *stages > 1;
}

void need_cooling(Calls& calls, const FailedUnit& job, const Heat& heat) {
    const bool cools = job.equipment.cooling && *job.equipment.cooling > HeatRate();
    if (!cools && !heat.compressor.is(true)) return;
    if (!several(job.equipment.cooling_stages) && calls.has(Call::cool_low)) return;
    calls.need(Call::cool_high);
}

void need_heat(Calls& calls, const FailedUnit& job, const Heat& heat) {
    const bool burner = heat.burner.is(true);
    if (burner && several(job.equipment.heating_stages)) {
        calls.need(Call::heat_low);
        calls.need(Call::heat_high);
        return;
    }
    // A heat pump's compressor heats on the cooling calls: any other heat is its elements'.
    if (calls.any_heat()) return;
    if (burner) calls.need(Call::heat_high);
    if (!burner && heat.elements.is(true)) calls.need(Call::electric_heat);
}

}  // namespace

std::vector<Call> calls_without_a_wire(const FailedUnit& job, const Heat& heat, const Controls& controls,
                                       const MotorFeed& feed) {
    Calls calls(controls);
    need_cooling(calls, job, heat);
    need_heat(calls, job, heat);
    if (feed.sender != Sender::thermostat)
        return std::move(calls).missing();  // a board chooses its own outputs
    const ControlReadings& readings = job.controls;
    const bool circulates = readings.circulate_hours && *readings.circulate_hours > 0;
    if (circulates && !feed.gated) calls.need(Call::circulate);
    if (readings.dehumidify && *readings.dehumidify != DehumidifyLogic::not_used && !readings.states)
        calls.need(Call::dehumidify);
    return std::move(calls).missing();
}

std::vector<std::string> signals_without_a_state(const Controls& controls) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < controls.signals.size(); ++i) {
        const ControlSignal& signal = controls.signals[i];
        const bool used = std::any_of(controls.demands.begin(), controls.demands.end(), [&](const Demand& d) {
            const bool runs = !d.calls.empty() || d.maker == StateMaker::job;
            return runs && (d.live >> i & 1u) != 0;
        });
        if (!used) names.push_back(signal.name);
    }
    return names;
}

}  // namespace endbell::inline wiring
