#include "engine/csv/csv_write.hpp"

#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "engine/csv/csv_file.hpp"

using namespace endbell;
namespace fs = std::filesystem;

BOOST_AUTO_TEST_CASE(cells_are_quoted_where_they_must_be) {
    // RFC 4180: separators, line breaks and quotes stand in quotes, and quotes are doubled.
    BOOST_TEST(csv_line({"a", "", "1/2 hp"}) == "a,,1/2 hp\r\n");
    BOOST_TEST(csv_line({"a,b", "5\" shaft", "x\ny"}) == "\"a,b\",\"5\"\" shaft\",\"x\ny\"\r\n");
    BOOST_TEST(csv_line({"\"\""}) == "\"\"\"\"\"\"\r\n");
    BOOST_TEST(csv_line({}) == "\r\n");
}

BOOST_AUTO_TEST_CASE(a_formula_becomes_a_text_and_a_number_stays_one) {
    BOOST_TEST(csv_line({"=1+1", "@x", "-1-2", "-12.50", "-", "+5"}) == "'=1+1,'@x,'-1-2,-12.50,'-,'+5\r\n");
    BOOST_TEST(csv_line({"=A1,B1"}) == "\"'=A1,B1\"\r\n");
}

BOOST_AUTO_TEST_CASE(what_is_written_is_read_again) {
    const std::vector<std::string> cells{"tag, with a comma", "say \"so\"", "two\nlines", "\xc2\xb5",
                                         "plain"};
    std::string folder = (fs::temp_directory_path() / "endbell-XXXXXX").string();
    const fs::path file = fs::path(mkdtemp(folder.data())) / "written.csv";
    std::ofstream(file, std::ios::binary) << csv_line({"a", "b", "c", "d", "e"}) << csv_line(cells);
    CsvFile csv(file);
    CsvRow row;
    BOOST_REQUIRE(csv.next(row));
    BOOST_TEST(row.cells() == cells, boost::test_tools::per_element());
    fs::remove_all(folder);
}
