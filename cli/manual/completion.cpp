#include "cli/manual/writers.hpp"
#include "engine/job/job.hpp"
#include "engine/rules/rule.hpp"

namespace endbell::cli {

std::string synopsis(const Verb& verb) {
    std::string text = "endbell " + verb.name + (verb.options.empty() ? "" : " [OPTIONS]");
    for (const Item& item : verb.positions) {
        const std::string word = item.name + (item.many ? "..." : "");
        text += item.required ? " " + word : " [" + word + "]";
    }
    return text;
}

std::string sentence(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text + ".";
}

std::string dashed(std::string name) {
    for (char& c : name) {
        if (c == ' ') c = '-';
    }
    return name;
}

std::vector<NextWord> choices_below(const CommandLine& line, const std::string& group) {
    const std::string above = group.empty() ? "" : group + " ";
    std::vector<NextWord> choices;
    for (const Verb& verb : line.verbs) {
        if (verb.name.rfind(above, 0) != 0) continue;
        const std::string word = verb.name.substr(above.size());
        if (word.find(' ') == std::string::npos) choices.push_back({word, verb.help});
    }
    for (const VerbGroup& each : line.groups) {
        if (group.empty()) choices.push_back({each.name, each.help});
    }
    return choices;
}

/// By the value's own name in the grammar: an option of a new kind completes nothing until it is told here.
Completion completion_of(const Item& item) {
    if (!item.words.empty()) return {Next::words, item.words};
    if (item.value == "FILE") return {Next::files, {}};
    if (item.value == "FOLDER") return {Next::folders, {}};
    Completion known{Next::words, {}};
    if (item.name == "RULE") {
        for (const Rule& rule : all_rules()) known.words.emplace_back(rule.id);
        return known;
    }
    if (item.value == "KEY=VALUE") {
        for (const JobKey& key : job_keys()) known.words.push_back(key.id() + "=");
        known.goes_on = true;
        return known;
    }
    return {};
}

}  // namespace endbell::cli
