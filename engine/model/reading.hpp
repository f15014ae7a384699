// A value as somebody wrote or measured it, beside its raw text.
#pragma once
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/base/place.hpp"

namespace endbell::inline model {

/// Where a value comes from. An implied value follows from others that were read, and decides as they do; what was guessed
/// or assumed is shown as such and never decides.
enum class Origin { plate, measured, equipment, job, catalog, shop, implied, guessed, assumed };

constexpr bool decides(Origin origin) {
    return origin != Origin::guessed && origin != Origin::assumed;
}

/// Three states: not written (raw empty), written and read (value), written but open (question, no value). A value that
/// was only guessed counts as nothing said: who shows it looks at `value`.
template <class T>
struct Reading {
    std::optional<T> value;
    std::string raw;
    Origin origin = Origin::job;
    Place at;
    std::string question;               // why the text alone does not decide, as a question
    std::vector<std::string> readings;  // the meanings it may have

    /// What somebody wrote or measured, or what follows from it.
    std::optional<T> said() const { return decides(origin) ? value : std::nullopt; }
    explicit operator bool() const { return value.has_value() && decides(origin); }
    /// REQUIRES: something is said.
    const T& operator*() const { return *value; }
    const T* operator->() const { return &*value; }
    bool is_open() const { return !value && !question.empty(); }
};

/// A reading that is open, with the key of its field: what a person is asked, and what the answer may be.
struct OpenField {
    std::string job_key;  // "plate.rotation"
    std::string raw;
    std::string question;
    std::vector<std::string> readings;
    Place at;
};

/// A value that code, not a person, put there: in tests and in inference.
template <class T>
Reading<T> known(T value, Origin origin = Origin::job) {
    Reading<T> reading;
    reading.value = std::move(value);
    reading.origin = origin;
    return reading;
}

}  // namespace endbell::inline model
