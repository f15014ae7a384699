// Cells that hold one word of a known few, or a list of them.
#include <algorithm>

#include "engine/fields/cell_tools.hpp"
#include "engine/fields/tables.hpp"
#include "engine/model/limits.hpp"
#include "engine/model/task.hpp"
#include "engine/words/fold.hpp"
#include "engine/words/kinds.hpp"
#include "engine/words/turning.hpp"

namespace endbell::inline fields::cells {

namespace {

Cell unknown_word(std::string_view text, const std::vector<std::string>& known) {
    const std::string near = nearest(text, known);
    return refused("one of: " + joined(known, ", "),
                   near.empty() ? "use one of these words" : "did you mean '" + near + "'?");
}

template <class E>
Cell no_word_of(std::string_view text) {
    const std::vector<std::string_view> words = enum_words<E>();
    return unknown_word(text, {words.begin(), words.end()});
}

template <class E>
Cell one_word(std::string_view text) {
    const Read<E> read = read_kind<E>(fold(text));
    if (read.failed()) return no_word_of<E>(text);
    return from_read(read, [](E value) { return Stored(std::string(word(value))); });
}

/// Words separated by ';', each once, in the order of the enumeration: two spellings of one list are one
/// list.
template <class E>
Cell word_list(std::string_view text) {
    std::vector<E> found;
    for (const std::string& item : split(text, ';')) {
        if (says_nothing(trimmed(item))) continue;
        Cell cell = one_word<E>(item);
        if (!cell.is_read()) return cell;
        found.push_back(*from_word<E>(std::get<std::string>(cell.value)));
    }
    std::vector<std::string> list;
    for (const Word<E>& entry : Words<E>::table) {
        if (std::find(found.begin(), found.end(), entry.value) != found.end()) list.emplace_back(entry.text);
    }
    if (list.empty()) return stored({});
    return stored(joined(list, ";"));
}

bool all_digits(std::string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

}  // namespace

Cell terminal_function(std::string_view text) {
    static const std::vector<std::string> known{"line",    "second line", "third line", "earth",
                                                "common",  "run signal",  "capacitor",  "jumper",
                                                "winding", "thermistor",  "park"};
    const std::string name = fold(text).text();
    if (std::find(known.begin(), known.end(), name) != known.end()) return stored(name);
    if (name.substr(0, 4) == "tap " && all_digits(name.substr(4)) && name.size() <= 6 && name[4] != '0')
        return stored(name);
    std::vector<std::string> all = known;
    all.emplace_back("tap 1");
    return unknown_word(text, all);
}

Cell part_kind(std::string_view text) {
    return one_word<PartKind>(text);
}
Cell part_status(std::string_view text) {
    return one_word<PartStatus>(text);
}
Cell family(std::string_view text) {
    return one_word<Family>(text);
}
Cell families(std::string_view text) {
    return word_list<Family>(text);
}
Cell loads(std::string_view text) {
    return word_list<Load>(text);
}
Cell positions(std::string_view text) {
    return word_list<ShaftPosition>(text);
}
Cell mount(std::string_view text) {
    return one_word<Mount>(text);
}
Cell drive(std::string_view text) {
    return one_word<Drive>(text);
}
Cell enclosure(std::string_view text) {
    return one_word<Enclosure>(text);
}
Cell bearing(std::string_view text) {
    return one_word<Bearing>(text);
}
Cell protection(std::string_view text) {
    return one_word<Protection>(text);
}
Cell signal(std::string_view text) {
    return one_word<SignalClass>(text);
}
Cell tap_rule(std::string_view text) {
    return one_word<TapRule>(text);
}
Cell selection(std::string_view text) {
    return one_word<VoltageSelection>(text);
}
Cell cure(std::string_view text) {
    return one_word<Cure>(text);
}
Cell relation(std::string_view text) {
    return one_word<Relation>(text);
}

Cell rotation(std::string_view text) {
    const Folded words = fold(text);
    if (const Read<Spin> spin = read_spin(words); spin.reading)
        return stored(std::string(*spin.reading == Spin::cw ? "CW" : "CCW"));
    const Read<Rotation> read = read_rotation(words);
    if (read.failed()) return unknown_word(text, {"CW", "CCW", "reversible", "CWSE", "CCWSE"});
    return from_read(read, [](Rotation value) { return Stored(std::string(word(value))); });
}

Cell viewed_from(std::string_view text) {
    const Read<ViewedFrom> read = read_viewing_end(fold(text));
    if (read.failed()) return unknown_word(text, {"shaft end", "lead end"});
    return from_read(read, [](ViewedFrom end) {
        return Stored(std::string(end == ViewedFrom::shaft_end ? "shaft end" : "lead end"));
    });
}

Cell labour_task(std::string_view text) {
    const std::string name = fold(text).text();
    return from_word<ShopTask>(name) ? stored(name) : no_word_of<ShopTask>(text);
}

Cell limit_id(std::string_view text) {
    std::vector<std::string> known;
    const Limits own;
    for (const Limit& row : own.rows()) known.emplace_back(row.id);
    if (own.find(text) != nullptr) return stored(std::string(text));
    const std::string near = nearest(text, known);
    return refused("the name of a limit",
                   near.empty() ? "list them with 'endbell rules'" : "did you mean '" + near + "'?");
}

}  // namespace endbell::inline fields::cells
