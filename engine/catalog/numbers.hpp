// Part numbers as people copy them: with or without dashes, and with characters that look alike taken for
// each other.
#pragma once
#include <SQLiteCpp/SQLiteCpp.h>

#include <string>
#include <string_view>

namespace endbell {

/// number_key() with the characters that are misread for each other folded to one: O Q D 0, I L 1, S 5, B 8,
/// Z 2, G 6.
std::string sight_key(std::string_view number);

/// Makes number_key(text) and sight_key(text) known to SQL on this connection.
void register_number_keys(SQLite::Database& db);

/// Fills the table `numbers` from parts (id and number) and cross_references (old number).
void rebuild_numbers(SQLite::Database& db);

}  // namespace endbell
