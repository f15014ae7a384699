// Completion for bash, without anything that the shell does not bring itself.
#include <algorithm>
#include <utility>

#include "cli/manual/writers.hpp"
#include "engine/base/text.hpp"

namespace endbell::cli {

namespace {

/// What to offer for one item, as a command of the script.
std::string offer(const Item& item) {
    const Completion c = completion_of(item);
    switch (c.offer) {
        case Offer::files:
            return "_endbell_paths -f";
        case Offer::folders:
            return "_endbell_paths -d";
        case Offer::words:
            return std::string(c.goes_on ? "compopt -o nospace; " : "") + "_endbell_words \"" +
                   joined(c.words, " ") + "\"";
        case Offer::nothing:
            break;
    }
    return ":";
}

/// The patterns of a case, by what to offer: behind which verb's option its value stands.
using ValueLines = std::vector<std::pair<std::string, std::string>>;  // offer, patterns

void add_values(const std::string& verb, const std::vector<Item>& options, ValueLines& lines) {
    for (const Item& item : options) {
        if (item.value.empty()) continue;
        const std::string pattern = verb + " " + item.name + "\"";
        const std::string what = offer(item);
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

/// The words that may follow "" (the first ones) or a group's name.
std::string first_words(const CommandLine& line, const std::string& group) {
    std::vector<std::string> words;
    for (const Verb& verb : line.verbs) {
        const bool inside =
            group.empty() ? verb.name.find(' ') == std::string::npos : verb.name.rfind(group + " ", 0) == 0;
        if (inside) words.push_back(group.empty() ? verb.name : verb.name.substr(group.size() + 1));
    }
    if (group.empty()) {
        for (const VerbGroup& each : line.groups) words.push_back(each.name);
    }
    return joined(words, " ");
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
    std::string valued;
    std::string groups;
    ValueLines values;
    add_values("*\"", line.options, values);
    std::string options;
    std::string positions;
    const auto add_valued = [&](const std::vector<Item>& items) {
        for (const Item& item : items) {
            if (!item.value.empty() && (" " + valued + " ").find(" " + item.name + " ") == std::string::npos)
                valued += (valued.empty() ? "" : " ") + item.name;
        }
    };
    add_valued(line.options);
    for (const VerbGroup& group : line.groups) {
        groups += (groups.empty() ? "" : " ") + group.name;
        positions +=
            "        \"" + group.name + " 0\") _endbell_words \"" + first_words(line, group.name) + "\" ;;\n";
    }
    for (const Verb& verb : line.verbs) {
        add_valued(verb.options);
        add_values("\"" + verb.name, verb.options, values);
        if (!verb.options.empty())
            options += "        \"" + verb.name + "\") own=\"" + names(verb.options) + "\" ;;\n";
        for (std::size_t i = 0; i < verb.positions.size(); ++i) {
            const Item& item = verb.positions[i];
            positions += "        \"" + verb.name + " " + (item.many ? "\"*" : std::to_string(i) + "\"") +
                         ") " + offer(item) + " ;;\n";
        }
    }
    std::string script = tools;
    script.replace(script.find("$valued"), 7, valued);
    script.replace(script.find("$groups"), 7, groups);
    script += "    case \"$verb $before\" in\n" + text_of(values) + "    esac\n";
    script += "    if [[ $word == -* ]]; then\n        local own=''\n        case \"$verb\" in\n";
    for (const std::string& each : split(options, '\n')) script += each.empty() ? "" : "    " + each + "\n";
    script +=
        "        esac\n        _endbell_words \"$own " + names(line.options) + "\"\n        return\n    fi\n";
    script += "    case \"$verb $position\" in\n        \" 0\") _endbell_words \"" + first_words(line, "") +
              "\" ;;\n" + positions + "    esac\n}\n\ncomplete -F _endbell endbell\n";
    return script;
}

}  // namespace endbell::cli
