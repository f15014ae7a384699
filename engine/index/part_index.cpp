#include "engine/index/part_index.hpp"

#include <algorithm>
#include <list>
#include <map>
#include <numeric>

#include "engine/base/check.hpp"
#include "engine/base/text.hpp"
#include "engine/fields/part_fields.hpp"
#include "engine/index/alike_parts.hpp"
#include "engine/index/near_misses.hpp"
#include "engine/rules/answer.hpp"

namespace endbell::inline index {

namespace {

bool names_inducer(const Question& q) {
    return q.job.unit.assembly_number && q.job.unit.load.said() == Load::draft_inducer;
}

}  // namespace

struct PartIndex::Asked {
    std::vector<Said> list;                             // in registry order
    std::vector<std::shared_ptr<const Sayings>> known;  // that the list points into
    std::list<Saying> alone;                            // of single parts
    std::vector<BitSet> made;                           // sets of single parts

    /// Moves one part out of its class: it was asked by itself.
    void set_apart(std::size_t first, std::size_t rule, std::size_t position, Saying own, const BitSet& all);
};

void PartIndex::Asked::set_apart(std::size_t first, std::size_t rule, std::size_t position, Saying own,
                                 const BitSet& all) {
    made.emplace_back(all.size());
    add_bit(made.back().data(), position);
    const Word64* only = made.back().data();
    bool placed = own.verdict == Verdict::fits;
    for (std::size_t s = first; s < list.size(); ++s) {
        const bool is_in = holds(list[s].edges, position, all.data(), all.size());
        const bool belongs = list[s].saying->same_as(own);
        if (is_in != belongs) list[s].edges.others.push_back(only);
        placed = placed || belongs;
    }
    if (placed) return;
    alone.push_back(std::move(own));
    list.push_back({rule, &alone.back(), alone.back().verdict, {nullptr, {}, {only}}});
}

std::unique_ptr<PartIndex> PartIndex::open(const std::filesystem::path& path, std::string_view stamp) {
    std::unique_ptr<PartIndex> index(new PartIndex());
    index->file_ = SideFile::open(path, stamp);
    if (!index->file_ || index->file_->sections() != Section::section_count) return nullptr;
    const SideFile& file = *index->file_;
    const std::span<const std::uint32_t> counted = file.numbers<std::uint32_t>(Section::counts);
    if (counted.empty()) return nullptr;
    index->parts_ = counted.front();
    try {
        index->columns_ = read_columns(file);
    } catch (const OurBug&) {
        return nullptr;  // its head is whole and the rest is not: made again
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
    prices_ = Prices::open(path, stamp, parts_);
    return prices_.has_value();
}

std::string_view PartIndex::id(std::size_t position) const {
    check(id_starts_[position] <= id_starts_[position + 1] && id_starts_[position + 1] <= ids_.size(),
          "ids follow each other");
    const auto* text = reinterpret_cast<const char*>(ids_.data());
    return {text + id_starts_[position], id_starts_[position + 1] - id_starts_[position]};
}

std::vector<std::uint32_t> PartIndex::in_place(const LeastPrices& least) const {
    std::vector<std::uint32_t> by_id(parts_);
    for (std::uint32_t p = 0; p < parts_; ++p) by_id[ranks_[p]] = p;
    const std::vector<std::uint32_t> ascending =
        least.of(parts_, [&](std::size_t rank) { return id(by_id[rank]); });
    std::vector<std::uint32_t> prices(parts_);
    for (std::size_t rank = 0; rank < parts_; ++rank) prices[by_id[rank]] = ascending[rank];
    return prices;
}

/// The parts of the assembly that the job names: rules may look at everything of these.
std::vector<std::uint32_t> PartIndex::specified(const Question& q) const {
    std::vector<std::uint32_t> positions;
    if (!names_inducer(q)) return positions;
    const std::string wanted = number_key(*q.job.unit.assembly_number);
    for (SideReader assemblies(file_->section(Section::assemblies)); !assemblies.at_end();) {
        const bool named = assemblies.text() == wanted;
        for (std::uint32_t parts = assemblies.number(); parts > 0; --parts) {
            const std::uint32_t position = assemblies.number();
            check(position < parts_, "every position is a part");
            if (named) positions.push_back(position);
        }
    }
    return positions;
}

PartIndex::Asked PartIndex::ask(const Question& q, const Catalog& catalog) const {
    Asked asked;
    std::vector<std::pair<std::uint32_t, Part>> alone;
    for (const std::uint32_t p : specified(q)) {
        alone.emplace_back(p, *catalog.part(id(p)));
    }
    const JobBytes job(q);
    for (std::size_t r = 0; r < all_rules().size(); ++r) {
        const IndexColumn& column = columns_[rule_columns().of_rule[r]];
        asked.known.push_back(memory_.sayings(r, column, q, job));
        const std::size_t first = asked.list.size();
        for (const Saying& saying : asked.known.back()->list)
            asked.list.push_back({r, &saying, saying.verdict, {&column, saying.edges, {}}});
        for (const auto& [position, part] : alone)
            asked.set_apart(first, r, position, saying_of(all_rules()[r].check(q, part)), all_);
    }
    return asked;
}

/// Only the verdicts: all sayings of a rule with the same one are taken together.
PartIndex::Asked PartIndex::ask_verdicts(const Question& q) const {
    Asked asked;
    asked.list.reserve(2 * all_rules().size());
    asked.known.reserve(all_rules().size());
    const JobBytes job(q);
    for (std::size_t r = 0; r < all_rules().size(); ++r) {
        const IndexColumn& column = columns_[rule_columns().of_rule[r]];
        asked.known.push_back(memory_.sayings(r, column, q, job));
        const Sayings& known = *asked.known.back();
        const auto add = [&](Verdict verdict, const std::vector<std::uint32_t>& classes) {
            if (!classes.empty()) asked.list.push_back({r, nullptr, verdict, {&column, classes, {}}});
        };
        add(Verdict::does_not_fit, known.fail_edges);
        add(Verdict::not_shown, known.open_edges);
        add(Verdict::fits_with_changes, known.change_edges);
    }
    return asked;
}

Standing PartIndex::named(std::uint32_t position, Verdict verdict) const {
    const std::uint32_t price = prices_->at(position);
    return {std::string(id(position)), verdict,
            price == unpriced ? std::nullopt : std::optional<std::int64_t>(price), Verdict::fits, nullptr};
}

std::vector<Standing> PartIndex::cheapest(const BitSet& set, const Lives& lives, std::size_t most,
                                          Verdict verdict) const {
    std::vector<Standing> names;
    for (const std::uint32_t p : prices_->cheapest(set, lives, most, ranks_))
        names.push_back(named(p, verdict));
    return names;
}

/// The names of all that fit, taken out of their sets one after the other.
class PartIndex::Lineup : public MoreNames {
  public:
    Lineup(const PartIndex& index, const Question& q, const Catalog& catalog,
           std::vector<std::shared_ptr<const Sayings>> known, Swept swept)
        : index_(index),
          question_(q),
          catalog_(catalog),
          alike_(index.columns_, index.all_.size(), std::move(known)),
          lives_(std::move(swept.lives)),
          fitting_{std::move(swept.fitting), {}},
          changing_{std::move(swept.changing), {}} {}

    using MoreNames::next;
    std::vector<Standing> next(std::size_t most, const Curable& curable) override {
        std::vector<Standing> names;
        take(names, fitting_, most, Verdict::fits, curable);
        take(names, changing_, most, Verdict::fits_with_changes, curable);
        return names;
    }

  private:
    struct Set {
        BitSet parts;
        std::vector<std::uint32_t> next;  // taken out of `parts`: the cheapest last
    };

    void take(std::vector<Standing>& to, Set& from, std::size_t most, Verdict verdict,
              const Curable& curable) {
        while (to.size() < most && (!from.next.empty() || look_out(from, most))) {
            const std::uint32_t position = from.next.back();
            from.next.pop_back();
            if (std::shared_ptr<const Alike> known = alike(position, curable)) {
                to.push_back(index_.named(position, verdict));
                to.back().alike = std::move(known);
            }
        }
    }

    /// Takes more at once than are asked for: each time, all of the set is gone through.
    bool look_out(Set& set, std::size_t most) const {
        constexpr std::size_t at_once = 8;
        set.next = index_.prices_->cheapest(set.parts, lives_, at_once * most, index_.ranks_);
        std::reverse(set.next.begin(), set.next.end());
        for (const std::uint32_t p : set.next) remove_bit(set.parts.data(), p);
        return !set.next.empty();
    }

    std::shared_ptr<const Alike> alike(std::uint32_t position, const Curable& curable) {
        if (!names_inducer(question_)) return alike_.of(position, curable);
        // A specified inducer is judged by more than its classes.
        auto own =
            std::make_shared<const Alike>(alike_of(candidate(question_, catalog_, index_.id(position))));
        return all_curable(own->adapters, curable) ? own : nullptr;
    }

    const PartIndex& index_;
    const Question question_;
    const Catalog& catalog_;
    AlikeParts alike_;
    const Lives lives_;
    Set fitting_, changing_;
};

/// Parts of one kind stand together, and so do the classes of one kind.
bool PartIndex::some_modules(const Lives& lives) const {
    static const std::size_t kind_column = column_with("parts.kind");
    const IndexColumn& kinds = columns_[kind_column];
    const auto is_module = [&](std::uint32_t c) {
        Part part;
        kinds.put(c, part);
        return part.kind == PartKind::module;
    };
    for (std::size_t s = 0; s < lives.size(); ++s) {
        if (!lives[s]) continue;
        const TileStart& start = kinds.start(s);
        if (is_module(start.least) || is_module(start.greatest)) return true;
    }
    return false;
}

Matched PartIndex::match(const Question& q, const Catalog& catalog, const Keep& keep) const {
    const bool brief = !keep.reasons && specified(q).empty();
    Asked asked = brief ? ask_verdicts(q) : ask(q, catalog);
    MatchReport report;
    report.parts_asked = static_cast<int>(parts_);
    Swept swept = keep.reasons ? explain(asked, q, catalog, keep, report)
                               : sweep(asked.list, nullptr, all_.data(), all_.size());
    const auto count = [&](const BitSet& set) { return static_cast<int>(count_bits(set, swept.lives)); };
    report.fitting = count(swept.fitting);
    report.changing = count(swept.changing);
    report.open = count(swept.open) + count(swept.open_changing);
    report.not_shown = cheapest(swept.open, swept.lives, keep.not_shown, Verdict::not_shown);
    for (Standing& name : cheapest(swept.open_changing, swept.lives, keep.not_shown - report.not_shown.size(),
                                   Verdict::not_shown)) {
        report.not_shown.push_back(std::move(name));
        report.not_shown.back().at_best = Verdict::fits_with_changes;
    }
    report.modules = some_modules(swept.lives);
    auto more = std::make_unique<Lineup>(*this, q, catalog, std::move(asked.known), std::move(swept));
    report.shown = more->next(keep.shown);
    return {std::move(report), std::move(more)};
}

/// Sweeps, and fills in why parts fall, what keeps others open, and which were nearest.
Swept PartIndex::explain(const Asked& asked, const Question& q, const Catalog& catalog, const Keep& keep,
                         MatchReport& report) const {
    std::map<std::string, std::vector<std::size_t>> keys;
    for (std::size_t s = 0; s < asked.list.size(); ++s) {
        for (const std::string& key : asked.list[s].saying->asks) {
            if (!is_part_column(key)) keys[key].push_back(s);
        }
    }
    NearMisses misses(keep.near_misses, ranks_);
    Count count{{}, &misses};
    for (const auto& entry : keys) count.keys.push_back(entry.second);
    Swept swept = sweep(asked.list, &count, all_.data(), all_.size());

    for (const std::uint32_t p : misses.take()) report.near_misses.push_back(candidate(q, catalog, id(p)));
    std::map<std::pair<std::string_view, Reason>, Tally> tallies;
    for (std::size_t s = 0; s < asked.list.size(); ++s) {
        const FailCount& fail = swept.fails[s];
        if (fail.parts == 0) continue;
        const std::string_view rule = all_rules()[asked.list[s].rule].id;
        tallies[{rule, asked.list[s].saying->reason}] = {
            rule, asked.list[s].saying->reason, static_cast<int>(fail.parts), static_cast<int>(fail.only),
            static_cast<int>(fail.would_fit)};
    }
    for (const auto& entry : tallies) report.tallies.push_back(entry.second);
    std::stable_sort(report.tallies.begin(), report.tallies.end(),
                     [](const Tally& a, const Tally& b) { return a.parts > b.parts; });
    std::size_t k = 0;
    for (const auto& entry : keys) {
        if (const std::int64_t parts = swept.asked[k++]; parts > 0)
            report.open_fields[entry.first] = static_cast<int>(parts);
    }
    return swept;
}

PartIndex::Living PartIndex::living(const Question& q, std::size_t most) const {
    check(specified(q).empty(), "specified inducers are asked with their catalog");
    Asked asked = ask_verdicts(q);
    std::erase_if(asked.list, [](const Said& said) { return said.verdict != Verdict::does_not_fit; });
    const Swept swept = sweep(asked.list, nullptr, all_.data(), all_.size());
    return {count_bits(swept.fitting, swept.lives),
            cheapest(swept.fitting, swept.lives, most, Verdict::not_shown)};
}

}  // namespace endbell::inline index
