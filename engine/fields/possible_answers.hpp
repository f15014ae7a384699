// What the parts of a catalog would have the answer to a question be, and how an answer reads.
#pragma once
#include <concepts>
#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <type_traits>
#include <utility>
#include <vector>

#include "engine/facts/facts.hpp"
#include "engine/fields/job_key.hpp"
#include "engine/model/part.hpp"

namespace endbell::inline fields {

/// A size to sort by and the words that people read.
using Label = std::pair<double, std::string>;
Label label(const std::string&);
Label label(bool);
Label label(int);
Label label(Length);
Label label(Voltage);
Label label(const LineVolts&);
Label label(const SupplySystem&);
Label label(Frequency);
Label label(Speed);
Label label(Temperature);
Label label(const std::vector<Power>&);
Label label(const std::vector<PlateVolts>&);
Label label(const std::vector<int>&);
template <class E>
requires std::is_enum_v<E> Label label(E value) {
    return {0, std::string(word(value))};
}

template <class T>
using Votes = std::vector<std::pair<T, double>>;

template <class T, class U>
Votes<T> one(const std::optional<U>& value) {
    if (!value) return {};
    return {{T(*value), 1.0}};
}

/// Every value of an enumeration, equally likely: the catalog does not tell.
template <class E>
Votes<E> any_word(const Part&) {
    Votes<E> votes;
    for (const Word<E>& w : Words<E>::table) votes.push_back({w.value, 1.0});
    return votes;
}

template <auto Member>
auto of_motor(const Part& part) {
    using T = typename std::decay_t<decltype(std::declval<Motor>().*Member)>::value_type;
    return part.motor ? one<T>((*part.motor).*Member) : Votes<T>{};
}

Votes<bool> yes_or_no(const Part&);
Votes<bool> belts(const Part&);
Votes<Load> loads(const Part&);
Votes<Family> families(const Part&);
Votes<Voltage> nominals(const Part&);
Votes<LineVolts> line_nominals(const Part&);  // one reading of each
Votes<SupplySystem> supplies(const Part&);
Votes<Frequency> hertz_of_supplies(const Part&);
Votes<std::vector<PlateVolts>> plates(const Part&);
Votes<std::vector<Power>> powers(const Part&);
Votes<Speed> speeds(const Part&);
Votes<Rotation> rotations(const Part&);
Votes<std::string> programs(const Part&);
Votes<SignalClass> signals(const Part&);
Votes<ShaftPosition> positions(const Part&);
Votes<std::vector<int>> live_taps(const Part&);

// Whether another key that is stated settles one.
bool volts_on_the_plate(const Facts&);
bool family_known(const Facts&);
bool phase_known(const Facts&);
bool frequency_known(const Facts&);
bool poles_known(const Facts&);
bool drive_known(const Facts&);
bool place_known(const Facts&);
bool signal_known(const Facts&);

/// Answers to questions have a label; other values are never asked for by what parts have.
template <class T>
concept Labelled = requires(const T& value) {
    { label(value) } -> std::same_as<Label>;
};

/// How a key of values `T` is asked for. Order 0: no part tells what the answer may be.
template <class T>
struct Asks {
    int order = 0;
    int seconds = 0;
    double chance = 0;
    /// What one part would have the answer be.
    Votes<T> (*votes)(const Part&) = nullptr;
    bool (*settled)(const Facts&) = nullptr;
    bool tape = false;
};

/// The answers that these parts make possible, each given by `give`.
template <Labelled T, class Give>
std::vector<KeyAnswer> possible_answers(const std::vector<const Part*>& parts, Votes<T> (*votes)(const Part&),
                                        Give give) {
    std::map<Label, KeyAnswer> box;
    for (const Part* part : parts) {
        for (const auto& [value, count] : votes(*part)) {
            const Label words = label(value);
            KeyAnswer& answer = box[words];
            std::tie(answer.size, answer.label) = words;
            answer.votes += count;
            answer.give = [give, given = value](FailedUnit& job) { give(job, given); };
        }
    }
    std::vector<KeyAnswer> list;
    list.reserve(box.size());
    for (auto& entry : box) list.push_back(std::move(entry.second));
    return list;
}

}  // namespace endbell::inline fields
