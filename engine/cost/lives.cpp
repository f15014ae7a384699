#include "engine/cost/lives.hpp"

#include <cmath>

namespace endbell {

namespace {

// Years, low and high. A single published figure has low == high.
constexpr Life condenser{"outdoor fan motor", 8, 15, "common-practice"};
constexpr Life inducer{"draft inducer", 8, 15, "common-practice"};
constexpr Life induction{"induction blower motor", 12, 18, "common-practice"};
constexpr Life three_phase{"electric motor", 18, 18, "life-table"};
constexpr Life electronic{"electronic blower motor", 12, 15, "common-practice"};
constexpr Life any_blower{"blower motor", 12, 18, "common-practice"};
constexpr Life control_module{"electronic module", 7, 12, "common-practice"};
constexpr Life run_capacitor{"run capacitor", 5, 10, "life-capacitor"};
constexpr Life furnace{"furnace", 18, 18, "life-table"};
constexpr Life split_system{"split system", 15, 15, "life-table"};

}  // namespace

const Life& motor_life(std::optional<Load> load, std::optional<Family> family) {
    if (load == Load::outdoor_fan) return condenser;
    if (load == Load::draft_inducer) return inducer;
    if (!family) return any_blower;
    if (is_electronic(*family)) return electronic;
    return *family == Family::three_phase ? three_phase : induction;
}

const Life& module_life() {
    return control_module;
}
const Life& capacitor_life() {
    return run_capacitor;
}

const Life& equipment_life(std::optional<HeatKind> heat) {
    return heat == HeatKind::gas || heat == HeatKind::oil ? furnace : split_system;
}

Weibull weibull_with_median(double median_years, double shape) {
    return {median_years / std::pow(std::log(2.0), 1.0 / shape), shape};
}

double survival(const Weibull& w, double years) {
    return std::exp(-std::pow(years / w.scale, w.shape));
}

double chance_of_failure(const Weibull& w, double age, double until) {
    return 1.0 - survival(w, until) / survival(w, age);
}

double mean_remaining(const Weibull& w, double age) {
    // The area under the survival curve beyond `age`, by the trapezoid rule, out to where nothing is left.
    constexpr double step = 0.01;
    const double end = age + 12.0 * w.scale;
    double area = 0;
    for (double t = age; t < end; t += step) area += step * (survival(w, t) + survival(w, t + step)) / 2;
    return area / survival(w, age);
}

}  // namespace endbell
