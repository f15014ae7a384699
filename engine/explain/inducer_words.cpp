#include "engine/explain/inducer_words.hpp"

#include "engine/base/text.hpp"

namespace endbell::inline explain {

void add_named_for_model(Document& to, const Selection& selection) {
    if (selection.named_for_model.empty()) return;
    to.add(Heading{"What the catalog says of this equipment's model"});
    Grid table{
        {"model", "part", "said by"}, {}, "Hold it against the parts list in the equipment: that decides."};
    for (const CrossReference& named : selection.named_for_model)
        table.rows.push_back({shortened(named.old_number, 60), named.part_id, shortened(named.source, 120)});
    to.add(table);
}

}  // namespace endbell::inline explain
