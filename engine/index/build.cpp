#include "engine/index/build.hpp"

#include <algorithm>
#include <future>
#include <limits>
#include <map>
#include <numeric>
#include <tuple>
#include <unordered_map>
#include <vector>

#include "engine/base/check.hpp"
#include "engine/base/ids.hpp"
#include "engine/base/pages.hpp"
#include "engine/base/text.hpp"
#include "engine/index/columns.hpp"
#include "engine/match/part_fields.hpp"
#include "engine/match/rule.hpp"

namespace endbell {

namespace {

using Number = std::uint32_t;

/// Texts numbered as they come; `ranks` gives their places in order.
class Numbered {
  public:
    Number number_of(const std::string& text) {
        if (last_ != nullptr && last_->first == text) return last_->second;  // neighbours are often alike
        last_ = &*numbers_.try_emplace(text, static_cast<Number>(numbers_.size())).first;
        return last_->second;
    }
    std::vector<std::string> in_order() const {
        std::vector<std::string> all;
        for (const auto& entry : numbers_) all.push_back(entry.first);
        std::sort(all.begin(), all.end());
        return all;
    }
    std::vector<Number> ranks() const {
        const std::vector<std::string> all = in_order();
        std::vector<Number> ranks(all.size());
        for (Number rank = 0; rank < all.size(); ++rank) ranks[numbers_.at(all[rank])] = rank;
        return ranks;
    }

  private:
    std::unordered_map<std::string, Number> numbers_;
    const std::pair<const std::string, Number>* last_ = nullptr;
};

/// Numbers by the million that stay where they are while more come.
class Growing {
  public:
    void push_back(std::uint16_t number) {
        if (size_ % block == 0) {
            blocks_.push_back(std::make_unique_for_overwrite<std::uint16_t[]>(block));
            bring_in_to_write(blocks_.back().get(), block * sizeof(std::uint16_t));
        }
        blocks_.back()[size_++ % block] = number;
    }
    std::uint16_t& operator[](std::size_t i) { return blocks_[i / block][i % block]; }
    std::uint16_t operator[](std::size_t i) const { return blocks_[i / block][i % block]; }
    std::size_t size() const { return size_; }

  private:
    static constexpr std::size_t block = 128 * 1024;
    std::vector<std::unique_ptr<std::uint16_t[]>> blocks_;
    std::size_t size_ = 0;
};

/// The class of each part: nearly always one of few, so the upper half is kept from the first that needs it.
class ClassNumbers {
  public:
    void push_back(Number number) {
        if (number > low) {
            while (high_.size() < low_.size()) high_.push_back(0);
        }
        if (number > low || high_.size() > 0) high_.push_back(static_cast<std::uint16_t>(number >> 16));
        low_.push_back(static_cast<std::uint16_t>(number & low));
    }
    Number operator[](std::size_t i) const {
        return low_[i] | (high_.size() > 0 ? Number{high_[i]} << 16 : 0);
    }
    /// REQUIRES: none greater than the greatest that was pushed.
    void set(std::size_t i, Number number) {
        low_[i] = static_cast<std::uint16_t>(number & low);
        if (high_.size() > 0) high_[i] = static_cast<std::uint16_t>(number >> 16);
    }
    std::size_t size() const { return low_.size(); }

  private:
    static constexpr Number low = 0xFFFF;
    Growing low_, high_;
};

/// The classes of one column as they come: tuples of field numbers.
class Classes {
  public:
    explicit Classes(const std::vector<int>& fields) : fields_(&fields) {
        for (const int f : fields) own_ |= bit(static_cast<std::size_t>(f));
    }
    static std::uint64_t bit(std::size_t field) { return std::uint64_t{1} << field; }

    /// `changed`: the fields in which the part differs from the one before; all, for the first.
    void take(const std::vector<Number>& numbers, std::uint64_t changed) {
        if ((changed & own_) == 0) {
            of_part_.push_back(of_part_[of_part_.size() - 1]);
            return;
        }
        key_.clear();
        for (const int f : *fields_)
            key_.push_back(static_cast<char32_t>(numbers[static_cast<std::size_t>(f)]));
        const auto [entry, fresh] = classes_.try_emplace(key_, static_cast<Number>(tuples_.size()));
        if (fresh) tuples_.push_back(key_);
        of_part_.push_back(entry->second);
    }

    /// Renumbers in the order of values: `ranks` are the fields' own.
    void put_in_order(const std::vector<std::vector<Number>>& ranks) {
        for (std::u32string& tuple : tuples_) {
            for (std::size_t f = 0; f < fields_->size(); ++f)
                tuple[f] = static_cast<char32_t>(ranks[static_cast<std::size_t>((*fields_)[f])][tuple[f]]);
        }
        std::vector<Number> order(tuples_.size());
        std::iota(order.begin(), order.end(), Number{0});
        std::sort(order.begin(), order.end(), [&](Number a, Number b) { return tuples_[a] < tuples_[b]; });
        std::vector<Number> places(order.size());
        for (Number place = 0; place < order.size(); ++place) places[order[place]] = place;
        std::vector<std::u32string> sorted(tuples_.size());
        for (Number c = 0; c < places.size(); ++c) sorted[places[c]] = std::move(tuples_[c]);
        tuples_ = std::move(sorted);
        for (std::size_t came = 0; came < of_part_.size(); ++came) of_part_.set(came, places[of_part_[came]]);
    }

    const std::vector<std::u32string>& tuples() const { return tuples_; }
    const ClassNumbers& of_part() const { return of_part_; }

  private:
    struct Hash {
        std::size_t operator()(const std::u32string& key) const {
            std::uint64_t h = 1469598103934665603ull;  // FNV-1a, a public hash
            for (const char32_t c : key) h = (h ^ c) * 1099511628211ull;
            return h;
        }
    };
    const std::vector<int>* fields_;
    std::uint64_t own_ = 0;  // the bits of `fields_`
    std::u32string key_;
    std::unordered_map<std::u32string, Number, Hash> classes_;
    std::vector<std::u32string> tuples_;
    ClassNumbers of_part_;  // by the order in which parts came
};

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
    Builder(const Catalog& catalog, const std::function<void()>& look)
        : words_(part_fields().size()), kinds_(deciding()) {
        check(words_.size() <= 64, "the fields that change from part to part are bits of one number");
        for (const std::vector<int>& fields : rule_columns().fields) columns_.emplace_back(fields);
        read_parts(catalog, look);
    }

    void put_in_order(const LeastPrices& all) {
        std::vector<std::vector<Number>> ranks;
        for (const Numbered& words : words_) ranks.push_back(words.ranks());
        for (Classes& column : columns_) column.put_in_order(ranks);
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
    void read_parts(const Catalog& catalog, const std::function<void()>& look) {
        const std::vector<PartField>& fields = part_fields();
        std::vector<Number> numbers(fields.size(), std::numeric_limits<Number>::max());
        std::string bytes;
        catalog.each_part_to_match([&](const Part& part) {
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
            of_part.clear();
            for (std::size_t p = first; p < end; ++p) of_part.push_back(column.of_part()[come_[p]]);
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

IndexDraft::IndexDraft(const Catalog& catalog, const std::function<void()>& look)
    : built_(std::make_unique<Builder>(catalog, look)) {}

IndexDraft::~IndexDraft() = default;

void IndexDraft::put_in_order(const LeastPrices& prices) {
    built_->put_in_order(prices);
}

const std::vector<std::uint32_t>& IndexDraft::prices() const {
    return built_->prices();
}

SideFileWriter IndexDraft::write(const std::filesystem::path& path, std::string_view stamp) const {
    return built_->write(path, stamp);
}

}  // namespace endbell
