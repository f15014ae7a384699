// The fan energy rating of a furnace as manufactured: 10 CFR 430 Subpart B Appendix AA. It binds the maker of
// the furnace, not a servicer's replacement motor; it tells how far a replacement departs from what was
// certified. Formula, hours and limits are from memory of the rule: check the rule in force before relying on
// them.
#pragma once
#include <optional>
#include <string_view>

#include "engine/model/word.hpp"
#include "engine/units/units.hpp"

namespace endbell::inline airflow {

/// The furnace classes of 10 CFR 430.32(y) that have a limit.
enum class FurnaceClass {
    gas_non_condensing,
    gas_condensing,
    gas_weatherized,
    oil,
    electric_or_modular,
    mobile_home_gas_non_condensing,
    mobile_home_gas_condensing,
    mobile_home_electric
};
constexpr auto words_of(FurnaceClass) {
    return std::array{
        Word<FurnaceClass>{FurnaceClass::gas_non_condensing, "gas non-condensing"},
        Word<FurnaceClass>{FurnaceClass::gas_condensing, "gas condensing"},
        Word<FurnaceClass>{FurnaceClass::gas_weatherized, "gas weatherized"},
        Word<FurnaceClass>{FurnaceClass::oil, "oil"},
        Word<FurnaceClass>{FurnaceClass::electric_or_modular, "electric or modular"},
        Word<FurnaceClass>{FurnaceClass::mobile_home_gas_non_condensing, "mobile home gas non-condensing"},
        Word<FurnaceClass>{FurnaceClass::mobile_home_gas_condensing, "mobile home gas condensing"},
        Word<FurnaceClass>{FurnaceClass::mobile_home_electric, "mobile home electric"}};
}

/// Electrical input in each mode at the reference static, and the greatest airflow there.
struct FanEnergyTest {
    Airflow greatest_airflow;
    Power cooling;  // at the greatest airflow
    Power heating;  // default heat setting; multi-stage: the reduced setting
    Power circulation;
    double reduced_heat_ratio = 1;  // reduced over maximum heat; 1 for single-stage
};

/// Of each mode in a year.
struct FanHours {
    Duration cooling = hour(640);
    Duration heating = hour(830);
    Duration circulation = hour(400);
};

/// W per 1,000 cfm: (640 Ec + (830 / ratio) Eh + 400 Ef) / ((640 + 830 + 400) Q) x 1000.
/// REQUIRES: airflow above 0, ratio above 0.
double fan_energy_rating(const FanEnergyTest& test);

/// As certified: the nearest whole number.
int certified_rating(const FanEnergyTest& test);

/// Of a year, in the test's own hours.
Energy fan_energy(const FanEnergyTest& test);

/// The most that the class may be certified at for its greatest airflow.
double greatest_rating(FurnaceClass furnace, Airflow greatest_airflow);

}  // namespace endbell::inline airflow
