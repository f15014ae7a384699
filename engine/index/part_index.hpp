// engine/index: answers as match does, without asking every part. This header is the map of the folder.
//
//   class         the parts that agree in the fields a rule names (of one column): the rule is asked of one part a class
//   set           one bit a part. Set c of a column is cumulative: the parts of its classes 0 to c
//   position      of a part in the index: its bit. Parts alike in kind, load, volts and so on stand together, cheap ones first
//   block         8,192 positions in a row: nearly all parts of a block fall by the same rules
//   column block  a column in a block: which classes are there, how many parts of each, the sets that tell them apart
//
// A query goes from left to right (PartIndex::match):
//
//   rules -> findings of classes -> finding sets -> scan, block by block -> four sets and counts -> names
//
//   finding_cache     what a rule found for a job alike, or class_findings: asks it of every class of its column
//   finding_sets      the parts of which a rule finds the same, as class_runs: runs of classes, told by their bounds
//   scan              goes through the blocks; of each
//     block_scan      which finding sets have parts there, by the directory. Where rules end all of it, headers give the
//                     counts, and it is left without a set being read
//     kernel          loops over the words of the sets that are left: which parts live, who fails by what
//     near_misses     of the parts that one finding ends, the nearest
//   cheapest_first    names of the parts that fit, from the four sets; alike_parts: what they ask for, told by their classes
//
// What it is read from, FILE-index and FILE-prices beside the catalog (side_file: sections of bytes, mapped):
//
//   columns           the classes of each column, and the directory: where its column blocks stand
//   column_block      reads one, and writes one; block: its size; bits: words of 64 bits
//   payloads          brings the sets of a block to memory
//   price_column      the least price of every part, in zones; prices_by_id: from the catalog
//
// How it is made: index_rows reads every part, index_draft orders and writes them; index_ahead does it while an import is
// at work; indexed_catalog has it done where it is missing, and caches rows (lookup_cache). top_k: the k best of many.
#pragma once
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/index/columns.hpp"
#include "engine/index/finding_cache.hpp"
#include "engine/index/finding_sets.hpp"
#include "engine/index/price_column.hpp"
#include "engine/index/scan.hpp"
#include "engine/match/match.hpp"

namespace endbell::inline index {

class PartIndex : public Matcher {
  public:
    /// Empty where the file is missing, damaged, or was made for another stamp: then it is to be built.
    static std::unique_ptr<PartIndex> open(const std::filesystem::path& index, std::string_view stamp);

    /// False where the prices are missing or old: then `PriceColumn::write` them anew. True once, before all questions.
    bool open_prices(const std::filesystem::path& prices, std::string_view stamp);

    Matched match(const Query& query, const Catalog& catalog, const Keep& keep) const override;

    /// Only how many parts live, and the names of the cheapest of them, whatever their verdict. Not for a job that
    /// names a draft inducer's assembly.
    struct Living {
        std::int64_t count = 0;
        std::vector<CandidateName> cheapest;
    };
    Living living(const Query& query, std::size_t most) const;

    std::size_t parts() const { return parts_; }
    const std::vector<IndexColumn>& columns() const { return columns_; }
    std::string_view id(std::size_t position) const;
    /// What the index knows of one part: all but whether others are alike to it.
    CandidateName standing(std::uint32_t position, Verdict verdict) const;
    /// Positions of the `most` cheapest parts of a set.
    std::vector<std::uint32_t> cheapest(const BitSet& set, const OccupiedBlocks& occupied,
                                        std::size_t most) const {
        return prices_->cheapest(set, occupied, most, ranks_);
    }
    /// By position, for `PriceColumn::write`.
    std::vector<std::uint32_t> in_place(const PricesById& prices) const;

    /// Answers the next job as if it were the first.
    void forget() const { cache_.forget(); }

  private:
    PartIndex() = default;

    FindingSets findings(const Query& query, const Catalog& catalog) const;
    FindingSets verdicts(const Query& query) const;
    ScanResult explain(const FindingSets& sets, const Query& query, const Catalog& catalog, const Keep& keep,
                       MatchReport& report) const;
    void name_open_parts(const ScanResult& result, std::size_t most, MatchReport& report) const;
    std::vector<std::uint32_t> specified(const Query& query) const;
    std::vector<CandidateName> named(const std::vector<std::uint32_t>& positions, Verdict verdict) const;
    bool some_modules(const OccupiedBlocks& occupied) const;

    std::optional<SideFile> file_;
    std::optional<PriceColumn> prices_;
    std::vector<IndexColumn> columns_;
    std::size_t parts_ = 0;
    BitSet all_;  // every part: in the last word, the bits beyond them are zero
    std::span<const std::uint32_t> id_starts_;
    std::span<const std::byte> ids_;
    std::span<const std::uint32_t> ranks_;
    mutable FindingCache cache_;
};

}  // namespace endbell::inline index
