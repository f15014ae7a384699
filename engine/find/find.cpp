#include "engine/find/find.hpp"

#include <algorithm>
#include <set>
#include <tuple>

#include "engine/base/text.hpp"
#include "engine/catalog/numbers.hpp"

namespace endbell::inline find {

namespace {

constexpr std::size_t least_fragment = 3;  // shorter ones begin a number
constexpr std::size_t least_one_off = 5;   // a shorter number is one off from too many to mean any

class Lookup {
  public:
    Lookup(std::string_view text, const NameIndex& names, const StoredCatalog& catalog)
        : names_(names), catalog_(catalog), key_(number_key(text)), sight_(sight_key(text)) {
        answer_.text = text;
    }

    FindAnswer answer() {
        if (!key_.empty()) {
            take_same();
            const bool known = !answer_.parts.empty() && answer_.parts.front().by == FoundBy::number;
            // A misread that is another number is the dear mistake: those near it are named as well.
            if (sight_.size() >= least_one_off) take_one_off();
            take_fragments();
            if (!known) take_described();
            const bool not_looked_near = sight_.size() >= least_fragment && sight_.size() < least_one_off;
            if (answer_.numbers == 0 && not_looked_near) take_one_off();
        }
        for (FoundPart& found : answer_.parts) look_up(found);
        follow();
        return std::move(answer_);
    }

  private:
    /// One more name; its part is named unless it was, or ten are.
    void take(std::uint32_t at, FoundBy by, Narrowing ask) {
        if (!taken_.insert(at).second) return;
        ++answer_.numbers;
        const Name name = names_.name(at);
        if (named_.count(std::string(name.part_id)) != 0) return;
        if (answer_.parts.size() == most_named) {
            if (answer_.narrowing == Narrowing::none) answer_.narrowing = ask;
            return;
        }
        named_.emplace(name.part_id);
        answer_.parts.push_back({by, std::string(name.number), std::string(name.part_id), {}, {}});
    }

    void take_same() {
        const NameRange same = names_.exactly(sight_);
        for (const bool exact : {true, false}) {
            for (std::uint32_t at = same.begin; at != same.end; ++at) {
                if ((number_key(names_.name(at).number) == key_) == exact)
                    take(at, exact ? FoundBy::number : FoundBy::look_alike, Narrowing::maker);
            }
        }
    }

    /// What differs by one character as it is written comes before what also looks alike elsewhere.
    void take_one_off() {
        std::vector<std::tuple<int, std::uint32_t>> near;
        for (const std::uint32_t at : names_.one_off(sight_))
            near.emplace_back(edit_distance(key_, number_key(names_.name(at).number)), at);
        std::sort(near.begin(), near.end());
        for (const auto& [distance, at] : near) take(at, FoundBy::one_off, Narrowing::characters);
    }

    void take_fragments() {
        const NameRange begun = names_.beginning_with(sight_);
        take_many(
            begun.end - begun.begin,
            [&](std::size_t i) { return begun.begin + static_cast<std::uint32_t>(i); }, FoundBy::fragment,
            Narrowing::characters);
        if (sight_.size() < least_fragment) return;
        NameList inside = names_.holding(sight_);
        std::erase_if(inside, [&](std::uint32_t at) { return at >= begun.begin && at < begun.end; });
        take_many(
            inside.size(), [&](std::size_t i) { return inside[i]; }, FoundBy::fragment,
            Narrowing::characters);
    }

    void take_described() {
        const NameList list = names_.described_by(words_to_find(answer_.text));
        take_many(
            list.size(), [&](std::size_t i) { return list[i]; }, FoundBy::description, Narrowing::words);
    }

    /// The first of a long list one by one; of the rest only how many they are.
    template <class At>
    void take_many(std::size_t count, At at, FoundBy by, Narrowing ask) {
        constexpr std::size_t one_by_one = 1000;
        for (std::size_t i = 0; i < std::min(count, one_by_one); ++i) take(at(i), by, ask);
        if (count <= one_by_one) return;
        answer_.numbers += count - one_by_one;
        if (answer_.narrowing == Narrowing::none) answer_.narrowing = ask;
    }

    void look_up(FoundPart& found) const {
        found.part = catalog_.part(found.part_id);
        for (CrossReference& each : catalog_.references(found.number)) {
            if (each.part_id == found.part_id) found.references.push_back(std::move(each));
        }
    }

    /// A number may be known by a chain alone: what took its place was replaced in turn.
    void follow() {
        std::set<std::string> followed;
        const auto from = [&](const std::string& number) {
            if (!followed.insert(number_key(number)).second) return;
            Succession succession = catalog_.succession(number);
            if (succession.steps.empty()) return;
            for (const SuccessionStep& step : succession.steps) followed.insert(number_key(step.from));
            answer_.chains.push_back({number, std::move(succession)});
        };
        if (answer_.parts.empty() && !key_.empty()) from(answer_.text);
        for (const FoundPart& found : answer_.parts) from(found.number);
    }

    const NameIndex& names_;
    const StoredCatalog& catalog_;
    const std::string key_, sight_;
    FindAnswer answer_;
    std::set<std::uint32_t> taken_;
    std::set<std::string> named_;
};

}  // namespace

bool can_be_found(std::string_view text) {
    return !number_key(text).empty();
}

FindAnswer find_parts(std::string_view text, const NameIndex& names, const StoredCatalog& catalog) {
    return Lookup(text, names, catalog).answer();
}

}  // namespace endbell::inline find
