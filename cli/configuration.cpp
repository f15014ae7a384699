#include "cli/configuration.hpp"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <optional>
#include <sstream>

#include "cli/output.hpp"
#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"
#include "engine/job/toml_text.hpp"

namespace endbell::cli {

namespace fs = std::filesystem;

namespace {

struct Configuration {
    std::string catalog;
    std::string shop;
    int width = 0;
};

std::optional<std::string> environment(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr ? std::nullopt : std::optional<std::string>(value);
}

struct SettingsFile {
    fs::path file;         // empty: none
    bool must_be = false;  // named by the user
};

SettingsFile configuration_file() {
    if (const auto named = environment("ENDBELL_CONFIG")) return {*named, true};
    const auto xdg = environment("XDG_CONFIG_HOME");
    if (xdg && fs::path(*xdg).is_absolute()) return {fs::path(*xdg) / "endbell" / "config.toml", false};
    const auto home = environment("HOME");
    if (!home || home->empty()) return {};
    return {fs::path(*home) / ".config" / "endbell" / "config.toml", false};
}

/// "~/x" is in the user's home, "x" beside the file that says so.
std::string resolved(const std::string& path, const fs::path& said_in) {
    if (path == "~" || path.compare(0, 2, "~/") == 0)
        return environment("HOME").value_or("~") + path.substr(1);
    return (said_in.parent_path() / path).lexically_normal().string();
}

/// What was expected of the entry; empty: it was taken. Anything unknown is refused, or a misspelt key would do nothing.
std::string unreadable_key(const job::TomlEntry& entry, const fs::path& file, Configuration& into) {
    if (!entry.group.empty()) return "a key outside any group";
    if (entry.name == "catalog" || entry.name == "shop") {
        if (entry.number || entry.value.empty()) return "a path in quotes";
        (entry.name == "catalog" ? into.catalog : into.shop) = resolved(entry.value, file);
        return "";
    }
    if (entry.name != "width") return "one of the keys catalog, shop, width";
    const bool digits = entry.number && entry.value.find_first_not_of("0123456789") == std::string::npos;
    into.width = digits && entry.value.size() < 4 ? std::atoi(entry.value.c_str()) : 0;
    return into.width >= narrowest_line && into.width <= widest_line ? "" : "a whole number from 40 to 400";
}

Configuration read_configuration(const fs::path& path, const std::string& text) {
    const job::TomlDocument document = job::parse_toml(text, path.string());
    std::vector<Problem> problems = document.problems;
    Configuration found;
    for (const job::TomlEntry& entry : document.entries) {
        const std::string expected = unreadable_key(entry, path, found);
        if (expected.empty()) continue;
        const std::string near = nearest(entry.name, {"catalog", "shop", "width"});
        const bool misspelt = !near.empty() && near != entry.name;
        problems.push_back({entry.name.empty() ? entry.group_at : entry.key_at,
                            entry.name.empty() ? "[" + entry.group + "]" : entry.name, entry.value, expected,
                            misspelt ? "did you mean '" + near + "'?" : "correct or remove it"});
    }
    if (!problems.empty()) throw BadData(std::move(problems));
    return found;
}

/// A file that nobody named may be missing; one that was named may not.
Configuration configuration() {
    const SettingsFile choice = configuration_file();
    std::error_code none;
    if (choice.file.empty() || (!choice.must_be && !fs::exists(choice.file, none))) return {};
    std::ifstream file(choice.file, std::ios::binary);
    std::ostringstream text;
    if (fs::is_directory(choice.file, none) || !file || (file.peek() != EOF && !(text << file.rdbuf()))) {
        throw BadData(Problem{{choice.file.string(), 0, 0},
                              "the configuration file",
                              "",
                              "a readable text file",
                              "check the path, or run with --no-config"});
    }
    return read_configuration(choice.file, text.str());
}

}  // namespace

void settle(Arguments& typed) {
    const bool all_given = !typed.catalog.empty() && !typed.shop.empty() && typed.width != 0;
    if (!typed.no_config && !all_given) {
        const Configuration found = configuration();
        if (typed.catalog.empty()) typed.catalog = found.catalog;
        if (typed.shop.empty()) typed.shop = found.shop;
        if (typed.width == 0) typed.width = found.width;
    }
    if (typed.width == 0) typed.width = usual_width();
}

}  // namespace endbell::cli
