#include "engine/job/job.hpp"

#include <algorithm>
#include <fstream>
#include <sstream>

#include "engine/base/hash.hpp"
#include "engine/base/text.hpp"
#include "engine/job/toml_text.hpp"
#include "engine/job/truth.hpp"
#include "engine/words/plate_text.hpp"

namespace endbell::inline job {

namespace {

const std::vector<std::string>& group_names() {
    static const std::vector<std::string> names{"unit", "plate", "measured", "equipment", "controls", "shop"};
    return names;
}

std::string did_you_mean(std::string_view wanted, const std::vector<std::string>& known,
                         std::string otherwise) {
    const std::string near = nearest(wanted, known);
    return near.empty() ? std::move(otherwise) : "did you mean '" + near + "'?";
}

/// Names of a group's keys, or ids of all of them.
std::vector<std::string> key_names(std::string_view group) {
    std::vector<std::string> names;
    for (const JobKey& key : job_keys()) {
        if (group.empty())
            names.push_back(key.id());
        else if (key.group == group)
            names.emplace_back(key.name);
    }
    return names;
}

/// The group in which a key of this name stands, for a key written under another.
std::string home_of(std::string_view name) {
    for (const JobKey& key : job_keys()) {
        if (key.name == name) return std::string(key.group);
    }
    return "";
}

/// A key that another group has is named with that group: it is right, and in the wrong place.
Problem unknown_entry(const job::TomlEntry& entry) {
    const bool known_group =
        std::find(group_names().begin(), group_names().end(), entry.group) != group_names().end();
    if (entry.group.empty()) {
        return {entry.key_at, entry.name, entry.value, "a group before it, such as [plate]",
                home_of(entry.name).empty() ? "put it into a group"
                                            : "put it under [" + home_of(entry.name) + "]"};
    }
    if (!known_group) {
        return {entry.group_at, "[" + entry.group + "]", "",
                "one of the groups " + joined(group_names(), ", "),
                did_you_mean(entry.group, group_names(), "rename or remove it")};
    }
    const std::string home = home_of(entry.name);
    return {entry.key_at, entry.group + "." + entry.name, entry.value, "a key of [" + entry.group + "]",
            home.empty()
                ? did_you_mean(entry.name, key_names(entry.group), "remove it, or see the list of keys")
                : "it belongs under [" + home + "]"};
}

/// The words of a few that `expected` lists in quotes.
std::vector<std::string> words_in(const std::string& expected) {
    std::vector<std::string> words;
    const std::vector<std::string> pieces = split(expected, '\'');
    for (std::size_t i = 1; i < pieces.size(); i += 2) words.push_back(pieces[i]);
    return words;
}

/// Values into their fields, those that follow another last: the order in which they are written means nothing.
void read_values(FailedUnit& job, const std::vector<KeyValue>& values, const char* correct_it,
                 std::vector<Problem>& problems) {
    const auto read = [&](bool following) {
        for (const KeyValue& v : values) {
            if (v.key->follows.empty() == following) continue;
            const std::string expected = v.key->read(job, fold(v.value), v.at);
            if (expected.empty()) continue;
            problems.push_back({v.at, v.key->id(), std::string(v.value), expected,
                                did_you_mean(v.value, words_in(expected), correct_it)});
        }
    };
    read(false);
    const bool trust_told = std::any_of(values.begin(), values.end(), [](const KeyValue& v) {
        return v.key->is_named("unit.plate_trusted");
    });
    if (trust_told) {  // a plate that was not trusted may be now: what it said is read again
        for (const JobKey& key : job_keys()) {
            if (key.group == "plate" && key.follows.empty()) key.reread(job);
        }
    }
    for (const JobKey& follower : job_keys()) {  // what the job said before
        if (follower.follows.empty()) continue;
        const bool led = std::any_of(values.begin(), values.end(),
                                     [&](const KeyValue& v) { return v.key->is_named(follower.follows); });
        if (led || (trust_told && follower.group == "plate")) follower.reread(job);
    }
    read(true);
    for (Problem& problem : job::impossible(job)) problems.push_back(std::move(problem));
    if (problems.empty()) job::doubt(job);
}

std::string digest_with(const std::string& before, const KeyValue& field) {
    return fingerprint(before + "\n" + field.key->id() + "=" + std::string(field.value));
}

/// Throws all of them, ascending by line.
void refuse(std::vector<Problem> problems) {
    if (problems.empty()) return;
    std::stable_sort(problems.begin(), problems.end(), [](const Problem& a, const Problem& b) {
        return a.at.line != b.at.line ? a.at.line < b.at.line : a.at.column < b.at.column;
    });
    throw BadData(std::move(problems));
}

}  // namespace

FailedUnit read_job(std::string_view text, const std::string& filename) {
    const job::TomlDocument document = job::parse_toml(text, filename);
    std::vector<Problem> problems = document.problems;
    std::vector<KeyValue> values;
    for (const job::TomlEntry& entry : document.entries) {
        const bool empty_group =
            entry.name.empty() && std::count(group_names().begin(), group_names().end(), entry.group) > 0;
        const JobKey* key = job_key(entry.group + "." + entry.name);
        if (key == nullptr) {
            if (!empty_group) problems.push_back(unknown_entry(entry));
        } else if (key->quoted && entry.number) {
            problems.push_back({entry.value_at, key->id(), entry.value, "a text in quotes",
                                "a bare number loses its zeros: write \"...\""});
        } else {
            values.push_back({key, entry.value, entry.value_at});
        }
    }
    FailedUnit job;
    job.digest = fingerprint(text);
    read_values(job, values, "correct it, or leave the key out: what is missing will be asked for", problems);
    refuse(std::move(problems));
    return job;
}

FailedUnit read_job_file(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    const bool readable = !std::filesystem::is_directory(path) && file;
    if (!readable || (file.peek() != std::ifstream::traits_type::eof() && !(text << file.rdbuf()))) {
        throw BadData(
            Problem{{path.string(), 0, 0}, "the job file", "", "a readable text file", "check the path"});
    }
    return read_job(text.str(), path.string());
}

std::optional<Problem> set_key(FailedUnit& job, std::string_view id, std::string_view value,
                               const Place& at) {
    const JobKey* key = job_key(id);
    if (!key)
        return Problem{at, std::string(id), std::string(value), "a job key",
                       did_you_mean(id, key_names(""), "keys look like plate.rotation")};
    FailedUnit changed = job;
    const KeyValue field{key, value, at};
    std::vector<Problem> problems;
    read_values(changed, {field}, "correct it", problems);
    if (!problems.empty()) return problems.front();
    changed.digest = digest_with(job.digest, field);
    job = std::move(changed);
    return std::nullopt;
}

void set_keys(FailedUnit& job, const std::vector<KeyValue>& values) {
    std::vector<Problem> problems;
    read_values(job, values, "correct it", problems);
    refuse(std::move(problems));
}

namespace {

/// "plate.rotation=CCWLE" taken apart.
KeyValue field_of(std::string_view key_and_value) {
    const std::size_t equals = key_and_value.find('=');
    const std::string id(trimmed(key_and_value.substr(0, equals)));
    if (equals == std::string_view::npos) {
        throw BadUsage(Problem{{},
                               "--set",
                               std::string(key_and_value),
                               "KEY=VALUE, such as plate.rotation=CCWLE",
                               "write an equals sign"});
    }
    const JobKey* key = job_key(id);
    if (key == nullptr) {
        throw BadUsage(Problem{
            {}, "--set", id, "a job key", did_you_mean(id, key_names(""), "keys look like plate.rotation")});
    }
    return {key, trimmed(key_and_value.substr(equals + 1)), {}};
}

}  // namespace

void set_field(FailedUnit& job, std::string_view key_and_value) {
    const KeyValue field = field_of(key_and_value);
    if (auto problem = set_key(job, field.key->id(), field.value)) throw BadData(*problem);
}

void set_fields(FailedUnit& job, const std::vector<std::string>& keys_and_values) {
    std::vector<KeyValue> fields;
    for (const std::string& typed : keys_and_values) fields.push_back(field_of(typed));
    set_keys(job, fields);
    for (const KeyValue& field : fields) job.digest = digest_with(job.digest, field);
}

std::vector<std::string> add_plate(FailedUnit& job, std::string_view plate_text) {
    PlateText read = read_plate(plate_text);
    FailedUnit from;
    from.unit = std::move(read.unit);
    from.plate = std::move(read.plate);
    for (const JobKey& key : job_keys()) key.merge(job, from);
    for (const JobKey& key : job_keys()) {
        if (key.follows == "plate.family") key.reread(job);
    }
    job::doubt(job);
    job.digest = fingerprint(job.digest + "\n" + std::string(plate_text));
    return read.not_understood;
}

std::vector<OpenField> open_fields(const FailedUnit& job) {
    std::vector<OpenField> fields;
    for (const JobKey& key : job_keys()) {
        if (auto open = key.open(job)) fields.push_back(std::move(*open));
    }
    return fields;
}

}  // namespace endbell::inline job
