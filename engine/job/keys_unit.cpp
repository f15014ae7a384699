#include "engine/job/key_row.hpp"

namespace endbell::inline job {

Rows unit_keys() {
    const GroupOf<UnitFacts> unit{"unit", Origin::job, &FailedUnit::unit};
    using F = UnitFacts;
    return {
        row(unit, &F::name, {"name", "what this job is called on paper", "", "attic air handler"}, read_text),
        row(unit, &F::load, {"load", "what the motor turns", "", "indoor blower"}, read_kind<Load>),
        row(unit, &F::belt_drive, {"belt_drive", "a belt between motor and wheel", "", "no"}, read_yes_no),
        row(unit, &F::shaft_points,
            {"shaft_points", "which way the shaft points where it sits", "", "shaft down"},
            read_kind<ShaftPosition>),
        row(unit, &F::outdoors, {"outdoors", "in the weather", "", "no"}, read_yes_no),
        quoted(row(unit, &F::old_part_number,
                   {"old_part_number", "the number on the old motor", "", "00A-123"}, read_part_number)),
        quoted(row(unit, &F::old_module_number,
                   {"old_module_number", "the number on the old control module", "", "M-0042"},
                   read_part_number)),
        quoted(row(unit, &F::equipment_model,
                   {"equipment_model", "model of the furnace, air handler or outdoor unit", "", "FX080-4"},
                   read_part_number)),
        quoted(row(unit, &F::equipment_serial, {"equipment_serial", "its serial number", "", "0612345"},
                   read_part_number)),
        quoted(row(unit, &F::assembly_number,
                   {"assembly_number", "the inducer assembly that the equipment specifies", "", "ASM-77"},
                   read_part_number)),
        row(unit, &F::plate_trusted,
            {"plate_trusted", "no: signs of an earlier, possibly wrong replacement", "", "yes"}, read_yes_no),
    };
}

}  // namespace endbell::inline job
