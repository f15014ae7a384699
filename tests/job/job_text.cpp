#include "engine/job/job_text.hpp"

#include <boost/test/unit_test.hpp>

using namespace endbell;

namespace {

std::string written(const std::string& toml, const char* key, const char* raw) {
    return with_key(toml, "attic.toml", *job_key(key), raw);
}

}  // namespace

BOOST_AUTO_TEST_CASE(an_empty_file_gets_the_group_and_the_key) {
    BOOST_TEST(written("", "plate.power", "1/2 HP") == "[plate]\npower = \"1/2 HP\"\n");
}

BOOST_AUTO_TEST_CASE(a_new_group_comes_last_behind_a_blank_line) {
    BOOST_TEST(written("[unit]\nload = \"indoor blower\"", "plate.power", "1/2") ==
               "[unit]\nload = \"indoor blower\"\n\n[plate]\npower = \"1/2\"\n");
}

BOOST_AUTO_TEST_CASE(a_new_key_comes_last_in_its_group_and_comments_stay) {
    BOOST_TEST(written("# attic\n[plate]  # as read\npower = \"1/2\"  # faded\n\n# the "
                       "stat\n[controls]\nheat = \"gas\"\n",
                       "plate.mount", "band") ==
               "# attic\n[plate]  # as read\npower = \"1/2\"  # faded\nmount = \"band\"\n\n# the "
               "stat\n[controls]\nheat = \"gas\"\n");
}

BOOST_AUTO_TEST_CASE(an_empty_group_is_filled) {
    BOOST_TEST(written("[plate]\n# nothing legible\n[unit]\n", "plate.mount", "band") ==
               "[plate]\nmount = \"band\"\n# nothing legible\n[unit]\n");
    BOOST_TEST(written("[plate]", "plate.mount", "band") == "[plate]\nmount = \"band\"\n");
}

BOOST_AUTO_TEST_CASE(a_value_that_stands_is_replaced_where_it_stands) {
    BOOST_TEST(written("[plate]\nrotation = \"CW\"  # from which end?\npower = 0.5\n", "plate.rotation",
                       "CWLE") == "[plate]\nrotation = \"CWLE\"  # from which end?\npower = 0.5\n");
    // Bare numbers, lists, texts over several lines, and inline tables.
    BOOST_TEST(written("[plate]\npower = 0.5 # hp\n", "plate.power", "1/2") ==
               "[plate]\npower = \"1/2\" # hp\n");
    BOOST_TEST(written("[measured]\nwindings = [\n  \"1\", # a\n  \"2\", \"3\"]\nspeed = 1\n",
                       "measured.windings", "4; 5; 6") == "[measured]\nwindings = \"4; 5; 6\"\nspeed = 1\n");
    BOOST_TEST(written("[unit]\nname = \"\"\"two\nlines\"\"\"\n", "unit.name", "one") ==
               "[unit]\nname = \"one\"\n");
    BOOST_TEST(written("plate = { power = \"1/2\", mount = \"band\" }\n", "plate.power", "3/4") ==
               "plate = { power = \"3/4\", mount = \"band\" }\n");
}

BOOST_AUTO_TEST_CASE(columns_are_counted_in_characters_not_in_bytes) {
    BOOST_TEST(written("plate = { program = \"M\xc3\xbcller \xe2\x80\x93\", mount = \"band\" } # \xc2\xb5\n",
                       "plate.mount", "studs") ==
               "plate = { program = \"M\xc3\xbcller \xe2\x80\x93\", mount = \"studs\" } # \xc2\xb5\n");
}

BOOST_AUTO_TEST_CASE(line_ends_and_indents_are_the_files_own) {
    BOOST_TEST(written("[plate]\r\n  power = \"1/2\"\r\n", "plate.mount", "band") ==
               "[plate]\r\n  power = \"1/2\"\r\n  mount = \"band\"\r\n");
}

BOOST_AUTO_TEST_CASE(a_long_value_over_several_lines_is_not_cut_by_the_next_key) {
    BOOST_TEST(
        written("[measured]\nwindings = [\n \"1\",\n \"2\", \"3\"\n] # cold\n", "measured.speed", "1075") ==
        "[measured]\nwindings = [\n \"1\",\n \"2\", \"3\"\n] # cold\nspeed = \"1075\"\n");
}

BOOST_AUTO_TEST_CASE(the_raw_text_survives_whatever_it_holds) {
    for (const std::string raw : {"5/8\"", "a\\b", "tab\there", "\xe2\x85\x9d in", "= [x] #"}) {
        const std::string text = with_key("[unit]\n", "attic.toml", *job_key("unit.name"), raw);
        BOOST_TEST(*read_job(text, "attic.toml").unit.name == raw);
    }
}

BOOST_AUTO_TEST_CASE(a_group_without_a_line_of_its_own_is_not_guessed_at) {
    BOOST_CHECK_THROW(written("plate = { power = \"1/2\" }\n", "plate.mount", "band"), BadData);
    BOOST_CHECK_THROW(written("plate.power = \"1/2\"\n", "plate.mount", "band"), BadData);
    BOOST_CHECK_THROW(written("[plate\n", "plate.mount", "band"), BadData);
}
