#include "engine/sheet/json_stages.hpp"

#include "engine/explain/findings.hpp"
#include "engine/explain/next_test_words.hpp"
#include "engine/explain/questions.hpp"
#include "engine/explain/values.hpp"
#include "engine/sheet/json_air.hpp"
#include "engine/words/write.hpp"

namespace endbell::inline sheet::json {

namespace {

Json texts(const std::vector<std::string>& items) {
    return Json(items);
}

template <class E>
Json words(const std::vector<E>& values) {
    return list(values, [](E value) { return Json(word(value)); });
}

Json datum(const Datum& f) {
    if (!f.known()) return nullptr;
    return {{"text", say(f.value)}, {"origin", say(f.origin)}};
}

Json money(const std::optional<Money>& m) {
    if (!m) return nullptr;
    return {{"amount", m->amount()}, {"currency", m->currency().code}};
}

/// "offer BRANCH SELLER 2026-01-10": what it does not say is left out.
std::string named(const OfferName& offer) {
    std::string name = "offer";
    for (const std::string& each : {offer.branch, offer.seller, offer.as_of ? write(*offer.as_of) : ""}) {
        if (!each.empty()) name.append(" ").append(each);
    }
    return name;
}

Json remedy(const Remedy& r) {
    Json out{{"cure", word(r.cure)}, {"count", r.count}, {"task", word(task_of(r.cure))}};
    if (r.from) out["from_in"] = r.from->in(inch);
    if (r.to) out["to_in"] = r.to->in(inch);
    if (r.capacitor) out["capacitor_uf"] = r.capacitor->in(microfarad);
    if (r.compressor_capacitor) out["compressor_uf"] = r.compressor_capacitor->in(microfarad);
    if (r.amps) out["amps"] = r.amps->in(ampere);
    if (r.capacitor_volts) out["capacitor_v"] = r.capacitor_volts->in(volt);
    if (r.coil) out["coil_v"] = r.coil->in(volt);
    if (r.power) out["power_va"] = r.power->in(volt_ampere);
    if (r.primary) out["primary_v"] = r.primary->in(volt);
    if (r.program) out["program"] = *r.program;
    return out;
}

Json finding(const Finding& f) {
    return {{"rule", f.rule},
            {"verdict", word(f.verdict)},
            {"reason", word(f.reason)},
            {"wanted", datum(f.wanted)},
            {"offered", datum(f.offered)},
            {"limit", datum(f.limit)},
            {"limit_id", f.limit_id},
            {"source", f.source},
            {"caution", f.caution},
            {"remedies", list(f.remedies, remedy)},
            {"asks", texts(f.asks)},
            {"sentence", sentence(f)}};
}

/// The figure that it is set to; without one what is done.
std::string figure_of(const Setting& s) {
    if (s.capacitor)
        return write(*s.capacitor) + (s.capacitor_volts ? " " + write(*s.capacitor_volts) : std::string());
    if (s.power) return write(*s.power);
    if (s.amps) return write(*s.amps);
    if (s.volts) return write(*s.volts);
    return std::string(word(s.done));
}

Json control_power(const ControlPower& p) {
    if (!p.judgement) return nullptr;
    const auto known = [](const auto& value, auto unit) {
        return value ? Json(value->in(unit)) : Json(nullptr);
    };
    Json out{{"added_va", p.added.in(volt_ampere)},
             {"judgement", word(*p.judgement)},
             {"rating_va", known(p.rating, volt_ampere)},
             {"before_va", known(p.before, volt_ampere)},
             {"share", p.share ? Json(*p.share) : Json(nullptr)},
             {"class_2", p.class2 ? Json(*p.class2) : Json(nullptr)},
             {"secondary_a", known(p.rated, ampere)},
             {"secondary_fuse_a", known(p.fuse, ampere)},
             {"drop_50_ft_v", p.drop_50_ft.in(volt)},
             {"fitted", nullptr}};
    if (p.fitted)
        out["fitted"] = {{"rating_va", p.fitted->rating.in(volt_ampere)},
                         {"share", p.fitted->share},
                         {"secondary_a", p.fitted->rated.in(ampere)},
                         {"secondary_fuse_a", p.fitted->fuse.in(ampere)}};
    return out;
}

/// Signals are bits of a number inside and names outside, so that nobody has to count them.
Json wiring(const WiringPlan& w) {
    const auto names = [&w](SignalSet live) {
        Json out = Json::array();
        for (std::size_t i = 0; i < w.signals.size(); ++i) {
            if (live >> i & 1U) out.push_back(w.signals[i]);
        }
        return out;
    };
    const auto truth = [&names](const TruthRow& r) {
        return Json{{"signals", names(r.live)},
                    {"state", r.state},
                    {"reachable", r.reachable},
                    {"live_taps", r.live_taps},
                    {"effective_tap", r.effective_tap ? Json(*r.effective_tap) : Json(nullptr)},
                    {"wanted_tap", r.wanted_tap},
                    {"made_by", words(r.makers)},
                    {"kept_away_by", word(r.kept_away_by)},
                    {"holds", r.holds}};
    };
    const auto relay = [&w](const Relay& r) {
        return Json{{"relay", r.name},          {"coil", w.signals[static_cast<std::size_t>(r.coil_signal)]},
                    {"poles", r.contacts},      {"bodies", r.bodies},
                    {"line_coil", r.line_coil}, {"line_contacts", r.line_contacts}};
    };
    const auto fault = [&names](const FaultRow& f) {
        return Json{{"kind", word(f.kind)},
                    {"where", f.where},
                    {"two_taps", f.two_taps},
                    {"back_feed", f.back_feed},
                    {"heat_without_air", f.heat_without_air()},
                    {"without_air", words(f.without_air)},
                    {"effects", list(f.effects, [&names](const FaultEffect& e) {
                         return Json{{"signals", names(e.live)},
                                     {"state", e.state},
                                     {"wanted_tap", e.wanted_tap},
                                     {"live_taps", e.live_taps}};
                     })}};
    };
    const auto text = [&w](const NetPlace& place) { return Json(text_of(w, place)); };
    const auto tap = [&text](const TapRow& t) {
        return Json{{"tap", t.tap},       {"terminal", t.terminal}, {"from", list(t.from, text)},
                    {"states", t.states}, {"parked", t.parked},     {"provisional", word(t.provisional)}};
    };
    return {
        {"possible", w.possible},
        {"refusal", word(w.refusal)},
        {"rescues", words(w.rescues)},
        {"lacking", texts(w.lacking)},
        {"refused_calls", words(w.refused_calls)},
        {"refused_terminals", texts(w.refused_terminals)},
        {"idle_terminals", list(w.idle,
                                [](const IdleTerminal& x) {
                                    return Json{{"terminal", x.name}, {"because", word(x.why)}};
                                })},
        {"kept_away", list(w.kept_away,
                           [](const KeptAway& x) {
                               return Json{{"state", x.state},
                                           {"made_by", word(x.maker)},
                                           {"kept_away_by", word(x.by)},
                                           {"shown", x.shown}};
                           })},
        {"short_of_air", words(w.short_of_air)},
        {"method", word(w.method)},
        {"condition", word(w.condition)},
        {"tap_rule", word(w.tap_rule)},
        {"default_tap", w.default_tap ? Json(*w.default_tap) : Json(nullptr)},
        {"proven", w.proven},
        {"fewest_relays", w.fewest_relays},
        {"signals", texts(w.signals)},
        {"taps", list(w.taps, tap)},
        {"relays", list(w.relays, relay)},
        {"wires", list(w.wires,
                       [&text](const Wire& x) {
                           return Json{{"from", text(x.from)}, {"to", text(x.to)}, {"note", word(x.note)}};
                       })},
        {"settings", list(w.settings,
                          [](const Setting& x) {
                              return Json{{"what", word(x.what)},
                                          {"done", word(x.done)},
                                          {"value", figure_of(x)},
                                          {"lead", x.lead}};
                          })},
        {"control_power", control_power(w.power)},
        {"truth", list(w.truth, truth)},
        {"faults", list(w.faults, fault)},
        {"assumed", texts(w.assumed)},
        {"cautions", words(w.cautions)},
        {"checks", words(w.checks)},
        {"alternatives", list(w.alternatives, wiring)}};
}

Json cause(const RootCause& k) {
    return {{"cause", word(k.cause)}, {"key", k.job_key}, {"source", k.source}};
}

}  // namespace

Json candidate(const Candidate& c) {
    return {{"part", c.part.id},
            {"number", c.part.number},
            {"maker", c.part.maker},
            {"kind", word(c.part.kind)},
            {"description", c.part.description},
            {"verdict", word(c.verdict)},
            {"claims", list(c.cross_references,
                            [](const CrossReference& r) {
                                return Json{{"old_number", r.old_number},
                                            {"relation", word(r.relation)},
                                            {"source", r.source}};
                            })},
            {"findings", list(c.findings, finding)}};
}

Json kit(const KitChoice& k) {
    return {{"complete", k.complete()},
            {"remedies", list(k.remedies, remedy)},
            {"parts", list(k.parts,
                           [](const KitPart& p) {
                               return Json{{"part", p.part_id},
                                           {"count", p.count},
                                           {"cures", p.cures},
                                           {"price", money(p.offer ? p.offer->price : std::nullopt)}};
                           })},
            {"work", list(k.work,
                          [](const KitWork& w) {
                              return Json{{"task", word(w.task)},
                                          {"hours", w.thousandth_hours / 1000.0},
                                          {"cures", w.cures}};
                          })},
            {"uncured", k.uncured},
            {"parts_total", money(k.parts_total)},
            {"runners_up", list(k.runners_up, [](const RunnerUp& r) {
                 return Json{{"parts", r.part_ids},
                             {"parts_total", money(r.parts_total)},
                             {"lost_on", word(r.lost_on)}};
             })}};
}

Json diagnosis(const Diagnosis& d) {
    return {{"fault", word(d.fault)},
            {"culprit", d.culprit ? Json(word(*d.culprit)) : Json(nullptr)},
            {"replace_nothing", d.replace_nothing()},
            {"nothing_measured", d.nothing_measured},
            {"motor_half_proven_good", d.motor_half_proven_good},
            {"evidence", list(d.evidence,
                              [](const Evidence& e) {
                                  return Json{{"test", word(e.test)},
                                              {"key", e.job_key},
                                              {"verdict", word(e.verdict)},
                                              {"reason", word(e.reason)},
                                              {"measured", datum(e.measured)},
                                              {"limit", datum(e.limit)},
                                              {"limit_id", e.limit_id},
                                              {"source", e.source},
                                              {"asks", e.asks},
                                              {"carries", e.carries}};
                              })},
            {"missing", list(d.missing,
                             [](const MissingReading& m) {
                                 return Json{{"key", m.job_key},
                                             {"test", word(m.test)},
                                             {"seconds", m.seconds},
                                             {"power_off", m.power_off()},
                                             {"question", question_for(m.job_key)}};
                             })},
            {"next", list(d.next,
                          [](const NextTest& n) {
                              return Json{{"key", n.job_key},
                                          {"test", word(n.test)},
                                          {"danger", word(n.danger)},
                                          {"minutes", n.minutes()},
                                          {"question", question_for(n.job_key)},
                                          {"decides", say_decides(n.test)},
                                          {"follows", say_follows(n.test)},
                                          {"source", n.source}};
                          })},
            {"causes", list(d.causes, cause)},
            {"since_start_up", list(d.since_start_up,
                                    [](const SinceStartUp& c) {
                                        return Json{{"quantity", word(c.what)},
                                                    {"call", c.call ? Json(word(*c.call)) : Json(nullptr)},
                                                    {"leg", c.leg},
                                                    {"then", number(c.then)},
                                                    {"now", number(c.now)},
                                                    {"change", word(c.change)},
                                                    {"key", c.job_key}};
                                    })},
            {"contradictions", texts(d.contradictions)}};
}

Json ledger(const Ledger& l) {
    return {{"cheapest_today", l.cheapest_today ? Json(*l.cheapest_today) : Json(nullptr)},
            {"cheapest_per_year", l.cheapest_per_year ? Json(*l.cheapest_per_year) : Json(nullptr)},
            {"options", list(l.options, [](const CostOption& o) {
                 return Json{
                     {"way", word(o.way)},
                     {"part", o.part_id},
                     {"today", money(o.today)},
                     {"so_far", money(o.so_far)},
                     {"per_year", money(o.per_year)},
                     {"recurrence_uncured", money(o.recurrence_uncured)},
                     {"recurrence_cured", money(o.recurrence_cured)},
                     {"life_years", o.life.in(calendar_year)},
                     {"good_until", o.good_until ? Json(write(*o.good_until)) : Json(nullptr)},
                     {"energy_kwh_per_year",
                      o.energy_per_year ? number(o.energy_per_year->in(kilowatt_hour)) : Json(nullptr)},
                     {"energy_cost", money(o.energy_cost)},
                     {"lacking", texts(o.lacking)},
                     {"loses", words(o.loses)},
                     {"not_counted", words(o.not_counted)},
                     {"lines", list(o.lines, [](const CostLine& line) {
                          return Json{{"kind", word(line.kind)},
                                      {"subject", line.subject()},
                                      {"amount", money(line.amount)},
                                      {"source", line.offer ? named(*line.offer) : line.source},
                                      {"stale", line.stale},
                                      {"count", line.count},
                                      {"hours", line.thousandth_hours / 1000.0}};
                      })}};
             })}};
}

Json option(const Option& o) {
    Json out = candidate(o.candidate);
    out["standing"] = word(o.standing);
    out["kit"] = kit(o.kit);
    out["air"] = air(o.air);
    out["wiring"] = wiring(o.wiring);
    return out;
}

}  // namespace endbell::inline sheet::json
