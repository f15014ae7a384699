#include "engine/explain/air_words.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include "engine/explain/english.hpp"
#include "engine/explain/values.hpp"

namespace endbell::inline explain {

namespace {

constexpr auto changes = std::to_array<std::pair<std::string_view, std::string_view>>({
    {"equipment.altitude",
     "sea level is assumed; each 1,000 ft up, the same heat needs about 3.7 % more cfm, and above the "
     "derating "
     "altitude the burner may give less"},
    {"equipment.return_air", "70 F is assumed; each 10 F warmer needs 1.9 % more cfm"},
    {"equipment.climate",
     "a normal climate is assumed: 400 cfm a ton; a humid one asks for 350, a dry one for 450"},
    {"equipment.low_cooling",
     "70 % of the full capacity is assumed for the low stage; its window moves with it"},
    {"equipment.low_heat_output",
     "65 % of the full output is assumed for the low stage; window and rise move with it"},
    {"equipment.electric_heat_volts",
     "240 V elements are assumed, on 208 V either; 240 V elements on 208 V give 75 % of their kilowatts, and "
     "need that much less air"},
    {"measured.line_volts",
     "the system's volts are taken; the elements' heat goes with their square: 5 % more volts, 10 % more "
     "heat"},
    {"equipment.heat_least_air",
     "the rise limit stands for the plate's least airflow in heat; the plate's own figure takes its place"},
    {"measured.speed",
     "the plate's speed is taken for the running speed; torque, shaft power and load move with it"},
    {"plate.efficiency",
     "the old kind's usual efficiency is assumed; the old torque, and with it each tap's airflow, moves by "
     "half "
     "as much"},
    {"measured.live_taps",
     "the speed is taken as read on the high tap; on another the old torque is not known"},
    {"measured.watts",
     "without watts the old torque is a guess; 10 % of torque is 5 % of each tap's airflow"},
    {"motors.program",
     "the program is taken to ask for each call's target; another program moves another airflow"},
    {"motors.efficiency", "the kind's usual efficiency is assumed; watts and amps move with it"},
    {"power factor", "the kind's usual power factor is assumed; amps move with it"},
    {"duct curve",
     "the duct is taken to stay as it was measured; another filter, coil or damper moves every airflow"},
});

constexpr auto cure_words = std::to_array<English<StaticCure>>({
    {StaticCure::filter, "a clean filter, or one of more face or depth (read the drop across it)"},
    {StaticCure::coil, "a clean coil (read the drop across it)"},
    {StaticCure::return_face, "a larger return grille or filter"},
    {StaticCure::lower_tap, "a lower tap that is still in the window"},
    {StaticCure::duct, "open dampers and registers, then more duct"},
});

}  // namespace

std::string what_it_changes(std::string_view assumed) {
    for (const auto& [name, text] : changes) {
        if (name == assumed) return std::string(text);
    }
    return "";
}

std::vector<std::string_view> explained_assumptions() {
    std::vector<std::string_view> names;
    for (const auto& [name, text] : changes) names.push_back(name);
    return names;
}

std::string say(StaticCure cure) {
    return english_of(cure_words, cure);
}

std::string say(const HeatOutput& output) {
    if (!output.rated || !output.at) return std::string(word(output.when));
    return "rated " + say(Value(*output.rated)) + ", fed with " + say(Value(*output.at));
}

}  // namespace endbell::inline explain
