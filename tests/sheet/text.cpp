#include "engine/sheet/text.hpp"

#include <boost/test/unit_test.hpp>

using namespace endbell;

namespace {

std::size_t longest_line(const std::string& text) {
    std::size_t longest = 0;
    std::size_t start = 0;
    for (std::size_t end = text.find('\n'); end != std::string::npos; end = text.find('\n', start)) {
        longest = std::max(longest, end - start);
        start = end + 1;
    }
    return longest;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_title_is_underlined_and_the_stamp_comes_last) {
    const Document d{"Title", {Paragraph{"One."}}, "stamp"};
    BOOST_TEST(render_text(d, 80) == "Title\n=====\nOne.\n\nstamp\n");
}

BOOST_AUTO_TEST_CASE(a_paragraph_folds_at_words) {
    const Document d{"T", {Paragraph{"aaaa bbbb cccc dddd eeee ffff gggg hhhh iiii jjjj"}}, ""};
    BOOST_TEST(render_text(d, 40) == "T\n=\naaaa bbbb cccc dddd eeee ffff gggg hhhh\niiii jjjj\n");
}

BOOST_AUTO_TEST_CASE(a_table_keeps_its_columns_apart) {
    Grid t{{"tap", "wire"}, {{"1", "G"}, {"12", "Y1"}}, ""};
    BOOST_TEST(render_text(Document{"T", {t}, ""}, 80) == "T\n=\ntap  wire\n---  ----\n1    G\n12   Y1\n");
}

BOOST_AUTO_TEST_CASE(a_wide_table_folds_into_the_width) {
    Grid t{
        {"rule", "found"},
        {{"shaft-diameter",
          std::string("word ") + std::string("word word word word word word word word word word word word")}},
        ""};
    BOOST_TEST(longest_line(render_text(Document{"T", {t}, ""}, 40)) <= 40u);
}

BOOST_AUTO_TEST_CASE(a_word_longer_than_the_line_is_cut) {
    const Document d{"T", {Paragraph{std::string(95, 'x')}}, ""};
    BOOST_TEST(longest_line(render_text(d, 40)) == 40u);
}

BOOST_AUTO_TEST_CASE(control_characters_of_a_catalog_come_out_visible) {
    const Document d{"T", {Paragraph{"a\x1b[31mb"}, Grid{{"h\x07"}, {{"c\rd"}}, ""}}, ""};
    const std::string text = render_text(d, 80);
    BOOST_TEST(text.find('\x1b') == std::string::npos);
    BOOST_TEST(text.find('\x07') == std::string::npos);
    BOOST_TEST(text.find("\\x1b[31m") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_character_of_several_bytes_counts_as_one) {
    Grid t{{"a", "b"}, {{"\xC2\xB5\xC2\xB5", "x"}, {"12", "y"}}, ""};
    BOOST_TEST(render_text(Document{"T", {t}, ""}, 80) == "T\n=\na   b\n--  -\n\xC2\xB5\xC2\xB5  x\n12  y\n");
}

BOOST_AUTO_TEST_CASE(wide_letters_take_two_columns_and_marks_none) {
    // U+6A5F is wide (UAX #11), U+0301 a mark upon the e before it.
    Grid t{{"a", "b"}, {{"\xe6\xa9\x9f", "x"}, {"e\xcc\x81", "y"}}, ""};
    BOOST_TEST(render_text(Document{"\xe6\xa9\x9f", {t}, ""}, 80) ==
               "\xe6\xa9\x9f\n==\na   b\n--  -\n\xe6\xa9\x9f  x\ne\xcc\x81   y\n");
}

BOOST_AUTO_TEST_CASE(a_word_of_wide_letters_is_cut_where_the_line_ends) {
    std::string word, line;
    for (int i = 0; i < 21; ++i) word += "\xe6\xa9\x9f";
    for (int i = 0; i < 20; ++i) line += "\xe6\xa9\x9f";
    BOOST_TEST(render_text(Document{"T", {Paragraph{word}}, ""}, 40) == "T\n=\n" + line + "\n\xe6\xa9\x9f\n");
}

BOOST_AUTO_TEST_CASE(the_decision_stands_before_its_reasons_and_steps_are_numbered) {
    const Document d{"T", {Decision{"Take", "X-1", {"It fits."}}, Steps{{"One.", "Two."}}}, ""};
    BOOST_TEST(render_text(d, 80) == "T\n=\nTake: X-1\n  It fits.\n  1. One.\n  2. Two.\n");
}

BOOST_AUTO_TEST_CASE(a_chart_is_said_as_its_table) {
    const Chart c{"Air", "in words", "How to read it.", WindowBars{},
                  Grid{{"call", "cfm"}, {{"cool", "1150"}}, ""}};
    BOOST_TEST(render_text(Document{"T", {c}, ""}, 80) ==
               "T\n=\nAir:\ncall  cfm\n----  ----\ncool  1150\nHow to read it.\n");
}

BOOST_AUTO_TEST_CASE(a_title_wider_than_the_page_is_folded) {
    const std::string title = "aaaa bbbb cccc dddd eeee ffff gggg hhhh iiii";
    BOOST_TEST(render_text(Document{title, {}, ""}, 40) ==
               "aaaa bbbb cccc dddd eeee ffff gggg hhhh\niiii\n" + std::string(40, '=') + "\n");
}
