// Every tolerance the rules use, as a row with its source. A shop may tighten a row, never loosen it.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace endbell {

/// How a number came to us. A remembered value is never presented as read.
enum class Basis { read, calculated, from_memory, common_practice };
std::string_view word(Basis basis);

struct Source {
    std::string id;     // "nec-430.248"
    std::string title;  // the document and the table or clause
    Basis basis = Basis::common_practice;
};

/// Which direction is stricter.
enum class Stricter { lower, higher };

/// Its texts are the program's own, and live as long as it runs.
struct Limit {
    std::string_view id;  // "voltage.low_fraction"
    double value = 0;
    std::string_view unit;
    Stricter stricter = Stricter::lower;
    std::string_view source;  // id of a Source
    std::string_view meaning;
    std::string set_by;  // empty: the program's own row; else who tightened it
};

/// Comparisons at a limit include the limit; this much is the rounding of binary fractions.
inline constexpr double rounding = 1e-9;

class Limits {
  public:
    /// The program's own rows.
    Limits();

    /// Throws OurBug when there is no such row: rules name only rows that exist (tested).
    const Limit& row(std::string_view id) const;
    double value(std::string_view id) const { return row(id).value; }
    const std::vector<Limit>& rows() const { return rows_; }
    bool has(std::string_view id) const;

    enum class Tightening { accepted, unknown_row, looser };
    /// Replaces a row's value by a stricter one; refuses a looser value and changes nothing then.
    Tightening tighten(std::string_view id, double value, std::string set_by);

  private:
    std::vector<Limit> rows_;
};

const std::vector<Source>& sources();
/// Throws OurBug when there is no such source.
const Source& source(std::string_view id);

}  // namespace endbell
