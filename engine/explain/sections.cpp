#include <algorithm>

#include "engine/base/text.hpp"

#include "engine/explain/diagnosis_words.hpp"
#include "engine/explain/findings.hpp"
#include "engine/explain/next_test_words.hpp"
#include "engine/explain/parts_of_documents.hpp"
#include "engine/explain/questions.hpp"
#include "engine/explain/values.hpp"
#include "engine/explain/wiring_words.hpp"

namespace endbell::inline explain {

namespace {

std::string text(std::string_view view) {
    return std::string(view);
}

std::string hours(int thousandths) {
    return say_number(thousandths / 1000.0, 3) + " h";
}

std::string cited(Document& to, std::string_view id) {
    if (id.empty()) return "";
    if (std::find(to.source_ids.begin(), to.source_ids.end(), id) == to.source_ids.end())
        to.source_ids.emplace_back(id);
    return std::string(id);
}

/// Answers sort by size as text, "0000.5000 in": people read "0.5 in".
std::string without_padding(std::string answer) {
    while (answer.size() > 1 && answer[0] == '0' && answer[1] >= '0' && answer[1] <= '9') answer.erase(0, 1);
    const std::size_t point = answer.find('.');
    if (point == std::string::npos) return answer;
    std::size_t end = point + 1;
    while (end < answer.size() && answer[end] >= '0' && answer[end] <= '9') ++end;
    std::size_t last = end;
    while (last > point + 1 && answer[last - 1] == '0') --last;
    if (last == point + 1) --last;
    return answer.erase(last, end - last);
}

std::string counted(int count, const char* one, const char* many) {
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

}  // namespace

std::string part_name(const Part& part) {
    constexpr std::size_t most = 60;  // of a name in a title
    if (part.number.empty()) return shortened(part.id, most);
    return shortened(part.number, most) + " (" + shortened(part.maker, most) + ")";
}

std::string price_text(const std::optional<Money>& money) {
    return money ? to_text(*money) : "not known";
}

std::string total_text(const CostOption& option) {
    if (option.today) return to_text(*option.today);
    return option.so_far ? to_text(*option.so_far) + " so far" : "not known";
}

const CostOption* cost_of(const Ledger& ledger, const std::string& part_id) {
    for (const CostOption& o : ledger.options) {
        if (o.part_id == part_id) return &o;
    }
    return nullptr;
}

std::string kit_text(const KitChoice& kit) {
    std::string out;
    for (const Remedy& remedy : kit.remedies) out += (out.empty() ? "" : "; ") + say(remedy);
    return out.empty() ? "nothing added" : out;
}

/// How many parts stand behind the answer: where not all were carried, why the others could not have won.
std::string outcome_sentence(const Selection& selection) {
    const int asked = selection.report.parts_asked;
    const auto shown_count =
        std::count_if(selection.options.begin(), selection.options.end(),
                      [](const Option& o) { return o.standing <= Verdict::fits_with_changes; });
    switch (selection.outcome) {
        case Outcome::something_fits:
            if (const int passing = selection.report.fitting + selection.report.changing;
                selection.carried < passing) {
                return counted(passing, "part", "parts") + " of " + std::to_string(asked) +
                       " pass every rule. The " + std::to_string(selection.carried) +
                       " that can cost least were carried through wiring, kit and price; none of the rest "
                       "can come to "
                       "less than the best of them.";
            }
            return counted(static_cast<int>(shown_count), "part", "parts") + " of " + std::to_string(asked) +
                   " can take its place. Every rule was asked of each.";
        case Outcome::nothing_fits:
            return "Nothing in this catalog fits: " + std::to_string(asked) +
                   " parts were asked, and at least one rule ends each of them.";
        case Outcome::undecided:
            return "Undecided: no part is shown to fit until the readings below are taken. Nothing was "
                   "guessed.";
        case Outcome::do_not_replace:
            return keep_sentence(selection.diagnosis.fault);
    }
    return "";
}

void add_diagnosis(Document& to, const Diagnosis& d) {
    to.add(Heading{"What failed"});
    to.add(Paragraph{fault_sentence(d.fault)});
    Grid table{{"test", "measured", "limit", "result", "source"}, {}, ""};
    for (const Evidence& e : d.evidence) {
        // A reading that was simply not taken stands in the list below; one that cannot be used stands here.
        if (e.verdict == Verdict::not_shown && !e.measured.known()) continue;
        table.rows.push_back({say(e.test) + (e.carries ? " *" : ""), say(e.measured.value),
                              e.limit.known() ? say(e.limit.value) : "", say(TestOutcome{e.test, e.reason}),
                              cited(to, e.source)});
    }
    if (std::any_of(d.evidence.begin(), d.evidence.end(), [](const Evidence& e) { return e.carries; }))
        table.caption = "* The conclusion stands on it.";
    if (!table.rows.empty()) to.add(table);
    add_contradictions(to, d);
    add_since_start_up(to, d);
    for (const RootCause& k : d.causes) to.add(Warning{"CAUTION", next_life_sentence(k)});
    add_next_tests(to, d);
}

/// The safest first; what is missing beyond the five is named, or it would look as if it were not wanted.
void add_next_tests(Document& to, const Diagnosis& d) {
    if (d.culprit) to.add(Paragraph{culprit_sentence(*d.culprit)});
    if (d.next.empty()) return;
    to.add(Heading{"Next tests"});
    Steps steps;
    for (const NextTest& next : d.next) {
        steps.items.push_back(next_test_sentence(next));
        cited(to, next.source);
    }
    to.add(steps);
    std::vector<std::string> later;
    for (const MissingReading& m : d.missing) {
        const bool named = std::any_of(d.next.begin(), d.next.end(),
                                       [&](const NextTest& n) { return n.job_key == m.job_key; });
        if (!named) later.push_back(m.job_key);
    }
    if (!later.empty()) to.add(Paragraph{"Still missing after those: " + joined(later, ", ") + "."});
}

void add_plate_doubt(Document& to, const Facts& facts) {
    if (facts.plate_trusted) return;
    to.add(
        Paragraph{"The old plate is not trusted, so nothing that it says decides: take each value from the "
                  "equipment's own "
                  "papers or parts list, then say unit.plate_trusted = yes."});
}

void add_questions(Document& to, const std::vector<std::string>& keys, const std::vector<OpenField>& open) {
    if (!open.empty()) {
        to.add(Heading{"Words that can be read in more than one way"});
        for (const OpenField& field : open) {
            Bullets list;
            for (const std::string& reading : field.readings) list.items.push_back(reading);
            to.add(Paragraph{field.job_key + " = '" + field.raw + "': " + field.question});
            if (!list.items.empty()) to.add(list);
        }
    }
    if (keys.empty()) return;
    to.add(Heading{"What to measure or ask next"});
    Bullets list;
    for (const std::string& key : keys) list.items.push_back(question_for(key) + " [" + key + "]");
    to.add(list);
}

void add_findings(Document& to, const std::vector<Finding>& findings, Verdict at_least) {
    Grid table{{"rule", "verdict", "what was found", "source"}, {}, ""};
    for (const Finding& f : findings) {
        if (f.verdict < at_least && !(f.caution && at_least == Verdict::fits_with_changes)) continue;
        table.rows.push_back({text(f.rule), text(word(f.verdict)) + (f.caution ? " (!)" : ""), sentence(f),
                              cited(to, f.source)});
    }
    if (table.rows.empty()) {
        to.add(Paragraph{"No finding to mention."});
        return;
    }
    to.add(table);
}

std::string remedies_text(const KitChoice& kit, const std::vector<int>& cures) {
    std::string out;
    for (int i : cures) out += (out.empty() ? "" : "; ") + say(kit.remedies[static_cast<std::size_t>(i)]);
    return out;
}

/// What is bought, what is done, what nothing cures, and on which line the next best kit lost.
void add_kit(Document& to, const KitChoice& kit) {
    to.add(Heading{"Kit"});
    if (kit.remedies.empty()) {
        to.add(Paragraph{"Nothing is added."});
        return;
    }
    Grid table{{"added", "for", "price or hours"}, {}, ""};
    for (const KitPart& p : kit.parts) {
        table.rows.push_back({(p.count > 1 ? std::to_string(p.count) + " x " : "") + p.part_id,
                              remedies_text(kit, p.cures),
                              price_text(p.offer ? p.offer->price : std::nullopt)});
    }
    for (const KitWork& w : kit.work)
        table.rows.push_back({text(word(w.task)), remedies_text(kit, w.cures),
                              w.hours_known ? hours(w.thousandth_hours) : "hours not known"});
    for (int i : kit.uncured)
        table.rows.push_back({"nothing in this catalog", say(kit.remedies[static_cast<std::size_t>(i)]), ""});
    to.add(table);
    for (const RunnerUp& r : kit.runners_up) {
        to.add(Paragraph{"Also possible: " + joined(r.part_ids, ", ") + " (" + price_text(r.parts_total) +
                         "); it lost on " + text(word(r.lost_on)) + "."});
    }
}

void add_sources(Document& to) {
    if (to.source_ids.empty()) return;
    to.add(Heading{"Sources"});
    Pairs pairs;
    std::sort(to.source_ids.begin(), to.source_ids.end());
    to.source_ids.erase(std::unique(to.source_ids.begin(), to.source_ids.end()), to.source_ids.end());
    for (const std::string& id : to.source_ids)
        pairs.rows.emplace_back(id, source(id).title + " (" + text(word(source(id).basis)) + ")");
    to.add(pairs);
}

/// Parts that want for the same thing are named together.
void add_stopped(Document& to, const Selection& selection) {
    std::vector<std::pair<std::string, std::vector<std::string>>> whys;
    for (const Option& o : selection.stopped) {
        std::string why;
        for (int i : o.kit.uncured)
            why += (why.empty() ? "" : "; ") + std::string("no part of this catalog gives ") +
                   say(o.kit.remedies[static_cast<std::size_t>(i)]);
        if (why.empty() && o.wiring.refusal) why = say(*o.wiring.refusal);
        auto same = std::find_if(whys.begin(), whys.end(), [&](const auto& w) { return w.first == why; });
        if (same == whys.end()) same = whys.insert(same, {why, {}});
        same->second.push_back(o.candidate.part.id);
    }
    for (const auto& [why, parts] : whys)
        to.add(Paragraph{joined(parts, ", ") + (parts.size() == 1 ? " passes" : " pass") +
                         " every rule, but " + why + "."});
    const int more = selection.stopped_in_all - static_cast<int>(selection.stopped.size());
    if (more > 0) {
        to.add(Paragraph{std::to_string(more) + " more " + (more == 1 ? "part passes" : "parts pass") +
                         " every rule, and nothing completes " + (more == 1 ? "it" : "them") + " either."});
    }
}

void add_ways_out(Document& to, const Selection& selection) {
    if (!selection.barred.empty()) {
        to.add(Paragraph{"The shop's own policy, not the fit, leaves out: " + joined(selection.barred, ", ") +
                         "."});
    }
    add_stopped(to, selection);
    if (selection.relaxations.empty()) return;
    to.add(Heading{"What would rescue it"});
    Grid grid{{"if", "were", "then", "parts"}, {}, "Each was tried on every rule."};
    for (const Relaxation& relaxation : selection.relaxations) {
        std::vector<std::string> parts = relaxation.parts;
        if (parts.size() > 4) {
            parts.resize(4);
            parts.push_back("and " + std::to_string(relaxation.parts.size() - 4) + " more");
        }
        grid.rows.push_back({relaxation.job_key + (relaxation.unread ? " (not read yet)" : ""),
                             without_padding(relaxation.answer), text(word(relaxation.verdict)),
                             joined(parts, ", ")});
    }
    to.add(grid);
}

void add_recurrence(Document& to, const CostOption& o) {
    if (!o.recurrence_uncured) return;
    std::string cost = to_text(*o.recurrence_uncured) + " a year while the cause stays";
    if (o.recurrence_cured) cost += ", " + to_text(*o.recurrence_cured) + " once it is cured";
    to.add(Paragraph{text(word(o.way)) + (o.part_id.empty() ? "" : " " + o.part_id) +
                     ": losing it again is to be expected at " + cost + "."});
}

/// Ways without a total stand in the table too: what they lack is said below, or they would look left out.
void add_ledger(Document& to, const Ledger& ledger) {
    to.add(Heading{"Cost of each way out"});
    Grid table{{"way", "part", "today", "energy a year", "life", "all in all a year"}, {}, "", {2, 3, 4, 5}};
    for (const CostOption& o : ledger.options) {
        table.rows.push_back({text(word(o.way)), o.part_id.empty() ? "-" : o.part_id, total_text(o),
                              price_text(o.energy_cost),
                              o.life > Period() ? say_number(o.life.in(calendar_year), 0) + " y" : "-",
                              price_text(o.per_year)});
    }
    if (table.rows.empty()) {
        to.add(Paragraph{"No way out has a price in this catalog and job."});
        return;
    }
    to.add(table);
    const auto name = [&ledger](int i) {
        const CostOption& o = ledger.options[static_cast<std::size_t>(i)];
        return text(word(o.way)) + (o.part_id.empty() ? "" : " " + o.part_id);
    };
    if (ledger.cheapest_today) {
        std::string deciding = "Cheapest today: " + name(*ledger.cheapest_today) + ".";
        if (ledger.cheapest_per_year)
            deciding += " Cheapest a year over its life: " + name(*ledger.cheapest_per_year) + ".";
        to.add(Paragraph{deciding});
    }
    for (const CostOption& o : ledger.options) {
        if (!o.loses.empty())
            to.add(Paragraph{text(word(o.way)) + (o.part_id.empty() ? "" : " " + o.part_id) +
                             " loses or leaves: " + listed(o.loses) + "."});
        add_recurrence(to, o);
    }
    for (const CostOption& o : ledger.options) {
        if (o.lacking.empty()) continue;
        to.add(Paragraph{"No total for " + text(word(o.way)) + " " + o.part_id + " yet: it needs " +
                         joined(o.lacking, ", ") + "."});
    }
}

/// A person who finds nothing that fits wants to know what nearly did, and then what most parts fail by.
void add_fallen(Document& to, const MatchReport& report, std::size_t most) {
    if (!report.near_misses.empty()) {
        to.add(Heading{"Nearest misses: one finding ends each"});
        Grid table{{"part", "what ends it"}, {}, ""};
        for (const Candidate& c : report.near_misses) {
            for (const Finding& f : c.findings) {
                if (f.verdict == Verdict::does_not_fit)
                    table.rows.push_back({part_name(c.part), sentence(f)});
            }
        }
        to.add(table);
    }
    if (report.tallies.empty()) return;
    to.add(Heading{"Why the rest fall"});
    Grid table{{"parts", "only by this", "rule", "reason"}, {}, ""};
    for (const Tally& t : report.tallies) {
        if (table.rows.size() == most) {
            table.caption = std::to_string(report.tallies.size() - most) + " more reasons: ask with match.";
            break;
        }
        table.rows.push_back(
            {std::to_string(t.parts), std::to_string(t.parts_only), text(t.rule), text(word(t.reason))});
    }
    to.add(table);
}

}  // namespace endbell::inline explain
