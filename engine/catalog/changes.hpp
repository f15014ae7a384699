// What one generation has that another has not, row by row.
#pragma once
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "engine/fields/cell.hpp"
#include "engine/model/word.hpp"
#include "engine/units/money.hpp"

namespace endbell::inline catalog {

enum class ChangeKind { added, changed, retired };
constexpr auto words_of(ChangeKind) {
    return std::array{Word<ChangeKind>{ChangeKind::added, "new"},
                      Word<ChangeKind>{ChangeKind::changed, "changed"},
                      Word<ChangeKind>{ChangeKind::retired, "retired"}};
}

struct CellChange {
    std::string column;
    Stored before;
    Stored after;
};

struct Change {
    std::string table;
    std::vector<Stored> key;  // of the table's key columns
    ChangeKind kind = ChangeKind::changed;
    std::vector<CellChange> cells;  // only when changed
};

struct PriceMove {
    std::string part_id;
    std::string branch;
    std::string seller;
    std::optional<Money> before;  // empty: no price then
    std::optional<Money> after;
};

struct TableChanges {
    std::string table;
    std::int64_t added = 0;
    std::int64_t changed = 0;
    std::int64_t retired = 0;
};

struct Changes {
    int from_generation = 0;
    int to_generation = 0;
    std::vector<TableChanges> tables;    // only those that differ; counts are always whole
    std::vector<Change> changes;         // the first `most` rows, in order of tables and keys
    std::vector<PriceMove> price_moves;  // offers whose price or currency differs: the first `most`
    std::int64_t price_move_count = 0;
};

/// Throws BadData when either file is no catalog. A table whose fingerprints agree is not read at all.
Changes changes_between(const std::filesystem::path& older, const std::filesystem::path& newer,
                        std::size_t most = 1000);

/// Against the generation before: the newest one kept. Throws BadData when none is kept.
Changes last_changes(const std::filesystem::path& catalog, std::size_t most = 1000);

}  // namespace endbell::inline catalog
