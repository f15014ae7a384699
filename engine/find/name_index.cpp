#include "engine/find/name_index.hpp"

#include <algorithm>
#include <optional>

#include "engine/base/problem.hpp"
#include "engine/find/name_tables.hpp"
#include "engine/index/side_file.hpp"

namespace endbell::inline find {

/// The tables wherever they lie.
struct NameIndex::Tables {
    const char* texts = nullptr;
    std::span<const std::uint32_t> starts, piece_starts, piece_names;
    const char* words = nullptr;
    std::span<const std::uint32_t> words_at, word_starts, word_names;
};

struct NameIndex::Held {
    std::optional<SideFile> file;  // else `made`
    NameTables made;
    Tables at;
};

namespace {

constexpr std::size_t sections = 8;
constexpr std::size_t least_beginning = 4;  // shorter words of a description are typed whole

/// "names 1": counts up with the layout and with what is laid out.
std::string stamp_of(const StoredCatalog& catalog) {
    return "names 1 " + catalog.digest_of({"parts", "cross_references"});
}

/// Not needed for an answer, only for a quick one: where it cannot be written it is left out.
void write(const NameTables& tables, const std::filesystem::path& path, const std::string& stamp) {
    try {
        SideFileWriter file(path, stamp, sections);
        const auto text = [&](const std::string& bytes) {
            file.begin();
            file.append(bytes.data(), bytes.size());
        };
        text(tables.texts);
        file.section(tables.starts);
        file.section(tables.piece_starts);
        file.section(tables.piece_names);
        text(tables.words);
        file.section(tables.words_at);
        file.section(tables.word_starts);
        file.section(tables.word_names);
        file.finish();
        file.put_in_place();
    } catch (const BadData&) {
        return;
    }
}

/// Keeps of an ascending list what another has too. From one to the next in strides that double: either may be long.
void keep_common(NameList& list, std::span<const std::uint32_t> other) {
    std::size_t at = 0;
    std::erase_if(list, [&](std::uint32_t n) {
        std::size_t stride = 1;
        while (at + stride < other.size() && other[at + stride] < n) stride *= 2;
        const auto first = other.begin() + static_cast<std::ptrdiff_t>(at);
        const auto last =
            other.begin() + static_cast<std::ptrdiff_t>(std::min(at + stride + 1, other.size()));
        at = static_cast<std::size_t>(std::lower_bound(first, last, n) - other.begin());
        return at == other.size() || other[at] != n;
    });
}

void put_in_order(NameList& list) {
    std::sort(list.begin(), list.end());
    list.erase(std::unique(list.begin(), list.end()), list.end());
}

}  // namespace

NameIndex::NameIndex(const std::filesystem::path& file, const StoredCatalog& catalog) {
    auto held = std::make_unique<Held>();
    const std::filesystem::path path = file.string() + "-names";
    const std::string stamp = stamp_of(catalog);
    held->file = SideFile::open(path, stamp);
    Tables& at = held->at;
    if (held->file && held->file->sections() == sections) {
        const SideFile& side = *held->file;
        const auto text = [&](std::size_t s) {
            return reinterpret_cast<const char*>(side.section(s).data());
        };
        const auto list = [&](std::size_t s) { return side.numbers<std::uint32_t>(s); };
        at = {text(0), list(1), list(2), list(3), text(4), list(5), list(6), list(7)};
    } else {
        held->made = tables_of_names(catalog);
        const NameTables& m = held->made;
        write(m, path, stamp);
        at = {m.texts.data(), m.starts,   m.piece_starts, m.piece_names,
              m.words.data(), m.words_at, m.word_starts,  m.word_names};
    }
    held_ = std::move(held);
}

NameIndex::~NameIndex() = default;

Name NameIndex::name(std::uint32_t at) const {
    const std::string_view key(held_->at.texts + held_->at.starts[at]);
    const std::string_view number(key.data() + key.size() + 1);
    return {key, number, std::string_view(number.data() + number.size() + 1)};
}

/// Of a range, the names whose keys begin with `start`.
NameRange NameIndex::narrowed(NameRange range, std::string_view start) const {
    const Tables& t = held_->at;
    const auto beginning_of = [&](std::uint32_t from) {
        return std::string_view(t.texts + from).substr(0, start.size());
    };
    const auto first = t.starts.begin() + range.begin;
    const auto last = t.starts.begin() + range.end;
    const auto begin = std::lower_bound(first, last, start, [&](std::uint32_t from, std::string_view wanted) {
        return beginning_of(from) < wanted;
    });
    const auto end = std::upper_bound(begin, last, start, [&](std::string_view wanted, std::uint32_t from) {
        return wanted < beginning_of(from);
    });
    return {static_cast<std::uint32_t>(begin - t.starts.begin()),
            static_cast<std::uint32_t>(end - t.starts.begin())};
}

NameRange NameIndex::beginning_with(std::string_view start) const {
    return narrowed({0, static_cast<std::uint32_t>(held_->at.starts.size())}, start);
}

NameRange NameIndex::exactly(std::string_view key) const {
    NameRange range = beginning_with(key);
    // A key is the least of those that begin with it.
    const NameRange all = range;
    while (range.begin != range.end) {
        const std::uint32_t middle = range.begin + (range.end - range.begin) / 2;
        if (name(middle).key.size() == key.size())
            range.begin = middle + 1;
        else
            range.end = middle;
    }
    return {all.begin, range.begin};
}

/// Every key that could have been meant is looked up, within the names that begin as it does.
NameList NameIndex::one_off(std::string_view key) const {
    constexpr std::string_view seen = "0123456789ACEFHJKMNPRTUVWXY";  // what sight keys are made of
    NameList found;
    NameRange range = beginning_with("");
    const auto look_up = [&](const std::string& meant) {
        if (meant == key || meant.empty()) return;
        for (NameRange same = narrowed(range, meant); same.begin != same.end; ++same.begin) {
            if (name(same.begin).key.size() != meant.size()) break;
            found.push_back(same.begin);
        }
    };
    for (std::size_t i = 0; i <= key.size() && !range.empty(); ++i) {
        const std::string before(key.substr(0, i));
        const std::string from(key.substr(i));
        for (const char c : seen) {
            look_up(before + c + from);
            if (!from.empty()) look_up(before + c + from.substr(1));
        }
        if (!from.empty()) look_up(before + from.substr(1));
        if (from.size() > 1) look_up(before + from[1] + from[0] + from.substr(2));
        if (!from.empty()) range = narrowed(range, key.substr(0, i + 1));
    }
    put_in_order(found);
    return found;
}

NameList NameIndex::holding(std::string_view fragment) const {
    const Tables& t = held_->at;
    std::vector<std::span<const std::uint32_t>> lists;
    for (std::size_t i = 0; i + 3 <= fragment.size(); ++i) {
        const std::size_t piece = piece_of(fragment.data() + i);
        const std::uint32_t begin = t.piece_starts[piece];
        lists.push_back(t.piece_names.subspan(begin, t.piece_starts[piece + 1] - begin));
    }
    std::sort(lists.begin(), lists.end(), [](auto a, auto b) { return a.size() < b.size(); });
    if (lists.empty()) return {};
    NameList found(lists.front().begin(), lists.front().end());
    for (std::size_t i = 1; i < lists.size(); ++i) keep_common(found, lists[i]);
    if (fragment.size() > 3)
        std::erase_if(found,
                      [&](std::uint32_t n) { return name(n).key.find(fragment) == std::string_view::npos; });
    return found;
}

NameList NameIndex::with_word(std::string_view start) const {
    const Tables& t = held_->at;
    auto word = std::lower_bound(
        t.words_at.begin(), t.words_at.end(), start,
        [&](std::uint32_t at, std::string_view wanted) { return std::string_view(t.words + at) < wanted; });
    std::vector<std::span<const std::uint32_t>> lists;
    const auto is_meant = [&](std::string_view each) {
        return start.size() < least_beginning ? each == start : each.starts_with(start);
    };
    for (; word != t.words_at.end() && is_meant(t.words + *word); ++word) {
        const auto w = static_cast<std::size_t>(word - t.words_at.begin());
        lists.push_back(t.word_names.subspan(t.word_starts[w], t.word_starts[w + 1] - t.word_starts[w]));
    }
    if (lists.size() == 1) return {lists[0].begin(), lists[0].end()};
    std::vector<bool> named(lists.empty() ? 0 : t.starts.size());
    for (const auto& list : lists) {
        for (const std::uint32_t n : list) named[n] = true;
    }
    NameList found;
    for (std::uint32_t n = 0; n < named.size(); ++n) {
        if (named[n]) found.push_back(n);
    }
    return found;
}

NameList NameIndex::described_by(const std::vector<std::string>& words) const {
    NameList found;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const NameList list = with_word(words[i]);
        if (i == 0)
            found = list;
        else
            keep_common(found, list);
        if (found.empty()) break;
    }
    return found;
}

}  // namespace endbell::inline find
