// engine/job: job files, command-line fields and kept policies, read into a FailedUnit and written back.
//
// The job file is TOML with the groups [unit] [plate] [measured] [equipment] [controls] [shop].
// Keys have the names of the fields of engine/model/failed_unit.hpp; every value may be written as the trade
// writes it.
//     [plate]
//     power = "1/2 hp"
//     rotation = "CCWLE"
// A value that the text alone does not decide is kept open, with its question; only what cannot be read, or
// cannot be true, is refused.
#pragma once
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/base/problem.hpp"
#include "engine/fields/job_key.hpp"
#include "engine/model/failed_unit.hpp"

namespace endbell::inline job {

/// Throws BadData with every problem of the text, ascending by line. `filename` is only named in them.
FailedUnit read_job(std::string_view text, const std::string& filename);

/// Throws BadData also when the file cannot be read.
FailedUnit read_job_file(const std::filesystem::path& path);

/// "plate.rotation=CCWLE". Overrides the job. Throws BadUsage for a text without '=' or an unknown key,
/// BadData for a value that cannot be read or cannot be true.
void set_field(FailedUnit& job, std::string_view key_and_value);
/// Many at once, whatever their order; of one key the last. The job is spoilt when this throws.
void set_fields(FailedUnit& job, const std::vector<std::string>& keys_and_values);

/// As set_field, for callers who go on: the problem, or nothing. The job is unchanged when there is one.
std::optional<Problem> set_key(FailedUnit& job, std::string_view key, std::string_view value,
                               const Place& at = {});

/// Adds what a plate's free text says: fills fields that are unwritten or open; a different value leaves the
/// field open. Returns the words that were not understood.
std::vector<std::string> add_plate(FailedUnit& job, std::string_view plate_text);

/// What a job leaves undecided, in the order of job_keys().
std::vector<OpenField> open_fields(const FailedUnit& job);

struct KeyValue {
    const JobKey* key;
    std::string_view value;
    Place at;
};

/// Overrides the job, whatever the order of the values. Throws BadData with every problem, ascending by line; the job
/// is spoilt then. Leaves the digest to the caller.
void set_keys(FailedUnit& job, const std::vector<KeyValue>& values);

}  // namespace endbell::inline job
