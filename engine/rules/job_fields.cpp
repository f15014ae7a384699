#include "engine/rules/job_fields.hpp"

#include <algorithm>
#include <array>

#include "engine/base/check.hpp"
#include "engine/base/text.hpp"
#include "engine/fields/bytes.hpp"
#include "engine/rules/answer.hpp"

namespace endbell::inline rules {

namespace {

void put(std::string& to, const std::string& text) {
    bytes::append(to, static_cast<double>(text.size()));
    to += text;
}
void put(std::string& to, const Terminal& terminal) {
    put(to, terminal.name);
    bytes::append(to, bytes::as_number(terminal.call));
}
template <class T>
void put(std::string& to, const T& scalar) {
    bytes::append(to, bytes::as_number(scalar));
}
template <class T>
void put(std::string& to, const std::vector<T>& list) {
    bytes::append(to, static_cast<double>(list.size()));
    for (const T& item : list) put(to, item);
}

/// FailedUnit.*Group.*Field
template <auto Group, auto Field>
void take(const Question& q, std::string& to) {
    const auto value = ((q.job.*Group).*Field).said();
    to.push_back(value ? '\1' : '\0');
    if (value) put(to, *value);
}

/// A derived fact, contradictions among what it stands on included.
template <auto Fact>
void take_fact(const Question& q, std::string& to) {
    const auto& fact = q.facts.*Fact;
    to.push_back(fact.disagree ? '\2' : fact ? '\1' : '\0');
    if (fact) put(to, *fact);
}

void take_supply(const Question& q, std::string& to) {
    const Supply& s = q.facts.supply;
    put(to, s.nominal);
    to.push_back(s.measured ? '\1' : '\0');
    if (s.measured) put(to, *s.measured);
    for (const bool yes : {s.dead, s.from_reading, s.from_plate}) to.push_back(yes ? '\1' : '\0');
}

void take_burner(const Question& q, std::string& to) {
    const Derived<bool>& burner = q.facts.heat.burner;
    to.push_back(!burner ? '\0' : *burner ? '\2' : '\1');
}

/// What readings came to, for the rule that asks which half failed.
void take_diagnosis(const Question& q, std::string& to) {
    to.push_back(static_cast<char>(q.diagnosis.fault));
    to.push_back(q.diagnosis.motor_half_proven_good ? '\1' : '\0');
    for (const MissingReading& missing : q.diagnosis.missing) put(to, missing.job_key);
}

constexpr auto unit = &FailedUnit::unit;
constexpr auto plate = &FailedUnit::plate;
constexpr auto measured = &FailedUnit::measured;
constexpr auto equipment = &FailedUnit::equipment;
constexpr auto controls = &FailedUnit::controls;

/// Which of several ratings is in use: see facts/rating.hpp.
constexpr std::array rating_keys{"equipment.supply",   "measured.line_volts", "plate.volts",
                                 "unit.plate_trusted", "plate.power",         "plate.speed"};

}  // namespace

const std::vector<JobField>& job_fields() {
    static const std::vector<JobField> all{
        {"diagnosis", take_diagnosis},
        {"unit.load", take<unit, &UnitFacts::load>},
        {"unit.shaft_points", take<unit, &UnitFacts::shaft_points>},
        {"unit.outdoors", take_fact<&Facts::outdoors>},
        {"unit.old_part_number", take<unit, &UnitFacts::old_part_number>},
        {"unit.assembly_number", take<unit, &UnitFacts::assembly_number>},
        {"unit.plate_trusted", take_supply},
        {"plate.family", take_fact<&Facts::family>},
        {"plate.power", take_fact<&Facts::power>},
        {"plate.volts", take_supply},
        {"plate.phase", take_fact<&Facts::phase>},
        {"plate.frequency", take_fact<&Facts::frequency>},
        {"plate.speed", take_fact<&Facts::speed>},
        {"plate.poles", take_fact<&Facts::poles>},
        {"plate.current", take<plate, &PlateFacts::current>},
        {"plate.service_factor", take<plate, &PlateFacts::service_factor>},
        {"plate.rotation", take<plate, &PlateFacts::rotation>},
        {"plate.double_shaft", take<plate, &PlateFacts::double_shaft>},
        {"plate.shaft_diameter", take<plate, &PlateFacts::shaft_diameter>},
        {"plate.shaft_length", take<plate, &PlateFacts::shaft_length>},
        {"plate.shaft_flat", take<plate, &PlateFacts::shaft_flat>},
        {"plate.body_diameter", take<plate, &PlateFacts::body_diameter>},
        {"plate.mount", take<plate, &PlateFacts::mount>},
        {"plate.bolt_circle", take<plate, &PlateFacts::bolt_circle>},
        {"plate.enclosure", take<plate, &PlateFacts::enclosure>},
        {"plate.bearing", take<plate, &PlateFacts::bearing>},
        {"plate.ambient", take<plate, &PlateFacts::ambient>},
        {"plate.protection", take<plate, &PlateFacts::protection>},
        {"plate.capacitor", take_fact<&Facts::capacitor>},
        {"plate.speeds", take<plate, &PlateFacts::speeds>},
        {"plate.signal", take_fact<&Facts::signal>},
        {"plate.tap_rule", take<plate, &PlateFacts::tap_rule>},
        {"plate.program", take<plate, &PlateFacts::program>},
        {"plate.connector", take<plate, &PlateFacts::connector>},
        {"measured.line_volts", take_supply},
        {"measured.live_taps", take<measured, &MeasuredFacts::live_taps>},
        {"measured.bore", take<measured, &MeasuredFacts::bore>},
        {"measured.shaft_needed", take<measured, &MeasuredFacts::shaft_needed>},
        {"measured.shaft_room", take<measured, &MeasuredFacts::shaft_room>},
        {"measured.band_diameter", take<measured, &MeasuredFacts::band_diameter>},
        {"measured.body_room", take<measured, &MeasuredFacts::body_room>},
        // The three readings of the two-piece test decide through the diagnosis.
        {"measured.windings", take_diagnosis},
        {"measured.winding_to_shell", take_diagnosis},
        {"measured.spins_free", take_diagnosis},
        {"equipment.minimum_circuit_ampacity", take<equipment, &EquipmentFacts::minimum_circuit_ampacity>},
        {"equipment.fan_amps", take<equipment, &EquipmentFacts::fan_amps>},
        {"equipment.compressor_amps", take<equipment, &EquipmentFacts::compressor_amps>},
        {"equipment.supply", take_supply},
        {"controls.source", take<controls, &ControlFacts::source>},
        {"controls.heat", take_burner},
        {"controls.terminals", take<controls, &ControlFacts::terminals>},
        {"controls.transformer", take<controls, &ControlFacts::transformer>},
        {"controls.transformer_load", take<controls, &ControlFacts::transformer_load>},
        {"controls.common_present", take<controls, &ControlFacts::common_present>},
        {"controls.run_signal_available", take<controls, &ControlFacts::run_signal_available>},
    };
    return all;
}

int job_field(std::string_view key) {
    const auto& all = job_fields();
    const auto found = std::find_if(all.begin(), all.end(), [&](const JobField& f) { return f.key == key; });
    check(found != all.end(), "rules look only at fields of job_fields");
    return static_cast<int>(found - all.begin());
}

std::vector<int> job_fields_of(const Rule& rule) {
    std::vector<std::string_view> keys = rule.job_keys;
    const bool ratings =
        std::any_of(rule.part_columns.begin(), rule.part_columns.end(),
                    [](std::string_view column) { return column.substr(0, 14) == "motor_ratings."; });
    if (ratings) keys.insert(keys.end(), rating_keys.begin(), rating_keys.end());
    std::vector<int> fields;
    for (const std::string_view key : keys) {
        const int field = job_field(key);
        if (std::find(fields.begin(), fields.end(), field) == fields.end()) fields.push_back(field);
    }
    return fields;
}

JobBytes::JobBytes(const Question& question) {
    for (const JobField& field : job_fields()) {
        field.take(question, all_);
        ends_.push_back(all_.size());
    }
    std::string limits;
    for (const Limit& row : question.limits.rows()) bytes::append(limits, row.value);
    limits_ = fingerprint(limits);
}

std::string_view JobBytes::field(int f) const {
    const auto i = static_cast<std::size_t>(f);
    const std::size_t begin = i == 0 ? 0 : ends_[i - 1];
    return std::string_view(all_).substr(begin, ends_[i] - begin);
}

std::string JobBytes::of(const std::vector<int>& fields) const {
    std::string taken;
    taken.reserve(128);
    taken = limits_;
    for (const int f : fields) taken += field(f);
    return taken;
}

namespace {

const std::vector<int>& fields_of_rule(std::size_t r) {
    static const std::vector<std::vector<int>> fields = [] {
        std::vector<std::vector<int>> of_rules;
        for (const Rule& rule : all_rules()) of_rules.push_back(job_fields_of(rule));
        return of_rules;
    }();
    return fields.at(r);
}

}  // namespace

std::string JobBytes::of_rule(std::size_t r) const {
    return of(fields_of_rule(r));
}

bool JobBytes::same_for_rule(std::size_t r, const JobBytes& other) const {
    const std::vector<int>& fields = fields_of_rule(r);
    return limits_ == other.limits_ &&
           std::all_of(fields.begin(), fields.end(), [&](int f) { return field(f) == other.field(f); });
}

std::string JobBytes::assembly() const {
    static const std::vector<int> fields{job_field("unit.load"), job_field("unit.assembly_number")};
    return of(fields);
}

}  // namespace endbell::inline rules
