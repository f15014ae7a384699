#include "tests/rules/world.hpp"

namespace endbell::rule_tests {

// By construction a capacitor-run motor's speed leads carry its own line current.
BOOST_AUTO_TEST_CASE(the_same_signal_fits) {
    SAYS(blower()("signal-class"), Verdict::fits, "same signal");
    SAYS(five_taps()("signal-class"), Verdict::fits, "same signal");
    SAYS(module_job()("signal-class"), Verdict::fits, "same signal");
}

BOOST_AUTO_TEST_CASE(the_control_source_tells_a_five_tap_motors_signal_where_its_plate_does_not) {
    World w = five_taps();
    w.job.plate.signal = {};
    SAYS(w("signal-class"), Verdict::not_shown, "signal not stated");
    w.job.controls.source = known(ControlSource::thermostat);
    SAYS(w("signal-class"), Verdict::fits, "same signal");
    w.job.controls.source = known(ControlSource::board_line);
    w.job.controls.output = known(volt(120));
    SAYS(w("signal-class"), Verdict::fits_with_changes, "relay between line and 24 V");
}

// A relay between line and 24 V is a listed cure; its coil sits on the equipment's side. A line signal beside constant
// line power need not have the line's volts: it is measured, not taken to be 230.
BOOST_AUTO_TEST_CASE(a_relay_translates_between_line_and_24_v) {
    World w = five_taps();
    w.motor().signal = SignalClass::line_signal;
    Finding f = w("signal-class");
    SAYS(f, Verdict::fits_with_changes, "relay between line and 24 V");
    BOOST_TEST(f.remedies.at(0).coil->in(volt) == 24);
    w = five_taps();
    w.job.plate.signal = known(SignalClass::line_signal);
    w.job.plate.volts = volts(plate_volts(208, 230));
    SAYS(w("signal-class"), Verdict::not_shown, "output volts not stated");
    w.job.controls.output = known(volt(120));
    f = w("signal-class");
    SAYS(f, Verdict::fits_with_changes, "relay between line and 24 V");
    BOOST_TEST(f.remedies.at(0).coil->in(volt) == 115);
    w.job.controls.output = known(volt(240));
    BOOST_TEST(w("signal-class").remedies.at(0).coil->in(volt) == 230);
}

BOOST_AUTO_TEST_CASE(serial_and_pulse_are_never_translated) {
    World w = five_taps();
    w.job.plate.signal = known(SignalClass::serial);
    SAYS(w("signal-class"), Verdict::does_not_fit, "other signal");
    w = five_taps();
    w.motor().signal = SignalClass::switched_line;
    SAYS(w("signal-class"), Verdict::does_not_fit, "other signal");
    w = module_job();
    w.part.module->signal = SignalClass::pulse;
    SAYS(w("signal-class"), Verdict::does_not_fit, "other signal");
}

// A universal retrofit's wiring guide: the line run signal stays with the board's blower outputs, 24 V
// chooses the speed. In a furnace that is the only case where W may reach a speed input.
BOOST_AUTO_TEST_CASE(a_retrofit_keeps_the_board_in_command) {
    World w = retrofit();
    SAYS(w("signal-class"), Verdict::fits_with_changes, "board keeps the run signal");
    w.motor().terminals.clear();
    SAYS(w("signal-class"), Verdict::fits_with_changes, "line to 24 V by relay");
    BOOST_TEST(w("signal-class").remedies.size() == 2u);
    BOOST_TEST(w("signal-class").remedies.at(0).coil->in(volt) == 115);
    w.job.controls.output = known(volt(230));  // measured: stronger than what the old motor ran on
    BOOST_TEST(w("signal-class").remedies.at(0).coil->in(volt) == 230);
    w.job.controls.output = {};
    w.job.controls.source = known(ControlSource::board_24v);
    SAYS(w("signal-class"), Verdict::fits_with_changes, "24 V from the board");
    w.job.controls.source = known(ControlSource::pulse_or_serial);
    SAYS(w("signal-class"), Verdict::does_not_fit, "board speaks serial");
    w.job.controls.source = {};
    SAYS(w("signal-class"), Verdict::not_shown, "control source not stated");
}

BOOST_AUTO_TEST_CASE(a_furnace_never_loses_its_interlock) {
    World w = retrofit();
    w.job.controls.source = known(ControlSource::thermostat);
    SAYS(w("signal-class"), Verdict::not_shown, "heat not stated");
    w.job.controls.heat = known(HeatKind::heat_pump);
    SAYS(w("signal-class"), Verdict::fits_with_changes, "24 V from the thermostat");
    for (const HeatKind heat : {HeatKind::gas, HeatKind::oil, HeatKind::dual_fuel}) {
        w.job.controls.heat = known(heat);
        w.job.controls.run_signal_available = {};
        SAYS(w("signal-class"), Verdict::not_shown, "interlock not stated");
        w.job.controls.run_signal_available = known(false);
        SAYS(w("signal-class"), Verdict::does_not_fit, "furnace loses its interlock");
        w.job.controls.run_signal_available = known(true);
        SAYS(w("signal-class"), Verdict::fits_with_changes, "board keeps the run signal");
    }
    w.motor().terminals.clear();
    SAYS(w("signal-class"), Verdict::does_not_fit, "furnace loses its interlock");
}

BOOST_AUTO_TEST_CASE(line_signal_leads_take_the_old_speed_leads) {
    World w = retrofit();
    w.motor().signal = SignalClass::line_signal;
    SAYS(w("signal-class"), Verdict::fits_with_changes, "line signal from the speed leads");
}

BOOST_AUTO_TEST_CASE(a_signal_that_the_family_cannot_take_proves_nothing) {
    World w = blower();
    w.motor().signal = SignalClass::control_24v;  // on a capacitor-run motor
    SAYS(w("signal-class"), Verdict::not_shown, "part disagrees with itself");
    w.job.plate.signal = known(SignalClass::control_24v);
    SAYS(w("signal-class"), Verdict::not_shown, "plate disagrees with itself");
}

BOOST_AUTO_TEST_CASE(a_silent_electronic_part_is_not_shown) {
    World w = five_taps();
    w.motor().signal.reset();
    SAYS(w("signal-class"), Verdict::not_shown, "part does not say");
    w = module_job();
    w.part.module->signal.reset();
    SAYS(w("signal-class"), Verdict::not_shown, "part does not say");
    w.job.plate.signal = {};
    SAYS(w("signal-class"), Verdict::not_shown, "signal not stated");
}

}  // namespace endbell::rule_tests
