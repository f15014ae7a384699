// From one description of the command line: everything that is written about it.
#pragma once
#include <string>

#include "cli/manual/description.hpp"

namespace endbell::cli {

/// endbell(1), endbell-VERB(1), and endbell-job(5) from the keys of engine/job.
std::string man_page(const CommandLine& line);
std::string man_page(const CommandLine& line, const Verb& verb);
std::string job_man_page(const CommandLine& line);

/// docs/reference/commands.md and docs/reference/job-keys.md.
std::string commands_page(const CommandLine& line);
std::string job_keys_page();

std::string bash_completion(const CommandLine& line);
std::string zsh_completion(const CommandLine& line);
std::string fish_completion(const CommandLine& line);

/// "endbell match [OPTIONS] [JOB]".
std::string synopsis(const Verb& verb);

/// "what failed and why" -> "What failed and why."
std::string sentence(std::string text);

/// "catalog import" -> "catalog-import".
std::string dashed(std::string name);

/// A word that may be typed next, and what it does.
struct NextWord {
    std::string word;
    std::string help;
};
/// The words that may follow a group's name; "": the first words.
std::vector<NextWord> choices_below(const CommandLine& line, const std::string& group);

/// What completion shows where a word of this item stands.
enum class Next { nothing, files, folders, words };
struct Completion {
    Next next = Next::nothing;
    std::vector<std::string> words;
    bool goes_on = false;  // the word is not finished: no blank behind it
};
Completion completion_of(const Item& item);

}  // namespace endbell::cli
