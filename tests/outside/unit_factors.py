#!/usr/bin/env python3
"""The conversion factors of engine/units against GNU units.

usage: tests/outside/unit_factors.py BUILD_DIR      last line: "N passed, N failed"
"""
import os
import subprocess
import sys

PROBE = os.path.join(sys.argv[1], "tests", "probe_air")

# Name of the probe's factor -> what GNU units is asked (from, to).
ASKED = {
    "air_power_W": ("1000 ft^3/min * 1 inH2O", "W"),
    "shaft_hp": ("1 lbf ft * 1000 rpm", "hp"),
    "kW_in_btu_per_hour": ("1 kW", "btu/hour"),
    "ton_in_W": ("12000 btu/hour", "W"),
    "inch_water_in_Pa": ("1 inH2O", "Pa"),
    "cfm_in_litre_per_second": ("1 ft^3/min", "litre/s"),
    "horsepower_in_W": ("1 hp", "W"),
    "pound_foot_in_newton_metre": ("1 lbf ft", "N m"),
    "ounce_foot_in_newton_metre": ("1|16 lbf ft", "N m"),
    "inch_in_mm": ("1 inch", "mm"),
    "foot_in_mm": ("1 ft", "mm"),
    "celsius_degree_in_fahrenheit": ("1 degC", "degF"),
    "celsius_40_in_fahrenheit": ("tempC(40)", "tempF"),
}
TOLERANCE = 2e-6  # factors are written with at least six digits


def main():
    ours = dict(line.split() for line in subprocess.run([PROBE, "units"], capture_output=True, text=True,
                                                        check=True).stdout.splitlines())
    passed = failed = 0
    for name, (source, target) in ASKED.items():
        theirs = float(subprocess.run(["units", "-t", "-d", "12", source, target], capture_output=True, text=True,
                                      check=True).stdout)
        got = float(ours.pop(name, "nan"))
        if abs(got - theirs) <= TOLERANCE * abs(theirs):
            passed += 1
        else:
            failed += 1
            print(f"FAIL {name}: ours {got}, GNU units {theirs}")
    for name in ours:
        failed += 1
        print(f"FAIL {name}: nothing to compare it with")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


sys.exit(main())
