// A folder of the engine is a room: one namespace of its name, and one place at which a reader starts.
#include <boost/test/unit_test.hpp>
#include <map>

#include "tests/house/repository.hpp"

using namespace house;

namespace {

/// Files of engine/ROOM that open another namespace than endbell::ROOM.
Complaints strangers(const std::vector<File>& files) {
    Complaints complaints;
    for (const File& file : files) {
        const auto path = captures("/" + file.path, "/([^/]+)");
        if (path.front() != "engine" || path.size() < 3) continue;
        const std::string own = "endbell::inline " + path[1];
        const auto opened = captures(file.text, "\\nnamespace (endbell[\\w: ]*) \\{");
        for (const std::string& name : opened) {
            if (name != own && name.rfind(own + "::", 0) != 0)
                complaints.push_back(file.path + " opens " + name + ", not " + own);
        }
    }
    return complaints;
}

std::vector<std::string> starts(const std::vector<File>& files) {
    std::vector<std::string> paths;
    for (const File& file : files) {
        if (file.text.find("// START HERE") != std::string::npos) paths.push_back(file.path);
    }
    return paths;
}

/// Rooms whose purpose is told at the top of no header, or of several: "// engine/kit: the cheapest set ...".
Complaints without_one_purpose(const std::vector<File>& files) {
    std::map<std::string, int> told;
    for (const File& file : files) {
        const auto room = captures(file.path, "^engine/(\\w+)/");
        if (room.empty()) continue;
        const std::string first = file.text.substr(0, file.text.find('\n'));
        told[room[0]] +=
            captures(first, "^// (?:START HERE. )?engine/(" + room[0] + "): \\w").empty() ? 0 : 1;
    }
    Complaints complaints;
    for (const auto& [room, times] : told) {
        if (times != 1)
            complaints.push_back("engine/" + room + " tells its purpose " + std::to_string(times) + " times");
    }
    return complaints;
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_file_is_in_the_namespace_of_its_folder) {
    CHECK_NO_COMPLAINTS(strangers(sources()));
}

BOOST_AUTO_TEST_CASE(a_file_in_another_namespace_is_caught) {
    BOOST_TEST(strangers({{"engine/kit/a.hpp", "#pragma once\nnamespace endbell::inline kit {\n"}}).empty());
    BOOST_TEST(strangers({{"engine/kit/a.hpp", "#pragma once\nnamespace endbell {\n"}}).size() == 1U);
    BOOST_TEST(strangers({{"engine/kit/a.hpp", "#pragma once\nnamespace endbell::inline kits {\n"}}).size() ==
               1U);
}

BOOST_AUTO_TEST_CASE(there_is_one_place_to_start) {
    const std::vector<std::string> expected{"engine/select/select.hpp"};
    BOOST_TEST(starts(sources()) == expected, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(a_second_place_to_start_is_seen) {
    BOOST_TEST(starts({{"engine/a.hpp", "// START HERE. A"}, {"engine/b.hpp", "// START HERE. B"}}).size() ==
               2U);
}

BOOST_AUTO_TEST_CASE(every_room_tells_its_purpose_at_the_top_of_one_header) {
    CHECK_NO_COMPLAINTS(without_one_purpose(sources()));
}

BOOST_AUTO_TEST_CASE(a_room_without_a_purpose_or_with_two_is_caught) {
    const File kit{"engine/kit/kit.hpp", "// engine/kit: accessories.\n"};
    const File cover{"engine/kit/cover.hpp", "// A set cover.\n"};
    const File verb{"cli/verb.hpp", "// A verb.\n"};
    BOOST_TEST(without_one_purpose({kit, cover, verb}).empty());
    BOOST_TEST(without_one_purpose({cover, verb}).size() == 1U);
    BOOST_TEST(without_one_purpose({kit, {"engine/kit/shelf.hpp", kit.text}}).size() == 1U);
}
