#include "engine/ask/askable.hpp"

#include <fmt/format.h>

#include <cmath>
#include <map>
#include <tuple>
#include <type_traits>
#include <utility>

#include "engine/rules/answer.hpp"
#include "engine/rules/trade.hpp"

namespace endbell::inline ask {

namespace {

/// A size to sort by and the words that people read.
using Label = std::pair<double, std::string>;

/// To four decimals: sizes that no tape or gauge tells apart are one answer.
Label sized(double value, std::string_view unit) {
    const double size = std::round(value * 1e4) / 1e4;
    return {size, fmt::format("{:.10g} {}", size, unit)};
}

Label label(const std::string& text) {
    return {0, text};
}
Label label(bool yes) {
    return {0, yes ? "yes" : "no"};
}
Label label(int count) {
    return {count, fmt::format("{}", count)};
}
Label label(Length length) {
    return sized(length.in(inch), "in");
}
Label label(Voltage voltage) {
    return sized(voltage.in(volt), "V");
}
Label label(const SupplySystem& system) {
    return label(system.line);
}
Label label(Frequency frequency) {
    return sized(frequency.in(hertz), "Hz");
}
Label label(Speed speed) {
    return sized(speed.in(rpm), "rpm");
}
Label label(Temperature t) {
    return sized(t.in_celsius(), "C");
}
/// Plates print 1/3, never 0.333; neighbours 1/49 and 1/50 still lie 2 % apart.
Label label(const std::vector<Power>& power) {
    const double hp = power.front().in(horsepower);
    for (int part = 2; part <= 50; ++part) {
        if (std::abs(hp * part - 1) < 0.005)
            return {sized(1.0 / part, "hp").first, fmt::format("1/{} hp", part)};
    }
    return std::abs(hp - 0.75) < 0.005 ? Label{0.75, "3/4 hp"} : sized(hp, "hp");
}
Label label(const std::vector<PlateVolts>& v) {
    const Voltage low = v.front().low;
    const Voltage high = v.front().high;
    if (low == high) return label(low);
    return {label(low).first, fmt::format("{:.10g}-{}", low.in(volt), label(high).second)};
}
Label label(const std::vector<int>& taps) {
    return {static_cast<double>(taps.size()), fmt::format("{} live", taps.size())};
}
template <class E, class = std::enable_if_t<std::is_enum_v<E>>>
Label label(E value) {
    return {0, std::string(word(value))};
}

template <class T>
using Votes = std::vector<std::pair<T, double>>;

/// What one part would have the answer be.
template <class T>
using Wish = Votes<T> (*)(const Part&);

/// An answer is a value of one field of one group of the job.
template <class Group, class T>
Askable field(std::string_view key, int seconds, double chance, Group FailedUnit::*group,
              Reading<T> Group::*reading, Wish<T> wish) {
    Askable a;
    a.key = key;
    a.seconds = seconds;
    a.chance = chance;
    a.blank = [group, reading](const Question& q) { return !((q.job.*group).*reading); };
    a.answers = [group, reading, wish](const std::vector<const Part*>& parts) {
        std::map<Label, PossibleAnswer> box;
        for (const Part* part : parts) {
            for (const auto& [value, votes] : wish(*part)) {
                const Label words = label(value);
                PossibleAnswer& answer = box[words];
                std::tie(answer.size, answer.label) = words;
                answer.votes += votes;
                answer.give = [group, reading, given = value](Trial& trial) {
                    (trial.job.*group).*reading = known(given);
                };
            }
        }
        std::vector<PossibleAnswer> list;
        list.reserve(box.size());
        for (auto& entry : box) list.push_back(std::move(entry.second));
        return list;
    };
    return a;
}

Askable tape(Askable a) {
    a.tape_size = true;
    return a;
}

/// Another key that is stated can settle this one.
Askable unless(bool (*settled)(const Facts&), Askable a) {
    a.blank = [blank = std::move(a.blank), settled](const Question& q) {
        return blank(q) && !settled(q.facts);
    };
    return a;
}

bool volts_on_the_plate(const Facts& facts) {
    return facts.volts.value.has_value();
}
bool family_known(const Facts& facts) {
    return facts.family.value.has_value();
}
bool phase_known(const Facts& facts) {
    return facts.phase.value.has_value();
}
bool frequency_known(const Facts& facts) {
    return facts.frequency.value.has_value();
}
bool poles_known(const Facts& facts) {
    return facts.poles.value.has_value();
}
bool place_known(const Facts& facts) {
    return facts.outdoors.value.has_value();
}
bool signal_known(const Facts& facts) {
    return facts.signal.value.has_value();
}

template <class T, class U>
Votes<T> one(const std::optional<U>& value) {
    if (!value) return {};
    return {{T(*value), 1.0}};
}

/// Every value of an enumeration, equally likely: the catalog does not tell.
template <class E>
Votes<E> any(const Part&) {
    Votes<E> votes;
    for (const Word<E>& w : Words<E>::table) votes.push_back({w.value, 1.0});
    return votes;
}
Votes<bool> yes_or_no(const Part&) {
    return {{false, 1.0}, {true, 1.0}};
}

template <class T>
Votes<T> of_motor(const Part& part, const std::optional<T> Motor::*member) {
    return part.motor ? one<T>((*part.motor).*member) : Votes<T>{};
}

Votes<Load> loads(const Part& part) {
    Votes<Load> votes;
    if (!part.motor) return votes;
    for (const Load load : part.motor->loads)
        votes.push_back({load, 1.0 / static_cast<double>(part.motor->loads.size())});
    return votes;
}

Votes<Family> families(const Part& part) {
    if (part.module) return {{Family::constant_airflow, 1.0}};
    Votes<Family> votes = part.motor ? one<Family>(part.motor->family) : Votes<Family>{};
    if (part.motor) {
        for (const Family family : part.motor->retrofit_for) votes.push_back({family, 0.25});
    }
    return votes;
}

Votes<Voltage> nominals(const Part& part) {
    Votes<Voltage> votes;
    const auto add = [&](const PlateVolts& v) {
        votes.push_back({v.low, 1.0});
        if (v.high != v.low) votes.push_back({v.high, 1.0});
    };
    if (part.module && part.module->volts) add(*part.module->volts);
    if (part.motor) {
        for (const Rating& r : part.motor->ratings) {
            if (r.volts) add(*r.volts);
        }
    }
    return votes;
}

Votes<SupplySystem> supplies(const Part& part) {
    Votes<SupplySystem> votes;
    for (const auto& [volts, weight] : nominals(part)) votes.push_back({bare_supply(volts), weight});
    return votes;
}

Votes<Frequency> hertz_of_supplies(const Part&) {
    return {{hertz(50), 1.0}, {hertz(60), 1.0}};
}

Votes<std::vector<PlateVolts>> plates(const Part& part) {
    Votes<std::vector<PlateVolts>> votes;
    if (part.module && part.module->volts) votes.push_back({{*part.module->volts}, 1.0});
    if (!part.motor) return votes;
    for (const Rating& r : part.motor->ratings) {
        if (r.volts) votes.push_back({{*r.volts}, 1.0});
    }
    return votes;
}

Votes<std::vector<Power>> powers(const Part& part) {
    Votes<std::vector<Power>> votes;
    if (!part.motor) return votes;
    for (const Rating& r : part.motor->ratings) {
        if (r.power) votes.push_back({{*r.power}, 1.0});
    }
    return votes;
}

Votes<Speed> speeds(const Part& part) {
    Votes<Speed> votes;
    if (!part.motor) return votes;
    for (const Rating& r : part.motor->ratings) {
        if (r.speed) votes.push_back({*r.speed, 1.0});
    }
    return votes;
}

Votes<Rotation> rotations(const Part& part) {
    if (!part.motor || !part.motor->rotation) return {};
    if (*part.motor->rotation != Rotation::reversible) return {{*part.motor->rotation, 1.0}};
    return {{Rotation::cw_shaft_end, 0.5}, {Rotation::ccw_shaft_end, 0.5}};
}

Votes<std::string> programs(const Part& part) {
    if (part.module) return one<std::string>(part.module->program);
    return of_motor(part, &Motor::program);
}

Votes<SignalClass> signals(const Part& part) {
    if (part.module) return one<SignalClass>(part.module->signal);
    return of_motor(part, &Motor::signal);
}

Votes<ShaftPosition> positions(const Part&) {
    return {{ShaftPosition::up, 1.0}, {ShaftPosition::down, 1.0}, {ShaftPosition::horizontal, 1.0}};
}

Votes<std::vector<int>> live_taps(const Part&) {
    return {{{1}, 1.0}, {{1, 2}, 1.0}};
}

/// A proof of the motor half: it passes, and the module alone is shown to have failed, or it does not.
Askable proof(std::string_view key, int seconds, double chance, bool (*blank)(const Question&)) {
    Askable a;
    a.key = key;
    a.seconds = seconds;
    a.chance = chance;
    a.blank = blank;
    a.answers = [](const std::vector<const Part*>&) {
        std::vector<PossibleAnswer> both(2);
        both[0] = {0, "fails", 1.0, [](Trial& t) { t.diagnosis.fault = Fault::motor_and_module; }};
        both[1] = {0, "passes", 1.0, [](Trial& t) {
                       t.diagnosis.fault = Fault::module;
                       t.diagnosis.motor_half_proven_good = true;
                   }};
        return both;
    };
    return a;
}

// Seconds and chances are common practice: words and plates are quick, a tape needs the cabinet open, a meter
// the power off and a wait. None is measured.
std::vector<Askable> all() {
    using U = UnitFacts;
    using P = PlateFacts;
    using M = MeasuredFacts;
    using C = ControlFacts;
    using F = FailedUnit;
    return {
        field("unit.load", 5, 1.00, &F::unit, &U::load, loads),
        unless(family_known, field("plate.family", 20, 0.90, &F::plate, &P::family, families)),
        field("unit.assembly_number", 60, 0.60, &F::unit, &U::assembly_number,
              Wish<std::string>([](const Part& p) { return of_motor(p, &Motor::assembly); })),
        unless(volts_on_the_plate,
               field("equipment.supply", 20, 0.80, &F::equipment, &EquipmentFacts::supply, supplies)),
        field("plate.volts", 15, 0.70, &F::plate, &P::volts, plates),
        unless(volts_on_the_plate,
               field("measured.line_volts", 120, 0.60, &F::measured, &M::line_volts, nominals)),
        unless(phase_known, field("plate.phase", 15, 0.80, &F::plate, &P::phase,
                                  Wish<int>([](const Part& p) { return of_motor(p, &Motor::phase); }))),
        field("plate.speed", 15, 0.65, &F::plate, &P::speed, speeds),
        unless(frequency_known,
               field("plate.frequency", 15, 0.60, &F::plate, &P::frequency, hertz_of_supplies)),
        unless(poles_known, field("plate.poles", 15, 0.50, &F::plate, &P::poles,
                                  Wish<int>([](const Part& p) { return of_motor(p, &Motor::poles); }))),
        field("plate.power", 15, 0.70, &F::plate, &P::power, powers),
        field("plate.mount", 15, 0.90, &F::plate, &P::mount,
              Wish<Mount>([](const Part& p) { return of_motor(p, &Motor::mount); })),
        field("plate.body_diameter", 60, 0.70, &F::plate, &P::body_diameter,
              Wish<Length>([](const Part& p) { return of_motor(p, &Motor::body_diameter); })),
        tape(field("measured.band_diameter", 90, 0.50, &F::measured, &M::band_diameter,
                   Wish<Length>([](const Part& p) { return of_motor(p, &Motor::body_diameter); }))),
        field("plate.shaft_diameter", 30, 0.80, &F::plate, &P::shaft_diameter,
              Wish<Length>([](const Part& p) { return of_motor(p, &Motor::shaft_diameter); })),
        tape(field("measured.bore", 120, 0.50, &F::measured, &M::bore,
                   Wish<Length>([](const Part& p) { return of_motor(p, &Motor::shaft_diameter); }))),
        tape(field("measured.shaft_needed", 120, 0.50, &F::measured, &M::shaft_needed,
                   Wish<Length>([](const Part& p) { return of_motor(p, &Motor::shaft_length); }))),
        tape(field("measured.shaft_room", 120, 0.50, &F::measured, &M::shaft_room,
                   Wish<Length>([](const Part& p) { return of_motor(p, &Motor::shaft_length); }))),
        field("unit.shaft_points", 5, 0.95, &F::unit, &U::shaft_points, positions),
        unless(place_known, field("unit.outdoors", 5, 1.00, &F::unit, &U::outdoors, yes_or_no)),
        field("plate.rotation", 60, 0.60, &F::plate, &P::rotation, rotations),
        field("plate.program", 60, 0.60, &F::plate, &P::program, programs),
        unless(signal_known, field("plate.signal", 60, 0.60, &F::plate, &P::signal, signals)),
        field("controls.source", 60, 0.70, &F::controls, &C::source, any<ControlSource>),
        field("controls.heat", 5, 1.00, &F::controls, &C::heat, any<HeatKind>),
        field("controls.common_present", 60, 0.70, &F::controls, &C::common_present, yes_or_no),
        field("controls.run_signal_available", 120, 0.40, &F::controls, &C::run_signal_available, yes_or_no),
        field("measured.live_taps", 180, 0.40, &F::measured, &M::live_taps, live_taps),
        field("plate.ambient", 15, 0.60, &F::plate, &P::ambient,
              Wish<Temperature>([](const Part& p) { return of_motor(p, &Motor::ambient); })),
        proof("measured.spins_free", 60, 0.60, [](const Question& q) { return !q.job.measured.spins_free; }),
        proof("measured.winding_to_shell", 400, 0.40,
              [](const Question& q) { return !q.job.measured.winding_to_shell; }),
        proof("measured.windings", 420, 0.40, [](const Question& q) { return !q.job.measured.windings; }),
    };
}

}  // namespace

const std::vector<Askable>& askables() {
    static const std::vector<Askable> list = all();
    return list;
}

const Askable* askable(std::string_view key) {
    for (const Askable& a : askables()) {
        if (a.key == key) return &a;
    }
    return nullptr;
}

}  // namespace endbell::inline ask
