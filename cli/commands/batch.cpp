#include "cli/commands/commands.hpp"
#include "engine/base/problem.hpp"

namespace endbell::cli {

int run_batch(const Arguments&) {
    throw BadUsage(Problem{{}, "batch", "", "a later version of this program", "answer the jobs one at a time with endbell match"});
}

}  // namespace endbell::cli
