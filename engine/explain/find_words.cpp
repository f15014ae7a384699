#include "engine/explain/find_words.hpp"

#include <algorithm>
#include <array>

#include "engine/base/text.hpp"
#include "engine/explain/english.hpp"

namespace endbell::inline explain {

namespace {

constexpr std::array ways{English<FoundBy>{FoundBy::number, "this number"},
                          English<FoundBy>{FoundBy::look_alike, "looks alike: not the number asked for"},
                          English<FoundBy>{FoundBy::one_off, "one character off: not the number asked for"},
                          English<FoundBy>{FoundBy::fragment, "holds it"},
                          English<FoundBy>{FoundBy::description, "its description has the words"}};

constexpr std::array questions{
    English<Narrowing>{Narrowing::none, ""},
    English<Narrowing>{Narrowing::maker, "Which maker's is it, and what kind of part?"},
    English<Narrowing>{Narrowing::characters, "Which characters stand before it or behind it?"},
    English<Narrowing>{Narrowing::words, "Which further word describes it: power, volts, speed or kind?"}};

std::string said_of(const FoundPart& found) {
    if (!found.part) return "not in this catalog";
    std::string said = std::string(word(found.part->kind)) + " of " + found.part->maker;
    if (found.part->status != PartStatus::active) said += ", " + std::string(word(found.part->status));
    if (!found.part->description.empty()) said += ": " + found.part->description;
    return said;
}

void add_parts(Document& to, const FindAnswer& answer) {
    Grid table{{"part", "number", "how it was found", "what it is"}, {}, ""};
    for (const FoundPart& found : answer.parts)
        table.rows.push_back({found.part_id, found.number, english_of(ways, found.by), said_of(found)});
    to.add(table);
    Bullets words;
    for (const FoundPart& found : answer.parts) {
        for (const CrossReference& each : found.references) {
            words.items.push_back(each.part_id + " " + std::string(word(each.relation)) + " " +
                                  each.old_number + ", says " + each.source +
                                  ": somebody's word, which no rule has judged.");
        }
    }
    if (!words.items.empty()) to.add(words);
}

void add_chain(Document& to, const FoundChain& chain) {
    to.add(Paragraph{"What took the place of " + chain.from + ":"});
    Steps steps;
    for (const SuccessionStep& step : chain.succession.steps)
        steps.items.push_back(step.from + " was superseded by " + step.to + ", says " + step.source + ".");
    to.add(steps);
    if (!chain.succession.ends.empty())
        to.add(Paragraph{"Sold today in its place: " + joined(chain.succession.ends, ", ") + "."});
    if (chain.succession.cycle) {
        to.add(
            Warning{"NOTICE",
                    "The chain comes back to a number that it passed: one of these steps is wrong. Ask the "
                    "catalog keeper."});
    }
}

void add_answer(Document& to, const FindAnswer& answer) {
    const bool exact = !answer.parts.empty() && answer.parts.front().by == FoundBy::number;
    if (!answer.is_known()) {
        to.add(
            Paragraph{"Nobody knows " + answer.text +
                      ": no part, old number or description of this catalog has it or comes near. Read the "
                      "label again, or describe the motor: endbell match --plate."});
    } else if (!exact) {
        to.add(Paragraph{"No number of this catalog is exactly " + answer.text + "."});
    }
    if (!answer.parts.empty()) add_parts(to, answer);
    for (const FoundChain& chain : answer.chains) add_chain(to, chain);
    const std::string question = narrowing_question(answer);
    if (!question.empty()) {
        to.add(Paragraph{std::to_string(answer.numbers) + " numbers were found; " +
                         std::to_string(answer.parts.size()) + " parts are shown. " + question});
    }
}

}  // namespace

std::string narrowing_question(const FindAnswer& answer) {
    return english_of(questions, answer.narrowing);
}

Document find_document(const std::vector<FindAnswer>& answers, const std::string& stamp) {
    Document d{answers.size() == 1 ? "Parts found for " + answers.front().text : "Parts found", {}, stamp};
    for (const FindAnswer& answer : answers) {
        if (answers.size() > 1) d.add(Heading{answer.text});
        add_answer(d, answer);
    }
    return d;
}

}  // namespace endbell::inline explain
