#include "engine/catalog/changes.hpp"

#include <map>

#include "engine/base/problem.hpp"
#include "engine/catalog/database.hpp"
#include "engine/catalog/digest.hpp"
#include "engine/catalog/generations.hpp"

namespace endbell::inline catalog {

namespace fs = std::filesystem;

namespace {

using CellRow = std::vector<Stored>;

/// The rows of a table in ascending order of their keys.
class Ordered {
  public:
    Ordered(SQLite::Database& db, const Table& table)
        : statement_(db, select_all(table, in_order(table))),
          columns_(static_cast<int>(table.columns.size())) {
        advance();
    }
    const std::optional<CellRow>& row() const { return row_; }
    void advance() {
        row_.reset();
        if (!statement_.executeStep()) return;
        row_.emplace();
        for (int i = 0; i < columns_; ++i) row_->push_back(column_value(statement_.getColumn(i)));
    }

  private:
    SQLite::Statement statement_;
    int columns_;
    std::optional<CellRow> row_;
};

/// Text keys compare as SQLite's BINARY collation does: byte by byte, unsigned.
int compare_keys(const CellRow& a, const CellRow& b, std::size_t key_columns) {
    for (std::size_t i = 0; i < key_columns; ++i) {
        if (a[i] < b[i]) return -1;
        if (b[i] < a[i]) return 1;
    }
    return 0;
}

std::map<std::string, std::string> digests(SQLite::Database& db) {
    std::map<std::string, std::string> found;
    SQLite::Statement rows(db, "SELECT table_name, row_sum FROM table_digests");
    while (rows.executeStep()) found[rows.getColumn(0).getString()] = rows.getColumn(1).getString();
    return found;
}

class CatalogComparison {
  public:
    CatalogComparison(SQLite::Database& older, SQLite::Database& newer, std::size_t most)
        : older_(older), newer_(newer), most_(most) {}

    Changes run() {
        result_.from_generation = read_generation(older_).number;
        result_.to_generation = read_generation(newer_).number;
        const auto before = digests(older_);
        const auto after = digests(newer_);
        for (const Table& table : tables()) {
            const std::string name(table.name);
            const auto a = before.find(name);
            const auto b = after.find(name);
            if (a != before.end() && b != after.end() && a->second == b->second) continue;
            compare(table);
        }
        return std::move(result_);
    }

  private:
    void compare(const Table& table) {
        Ordered before(older_, table);
        Ordered after(newer_, table);
        TableChanges counts;
        counts.table = std::string(table.name);
        while (before.row() || after.row()) {
            const int order = !before.row()  ? 1
                              : !after.row() ? -1
                                             : compare_keys(*before.row(), *after.row(), table.key_columns);
            if (order < 0) {
                ++counts.retired;
                tell(table, *before.row(), ChangeKind::retired, {});
                move_price(table, &*before.row(), nullptr);
            } else if (order > 0) {
                ++counts.added;
                tell(table, *after.row(), ChangeKind::added, {});
                move_price(table, nullptr, &*after.row());
            } else if (*before.row() != *after.row()) {
                ++counts.changed;
                tell(table, *after.row(), ChangeKind::changed,
                     differences(table, *before.row(), *after.row()));
                move_price(table, &*before.row(), &*after.row());
            }
            if (order <= 0) before.advance();
            if (order >= 0) after.advance();
        }
        if (counts.added + counts.changed + counts.retired > 0) result_.tables.push_back(counts);
    }

    static std::vector<CellChange> differences(const Table& table, const CellRow& before,
                                               const CellRow& after) {
        std::vector<CellChange> cells;
        for (std::size_t i = 0; i < table.columns.size(); ++i) {
            if (before[i] != after[i])
                cells.push_back({std::string(table.columns[i].name), before[i], after[i]});
        }
        return cells;
    }

    void tell(const Table& table, const CellRow& row, ChangeKind kind, std::vector<CellChange> cells) {
        if (result_.changes.size() >= most_) return;
        CellRow key(row.begin(), row.begin() + static_cast<std::ptrdiff_t>(table.key_columns));
        result_.changes.push_back({std::string(table.name), std::move(key), kind, std::move(cells)});
    }

    /// A price that is new or gone with its whole offer is told as an added or retired offer, not as a move.
    void move_price(const Table& table, const CellRow* before, const CellRow* after) {
        if (table.name != "offers" || before == nullptr || after == nullptr) return;
        const std::optional<Money> was = price_of(*before);
        const std::optional<Money> is = price_of(*after);
        if (was == is) return;
        ++result_.price_move_count;
        if (result_.price_moves.size() >= most_) return;
        result_.price_moves.push_back(
            {to_text((*after)[0]), to_text((*after)[1]), to_text((*after)[2]), was, is});
    }

    /// Columns of offers: part_id, branch, seller, price, currency.
    static std::optional<Money> price_of(const CellRow& offer) {
        const std::optional<Currency> money = currency(to_text(offer[4]));
        if (!money) return std::nullopt;
        return read_amount(to_text(offer[3]), *money);
    }

    SQLite::Database& older_;
    SQLite::Database& newer_;
    std::size_t most_;
    Changes result_;
};

}  // namespace

Changes changes_between(const fs::path& older, const fs::path& newer, std::size_t most) {
    SQLite::Database before = open_finished(older);
    SQLite::Database after = open_finished(newer);
    return guarded(newer, [&] { return CatalogComparison(before, after, most).run(); });
}

Changes last_changes(const fs::path& catalog, std::size_t most) {
    const std::vector<Generation> all = generations(catalog);
    for (std::size_t i = 1; i < all.size(); ++i) {
        if (!all[i].damaged) return changes_between(all[i].file, catalog, most);
    }
    throw BadData(Problem{{catalog.string(), 0, 0},
                          "generation",
                          "",
                          "an earlier generation to compare with",
                          "import once more first"});
}

}  // namespace endbell::inline catalog
