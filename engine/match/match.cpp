#include "engine/match/match.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

#include "engine/base/ensure.hpp"
#include "engine/rules/finding_draft.hpp"

namespace endbell::inline match {

namespace {

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

/// The catalog's cross references to this part from the old motor's and the old module's number.
std::vector<CrossReference> cross_references_for(const FailedUnit& job, const Catalog& catalog,
                                                 std::string_view part_id) {
    std::vector<CrossReference> cross_references;
    for (const auto& number : {job.unit.old_part_number.said(), job.unit.old_module_number.said()}) {
        if (!number) continue;
        for (CrossReference& reference : catalog.references(*number)) {
            if (reference.part_id == part_id) cross_references.push_back(std::move(reference));
        }
    }
    return cross_references;
}

/// The worst of what is not open: how the candidate would end if every open question went its way.
Verdict at_best(const Candidate& c) {
    Verdict worst = Verdict::fits;
    for (const Finding& f : c.findings) {
        if (f.verdict != Verdict::not_shown) worst = std::max(worst, f.verdict);
    }
    return worst;
}

/// Names in the order (verdict, price, id).
class Names : public MoreNames {
  public:
    void add(Verdict verdict, CandidateName name) { all_.emplace_back(verdict, std::move(name)); }

    void sort() {
        std::sort(all_.begin(), all_.end(), [](const Entry& a, const Entry& b) {
            const auto rank = [](const Entry& e) {
                return std::tuple(e.first, !e.second.least_price, e.second.least_price.value_or(0),
                                  std::string_view(e.second.part_id));
            };
            return rank(a) < rank(b);
        });
    }

    using MoreNames::next;
    std::vector<CandidateName> next(std::size_t most, const Curable& curable) override {
        std::vector<CandidateName> taken;
        for (; taken.size() < most && taken_ < all_.size(); ++taken_) {
            CandidateName& name = all_[taken_].second;
            if (name.alike && !all_curable(name.alike->adapters, curable)) continue;
            taken.push_back(std::move(name));
        }
        return taken;
    }

  private:
    using Entry = std::pair<Verdict, CandidateName>;
    std::vector<Entry> all_;
    std::size_t taken_ = 0;
};

class ReportDraft {
  public:
    ReportDraft(const Catalog& catalog, const Keep& keep) : catalog_(catalog), keep_(keep) {}

    /// Keeps of the candidate what the report needs, and no more: there may be a million of them.
    void take(Candidate candidate) {
        ++report_.parts_asked;
        const Verdict verdict = candidate.verdict;
        if (verdict == Verdict::does_not_fit) {
            if (!keep_.reasons) return;
            tally(candidate);
            if (count(candidate, Verdict::does_not_fit) == 1) keep_near_miss(std::move(candidate));
            return;
        }
        CandidateName name{
            candidate.part.id, verdict, least_price(catalog_.offers(candidate.part.id)), Verdict::fits, {}};
        if (verdict == Verdict::not_shown) {
            if (keep_.reasons) {
                for (const std::string& key : open_keys(candidate)) ++report_.open_keys[key];
            }
            ++report_.open;
            name.at_best = at_best(candidate);
            not_shown_.add(name.at_best, name);
        } else {
            ++(verdict == Verdict::fits ? report_.fitting : report_.changing);
            name.alike = std::make_shared<const Alike>(alike_of(candidate));
            matches_->add(verdict, std::move(name));
        }
    }

    /// In the orders that the report promises, however the parts came.
    Matched finished(const Query& query) {
        for (Candidate& miss : report_.near_misses)
            miss.cross_references = cross_references_for(query.job, catalog_, miss.part.id);
        matches_->sort();
        report_.matches = matches_->next(keep_.matches);
        not_shown_.sort();
        report_.not_shown = not_shown_.next(keep_.not_shown);
        for (auto& [failure, counted] : tallies_) {
            std::tie(counted.rule, counted.reason) = failure;
            report_.tallies.push_back(counted);
        }
        std::stable_sort(report_.tallies.begin(), report_.tallies.end(),
                         [](const Tally& a, const Tally& b) { return a.parts > b.parts; });
        return {std::move(report_), std::move(matches_)};
    }

  private:
    /// Job keys alone: what only the catalog can tell is no question to a person.
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
        if (kept.size() > keep_.near_misses) kept.pop_back();
    }

    const Catalog& catalog_;
    const Keep& keep_;
    MatchReport report_;
    std::unique_ptr<Names> matches_ = std::make_unique<Names>();
    Names not_shown_;
    std::map<std::pair<std::string_view, Reason>, Tally> tallies_;
};

}  // namespace

bool is_part_column(std::string_view key) {
    for (const std::string_view table : {"motors.", "motor_ratings.", "taps.", "modules."}) {
        if (key.substr(0, table.size()) == table) return true;
    }
    return false;
}

Candidate examine(const Query& query, Part part) {
    Candidate candidate;
    candidate.findings.reserve(all_rules().size() + 1);  // and one of the wiring's
    for (const Rule& rule : all_rules()) {
        candidate.findings.push_back(rule.judge(query, part));
        // Also "not concerned" says by whose word the rule stands.
        if (candidate.findings.back().source.empty()) candidate.findings.back().source = rule.sources.front();
        candidate.verdict = std::max(candidate.verdict, candidate.findings.back().verdict);
    }
    candidate.part = std::move(part);
    return candidate;
}

Candidate candidate(const Query& query, const Catalog& catalog, std::string_view part_id) {
    std::optional<Part> part = catalog.part(part_id);
    ensure(part.has_value(), "names come from this catalog");
    Candidate found = examine(query, std::move(*part));
    found.cross_references = cross_references_for(query.job, catalog, part_id);
    return found;
}

bool is_adapter(const Remedy& remedy) {
    return remedy.cure == Cure::shaft_bushing || remedy.cure == Cure::mount_band ||
           remedy.cure == Cure::mount_adapter || remedy.cure == Cure::body_ring ||
           remedy.cure == Cure::harness;
}

void add_remedy(std::vector<Remedy>& to, Remedy remedy, const Part& part) {
    const bool between_mounts = remedy.cure == Cure::mount_adapter && !remedy.from && !remedy.to;
    const bool around = remedy.cure == Cure::mount_band && !remedy.from;
    if ((between_mounts || around) && part.motor) remedy.from = part.motor->body_diameter;
    const auto known = std::find(to.begin(), to.end(), remedy);
    if (known == to.end()) {
        to.push_back(std::move(remedy));
    } else if (remedy.cure == Cure::shaft_bushing || remedy.cure == Cure::shaft_cut) {
        known->count += remedy.count;  // each end of a shaft is worked on by itself
    }
}

std::vector<Remedy> remedies_of(const Candidate& candidate) {
    std::vector<Remedy> remedies;
    for (const Finding& finding : candidate.findings) {
        for (const Remedy& remedy : finding.remedies) add_remedy(remedies, remedy, candidate.part);
    }
    return remedies;
}

void add_task(std::vector<ShopTask>& to, ShopTask task) {
    if (std::find(to.begin(), to.end(), task) == to.end()) to.push_back(task);
}

Alike alike_of(const Candidate& candidate) {
    Alike alike;
    alike.kind = candidate.part.kind;
    if (candidate.part.motor) alike.family = candidate.part.motor->family;
    for (Remedy& remedy : remedies_of(candidate)) {
        add_task(alike.tasks, task_of(remedy.cure));
        if (is_adapter(remedy)) alike.adapters.push_back(std::move(remedy));
    }
    return alike;
}

Matched match_parts(const Query& query, const Books& books, const Keep& keep) {
    if (books.matcher != nullptr) return books.matcher->match(query, books.catalog, keep);
    ReportDraft report(books.catalog, keep);
    books.catalog.each_part([&](const Part& part) {
        if (part.kind != PartKind::accessory) report.take(examine(query, part));
    });
    return report.finished(query);
}

}  // namespace endbell::inline match
