// Completion for zsh, by its own _arguments.
#include "cli/manual/writers.hpp"
#include "engine/base/text.hpp"

namespace endbell::cli {

namespace {

/// Inside single quotes and inside the brackets of a specification.
std::string quoted_for_zsh(std::string_view text) {
    std::string out;
    for (const char c : text) {
        if (c == '\'')
            out += "'\\''";
        else if (c == '[' || c == ']' || c == ':' || c == '\\')
            out += std::string("\\") + c;
        else
            out += c;
    }
    return out;
}

std::string action(const Item& item) {
    const Completion c = completion_of(item);
    switch (c.next) {
        case Next::files:
            return "_files";
        case Next::folders:
            return "_files -/";
        case Next::words:
            if (c.goes_on) return "{compadd -S \"\" -- " + joined(c.words, " ") + "}";
            return "(" + joined(c.words, " ") + ")";
        case Next::nothing:
            break;
    }
    return " ";
}

std::string option_line(const Item& item) {
    std::string text = "'" + item.name + "[" + quoted_for_zsh(item.help) + "]";
    if (!item.value.empty()) text += ":" + quoted_for_zsh(item.value) + ":" + action(item);
    return text + "'";
}

std::string position_line(const Item& item) {
    const std::string place = item.many ? "*:" : item.required ? ":" : "::";
    return "'" + place + quoted_for_zsh(item.name) + ":" + action(item) + "'";
}

/// "match:the ranked options": one line of _describe.
std::string choice(const std::string& name, const std::string& help) {
    return "        '" + name + ":" + quoted_for_zsh(help) + "'\n";
}

/// The function that completes what follows `name`: a list of verbs, and then the verb's own function.
std::string chooser(const CommandLine& line, const std::string& group) {
    std::string choices;
    for (const NextWord& each : choices_below(line, group)) choices += choice(each.word, each.help);
    const std::string function = group.empty() ? "_endbell" : "_endbell-" + group;
    return function +
           "() {\n    local context state state_descr line\n    typeset -A opt_args\n    local -a verbs\n"
           "    verbs=(\n" +
           choices +
           "    )\n    _arguments -C $_endbell_options '1:command:->verb' '*::word:->rest'\n    case $state "
           "in\n"
           "        verb) _describe command verbs ;;\n        rest)\n            if (( $+functions[" +
           function + "-$line[1]] )); then " + function + "-$line[1]; fi ;;\n    esac\n}\n\n";
}

}  // namespace

std::string zsh_completion(const CommandLine& line) {
    std::string script =
        "#compdef endbell\n# zsh completion for endbell; made by endbell-manual.\n\n"
        "_endbell_options=(\n";
    for (const Item& item : line.options) script += "    " + option_line(item) + "\n";
    script += ")\n\n";
    for (const Verb& verb : line.verbs) {
        script += "_endbell-" + dashed(verb.name) + "() {\n    _arguments $_endbell_options";
        for (const Item& item : verb.options) script += " \\\n        " + option_line(item);
        for (const Item& item : verb.positions) script += " \\\n        " + position_line(item);
        script += "\n}\n\n";
    }
    for (const VerbGroup& group : line.groups) script += chooser(line, group.name);
    return script + chooser(line, "") + "_endbell \"$@\"\n";
}

}  // namespace endbell::cli
