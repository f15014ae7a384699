#include "engine/index/index_rows.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

#include "engine/base/ensure.hpp"
#include "engine/base/text.hpp"
#include "engine/fields/part_fields.hpp"
#include "engine/index/columns.hpp"

namespace endbell::inline index {

const std::vector<int>& cluster_key() {
    static const std::vector<int> fields = [] {
        std::vector<int> made;
        for (const char* column : {"parts.kind", "motors.loads", "motors.phase", "motor_ratings.volts",
                                   "motors.family", "motor_ratings.power_hp", "motor_ratings.speed_rpm"})
            made.push_back(part_field(column));
        return made;
    }();
    return fields;
}

IndexRows::IndexRows(const Catalog& catalog, const IdRange& range, const std::function<void()>& look)
    : dictionaries_(part_fields().size()), clusters_(cluster_key()) {
    ensure(dictionaries_.size() <= 64, "the fields that change from part to part are bits of one number");
    for (const std::vector<int>& fields : rule_columns().fields) columns_.emplace_back(fields);
    read(catalog, range, look);
}

void IndexRows::read(const Catalog& catalog, const IdRange& range, const std::function<void()>& look) {
    const std::vector<PartField>& fields = part_fields();
    // By field, of the row before. Before the first: a code that no value has, so that all fields differ.
    std::vector<Code> codes(fields.size(), std::numeric_limits<Code>::max());
    std::string value;
    catalog.each_part_to_match(range, [&](const Part& part) {
        if (look) look();
        std::uint64_t changed = 0;
        for (std::size_t f = 0; f < codes.size(); ++f) {
            value.clear();
            fields[f].take(part, value);
            const Code code = dictionaries_[f].code_of(value);
            if (code != codes[f]) changed |= ColumnClasses::bit(f);
            codes[f] = code;
        }
        for (ColumnClasses& column : columns_) column.take(codes, changed);
        clusters_.take(codes, changed);
        if (part.motor && part.motor->assembly)
            assemblies_[number_key(*part.motor->assembly)].push_back(static_cast<Code>(ids_.size()));
        ids_.push_back(part.id);
    });
}

void IndexRows::append(IndexRows& later) {
    std::vector<std::vector<Code>> ours;  // by field, for each code of the other one
    for (std::size_t f = 0; f < dictionaries_.size(); ++f)
        ours.push_back(dictionaries_[f].codes_of(later.dictionaries_[f]));
    for (std::size_t c = 0; c < columns_.size(); ++c) columns_[c].append(later.columns_[c], ours);
    clusters_.append(later.clusters_, ours);
    for (const auto& [key, rows] : later.assemblies_) {
        for (const Code row : rows) assemblies_[key].push_back(static_cast<Code>(ids_.size() + row));
    }
    for (std::size_t row = 0; row < later.ids_.size(); ++row) ids_.push_back(later.ids_[row]);
}

void IndexRows::finish() {
    for (const ValueDictionary& dictionary : dictionaries_) ranks_.push_back(dictionary.ranks());
    for (ColumnClasses& column : columns_) column.put_in_order(ranks_);
    clusters_.settle();
}

std::vector<Code> IndexRows::cluster_places() const {
    std::vector<Code> order(clusters_.tuples().size());
    std::iota(order.begin(), order.end(), Code{0});
    const auto rank = [&](Code cluster, std::size_t f) {
        return ranks_[static_cast<std::size_t>(cluster_key()[f])][clusters_.tuples()[cluster][f]];
    };
    std::sort(order.begin(), order.end(), [&](Code a, Code b) {
        for (std::size_t f = 0; f < cluster_key().size(); ++f) {
            if (rank(a, f) != rank(b, f)) return rank(a, f) < rank(b, f);
        }
        return false;
    });
    std::vector<Code> place(order.size());
    for (Code p = 0; p < order.size(); ++p) place[order[p]] = p;
    std::vector<Code> places;
    places.reserve(ids_.size());
    for (std::size_t row = 0; row < ids_.size(); ++row) places.push_back(place[clusters_.of_part()[row]]);
    return places;
}

}  // namespace endbell::inline index
