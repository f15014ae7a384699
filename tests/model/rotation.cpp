// Rotation letters against the standards. NEMA MG 1 2.24 views the end opposite the drive (the lead end), and
// its standard single-phase direction there is CCW; IEC 60034-8 views the drive end (the shaft end).
#include "engine/model/rotation.hpp"

#include <boost/test/unit_test.hpp>

using namespace endbell;

namespace {

constexpr Rotation cwse = normalised(Spin::cw, ViewedFrom::shaft_end);
constexpr Rotation ccwse = normalised(Spin::ccw, ViewedFrom::shaft_end);
constexpr Rotation cwle = normalised(Spin::cw, ViewedFrom::lead_end);
constexpr Rotation ccwle = normalised(Spin::ccw, ViewedFrom::lead_end);

}  // namespace

BOOST_AUTO_TEST_CASE(clockwise_from_the_lead_end_is_counter_clockwise_from_the_shaft) {
    BOOST_CHECK(cwle == Rotation::ccw_shaft_end);
    BOOST_CHECK(cwle == ccwse);
    BOOST_CHECK(ccwle == cwse);
}

BOOST_AUTO_TEST_CASE(the_standard_nema_direction_is_iec_clockwise) {
    // CCW facing the end opposite the drive = CCWLE = CWSE = clockwise facing the drive end.
    BOOST_CHECK(ccwle == Rotation::cw_shaft_end);
}

BOOST_AUTO_TEST_CASE(an_old_cwse_is_no_match_for_a_cwle) {
    BOOST_CHECK(cwse != cwle);
    BOOST_CHECK(ccwse == cwle);
}

BOOST_AUTO_TEST_CASE(the_two_ends_name_one_turn_oppositely) {
    BOOST_CHECK(seen_from_other_end(cwse) == ccwse);
    BOOST_CHECK(seen_from_other_end(Rotation::reversible) == Rotation::reversible);
    for (Rotation r : {cwse, ccwse, Rotation::reversible})
        BOOST_CHECK(seen_from_other_end(seen_from_other_end(r)) == r);
}

BOOST_AUTO_TEST_CASE(a_fan_seen_from_its_drive_side_is_seen_from_the_motors_lead_end) {
    // AMCA 99-2406 (from memory): fans are viewed from the drive side. In a direct drive the motor stands
    // there, its shaft pointing away from the observer, who therefore faces its lead end.
    constexpr Rotation housing_cw = normalised(Spin::cw, ViewedFrom::lead_end);
    BOOST_CHECK(housing_cw == Rotation::ccw_shaft_end);
}
