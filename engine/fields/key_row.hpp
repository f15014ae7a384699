// Makes a JobKey of a field and its reader. Rows of one group stand together in keys_<group>.cpp.
#pragma once
#include <string>
#include <utility>

#include "engine/base/ensure.hpp"
#include "engine/base/text.hpp"
#include "engine/fields/job_key.hpp"
#include "engine/fields/key_bytes.hpp"
#include "engine/fields/possible_answers.hpp"
#include "engine/fields/steps.hpp"
#include "engine/words/words.hpp"

namespace endbell::inline fields {

/// What is told about a key.
struct Told {
    std::string_view name;
    std::string_view meaning;
    std::string_view unit;
    std::string_view example;
    std::string_view asked_as = {};
};

template <class Group>
struct GroupOf {
    std::string_view name;
    Origin origin;
    Group FailedUnit::*member;
};

template <class T>
using Reader = std::function<Read<T>(const FailedUnit&, const Folded&)>;

inline std::string write_terminals(const std::vector<Terminal>& terminals) {
    std::string text;
    for (const Terminal& t : terminals) {
        text += (text.empty() ? "" : "; ") + t.name + " = " + (t.call ? write(*t.call) : "unknown");
    }
    return text;
}

inline std::string write_leads(const std::vector<LeadInUse>& leads) {
    std::string text;
    for (const LeadInUse& l : leads)
        text += (text.empty() ? "" : "; ") + write(l.call) + " = " + write(l.lead);
    return text;
}

inline std::string write_states(const std::vector<CustomState>& states) {
    std::string text;
    for (const CustomState& s : states) {
        text += (text.empty() ? "" : "; ") + s.name + " = " + joined(s.live, " + ") + ": " +
                (s.call ? write(*s.call) : "off");
    }
    return text;
}

/// In the units that the reader takes for granted, to the last figure: no power is moved to a standard one.
inline std::string write_blower_table(const std::vector<BlowerRow>& table) {
    std::string text;
    for (const BlowerRow& row : table) {
        text += (text.empty() ? "" : "; ") + write(row.airflow.in(cfm)) + " | " +
                write(row.static_total.in(inch_water)) + " | " + write(row.speed.in(rpm)) + " | " +
                write(row.shaft.in(horsepower));
    }
    return text;
}

template <class T>
std::string value_text(const T& value) {
    if constexpr (std::is_same_v<T, std::vector<Terminal>>)
        return write_terminals(value);
    else if constexpr (std::is_same_v<T, std::vector<LeadInUse>>)
        return write_leads(value);
    else if constexpr (std::is_same_v<T, std::vector<CustomState>>)
        return write_states(value);
    else if constexpr (std::is_same_v<T, std::vector<BlowerRow>>)
        return write_blower_table(value);
    else
        return write(value);
}

/// Writes a reading into its field: a guessed value stays marked as guessed.
template <class T>
void store(Reading<T>& field, Read<T> read, Origin origin, const Place& at) {
    field = std::move(read.reading);
    if (field.origin != Origin::guessed) field.origin = origin;
    field.at = at;
}

template <class T>
void merge_field(Reading<T>& into, const Reading<T>& from) {
    if (from.raw.empty() && !from.value) return;
    if (!into) {
        if (from || into.raw.empty()) into = from;
        return;
    }
    if (!from || *into == *from) return;
    const std::string first = into.raw;
    into.value.reset();
    into.question = "said twice, and differently: which is right?";
    into.readings = {first, from.raw};
    into.raw = first + " | " + from.raw;
}

template <class Group, class T>
JobKey row(const GroupOf<Group>& group, Reading<T> Group::*field, const Told& told, Reader<T> reader,
           const std::type_identity_t<Asks<T>>& asks = {}) {
    JobKey key;
    key.group = group.name;
    key.name = told.name;
    key.meaning = told.meaning;
    key.unit = told.unit;
    key.example = told.example;
    key.asked_as = told.asked_as;
    const auto member = group.member;
    const Origin origin = group.origin;
    // What a job is called on paper may hold a question mark; of anything else a part that was not read is open.
    const bool may_be_torn = told.name != "name";
    const auto read_in = [=](const FailedUnit& job, const Folded& words) {
        return may_be_torn && is_partly_read(words) ? ask_torn<T>(words) : reader(job, words);
    };
    key.read = [=](FailedUnit& job, const Folded& words, const Place& at) -> std::string {
        Read<T> read = read_in(job, words);
        if (read.failed()) return read.expected;
        store(job.*member.*field, std::move(read), origin, at);
        return "";
    };
    key.reread = [=](FailedUnit& job) {
        const Reading<T>& field_now = job.*member.*field;
        if (field_now.raw.empty()) return;
        Read<T> read = read_in(job, fold(field_now.raw));
        if (!read.failed()) store(job.*member.*field, std::move(read), field_now.origin, Place(field_now.at));
    };
    key.merge = [=](FailedUnit& into, const FailedUnit& from) {
        merge_field(into.*member.*field, from.*member.*field);
    };
    const std::string id = std::string(group.name) + "." + std::string(told.name);
    key.open = [=](const FailedUnit& job) -> std::optional<OpenField> {
        const Reading<T>& reading = job.*member.*field;
        if (!reading.is_open()) return std::nullopt;
        return OpenField{id, reading.raw, reading.question, reading.readings, reading.at};
    };
    key.text = [=](const FailedUnit& job) {
        const Reading<T>& reading = job.*member.*field;
        return reading.value ? value_text<T>(*reading) : reading.raw;
    };
    key.place = [=](const FailedUnit& job) { return (job.*member.*field).at; };
    if constexpr (bytes::can_append<T>) {
        key.take = [=](const FailedUnit& job, std::string& to) {
            bytes::append_stated(to, (job.*member.*field).said());
        };
    }
    key.tries = [id](const StepSizes& steps) { return texts_to_try<T>(steps, id); };
    key.has_sizes = detail::IsQuantity<T>::value || std::is_same_v<T, Temperature>;
    key.add_steps = [=](const FailedUnit& job, StepSizes& steps) {
        if (const auto stated = (job.*member.*field).said()) add_steps(steps, *stated);
    };
    if constexpr (Labelled<T>) {
        if (asks.order > 0) {
            const auto give = [=](FailedUnit& job, const T& value) { job.*member.*field = known(value); };
            key.asked = AskedKey{asks.order,
                                 asks.seconds,
                                 asks.chance,
                                 asks.tape,
                                 asks.settled,
                                 [=](const FailedUnit& job) { return bool(job.*member.*field); },
                                 [=](const std::vector<const Part*>& parts) {
                                     return possible_answers<T>(parts, asks.votes, give);
                                 }};
        }
    } else {
        ensure(asks.order == 0, "a key that is asked for has answers with labels");
    }
    return key;
}

template <class Group, class T>
JobKey row(const GroupOf<Group>& group, Reading<T> Group::*field, const Told& told,
           Read<T> (*reader)(const Folded&), const std::type_identity_t<Asks<T>>& asks = {}) {
    return row<Group, T>(
        group, field, told,
        Reader<T>([reader](const FailedUnit&, const Folded& words) { return reader(words); }), asks);
}

/// A field that is shown in another unit than its type's usual one.
template <class Group, class T>
JobKey shown(const GroupOf<Group>& group, Reading<T> Group::*field, std::string (*writer)(T), JobKey key) {
    const auto member = group.member;
    key.text = [=](const FailedUnit& job) {
        const Reading<T>& reading = job.*member.*field;
        return reading.value ? writer(*reading) : reading.raw;
    };
    if constexpr (detail::IsQuantity<T>::value) {
        key.tries = [=](const StepSizes& steps) {
            return detail::written(sizes_to_try<typename detail::IsQuantity<T>::Dimension>(steps), writer);
        };
    }
    return key;
}

/// A text that must stand in quotes.
inline JobKey quoted(JobKey key) {
    key.quoted = true;
    return key;
}

/// A key read again when `id` is set.
inline JobKey following(std::string_view id, JobKey key) {
    key.follows = id;
    return key;
}

using JobKeys = std::vector<JobKey>;
JobKeys unit_keys();
JobKeys plate_keys();
JobKeys measured_keys();
JobKeys equipment_keys();
JobKeys controls_keys();
JobKeys shop_keys();

}  // namespace endbell::inline fields
