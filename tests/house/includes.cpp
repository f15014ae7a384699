// Includes run leftwards only, outside libraries stay behind their folder, and the stages read nothing but
// their arguments.
#include <boost/test/unit_test.hpp>
#include <map>
#include <set>
#include <sstream>

#include "tests/house/repository.hpp"

using namespace house;

namespace {

/// A line of engine/CMakeLists.txt: a folder and the folders that it links.
struct Room {
    std::string folder;
    std::vector<std::string> linked;
};

std::vector<Room> rooms_of(const std::string& cmake) {
    std::vector<Room> rooms;
    const std::regex line(R"(\nengine_folder\((\w+)([^)]*)\))");
    for (auto it = std::sregex_iterator(cmake.begin(), cmake.end(), line); it != std::sregex_iterator(); ++it)
        rooms.push_back({(*it)[1], captures((*it)[2].str(), R"(endbell_(\w+))")});
    return rooms;
}

/// The folders that each folder may include, itself too: the closure of what it links.
using Reach = std::map<std::string, std::set<std::string>>;

/// REQUIRES: a folder links only folders named on earlier lines; else that is the complaint.
Reach reach_of(const std::vector<Room>& rooms, Complaints& complaints) {
    Reach reach;
    for (const auto& [folder, links] : rooms) {
        std::set<std::string>& allowed = reach[folder];
        allowed.insert(folder);
        for (const std::string& linked : links) {
            if (reach.count(linked) == 0 || linked == folder) {
                complaints.push_back(folder + " links " + linked + ", which is not to its left");
                continue;
            }
            allowed.insert(reach[linked].begin(), reach[linked].end());
        }
    }
    return reach;
}

std::string folder_of(const std::string& path) {
    const auto parts = captures("/" + path, "/([^/]+)");
    return parts.front() == "engine" && parts.size() > 2 ? parts[1] : parts.front();
}

Complaints rightward_includes(const std::vector<File>& sources, const Reach& reach) {
    Complaints complaints;
    for (const File& file : sources) {
        const std::string from = folder_of(file.path);
        for (const std::string& header : captures(file.text, R"re(#include "([^"]+)")re")) {
            const std::string to = folder_of(header);
            const auto allowed = reach.find(from);
            const bool fine = from == "cli" || (allowed != reach.end() && allowed->second.count(to) > 0);
            if (!fine) complaints.push_back(file.path + " includes " + header);
        }
    }
    return complaints;
}

/// What a folder links and includes no header of: the links say what a folder needs, not what others need.
Complaints unused_links(const std::vector<Room>& rooms, const std::vector<File>& sources) {
    std::map<std::string, std::set<std::string>> included;
    for (const File& file : sources) {
        for (const std::string& folder : captures(file.text, R"re(#include "engine/(\w+)/)re"))
            included[folder_of(file.path)].insert(folder);
    }
    Complaints complaints;
    for (const auto& [folder, links] : rooms) {
        for (const std::string& linked : links) {
            if (included[folder].count(linked) == 0)
                complaints.push_back(folder + " links " + linked + " and includes nothing of it");
        }
    }
    return complaints;
}

/// Who may include which outside header. fmt is for everyone; the standard library has no dot or slash.
struct Behind {
    std::string header;  // a pattern
    std::vector<std::string> folders;
};

const std::vector<Behind> outside_libraries{
    {"SQLiteCpp/.*|sqlite3\\.h", {"catalog", "import"}},
    {"csv\\.h|iconv\\.h", {"csv"}},
    {"toml\\+\\+/.*",
     {"job", "import", "cli"}},  // jobs, column maps of an import, and its own code brought along
    {"nlohmann/.*", {"sheet"}},
    {"xxhash\\.h", {"base"}},
    {"CLI/.*", {"cli"}},
    {"fmt/.*", {}},
    {"malloc\\.h", {"cli"}},  // how much the allocator takes at a time
    {"unistd\\.h|fcntl\\.h|signal\\.h|sys/.*", {"base", "catalog", "index", "cli"}},
};

Complaints strayed_headers(const std::vector<File>& sources) {
    Complaints complaints;
    for (const File& file : sources) {
        for (const std::string& header : captures(file.text, "#include <([^>]+)>")) {
            if (header.find_first_of("./") == std::string::npos) continue;
            const auto behind =
                std::find_if(outside_libraries.begin(), outside_libraries.end(),
                             [&](const Behind& b) { return std::regex_match(header, std::regex(b.header)); });
            if (behind == outside_libraries.end()) {
                complaints.push_back(file.path + " includes <" + header + ">, which no folder owns");
            } else if (!behind->folders.empty() && !contains(behind->folders, folder_of(file.path))) {
                complaints.push_back(file.path + " includes <" + header + ">, which stays in " +
                                     behind->folders.front());
            }
        }
    }
    return complaints;
}

/// Folders that touch files: everything else is value in, value out.
const std::set<std::string> file_folders{"base",  "job",  "csv",     "catalog", "import",
                                         "index", "find", "quality", "cli"};
/// Clocks, dice, locales and the environment: the same input must give the same bytes.
const std::string uncertain = R"re((_clock::now|\btime\(nullptr\)|#include <(?:ctime|random|locale)>))re";

Complaints impure(const std::vector<File>& sources) {
    Complaints complaints;
    for (const File& file : sources) {
        std::string pattern = uncertain;
        const std::string folder = folder_of(file.path);
        if (folder != "cli") pattern.insert(pattern.size() - 1, R"re(|\bgetenv\()re");
        if (file_folders.count(folder) == 0) {
            pattern.insert(pattern.size() - 1, R"re(|#include <(?:filesystem|fstream|iostream|thread)>)re");
        }
        for (const std::string& what : captures(file.text, pattern))
            complaints.push_back(file.path + ": " + what);
    }
    return complaints;
}

const std::string small_cmake =
    "\nengine_folder(base)\nengine_folder(model endbell_base)\nengine_folder(kit endbell_model)\n";

Reach small_reach() {
    Complaints none;
    return reach_of(rooms_of(small_cmake), none);
}

}  // namespace

BOOST_AUTO_TEST_CASE(includes_run_leftwards_only) {
    Complaints order;
    const Reach reach = reach_of(rooms_of(read(root() / "engine/CMakeLists.txt")), order);
    BOOST_TEST(reach.size() >= 15U);
    CHECK_NO_COMPLAINTS(order);
    CHECK_NO_COMPLAINTS(rightward_includes(sources(), reach));
}

BOOST_AUTO_TEST_CASE(an_include_to_the_right_is_caught) {
    const File bad{"engine/model/part.hpp", "#include \"engine/kit/kit.hpp\"\n"};
    const File good{"engine/kit/kit.cpp",
                    "#include \"engine/base/text.hpp\"\n#include \"engine/kit/kit.hpp\"\n"};
    BOOST_TEST(rightward_includes({bad}, small_reach()).size() == 1U);
    BOOST_TEST(rightward_includes({good}, small_reach()).empty());
    BOOST_TEST(
        rightward_includes({{"engine/new/a.cpp", "#include \"engine/new/a.hpp\"\n"}}, small_reach()).size() ==
        1U);
}

BOOST_AUTO_TEST_CASE(a_folder_that_links_to_its_right_is_caught) {
    Complaints complaints;
    reach_of(rooms_of("\nengine_folder(base endbell_kit)\nengine_folder(kit)\n"), complaints);
    BOOST_TEST(complaints.size() == 1U);
}

BOOST_AUTO_TEST_CASE(a_folder_links_only_what_it_includes) {
    CHECK_NO_COMPLAINTS(unused_links(rooms_of(read(root() / "engine/CMakeLists.txt")), sources()));
}

BOOST_AUTO_TEST_CASE(a_link_that_nothing_uses_is_caught) {
    const std::vector<Room> rooms = rooms_of(small_cmake);
    const File model{"engine/model/part.hpp", "#include \"engine/base/text.hpp\"\n"};
    const File kit{"engine/kit/kit.cpp", "#include \"engine/model/part.hpp\"\n"};
    const File base_only{"engine/kit/kit.cpp", "#include \"engine/base/text.hpp\"\n"};
    BOOST_TEST(unused_links(rooms, {model, kit}).empty());
    BOOST_TEST(unused_links(rooms, {model, base_only}).size() == 1U);
    BOOST_TEST(unused_links(rooms, {model}).size() == 1U);
}

BOOST_AUTO_TEST_CASE(outside_libraries_stay_behind_their_folder) {
    CHECK_NO_COMPLAINTS(strayed_headers(sources()));
}

BOOST_AUTO_TEST_CASE(a_strayed_library_is_caught) {
    BOOST_TEST(strayed_headers({{"engine/kit/kit.cpp", "#include <SQLiteCpp/SQLiteCpp.h>\n"}}).size() == 1U);
    BOOST_TEST(strayed_headers({{"engine/kit/kit.cpp", "#include <boost/any.hpp>\n"}}).size() == 1U);
    BOOST_TEST(
        strayed_headers({{"engine/catalog/db.cpp", "#include <SQLiteCpp/SQLiteCpp.h>\n#include <map>\n"}})
            .empty());
}

BOOST_AUTO_TEST_CASE(stages_read_no_file_no_clock_and_no_dice) {
    CHECK_NO_COMPLAINTS(impure(sources()));
}

BOOST_AUTO_TEST_CASE(a_stage_with_a_clock_or_a_file_is_caught) {
    BOOST_TEST(impure({{"engine/cost/ledger.cpp", "auto t = std::chrono::system_clock::now();\n"}}).size() ==
               1U);
    BOOST_TEST(impure({{"engine/cost/ledger.cpp", "#include <fstream>\n"}}).size() == 1U);
    BOOST_TEST(impure({{"engine/catalog/csv.cpp", "#include <fstream>\n"}}).empty());
    BOOST_TEST(impure({{"engine/catalog/csv.cpp", "std::getenv(\"X\")\n"}}).size() == 1U);
    BOOST_TEST(impure({{"cli/main.cpp", "std::getenv(\"X\")\n"}}).empty());
    BOOST_TEST(impure({{"cli/main.cpp", "#include <random>\n"}}).size() == 1U);
}
