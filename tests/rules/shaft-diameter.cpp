#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// Common practice: equal is a slip fit, thinner takes a bushing, thicker never goes in.
BOOST_AUTO_TEST_CASE(equal_slips_thinner_takes_a_bushing_thicker_never_goes_in) {
    World w = blower();
    SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
    w.motor().shaft_diameter = inch(0.625);
    SAYS(w("shaft-diameter"), Verdict::does_not_fit, "too thick");
    w.motor().shaft_diameter = inch(5.0 / 16);
    const Finding f = w("shaft-diameter");
    SAYS(f, Verdict::fits_with_changes, "bushing");
    BOOST_TEST(f.remedies.at(0).from->in(inch) == 0.3125);
    BOOST_TEST(f.remedies.at(0).to->in(inch) == 0.5);
}

// 14 mm is 0.5512 in.; 1/2 in. is 12.700 mm; no standard IEC shaft equals an inch bore.
BOOST_AUTO_TEST_CASE(millimetres_are_lengths_too) {
    World w = blower();
    w.motor().shaft_diameter = millimetre(14);
    SAYS(w("shaft-diameter"), Verdict::does_not_fit, "too thick");
    w.motor().shaft_diameter = millimetre(12.7);
    SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
    w.motor().shaft_diameter = millimetre(11);
    SAYS(w("shaft-diameter"), Verdict::fits_with_changes, "bushing");
}

// 1/2 in. less 0.002 is 0.498. Above the bore nothing is allowed: 0.5001 into 0.5 would be driven on with a hammer.
BOOST_AUTO_TEST_CASE(the_clearance_is_below_the_bore_and_never_above_it) {
    World w = blower();
    for (const double thicker : {0.5 + 1e-6, 0.5001, 0.502}) {
        w.motor().shaft_diameter = inch(thicker);
        SAYS(w("shaft-diameter"), Verdict::does_not_fit, "too thick");
        BOOST_TEST(w("shaft-diameter").limit_id.empty());
    }
    w.motor().shaft_diameter = inch(0.498);
    SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
    BOOST_TEST(std::get<Length>(w("shaft-diameter").limit.value).in(inch) == 0.498,
               boost::test_tools::tolerance(1e-12));
    w.motor().shaft_diameter = inch(0.4979);
    SAYS(w("shaft-diameter"), Verdict::fits_with_changes, "bushing");
}

// 25.4 mm an inch: 12.7 mm is 1/2, 9.525 is 3/8, 19.05 is 3/4, whichever side says millimetres. 19 mm is 0.748 in.
BOOST_AUTO_TEST_CASE(a_size_is_the_same_size_in_both_units) {
    for (const auto& [mm, in] : {std::pair{12.7, 0.5}, {9.525, 0.375}, {19.05, 0.75}, {22.225, 0.875}}) {
        World w = blower();
        w.job.measured.bore = known(inch(in), Origin::measured);
        w.motor().shaft_diameter = millimetre(mm);
        SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
        w.job.measured.bore = known(millimetre(mm), Origin::measured);
        w.motor().shaft_diameter = inch(in);
        SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
    }
    World w = blower();
    w.job.measured.bore = known(millimetre(19), Origin::measured);  // a size of its own, not a short 3/4
    w.motor().shaft_diameter = millimetre(19);
    SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
    w.motor().shaft_diameter = inch(0.75);
    SAYS(w("shaft-diameter"), Verdict::does_not_fit, "too thick");
}

// 0.499 is 0.001 under 1/2: a caliper that reads low in a 1/2 bore, or a bore that takes no 1/2 shaft.
BOOST_AUTO_TEST_CASE(a_bore_just_under_a_standard_size_is_read_again) {
    World w = blower();
    for (const double read : {0.4981, 0.499, 0.4999}) {
        w.job.measured.bore = known(inch(read), Origin::measured);
        for (const double shaft : {0.5, 0.499, 0.4985, 0.3125}) {
            w.motor().shaft_diameter = inch(shaft);
            const Finding f = w("shaft-diameter");
            SAYS(f, Verdict::not_shown, "bore just under a standard size");
            BOOST_TEST(f.asks.size() == 1U);
            BOOST_TEST(f.asks.front() == "measured.bore");
            BOOST_TEST(std::get<Length>(f.computed.value).in(inch) == 0.5);
            BOOST_TEST(f.limit_id == "bore.standard_short");
        }
        // Thicker than even the standard size: reading again changes nothing.
        w.motor().shaft_diameter = inch(0.5001);
        SAYS(w("shaft-diameter"), Verdict::does_not_fit, "too thick");
    }
}

// 0.500 less 0.002 is 0.498: from there down it is a size of its own.
BOOST_AUTO_TEST_CASE(a_bore_0_002_under_a_standard_size_is_what_it_reads) {
    World w = blower();
    w.job.measured.bore = known(inch(0.498), Origin::measured);
    w.motor().shaft_diameter = inch(0.5);
    SAYS(w("shaft-diameter"), Verdict::does_not_fit, "too thick");
    w.motor().shaft_diameter = inch(0.498);
    SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
    w.job.measured.bore = known(inch(0.501), Origin::measured);  // above it nobody doubts
    w.motor().shaft_diameter = inch(0.5);
    SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
}

// Shafts are made a little under their size: an old one that reads 0.4995 sat in a 1/2 bore.
BOOST_AUTO_TEST_CASE(an_old_shaft_just_under_a_standard_size_does_not_stand_for_the_bore) {
    World w = blower();
    w.job.plate.shaft_diameter = known(inch(0.4995), Origin::measured);
    const Finding f = w("shaft-diameter");
    SAYS(f, Verdict::not_shown, "bore just under a standard size");
    BOOST_TEST(f.asks.front() == "measured.bore");
    w.job.measured.bore = known(inch(0.5), Origin::measured);
    SAYS(w("shaft-diameter"), Verdict::fits, "slip fit");
}

// A shop may have more bores read again, never fewer.
BOOST_AUTO_TEST_CASE(a_shop_may_doubt_more_bores) {
    World w = blower();
    w.job.measured.bore = known(inch(0.4975), Origin::measured);
    SAYS(w("shaft-diameter"), Verdict::does_not_fit, "too thick");
    BOOST_CHECK(w.limits.tighten("bore.standard_short", 0.001, "the shop") == Limits::Tightening::looser);
    BOOST_CHECK(w.limits.tighten("bore.standard_short", 0.003, "the shop") == Limits::Tightening::accepted);
    SAYS(w("shaft-diameter"), Verdict::not_shown, "bore just under a standard size");
}

BOOST_AUTO_TEST_CASE(the_measured_bore_wins_over_the_old_shaft) {
    World w = blower();
    w.job.measured.bore = known(inch(0.625), Origin::measured);  // the old one sat in a bushing
    SAYS(w("shaft-diameter"), Verdict::fits_with_changes, "bushing");
}

BOOST_AUTO_TEST_CASE(unknown_sizes_ask) {
    World w = blower();
    w.motor().shaft_diameter.reset();
    SAYS(w("shaft-diameter"), Verdict::not_shown, "part does not say");
    w.job.plate.shaft_diameter = {};
    SAYS(w("shaft-diameter"), Verdict::not_shown, "bore not stated");
    BOOST_TEST(w("shaft-diameter").asks.front() == "measured.bore");
    SAYS(inducer()("shaft-diameter"), Verdict::fits, "specified assembly");
    SAYS(module_job()("shaft-diameter"), Verdict::fits, "not concerned");
}

}  // namespace endbell::rule_tests
