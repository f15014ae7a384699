#include "engine/fields/key_row.hpp"

namespace endbell::inline fields {

JobKeys unit_keys() {
    const GroupOf<UnitReadings> unit{"unit", Origin::job, &FailedUnit::unit};
    using F = UnitReadings;
    return {
        row(unit, &F::name, {"name", "what this job is called on paper", "", "attic air handler"}, read_text),
        row(unit, &F::load,
            {"load", "what the motor turns", "", "indoor blower",
             "What does it turn: an indoor blower wheel, an outdoor fan blade, or a draft inducer?"},
            read_kind<Load>, {10, 5, 1.00, loads}),
        row(unit, &F::belt_drive,
            {"belt_drive", "a belt between motor and wheel", "", "no",
             "Is there a belt between motor and wheel (no: the wheel sits on the motor's own shaft)?"},
            read_yes_no, {15, 5, 1.00, belts, drive_known}),
        row(unit, &F::shaft_points,
            {"shaft_points", "which way the shaft points where it sits", "", "shaft down",
             "Which way does the shaft point where it sits: up, down, or horizontal?"},
            read_kind<ShaftPosition>, {190, 5, 0.95, positions}),
        row(unit, &F::outdoors, {"outdoors", "in the weather", "", "no", "Is it outdoors, in the rain?"},
            read_yes_no, {200, 5, 1.00, yes_or_no, place_known}),
        quoted(row(
            unit, &F::old_part_number,
            {"old_part_number", "the number on the old motor", "", "00A-123", "What is the old part number?"},
            read_part_number)),
        quoted(row(unit, &F::old_module_number,
                   {"old_module_number", "the number on the old control module", "", "M-0042",
                    "What is the number on the old control module?"},
                   read_part_number)),
        quoted(row(unit, &F::equipment_model,
                   {"equipment_model", "model of the furnace, air handler or outdoor unit", "", "FX080-4",
                    "What is the model number on the equipment's plate?"},
                   read_part_number)),
        quoted(row(unit, &F::equipment_serial,
                   {"equipment_serial", "its serial number", "", "0612345",
                    "What is the serial number on the equipment's plate?"},
                   read_part_number)),
        quoted(row(unit, &F::assembly_number,
                   {"assembly_number", "the inducer assembly that the equipment specifies", "", "ASM-77",
                    "Which inducer assembly does the equipment's parts list name?"},
                   read_part_number, {30, 60, 0.60, of_motor<&Motor::assembly>})),
        row(unit, &F::plate_trusted,
            {"plate_trusted", "no: signs of an earlier, possibly wrong replacement", "", "yes",
             "May the plate be trusted: is this the motor that the equipment's own papers name, without "
             "signs of an earlier replacement? Correct what it says from those papers first."},
            read_yes_no),
        row(unit, &F::changed_before,
            {"changed_before", "what somebody changed before this job", "", "capacitor; thermostat",
             "What was changed here before: motor, module, capacitor, board, wheel, thermostat, filter, "
             "fuel?"},
            read_kinds<ChangedPart>),
        row(unit, &F::changed_by,
            {"changed_by", "who changed it, and when", "", "the owner, last spring",
             "Who changed it, and when?"},
            read_text),
        quoted(row(unit, &F::baseline,
                   {"baseline", "file of the readings kept at this unit's start-up", "",
                    "attic-start-up.toml", "Which file keeps this unit's start-up readings?"},
                   read_text)),
    };
}

}  // namespace endbell::inline fields
