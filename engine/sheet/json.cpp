// One document an answer; json_stages.cpp turns the stages' values.
#include "engine/sheet/json.hpp"

#include <algorithm>

#include "engine/explain/findings.hpp"
#include "engine/explain/questions.hpp"
#include "engine/explain/values.hpp"
#include "engine/sheet/json_stages.hpp"

namespace endbell {

namespace {

using json::Json;
using json::list;

Json envelope(std::string_view command, const std::string& stamp) {
    return {{"format", json_format}, {"command", command}, {"stamp", stamp}};
}

std::string written(const Json& document) {
    // Catalog bytes that are not UTF-8 come out as U+FFFD instead of stopping the answer.
    return document.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Json open_field(const OpenField& field) {
    return {{"key", field.job_key},
            {"raw", field.raw},
            {"question", field.question},
            {"readings", field.readings}};
}

}  // namespace

std::string json_selection(std::string_view command, const Selection& s, const std::vector<OpenField>& open,
                           int top) {
    Json out = envelope(command, s.stamp);
    out["outcome"] = word(s.outcome);
    out["exit_code"] = static_cast<int>(s.outcome);
    out["diagnosis"] = json::diagnosis(s.diagnosis);
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
    for (const Standing& standing : s.report.not_shown) not_shown.push_back(standing.part_id);
    std::sort(not_shown.begin(), not_shown.end());
    out["not_shown"] = not_shown;
    out["counts"] = {{"fits", s.report.fitting},
                     {"fits with changes", s.report.changing},
                     {"not shown to fit", s.report.open},
                     {"carried", s.carried}};
    out["near_misses"] = list(s.report.near_misses, json::candidate);
    out["tallies"] = list(s.report.tallies, [](const Tally& t) {
        return Json{{"rule", t.rule}, {"reason", t.reason}, {"parts", t.parts}, {"parts_only", t.parts_only}};
    });
    out["barred_by_policy"] = s.barred;
    out["stopped"] = list(s.stopped, json::option);
    out["ways_out"] = list(s.ways_out, [](const Relaxation& way) {
        return Json{{"rule", way.rule},     {"key", way.job_key},           {"answer", way.answer},
                    {"unread", way.unread}, {"verdict", word(way.verdict)}, {"parts", way.parts}};
    });
    out["questions"] = list(s.questions, [](const std::string& key) {
        return Json{{"key", key}, {"question", question_for(key)}};
    });
    out["open"] = list(open, open_field);
    out["ledger"] = json::ledger(s.ledger);
    return written(out);
}

std::string json_candidate(std::string_view command, const Candidate& c, const std::string& stamp) {
    Json out = envelope(command, stamp);
    out["exit_code"] = 0;
    out["candidate"] = json::candidate(c);
    return written(out);
}

std::string json_diagnosis(std::string_view command, const Diagnosis& d, const std::vector<OpenField>& open,
                           int exit_code, const std::string& stamp) {
    Json out = envelope(command, stamp);
    out["exit_code"] = exit_code;
    out["diagnosis"] = json::diagnosis(d);
    out["open"] = list(open, open_field);
    return written(out);
}

std::string json_option(std::string_view command, const Selection& s, const Option& o, int exit_code) {
    Json out = envelope(command, s.stamp);
    out["exit_code"] = exit_code;
    out["option"] = json::option(o);
    return written(out);
}

namespace {

struct BlockWriter {
    Json operator()(const Heading& h) const { return {{"heading", h.text}}; }
    Json operator()(const Paragraph& p) const { return {{"text", p.text}}; }
    Json operator()(const Bullets& b) const { return {{"list", b.items}}; }
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
    Json operator()(const Plain& plain) const { return {{"lines", plain.lines}}; }
};

}  // namespace

std::string json_document(std::string_view command, const Document& document, int exit_code) {
    Json out = envelope(command, document.stamp);
    out["exit_code"] = exit_code;
    out["title"] = document.title;
    out["blocks"] = Json::array();
    for (const Block& block : document.blocks) out["blocks"].push_back(std::visit(BlockWriter{}, block));
    return written(out);
}

std::string json_rules(std::string_view command, const Limits& limits, std::string_view only_rule) {
    Json out = envelope(command, "");
    out["exit_code"] = 0;
    out["rules"] = Json::array();
    for (const Rule& r : rules()) {
        if (!only_rule.empty() && r.id != only_rule) continue;
        out["rules"].push_back({{"rule", r.id},
                                {"claim", r.claim},
                                {"sources", r.sources},
                                {"limits", r.limits},
                                {"job_keys", r.job_keys}});
    }
    out["limits"] = list(limits.rows(), [](const Limit& row) {
        const Source& from = source(row.source);
        return Json{{"limit", row.id},           {"value", row.value},   {"unit", row.unit},
                    {"meaning", row.meaning},    {"source", row.source}, {"title", from.title},
                    {"basis", word(from.basis)}, {"set_by", row.set_by}};
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

}  // namespace endbell
