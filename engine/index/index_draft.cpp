#include "engine/index/index_draft.hpp"

#include <algorithm>
#include <future>
#include <limits>
#include <numeric>
#include <span>
#include <tuple>

#include "engine/base/ensure.hpp"
#include "engine/base/hash.hpp"
#include "engine/fields/part_fields.hpp"
#include "engine/index/columns.hpp"

namespace endbell::inline index {

std::string rules_stamp() {
    std::string all;
    for (const PartField& field : part_fields()) all += std::string(field.column) + " ";
    for (const std::vector<int>& column : rule_columns().fields) {
        for (const int f : column) all += std::to_string(f) + ",";
        all += ";";
    }
    return fingerprint(all);
}

IndexDraft::IndexDraft(const Catalog& catalog, const IdRange& range, const std::function<void()>& look)
    : rows_(catalog, range, look) {}

void IndexDraft::append(IndexDraft&& later) {
    rows_.append(later.rows_);
}

void IndexDraft::put_in_order(const PricesById& by_id) {
    rows_.finish();
    const std::size_t parts = rows_.size();
    ensure(parts < std::numeric_limits<Code>::max(), "positions are of 32 bits");
    const std::vector<Code> prices = by_id.of(parts, [&](std::size_t row) { return rows_.ids()[row]; });
    const std::vector<Code> places = rows_.cluster_places();
    row_at_.resize(parts);
    std::iota(row_at_.begin(), row_at_.end(), Code{0});
    std::sort(row_at_.begin(), row_at_.end(), [&](Code a, Code b) {
        return std::tie(places[a], prices[a], a) < std::tie(places[b], prices[b], b);
    });
    position_of_.resize(parts);
    for (Code p = 0; p < parts; ++p) position_of_[row_at_[p]] = p;
    prices_.reserve(parts);
    for (const Code row : row_at_) prices_.push_back(prices[row]);
}

SideFileWriter IndexDraft::write(const std::filesystem::path& path, std::string_view stamp) const {
    SideFileWriter file(path, stamp, Section::section_count);
    file.section(std::vector<Code>{static_cast<Code>(rows_.size())});
    write_dictionaries(file);
    write_classes(file);
    write_ids(file);
    write_assemblies(file);
    write_column_blocks(file);
    file.finish();
    return file;
}

namespace {

void number(SideFileWriter& file, std::size_t value) {
    const auto narrow = static_cast<Code>(value);
    file.append(&narrow, sizeof narrow);
}
void text(SideFileWriter& file, const std::string& value) {
    number(file, value.size());
    file.append(value.data(), value.size());
}

}  // namespace

void IndexDraft::write_dictionaries(SideFileWriter& file) const {
    file.begin();
    for (const ValueDictionary& dictionary : rows_.dictionaries()) {
        const std::vector<std::string> all = dictionary.in_order();
        number(file, all.size());
        for (const std::string& value : all) text(file, value);
    }
}

void IndexDraft::write_classes(SideFileWriter& file) const {
    file.begin();
    for (const ColumnClasses& column : rows_.columns()) {
        number(file, column.tuples().size());
        for (const std::u32string& tuple : column.tuples()) {
            for (const char32_t code : tuple) number(file, code);
        }
    }
}

void IndexDraft::write_ids(SideFileWriter& file) const {
    std::vector<Code> starts{0};
    starts.reserve(rows_.ids().size() + 1);
    std::string all;
    for (const Code row : row_at_) {
        all += rows_.ids()[row];
        starts.push_back(static_cast<Code>(all.size()));
    }
    file.section(starts);
    file.begin();
    file.append(all.data(), all.size());
    file.section(row_at_);  // rows are in the order of the ids: a part's row is its id's rank
}

void IndexDraft::write_assemblies(SideFileWriter& file) const {
    file.begin();
    for (const auto& [key, rows] : rows_.assemblies()) {
        text(file, key);
        number(file, rows.size());
        for (const Code row : rows) number(file, position_of_[row]);
    }
}

struct IndexDraft::ColumnBlocks {
    std::vector<DirectoryEntry> directory;  // counted from the block's own headers and payloads
    std::vector<Word64> headers, payloads;
};

/// Those of one block, by column; `first`: its first position.
IndexDraft::ColumnBlocks IndexDraft::column_blocks(std::size_t first) const {
    ColumnBlocks made;
    const std::size_t end = std::min(rows_.size(), first + block_parts);
    std::vector<Code> of_part;
    for (const ColumnClasses& column : rows_.columns()) {
        column.of_part().copy(std::span(row_at_).subspan(first, end - first), of_part);
        ColumnBlockBuilder builder(column.tuples().size());
        builder.make(of_part);
        made.directory.push_back({static_cast<std::uint32_t>(made.headers.size()),
                                  static_cast<std::uint32_t>(made.payloads.size()), builder.classes().front(),
                                  builder.classes().back()});
        made.headers.insert(made.headers.end(), builder.header().begin(), builder.header().end());
        made.payloads.insert(made.payloads.end(), builder.payload().begin(), builder.payload().end());
    }
    return made;
}

/// Block by block: what one job reads of a block lies together. Two are made at a time.
void IndexDraft::write_column_blocks(SideFileWriter& file) const {
    std::vector<DirectoryEntry> directory;
    std::vector<Word64> headers;
    std::size_t payloads = 0;
    const auto put = [&](const ColumnBlocks& made) {
        ensure(payloads + made.payloads.size() <= std::numeric_limits<std::uint32_t>::max(),
               "payloads begin within 32 bits");
        for (DirectoryEntry entry : made.directory) {
            entry.header += static_cast<std::uint32_t>(headers.size());
            entry.payload += static_cast<std::uint32_t>(payloads);
            directory.push_back(entry);
        }
        headers.insert(headers.end(), made.headers.begin(), made.headers.end());
        file.append(made.payloads.data(), made.payloads.size() * sizeof(Word64));
        payloads += made.payloads.size();
    };
    file.begin();
    for (std::size_t first = 0; first < rows_.size(); first += 2 * block_parts) {
        const std::size_t next = first + block_parts;
        std::future<ColumnBlocks> beside;
        if (next < rows_.size())
            beside = std::async(std::launch::async, [this, next] { return column_blocks(next); });
        put(column_blocks(first));
        if (beside.valid()) put(beside.get());
    }
    file.section(headers);
    file.section(directory);
}

}  // namespace endbell::inline index
