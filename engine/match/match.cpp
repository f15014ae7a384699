#include "engine/match/match.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

#include "engine/match/answer.hpp"

namespace endbell {

namespace {

// How many of the nearest misses a report keeps.
constexpr std::size_t near_misses_kept = 10;

int count(const Candidate& c, Verdict verdict) {
    return static_cast<int>(std::count_if(c.findings.begin(), c.findings.end(),
                                          [&](const Finding& f) { return f.verdict == verdict; }));
}

/// Fewer open questions first, then fewer changes, then a failure that comes later in a person's order.
bool nearer(const Candidate& a, const Candidate& b) {
    const auto rank = [](const Candidate& c) {
        const auto end = std::find_if(c.findings.begin(), c.findings.end(),
                                      [](const Finding& f) { return f.verdict == Verdict::does_not_fit; });
        const auto late = c.findings.end() - end;
        return std::tuple(count(c, Verdict::not_shown), count(c, Verdict::fits_with_changes), late,
                          c.part.id);
    };
    return rank(a) < rank(b);
}

bool is_part_column(std::string_view key) {
    for (const std::string_view table : {"motors.", "motor_ratings.", "taps.", "modules."}) {
        if (key.substr(0, table.size()) == table) return true;
    }
    return false;
}

class Report {
  public:
    void take(Candidate candidate) {
        ++report_.parts_asked;
        if (candidate.verdict == Verdict::does_not_fit) {
            tally(candidate);
            if (count(candidate, Verdict::does_not_fit) == 1) keep_near_miss(std::move(candidate));
            return;
        }
        for (const std::string& key : open_keys(candidate)) ++report_.open_fields[key];
        report_.candidates.push_back(std::move(candidate));
    }

    MatchReport finished() {
        std::sort(report_.candidates.begin(), report_.candidates.end(),
                  [](const Candidate& a, const Candidate& b) {
                      return std::tie(a.verdict, a.part.id) < std::tie(b.verdict, b.part.id);
                  });
        for (auto& [way, counted] : tallies_) {
            std::tie(counted.rule, counted.reason) = way;
            report_.tallies.push_back(counted);
        }
        std::stable_sort(report_.tallies.begin(), report_.tallies.end(),
                         [](const Tally& a, const Tally& b) { return a.parts > b.parts; });
        return std::move(report_);
    }

  private:
    static std::vector<std::string> open_keys(const Candidate& candidate) {
        std::vector<std::string> keys;
        for (const Finding& f : candidate.findings) {
            if (f.verdict != Verdict::not_shown) continue;
            for (const std::string& key : f.asks) {
                if (!is_part_column(key)) keys.push_back(key);
            }
        }
        std::sort(keys.begin(), keys.end());
        keys.erase(std::unique(keys.begin(), keys.end()), keys.end());
        return keys;
    }

    void tally(const Candidate& candidate) {
        const bool only = count(candidate, Verdict::does_not_fit) == 1;
        const bool would_fit = only && count(candidate, Verdict::not_shown) == 0;
        for (const Finding& f : candidate.findings) {
            if (f.verdict != Verdict::does_not_fit) continue;
            Tally& counted = tallies_[{f.rule, f.reason}];
            ++counted.parts;
            if (only) ++counted.parts_only;
            if (would_fit) ++counted.would_fit;
        }
    }

    void keep_near_miss(Candidate candidate) {
        auto& kept = report_.near_misses;
        kept.insert(std::upper_bound(kept.begin(), kept.end(), candidate, nearer), std::move(candidate));
        if (kept.size() > near_misses_kept) kept.pop_back();
    }

    MatchReport report_;
    std::map<std::pair<std::string_view, std::string_view>, Tally> tallies_;
};

/// What the catalog's cross references claim for the old motor's and the old module's number, by part.
std::map<std::string, std::vector<CrossReference>> claims_for(const FailedUnit& job, const Catalog& catalog) {
    std::map<std::string, std::vector<CrossReference>> claims;
    for (const auto& number : {said(job.unit.old_part_number), said(job.unit.old_module_number)}) {
        if (!number) continue;
        for (CrossReference& claim : catalog.references(*number))
            claims[claim.part_id].push_back(std::move(claim));
    }
    return claims;
}

}  // namespace

Candidate examine(const Question& question, const Part& part) {
    Candidate candidate;
    candidate.part = part;
    candidate.findings.reserve(rules().size());
    for (const Rule& rule : rules()) {
        candidate.findings.push_back(rule.check(question, part));
        // Also "not concerned" says by whose word the rule stands.
        if (candidate.findings.back().source.empty()) candidate.findings.back().source = rule.sources.front();
        candidate.verdict = std::max(candidate.verdict, candidate.findings.back().verdict);
    }
    return candidate;
}

MatchReport match(const Question& question, const Catalog& catalog) {
    const auto claims = claims_for(question.job, catalog);
    Report report;
    catalog.each_part([&](const Part& part) {
        if (part.kind == PartKind::accessory) return;
        Candidate candidate = examine(question, part);
        if (const auto found = claims.find(part.id); found != claims.end()) candidate.claims = found->second;
        report.take(std::move(candidate));
    });
    return report.finished();
}

}  // namespace endbell
