#include "engine/select/steps_of.hpp"

#include <array>

#include "engine/fields/job_key.hpp"
#include "engine/model/limit.hpp"
#include "engine/words/power.hpp"

namespace endbell::inline select {

namespace {

/// Rows that bound a size by a share of another of its kind. Of shares of what is worked out the sizes between tell.
template <class T>
constexpr auto shares = std::array<LimitOf<double>, 0>{};
template <>
constexpr auto shares<Voltage> =
    std::array{limit::voltage_band, limit::voltage_caution, limit::relay_pull_in, limit::relay_drop_out};
template <>
constexpr auto shares<Frequency> = std::array{limit::voltage_frequency};
template <>
constexpr auto shares<Power> = std::array{limit::power_low};
template <>
constexpr auto shares<Speed> = std::array{limit::speed_match};
template <>
constexpr auto shares<Current> =
    std::array{limit::current_over_plate, limit::current_over_old, limit::current_circuit};
template <>
constexpr auto shares<Capacitance> = std::array{limit::capacitor_part, limit::capacitor_replace};
template <>
constexpr auto shares<Airflow> = std::array{limit::airflow_match, limit::airflow_warn};
template <>
constexpr auto shares<ApparentPower> = std::array{limit::transformer_plan, limit::transformer_fuse};

/// A row written in units of T, whatever it is of.
template <class D>
void add_rows_in(const Limits& limits, StepSizes& steps) {
    for (const Limit& row : limits.rows()) {
        for (const RowUnit<D>& known : row_units<D>) {
            if (known.text == row.unit) steps.add(known.unit(row.value));
        }
    }
}

/// Every size so far, and what lies that share off it; or that share of it, and what it is that share of.
template <class T>
void add_shares(const Limits& limits, StepSizes& steps) {
    const std::vector<T> sizes = steps.of<T>();
    for (const LimitOf<double>& row : shares<T>) {
        const double share = limits.value(row);
        for (const T size : sizes) {
            const bool off = share < 0.5;
            steps.add(size * (off ? 1 - share : share));
            steps.add(size * (off ? 1 + share : 1 / share));
        }
    }
}

template <class T>
void add(const std::optional<T>& size, StepSizes& steps) {
    if (size) steps.add(*size);
}
void add(const char* key, const std::optional<std::string>& text, StepSizes& steps) {
    if (text) steps.texts[key].push_back(*text);
}

void add_motor(const Motor& m, StepSizes& steps) {
    for (const auto& size : {m.shaft_diameter, m.shaft_length, m.shaft_flat, m.second_shaft_diameter,
                             m.second_shaft_length, m.body_diameter, m.body_length, m.bolt_circle})
        add(size, steps);
    add(m.frequency, steps);
    add(m.ambient, steps);
    add(m.capacitor, steps);
    add(m.capacitor_volts, steps);
    add(m.speed_limit, steps);
    add("plate.frame", m.frame, steps);
    add("plate.program", m.program, steps);
    add("plate.connector", m.connector, steps);
    add("unit.assembly_number", m.assembly, steps);
    for (const Rating& r : m.ratings) {
        add(r.power, steps);
        add(r.amps, steps);
        add(r.speed, steps);
        if (r.volts) add_steps(steps, std::vector{*r.volts});
    }
}

void add_part(const Part& part, StepSizes& steps) {
    if (part.motor) add_motor(*part.motor, steps);
    if (!part.module) return;
    add("plate.program", part.module->program, steps);
    add(part.module->power, steps);
    if (part.module->volts) add_steps(steps, std::vector{*part.module->volts});
}

void make_unique(std::vector<std::string>& texts) {
    std::sort(texts.begin(), texts.end());
    texts.erase(std::unique(texts.begin(), texts.end()), texts.end());
}

/// Ended parts stay ended whatever is read; of the others so many are looked at.
bool add_parts(const Query& query, const Books& books, StepsFound& found) {
    StepSizes& steps = found.steps;
    constexpr std::size_t most = 200;
    const MatchReport report = match_parts(query, books, Keep{most, most, 10, true}).report;
    for (const auto* names : {&report.matches, &report.not_shown}) {
        for (const CandidateName& name : *names) {
            if (const auto part = books.catalog.part(name.part_id)) add_part(*part, steps);
        }
    }
    for (const Candidate& miss : report.near_misses) add_part(miss.part, steps);
    for (const auto& open : report.open_keys) found.asked.insert(open.first);
    const auto looked_at = report.matches.size() + report.not_shown.size();
    const int living = report.fitting + report.changing + report.open;
    return looked_at == static_cast<std::size_t>(living);
}

}  // namespace

bool is_of_shop(const JobKey& key) {
    return key.id().rfind("shop.", 0) == 0;
}

StepsFound steps_of(const FailedUnit& job, const Diagnosis& diagnosis, const Books& books) {
    StepsFound found;
    StepSizes& steps = found.steps;
    for (const JobKey& key : job_keys()) {
        if (!is_of_shop(key)) key.add_steps(job, steps);
    }
    found.complete =
        add_parts(Query{job, facts_of(job, books.limits), diagnosis, books.limits}, books, found);
    for (auto& of_key : steps.texts) make_unique(of_key.second);
    for (const VoltageClass& c : voltage_classes) steps.add(c.nominal);
    const auto all_shares = [&]<class... T>(std::type_identity<T>...) {
        (add_shares<T>(books.limits, steps), ...);
    };
    all_shares(std::type_identity<Voltage>{}, std::type_identity<Frequency>{}, std::type_identity<Power>{},
               std::type_identity<Speed>{}, std::type_identity<Current>{}, std::type_identity<Capacitance>{},
               std::type_identity<Airflow>{}, std::type_identity<ApparentPower>{});
    const auto all_rows = [&]<class... D>(std::type_identity<D>...) {
        (add_rows_in<D>(books.limits, steps), ...);
    };
    all_rows(std::type_identity<VoltageDimension>{}, std::type_identity<CurrentDimension>{},
             std::type_identity<ApparentPowerDimension>{}, std::type_identity<PowerDimension>{},
             std::type_identity<ResistanceDimension>{}, std::type_identity<LengthDimension>{},
             std::type_identity<PressureDimension>{}, std::type_identity<AirflowDimension>{},
             std::type_identity<RiseDimension>{});
    for (const Limit& row : books.limits.rows()) {
        if (row.unit == "C") steps.add(Temperature::celsius(row.value));
    }
    for (const double hp : power_ladder()) steps.add(horsepower(hp));
    return found;
}

}  // namespace endbell::inline select
