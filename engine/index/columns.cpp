#include "engine/index/columns.hpp"

#include <algorithm>
#include <optional>

#include "engine/base/check.hpp"
#include "engine/fields/part_fields.hpp"
#include "engine/rules/rule.hpp"

namespace endbell::inline index {

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
        for (const Rule& rule : all_rules()) {
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

std::size_t column_with(std::string_view field) {
    const int wanted = part_field(field);
    const auto& all = rule_columns().fields;
    std::optional<std::size_t> best;
    for (std::size_t c = 0; c < all.size(); ++c) {
        const bool holds = std::find(all[c].begin(), all[c].end(), wanted) != all[c].end();
        if (holds && (!best || all[c].size() < all[*best].size())) best = c;
    }
    check(best.has_value(), "some rule looks at the field");
    return *best;
}

std::vector<IndexColumn> read_columns(const SideFile& file) {
    const std::vector<std::vector<std::string_view>> words = read_words(file);
    const std::size_t parts = file.numbers<std::uint32_t>(Section::counts)[0];
    const std::size_t stretches = stretches_for(parts);
    const std::span<const TileStart> starts = file.numbers<TileStart>(Section::tile_starts);
    SideReader stream(file.section(Section::classes));
    std::vector<IndexColumn> columns(rule_columns().fields.size());
    check(starts.size() == columns.size() * stretches, "a column has a tile in each stretch");
    const auto bodies = std::make_shared<const Bodies>(file, Section::bodies, starts, columns.size());
    for (std::size_t i = 0; i < columns.size(); ++i) {
        IndexColumn& column = columns[i];
        column.fields_ = &rule_columns().fields[i];
        column.classes_ = stream.number();
        column.starts_ = starts.subspan(stretches > 0 ? i : 0);
        column.stride_ = columns.size();
        column.heads_ = file.numbers<Word64>(Section::heads);
        column.bodies_ = bodies;
        for (std::size_t c = 0; c < column.classes_; ++c) {
            for (const int field : *column.fields_) {
                const auto& of_field = words[static_cast<std::size_t>(field)];
                const std::size_t code = stream.number();
                check(code < of_field.size(), "a class has known values");
                column.values_.push_back(of_field[code]);
            }
        }
    }
    return columns;
}

void IndexColumn::put(std::size_t c, Part& into) const {
    for (std::size_t f = 0; f < fields_->size(); ++f)
        part_fields()[static_cast<std::size_t>((*fields_)[f])].put(values_[c * fields_->size() + f], into);
}

std::size_t IndexColumn::class_of(std::size_t stretch, std::size_t words, std::size_t part) const {
    const TileStart& there = start(stretch);
    const std::size_t c = there.least == there.greatest
                              ? there.least
                              : tile(stretch, words, bodies_->of(stretch)).class_of(part);
    check(c < classes_, "a part is of a class");
    return c;
}

}  // namespace endbell::inline index
