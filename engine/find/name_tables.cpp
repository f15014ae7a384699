#include "engine/find/name_tables.hpp"

#include <algorithm>
#include <limits>
#include <map>
#include <unordered_map>

#include "engine/base/ensure.hpp"
#include "engine/base/text.hpp"
#include "engine/find/name_index.hpp"

namespace endbell::inline find {

namespace {

void take_names(const StoredCatalog& catalog, NameTables& to) {
    catalog.each_number([&](std::string_view key, std::string_view number, std::string_view part_id) {
        to.starts.push_back(static_cast<std::uint32_t>(to.texts.size()));
        for (const std::string_view text : {key, number, part_id}) (to.texts += text) += '\0';
    });
    ensure(to.texts.size() < std::numeric_limits<std::uint32_t>::max(), "names begin within 32 bits");
}

/// Calls `visit` with each piece of each name, once a name, in the order of names.
template <class Visit>
void each_piece(const NameTables& of, Visit visit) {
    std::vector<std::size_t> seen;
    for (std::uint32_t n = 0; n < of.starts.size(); ++n) {
        const std::string_view key(of.texts.data() + of.starts[n]);
        seen.clear();
        for (std::size_t i = 0; i + 3 <= key.size(); ++i) {
            const std::size_t piece = piece_of(key.data() + i);
            if (std::find(seen.begin(), seen.end(), piece) != seen.end()) continue;
            seen.push_back(piece);
            visit(piece, n);
        }
    }
}

/// Counts first, so that each list is written where it will stay.
void divide_into_pieces(NameTables& to) {
    to.piece_starts.assign(pieces + 1, 0);
    each_piece(to, [&](std::size_t piece, std::uint32_t) { ++to.piece_starts[piece + 1]; });
    for (std::size_t p = 0; p < pieces; ++p) to.piece_starts[p + 1] += to.piece_starts[p];
    to.piece_names.resize(to.piece_starts.back());
    std::vector<std::uint32_t> next(to.piece_starts.begin(), to.piece_starts.end() - 1);
    each_piece(to, [&](std::size_t piece, std::uint32_t n) { to.piece_names[next[piece]++] = n; });
}

void take_words(const StoredCatalog& catalog, NameTables& to) {
    std::unordered_map<std::string_view, std::uint32_t> first_names;
    for (std::uint32_t n = 0; n < to.starts.size(); ++n) {
        const char* const key = to.texts.data() + to.starts[n];
        const std::string_view number(key + std::string_view(key).size() + 1);
        first_names.emplace(std::string_view(number.data() + number.size() + 1), n);
    }
    std::map<std::string, std::vector<std::uint32_t>, std::less<>> names;
    catalog.each_description([&](std::string_view part_id, std::string_view description) {
        const auto name = first_names.find(part_id);
        if (name == first_names.end()) return;
        for (const std::string& word : words_to_find(description)) names[word].push_back(name->second);
    });
    for (auto& [word, list] : names) {
        std::sort(list.begin(), list.end());
        list.erase(std::unique(list.begin(), list.end()), list.end());
        to.words_at.push_back(static_cast<std::uint32_t>(to.words.size()));
        (to.words += word) += '\0';
        to.word_starts.push_back(static_cast<std::uint32_t>(to.word_names.size()));
        to.word_names.insert(to.word_names.end(), list.begin(), list.end());
    }
    to.word_starts.push_back(static_cast<std::uint32_t>(to.word_names.size()));
}

}  // namespace

std::vector<std::string> words_to_find(std::string_view text) {
    std::vector<std::string> words;
    std::string word;
    const auto end = [&] {
        if (word.size() >= 2) words.push_back(word);
        word.clear();
    };
    for (const char c : lower(text)) {
        if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))
            word += c;
        else
            end();
    }
    end();
    return words;
}

NameTables tables_of_names(const StoredCatalog& catalog) {
    NameTables tables;
    take_names(catalog, tables);
    divide_into_pieces(tables);
    take_words(catalog, tables);
    return tables;
}

}  // namespace endbell::inline find
