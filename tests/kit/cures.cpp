#include <boost/test/unit_test.hpp>

#include "kit_world.hpp"

using namespace endbell;
using namespace endbell::kit_world;

namespace {

const Limits limits;

Verdict judged(const CureRow& row, const Remedy& remedy) {
    return cures(row, remedy, limits);
}

Remedy wants(Cure cure) {
    Remedy r{};
    r.cure = cure;
    return r;
}

CureRow offers_cure(Cure cure) {
    CureRow row{};
    row.cure = cure;
    return row;
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_rain_shield_is_for_a_shaft_of_its_size) {
    CureRow row = offers_cure(Cure::rain_shield);
    Remedy r = wants(Cure::rain_shield);
    r.from = inch(0.5);
    BOOST_TEST((judged(row, r) == Verdict::fits));  // made for any
    row.from = inch(0.625);
    BOOST_TEST((judged(row, r) == Verdict::does_not_fit));
    row.from = inch(0.5);
    BOOST_TEST((judged(row, r) == Verdict::fits));
    r.from.reset();
    BOOST_TEST((judged(row, r) == Verdict::not_shown));
}

BOOST_AUTO_TEST_CASE(a_bushing_takes_its_own_two_diameters_within_the_slip_fit) {
    const Remedy r = needs_bushing(0.375, 0.5);
    BOOST_CHECK(judged(bushing(0.375, 0.5), r) == Verdict::fits);
    BOOST_CHECK(judged(bushing(0.377, 0.498), r) == Verdict::fits);  // 0.002 in, limit shaft.bore_clearance
    BOOST_CHECK(judged(bushing(0.378, 0.5), r) == Verdict::does_not_fit);
    BOOST_CHECK(judged(bushing(0.375, 0.4979), r) == Verdict::does_not_fit);
    // Tighter than the shaft or thicker than the bore, by whatever little, it does not go on or in.
    BOOST_CHECK(judged(bushing(0.3749, 0.5), r) == Verdict::does_not_fit);
    BOOST_CHECK(judged(bushing(0.375, 0.5001), r) == Verdict::does_not_fit);
    CureRow metric = bushing(0.375, 0.5);
    metric.from = millimetre(9.525);  // 3/8 in.
    metric.to = millimetre(12.7);     // 1/2 in.
    BOOST_CHECK(judged(metric, r) == Verdict::fits);
    BOOST_CHECK(judged(bushing(0.375, 0.5625), r) == Verdict::does_not_fit);
    CureRow open = bushing(0.375, 0.5);
    open.to.reset();
    BOOST_CHECK(judged(open, r) == Verdict::not_shown);
    open.from = inch(0.5);  // the known half already rules it out
    BOOST_CHECK(judged(open, r) == Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(a_capacitor_has_equal_microfarads_and_at_least_the_volts) {
    BOOST_CHECK(judged(capacitor(7.5, 370), needs_capacitor(7.5, 370)) == Verdict::fits);
    BOOST_CHECK(judged(capacitor(7.5, 440), needs_capacitor(7.5, 370)) == Verdict::fits);
    BOOST_CHECK(judged(capacitor(7.5, 370), needs_capacitor(7.5, 440)) == Verdict::does_not_fit);
    BOOST_CHECK(judged(capacitor(10, 440), needs_capacitor(7.5, 370)) == Verdict::does_not_fit);
    Remedy open = needs_capacitor(7.5, 370);
    open.capacitor_volts.reset();
    BOOST_CHECK(judged(capacitor(7.5, 440), open) == Verdict::not_shown);
}

BOOST_AUTO_TEST_CASE(an_isolation_relay_has_a_24_v_coil) {
    CureRow row = offers_cure(Cure::isolation_relay);
    BOOST_CHECK(judged(row, wants(Cure::isolation_relay)) == Verdict::not_shown);
    row.coil = volt(24);
    BOOST_CHECK(judged(row, wants(Cure::isolation_relay)) == Verdict::not_shown);  // poles not stated
    row.poles = 1;
    BOOST_CHECK(judged(row, wants(Cure::isolation_relay)) == Verdict::fits);
    Remedy two_poles = wants(Cure::isolation_relay);
    two_poles.poles = 2;
    BOOST_CHECK(judged(row, two_poles) == Verdict::does_not_fit);
    row.poles = 3;
    BOOST_CHECK(judged(row, two_poles) == Verdict::fits);
    row.coil = volt(120);
    BOOST_CHECK(judged(row, wants(Cure::isolation_relay)) == Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(a_line_relay_without_a_stated_coil_is_never_guessed) {
    CureRow row = offers_cure(Cure::line_relay);
    row.coil = volt(120);
    row.poles = 1;
    Remedy r = wants(Cure::line_relay);
    BOOST_CHECK(judged(row, r) == Verdict::not_shown);
    r.coil = volt(120);
    BOOST_CHECK(judged(row, r) == Verdict::fits);
    r.coil = volt(115);  // one plate class
    BOOST_CHECK(judged(row, r) == Verdict::fits);
    r.coil = volt(24);
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
    r.coil = volt(230);
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(an_adapter_between_bolt_circles_is_not_one_between_mounts) {
    CureRow row = offers_cure(Cure::mount_adapter);
    row.mount = Mount::studs;
    row.from = inch(4.25);
    row.to = inch(4.75);
    Remedy r = wants(Cure::mount_adapter);
    r.mount = Mount::studs;
    BOOST_CHECK(judged(row, r) == Verdict::not_shown);
    r.from = inch(4.25);
    r.to = inch(4.75);
    BOOST_CHECK(judged(row, r) == Verdict::fits);
    r.to = inch(5.25);
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(a_band_takes_a_body_within_a_sixteenth) {
    CureRow row = offers_cure(Cure::mount_band);
    row.from = inch(5.6);
    row.mount = Mount::studs;
    Remedy r = wants(Cure::mount_band);
    r.from = inch(5.6625);
    BOOST_CHECK(judged(row, r) == Verdict::fits);
    r.mount = Mount::studs;
    BOOST_CHECK(judged(row, r) == Verdict::fits);
    r.mount = Mount::lugs;
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
    r.from = inch(5.0);
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(an_adapter_is_for_the_mount_that_the_equipment_has) {
    CureRow row = offers_cure(Cure::mount_adapter);
    row.mount = Mount::lugs;
    Remedy r = wants(Cure::mount_adapter);
    BOOST_CHECK(judged(row, r) == Verdict::not_shown);
    r.mount = Mount::lugs;
    BOOST_CHECK(judged(row, r) == Verdict::fits);
    r.mount = Mount::ring;
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(an_adapter_made_for_one_body_is_not_for_another) {
    CureRow row = offers_cure(Cure::mount_adapter);
    row.mount = Mount::studs;
    Remedy r = wants(Cure::mount_adapter);
    r.mount = Mount::studs;
    r.from = inch(5.6);
    BOOST_CHECK(judged(row, r) == Verdict::fits);  // a row without sizes takes any body
    row.from = inch(5.6);
    BOOST_CHECK(judged(row, r) == Verdict::fits);
    r.from = inch(5.0);
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
    r.from.reset();
    BOOST_CHECK(judged(row, r) == Verdict::not_shown);
}

BOOST_AUTO_TEST_CASE(a_ring_goes_from_the_body_to_the_band) {
    CureRow row = offers_cure(Cure::body_ring);
    row.from = inch(5.0);
    row.to = inch(5.6);
    Remedy r = wants(Cure::body_ring);
    r.from = inch(5.0);
    r.to = inch(5.6);
    BOOST_CHECK(judged(row, r) == Verdict::fits);
    r.to = inch(6.5);
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(a_harness_joins_the_two_named_plugs_however_they_are_spelled) {
    CureRow row = offers_cure(Cure::harness);
    row.connector_from = "P-16";
    row.connector_to = "S 4";
    Remedy r = wants(Cure::harness);
    r.connector_from = "p16";
    r.connector_to = "S4";
    BOOST_CHECK(judged(row, r) == Verdict::fits);
    r.connector_to = "S5";
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
    r.connector_to.reset();
    BOOST_CHECK(judged(row, r) == Verdict::not_shown);
}

BOOST_AUTO_TEST_CASE(a_transformer_carries_at_least_what_is_needed) {
    CureRow row = offers_cure(Cure::transformer);
    row.power = volt_ampere(40);
    row.primary = plate_volts(208, 240);
    Remedy r = wants(Cure::transformer);
    r.primary = volt(230);
    BOOST_CHECK(judged(row, r) == Verdict::not_shown);
    r.power = volt_ampere(40);
    BOOST_CHECK(judged(row, r) == Verdict::fits);
    r.power = volt_ampere(50);
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(a_transformer_hangs_on_the_supply_that_is_there) {
    CureRow row = offers_cure(Cure::transformer);
    row.power = volt_ampere(75);
    Remedy r = wants(Cure::transformer);
    r.power = volt_ampere(40);
    r.primary = volt(120);
    BOOST_CHECK(judged(row, r) == Verdict::not_shown);  // the row does not say
    row.primary = plate_volts(208, 240);
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
    row.primary = plate_volts(115);
    BOOST_CHECK(judged(row, r) == Verdict::fits);
    r.primary.reset();
    BOOST_CHECK(judged(row, r) == Verdict::not_shown);  // nobody knows the supply
    r.primary = volt(120);
    row.power = volt_ampere(150);  // more than class 2: thermostat wire is laid for no more
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
}

BOOST_AUTO_TEST_CASE(work_is_not_bought) {
    for (const Word<Cure>& entry : Words<Cure>::table) {
        if (is_work_only(entry.value)) {
            BOOST_CHECK(judged(offers_cure(entry.value), wants(entry.value)) == Verdict::does_not_fit);
        }
    }
}

BOOST_AUTO_TEST_CASE(a_dual_capacitor_is_bought_where_both_its_sides_are_wanted_and_equal) {
    CureRow row = offers_cure(Cure::run_capacitor);
    row.capacitor = microfarad(5);
    row.compressor_capacitor = microfarad(45);
    row.capacitor_volts = volt(440);
    Remedy r = wants(Cure::run_capacitor);
    r.capacitor = microfarad(5);
    r.capacitor_volts = volt(370);
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);  // nobody asked for a compressor's side
    r.compressor_capacitor = microfarad(45);
    BOOST_CHECK(judged(row, r) == Verdict::fits);
    r.compressor_capacitor = microfarad(40);
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);
    r.compressor_capacitor = microfarad(45);
    row.compressor_capacitor.reset();
    BOOST_CHECK(judged(row, r) == Verdict::does_not_fit);  // a single one has no second side
}

BOOST_AUTO_TEST_CASE(a_fuse_has_the_very_rating_and_contacts_carry_at_least_the_current) {
    CureRow fuse = offers_cure(Cure::control_fuse);
    Remedy r = wants(Cure::control_fuse);
    BOOST_CHECK(judged(fuse, r) == Verdict::not_shown);
    fuse.amps = ampere(5);
    BOOST_CHECK(judged(fuse, r) == Verdict::not_shown);  // nobody read the old one
    r.amps = ampere(5);
    BOOST_CHECK(judged(fuse, r) == Verdict::fits);
    r.amps = ampere(3);
    BOOST_CHECK(judged(fuse, r) == Verdict::does_not_fit);

    CureRow contactor = offers_cure(Cure::contactor);
    contactor.coil = volt(24);
    contactor.poles = 2;
    contactor.amps = ampere(30);
    Remedy c = wants(Cure::contactor);
    c.coil = volt(24);
    c.poles = 2;
    c.amps = ampere(30);
    BOOST_CHECK(judged(contactor, c) == Verdict::fits);
    c.amps = ampere(31);
    BOOST_CHECK(judged(contactor, c) == Verdict::does_not_fit);
    c.amps = ampere(18);
    c.coil = volt(240);
    BOOST_CHECK(judged(contactor, c) == Verdict::does_not_fit);
    c.coil = volt(24);
    c.poles = 3;
    BOOST_CHECK(judged(contactor, c) == Verdict::does_not_fit);
}
