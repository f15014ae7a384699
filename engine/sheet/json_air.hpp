// The air plan as a JSON value. Inside sheet/ only.
#pragma once
#include "engine/sheet/json_stages.hpp"

namespace endbell::inline sheet::json {

/// Every figure of it that the text prints.
Json air(const AirPlan& plan);

}  // namespace endbell::inline sheet::json
