// The store's tables in SQL, made from the columns of engine/fields. catalog-schema/schema.sql shows them to people.
#pragma once
#include <optional>
#include <string>
#include <string_view>

#include "engine/fields/tables.hpp"

namespace endbell::inline catalog {

/// Counts the migrations of catalog-schema/migrations: each change of the tables adds one.
extern const int schema_version;

/// "ENDL": by this a file is told from other programs' databases.
inline constexpr int application_id = 1162757196;

/// What makes an empty catalog, in the order in which it is run.
const std::string& schema_sql();

/// "frame TEXT": a column that is no key, as a table defines it.
std::string column_sql(const Column& column);

/// What the store asks of a value before it takes it.
struct ColumnCheck {
    std::string told;        // what a person is told when a value breaks it: the constraint's name
    std::string expression;  // in SQL, of the column, in brackets
};
/// Nothing where a column takes what its reader gives. Of an enumeration's words the store asks without a name: the
/// column's reader gives no others.
std::optional<ColumnCheck> check_of(const Column& column);

}  // namespace endbell::inline catalog
