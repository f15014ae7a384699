// What a part that fits asks for, told by its classes: parts of the same classes ask for the same, and no row is read.
#pragma once
#include <cstdint>
#include <map>
#include <memory>
#include <vector>

#include "engine/index/class_findings.hpp"
#include "engine/index/columns.hpp"
#include "engine/match/match.hpp"

namespace endbell::inline index {

/// Worked out once for all parts of the same classes.
class AlikeParts {
  public:
    /// `by_rule`: what each rule finds of its classes, by registry order; `words`: of all parts.
    AlikeParts(const std::vector<IndexColumn>& columns, std::size_t words,
               std::vector<std::shared_ptr<const RuleFindings>> by_rule);

    /// Null where it asks for an adapter that is not curable.
    std::shared_ptr<const Alike> of(std::uint32_t position, const MoreNames::Curable& curable);

  private:
    /// A rule some of whose classes ask for a change.
    struct AskingRule {
        const ClassChanges* changes;
        const IndexColumn* column;
        bool adapters;            // some class asks for one
        const AskedChange* asks;  // of the part that is looked at; null: for nothing
    };
    /// What parts have in common that are worked out once.
    struct Key {
        std::size_t family = 0;
        std::size_t body =
            0;  // beyond any class where no adapter is asked for: only adapters are made for a body
        std::vector<const AskedChange*> changes;  // of the rules that ask for something, in their order
        friend auto operator<=>(const Key&, const Key&) = default;
    };
    Alike alike(const Part& of_family, const Part& of_body) const;

    const std::vector<IndexColumn>& columns_;
    std::size_t words_;
    std::vector<std::shared_ptr<const RuleFindings>> by_rule_;  // that the rest points into
    std::vector<AskingRule> rules_;                             // that ask for something
    Key key_;                                                   // of the part that is looked at
    std::map<Key, std::shared_ptr<const Alike>> known_;
};

}  // namespace endbell::inline index
