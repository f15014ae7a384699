// Nothing here fits, or it has to be ordered: what somebody on the telephone needs to know, on one place.
#include "engine/base/text.hpp"
#include "engine/explain/parts_of_documents.hpp"

namespace endbell::inline explain {

namespace {

constexpr std::size_t longest = 160;  // of a reading in a row

template <class T>
std::string or_not_read(const Reading<T>& reading) {
    return reading.raw.empty() ? "not read: read it before you call" : shortened(reading.raw, longest);
}

/// The old plate as one line, in the order in which it is read out.
std::string plate_line(const PlateReadings& plate) {
    std::vector<std::string> said;
    const auto add = [&said](const auto& reading, const char* unit) {
        if (!reading.raw.empty()) said.push_back(unit + (*unit != '\0' ? " " : std::string()) + reading.raw);
    };
    add(plate.family, "");
    add(plate.power, "power");
    add(plate.volts, "volts");
    add(plate.phase, "phase");
    add(plate.frequency, "Hz");
    add(plate.speed, "rpm");
    add(plate.current, "amps");
    add(plate.rotation, "rotation");
    add(plate.frame, "frame");
    add(plate.shaft_diameter, "shaft");
    add(plate.shaft_length, "shaft length");
    add(plate.capacitor, "capacitor");
    if (said.empty()) return "not read: read it before you call";
    return shortened(joined(said, ", "), 2 * longest);
}

bool is_inducer(const FailedUnit& job) {
    return job.unit.load.said() == Load::draft_inducer;
}

/// By what kind of part it is: an inducer is an assembly, a two-piece motor a motor and a program.
std::string what_to_ask(const FailedUnit& job, const Facts& facts) {
    if (is_inducer(job))
        return "Which inducer assembly is specified for this model and serial number, with its gasket and "
               "its "
               "wiring diagram? No other motor or assembly goes in its place.";
    if (facts.family && is_two_piece(*facts.family))
        return "Which motor, which module and which program does this model and serial number take today, "
               "and "
               "do they come as one?";
    return "Which motor does this model and serial number take today, and is there a kit with it: bracket, "
           "capacitor, plug?";
}

}  // namespace

void add_ask_the_maker(Document& to, const FailedUnit& job, const Facts& facts) {
    to.add(Heading{"Order it from the equipment's maker"});
    Pairs pairs;
    pairs.rows.emplace_back("Equipment model", or_not_read(job.unit.equipment_model));
    pairs.rows.emplace_back("Serial number", or_not_read(job.unit.equipment_serial));
    pairs.rows.emplace_back(is_inducer(job) ? "Old assembly or motor" : "Old motor",
                            or_not_read(job.unit.old_part_number));
    const bool two_pieces = facts.family && is_two_piece(*facts.family);
    if (two_pieces || !job.unit.old_module_number.raw.empty())
        pairs.rows.emplace_back("Old module", or_not_read(job.unit.old_module_number));
    if (two_pieces || !job.plate.program.raw.empty())
        pairs.rows.emplace_back("Its program", or_not_read(job.plate.program));
    if (is_inducer(job)) pairs.rows.emplace_back("Specified assembly", or_not_read(job.unit.assembly_number));
    pairs.rows.emplace_back("Old plate", plate_line(job.plate));
    pairs.rows.emplace_back("Ask", what_to_ask(job, facts));
    to.add(pairs);
}

}  // namespace endbell::inline explain
