// What to measure next; with --answer, a dialogue that writes each answer into the job file.
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <set>
#include <sstream>

#include "cli/commands/commands.hpp"
#include "cli/exit_codes.hpp"
#include "cli/output.hpp"
#include "cli/session.hpp"
#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"
#include "engine/explain/put_question.hpp"
#include "engine/job/job_text.hpp"
#include "engine/select/still_open.hpp"
#include "engine/sheet/json.hpp"
#include "engine/sheet/text.hpp"

namespace endbell::cli {

namespace {

/// The job and what is answered about it, as the file says it now.
struct JobNow {
    Session session;
    Selection selection;
    std::vector<AskedReading> asked;

    explicit JobNow(const Arguments& typed)
        : session(open_session(typed)), selection(select_part(session.job, session.books(), session.policy)) {
        if (selection.outcome == Outcome::undecided) {
            asked = what_to_ask(Query{session.job, selection.facts, selection.diagnosis, session.limits},
                                selection.report, *session.catalog);
        }
    }

    /// All that is known of why this key is asked; the document picks.
    PutQuestion question(const std::string& key, int number) const {
        const JobKey& told = *job_key(key);
        PutQuestion q{number,
                      key,
                      nullptr,
                      nullptr,
                      nullptr,
                      std::string(told.meaning),
                      std::string(told.unit),
                      std::string(told.example)};
        for (const OpenField& field : session.open) {
            if (field.job_key == key) q.open = &field;
        }
        for (const std::string& both : selection.diagnosis.contradictions) {
            const auto keys = " " + both + " ";
            if (keys.find(" " + key + " ") != std::string::npos) q.contrary = both;
        }
        for (const MissingReading& m : selection.diagnosis.missing) {
            if (m.job_key == key && !selection.diagnosis.nothing_measured) q.missing = &m;
        }
        for (const AskedReading& reading : asked) {
            if (reading.job_key == key) q.asked = &reading;
        }
        return q;
    }
};

std::string text_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    if (file.peek() != EOF) text << file.rdbuf();
    return text.str();
}

class Dialogue {
  public:
    explicit Dialogue(const Arguments& typed)
        : typed_(typed),
          scripted_(isatty(STDIN_FILENO) == 0),
          new_(!typed.job.empty() && !std::filesystem::exists(typed.job)) {
        if (typed.job.empty() || !typed.plate.empty() || !typed.set.empty()) {
            throw BadUsage(Problem{{},
                                   "--answer",
                                   "",
                                   "a job file, and no --plate or --set",
                                   "the answers go into the file: endbell ask JOB --answer"});
        }
    }

    int run() {
        written_ = text_of(typed_.job);
        say("Each answer is written into " + visible(typed_.job) +
            " at once. ? explains; skip, back and quit are no answers.\n\n");
        for (;;) {
            now_ = std::make_unique<JobNow>(typed_);
            const std::string key = next_key();
            if (key.empty()) return decide();
            if (!steps_.empty()) say(what_is_left(now_->selection.report) + "\n\n");
            say(question_document(now_->question(key, number_)));
            if (!put(key)) return stop();
        }
    }

  private:
    /// A place to come back to.
    struct Step {
        std::string text;  // of the job file, before
        std::string key;
    };

    /// The next question that was neither answered nor skipped; empty: none, or the decision stands.
    std::string next_key() const {
        if (now_->selection.outcome != Outcome::undecided) return "";
        for (const std::string& key : now_->selection.questions) {
            const bool passed =
                std::any_of(steps_.begin(), steps_.end(), [&](const Step& s) { return s.key == key; });
            if (!passed && job_key(key) != nullptr) return key;
        }
        return "";
    }

    /// Until there is an answer, or a word that moves on. False: stop.
    bool put(const std::string& key) {
        for (;;) {
            say("\n" + key + "> ");
            std::string typed;
            if (!std::getline(std::cin, typed)) {
                say("\n");
                return false;
            }
            const std::string answer(trimmed(typed));
            if (scripted_) say(visible(answer) + "\n");
            if (answer == "quit") return false;
            if (answer.empty()) {
                say("An answer, or one of: ? skip back quit\n");
            } else if (answer == "?") {
                say(answering_document(now_->question(key, number_)));
            } else if (answer == "skip") {
                steps_.push_back({text_of(typed_.job), key});
                ++number_;
                return true;
            } else if (answer == "back") {
                if (went_back()) return true;
            } else if (taken(key, answer)) {
                return true;
            }
        }
    }

    /// Only over its own writing: what somebody else wrote into the file meanwhile is not undone.
    bool went_back() {
        if (steps_.empty()) {
            say("There is no question before this one.\n");
            return false;
        }
        if (text_of(typed_.job) != written_) {
            say("The job file was changed by somebody else: change it there.\n");
            return false;
        }
        write(steps_.back().text);
        say("Asked again: " + steps_.back().key + ".\n\n");
        steps_.pop_back();
        --number_;
        return true;
    }

    /// Reads the answer as the job file would. Written only when it decides the field and contradicts nothing.
    bool taken(const std::string& key, const std::string& answer) {
        FailedUnit trial = now_->session.job;
        if (const auto problem = set_key(trial, key, answer)) {
            say(to_text(*problem) + "\n");
            return false;
        }
        for (const OpenField& open : open_fields(trial)) {
            if (open.job_key != key) continue;
            say("That does not decide it: " + visible(open.question) + "\n");
            for (const std::string& reading : open.readings) say("  - " + visible(reading) + "\n");
            return false;
        }
        if (job_key(key)->text(trial).empty()) {
            say("That says nothing of it: type skip to leave it open.\n");
            return false;
        }
        const std::string before = text_of(typed_.job);
        try {
            const std::string after = with_key(before, typed_.job, *job_key(key), answer);
            read_job(after, typed_.job);
            write(after);
        } catch (const BadData& wrong) {
            for (const Problem& problem : wrong.problems()) say(to_text(problem) + "\n");
            return false;
        }
        steps_.push_back({before, key});
        ++number_;
        say("Written: " + key + " = \"" + visible(answer) + "\"\n\n");
        return true;
    }

    /// A file that this dialogue began is gone again when all its answers are taken back.
    void write(const std::string& text) {
        std::error_code none;
        if (text.empty() && new_)
            std::filesystem::remove(typed_.job, none);  // as it was
        else
            write_whole({{typed_.job, text, "JOB"}});
        written_ = text;
    }

    /// Stopping is no failure: the file holds what was answered, and the next run goes on from there.
    int stop() {
        say("Stopped. What was answered is in " + visible(typed_.job) + "; this is still open:\n\n");
        if (typed_.json)
            print(selection_json("ask", now_->selection, now_->session, 0));
        else
            print(ask_document(now_->selection, now_->session.open), typed_);
        return static_cast<int>(now_->selection.outcome);
    }

    int decide() {
        Selection& found = now_->selection;
        if (found.outcome == Outcome::undecided)
            say("No question is left that was not answered or skipped.\n\n");
        if (typed_.json)
            print(selection_json("ask", found, now_->session, typed_.top));
        else
            print(match_document(now_->session.job, found, now_->session.open, typed_.top), typed_);
        return static_cast<int>(found.outcome);
    }

    /// Under --json the dialogue goes beside the answer.
    void say(const std::string& text) const {
        if (!typed_.json) return print(text);
        std::fputs(text.c_str(), stderr);
    }
    void say(const Document& document) const {
        if (!typed_.json) return print(document, typed_);
        say(render_text(document, typed_.width));
    }

    const Arguments& typed_;
    const bool scripted_;
    const bool new_;  // the first answer makes the job file
    int number_ = 1;
    std::string written_;
    std::vector<Step> steps_;
    std::unique_ptr<JobNow> now_;
};

}  // namespace

int run_ask(const Arguments& typed) {
    if (typed.answer) return Dialogue(typed).run();
    const Session session = open_session(typed);
    const KitShelf shelf(session.books(), session.policy);
    Selection selection = select_part(session.job, session.books(), shelf);
    const bool decided = selection.outcome != Outcome::undecided || selection.questions.empty();
    if (decided && session.open.empty())
        selection.still_open = still_open(session.job, session.books(), shelf);
    if (typed.json) {
        print(selection_json("ask", selection, session, 0));
    } else {
        print(ask_document(selection, session.open), typed);
    }
    return static_cast<int>(selection.outcome);
}

}  // namespace endbell::cli
