#include "engine/index/part_index.hpp"

#include <algorithm>
#include <map>
#include <tuple>

#include "engine/base/ensure.hpp"
#include "engine/base/text.hpp"
#include "engine/index/cheapest_first.hpp"
#include "engine/index/near_misses.hpp"

namespace endbell::inline index {

namespace {

/// Of each job key, the finding sets that ask for it, by index into the list.
using KeySets = std::map<std::string, std::vector<std::size_t>>;

KeySets key_sets(const std::vector<FindingSet>& list) {
    KeySets keys;
    for (std::size_t s = 0; s < list.size(); ++s) {
        for (const std::string& key : list[s].finding->asks) {
            if (!is_part_column(key)) keys[key].push_back(s);
        }
    }
    return keys;
}

/// Most parts first, then rule and reason.
std::vector<Tally> tallies_of(const std::vector<FindingSet>& list, const std::vector<FailCount>& fails) {
    std::vector<Tally> tallies;
    for (std::size_t s = 0; s < list.size(); ++s) {
        if (fails[s].parts == 0) continue;
        tallies.push_back({all_rules()[list[s].rule].id, list[s].finding->reason,
                           static_cast<int>(fails[s].parts), static_cast<int>(fails[s].only),
                           static_cast<int>(fails[s].would_fit)});
    }
    std::sort(tallies.begin(), tallies.end(), [](const Tally& a, const Tally& b) {
        return std::tie(b.parts, a.rule, a.reason) < std::tie(a.parts, b.rule, b.reason);
    });
    return tallies;
}

}  // namespace

std::unique_ptr<PartIndex> PartIndex::open(const std::filesystem::path& path, std::string_view stamp) {
    std::unique_ptr<PartIndex> index(new PartIndex());
    index->file_ = SideFile::open(path, stamp);
    if (!index->file_ || index->file_->sections() != Section::section_count) return nullptr;
    const SideFile& file = *index->file_;
    const std::span<const std::uint32_t> counted = file.numbers<std::uint32_t>(Section::part_count);
    if (counted.empty()) return nullptr;
    index->parts_ = counted.front();
    try {
        index->columns_ = read_columns(file);
    } catch (const OurBug&) {
        return nullptr;  // its first bytes are whole and the rest is not: made again
    }
    index->id_starts_ = file.numbers<std::uint32_t>(Section::id_starts);
    index->ids_ = file.section(Section::ids);
    index->ranks_ = file.numbers<std::uint32_t>(Section::id_ranks);
    if (index->id_starts_.size() != index->parts_ + 1 || index->ranks_.size() != index->parts_)
        return nullptr;
    index->all_.assign(words_for(index->parts_), ~Word64{0});
    if (const std::size_t rest = index->parts_ % 64; rest != 0) index->all_.back() >>= 64 - rest;
    return index;
}

bool PartIndex::open_prices(const std::filesystem::path& path, std::string_view stamp) {
    prices_ = PriceColumn::open(path, stamp, parts_);
    return prices_.has_value();
}

std::string_view PartIndex::id(std::size_t position) const {
    ensure(id_starts_[position] <= id_starts_[position + 1] && id_starts_[position + 1] <= ids_.size(),
           "ids follow each other");
    const auto* text = reinterpret_cast<const char*>(ids_.data());
    return {text + id_starts_[position], id_starts_[position + 1] - id_starts_[position]};
}

std::vector<std::uint32_t> PartIndex::in_place(const PricesById& by_id) const {
    std::vector<std::uint32_t> position_of(parts_);
    for (std::uint32_t p = 0; p < parts_; ++p) {
        ensure(ranks_[p] < parts_, "a rank is a part's");
        position_of[ranks_[p]] = p;
    }
    const std::vector<std::uint32_t> ascending =
        by_id.of(parts_, [&](std::size_t rank) { return id(position_of[rank]); });
    std::vector<std::uint32_t> prices(parts_);
    for (std::size_t rank = 0; rank < parts_; ++rank) prices[position_of[rank]] = ascending[rank];
    return prices;
}

/// The parts of the assembly that the job names: rules may look at everything of these.
std::vector<std::uint32_t> PartIndex::specified(const Query& q) const {
    std::vector<std::uint32_t> positions;
    if (!names_inducer(q)) return positions;
    const std::string wanted = number_key(*q.job.unit.assembly_number);
    for (SideReader assemblies(file_->section(Section::assemblies)); !assemblies.at_end();) {
        const bool named = assemblies.text() == wanted;
        for (std::uint32_t parts = assemblies.number(); parts > 0; --parts) {
            const std::uint32_t position = assemblies.number();
            ensure(position < parts_, "every position is a part");
            if (named) positions.push_back(position);
        }
    }
    return positions;
}

FindingSets PartIndex::findings(const Query& q, const Catalog& catalog) const {
    FindingSets sets;
    std::vector<std::pair<std::uint32_t, Part>> alone;
    for (const std::uint32_t p : specified(q)) {
        alone.emplace_back(p, *catalog.part(id(p)));
    }
    const JobBytes job(q);
    for (std::size_t r = 0; r < all_rules().size(); ++r) {
        const IndexColumn& column = columns_[rule_columns().of_rule[r]];
        sets.add(column, cache_.findings(r, column, q, job));
        for (const auto& [position, part] : alone)
            sets.set_apart(position, class_finding_of(all_rules()[r].judge(q, part)), all_);
    }
    return sets;
}

FindingSets PartIndex::verdicts(const Query& q) const {
    FindingSets sets;
    const JobBytes job(q);
    for (std::size_t r = 0; r < all_rules().size(); ++r) {
        const IndexColumn& column = columns_[rule_columns().of_rule[r]];
        sets.add_verdicts(column, cache_.findings(r, column, q, job));
    }
    return sets;
}

CandidateName PartIndex::standing(std::uint32_t position, Verdict verdict) const {
    const std::uint32_t price = prices_->at(position);
    return {std::string(id(position)), verdict,
            price == unpriced ? std::nullopt : std::optional<std::int64_t>(price), Verdict::fits, nullptr};
}

std::vector<CandidateName> PartIndex::named(const std::vector<std::uint32_t>& positions,
                                            Verdict verdict) const {
    std::vector<CandidateName> names;
    for (const std::uint32_t p : positions) names.push_back(standing(p, verdict));
    return names;
}

/// Whether some block in which a part lives has a module. Parts of one kind stand together, and so do the classes of one
/// kind: the first and the last class of a block tell.
bool PartIndex::some_modules(const OccupiedBlocks& occupied) const {
    static const std::size_t kind_column = column_with("parts.kind");
    const IndexColumn& kinds = columns_[kind_column];
    const auto is_module = [&](std::uint32_t c) {
        Part part;
        kinds.put(c, part);
        return part.kind == PartKind::module;
    };
    for (std::size_t b = 0; b < occupied.size(); ++b) {
        if (!occupied[b]) continue;
        const DirectoryEntry& entry = kinds.entry(b);
        if (is_module(entry.first_class) || is_module(entry.last_class)) return true;
    }
    return false;
}

/// Those first whose findings that are not open ask for no change.
void PartIndex::name_open_parts(const ScanResult& result, std::size_t most, MatchReport& report) const {
    report.not_shown = named(cheapest(result.open, result.occupied, most), Verdict::not_shown);
    const std::size_t left = most - report.not_shown.size();
    for (CandidateName& name :
         named(cheapest(result.open_changing, result.occupied, left), Verdict::not_shown)) {
        report.not_shown.push_back(std::move(name));
        report.not_shown.back().at_best = Verdict::fits_with_changes;
    }
}

Matched PartIndex::match(const Query& q, const Catalog& catalog, const Keep& keep) const {
    const bool verdicts_do = !keep.reasons && specified(q).empty();
    FindingSets sets = verdicts_do ? verdicts(q) : findings(q, catalog);
    MatchReport report;
    report.parts_asked = static_cast<int>(parts_);
    ScanResult result = keep.reasons ? explain(sets, q, catalog, keep, report)
                                     : scan(sets.list(), nullptr, all_.data(), all_.size());
    const auto count = [&](const BitSet& set) { return static_cast<int>(count_bits(set, result.occupied)); };
    report.fitting = count(result.fitting);
    report.changing = count(result.changing);
    report.open = count(result.open) + count(result.open_changing);
    name_open_parts(result, keep.not_shown, report);
    report.modules = some_modules(result.occupied);
    auto more = std::make_unique<CheapestFirst>(*this, q, catalog, sets.take_findings(), std::move(result));
    report.matches = more->next(keep.matches);
    return {std::move(report), std::move(more)};
}

/// Scans, and fills in why parts fall, what keeps others open, and which were nearest.
ScanResult PartIndex::explain(const FindingSets& sets, const Query& q, const Catalog& catalog,
                              const Keep& keep, MatchReport& report) const {
    const KeySets keys = key_sets(sets.list());
    NearMisses misses(keep.near_misses, ranks_);
    Count count{{}, &misses};
    for (const auto& entry : keys) count.keys.push_back(entry.second);
    ScanResult result = scan(sets.list(), &count, all_.data(), all_.size());

    for (const std::uint32_t p : misses.take()) report.near_misses.push_back(candidate(q, catalog, id(p)));
    report.tallies = tallies_of(sets.list(), result.fails);
    std::size_t k = 0;
    for (const auto& entry : keys) {
        if (const std::int64_t parts = result.asked[k++]; parts > 0)
            report.open_keys[entry.first] = static_cast<int>(parts);
    }
    return result;
}

PartIndex::Living PartIndex::living(const Query& q, std::size_t most) const {
    ensure(specified(q).empty(), "specified inducers are asked with their catalog");
    FindingSets sets = verdicts(q);
    sets.keep_failures();
    const ScanResult result = scan(sets.list(), nullptr, all_.data(), all_.size());
    return {count_bits(result.fitting, result.occupied),
            named(cheapest(result.fitting, result.occupied, most), Verdict::not_shown)};
}

}  // namespace endbell::inline index
