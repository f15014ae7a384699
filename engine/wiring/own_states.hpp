// States that the job lists itself, for controls that follow no usual pattern.
#pragma once
#include <string>
#include <vector>

#include "engine/wiring/states.hpp"

namespace endbell::inline wiring {

/// The terminals the job names; else those its own states name.
std::vector<Terminal> named_terminals(const ControlFacts& controls);

/// Does one of the job's own states need this terminal?
bool is_stated(const ControlFacts& controls, const std::string& label);

/// `controls.states`, and "off". A terminal that is no signal here (a board's, where the run signal takes
/// those) is left out of them.
std::vector<Demand> own_demands(const ControlFacts& controls, const std::vector<ControlSignal>& signals);

}  // namespace endbell::inline wiring
