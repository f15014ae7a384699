// A finding as a sentence of its rule and reason, then its facts and what would put it right.
#pragma once
#include <string>

#include "engine/model/finding.hpp"

namespace endbell::inline explain {

std::string sentence(const Finding& finding);

/// What a remedy asks for: "shaft bushing from 5/16 in to 1/2 in".
std::string say(const Remedy& remedy);

}  // namespace endbell::inline explain
