#include "engine/words/kinds.hpp"

#include <algorithm>
#include <map>

#include "engine/base/text.hpp"
#include "engine/words/fold.hpp"
#include "engine/words/spellings_job.hpp"
#include "engine/words/spellings_motor.hpp"
#include "engine/words/spellings_part.hpp"

namespace endbell::inline words {

namespace {

template <class E>
struct Dictionary {
    std::map<std::string, E, std::less<>> values;                  // spelling key -> value
    std::map<std::string, const OpenSpelling*, std::less<>> open;  // spelling key -> question
    std::string expected;

    Dictionary() {
        for (const Word<E>& own : Words<E>::table) values.emplace(spelling_key(own.text), own.value);
        for (const auto& [text, value] : spellings<E>()) values.emplace(spelling_key(text), value);
        for (const OpenSpelling& spelling : open_spellings<E>())
            open.emplace(spelling_key(spelling.text), &spelling);
        std::vector<std::string> words;
        words.reserve(Words<E>::table.size());
        for (const Word<E>& own : Words<E>::table) words.push_back("'" + std::string(own.text) + "'");
        expected = joined(words, ", ");
    }
};

template <class E>
const Dictionary<E>& dictionary() {
    static const Dictionary<E> words;
    return words;
}

}  // namespace

template <class E>
Read<E> read_kind(std::string_view raw) {
    const Dictionary<E>& known = dictionary<E>();
    const std::string key = spelling_key(raw);
    // A word of the table comes before the missing markers: "none" is a value of some.
    const auto value = known.values.find(key);
    if (value != known.values.end()) return read_as<E>(raw, value->second);
    if (is_missing(raw)) return not_written<E>();
    const auto open = known.open.find(key);
    if (open != known.open.end()) return ask<E>(raw, open->second->question, open->second->readings);
    return unreadable<E>(raw, known.expected);
}

template <class E>
Read<std::vector<E>> read_kinds(std::string_view raw) {
    using List = std::vector<E>;
    if (is_missing(raw)) return not_written<List>();
    std::string text(raw);
    std::replace(text.begin(), text.end(), ',', ';');
    List list;
    for (const std::string& part : split(text, ';')) {
        if (trimmed(part).empty()) continue;
        const Read<E> one = read_kind<E>(part);
        if (!one.reading) {
            Read<List> whole = no_value<List>(one);
            whole.reading.raw = std::string(raw);
            return whole;
        }
        if (std::find(list.begin(), list.end(), *one.reading) == list.end()) list.push_back(*one.reading);
    }
    return read_as<List>(raw, list);
}

template Read<Load> read_kind<Load>(std::string_view);
template Read<Family> read_kind<Family>(std::string_view);
template Read<SignalClass> read_kind<SignalClass>(std::string_view);
template Read<TapRule> read_kind<TapRule>(std::string_view);
template Read<Mount> read_kind<Mount>(std::string_view);
template Read<Enclosure> read_kind<Enclosure>(std::string_view);
template Read<Bearing> read_kind<Bearing>(std::string_view);
template Read<ShaftPosition> read_kind<ShaftPosition>(std::string_view);
template Read<Protection> read_kind<Protection>(std::string_view);
template Read<VoltageSelection> read_kind<VoltageSelection>(std::string_view);
template Read<PartKind> read_kind<PartKind>(std::string_view);
template Read<PartStatus> read_kind<PartStatus>(std::string_view);
template Read<Relation> read_kind<Relation>(std::string_view);
template Read<Cure> read_kind<Cure>(std::string_view);
template Read<ControlSource> read_kind<ControlSource>(std::string_view);
template Read<HeatKind> read_kind<HeatKind>(std::string_view);
template Read<ReversingValve> read_kind<ReversingValve>(std::string_view);
template Read<DehumidifyLogic> read_kind<DehumidifyLogic>(std::string_view);
template Read<Call> read_kind<Call>(std::string_view);
template Read<Symptom> read_kind<Symptom>(std::string_view);

template Read<std::vector<Load>> read_kinds<Load>(std::string_view);
template Read<std::vector<Family>> read_kinds<Family>(std::string_view);
template Read<std::vector<ShaftPosition>> read_kinds<ShaftPosition>(std::string_view);
template Read<std::vector<Symptom>> read_kinds<Symptom>(std::string_view);

}  // namespace endbell::inline words
