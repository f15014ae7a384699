#include "engine/catalog/numbers.hpp"

#include <sqlite3.h>

#include "engine/base/text.hpp"

namespace endbell {

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

template <std::string (*key_of)(std::string_view)>
void sql_key(sqlite3_context* context, int, sqlite3_value** values) {
    const auto* text = reinterpret_cast<const char*>(sqlite3_value_text(values[0]));
    const std::string key = key_of(text != nullptr ? text : "");
    sqlite3_result_text(context, key.c_str(), static_cast<int>(key.size()), SQLITE_TRANSIENT);
}

}  // namespace

void register_number_keys(SQLite::Database& db) {
    db.createFunction("number_key", 1, true, nullptr, sql_key<number_key>);
    db.createFunction("sight_key", 1, true, nullptr, sql_key<sight_key>);
}

void rebuild_numbers(SQLite::Database& db) {
    register_number_keys(db);
    db.exec("BEGIN");
    db.exec("DELETE FROM numbers");
    db.exec(
        "INSERT OR IGNORE INTO numbers SELECT sight_key(number) AS k, number, part_id FROM ("
        "SELECT part_id AS number, part_id FROM parts UNION ALL SELECT part_number, part_id FROM parts UNION "
        "ALL "
        "SELECT old_number, part_id FROM cross_references) WHERE k <> '' ORDER BY 1, 2, 3");
    db.exec("COMMIT");
}

}  // namespace endbell
