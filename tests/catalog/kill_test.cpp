// Killed at each named write point, the catalog is the old generation or the new one, whole, and the next
// import works.
#include <sys/wait.h>
#include <unistd.h>

#include <boost/test/unit_test.hpp>
#include <csignal>

#include "engine/catalog/generations.hpp"
#include "engine/catalog/stored_catalog.hpp"
#include "engine/quality/quality.hpp"
#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

namespace {

/// Imports in a child that kills itself at `point`.
void import_and_die(const SmallFolder& folder, const std::string& point) {
    const pid_t child = fork();
    BOOST_REQUIRE(child >= 0);
    if (child == 0) {
        ImportOptions options;
        options.at_write_point = [&](std::string_view here) {
            if (here == point) raise(SIGKILL);
        };
        try {
            folder.import(options);
        } catch (...) {
        }
        _exit(1);
    }
    int status = 0;
    BOOST_REQUIRE(waitpid(child, &status, 0) == child);
    BOOST_TEST(WIFSIGNALED(status), point);
    BOOST_TEST(WTERMSIG(status) == SIGKILL);
}

}  // namespace

BOOST_AUTO_TEST_CASE(killed_at_a_write_point_the_catalog_is_the_old_or_the_new_one) {
    for (const std::string point :
         {"begun", "rows written", "file closed", "on disk", "old kept", "swapped"}) {
        BOOST_TEST_CONTEXT(point) {
            SmallFolder folder;
            const std::string old_digest = folder.import().digest;
            folder.table("labour_tasks", "task,hours,source\nmotor swap,9,shop\n");
            ImportOptions dry;
            dry.dry_run = true;
            const std::string new_digest = folder.import(dry).digest;
            import_and_die(folder, point);

            const QualityReport after = quality_of(folder.catalog());
            BOOST_TEST(after.whole);
            BOOST_TEST(after.digest == (point == "swapped" ? new_digest : old_digest));
            BOOST_TEST(generations(folder.catalog()).size() == (point == "swapped" ? 2U : 1U));

            const ImportReport next = folder.import();
            BOOST_TEST(next.digest == new_digest);
            BOOST_TEST(!fs::exists(folder.catalog().string() + "-importing"));
        }
    }
}

BOOST_AUTO_TEST_CASE(killed_during_the_first_import_there_is_no_catalog) {
    SmallFolder folder;
    import_and_die(folder, "on disk");
    BOOST_TEST(!fs::exists(folder.catalog()));
    folder.import();
    BOOST_TEST(StoredCatalog(folder.catalog()).generation() == 1);
}
