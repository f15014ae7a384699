#include "engine/match/trade.hpp"

#include <algorithm>

#include "engine/base/text.hpp"

namespace endbell {

std::optional<bool> sits_outdoors(const FailedUnit& job) {
    if (const auto stated = said(job.unit.outdoors)) return stated;
    if (const auto load = said(job.unit.load)) return *load == Load::outdoor_fan;
    return std::nullopt;
}

bool specified_assembly(const FailedUnit& job, const Part& part) {
    const auto number = said(job.unit.assembly_number);
    return said(job.unit.load) == Load::draft_inducer && number && part.motor && part.motor->assembly &&
           number_key(*number) == number_key(*part.motor->assembly);
}

std::optional<int> phase_by_construction(Family family) {
    switch (family) {
        case Family::shaded_pole:
        case Family::capacitor_run:
            return 1;
        case Family::three_phase:
            return 3;
        default:
            return std::nullopt;
    }
}

std::optional<SignalClass> signal_by_construction(Family family) {
    if (is_electronic(family)) return std::nullopt;
    return SignalClass::switched_line;
}

Speed synchronous(int poles, Frequency frequency) {
    return rpm(120.0 * frequency.in(hertz) / poles);
}

std::optional<int> poles_from(Speed speed, Frequency frequency) {
    for (int poles = 12; poles >= 2; poles -= 2) {
        const Speed ns = synchronous(poles, frequency);
        if (ns <= speed) continue;
        const double slip = (ns - speed) / ns;
        if (slip < 0.02 || slip > 0.20) return std::nullopt;
        return poles;
    }
    return std::nullopt;
}

Poles old_poles(const FailedUnit& job) {
    const Frequency frequency = said(job.plate.frequency).value_or(hertz(60));
    const auto stated = said(job.plate.poles);
    const auto speed = said(job.plate.speed);
    const auto derived = speed ? poles_from(*speed, frequency) : std::nullopt;
    if (stated && derived && *stated != *derived) return {std::nullopt, true};
    return {stated ? stated : derived, false};
}

double cube_law(Speed from, Speed to) {
    const double ratio = to / from;
    return ratio * ratio * ratio;
}

std::optional<Power> old_power(const FailedUnit& job) {
    const auto listed = said(job.plate.power);
    if (!listed || listed->empty()) return std::nullopt;
    return *std::max_element(listed->begin(), listed->end());
}

Signal signal_of(std::optional<SignalClass> stated, std::optional<Family> family) {
    const auto built = family ? signal_by_construction(*family) : std::nullopt;
    if (stated && built && *stated != *built) return {std::nullopt, true};
    return {stated ? stated : built, false};
}

Signal signal_given(const FailedUnit& job) {
    const auto family = said(job.plate.family);
    const Signal plate = signal_of(said(job.plate.signal), family);
    if (plate.value || plate.disagree || family != Family::constant_torque) return plate;
    const auto from = said(job.controls.source);
    if (!from) return {};
    switch (*from) {
        case ControlSource::thermostat:
        case ControlSource::board_24v:
            return {SignalClass::control_24v, false};
        case ControlSource::board_line:
            return {SignalClass::line_signal, false};
        case ControlSource::pulse_or_serial:
            return {};
    }
    return {};
}

}  // namespace endbell
