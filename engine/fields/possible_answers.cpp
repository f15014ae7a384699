#include "engine/fields/possible_answers.hpp"

#include <fmt/format.h>

#include <cmath>

#include "engine/facts/rating.hpp"

namespace endbell::inline fields {

namespace {

/// To four decimals: sizes that no tape or gauge tells apart are one answer.
Label sized(double value, std::string_view unit) {
    const double size = std::round(value * 1e4) / 1e4;
    return {size, fmt::format("{:.10g} {}", size, unit)};
}

}  // namespace

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
Label label(const LineVolts& read) {
    return label(read.lowest());
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

Votes<bool> yes_or_no(const Part&) {
    return {{false, 1.0}, {true, 1.0}};
}

Votes<bool> belts(const Part& part) {
    const DerivedFact<Drive> drive = part.motor ? drive_of(*part.motor) : DerivedFact<Drive>{};
    if (!drive || drive.is(Drive::either)) return yes_or_no(part);
    return {{drive.is(Drive::belt), 1.0}};
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

Votes<LineVolts> line_nominals(const Part& part) {
    Votes<LineVolts> votes;
    for (const auto& [volts, weight] : nominals(part)) votes.push_back({volts, weight});
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
    return one<std::string>(part.motor ? part.motor->program : std::nullopt);
}

Votes<SignalClass> signals(const Part& part) {
    if (part.module) return one<SignalClass>(part.module->signal);
    return one<SignalClass>(part.motor ? part.motor->signal : std::nullopt);
}

Votes<ShaftPosition> positions(const Part&) {
    return {{ShaftPosition::up, 1.0}, {ShaftPosition::down, 1.0}, {ShaftPosition::horizontal, 1.0}};
}

Votes<std::vector<int>> live_taps(const Part&) {
    return {{{1}, 1.0}, {{1, 2}, 1.0}};
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
bool drive_known(const Facts& facts) {
    return facts.belt.value.has_value();
}
bool place_known(const Facts& facts) {
    return facts.outdoors.value.has_value();
}
bool signal_known(const Facts& facts) {
    return facts.signal.value.has_value();
}

}  // namespace endbell::inline fields
