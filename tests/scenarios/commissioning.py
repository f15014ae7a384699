#!/usr/bin/env python3
"""Every technician's sheet holds what field practice asks for its load, fuel, motor and drive, and nothing that does not apply.

usage: commissioning.py BUILD_FOLDER [--full] [--only TEXT] [--verbose]        last line: "N passed, N failed"

The lists below were written by hand from the table "Commissioning, by load and fuel" of the trade's field practice, and what
applies to a job is worked out here from its file as a person would read it, never from the program's own table. Looked at are
the demonstration jobs on their catalog, and the jobs of wire/ and of this folder on theirs (of the latter every third, without
--full): whatever the sheet comes to, a part, a repair, readings to take, or nothing that fits.
"""
import csv
import glob
import json
import os
import re
import subprocess
import sys
import tempfile
import tomllib

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(HERE))
DEMO = os.path.join(ROOT, "demo-catalog")

# What a sheet says of each line of the table. A phrase stands where its group applies, and nowhere else.
EXPECTED = {
    "always": ["Lock out and tag out", "Test the meter on a live source", "Wheel or blade is clean, whole, and turns free", "It turns the right way; stop at once",
               "at or below the lower of the motor's plate and the equipment's", "Write every reading into the start-up form"],
    "a motor is fitted": ["the hub touches nothing"],
    "ducted": ["Total static and airflow are as the equipment's own table says"],
    "gas or oil": ["Shut off gas or oil before the unit is opened", "Vent whole and open, drain clear", "proves at its own setting. It is never jumpered",
                   "Limit and roll-out are in circuit", "air-free CO in the flue within the appliance's limit, before and with the blower running",
                   "Watch CO in the room: a change when the blower starts stops the job"],
    "perhaps gas or oil": ["Nobody has said whether it burns gas or oil", "If it burns gas or oil: vent, pressure switch (never jumpered), limit and roll-out"],
    "fire or elements": ["Temperature rise lies inside the plate's range at every stage"],
    "draft inducer": ["The assembly is the one that the equipment's parts list names", "gasket on the wheel side", "Condensate drain and trap",
                      "Pressure at the switch against the setting", "The burner lights smoothly", "Flue gas does not spill"],
    "electric heat": ["Air is proven before an element comes on", "Amps of each element", "The elements' limit opens"],
    "cooling": ["Cooling air at the compressor's call", "Coil and drain pan are clean", "Superheat or subcooling are read only once the air is right"],
    "condenser fan": ["Air goes up and out", "Blade at its old height in the orifice", "Rain shield above", "The leads loop down",
                      "The lowest drain hole of the motor is open, the others plugged", "Head pressure holds steady"],
    "belt": ["Both sheaves in line", "Belt tension", "the same pitch as before, or a new calculation", "once more after fifteen minutes",
             "Blower bearings turn free", "Belt guard back"],
    "three phase": ["each of the three legs", "exchange two leads of this motor", "High or low voltage connection by the motor's own diagram",
                    "overload is set to the new motor's own amps"],
    "electronic": ["Line voltage is at an electronic motor at all times", "Wait 5 minutes after lock-out", "Never mate or part the power plug live"],
    "capacitor": ["Discharge a run capacitor through a resistor"],
    "motor not known": ["The kind of motor is not known"],
    "another charge": ["in the same cabinet"],
}

FAMILIES = {"psc": "capacitor", "capacitor run": "capacitor", "capacitor start": "capacitor", "capacitor start and run": "capacitor",
            "shaded pole": "plain", "split phase": "plain", "three phase": "three phase", "constant torque": "electronic",
            "constant airflow": "electronic", "constant cfm": "electronic", "communicating": "electronic", "ecm": "electronic"}


def said(job, group, key):
    """The text of a key, in small letters; none where it is not written."""
    value = job.get(group, {}).get(key)
    if value is None:
        return None
    return "; ".join(map(str, value)).lower() if isinstance(value, list) else ("yes" if value is True else "no" if value is False else str(value).lower())


def amount(job, group, key):
    found = re.search(r"\d+(\.\d+)?", said(job, group, key) or "")
    return float(found.group()) if found else 0.0


def groups_of(job, new_family, part):
    """What applies to the job, and to the part that its sheet is about."""
    load = said(job, "unit", "load")
    heat = said(job, "controls", "heat")
    trusted = said(job, "unit", "plate_trusted") != "no"
    plate = job.get("plate", {}) if trusted else {}
    old = FAMILIES.get((said({"plate": plate}, "plate", "family") or "").replace("-", " "))
    kinds = {old, FAMILIES.get(new_family)}
    has_capacitor = "capacitor" in kinds or bool(plate.get("capacitor"))
    electronic = "electronic" in kinds or part.get("kind") == "module"
    blower, inducer, fan = load in (None, "indoor blower"), load == "draft inducer", load == "outdoor fan"
    if heat is not None:
        burns = any(word in heat for word in ("gas", "oil", "dual fuel"))
    elif amount(job, "equipment", "heat_input") or amount(job, "equipment", "heat_output"):
        burns = True
    else:
        burns = None
    burns = True if inducer else burns
    elements = heat == "electric heat" or amount(job, "equipment", "electric_heat") > 0 or amount(job, "equipment", "electric_stages") > 0
    cooled = heat in ("heat pump", "dual fuel") or amount(job, "equipment", "cooling") > 0 or amount(job, "equipment", "cooling_stages") > 0
    groups = {"always"}
    add = lambda name, holds: groups.add(name) if holds else None
    add("a motor is fitted", part.get("kind") != "module")
    add("ducted", blower)
    add("gas or oil", burns and not fan)
    add("perhaps gas or oil", burns is None and not fan)
    add("fire or elements", (burns and not fan) or (elements and blower))
    add("draft inducer", inducer)
    add("electric heat", elements and blower)
    add("cooling", cooled and blower)
    add("condenser fan", fan)
    add("belt", said(job, "unit", "belt_drive") == "yes")
    add("three phase", "three phase" in kinds or said({"plate": plate}, "plate", "phase") == "3")
    add("electronic", electronic)
    add("capacitor", has_capacitor)
    known = old is not None or bool(plate.get("capacitor") and plate.get("capacitor_volts"))
    add("motor not known", not known and not has_capacitor)
    outdoors = said(job, "unit", "outdoors") or ("no" if load is not None else None)  # a blower is indoors unless somebody says otherwise
    compressor = amount(job, "equipment", "compressor_amps") > 0 or (cooled and outdoors != "no")
    beside = inducer or (known and not has_capacitor and (fan or (blower and burns) or compressor))
    add("another charge", beside)
    return groups


def run(program, *words):
    done = subprocess.run([program, *words], capture_output=True, text=True, errors="replace",
                          env={"PATH": os.environ.get("PATH", ""), "LC_ALL": "C.UTF-8"})
    return done.returncode, done.stdout, done.stderr


def kinds_of_parts(tables):
    parts = {row["part_id"]: {"kind": row["kind"]} for row in csv.DictReader(open(os.path.join(tables, "parts.csv"), newline="", encoding="utf-8"))}
    for row in csv.DictReader(open(os.path.join(tables, "motors.csv"), newline="", encoding="utf-8")):
        parts[row["part_id"]]["family"] = row["family"]
    return parts


def texts(value):
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for one in value.values():
            yield from texts(one)
    elif isinstance(value, list):
        for one in value:
            yield from texts(one)


def complaints(program, database, parts, path):
    """None where the job is refused."""
    code, out, err = run(program, "sheet", path, "--for", "technician", "--catalog", database, "--json")
    if code in (64, 65):
        return None
    if code not in (0, 10, 11, 12):
        return [f"exit {code}: {err.strip()[:200]}"]
    answer = json.loads(out)
    with open(path, "rb") as file:
        job = tomllib.load(file)
    for doubted in [key for pair in answer["contradictions"] for key in pair.split(" and ")]:
        group, _, key = doubted.partition(".")
        job.get(group, {}).pop(key, None)  # nothing rests on it
    part = parts.get((answer["option"] or {}).get("part"), {})
    groups = groups_of(job, part.get("family"), part)
    sheet = " ".join(" ".join(texts(answer["blocks"])).split())
    wrong = []
    for group, phrases in EXPECTED.items():
        for phrase in phrases:
            if (phrase in sheet) != (group in groups):
                wrong.append(f"{'lacks' if group in groups else 'should not say'} ({group}) '{phrase}'")
    return wrong


def main(argv):
    program = os.path.join(os.path.abspath(argv[0]), "cli", "endbell")
    only = argv[argv.index("--only") + 1] if "--only" in argv else ""
    every = 1 if "--full" in argv or only else 3
    places = [(os.path.join(DEMO, "tables"), sorted(glob.glob(os.path.join(DEMO, "jobs", "*.toml")))),
              (os.path.join(HERE, "wire", "shelf"), sorted(glob.glob(os.path.join(HERE, "wire", "*", "job.toml")))),
              (os.path.join(HERE, "shelf"), sorted(glob.glob(os.path.join(HERE, "*", "job.toml")))[::every])]
    passed = failed = 0
    for tables, jobs in places:
        parts = kinds_of_parts(tables)
        with tempfile.TemporaryDirectory(prefix="commissioning-") as folder:
            database = os.path.join(folder, "catalog.db")
            code, out, err = run(program, "catalog", "import", tables, "--into", database)
            if code != 0:
                print(f"FAIL {tables}: {err or out}")
                failed += 1
                continue
            looked_at = 0
            for path in jobs:
                if only not in path:
                    continue
                wrong = complaints(program, database, parts, path)
                if wrong is None:
                    continue
                looked_at += 1
                passed, failed = (passed, failed + 1) if wrong else (passed + 1, failed)
                for one in wrong:
                    print(f"FAIL {os.path.relpath(path, ROOT)}: {one}")
                if "--verbose" in argv and not wrong:
                    print(f"ok   {os.path.relpath(path, ROOT)}")
            if not only and looked_at < 19:
                print(f"FAIL {tables}: only {looked_at} sheets were looked at")
                failed += 1
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
