#include "engine/explain/next_test_words.hpp"

#include "engine/base/text.hpp"
#include "engine/explain/questions.hpp"

namespace endbell::inline explain {

namespace {

// Source of each: the test's own, as the tree names it; what follows is common practice.
constexpr auto words = std::to_array<NextTestWords>({
    {Test::symptom, "What it does: nothing, hums, trips, runs slow, moves little air.",
     "Each complaint has tests of its own."},
    {Test::family, "The kind of motor, by its plate, leads and capacitor.",
     "It decides what every reading means."},
    {Test::plate_figure, "The figure on the plate or in the papers.", "A reading is judged by it."},
    {Test::supply_system, "What feeds the building: 120/240, 208Y/120, 480Y/277 ...",
     "On its own system the reading is normal or it is not; the part must take it."},
    {Test::changed_before, "What somebody changed here before.", "What was changed last is looked at first."},
    {Test::under_water, "Whether it stood in water.",
     "Yes: no reading is judged, and the unit is inspected first. No: the readings decide."},
    {Test::spins_free, "Turns free or drags.",
     "Drags: loosen the wheel and turn again. Free: capacitor, feed, windings."},
    {Test::wheel_loose, "Turns free or drags with the wheel loose.",
     "Free: the wheel rubs or its bearing binds, keep the motor. Drags: the motor's bearing, so the motor."},
    {Test::shaft_play, "Moves sideways or not.", "Play: the bearing is worn, so the motor. None: look on."},
    {Test::float_switch, "Closed or open.", "Open: clear the drain. Closed: door switch and fuse."},
    {Test::door_switch, "Closed or open.", "Open: seat the door. Closed: fuse and transformer."},
    {Test::control_fuse, "Good or blown.", "Blown: find the short first. Good: transformer."},
    {Test::filter_drop, "Clean or dirty; its drop above the limit.",
     "Dirty: change it and read again. Clean: coil and wheel."},
    {Test::iced, "Ice or frost, or none.",
     "Ice: thaw first, no reading of the air counts before. None: look on."},
    {Test::signs, "Burnt, swollen, wet, or none.",
     "Burnt: windings to shell. Swollen: the capacitor. Wet: find the water."},
    {Test::belt, "Sound, slack, worn or broken.",
     "Slack, worn or off: the belt, the motor stays. Sound: wheel, filter, coil."},
    {Test::wheel, "Blades clean or caked.",
     "Caked: clean them, the motor stays. Clean: coil, duct, speed; of an inducer vent, drain, gasket."},
    {Test::capacitor, "Microfarads against the motor's plate.",
     "Outside its tolerance: a new capacitor. Within: shaft, feed, then the motor."},
    {Test::winding_to_shell, "Above or below the limit to the shell.",
     "Below: the motor. Above: the windings."},
    {Test::winding_open, "Closed or open, cold.",
     "Open when cold: the motor. Closed: its protector did its work."},
    {Test::winding_most, "Each below the limit.", "Above: the motor. Below: the feed."},
    {Test::winding_balance, "Three equal readings, rotor held, leads nulled.",
     "Unequal, open or near a short: the motor. Equal: what feeds or drives it."},
    {Test::winding_spread, "Within an ohm.", "Beyond: the motor. Within: what feeds or drives it."},
    {Test::control_volts, "Within the window of its signal class or not; ac, dc or pulsing.",
     "None: back to board and thermostat. In the window: the motor has its call. Another kind: another "
     "signal class."},
    {Test::transformer, "24 V or none from R to C.",
     "None: fuse, primary, transformer. 24 V: thermostat and board."},
    {Test::live_taps, "Which taps are live.",
     "None: no call. Two: part them. One: it is the speed that runs."},
    {Test::board_output, "Live or dead at the board.",
     "Dead with 24 V and the call there: the board's relay. Live: wire and plug."},
    {Test::thermostat, "Calls or does not.", "No call: the thermostat. Call: the board's output."},
    {Test::line_volts, "Within the supply's own band; of three phases all three.",
     "None or low: fuse, contactor, supply. Right: the motor is fed."},
    {Test::motor_volts, "The supply within the plate's band.", "Outside: the motor was the wrong one."},
    {Test::legs, "Three readings, line to line.",
     "One near normal and two near half: a leg is lost. Equal: the motor is fed."},
    {Test::amps, "At or below the plate; of three phases each leg.",
     "Over: find the overload. Nothing in a leg: it is lost. Within: the motor carries its load."},
    {Test::fuse_drop, "About nought across each closed fuse.", "Volts: the fuse. Nought: the contactor."},
    {Test::contactor_drop, "About nought across each closed pole.",
     "Volts: the contactor. Nought: back towards the panel."},
    {Test::primary, "Live or dead.",
     "Dead: the supply or the door switch. Live with no 24 V: fuse, then transformer."},
    {Test::coil_drop, "Above the limit or not.", "Above: clean the coil. Within: wheel and duct."},
    {Test::static_total, "Against the plate's maximum.",
     "Over: filter, coil, duct. Low with weak air: the wheel. Normal: speed or burner."},
    {Test::burner_input, "Clocked input against the plate.",
     "Over: gas pressure and orifices. As the plate: the speed tap."},
    {Test::rise, "Within the plate's range.", "High: too little air or over-fired. Low: too much air."},
    {Test::airflow, "Air for each ton.", "Too little: filter, coil, wheel, duct, speed."},
    {Test::plate_agrees, "The motor's plate against the equipment's.",
     "They differ: the wrong motor was fitted."},
    {Test::read_again, "The same reading once more.", "Whichever stays decides."},
});

constexpr auto dangers = std::to_array<English<Danger>>({
    {Danger::look, "nothing is opened"},
    {Danger::power_off, "power locked out, 5 minutes waited"},
    {Danger::control_24v, "24 V live: keep off the line side"},
    {Danger::live, "power on: keep clear"},
});

const NextTestWords& of(Test test) {
    const auto found =
        std::find_if(words.begin(), words.end(), [&](const auto& w) { return w.test == test; });
    ensure(found != words.end(), "every test has its words");
    return *found;
}

}  // namespace

std::string say_decides(Test test) {
    return std::string(of(test).decides);
}

std::string say_follows(Test test) {
    return std::string(of(test).follows);
}

std::string say(Danger danger) {
    return english_of(dangers, danger);
}

std::string next_test_sentence(const NextTest& next) {
    return question_for(next.job_key) + " [" + next.job_key + "] About " + std::to_string(next.minutes()) +
           " min, " + say(next.danger) + ". Decides: " + say_decides(next.test) + " " +
           say_follows(next.test);
}

std::vector<NextTestWords> words_of_next_tests() {
    return std::vector(words.begin(), words.end());
}

std::vector<English<Danger>> english_of_dangers() {
    return std::vector(dangers.begin(), dangers.end());
}

}  // namespace endbell::inline explain
