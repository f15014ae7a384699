#include "engine/base/text.hpp"

#include <boost/test/unit_test.hpp>

using namespace endbell;

BOOST_AUTO_TEST_CASE(trimming_takes_blanks_off_both_ends_only) {
    BOOST_TEST(trimmed("  1/2 hp\t\r\n") == "1/2 hp");
    BOOST_TEST(trimmed(" \t ").empty());
    BOOST_TEST(trimmed("a b") == "a b");
}

BOOST_AUTO_TEST_CASE(lower_case_touches_ascii_letters_only) {
    BOOST_TEST(lower("CCWLE-2") == "ccwle-2");
    BOOST_TEST(lower("\xc3\x84") == "\xc3\x84");  // a capital A with dots stays, whatever the locale
}

BOOST_AUTO_TEST_CASE(splitting_keeps_empty_parts_and_joining_is_its_reverse) {
    BOOST_TEST(split("a;;b", ';') == (std::vector<std::string>{"a", "", "b"}),
               boost::test_tools::per_element());
    BOOST_TEST(split("", ';').size() == 1U);
    BOOST_TEST(split("a;", ';').size() == 2U);
    BOOST_TEST(joined(split("1/2;5;CW", ';'), ";") == "1/2;5;CW");
    BOOST_TEST(joined({}, ", ").empty());
}

BOOST_AUTO_TEST_CASE(a_part_number_key_ignores_dashes_blanks_and_case_but_no_zero) {
    BOOST_TEST(number_key("eb-5 4410") == "EB54410");
    BOOST_TEST(number_key("EB.5/4410") == number_key("eb5-4410"));
    BOOST_TEST(number_key("0071") == "0071");
    BOOST_TEST(number_key("071") != number_key("0071"));
    BOOST_TEST(number_key("--").empty());
}

BOOST_AUTO_TEST_CASE(control_characters_and_direction_marks_become_visible) {
    // Code points from the Unicode standard: ESC U+001B, DEL U+007F, CSI U+009B, LRM U+200E, RLO U+202E, PDI
    // U+2069.
    BOOST_TEST(visible("\x1b[31mred") == "\\x1b[31mred");
    BOOST_TEST(visible("a\nb\tc") == "a\\x0ab\\x09c");
    BOOST_TEST(visible(std::string_view("\0x", 2)) == "\\x00x");
    BOOST_TEST(visible("\x7f") == "\\x7f");
    BOOST_TEST(visible("\xc2\x9b"
                       "31m") == "\\xc2\\x9b31m");
    BOOST_TEST(visible("a\xe2\x80\x8e"
                       "b") ==
               "a\\xe2\\x80\\x8e"
               "b");
    BOOST_TEST(visible("a\xe2\x80\xae"
                       "b") ==
               "a\\xe2\\x80\\xae"
               "b");
    BOOST_TEST(visible("a\xe2\x81\xa9"
                       "b") ==
               "a\\xe2\\x81\\xa9"
               "b");
}

BOOST_AUTO_TEST_CASE(other_letters_and_signs_pass_as_they_are) {
    for (const std::string text : {"5 \xc2\xb5"
                                   "F",
                                   "40 \xc2\xb0"
                                   "C",
                                   "M\xc3\xbcller", "\xe2\x89\xa4 0.8", "\xe2\x80\x93", "\xf0\x9f\x94\xa7"}) {
        BOOST_TEST(visible(text) == text);
    }
}

BOOST_AUTO_TEST_CASE(a_direction_mark_cut_off_at_the_end_reads_nothing_beyond_it) {
    BOOST_TEST(visible("\xe2") == "\\xe2");
    BOOST_TEST(visible("\xe2\x80") == "\\xe2\\x80");
    BOOST_TEST(visible("\xc2") == "\\xc2");
}

BOOST_AUTO_TEST_CASE(bytes_that_are_no_text_and_characters_that_cannot_be_seen_become_visible) {
    // A terminal that reads Latin-1 takes a lone 9B for CSI. Then U+061C ALM, U+200B ZWSP, U+2028 LS, U+FEFF,
    // and U+E0041, a tag letter.
    BOOST_TEST(visible("\x9b"
                       "31m") == "\\x9b31m");
    BOOST_TEST(visible("\xd8\x9c") == "\\xd8\\x9c");
    BOOST_TEST(visible("\xe2\x80\x8b") == "\\xe2\\x80\\x8b");
    BOOST_TEST(visible("\xe2\x80\xa8") == "\\xe2\\x80\\xa8");
    BOOST_TEST(visible("\xef\xbb\xbf") == "\\xef\\xbb\\xbf");
    BOOST_TEST(visible("\xf3\xa0\x81\x81") == "\\xf3\\xa0\\x81\\x81");
    // An overlong 'A', a surrogate, and what lies beyond U+10FFFF.
    BOOST_TEST(visible("\xe0\x81\x81") == "\\xe0\\x81\\x81");
    BOOST_TEST(visible("\xed\xa0\x80") == "\\xed\\xa0\\x80");
    BOOST_TEST(visible("\xf4\x90\x80\x80") == "\\xf4\\x90\\x80\\x80");
}

BOOST_AUTO_TEST_CASE(what_was_made_visible_stays_as_it_is) {
    const std::string once = visible("a\x1b\xe2\x80\xae\xff");
    BOOST_TEST(visible(once) == once);
}

BOOST_AUTO_TEST_CASE(the_beginning_of_a_text_ends_between_characters) {
    BOOST_TEST(beginning("abc", 2) == "ab");
    BOOST_TEST(beginning("abc", 3) == "abc");
    BOOST_TEST(beginning("\xc2\xb5\xc2\xb5\xc2\xb5", 2) == "\xc2\xb5\xc2\xb5");
    BOOST_TEST(beginning("a\xff\xffz", 2) == "a\xff");
    BOOST_TEST(beginning("\xe6\xa9", 1) == "\xe6");
}

BOOST_AUTO_TEST_CASE(a_long_text_is_cut_between_characters_and_says_how_much_is_left_out) {
    BOOST_TEST(shortened("abc", 3) == "abc");
    BOOST_TEST(shortened("abcde", 3) == "abc\xe2\x80\xa6 [2 more characters]");
    BOOST_TEST(shortened("\xc2\xb5\xc2\xb5\xc2\xb5", 2) ==
               "\xc2\xb5\xc2\xb5\xe2\x80\xa6 [1 more characters]");
}

BOOST_AUTO_TEST_CASE(edit_distance_counts_single_edits) {
    // The textbook example of Levenshtein's distance is kitten and sitting: three edits.
    BOOST_TEST(edit_distance("kitten", "sitting") == 3);
    BOOST_TEST(edit_distance("", "tap") == 3);
    BOOST_TEST(edit_distance("tap", "") == 3);
    BOOST_TEST(edit_distance("volts", "volts") == 0);
    BOOST_TEST(edit_distance("votls", "volts") == 1);  // two neighbours exchanged are one edit
}

BOOST_AUTO_TEST_CASE(the_nearest_word_is_offered_only_when_it_is_near) {
    const std::vector<std::string> keys{"volts", "power", "rotation"};
    BOOST_TEST(nearest("volt", keys) == "volts");
    BOOST_TEST(nearest("ROTATON", keys) == "rotation");
    BOOST_TEST(nearest("xyz", keys).empty());
    BOOST_TEST(nearest("", keys).empty());
    BOOST_TEST(nearest("volt", {}).empty());
    BOOST_TEST(nearest("bat", {"cat", "hat"}) == "cat");  // of equals the first
}
