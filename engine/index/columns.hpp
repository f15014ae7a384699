// A column of the index: the classes into which parts fall by the fields that some rule looks at, and where its column
// blocks stand. Parts that agree in those fields are one class of the column; a rule is asked once a class.
//
// Classes are numbered in the order of their values, and sets are cumulative (a bitmap index that is range encoded): set c
// holds the parts of the classes 0 to c. The parts of any runs of classes are then the exclusive or of the sets at the
// bounds of the runs, and most verdicts run over neighbouring values.
//
// Parts that agree in what decides most stand together, so that in most blocks a column has few classes, or one. A column
// block holds only the sets that tell parts of its block apart; none is read that would hold all or none.
#pragma once
#include <algorithm>
#include <cstdint>
#include <memory>
#include <span>
#include <string_view>
#include <vector>

#include "engine/index/bits.hpp"
#include "engine/index/column_block.hpp"
#include "engine/index/payloads.hpp"
#include "engine/index/side_file.hpp"
#include "engine/model/part.hpp"

namespace endbell::inline index {

/// The sets of part fields that the rules look at, each once.
struct RuleColumns {
    std::vector<std::vector<int>> fields;  // indices into part_fields(), the kind first
    std::vector<std::size_t> of_rule;      // index into `fields`, by registry order
};
const RuleColumns& rule_columns();
/// Index of the column that holds this field and the fewest others.
std::size_t column_with(std::string_view field);

/// Sections of the index file.
enum Section : std::size_t {
    part_count,
    dictionaries,  // of each field, its values in order
    classes,       // of each column, its classes: values as indices into the dictionaries
    id_starts,     // of each position, where its id begins; one more for the end of the last
    ids,
    id_ranks,    // of each position, its place in the order of the ids
    assemblies,  // draft inducers' assembly numbers, each with the positions of its parts
    payloads,    // of the column blocks,
    headers,     // and apart from them their headers: of most blocks no more is read
    directory,   // DirectoryEntry of each column block
    section_count
};

class IndexColumn {
  public:
    std::size_t classes() const { return classes_; }

    /// Puts the fields of class `c` into an empty part.
    void put(std::size_t c, Part& into) const;

    const DirectoryEntry& entry(std::size_t block) const { return directory_[block * stride_]; }
    /// The class of one part.
    std::size_t class_of(std::size_t block, std::size_t words, std::size_t part) const;
    /// The same for a position among all parts, which are `words` words.
    std::size_t class_at(std::uint32_t position, std::size_t words) const {
        const std::size_t block = position / block_parts;
        return class_of(block, std::min(block_words, words - block * block_words), position % block_parts);
    }
    /// Its column block in a block of `words` words. REQUIRES: the column has more than one class there. `payloads`: the
    /// block's.
    ColumnBlock column_block(std::size_t block, std::size_t words, std::span<const Word64> payloads) const {
        const DirectoryEntry& at = entry(block);
        return ColumnBlock(headers_.subspan(std::min(std::size_t{at.header}, headers_.size())),
                           payloads.subspan(std::min(at.payload - payloads_->first(block), payloads.size())),
                           words);
    }
    const Payloads& payloads() const { return *payloads_; }
    /// Where its payload stands: it ends where that of the next column begins, or of the next block's first one.
    PayloadWords payload(std::size_t block) const {
        const std::size_t next = block * stride_ + 1;
        return {entry(block).payload,
                next < directory_.size() ? directory_[next].payload : payloads_->words()};
    }

  private:
    friend std::vector<IndexColumn> read_columns(const SideFile& file);
    const std::vector<int>* fields_ = nullptr;
    std::size_t classes_ = 0;
    std::vector<std::string_view> values_;       // of each class, field by field
    std::span<const DirectoryEntry> directory_;  // from its own first entry on: every `stride_`-th is its own
    std::size_t stride_ = 1;                     // how many columns there are
    std::span<const Word64> headers_;
    std::shared_ptr<const Payloads> payloads_;  // of all columns
};

/// Throws OurBug when the file is not as IndexDraft writes it.
std::vector<IndexColumn> read_columns(const SideFile& file);

}  // namespace endbell::inline index
