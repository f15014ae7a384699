#!/usr/bin/env python3
"""The same questions for other systems: one flat table of the generated parts, and each job's rules as SQL.

usage: questions.py FOLDER        reads FOLDER/tables and FOLDER/jobs.csv (of bench_generate), writes FOLDER/flat.csv
                                  and FOLDER/questions.json
Written from the pages of docs/rules, for the parts and jobs that bench_generate makes and no others: equal answers
are a check of the rules as well. A condition is true of the parts that fail the rule; unknown never fails.
"""
import csv
import json
import sys
from fractions import Fraction

SIZES = ["1/15", "1/12", "1/10", "1/8", "1/6", "1/5", "1/4", "1/3", "1/2", "3/4", "1"]  # a standard size each
POLES = {"1075": 6, "1140": 6, "825": 8, "1625": 4}  # 120 f / P at 60 Hz, less the slip of fan motors
BAND, SPEED, LOW, CLEARANCE, BODY = 0.10, 0.05, 0.98, 0.002, 1 / 16
COLUMNS = ["id", "price", "module", "family", "load", "retrofit", "phase", "poles", "rotation", "double_shaft", "diameter", "body", "mount",
           "enclosed", "any_position", "up", "down", "horizontal", "ambient", "size", "low", "high", "low2", "high2", "rpm", "torque"]


def rows(folder, table):
    with open(f"{folder}/tables/{table}.csv", encoding="utf-8", newline="") as f:
        yield from csv.DictReader(f)


def number(text):
    return float(Fraction(text)) if text else None


def turning(rotation, viewed_from):
    if not rotation or rotation == "reversible":
        return rotation
    if viewed_from == "shaft end":
        return rotation
    return "CCW" if rotation == "CW" else "CW"  # seen from the other end


def span(volts):
    ends = [float(v) for v in volts.split("-")] if volts else [None]
    return ends[0], ends[-1]


def flat(folder):
    prices = {}
    for r in rows(folder, "offers"):
        cents = round(float(r["price"]) * 100)
        prices[r["part_id"]] = min(cents, prices.get(r["part_id"], cents))
    ratings, torques = {}, {}
    for r in rows(folder, "motor_ratings"):
        ratings.setdefault(r["part_id"], []).append(r)
    for r in rows(folder, "taps"):
        torques[r["part_id"]] = max(float(r["torque_ozft"]), torques.get(r["part_id"], 0))
    with open(f"{folder}/flat.csv", "w", encoding="utf-8", newline="") as f:
        out = csv.writer(f, lineterminator="\n")
        out.writerow(COLUMNS)
        for m in rows(folder, "motors"):
            part = m["part_id"]
            mine = ratings[part]
            low, high = span(mine[0]["volts"])
            low2, high2 = span(mine[1]["volts"]) if len(mine) > 1 else (None, None)
            positions = m["positions"].split(";") if m["positions"] else None
            stands = [None] * 4 if positions is None else [int(p in positions) for p in ("all", "up", "down", "horizontal")]
            enclosed = None if not m["enclosure"] else int(m["enclosure"] in ("TEAO", "TENV", "TEFC"))
            induction = m["family"] in ("capacitor run", "shaded pole", "three phase")
            poles = (m["poles"] or POLES[mine[0]["speed_rpm"]]) if induction else None
            out.writerow([part, prices.get(part), 0, m["family"], m["loads"], int(m["retrofit_for"] == "capacitor run"), m["phase"], poles,
                          turning(m["rotation"], m["rotation_viewed_from"]), m["double_shaft"], number(m["shaft_diameter_in"]),
                          m["body_diameter_in"], m["mount"], enclosed, *stands, m["ambient_c"], SIZES.index(mine[0]["power_hp"]), low, high,
                          low2, high2, mine[0]["speed_rpm"], torques.get(part)])
        for m in rows(folder, "modules"):
            low, high = span(m["volts"])
            out.writerow([m["part_id"], prices.get(m["part_id"]), 1, "module", *[None] * 15, SIZES.index(m["power_hp"]), low, high, *[None] * 4])


def fails(job):
    """Rule -> SQL that is true of the parts that fail it, for one job of bench_generate: always a capacitor-run motor."""
    volts = float(job["equipment.supply"])
    speed = float(job["plate.speed"])
    inside = " OR ".join(f"({low} * {1 - BAND} - 1e-9 <= {volts} AND {high} * {1 + BAND} + 1e-9 >= {volts})" for low, high in (("low", "high"), ("low2", "high2")))
    out = {
        "wanted-part": "module = 1",
        "load": f"load <> '{job['unit.load']}'",
        "family": "(module = 1 OR family IN ('shaded pole', 'three phase', 'constant airflow') OR (family = 'constant torque' AND retrofit = 0))",
        "supply-voltage": f"coalesce({inside}, FALSE) = FALSE",
        "phase": "phase <> 1",
        "poles": f"poles <> {POLES[job['plate.speed']]}",
        "speed": f"(poles IS NOT NULL AND abs(rpm - {speed}) > {SPEED} * {speed} + 1e-6)",
        "signal-class": "module = 1",
    }
    if job["plate.power"]:
        size = SIZES.index(job["plate.power"])
        duty = 16 * 5252.113 * float(Fraction(job["plate.power"])) / speed  # oz-ft
        out["power"] = (f"(size < {size} OR (family = 'constant torque' AND torque < {duty * LOW}) OR (module = 1 AND size > {size}) "
                        f"OR (module = 0 AND family <> 'constant torque' AND size > {size + 1}))")
    if job["plate.rotation"]:
        turns = turning(job["plate.rotation"].split()[0], "lead end" if job["plate.rotation"].endswith("LE") else "shaft end")
        out["rotation"] = f"rotation = '{'CCW' if turns == 'CW' else 'CW'}'"
    if job["plate.double_shaft"] == "yes":
        out["double-shaft"] = "double_shaft = 'no'"
    if job["plate.shaft_diameter"]:
        out["shaft-diameter"] = f"diameter > {number(job['plate.shaft_diameter']) + CLEARANCE + 1e-9}"
    if job["plate.body_diameter"] and job["plate.mount"] in ("", "band", "ring"):
        out["body-diameter"] = f"body > {number(job['plate.body_diameter']) + BODY + 1e-9}"
    if job["plate.mount"] == "band":
        out["mount"] = "mount = 'lugs'"
    if job["unit.outdoors"] == "yes":
        out["enclosure"] = "enclosed = 0"
    if job["unit.shaft_points"]:
        out["position"] = f"(any_position = 0 AND {job['unit.shaft_points']} = 0)"
    if job["plate.ambient"]:
        out["ambient"] = f"ambient < {float(job['plate.ambient'].split()[0]) - AMBIENT_SHORT - 1e-9}"
    return out


AMBIENT_SHORT = 0.0


def main(folder):
    flat(folder)
    with open(f"{folder}/jobs.csv", encoding="utf-8", newline="") as f:
        questions = [fails(job) for job in csv.DictReader(f)]
    with open(f"{folder}/questions.json", "w", encoding="utf-8") as f:
        json.dump({"columns": COLUMNS, "questions": questions}, f)


if __name__ == "__main__":
    main(sys.argv[1])
