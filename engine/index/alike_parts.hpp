// What is known of a part that fits from its classes alone: what the rules asked for when they were asked of them.
#pragma once
#include <cstdint>
#include <map>
#include <memory>
#include <vector>

#include "engine/index/columns.hpp"
#include "engine/index/rule_memory.hpp"
#include "engine/match/match.hpp"

namespace endbell::inline index {

/// Worked out once for all parts of the same classes.
class AlikeParts {
  public:
    /// `known`: what each rule said of its classes, by registry order; `words`: of all parts.
    AlikeParts(const std::vector<IndexColumn>& columns, std::size_t words,
               std::vector<std::shared_ptr<const Sayings>> known);

    /// Null where it asks for an adapter that is not curable.
    std::shared_ptr<const Alike> of(std::uint32_t position, const MoreNames::Curable& curable);

  private:
    struct Asking {
        const ClassChanges* changes;
        const IndexColumn* column;
        bool adapters;            // some class asks for one
        const AskedChange* asks;  // of the part that is looked at
    };
    struct Asked {
        std::size_t family = 0, body = 0;         // classes
        std::vector<const AskedChange*> changes;  // of the rules that ask for something, in their order
        friend auto operator<=>(const Asked&, const Asked&) = default;
    };
    Alike alike(const Part& of_family, const Part& of_body) const;

    const std::vector<IndexColumn>& columns_;
    std::size_t words_;
    std::vector<std::shared_ptr<const Sayings>> sayings_;  // that the rest points into
    std::vector<Asking> rules_;                            // that ask for something
    Asked asked_;                                          // of the part that is looked at
    std::map<Asked, std::shared_ptr<const Alike>> known_;
};

}  // namespace endbell::inline index
