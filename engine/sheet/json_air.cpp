#include "engine/sheet/json_air.hpp"

#include "engine/explain/air_words.hpp"

namespace endbell::inline sheet::json {

namespace {

template <class Dimension>
Json in_unit(const std::optional<Quantity<Dimension>>& quantity, Unit<Dimension> unit) {
    return quantity ? number(quantity->in(unit)) : Json(nullptr);
}

/// Null where nothing can be said.
Json estimate(const EstimatedNumber& e) {
    if (!e.known) return nullptr;
    return {{"value", number(e.value)}, {"plus_minus", number(e.plus_minus)}, {"assumed", e.assumed}};
}

/// The old motor's point, and by what it was found.
Json duct_point(const DuctPoint& point) {
    return {{"cfm", estimate(point.airflow.in(cfm))},
            {"static_inwc", estimate(point.static_total.in(inch_water))},
            {"rpm", estimate(point.speed.in(rpm))},
            {"torque_oz_ft", estimate(point.torque.in(ounce_foot))},
            {"airflow_from", word(point.airflow_from)},
            {"torque_from", word(point.torque_from)},
            {"torque_with", word(point.torque_with)}};
}

/// Each output of heat that is possible, with its window and its rise.
Json heats(const CallAir& call) {
    return list(call.heats, [](const CallHeat& heat) {
        return Json{{"case", word(heat.output.when)},
                    {"btu_per_hour", number(heat.output.heat.in(btu_per_hour))},
                    {"rated_v", in_unit(heat.output.rated, volt)},
                    {"at_v", in_unit(heat.output.at, volt)},
                    {"low_cfm", number(heat.low.in(cfm))},
                    {"target_cfm", number(heat.target.in(cfm))},
                    {"high_cfm", number(heat.high.in(cfm))},
                    {"expected_rise_f", estimate(heat.expected_rise.in(fahrenheit_degree))}};
    });
}

Json trades(const CallAir& call) {
    return list(call.trades, [](const TapTrade& t) {
        return Json{{"tap", t.tap},
                    {"in_window", t.in_window},
                    {"overloads", t.overloads},
                    {"cfm", number(t.airflow.in(cfm))},
                    {"static_inwc", in_unit(t.static_total, inch_water)},
                    {"watts", in_unit(t.input_power, watt)},
                    {"decibels", number(t.decibels)}};
    });
}

Json static_over(const std::optional<StaticOverPlate>& over) {
    if (!over) return nullptr;
    return {{"static_inwc", number(over->found.in(inch_water))},
            {"limit_inwc", number(over->most.in(inch_water))},
            {"plate_says", over->plate_says},
            {"call", word(over->call)},
            {"cures", list(over->cures, [](StaticCure cure) { return Json(word(cure)); })}};
}

Json fan_energy(const std::optional<FanEnergy>& energy) {
    if (!energy) return nullptr;
    return {{"watts_per_1000_cfm", number(energy->rating)},
            {"class", word(energy->furnace)},
            {"class_limit", energy->most ? number(*energy->most) : Json(nullptr)},
            {"kwh_per_year", number(energy->a_year.in(kilowatt_hour))}};
}

/// Each assumption with what it would change.
Json assumptions(const std::vector<std::string>& assumed) {
    return list(assumed, [](const std::string& name) {
        return Json{{"assumed", name}, {"changes", what_it_changes(name)}};
    });
}

Json watts_per_cfm(const TapAir& t) {
    if (!t.input_power.known() || !t.airflow.known() || t.airflow.value() <= Airflow()) return nullptr;
    return number(t.input_power.value().in(watt) / t.airflow.value().in(cfm));
}

Json tap(const TapAir& t) {
    return {{"tap", t.tap},
            {"cfm", estimate(t.airflow.in(cfm))},
            {"static_inwc", estimate(t.static_total.in(inch_water))},
            {"rpm", estimate(t.speed.in(rpm))},
            {"shaft_hp", estimate(t.shaft_power.in(horsepower))},
            {"watts", estimate(t.input_power.in(watt))},
            {"amps", estimate(t.line_current.in(ampere))},
            {"watts_per_cfm", watts_per_cfm(t)},
            {"torque_oz_ft", estimate(t.torque.in(ounce_foot))},
            {"load", estimate(t.load)},
            {"efficiency", estimate(t.efficiency)},
            {"efficiency_from", word(t.efficiency_from)},
            {"caution", word(t.caution)},
            {"bound", word(t.bound)}};
}

Json call(const CallAir& c) {
    return {{"call", word(c.call)},
            {"low_cfm", number(c.low.in(cfm))},
            {"target_cfm", number(c.target.in(cfm))},
            {"high_cfm", number(c.high.in(cfm))},
            {"basis", word(c.basis)},
            {"hard", c.hard},
            {"tap", c.tap ? Json(*c.tap) : Json(nullptr)},
            {"provisional", word(c.provisional)},
            {"met", c.met},
            {"assured", c.assured},
            {"cautions", list(c.cautions, [](CallCaution x) { return Json(word(x)); })},
            {"unmet_reason", word(c.unmet_reason)},
            {"lacking", c.lacking},
            {"programmed", c.programmed ? tap(*c.programmed) : Json(nullptr)},
            {"heats", heats(c)},
            {"expected_rise_f", estimate(c.expected_rise.in(fahrenheit_degree))},
            {"rise_low_f", in_unit(c.rise_low, fahrenheit_degree)},
            {"rise_high_f", in_unit(c.rise_high, fahrenheit_degree)},
            {"plate_least_cfm", in_unit(c.plate_least, cfm)},
            {"cfm_per_ton", c.cfm_per_ton ? number(*c.cfm_per_ton) : Json(nullptr)},
            {"zone_static_inwc", in_unit(c.zone_static, inch_water)},
            {"trades", trades(c)}};
}

}  // namespace

Json air(const AirPlan& a) {
    return {{"computed", a.computed},
            {"lacking", a.lacking},
            {"method", word(a.method)},
            {"duct_first", a.duct_first},
            {"assumed", a.assumed},
            {"assumptions", assumptions(a.assumed)},
            {"contradictions", a.contradictions},
            {"table_refused", word(a.table_refused)},
            {"density_ratio", number(a.density_ratio)},
            {"volume_ratio", number(1 / a.density_ratio)},
            {"motor_share", number(a.motor_share)},
            {"old_point", duct_point(a.point)},
            {"static_over", static_over(a.static_over)},
            {"small_load", a.small_load ? number(*a.small_load) : Json(nullptr)},
            {"fan_energy", fan_energy(a.fan_energy)},
            {"taps", list(a.taps, tap)},
            {"calls", list(a.calls, call)}};
}

}  // namespace endbell::inline sheet::json
