// The command line as plain data, for those who write about it: man pages, the reference, shell completion.
#pragma once
#include <string>
#include <vector>

namespace endbell::cli {

struct Grammar;

/// What is typed at one place: an option ("--plate") or a word at its position ("JOB").
struct Item {
    std::string name;
    std::string value;  // what an option is followed by ("FILE"); empty for a flag
    std::string help;
    std::vector<std::string> words;  // the only values, where they are listed
    std::string environment;         // the variable that says the same
    bool required = false;
    bool many = false;  // a position that takes several words

    bool is_option() const { return name.front() == '-'; }
};

struct ShownExample {
    std::string command;
    std::string does;
};

struct Verb {
    std::string name;  // "catalog import"
    std::string help;
    std::vector<Item> positions;
    std::vector<Item> options;
    std::vector<ShownExample> examples;
};

/// Verbs under one word, which does nothing alone: "catalog".
struct VerbGroup {
    std::string name;
    std::string help;
};

struct CommandLine {
    std::string about;
    std::string version;        // "endbell 1.2.3"
    std::string settings;       // where they come from
    std::vector<Item> options;  // taken before and behind every verb
    std::vector<Verb> verbs;
    std::vector<VerbGroup> groups;
};

CommandLine describe(const Grammar& grammar);

bool takes_job(const Verb& verb);

}  // namespace endbell::cli
