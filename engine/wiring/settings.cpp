#include "engine/wiring/settings.hpp"

#include <algorithm>

#include "engine/facts/rating.hpp"
#include "engine/wiring/feed.hpp"

namespace endbell::inline wiring {

namespace {

bool doubles(Voltage volts) {
    return nearest_class(volts).nominal == volt(115);
}

bool is_set_by(const Motor& motor, VoltageSelection how) {
    return std::any_of(motor.ratings.begin(), motor.ratings.end(),
                       [how](const Rating& r) { return r.selection == how; });
}

bool has_jumper(const Part& part) {
    return terminal(part, "jumper") != nullptr ||
           (part.motor && is_set_by(*part.motor, VoltageSelection::jumper));
}

/// Volts that the leads of a motor are set for, ascending, each once.
std::vector<PlateVolts> volts_by_leads(const Motor& motor) {
    std::vector<PlateVolts> all;
    for (const Rating& r : motor.ratings) {
        if (r.selection == VoltageSelection::leads && r.volts) all.push_back(*r.volts);
    }
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    return all;
}

/// The rating in use, where the supply is known and suits it.
std::optional<Rating> known_rating(const Facts& facts, const Part& part, const Limits& limits) {
    if (!facts.supply.at_motor() || facts.supply.dead) return std::nullopt;
    std::optional<Rating> chosen = rating_in_use(facts, part, limits);
    if (!chosen || !chosen->volts || !suits(*chosen->volts, facts.supply, limits)) return std::nullopt;
    return chosen;
}

void add_plug(const Motor& motor, const std::optional<Rating>& rating, std::vector<Setting>& list) {
    if (!is_set_by(motor, VoltageSelection::plug)) return;
    Setting setting;
    setting.what = SettingKind::plug;
    if (rating) {
        setting.done = SettingDone::set;
        setting.volts = rating->volts;
    }
    list.push_back(setting);
}

/// Leads set the volts where the ratings differ in them, and else the power.
void add_leads(const Motor& motor, const std::optional<Rating>& rating, std::vector<Setting>& list) {
    const std::vector<PlateVolts> volts = volts_by_leads(motor);
    if (volts.size() > 1) {
        Setting setting;
        setting.what = SettingKind::leads;
        if (rating && rating->volts) {
            setting.volts = rating->volts;
            setting.done = *rating->volts == volts.front()  ? SettingDone::low
                           : *rating->volts == volts.back() ? SettingDone::high
                                                            : SettingDone::set;
        }
        list.push_back(setting);
    }
    std::vector<Power> powers;
    for (const Rating& r : motor.ratings) {
        if (rating && r.selection == VoltageSelection::leads && r.power && r.volts == rating->volts)
            powers.push_back(*r.power);
    }
    const bool differ =
        std::any_of(powers.begin(), powers.end(), [&](const Power& p) { return p != powers.front(); });
    if (!differ) return;
    Setting setting;
    setting.what = SettingKind::power;
    setting.done = SettingDone::set;
    setting.power = rating->power;
    list.push_back(setting);
}

void add_rotation(const FailedUnit& job, const Motor& motor, std::vector<Setting>& list) {
    if (motor.rotation != Rotation::reversible) return;
    Setting setting;
    setting.what = phase_of(motor).is(3) ? SettingKind::rotation_leads : SettingKind::rotation;
    const std::optional<Rotation> needs = job.plate.rotation.said();
    if (needs == Rotation::cw_shaft_end) setting.done = SettingDone::clockwise;
    if (needs == Rotation::ccw_shaft_end) setting.done = SettingDone::counterclockwise;
    list.push_back(setting);
}

/// Of a motor with several speed leads the one lead that is used; where two are, the table of taps says which is which.
void add_speed(const WiringPlan& plan, std::vector<Setting>& list) {
    if (!plan.possible || !plan.line_taps || plan.taps.size() < 2) return;
    const TapRow* used = nullptr;
    for (const TapRow& row : plan.taps) {
        if (row.from.empty()) continue;
        if (used != nullptr) return;
        used = &row;
    }
    if (used == nullptr) return;
    Setting setting;
    setting.what = SettingKind::speed;
    setting.done = SettingDone::set;
    setting.lead = used->terminal;
    list.push_back(setting);
}

/// The old heater or dial belongs to the old motor (common practice; NEC 430.32).
void add_overload(const Motor& motor, const std::optional<Rating>& rating, std::vector<Setting>& list) {
    if (!phase_of(motor).is(3)) return;
    Setting setting;
    setting.what = SettingKind::overload;
    if (rating && rating->amps) {
        setting.done = SettingDone::set;
        setting.amps = rating->amps;
    }
    list.push_back(setting);
}

void add_capacitor(const Facts& facts, const Motor& motor, std::vector<Setting>& list) {
    const bool electronic = motor.family && is_electronic(*motor.family);
    Setting setting;
    setting.what = SettingKind::capacitor;
    if (electronic && facts.had_capacitor) {
        setting.done = SettingDone::removed;
        list.push_back(setting);
    }
    if (electronic || !motor.capacitor) return;
    setting.done = SettingDone::fitted;
    setting.capacitor = motor.capacitor;
    setting.capacitor_volts = motor.capacitor_volts;
    list.push_back(setting);
}

}  // namespace

/// The jumper doubles the rectified line: in at 115 to 120 V, out at 208 to 240 V, where it would put some 680 V on a bus made
/// for 340 V (a two-piece motor's manual). No part is set by a jumper for other volts.
Setting jumper_for(const Supply& supply) {
    Setting setting;
    setting.what = SettingKind::jumper;
    const std::optional<Voltage> nominal = supply.at_motor();
    if (!nominal || supply.dead) return setting;
    const Voltage named = nearest_class(*nominal).nominal;
    if (supply.measured && doubles(*supply.measured) != doubles(*nominal)) return setting;
    if (named == volt(115)) setting.done = SettingDone::in;
    if (named == volt(208) || named == volt(230)) setting.done = SettingDone::out;
    setting.volts = PlateVolts{*nominal, *nominal};
    return setting;
}

std::vector<Setting> settings_of(const FailedUnit& job, const Facts& facts, const WiredPart& wired,
                                 const WiringPlan& plan, const Limits& limits) {
    const Part& part = wired.itself;
    std::vector<Setting> list;
    if (!part.motor && !part.module) return list;
    if (has_jumper(part) || has_jumper(wired.pins())) list.push_back(jumper_for(facts.supply));
    if (!part.motor) return list;
    const Motor& motor = *part.motor;
    const std::optional<Rating> rating = known_rating(facts, part, limits);
    add_plug(motor, rating, list);
    add_leads(motor, rating, list);
    add_rotation(job, motor, list);
    add_speed(plan, list);
    add_overload(motor, rating, list);
    add_capacitor(facts, motor, list);
    return list;
}

}  // namespace endbell::inline wiring
