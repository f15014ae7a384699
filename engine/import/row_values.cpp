#include "engine/import/row_values.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "engine/base/text.hpp"
#include "engine/model/limits.hpp"
#include "engine/units/money.hpp"

namespace endbell::inline import {

namespace {

std::size_t column_index(const Table& table, std::string_view name) {
    std::size_t i = 0;
    while (i < table.columns.size() && table.columns[i].name != name) ++i;
    return i;
}

std::string_view text_of(const Stored& value) {
    const auto* text = std::get_if<std::string>(&value);
    return text != nullptr ? std::string_view(*text) : std::string_view();
}

/// Columns of one row that only make sense together.
class RowSettler {
  public:
    RowSettler(const TableFile& file, const CsvRow& row, std::vector<Stored>& values,
               std::vector<Problem>& problems)
        : file_(file), row_(row), values_(values), problems_(problems) {}

    void settle() {
        if (file_.table->name == "motors") settle_rotation();
        if (file_.table->name == "offers") settle_amounts();
        if (file_.table->name == "limits") settle_limit();
    }

  private:
    Stored& value(std::string_view column) { return values_[column_index(*file_.table, column)]; }
    void complain(std::string_view column, std::string expected, std::string todo) {
        problems_.push_back(problem_at(file_, row_, column, std::move(expected), std::move(todo)));
    }

    /// "CWSE" and "CCWSE" bring their viewing end; the other column may not say otherwise.
    void settle_rotation() {
        const std::string turned(text_of(value("rotation")));
        if (turned != "CWSE" && turned != "CCWSE") return;
        const std::string_view viewed = text_of(value("rotation_viewed_from"));
        if (viewed == "lead end") {
            complain("rotation", "the same viewing end as in rotation_viewed_from",
                     "write the end once, in rotation_viewed_from");
        }
        value("rotation") = turned.substr(0, turned.size() - 2);
        value("rotation_viewed_from") = std::string("shaft end");
    }

    void settle_amounts() {
        static const std::size_t code = column_index(*find_table("offers"), "currency");
        static const std::size_t price = column_index(*find_table("offers"), "price");
        static const std::size_t credit = column_index(*find_table("offers"), "core_credit");
        const std::optional<Currency> money = currency(text_of(values_[code]));
        if (!money) return;
        settle_amount(values_[price], "price", *money);
        settle_amount(values_[credit], "core_credit", *money);
    }
    void settle_amount(Stored& value, std::string_view column, const Currency& money) {
        const std::string_view text = text_of(value);
        if (text.empty()) return;
        const std::optional<Money> amount = read_amount(text, money);
        if (!amount || amount->minor() < 0) {
            complain(column, fmt::format("an amount such as 1234.50, at most {} places", money.digits),
                     "correct the cell, or give the column a decimal comma in the column map");
            return;
        }
        value = amount->amount();
    }

    /// A shop may tighten a limit, never loosen it.
    void settle_limit() {
        const auto* number = std::get_if<double>(&value("value"));
        const std::string id(text_of(value("limit")));
        Limits limits;
        const Limit* row = limits.find(id);
        if (number == nullptr || row == nullptr) return;
        const Limit own = *row;
        if (limits.tighten(id, *number, std::string(text_of(value("set_by")))) != Limits::Tightening::looser)
            return;
        complain("value",
                 fmt::format("{} {:.12g} {}", own.stricter == Stricter::lower ? "at most" : "at least",
                             own.value, own.unit),
                 "a shop may tighten a limit, never loosen it: remove the row");
    }

    const TableFile& file_;
    const CsvRow& row_;
    std::vector<Stored>& values_;
    std::vector<Problem>& problems_;
};

/// Equality that is compiled where it is asked: a function for it costs as much as it does.
bool is_same(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end());
}

bool has_more_cells(const TableFile& file, const CsvRow& row) {
    for (std::size_t i = file.csv.header().size(); i < row.size(); ++i) {
        if (!trimmed(row[i]).empty()) return true;
    }
    return false;
}

}  // namespace

std::string_view cell_text(const TableFile& file, const CsvRow& row, std::string_view column) {
    const std::size_t i = column_index(*file.table, column);
    if (i >= file.feeds.size() || !file.feeds[i].present) return {};
    if (file.feeds[i].source.from.empty()) return file.feeds[i].source.value;
    return file.feeds[i].cell < row.size() ? row[file.feeds[i].cell] : std::string_view();
}

Problem problem_at(const TableFile& file, const CsvRow& row, std::string_view column, std::string expected,
                   std::string todo) {
    Problem problem{
        {file.path.string(), row.line, 0}, std::string(column), "", std::move(expected), std::move(todo)};
    const std::size_t i = column_index(*file.table, column);
    if (i >= file.feeds.size() || !file.feeds[i].present) return problem;
    const Feed& feed = file.feeds[i];
    if (!feed.source.from.empty()) problem.at.column = static_cast<int>(feed.cell) + 1;
    if (lower(cleaned(feed.header)) != column) problem.subject += " (" + feed.header + ")";
    problem.value = std::string(beginning(cell_text(file, row, column), 200));
    return problem;
}

const Cell& ReadCells::read(const TableFile& file, std::size_t column, const CsvRow& row) {
    const Feed& feed = file.feeds[column];
    const std::string_view raw = feed.source.from.empty() ? std::string_view() : row[feed.cell];
    Known& known = columns_[column];
    if (known.before != nullptr && is_same(known.before->first, raw)) {  // neighbours are often alike
        ++known.found;
        return known.before->second;
    }
    if (known.open) {
        if (const auto found = known.cells.find(raw); found != known.cells.end()) {
            ++known.found;
            known.before = &*found;
            return found->second;
        }
    }
    Cell cell = fresh(file, column, raw);
    if (known.open && known.cells.size() >= most_known) {
        known.open = known.found >= most_known;  // else nearly every row says something new
        known.found = 0;
        known.before = nullptr;
        known.cells.clear();
    }
    if (known.open && raw.size() <= longest_known) {
        known.before = &*known.cells.emplace(raw, std::move(cell)).first;
        return known.before->second;
    }
    known.last = std::move(cell);
    return known.last;
}

Cell ReadCells::fresh(const TableFile& file, std::size_t column, std::string_view raw) {
    const ColumnSource& source = file.feeds[column].source;
    const bool as_is = !source.from.empty() && source.takes_as_is();
    const std::string other = as_is ? std::string() : translated(source, raw);
    std::string room;
    const std::string_view text = cleaned(as_is ? raw : other, room);
    if (says_nothing(text)) return {};
    Cell cell = file.table->columns[column].read(text);
    if (cell.is_unknown() || !checks_.has(column)) return cell;
    if (std::string constraint = checks_.broken(column, cell.value); cell.is_read() && !constraint.empty()) {
        cell.refusal = {std::move(constraint), "correct the cell"};
    }
    return cell;
}

void read_values(const TableFile& file, const CsvRow& row, ReadCells& cells, std::vector<Stored>& values,
                 std::vector<Problem>& problems) {
    const std::size_t wanted = file.csv.header().size();
    if (row.size() < wanted || has_more_cells(file, row)) {
        problems.push_back({{file.path.string(), row.line, 0},
                            "row",
                            std::string(beginning(joined(row.cells(), "|"), 200)),
                            fmt::format("{} cells, as in the header, not {}", wanted, row.size()),
                            "look for a missing or an extra delimiter, or an unquoted one inside a cell"});
        return;
    }
    values.resize(file.table->columns.size());
    for (const std::size_t i : file.fed) {
        const Column& column = file.table->columns[i];
        static const Cell unknown;
        const Cell& cell = file.feeds[i].present ? cells.read(file, i, row) : unknown;
        if (!cell.is_read()) {
            problems.push_back(
                problem_at(file, row, column.name, cell.refusal->expected, cell.refusal->todo));
        } else if (!cell.is_unknown()) {
            values[i] = cell.value;
        } else if (column.when_empty) {
            values[i] = std::string(*column.when_empty);
        } else {
            values[i] = std::monostate();
            if (column.need != Need::required) continue;
            problems.push_back(
                problem_at(file, row, column.name, "a value: this column is required", "fill the cell"));
        }
    }
    if (problems.empty()) RowSettler(file, row, values, problems).settle();
}

}  // namespace endbell::inline import
