// Numbers of engine/airflow and engine/units for the scripts beside this folder.
//   probe_air units              a line a factor: NAME VALUE
//   probe_air density            reads lines "FEET FAHRENHEIT", writes lb/ft3 a line
#include <cstdio>
#include <iostream>
#include <string_view>

#include "engine/airflow/air.hpp"

namespace {

using namespace endbell;

void factor(const char* name, double value) {
    std::printf("%s %.12g\n", name, value);
}

void unit_factors() {
    factor("air_power_W", air_power(cfm(1000), inch_water(1)).in(watt));
    factor("shaft_hp", shaft_power(pound_foot(1), rpm(1000)).in(horsepower));
    factor("kW_in_btu_per_hour", kilowatt_heat(1).in(btu_per_hour));
    factor("ton_in_W", ton_cooling(1).in(kilowatt_heat)*1000);
    factor("inch_water_in_Pa", inch_water(1).in(pascal));
    factor("cfm_in_litre_per_second", cfm(1).in(litre_per_second));
    factor("horsepower_in_W", horsepower(1).in(watt));
    factor("pound_foot_in_newton_metre", pound_foot(1).in(newton_metre));
    factor("ounce_foot_in_newton_metre", ounce_foot(1).in(newton_metre));
    factor("inch_in_mm", inch(1).in(millimetre));
    factor("foot_in_mm", foot(1).in(millimetre));
    factor("celsius_degree_in_fahrenheit", celsius_degree(1).in(fahrenheit_degree));
    factor("celsius_40_in_fahrenheit", Temperature::celsius(40).in_fahrenheit());
}

void density() {
    double feet = 0, fahrenheit = 0;
    while (std::cin >> feet >> fahrenheit) {
        std::printf("%.10g\n",
                    air_density(foot(feet), Temperature::fahrenheit(fahrenheit)).in(pound_per_cubic_foot));
    }
}

}  // namespace

int main(int argc, char** argv) {
    const std::string_view what = argc > 1 ? argv[1] : "";
    if (what == "units") {
        unit_factors();
    } else if (what == "density") {
        density();
    } else {
        return 64;
    }
}
