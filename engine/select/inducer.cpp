#include "engine/select/inducer.hpp"

namespace endbell::inline select {

bool waits_for_assembly(const FailedUnit& job) {
    return job.unit.load.said() == Load::draft_inducer && !job.unit.assembly_number.said();
}

std::vector<std::string> assembly_questions(const FailedUnit& job) {
    if (!waits_for_assembly(job)) return {};
    std::vector<std::string> keys{"unit.assembly_number"};
    if (!job.unit.equipment_model.said()) keys.emplace_back("unit.equipment_model");
    if (!job.unit.equipment_serial.said()) keys.emplace_back("unit.equipment_serial");
    return keys;
}

std::vector<CrossReference> named_for_model(const FailedUnit& job, const Catalog& catalog) {
    const auto model = job.unit.equipment_model.said();
    return waits_for_assembly(job) && model ? catalog.references(*model) : std::vector<CrossReference>();
}

}  // namespace endbell::inline select
