#include "engine/explain/put_question.hpp"

#include <algorithm>

#include "engine/explain/questions.hpp"
#include "engine/explain/values.hpp"

namespace endbell::inline explain {

namespace {

std::string parts(int count) {
    return std::to_string(count) + (count == 1 ? " part" : " parts");
}

std::string reason_of(const PutQuestion& q) {
    if (!q.contrary.empty())
        return "These readings cannot all be true: " + q.contrary +
               ". None of them is used until one is read again.";
    if (q.missing != nullptr) {
        return std::string("It shows what failed, which comes before what fits. ") +
               (q.missing->power_off() ? "Power locked out, 5 minutes waited." : "Power on: keep clear.");
    }
    if (q.asked != nullptr) {
        const std::string settled =
            " undecided. An answer is expected to settle " + say_number(q.asked->settled, 1) + " of ";
        if (!q.asked->more) return "It keeps " + parts(q.asked->concerns) + settled + "all that are open.";
        return "Of the " + std::to_string(q.asked->looked_at) + " cheapest parts that are open it keeps " +
               std::to_string(q.asked->concerns) + settled + "them.";
    }
    return "The wiring cannot be planned without it.";
}

/// A catalog of many sizes makes a long list: the likeliest are told, in the order of their size.
Grid possible_answers(const AskedReading& asked) {
    constexpr std::size_t told = 10;
    std::vector<AnswerLeaves> answers = asked.answers;
    std::stable_sort(answers.begin(), answers.end(),
                     [](const AnswerLeaves& a, const AnswerLeaves& b) { return a.share > b.share; });
    const double least = answers.size() > told ? answers[told - 1].share : 0;
    Grid table{{"if it is", "can still fit", "shown to fit"}, {}, ""};
    for (const AnswerLeaves& leaves : asked.answers) {
        if (leaves.share < least || table.rows.size() == told) continue;
        table.rows.push_back({leaves.answer, parts(leaves.living), parts(leaves.matches)});
    }
    const std::size_t left_out = asked.answers.size() - table.rows.size();
    if (left_out > 0) table.caption = std::to_string(left_out) + " less likely answers are left out.";
    return table;
}

}  // namespace

Document question_document(const PutQuestion& q) {
    Document d{"Question " + std::to_string(q.number) + ": " + q.job_key, {}, ""};
    d.add(Paragraph{question_for(q.job_key)});
    if (q.open != nullptr) {
        d.add(Paragraph{"The job says '" + q.open->raw + "': " + q.open->question});
        if (!q.open->readings.empty()) d.add(Bullets{q.open->readings});
    }
    d.add(Paragraph{"Why: " + reason_of(q)});
    if (q.missing == nullptr && q.asked != nullptr && !q.asked->answers.empty())
        d.add(possible_answers(*q.asked));
    return d;
}

Document answering_document(const PutQuestion& q) {
    Document d{"Answering " + q.job_key, {}, ""};
    Pairs pairs;
    pairs.rows.emplace_back("Meaning", q.meaning);
    if (!q.unit.empty()) pairs.rows.emplace_back("Bare number", q.unit);
    pairs.rows.emplace_back("For example", q.example);
    pairs.rows.emplace_back("skip", "leave it open and go on");
    pairs.rows.emplace_back("back", "take the last answer out of the job file again");
    pairs.rows.emplace_back("quit", "stop here; what was answered stays in the job file");
    d.add(pairs);
    d.add(Paragraph{
        "Write it as the plate or the meter says it. Counts are of the parts that are still open; where "
        "there are more than a few hundred, of the cheapest few hundred of them."});
    return d;
}

std::string what_is_left(const MatchReport& report) {
    const int shown = report.fitting + report.changing;
    return parts(shown + report.open) + " can still fit; " + std::to_string(shown) +
           (shown == 1 ? " is" : " are") + " shown to fit.";
}

}  // namespace endbell::inline explain
