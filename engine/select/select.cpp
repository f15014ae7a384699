#include "engine/select/select.hpp"

#include <algorithm>
#include <map>
#include <utility>

#include "engine/airflow/contrary.hpp"
#include "engine/airflow/duct_point.hpp"
#include "engine/ask/askable.hpp"
#include "engine/facts/control_power.hpp"
#include "engine/facts/rating.hpp"
#include "engine/fields/job_key.hpp"
#include "engine/select/contest.hpp"
#include "engine/select/inducer.hpp"

#ifndef ENDBELL_VERSION
#error "the build names the program's version"
#endif

namespace endbell::inline select {

namespace {

const Part* module_of(const Option& option) {
    return option.module ? &*option.module : nullptr;
}

Remedy relay_remedy(Cure cure, int poles) {
    Remedy remedy{};
    remedy.cure = cure;
    remedy.poles = poles;
    return remedy;
}

/// The relays of a wiring plan as a finding, so that the kit provides them like any other remedy. A relay of
/// several bodies is bought as several.
std::optional<Finding> wiring_finding(const WiringPlan& plan) {
    if (!plan.possible || plan.relays.empty()) return std::nullopt;
    std::map<std::pair<Cure, int>, int> bodies;  // (kind, poles) -> how many
    for (const Relay& relay : plan.relays) {
        const bool line = relay.line_coil || relay.line_contacts;
        const int poles = (relay.contacts + relay.bodies - 1) / relay.bodies;
        bodies[{line ? Cure::line_relay : Cure::isolation_relay, poles}] += relay.bodies;
    }
    Finding finding;
    finding.rule = rule_id::wiring;
    finding.verdict = Verdict::fits_with_changes;
    finding.reason = Reason::relays_of_the_wiring_plan;
    finding.source = "tap-rule";
    for (const auto& entry : bodies) {
        finding.remedies.push_back(relay_remedy(entry.first.first, entry.first.second));
        finding.remedies.back().count = entry.second;
    }
    return finding;
}

/// A plan that adds to a transformer more than it carries within its planned share needs a larger one. What takes the
/// place of a part with 24 V signals and needs no relay adds nothing to what was there.
std::optional<Finding> transformer_finding(const WiringPlan& plan, const Facts& facts, const Limits& limits) {
    const bool adds = !plan.relays.empty() || facts.signal.value != SignalClass::control_24v;
    if (!plan.possible || !adds || !is_over(plan.power)) return std::nullopt;
    Finding finding;
    finding.rule = rule_id::wiring;
    finding.verdict = Verdict::fits_with_changes;
    finding.reason = Reason::transformer_overloaded;
    finding.source = "va-budget";
    finding.remedies.push_back(transformer_for(*plan.power.before + plan.power.added, facts.supply, limits));
    return finding;
}

/// The rating of the transformer among a kit's parts.
std::optional<ApparentPower> transformer_of(const KitChoice& kit, const KitShelf& shelf) {
    for (const KitPart& bought : kit.parts) {
        for (const KitShelf::Row& row : shelf.curing(Cure::transformer)) {
            const Part& part = shelf.items()[static_cast<std::size_t>(row.item)].part;
            if (part.id == bought.part_id) return part.accessory->cures[row.number].power;
        }
    }
    return std::nullopt;
}

/// What the plan knows better than a rule did, the rule no longer asks for.
void drop_cures(std::vector<Finding>& from_rules, std::initializer_list<Cure> cures) {
    for (Finding& f : from_rules) {
        f.remedies.erase(std::remove_if(f.remedies.begin(), f.remedies.end(),
                                        [&](const Remedy& r) {
                                            return std::find(cures.begin(), cures.end(), r.cure) !=
                                                   cures.end();
                                        }),
                         f.remedies.end());
    }
}

/// The plan knows how many relays there are; a rule only knew that there must be some, and with which coil.
void hand_over_relays(std::vector<Finding>& from_rules, Finding& relays) {
    for (Finding& f : from_rules) {
        for (const Remedy& r : f.remedies) {
            for (Remedy& mine : relays.remedies) {
                if (mine.cure == r.cure && !mine.coil) mine.coil = r.coil;
            }
        }
    }
    drop_cures(from_rules, {Cure::line_relay, Cure::isolation_relay});
}

/// A rule left the cure to the wiring plan, and there is no plan: whether it can be cured is not shown.
bool waits_for_wiring(const Option& option) {
    return !option.wiring.possible && std::any_of(option.candidate.findings.begin(),
                                                  option.candidate.findings.end(), [](const Finding& f) {
                                                      return f.verdict == Verdict::fits_with_changes &&
                                                             f.remedies.empty();
                                                  });
}

/// A specified inducer assembly is wired by the equipment's diagram: no plan of ours is owed.
bool by_its_own_diagram(const Part& part) {
    return part.motor && std::find(part.motor->loads.begin(), part.motor->loads.end(), Load::draft_inducer) !=
                             part.motor->loads.end();
}

/// Only worse than the rules' verdict, never better: the later stages add doubts and no excuses.
Verdict standing_of(const Option& option) {
    Verdict worst = option.candidate.verdict;
    if (waits_for_wiring(option)) worst = std::max(worst, Verdict::not_shown);
    if (!by_its_own_diagram(option.candidate.part)) worst = std::max(worst, verdict_of(option.wiring));
    if (!option.kit.uncured.empty()) worst = Verdict::does_not_fit;
    if (!option.kit.not_shown.empty()) worst = std::max(worst, Verdict::not_shown);
    return worst;
}

/// How far an option is from the original: everything that must be changed or said.
int differences(const Option& option) {
    int count = 0;
    for (const Finding& f : option.candidate.findings)
        count += f.verdict != Verdict::fits || f.caution ? 1 : 0;
    return count;
}

/// The part and every part of its kit: a motor without its bushing sends nobody back to work.
bool all_at_hand(const Option& option, const Policy& policy) {
    if (!option.offer || !at_hand(*option.offer, policy)) return false;
    return std::all_of(option.kit.parts.begin(), option.kit.parts.end(),
                       [&policy](const KitPart& p) { return p.offer && at_hand(*p.offer, policy); });
}

/// Options are ranked, so the first that qualifies is the best that does.
NamedPicks named_picks(const Selection& s, const Policy& policy) {
    NamedPicks picks;
    const auto money_a_year = [&s](int i) -> std::optional<Money> {
        for (const CostOption& o : s.ledger.options) {
            if (o.part_id == s.options[static_cast<std::size_t>(i)].candidate.part.id) return o.per_year;
        }
        return std::nullopt;
    };
    for (int i = 0; i < static_cast<int>(s.options.size()); ++i) {
        const Option& option = s.options[static_cast<std::size_t>(i)];
        if (option.standing > Verdict::fits_with_changes) continue;
        if (!picks.in_stock && all_at_hand(option, policy)) picks.in_stock = i;
        if (!picks.closest ||
            differences(option) < differences(s.options[static_cast<std::size_t>(*picks.closest)]))
            picks.closest = i;
        const auto yearly = money_a_year(i);
        if (yearly && (!picks.cheapest_per_year || *yearly < *money_a_year(*picks.cheapest_per_year)))
            picks.cheapest_per_year = i;
    }
    return picks;
}

Outcome outcome_of(const Selection& s, const FailedUnit& job) {
    if (s.diagnosis.replace_nothing()) return Outcome::do_not_replace;
    if (waits_for_assembly(job)) return Outcome::undecided;
    if (s.options.empty() && s.report.open == 0) return Outcome::nothing_fits;
    if (stops_match(s.diagnosis)) return Outcome::undecided;
    return s.options.empty() || s.options.front().standing > Verdict::fits_with_changes
               ? Outcome::undecided
               : Outcome::something_fits;
}

PricedCandidate priced(const Option& o) {
    return {o.candidate, o.kit, o.offer, o.air};
}

/// The ledger of the best options: as many as a person can read.
Ledger ledger_of(const Selection& s, const FailedUnit& job, const Books& books, const Policy& policy,
                 std::size_t wanted) {
    const std::size_t options_priced = std::min<std::size_t>(12, wanted);
    std::vector<PricedCandidate> best;
    for (std::size_t i = 0; i < std::min(options_priced, s.options.size()); ++i)
        best.push_back(priced(s.options[i]));
    return price_options(job, s.facts, s.diagnosis, best, s.repair, books, policy);
}

/// What the first parts wait for and no part knows an answer to (the amps of a circuit, a duty): asked all the same, or nobody
/// would learn what stands in the way.
std::vector<std::string> keys_without_answers(const MatchReport& report, const Query& query,
                                              const Catalog& catalog) {
    constexpr std::size_t first = 4;
    std::vector<std::string> keys;
    for (std::size_t i = 0; i < std::min(first, report.not_shown.size()); ++i) {
        for (const Finding& f : candidate(query, catalog, report.not_shown[i].part_id).findings) {
            const bool answered = std::any_of(f.asks.begin(), f.asks.end(), [](const std::string& key) {
                return askable(key) != nullptr || job_key(key) == nullptr;
            });
            if (f.verdict == Verdict::not_shown && !answered)
                keys.insert(keys.end(), f.asks.begin(), f.asks.end());
        }
    }
    return keys;
}

/// Readings were taken, none is out of order, and they do not show yet what failed: what would show it is advice.
std::vector<std::string> advised_readings(const Diagnosis& diagnosis) {
    std::vector<std::string> keys;
    if (diagnosis.nothing_measured) return keys;
    for (const MissingReading& m : diagnosis.missing) {
        if (keys.size() < questions_at_most) keys.push_back(m.job_key);
    }
    return keys;
}

/// What a person should answer first. Readings that show what failed come before those that show what fits.
std::vector<std::string> keys_to_ask(const Selection& s, const Query& query, const Books& books) {
    std::vector<std::string> keys;
    // What a plate that is not trusted says is open whatever is written of it: the one question is the plate.
    const auto add = [&](const std::string& open) {
        const bool of_the_plate = !s.facts.plate_trusted && open.rfind("plate.", 0) == 0;
        const std::string key = of_the_plate ? "unit.plate_trusted" : open;
        if (std::find(keys.begin(), keys.end(), key) == keys.end()) keys.push_back(key);
    };
    for (const std::string& key : assembly_questions(query.job)) add(key);
    if (!s.diagnosis.nothing_measured) {
        for (const MissingReading& m : s.diagnosis.missing) add(m.job_key);
    }
    if (waits_for_assembly(query.job)) return keys;
    for (const AskedReading& asked : what_to_ask(query, s.report, books.catalog)) add(asked.job_key);
    for (const std::string& key : keys_without_answers(s.report, query, books.catalog)) add(key);
    for (const Option& o : s.options) {
        if (o.standing != Verdict::not_shown) continue;
        for (const std::string& key : o.wiring.lacking) add(key);
    }
    return keys;
}

/// Readings that cannot all be true are read again, whatever fits without them: nothing rests on them until then. A rise of
/// which nobody said what made it says nothing, and that is asked too.
std::vector<std::string> keys_first(const Selection& s, const Query& query) {
    std::vector<std::string> first = keys_to_read_again(s.diagnosis);
    if (rise_heat_open(query.job, query.facts.heat)) first.emplace_back("measured.rise_heat");
    return first;
}

}  // namespace

std::string stamp_of(const FailedUnit& job, const Catalog& catalog) {
    return std::string("endbell ") + ENDBELL_VERSION + ", rules " + std::string(rule_set) + ", catalog " +
           catalog.stamp() + ", job " + job.digest;
}

Option carry(const Query& query, Candidate judged, const KitShelf& shelf, const Books& books) {
    const FailedUnit& job = query.job;
    const Facts& facts = query.facts;
    Option option;
    option.candidate = std::move(judged);
    const Part& part = option.candidate.part;
    const std::vector<ModuleBeside> modules = modules_beside(query, option.candidate, books, shelf.policy());
    if (const ModuleBeside* module = best_module(modules)) option.module = module->item.part;
    option.offer = best_offer(books.catalog.offers(part.id), shelf.policy());
    if (const auto rating = rating_in_use(facts, part, books.limits)) option.rated_amps = rating->amps;
    option.air = plan_air(job, facts, part, books.limits);
    option.wiring = lay_wiring(job, facts, {part, module_of(option)}, option.air, books.limits);
    if (auto relays = wiring_finding(option.wiring)) {
        hand_over_relays(option.candidate.findings, *relays);
        option.candidate.findings.push_back(*relays);
        option.candidate.verdict = std::max(option.candidate.verdict, relays->verdict);
    }
    if (auto transformer = transformer_finding(option.wiring, facts, books.limits)) {
        drop_cures(option.candidate.findings, {Cure::transformer});  // the rule counted the tap alone
        option.candidate.findings.push_back(*transformer);
        option.candidate.verdict = std::max(option.candidate.verdict, transformer->verdict);
    }
    option.kit = choose_kit(option.candidate, shelf, modules);
    if (is_over(option.wiring.power)) {
        if (const auto rating = transformer_of(option.kit, shelf))
            fit_transformer(option.wiring.power, *rating, books.limits);
    }
    option.standing = standing_of(option);
    return option;
}

void annotate(Option& option, const FailedUnit& job, const Facts& facts, const Limits& limits) {
    const bool planned = option.wiring.possible;
    annotate(option.wiring, job, facts, {option.candidate.part, module_of(option)}, limits);
    if (planned && !option.wiring.possible)
        option.standing = std::max(option.standing, verdict_of(option.wiring));
}

void annotate(Selection& s, std::size_t option, const FailedUnit& job, const Limits& limits) {
    annotate(s.options[option], s.job(job), s.facts, limits);
    const bool picked = s.pick && static_cast<std::size_t>(*s.pick) == option;
    if (!picked || s.options[option].standing <= Verdict::fits_with_changes) return;
    s.pick.reset();
    s.picks = {};
    s.outcome = Outcome::undecided;
}

Selection select_part(const FailedUnit& job, const Books& books, const Policy& policy,
                      const SelectionScope& scope) {
    return select_part(job, books, KitShelf(books, policy), scope);
}

Selection select_part(const FailedUnit& stated, const Books& books, const KitShelf& shelf,
                      const SelectionScope& scope) {
    const Policy& policy = shelf.policy();
    Selection s;
    s.stamp = stamp_of(stated, books.catalog);
    s.facts = facts_of(stated, books.limits);
    s.diagnosis = diagnose(stated, s.facts, books.limits);
    s.settled = settled(stated, s.facts, books.limits);
    if (s.settled) s.facts = facts_of(*s.settled, books.limits);
    const FailedUnit& job = s.job(stated);
    const Query query{job, s.facts, s.diagnosis, books.limits};
    Matched matched = match_parts(query, books, scope.reasons ? Keep{} : Keep{0, 0, 0, false});
    s.report = std::move(matched.report);
    carry_the_best(s, std::move(matched.more), query, books, shelf, scope);
    s.repair = repair_of(job, s.facts, s.diagnosis, shelf, books.limits);
    s.ledger = ledger_of(s, job, books, policy, scope.options);
    s.outcome = outcome_of(s, job);
    if (s.outcome == Outcome::something_fits) {
        s.pick = 0;
        s.picks = named_picks(s, policy);
    }
    if (!scope.reasons) return s;
    s.questions = keys_first(s, query);
    std::vector<std::string> more;
    if (s.outcome == Outcome::undecided) more = keys_to_ask(s, query, books);
    if (s.outcome == Outcome::something_fits) more = advised_readings(s.diagnosis);
    for (const std::string& key : more) {
        if (std::find(s.questions.begin(), s.questions.end(), key) == s.questions.end())
            s.questions.push_back(key);
    }
    s.named_for_model = named_for_model(job, books.catalog);
    if (waits_for_assembly(job)) {
        s.report.near_misses
            .clear();  // no figure of a plate keeps one out, and none read otherwise would decide
        return s;
    }
    if (s.outcome == Outcome::nothing_fits || s.outcome == Outcome::undecided)
        s.relaxations = relaxations(query, s.report);
    return s;
}

}  // namespace endbell::inline select
