#include "engine/sheet/html.hpp"

#include <boost/test/unit_test.hpp>

using namespace endbell;

BOOST_AUTO_TEST_CASE(catalog_text_never_becomes_markup) {
    const std::string evil = "<script>alert(1)</script>\"onload='x' &amp;";
    Document d{evil,
               {Heading{evil}, Paragraph{evil}, Bullets{{evil}}, Pairs{{{evil, evil}}},
                Grid{{evil}, {{evil}}, evil}, Warning{evil, evil}, Plain{{evil}}},
               evil};
    const std::string html = render_html(d);
    BOOST_TEST(html.find("<script") == std::string::npos);
    BOOST_TEST(html.find("\"onload") == std::string::npos);
    BOOST_TEST(html.find("&amp;amp;") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_sheet_asks_for_nothing_from_outside) {
    const std::string html = render_html(Document{"T", {Paragraph{"p"}}, "s"});
    for (const char* way : {"http:", "https:", "src=", "url(", "@import", "<link"})
        BOOST_TEST(html.find(way) == std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_direction_mark_is_shown_and_not_obeyed) {
    BOOST_TEST(escape_html("a\xE2\x80\xAEz") == "a\\xe2\\x80\\xaez");
}
