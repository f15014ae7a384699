#include "engine/select/still_open.hpp"

#include <algorithm>
#include <array>
#include <iterator>
#include <map>
#include <set>
#include <unordered_map>
#include <utility>

#include "engine/fields/steps.hpp"
#include "engine/job/job.hpp"
#include "engine/rules/job_fields.hpp"
#include "engine/select/steps_of.hpp"
#include "engine/words/fold.hpp"

namespace endbell::inline select {

namespace {

/// Only whether one is best counts, and which.
constexpr SelectionScope bare{1, false};

/// Facts that two readings contradict.
int contradicted_facts(const Facts& f) {
    int count = 0;
    const auto add = [&](const auto&... facts) { ((count += facts.disagree ? 1 : 0), ...); };
    add(f.family, f.phase, f.frequency, f.speed, f.poles, f.power, f.torque, f.signal, f.volts, f.capacitor,
        f.capacitor_volts, f.outdoors, f.output, f.heat.burner, f.heat.elements, f.heat.compressor);
    return count;
}

/// A job with what follows from it before any part is looked at.
struct Supposed {
    FailedUnit stated;
    Facts stated_facts;
    Diagnosis diagnosis;
    std::optional<FailedUnit> settled_job;
    Facts facts;

    Supposed(FailedUnit job, const Limits& limits)
        : stated(std::move(job)),
          stated_facts(facts_of(stated, limits)),
          diagnosis(diagnose(stated, stated_facts, limits)),
          settled_job(settled(stated, stated_facts, limits)),
          facts(settled_job ? facts_of(*settled_job, limits) : stated_facts) {}

    const FailedUnit& job() const { return settled_job ? *settled_job : stated; }
    /// No answer contradicts what is stated: it would be read again.
    bool contradicts_more_than(const Supposed& base) const {
        return diagnosis.contradictions.size() > base.diagnosis.contradictions.size() ||
               contradicted_facts(stated_facts) > contradicted_facts(base.stated_facts);
    }
    /// The tests that wait for another reading, and which.
    std::set<std::string> asked_by_tests() const {
        std::set<std::string> keys;
        for (const Evidence& row : diagnosis.evidence) {
            if (row.verdict == Verdict::not_shown) keys.insert(row.asks.empty() ? row.job_key : row.asks);
        }
        for (const MissingReading& m : diagnosis.missing) keys.insert(m.job_key);
        return keys;
    }
};

using Said = DecisiveAnswer::Said;

class Trials {
  public:
    Trials(const FailedUnit& job, const Books& books, const KitShelf& shelf, Patience patience)
        : books_(books), shelf_(shelf), patience_(patience), base_(job, books.limits) {
        base_bytes_ = bytes_of(base_, {});
        base_asks_ = base_.asked_by_tests();
        decided_[base_bytes_] = now_ = upshot(base_);
    }

    StillOpen run() {
        const StepsFound steps = steps_of(base_.job(), base_.diagnosis, books_);
        found_.all_tried = steps.complete;
        asked_ = steps.asked;
        for (const MissingReading& m : base_.diagnosis.missing) asked_.insert(m.job_key);
        for (const JobKey& key : job_keys()) {
            if (patience_.whether && !found_.answers.empty()) break;
            if (is_open(key)) try_key(key, key.tries(steps.steps));
        }
        if (found_.answers.empty()) try_pairs();
        return std::move(found_);
    }

  private:
    /// Neither stated nor the shop's own. What is written and open is asked for by its own question.
    bool is_open(const JobKey& key) const {
        return !is_of_shop(key) && key.tries && key.text(base_.stated).empty();
    }

    std::optional<Supposed> supposed(const FailedUnit& job, const Said& said) const {
        FailedUnit then = job;
        if (set_key(then, said.job_key, said.answer))
            return std::nullopt;  // cannot be read, or cannot be true
        if (job_key(said.job_key)->text(then).empty() || job_key(said.job_key)->open(then))
            return std::nullopt;
        Supposed trial(std::move(then), books_.limits);
        if (trial.contradicts_more_than(base_)) return std::nullopt;
        return trial;
    }

    /// Where these are the same, so is the decision.
    std::string bytes_of(const Supposed& trial, const std::vector<Said>& said) const {
        const Query query{trial.job(), trial.facts, trial.diagnosis, books_.limits};
        std::string bytes = JobBytes(query).all();
        bytes.push_back(static_cast<char>(trial.diagnosis.fault));
        bytes.push_back(trial.diagnosis.culprit ? static_cast<char>(*trial.diagnosis.culprit) : '\xff');
        bytes.push_back(stops_match(trial.diagnosis) ? '\1' : '\0');
        const bool same_facts = trial.facts == base_.facts;
        for (const Said& one : said) {
            if (!same_facts || later_stages_read(one.job_key)) bytes += one.job_key + '=' + one.answer + '\n';
        }
        return bytes;
    }

    /// Where nothing is to be replaced, no part is looked at.
    Upshot upshot(const Supposed& trial) const {
        const Diagnosis& d = trial.diagnosis;
        if (d.replace_nothing()) return {Outcome::do_not_replace, d.fault, d.culprit, ""};
        return upshot_of(select_part(trial.stated, books_, shelf_, bare));
    }

    /// Empty: there were more than anybody waits for.
    std::optional<Upshot> decided(const Supposed& trial, const std::string& bytes, int& left) {
        const auto known = decided_.find(bytes);
        if (known != decided_.end()) return known->second;
        if (left == 0) {
            found_.all_tried = false;
            return std::nullopt;
        }
        --left;
        return decided_[bytes] = upshot(trial);
    }

    void note(std::vector<Said> said, const Upshot& then) {
        found_.answers.push_back({std::move(said), then});
    }

    void try_key(const JobKey& key, const std::vector<std::string>& answers) {
        const std::string id = key.id();
        std::vector<Upshot> told;
        std::set<std::string> seen;  // of this key
        bool goes_on = false;        // the answer before had the same other upshot
        for (const std::string& answer : answers) {
            const Said said{id, answer, ""};
            const auto trial = supposed(base_.stated, said);
            if (!trial) continue;
            ++found_.tried;
            const std::string bytes = bytes_of(*trial, {said});
            const auto then = decided(*trial, bytes, patience_.singles);
            if (!then) return;
            const bool other = *then != now_;
            if (other && std::find(told.begin(), told.end(), *then) == told.end()) {
                told.push_back(*then);
                note({said}, *then);
                goes_on = key.has_sizes;
            } else if (other && goes_on && found_.answers.back().then == *then) {
                found_.answers.back().said.back().up_to = answer;
            } else {
                goes_on = false;
            }
            if (seen.insert(bytes).second) keep_for_pairs(*trial, said, bytes);
        }
    }

    /// One answer for each that differs in what follows from it, but for sizes of which only the later stages hear: of
    /// those a few.
    void keep_for_pairs(const Supposed& trial, const Said& said, const std::string& bytes) {
        const std::set<std::string> now = trial.asked_by_tests();
        std::vector<std::string> newly;
        std::set_difference(now.begin(), now.end(), base_asks_.begin(), base_asks_.end(),
                            std::back_inserter(newly));
        // The decision may not hear of it by itself; a test may now wait for another reading.
        if (newly.empty() && bytes == base_bytes_) return;
        std::vector<Said>& kept = for_pairs_[said.job_key];
        if (kept.size() < 6) kept.push_back(said);
        if (newly.empty()) return;
        asked_.insert(said.job_key);
        asked_.insert(newly.begin(), newly.end());
    }

    bool is_asked(const std::string& key) const { return asked_.count(key) > 0; }

    void try_pairs() {
        for (auto one = for_pairs_.begin(); one != for_pairs_.end(); ++one) {
            if (!is_asked(one->first)) continue;
            for (auto other = std::next(one); other != for_pairs_.end(); ++other) {
                if (is_asked(other->first)) try_pair(one->second, other->second);
            }
        }
    }

    void try_pair(const std::vector<Said>& ones, const std::vector<Said>& others) {
        for (const Said& one : ones) {
            const auto first = supposed(base_.stated, one);
            if (!first) continue;
            for (const Said& other : others) {
                const auto trial = supposed(first->stated, other);
                if (!trial) continue;
                ++found_.tried;
                const auto then = decided(*trial, bytes_of(*trial, {one, other}), patience_.pairs);
                if (!then) return;
                if (*then != now_) return note({one, other}, *then);
            }
        }
    }

    const Books books_;
    const KitShelf& shelf_;
    Patience patience_;
    Supposed base_;
    Upshot now_;
    std::unordered_map<std::string, Upshot> decided_;
    std::map<std::string, std::vector<Said>> for_pairs_;
    std::string base_bytes_;
    std::set<std::string> base_asks_, asked_;
    StillOpen found_;
};

}  // namespace

bool later_stages_read(std::string_view key) {
    constexpr std::array<std::string_view, 31> keys{"unit.load",
                                                    "unit.belt_drive",
                                                    "unit.old_part_number",
                                                    "unit.assembly_number",
                                                    "unit.equipment_model",
                                                    "unit.equipment_serial",
                                                    "plate.power",
                                                    "plate.speed",
                                                    "plate.phase",
                                                    "plate.current",
                                                    "plate.rotation",
                                                    "plate.bearing",
                                                    "plate.capacitor",
                                                    "plate.capacitor_volts",
                                                    "plate.compressor_capacitor",
                                                    "plate.enclosure",
                                                    "plate.speeds",
                                                    "measured.airflow",
                                                    "measured.amps",
                                                    "measured.coil_drop",
                                                    "measured.compressor_capacitor",
                                                    "measured.filter_drop",
                                                    "measured.line_volts",
                                                    "measured.live_taps",
                                                    "measured.rise",
                                                    "measured.rise_heat",
                                                    "measured.speed",
                                                    "measured.static_supply",
                                                    "measured.static_return",
                                                    "measured.static_total",
                                                    "measured.watts"};
    return key.rfind("equipment.", 0) == 0 || key.rfind("controls.", 0) == 0 ||
           std::find(keys.begin(), keys.end(), key) != keys.end();
}

Upshot upshot_of(const Selection& s) {
    Upshot upshot;
    upshot.outcome = s.outcome;
    upshot.fault = s.diagnosis.fault;
    if (s.outcome == Outcome::do_not_replace) upshot.culprit = s.diagnosis.culprit;
    if (s.pick) upshot.pick = s.options[static_cast<std::size_t>(*s.pick)].candidate.part.id;
    return upshot;
}

StillOpen still_open(const FailedUnit& job, const Books& books, const KitShelf& shelf, Patience patience) {
    return Trials(job, books, shelf, patience).run();
}

}  // namespace endbell::inline select
