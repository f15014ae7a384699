#include "cli/manual/description.hpp"

#include "cli/grammar.hpp"
#include "engine/base/text.hpp"

namespace endbell::cli {

namespace {

Item describe(const CLI::Option& option) {
    Item item;
    item.name = option.get_positional() ? option.get_name() : "--" + option.get_lnames().front();
    item.help = option.get_description();
    item.environment = option.get_envname();
    item.required = option.get_required();
    item.many = option.get_positional() && option.get_items_expected_max() > 1;
    if (option.get_type_size_max() == 0) return item;
    // "TEXT:{a,b}" is a type and what is checked of it; "INT:INT in [1 - 9]" too.
    const std::string type = option.get_type_name();
    const std::size_t colon = type.find(':');
    item.value = type.substr(0, colon);
    if (colon != std::string::npos && type[colon + 1] == '{')
        item.words = split(type.substr(colon + 2, type.find('}') - colon - 2), ',');
    return item;
}

Verb describe(const CLI::App& app, const std::string& above, const Grammar& grammar) {
    Verb verb{above + app.get_name(), app.get_description(), {}, {}, {}};
    for (const CLI::Option* option : app.get_options()) {
        if (option == app.get_help_ptr()) continue;
        const Item item = describe(*option);
        (item.is_option() ? verb.options : verb.positions).push_back(item);
    }
    const auto examples = grammar.examples.find(&app);
    if (examples == grammar.examples.end()) return verb;
    for (const Example& e : examples->second)
        verb.examples.push_back({std::string(e.command), std::string(e.does)});
    return verb;
}

void add_verbs(const CLI::App& app, const std::string& above, const Grammar& grammar, CommandLine& line) {
    for (const CLI::App* sub : app.get_subcommands([](const CLI::App*) { return true; })) {
        if (sub->get_subcommands([](const CLI::App*) { return true; }).empty()) {
            line.verbs.push_back(describe(*sub, above, grammar));
        } else {
            line.groups.push_back({above + sub->get_name(), sub->get_description()});
            add_verbs(*sub, above + sub->get_name() + " ", grammar, line);
        }
    }
}

}  // namespace

CommandLine describe(const Grammar& grammar) {
    CommandLine line{grammar.app.get_description(), grammar.app.version(), settings, {}, {}, {}};
    for (const CLI::Option* option : grammar.app.get_options()) line.options.push_back(describe(*option));
    add_verbs(grammar.app, "", grammar, line);
    return line;
}

bool takes_job(const Verb& verb) {
    return !verb.positions.empty() && verb.positions.front().name == "JOB";
}

}  // namespace endbell::cli
