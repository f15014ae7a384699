#!/usr/bin/env python3
"""The same questions for other systems: one flat table of the generated parts, and each job's rules as SQL.

usage: questions.py FOLDER        reads FOLDER/tables and FOLDER/jobs.csv (of bench_generate), writes FOLDER/flat.csv
                                  and FOLDER/questions.json: each job's "questions" as SQL and "parameters" as numbers
Written from the pages of docs/rules, for the parts and jobs that bench_generate makes and no others: equal answers
are a check of the rules as well. A condition is true of the parts that fail the rule; unknown never fails.
"""
import csv
import itertools
import json
import sys
from fractions import Fraction

SIZES = ["1/15", "1/12", "1/10", "1/8", "1/6", "1/5", "1/4", "1/3", "1/2", "3/4", "1"]  # a standard size each
POLES = {"1075": 6, "1140": 6, "825": 8, "1625": 4}  # 120 f / P at 60 Hz, less the slip of fan motors
BAND, SPEED, LOW, BODY = 0.10, 0.05, 0.98, 1 / 16
COLUMNS = ["id", "price", "module", "family", "load", "retrofit", "phase", "poles", "rotation", "double_shaft", "diameter", "body", "mount",
           "enclosed", "any_position", "up", "down", "horizontal", "ambient", "size", "low", "high", "low2", "high2", "rpm", "torque"]


def rows(folder, table):
    with open(f"{folder}/tables/{table}.csv", encoding="utf-8", newline="") as f:
        yield from csv.DictReader(f)


def of_part(table):
    """The rows of one part after the other: asked in the order of the tables, which bench_generate writes by id."""
    groups = itertools.groupby(table, key=lambda r: r["part_id"])
    at = next(groups, None)

    def rows_of(part):
        nonlocal at
        if at is None or at[0] != part:
            return []
        mine = list(at[1])
        at = next(groups, None)
        return mine

    return rows_of


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
    ratings, taps = of_part(rows(folder, "motor_ratings")), of_part(rows(folder, "taps"))
    with open(f"{folder}/flat.csv", "w", encoding="utf-8", newline="") as f:
        out = csv.writer(f, lineterminator="\n")
        out.writerow(COLUMNS)
        for m in rows(folder, "motors"):
            part = m["part_id"]
            mine = ratings(part)
            torques = [float(tap["torque_ozft"]) for tap in taps(part) if tap["torque_ozft"]]  # leads of a capacitor-run motor state none
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
                          low2, high2, mine[0]["speed_rpm"], max(torques, default=None)])
        for m in rows(folder, "modules"):
            low, high = span(m["volts"])
            out.writerow([m["part_id"], prices.get(m["part_id"]), 1, "module", *[None] * 15, SIZES.index(m["power_hp"]), low, high, *[None] * 4])


def parameters(job):
    """What one job of bench_generate (always a capacitor-run motor) asks of a part, as words and numbers; None: nothing."""
    speed = float(job["plate.speed"])
    p = dict.fromkeys(["size", "least_torque", "wrong_rotation", "most_diameter", "most_body", "point", "least_ambient"])
    p.update(load=job["unit.load"], volts=float(job["equipment.supply"]), band=BAND, poles=POLES[job["plate.speed"]], speed=speed,
             off_speed=SPEED * speed + 1e-6, two_ends=job["plate.double_shaft"] == "yes", no_lugs=job["plate.mount"] == "band",
             outdoors=job["unit.outdoors"] == "yes")
    if job["plate.power"]:
        p["size"] = SIZES.index(job["plate.power"])
        p["least_torque"] = 16 * 5252.113 * float(Fraction(job["plate.power"])) / speed * LOW  # oz-ft
    if job["plate.rotation"]:
        turns = turning(job["plate.rotation"].split()[0], "lead end" if job["plate.rotation"].endswith("LE") else "shaft end")
        p["wrong_rotation"] = "CCW" if turns == "CW" else "CW"
    if job["plate.shaft_diameter"]:
        p["most_diameter"] = number(job["plate.shaft_diameter"]) + 1e-9
    if job["plate.body_diameter"] and job["plate.mount"] in ("", "band", "ring"):
        p["most_body"] = number(job["plate.body_diameter"]) + BODY + 1e-9
    if job["unit.shaft_points"]:
        p["point"] = job["unit.shaft_points"]
    if job["plate.ambient"]:
        p["least_ambient"] = float(job["plate.ambient"].split()[0]) - 1e-9
    return p


def fails(p):
    """Rule -> SQL that is true of the parts that fail it, for the parameters of one job."""
    volts = p["volts"]
    inside = " OR ".join(f"({low} * {1 - BAND} - 1e-9 <= {volts} AND {high} * {1 + BAND} + 1e-9 >= {volts})" for low, high in (("low", "high"), ("low2", "high2")))
    out = {
        "wanted-part": "module = 1",
        "load": f"load <> '{p['load']}'",
        "family": "(module = 1 OR family IN ('shaded pole', 'three phase', 'constant airflow') OR (family = 'constant torque' AND retrofit = 0))",
        "supply-voltage": f"coalesce({inside}, FALSE) = FALSE",
        "phase": "phase <> 1",
        "poles": f"poles <> {p['poles']}",
        "speed": f"(poles IS NOT NULL AND abs(rpm - {p['speed']}) > {p['off_speed']})",
        "signal-class": "module = 1",
    }
    size = p["size"]
    if size is not None:
        out["power"] = (f"(size < {size} OR (family = 'constant torque' AND torque < {p['least_torque']}) OR (module = 1 AND size > {size}) "
                        f"OR (module = 0 AND family <> 'constant torque' AND size > {size + 1}))")
    conditions = [("rotation", p["wrong_rotation"], f"rotation = '{p['wrong_rotation']}'"),
                  ("double-shaft", p["two_ends"], "double_shaft = 'no'"),
                  ("shaft-diameter", p["most_diameter"], f"diameter > {p['most_diameter']}"),
                  ("body-diameter", p["most_body"], f"body > {p['most_body']}"),
                  ("mount", p["no_lugs"], "mount = 'lugs'"),
                  ("enclosure", p["outdoors"], "enclosed = 0"),
                  ("position", p["point"], f"(any_position = 0 AND {p['point']} = 0)"),
                  ("ambient", p["least_ambient"], f"ambient < {p['least_ambient']}")]
    out.update((rule, condition) for rule, asked, condition in conditions if asked)
    return out


def main(folder):
    flat(folder)
    with open(f"{folder}/jobs.csv", encoding="utf-8", newline="") as f:
        asked = [parameters(job) for job in csv.DictReader(f)]
    with open(f"{folder}/questions.json", "w", encoding="utf-8") as f:
        json.dump({"columns": COLUMNS, "questions": [fails(p) for p in asked], "parameters": asked}, f)


if __name__ == "__main__":
    main(sys.argv[1])
