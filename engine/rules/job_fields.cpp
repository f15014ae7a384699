#include "engine/rules/job_fields.hpp"

#include <algorithm>
#include <array>
#include <set>

#include "engine/airflow/duty.hpp"
#include "engine/base/ensure.hpp"
#include "engine/base/hash.hpp"
#include "engine/base/text.hpp"
#include "engine/fields/job_key.hpp"
#include "engine/fields/key_bytes.hpp"
#include "engine/rules/finding_draft.hpp"

namespace endbell::inline rules {

namespace {

/// A derived fact, contradictions among what it stands on included.
template <auto Datum>
void take_fact(const Query& q, std::string& to) {
    const auto& fact = q.facts.*Datum;
    to.push_back(fact.disagree ? '\2' : fact ? '\1' : '\0');
    if (fact) bytes::append_value(to, *fact);
}

void take_supply(const Query& q, std::string& to) {
    const Supply& s = q.facts.supply;
    bytes::append_value(to, s.nominal);
    to.push_back(s.measured ? '\1' : '\0');
    if (s.measured) bytes::append_value(to, *s.measured);
    for (const bool yes : {s.dead, s.from_reading, s.from_plate}) to.push_back(yes ? '\1' : '\0');
}

void take_burner(const Query& q, std::string& to) {
    const DerivedFact<bool>& burner = q.facts.heat.burner;
    to.push_back(!burner ? '\0' : *burner ? '\2' : '\1');
}

/// What readings came to, for the rule that asks which half failed.
void take_diagnosis(const Query& q, std::string& to) {
    to.push_back(static_cast<char>(q.diagnosis.fault));
    to.push_back(q.diagnosis.motor_half_proven_good ? '\1' : '\0');
    for (const MissingReading& missing : q.diagnosis.missing) bytes::append_value(to, missing.job_key);
}

/// What the old motor was measured to give, whatever readings and windows it comes from.
void take_duty(const Query& q, std::string& to) {
    const std::optional<Duty> duty = measured_duty(q.job, q.facts, q.limits);
    to.push_back(!duty ? '\0' : duty->largest ? '\2' : '\1');
    if (!duty) return;
    for (const EstimatedNumber& number : {duty->torque.in(pound_foot), duty->shaft.in(horsepower)}) {
        to.push_back(number.known ? '\1' : '\0');
        bytes::append(to, number.value);
        bytes::append(to, number.plus_minus);
    }
}

/// Which of several ratings is in use: see facts/rating.hpp.
constexpr std::array rating_keys{"equipment.supply",   "measured.line_volts", "plate.volts",
                                 "unit.plate_trusted", "plate.power",         "plate.speed"};

/// Where a rule is decided by what follows from a key, not by what is written there.
std::vector<JobField> derived_fields() {
    return {{"diagnosis", take_diagnosis},
            {"unit.belt_drive", take_fact<&Facts::belt>},
            {"unit.outdoors", take_fact<&Facts::outdoors>},
            {"unit.plate_trusted", take_supply},
            {"plate.family", take_fact<&Facts::family>},
            {"plate.power", take_fact<&Facts::power>},
            {"plate.volts", take_supply},
            {"plate.phase", take_fact<&Facts::phase>},
            {"plate.frequency", take_fact<&Facts::frequency>},
            {"plate.speed", take_fact<&Facts::speed>},
            {"plate.poles", take_fact<&Facts::poles>},
            {"plate.capacitor", take_fact<&Facts::capacitor>},
            {"plate.signal", take_fact<&Facts::signal>},
            {"measured.line_volts", take_supply},
            {"measured.watts", take_duty},
            // The three readings of the two-piece test decide through the diagnosis.
            {"measured.windings", take_diagnosis},
            {"measured.winding_to_shell", take_diagnosis},
            {"measured.spins_free", take_diagnosis},
            {"equipment.supply", take_supply},
            {"controls.heat", take_burner},
            {"controls.output_volts", take_fact<&Facts::output>}};
}

/// Every key that some rule names.
std::set<std::string_view> keys_of_rules() {
    std::set<std::string_view> keys{"unit.load", "unit.assembly_number"};
    keys.insert(rating_keys.begin(), rating_keys.end());
    for (const Rule& rule : all_rules()) keys.insert(rule.job_keys.begin(), rule.job_keys.end());
    return keys;
}

}  // namespace

const std::vector<JobField>& job_fields() {
    static const std::vector<JobField> all = [] {
        std::vector<JobField> fields = derived_fields();
        for (const std::string_view name : keys_of_rules()) {
            const auto derived =
                std::find_if(fields.begin(), fields.end(), [&](const JobField& f) { return f.key == name; });
            if (derived != fields.end()) continue;
            const JobKey* key = job_key(name);
            ensure(key != nullptr && key->take, "rules ask for keys whose values can be compared");
            fields.push_back({name, [key](const Query& q, std::string& to) { key->take(q.job, to); }});
        }
        return fields;
    }();
    return all;
}

int job_field(std::string_view key) {
    const auto& all = job_fields();
    const auto found = std::find_if(all.begin(), all.end(), [&](const JobField& f) { return f.key == key; });
    ensure(found != all.end(), "rules look only at fields of job_fields");
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

JobBytes::JobBytes(const Query& query) {
    for (const JobField& field : job_fields()) {
        field.take(query, all_);
        ends_.push_back(all_.size());
    }
    std::string limits;
    for (const Limit& row : query.limits.rows()) bytes::append(limits, row.value);
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
