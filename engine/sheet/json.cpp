// One document an answer; json_stages.cpp turns the stages' values.
#include "engine/sheet/json.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/explain/find_words.hpp"
#include "engine/explain/findings.hpp"
#include "engine/explain/questions.hpp"
#include "engine/explain/repair_words.hpp"
#include "engine/explain/start_up.hpp"
#include "engine/explain/values.hpp"
#include "engine/sheet/json_stages.hpp"

namespace endbell::inline sheet {

namespace {

using json::Json;
using json::list;

Json envelope(std::string_view command, const std::string& stamp) {
    return {{"format", json_format}, {"command", command}, {"stamp", stamp}};
}

/// What would drive a terminal or turn its lines (DEL, C1 controls, direction marks, what cannot be seen) as \uXXXX:
/// the same JSON, since such a character stands only inside a string. The writer has escaped C0 itself, and gives
/// only valid UTF-8.
std::string safe(const std::string& text) {
    std::string out;
    for (std::size_t i = 0; i < text.size();) {
        const auto first = static_cast<unsigned char>(text[i]);
        const std::size_t bytes = first < 0x80 ? 1 : first < 0xe0 ? 2 : first < 0xf0 ? 3 : 4;
        const std::string letter = text.substr(i, bytes);
        i += bytes;
        const bool plain = first == '\n' || (first >= 0x20 && first < 0x7f);
        if (plain || visible(letter) == letter) {
            out += letter;
            continue;
        }
        unsigned code = bytes == 1 ? first : first & (0xffU >> (bytes + 1));
        for (std::size_t k = 1; k < letter.size(); ++k)
            code = code << 6U | (static_cast<unsigned char>(letter[k]) & 0x3fU);
        if (code < 0x10000) {
            out += fmt::format("\\u{:04x}", code);
        } else {
            out += fmt::format("\\u{:04x}\\u{:04x}", 0xd7c0 + (code >> 10U), 0xdc00 + (code & 0x3ffU));
        }
    }
    return out;
}

std::string written(const Json& document) {
    // Catalog bytes that are not UTF-8 come out as U+FFFD instead of stopping the answer.
    return safe(document.dump(2, ' ', false, Json::error_handler_t::replace)) + "\n";
}

Json open_field(const OpenField& field) {
    return {{"key", field.job_key},
            {"raw", field.raw},
            {"question", field.question},
            {"readings", field.readings}};
}

Json read_again(const Diagnosis& d) {
    return list(keys_to_read_again(d), [](const std::string& key) {
        return Json{{"key", key}, {"question", question_for(key)}};
    });
}

/// What cannot all be true, and what is read again for it.
void add_contradictions(Json& out, const Diagnosis& d) {
    out["contradictions"] = d.contradictions;
    out["read_again"] = read_again(d);
}

Json kit_of(const Repair& repair, const KitChoice& kit, RepairLanding landing) {
    Json out = json::kit(kit);
    out["landing"] = word(landing);
    out["terminals"] = say(landing);
    out["test"] = proof_of(repair.cure);
    return out;
}

/// What is bought instead of a motor.
Json repair_of(const std::optional<Repair>& repair) {
    if (!repair) return nullptr;
    Json out = kit_of(*repair, repair->kit, repair->landing);
    out["cure"] = word(repair->cure);
    out["complete"] = repair->complete();
    out["asks"] = repair->asks;
    out["may_ask"] = repair->may_ask;
    out["other"] = repair->other ? kit_of(*repair, *repair->other, *repair->other_landing) : Json(nullptr);
    return out;
}

/// What a selection says beside its options, in the order in which a person asks.
void add_outcome(Json& out, const FailedUnit& job, const Selection& s) {
    out["outcome"] = word(s.outcome);
    out["exit_code"] = static_cast<int>(s.outcome);
    out["job"] = job.unit.name ? Json(*job.unit.name) : Json(nullptr);
    out["diagnosis"] = json::diagnosis(s.diagnosis);
    add_contradictions(out, s.diagnosis);
    out["repair"] = repair_of(s.repair);
}

Json still_open(const StillOpen& open) {
    return {
        {"nothing_more", open.nothing_more()},
        {"tried", open.tried},
        {"all_tried", open.all_tried},
        {"decisive", list(open.answers, [](const DecisiveAnswer& answer) {
             const Upshot& then = answer.then;
             return Json{
                 {"said",
                  list(answer.said,
                       [](const DecisiveAnswer::Said& said) {
                           return Json{{"key", said.job_key}, {"answer", said.answer}, {"up_to", said.up_to}};
                       })},
                 {"outcome", word(then.outcome)},
                 {"fault", word(then.fault)},
                 {"pick", then.pick.empty() ? Json(nullptr) : Json(then.pick)}};
         })}};
}

/// Why the other parts fall, what stops or bars some, and what is asked.
void add_rest(Json& out, const Selection& s, const std::vector<OpenField>& open) {
    out["near_misses"] = list(s.report.near_misses, json::candidate);
    out["tallies"] = list(s.report.tallies, [](const Tally& t) {
        return Json{
            {"rule", t.rule}, {"reason", word(t.reason)}, {"parts", t.parts}, {"parts_only", t.parts_only}};
    });
    out["barred_by_policy"] = s.barred;
    out["stopped"] = list(s.stopped, json::option);
    out["stopped_in_all"] = s.stopped_in_all;
    out["ways_out"] = list(s.relaxations, [](const Relaxation& relaxation) {
        return Json{{"rule", relaxation.rule},
                    {"key", relaxation.job_key},
                    {"answer", relaxation.answer},
                    {"unread", relaxation.unread},
                    {"verdict", word(relaxation.verdict)},
                    {"parts", relaxation.parts}};
    });
    out["questions"] = list(s.questions, [](const std::string& key) {
        return Json{{"key", key}, {"question", question_for(key)}};
    });
    out["open"] = list(open, open_field);
    if (!s.named_for_model.empty())
        out["named_for_model"] = list(s.named_for_model, [](const CrossReference& c) {
            return Json{{"number", c.old_number},
                        {"part", c.part_id},
                        {"relation", word(c.relation)},
                        {"source", c.source}};
        });
    if (s.still_open) out["still_open"] = still_open(*s.still_open);
    out["ledger"] = json::ledger(s.ledger);
}

Json counts(const Selection& s) {
    return {{"fits", s.report.fitting},
            {"fits with changes", s.report.changing},
            {"not shown to fit", s.report.open},
            {"carried", s.carried}};
}

Json start_up(const FailedUnit& job, const Selection& selection, const Option& option) {
    return list(start_up_readings(job, selection, option), [](const StartUpReading& reading) {
        return Json{{"reading", reading.what},
                    {"expected", reading.expected},
                    {"record", list(reading.lines, [](const StartUpLine& line) {
                         return Json{{"call", line.call ? Json(word(*line.call)) : Json(nullptr)},
                                     {"quantity", word(line.what)},
                                     {"leg", line.leg}};
                     })}};
    });
}

}  // namespace

std::string json_selection(std::string_view command, const FailedUnit& job, const Selection& s,
                           const std::vector<OpenField>& open, int top) {
    Json out = envelope(command, s.stamp);
    add_outcome(out, job, s);
    out["pick"] =
        s.pick ? Json(s.options[static_cast<std::size_t>(*s.pick)].candidate.part.id) : Json(nullptr);
    const auto named = [&s](const std::optional<int>& i) {
        return i ? Json(s.options[static_cast<std::size_t>(*i)].candidate.part.id) : Json(nullptr);
    };
    out["picks"] = {{"in_stock", named(s.picks.in_stock)},
                    {"cheapest_per_year", named(s.picks.cheapest_per_year)},
                    {"closest", named(s.picks.closest)}};
    out["parts_asked"] = s.report.parts_asked;
    out["options_found"] = s.options.size();
    Json options = Json::array();
    for (std::size_t i = 0; i < s.options.size() && static_cast<int>(i) < top; ++i)
        options.push_back(json::option(s.options[i]));
    out["options"] = options;
    std::vector<std::string> not_shown;
    for (const CandidateName& name : s.report.not_shown) not_shown.push_back(name.part_id);
    std::sort(not_shown.begin(), not_shown.end());
    out["not_shown"] = not_shown;
    out["counts"] = counts(s);
    add_rest(out, s, open);
    return written(out);
}

std::string json_candidate(std::string_view command, const Candidate& c, const Diagnosis& d,
                           const std::string& stamp) {
    Json out = envelope(command, stamp);
    out["exit_code"] = 0;
    add_contradictions(out, d);
    out["candidate"] = json::candidate(c);
    return written(out);
}

std::string json_diagnosis(std::string_view command, const Diagnosis& d, const std::vector<OpenField>& open,
                           int exit_code, const std::string& stamp) {
    Json out = envelope(command, stamp);
    out["exit_code"] = exit_code;
    out["read_again"] = read_again(d);
    out["diagnosis"] = json::diagnosis(d);
    out["open"] = list(open, open_field);
    return written(out);
}

std::string json_option(std::string_view command, const FailedUnit& job, const Selection& s, const Option& o,
                        int exit_code) {
    Json out = envelope(command, s.stamp);
    out["exit_code"] = exit_code;
    add_contradictions(out, s.diagnosis);
    out["option"] = json::option(o);
    out["start_up"] = start_up(job, s, o);
    return written(out);
}

namespace {

struct BlockWriter {
    Json operator()(const Decision& d) const {
        return {{"decision", d.word}, {"what", d.what}, {"because", d.because}};
    }
    Json operator()(const Heading& h) const { return {{"heading", h.text}}; }
    Json operator()(const Paragraph& p) const { return {{"text", p.text}}; }
    Json operator()(const Bullets& b) const { return {{"list", b.items}}; }
    Json operator()(const Steps& steps) const { return {{"steps", steps.items}}; }
    Json operator()(const Pairs& pairs) const {
        Json out = Json::object();
        for (const auto& row : pairs.rows) out[row.first] = row.second;
        return {{"values", out}};
    }
    Json operator()(const Grid& table) const {
        return {{"columns", table.header}, {"rows", table.rows}, {"caption", table.caption}};
    }
    Json operator()(const Warning& w) const { return {{"signal_word", w.signal_word}, {"text", w.text}}; }
    Json operator()(const Figure& f) const { return {{"figure", f.drawing.title}, {"text", f.description}}; }
    Json operator()(const Chart& c) const {
        return {{"chart", c.title},
                {"text", c.description + " " + c.note},
                {"columns", c.numbers.header},
                {"rows", c.numbers.rows}};
    }
    Json operator()(const Plain& plain) const { return {{"lines", plain.lines}}; }
};

}  // namespace

namespace {

Json blocks(const Document& document) {
    Json out = Json::array();
    for (const Block& block : document.blocks) out.push_back(std::visit(BlockWriter{}, block));
    return out;
}

}  // namespace

std::string json_sheet(const FailedUnit& job, const Selection& s, const Option* o,
                       const std::vector<OpenField>& open, const Document& sheet) {
    Json out = envelope("sheet", s.stamp);
    add_outcome(out, job, s);
    out["option"] = o != nullptr ? json::option(*o) : Json(nullptr);
    out["start_up"] = o != nullptr ? start_up(job, s, *o) : Json::array();
    out["options_found"] = s.options.size();
    out["parts_asked"] = s.report.parts_asked;
    out["counts"] = counts(s);
    add_rest(out, s, open);
    out["title"] = sheet.title;
    out["blocks"] = blocks(sheet);
    return written(out);
}

std::string json_document(std::string_view command, const Document& document, int exit_code) {
    Json out = envelope(command, document.stamp);
    out["exit_code"] = exit_code;
    out["title"] = document.title;
    out["blocks"] = blocks(document);
    return written(out);
}

namespace {

Json found_part(const FoundPart& found) {
    Json out{{"found_by", word(found.by)},
             {"number", found.number},
             {"part_id", found.part_id},
             {"in_catalog", found.part.has_value()}};
    if (found.part) {
        out["part_number"] = found.part->number;
        out["maker"] = found.part->maker;
        out["kind"] = word(found.part->kind);
        out["status"] = word(found.part->status);
        out["description"] = found.part->description;
    }
    out["references"] = list(found.references, [](const CrossReference& r) {
        return Json{{"old_number", r.old_number}, {"relation", word(r.relation)}, {"source", r.source}};
    });
    return out;
}

Json found_chain(const FoundChain& chain) {
    return {{"from", chain.from},
            {"steps", list(chain.succession.steps,
                           [](const SuccessionStep& s) {
                               return Json{{"from", s.from}, {"to", s.to}, {"source", s.source}};
                           })},
            {"ends", chain.succession.ends},
            {"cycle", chain.succession.cycle}};
}

}  // namespace

std::string json_find(const std::vector<FindAnswer>& answers, const std::string& stamp) {
    Json out = envelope("find", stamp);
    out["exit_code"] = 0;
    out["answers"] = list(answers, [](const FindAnswer& a) {
        return Json{{"text", a.text},
                    {"known", a.is_known()},
                    {"numbers", a.numbers},
                    {"parts", list(a.parts, found_part)},
                    {"chains", list(a.chains, found_chain)},
                    {"narrowing", word(a.narrowing)},
                    {"question", narrowing_question(a)}};
    });
    return written(out);
}

std::string json_rules(std::string_view command, const Limits& limits, std::string_view only_rule) {
    Json out = envelope(command, "");
    out["exit_code"] = 0;
    out["rules"] = Json::array();
    for (const Rule& r : all_rules()) {
        if (!only_rule.empty() && r.id != only_rule) continue;
        out["rules"].push_back({{"rule", r.id},
                                {"claim", r.claim},
                                {"sources", r.sources},
                                {"limits", list(r.limits, [](const LimitId& row) { return Json(row.text); })},
                                {"job_keys", r.job_keys}});
    }
    out["limits"] = list(limits.rows(), [](const Limit& row) {
        const Source& from = source(row.source);
        return Json{{"limit", row.id},        {"value", row.value},
                    {"unit", row.unit},       {"safe_way", word(row.stricter)},
                    {"bounds", row.bounds},   {"band", word(row.volts_at)},
                    {"meaning", row.meaning}, {"source", row.source},
                    {"title", from.title},    {"basis", word(from.basis)},
                    {"set_by", row.set_by}};
    });
    return written(out);
}

std::string json_problems(std::string_view command, const std::vector<Problem>& problems, int exit_code) {
    Json out = envelope(command, "");
    out["exit_code"] = exit_code;
    out["problems"] = list(problems, [](const Problem& p) {
        return Json{{"file", p.at.file},    {"line", p.at.line}, {"column", p.at.column},
                    {"subject", p.subject}, {"value", p.value},  {"expected", p.expected},
                    {"todo", p.todo},       {"text", to_text(p)}};
    });
    return written(out);
}

}  // namespace endbell::inline sheet
