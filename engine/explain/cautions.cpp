#include "engine/explain/cautions.hpp"

#include <array>

namespace endbell {

namespace {

struct Entry {
    std::string_view word;
    std::string_view sentence;
};

// Wiring words. Sources: equipment and motor service manuals, as named in docs/explanation/wiring-proof.md.
constexpr std::array sentences{
    // cautions
    Entry{"line power always present",
          "Line power stays on the motor with or without a call. Never put a relay or contactor in its line: "
          "switch the 24 V signal."},
    Entry{"both line conductors live",
          "On 208-240 V the terminal marked N takes the second line conductor. Both are live to ground."},
    Entry{"earth G is not fan G",
          "G on the power header is earth. It never meets the thermostat's G, which is the fan call."},
    Entry{"common from the same transformer",
          "C comes from the transformer that feeds the calls, even where its terminal sits beside the line "
          "terminals."},
    Entry{"outputs of one relay group only",
          "Join board outputs only where one relay group of one phase feeds them all: never two legs."},
    Entry{"parked leads are live",
          "Unused speed leads carry voltage while the motor runs: cap and insulate each on its own, never "
          "join them."},
    Entry{"line coils and 24 V contacts apart",
          "The relays' coils are at line voltage and their contacts at 24 V: keep the two wirings apart, in "
          "rated boxes."},
    Entry{"24 V coils and line contacts apart",
          "The relays' coils are at 24 V and their contacts at line voltage: keep the two wirings apart, in "
          "rated boxes."},
    Entry{
        "tap rule not stated",
        "The motor's sheet does not say what two live taps do. This plan never makes two live; keep it so."},
    Entry{"verify the priority of the taps",
          "Two taps are live in some states and the motor obeys the higher, as its sheet says: verify it at "
          "start-up."},
    Entry{
        "one board output at a time",
        "The plan holds only while the board drives one blower output at a time: check it in its sequence."},
    Entry{"the board keeps the blower",
          "The furnace board keeps its fan delays and its limit: only its own blower output starts the "
          "blower. A heat call may choose the speed, never start it."},
    Entry{"compressor heat at the cooling tap",
          "Compressor heating runs at the cooling tap: never less air than in cooling."},
    Entry{"a fault can make two taps live",
          "A single fault can make two taps live: see the table of faults."},
    Entry{"a fault can back-feed", "A single fault can let one call feed another: see the table of faults."},
    Entry{"a fault can heat without air",
          "A single fault can leave the elements calling without air: their own limit must be in place and "
          "tested."},
    Entry{"leaking thermostat outputs",
          "A thermostat with triac outputs can leak enough to hold a tap on: if the blower does not stop, "
          "add a load resistor or a relay."},
    Entry{"runs on after the call",
          "Some taps run on after the call ends: the wheel still turns. It is not a fault."},
    Entry{"transformer above its planned load",
          "The control transformer is loaded above its planned share: fit a larger one or shed load."},
    Entry{"transformer overloaded",
          "The control transformer is overloaded with this plan: fit a larger one first."},
    // checks
    Entry{"lock out", "Lock out and tag out."},
    Entry{"absence of voltage", "Test for absence of voltage: pole to pole and each pole to ground."},
    Entry{"wait five minutes", "Wait five minutes for the motor's capacitors."},
    Entry{"discharge the capacitor", "Discharge the run capacitor through a resistor; confirm with a meter."},
    Entry{"earth continuous", "Earth is continuous from the motor's shell to the cabinet."},
    Entry{"settings match the supply",
          "Jumper, plug or leads match the measured supply. Look twice before power."},
    Entry{"plugs in before power", "Every plug is home before power is on."},
    Entry{"line at the motor without a call", "Line voltage is at the motor without a call."},
    Entry{"tap volts with each call", "12 to 33 V ac from the called tap to C, with each call in turn."},
    Entry{"one tap live in each call", "Only the tap in the table is live in each call."},
    Entry{"rotation", "It turns the right way; stop at once if not."},
    Entry{"amps at or below plate", "Amps at or below the plate, with the door on."},
    Entry{"static and airflow", "Total static and airflow are as in the table."},
    Entry{"temperature rise", "Temperature rise lies inside the plate's range after ten minutes."},
    Entry{"combustion and limits",
          "Combustion, pressure switch and limit are checked, and the flue gas is tested for CO."},
    // refusals and rescues
    Entry{"taps not chosen",
          "no tap is chosen for every call, because readings are missing or no tap gives the air"},
    Entry{"line voltage on a 24 V tap",
          "the board's outputs are at line voltage and the part's taps take 24 V"},
    Entry{"serial control", "a serial or pulse command from the board has no counterpart on this part"},
    Entry{"heat call past the board", "in a furnace the heat call may not go past the board to a tap"},
    Entry{"blower off its board",
          "a fuel furnace's board keeps the blower's delays and runs it while a limit is open: thermostat "
          "wires alone "
          "never command it"},
    Entry{"heat call without a wire",
          "the equipment heats, and no terminal that reaches the motor calls its air for heat"},
    Entry{
        "the terminal that calls the heat",
        "the terminal that calls the heat (W, W1, AUX, E or the board's heat output), at controls.terminals"},
    Entry{"fewer than three line wires",
          "a three-phase motor takes three line conductors through its starter and overload, and this plan "
          "lands "
          "two: wire it by the motor's and the starter's own diagram"},
    Entry{"two taps on a one-tap part",
          "two outputs live together would make two taps live, and this part takes one"},
    Entry{"no common wire", "no 24 V common reaches the motor"},
    Entry{"a common wire from the same transformer",
          "a common wire from the transformer that feeds the calls"},
    Entry{"signal class not known", "the catalog does not say what tells this part to run"},
    Entry{"source not known", "the job does not say what gives the calls"},
    Entry{"supply not known",
          "nobody has said what feeds the motor, and the old plate does not tell two lines from line and "
          "neutral"},
    Entry{"controls not known", "the job does not say enough about its controls"},
    Entry{"too many signals", "more signals reach the motor than can be proven"},
    Entry{"no circuit", "no circuit of this kind gives every state its own tap"},
    Entry{"no motor", "this part is no motor"},
    Entry{"inducer by its own diagram", "a draft inducer is wired by the equipment's own diagram"},
    Entry{"contactor feeds line leads only",
          "the outdoor contactor switches line power: only a motor with line-voltage leads can hang on it"},
    Entry{"states not told apart", "two states that need different taps look alike on these signals"},
};

}  // namespace

void add_safety(Document& to, bool electronic) {
    to.add(Heading{"Before you open anything"});
    to.add(Warning{"WARNING",
                   "Lock out and tag out all supplies. Test the meter on a live source, test pole to pole "
                   "and each pole to ground, test the meter again."});
    if (electronic) {
        to.add(Warning{"WARNING",
                       "Line voltage is at an electronic motor at all times, with or without a call. Wait 5 "
                       "minutes after lock-out: its capacitors hold a charge."});
        to.add(Warning{
            "CAUTION",
            "Never mate or unmate the power plug live. Look at the plug's keying before inserting it."});
    }
    to.add(Warning{"WARNING",
                   "Discharge a run capacitor through a resistor (about 20 kilohm, 2 W or more) and confirm "
                   "with a meter."});
    to.add(Warning{"WARNING",
                   "The wheel or blade can start by itself: thermostat, off-delay, or a protector that "
                   "resets. Block it before reaching in."});
}

void add_deference(Document& to) {
    to.add(Warning{"NOTICE",
                   "The equipment's own instructions, local code and licensed practice come first. Where "
                   "they differ from this sheet, follow them."});
}

std::string wiring_sentence(std::string_view word) {
    for (const Entry& entry : sentences) {
        if (entry.word == word) return std::string(entry.sentence);
    }
    return std::string(word);
}

}  // namespace endbell
