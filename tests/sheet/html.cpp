#include "engine/sheet/html.hpp"

#include <boost/test/unit_test.hpp>

using namespace endbell;

namespace {

/// Two ways of one and of two years.
Chart cost_chart(const std::string& name) {
    return {name,
            name,
            name,
            YearLines{name, {{name, name, {1000, 1100}}, {"B", "USD 1,250", {900, 1000, 1250}}}},
            {}};
}

std::size_t count_of(const std::string& text, const std::string& what) {
    std::size_t count = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) ++count;
    return count;
}

}  // namespace

BOOST_AUTO_TEST_CASE(catalog_text_never_becomes_markup) {
    const std::string evil = "<script>alert(1)</script>\"onload='x' &amp;";
    Document d{evil,
               {Decision{evil, evil, {evil}}, Heading{evil}, Paragraph{evil}, Bullets{{evil}}, Steps{{evil}},
                Pairs{{{evil, evil}}}, Grid{{evil}, {{evil}}, evil}, Warning{evil, evil}, Plain{{evil}},
                cost_chart(evil), Chart{evil, evil, evil, WindowBars{evil, {{evil, evil, 1, 2, 3, 1}}}, {}}},
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

BOOST_AUTO_TEST_CASE(each_line_of_a_chart_has_its_own_dashes_marks_and_name) {
    const std::string svg = render_html(Document{"T", {cost_chart("A")}, ""});
    BOOST_TEST(count_of(svg, "<polyline") == 2u);
    BOOST_TEST(count_of(svg, "stroke-dasharray=\"none\"") == 1u);
    BOOST_TEST(count_of(svg, "stroke-dasharray=\"7 3\"") == 1u);
    BOOST_TEST(svg.find(">B USD 1,250</text>") != std::string::npos);
    BOOST_TEST(count_of(svg, "<title id=") == 1u);
    BOOST_TEST(count_of(svg, "<desc id=") == 1u);
}

BOOST_AUTO_TEST_CASE(a_line_rises_to_its_place_on_a_round_scale) {
    // The highest value is 1250: steps of 250 reach it in five. 216 is the floor, 192 the height of the scale.
    const std::string svg = render_html(Document{"T", {cost_chart("A")}, ""});
    BOOST_TEST(svg.find(">1,250</text>") != std::string::npos);
    BOOST_TEST(svg.find(">1,500</text>") == std::string::npos);
    BOOST_TEST(svg.find("points=\"46.0,62.4 154.0,47.0\"") != std::string::npos);  // 216 - 192 x 0.8, x 0.88
}

BOOST_AUTO_TEST_CASE(a_row_is_named_by_its_first_cell_and_a_table_by_its_heading) {
    const Grid t{{"tap", "cost"}, {{"1", "USD 5"}}, "note", {1}};
    const std::string html = render_html(Document{"T", {Heading{"Taps"}, t}, ""});
    BOOST_TEST(html.find("<table aria-label=\"Taps\">") != std::string::npos);
    BOOST_TEST(html.find("<th scope=\"row\" data-of=\"tap\">1</th>") != std::string::npos);
    BOOST_TEST(html.find("<td data-of=\"cost\" class=\"amount\">USD 5</td>") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_text_of_ten_thousand_characters_is_cut_and_says_so) {
    const std::string html = render_html(Document{"T", {Paragraph{std::string(10'000, 'x')}}, ""});
    BOOST_TEST(html.find("[8500 more characters]") != std::string::npos);
    BOOST_TEST(html.find(std::string(1501, 'x')) == std::string::npos);
}
