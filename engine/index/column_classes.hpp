// The classes of one column, and which of them each part belongs to, while an index is made.
#pragma once
#include <cstddef>
#include <cstdint>
#include <string>
#include <unordered_map>
#include <vector>

#include "engine/base/hash.hpp"
#include "engine/index/class_numbers.hpp"
#include "engine/index/value_dictionary.hpp"

namespace endbell::inline index {

/// A class is a tuple of the codes of its fields' values. Classes are numbered as they come, until `put_in_order`.
class ColumnClasses {
  public:
    explicit ColumnClasses(const std::vector<int>& fields) : fields_(&fields) {
        for (const int f : fields) own_ |= bit(static_cast<std::size_t>(f));
    }
    static std::uint64_t bit(std::size_t field) { return std::uint64_t{1} << field; }

    /// `changed`: the fields in which the part differs from the one before; all, for the first.
    void take(const std::vector<Code>& codes, std::uint64_t changed) {
        if ((changed & own_) != 0) take_other(codes);
        ++run_;
    }
    /// Those of the parts that come after these. `ours`: by field, our code for each of the other's.
    void append(ColumnClasses& later, const std::vector<std::vector<Code>>& ours);
    /// All parts have come: needed before `of_part` is read.
    void settle();
    /// The same, and renumbers in the order of values: `ranks` are the fields' own. Once.
    void put_in_order(const std::vector<std::vector<Code>>& ranks);

    const std::vector<std::u32string>& tuples() const { return tuples_; }
    /// By row: in the order in which parts came.
    const ClassNumbers& of_part() const { return of_part_; }

  private:
    struct Hash {
        std::size_t operator()(const std::u32string& key) const {
            return hash_of({reinterpret_cast<const char*>(key.data()), key.size() * sizeof(char32_t)});
        }
    };
    void take_other(const std::vector<Code>& codes);
    Code class_of(const std::u32string& tuple);

    const std::vector<int>* fields_;
    std::uint64_t own_ = 0;  // the bits of `fields_`
    std::u32string key_;
    std::unordered_map<std::u32string, Code, Hash> classes_;
    std::vector<std::u32string> tuples_;
    ClassNumbers of_part_;
    // Neighbours are often alike: the last `run_` parts, of the class `now_`, are not in `of_part_` yet.
    Code now_ = 0;
    std::size_t run_ = 0;
};

}  // namespace endbell::inline index
