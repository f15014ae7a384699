// engine/find: any number finds its parts: ids, part numbers, old numbers, fragments, misread ones, words of descriptions,
// and what took the place of what is no longer sold. Names parts and judges none.
#pragma once
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/catalog/stored_catalog.hpp"
#include "engine/find/name_index.hpp"
#include "engine/model/word.hpp"

namespace endbell::inline find {

/// How near a name is to the text, the nearest first.
enum class FoundBy { number, look_alike, one_off, fragment, description };
constexpr auto words_of(FoundBy) {
    return std::array{
        Word<FoundBy>{FoundBy::number, "number"}, Word<FoundBy>{FoundBy::look_alike, "look-alike"},
        Word<FoundBy>{FoundBy::one_off, "one character off"}, Word<FoundBy>{FoundBy::fragment, "fragment"},
        Word<FoundBy>{FoundBy::description, "description"}};
}

/// What to ask where more is found than is named.
enum class Narrowing { none, maker, characters, words };
constexpr auto words_of(Narrowing) {
    return std::array{Word<Narrowing>{Narrowing::none, "none"}, Word<Narrowing>{Narrowing::maker, "maker"},
                      Word<Narrowing>{Narrowing::characters, "characters"},
                      Word<Narrowing>{Narrowing::words, "words"}};
}

struct FoundPart {
    FoundBy by = FoundBy::number;
    std::string number;  // as the catalog has it
    std::string part_id;
    std::optional<Part> part;                // none: a cross reference names it, and the catalog has it not
    std::vector<CrossReference> references;  // that name it for this number
};

/// What took the place of a number, step by step.
struct FoundChain {
    std::string from;
    Succession succession;
};

struct FindAnswer {
    std::string text;
    std::vector<FoundPart> parts;  // the first ten, each once
    std::size_t numbers = 0;       // that were found in all; a part may have several
    Narrowing narrowing = Narrowing::none;
    std::vector<FoundChain> chains;

    bool is_known() const { return numbers != 0 || !chains.empty(); }
};

/// So many parts are named at most.
constexpr std::size_t most_named = 10;

/// Has letters or digits to look for.
bool can_be_found(std::string_view text);

/// REQUIRES: `names` is of `catalog`.
FindAnswer find_parts(std::string_view text, const NameIndex& names, const StoredCatalog& catalog);

}  // namespace endbell::inline find
