// 1,000 tables damaged at random: every row that went in is accepted or set aside, and nothing else happens.
#include <boost/test/unit_test.hpp>
#include <random>

#include "engine/base/problem.hpp"
#include "engine/catalog/database.hpp"
#include "engine/catalog/stored_catalog.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

namespace {

class Damage {
  public:
    explicit Damage(unsigned seed) : random_(seed) {}

    std::size_t below(std::size_t end) { return end == 0 ? 0 : random_() % end; }

    std::string of(std::string bytes, std::size_t keep) {
        const std::size_t times = 1 + below(12);
        for (std::size_t i = 0; i < times; ++i) once(bytes, keep);
        return bytes;
    }

  private:
    /// The header line is left alone nine times in ten: a file whose header is broken is refused whole.
    void once(std::string& bytes, std::size_t keep) {
        if (bytes.size() <= keep + 1) return;
        const std::size_t at = keep + below(bytes.size() - keep);
        static constexpr char bytes_that_matter[] = "\"\",;\t\n\r=\0\xff\xfe\xc3\xa9\x80'+-/.\x1b";
        static const std::string nasty(bytes_that_matter, sizeof bytes_that_matter - 1);
        switch (below(9)) {
            case 0:
                bytes[at] = static_cast<char>(random_());
                break;
            case 1:
                bytes.erase(at, 1 + below(40));
                break;
            case 2:
                bytes.insert(at, 1, nasty[below(nasty.size())]);
                break;
            case 3:
                bytes[at] = nasty[below(nasty.size())];
                break;
            case 4:
                bytes.insert(at, bytes.substr(keep + below(bytes.size() - keep), below(200)));
                break;
            case 5:
                bytes.resize(at);
                break;
            case 6:
                bytes.insert(at, std::string(1 + below(3), '"'));
                break;
            case 7:
                bytes.insert(at, std::string(below(5000), 'x'));
                break;
            default:
                bytes.insert(at, "\n\n,,,,\n");
                break;
        }
    }
    std::mt19937 random_;
};

std::int64_t rows_stored(const fs::path& catalog) {
    SQLite::Database db = open_finished(catalog);
    std::int64_t rows = 0;
    for (const Table& table : tables())
        rows += db.execAndGet("SELECT count(*) FROM " + quoted(table.name)).getInt64();
    return rows;
}

}  // namespace

BOOST_AUTO_TEST_CASE(rows_in_are_accepted_or_set_aside_in_a_thousand_damaged_files) {
    const SmallFolder whole;
    std::vector<std::string> names;
    std::vector<std::string> texts;
    for (const Table& table : tables()) {
        names.emplace_back(table.name);
        texts.push_back(read_file(whole.tables() / (names.back() + ".csv")));
    }
    int damaged = 0;
    int refused = 0;
    std::int64_t set_aside = 0;
    for (unsigned seed = 1; damaged < 1000; ++seed) {
        Damage damage(seed);
        Folder folder;
        for (std::size_t i = 0; i < names.size(); ++i) {
            const bool spare = damage.below(3) == 0;
            const std::size_t keep = damage.below(50) == 0 ? 0 : texts[i].find('\n') + 1;
            if (!spare) ++damaged;
            folder.table(names[i], spare ? texts[i] : damage.of(texts[i], keep));
        }
        ImportOptions options;
        options.set_aside = folder.path / "aside";
        try {
            const ImportReport report = folder.import(options);
            std::int64_t in = 0;
            for (const FileReport& file : report.files) {
                BOOST_REQUIRE_MESSAGE(file.rows_in == file.accepted + file.set_aside,
                                      "seed " << seed << " " << file.file);
                in += file.rows_in;
            }
            BOOST_REQUIRE(report.rows_in == in);
            BOOST_REQUIRE(report.accepted == rows_stored(folder.catalog()));
            BOOST_REQUIRE((report.set_aside == 0) == report.problems.empty());
            set_aside += report.set_aside;
            const StoredCatalog catalog(folder.catalog());
            catalog.each_part([&](const Part& part) { catalog.offers(part.id); });
        } catch (const BadData& bad) {
            ++refused;
            BOOST_REQUIRE(!bad.problems().empty());
            BOOST_REQUIRE(!fs::exists(folder.catalog()));
        }
    }
    BOOST_TEST_MESSAGE(damaged << " files, " << set_aside << " rows set aside, " << refused
                               << " imports refused");
    BOOST_TEST(set_aside > 1000);
    BOOST_TEST(refused < 60);
}
