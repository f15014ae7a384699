#include <boost/test/unit_test.hpp>

#include "kit_world.hpp"

using namespace endbell;
using namespace endbell::kit_world;

namespace {

using Ids = std::vector<std::string>;

PlainCatalog shop() {
    PlainCatalog c;
    c.parts_list = {accessory("B-1", {bushing(0.375, 0.5)}), accessory("B-2", {bushing(0.375, 0.5)}),
                    accessory("C-1", {capacitor(7.5, 370)}), accessory("C-2", {capacitor(7.5, 440)}),
                    accessory("K-1", {bushing(0.375, 0.5), capacitor(7.5, 440)})};
    c.offer_list = {offer("B-1", 400), offer("B-2", 350), offer("C-1", 900), offer("C-2", 1000),
                    offer("K-1", 1400)};
    c.labour_list = {{"bushing fit", 250, "shop table"},
                     {"capacitor swap", 300, "shop table"},
                     {"shaft cut", 500, "shop table"},
                     {"airflow setup", 1000, "shop table"}};
    return c;
}

const Remedy thin_shaft = needs_bushing(0.375, 0.5);
const Remedy new_capacitor = needs_capacitor(7.5, 370);

}  // namespace

BOOST_AUTO_TEST_CASE(nothing_to_cure_needs_no_kit_and_costs_nothing) {
    const KitChoice kit = choose_kit(candidate({}), books_of(shop()), policy());
    BOOST_TEST(kit.complete());
    BOOST_TEST(kit.parts.empty());
    BOOST_TEST(kit.parts_total->minor() == 0);
    BOOST_TEST(kit.labour_total->minor() == 0);
}

BOOST_AUTO_TEST_CASE(the_cheapest_set_of_parts_is_chosen) {
    const KitChoice kit = choose_kit(candidate({thin_shaft, new_capacitor}), books_of(shop()), policy());
    BOOST_TEST(ids(kit) == (Ids{"B-2", "C-1"}));  // 3.50 + 9.00; the combined K-1 costs 14.00
    BOOST_TEST(kit.parts_total->minor() == 1250);
    BOOST_TEST(kit.labour_total->minor() == 6875);  // 0.25 h and 0.30 h at 125.00: 31.25 + 37.50
    BOOST_TEST(kit.complete());
}

BOOST_AUTO_TEST_CASE(runners_up_say_on_what_they_lost) {
    const KitChoice kit = choose_kit(candidate({thin_shaft, new_capacitor}), books_of(shop()), policy());
    BOOST_REQUIRE(kit.runners_up.size() == 2);
    BOOST_TEST(kit.runners_up[0].part_ids == (Ids{"B-1", "C-1"}));
    BOOST_TEST(kit.runners_up[0].parts_total->minor() == 1300);
    BOOST_TEST((kit.runners_up[0].lost_on == LostOn::price));
    BOOST_TEST(kit.runners_up[1].part_ids == (Ids{"B-2", "C-2"}));
}

BOOST_AUTO_TEST_CASE(an_equal_price_is_lost_on_lead_time_then_parts_then_id) {
    PlainCatalog c = shop();
    c.offer_list = {offer("B-1", 400, 0, 3), offer("B-2", 400)};
    BOOST_TEST((choose_kit(candidate({thin_shaft}), books_of(c), policy()).runners_up.at(0).lost_on ==
                LostOn::lead_time));
    c.offer_list = {offer("B-1", 400), offer("B-2", 400)};
    const KitChoice kit = choose_kit(candidate({thin_shaft}), books_of(c), policy());
    BOOST_TEST(ids(kit) == Ids{"B-1"});
    BOOST_TEST((kit.runners_up.at(0).lost_on == LostOn::part_id));
    c.offer_list = {offer("B-1", 500), offer("C-1", 900), offer("K-1", 1400)};
    const KitChoice whole = choose_kit(candidate({thin_shaft, new_capacitor}), books_of(c), policy());
    BOOST_TEST(ids(whole) == Ids{"K-1"});
    BOOST_TEST((whole.runners_up.at(0).lost_on == LostOn::added_parts));
}

BOOST_AUTO_TEST_CASE(equal_remedies_of_two_findings_are_cured_once) {
    const KitChoice kit = choose_kit(candidate({thin_shaft, thin_shaft}), books_of(shop()), policy());
    BOOST_TEST(kit.remedies.size() == 1U);
    BOOST_TEST(kit.parts.size() == 1U);
    BOOST_TEST(kit.work.size() == 1U);
}

BOOST_AUTO_TEST_CASE(work_alone_needs_no_part_and_is_done_once) {
    const KitChoice kit =
        choose_kit(candidate({work(Cure::shaft_cut), work(Cure::airflow_setup)}), books_of(shop()), policy());
    BOOST_TEST(kit.complete());
    BOOST_TEST(kit.parts.empty());
    BOOST_REQUIRE(kit.work.size() == 2);
    BOOST_TEST((kit.work[0].task == ShopTask::shaft_cut));
    BOOST_TEST(kit.labour_total->minor() == 18750);  // 1.5 h at 125.00
}

BOOST_AUTO_TEST_CASE(a_task_without_hours_leaves_the_labour_open) {
    const KitChoice kit = choose_kit(candidate({work(Cure::lead_parking)}), books_of(shop()), policy());
    BOOST_TEST(!kit.work.at(0).hours_known);
    BOOST_TEST(!kit.labour_total);
}

BOOST_AUTO_TEST_CASE(a_remedy_that_nothing_cures_stays_uncured) {
    const KitChoice kit =
        choose_kit(candidate({needs_bushing(0.5, 0.625), new_capacitor}), books_of(shop()), policy());
    BOOST_TEST(kit.uncured == std::vector<int>{0});
    BOOST_TEST(kit.not_shown.empty());
    BOOST_TEST(!kit.complete());
    BOOST_TEST(ids(kit) == Ids{"C-1"});
    BOOST_REQUIRE(kit.work.size() == 1);  // no work for what is not cured
}

BOOST_AUTO_TEST_CASE(an_unknown_size_is_neither_cured_nor_uncured) {
    Remedy open = thin_shaft;
    open.to.reset();
    const KitChoice kit = choose_kit(candidate({open}), books_of(shop()), policy());
    BOOST_TEST(kit.uncured.empty());
    BOOST_TEST(kit.not_shown == std::vector<int>{0});
    BOOST_TEST(!kit.complete());
}

BOOST_AUTO_TEST_CASE(what_the_policy_bars_is_told_apart_from_what_does_not_exist) {
    PlainCatalog c = shop();
    c.offer_list = {offer("B-1", 400, 0, 9), offer("B-2", 350, 0, 9)};
    Policy p = policy();
    p.longest_lead_days = 3;
    const KitChoice kit = choose_kit(candidate({thin_shaft, needs_bushing(0.5, 0.625)}), books_of(c), p);
    BOOST_TEST(kit.uncured == (std::vector<int>{0, 1}));
    BOOST_TEST(kit.barred == std::vector<int>{0});
}

BOOST_AUTO_TEST_CASE(an_excluded_maker_s_accessory_is_not_used) {
    PlainCatalog c = shop();
    c.parts_list[1].maker = "Oddfellow Works";
    Policy p = policy();
    p.exclude_makers = {"oddfellow works"};
    BOOST_TEST(ids(choose_kit(candidate({thin_shaft}), books_of(c), p)) == Ids{"B-1"});
}

BOOST_AUTO_TEST_CASE(accessories_that_exclude_each_other_leave_the_larger_kit_and_say_so) {
    PlainCatalog c;
    c.parts_list = {accessory("B-1", {bushing(0.375, 0.5)}, {"C-1"}),
                    accessory("C-1", {capacitor(7.5, 440)})};
    c.offer_list = {offer("B-1", 400), offer("C-1", 900)};
    const KitChoice kit = choose_kit(candidate({thin_shaft, new_capacitor}), books_of(c), policy());
    BOOST_TEST(ids(kit) == Ids{"B-1"});
    BOOST_TEST(kit.uncured == std::vector<int>{1});
    BOOST_TEST(kit.excluded == std::vector<int>{1});
}

BOOST_AUTO_TEST_CASE(a_part_without_a_price_leaves_the_total_open_and_loses_to_a_priced_one) {
    PlainCatalog c = shop();
    c.offer_list = {offer("B-1", 90'000)};
    BOOST_TEST(ids(choose_kit(candidate({thin_shaft}), books_of(c), policy())) == Ids{"B-1"});
    c.offer_list.clear();
    const KitChoice kit = choose_kit(candidate({thin_shaft}), books_of(c), policy());
    BOOST_TEST(ids(kit) == Ids{"B-1"});
    BOOST_TEST(!kit.parts_total);
    BOOST_TEST(!kit.lead_known);
}

BOOST_AUTO_TEST_CASE(a_price_in_another_currency_is_no_price) {
    PlainCatalog c = shop();
    c.offer_list = {offer("B-1", 400)};
    c.offer_list[0].price = Money(400, *currency("CAD"));
    BOOST_TEST(!choose_kit(candidate({thin_shaft}), books_of(c), policy()).parts_total);
}

BOOST_AUTO_TEST_CASE(two_bushings_in_a_chain_do_where_no_single_one_does) {
    PlainCatalog c = shop();
    c.parts_list.push_back(accessory("B-3", {bushing(0.5, 0.625)}));
    c.offer_list.push_back(offer("B-3", 500));
    const KitChoice kit = choose_kit(candidate({needs_bushing(0.375, 0.625)}), books_of(c), policy());
    BOOST_TEST(ids(kit) == (Ids{"B-2", "B-3"}));
    BOOST_TEST(kit.parts_total->minor() == 850);
    BOOST_TEST(kit.runners_up.at(0).part_ids == (Ids{"B-1", "B-3"}));
}

BOOST_AUTO_TEST_CASE(shuffling_the_catalog_changes_nothing) {
    PlainCatalog c = shop();
    const KitChoice before = choose_kit(candidate({thin_shaft, new_capacitor}), books_of(c), policy());
    std::reverse(c.parts_list.begin(), c.parts_list.end());
    std::reverse(c.offer_list.begin(), c.offer_list.end());
    const KitChoice after = choose_kit(candidate({thin_shaft, new_capacitor}), books_of(c), policy());
    BOOST_TEST(ids(before) == ids(after));
    BOOST_TEST(before.runners_up.size() == after.runners_up.size());
}

BOOST_AUTO_TEST_CASE(one_shelf_serves_many_candidates) {
    const PlainCatalog c = shop();
    const KitShelf shelf(books_of(c), policy());
    BOOST_TEST(shelf.items().size() == 5U);
    BOOST_TEST(ids(choose_kit(candidate({thin_shaft}), shelf)) == Ids{"B-2"});
    BOOST_TEST(ids(choose_kit(candidate({new_capacitor}), shelf)) == Ids{"C-1"});
}

BOOST_AUTO_TEST_CASE(a_part_no_longer_made_is_used_only_from_stock) {
    PlainCatalog c = shop();
    c.parts_list[1].status = PartStatus::discontinued;
    BOOST_TEST(ids(choose_kit(candidate({thin_shaft}), books_of(c), policy())) == Ids{"B-2"});
    c.offer_list[1].stock = 0;
    BOOST_TEST(ids(choose_kit(candidate({thin_shaft}), books_of(c), policy())) == Ids{"B-1"});
}

BOOST_AUTO_TEST_CASE(counted_needs_cost_the_sum_of_the_cheapest_relay_for_each) {
    // Without exclusions every counted need stands alone: count times the cheapest relay with enough poles.
    std::uint64_t state = 7;  // a linear congruential generator: the same on every machine
    const auto below = [&](int end) {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<int>((state >> 33) % static_cast<std::uint64_t>(end));
    };
    for (int round = 0; round < 200; ++round) {
        PlainCatalog c;
        std::vector<std::pair<int, std::int64_t>> relays;  // poles, price
        for (int i = 0; i < 6; ++i) {
            relays.emplace_back(i == 0 ? 3 : 1 + below(3), 100 * (1 + below(9)));
            CureRow row{};
            row.cure = Cure::isolation_relay;
            row.coil = volt(24);
            row.poles = relays.back().first;
            c.parts_list.push_back(accessory("R-" + std::to_string(i), {row}));
            c.offer_list.push_back(offer(c.parts_list.back().id, relays.back().second));
        }
        std::vector<Remedy> remedies;
        std::int64_t wanted = 0;
        for (int poles = 1; poles <= 3; ++poles) {
            Remedy r = work(Cure::isolation_relay);
            r.poles = poles;
            r.count = 1 + below(3);
            std::int64_t cheapest = 1'000'000;
            for (const auto& relay : relays) {
                if (relay.first >= poles) cheapest = std::min(cheapest, relay.second);
            }
            wanted += cheapest * r.count;
            remedies.push_back(r);
        }
        const KitChoice kit = choose_kit(candidate(remedies), books_of(c), policy());
        BOOST_REQUIRE(kit.complete());
        BOOST_TEST(kit.parts_total->minor() == wanted);
    }
}

BOOST_AUTO_TEST_CASE(relays_are_counted_and_one_relay_serves_one_remedy) {
    // Two single-pole relays and one double-pole one: 2 x 5.00 + 8.00, against 3 x 8.00 of the larger kind
    // alone.
    const auto relay = [](int poles) {
        CureRow row{};
        row.cure = Cure::isolation_relay;
        row.coil = volt(24);
        row.poles = poles;
        return row;
    };
    const auto wants = [](int poles, int count) {
        Remedy r = work(Cure::isolation_relay);
        r.poles = poles;
        r.count = count;
        return r;
    };
    PlainCatalog c;
    c.parts_list = {accessory("R-1", {relay(1)}), accessory("R-2", {relay(2)})};
    c.offer_list = {offer("R-1", 500), offer("R-2", 800)};
    c.labour_list = {{"relay fit", 400, "shop table"}};
    const KitChoice kit = choose_kit(candidate({wants(1, 2), wants(2, 1)}), books_of(c), policy());
    BOOST_TEST(ids(kit) == (Ids{"R-1", "R-2"}));
    BOOST_TEST(kit.parts[0].count == 2);
    BOOST_TEST(kit.parts[1].count == 1);
    BOOST_TEST(kit.parts_total->minor() == 1800);
    BOOST_TEST(kit.labour_total->minor() == 15'000);  // three times 0.4 h at 125.00
    BOOST_TEST(kit.runners_up.at(0).part_ids == (Ids{"R-2", "R-2", "R-2"}));

    c.offer_list[0] = offer("R-1", 900);  // now the larger kind is the cheaper one for both
    const KitChoice larger = choose_kit(candidate({wants(1, 2), wants(2, 1)}), books_of(c), policy());
    BOOST_TEST(ids(larger) == Ids{"R-2"});
    BOOST_TEST(larger.parts[0].count == 3);
    BOOST_TEST(larger.parts_total->minor() == 2400);
}

BOOST_AUTO_TEST_CASE(an_adapter_between_mounts_is_judged_against_the_part_s_own_body) {
    CureRow row{};
    row.cure = Cure::mount_adapter;
    row.mount = Mount::studs;
    row.from = inch(5.6);
    PlainCatalog c;
    c.parts_list = {accessory("A-1", {row})};
    c.offer_list = {offer("A-1", 1'100)};
    Remedy other_mount = work(Cure::mount_adapter);
    other_mount.mount = Mount::studs;
    Candidate part = candidate({other_mount});
    part.part.motor = Motor{};
    BOOST_TEST(choose_kit(part, books_of(c), policy()).not_shown.size() == 1);
    part.part.motor->body_diameter = inch(5.6);
    BOOST_TEST(ids(choose_kit(part, books_of(c), policy())) == std::vector<std::string>{"A-1"});
    part.part.motor->body_diameter = inch(5.0);
    BOOST_TEST(choose_kit(part, books_of(c), policy()).uncured.size() == 1);
}
