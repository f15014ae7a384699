#include "engine/job/shop_policy.hpp"

#include <boost/test/unit_test.hpp>

#include "engine/base/problem.hpp"
#include "engine/job/job.hpp"

using namespace endbell;

BOOST_AUTO_TEST_CASE(a_shop_fills_what_the_job_leaves_out) {
    FailedUnit job = read_job("[shop]\nbranch = \"Harlow Cross\"\n", "job.toml");
    add_shop(job,
             read_shop_policy("[shop]\nbranch = \"Elmford\"\nexclude_makers = [\"Quillby\"]\n", "shop.toml"));
    BOOST_TEST(*job.shop.branch == "Harlow Cross");
    BOOST_REQUIRE(job.shop.exclude_makers.value.has_value());
    BOOST_TEST(job.shop.exclude_makers->front() == "Quillby");
}

BOOST_AUTO_TEST_CASE(a_shop_tightens_a_limit_quoted_or_dotted) {
    Limits limits;
    tighten(limits,
            read_shop_policy("[limits]\n\"static.repair_first\" = 0.6\nspeed.match = 0.03\n", "shop.toml"));
    BOOST_TEST(limits.find("static.repair_first")->value == 0.6);
    BOOST_TEST(limits.find("speed.match")->value == 0.03);
    BOOST_TEST(limits.find("speed.match")->set_by == "shop.toml");
}

BOOST_AUTO_TEST_CASE(a_looser_limit_is_refused_with_its_line) {
    Limits limits;
    const ShopPolicy shop = read_shop_policy("[limits]\n\"static.repair_first\" = 1.2\n", "shop.toml");
    BOOST_CHECK_EXCEPTION(tighten(limits, shop), BadData,
                          [](const BadData& wrong) { return wrong.problems().at(0).at.line == 2; });
    BOOST_TEST(limits.find("static.repair_first")->value == 0.8);
}

BOOST_AUTO_TEST_CASE(an_unknown_limit_names_a_near_one) {
    Limits limits;
    const ShopPolicy shop = read_shop_policy("[limits]\n\"static.repair_frist\" = 0.6\n", "shop.toml");
    BOOST_CHECK_EXCEPTION(tighten(limits, shop), BadData, [](const BadData& wrong) {
        return std::string(wrong.what()).find("static.repair_first") != std::string::npos;
    });
}

BOOST_AUTO_TEST_CASE(what_belongs_to_one_job_is_refused_in_a_shops_file) {
    BOOST_CHECK_THROW(read_shop_policy("[plate]\npower = \"1/2\"\n", "shop.toml"), BadData);
    BOOST_CHECK_THROW(read_shop_policy("[shop]\nbrnach = \"Elmford\"\n", "shop.toml"), BadData);
}
