#include "engine/facts/facts.hpp"

#include <algorithm>

#include "engine/base/ensure.hpp"
#include "engine/base/text.hpp"
#include "engine/facts/heat.hpp"
#include "engine/model/limit.hpp"

namespace endbell::inline facts {

namespace {

constexpr Frequency american = hertz(60);
constexpr Frequency elsewhere = hertz(50);

/// A run capacitor stays in circuit and is rated for it: 1 to 100 uF at 370 V or more (common practice). A start capacitor
/// is larger, or of fewer volts.
bool is_run_capacitor(const DerivedFact<Capacitance>& value, const DerivedFact<Voltage>& volts) {
    return value && volts && *value >= microfarad(1) && *value <= microfarad(100) && *volts >= volt(370);
}

DerivedFact<Family> family_of(const FailedUnit& job, const Facts& facts) {
    if (DerivedFact<Family> read = read_from(job.plate.family)) return read;
    if (is_run_capacitor(facts.capacitor, facts.capacitor_volts))
        return implied(Family::capacitor_run, Because::run_capacitor);
    return {};
}

/// A supply of one phase by its own name. A system of three feeds motors of one phase, too.
bool is_one_phase(const std::optional<SupplySystem>& system) {
    return system && (system->kind == SupplyKind::split || system->kind == SupplyKind::single_phase);
}

/// What the text says, what the family is by construction, a capacitor and the supply: where they contradict each other, they
/// prove nothing.
DerivedFact<int> phase_of(const FailedUnit& job, const Facts& facts) {
    const DerivedFact<int> read = read_from(job.plate.phase);
    const auto built = facts.family ? phase_by_construction(*facts.family) : std::nullopt;
    const bool one_by_supply = is_one_phase(job.equipment.supply.said());
    if (read && built && *read != *built) return contradicted<int>();
    const std::optional<int> told = read ? read.value : built;
    if (told == 3 && ((read && facts.capacitor) || one_by_supply)) return contradicted<int>();
    if (read) return read;
    if (built) return implied(*built, Because::family);
    if (facts.capacitor) return implied(1, Because::any_capacitor);
    return one_by_supply ? implied(1, Because::supply_system) : DerivedFact<int>{};
}

/// The one of both public supplies whose pole counts lie near above an induction motor's speed.
DerivedFact<Frequency> frequency_by_speed(const Facts& facts) {
    if (!facts.speed || !facts.family || is_electronic(*facts.family)) return {};
    const bool at_60 = poles_from(*facts.speed, american).has_value();
    const bool at_50 = poles_from(*facts.speed, elsewhere).has_value();
    if (at_60 == at_50) return {};
    return implied(at_60 ? american : elsewhere, Because::speed);
}

/// The plate's hertz; the supply's; or 60 where the volts are those that only 60 Hz systems have. 230 alone says nothing.
DerivedFact<Frequency> frequency_of(const FailedUnit& job, const Facts& facts) {
    if (DerivedFact<Frequency> read = read_from(job.plate.frequency)) return read;
    if (const auto system = job.equipment.supply.said(); system && system->frequency)
        return implied(*system->frequency, Because::supply_system);
    if (!facts.volts) return frequency_by_speed(facts);
    const bool american_only = std::any_of(facts.volts->begin(), facts.volts->end(), [](const PlateVolts& v) {
        const VoltageClass* low = class_of(v.low.in(volt));
        return low != nullptr && low->only_60_hertz;
    });
    return american_only ? implied(american, Because::voltage_class) : frequency_by_speed(facts);
}

/// The rated speed's pole count at the frequency, where that is known; else the one that both frequencies leave.
std::optional<int> poles_by_speed(Speed speed, const DerivedFact<Frequency>& frequency) {
    if (frequency) return poles_from(speed, *frequency);
    const std::optional<int> at_60 = poles_from(speed, american);
    const std::optional<int> at_50 = poles_from(speed, elsewhere);
    if (at_60 && at_50 && *at_60 != *at_50) return std::nullopt;
    return at_60 ? at_60 : at_50;
}

DerivedFact<int> poles_of(const FailedUnit& job, const Facts& facts) {
    const DerivedFact<int> read = read_from(job.plate.poles);
    const auto by_speed = facts.speed ? poles_by_speed(*facts.speed, facts.frequency) : std::nullopt;
    if (read && by_speed && *read != *by_speed) return contradicted<int>();
    if (read) return read;
    return by_speed ? implied(*by_speed, Because::speed) : DerivedFact<int>{};
}

DerivedFact<Power> power_of(const FailedUnit& job) {
    const auto listed = job.plate.power.said();
    if (!listed || listed->empty()) return {};
    return {*std::max_element(listed->begin(), listed->end()), job.plate.power.origin, std::nullopt, false};
}

DerivedFact<Torque> torque_of_old(const Facts& facts) {
    if (!facts.power || !facts.speed || *facts.speed <= rpm(0)) return {};
    return implied(torque_of(*facts.power, *facts.speed), Because::power_and_speed);
}

/// What the equipment gives the motor: as the plate says it, as its family takes it, or, of a tapped motor, as what gives
/// the calls has it.
DerivedFact<SignalClass> signal_of(const FailedUnit& job, const Facts& facts) {
    DerivedFact<SignalClass> read = read_from(job.plate.signal);
    const auto built = facts.family ? signal_by_construction(*facts.family) : std::nullopt;
    if (read && built && *read != *built) return contradicted<SignalClass>();
    if (read) return read;
    if (built) return implied(*built, Because::family);
    const auto source = job.controls.source.said();
    if (!facts.family.is(Family::constant_torque) || !source) return {};
    switch (*source) {
        case ControlSource::thermostat:
        case ControlSource::board_24v:
            return implied(SignalClass::control_24v, Because::control_source);
        case ControlSource::board_line:
            return implied(SignalClass::line_signal, Because::control_source);
        case ControlSource::pulse_or_serial:
            return {};
    }
    return {};
}

DerivedFact<Voltage> output_of(const FailedUnit& job, const Facts& facts, const Limits& limits) {
    if (const auto read = read_from(job.controls.output)) return read;
    const std::vector<Voltage>& nominal = facts.supply.nominal;
    if (facts.signal.is(SignalClass::switched_line) && !nominal.empty() &&
        coil_class(nominal.front()) == coil_class(nominal.back()))
        return implied(coil_class(nominal.front()), Because::family);
    const auto called = job.measured.control_volts.said();
    if (facts.signal.is(SignalClass::line_signal) && called && *called >= limits.value(limit::voltage_live))
        return implied(nearest_class(*called).nominal, Because::live_reading);
    return {};
}

/// "24 Vdc" says its kind, "24 V" does not. Two that differ say nothing.
DerivedFact<ControlVoltsKind> control_kind_of(const FailedUnit& job) {
    const DerivedFact<ControlVoltsKind> read = read_from(job.measured.control_kind);
    const auto& volts = job.measured.control_volts;
    const std::string unit = volts ? lower(volts.raw) : std::string();
    const auto says = [&](std::string_view text) { return unit.find(text) != std::string::npos; };
    std::optional<ControlVoltsKind> written;
    if (says("vdc") || says("v dc")) written = ControlVoltsKind::dc;
    if (says("vac") || says("v ac")) written = ControlVoltsKind::ac;
    if (!written) return read;
    if (read && *read != *written) return contradicted<ControlVoltsKind>();
    return read ? read : implied(*written, Because::written_unit);
}

DerivedFact<bool> outdoors_of(const FailedUnit& job) {
    if (DerivedFact<bool> read = read_from(job.unit.outdoors)) return read;
    const auto load = job.unit.load.said();
    return load ? implied(*load == Load::outdoor_fan, Because::load) : DerivedFact<bool>{};
}

/// As said; else a fan blade and an inducer's wheel sit on the shaft, and a kind of motor that is not made for belts hung on
/// none (common practice).
DerivedFact<bool> belt_of(const FailedUnit& job, const Facts& facts) {
    if (DerivedFact<bool> read = read_from(job.unit.belt_drive)) return read;
    if (job.measured.belt.said()) return implied(true, Because::belt_seen);
    const auto load = job.unit.load.said();
    if (load && *load != Load::indoor_blower) return implied(false, Because::load);
    if (facts.family && !is_made_for_belts_too(*facts.family)) return implied(false, Because::family);
    return {};
}

}  // namespace

bool has_three_lines(const Facts& facts) {
    return facts.supply.phases == 3 || (facts.phase.is(3) && facts.supply.phases != 1);
}

Speed synchronous(int poles, Frequency frequency) {
    ensure(poles > 0, "a motor has poles");
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

std::optional<int> phase_by_construction(Family family) {
    switch (family) {
        case Family::shaded_pole:
        case Family::capacitor_run:
        case Family::split_phase:
        case Family::capacitor_start:
        case Family::capacitor_start_and_run:
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

void open_untrusted_plate(FailedUnit& job) {
    if (job.unit.plate_trusted.said() != false) return;
    each_plate_reading(job.plate, [](auto& reading) { reading.value.reset(); });
}

/// In this order: a fact may rest on those above it, and on none below.
Facts facts_of(const FailedUnit& job, const Limits& limits) {
    Facts facts;
    facts.plate_trusted = job.unit.plate_trusted.said() != false;
    facts.volts = read_from(job.plate.volts);
    facts.capacitor = read_from(job.plate.capacitor);
    facts.capacitor_volts = read_from(job.plate.capacitor_volts);
    facts.speed = read_from(job.plate.speed);
    facts.family = family_of(job, facts);
    facts.had_capacitor = facts.capacitor || (facts.family && has_capacitor(*facts.family));
    facts.phase = phase_of(job, facts);
    facts.frequency = frequency_of(job, facts);
    facts.poles = poles_of(job, facts);
    facts.power = power_of(job);
    facts.torque = torque_of_old(facts);
    facts.signal = signal_of(job, facts);
    facts.supply = supply_of(job, facts.phase, facts.volts, limits);
    facts.output = output_of(job, facts, limits);
    facts.control_kind = control_kind_of(job);
    facts.heat = heat_of(job, facts.supply, limits);
    facts.outdoors = outdoors_of(job);
    facts.belt = belt_of(job, facts);
    return facts;
}

}  // namespace endbell::inline facts
