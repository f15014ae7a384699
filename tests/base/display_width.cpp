#include "engine/base/display_width.hpp"

#include <utf8proc.h>

#include <array>
#include <boost/test/unit_test.hpp>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <string>

using namespace endbell;

namespace {

std::string utf8_of(utf8proc_int32_t code) {
    std::array<utf8proc_uint8_t, 4> bytes{};
    const auto size = utf8proc_encode_char(code, bytes.data());
    return {reinterpret_cast<const char*>(bytes.data()), static_cast<std::size_t>(size)};
}

std::string output_of(const std::string& command) {
    std::string text;
    std::FILE* pipe = popen(command.c_str(), "r");
    if (pipe == nullptr) return text;
    for (int c = std::fgetc(pipe); c != EOF; c = std::fgetc(pipe)) text += static_cast<char>(c);
    pclose(pipe);
    return text;
}

/// Why utf8proc 2.8, which knows Unicode 14, counts otherwise; empty where nothing explains it.
std::string reason_to_differ(utf8proc_int32_t code, int ours, int theirs) {
    const utf8proc_category_t category = utf8proc_category(code);
    const bool hangul = (code >= 0x1160 && code <= 0x11ff) || (code >= 0xd7b0 && code <= 0xd7fb);
    if (category == UTF8PROC_CATEGORY_CC && ours == 1 && theirs == 0)
        return "a control character: is escaped before it is counted";
    if ((category == UTF8PROC_CATEGORY_ZL || category == UTF8PROC_CATEGORY_ZP) && ours == 1 && theirs == 0)
        return "a separator of lines or paragraphs: is escaped before it is counted";
    if (category == UTF8PROC_CATEGORY_MC && ours == 1 && theirs == 0)
        return "a mark that takes room of its own, as its category says (Mc)";
    if (hangul && ours == 0 && theirs == 1)
        return "a vowel or last consonant of Hangul: is drawn into the letter before it";
    if (category == UTF8PROC_CATEGORY_CN && ours == 2 && theirs == 1)
        return "not assigned yet, or in Unicode 15, in a block that UAX #11 holds to be wide throughout";
    if (category == UTF8PROC_CATEGORY_CN && ours == 0 && theirs == 1)
        return "a mark that came with Unicode 15";
    return "";
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_code_point_takes_as_many_columns_as_utf8proc_says_or_it_is_known_why_not) {
    std::map<std::string, int> differences;
    for (utf8proc_int32_t code = 0; code <= 0x10ffff; ++code) {
        if (code >= 0xd800 && code <= 0xdfff) continue;  // no characters
        const int ours = display_width(utf8_of(code));
        const int theirs = utf8proc_charwidth(code);
        if (ours == theirs) continue;
        const std::string reason = reason_to_differ(code, ours, theirs);
        BOOST_CHECK_MESSAGE(!reason.empty(), std::hex << code << ": " << ours << ", not " << theirs);
        ++differences[reason];
    }
    BOOST_TEST(differences.size() <= 6U);
}

BOOST_AUTO_TEST_CASE(columns_are_those_of_the_standards_own_examples) {
    // UAX #11: ASCII is narrow, a fullwidth A (U+FF21) and an ideograph (U+6A5F) wide, a halfwidth katakana (U+FF76)
    // narrow; a combining acute (U+0301) is category Mn.
    BOOST_TEST(display_width("") == 0);
    BOOST_TEST(display_width("1/2 hp") == 6);
    BOOST_TEST(display_width("\xef\xbc\xa1") == 2);
    BOOST_TEST(display_width("\xe6\xa9\x9f\xe6\xa9\x9f") == 4);
    BOOST_TEST(display_width("\xef\xbd\xb6") == 1);
    BOOST_TEST(display_width("e\xcc\x81") == 1);
    BOOST_TEST(display_width("\xc2\xb5") == 1);          // micro sign
    BOOST_TEST(display_width("\xf0\x9f\x94\xa7") == 2);  // a wrench
    BOOST_TEST(display_width("a\xff") == 2);             // a byte that is no UTF-8
}

BOOST_AUTO_TEST_CASE(a_text_is_cut_between_letters_with_the_marks_upon_them) {
    const std::string ideographs = "\xe6\xa9\x9f\xe6\xa9\x9f";
    BOOST_TEST(fitting("abc", 2) == "ab");
    BOOST_TEST(fitting("abc", 9) == "abc");
    BOOST_TEST(fitting(ideographs, 3) == "\xe6\xa9\x9f");
    BOOST_TEST(fitting("xe\xcc\x81y", 2) == "xe\xcc\x81");
    BOOST_TEST(fitting("", 3).empty());
}

BOOST_AUTO_TEST_CASE(who_cuts_a_text_up_comes_to_its_end_in_however_narrow_a_column) {
    for (const int columns : {-3, 0, 1}) {
        BOOST_TEST(fitting("\xe6\xa9\x9f\xe6\xa9\x9f", columns) == "\xe6\xa9\x9f");
        BOOST_TEST(fitting("\xcc\x81x", columns) == "\xcc\x81x");  // a mark upon nothing takes no room
    }
}

BOOST_AUTO_TEST_CASE(the_table_is_what_its_maker_makes_of_the_installed_unicode_data) {
    if (!std::filesystem::exists("/usr/share/unicode/EastAsianWidth.txt")) return;
    const std::string folder = ENDBELL_ROOT "/engine/base/";
    std::ifstream file(folder + "width_table.hpp", std::ios::binary);
    const std::string committed(std::istreambuf_iterator<char>(file), {});
    const std::string made = output_of("python3 '" + folder + "width_table.py' --print");
    const auto version = [](const std::string& text) { return text.substr(0, text.find('\n')); };
    if (version(made) != version(committed)) return;  // another release of the standard
    BOOST_CHECK_MESSAGE(made == committed, "run engine/base/width_table.py");
}
