#include "engine/fields/value_kind.hpp"

#include "engine/fields/cell_tools.hpp"
#include "engine/model/kinds.hpp"
#include "engine/model/task.hpp"

namespace endbell::inline fields::kinds {

namespace {

using cells::enum_words;

/// Two of the directions need their viewing end, which is a column of its own.
std::vector<std::string_view> rotation_words() {
    return {"CW", "CCW", "reversible"};
}
std::vector<std::string_view> end_words() {
    return {"shaft end", "lead end"};
}
std::vector<std::string_view> yes_no_words() {
    return {"yes", "no"};
}

/// A number, a fraction, or both, and perhaps a unit behind it.
constexpr std::string_view fraction =
    R"re(^(\d+(\.\d+)?|\.\d+|\d+/\d+|\d+[- ]\d+/\d+)( ?("|in|mm|hp|HP|W|kW))?$)re";

}  // namespace

const ValueKind part_number{.read = cells::number_text, .stored = "TEXT", .described = "string"};
const ValueKind part_kind{.read = cells::part_kind,
                          .stored = "TEXT",
                          .described = "string",
                          .words = enum_words<PartKind>,
                          .told = "motor, module or accessory"};
const ValueKind text{.read = cells::text, .stored = "TEXT", .described = "string"};
const ValueKind part_status{.read = cells::part_status,
                            .stored = "TEXT",
                            .described = "string",
                            .spellings = {"NLA", "disc", "obsolete"},
                            .words = enum_words<PartStatus>,
                            .told = "active, superseded or discontinued"};
const ValueKind family{.read = cells::family,
                       .stored = "TEXT",
                       .described = "string",
                       .spellings = {"PSC", "shaded", "CT", "constant CFM"},
                       .words = enum_words<Family>};
const ValueKind loads{.read = cells::loads,
                      .stored = "TEXT",
                      .described = "string",
                      .spellings = {"several are separated by ;"},
                      .words = enum_words<Load>,
                      .several = true};
const ValueKind families{.read = cells::families,
                         .stored = "TEXT",
                         .described = "string",
                         .spellings = {"several are separated by ;"},
                         .words = enum_words<Family>,
                         .several = true};
const ValueKind phase{.read = cells::phase,
                      .stored = "INTEGER",
                      .described = "integer",
                      .unit = "phases",
                      .spellings = {"1PH", "3~"},
                      .numbers = "1, 3",
                      .condition = "{} IN (1, 3)",
                      .told = "one or three phases"};
const ValueKind hertz{.read = cells::hertz,
                      .stored = "REAL",
                      .described = "number",
                      .unit = "Hz",
                      .spellings = {"60", "60 Hz"},
                      .unit_may_follow = true,
                      .above_zero = 1};
const ValueKind poles{.read = cells::poles,
                      .stored = "INTEGER",
                      .described = "integer",
                      .unit = "poles",
                      .spellings = {"6P", "6 pole"},
                      .numbers = "2, 4, 6, 8, 10, 12, 14, 16",
                      .condition = "{} BETWEEN 2 AND 16 AND {} % 2 = 0",
                      .told = "an even number of poles, 2 to 16"};
const ValueKind rotation{.read = cells::rotation,
                         .stored = "TEXT",
                         .described = "string",
                         .spellings = {"CWSE", "CCWLE", "REV"},
                         .words = rotation_words};
const ValueKind viewed_from{.read = cells::viewed_from,
                            .stored = "TEXT",
                            .described = "string",
                            .spellings = {"SE", "LE", "OSE"},
                            .words = end_words};
const ValueKind yes_no{.read = cells::yes_no, .stored = "TEXT", .described = "string", .words = yes_no_words};
const ValueKind inches{.read = cells::inches,
                       .stored = "REAL",
                       .described = "string",
                       .unit = "in",
                       .spellings = {"0.5", "1/2", "5-5/8", "5 5/8", "12.7 mm"},
                       .pattern = fraction};
const ValueKind mount{
    .read = cells::mount, .stored = "TEXT", .described = "string", .words = enum_words<Mount>};
const ValueKind drive{.read = cells::drive,
                      .stored = "TEXT",
                      .described = "string",
                      .spellings = {"direct drive", "DD", "belt drive"},
                      .words = enum_words<Drive>};
const ValueKind enclosure{.read = cells::enclosure,
                          .stored = "TEXT",
                          .described = "string",
                          .spellings = {"OAO", "DP"},
                          .words = enum_words<Enclosure>};
const ValueKind bearing{.read = cells::bearing,
                        .stored = "TEXT",
                        .described = "string",
                        .spellings = {"SLV"},
                        .words = enum_words<Bearing>};
const ValueKind positions{.read = cells::positions,
                          .stored = "TEXT",
                          .described = "string",
                          .spellings = {"several are separated by ;", "any", "SU"},
                          .words = enum_words<ShaftPosition>,
                          .several = true};
const ValueKind celsius{.read = cells::celsius,
                        .stored = "REAL",
                        .described = "number",
                        .unit = "degrees Celsius",
                        .spellings = {"40", "60C", "104 F"},
                        .unit_may_follow = true};
const ValueKind service_factor{.read = cells::service_factor,
                               .stored = "REAL",
                               .described = "number",
                               .unit = "ratio",
                               .spellings = {"1.0", "SF 1.15"},
                               .unit_may_follow = true};
const ValueKind protection{.read = cells::protection,
                           .stored = "TEXT",
                           .described = "string",
                           .spellings = {"auto", "manual reset"},
                           .words = enum_words<Protection>};
const ValueKind microfarad{.read = cells::microfarad,
                           .stored = "REAL",
                           .described = "number",
                           .unit = "microfarad",
                           .spellings = {"5", "5 MFD", "5 uF"},
                           .unit_may_follow = true};
const ValueKind single_volts{.read = cells::single_volts,
                             .stored = "REAL",
                             .described = "number",
                             .unit = "V",
                             .spellings = {"370", "370 V"},
                             .unit_may_follow = true,
                             .above_zero = 1};
const ValueKind speeds{.read = cells::speeds,
                       .stored = "INTEGER",
                       .described = "integer",
                       .unit = "speeds",
                       .spellings = {"3SPD", "4"}};
const ValueKind signal{
    .read = cells::signal, .stored = "TEXT", .described = "string", .words = enum_words<SignalClass>};
const ValueKind tap_rule{
    .read = cells::tap_rule, .stored = "TEXT", .described = "string", .words = enum_words<TapRule>};
const ValueKind rpm{.read = cells::rpm,
                    .stored = "REAL",
                    .described = "number",
                    .unit = "rpm",
                    .spellings = {"1500", "1,500"},
                    .unit_may_follow = true,
                    .thousands = true,
                    .above_zero = 1};
const ValueKind efficiency{.read = cells::efficiency,
                           .stored = "REAL",
                           .described = "number",
                           .unit = "ratio, 0 to 1",
                           .spellings = {"0.8", "80 %"},
                           .unit_may_follow = true,
                           .above_zero = 0.01};
const ValueKind count{.read = cells::count, .stored = "INTEGER", .described = "integer"};
const ValueKind horsepower{.read = cells::horsepower,
                           .stored = "REAL",
                           .described = "string",
                           .unit = "hp",
                           .spellings = {"1/2", ".5 HP", "373 W"},
                           .pattern = fraction};
const ValueKind volts{.read = cells::volts,
                      .stored = "TEXT",
                      .described = "string",
                      .unit = "V",
                      .spellings = {"115", "208-230", "208/230V", "230"},
                      .pattern = R"re(^[1-9]\d*(\.\d+)?([-/][1-9]\d*(\.\d+)?)?( ?V)?$)re",
                      .condition = "{} GLOB '[1-9]*'",
                      .told = "volts such as 115 or 208-230"};
const ValueKind amps{.read = cells::amps,
                     .stored = "REAL",
                     .described = "number",
                     .unit = "A",
                     .spellings = {"2.6", "FLA 2.6"},
                     .unit_may_follow = true};
const ValueKind selection{
    .read = cells::selection, .stored = "TEXT", .described = "string", .words = enum_words<VoltageSelection>};
const ValueKind ounce_feet{.read = cells::ounce_feet,
                           .stored = "REAL",
                           .described = "number",
                           .unit = "oz-ft",
                           .spellings = {"25.5"},
                           .unit_may_follow = true};
const ValueKind seconds{.read = cells::seconds,
                        .stored = "REAL",
                        .described = "number",
                        .unit = "s",
                        .spellings = {"60", "60 s"},
                        .unit_may_follow = true};
const ValueKind terminal_function{
    .read = cells::terminal_function,
    .stored = "TEXT",
    .described = "string",
    .pattern =
        R"re(^(line|second line|third line|earth|common|tap [1-9][0-9]?|run signal|capacitor|jumper|winding|thermistor|park)$)re"};
const ValueKind cure{.read = cells::cure, .stored = "TEXT", .described = "string", .words = enum_words<Cure>};
const ValueKind volt_amperes{.read = cells::volt_amperes,
                             .stored = "REAL",
                             .described = "number",
                             .unit = "VA",
                             .spellings = {"40", "40 VA"},
                             .unit_may_follow = true};
const ValueKind relation{.read = cells::relation,
                         .stored = "TEXT",
                         .described = "string",
                         .spellings = {"repl", "equiv"},
                         .words = enum_words<Relation>};
const ValueKind amount{.read = cells::text,
                       .stored = "TEXT",
                       .described = "number",
                       .unit = "of the currency",
                       .spellings = {"129.50", "$1,234.50"},
                       .thousands = true,
                       .least = 0};
const ValueKind currency{.read = cells::currency_code,
                         .stored = "TEXT",
                         .described = "string",
                         .pattern = R"re(^[A-Z]{3}$)re",
                         .condition = "length({}) = 3",
                         .told = "an ISO 4217 code"};
const ValueKind date{.read = cells::date,
                     .stored = "TEXT",
                     .described = "date",
                     .spellings = {"2026-01-15"},
                     .condition = "{} GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'",
                     .told = "a date such as 2026-01-31"};
const ValueKind labour_task{
    .read = cells::labour_task, .stored = "TEXT", .described = "string", .words = enum_words<ShopTask>};
const ValueKind hours{.read = cells::hours,
                      .stored = "TEXT",
                      .described = "number",
                      .unit = "hours",
                      .spellings = {"1.25"},
                      .unit_may_follow = true,
                      .least = 0,
                      .most = 999.999};
const ValueKind limit_id{.read = cells::limit_id, .stored = "TEXT", .described = "string"};
const ValueKind plain_number{.read = cells::plain_number, .stored = "REAL", .described = "number"};

}  // namespace endbell::inline fields::kinds
