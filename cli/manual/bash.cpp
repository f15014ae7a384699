// Completion for bash, without anything that the shell does not bring itself.
#include <algorithm>
#include <set>
#include <utility>

#include "cli/manual/writers.hpp"
#include "engine/base/text.hpp"

namespace endbell::cli {

namespace {

/// What to do for one item, as a command of the script.
std::string completing_in_bash(const Item& item) {
    const Completion c = completion_of(item);
    switch (c.next) {
        case Next::files:
            return "_endbell_paths -f";
        case Next::folders:
            return "_endbell_paths -d";
        case Next::words:
            return std::string(c.goes_on ? "compopt -o nospace; " : "") + "_endbell_words \"" +
                   joined(c.words, " ") + "\"";
        case Next::nothing:
            break;
    }
    return ":";
}

/// The patterns of a case, by what to do: behind which verb's option its value stands.
using ValueLines = std::vector<std::pair<std::string, std::string>>;  // what to do, patterns

void add_values(const std::string& verb, const std::vector<Item>& options, ValueLines& lines) {
    for (const Item& item : options) {
        if (item.value.empty()) continue;
        const std::string pattern = verb + " " + item.name + "\"";
        const std::string what = completing_in_bash(item);
        const auto same =
            std::find_if(lines.begin(), lines.end(), [&](const auto& each) { return each.first == what; });
        if (same == lines.end())
            lines.emplace_back(what, pattern);
        else
            same->second += " | " + pattern;
    }
}

std::string text_of(const ValueLines& lines) {
    std::string text;
    for (const auto& [what, patterns] : lines)
        text += "        " + patterns + ")\n            " + what + "\n            return ;;\n";
    return text;
}

std::string names(const std::vector<Item>& options) {
    std::string text;
    for (const Item& item : options) text += (text.empty() ? "" : " ") + item.name;
    return text;
}

std::string words_below(const CommandLine& line, const std::string& group) {
    std::string words;
    for (const NextWord& choice : choices_below(line, group))
        words += (words.empty() ? "" : " ") + choice.word;
    return words;
}

/// Names of the options that a value follows, each once.
std::string valued_options(const CommandLine& line) {
    std::set<std::string> names;
    const auto add = [&names](const std::vector<Item>& options) {
        for (const Item& item : options) {
            if (!item.value.empty()) names.insert(item.name);
        }
    };
    add(line.options);
    for (const Verb& verb : line.verbs) add(verb.options);
    return joined({names.begin(), names.end()}, " ");
}

std::string group_names(const CommandLine& line) {
    std::vector<std::string> names;
    for (const VerbGroup& group : line.groups) names.push_back(group.name);
    return joined(names, " ");
}

/// What stands behind each verb's options.
std::string values_case(const CommandLine& line) {
    ValueLines values;
    add_values("*\"", line.options, values);
    for (const Verb& verb : line.verbs) add_values("\"" + verb.name, verb.options, values);
    return "    case \"$verb $before\" in\n" + text_of(values) + "    esac\n";
}

/// The options of each verb.
std::string options_case(const CommandLine& line) {
    std::string text = "    if [[ $word == -* ]]; then\n        local own=''\n        case \"$verb\" in\n";
    for (const Verb& verb : line.verbs) {
        if (!verb.options.empty())
            text += "            \"" + verb.name + "\") own=\"" + names(verb.options) + "\" ;;\n";
    }
    return text + "        esac\n        _endbell_words \"$own " + names(line.options) +
           "\"\n        return\n    fi\n";
}

/// What stands at each position behind each verb; a verb's own word too.
std::string positions_case(const CommandLine& line) {
    const auto words = [&line](const std::string& group) {
        return "        \"" + group + " 0\") _endbell_words \"" + words_below(line, group) + "\" ;;\n";
    };
    std::string text = "    case \"$verb $position\" in\n" + words("");
    for (const VerbGroup& group : line.groups) text += words(group.name);
    for (const Verb& verb : line.verbs) {
        for (std::size_t i = 0; i < verb.positions.size(); ++i) {
            const Item& item = verb.positions[i];
            const std::string place = item.many ? "\"*" : std::to_string(i) + "\"";
            text += "        \"" + verb.name + " " + place + ") " + completing_in_bash(item) + " ;;\n";
        }
    }
    return text + "    esac\n";
}

constexpr const char* tools = R"(# bash completion for endbell; made by endbell-manual.
_endbell_words() { mapfile -t COMPREPLY < <(compgen -W "$1" -- "$word"); }
_endbell_paths() { compopt -o filenames; mapfile -t COMPREPLY < <(compgen "$1" -- "$word"); }

_endbell() {
    local word=${COMP_WORDS[COMP_CWORD]} before='' verb='' position=0 i=1 typed
    # The verb, and how many words stand behind it: an option's value is none of them.
    while [ "$i" -lt "$COMP_CWORD" ]; do
        typed=${COMP_WORDS[i]}
        if [[ $typed == -* ]]; then
            case " $valued " in *" $typed "*) i=$((i + 1)) ;; esac
        elif [ -z "$verb" ] || [[ " $groups " == *" $verb "* ]]; then
            verb=${verb:+$verb }$typed
        else
            position=$((position + 1))
        fi
        i=$((i + 1))
    done
    # Bash parts KEY=VALUE into words of their own; a value is not completed.
    before=${COMP_WORDS[COMP_CWORD - 1]}
    [ "$before" != = ] && [ "$word" != = ] || return 0
)";

}  // namespace

std::string bash_completion(const CommandLine& line) {
    std::string script = tools;
    script.replace(script.find("$valued"), 7, valued_options(line));
    script.replace(script.find("$groups"), 7, group_names(line));
    return script + values_case(line) + options_case(line) + positions_case(line) +
           "}\n\ncomplete -F _endbell endbell\n";
}

}  // namespace endbell::cli
