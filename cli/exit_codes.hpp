// Exit codes are outcomes (Outcome: 0, 10, 11, 12) or say whose fault it is.
#pragma once

namespace endbell::cli {

enum ExitCode {
    done = 0,
    usage = 64,
    bad_data = 65,
    our_bug = 70,
    output_failed = 74,
    stopped_by = 128  // + the signal: 130 is Ctrl-C
};

}  // namespace endbell::cli
