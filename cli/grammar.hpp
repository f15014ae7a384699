// The command line, once: every verb with its options, what it does and examples. Help is printed from it; man
// pages and shell completion walk the same tree. The only includer of CLI11.
#pragma once
#include <CLI/CLI.hpp>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/arguments.hpp"
#include "engine/base/problem.hpp"

namespace endbell::cli {

using Command = int (*)(const Arguments&);

struct Example {
    std::string_view command;  // runs as it stands, where the files it names exist
    std::string_view does;
};

/// Where a setting comes from, in lines for the help.
inline constexpr const char* settings =
    "A flag comes before the environment, the environment before the file\n"
    "$XDG_CONFIG_HOME/endbell/config.toml (~/.config/endbell/config.toml), or the\n"
    "one that ENDBELL_CONFIG names. Its keys: catalog, shop, width. NO_COLOR keeps\n"
    "headings on a terminal from being bold.";

/// One for each run: parsing `app` fills `typed` and `chosen`.
struct Grammar {
    std::optional<std::vector<std::string_view>> line;  // what was typed
    CLI::App app;
    Arguments typed;
    Command chosen = nullptr;  // the function of the verb that was typed
    std::map<const CLI::App*, std::vector<Example>>
        examples;  // looked up by verb; also the footer of its help

    /// With the `words` of a command line, a verb that is not among them has no options and no examples: nobody can
    /// come to see them. Without, all of it.
    explicit Grammar(std::optional<std::vector<std::string_view>> words = std::nullopt);
    Grammar(const Grammar&) = delete;  // app points into it
    Grammar& operator=(const Grammar&) = delete;

    bool may_stand_on_line(std::string_view name) const;
    /// The verb that was typed, as far as it is known: "catalog import", or empty.
    std::string verb() const;
    /// What is wrong with what was typed, with a near word where there is one.
    Problem complaint(const CLI::ParseError& wrong) const;
};

}  // namespace endbell::cli
