// How much air each tap moves on this duct, and which tap serves each call.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/model/failed_unit.hpp"
#include "engine/model/limits.hpp"
#include "engine/model/part.hpp"

namespace endbell {

/// A number with what it may be off by, and whether it was assumed.
struct Estimate {
    double value = 0;
    double plus_minus = 0;  // same unit, about 95 %
    bool assumed = false;
};

/// One tap's operating point on this duct.
struct TapAir {
    int tap = 0;
    Estimate airflow;       // cfm
    Estimate static_total;  // in. w.c.
    Estimate speed;         // rpm
    Estimate shaft_power;   // hp
    Estimate input_power;   // W
    Estimate line_current;  // A
    std::string_view bound;  // "", "speed", "power": the limit that binds
};

/// The air one call needs, and the tap that gives it.
struct CallAir {
    Call call;
    double low = 0, target = 0, high = 0;  // cfm window
    std::string_view basis;                // "cfm per ton", "temperature rise", "electric elements", "circulation"
    bool hard = false;                     // never traded away: electric heat, furnace rise
    std::optional<int> tap;                // none: unmet or not known
    bool met = false;
    std::string_view unmet_reason;         // "no tap in window", "not measured"
};

struct AirPlan {
    bool computed = false;           // false: `lacking` says which readings are missing
    std::vector<std::string> lacking;  // job keys
    std::string_view method;         // "torque ratio", "blower table", "fan laws"
    std::vector<TapAir> taps;        // ascending tap
    std::vector<CallAir> calls;
    std::vector<std::string> assumed;  // what was assumed, as job keys or catalog columns
    bool duct_first = false;         // static above the repair-first limit
};

/// Calls come from the job's controls and equipment; windows from capacity, rise or elements.
AirPlan plan_air(const FailedUnit& job, const Part& part, const Limits& limits);

}  // namespace endbell
