// Places of a netlist: their words, and that the simulator goes by the place and never by its words.
#include <boost/test/unit_test.hpp>

#include "engine/wiring/simulate.hpp"
#include "tests/wiring/fixtures.hpp"

using namespace fixture;

namespace {

using Kind = NetPlace::Kind;

/// A plan with a signal and a relay, so that every place has a name.
WiringPlan named_plan(const std::string& signal) {
    WiringPlan plan;
    plan.signals = {signal};
    plan.load_switch = LoadSwitch::starter;
    Relay relay;
    relay.name = "K1";
    relay.contacts = 2;
    plan.relays = {relay};
    return plan;
}

}  // namespace

BOOST_AUTO_TEST_CASE(every_place_has_the_words_of_the_trade) {
    const WiringPlan plan = named_plan("Y1");
    const std::vector<std::pair<NetPlace, std::string>> words{
        {NetPlace::signal(0), "Y1"},
        {{Kind::supply_24v}, "R"},
        {{Kind::common_24v}, "C"},
        {{Kind::line_1}, "L1"},
        {{Kind::line_2}, "L2"},
        {{Kind::line_3}, "L3"},
        {{Kind::load_2}, "starter T2"},
        {{Kind::load_3}, "starter T3"},
        {NetPlace::pin("5-pin power plug 4"), "5-pin power plug 4"},
        {{Kind::motor_half, 0, 0, "A"}, "motor half A"},
        {{Kind::old_plug}, "same pin of the old plug"},
        {{Kind::capacitor_common}, "capacitor common"},
        {{Kind::neutral}, "N"},
        {{Kind::earth}, "earth"},
        {NetPlace::coil_feed(0), "K1.A1"},
        {NetPlace::coil_return(0), "K1.A2"},
        {NetPlace::common(0, 1), "K1.COM1"},
        {NetPlace::open(0, 2), "K1.NO2"},
        {NetPlace::closed(0, 2), "K1.NC2"},
        {NetPlace::tap(4), "tap 4"},
        {NetPlace::motor("N"), "motor N"},
        {{Kind::capacitor}, "capacitor"},
        {NetPlace::board_output("COOL"), "board COOL"},
        {{Kind::board_outputs}, "board blower outputs"},
        {NetPlace::cap(1), "cap and insulate"}};
    for (const auto& [place, text] : words) {
        BOOST_TEST(text_of(plan, place) == text);
        for (const auto& [other, its_text] : words) BOOST_TEST((place == other) == (text == its_text));
    }
}

BOOST_AUTO_TEST_CASE(a_label_that_reads_like_another_place_is_told_from_it) {
    for (const char* label : {"R", "C", "L1", "L2", "L3", "N", "contactor T2", "starter T3", "earth", "K1.A1",
                              "tap 4", "motor N"})
        BOOST_TEST(reads_like_a_place(label));
    for (const char* label : {"G", "Y1", "W1", "COOL", "HEAT", "K", "tap", "contactor T1"})
        BOOST_TEST(!reads_like_a_place(label));
}

BOOST_AUTO_TEST_CASE(a_signal_stays_a_signal_whatever_it_is_called) {
    for (const char* label : {"C", "earth", "tap 3", "capacitor"}) {
        WiringPlan plan = named_plan(label);
        plan.wires = {{NetPlace::signal(0), NetPlace::tap(4)},
                      {{Kind::capacitor}, NetPlace::motor("brown"), WireNote::capacitor},
                      {NetPlace::tap(3), {Kind::capacitor}}};
        const NetState state = Simulator(plan).run(1);
        BOOST_TEST(state.live_taps == std::vector<int>{4});
        BOOST_TEST(!state.short_circuit);
    }
}

BOOST_AUTO_TEST_CASE(two_capped_leads_do_not_touch) {
    WiringPlan plan = named_plan("COOL");
    plan.wires = {{NetPlace::signal(0), NetPlace::tap(1)},
                  {NetPlace::tap(1), NetPlace::cap(1), WireNote::parked},
                  {NetPlace::tap(2), NetPlace::cap(2), WireNote::parked}};
    BOOST_TEST(live_taps(plan, 1) == std::vector<int>{1});
}
