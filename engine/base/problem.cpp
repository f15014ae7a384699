#include "engine/base/problem.hpp"

#include <utility>

#include "engine/base/text.hpp"

namespace endbell::inline base {

std::string to_text(const Place& place) {
    std::string text = visible(place.file);
    if (place.line > 0) text += ":" + std::to_string(place.line);
    if (place.line > 0 && place.column > 0) text += ":" + std::to_string(place.column);
    return text;
}

std::string to_text(const Problem& problem) {
    std::string text = to_text(problem.at);
    if (!text.empty()) text += ": ";
    text += problem.subject;
    if (!problem.value.empty()) text += " = '" + problem.value + "'";
    if (!problem.expected.empty()) text += ": expected " + problem.expected;
    if (!problem.todo.empty()) text += "; " + problem.todo;
    return visible(text);  // a file name, too, may hold anything
}

namespace {

std::string all_lines(const std::vector<Problem>& problems) {
    std::string text;
    for (const Problem& problem : problems) {
        if (!text.empty()) text += '\n';
        text += to_text(problem);
    }
    return text;
}

}  // namespace

BadData::BadData(std::vector<Problem> problems)
    : std::runtime_error(all_lines(problems)), problems_(std::move(problems)) {}

BadUsage::BadUsage(Problem problem) : std::runtime_error(to_text(problem)), problem_(std::move(problem)) {}

}  // namespace endbell::inline base
