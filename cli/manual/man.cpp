// Pages for man, in the man macros of troff.
#include "cli/exit_codes.hpp"
#include "cli/manual/writers.hpp"
#include "engine/base/text.hpp"
#include "engine/job/job.hpp"

namespace endbell::cli {

namespace {

/// Text that troff prints as it is: a dash that can be typed, and no line that looks like a request.
std::string plain(std::string_view text) {
    std::string out;
    for (const char c : text) {
        if (c == '\\')
            out += "\\e";
        else if (c == '-')
            out += "\\-";
        else if (c == '"')
            out += "\\(dq";
        else
            out += c;
    }
    if (!out.empty() && (out.front() == '.' || out.front() == '\'')) out.insert(0, "\\&");
    return out;
}

std::string upper(std::string text) {
    for (char& c : text) {
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    }
    return text;
}

std::string heading(const CommandLine& line, const std::string& name, const char* section,
                    std::string_view does) {
    return ".TH " + upper(plain(name)) + " " + section + " \"\" \"" + line.version + "\"\n.SH NAME\n" +
           plain(name) + " \\- " + plain(does) + "\n";
}

/// One entry of a list: the term in bold, what it means below.
std::string entry(const std::string& term, const std::string& meaning) {
    return ".TP\n.B " + plain(term) + "\n" + plain(meaning) + "\n";
}

std::string described(const Item& item) {
    std::string help = item.help;
    if (!item.environment.empty()) help += ". Else the environment variable " + item.environment;
    return entry(item.is_option() && !item.value.empty() ? item.name + " " + item.value : item.name, help);
}

std::string exit_status(bool of_a_job) {
    std::string text = ".SH EXIT STATUS\n";
    for (const ExitMeaning& e : exit_meanings) {
        if (of_a_job || !e.of_a_job) text += entry(std::to_string(e.code), std::string(e.meaning));
    }
    return text;
}

/// "endbell\-match(1), ..." as references.
std::string see_also(const std::vector<std::string>& pages) {
    std::string text = ".SH SEE ALSO\n";
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const std::size_t bracket = pages[i].find('(');
        text += ".BR " + plain(pages[i].substr(0, bracket)) + " " + pages[i].substr(bracket) +
                (i + 1 < pages.size() ? "," : "") + "\n";
    }
    return text;
}

}  // namespace

std::string man_page(const CommandLine& line) {
    std::string text = heading(line, "endbell", "1", "pick what replaces a failed HVAC motor or its module") +
                       ".SH SYNOPSIS\n.B endbell\n[OPTIONS] COMMAND ...\n.SH DESCRIPTION\n" +
                       plain(line.about) + "\n.SH COMMANDS\n";
    std::vector<std::string> pages;
    for (const Verb& verb : line.verbs) {
        text += entry(synopsis(verb).substr(8), verb.help);
        pages.push_back("endbell-" + dashed(verb.name) + "(1)");
    }
    pages.emplace_back("endbell-job(5)");
    text += ".SH OPTIONS\nThese stand before or behind every command.\n";
    for (const Item& item : line.options) text += described(item);
    return text + ".SH SETTINGS\n" + plain(line.settings) + "\n" + exit_status(true) + see_also(pages);
}

std::string man_page(const CommandLine& line, const Verb& verb) {
    const std::string name = "endbell-" + dashed(verb.name);
    std::string text = heading(line, name, "1", verb.help) + ".SH SYNOPSIS\n" + plain(synopsis(verb)) +
                       "\n.SH DESCRIPTION\n" + plain(sentence(verb.help)) + "\n.SH OPTIONS\n";
    for (const Item& item : verb.positions) text += described(item);
    for (const Item& item : verb.options) text += described(item);
    text += ".PP\nThe options of\n.BR endbell (1)\nare taken too.\n";
    if (!verb.examples.empty()) text += ".SH EXAMPLES\n";
    for (const ShownExample& e : verb.examples) text += entry(e.command, e.does);
    return text + exit_status(takes_job(verb)) + see_also({"endbell(1)", "endbell-job(5)"});
}

std::string job_man_page(const CommandLine& line) {
    std::string text =
        heading(line, "endbell-job", "5", "one failed motor or module as a file") +
        ".SH DESCRIPTION\nA job file is TOML. Its groups hold what is known of one failed unit. Every value "
        "is a\n"
        "text, written as the trade writes it; a bare number is taken in the unit that is named here.\n"
        "No key is required: what is missing is asked for. What can be read in two ways is asked, too.\n";
    std::string_view group;
    for (const JobKey& key : job_keys()) {
        if (key.group != group) text += ".SH [" + plain(key.group) + "]\n";
        group = key.group;
        std::string meaning(key.meaning);
        if (!key.unit.empty()) meaning += "; unit: " + std::string(key.unit);
        text += entry(std::string(key.name) + " = \"" + std::string(key.example) + "\"", meaning);
    }
    return text + see_also({"endbell(1)"});
}

}  // namespace endbell::cli
