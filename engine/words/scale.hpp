// One reader for every quantity that is "[label] number [unit]". A field differs only by its Scale.
#pragma once
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "engine/units/quantity.hpp"
#include "engine/words/fold.hpp"
#include "engine/words/number.hpp"
#include "engine/words/read.hpp"

namespace endbell::inline words {

/// What nought means in a field: on a plate it stands for "nobody wrote it", on a meter it is a reading.
enum class Nought { missing, a_value };

template <class D>
struct Scale {
    std::string_view expected;                                // "an amount such as '5 MFD'"
    Unit<D> bare;                                             // what a number without a unit means
    std::vector<std::pair<std::string_view, Unit<D>>> units;  // spellings without blanks and dots
    std::vector<std::string_view> labels = {};                // words that may stand around it
    double most = 1e12;                                       // in the bare unit; beyond it is unreadable
    Nought nought = Nought::missing;
    bool may_be_negative = false;  // a minus sign means something
    bool thousands = false;        // the field has figures of a thousand and more
};

namespace words_detail {

template <class D>
const Unit<D>* unit_named(const Scale<D>& scale, std::string_view name) {
    for (const auto& [text, unit] : scale.units) {
        if (text == name) return &unit;
    }
    return nullptr;
}

template <class D>
bool is_label(const Scale<D>& scale, std::string_view name) {
    for (std::string_view label : scale.labels) {
        if (label == name) return true;
    }
    return false;
}

/// The unit in front of or behind the number, with labels taken off; nothing when a word is left over.
template <class D>
const Unit<D>* unit_of(const Scale<D>& scale, const Measure& m) {
    if (!m.before.empty() && !is_label(scale, m.before)) {
        return m.after.empty() ? unit_named(scale, m.before) : nullptr;
    }
    if (m.after.empty() || is_label(scale, m.after)) return &scale.bare;
    if (const Unit<D>* unit = unit_named(scale, m.after)) return unit;
    for (std::string_view label : scale.labels) {
        if (m.after.size() <= label.size() || !m.after.ends_with(label)) continue;
        return unit_named(scale, std::string_view(m.after).substr(0, m.after.size() - label.size()));
    }
    return nullptr;
}

}  // namespace words_detail

template <class T>
Read<T> ask_spreadsheet(const Folded& words) {
    return ask<T>(words, "a spreadsheet turned this cell into a date or an exponent: what did it say before?",
                  {});
}

template <class T>
Read<T> ask_comma(const Folded& words, const NumberText& number) {
    return ask<T>(words, "is the comma a decimal mark or a thousands mark?",
                  {shortest(number.value / 1000), shortest(number.value)});
}

template <class D>
Read<Quantity<D>> read_quantity(const Folded& words, const Scale<D>& scale) {
    using Q = Quantity<D>;
    if (is_missing(words)) return not_written<Q>();
    if (is_spreadsheet_damage(words)) return ask_spreadsheet<Q>(words);
    const auto m = measure(words.text());
    if (!m || (m->negative && !scale.may_be_negative)) return unreadable<Q>(words, scale.expected);
    const Unit<D>* unit = words_detail::unit_of(scale, *m);
    if (!unit) return unreadable<Q>(words, scale.expected);
    if (m->number.comma_unclear && !scale.thousands) return ask_comma<Q>(words, m->number);
    if (m->number.dashed_mixed && scale.thousands) return unreadable<Q>(words, scale.expected);
    const Q value = (*unit)(m->negative ? -m->number.value : m->number.value);
    if (m->number.value == 0 && scale.nought == Nought::missing) return not_written<Q>();
    if (m->number.value > scale.most * scale.bare.to_base / unit->to_base)
        return unreadable<Q>(words, scale.expected);
    return read_as<Q>(words, value);
}

}  // namespace endbell::inline words
