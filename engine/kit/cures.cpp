// Does an accessory's row put a remedy right? One line a cure; a size nobody stated never passes.
#include <cmath>

#include "engine/base/text.hpp"
#include "engine/facts/control_power.hpp"
#include "engine/kit/kit.hpp"

namespace endbell::inline kit {

namespace {

/// Two numbers written in the same unit with three decimals are the same number within this.
constexpr double same_number = 0.0005;

Verdict worst(Verdict a, Verdict b) {
    return a > b ? a : b;
}

Verdict yes(bool holds) {
    return holds ? Verdict::fits : Verdict::does_not_fit;
}

/// The row's size must agree with what the remedy states.
Verdict agrees(const std::optional<Length>& offered, const std::optional<Length>& wanted, Length within) {
    if (!offered || !wanted) return Verdict::not_shown;
    return yes(std::abs((*offered - *wanted).in(inch)) <= within.in(inch) + rounding);
}

/// What goes over the shaft is not smaller than it, and what goes into the bore is not larger: by whatever little.
Verdict slips(const std::optional<Length>& outer, const std::optional<Length>& inner, Length within) {
    if (!outer || !inner) return Verdict::not_shown;
    const double gap = (*outer - *inner).in(inch);
    return yes(gap >= -rounding && gap <= within.in(inch) + rounding);
}

template <class T>
Verdict same_if_stated(const std::optional<T>& offered, const std::optional<T>& wanted) {
    if (!wanted) return Verdict::fits;
    return offered ? yes(*offered == *wanted) : Verdict::not_shown;
}

template <class T>
Verdict at_least(const std::optional<T>& offered, const std::optional<T>& wanted) {
    if (!offered || !wanted) return Verdict::not_shown;
    return yes(*offered >= *wanted);
}

Verdict same_plug(const std::optional<std::string>& offered, const std::optional<std::string>& wanted) {
    if (!offered || !wanted) return Verdict::not_shown;
    return yes(number_key(*offered) == number_key(*wanted));
}

Verdict same_coil(const std::optional<Voltage>& offered, const std::optional<Voltage>& wanted) {
    if (!offered || !wanted) return Verdict::not_shown;
    return yes(std::abs((coil_class(*offered) - coil_class(*wanted)).in(volt)) < same_number);
}

/// At least the change-over contacts that are wanted on one coil.
Verdict relay_cures(const CureRow& row, const Remedy& remedy, const std::optional<Voltage>& coil) {
    return worst(same_coil(row.coil, coil), at_least(row.poles, std::optional<int>(remedy.poles)));
}

/// Between two bolt circles a remedy states both; between two mounts it states the body alone, and a row
/// without sizes takes any body.
Verdict adapter_cures(const CureRow& row, const Remedy& remedy, const SizeLimits& limits) {
    if (!remedy.mount) return Verdict::not_shown;
    const Verdict mount = same_if_stated(row.mount, remedy.mount);
    if (remedy.to) {
        const Length play = limits.bolt_circle;
        return worst(mount, worst(agrees(row.from, remedy.from, play), agrees(row.to, remedy.to, play)));
    }
    if (row.to) return worst(mount, Verdict::not_shown);  // made for bolt circles that nobody stated
    return worst(mount, row.from ? agrees(row.from, remedy.from, limits.body) : Verdict::fits);
}

/// A capacitor has the motor's own microfarads; its volts may be higher, never lower.
Verdict capacitor_cures(const CureRow& row, const Remedy& remedy) {
    if (!row.capacitor || !remedy.capacitor) return Verdict::not_shown;
    if (row.compressor_capacitor.has_value() != remedy.compressor_capacitor.has_value())
        return Verdict::does_not_fit;  // a dual one is bought where both its sides are wanted
    const auto same = [](Capacitance one, Capacitance other) {
        return std::abs((one - other).in(microfarad)) < same_number;
    };
    const bool other_side =
        !row.compressor_capacitor || same(*row.compressor_capacitor, *remedy.compressor_capacitor);
    return worst(yes(same(*row.capacitor, *remedy.capacitor) && other_side),
                 at_least(row.capacitor_volts, remedy.capacitor_volts));
}

/// The very rating: a larger one protects nothing, a smaller one blows.
Verdict fuse_cures(const CureRow& row, const Remedy& remedy) {
    if (!row.amps || !remedy.amps) return Verdict::not_shown;
    return yes(std::abs((*row.amps - *remedy.amps).in(ampere)) < same_number);
}

/// The same coil, and contacts that carry at least what goes through them, on at least as many poles.
Verdict contacts_cure(const CureRow& row, const Remedy& remedy) {
    return worst(
        same_coil(row.coil, remedy.coil),
        worst(at_least(row.amps, remedy.amps), at_least(row.poles, std::optional<int>(remedy.poles))));
}

/// A transformer that carries the load, on the supply that is there, and still a class 2 source: thermostat wire is
/// laid for no more.
Verdict transformer_cures(const CureRow& row, const Remedy& remedy, ApparentPower class2) {
    const Verdict carries = at_least(row.power, remedy.power);
    if (row.power && *row.power > class2) return Verdict::does_not_fit;
    if (!row.primary || !remedy.primary) return worst(carries, Verdict::not_shown);
    const Voltage there = coil_class(*remedy.primary);
    return worst(carries,
                 yes(coil_class(row.primary->low) <= there && there <= coil_class(row.primary->high)));
}

}  // namespace

Verdict cures(const CureRow& row, const Remedy& remedy, const SizeLimits& limits) {
    if (row.cure != remedy.cure) return Verdict::does_not_fit;
    const Length bore = limits.bore;
    const Length body = limits.body;
    switch (remedy.cure) {
        case Cure::shaft_bushing:
            return worst(slips(row.from, remedy.from, bore), slips(remedy.to, row.to, bore));
        case Cure::mount_band:
            return worst(agrees(row.from, remedy.from, body), same_if_stated(row.mount, remedy.mount));
        case Cure::body_ring:
            return worst(agrees(row.from, remedy.from, body), agrees(row.to, remedy.to, body));
        case Cure::mount_adapter:
            return adapter_cures(row, remedy, limits);
        case Cure::run_capacitor:
        case Cure::start_capacitor:
            return capacitor_cures(row, remedy);
        case Cure::isolation_relay:
            // A thermostat's call drives its coil.
            return relay_cures(row, remedy, remedy.coil ? remedy.coil : control_volts);
        case Cure::line_relay:
            return relay_cures(row, remedy, remedy.coil);
        case Cure::harness:
            return worst(same_plug(row.connector_from, remedy.connector_from),
                         same_plug(row.connector_to, remedy.connector_to));
        case Cure::transformer:
            return transformer_cures(row, remedy, limits.class2);
        case Cure::rain_shield:
            // A shield without a size goes on any shaft; one with a size on that of its size alone.
            return row.from ? agrees(row.from, remedy.from, bore) : Verdict::fits;
        case Cure::line_fuse:
        case Cure::control_fuse:
            return fuse_cures(row, remedy);
        case Cure::contactor:
        case Cure::board_relay:
            return contacts_cure(row, remedy);
        case Cure::float_switch:
        case Cure::door_switch:
            return Verdict::fits;  // each closes one circuit of 24 V or of the line: by its own sheet
        case Cure::shaft_cut:
        case Cure::capacitor_removal:
        case Cure::voltage_selection:
        case Cure::rotation_selection:
        case Cure::lead_parking:
        case Cure::airflow_setup:
        case Cure::control_module:
            return Verdict::does_not_fit;  // work alone, or a module: a part of its own, judged by the rules
    }
    return Verdict::does_not_fit;
}

}  // namespace endbell::inline kit
