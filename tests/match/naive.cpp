#include "tests/match/naive.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace endbell::naive {

namespace {

constexpr Verdict yes = Verdict::fits;
constexpr Verdict work = Verdict::fits_with_changes;
constexpr Verdict open = Verdict::not_shown;
constexpr Verdict no = Verdict::does_not_fit;
constexpr double hair = 1e-9;

// Hints never decide.
template <class T>
const T* told(const Reading<T>& r) {
    if (!r.value || r.origin == Origin::guessed || r.origin == Origin::assumed) return nullptr;
    return &*r.value;
}

template <class T, class U>
bool is(const T* value, U wanted) {
    return value && *value == wanted;
}

std::string letters(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (std::isalnum(static_cast<unsigned char>(c)))
            out += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    }
    return out;
}

bool electronic(Family f) {
    return f == Family::constant_torque || f == Family::constant_airflow || f == Family::communicating;
}

// Everything about one pair in plain numbers; negative or absent means unknown.
struct Pair {
    const FailedUnit& job;
    const Diagnosis& diagnosis;
    const Part& part;
    const Motor* m;
    const Module* mod;
    const Family* old;
    static constexpr Family permanent_split = Family::capacitor_run;
    bool motor_electronic = false;
    bool inducer = false;
    bool same_assembly = false;
    double old_hp = -1;
    double old_rpm = -1;

    Pair(const FailedUnit& j, const Diagnosis& d, const Part& p)
        : job(j),
          diagnosis(d),
          part(p),
          m(p.motor ? &*p.motor : nullptr),
          mod(p.module ? &*p.module : nullptr),
          old(told(j.plate.family)) {
        // A run capacitor stays in circuit: 1 to 100 uF at 370 V or more is a permanent-split motor's.
        const auto* uf = told(j.plate.capacitor);
        const auto* rated = told(j.plate.capacitor_volts);
        const bool run =
            uf && rated && uf->in(microfarad) >= 1 && uf->in(microfarad) <= 100 && rated->in(volt) >= 370;
        if (!old && run) old = &permanent_split;
        motor_electronic = m && m->family && electronic(*m->family);
        inducer = is(told(j.unit.load), Load::draft_inducer);
        const auto* number = told(j.unit.assembly_number);
        same_assembly = inducer && number && m && m->assembly && letters(*number) == letters(*m->assembly);
        if (const auto* list = told(j.plate.power)) {
            for (const Power p2 : *list) old_hp = std::max(old_hp, p2.in(horsepower));
        }
        if (const auto* speed = told(j.plate.speed)) old_rpm = speed->in(rpm);
    }
};

// -- supply
// ------------------------------------------------------------------------------------------------------

struct Lines {
    std::vector<double> nominal;
    double reading = -1;
    bool guessed = false;
    bool dead = false;
};

Lines lines(const Pair& p) {
    Lines l;
    const auto* read = told(p.job.measured.line_volts);
    double low = -1;
    if (read) {
        std::vector<double> legs;
        for (const Voltage v : read->each()) legs.push_back(v.in(volt));
        std::sort(legs.begin(), legs.end());
        low = legs.front();
        l.dead = low < 92 || low < 0.75 * legs.back();  // a lost leg feeds no motor
    }
    if (read && !l.dead) l.reading = low;
    const auto* stated = told(p.job.equipment.supply);
    const auto* plate = told(p.job.plate.volts);
    if (stated) {
        l.nominal = {stated->line.in(volt)};  // these pairs know bare figures only
    } else if (l.reading > 0) {
        l.guessed = true;
        double best = 1e9;
        for (const double n : {115.0, 208.0, 230.0, 277.0, 460.0, 575.0}) {
            if (std::abs(n - l.reading) < best) {
                best = std::abs(n - l.reading);
                l.nominal = {n};
            }
        }
    } else if (plate && !is(told(p.job.unit.plate_trusted), false)) {
        for (const PlateVolts& v : *plate) {
            l.nominal.push_back(v.low.in(volt));
            l.nominal.push_back(v.high.in(volt));
        }
    }
    return l;
}

bool inside(const PlateVolts& v, double volts) {
    return volts >= 0.9 * v.low.in(volt)-hair && volts <= 1.1 * v.high.in(volt) + hair;
}
bool serves(const PlateVolts& v, double nominal, const Lines& l) {
    return inside(v, nominal) && (l.reading < 0 || inside(v, l.reading));
}
bool comfortable(const PlateVolts& v, double nominal, const Lines& l) {
    if (!serves(v, nominal, l)) return false;
    if (nominal < 0.95 * v.low.in(volt) || nominal > 1.05 * v.high.in(volt)) return false;
    return !(nominal == 208 && l.reading > 0 && l.reading < 197);
}

std::vector<Rating> ratings(const Pair& p) {
    if (p.m) return p.m->ratings;
    Rating r;
    if (p.mod) {
        r.power = p.mod->power;
        r.volts = p.mod->volts;
    }
    return {r};
}

// The rating that a person would use.
std::optional<Rating> chosen(const Pair& p) {
    std::vector<Rating> pool = ratings(p);
    const Lines l = lines(p);
    const auto keep = [&pool](auto wanted) {
        std::vector<Rating> kept;
        for (const Rating& r : pool) {
            if (wanted(r)) kept.push_back(r);
        }
        if (!kept.empty()) pool = kept;
        return !kept.empty();
    };
    keep([&](const Rating& r) {
        for (const double n : l.nominal) {
            if (r.volts && serves(*r.volts, n, l)) return true;
        }
        return false;
    });
    if (p.old_hp > 0) {
        const double hp = p.old_hp;
        const auto of = [](const Rating& r) { return r.power ? r.power->in(horsepower) : -1.0; };
        if (!keep([&](const Rating& r) { return of(r) >= 0.98 * hp && of(r) <= hp / 0.98; })) {
            if (keep([&](const Rating& r) { return of(r) > hp / 0.98; })) {
                double least = 1e9;
                for (const Rating& r : pool) least = std::min(least, of(r));
                keep([&](const Rating& r) { return of(r) <= least * (1 + 1e-12); });
            } else if (keep([&](const Rating& r) { return of(r) > 0; })) {
                double most = 0;
                for (const Rating& r : pool) most = std::max(most, of(r));
                keep([&](const Rating& r) { return of(r) >= most * (1 - 1e-12); });
            }
        }
    }
    if (p.old_rpm > 0) {
        double nearest = 1e9;
        for (const Rating& r : pool)
            nearest = std::min(nearest, r.speed ? std::abs(r.speed->in(rpm)-p.old_rpm) : 1e9);
        keep([&](const Rating& r) {
            return (r.speed ? std::abs(r.speed->in(rpm)-p.old_rpm) : 1e9) <= nearest;
        });
    }
    if (pool.empty()) return std::nullopt;
    return pool.front();
}

Verdict supply_voltage(const Pair& p) {
    const Lines l = lines(p);
    if (l.dead || l.nominal.empty()) return open;
    bool blank = false;
    bool any_volts = false;
    for (const Rating& r : ratings(p)) {
        blank = blank || !r.volts;
        any_volts = any_volts || r.volts;
    }
    if (!any_volts) return open;
    int served = 0;
    bool comfort = false;
    for (const double n : l.nominal) {
        bool here = false;
        for (const Rating& r : ratings(p)) {
            here = here || (r.volts && serves(*r.volts, n, l));
            comfort = comfort || (r.volts && comfortable(*r.volts, n, l));
        }
        served += here ? 1 : 0;
    }
    if (served < static_cast<int>(l.nominal.size())) {
        if (blank) return open;
        if (served > 0) return open;
        for (const Rating& r : ratings(p)) {
            if (l.guessed && r.volts && inside(*r.volts, l.reading)) return open;
        }
        return no;
    }
    // Served everywhere. The rating used is the first that serves best, one without setting before one with.
    bool plain = false;
    for (const double n : l.nominal) {
        bool best_here = false;
        for (const Rating& r : ratings(p)) best_here = best_here || (r.volts && comfortable(*r.volts, n, l));
        if (comfort && !best_here) continue;
        for (const Rating& r : ratings(p)) {
            if (!r.volts) continue;
            const bool as_good = comfort ? comfortable(*r.volts, n, l) : serves(*r.volts, n, l);
            plain = plain || (as_good && r.selection == VoltageSelection::none);
        }
        break;
    }
    return plain ? yes : work;
}

// -- the rest, in the order of a counter talk
// ------------------------------------------------------------------------

/// 1: with its module; 0: without; -1: the catalog does not say.
int with_module(const Motor& m) {
    const bool pieces =
        m.family && (*m.family == Family::constant_airflow || *m.family == Family::communicating);
    if (m.family && !electronic(*m.family)) return 1;
    if (m.family && !pieces) return m.includes_module.value_or(true) ? 1 : 0;
    return m.includes_module ? (*m.includes_module ? 1 : 0) : -1;
}

Verdict wanted_motor(const Pair& p) {
    const int with = with_module(*p.m);
    if (with != 0) return with == 1 ? yes : open;
    const bool old_half = p.diagnosis.fault == Fault::motor;
    const bool two_piece = p.old && (*p.old == Family::constant_airflow || *p.old == Family::communicating);
    if (!old_half || !two_piece || !is(told(p.job.measured.module_good), true)) return work;
    if (p.m->ratings.empty()) return work;
    for (const Rating& r : p.m->ratings) {
        if (!r.power || std::abs(r.power->in(horsepower)-p.old_hp) > hair) return work;
    }
    return yes;
}

Verdict wanted_part(const Pair& p) {
    if (p.m) return wanted_motor(p);
    if (!p.old) return open;
    if (*p.old != Family::constant_airflow) return no;
    switch (p.diagnosis.fault) {
        case Fault::motor:
        case Fault::motor_and_module:
            return no;
        case Fault::module:
            return p.diagnosis.motor_half_proven_good ? yes : open;
        case Fault::not_shown:
            return open;
        default:
            return yes;
    }
}

Verdict load(const Pair& p) {
    if (p.mod) return yes;
    const auto* what = told(p.job.unit.load);
    if (!what || p.m->loads.empty()) return open;
    for (const Load l : p.m->loads) {
        if (l == *what) return yes;
    }
    return no;
}

Verdict inducer_assembly(const Pair& p) {
    if (p.mod || !p.inducer || p.same_assembly) return yes;
    return told(p.job.unit.assembly_number) && p.m->assembly ? no : open;
}

Verdict family(const Pair& p) {
    if (!p.old) return open;
    if (p.mod) return *p.old == Family::constant_airflow ? yes : no;
    if (!p.m->family) return open;
    const Family was = *p.old;
    const Family now = *p.m->family;
    if (was == now) return yes;
    if (p.inducer) return no;
    // The whole list of what may replace what, where the sheet says so.
    const auto is_one_of = [](Family f, std::initializer_list<Family> list) {
        return std::find(list.begin(), list.end(), f) != list.end();
    };
    using enum Family;
    const bool thinkable =
        (now == constant_torque && is_one_of(was, {capacitor_run, shaded_pole, split_phase, capacitor_start,
                                                   capacitor_start_and_run, constant_airflow})) ||
        (was == shaded_pole &&
         is_one_of(now, {capacitor_run, split_phase, capacitor_start, capacitor_start_and_run})) ||
        (was == capacitor_run && is_one_of(now, {split_phase, capacitor_start, capacitor_start_and_run}));
    // Motors with a start switch, by who may stand in for whom (field practice: equal or more starting torque).
    const bool switched_was = was == Family::split_phase || was == Family::capacitor_start ||
                              was == Family::capacitor_start_and_run;
    const bool capacitor_starts = now == Family::capacitor_start || now == Family::capacitor_start_and_run;
    if (switched_was && capacitor_starts) return yes;
    if (!thinkable) return no;
    for (const Family f : p.m->retrofit_for) {
        if (f == was) return work;
    }
    return no;
}

// Made for belts too: motors with a start switch, and three-phase ones; the rest sit in their own wheel.
bool belts_too(Family f) {
    return f == Family::split_phase || f == Family::capacitor_start || f == Family::capacitor_start_and_run ||
           f == Family::three_phase;
}

Verdict drive(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    int belt = -1;
    if (const auto* said = told(p.job.unit.belt_drive)) belt = *said ? 1 : 0;
    const auto* turns = told(p.job.unit.load);
    if (belt < 0 && turns && *turns != Load::indoor_blower) belt = 0;
    if (belt < 0 && p.old && !belts_too(*p.old)) belt = 0;
    std::string made = p.m->drive ? std::string(word(*p.m->drive)) : "";
    const auto shell = p.m->enclosure;
    const bool by_its_air = shell == Enclosure::open_air_over || shell == Enclosure::enclosed_air_over;
    if (made.empty() && p.m->family && !belts_too(*p.m->family)) made = "direct";
    if (made.empty() && by_its_air) made = "direct";
    if (made == "either") return yes;
    if (belt < 0 || made.empty()) return open;
    return made == (belt == 1 ? "belt" : "direct") ? yes : no;
}

Verdict program(const Pair& p) {
    const auto* needs = told(p.job.plate.program);
    const std::optional<std::string> has = p.mod ? p.mod->program : p.m->program;
    if (p.mod) {
        if (p.old && *p.old != Family::constant_airflow) return yes;
    } else {
        if (!p.m->family || (p.old && *p.old != *p.m->family)) return yes;
        if (*p.m->family == Family::constant_torque && (!needs || !has)) return yes;
        if (!electronic(*p.m->family)) return yes;
    }
    if (needs && !has && p.m && with_module(*p.m) == 0) return yes;
    if (!needs || !has) return open;
    return letters(*needs) == letters(*has) ? yes : no;
}

int phases(const Family* f) {
    if (!f) return 0;
    if (*f == Family::three_phase) return 3;
    return electronic(*f) ? 0 : 1;
}

Verdict phase(const Pair& p) {
    if (p.mod) return yes;
    const int built = phases(p.m->family ? &*p.m->family : nullptr);
    const bool capacitor = told(p.job.plate.capacitor) != nullptr;
    int needs = told(p.job.plate.phase) ? *told(p.job.plate.phase) : phases(p.old);
    if (needs == 0 && capacitor) needs = 1;
    if (capacitor && told(p.job.plate.phase) && needs != 1) return open;
    const int has = p.m->phase ? *p.m->phase : built;
    if (needs == 0 || has == 0) return open;
    if (phases(p.old) != 0 && needs != phases(p.old)) return open;  // contradictions prove nothing
    if (built != 0 && has != built) return open;
    return needs == has ? yes : no;
}

int poles_at(double speed, double hz);

// As the plate says; 60 where its volts are North American only; else the one frequency that the speed allows. 0: open.
double line_hertz(const Pair& p) {
    if (const auto* said = told(p.job.plate.frequency)) return said->in(hertz);
    if (const auto* plate = told(p.job.plate.volts)) {
        for (const PlateVolts& v : *plate) {
            for (const double n : {110, 115, 120, 200, 208, 265, 270, 277, 440, 460, 480, 575, 600}) {
                if (v.low.in(volt) == n) return 60;
            }
        }
    }
    if (p.old_rpm < 0 || !p.old || electronic(*p.old)) return 0;
    const bool at_60 = poles_at(p.old_rpm, 60) != 0;
    const bool at_50 = poles_at(p.old_rpm, 50) != 0;
    return at_60 == at_50 ? 0 : at_60 ? 60 : 50;
}

Verdict frequency(const Pair& p) {
    const double hz = line_hertz(p);
    if (p.mod || p.motor_electronic || hz == 0) return yes;
    if (!p.m->frequency) return open;
    const double off = std::abs(hz / p.m->frequency->in(hertz)-1);
    if (off > 0.05 + hair) return no;
    double volts_off = 0;
    const Lines l = lines(p);
    const auto r = chosen(p);
    if (l.reading > 0 && r && r->volts) {
        if (l.reading < r->volts->low.in(volt)) volts_off = 1 - l.reading / r->volts->low.in(volt);
        if (l.reading > r->volts->high.in(volt)) volts_off = l.reading / r->volts->high.in(volt)-1;
    }
    return off > 0 && off + volts_off > 0.10 + hair ? no : yes;
}

// Full-load ranges of each pole count at 60 Hz: 2 to 20 % below synchronous, above the next slower
// synchronous speed.
int poles_at(double speed, double hz) {
    const double s = speed * 60 / hz;
    if (s >= 2880 - hair && s <= 3528 + hair) return 2;
    if (s >= 1440 - hair && s <= 1764 + hair) return 4;
    if (s >= 960 - hair && s <= 1176 + hair) return 6;
    if (s >= 720 - hair && s <= 882 + hair) return 8;
    if (s >= 600 - hair && s <= 705.6 + hair) return 10;
    if (s >= 480 - hair && s <= 588 + hair) return 12;
    return 0;
}

Verdict poles(const Pair& p) {
    if (p.mod || p.motor_electronic || (p.old && electronic(*p.old)) || p.same_assembly) return yes;
    const double hz = line_hertz(p);
    int was = told(p.job.plate.poles) ? *told(p.job.plate.poles) : 0;
    int seen = p.old_rpm > 0 ? poles_at(p.old_rpm, hz > 0 ? hz : 60) : 0;
    if (p.old_rpm > 0 && hz == 0) {
        const int at_50 = poles_at(p.old_rpm, 50);
        seen = seen && at_50 && seen != at_50 ? 0 : std::max(seen, at_50);
    }
    if (was && seen && was != seen) return open;
    if (!was) was = seen;
    int now = p.m->poles ? *p.m->poles : 0;
    const auto r = chosen(p);
    const double part_hz = p.m->frequency ? p.m->frequency->in(hertz) : 60;
    const int turns = r && r->speed ? poles_at(r->speed->in(rpm), part_hz) : 0;
    if (now && turns && now != turns) return open;
    if (!now) now = turns;
    if (!was || !now) return open;
    return was == now ? yes : no;
}

Verdict speed(const Pair& p) {
    if (p.mod) return yes;
    if (p.motor_electronic) return p.m->speed_limit && p.old_rpm > p.m->speed_limit->in(rpm) ? no : yes;
    if ((p.old && electronic(*p.old)) || p.same_assembly || p.old_rpm < 0) return yes;
    const auto r = chosen(p);
    if (!r || !r->speed) return open;
    const double now = r->speed->in(rpm);
    return now >= p.old_rpm * 0.95 - 1e-6 && now <= p.old_rpm * 1.05 + 1e-6 ? yes : no;
}

// The second standard size above `hp`: what a motor must stay below.
double two_sizes_up(double hp) {
    int above = 0;
    for (const double s : {1.0 / 40, 1.0 / 20, 1.0 / 15, 1.0 / 12, 0.1, 0.125, 1.0 / 6, 0.2, 0.25, 1.0 / 3,
                           0.5, 0.75, 1.0, 1.5, 2.0, 3.0, 5.0}) {
        if (s > hp / 0.98 && ++above == 2) return s;
    }
    return 1e9;
}

Verdict power(const Pair& p) {
    if (p.same_assembly) return yes;
    const auto r = chosen(p);
    const double now = r && r->power ? r->power->in(horsepower) : -1;
    if (p.mod) {
        if (p.old_hp < 0 || now < 0) return yes;
        return std::abs(now / p.old_hp - 1) < 0.0205 ? yes : no;
    }
    if (p.old_hp < 0 || now < 0) return open;
    if (now < 0.98 * p.old_hp - hair) return no;
    const bool larger = now > p.old_hp / 0.98 + hair;
    if (p.m->family && *p.m->family == Family::constant_torque) {
        const bool same_kind = is(p.old, Family::constant_torque);
        if (!larger && same_kind) return yes;
        double strongest = -1;
        for (const Tap& t : p.m->taps) {
            if (t.torque) strongest = std::max(strongest, t.torque->in(ounce_foot));
        }
        if (p.old_rpm < 0 || strongest < 0) return open;
        const double duty = 84033.8 * p.old_hp / p.old_rpm;
        if (strongest < 0.98 * duty) return no;
        return larger && same_kind ? work : yes;
    }
    if (!larger) return yes;
    if (p.inducer || now >= 0.98 * two_sizes_up(p.old_hp)) return no;
    return is(told(p.job.unit.load), Load::outdoor_fan) ? yes : work;
}

Verdict full_load_current(const Pair& p) {
    const auto* plate = told(p.job.equipment.fan_amps);
    const auto* circuit = told(p.job.equipment.circuit_amps);
    const auto* old = told(p.job.plate.current);
    if (p.mod || (!plate && !circuit && !old)) return yes;
    const auto r = chosen(p);
    if (!r || !r->amps) return open;
    const double now = r->amps->in(ampere);
    if (plate && now > plate->in(ampere) + hair) return no;
    if (circuit) return now * 1.25 > circuit->in(ampere) + hair ? no : yes;
    if (plate) return yes;
    return now > 1.25 * old->in(ampere) + hair ? open : yes;
}

Verdict circuit_ampacity(const Pair& p) {
    const auto* plate = told(p.job.equipment.minimum_circuit_ampacity);
    const auto* compressor = told(p.job.equipment.compressor_amps);
    if (p.mod || !plate || !compressor) return yes;
    const auto r = chosen(p);
    if (!r || !r->amps) return open;
    const double a = r->amps->in(ampere);
    const double b = compressor->in(ampere);
    return std::max(1.25 * a + b, a + 1.25 * b) > plate->in(ampere) + 0.05 + hair ? no : yes;
}

const SignalClass* given(const Pair& p, SignalClass& store) {
    const auto* stated = told(p.job.plate.signal);
    if (p.old && !electronic(*p.old)) {
        if (stated && *stated != SignalClass::switched_line) return nullptr;
        store = SignalClass::switched_line;
        return &store;
    }
    if (stated) return stated;
    if (!p.old) return nullptr;
    const auto* from = told(p.job.controls.source);
    if (*p.old != Family::constant_torque || !from || *from == ControlSource::pulse_or_serial) return nullptr;
    store = *from == ControlSource::board_line ? SignalClass::line_signal : SignalClass::control_24v;
    return &store;
}

/// A line relay's coil: what the output carries where that is written; else, of speed leads, what the old motor ran on.
Verdict by_line_relay(const Pair& p, bool speed_leads) {
    if (told(p.job.controls.output)) return work;
    if (!speed_leads) return open;
    bool low = false;
    bool high = false;
    for (const double v : lines(p).nominal) (v <= 120 ? low : high) = true;
    return low == high ? open : work;
}

Verdict retrofit_signal(const Pair& p) {
    const auto* from = told(p.job.controls.source);
    if (!from) return open;
    if (*from == ControlSource::pulse_or_serial) return no;
    bool lead = false;
    for (const PartTerminal& t : p.m->terminals) lead = lead || t.function == "run signal";
    if (*from == ControlSource::board_line && !lead) return by_line_relay(p, true);
    if (*from != ControlSource::thermostat) return work;
    const auto* heat = told(p.job.controls.heat);
    if (!heat) return open;
    if (*heat != HeatKind::gas && *heat != HeatKind::oil && *heat != HeatKind::dual_fuel) return work;
    const auto* keeps = told(p.job.controls.run_signal_available);
    if (!keeps) return open;
    return *keeps && lead ? work : no;
}

Verdict signal_class(const Pair& p) {
    SignalClass store{};
    const SignalClass* has = given(p, store);
    if (p.mod) {
        if (!has || !p.mod->signal) return open;
        return *has == *p.mod->signal ? yes : no;
    }
    if (with_module(*p.m) == 0) return yes;
    std::optional<SignalClass> needs = p.m->signal;
    if (p.m->family && !electronic(*p.m->family)) {
        if (needs && *needs != SignalClass::switched_line) return open;
        needs = SignalClass::switched_line;
    }
    if (p.same_assembly && has && !needs) return yes;
    if (!has || !needs) return open;
    if (*has == *needs) return yes;
    if (*has == SignalClass::switched_line && *needs == SignalClass::control_24v) return retrofit_signal(p);
    if (*has == SignalClass::switched_line && *needs == SignalClass::line_signal) return work;
    if (*has == SignalClass::control_24v && *needs == SignalClass::line_signal) return work;
    if (*has == SignalClass::line_signal && *needs == SignalClass::control_24v)
        return by_line_relay(p, false);
    return no;
}

Verdict control_power(const Pair& p) {
    if (p.mod || p.m->signal != SignalClass::control_24v || with_module(*p.m) == 0) return yes;
    const auto* common = told(p.job.controls.common_present);
    if (common && !*common) return no;
    SignalClass store{};
    if (is(given(p, store), SignalClass::control_24v)) return yes;
    if (!common) return open;
    const auto* rated = told(p.job.controls.transformer);
    const auto* load_now = told(p.job.controls.transformer_load);
    if (!rated || !load_now) return yes;
    return load_now->in(volt_ampere) + 0.48 > rated->in(volt_ampere) * (1 + hair) ? work : yes;
}

Verdict tap_rule(const Pair& p) {
    if (p.mod || p.m->family != Family::constant_torque || p.m->tap_rule == TapRule::highest_tap_wins)
        return yes;
    int two = -1;  // unknown
    if (told(p.job.controls.source)) {
        const auto* list = told(p.job.controls.terminals);
        two = list && list->size() < 2 ? 0 : 1;
    }
    const auto* live = told(p.job.measured.live_taps);
    if (live && live->size() >= 2) two = 1;
    if (two == 0) return yes;
    if (!p.m->tap_rule) return open;
    if (is(p.old, Family::constant_torque) && is(told(p.job.plate.tap_rule), TapRule::one_tap_only))
        return yes;
    return two == 1 ? work : open;
}

Verdict tap_count(const Pair& p) {
    if (p.mod || p.m->family == Family::constant_airflow || p.m->family == Family::communicating) return yes;
    const auto* needs = told(p.job.plate.speeds);
    if (!needs) return yes;
    const int has = p.m->speeds ? *p.m->speeds : static_cast<int>(p.m->taps.size());
    if (has == 0) return open;
    if (has < *needs) return work;
    return has > *needs && p.m->family && !electronic(*p.m->family) ? work : yes;
}

Verdict rotation(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    if (!p.m->rotation) return open;
    if (*p.m->rotation == Rotation::reversible) return work;
    const auto* needs = told(p.job.plate.rotation);
    if (!needs || *needs == Rotation::reversible) return open;
    return *needs == *p.m->rotation ? yes : no;
}

// One end: what goes into the bore...
Verdict into_bore(const Length* measured, const Length* was, const std::optional<Length>& offered) {
    const auto* bore = measured ? measured : was;
    if (!bore || !offered) return open;
    const double read = bore->in(inch), shaft = offered->in(inch);
    // In 64ths: 1/4, 5/16, 3/8, 7/16, 1/2, 5/8, 3/4, 7/8, 1, 1 1/8; then IEC shafts.
    std::vector<double> sold{9 / 25.4, 11 / 25.4, 14 / 25.4, 19 / 25.4, 24 / 25.4};
    for (const int parts : {16, 20, 24, 28, 32, 40, 48, 56, 64, 72}) sold.push_back(parts / 64.0);
    double meant = 0;
    for (const double size : sold) meant = size - read > 1e-8 && size - read < 0.002 - 1e-8 ? size : meant;
    for (const double size : sold) meant = std::abs(size - read) <= 1e-8 ? 0 : meant;
    if (meant > 0 && shaft <= meant + 1e-8) return open;
    if (shaft > read + 1e-8) return no;
    return read - shaft > 0.002 + 1e-8 ? work : yes;
}

// ... and what reaches through the hub and clears.
Verdict through_hub(const Length* needed, const Length* was, const Length* room,
                    const std::optional<Length>& offered, const std::optional<bool>& cuttable) {
    if (!needed && !was && !room) return yes;
    if (!offered) return open;
    const double has = offered->in(inch);
    const double least = needed ? needed->in(inch) : was ? was->in(inch) : 0;
    if (needed && room && least > room->in(inch) + 1e-8) return open;
    const bool fills_the_room = room && has + 1e-8 >= room->in(inch);
    if (needed && has + 1e-8 < least) return no;
    if (!needed && has + 1e-8 < least && !fills_the_room) return open;
    double longest = 0;
    if (needed) longest = needed->in(inch) + 0.25;
    if (was) longest = std::max(longest, was->in(inch) + 0.25);
    if (room) longest = room->in(inch);
    if (has <= longest + 1e-8) return yes;
    if (!cuttable) return open;
    if (*cuttable) return work;
    return room ? no : open;
}

Verdict double_shaft(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    const auto* needs = told(p.job.plate.double_shaft);
    if (!p.m->double_shaft) return needs ? open : yes;
    if (!*p.m->double_shaft) return is(needs, true) ? no : yes;
    if (!is(needs, true)) return p.m->shaft_cuttable == false ? yes : work;
    const MeasuredReadings& now = p.job.measured;
    const PlateReadings& plate = p.job.plate;
    return std::max(
        into_bore(told(now.second_bore), told(plate.second_shaft_diameter), p.m->second_shaft_diameter),
        through_hub(told(now.second_shaft_needed), told(plate.second_shaft_length),
                    told(now.second_shaft_room), p.m->second_shaft_length, p.m->shaft_cuttable));
}

Verdict shaft_diameter(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    return into_bore(told(p.job.measured.bore), told(p.job.plate.shaft_diameter), p.m->shaft_diameter);
}

Verdict shaft_length(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    return through_hub(told(p.job.measured.shaft_needed), told(p.job.plate.shaft_length),
                       told(p.job.measured.shaft_room), p.m->shaft_length, p.m->shaft_cuttable);
}

Verdict shaft_flat(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    if (!told(p.job.plate.shaft_flat)) return yes;
    if (!p.m->shaft_flat) return open;
    const auto* hub = told(p.job.measured.shaft_needed);
    if (!hub || !p.m->shaft_length) return yes;
    return p.m->shaft_length->in(inch)-p.m->shaft_flat->in(inch) >= hub->in(inch)-1e-8 ? no : yes;
}

Verdict body_diameter(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    const auto* mount_told = told(p.job.plate.mount);
    const bool gripped = !mount_told || *mount_told == Mount::band || *mount_told == Mount::ring;
    const auto* needs = told(p.job.measured.band_diameter) ? told(p.job.measured.band_diameter)
                                                           : told(p.job.plate.body_diameter);
    if (!needs) return gripped ? open : yes;
    if (!p.m->body_diameter) return open;
    const double gap = needs->in(inch)-p.m->body_diameter->in(inch);
    if (!gripped || std::abs(gap) <= 1.0 / 16 + 1e-8) return yes;
    return gap > 0 ? work : no;
}

Verdict body_length(const Pair& p) {
    const auto* room = told(p.job.measured.body_room);
    if (p.mod || p.same_assembly || !room) return yes;
    if (!p.m->body_length) return open;
    return p.m->body_length->in(inch) > room->in(inch) + 1e-8 ? no : yes;
}

Verdict mount(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    const auto* there = told(p.job.plate.mount);
    if (!there || !p.m->mount) return open;
    // Rows: what is there; columns: band studs lugs ring base face on the part.
    static const std::map<Mount, std::string> table{{Mount::band, "yynynn"}, {Mount::studs, "wywwnn"},
                                                    {Mount::lugs, "wwywnn"}, {Mount::ring, "wwwynn"},
                                                    {Mount::base, "nnnnyn"}, {Mount::face, "nnnnny"}};
    switch (table.at(*there).at(static_cast<std::size_t>(*p.m->mount))) {
        case 'y':
            return yes;
        case 'w':
            return work;
        default:
            return no;
    }
}

Verdict frame(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    const auto* there = told(p.job.plate.mount);
    if (!there || p.m->mount != *there || (*there != Mount::base && *there != Mount::ring)) return yes;
    const auto digits = [](const std::string& text) {
        std::string out;
        for (const char c : text) {
            if (c >= '0' && c <= '9') {
                out += c;
            } else if (!out.empty()) {
                break;
            }
        }
        return out;
    };
    const auto* old = told(p.job.plate.frame);
    if (!old || digits(*old).empty()) return yes;
    const std::string has = p.m->frame ? digits(*p.m->frame) : "";
    if (has.empty()) return open;
    return digits(*old) == has ? yes : no;
}

Verdict bolt_circle(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    const auto* there = told(p.job.plate.mount);
    const auto* needs = told(p.job.plate.bolt_circle);
    if (!there || p.m->mount != *there || !needs) return yes;
    if (*there == Mount::band || *there == Mount::ring || *there == Mount::base) return yes;
    if (!p.m->bolt_circle) return open;
    if (std::abs(needs->in(inch)-p.m->bolt_circle->in(inch)) <= 0.0625 + 1e-8) return yes;
    return *there == Mount::face ? no : work;
}

int outdoors(const Pair& p) {
    if (const auto* o = told(p.job.unit.outdoors)) return *o ? 1 : 0;
    if (const auto* l = told(p.job.unit.load)) return *l == Load::outdoor_fan ? 1 : 0;
    return -1;
}

Verdict enclosure(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    const auto e = p.m->enclosure;
    if (e && *e != Enclosure::open_air_over && *e != Enclosure::open_drip_proof) return yes;
    if (outdoors(p) < 0) return open;
    if (outdoors(p) == 1) return e ? no : open;
    return told(p.job.plate.enclosure) && !e ? open : yes;
}

Verdict position(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    const auto* points = told(p.job.unit.shaft_points);
    if (!points) return outdoors(p) == 1 ? open : yes;
    if (p.m->positions.empty()) return open;
    bool allowed = false;
    for (const ShaftPosition s : p.m->positions) allowed = allowed || s == *points || s == ShaftPosition::all;
    if (!allowed) return no;
    return outdoors(p) == 1 && *points == ShaftPosition::up ? work : yes;
}

Verdict ambient(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    if (const auto* was = told(p.job.plate.ambient)) {
        if (!p.m->ambient) return open;
        return p.m->ambient->in_fahrenheit() < was->in_fahrenheit() - 1e-6 ? no : yes;
    }
    if (outdoors(p) != 1) return yes;
    return p.m->ambient && p.m->ambient->in_fahrenheit() > 139.999 ? yes : open;  // 60 C is 140 F
}

Verdict protection(const Pair& p) {
    if (p.mod || p.same_assembly) return yes;
    if (!p.m->protection) return p.motor_electronic ? yes : open;
    return *p.m->protection == Protection::none ? no : yes;
}

Verdict capacitor(const Pair& p) {
    if (p.mod) return yes;
    if (!p.m->family) return open;
    if (*p.m->family == Family::capacitor_run) {
        if (p.same_assembly && !p.m->capacitor) return yes;
        return p.m->capacitor && p.m->capacitor_volts ? work : open;
    }
    if (*p.m->family == Family::capacitor_start || *p.m->family == Family::capacitor_start_and_run)
        return yes;
    return told(p.job.plate.capacitor) || is(p.old, Family::capacitor_run) ? work : yes;
}

Verdict connector(const Pair& p) {
    if (p.mod || p.same_assembly || with_module(*p.m) == 0) return yes;
    if (p.old && p.m->family && *p.old != *p.m->family) return yes;
    const auto* there = told(p.job.plate.connector);
    if (!there) return yes;
    if (!p.m->connector) return open;
    return *there == *p.m->connector ? yes : work;
}

}  // namespace

Opinion judge(const FailedUnit& job, const Diagnosis& diagnosis, const Part& part) {
    const Pair p(job, diagnosis, part);
    return {{"part-status", yes},
            {"service-factor", yes},
            {"bearing", yes},
            {"wanted-part", wanted_part(p)},
            {"load", load(p)},
            {"inducer-assembly", inducer_assembly(p)},
            {"family", family(p)},
            {"drive", drive(p)},
            {"program", program(p)},
            {"supply-voltage", supply_voltage(p)},
            {"phase", phase(p)},
            {"frequency", frequency(p)},
            {"poles", poles(p)},
            {"speed", speed(p)},
            {"power", power(p)},
            {"full-load-current", full_load_current(p)},
            {"circuit-ampacity", circuit_ampacity(p)},
            {"signal-class", signal_class(p)},
            {"control-power", control_power(p)},
            {"tap-rule", tap_rule(p)},
            {"tap-count", tap_count(p)},
            {"rotation", rotation(p)},
            {"double-shaft", double_shaft(p)},
            {"shaft-diameter", shaft_diameter(p)},
            {"shaft-length", shaft_length(p)},
            {"shaft-flat", shaft_flat(p)},
            {"body-diameter", body_diameter(p)},
            {"body-length", body_length(p)},
            {"mount", mount(p)},
            {"frame", frame(p)},
            {"bolt-circle", bolt_circle(p)},
            {"enclosure", enclosure(p)},
            {"position", position(p)},
            {"ambient", ambient(p)},
            {"protection", protection(p)},
            {"capacitor", capacitor(p)},
            {"connector", connector(p)}};
}

}  // namespace endbell::naive
