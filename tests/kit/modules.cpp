// The module that goes with a motor half: which of a catalog's modules it is, and what becomes of the half without one.
#include <boost/test/unit_test.hpp>

#include "tests/kit/kit_world.hpp"
#include "tests/rules/world.hpp"

namespace endbell::kit_world {

namespace {

/// A unit whose two-piece motor ran program PR-1 on 115 V; the part is a motor half of 1/2 hp.
struct HalfWorld {
    rule_tests::World w = rule_tests::module_job();
    PlainCatalog catalog;
    Candidate half;

    HalfWorld() {
        w.diagnosis.fault = Fault::motor_and_module;
        Remedy wants{};
        wants.cure = Cure::control_module;
        wants.program = "PR-1";
        half = candidate({wants});
        half.part.number = "H 100";
        half.part.motor = Motor{};
        half.part.motor->family = Family::constant_airflow;
        half.part.motor->includes_module = false;
        half.part.motor->ratings = {
            Rating{horsepower(0.5), plate_volts(115), {}, {}, VoltageSelection::none}};
    }
    /// The module of the rules' own world, which every rule passes, under another id.
    Module& add(const std::string& id, std::int64_t cents, int stock = 5) {
        Part part = w.part;
        part.id = part.number = id;
        part.maker = "Ferncroft";
        catalog.parts_list.push_back(part);
        catalog.offer_list.push_back(offer(id, cents, stock));
        return *catalog.parts_list.back().module;
    }
    Query asked() const {
        static const Limits own;
        return {w.job, facts_of(w.job, own), w.diagnosis, own};
    }
    KitChoice kit(const Policy& p = policy()) const {
        const Books books = books_of(catalog);
        return choose_kit(half, KitShelf(books, p), modules_beside(asked(), half, books, p));
    }
};

}  // namespace

BOOST_AUTO_TEST_CASE(the_cheapest_module_of_the_program_that_every_rule_passes_is_bought) {
    HalfWorld h;
    h.add("M-a", 16'500);
    h.add("M-b", 15'000);
    h.add("M-cheap-other-program", 100).program = "PR-2";
    h.add("M-cheap-other-volts", 100).volts = plate_volts(277);
    h.add("M-cheap-other-signal", 100).signal = SignalClass::serial;
    const KitChoice kit = h.kit();
    BOOST_TEST(ids(kit) == std::vector<std::string>{"M-b"}, boost::test_tools::per_element());
    BOOST_TEST(kit.complete());
    BOOST_TEST(kit.parts_total->minor() == 15'000);
    BOOST_REQUIRE(kit.work.size() == 1u);
    BOOST_TEST((kit.work[0].task == ShopTask::module_fit));
}

BOOST_AUTO_TEST_CASE(a_half_without_a_module_is_not_whole) {
    HalfWorld h;
    h.add("M-a", 16'500).program = "PR-2";
    const KitChoice kit = h.kit();
    BOOST_TEST(kit.parts.empty());
    BOOST_TEST(kit.uncured == std::vector<int>{0}, boost::test_tools::per_element());
    BOOST_TEST(kit.work.empty());
}

BOOST_AUTO_TEST_CASE(a_module_lists_the_half_or_drives_its_power) {
    HalfWorld h;
    Module& module = h.add("M-a", 16'500);
    module.power.reset();
    BOOST_TEST(h.kit().not_shown == std::vector<int>{0}, boost::test_tools::per_element());
    module.fits = {"h-100"};  // the half's own number, written otherwise
    BOOST_TEST(ids(h.kit()).size() == 1u);
    module.fits = {"another"};
    module.power = horsepower(0.5);
    BOOST_TEST(ids(h.kit()).size() == 1u);
    h.half.part.motor->ratings.front().power = horsepower(0.75);
    BOOST_TEST(h.kit().uncured.size() == 1u);
}

BOOST_AUTO_TEST_CASE(a_module_of_unknown_volts_is_not_shown) {
    HalfWorld h;
    h.add("M-a", 16'500).volts.reset();
    BOOST_TEST(h.kit().not_shown == std::vector<int>{0}, boost::test_tools::per_element());
    h.half.findings[0].remedies[0].program.reset();  // nobody has read the old module's program
    BOOST_TEST(h.kit().not_shown.size() == 1u);
}

BOOST_AUTO_TEST_CASE(the_shops_policy_bars_a_module_as_it_bars_an_accessory) {
    HalfWorld h;
    h.add("M-a", 16'500, 0);
    Policy p = policy();
    p.in_stock_only = true;
    BOOST_TEST(h.kit(p).uncured.size() == 1u);
    BOOST_TEST(h.kit(p).barred.size() == 1u);
    h.add("M-b", 18'000);
    BOOST_TEST(ids(h.kit(p)) == std::vector<std::string>{"M-b"}, boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(a_module_stands_beside_what_else_the_half_needs) {
    HalfWorld h;
    h.add("M-a", 16'500);
    h.catalog.parts_list.push_back(accessory("B-1", {bushing(0.5, 0.625)}));
    h.catalog.offer_list.push_back(offer("B-1", 400));
    Finding thin;
    thin.verdict = Verdict::fits_with_changes;
    thin.remedies.push_back(needs_bushing(0.5, 0.625));
    h.half.findings.push_back(thin);
    const KitChoice kit = h.kit();
    BOOST_TEST(ids(kit) == (std::vector<std::string>{"B-1", "M-a"}), boost::test_tools::per_element());
    BOOST_TEST(kit.parts_total->minor() == 16'900);
    BOOST_TEST(kit.complete());
}

}  // namespace endbell::kit_world
