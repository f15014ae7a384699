#include "engine/explain/repair_words.hpp"

#include <array>

namespace endbell::inline explain {

namespace {

// Source: common practice, of technicians and of counters.
constexpr auto landings = std::to_array<English<RepairLanding>>({
    {RepairLanding::as_it_was,
     "Write down where each wire lands. Move one wire at a time to the terminal of the same name on the new "
     "one."},
    {RepairLanding::two_terminals,
     "One capacitor lead of the motor on each terminal. What else the old one's terminals carried goes where "
     "the same lead goes."},
    {RepairLanding::whole_dual,
     "Common takes what the old common took, compressor the compressor's start lead, fan the fan's capacitor "
     "lead: one wire at a time, by the terminals printed on both, never by colours."},
    {RepairLanding::single_beside_the_dual,
     "On three wires the fan's capacitor lead moves from the old fan terminal to the new capacitor, whose "
     "other terminal is joined to the old common; on four wires both capacitor leads of the fan go to the "
     "new one alone. The old fan terminal is left unused. The old one stays for the compressor, whose side "
     "read within tolerance. Never by colours."},
});

constexpr auto proofs = std::to_array<English<Cure>>({
    {Cure::run_capacitor,
     "Meter the new one before it goes in: within the tolerance printed on it. Then it starts by itself "
     "three "
     "times, with amps at or below the plate."},
    {Cure::start_capacitor,
     "Bleed and meter the new one before it goes in, and see that the start switch closes at rest. Then it "
     "starts by itself three times, and the switch lets go within a second."},
    {Cure::line_fuse,
     "Find what blew it before a new one goes in: windings to shell, wires, compressor. Then about 0 V "
     "across "
     "each closed fuse under load."},
    {Cure::control_fuse,
     "Find the short before a new one goes in: part the 24 V wires one by one. Then 24 V from R to C with "
     "every call on."},
    {Cure::float_switch,
     "Clear the drain first: an open switch over a full pan does its work, and nothing is bought. A new one "
     "only where it stays open with the float down; it opens when the float is lifted."},
    {Cure::door_switch,
     "Seat the door first. A new one only where it stays open with the door on; it opens with the door off "
     "and is never bridged."},
    {Cure::contactor,
     "About 0 V across each closed pole under load; it drops out when the call ends. Look for what pitted "
     "the old one: low volts at its coil, insects, a loose lug."},
    {Cure::board_relay,
     "With the call its contact closes and the motor's lead is live; it drops out when the call ends, and "
     "the limit still runs the blower."},
    {Cure::transformer,
     "Find what burnt it before power: the short, or more load than its rating. Then 24 V from R to C with "
     "every call on."},
});

}  // namespace

std::string say(RepairLanding landing) {
    return english_of(landings, landing);
}

std::string proof_of(Cure cure) {
    return english_of(proofs, cure);
}

std::vector<English<RepairLanding>> english_of_landings() {
    return std::vector(landings.begin(), landings.end());
}

std::vector<English<Cure>> english_of_proofs() {
    return std::vector(proofs.begin(), proofs.end());
}

}  // namespace endbell::inline explain
