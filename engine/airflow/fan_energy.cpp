#include "engine/airflow/fan_energy.hpp"

#include <cmath>

#include "engine/base/ensure.hpp"

namespace endbell::inline airflow {

namespace {

constexpr FanHours hours;

double watt_hours(const FanEnergyTest& test) {
    ensure(test.reduced_heat_ratio > 0, "a heating stage gives heat");
    return hours.cooling.in(hour)*test.cooling.in(watt) +
           hours.heating.in(hour) / test.reduced_heat_ratio * test.heating.in(watt) +
           hours.circulation.in(hour)*test.circulation.in(watt);
}

}  // namespace

double fan_energy_rating(const FanEnergyTest& test) {
    ensure(test.greatest_airflow > cfm(0), "a rated fan moves air");
    const Duration all = hours.cooling + hours.heating + hours.circulation;
    return watt_hours(test) / (all.in(hour)*test.greatest_airflow.in(cfm)) * 1000;
}

int certified_rating(const FanEnergyTest& test) {
    return static_cast<int>(std::lround(fan_energy_rating(test)));
}

Energy fan_energy(const FanEnergyTest& test) {
    return kilowatt_hour(watt_hours(test) / 1000);
}

double greatest_rating(FurnaceClass furnace, Airflow greatest_airflow) {
    const double q = greatest_airflow.in(cfm);
    switch (furnace) {
        case FurnaceClass::gas_non_condensing:
            return 0.044 * q + 182;
        case FurnaceClass::gas_condensing:
            return 0.044 * q + 195;
        case FurnaceClass::gas_weatherized:
            return 0.044 * q + 199;
        case FurnaceClass::oil:
            return 0.071 * q + 382;
        case FurnaceClass::electric_or_modular:
            return 0.044 * q + 165;
        case FurnaceClass::mobile_home_gas_non_condensing:
            return 0.071 * q + 222;
        case FurnaceClass::mobile_home_gas_condensing:
            return 0.071 * q + 240;
        case FurnaceClass::mobile_home_electric:
            return 0.044 * q + 101;
    }
    throw OurBug("every class has a limit");
}

}  // namespace endbell::inline airflow
