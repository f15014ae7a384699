// From argv to Arguments, from Arguments to a command, and from exceptions to exit codes.
#include <cstdio>
#include <exception>

#include "cli/exit_codes.hpp"
#include "cli/grammar.hpp"
#include "engine/base/problem.hpp"

namespace endbell::cli {

namespace {

int carry_out(int argc, char** argv) {
    Grammar grammar;
    try {
        grammar.app.parse(argc, argv);
    } catch (const CLI::ParseError& wrong) {
        return grammar.app.exit(wrong) == 0 ? done : usage;
    }
    return grammar.chosen(grammar.typed);
}

}  // namespace

}  // namespace endbell::cli

int main(int argc, char** argv) {
    using namespace endbell;
    try {
        return cli::carry_out(argc, argv);
    } catch (const BadUsage& wrong) {
        std::fprintf(stderr, "endbell: %s\n", wrong.what());
        return cli::usage;
    } catch (const BadData& wrong) {
        std::fprintf(stderr, "endbell: %s\n", wrong.what());
        return cli::bad_data;
    } catch (const std::exception& bug) {
        std::fprintf(stderr, "endbell: our own bug: %s\nPlease report it with the command you typed.\n",
                     bug.what());
        return cli::our_bug;
    }
}
