// The command line, once: every verb with its options, what it does and examples. Help is printed from it; man
// pages and shell completion walk the same tree. With grammar.cpp the only includer of CLI11 beside main.cpp.
#pragma once
#include <CLI/CLI.hpp>
#include <map>
#include <string>
#include <vector>

#include "cli/arguments.hpp"

namespace endbell::cli {

using Command = int (*)(const Arguments&);

struct Example {
    std::string command;  // runs as it stands, where the files it names exist
    std::string does;
};

/// One for each run: parsing `app` fills `typed` and `chosen`.
struct Grammar {
    CLI::App app;
    Arguments typed;
    Command chosen = nullptr;                                  // the function of the verb that was typed
    std::map<const CLI::App*, std::vector<Example>> examples;  // looked up by verb; also the footer of its help

    Grammar();
    Grammar(const Grammar&) = delete;  // app points into it
    Grammar& operator=(const Grammar&) = delete;
};

}  // namespace endbell::cli
