// One column of the index for each set of part fields that some rule looks at. The parts that agree in those
// fields are one class of the column; a rule is asked once a class.
//
// Classes are numbered in the order of their values, and sets are cumulative: set c holds the parts of the classes 0
// to c. The parts of any classes are then the exclusive or of the sets at the edges of their runs, and most verdicts
// run over neighbouring values.
//
// Parts that are alike in what decides most stand together, so that in most stretches a column has few classes, or
// one. A tile holds only the sets that tell parts of its stretch apart; none is read that would hold all or none.
#pragma once
#include <algorithm>
#include <cstdint>
#include <memory>
#include <span>
#include <string_view>
#include <vector>

#include "engine/index/bits.hpp"
#include "engine/index/bodies.hpp"
#include "engine/index/side_file.hpp"
#include "engine/index/tile.hpp"
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
    counts,
    words,
    classes,
    id_starts,
    ids,
    id_ranks,
    assemblies,
    bodies,
    heads,
    tile_starts,
    section_count
};

class IndexColumn {
  public:
    std::size_t classes() const { return classes_; }

    /// Puts the fields of class `c` into an empty part.
    void put(std::size_t c, Part& into) const;

    const TileStart& start(std::size_t stretch) const { return starts_[stretch * stride_]; }
    /// The class of one part.
    std::size_t class_of(std::size_t stretch, std::size_t words, std::size_t part) const;
    /// The same for a position among all parts, which are `words` words.
    std::size_t class_at(std::uint32_t position, std::size_t words) const {
        const std::size_t stretch = position / stretch_parts;
        return class_of(stretch, std::min(stretch_words, words - stretch * stretch_words),
                        position % stretch_parts);
    }
    /// What of it stands in one stretch of `words` words, where it has more than one class there; `bodies`: the
    /// stretch's.
    Tile tile(std::size_t stretch, std::size_t words, std::span<const Word64> bodies) const {
        const TileStart& at = start(stretch);
        return Tile(heads_.subspan(std::min(std::size_t{at.head}, heads_.size())),
                    bodies.subspan(std::min(at.body - bodies_->first(stretch), bodies.size())), words);
    }
    const Bodies& bodies() const { return *bodies_; }
    /// Where its body stands in one stretch: up to the next column's, or the next stretch's first one's.
    BodyWords body(std::size_t stretch) const {
        const std::size_t next = stretch * stride_ + 1;
        return {start(stretch).body, next < starts_.size() ? starts_[next].body : bodies_->words()};
    }

  private:
    friend std::vector<IndexColumn> read_columns(const SideFile& file);
    const std::vector<int>* fields_ = nullptr;
    std::size_t classes_ = 0;
    std::vector<std::string_view> values_;  // of each class, field by field
    std::span<const TileStart> starts_;     // of each stretch, those of all columns between
    std::size_t stride_ = 1;
    std::span<const Word64> heads_;
    std::shared_ptr<const Bodies> bodies_;  // of all columns
};

/// Throws OurBug when the file is not as `build` writes it.
std::vector<IndexColumn> read_columns(const SideFile& file);

}  // namespace endbell::inline index
