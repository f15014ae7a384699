#include "engine/catalog/numbers.hpp"

#include <sqlite3.h>

#include <algorithm>
#include <cstdint>
#include <tuple>
#include <vector>

#include "engine/base/pages.hpp"
#include "engine/base/text.hpp"
#include "engine/base/texts.hpp"
#include "engine/catalog/digest.hpp"

namespace endbell::inline catalog {

std::string sight_key(std::string_view number) {
    std::string key = number_key(number);
    for (char& c : key) {
        switch (c) {
            case 'O':
            case 'Q':
            case 'D':
                c = '0';
                break;
            case 'I':
            case 'L':
                c = '1';
                break;
            case 'S':
                c = '5';
                break;
            case 'B':
                c = '8';
                break;
            case 'Z':
                c = '2';
                break;
            case 'G':
                c = '6';
                break;
            default:
                break;
        }
    }
    return key;
}

namespace {

void sql_number_key(sqlite3_context* context, int, sqlite3_value** values) {
    const std::string key = number_key(argument_text(values[0]));
    sqlite3_result_text(context, key.c_str(), static_cast<int>(key.size()), SQLITE_TRANSIENT);
}

/// Rows of the table `numbers`, brought into its order in memory: some 100 bytes a part.
class KeyedNumbers {
  public:
    using Text = Texts::Offset;

    explicit KeyedNumbers(std::size_t rows) {
        rows_.reserve(rows);
        prefer_large_pages(rows_.data(), rows * sizeof(Row));
    }

    Text keep(std::string_view text) { return texts_.keep(text); }

    /// What has no letters and digits has no key, and is never looked for.
    void add(Text number, Text part_id) {
        const std::string key = sight_key(texts_[number]);
        if (!key.empty()) rows_.push_back({beginning(key), keep(key), number, part_id});
    }

    /// Into the empty table, each row once.
    void store(SQLite::Database& db) {
        std::sort(rows_.begin(), rows_.end(), [this](const Row& a, const Row& b) {
            return a.beginning != b.beginning ? a.beginning < b.beginning : places(a) < places(b);
        });
        const auto same = [this](const Row& a, const Row& b) { return places(a) == places(b); };
        rows_.erase(std::unique(rows_.begin(), rows_.end(), same), rows_.end());
        PlainStatement write(db, "INSERT INTO numbers VALUES (?)");
        std::string lines;
        for (const Row& row : rows_) {
            for (const Text text : {row.key, row.number, row.part_id}) (lines += texts_[text]) += '\t';
            lines.back() = '\n';
            if (lines.size() < bytes_a_row && &row != &rows_.back()) continue;
            write.restart(lines);
            write.step();
            lines.clear();
        }
    }

  private:
    struct Row {
        std::uint64_t beginning;  // of the key: nearly always enough to compare
        Text key, number, part_id;
    };

    std::tuple<std::string_view, std::string_view, std::string_view> places(const Row& row) const {
        return {texts_[row.key], texts_[row.number], texts_[row.part_id]};
    }
    /// Eight characters as a number that sorts as they do.
    static std::uint64_t beginning(std::string_view key) {
        std::uint64_t number = 0;
        for (std::size_t i = 0; i < 8; ++i)
            number = number << 8 | (i < key.size() ? static_cast<unsigned char>(key[i]) : 0U);
        return number;
    }

    static constexpr std::size_t bytes_a_row = 1000;
    Texts texts_;
    std::vector<Row> rows_;
};

}  // namespace

void register_number_key(SQLite::Database& db) {
    db.createFunction("number_key", 1, true, nullptr, sql_number_key);
}

// The first of the key's lines may stand in a row that begins with a smaller key.
Numbers::Numbers(SQLite::Database& db)
    : db_(db),
      rows_(db,
            "SELECT lines FROM numbers WHERE lines < ?1 || char(10) AND lines >= "
            "coalesce((SELECT max(lines) FROM numbers WHERE lines < ?1 || char(9)), '') ORDER BY lines") {}

std::string_view Numbers::take(std::string_view& text, char end) {
    const std::string_view taken = text.substr(0, text.find(end));
    text.remove_prefix(std::min(taken.size() + 1, text.size()));
    return taken;
}

void rebuild_numbers(SQLite::Database& db) {
    const RowSums rows = written_sums(db);
    KeyedNumbers all(static_cast<std::size_t>(2 * rows.at("parts").rows + rows.at("cross_references").rows));
    PlainStatement parts(db, "SELECT part_id, part_number FROM parts");
    while (parts.step()) {
        const KeyedNumbers::Text id = all.keep(parts.text(0));
        all.add(id, id);
        all.add(all.keep(parts.text(1)), id);
    }
    PlainStatement references(db, "SELECT old_number, part_id FROM cross_references");
    while (references.step()) all.add(all.keep(references.text(0)), all.keep(references.text(1)));
    db.exec("BEGIN");
    db.exec("DELETE FROM numbers");
    all.store(db);
    db.exec("COMMIT");
}

}  // namespace endbell::inline catalog
