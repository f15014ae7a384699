// The order in which a person at the counter checks: what it is, what it turns, electricity, size, control,
// fit.
#include "engine/rules/registry.hpp"

namespace endbell::inline rules {

const std::vector<Rule>& all_rules() {
    static const std::vector<Rule> all{
        rule::wanted_part(),
        rule::load(),
        rule::inducer_assembly(),
        rule::family(),
        rule::drive(),
        rule::program(),
        rule::supply_voltage(),
        rule::phase(),
        rule::frequency(),
        rule::poles(),
        rule::speed(),
        rule::power(),
        rule::service_factor(),
        rule::full_load_current(),
        rule::circuit_ampacity(),
        rule::signal_class(),
        rule::control_power(),
        rule::tap_rule(),
        rule::tap_count(),
        rule::rotation(),
        rule::double_shaft(),
        rule::shaft_diameter(),
        rule::shaft_length(),
        rule::shaft_flat(),
        rule::body_diameter(),
        rule::body_length(),
        rule::mount(),
        rule::frame(),
        rule::bolt_circle(),
        rule::enclosure(),
        rule::position(),
        rule::bearing(),
        rule::ambient(),
        rule::protection(),
        rule::capacitor(),
        rule::connector(),
        rule::part_status(),
    };
    return all;
}

}  // namespace endbell::inline rules
