// engine/airflow: blower, duct and motor as pure functions of each other: how much air each tap moves on this duct, and
// which tap serves each call.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "engine/airflow/estimate.hpp"
#include "engine/airflow/fan_energy.hpp"
#include "engine/airflow/kinds.hpp"
#include "engine/facts/facts.hpp"
#include "engine/model/failed_unit.hpp"
#include "engine/model/limits.hpp"
#include "engine/model/part.hpp"

namespace endbell::inline airflow {

/// One tap's operating point on this duct.
struct TapAir {
    int tap = 0;
    Estimate<Airflow> airflow;
    Estimate<Pressure> static_total;
    Estimate<Speed> speed;
    Estimate<Torque> torque;  // at the shaft
    Estimate<Power> shaft_power;
    Estimate<Power> input_power;
    Estimate<Current> line_current;
    std::optional<MotorLimit> bound;  // speed or power: the limit that binds
    EstimatedNumber load;             // shaft power over rated power, service factor or not
    EstimatedNumber efficiency;       // shaft power over input power
    std::optional<EfficiencySource> efficiency_from;
    std::optional<LoadCaution> caution;
};

/// One output of heat that the job leaves possible, with the window and the rise that go with it.
struct CallHeat {
    HeatOutput output;
    Airflow low, target, high;
    Estimate<TemperatureRise> expected_rise;  // at the chosen airflow
};

/// Another tap in a call's place: what would change against the chosen one.
struct TapTrade {
    int tap = 0;
    bool in_window = false;
    bool overloads = false;
    Airflow airflow;
    std::optional<Pressure> static_total;
    std::optional<Power> input_power;
    double decibels = 0;
};

/// A static above what the equipment's plate allows, and what brings it down.
struct StaticOverPlate {
    Pressure found, most;
    std::optional<Call> call;  // predicted on this call's tap; none: as measured
    bool plate_says = false;   // false: `most` is limit static.plate_default
    std::vector<StaticCure> cures;
};

/// The rating of 10 CFR 430 Subpart B Appendix AA at what was worked out here: information, no certification.
struct FanEnergy {
    double rating = 0;  // W per 1,000 cfm
    std::optional<FurnaceClass> furnace;
    std::optional<double> most;  // of its class, at this airflow
    Energy a_year;               // in the test's own hours
};

/// The air one call needs, and the tap that gives it.
struct CallAir {
    Call call = Call::circulate;
    Airflow low, target, high;  // the window; all 0 when it is not known
    WindowBasis basis = WindowBasis::circulation;
    bool hard = false;                     // never traded away: electric heat, furnace rise
    std::optional<int> tap;                // none: unmet, not known, or a programmed airflow without taps
    std::optional<LeadBasis> provisional;  // the tap is a speed lead that no airflow shows to be right
    bool met = false;
    std::optional<UnmetReason> unmet_reason;  // of a call that is not met
    std::vector<std::string> lacking;         // job keys that the window needs
    /// The window holds over the whole uncertainty, not only at the estimate, and over all of it neither the motor nor
    /// the equipment comes near a limit.
    bool assured = false;
    std::optional<TapAir> programmed;   // constant-airflow modules: the operating point at this call (tap 0)
    std::vector<CallCaution> cautions;  // of a call that is met
    std::optional<HeatRate> heat;       // the most that a heating call puts into the air
    std::vector<CallHeat>
        heats;  // each output that is possible, the greatest first; the window holds for all
    Estimate<TemperatureRise> expected_rise;  // of `heat` at the chosen airflow: read it at start-up
    std::optional<TemperatureRise> rise_low, rise_high;  // the plate's, of this stage
    std::optional<Airflow> plate_least;                  // the plate's least air, at this density
    std::optional<double> cfm_per_ton;                   // of standard air, at the chosen airflow
    std::optional<Pressure> zone_static;  // with the least open zone alone, were the airflow held
    std::vector<TapTrade> trades;         // the taps next to the chosen one
};

/// What the old motor did on this duct: the point that every prediction starts from.
struct DuctPoint {
    Estimate<Airflow> airflow;
    Estimate<Pressure> static_total;
    Estimate<Speed> speed;
    Estimate<Torque> torque;  // at the shaft
    std::optional<AirflowSource> airflow_from;
    std::optional<TorqueSource> torque_from;  // the best that was read
    std::optional<TorqueSource> torque_with;  // a second that agrees, taken into the mean
};

struct AirPlan {
    /// True: the part's taps (or its programmed calls) have an airflow on this duct.
    bool computed = false;
    /// Job keys or part columns; may be non-empty when computed (a window, a static, one tap).
    std::vector<std::string> lacking;
    std::optional<AirMethod> method;   // of every plan that plan_air made
    std::vector<TapAir> taps;          // ascending tap; empty unless computed
    std::vector<CallAir> calls;        // in the order of Call
    std::vector<std::string> assumed;  // job keys, catalog columns and words of Assumption
    bool duct_first = false;           // static above the repair-first limit
    /// Job keys whose readings cannot all be true, joined by " and ": the plan uses none of them.
    std::vector<std::string> contradictions;
    DuctPoint point;
    double density_ratio = 1;                    // at the blower's inlet, over standard air
    double motor_share = 1;                      // what thin air leaves of the motor's rating
    std::optional<StaticOverPlate> static_over;  // the worst
    std::optional<double>
        small_load;  // of the served call that takes most, where it is below limit load.small
    std::optional<FanEnergy> fan_energy;
    std::optional<TableRefusal> table_refused;  // why the job's blower table was not used
};

/// Calls come from the job's controls and equipment; windows from capacity, rise or elements. Windows are
/// given even where nothing was measured. Never throws for missing facts; nothing is guessed without a name
/// in `assumed`.
AirPlan plan_air(const FailedUnit& job, const Facts& facts, const Part& part, const Limits& limits);

/// The operating point that serves a call (its tap, or its programmed airflow); null when the call is unmet.
const TapAir* air_of(const AirPlan& plan, Call call);
/// Null when the job has no such call.
const CallAir* find_call(const AirPlan& plan, Call call);

}  // namespace endbell::inline airflow
