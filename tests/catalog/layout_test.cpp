// What spreadsheets and suppliers make of a table.
#include <iconv.h>

#include <boost/test/unit_test.hpp>

#include "engine/catalog/stored_catalog.hpp"
#include "engine/csv/csv_file.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

namespace {

std::string encoded(const std::string& utf8, const char* encoding) {
    iconv_t converter = iconv_open(encoding, "UTF-8");
    std::string in = utf8;
    std::string out(utf8.size() * 4 + 8, '\0');
    char* from = in.data();
    std::size_t from_left = in.size();
    char* to = out.data();
    std::size_t to_left = out.size();
    BOOST_REQUIRE(iconv(converter, &from, &from_left, &to, &to_left) != static_cast<std::size_t>(-1));
    iconv_close(converter);
    out.resize(out.size() - to_left);
    return out;
}

std::vector<CsvRow> rows_of(const fs::path& file) {
    CsvFile csv(file);
    std::vector<CsvRow> rows;
    CsvRow row;
    while (csv.next(row)) rows.push_back(row);
    return rows;
}

// Accents on purpose: they are what an encoding can spoil.
const std::string neutral_parts =
    "part_id,kind,maker,part_number,status,description\r\n"
    "M-1,motor,Brück & Söhne Beispiel,00123,active,\"½ hp, ruhig\"\r\n"
    "M-2,motor,Brück & Söhne Beispiel,0042,discontinued,\r\n";
const std::string neutral_offers =
    "part_id,seller,branch,price,currency,stock,as_of\r\n"
    "M-1,Eckladen,Süd,1234.50,EUR,3,2026-01-31\r\n"
    "M-2,Eckladen,Süd,99.00,EUR,0,2026-02-01\r\n";

std::string neutral_digest() {
    Folder folder;
    folder.table("parts", neutral_parts);
    folder.table("offers", neutral_offers);
    return folder.import().digest;
}

std::string with_semicolons(std::string text) {
    bool quoted = false;
    for (char& c : text) {
        if (c == '"') quoted = !quoted;
        if (c == ',' && !quoted) c = ';';
    }
    return text;
}

}  // namespace

BOOST_AUTO_TEST_CASE(utf16_with_semicolons_is_the_same_catalog) {
    for (const char* encoding : {"UTF-16LE", "UTF-16BE"}) {
        for (const char* mark : {"\xef\xbb\xbf", ""}) {
            Folder folder;
            folder.table("parts", encoded(mark + with_semicolons(neutral_parts), encoding));
            folder.table("offers", encoded(mark + with_semicolons(neutral_offers), encoding));
            const ImportReport report = folder.import();
            BOOST_TEST(report.digest == neutral_digest());
            BOOST_TEST(report.files.front().encoding == encoding);
            BOOST_TEST(report.files.front().delimiter == ';');
        }
    }
}

BOOST_AUTO_TEST_CASE(a_byte_order_mark_and_a_sep_line_are_the_same_catalog) {
    Folder folder;
    folder.table("parts", "\xef\xbb\xbfsep=;\r\n" + with_semicolons(neutral_parts));
    folder.table("offers", "\xef\xbb\xbf" + neutral_offers);
    BOOST_TEST(folder.import().digest == neutral_digest());
}

BOOST_AUTO_TEST_CASE(tabs_are_a_delimiter) {
    Folder folder;
    std::string tabbed = with_semicolons(neutral_offers);
    for (char& c : tabbed) c = c == ';' ? '\t' : c;
    folder.table("parts", neutral_parts);
    folder.table("offers", tabbed);
    BOOST_TEST(folder.import().digest == neutral_digest());
}

BOOST_AUTO_TEST_CASE(
    windows_1252_with_a_suppliers_headers_through_a_map_is_the_same_catalog_and_is_remembered) {
    Folder folder;
    write_file(folder.path / "supplier.toml", R"(
[tables.parts]
file = "artikel.csv"
ignore = ["Bemerkung"]
[tables.parts.columns]
part_id = "Art.-Nr."
kind = { value = "motor" }
maker = "Hersteller"
part_number = "Nummer"
status = { from = "Zustand", words = { "lieferbar" = "active", "ausgelaufen" = "discontinued" } }
description = "Größe"
[tables.offers]
file = "preise.csv"
[tables.offers.columns]
part_id = "Art.-Nr."
seller = { value = "Eckladen" }
branch = "Ort"
price = { from = "Preis", decimal = "comma" }
currency = { value = "EUR" }
stock = "Bestand"
as_of = { from = "Stand", date = "d.m.y" }
)");
    write_file(folder.tables() / "artikel.csv",
               encoded("Art.-Nr.;Hersteller;Nummer;Zustand;Größe;Bemerkung\r\n"
                       "M-1;Brück & Söhne Beispiel;=\"00123\";lieferbar;½ hp, ruhig;x\r\n"
                       "M-2;Brück & Söhne Beispiel;0042;Ausgelaufen;;\r\n",
                       "CP1252"));
    write_file(folder.tables() / "preise.csv",
               encoded("Art.-Nr.;Ort;Preis;Bestand;Stand\r\nM-1;Süd;1.234,50;3;31.1.2026\r\n"
                       "M-2;Süd;99;0;01.02.2026\r\n",
                       "CP1252"));
    ImportOptions options;
    options.columns = folder.path / "supplier.toml";
    const ImportReport report = folder.import(options);
    for (const Problem& p : report.problems) BOOST_TEST_MESSAGE(to_text(p));
    BOOST_TEST(report.digest == neutral_digest());
    BOOST_TEST(report.files.front().encoding == "Windows-1252");
    BOOST_TEST(report.files.front().columns == "mapped");

    // A map that is new is kept even when the content is the same.
    BOOST_TEST((folder.import(options).outcome == ImportOutcome::unchanged));

    // The next list has the same header and another price: no map is given, the file has another name.
    fs::rename(folder.tables() / "preise.csv", folder.tables() / "februar.csv");
    write_file(folder.tables() / "februar.csv",
               "art.-nr.,ort,PREIS,Bestand,Stand\r\nM-1,Süd,\"1.300,00\",3,28.2.2026\r\n");
    const ImportReport later = folder.import();
    BOOST_TEST(later.set_aside == 0);
    BOOST_TEST(later.files.back().columns == "remembered");
    BOOST_TEST(StoredCatalog(folder.catalog()).offers("M-1").at(0).price->minor() == 130000);
}

BOOST_AUTO_TEST_CASE(one_sheet_saved_once_for_each_table_is_remembered_for_each) {
    Folder folder;
    write_file(folder.path / "sheet.toml",
               "[tables.parts]\nignore = [\"Net\"]\n[tables.parts.columns]\npart_id = \"Item\"\n"
               "maker = \"Brand\"\npart_number = \"Item\"\nkind = { value = \"motor\" }\n"
               "[tables.offers]\nignore = [\"Brand\"]\n[tables.offers.columns]\npart_id = \"Item\"\n"
               "price = \"Net\"\nseller = { value = \"Corner Shop\" }\nas_of = { value = \"2026-01-15\" }\n"
               "currency = { value = \"USD\" }\n");
    const auto sheet = [&](const std::string& bytes) {
        folder.table("parts", bytes);
        folder.table("offers", bytes);
    };
    sheet("Item,Brand,Net\nM-1,Example,80.00\n");
    ImportOptions options;
    options.columns = folder.path / "sheet.toml";
    BOOST_TEST(folder.import(options).accepted == 2);
    sheet("Item,Brand,Net\nM-1,Example,82.00\nM-2,Example,95.00\n");
    const ImportReport later = folder.import();
    BOOST_TEST(later.accepted == 4);
    BOOST_TEST(later.files.at(0).table == "parts");
    BOOST_TEST(later.files.at(1).table == "offers");
    BOOST_TEST(later.files.at(0).columns == "remembered");
    BOOST_TEST(StoredCatalog(folder.catalog()).offers("M-1").at(0).price->minor() == 8200);
}

BOOST_AUTO_TEST_CASE(a_map_with_mistakes_names_each_line) {
    Folder folder;
    folder.table("parts", neutral_parts);
    write_file(folder.path / "map.toml",
               "[tables.ofers]\n[tables.offers.columns]\nprise = \"P\"\nprice = { from = \"P\", decimal = "
               "\"dot\" }\n");
    ImportOptions options;
    options.columns = folder.path / "map.toml";
    BOOST_CHECK_EXCEPTION(folder.import(options), BadData, [](const BadData& bad) {
        return bad.problems().size() == 3 && bad.problems()[0].at.line >= 1 &&
               std::string(bad.what()).find("did you mean 'offers'?") != std::string::npos &&
               std::string(bad.what()).find("did you mean 'price'?") != std::string::npos;
    });
}

BOOST_AUTO_TEST_CASE(quotes_hold_line_breaks_delimiters_and_quotes) {
    Folder folder;
    write_file(folder.path / "x.csv", "a,b\n\"one\r\ntwo\",\"x,\"\"y\"\"\"\n5.6\",last");
    const std::vector<CsvRow> rows = rows_of(folder.path / "x.csv");
    BOOST_REQUIRE(rows.size() == 2U);
    BOOST_TEST(rows[0][0] == "one\r\ntwo");
    BOOST_TEST(rows[0][1] == "x,\"y\"");
    BOOST_TEST(rows[0].line == 2);
    BOOST_TEST(rows[1].line == 4);
    BOOST_TEST(rows[1][0] == "5.6\"");  // an inch mark is no quote
    BOOST_TEST(rows[1].bytes == "5.6\",last");
}

BOOST_AUTO_TEST_CASE(a_quote_that_is_never_closed_costs_one_line) {
    Folder folder;
    write_file(folder.path / "x.csv", "a,b\n1,2\n\"3,4\n5,6\n7,8\n");
    const std::vector<CsvRow> rows = rows_of(folder.path / "x.csv");
    BOOST_REQUIRE(rows.size() == 4U);
    BOOST_TEST(rows[1].damage == "a closing quote");
    BOOST_TEST(rows[1].bytes == "\"3,4\n");
    BOOST_TEST(rows[2][0] == "5");
    BOOST_TEST(rows[3].line == 5);
}

BOOST_AUTO_TEST_CASE(old_line_ends_and_blank_lines_are_no_rows) {
    Folder folder;
    write_file(folder.path / "x.csv", "a,b\r1,2\r\r,\r3,4");
    BOOST_TEST(rows_of(folder.path / "x.csv").size() == 2U);
}

BOOST_AUTO_TEST_CASE(all_bytes_of_a_file_are_in_its_head_and_its_rows) {
    Folder folder;
    for (const char* encoding : {"UTF-8", "UTF-16LE", "CP1252"}) {
        const std::string bytes = encoded("sep=;\r\na;b\r\n1;\"two\r\nlines\"\r\n\"ü;x\r\n3;4", encoding);
        write_file(folder.path / "x.csv", bytes);
        CsvFile csv(folder.path / "x.csv");
        std::string all = csv.head_bytes();
        CsvRow row;
        while (csv.next(row)) all += row.bytes;
        BOOST_TEST((all == bytes), encoding);
    }
}

BOOST_AUTO_TEST_CASE(a_line_without_an_end_is_read_in_bounded_pieces) {
    Folder folder;
    write_file(folder.path / "x.csv", "a,b\n" + std::string(300'000, 'x') + "\n1,2\n");
    const std::vector<CsvRow> rows = rows_of(folder.path / "x.csv");
    std::size_t longest = 0;
    for (const CsvRow& row : rows) longest = std::max(longest, row.bytes.size());
    BOOST_TEST(longest <= longest_row);
    BOOST_TEST(rows.back()[0] == "1");
}

BOOST_AUTO_TEST_CASE(set_aside_rows_keep_their_bytes_and_import_once_mended) {
    Folder folder;
    folder.table("parts", encoded("\xef\xbb\xbf" + with_semicolons(neutral_parts), "UTF-16LE"));
    const std::string head = encoded("\xef\xbb\xbfpart_id;seller;price;currency;as_of\r\n", "UTF-16LE");
    const std::string bad_row = encoded("M-2;Süd;12,5,0;EUR;2026-02-01\r\n", "UTF-16LE");
    folder.table("offers", head + encoded("M-1;Süd;10.00;EUR;2026-02-01\r\n", "UTF-16LE") + bad_row);
    ImportOptions options;
    options.set_aside = folder.path / "aside";
    const ImportReport report = folder.import(options);
    BOOST_REQUIRE(report.set_aside == 1);
    const fs::path aside = folder.path / "aside" / "offers.set-aside.csv";
    BOOST_TEST(report.files.back().set_aside_file == aside.string());
    BOOST_TEST((read_file(aside) == head + bad_row));
    BOOST_TEST(read_file(folder.path / "aside" / "reasons.txt").find("price") != std::string::npos);

    write_file(aside, head + encoded("M-2;Süd;12.50;EUR;2026-02-01\r\n", "UTF-16LE"));
    ImportOptions rows;
    rows.mode = ImportMode::rows;
    const ImportReport mended = import_catalog({aside}, folder.catalog(), rows);
    BOOST_TEST(mended.accepted == 1);
    const StoredCatalog catalog(folder.catalog());
    BOOST_TEST(catalog.generation() == 2);
    BOOST_TEST(catalog.offers("M-1").size() == 1U);
    BOOST_TEST(catalog.offers("M-2").at(0).price->minor() == 1250);
}

BOOST_AUTO_TEST_CASE(set_aside_rows_may_not_go_where_the_input_is) {
    SmallFolder folder;
    ImportOptions options;
    options.set_aside = folder.tables();
    BOOST_CHECK_THROW(folder.import(options), BadData);
}

BOOST_AUTO_TEST_CASE(broken_utf8_sets_its_own_row_aside_only) {
    Folder folder;
    folder.table(
        "parts",
        "part_id,kind,maker,part_number\nM-1,motor,Brück Söhne,1\nM-2,motor,Br\xff,2\nM-3,motor,Brück,3\n");
    const ImportReport report = folder.import();
    BOOST_TEST(report.accepted == 2);
    BOOST_TEST(report.set_aside == 1);
    BOOST_TEST(report.problems.front().expected == "UTF-8 text");
}

BOOST_AUTO_TEST_CASE(a_row_with_a_cell_too_few_or_too_many_is_set_aside) {
    Folder folder;
    folder.table("parts",
                 "part_id,kind,maker,part_number,,\nM-1,motor,K,1,,\nM-2,motor,K\nM-3,motor,K,3,,,,\nM-4,"
                 "motor,K,4,,,x\n");
    const ImportReport report = folder.import();
    BOOST_TEST(report.accepted == 2);
    BOOST_TEST(report.set_aside == 2);
}
