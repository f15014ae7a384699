#!/usr/bin/env python3
"""Whole estimates recomputed by a spreadsheet: every line, the total, the energy and the cost a year as formulas.

usage: tests/outside/estimate_sheet.py BUILD_DIR [--full]      last line: "N passed, N failed"

Needs Debian's gnumeric (ssconvert; no display). One row an estimate: its inputs in the first columns, then formulas of
them alone. The spreadsheet's own ROUND, SUM and PMT must give the engine's amounts to the cent.
"""
import csv
import os
import random
import subprocess
import sys
import tempfile

PROBE = os.path.join(os.path.abspath(sys.argv[1]), "tests", "probe_invoice")
COUNT = 5000 if "--full" in sys.argv[2:] else 500

INPUTS = ["part", "kit_a", "kit_b", "hours", "work", "rate", "pricing", "share", "trip", "diagnosis", "emergency", "parts_tax",
          "labour_tax", "core", "watts", "cool_hours", "electricity", "real", "life"]


def column(index):
    return chr(65 + index) if index < 26 else chr(64 + index // 26) + chr(65 + index % 26)


COLUMN = {name: column(i) for i, name in enumerate(INPUTS)}


def sold(cost):
    return ("=ROUND(IF({pricing}=1,%s*(1000000+{share})/1000000,IF({pricing}=2,%s*1000000/(1000000-{share}),%s)),0)"
            % (cost, cost, cost))


FORMULAS = [
    ("price", sold("{part}")), ("price_a", sold("{kit_a}")), ("price_b", sold("{kit_b}")),
    ("swap", "=ROUND({rate}*{hours}/1000,0)"), ("extra", "=ROUND({rate}*{work}/1000,0)"),
    ("urgent", "=IF({emergency}>0,ROUND(({swap}+{extra})*({emergency}-1000000)/1000000,0),0)"),
    ("tax", "=ROUND((SUM({price}:{price_b})*{parts_tax}+(SUM({swap}:{urgent})+{trip}+{diagnosis})*{labour_tax})/1000000,0)"),
    ("total", "=SUM({price}:{tax})+{trip}+{diagnosis}-{core}"),
    ("energy", "=ROUND({electricity}*{watts}*{cool_hours}/100000,0)"),
    ("year", "=ROUND(PMT({real}/1000000,{life},-{total})+{energy},0)"),
]
for offset, (name, _) in enumerate(FORMULAS):
    COLUMN[name] = column(len(INPUTS) + offset)


def generate(rng):
    pricing = rng.choice((0, 1, 2))
    return {"part": rng.randint(1_000, 150_000), "kit_a": rng.randint(100, 9_000), "kit_b": rng.randint(100, 9_000),
            "hours": rng.choice((1000, 1250, 2500)), "work": rng.choice((100, 250, 333)), "rate": rng.randint(7_000, 20_000),
            "pricing": pricing, "share": rng.choice((333_333, 500_000, 600_000)) if pricing else 0,
            "trip": rng.randint(0, 15_000), "diagnosis": rng.randint(0, 15_000),
            "emergency": rng.choice((0, 1_500_000, 2_000_000)), "parts_tax": rng.randint(0, 100_000),
            "labour_tax": rng.choice((0, rng.randint(0, 100_000))), "core": rng.choice((0, 2_500)),
            "watts": rng.randint(80, 700), "cool_hours": rng.randint(300, 4_000), "electricity": rng.randint(800, 3_500),
            "real": rng.choice((30_000, 70_000, 12_500))}


def written(case):
    words = [f"{k}={case[k]}" for k in ("part", "hours", "work", "rate", "trip", "diagnosis", "parts_tax", "labour_tax", "watts",
                                        "cool_hours", "electricity", "real")]
    words += ["currency=USD", "lead=0", f"kit={case['kit_a']},{case['kit_b']}"]
    words += [f"{('markup', 'margin')[case['pricing'] - 1]}={case['share']}"] if case["pricing"] else []
    words += [f"{key}={case[key]}" for key in ("emergency", "core") if case[key]]
    return " ".join(words)


def ask_engine(cases):
    out = subprocess.run([PROBE], input="\n".join(map(written, cases)) + "\n", capture_output=True, text=True, check=True).stdout
    answers = []
    for line in out.splitlines():
        answer = {"lines": {}}
        for word in line.split():
            if ":" in word:
                kind, minor = word.split(":")
                answer["lines"].setdefault(kind, []).append(int(minor))
            else:
                key, value = word.split("=")
                answer[key] = value
        answers.append(answer)
    return answers


def ask_spreadsheet(cases):
    with tempfile.TemporaryDirectory() as folder:
        sheet, result = os.path.join(folder, "estimates.csv"), os.path.join(folder, "result.csv")
        with open(sheet, "w", newline="") as f:
            out = csv.writer(f)
            for number, case in enumerate(cases, 1):
                cells = {name: f"{letters}{number}" for name, letters in COLUMN.items()}
                out.writerow([case[name] for name in INPUTS] + [formula.format(**cells) for _, formula in FORMULAS])
        subprocess.run(["ssconvert", "--recalc", "-T", "Gnumeric_stf:stf_csv", sheet, result], check=True,
                       stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        with open(result, newline="") as f:
            return [dict(zip(INPUTS + [name for name, _ in FORMULAS], row)) for row in csv.reader(f)]


def agree(case, engine, sheet):
    n = {name: int(float(sheet[name])) for name, _ in FORMULAS}
    lines = {"part": [n["price"]], "kit_part": [n["price_a"], n["price_b"]], "labour": [n["extra"], n["swap"]],
             "trip": [case["trip"]], "diagnosis": [case["diagnosis"]]}
    if case["emergency"]:
        lines["emergency"] = [n["urgent"]]
    if n["tax"]:
        lines["tax"] = [n["tax"]]
    if case["core"]:
        lines["core_credit"] = [-case["core"]]
    return (engine["lines"] == lines and engine["today"] == str(n["total"]) and engine["energy"] == str(n["energy"]) and
            engine["per_year"] == str(n["year"]))


def main():
    rng = random.Random(34)
    cases = [generate(rng) for _ in range(COUNT)]
    ours = ask_engine(cases)
    for case, answer in zip(cases, ours):
        case["life"] = answer["life"]
    theirs = ask_spreadsheet(cases)
    passed, failed = 0, abs(len(ours) - COUNT) + abs(len(theirs) - COUNT)
    for case, engine, sheet in zip(cases, ours, theirs):
        if agree(case, engine, sheet):
            passed += 1
        else:
            failed += 1
            print("FAIL", written(case), "\n  engine", engine, "\n  sheet", sheet)
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


sys.exit(main())
