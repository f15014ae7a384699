#include "engine/airflow/electric.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace endbell::inline airflow {

namespace {

struct CurvePoint {
    double load;
    double efficiency;
};

// Load fraction and efficiency of an electronic blower motor. Common practice: between a consumer page's
// 65-75 % and the trade press's 82 % peak; no published curve.
constexpr std::array electronic_curve{CurvePoint{0.05, 0.55}, CurvePoint{0.10, 0.62}, CurvePoint{0.25, 0.72},
                                      CurvePoint{0.50, 0.78}, CurvePoint{0.75, 0.80}, CurvePoint{1.00, 0.80}};

double on_curve(double load) {
    load = std::clamp(load, electronic_curve.front().load, electronic_curve.back().load);
    for (std::size_t i = 1; i < electronic_curve.size(); ++i) {
        const CurvePoint &a = electronic_curve[i - 1], &b = electronic_curve[i];
        if (load <= b.load)
            return a.efficiency + (b.efficiency - a.efficiency) * (load - a.load) / (b.load - a.load);
    }
    return electronic_curve.back().efficiency;
}

// Share of the input that reaches the rotor as torque at synchronous speed. 0.70 puts a 1,075 rpm
// capacitor-run motor at 62.7 %, inside the 60-65 % the trade press gives; shaded pole from its usual 20 % at
// 1,050 of 1,200 rpm; three phase common practice.
double stator_share(Family family) {
    switch (family) {
        case Family::shaded_pole:
            return 0.23;
        case Family::three_phase:
            return 0.85;
        default:
            return 0.70;
    }
}

}  // namespace

double electronic_efficiency(double load, std::optional<double> at_rated_load) {
    const double scale = at_rated_load ? *at_rated_load / electronic_curve.back().efficiency : 1.0;
    return on_curve(load) * scale;
}

double induction_efficiency(Family family, Speed speed, Speed synchronous,
                            std::optional<double> at_rated_load, std::optional<Speed> rated) {
    const double share =
        at_rated_load && rated ? *at_rated_load * (synchronous / *rated) : stator_share(family);
    return share * (speed / synchronous);
}

double power_factor(Family family) {
    switch (family) {
        case Family::capacitor_run:
            return 0.90;  // 0.65 to 0.98 seen on plates
        case Family::three_phase:
            return 0.75;           // common practice, small motors
        case Family::shaded_pole:  // common practice
        default:
            return 0.60;  // electronic: 0.53 to 0.65; 9.6 A at 115 V for 3/4 hp at 80 % gives 0.633
    }
}

Current line_current(Power input, Voltage volts, double factor, int phases) {
    const double root = phases == 3 ? std::sqrt(3.0) : 1.0;
    return ampere(input.in(watt) / (volts.in(volt)*factor * root));
}

}  // namespace endbell::inline airflow
