#include "engine/job/toml_text.hpp"

#include <toml++/toml.h>
#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/words/number.hpp"

namespace endbell::inline job {

namespace {

Place place_of(const toml::source_position& at, const std::string& filename) {
    return {filename, static_cast<int>(at.line), static_cast<int>(at.column)};
}
Place place_of(const toml::source_region& region, const std::string& filename) {
    return place_of(region.begin, filename);
}

std::string two_digits(int number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
}

std::string float_text(double value) {
    if (std::isnan(value)) return "nan";
    if (std::isinf(value)) return value > 0 ? "inf" : "-inf";
    return shortest(value);
}

/// A string, number, boolean or date as text; nothing for tables, arrays and times.
std::optional<std::string> scalar_text(const toml::node& node) {
    if (const auto* s = node.as_string()) return s->get();
    if (const auto* i = node.as_integer()) return std::to_string(i->get());
    if (const auto* f = node.as_floating_point()) return float_text(f->get());
    if (const auto* b = node.as_boolean()) return std::string(b->get() ? "yes" : "no");
    if (const auto* d = node.as_date()) {
        return std::to_string(d->get().year) + "-" + two_digits(d->get().month) + "-" +
               two_digits(d->get().day);
    }
    return std::nullopt;
}

using Text = std::optional<std::string> (*)(const toml::node&);

std::optional<std::string> list_text(const toml::array& array, std::string_view joint, Text item_text) {
    std::string text;
    for (const toml::node& item : array) {
        const auto one = item_text(item);
        if (!one) return std::nullopt;
        if (&item != &array.front()) text += joint;
        text += *one;
    }
    return text;
}

/// An item of a list: a scalar, or a row of scalars.
std::optional<std::string> item_text(const toml::node& node) {
    if (const auto* row = node.as_array()) return list_text(*row, " | ", scalar_text);
    return scalar_text(node);
}

/// Arrays of scalars, arrays of rows and tables of scalars as one text.
std::optional<std::string> value_text(const toml::node& node) {
    if (const auto* array = node.as_array()) return list_text(*array, "; ", item_text);
    if (const auto* table = node.as_table()) {
        std::string text;
        for (const auto& item : *table) {
            const auto one = scalar_text(item.second);
            if (!one) return std::nullopt;
            text += (text.empty() ? "" : "; ") + std::string(item.first.str()) + " = " + *one;
        }
        return text;
    }
    return scalar_text(node);
}

void add_entry(TomlDocument& document, std::string group, const Place& group_at, const toml::key& key,
               const toml::node& node, const std::string& filename) {
    TomlEntry entry;
    entry.group = std::move(group);
    entry.group_at = group_at;
    entry.name = std::string(key.str());
    entry.number = node.is_number();
    entry.key_at = place_of(key.source(), filename);
    entry.value_at = place_of(node.source(), filename);
    entry.value_end = place_of(node.source().end, filename);
    const auto text = value_text(node);
    if (text) {
        entry.value = *text;
        document.entries.push_back(std::move(entry));
        return;
    }
    const std::string subject = entry.group.empty() ? entry.name : entry.group + "." + entry.name;
    document.problems.push_back(
        {entry.value_at, subject, "", "a text, a number, yes or no, or a list of them", "write one value"});
}

}  // namespace

TomlDocument parse_toml(std::string_view text, const std::string& filename) {
    toml::table root;
    try {
        root = toml::parse(text, filename);
    } catch (const toml::parse_error& error) {
        const Place at = place_of(error.source(), filename);
        throw BadData(Problem{at, "this line", "", "TOML: " + std::string(error.description()),
                              "correct the line; texts stand in double quotes"});
    }
    TomlDocument document;
    for (const auto& item : root) {
        const std::string name(item.first.str());
        const auto* group = item.second.as_table();
        if (!group) {
            add_entry(document, "", {}, item.first, item.second, filename);
            continue;
        }
        const Place group_at = place_of(item.first.source(), filename);
        for (const auto& field : *group)
            add_entry(document, name, group_at, field.first, field.second, filename);
        if (group->empty()) {
            document.entries.push_back({name, "", "", false, group_at, group_at, group_at, group_at});
        }
    }
    std::sort(document.entries.begin(), document.entries.end(), [](const TomlEntry& a, const TomlEntry& b) {
        return a.key_at.line != b.key_at.line ? a.key_at.line < b.key_at.line
                                              : a.key_at.column < b.key_at.column;
    });
    return document;
}

}  // namespace endbell::inline job
