#include "engine/index/columns.hpp"

#include <algorithm>
#include <optional>

#include "engine/base/ensure.hpp"
#include "engine/fields/part_fields.hpp"
#include "engine/rules/rule.hpp"

namespace endbell::inline index {

namespace {

std::vector<std::vector<std::string_view>> read_dictionaries(const SideFile& file) {
    SideReader stream(file.section(Section::dictionaries));
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
    ensure(best.has_value(), "some rule looks at the field");
    return *best;
}

std::vector<IndexColumn> read_columns(const SideFile& file) {
    const std::vector<std::vector<std::string_view>> dictionaries = read_dictionaries(file);
    const std::size_t parts = file.numbers<std::uint32_t>(Section::part_count)[0];
    const std::size_t blocks = blocks_for(parts);
    const std::span<const DirectoryEntry> directory = file.numbers<DirectoryEntry>(Section::directory);
    SideReader stream(file.section(Section::classes));
    std::vector<IndexColumn> columns(rule_columns().fields.size());
    ensure(directory.size() == columns.size() * blocks, "a column has an entry for each block");
    const auto payloads =
        std::make_shared<const Payloads>(file, Section::payloads, directory, columns.size());
    for (std::size_t i = 0; i < columns.size(); ++i) {
        IndexColumn& column = columns[i];
        column.fields_ = &rule_columns().fields[i];
        column.classes_ = stream.number();
        column.directory_ = directory.subspan(blocks > 0 ? i : 0);
        column.stride_ = columns.size();
        column.headers_ = file.numbers<Word64>(Section::headers);
        column.payloads_ = payloads;
        for (std::size_t c = 0; c < column.classes_; ++c) {
            for (const int field : *column.fields_) {
                const auto& of_field = dictionaries[static_cast<std::size_t>(field)];
                const std::size_t code = stream.number();
                ensure(code < of_field.size(), "a class has known values");
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

std::size_t IndexColumn::class_of(std::size_t block, std::size_t words, std::size_t part) const {
    const DirectoryEntry& at = entry(block);
    const std::size_t c = at.first_class == at.last_class
                              ? at.first_class
                              : column_block(block, words, payloads_->of(block)).class_of(part);
    ensure(c < classes_, "a part is of a class");
    return c;
}

}  // namespace endbell::inline index
