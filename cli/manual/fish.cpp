// Completion for fish: one line an option, with the condition under which it is offered.
#include "cli/manual/writers.hpp"
#include "engine/base/text.hpp"

namespace endbell::cli {

namespace {

std::string quoted_for_fish(std::string_view text) {
    std::string out = "'";
    for (const char c : text) out += c == '\'' || c == '\\' ? std::string("\\") + c : std::string(1, c);
    return out + "'";
}

/// True behind this verb.
std::string behind(const Verb& verb) {
    std::string condition;
    for (const std::string& word : split(verb.name, ' '))
        condition += (condition.empty() ? "" : "; and ") + ("__fish_seen_subcommand_from " + word);
    return condition;
}

/// What may stand there, as arguments of `complete`.
std::string completing_in_fish(const Item& item) {
    const Completion c = completion_of(item);
    switch (c.next) {
        case Next::files:
            return " -F";
        case Next::folders:
            return " -f -a '(__fish_complete_directories)'";
        case Next::words:
            return " -f -a " + quoted_for_fish(joined(c.words, " "));
        case Next::nothing:
            break;
    }
    return " -f";
}

std::string option_line(const Item& item, const std::string& condition) {
    std::string text = "complete -c endbell";
    if (!condition.empty()) text += " -n " + quoted_for_fish(condition);
    text += " -l " + item.name.substr(2) + (item.value.empty() ? "" : " -r" + completing_in_fish(item));
    return text + " -d " + quoted_for_fish(item.help) + "\n";
}

/// The words that may be typed next, under a condition.
std::string choice_lines(const CommandLine& line, const std::string& group, const std::string& condition) {
    std::string text;
    for (const NextWord& choice : choices_below(line, group))
        text += "complete -c endbell -n " + quoted_for_fish(condition) + " -a " + choice.word + " -d " +
                quoted_for_fish(choice.help) + "\n";
    return text;
}

}  // namespace

std::string fish_completion(const CommandLine& line) {
    std::string script = "# fish completion for endbell; made by endbell-manual.\ncomplete -c endbell -f\n";
    for (const Item& item : line.options) script += option_line(item, "");
    script += choice_lines(line, "", "__fish_use_subcommand");
    for (const VerbGroup& group : line.groups) {
        std::string condition =
            "__fish_seen_subcommand_from " + group.name + "; and not __fish_seen_subcommand_from";
        for (const NextWord& choice : choices_below(line, group.name)) condition += " " + choice.word;
        script += choice_lines(line, group.name, condition);
    }
    for (const Verb& verb : line.verbs) {
        for (const Item& item : verb.options) script += option_line(item, behind(verb));
        for (const Item& item : verb.positions) {
            if (completion_of(item).next != Next::nothing)
                script += "complete -c endbell -n " + quoted_for_fish(behind(verb)) +
                          completing_in_fish(item) + "\n";
        }
    }
    return script;
}

}  // namespace endbell::cli
