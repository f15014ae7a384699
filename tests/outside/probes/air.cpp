// Numbers of engine/airflow and engine/units for the scripts beside this folder.
//   probe_air units              a line a factor: NAME VALUE
//   probe_air density            reads lines "FEET FAHRENHEIT", writes lb/ft3 a line
//   probe_air run                reads lines "KIND A B C c a b k p0 s W X Y Z", writes "cfm static rpm torque" or "none" a line:
//                                torque TAP RPM HP 0, airflow CFM RPM HP 0 (limits; 0 none), slip NS NR TR STRENGTH,
//                                breakdown NS TB SB VOLTS
//   probe_air needs              reads jobs of lines "KEY=VALUE", each ended by an empty line; writes "CALL low target high" and,
//                                of each output of heat, "output BTU low target high", then an empty line
#include <cstdio>
#include <iostream>
#include <string>
#include <string_view>

#include "engine/airflow/air.hpp"
#include "engine/airflow/air_needs.hpp"
#include "engine/airflow/blower.hpp"
#include "engine/airflow/induction.hpp"
#include "engine/job/job.hpp"

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

std::optional<OperatingPoint> run_one(std::istream& in, const std::string& kind) {
    BlowerCurve blower;
    double k = 0, fixed = 0, ratio = 1, w = 0, x = 0, y = 0, z = 0;
    in >> blower.static_nn >> blower.static_nq >> blower.static_qq >> blower.torque_nn >> blower.torque_nq >>
        blower.torque_qq >> k >> fixed >> ratio >> w >> x >> y >> z;
    const Duct duct{inch_water(fixed), k};
    MotorLimits limits;
    if (x > 0) limits.speed = rpm(x);
    if (y > 0) limits.shaft = horsepower(y);
    if (kind == "torque") return run_constant_torque(blower, duct, pound_foot(w), limits, ratio);
    if (kind == "airflow") return run_constant_airflow(blower, duct, cfm(w), limits, ratio);
    if (kind == "slip")
        return run_induction(blower, duct, motor_of(SlipLine{rpm(w), rpm(x), pound_foot(y), z}), ratio);
    return run_induction(blower, duct, motor_of(BreakdownCurve{rpm(w), pound_foot(x), y, z}), ratio);
}

void run() {
    std::string kind;
    while (std::cin >> kind) {
        const std::optional<OperatingPoint> point = run_one(std::cin, kind);
        if (!point) {
            std::puts("none");
            continue;
        }
        std::printf("%.10g %.10g %.10g %.10g\n", point->airflow.in(cfm), point->pressure.in(inch_water),
                    point->speed.in(rpm), point->torque.in(pound_foot));
    }
}

void write_needs(const FailedUnit& job) {
    const Limits limits;
    for (const CallAir& call : air_needs(job, facts_of(job, limits), limits).calls) {
        std::printf("%s\t%.10g\t%.10g\t%.10g\n", std::string(word(call.call)).c_str(), call.low.in(cfm),
                    call.target.in(cfm), call.high.in(cfm));
        for (const CallHeat& heat : call.heats) {
            std::printf("output\t%.10g\t%.10g\t%.10g\t%.10g\n", heat.output.heat.in(btu_per_hour),
                        heat.low.in(cfm), heat.target.in(cfm), heat.high.in(cfm));
        }
    }
    std::puts("");
}

void needs() {
    FailedUnit job;
    std::string line;
    while (std::getline(std::cin, line)) {
        if (!line.empty()) {
            set_field(job, line);
            continue;
        }
        write_needs(job);
        job = {};
    }
}

}  // namespace

int main(int argc, char** argv) {
    const std::string_view what = argc > 1 ? argv[1] : "";
    if (what == "units") {
        unit_factors();
    } else if (what == "density") {
        density();
    } else if (what == "run") {
        run();
    } else if (what == "needs") {
        needs();
    } else {
        return 64;
    }
}
