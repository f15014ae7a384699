// endbell-manual FOLDER: writes the man pages, the made pages of docs/reference and the shell completions there.
#include <cstdio>
#include <exception>
#include <filesystem>

#include "cli/exit_codes.hpp"
#include "cli/grammar.hpp"
#include "cli/manual/writers.hpp"
#include "engine/base/file_writer.hpp"

namespace {

void write_file(const std::filesystem::path& path, const std::string& text) {
    std::filesystem::create_directories(path.parent_path());
    endbell::FileWriter file(
        path, {{path.string(), 0, 0}, "FOLDER", "", "a folder that can be written", "name another"});
    file.write(text);
    file.finish();
    file.take_place();
}

void write_all(const std::filesystem::path& folder) {
    using namespace endbell::cli;
    const Grammar grammar;
    const CommandLine line = describe(grammar);
    write_file(folder / "man1" / "endbell.1", man_page(line));
    for (const Verb& verb : line.verbs)
        write_file(folder / "man1" / ("endbell-" + dashed(verb.name) + ".1"), man_page(line, verb));
    write_file(folder / "man5" / "endbell-job.5", job_man_page(line));
    write_file(folder / "reference" / "commands.md", commands_page(line));
    write_file(folder / "reference" / "job-keys.md", job_keys_page());
    write_file(folder / "bash" / "endbell", bash_completion(line));
    write_file(folder / "zsh" / "_endbell", zsh_completion(line));
    write_file(folder / "fish" / "endbell.fish", fish_completion(line));
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fputs("usage: endbell-manual FOLDER\n", stderr);
        return endbell::cli::usage;
    }
    try {
        write_all(argv[1]);
    } catch (const std::exception& error) {
        std::fprintf(stderr, "endbell-manual: %s\n", error.what());
        return endbell::cli::bad_data;
    }
    return endbell::cli::done;
}
