// Every rule's constructor; registry.cpp puts them in order.
#pragma once
#include "engine/model/limit.hpp"
#include "engine/rules/finding_draft.hpp"
#include "engine/rules/trade.hpp"

namespace endbell::inline rules::rule {

Rule part_status();
Rule wanted_part();
Rule load();
Rule inducer_assembly();
Rule family();
Rule drive();
Rule program();
Rule supply_voltage();
Rule phase();
Rule frequency();
Rule poles();
Rule speed();
Rule power();
Rule service_factor();
Rule full_load_current();
Rule circuit_ampacity();
Rule signal_class();
Rule control_power();
Rule tap_rule();
Rule tap_count();
Rule rotation();
Rule double_shaft();
Rule shaft_diameter();
Rule shaft_length();
Rule shaft_flat();
Rule body_diameter();
Rule body_length();
Rule mount();
Rule frame();
Rule bolt_circle();
Rule enclosure();
Rule position();
Rule bearing();
Rule ambient();
Rule protection();
Rule capacitor();
Rule connector();

}  // namespace endbell::inline rules::rule
