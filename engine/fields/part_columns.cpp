// The columns of the tables of parts, but for `motors`, which has a file of its own.
#include "engine/fields/part_columns.hpp"

namespace endbell::inline fields {

namespace {

// Neither is ever unknown: a list sells what it lists, and a motor of one voltage needs no setting.
void take_status(RowReader& row, Part& part) {
    std::optional<PartStatus> status;
    row.take(status);
    part.status = status.value_or(PartStatus::active);
}
void take_selection(RowReader& row, Rating& rating) {
    std::optional<VoltageSelection> selection;
    row.take(selection);
    rating.selection = selection.value_or(VoltageSelection::none);
}

}  // namespace

const RowColumns<Part>& part_columns() {
    static const RowColumns<Part> columns{
        member<&Part::id>(kinds::part_number,
                          {.name = "part_id",
                           .title = "Part",
                           .meaning = "The shop's own name for the part. Every other table refers to it.",
                           .example = "T-050-115",
                           .need = Need::required,
                           .spellings = {"kept as text for ever: zeros, dashes and blanks"}}),
        member<&Part::kind>(
            kinds::part_kind,
            {.name = "kind",
             .title = "Kind",
             .meaning = "What the part is; it decides which other tables may hold rows for it.",
             .example = "motor",
             .need = Need::required}),
        member<&Part::maker>(kinds::text, {.name = "maker",
                                           .title = "Maker",
                                           .meaning = "Who makes it.",
                                           .example = "Kestrel Example Motors",
                                           .need = Need::required,
                                           .seen = Seen::by_people}),
        member<&Part::number>(kinds::part_number,
                              {.name = "part_number",
                               .title = "Part number",
                               .meaning = "The maker's number as it is printed on the part.",
                               .example = "00123-5",
                               .need = Need::required,
                               .seen = Seen::by_people,
                               .spellings = {"kept as text for ever: zeros, dashes and blanks",
                                             "found with or without dashes and blanks"}}),
        read_by(take_status, kinds::part_status,
                {.name = "status",
                 .title = "Status",
                 .meaning = "Whether it is still sold. Empty means active: a list sells what it lists.",
                 .example = "active",
                 .seen = Seen::by_people,
                 .when_empty = "active"}),
        member<&Part::description>(kinds::text, {.name = "description",
                                                 .title = "Description",
                                                 .meaning = "Free text for people. No rule reads it.",
                                                 .example = "1/2 hp, five taps",
                                                 .seen = Seen::by_people}),
    };
    return columns;
}

const RowColumns<Rating>& rating_columns() {
    static const RowColumns<Rating> columns{
        owned_by<Rating>(),
        unread<Rating>(kinds::count, {.name = "rating",
                                      .title = "Rating",
                                      .meaning = "Counts the ratings of one motor from 1.",
                                      .example = "1",
                                      .need = Need::required,
                                      .bounds = between(1, 100, "ratings count from 1")}),
        member<&Rating::power>(kinds::horsepower, {.name = "power_hp",
                                                   .title = "Power",
                                                   .meaning = "Shaft power.",
                                                   .example = "0.5",
                                                   .bounds = above_zero("power above zero")}),
        member<&Rating::volts>(
            kinds::volts,
            {.name = "volts",
             .title = "Volts",
             .meaning =
                 "Plate voltage: one, or a span that is all good. A motor for 115 or 230 has two rows.",
             .example = "208-230"}),
        member<&Rating::amps>(kinds::amps, {.name = "amps",
                                            .title = "Amps",
                                            .meaning = "Full-load current at this rating.",
                                            .example = "2.6",
                                            .bounds = above_zero("amps above zero")}),
        member<&Rating::speed>(kinds::rpm, {.name = "speed_rpm",
                                            .title = "Speed",
                                            .meaning = "Rated speed.",
                                            .example = "1075",
                                            .bounds = above_zero("rpm above zero"),
                                            .spellings = {"1075", "1,075 RPM"}}),
        read_by(take_selection, kinds::selection,
                {.name = "selection",
                 .title = "Selection",
                 .meaning = "How the motor is set to this rating. Empty means none is needed.",
                 .example = "jumper"}),
    };
    return columns;
}

const RowColumns<Tap>& tap_columns() {
    static const RowColumns<Tap> columns{
        owned_by<Tap>(),
        member<&Tap::number>(kinds::count, {.name = "tap",
                                            .title = "Tap",
                                            .meaning = "Number as printed; for speed leads 1 is the lowest.",
                                            .example = "1",
                                            .need = Need::required,
                                            .bounds = between(1, 20, "taps count from 1")}),
        member<&Tap::label>(kinds::text, {.name = "label",
                                          .title = "Label",
                                          .meaning = "What is printed beside it.",
                                          .example = "LO",
                                          .seen = Seen::by_people}),
        member<&Tap::torque>(kinds::ounce_feet, {.name = "torque_ozft",
                                                 .title = "Torque",
                                                 .meaning = "Torque that a constant-torque tap holds.",
                                                 .example = "25.5",
                                                 .bounds = above_zero("torque above zero")}),
        member<&Tap::speed>(kinds::rpm, {.name = "speed_rpm",
                                         .title = "Speed",
                                         .meaning = "Rated speed of the lead.",
                                         .example = "870",
                                         .bounds = above_zero("rpm above zero"),
                                         .seen = Seen::by_people,
                                         .spellings = {"870"}}),
        member<&Tap::signal>(kinds::signal, {.name = "signal",
                                             .title = "Signal",
                                             .meaning = "What makes the tap live.",
                                             .example = "24 V",
                                             .seen = Seen::by_people}),
        member<&Tap::off_delay>(kinds::seconds, {.name = "off_delay_s",
                                                 .title = "Off delay",
                                                 .meaning = "How long it runs on after the call.",
                                                 .example = "60",
                                                 .bounds = at_least(0, "an off delay of zero or more"),
                                                 .seen = Seen::by_people}),
    };
    return columns;
}

const RowColumns<PartTerminal>& terminal_columns() {
    static const RowColumns<PartTerminal> columns{
        owned_by<PartTerminal>(),
        member<&PartTerminal::connector>(kinds::text, {.name = "connector",
                                                       .title = "Connector",
                                                       .meaning = "The plug or strip that it sits on.",
                                                       .example = "power",
                                                       .seen = Seen::by_people,
                                                       .when_empty = ""}),
        member<&PartTerminal::label>(kinds::text, {.name = "label",
                                                   .title = "Label",
                                                   .meaning = "As printed.",
                                                   .example = "L",
                                                   .need = Need::required,
                                                   .seen = Seen::by_people}),
        member<&PartTerminal::function>(kinds::terminal_function, {.name = "function",
                                                                   .title = "Function",
                                                                   .meaning = "What it is for.",
                                                                   .example = "tap 1",
                                                                   .need = Need::required}),
    };
    return columns;
}

const RowColumns<Module>& module_columns() {
    static const RowColumns<Module> columns{
        owned_by<Module>(),
        member<&Module::program>(kinds::part_number,
                                 {.name = "program",
                                  .title = "Program",
                                  .meaning = "Program that it carries. Another program is another part.",
                                  .example = "P-3301",
                                  .spellings = {"kept as text for ever: zeros, dashes and blanks"}}),
        member<&Module::volts>(kinds::volts, {.name = "volts",
                                              .title = "Volts",
                                              .meaning = "Supply voltage: one, or a span that is all good.",
                                              .example = "115"}),
        member<&Module::signal>(
            kinds::signal,
            {.name = "signal", .title = "Signal", .meaning = "What tells it to run.", .example = "24 V"}),
        member<&Module::power>(kinds::horsepower, {.name = "power_hp",
                                                   .title = "Power",
                                                   .meaning = "Power of the motor half that it drives.",
                                                   .example = "1/3",
                                                   .bounds = above_zero("power above zero"),
                                                   .spellings = {"1/2", ".5 HP"}}),
        member<&Module::warranty_months>(kinds::count, warranty()),
    };
    return columns;
}

const RowColumns<CureRow>& cure_columns() {
    static const RowColumns<CureRow> columns{
        owned_by<CureRow>("The accessory."),
        unread<CureRow>(kinds::count, {.name = "cure_no",
                                       .title = "Cure number",
                                       .meaning = "Counts the cures of one accessory from 1.",
                                       .example = "1",
                                       .need = Need::required,
                                       .bounds = between(1, 100, "cures count from 1")}),
        member<&CureRow::cure>(kinds::cure, {.name = "cure",
                                             .title = "Cure",
                                             .meaning = "What it puts right.",
                                             .example = "shaft bushing",
                                             .need = Need::required}),
        member<&CureRow::from>(kinds::inches, {.name = "from_in",
                                               .title = "From",
                                               .meaning = "Size that is there.",
                                               .example = "1/2",
                                               .bounds = above_zero("a size to cure from above zero")}),
        member<&CureRow::to>(kinds::inches, {.name = "to_in",
                                             .title = "To",
                                             .meaning = "Size that is wanted.",
                                             .example = "5/8",
                                             .bounds = above_zero("a size to cure to above zero")}),
        member<&CureRow::capacitor>(kinds::microfarad, {.name = "capacitor_uf",
                                                        .title = "Capacitor",
                                                        .meaning = "Capacitance of a run capacitor.",
                                                        .example = "5",
                                                        .bounds = above_zero("microfarad above zero"),
                                                        .spellings = {"5 MFD"}}),
        member<&CureRow::capacitor_volts>(kinds::single_volts,
                                          {.name = "capacitor_v",
                                           .title = "Capacitor volts",
                                           .meaning = "Rated voltage of a run capacitor.",
                                           .example = "440",
                                           .bounds = above_zero("capacitor volts above zero"),
                                           .spellings = {"370", "440"}}),
        member<&CureRow::mount>(kinds::mount, {.name = "mount",
                                               .title = "Mount",
                                               .meaning = "The mount that the equipment has.",
                                               .example = "lugs"}),
        member<&CureRow::coil>(kinds::single_volts, {.name = "coil_v",
                                                     .title = "Coil volts",
                                                     .meaning = "Voltage of a relay's coil.",
                                                     .example = "24",
                                                     .bounds = above_zero("coil volts above zero"),
                                                     .spellings = {"24", "24VAC"}}),
        member<&CureRow::power>(kinds::volt_amperes,
                                {.name = "power_va",
                                 .title = "Power",
                                 .meaning = "Rating of a transformer, or draw of a relay's coil.",
                                 .example = "40",
                                 .bounds = above_zero("VA above zero")}),
        member<&CureRow::primary>(
            kinds::volts,
            {.name = "primary_v",
             .title = "Primary volts",
             .meaning =
                 "Primary of a transformer: one voltage, or a span. A primary with taps has a row for each.",
             .example = "208-240"}),
        member<&CureRow::poles>(kinds::count, {.name = "poles",
                                               .title = "Contact poles",
                                               .meaning = "Contact poles of a relay.",
                                               .example = "2",
                                               .bounds = between(1, 12, "1 to 12 contact poles"),
                                               .unit = "poles",
                                               .spellings = {"2"}}),
        member<&CureRow::connector_from>(kinds::text, {.name = "connector_from",
                                                       .title = "Connector from",
                                                       .meaning = "Plug that is there.",
                                                       .example = "4-place"}),
        member<&CureRow::connector_to>(kinds::text, {.name = "connector_to",
                                                     .title = "Connector to",
                                                     .meaning = "Plug that is wanted.",
                                                     .example = "5-place edge"}),
        member<&CureRow::compressor_capacitor>(
            kinds::microfarad,
            {.name = "compressor_uf",
             .title = "Compressor side",
             .meaning = "Capacitance of the compressor's side of a dual run capacitor; capacitor_uf is the "
                        "fan's side. Empty: a single one.",
             .example = "45",
             .bounds = above_zero("microfarad above zero"),
             .spellings = {"45 MFD"}}),
        member<&CureRow::amps>(kinds::amps, {.name = "amps",
                                             .title = "Amps",
                                             .meaning = "Rating of a fuse, or the current that the "
                                                        "contacts of a relay or contactor carry.",
                                             .example = "5",
                                             .bounds = above_zero("amps above zero")}),
    };
    return columns;
}

}  // namespace endbell::inline fields
