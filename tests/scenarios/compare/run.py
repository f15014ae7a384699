#!/usr/bin/env python3
"""Prices every way out of each job here and compares it with totals worked out by hand.

usage: run.py PROGRAM_OR_BUILD_FOLDER [--only TEXT] [--verbose]

A scenario is a folder: `job.toml`, whose first comment lines carry the arithmetic, and `expected.json`. Parts, prices and
hours come from the scenarios' shelf, laid out as for the other scenarios, with the changes that this one names.

expected.json:
  because            what is shown
  shelf              part ids laid out
  change             {table: {first cell of a row: {column: value}}}
  drop               {table: [first cells of rows left out]}
  add                {table: [row, ...]}
  ways               {"WAY PART": what is expected of it}; every option of the answer must be named, and no other:
                       today, so_far, per_year  amounts as text, or null
                       per_year_less_energy     the cost a year without the energy in it
                       energy                   false: no energy is priced
                       lacking                  exactly these questions
                       loses                    must be among what it loses
  refused            {"exit": code, "says": text of the message}: the job is not read, nothing else is expected
  cheapest_today     "WAY PART" or null
  cheapest_per_year  "WAY PART" or null
"""
import csv
import importlib.util
import json
import os
import sys
import tempfile
from decimal import Decimal

HERE = os.path.dirname(os.path.abspath(__file__))
_spec = importlib.util.spec_from_file_location("scenarios", os.path.join(HERE, os.pardir, "run.py"))
scenarios = importlib.util.module_from_spec(_spec)
_spec.loader.exec_module(scenarios)
Failure, same = scenarios.Failure, scenarios.same


def rewrite(path, change, drop, add):
    with open(path, newline="", encoding="utf-8") as source:
        header, *rows = list(csv.reader(source))
    rows = [row for row in rows if row[0] not in drop] + add
    for key, cells in change.items():
        found = [row for row in rows if row[0] == key]
        if not found:
            raise Failure(f"{os.path.basename(path)} has no row {key}")
        for row in found:
            for column, value in cells.items():
                row[header.index(column)] = value
    with open(path, "w", newline="", encoding="utf-8") as target:
        csv.writer(target, lineterminator="\n").writerows([header] + rows)


def shelf_of(expected, folder):
    """The scenario's own shelf, in `folder`."""
    scenarios.lay_out(scenarios.SHELF, expected["shelf"], folder)
    change, drop, add = (expected.get(key, {}) for key in ("change", "drop", "add"))
    for table in sorted(set(change) | set(drop) | set(add)):
        rewrite(os.path.join(folder, table + ".csv"), change.get(table, {}), drop.get(table, []), add.get(table, []))


def name(option):
    return (option["way"] + " " + option["part"]).strip()


def amount(money):
    return None if money is None else money["amount"]


def check_way(option, expected):
    way = name(option)
    for key in ("today", "so_far", "per_year"):
        if key in expected:
            same(f"{way}: {key}", expected[key], amount(option[key]))
    if "per_year_less_energy" in expected:
        rest = Decimal(amount(option["per_year"])) - Decimal(amount(option["energy_cost"]))
        if abs(rest - Decimal(expected["per_year_less_energy"])) > Decimal("0.01"):  # two roundings against one
            raise Failure(f"{way}: a year less energy: wanted {expected['per_year_less_energy']}, found {rest}")
    if expected.get("energy") is False:
        same(f"{way}: energy cost", None, option["energy_cost"])
    same(f"{way}: lacking", sorted(expected.get("lacking", [])), sorted(option["lacking"]))
    for word in expected.get("loses", []):
        if word not in option["loses"]:
            raise Failure(f"{way}: wanted {word!r} among what it loses, found {option['loses']}")
    if option["today"] is not None:
        total = sum(Decimal(amount(line["amount"])) for line in option["lines"])
        same(f"{way}: sum of the lines", Decimal(amount(option["today"])), total)


def check(program, folder):
    with open(os.path.join(folder, "expected.json"), encoding="utf-8") as f:
        expected = json.load(f)
    with tempfile.TemporaryDirectory(prefix="compare-") as place:
        tables = os.path.join(place, "tables")
        os.mkdir(tables)
        shelf_of(expected, tables)
        world = scenarios.World(program, None, place, tables)
        job = os.path.join(folder, "job.toml")
        if "refused" in expected:
            code, _, err = world.call("compare", job, "--catalog", world.database)
            same("exit code", expected["refused"]["exit"], code)
            if expected["refused"]["says"] not in err:
                raise Failure(f"wanted {expected['refused']['says']} in {err.strip()!r}")
            return
        _, answer = world.ask("compare", job)
    ledger = answer["ledger"]
    options = {name(option): option for option in ledger["options"]}
    same("ways", sorted(expected["ways"]), sorted(options))
    for way, wanted in expected["ways"].items():
        check_way(options[way], wanted)
    for key in ("cheapest_today", "cheapest_per_year"):
        index = ledger[key]
        same(key, expected[key], None if index is None else name(ledger["options"][index]))


def main(argv):
    if not argv or argv[0].startswith("-"):
        print(__doc__.split("\n\n")[1], file=sys.stderr)
        return 64
    program = os.path.abspath(argv[0])
    for below in ("cli/endbell", "endbell"):
        if os.path.isfile(os.path.join(program, below)):
            program = os.path.join(program, below)
    only = argv[argv.index("--only") + 1] if "--only" in argv else ""
    passed = failed = 0
    for case in sorted(os.listdir(HERE)):
        folder = os.path.join(HERE, case)
        if only not in case or not os.path.exists(os.path.join(folder, "expected.json")):
            continue
        try:
            check(program, folder)
            passed += 1
            if "--verbose" in argv:
                print(f"ok   {case}")
        except (Failure, KeyError) as problem:
            failed += 1
            print(f"FAIL {case}: {problem if isinstance(problem, Failure) else f'no {problem} in the answer'}")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed or not passed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
