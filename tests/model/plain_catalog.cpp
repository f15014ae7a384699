#include <boost/test/unit_test.hpp>

#include "engine/model/catalog.hpp"

using namespace endbell;

namespace {

Part part(std::string id) {
    Part p;
    p.id = std::move(id);
    return p;
}

Offer offer(std::string part_id, std::string branch, std::string seller) {
    Offer o;
    o.part_id = std::move(part_id);
    o.branch = std::move(branch);
    o.seller = std::move(seller);
    return o;
}

PlainCatalog shop() {
    PlainCatalog catalog;
    catalog.parts_list = {part("m-30"), part("m-10"), part("m-20")};
    catalog.offer_list = {offer("m-10", "south", "b"), offer("m-10", "north", "b"),
                          offer("m-20", "north", "a"), offer("m-10", "north", "a")};
    catalog.reference_list = {{"QX-0071", "m-10", Relation::replaces, "invented list"},
                              {"QX 71", "m-20", Relation::equivalent, "invented list"}};
    catalog.labour_list = {{"motor swap", 2500, "invented table"}};
    return catalog;
}

}  // namespace

BOOST_AUTO_TEST_CASE(parts_come_ascending_by_id) {
    std::vector<std::string> ids;
    shop().each_part([&](const Part& p) { ids.push_back(p.id); });
    BOOST_TEST(ids == (std::vector<std::string>{"m-10", "m-20", "m-30"}), boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(a_part_is_found_by_its_exact_id) {
    BOOST_TEST(shop().part("m-20").has_value());
    BOOST_TEST(!shop().part("M-20").has_value());
}

BOOST_AUTO_TEST_CASE(offers_come_by_branch_then_seller) {
    std::vector<std::string> order;
    for (const Offer& o : shop().offers("m-10")) order.push_back(o.branch + "/" + o.seller);
    BOOST_TEST(order == (std::vector<std::string>{"north/a", "north/b", "south/b"}),
               boost::test_tools::per_element());
    BOOST_TEST(shop().offers("m-30").empty());
}

BOOST_AUTO_TEST_CASE(a_cross_reference_ignores_dashes_but_no_leading_zero) {
    BOOST_TEST(shop().references("qx0071").size() == 1U);
    BOOST_TEST(shop().references("QX-71").size() == 1U);
    BOOST_TEST(shop().references("QX-71")[0].part_id == "m-20");
    BOOST_TEST(shop().references("QX-72").empty());
}

BOOST_AUTO_TEST_CASE(labour_is_known_by_task_or_not_at_all) {
    BOOST_TEST(shop().labour("motor swap")->thousandth_hours == 2500);
    BOOST_TEST(!shop().labour("shaft cut").has_value());
}
