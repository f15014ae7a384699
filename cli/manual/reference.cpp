// Pages of docs/reference that are made, not written.
#include "cli/exit_codes.hpp"
#include "cli/manual/writers.hpp"
#include "engine/base/text.hpp"
#include "engine/job/job.hpp"

namespace endbell::cli {

namespace {

constexpr const char* made = "<!-- Made by endbell-manual: change the program, not this page. -->\n\n";

/// A table's cell: a bar would end it.
std::string cell(std::string_view text) {
    std::string out;
    for (const char c : text) out += c == '|' ? "\\|" : std::string(1, c);
    return out;
}

std::string code(std::string_view text) {
    return text.empty() ? "" : "`" + cell(text) + "`";
}

std::string rows_of(const std::vector<Item>& items) {
    std::string text;
    for (const Item& item : items) {
        const std::string typed =
            item.is_option() && !item.value.empty() ? item.name + " " + item.value : item.name;
        std::string help = item.help;
        if (!item.environment.empty()) help += "; else " + code(item.environment);
        if (item.required) help += "; required";
        text += "| " + code(typed) + " | " + cell(help) + " |\n";
    }
    return text;
}

constexpr const char* head = "| typed | meaning |\n|---|---|\n";

/// What the key's own reader says it expects, told of a text that it cannot read. Empty: it takes any text.
std::string expected_of(const JobKey& key) {
    FailedUnit job;
    return key.read(job, fold("?!"), {});
}

}  // namespace

std::string commands_page(const CommandLine& line) {
    std::string text = made;
    text += "# Commands\n\n" + line.about + "\n\n## For every command\n\n" + head + rows_of(line.options);
    text +=
        "\n## Exit codes\n\n10, 11 and 12 are outcomes of a job: no other command ends with them.\n\n"
        "| code | meaning |\n|---|---|\n";
    for (const ExitMeaning& e : exit_meanings)
        text += "| " + std::to_string(e.code) + " | " + std::string(e.meaning) + " |\n";
    for (const Verb& verb : line.verbs) {
        text += "\n## endbell " + verb.name + "\n\n" + code(synopsis(verb)) + "\n\n" + sentence(verb.help) +
                "\n\n" + head + rows_of(verb.positions) + rows_of(verb.options);
        if (!verb.examples.empty()) text += "\n| example | what it does |\n|---|---|\n";
        for (const ShownExample& e : verb.examples)
            text += "| " + code(e.command) + " | " + cell(e.does) + " |\n";
    }
    return text;
}

std::string job_keys_page() {
    std::string text = made;
    text +=
        "# Keys of a job file\n\nEvery key, in the order of the groups. [job-file.md](job-file.md) says how "
        "a "
        "job file is written.\n";
    std::string_view group;
    for (const JobKey& key : job_keys()) {
        if (key.group != group) {
            text +=
                "\n## " + std::string(key.group) +
                "\n\n| key | meaning | a bare number is | example | what is read |\n|---|---|---|---|---|\n";
        }
        group = key.group;
        std::string expected = expected_of(key);
        if (expected.empty()) expected = "any text";
        if (key.quoted) expected += ", in quotes: zeros and dashes count";
        if (!key.follows.empty()) expected += "; read after " + code(key.follows);
        text += "| " + code(key.name) + " | " + cell(key.meaning) + " | " + cell(key.unit) + " | " +
                code("\"" + std::string(key.example) + "\"") + " | " + cell(expected) + " |\n";
    }
    return text;
}

}  // namespace endbell::cli
