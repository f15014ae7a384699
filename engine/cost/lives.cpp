#include "engine/cost/lives.hpp"

#include <cmath>

namespace endbell::inline cost {

namespace {

constexpr Life in_years(std::string_view what, double low, double high, std::string_view source) {
    return {what, calendar_year(low), calendar_year(high), source};
}

// Years, low and high. A single published figure has low == high.
constexpr Life condenser = in_years("outdoor fan motor", 8, 15, "common-practice");
constexpr Life inducer = in_years("draft inducer", 8, 15, "common-practice");
constexpr Life induction = in_years("induction blower motor", 12, 18, "common-practice");
constexpr Life three_phase = in_years("electric motor", 18, 18, "life-table");
constexpr Life electronic = in_years("electronic blower motor", 12, 15, "common-practice");
constexpr Life any_blower = in_years("blower motor", 12, 18, "common-practice");
constexpr Life control_module = in_years("electronic module", 7, 12, "common-practice");
constexpr Life run_capacitor = in_years("run capacitor", 5, 10, "life-capacitor");
constexpr Life furnace = in_years("furnace", 18, 18, "life-table");
constexpr Life split_system = in_years("split system", 15, 15, "life-table");

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

Weibull weibull_with_median(Period median, double shape) {
    return {median / std::pow(std::log(2.0), 1.0 / shape), shape};
}

double survival(const Weibull& w, Period age) {
    return std::exp(-std::pow(age / w.scale, w.shape));
}

double chance_of_failure(const Weibull& w, Period age, Period until) {
    return 1.0 - survival(w, until) / survival(w, age);
}

Period mean_remaining(const Weibull& w, Period age) {
    // The area under the survival curve beyond `age`, by the trapezoid rule, out to where nothing is left.
    constexpr Period step = calendar_year(0.01);
    const Period end = age + 12.0 * w.scale;
    Period area;
    for (Period t = age; t < end; t = t + step)
        area = area + step * ((survival(w, t) + survival(w, t + step)) / 2);
    return area / survival(w, age);
}

}  // namespace endbell::inline cost
