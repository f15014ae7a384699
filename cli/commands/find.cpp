// Any number finds its parts: one text, or a line each from stdin.
#include <iostream>

#include "cli/commands/commands.hpp"
#include "cli/exit_codes.hpp"
#include "cli/output.hpp"
#include "cli/session.hpp"
#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"
#include "engine/explain/find_words.hpp"
#include "engine/sheet/json.hpp"

namespace endbell::cli {

namespace {

std::vector<std::string> texts_of(const Arguments& typed) {
    if (typed.inputs != std::vector<std::string>{"-"}) return {joined(typed.inputs, " ")};
    std::vector<std::string> texts;
    for (std::string line; std::getline(std::cin, line);) {
        const std::string text(trimmed(line));
        if (!text.empty()) texts.push_back(text);
    }
    return texts;
}

}  // namespace

int run_find(const Arguments& typed) {
    const std::vector<std::string> texts = texts_of(typed);
    const bool lines = typed.inputs.front() == "-";
    for (const std::string& text : texts) {
        if (can_be_found(text)) continue;
        const Problem problem{
            {}, "TEXT", text, "a number, a part of one, or words", "try: endbell find B-050"};
        if (lines) throw BadData(problem);
        throw BadUsage(problem);
    }
    const StoredCatalog catalog(catalog_file(typed));
    const NameIndex names(typed.catalog, catalog);
    std::vector<FindAnswer> answers;
    answers.reserve(texts.size());
    for (const std::string& text : texts) answers.push_back(find_parts(text, names, catalog));
    if (typed.json)
        print(json_find(answers, catalog.stamp()));
    else
        print(find_document(answers, catalog.stamp()), typed);
    return done;
}

}  // namespace endbell::cli
