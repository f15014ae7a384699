// One key of a job file, once: how it is read, written, compared and asked for. The keys of a group stand in keys_GROUP.cpp.
#pragma once
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/facts/facts.hpp"
#include "engine/model/part.hpp"
#include "engine/words/fold.hpp"

namespace endbell::inline fields {

class StepSizes;

/// One answer that a person may give. `votes`: how many of the parts it would suit; several answers may share one.
struct KeyAnswer {
    double size = 0;    // sorts sizes; 0 for words
    std::string label;  // as a person reads it: "0.625 in", "1/3 hp", "band"
    double votes = 0;
    std::function<void(FailedUnit&)> give;
};

/// How a key is asked for where nobody stated it.
struct AskedKey {
    int order = 0;      // low first: as an expert without a catalog would ask
    int seconds = 0;    // to answer at the counter or on site; common practice
    double chance = 0;  // that the person who is asked can answer now, 0 to 1; common practice
    bool tape = false;  // a size of what stays in the equipment: can be measured once more
    /// True: other keys that are stated settle this one. Null: none can.
    bool (*settled)(const Facts&) = nullptr;
    std::function<bool(const FailedUnit&)> stated;
    /// Ascending by size, then label; empty when these parts leave nothing to choose from.
    std::function<std::vector<KeyAnswer>(const std::vector<const Part*>&)> answers;
};

/// One key of a job file: how it is read, and what is told about it.
struct JobKey {
    std::string_view group;     // "plate"
    std::string_view name;      // "rotation"
    std::string_view meaning;   // one line
    std::string_view unit;      // what a bare number means; empty: numbers have none here
    std::string_view example;   // reads to a value
    std::string_view asked_as;  // a question that a person can answer; empty: "What is KEY?"
    bool quoted = false;        // a bare TOML number would lose zeros: text in quotes only
    std::string_view
        follows;  // the key on which its reading depends: read after it, and again when it is set

    /// Reads a value into the job. What was expected, when it cannot be read; else empty.
    std::function<std::string(FailedUnit&, const Folded&, const Place&)> read;
    /// Reads the field's own raw text again, after the key that it follows was set.
    std::function<void(FailedUnit&)> reread;
    /// Takes over what `from` has and `into` has not; a different value leaves the field open.
    std::function<void(FailedUnit& into, const FailedUnit& from)> merge;
    std::function<std::optional<OpenField>(const FailedUnit&)> open;
    /// The value as text, the raw text where it is open, or empty.
    std::function<std::string(const FailedUnit&)> text;
    std::function<Place(const FailedUnit&)> place;

    /// Appends what somebody said, as bytes; guesses count as nothing said. Empty for values that no rule looks at.
    std::function<void(const FailedUnit&, std::string& bytes)> take;
    /// Nothing: no part of a catalog tells what the answer may be.
    std::optional<AskedKey> asked;
    /// Answers that tell whether any answer matters (steps.hpp), as a person writes them. Empty: no list holds them.
    std::function<std::vector<std::string>(const StepSizes&)> tries;
    bool has_sizes = false;  // its answers are sizes: `tries` has them ascending
    /// Adds the sizes that the job states here.
    std::function<void(const FailedUnit&, StepSizes&)> add_steps;

    std::string id() const { return std::string(group) + "." + std::string(name); }
    /// Whether `id` is that, without making it.
    bool is_named(std::string_view id) const;
};

/// Every key, in the order of the fields.
const std::vector<JobKey>& job_keys();

/// The key of an id, or null.
const JobKey* job_key(std::string_view id);

}  // namespace endbell::inline fields
