#!/usr/bin/env python3
"""Air density over altitude and temperature against psychrolib (npm), an independent psychrometric library.

usage: tests/outside/air_density.py BUILD_DIR      last line: "N passed, N failed"

The trade's standard air, 0.075 lb/ft3, is 0.15 % heavier than dry air at 70 F: so each density may be 0.2 % off, and
each density over the one at sea level and 70 F, where that cancels, 0.05 %.
"""
import os
import subprocess
import sys

BUILD = os.path.abspath(sys.argv[1])
PROBE = os.path.join(BUILD, "tests", "probe_air")
TOOLS = os.path.join(BUILD, "npm-psychrolib")

OTHER = """
const p = require('psychrolib');
p.SetUnitSystem(p.IP);
for (const line of require('fs').readFileSync(0, 'utf8').trim().split('\\n')) {
  const [feet, fahrenheit] = line.split(' ').map(Number);
  console.log(p.GetDryAirDensity(fahrenheit, p.GetStandardAtmPressure(feet)));
}
"""


def numbers(command, text):
    out = subprocess.run(command, input=text, capture_output=True, text=True, check=True, cwd=TOOLS).stdout
    return [float(line) for line in out.splitlines()]


def main():
    os.makedirs(TOOLS, exist_ok=True)
    if not os.path.isdir(os.path.join(TOOLS, "node_modules", "psychrolib")):
        subprocess.run(["npm", "install", "--silent", "--no-audit", "--no-fund", "--prefix", TOOLS, "psychrolib@1.1.1"],
                       check=True)
    places = [(0, 70)] + [(z, t) for z in range(0, 12001, 500) for t in range(-20, 141, 10)]
    text = "".join(f"{z} {t}\n" for z, t in places)
    ours = numbers([PROBE, "density"], text)
    theirs = numbers(["node", "-e", OTHER], text)
    passed = failed = 0
    if not len(ours) == len(theirs) == len(places):
        print("FAIL", len(places), "places,", len(ours), "and", len(theirs), "answers")
        failed += 1
    for place, a, b in zip(places, ours, theirs):
        absolute, relative = a / b - 1, (a / ours[0]) / (b / theirs[0]) - 1
        if abs(absolute) <= 2e-3 and abs(relative) <= 5e-4:
            passed += 1
        else:
            failed += 1
            print(f"FAIL {place[0]} ft {place[1]} F: ours {a}, psychrolib {b}")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


sys.exit(main())
