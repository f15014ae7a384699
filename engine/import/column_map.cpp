#include "engine/import/column_map.hpp"

#include <toml++/toml.h>

#include <fstream>
#include <sstream>

#include "engine/base/hash.hpp"
#include "engine/base/problem.hpp"
#include "engine/base/text.hpp"
#include "engine/fields/cell.hpp"
#include "engine/fields/tables.hpp"
#include "engine/words/write.hpp"

namespace endbell::inline import {

namespace {

/// Walks the TOML and gathers every mistake before it gives up.
class MapReader {
  public:
    explicit MapReader(std::string name) : name_(std::move(name)) {}

    void read(const toml::table& root, ColumnMap& map) {
        for (auto&& [key, node] : root) {
            if (key.str() != "tables" || !node.is_table()) {
                complain(node, key.str(), "[tables.NAME]", "put the table's lines under its own heading");
                continue;
            }
            for (auto&& [table_name, table] : *node.as_table()) read_table(table_name.str(), table, map);
        }
        if (!problems_.empty()) throw BadData(std::move(problems_));
    }

  private:
    void complain(const toml::node& node, std::string_view key, std::string expected, std::string todo) {
        const toml::source_region& where = node.source();
        problems_.push_back(
            {{name_, static_cast<int>(where.begin.line), static_cast<int>(where.begin.column)},
             std::string(key),
             "",
             std::move(expected),
             std::move(todo)});
    }

    std::string text_of(const toml::node& node, std::string_view key) {
        if (const auto text = node.value_exact<std::string>()) return *text;
        complain(node, key, "a text in quotes", "write it in quotes");
        return "";
    }

    void read_table(std::string_view table_name, const toml::node& node, ColumnMap& map) {
        const Table* table = find_table(table_name);
        if (table == nullptr || !node.is_table()) {
            std::vector<std::string> known;
            for (const Table& each : tables()) known.emplace_back(each.name);
            const std::string near = nearest(table_name, known);
            complain(node, table_name, "one of: " + joined(known, ", "),
                     near.empty() ? "use a table's name" : "did you mean '" + near + "'?");
            return;
        }
        TableMap entry;
        entry.table = std::string(table_name);
        for (auto&& [key, value] : *node.as_table()) read_setting(*table, key.str(), value, entry);
        map.tables.push_back(std::move(entry));
    }

    void read_setting(const Table& table, std::string_view key, const toml::node& node, TableMap& entry) {
        if (key == "file") {
            entry.file = text_of(node, key);
        } else if (key == "encoding") {
            entry.hints.encoding = from_word<Encoding>(text_of(node, key));
            if (!entry.hints.encoding)
                complain(node, key, "UTF-8, UTF-16LE, UTF-16BE or Windows-1252", "use one of these");
        } else if (key == "delimiter") {
            const std::string text = text_of(node, key);
            if (text.size() == 1 && text != "\"")
                entry.hints.delimiter = text[0];
            else
                complain(node, key, "one character", "write \",\", \";\" or \"\\t\"");
        } else if (key == "ignore" && node.is_array()) {
            for (auto&& item : *node.as_array()) entry.ignore.push_back(lower(trimmed(text_of(item, key))));
        } else if (key == "columns" && node.is_table()) {
            for (auto&& [column, source] : *node.as_table()) read_column(table, column.str(), source, entry);
        } else {
            complain(node, key, "file, encoding, delimiter, ignore or columns", "use one of these");
        }
    }

    void read_column(const Table& table, std::string_view name, const toml::node& node, TableMap& entry) {
        if (find_column(table, name) == nullptr) {
            std::vector<std::string> known;
            for (const Column& column : table.columns) known.emplace_back(column.name);
            const std::string near = nearest(name, known);
            complain(node, name, "a column of " + entry.table,
                     near.empty() ? "see the dictionary" : "did you mean '" + near + "'?");
            return;
        }
        ColumnSource source;
        if (node.is_string()) {
            source.from = lower(trimmed(text_of(node, name)));
        } else if (node.is_table()) {
            for (auto&& [key, value] : *node.as_table()) read_source(key.str(), value, source);
        }
        if (source.from.empty() == source.value.empty()) {
            complain(node, name, "a header in `from`, or a `value`", "write one of the two");
        }
        entry.columns[std::string(name)] = std::move(source);
    }

    void read_source(std::string_view key, const toml::node& node, ColumnSource& source) {
        if (key == "words" && node.is_table()) {
            for (auto&& [theirs, ours] : *node.as_table())
                source.words[lower(trimmed(theirs.str()))] = text_of(ours, theirs.str());
            return;
        }
        const std::string text = text_of(node, key);
        if (key == "from")
            source.from = lower(trimmed(text));
        else if (key == "value")
            source.value = text;
        else if (key == "unit")
            source.unit = text;
        else if (key == "date" && (text == "d.m.y" || text == "m/d/y" || text == "y-m-d"))
            source.date = text;
        else if (key == "decimal" && (text == "comma" || text == "point"))
            source.decimal_comma = text == "comma";
        else
            complain(
                node, key,
                R"(from, value, unit, words, date "d.m.y", "m/d/y", "y-m-d", decimal "comma" or "point")",
                "use one of these");
    }

    std::string name_;
    std::vector<Problem> problems_;
};

/// "1.234,50" -> "1234.50".
std::string with_point(std::string_view text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool between_digits = i > 0 && i + 1 < text.size() && text[i - 1] >= '0' &&
                                    text[i - 1] <= '9' && text[i + 1] >= '0' && text[i + 1] <= '9';
        if (between_digits && (text[i] == '.' || text[i] == ' ' || text[i] == '\'')) continue;
        out += text[i] == ',' ? '.' : text[i];
    }
    return out;
}

/// "31.1.2026" in the order "d.m.y" -> "2026-01-31"; any other text is returned as it is.
std::string with_iso_date(std::string_view order, std::string_view text) {
    std::vector<std::string> parts(1);
    for (const char c : text) {
        if (c >= '0' && c <= '9')
            parts.back() += c;
        else
            parts.emplace_back();
    }
    if (parts.size() != 3) return std::string(text);
    std::string year, month, day;
    for (std::size_t i = 0; i < 3; ++i) {
        const char role = order[i * 2];
        (role == 'y' ? year : role == 'm' ? month : day) = parts[i];
    }
    if (year.size() != 4 || month.empty() || month.size() > 2 || day.empty() || day.size() > 2)
        return std::string(text);
    const auto number = [](const std::string& digits) { return static_cast<unsigned>(std::stoi(digits)); };
    return write(date_of(std::stoi(year), number(month), number(day)));
}

bool is_bare_number(std::string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789.,/ -") == std::string_view::npos;
}

/// The hash that remembered maps were found by before: the published constants of FNV-1a, 64 bits.
std::uint64_t fnv_1a(std::string_view bytes) {
    std::uint64_t hash = 0xcbf29ce484222325U;
    for (const char c : bytes) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3U;
    return hash;
}

}  // namespace

ColumnMap parse_column_map(std::string_view text, const std::string& name) {
    ColumnMap map;
    map.text = std::string(text);
    try {
        const toml::table root = toml::parse(text, name);
        MapReader(name).read(root, map);
    } catch (const toml::parse_error& error) {
        const toml::source_position where = error.source().begin;
        throw BadData(Problem{{name, static_cast<int>(where.line), static_cast<int>(where.column)},
                              "column map",
                              "",
                              "TOML: " + std::string(error.description()),
                              "correct this line"});
    }
    return map;
}

ColumnMap read_column_map(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    if (!in)
        throw BadData(
            Problem{{file.string(), 0, 0}, "column map", "", "a file that may be read", "check the path"});
    std::ostringstream text;
    text << in.rdbuf();
    return parse_column_map(text.str(), file.string());
}

std::string translated(const ColumnSource& source, std::string_view cell) {
    if (source.from.empty()) return source.value;
    std::string text = cleaned(cell);
    if (source.takes_as_is()) return text;
    const auto found = source.words.find(lower(text));
    if (found != source.words.end()) return found->second;
    if (source.decimal_comma) text = with_point(text);
    if (!source.date.empty()) text = with_iso_date(source.date, text);
    if (!source.unit.empty() && is_bare_number(text)) text += " " + source.unit;
    return text;
}

HeaderPrint header_print(const std::vector<std::string>& header) {
    std::vector<std::string> names;
    for (const std::string& name : header) names.push_back(lower(cleaned(name)));
    const std::string text = joined(names, "\x1f");
    return {fingerprint(text), in_hexadecimal(fnv_1a(text))};
}

}  // namespace endbell::inline import
