// Exit codes are outcomes (Outcome: 0, 10, 11, 12) or say whose fault it is.
#pragma once
#include <array>
#include <string_view>

namespace endbell::cli {

enum ExitCode {
    done = 0,
    usage = 64,
    bad_data = 65,
    our_bug = 70,
    output_failed = 74,
    stopped_by = 128  // + the signal: 130 is Ctrl-C
};

/// What is told of each: in the help, the man pages and the reference.
struct ExitMeaning {
    int code;
    std::string_view meaning;
    bool of_a_job = false;  // only a command about a job ends with it
};
inline constexpr std::array exit_meanings{
    ExitMeaning{done, "something fits, or the command is done"},
    ExitMeaning{10, "nothing in the catalog fits", true},
    ExitMeaning{11, "undecided: readings are missing", true},
    ExitMeaning{12, "do not replace it yet: the fault is elsewhere", true},
    ExitMeaning{usage, "the command cannot be carried out as typed"},
    ExitMeaning{bad_data, "a job, a catalog or another file is wrong; batch: at least one row is"},
    ExitMeaning{our_bug, "a bug of ours"},
    ExitMeaning{output_failed, "the output could not be written"},
    ExitMeaning{130, "stopped by Ctrl-C (128 + the signal); nothing is half done"}};

}  // namespace endbell::cli
