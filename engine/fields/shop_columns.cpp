// The columns of what is known about parts and shops beside the parts themselves.
#include "engine/fields/part_columns.hpp"

namespace endbell::inline fields {

std::vector<Column> module_fit_columns() {
    return {
        part_id("The module."),
        column(kinds::part_number, {.name = "motor",
                                    .title = "Motor",
                                    .meaning = "A part_id of this catalog, or the number of an old motor.",
                                    .example = "VM 330-01",
                                    .need = Need::required,
                                    .spellings = {"kept as text for ever: zeros, dashes and blanks"}}),
    };
}

std::vector<Column> exclude_columns() {
    return {
        part_id("The accessory."),
        column(kinds::part_number, {.name = "other_part_id",
                                    .title = "Other part",
                                    .meaning = "The part that it cannot be used with.",
                                    .example = "X-BAND-56",
                                    .need = Need::required,
                                    .spellings = {"kept as text for ever: zeros, dashes and blanks"}}),
    };
}

std::vector<Column> reference_columns() {
    return {
        column(kinds::part_number, {.name = "old_number",
                                    .title = "Old number",
                                    .meaning = "The other number.",
                                    .example = "EB-5 4410",
                                    .need = Need::required,
                                    .spellings = {"kept as text for ever: zeros, dashes and blanks",
                                                  "found with or without dashes and blanks"}}),
        column(kinds::part_number, {.name = "part_id",
                                    .title = "Part",
                                    .meaning = "A part of this catalog, or a number on the way to one.",
                                    .example = "T-050-230",
                                    .need = Need::required,
                                    .spellings = {"kept as text for ever: zeros, dashes and blanks"}}),
        column(kinds::relation,
               {.name = "relation",
                .title = "Relation",
                .meaning = "What the part is to the other number: \"supersedes\" when the part is the newer "
                           "of the two, \"superseded by\" when it is the older.",
                .example = "supersedes",
                .need = Need::required}),
        column(kinds::text, {.name = "source",
                             .title = "Source",
                             .meaning = "Who says so.",
                             .example = "maker's list of 2025",
                             .need = Need::required}),
    };
}

std::vector<Column> offer_columns() {
    return {
        part_id("The part that is offered."),
        column(kinds::text, {.name = "branch",
                             .title = "Branch",
                             .meaning = "Where it lies. Empty: anywhere.",
                             .example = "East",
                             .when_empty = ""}),
        column(kinds::text, {.name = "seller",
                             .title = "Seller",
                             .meaning = "Who sells it.",
                             .example = "Corner Supply",
                             .need = Need::required}),
        column(kinds::amount, {.name = "price",
                               .title = "Price",
                               .meaning = "Cost to the shop before markup, for one piece. 0 is kept and "
                                          "reported, and read as unknown.",
                               .example = "129.50"}),
        column(kinds::currency, {.name = "currency",
                                 .title = "Currency",
                                 .meaning = "ISO 4217 code.",
                                 .example = "USD",
                                 .need = Need::required}),
        column(kinds::amount, {.name = "core_credit",
                               .title = "Core credit",
                               .meaning = "What comes back for the old part.",
                               .example = "25",
                               .spellings = {"25.00"}}),
        column(kinds::count, {.name = "stock",
                              .title = "Stock",
                              .meaning = "Pieces on the shelf.",
                              .example = "3",
                              .bounds = at_least(0, "a stock of zero or more"),
                              .unit = "pieces",
                              .spellings = {"3"}}),
        column(kinds::count, {.name = "lead_days",
                              .title = "Lead days",
                              .meaning = "Days until it is there when it is not in stock.",
                              .example = "4",
                              .bounds = at_least(0, "lead days of zero or more"),
                              .unit = "days",
                              .spellings = {"4"}}),
        column(kinds::date, {.name = "as_of",
                             .title = "As of",
                             .meaning = "Day of the price.",
                             .example = "2026-01-15",
                             .need = Need::required}),
    };
}

std::vector<Column> labour_columns() {
    return {
        column(kinds::labour_task, {.name = "task",
                                    .title = "Task",
                                    .meaning = "The piece of work.",
                                    .example = "motor swap",
                                    .need = Need::required}),
        column(kinds::hours, {.name = "hours",
                              .title = "Hours",
                              .meaning = "Time it takes, at most three decimals.",
                              .example = "1.25",
                              .need = Need::required}),
        column(kinds::text, {.name = "source",
                             .title = "Source",
                             .meaning = "Where the figure comes from.",
                             .example = "shop table",
                             .need = Need::required}),
    };
}

std::vector<Column> limit_columns() {
    return {
        column(kinds::limit_id, {.name = "limit",
                                 .title = "Limit",
                                 .meaning = "Name of the limit, as \"endbell rules\" lists them.",
                                 .example = "price.age",
                                 .need = Need::required}),
        column(kinds::plain_number, {.name = "value",
                                     .title = "Value",
                                     .meaning = "The stricter value, in the unit of the program's own row.",
                                     .example = "14",
                                     .need = Need::required}),
        column(kinds::text, {.name = "set_by",
                             .title = "Set by",
                             .meaning = "Who decided it.",
                             .example = "Corner Supply",
                             .need = Need::required}),
    };
}

}  // namespace endbell::inline fields
