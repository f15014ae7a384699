// How a rule says what it found: a typed value with its origin on each side, one verdict, one reason.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "engine/rules/rule.hpp"

namespace endbell::inline rules {

/// Enumerations become their word, counts become numbers; the rest is a Value as it is.
template <class T>
Value as_value(const T& value) {
    if constexpr (std::is_same_v<T, int>) {
        return static_cast<double>(value);
    } else if constexpr (std::is_enum_v<T> && !std::is_same_v<T, Rotation>) {
        return std::string(word(value));
    } else {
        return value;
    }
}

/// The job's side of a finding.
template <class T>
Datum wanted(const Reading<T>& reading) {
    return reading.value ? Datum{as_value(*reading.value), reading.origin} : Datum{};
}

template <class T>
Datum wanted(const DerivedFact<T>& fact) {
    return fact ? Datum{as_value(*fact), fact.origin} : Datum{};
}

/// The part's side of a finding.
template <class T>
Datum offered(const std::optional<T>& field) {
    return field ? Datum{as_value(*field), Origin::catalog} : Datum{};
}

/// Of no size yet.
Remedy remedy(Cure cure);

/// One finding being worded. The six endings at the bottom are all that a rule can say; each takes the finding away.
class FindingDraft {
  public:
    FindingDraft(std::string_view rule, std::string_view source, Datum wanted = {}, Datum offered = {});

    /// Names the row that decides; `worked_out` is the bound in the units of the two sides (207 V).
    FindingDraft& limit(const Limits& limits, const LimitId& id, Value worked_out);
    /// A bound that the part states of itself: no row, and no value that it runs at.
    FindingDraft& own_limit(Value bound);
    /// A number worked out on the way: a cube-law overload, a recomputed ampacity.
    FindingDraft& computed(Value value);
    FindingDraft& from(std::string_view source);

    Finding fits(Reason reason);
    /// Fits, but must be said.
    Finding caution(Reason reason);
    Finding changes(Reason reason, std::vector<Remedy> remedies, bool caution = false);
    /// Not shown: `asks` are job keys or part columns that would settle it.
    Finding ask(Reason reason, std::vector<std::string> asks);
    Finding fails(Reason reason);
    /// The job says nothing of a field that may be left out: fits with a caution, and names the key.
    Finding not_stated(std::string job_key);

  private:
    Finding finding_;
};

/// For a part of a kind or a job of a sort that the rule does not concern.
Finding not_concerned(std::string_view rule);

}  // namespace endbell::inline rules
