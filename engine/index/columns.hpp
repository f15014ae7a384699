// One column of the index for each set of part fields that some rule looks at. The parts that agree in those
// fields are one class of the column; a rule is asked once a class.
//
// Classes are numbered in the order of their values, and a column's sets are cumulative: set c holds the parts of
// the classes 0 to c. The parts of any classes are then the exclusive or of the sets at the edges of their runs,
// and most verdicts run over neighbouring values. A column of many classes keeps a set every few classes only,
// and its parts sorted by class between them.
//
// Parts that are alike in what decides most stand together, so that in most stretches of a column there are few
// classes, or one: its zones say which, and a set need not be read where they show that it holds all or none.
#pragma once
#include <cstdint>
#include <span>
#include <string_view>
#include <vector>

#include "engine/index/bits.hpp"
#include "engine/index/side_file.hpp"
#include "engine/index/stretch.hpp"
#include "engine/model/part.hpp"

namespace endbell {

/// The sets of part fields that the rules look at, each once.
struct RuleColumns {
    std::vector<std::vector<int>> fields;  // indices into part_fields(), the kind first
    std::vector<std::size_t> of_rule;      // index into `fields`, by registry order
};
const RuleColumns& rule_columns();

/// Sections of the index file.
enum Section : std::size_t {
    counts,
    words,
    classes,
    id_starts,
    ids,
    id_ranks,
    assemblies,
    sorted,
    zones,
    sets,
    section_count
};

/// No column keeps more sets than this.
inline constexpr std::size_t sets_at_most = 256;

class IndexColumn {
  public:
    std::size_t classes() const { return classes_; }

    /// Puts the fields of class `c` into an empty part.
    void put(std::size_t c, Part& into) const;

    /// The least and the greatest class of each stretch.
    std::span<const Zone> zones() const { return zones_; }

    /// The set of the classes 0 to c. One that is not kept is made in `scratch`, which must outlive its use.
    const Word64* up_to(std::size_t c, std::vector<BitSet>& scratch) const;

  private:
    friend std::vector<IndexColumn> read_columns(const SideFile& file);
    const std::vector<int>* fields_ = nullptr;
    std::size_t classes_ = 0;
    std::size_t spacing_ = 1;  // a set is kept at every class c with (c + 1) % spacing == 0, and at the last
    std::size_t words_ = 0;
    std::vector<std::string_view> values_;  // of each class, field by field
    std::span<const Zone> zones_;
    const Word64* sets_ = nullptr;           // words_ a set
    std::span<const std::uint32_t> starts_;  // of each class in parts_; only where spacing_ > 1
    std::span<const std::uint32_t> parts_;   // positions, sorted by class
};

/// Throws OurBug when the file is not as `build` writes it.
std::vector<IndexColumn> read_columns(const SideFile& file);

}  // namespace endbell
