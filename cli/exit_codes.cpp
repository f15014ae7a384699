#include "cli/exit_codes.hpp"

#include <csignal>

#include "engine/select/select.hpp"

namespace endbell::cli {

std::vector<ExitMeaning> exit_meanings(bool of_a_job) {
    std::vector<ExitMeaning> meanings;
    for (const Word<Outcome>& outcome : Words<Outcome>::table) {
        if (of_a_job) meanings.push_back({static_cast<int>(outcome.value), std::string(outcome.text)});
    }
    if (!of_a_job) meanings.push_back({done, "done"});
    meanings.push_back({usage, "usage: what was typed is not a command"});
    meanings.push_back({bad_data, "bad data: a file or a value cannot be read, or cannot be true"});
    meanings.push_back({our_bug, "our own bug"});
    meanings.push_back({output_failed, "the output could not be written"});
    meanings.push_back({stopped_by + SIGINT, "stopped by Ctrl-C; nothing is half done"});
    return meanings;
}

}  // namespace endbell::cli
