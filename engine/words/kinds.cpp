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
        for (const Word<E>& own : Words<E>::table) values.emplace(spelling_key(fold(own.text)), own.value);
        for (const auto& [text, value] : spellings<E>()) values.emplace(spelling_key(fold(text)), value);
        for (const OpenSpelling& spelling : open_spellings<E>())
            open.emplace(spelling_key(fold(spelling.text)), &spelling);
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
Read<E> read_kind(const Folded& words) {
    const Dictionary<E>& known = dictionary<E>();
    const std::string key = spelling_key(words);
    // A word of the table comes before the missing markers: "none" is a value of some.
    const auto value = known.values.find(key);
    if (value != known.values.end()) return read_as<E>(words, value->second);
    if (is_missing(words)) return not_written<E>();
    const auto open = known.open.find(key);
    if (open != known.open.end()) return ask<E>(words, open->second->question, open->second->readings);
    return unreadable<E>(words, known.expected);
}

template <class E>
Read<std::vector<E>> read_kinds(const Folded& words) {
    using List = std::vector<E>;
    if (is_missing(words)) return not_written<List>();
    std::string text = words.text();
    std::replace(text.begin(), text.end(), ',', ';');
    List list;
    for (const std::string& part : split(text, ';')) {
        if (trimmed(part).empty()) continue;
        const Read<E> one = read_kind<E>(words.left_with(part));
        if (!one.reading) {
            Read<List> whole = no_value<List>(one);
            whole.reading.raw = words.raw();
            return whole;
        }
        if (std::find(list.begin(), list.end(), *one.reading) == list.end()) list.push_back(*one.reading);
    }
    return read_as<List>(words, list);
}

template Read<Load> read_kind<Load>(const Folded&);
template Read<Family> read_kind<Family>(const Folded&);
template Read<SignalClass> read_kind<SignalClass>(const Folded&);
template Read<TapRule> read_kind<TapRule>(const Folded&);
template Read<Mount> read_kind<Mount>(const Folded&);
template Read<Drive> read_kind<Drive>(const Folded&);
template Read<Enclosure> read_kind<Enclosure>(const Folded&);
template Read<Bearing> read_kind<Bearing>(const Folded&);
template Read<ShaftPosition> read_kind<ShaftPosition>(const Folded&);
template Read<Protection> read_kind<Protection>(const Folded&);
template Read<VoltageSelection> read_kind<VoltageSelection>(const Folded&);
template Read<PartKind> read_kind<PartKind>(const Folded&);
template Read<PartStatus> read_kind<PartStatus>(const Folded&);
template Read<Relation> read_kind<Relation>(const Folded&);
template Read<Cure> read_kind<Cure>(const Folded&);
template Read<ControlSource> read_kind<ControlSource>(const Folded&);
template Read<HeatKind> read_kind<HeatKind>(const Folded&);
template Read<RiseHeat> read_kind<RiseHeat>(const Folded&);
template Read<ReversingValve> read_kind<ReversingValve>(const Folded&);
template Read<DehumidifyLogic> read_kind<DehumidifyLogic>(const Folded&);
template Read<SpeedLead> read_kind<SpeedLead>(const Folded&);
template Read<FanCommand> read_kind<FanCommand>(const Folded&);
template Read<Call> read_kind<Call>(const Folded&);
template Read<Symptom> read_kind<Symptom>(const Folded&);
template Read<ControlVoltsKind> read_kind<ControlVoltsKind>(const Folded&);
template Read<BeltState> read_kind<BeltState>(const Folded&);
template Read<Cleanness> read_kind<Cleanness>(const Folded&);
template Read<Sign> read_kind<Sign>(const Folded&);
template Read<ChangedPart> read_kind<ChangedPart>(const Folded&);

template Read<std::vector<Load>> read_kinds<Load>(const Folded&);
template Read<std::vector<Family>> read_kinds<Family>(const Folded&);
template Read<std::vector<ShaftPosition>> read_kinds<ShaftPosition>(const Folded&);
template Read<std::vector<Symptom>> read_kinds<Symptom>(const Folded&);
template Read<std::vector<Sign>> read_kinds<Sign>(const Folded&);
template Read<std::vector<ChangedPart>> read_kinds<ChangedPart>(const Folded&);

}  // namespace endbell::inline words
