#include "engine/index/columns.hpp"

#include <algorithm>

#include "engine/base/check.hpp"
#include "engine/match/part_fields.hpp"
#include "engine/match/rule.hpp"

namespace endbell {

namespace {

std::vector<std::vector<std::string_view>> read_words(const SideFile& file) {
    SideReader stream(file.section(Section::words));
    std::vector<std::vector<std::string_view>> words(part_fields().size());
    for (auto& of_field : words) {
        for (std::uint32_t left = stream.number(); left > 0; --left) of_field.push_back(stream.text());
    }
    return words;
}

}  // namespace

const RuleColumns& rule_columns() {
    static const RuleColumns all = [] {
        RuleColumns made;
        for (const Rule& rule : rules()) {
            std::vector<int> fields{part_field("parts.kind")};
            for (const std::string_view column : rule.part_columns) fields.push_back(part_field(column));
            const auto known = std::find(made.fields.begin(), made.fields.end(), fields);
            made.of_rule.push_back(static_cast<std::size_t>(known - made.fields.begin()));
            if (known == made.fields.end()) made.fields.push_back(std::move(fields));
        }
        return made;
    }();
    return all;
}

std::vector<IndexColumn> read_columns(const SideFile& file) {
    const std::vector<std::vector<std::string_view>> words = read_words(file);
    const std::size_t parts = file.numbers<std::uint32_t>(Section::counts)[0];
    const std::span<const std::uint32_t> sorted = file.numbers<std::uint32_t>(Section::sorted);
    const std::span<const Word64> sets = file.numbers<Word64>(Section::sets);
    const std::span<const Zone> zones = file.numbers<Zone>(Section::zones);
    SideReader stream(file.section(Section::classes));
    std::vector<IndexColumn> columns(rule_columns().fields.size());
    check(zones.size() == columns.size() * stretches_for(parts), "a column has all its zones");
    for (std::size_t i = 0; i < columns.size(); ++i) {
        IndexColumn& column = columns[i];
        column.fields_ = &rule_columns().fields[i];
        column.classes_ = stream.number();
        column.spacing_ = stream.number();
        column.words_ = words_for(parts);
        column.zones_ = zones.subspan(i * stretches_for(parts), stretches_for(parts));
        const std::size_t first_set = stream.number();
        const std::size_t first_sorted = stream.number();
        check(column.spacing_ > 0, "sets are kept every so many classes");
        const std::size_t kept = (column.classes_ + column.spacing_ - 1) / column.spacing_;
        check((first_set + kept) * column.words_ <= sets.size(), "a column has all its sets");
        column.sets_ = sets.data() + first_set * column.words_;
        if (column.spacing_ > 1) {
            check(first_sorted + column.classes_ + 1 + parts <= sorted.size(), "a column has all its parts");
            column.starts_ = sorted.subspan(first_sorted, column.classes_ + 1);
            column.parts_ = sorted.subspan(first_sorted + column.classes_ + 1, parts);
        }
        for (std::size_t v = 0; v < column.classes_ * column.fields_->size(); ++v) {
            const auto& of_field =
                words[static_cast<std::size_t>((*column.fields_)[v % column.fields_->size()])];
            const std::size_t code = stream.number();
            check(code < of_field.size(), "a class has known values");
            column.values_.push_back(of_field[code]);
        }
    }
    return columns;
}

void IndexColumn::put(std::size_t c, Part& into) const {
    for (std::size_t f = 0; f < fields_->size(); ++f)
        part_fields()[static_cast<std::size_t>((*fields_)[f])].put(values_[c * fields_->size() + f], into);
}

const Word64* IndexColumn::up_to(std::size_t c, std::vector<BitSet>& scratch) const {
    const std::size_t set = c / spacing_;
    const std::size_t top =
        std::min((set + 1) * spacing_, classes_) - 1;  // the class at which that set is kept
    const Word64* kept = sets_ + set * words_;
    if (top == c) return kept;
    check(starts_[c + 1] <= starts_[top + 1] && starts_[top + 1] <= parts_.size(),
          "classes follow each other");
    scratch.emplace_back(kept, kept + words_);
    BitSet& made = scratch.back();
    for (std::size_t p = starts_[c + 1]; p < starts_[top + 1]; ++p) {
        const std::size_t position = parts_[p];
        check(position / 64 < words_, "every position is a part");
        made[position / 64] &= ~(Word64{1} << (position % 64));
    }
    return made.data();
}

}  // namespace endbell
