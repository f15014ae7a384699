#!/usr/bin/env python3
"""A swap of a blower for one of its kind never stops to fit because of the air that was read.

usage: tests/scenarios/air_sweep.py PROGRAM_OR_BUILD_FOLDER      last line: "N passed, N failed"

Twenty furnaces, each without an airflow and with 600 to 1,600 cfm by 20: what fits without a reading fits with each. Two calls
never come on one lead, which would ask for a relay that no catalog need have.
"""
import csv
import os
import subprocess
import sys
import tempfile
import tomllib

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
AIR = [""] + [str(cfm) for cfm in range(600, 1601, 20)]
SIZES = ((2, 60000), (2.5, 60000), (3, 80000), (3.5, 80000), (4, 100000))  # tons, Btu/h of input
CONTROLS = ({}, {"controls.terminals": "COOL = cool; HEAT = heat"},
            {"controls.terminals": "COOL = cool; HEAT = heat; FAN = circulate", "controls.leads": "cool = high; heat = low"},
            {"controls.terminals": "COOL = cool; HEAT = heat", "measured.rise": "55"})


def flat(job):
    row = {}
    for group, fields in job.items():
        for key, value in fields.items():
            row[f"{group}.{key}"] = "; ".join(value) if isinstance(value, list) else str(value)
    return row


def furnaces():
    with open(os.path.join(ROOT, "demo-catalog", "jobs", "02-furnace-blower.toml"), "rb") as file:
        base = flat(tomllib.load(file))
    for tons, heat in SIZES:
        for controls in CONTROLS:
            yield {**base, **controls, "equipment.cooling": f"{tons} ton", "equipment.heat_input": str(heat),
                   "equipment.heat_output": str(heat * 8 // 10)}


def main():
    program = sys.argv[1]
    if os.path.isdir(program):
        program = os.path.join(program, "cli", "endbell")
    jobs = list(furnaces())
    with tempfile.TemporaryDirectory() as folder:
        catalog, asked, answers = (os.path.join(folder, name) for name in ("c.db", "jobs.csv", "answers.csv"))
        subprocess.run([program, "catalog", "import", os.path.join(ROOT, "demo-catalog", "tables"), "--into", catalog],
                       check=True, capture_output=True)
        columns = sorted({column for job in jobs for column in job} | {"measured.airflow"})
        with open(asked, "w", newline="") as file:
            writer = csv.DictWriter(file, columns)
            writer.writeheader()
            writer.writerows({**job, "measured.airflow": air} for job in jobs for air in AIR)
        subprocess.run([program, "--catalog", catalog, "batch", asked, "--out", answers], capture_output=True)
        with open(answers, newline="") as file:
            rows = list(csv.DictReader(file))
    passed = failed = 0
    for number in range(len(jobs)):
        mine = rows[number * len(AIR):(number + 1) * len(AIR)]
        lost = [air for air, row in zip(AIR, mine) if row["outcome"] != "something fits"]
        passed += not lost
        failed += bool(lost)
        if lost:
            print("FAIL furnace", number, "does not fit with", ", ".join(air or "no reading" for air in lost))
    failed += len(rows) != len(jobs) * len(AIR)
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
