// Completion for fish: one line an option, with the condition under which it is offered.
#include "cli/manual/writers.hpp"
#include "engine/base/text.hpp"

namespace endbell::cli {

namespace {

std::string in_quotes(std::string_view text) {
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
std::string offer(const Item& item) {
    const Completion c = completion_of(item);
    switch (c.offer) {
        case Offer::files:
            return " -F";
        case Offer::folders:
            return " -f -a '(__fish_complete_directories)'";
        case Offer::words:
            return " -f -a " + in_quotes(joined(c.words, " "));
        case Offer::nothing:
            break;
    }
    return " -f";
}

std::string option_line(const Item& item, const std::string& condition) {
    std::string text = "complete -c endbell";
    if (!condition.empty()) text += " -n " + in_quotes(condition);
    text += " -l " + item.name.substr(2) + (item.value.empty() ? "" : " -r" + offer(item));
    return text + " -d " + in_quotes(item.help) + "\n";
}

}  // namespace

std::string fish_completion(const CommandLine& line) {
    std::string script = "# fish completion for endbell; made by endbell-manual.\ncomplete -c endbell -f\n";
    for (const Item& item : line.options) script += option_line(item, "");
    std::vector<std::string> first;
    for (const VerbGroup& group : line.groups)
        script += "complete -c endbell -n __fish_use_subcommand -a " + group.name + " -d " +
                  in_quotes(group.help) + "\n";
    for (const Verb& verb : line.verbs) {
        const std::size_t blank = verb.name.find(' ');
        const std::string word = verb.name.substr(blank == std::string::npos ? 0 : blank + 1);
        std::string condition = "__fish_use_subcommand";
        if (blank != std::string::npos) {
            condition = "__fish_seen_subcommand_from " + verb.name.substr(0, blank);
            for (const Verb& other : line.verbs) {
                if (other.name.rfind(verb.name.substr(0, blank + 1), 0) == 0)
                    condition += "; and not __fish_seen_subcommand_from " + other.name.substr(blank + 1);
            }
        }
        script += "complete -c endbell -n " + in_quotes(condition) + " -a " + word + " -d " +
                  in_quotes(verb.help) + "\n";
        for (const Item& item : verb.options) script += option_line(item, behind(verb));
        for (const Item& item : verb.positions) {
            if (completion_of(item).offer != Offer::nothing)
                script += "complete -c endbell -n " + in_quotes(behind(verb)) + offer(item) + "\n";
        }
    }
    return script;
}

}  // namespace endbell::cli
