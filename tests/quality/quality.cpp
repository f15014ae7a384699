// Each contradiction is written into a catalog that has no other, and must be the only one found.
#include "engine/quality/quality.hpp"

#include <boost/test/unit_test.hpp>

#include "tests/catalog/fixture.hpp"

using namespace endbell;
using namespace endbell::testing;

namespace {

struct Shop {
    std::string parts = "M,motor,K,1\n";
    std::string
        motors;  // part_id,family,phase,poles,frame,shaft_diameter_in,shaft_length_in,shaft_flat_in,capacitor_uf,rotation
    std::string ratings;  // part_id,rating,power_hp,volts,amps,speed_rpm
    std::string taps;     // part_id,tap,torque_ozft,speed_rpm
    std::string references;
    std::string offers = "M,S,10.00,USD,2026-01-01\n";
    std::string excludes;

    QualityReport check(const std::optional<Date>& as_of = {}) const {
        Folder folder;
        folder.table("parts", "part_id,kind,maker,part_number\n" + parts);
        folder.table("motors",
                     "part_id,family,phase,poles,frame,shaft_diameter_in,shaft_length_in,shaft_flat_in,"
                     "capacitor_uf,rotation\n" +
                         motors);
        folder.table("motor_ratings", "part_id,rating,power_hp,volts,amps,speed_rpm\n" + ratings);
        folder.table("taps", "part_id,tap,torque_ozft,speed_rpm\n" + taps);
        folder.table("cross_references", "old_number,part_id,relation,source\n" + references);
        folder.table("offers", "part_id,seller,price,currency,as_of\n" + offers);
        folder.table("accessory_excludes", "part_id,other_part_id\n" + excludes);
        const ImportReport report = folder.import();
        for (const Problem& p : report.problems) BOOST_TEST_MESSAGE(to_text(p));
        BOOST_REQUIRE(report.set_aside == 0);
        return quality_of(folder.catalog(), {as_of, 100});
    }
    std::string kinds(const std::optional<Date>& as_of = {}) const {
        std::string all;
        for (const KindCount& each : check(as_of).counts)
            all += (all.empty() ? "" : ", ") + each.kind + " " + std::to_string(each.count);
        return all;
    }
};

Shop sound() {
    Shop shop;
    shop.motors = "M,capacitor run,1,6,48,0.5,6,4,5,reversible\n";
    shop.ratings = "M,1,0.5,208-230,2.6,1075\n";
    return shop;
}
/// 0.5 hp at 1050 rpm is 0.5 * 5252.113 / 1050 = 2.501 lb-ft = 40.0 oz-ft.
Shop sound_electronic() {
    Shop shop;
    shop.motors = "M,constant torque,1,,48,0.5,6,4,,reversible\n";
    shop.ratings = "M,1,0.5,115,6.8,1050\n";
    shop.taps = "M,1,20,\nM,5,40,1050\n";
    return shop;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_sound_catalog_has_nothing_to_doubt) {
    BOOST_TEST(sound().kinds() == "");
    BOOST_TEST(sound_electronic().kinds() == "");
    BOOST_TEST(sound().check().whole);
}

BOOST_AUTO_TEST_CASE(torque_times_speed_may_be_15_percent_off_the_power_and_no_more) {
    Shop shop = sound_electronic();
    shop.taps = "M,5,45.5,1050\n";  // 13.7 % above
    BOOST_TEST(shop.kinds() == "");
    shop.taps = "M,5,33,1050\n";  // 17.5 % below
    BOOST_TEST(shop.kinds() == "power 1");
    shop.taps = "M,5,47,1050\n";  // 17.5 % above: also more than rated
    BOOST_TEST(shop.kinds() == "power 1, tap torque 1");
}

BOOST_AUTO_TEST_CASE(amps_below_the_shaft_power_or_above_twice_the_code_table_are_doubted) {
    Shop shop = sound();
    shop.ratings = "M,1,0.5,208-230,1.5,1075\n";  // 0.5 hp is 372.8 W; at 230 V no less than 1.62 A
    BOOST_TEST(shop.kinds() == "current 1");
    shop.ratings = "M,1,0.5,208-230,11,1075\n";  // NEC Table 430.248: 1/2 hp, 208 V 5.4 A
    BOOST_TEST(shop.kinds() == "current 1");
    shop.ratings = "M,1,0.5,115,9.8,1075\n";  // the table's own value
    BOOST_TEST(shop.kinds() == "");
}

BOOST_AUTO_TEST_CASE(a_frame_and_a_shaft_that_disagree_are_doubted_unless_the_frame_says_special) {
    Shop shop = sound();
    shop.motors = "M,capacitor run,1,6,56,0.5,6,4,5,reversible\n";  // 56 has 5/8
    BOOST_TEST(shop.kinds() == "frame 1");
    shop.motors = "M,capacitor run,1,6,56Z,0.5,6,4,5,reversible\n";
    BOOST_TEST(shop.kinds() == "");
}

BOOST_AUTO_TEST_CASE(a_capacitor_on_an_electronic_or_a_three_phase_motor_is_doubted) {
    Shop shop = sound_electronic();
    shop.motors = "M,constant torque,1,,48,0.5,6,4,5,reversible\n";
    BOOST_TEST(shop.kinds() == "capacitor 1");
    shop = sound();
    shop.motors = "M,three phase,3,6,48,0.5,6,4,5,reversible\n";
    BOOST_TEST(shop.kinds() == "phase 1");
}

BOOST_AUTO_TEST_CASE(a_bare_cw_a_long_flat_and_a_speed_no_induction_motor_reaches_are_doubted) {
    Shop shop = sound();
    shop.motors = "M,capacitor run,1,6,48,0.5,6,4,5,CW\n";
    BOOST_TEST(shop.kinds() == "rotation 1");
    shop.motors = "M,capacitor run,1,6,48,0.5,6,7,5,reversible\n";
    BOOST_TEST(shop.kinds() == "shaft flat 1");
    shop.motors = "M,capacitor run,1,8,48,0.5,6,4,5,reversible\n";  // eight poles at 60 Hz: 900 rpm
    BOOST_TEST(shop.kinds() == "speed and poles 1");
}

BOOST_AUTO_TEST_CASE(a_price_of_nothing_and_an_old_price_are_doubted) {
    Shop shop = sound();
    shop.offers = "M,S,0,USD,2026-01-01\n";
    BOOST_TEST(shop.kinds() == "zero price 1");
    shop = sound();
    BOOST_TEST(shop.kinds(date_of(2026, 1, 31)) == "");  // 30 days
    BOOST_TEST(shop.kinds(date_of(2026, 2, 1)) == "stale price 1");
    shop.offers = "";
    BOOST_TEST(shop.kinds() == "no offer 1");
}

BOOST_AUTO_TEST_CASE(duplicates_dead_links_and_cycles_are_found) {
    Shop shop = sound();
    shop.parts += "M2,motor,K,\"0-0 1\"\nM3,motor,K,001\n";
    shop.offers += "M2,S,1,USD,2026-01-01\nM3,S,1,USD,2026-01-01\n";
    shop.motors +=
        "M2,capacitor run,1,6,48,0.5,6,4,5,reversible\nM3,capacitor run,1,6,48,0.5,6,4,5,reversible\n";
    BOOST_TEST(shop.kinds() == "duplicate 2");
    shop = sound();
    shop.references = "OLD,NOWHERE,replaces,list\nOLD2,M,replaces,list\n";
    BOOST_TEST(shop.kinds() == "dead link 1");
    shop.references = "OLD,MID,supersedes,list\nMID,M,supersedes,list\n";  // a link on the way
    BOOST_TEST(shop.kinds() == "");
    shop.references = "X,A,supersedes,list\nA,B,supersedes,list\nB,A,supersedes,list\nB,M,supersedes,list\n";
    BOOST_TEST(shop.kinds() == "cycle 2");
}

BOOST_AUTO_TEST_CASE(a_part_without_its_own_row_is_found) {
    Shop shop = sound();
    shop.motors = "";
    shop.ratings = "";
    BOOST_TEST(shop.kinds() == "no own row 1");
}

BOOST_AUTO_TEST_CASE(missing_fields_are_counted_with_the_rule_that_needs_them) {
    Shop shop = sound();
    shop.motors = "M,capacitor run,1,6,48,,6,4,,reversible\n";
    const QualityReport report = shop.check();
    const auto count = [&](const std::string& column, const std::string& rule) {
        for (const MissingField& each : report.missing) {
            if (each.column == column && each.rule == rule) return each.missing;
        }
        return std::int64_t{0};
    };
    BOOST_TEST(count("shaft_diameter_in", "shaft-diameter") == 1);
    BOOST_TEST(count("capacitor_uf", "capacitor") == 1);
    BOOST_TEST(count("family", "family") == 0);
    BOOST_TEST(count("tap_rule", "tap-rule") == 0);  // a rule for another family
}
