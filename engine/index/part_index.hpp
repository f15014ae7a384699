// The index as a matcher: rules are asked once a class, and sets say which parts that concerns.
#pragma once
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/index/columns.hpp"
#include "engine/index/prices.hpp"
#include "engine/index/rule_memory.hpp"
#include "engine/index/sweep.hpp"
#include "engine/match/match.hpp"

namespace endbell::inline index {

class PartIndex : public Matcher {
  public:
    /// Empty where either file is missing, or was made for another stamp: then it is to be built.
    static std::unique_ptr<PartIndex> open(const std::filesystem::path& index, std::string_view stamp);

    /// False where the prices are missing or old: then `Prices::write` them anew.
    bool open_prices(const std::filesystem::path& prices, std::string_view stamp);

    std::size_t parts() const { return parts_; }
    std::string_view id(std::size_t position) const;
    /// By position, for `Prices::write`.
    std::vector<std::uint32_t> in_place(const LeastPrices& prices) const;

    Matched match(const Question& question, const Catalog& catalog, const Keep& keep) const override;

    /// Only how many parts live, and the names of the cheapest of them, whatever their verdict. Not for a job that
    /// names a draft inducer's assembly.
    struct Living {
        std::int64_t count = 0;
        std::vector<Standing> cheapest;
    };
    Living living(const Question& question, std::size_t most) const;

    /// Answers the next job as if it were the first.
    void forget() const { memory_.forget(); }

  private:
    PartIndex() = default;

    struct Asked;  // what the rules say of every class, and the parts that had to be asked by themselves
    class Lineup;
    Asked ask(const Question& question, const Catalog& catalog) const;
    Asked ask_verdicts(const Question& question) const;
    Swept explain(const Asked& asked, const Question& question, const Catalog& catalog, const Keep& keep,
                  MatchReport& report) const;
    std::vector<std::uint32_t> specified(const Question& question) const;
    Standing named(std::uint32_t position, Verdict verdict) const;
    std::vector<Standing> cheapest(const BitSet& set, const Lives& lives, std::size_t most,
                                   Verdict verdict) const;
    bool some_modules(const Lives& lives) const;

    std::optional<SideFile> file_;
    std::optional<Prices> prices_;
    std::vector<IndexColumn> columns_;
    std::size_t parts_ = 0;
    BitSet all_;
    std::span<const std::uint32_t> id_starts_;
    std::span<const std::byte> ids_;
    std::span<const std::uint32_t> ranks_;
    mutable RuleMemory memory_;
};

}  // namespace endbell::inline index
