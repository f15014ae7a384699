// From argv to Arguments, from Arguments to a command, and from whatever is thrown to an exit code.
#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <exception>
#include <string_view>
#include <vector>

#include "cli/configuration.hpp"
#include "cli/exit_codes.hpp"
#include "cli/grammar.hpp"
#include "cli/interrupt.hpp"
#include "cli/memory.hpp"
#include "cli/output.hpp"
#include "engine/base/text.hpp"
#include "engine/sheet/json.hpp"

namespace endbell::cli {

namespace {

/// CLI11 throws for help and version as it does for faults: the first two are answers.
int carry_out(Grammar& grammar, int argc, char** argv) {
    try {
        grammar.app.parse(argc, argv);
    } catch (const CLI::CallForHelp&) {
        print(grammar.app.help());
        return done;
    } catch (const CLI::CallForVersion& version) {
        print(std::string(version.what()) + "\n");
        return done;
    } catch (const CLI::ParseError& wrong) {
        throw BadUsage(grammar.complaint(wrong));
    }
    settle(grammar.typed);
    return grammar.chosen(grammar.typed);
}

/// --json counts wherever it stands, also where the rest could not be read.
bool json_typed(int argc, char** argv) {
    for (int i = 1; i < argc; ++i) {
        if (std::strcmp(argv[i], "--json") == 0) return true;
    }
    return false;
}

int failed(const std::string& verb, bool json, int code, const std::vector<Problem>& problems) {
    for (const Problem& problem : problems) std::fprintf(stderr, "endbell: %s\n", to_text(problem).c_str());
    if (json) print(json_problems(verb, problems, code));
    return code;
}

int run(Grammar& grammar, int argc, char** argv) {
    const bool json = json_typed(argc, argv);
    try {
        return carry_out(grammar, argc, argv);
    } catch (const BadUsage& wrong) {
        return failed(grammar.verb(), json, usage, {wrong.problem()});
    } catch (const BadData& wrong) {
        return failed(grammar.verb(), json, bad_data, wrong.problems());
    } catch (const Interrupted& stopped) {
        return failed(grammar.verb(), json, stopped_by + stopped.signal,
                      {Problem{{}, "stopped: " + stopped.left, "", "", ""}});
    }
}

}  // namespace

}  // namespace endbell::cli

int main(int argc, char** argv) {
    using namespace endbell;
    constexpr std::size_t one_answer = 2'500'000,
                          large_answer = 8'000'000;  // bytes, measured at a million parts
    const cli::ExpectedMemory memory(one_answer, large_answer);
    try {
        cli::Grammar grammar(std::vector<std::string_view>(argv, argv + argc));
        return cli::run(grammar, argc, argv);
    } catch (const cli::OutputFailed& failed) {
        if (failed.error == EPIPE) return cli::stopped_by + SIGPIPE;  // the reader has enough
        std::fprintf(stderr, "endbell: the output: expected room to write; free some space (%s)\n",
                     std::strerror(failed.error));
        return cli::output_failed;
    } catch (const std::exception& bug) {
        std::fprintf(stderr, "endbell: our own bug: %s\nPlease report it with the command you typed.\n",
                     visible(bug.what()).c_str());
        return cli::our_bug;
    }
}
