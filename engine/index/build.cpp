#include "engine/index/build.hpp"

#include <algorithm>
#include <future>
#include <limits>
#include <map>
#include <numeric>
#include <span>
#include <tuple>
#include <vector>

#include "engine/base/check.hpp"
#include "engine/base/ids.hpp"
#include "engine/base/text.hpp"
#include "engine/fields/part_fields.hpp"
#include "engine/index/classes.hpp"
#include "engine/index/columns.hpp"
#include "engine/rules/rule.hpp"

namespace endbell::inline index {

namespace {

/// Nearly every job tells these, and most parts fall by them: parts that agree in them stand together.
const std::vector<int>& deciding() {
    static const std::vector<int> fields = [] {
        std::vector<int> made;
        for (const char* column : {"parts.kind", "motors.loads", "motors.phase", "motor_ratings.volts",
                                   "motors.family", "motor_ratings.power_hp", "motor_ratings.speed_rpm"})
            made.push_back(part_field(column));
        return made;
    }();
    return fields;
}

}  // namespace

class IndexDraft::Builder {
  public:
    Builder(const Catalog& catalog, const IdRange& range, const std::function<void()>& look)
        : words_(part_fields().size()), kinds_(deciding()) {
        check(words_.size() <= 64, "the fields that change from part to part are bits of one number");
        for (const std::vector<int>& fields : rule_columns().fields) columns_.emplace_back(fields);
        read_parts(catalog, range, look);
    }

    void append(Builder& later) {
        std::vector<std::vector<Number>> ours;  // by field, of its numbers
        for (std::size_t f = 0; f < words_.size(); ++f) ours.push_back(words_[f].numbers_of(later.words_[f]));
        for (std::size_t c = 0; c < columns_.size(); ++c) columns_[c].append(later.columns_[c], ours);
        kinds_.append(later.kinds_, ours);
        for (const auto& [key, parts] : later.assemblies_) {
            for (const Number came : parts)
                assemblies_[key].push_back(static_cast<Number>(ids_.size() + came));
        }
        for (std::size_t came = 0; came < later.ids_.size(); ++came) ids_.push_back(later.ids_[came]);
    }

    void put_in_order(const LeastPrices& all) {
        std::vector<std::vector<Number>> ranks;
        for (const Numbered& words : words_) ranks.push_back(words.ranks());
        for (Classes& column : columns_) column.put_in_order(ranks);
        kinds_.settle();
        const std::vector<Number> prices = all.of(ids_.size(), [&](std::size_t came) { return ids_[came]; });
        come_.resize(ids_.size());
        std::iota(come_.begin(), come_.end(), Number{0});
        const std::vector<Number> places = places_of_kinds(ranks);
        std::sort(come_.begin(), come_.end(), [&](Number a, Number b) {
            return std::tie(places[a], prices[a], a) < std::tie(places[b], prices[b], b);
        });
        position_.resize(ids_.size());
        for (Number p = 0; p < come_.size(); ++p) position_[come_[p]] = p;
        prices_.reserve(ids_.size());
        for (const Number came : come_) prices_.push_back(prices[came]);
    }

    const std::vector<Number>& prices() const { return prices_; }

    SideFileWriter write(const std::filesystem::path& path, std::string_view stamp) const {
        SideFileWriter file(path, stamp, Section::section_count);
        file.section(std::vector<Number>{static_cast<Number>(ids_.size())});
        write_words(file);
        write_classes(file);
        write_ids(file);
        write_assemblies(file);
        write_tiles(file);
        file.finish();
        return file;
    }

  private:
    void read_parts(const Catalog& catalog, const IdRange& range, const std::function<void()>& look) {
        const std::vector<PartField>& fields = part_fields();
        std::vector<Number> numbers(fields.size(), std::numeric_limits<Number>::max());
        std::string bytes;
        catalog.each_part_to_match(range, [&](const Part& part) {
            if (look) look();
            std::uint64_t changed = 0;
            for (std::size_t f = 0; f < numbers.size(); ++f) {
                bytes.clear();
                fields[f].take(part, bytes);
                const Number number = words_[f].number_of(bytes);
                if (number != numbers[f]) changed |= Classes::bit(f);
                numbers[f] = number;
            }
            for (Classes& column : columns_) column.take(numbers, changed);
            kinds_.take(numbers, changed);
            if (part.motor && part.motor->assembly)
                assemblies_[number_key(*part.motor->assembly)].push_back(static_cast<Number>(ids_.size()));
            ids_.push_back(part.id);
        });
        check(ids_.size() < std::numeric_limits<Number>::max(), "positions are of 32 bits");
    }

    /// Of each part as it came, its place among the parts by what decides most: kind, load, volts and so on.
    std::vector<Number> places_of_kinds(const std::vector<std::vector<Number>>& ranks) const {
        std::vector<Number> order(kinds_.tuples().size());
        std::iota(order.begin(), order.end(), Number{0});
        const auto rank = [&](Number kind, std::size_t f) {
            return ranks[static_cast<std::size_t>(deciding()[f])][kinds_.tuples()[kind][f]];
        };
        std::sort(order.begin(), order.end(), [&](Number a, Number b) {
            for (std::size_t f = 0; f < deciding().size(); ++f) {
                if (rank(a, f) != rank(b, f)) return rank(a, f) < rank(b, f);
            }
            return false;
        });
        std::vector<Number> place(order.size());
        for (Number p = 0; p < order.size(); ++p) place[order[p]] = p;
        std::vector<Number> places;
        places.reserve(ids_.size());
        for (std::size_t came = 0; came < ids_.size(); ++came)
            places.push_back(place[kinds_.of_part()[came]]);
        return places;
    }

    static void number(SideFileWriter& file, std::size_t value) {
        const auto narrow = static_cast<Number>(value);
        file.append(&narrow, sizeof narrow);
    }
    static void text(SideFileWriter& file, const std::string& value) {
        number(file, value.size());
        file.append(value.data(), value.size());
    }
    void write_words(SideFileWriter& file) const {
        file.begin();
        for (const Numbered& words : words_) {
            const std::vector<std::string> all = words.in_order();
            number(file, all.size());
            for (const std::string& word : all) text(file, word);
        }
    }

    void write_classes(SideFileWriter& file) const {
        file.begin();
        for (const Classes& column : columns_) {
            number(file, column.tuples().size());
            for (const std::u32string& tuple : column.tuples()) {
                for (const char32_t code : tuple) number(file, code);
            }
        }
    }

    void write_ids(SideFileWriter& file) const {
        std::vector<Number> starts{0};
        starts.reserve(ids_.size() + 1);
        std::string all;
        for (const Number came : come_) {
            all += ids_[came];
            starts.push_back(static_cast<Number>(all.size()));
        }
        file.section(starts);
        file.begin();
        file.append(all.data(), all.size());
        file.section(come_);  // ids came in their order: as a part came it ranks
    }

    void write_assemblies(SideFileWriter& file) const {
        file.begin();
        for (const auto& [key, parts] : assemblies_) {
            text(file, key);
            number(file, parts.size());
            for (const Number came : parts) number(file, position_[came]);
        }
    }

    /// The tiles of one stretch, by column.
    struct Tiles {
        std::vector<TileStart> starts;  // counted from the stretch's own heads and bodies
        std::vector<Word64> heads, bodies;
    };
    Tiles tiles_of(std::size_t first) const {
        Tiles made;
        const std::size_t end = std::min(ids_.size(), first + stretch_parts);
        std::vector<Number> of_part;
        for (const Classes& column : columns_) {
            column.of_part().copy(std::span(come_).subspan(first, end - first), of_part);
            TileMaker maker(column.tuples().size());
            maker.make(of_part);
            made.starts.push_back({static_cast<std::uint32_t>(made.heads.size()),
                                   static_cast<std::uint32_t>(made.bodies.size()), maker.classes().front(),
                                   maker.classes().back()});
            made.heads.insert(made.heads.end(), maker.head().begin(), maker.head().end());
            made.bodies.insert(made.bodies.end(), maker.body().begin(), maker.body().end());
        }
        return made;
    }

    /// Stretch by stretch: what one job reads of a stretch lies together. Two are made at a time.
    void write_tiles(SideFileWriter& file) const {
        std::vector<TileStart> starts;
        std::vector<Word64> heads;
        std::size_t bodies = 0;
        const auto put = [&](const Tiles& made) {
            check(bodies + made.bodies.size() <= std::numeric_limits<std::uint32_t>::max(),
                  "bodies begin within 32 bits");
            for (TileStart start : made.starts) {
                start.head += static_cast<std::uint32_t>(heads.size());
                start.body += static_cast<std::uint32_t>(bodies);
                starts.push_back(start);
            }
            heads.insert(heads.end(), made.heads.begin(), made.heads.end());
            file.append(made.bodies.data(), made.bodies.size() * sizeof(Word64));
            bodies += made.bodies.size();
        };
        file.begin();
        for (std::size_t first = 0; first < ids_.size(); first += 2 * stretch_parts) {
            const std::size_t next = first + stretch_parts;
            std::future<Tiles> beside;
            if (next < ids_.size())
                beside = std::async(std::launch::async, [this, next] { return tiles_of(next); });
            put(tiles_of(first));
            if (beside.valid()) put(beside.get());
        }
        file.section(heads);
        file.section(starts);
    }

    std::vector<Numbered> words_;   // by field
    std::vector<Classes> columns_;  // by rule_columns()
    Classes kinds_;                 // by deciding()
    Ids ids_;                       // in the order in which parts came
    std::map<std::string, std::vector<Number>> assemblies_;
    std::vector<Number> come_;      // by position: which part, in that order
    std::vector<Number> position_;  // the inverse
    std::vector<Number> prices_;    // by position
};

std::string rules_stamp() {
    std::string all;
    for (const PartField& field : part_fields()) all += std::string(field.column) + " ";
    for (const std::vector<int>& column : rule_columns().fields) {
        for (const int f : column) all += std::to_string(f) + ",";
        all += ";";
    }
    return fingerprint(all);
}

IndexDraft::IndexDraft(const Catalog& catalog, const IdRange& range, const std::function<void()>& look)
    : built_(std::make_unique<Builder>(catalog, range, look)) {}

IndexDraft::IndexDraft(IndexDraft&&) noexcept = default;

IndexDraft::~IndexDraft() = default;

void IndexDraft::append(IndexDraft&& later) {
    built_->append(*later.built_);
    later.built_.reset();
}

void IndexDraft::put_in_order(const LeastPrices& prices) {
    built_->put_in_order(prices);
}

const std::vector<std::uint32_t>& IndexDraft::prices() const {
    return built_->prices();
}

SideFileWriter IndexDraft::write(const std::filesystem::path& path, std::string_view stamp) const {
    return built_->write(path, stamp);
}

}  // namespace endbell::inline index
