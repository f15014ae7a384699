#include "engine/model/limits.hpp"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>

#include "engine/base/ensure.hpp"
#include "engine/model/limit.hpp"

using namespace endbell;
using T = Limits::Tightening;

BOOST_AUTO_TEST_CASE(a_shop_may_tighten_a_limit) {
    Limits limits;
    BOOST_CHECK(limits.tighten("winding.balance", 0.05, "north yard") == T::accepted);
    BOOST_TEST(limits.find("winding.balance")->value == 0.05);
    BOOST_TEST(limits.find("winding.balance")->set_by == "north yard");
    // Of a floor, higher is stricter.
    BOOST_CHECK(limits.tighten("winding.ground", 1e6, "north yard") == T::accepted);
    BOOST_TEST(limits.find("winding.ground")->value == 1e6);
}

BOOST_AUTO_TEST_CASE(a_shop_may_never_loosen_one) {
    Limits limits;
    const double nan = std::numeric_limits<double>::quiet_NaN(),
                 infinity = std::numeric_limits<double>::infinity();
    for (double looser : {0.2, 0.1000001, nan, infinity, -infinity}) {
        BOOST_CHECK(limits.tighten("winding.balance", looser, "north yard") == T::looser);
    }
    BOOST_CHECK(limits.tighten("winding.ground", 50e3, "north yard") == T::looser);
    BOOST_CHECK(limits.tighten("winding.ground", infinity, "north yard") == T::looser);
    BOOST_TEST(limits.find("winding.balance")->value == 0.10);
    BOOST_TEST(limits.find("winding.balance")->set_by.empty());
}

BOOST_AUTO_TEST_CASE(a_tightened_limit_is_not_loosened_back) {
    Limits limits;
    BOOST_CHECK(limits.tighten("winding.balance", 0.05, "a") == T::accepted);
    BOOST_CHECK(limits.tighten("winding.balance", 0.08, "b") == T::looser);
    BOOST_TEST(limits.find("winding.balance")->value == 0.05);
}

// What counts as dead may only come nearer to nought; what is planned for, and a chance of loss, only rise.
BOOST_AUTO_TEST_CASE(the_safe_way_is_the_only_way_to_move) {
    struct Row {
        const char* id;
        double safer, looser;
    };
    for (const Row& row :
         {Row{"voltage.absent", 5, 50}, Row{"tap.current", 0.025, 0.015}, Row{"tap.volts", 33, 20},
          Row{"recurrence.cured", 0.10, 0.01}, Row{"recurrence.uncured", 0.20, 0.06},
          Row{"relay.pull_in", 0.90, 0.80}, Row{"relay.drop_out", 0.05, 0.30}, Row{"call.load", 0.6, 7.2}}) {
        BOOST_TEST_CONTEXT(row.id) {
            Limits limits;
            BOOST_CHECK(limits.tighten(row.id, row.looser, "north yard") == T::looser);
            BOOST_CHECK(limits.tighten(row.id, row.safer, "north yard") == T::accepted);
            BOOST_TEST(limits.find(row.id)->value == row.safer);
        }
    }
}

// docs/decisions/2026-11-30-limits-audited.md: the paper behind each of these.
BOOST_AUTO_TEST_CASE(a_source_is_what_was_read_and_no_more) {
    const Limits limits;
    const std::pair<const char*, const char*> named[] = {
        {"voltage.unbalance", "mg1-14.36"},      // the clause of its title; 12.45 is another
        {"current.over_plate", "nec-430.6-ex"},  // the clause that was read says less
        {"current.circuit", "plate-ampacity"},   // manuals were read, no clause of the code
        {"tap.volts", "common-practice"},        // the window says 12 to 33 V, not 24
    };
    for (const auto& [id, from] : named) BOOST_TEST(limits.find(id)->source == from);
    BOOST_CHECK(source("nec-430.6-ex").basis == Basis::from_memory);
    BOOST_CHECK(source("plate-ampacity").basis == Basis::read);
    BOOST_CHECK(source("tap-rule").basis == Basis::common_practice);  // no sheet was read for all parts
    const auto says = [](std::string_view id, std::string_view words) {
        return source(id).title.find(words) != std::string::npos;
    };
    BOOST_TEST(says("mg1-14.36", "14.36"));
    BOOST_TEST(!says("fan-efficacy", "ducts"));  // 350 and 300 cfm a ton are of ducts; 0.58 W is of blowers
    BOOST_TEST(says("ecm-sequence", "training book"));
    BOOST_TEST(says("ecm-sequence", "service guide"));
    BOOST_CHECK_THROW(source("mg1-12.45"), OurBug);
    BOOST_CHECK_THROW(source("nec-440.33"), OurBug);
}

BOOST_AUTO_TEST_CASE(a_limit_that_does_not_exist_is_said) {
    Limits limits;
    BOOST_CHECK(limits.tighten("shaft.colour", 1, "a") == T::unknown_row);
    BOOST_TEST(limits.find("shaft.colour") == nullptr);
    BOOST_CHECK_THROW(source("hearsay"), OurBug);
    BOOST_TEST(limits.find("winding.balance") != nullptr);
}

BOOST_AUTO_TEST_CASE(a_constant_gives_its_row_in_its_own_unit) {
    Limits limits;
    const Length clearance = limits.value(limit::bore_clearance);
    const Temperature outdoors = limits.value(limit::ambient_outdoor);
    const TemperatureRise rise = limits.value(limit::element_rise);
    const Duration age = limits.value(limit::price_age);
    const double share = limits.value(limit::winding_balance);
    BOOST_TEST(clearance.in(inch) == 0.002);
    BOOST_TEST(outdoors.in_celsius() == 60);
    BOOST_TEST(rise.in(fahrenheit_degree) == 50);
    BOOST_TEST(age.in(hour) == 30 * 24);
    BOOST_TEST(share == 0.10);
    BOOST_CHECK(limits.tighten("shaft.bore_clearance", 0.001, "north yard") == T::accepted);
    BOOST_TEST(limits.value(limit::bore_clearance).in(inch) == 0.001);
    BOOST_TEST(limits.row(limit::bore_clearance).set_by == "north yard");
    BOOST_TEST(limit::bore_clearance.text == "shaft.bore_clearance");
}

// The same is asked while compiling: there it is no exception but a program that does not compile.
BOOST_AUTO_TEST_CASE(a_constant_of_no_row_or_of_another_unit_is_refused) {
    BOOST_CHECK_THROW(LimitOf<Length>("shaft.colour"), OurBug);
    BOOST_CHECK_THROW(LimitOf<Voltage>("shaft.bore_clearance"), OurBug);
    BOOST_CHECK_THROW(LimitOf<double>("shaft.bore_clearance"), OurBug);
    BOOST_CHECK_THROW(LimitOf<Length>("winding.balance"), OurBug);
    BOOST_CHECK_THROW(LimitOf<Temperature>("ambient.short"), OurBug);
    BOOST_CHECK_NO_THROW(LimitOf<TemperatureRise>("ambient.short"));
}

// ANSI C84.1 has two bands: 208Y/120 is 197 V at the service and 187 V at the motor, where line volts are read.
BOOST_AUTO_TEST_CASE(only_two_voltage_limits_are_of_the_service) {
    const Limits limits;
    for (const Limit& row : limits.rows()) {
        BOOST_TEST_CONTEXT(row.id) {
            const bool volts = row.id.substr(0, 8) == "voltage." && row.id != "voltage.frequency";
            const bool service = row.id == "voltage.range_a_208" || row.id == "voltage.caution";
            BOOST_TEST(word(row.volts_at) == (service ? "service" : volts ? "utilisation" : "none"));
        }
    }
}

BOOST_AUTO_TEST_CASE(limits_stand_as_their_documents_print_them) {
    const Limits limits;
    const std::pair<const char*, double> printed[] = {
        {"voltage.band", 0.10},        // NEMA MG 1 12.44.1
        {"voltage.frequency", 0.05},   // the same
        {"voltage.range_a_208", 197},  // ANSI C84.1
        {"winding.most", 20},          // gas-furnace manuals: below 20 ohm
        {"winding.spread", 1},         // within an ohm
        {"winding.balance", 0.10},     // within 10 %
        {"winding.ground", 100e3},     // above 100 kilohm
        {"tap.low", 12},               // 12 to 33 V
        {"tap.high", 33},
        {"static.repair_first", 0.8},  // in. w.c.
        {"class2.power", 100},         // NEC 725
    };
    for (const auto& [id, value] : printed) BOOST_TEST(limits.find(id)->value == value);
}

BOOST_AUTO_TEST_CASE(a_remembered_value_never_reads_as_read) {
    BOOST_TEST(word(Basis::from_memory) == "from memory");
    BOOST_TEST(word(Basis::common_practice) == "common practice");
    BOOST_CHECK(source("mg1-2.24").basis == Basis::from_memory);
    BOOST_CHECK(source("common-practice").basis == Basis::common_practice);
}
