#include "engine/ask/ask.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "engine/ask/askable.hpp"
#include "engine/rules/finding_draft.hpp"
#include "engine/rules/job_fields.hpp"

namespace endbell::inline ask {

namespace {

// A finding closed without settling its part is progress of this weight: a part with five open questions is
// not settled by any single answer, yet the answers are needed.
constexpr double progress = 0.2;

using KeySet = std::set<std::string>;

bool is_open(const Finding& f) {
    return f.verdict == Verdict::not_shown;
}

Verdict best_match(const MatchReport& report) {
    return report.fitting > 0    ? Verdict::fits
           : report.changing > 0 ? Verdict::fits_with_changes
                                 : Verdict::does_not_fit;
}

/// So many of the cheapest are enough to rank questions by; more would only take longer.
constexpr std::size_t most_worth_asking = 24;

/// Open candidates that could come to more than the best match, or be the first match at all.
std::vector<Candidate> worth_asking(const Query& q, const MatchReport& report, const Catalog& catalog) {
    const Verdict matches = best_match(report);
    std::vector<Candidate> open;
    for (const CandidateName& name : report.not_shown) {
        if (open.size() == most_worth_asking) break;
        if (name.at_best < matches) open.push_back(candidate(q, catalog, name.part_id));
    }
    return open;
}

std::vector<const Candidate*> each_of(const std::vector<Candidate>& all) {
    std::vector<const Candidate*> pointers;
    pointers.reserve(all.size());
    for (const Candidate& c : all) pointers.push_back(&c);
    return pointers;
}

KeySet open_keys(const std::vector<const Candidate*>& candidates) {
    KeySet keys;
    for (const Candidate* c : candidates) {
        for (const Finding& f : c->findings) {
            if (!is_open(f)) continue;
            for (const std::string& key : f.asks) {
                if (askable(key)) keys.insert(key);
            }
        }
    }
    return keys;
}

int open_findings(const Candidate& c) {
    return static_cast<int>(std::count_if(c.findings.begin(), c.findings.end(), is_open));
}

bool asks_for(const Candidate& c, const std::string& key) {
    return std::any_of(c.findings.begin(), c.findings.end(), [&](const Finding& f) {
        return is_open(f) && std::find(f.asks.begin(), f.asks.end(), key) != f.asks.end();
    });
}

struct Outlook {
    Verdict verdict = Verdict::fits;
    int open = 0;  // open findings
};

/// The rules that may say something else once this answer is given: those that look at what it changes.
std::vector<bool> moved_rules(const JobBytes& before, const Query& then) {
    const JobBytes after(then);
    const bool all = before.assembly() != after.assembly();
    std::vector<bool> moved(all_rules().size());
    for (std::size_t r = 0; r < moved.size(); ++r) moved[r] = all || !before.same_for_rule(r, after);
    return moved;
}

/// As `examine`, but only what may have changed is asked again, and nothing is kept.
Outlook outlook(const Query& then, const Candidate& now, const std::vector<bool>& moved) {
    Outlook o;
    const std::vector<Rule>& all = all_rules();
    for (std::size_t r = 0; r < all.size(); ++r) {
        const Verdict v = moved[r] ? all[r].judge(then, now.part).verdict : now.findings[r].verdict;
        o.verdict = std::max(o.verdict, v);
        if (v == Verdict::not_shown) ++o.open;
        if (v == Verdict::does_not_fit) break;
    }
    return o;
}

/// One answer tried on every candidate: what it leaves, and how much it settles.
double settle(const Query& q, const JobBytes& before, const PossibleAnswer& answer,
              const std::vector<const Candidate*>& candidates, AnswerLeaves& leaves) {
    Trial trial{q.job, q.diagnosis};
    answer.give(trial);
    const Query then = trial.query(q.limits);
    const std::vector<bool> moved = moved_rules(before, then);
    double settled = 0;
    for (const Candidate* c : candidates) {
        const Outlook after = outlook(then, *c, moved);
        if (after.verdict != Verdict::does_not_fit) ++leaves.living;
        if (after.verdict < Verdict::not_shown) ++leaves.matches;
        if (after.verdict != Verdict::not_shown) {
            settled += 1;
        } else {
            const int open = open_findings(*c);
            settled += progress * std::max(0, open - after.open) / open;
        }
    }
    return settled;
}

AskedReading weigh(const Query& q, const JobBytes& before, const std::string& key,
                   const std::vector<const Candidate*>& candidates) {
    const Askable& how = *askable(key);
    AskedReading reading;
    reading.job_key = key;
    reading.chance = how.chance;
    reading.seconds = how.seconds;
    std::vector<const Part*> parts;
    for (const Candidate* c : candidates) {
        parts.push_back(&c->part);
        if (asks_for(*c, key)) ++reading.concerns;
    }
    const std::vector<PossibleAnswer> answers = how.answers(parts);
    double votes = 0;
    for (const PossibleAnswer& a : answers) votes += a.votes;
    for (const PossibleAnswer& a : answers) {
        AnswerLeaves leaves;
        leaves.answer = a.label;
        leaves.share = a.votes / votes;
        reading.settled += leaves.share * settle(q, before, a, candidates, leaves);
        reading.answers.push_back(std::move(leaves));
    }
    reading.score = reading.settled * reading.chance / reading.seconds;
    return reading;
}

/// The readings of a proof are all needed; of any other finding's keys one is enough.
bool all_needed(const Finding& f) {
    return f.rule == rule_id::wanted_part;
}

/// Keys that some open finding asks for and for nothing else: they will be asked in any case.
KeySet unavoidable(const std::vector<const Candidate*>& candidates) {
    KeySet keys;
    for (const Candidate* c : candidates) {
        for (const Finding& f : c->findings) {
            if (is_open(f) && f.asks.size() == 1) keys.insert(f.asks.front());
        }
    }
    return keys;
}

/// True when every open finding that asks for `key` also asks for one that is already on the list.
bool covered(const std::string& key, const KeySet& listed, const std::vector<const Candidate*>& candidates) {
    for (const Candidate* c : candidates) {
        for (const Finding& f : c->findings) {
            if (!is_open(f) || std::find(f.asks.begin(), f.asks.end(), key) == f.asks.end()) continue;
            if (all_needed(f)) return false;
            const bool other = std::any_of(f.asks.begin(), f.asks.end(),
                                           [&](const std::string& k) { return listed.count(k) > 0; });
            if (!other) return false;
        }
    }
    return true;
}

}  // namespace

AskState ask_state(const Query& q, const MatchReport& report, const Catalog& catalog) {
    const int matches = report.fitting + report.changing;
    if (matches + report.open == 0) return AskState::none_left;
    if (report.open == 0) return matches == 1 ? AskState::one_left : AskState::only_price;
    const std::vector<Candidate> worth = worth_asking(q, report, catalog);
    if (worth.empty()) return AskState::cannot_change;
    return open_keys(each_of(worth)).empty() ? AskState::no_answer : AskState::ask;
}

std::vector<AskedReading> what_to_ask(const Query& q, const MatchReport& report, const Catalog& catalog) {
    const std::vector<Candidate> worth = worth_asking(q, report, catalog);
    const std::vector<const Candidate*> candidates = each_of(worth);
    const JobBytes before(q);
    std::vector<AskedReading> weighed;
    for (const std::string& key : open_keys(candidates)) {
        weighed.push_back(weigh(q, before, key, candidates));
        weighed.back().looked_at = static_cast<int>(candidates.size());
        weighed.back().more = candidates.size() == most_worth_asking;
    }
    std::sort(weighed.begin(), weighed.end(), [](const AskedReading& a, const AskedReading& b) {
        return a.score != b.score ? a.score > b.score : a.job_key < b.job_key;
    });
    // The best first; then nothing that one already on the list, or one that is asked in any case, would answer as well.
    std::vector<AskedReading> list;
    KeySet listed;
    const KeySet asked_anyway = unavoidable(candidates);
    for (AskedReading& reading : weighed) {
        const std::string& key = reading.job_key;
        if (covered(key, listed, candidates)) continue;
        if (asked_anyway.count(key) == 0 && covered(key, asked_anyway, candidates)) continue;
        listed.insert(key);
        list.push_back(std::move(reading));
    }
    return list;
}

std::vector<AskedReading> what_to_ask(const Query& q, const Books& books) {
    return what_to_ask(q, match_parts(q, books).report, books.catalog);
}

}  // namespace endbell::inline ask
