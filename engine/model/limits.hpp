// Every tolerance the rules use, as a row with its source. A shop may tighten a row, never loosen it.
// Code names rows by the constants of limit.hpp, which carry the unit; only files and shops name them by text.
#pragma once
#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/word.hpp"

namespace endbell::inline model {

/// How a number came to us. A remembered value is never presented as read.
enum class Basis { read, calculated, from_memory, common_practice };
constexpr auto words_of(Basis) {
    return std::array{Word<Basis>{Basis::read, "read in a third-party copy"},
                      Word<Basis>{Basis::calculated, "calculated"},
                      Word<Basis>{Basis::from_memory, "from memory"},
                      Word<Basis>{Basis::common_practice, "common practice"}};
}

struct Source {
    std::string id;     // "nec-430.248"
    std::string title;  // the document and the table or clause
    Basis basis = Basis::common_practice;
};

/// Which direction is stricter: the safe way, the only one in which a shop may move a row.
enum class Stricter { lower, higher };
constexpr auto words_of(Stricter) {
    return std::array{Word<Stricter>{Stricter::lower, "lower"}, Word<Stricter>{Stricter::higher, "higher"}};
}

/// Where volts are meant to be read: where the utility hands them over, or at the motor, which has less.
enum class VoltagePoint { none, service, utilisation };
constexpr auto words_of(VoltagePoint) {
    return std::array{Word<VoltagePoint>{VoltagePoint::none, "none"},
                      Word<VoltagePoint>{VoltagePoint::service, "service"},
                      Word<VoltagePoint>{VoltagePoint::utilisation, "utilisation"}};
}

/// One of the program's own rows (limit_rows.hpp).
struct LimitRow {
    std::string_view id;  // "shaft.bore_clearance"
    double value = 0;
    std::string_view unit;
    Stricter stricter = Stricter::lower;
    std::string_view bounds;  // the fact it bounds: a job key, a part's column or what is worked out
    VoltagePoint volts_at = VoltagePoint::none;
    std::string_view source;  // id of a Source
    std::string_view meaning;
};

/// A row in force.
struct Limit : LimitRow {
    std::string set_by;  // empty: the program's own row; else who tightened it
};

/// Comparisons at a limit include the limit; this much is the rounding of binary fractions.
inline constexpr double rounding = 1e-9;

/// A row as code names it, its unit aside: the constants of limit.hpp are such.
struct LimitId {
    std::string_view text;
    std::size_t place = 0;
    friend constexpr bool operator==(const LimitId& a, const LimitId& b) { return a.place == b.place; }
};

/// A row whose value is a T (limit.hpp).
template <class T>
class LimitOf;

class Limits {
  public:
    /// The program's own rows.
    Limits();

    /// In the constant's own unit: `limits.value(limit::bore_clearance)` is a Length. Rules ask by the million.
    template <class T>
    T value(const LimitOf<T>& limit) const {
        return limit.of(rows_[limit.place].value);
    }
    const Limit& row(const LimitId& limit) const { return rows_[limit.place]; }
    const std::vector<Limit>& rows() const { return rows_; }

    /// By the text that a catalog or a shop's file writes; nothing where there is no such row.
    const Limit* find(std::string_view id) const;

    enum class Tightening { accepted, unknown_row, looser };
    /// Replaces a row's value by a stricter one; refuses a looser value and changes nothing then.
    Tightening tighten(std::string_view id, double value, std::string set_by);

  private:
    std::vector<Limit> rows_;  // in the order of limit_rows
};

const std::vector<Source>& sources();
/// Throws OurBug when there is no such source.
const Source& source(std::string_view id);

}  // namespace endbell::inline model
