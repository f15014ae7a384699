#include "tests/match/pairs.hpp"

#include <functional>

namespace endbell::match_tests {

namespace {

using namespace rule_tests;

template <class E>
std::vector<E> all() {
    std::vector<E> list;
    for (const Word<E>& w : Words<E>::table) list.push_back(w.value);
    return list;
}

/// A value of the list, a blank, or now and then a hint.
template <class T>
void put(Reading<T>& reading, const std::vector<T>& values, Dice& dice) {
    reading = {};
    if (dice.one_in(5)) return;
    const bool guessed = dice.one_in(12);  // before the value: compilers differ in which comes first
    reading = known(dice.of(values), guessed ? Origin::guessed : Origin::plate);
}

template <class T>
void put(std::optional<T>& field, const std::vector<T>& values, Dice& dice) {
    field.reset();
    if (!dice.one_in(5)) field = dice.of(values);
}

std::vector<Length> inches(std::initializer_list<double> list) {
    std::vector<Length> out;
    for (const double v : list) out.push_back(inch(v));
    return out;
}

const std::vector<double> powers{0.1, 0.2, 0.25, 1.0 / 3, 0.4, 0.49, 0.5, 0.51, 0.75, 1.0};
const std::vector<PlateVolts> plates{plate_volts(115), plate_volts(208, 230), plate_volts(230),
                                     plate_volts(208), plate_volts(277)};
const std::vector<double> rpms{800, 825, 1000, 1050, 1075, 1128.75, 1129, 1140, 1190, 1550, 1625, 1725, 3250};
const std::vector<Length> shafts =
    inches({0.3125, 0.4979, 0.498, 0.499, 0.5, 0.5001, 0.502, 19 / 25.4, 0.625});
const std::vector<Length> lengths = inches({3, 3.9, 4, 5, 5.25, 5.3, 6, 8});
const std::vector<Length> flats = inches({1, 2, 3.5, 4.5, 5});
const std::vector<Length> bodies = inches({3.3, 5.0, 5.5375, 5.6, 5.6625, 5.67, 6.5});
const std::vector<Length> circles = inches({4.75, 4.8125, 4.82, 5.875});
const std::vector<std::string> words{"PR-1", "PR 1", "PR-2", "AS-1", "AS-2"};
const std::vector<std::string> frames{"56", "56HZ", "FR 56H", "48Y", "143T", "none"};
const std::vector<std::string> plugs{"leads", "strip"};

std::vector<Temperature> celsius(std::initializer_list<double> list) {
    std::vector<Temperature> out;
    for (const double c : list) out.push_back(Temperature::celsius(c));
    return out;
}

std::vector<Speed> speeds_of(const std::vector<double>& list) {
    std::vector<Speed> out;
    for (const double v : list) out.push_back(rpm(v));
    return out;
}

using Spoil = std::function<void(World&, Dice&)>;

void new_ratings(World& w, Dice& d) {
    if (!w.part.motor) {
        put(w.part.module->volts, plates, d);
        return;
    }
    w.motor().ratings.clear();
    for (std::size_t n = d.below(4); n > 0; --n) {
        Rating r = rating(d.of(powers), d.of(plates), 4 + static_cast<double>(d.below(5)), d.of(rpms),
                          d.of(all<VoltageSelection>()));
        if (d.one_in(8)) r.power.reset();
        if (d.one_in(8)) r.volts.reset();
        if (d.one_in(8)) r.amps.reset();
        if (d.one_in(8)) r.speed.reset();
        w.motor().ratings.push_back(r);
    }
}

void new_taps(World& w, Dice& d) {
    if (!w.part.motor) return;
    w.motor().taps.clear();
    for (std::size_t n = d.below(6); n > 0; --n) {
        Tap t;
        t.number = static_cast<int>(n);
        if (!d.one_in(6)) t.torque = ounce_foot(20 + 10 * static_cast<double>(d.below(8)));
        w.motor().taps.push_back(t);
    }
}

const std::vector<Spoil>& job_spoils() {
    static const std::vector<Spoil> list{
        [](World& w, Dice& d) { put(w.job.unit.load, all<Load>(), d); },
        [](World& w, Dice& d) {
            put(w.job.unit.shaft_points, {ShaftPosition::up, ShaftPosition::down, ShaftPosition::horizontal},
                d);
        },
        [](World& w, Dice& d) {
            put(w.job.unit.outdoors, {true, false}, d);
        },
        [](World& w, Dice& d) {
            put(w.job.unit.belt_drive, {true, false}, d);
        },
        [](World& w, Dice& d) { put(w.job.unit.assembly_number, words, d); },
        [](World& w, Dice& d) {
            put(w.job.unit.plate_trusted, {true, false}, d);
        },
        [](World& w, Dice& d) { put(w.job.plate.family, all<Family>(), d); },
        [](World& w, Dice& d) {
            std::vector<std::vector<Power>> lists;
            for (const double p : powers) lists.push_back({horsepower(p)});
            lists.push_back({horsepower(0.5), horsepower(0.25)});
            put(w.job.plate.power, lists, d);
        },
        [](World& w, Dice& d) {
            std::vector<std::vector<PlateVolts>> lists;
            for (const PlateVolts& v : plates) lists.push_back({v});
            lists.push_back({plate_volts(115), plate_volts(208, 230)});
            put(w.job.plate.volts, lists, d);
        },
        [](World& w, Dice& d) {
            put(w.job.plate.phase, {1, 3}, d);
        },
        [](World& w, Dice& d) {
            put(w.job.plate.frequency, {hertz(50), hertz(57), hertz(60), hertz(61.8), hertz(63), hertz(64)},
                d);
        },
        [](World& w, Dice& d) { put(w.job.plate.speed, speeds_of(rpms), d); },
        [](World& w, Dice& d) {
            put(w.job.plate.poles, {4, 6, 8}, d);
        },
        [](World& w, Dice& d) {
            put(w.job.plate.service_factor, {1.0, 1.35}, d);
        },
        [](World& w, Dice& d) { put(w.job.plate.rotation, all<Rotation>(), d); },
        [](World& w, Dice& d) {
            put(w.job.plate.double_shaft, {true, false}, d);
        },
        [](World& w, Dice& d) { put(w.job.plate.shaft_diameter, shafts, d); },
        [](World& w, Dice& d) { put(w.job.measured.bore, shafts, d); },
        [](World& w, Dice& d) { put(w.job.plate.shaft_length, lengths, d); },
        [](World& w, Dice& d) { put(w.job.measured.shaft_needed, lengths, d); },
        [](World& w, Dice& d) { put(w.job.measured.shaft_room, lengths, d); },
        [](World& w, Dice& d) { put(w.job.plate.shaft_flat, flats, d); },
        [](World& w, Dice& d) { put(w.job.plate.second_shaft_diameter, shafts, d); },
        [](World& w, Dice& d) { put(w.job.measured.second_bore, shafts, d); },
        [](World& w, Dice& d) { put(w.job.plate.second_shaft_length, lengths, d); },
        [](World& w, Dice& d) { put(w.job.measured.second_shaft_needed, lengths, d); },
        [](World& w, Dice& d) { put(w.job.measured.second_shaft_room, lengths, d); },
        [](World& w, Dice& d) { put(w.job.plate.body_diameter, bodies, d); },
        [](World& w, Dice& d) { put(w.job.measured.band_diameter, bodies, d); },
        [](World& w, Dice& d) {
            put(w.job.measured.body_room, inches({5, 5.4, 5.5, 7}), d);
        },
        [](World& w, Dice& d) { put(w.job.plate.mount, all<Mount>(), d); },
        [](World& w, Dice& d) { put(w.job.plate.bolt_circle, circles, d); },
        [](World& w, Dice& d) { put(w.job.plate.enclosure, all<Enclosure>(), d); },
        [](World& w, Dice& d) { put(w.job.plate.bearing, all<Bearing>(), d); },
        [](World& w, Dice& d) {
            put(w.job.plate.ambient, celsius({40, 59, 60, 70}), d);
        },
        [](World& w, Dice& d) { put(w.job.plate.protection, all<Protection>(), d); },
        [](World& w, Dice& d) {
            put(w.job.plate.capacitor, {microfarad(5), microfarad(7.5)}, d);
        },
        [](World& w, Dice& d) {
            put(w.job.plate.speeds, {1, 2, 3, 4, 5}, d);
        },
        [](World& w, Dice& d) { put(w.job.plate.signal, all<SignalClass>(), d); },
        [](World& w, Dice& d) { put(w.job.plate.tap_rule, all<TapRule>(), d); },
        [](World& w, Dice& d) { put(w.job.plate.program, words, d); },
        [](World& w, Dice& d) {
            put(w.job.measured.module_good, {true, false}, d);
        },
        [](World& w, Dice& d) { put(w.job.plate.connector, plugs, d); },
        [](World& w, Dice& d) {
            std::vector<LineVolts> v{LineVolts(volt(229), volt(230), volt(228)),
                                     LineVolts(volt(118), volt(229), volt(112))};
            for (const double x : {0.0, 91.0, 103.5, 115.0, 126.5, 127.0, 187.0, 187.2, 195.0, 206.0, 207.0,
                                   222.0, 253.0, 254.0})
                v.emplace_back(volt(x));
            put(w.job.measured.line_volts, v, d);
        },
        [](World& w, Dice& d) {
            put(w.job.equipment.supply,
                {bare_supply(volt(115)), bare_supply(volt(120)), bare_supply(volt(208)),
                 bare_supply(volt(230)), bare_supply(volt(240)), bare_supply(volt(277))},
                d);
        },
        [](World& w, Dice& d) {
            put(w.job.equipment.fan_amps, {ampere(4), ampere(6), ampere(6.5)}, d);
        },
        [](World& w, Dice& d) {
            put(w.job.plate.current, {ampere(1), ampere(4.8), ampere(6)}, d);
            put(w.job.equipment.circuit_amps, {ampere(2), ampere(7.5), ampere(15)}, d);
        },
        [](World& w, Dice& d) {
            put(w.job.equipment.minimum_circuit_ampacity, {ampere(23.8), ampere(28.4)}, d);
        },
        [](World& w, Dice& d) {
            put(w.job.equipment.minimum_circuit_ampacity, {ampere(23.8), ampere(28.4)}, d);
            put(w.job.equipment.compressor_amps, {ampere(3), ampere(17.9)}, d);
        },
        [](World& w, Dice& d) { put(w.job.controls.source, all<ControlSource>(), d); },
        [](World& w, Dice& d) { put(w.job.controls.heat, all<HeatKind>(), d); },
        [](World& w, Dice& d) {
            put(w.job.controls.output, {volt(24), volt(120), volt(240)}, d);
        },
        [](World& w, Dice& d) {
            put(w.job.controls.run_signal_available, {true, false}, d);
        },
        [](World& w, Dice& d) {
            put(w.job.controls.common_present, {true, false}, d);
        },
        [](World& w, Dice& d) {
            put(w.job.controls.transformer, {volt_ampere(40)}, d);
            put(w.job.controls.transformer_load, {volt_ampere(20), volt_ampere(31.6), volt_ampere(39.6)}, d);
        },
        [](World& w, Dice& d) {
            put(w.job.controls.terminals,
                {{{"G", Call::circulate}}, {{"G", Call::circulate}, {"Y", Call::cool_high}}}, d);
        },
        [](World& w, Dice& d) {
            put(w.job.measured.live_taps, {{1}, {1, 4}}, d);
        },
        [](World& w, Dice& d) {
            w.diagnosis.fault = d.of(all<Fault>());
            w.diagnosis.motor_half_proven_good = d.one_in(2);
        },
    };
    return list;
}

const std::vector<Spoil>& motor_spoils() {
    static const std::vector<Spoil> list{
        [](World& w, Dice& d) { put(w.motor().family, all<Family>(), d); },
        [](World& w, Dice& d) {
            w.motor().loads = d.one_in(4) ? std::vector<Load>{} : std::vector<Load>{d.of(all<Load>())};
        },
        [](World& w, Dice& d) {
            w.motor().retrofit_for = {d.of(all<Family>()), d.of(all<Family>())};
        },
        [](World& w, Dice& d) {
            put(w.motor().phase, {1, 3}, d);
        },
        [](World& w, Dice& d) {
            put(w.motor().frequency, {hertz(50), hertz(60)}, d);
        },
        [](World& w, Dice& d) {
            put(w.motor().poles, {4, 6, 8}, d);
        },
        [](World& w, Dice& d) { put(w.motor().rotation, all<Rotation>(), d); },
        [](World& w, Dice& d) {
            put(w.motor().double_shaft, {true, false}, d);
        },
        [](World& w, Dice& d) { put(w.motor().shaft_diameter, shafts, d); },
        [](World& w, Dice& d) { put(w.motor().shaft_length, lengths, d); },
        [](World& w, Dice& d) { put(w.motor().shaft_flat, flats, d); },
        [](World& w, Dice& d) {
            w.job.plate.shaft_flat = known(d.of(flats));
            w.job.measured.shaft_needed = known(d.of(lengths));
            put(w.motor().shaft_flat, flats, d);
            put(w.motor().shaft_length, lengths, d);
        },
        [](World& w, Dice& d) { put(w.motor().second_shaft_diameter, shafts, d); },
        [](World& w, Dice& d) { put(w.motor().second_shaft_length, lengths, d); },
        [](World& w, Dice& d) {
            put(w.motor().shaft_cuttable, {true, false}, d);
        },
        [](World& w, Dice& d) { put(w.motor().body_diameter, bodies, d); },
        [](World& w, Dice& d) {
            put(w.motor().body_length, inches({5, 5.5, 7}), d);
        },
        [](World& w, Dice& d) { put(w.motor().mount, all<Mount>(), d); },
        [](World& w, Dice& d) { put(w.motor().bolt_circle, circles, d); },
        [](World& w, Dice& d) {
            w.job.plate.mount = known(Mount::face);
            w.job.plate.bolt_circle = known(d.of(circles));
            w.motor().mount = Mount::face;
            put(w.motor().bolt_circle, circles, d);
        },
        [](World& w, Dice& d) { put(w.motor().drive, all<Drive>(), d); },
        [](World& w, Dice& d) {
            w.job.plate.family = known(d.of(all<Family>()));
            w.motor().family = *w.job.plate.family;
            put(w.motor().drive, all<Drive>(), d);
            put(w.motor().enclosure, all<Enclosure>(), d);
            put(w.job.unit.belt_drive, {true, false}, d);
        },
        [](World& w, Dice& d) {
            const Mount held = d.one_in(2) ? Mount::base : Mount::ring;
            w.job.plate.mount = known(held);
            w.motor().mount = held;
            put(w.job.plate.frame, frames, d);
            put(w.motor().frame, frames, d);
        },
        [](World& w, Dice& d) { put(w.motor().enclosure, all<Enclosure>(), d); },
        [](World& w, Dice& d) { put(w.motor().bearing, all<Bearing>(), d); },
        [](World& w, Dice& d) {
            w.motor().positions = d.one_in(4) ? std::vector<ShaftPosition>{}
                                              : std::vector<ShaftPosition>{d.of(all<ShaftPosition>())};
        },
        [](World& w, Dice& d) {
            put(w.motor().ambient, celsius({40, 59, 60, 70}), d);
        },
        [](World& w, Dice& d) { put(w.motor().protection, all<Protection>(), d); },
        [](World& w, Dice& d) {
            put(w.motor().capacitor, {microfarad(5), microfarad(7.5)}, d);
        },
        [](World& w, Dice& d) {
            put(w.motor().capacitor_volts, {volt(370), volt(440)}, d);
        },
        [](World& w, Dice& d) {
            put(w.motor().speeds, {1, 2, 3, 4, 5}, d);
        },
        [](World& w, Dice& d) { put(w.motor().signal, all<SignalClass>(), d); },
        [](World& w, Dice& d) { put(w.motor().tap_rule, all<TapRule>(), d); },
        [](World& w, Dice& d) {
            put(w.motor().speed_limit, {rpm(1000), rpm(1300)}, d);
        },
        [](World& w, Dice& d) { put(w.motor().program, words, d); },
        [](World& w, Dice& d) {
            put(w.motor().includes_module, {true, false}, d);
        },
        [](World& w, Dice& d) { put(w.motor().assembly, words, d); },
        [](World& w, Dice& d) { put(w.motor().connector, plugs, d); },
        [](World& w, Dice& d) {
            w.motor().terminals = d.one_in(2) ? std::vector<PartTerminal>{}
                                              : std::vector<PartTerminal>{{"RUN", "run signal", ""}};
        },
        new_ratings,
        new_ratings,
        new_taps,
    };
    return list;
}

const std::vector<Spoil>& module_spoils() {
    static const std::vector<Spoil> list{
        [](World& w, Dice& d) { put(w.part.module->program, words, d); },
        [](World& w, Dice& d) { put(w.part.module->volts, plates, d); },
        [](World& w, Dice& d) { put(w.part.module->signal, all<SignalClass>(), d); },
        [](World& w, Dice& d) {
            put(w.part.module->power, {horsepower(0.5), horsepower(0.75), horsepower(0.25)}, d);
        },
    };
    return list;
}

}  // namespace

World base_pair(Dice& dice) {
    switch (dice.below(8)) {
        case 0:
            return blower();
        case 1:
            return condenser();
        case 2:
            return five_taps();
        case 3:
            return retrofit();
        case 4:
            return module_job();
        case 5:
            return inducer();
        case 6:
            return two_wheels();
        default: {
            World w = five_taps();
            w.job.plate.family = known(dice.one_in(2) ? Family::constant_airflow : Family::communicating);
            w.motor().family = *w.job.plate.family;
            w.job.plate.program = known(std::string("PR-1"));
            w.motor().program = "PR-1";
            w.motor().includes_module = !dice.one_in(3);
            return w;
        }
    }
}

void spoil_job(World& w, Dice& dice) {
    dice.of(job_spoils())(w, dice);
    open_untrusted_plate(w.job);
}

void spoil_part(World& w, Dice& dice) {
    dice.of(w.part.motor ? motor_spoils() : module_spoils())(w, dice);
}

World pair(Dice& dice) {
    World w = base_pair(dice);
    for (std::size_t n = dice.below(4); n > 0; --n) spoil_job(w, dice);
    for (std::size_t n = dice.below(4); n > 0; --n) spoil_part(w, dice);
    return w;
}

bool blank_part_field(World& w, Dice& dice) {
    if (w.part.module) {
        Module& m = *w.part.module;
        switch (dice.below(3)) {
            case 0:
                m.program.reset();
                return true;
            case 1:
                m.volts.reset();
                return true;
            default:
                m.signal.reset();
                return true;
        }
    }
    Motor& m = w.motor();
    const auto empty = [](auto& field) {
        const bool had = field.has_value();
        field.reset();
        return had;
    };
    switch (dice.below(24)) {
        case 0:
            return empty(m.family);
        case 1:
            return empty(m.phase);
        case 2:
            return empty(m.frequency);
        case 3:
            return empty(m.poles);
        case 4:
            return empty(m.rotation);
        case 5:
            return empty(m.double_shaft);
        case 6:
            return empty(m.shaft_diameter);
        case 7:
            return empty(m.shaft_length);
        case 8:
            return empty(m.shaft_flat);
        case 9:
            return empty(m.shaft_cuttable);
        case 10:
            return empty(m.body_diameter);
        case 11:
            return empty(m.body_length);
        case 12:
            return empty(m.mount);
        case 13:
            return empty(m.bolt_circle);
        case 14:
            return empty(m.enclosure);
        case 15:
            return empty(m.ambient);
        case 16:
            return empty(m.capacitor);
        case 17:
            return empty(m.speeds);
        case 18:
            return empty(m.signal);
        case 19:
            return empty(m.tap_rule);
        case 20:
            return empty(m.assembly);
        case 21:
            return empty(m.includes_module);
        case 22:
            return empty(m.drive);
        default:
            m.loads.clear();
            return true;
    }
}

}  // namespace endbell::match_tests
