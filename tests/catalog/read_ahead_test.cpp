// The reading thread and the one that takes its rows: all rows in order, and an end that nobody waits for in vain.
#include "engine/import/read_ahead.hpp"

#include <boost/test/unit_test.hpp>
#include <stdexcept>

#include "engine/import/table_file.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

namespace {

/// Many more batches than are kept.
constexpr int rows_of_sheet = 20'000;

struct Sheet : Folder {
    explicit Sheet(int broken_row = -1) {
        std::string csv = "part_id,kind,maker,part_number\n";
        for (int i = 0; i < rows_of_sheet; ++i)
            csv += "P-" + std::to_string(i) + ",motor,Plover Example Works," +
                   (i == broken_row ? "BROKEN" : "N") + "\n";
        table("parts", csv);
        files = open_tables({tables() / "parts.csv"}, std::nullopt, {});
        file().table = &own;
        for (Column& column : own.columns) {
            if (column.name != "part_number") continue;
            kind = *column.kind;
            kind.read = or_throw;
            column.kind = &kind;
        }
    }
    TableFile& file() { return files.at(0); }
    /// A reader of cells with a bug in it.
    static Cell or_throw(std::string_view text) {
        if (text == "BROKEN") throw std::runtime_error("broken");
        return Cell{std::string(text), {}};
    }
    Table own = *find_table("parts");
    ValueKind kind{};
    std::vector<TableFile> files;
};

/// How many rows came, all in their order; -1 where one did not.
int rows_in_order(ReadAhead& ahead) {
    int next = 0;
    for (;;) {
        const ReadAhead::Batch& batch = ahead.next();
        if (batch.count == 0) return next;
        for (std::size_t i = 0; i < batch.count; ++i) {
            if (batch.rows[i].row[0] != "P-" + std::to_string(next++)) return -1;
        }
    }
}

}  // namespace

BOOST_AUTO_TEST_SUITE(read_ahead)

BOOST_AUTO_TEST_CASE(all_rows_come_in_the_order_of_the_file) {
    Sheet sheet;
    ReadAhead ahead(sheet.file());
    BOOST_TEST(rows_in_order(ahead) == rows_of_sheet);
}

BOOST_AUTO_TEST_CASE(who_takes_no_more_rows_waits_for_none) {
    for (const int taken : {0, 1, 3, 12}) {
        Sheet sheet;
        ReadAhead ahead(sheet.file());
        for (int i = 0; i < taken; ++i) BOOST_TEST(ahead.next().count > 0U);
    }
}

BOOST_AUTO_TEST_CASE(what_reading_throws_is_thrown_behind_the_rows_before_it) {
    Sheet sheet(rows_of_sheet / 2);
    ReadAhead ahead(sheet.file());
    int before = 0;
    const auto take_all = [&] {
        for (;;) before += static_cast<int>(ahead.next().count);
    };
    BOOST_CHECK_THROW(take_all(), std::runtime_error);
    BOOST_TEST(before > rows_of_sheet / 2 - 1000);
    BOOST_TEST(before <= rows_of_sheet / 2);
}

BOOST_AUTO_TEST_SUITE_END()
