#include "engine/job/job_text.hpp"

#include <cstdio>
#include <optional>
#include <vector>

#include "engine/base/ensure.hpp"
#include "engine/base/text.hpp"
#include "engine/job/toml_text.hpp"

namespace endbell::inline job {

std::string in_quotes(std::string_view raw) {
    std::string out = "\"";
    for (const char c : raw) {
        if (c == '"' || c == '\\') {
            out += '\\';
            out += c;
        } else if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) {
            char escaped[8];
            std::snprintf(escaped, sizeof escaped, "\\u%04X", static_cast<unsigned>(c));
            out += escaped;
        } else {
            out += c;
        }
    }
    return out + "\"";
}

namespace {

std::size_t line_start(std::string_view text, int line) {
    std::size_t at = 0;
    for (int i = 1; i < line; ++i) {
        const std::size_t end = text.find('\n', at);
        if (end == std::string_view::npos) return text.size();
        at = end + 1;
    }
    return at;
}

/// Where the line after the one that holds `at` begins.
std::size_t next_line(std::string_view text, std::size_t at) {
    const std::size_t end = text.find('\n', at);
    return end == std::string_view::npos ? text.size() : end + 1;
}

/// Columns count characters, not bytes.
std::size_t offset_of(std::string_view text, const Place& place) {
    std::size_t at = line_start(text, place.line);
    for (int column = 1; column < place.column && at < text.size(); ++column) {
        ++at;
        while (at < text.size() && (static_cast<unsigned char>(text[at]) & 0xc0) == 0x80) ++at;
    }
    return at;
}

std::string_view indent_of(std::string_view line) {
    return line.substr(0, line.find_first_not_of(" \t"));
}

bool has_own_header(std::string_view text, const job::TomlEntry& entry) {
    const std::string_view line = text.substr(line_start(text, entry.group_at.line));
    return !line.empty() && line[indent_of(line).size()] == '[';
}

/// Where a new last key of the group goes: behind its last entry, or behind its header.
struct Gap {
    std::size_t at = 0;
    std::string indent;
};

std::optional<Gap> end_of_group(std::string_view text, const job::TomlDocument& document,
                                std::string_view group) {
    std::optional<Gap> gap;
    for (const job::TomlEntry& entry : document.entries) {
        if (entry.group != group) continue;
        if (!has_own_header(text, entry)) {
            throw BadData(Problem{entry.group_at, std::string(group), "",
                                  "[" + std::string(group) + "] on a line of its own, with its keys below",
                                  "write the group so, or add the reading by hand"});
        }
        gap = {next_line(text, offset_of(text, entry.value_end)),
               std::string(indent_of(text.substr(line_start(text, entry.key_at.line))))};
    }
    return gap;
}

const job::TomlEntry* entry_of(const job::TomlDocument& document, const JobKey& key) {
    for (const job::TomlEntry& entry : document.entries) {
        if (entry.group == key.group && entry.name == key.name) return &entry;
    }
    return nullptr;
}

/// The same keys with the same values, but for one.
bool differs_only_in(const JobKey& key, const job::TomlDocument& before, const job::TomlDocument& after) {
    const auto others = [&key](const job::TomlDocument& document) {
        std::vector<std::string> list;
        for (const job::TomlEntry& e : document.entries) {
            if (!e.name.empty() && !(e.group == key.group && e.name == key.name))
                list.push_back(e.group + "." + e.name + "=" + e.value);
        }
        return list;
    };
    return others(before) == others(after);
}

}  // namespace

std::string with_key(std::string_view toml, const std::string& filename, const JobKey& key,
                     std::string_view raw) {
    const job::TomlDocument before = job::parse_toml(toml, filename);
    const std::string line_end = toml.find("\r\n") == std::string_view::npos ? "\n" : "\r\n";
    const std::string value = in_quotes(raw);
    const std::string said = std::string(key.name) + " = " + value + line_end;
    std::string text(toml);
    if (const job::TomlEntry* there = entry_of(before, key)) {
        const std::size_t from = offset_of(toml, there->value_at);
        text.replace(from, offset_of(toml, there->value_end) - from, value);
    } else if (const auto gap = end_of_group(toml, before, key.group)) {
        const bool open_line = gap->at > 0 && toml[gap->at - 1] != '\n';
        text.insert(gap->at, (open_line ? line_end : "") + gap->indent + said);
    } else {
        if (!text.empty() && text.back() != '\n') text += line_end;
        if (!text.empty()) text += line_end;
        text += "[" + std::string(key.group) + "]" + line_end + said;
    }
    const job::TomlDocument after = job::parse_toml(text, filename);
    const job::TomlEntry* written = entry_of(after, key);
    ensure(written != nullptr && written->value == raw && differs_only_in(key, before, after),
           "a key written into a job file changes nothing else");
    return text;
}

}  // namespace endbell::inline job
