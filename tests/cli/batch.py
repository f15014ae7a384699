#!/usr/bin/env python3
"""A batch of 500 generated jobs against single runs of the same jobs.

usage: tests/cli/batch.py BUILD_DIR [--full]     --full runs all 500 singly, else every fifth
The last line is "N passed, N failed".
"""
import csv
import io
import json
import os
import pty
import random
import subprocess
import sys
import tempfile
from decimal import Decimal

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
SHELF = os.path.join(ROOT, "tests", "scenarios", "shelf")
ENDBELL = os.path.abspath(os.path.join(sys.argv[1], "cli", "endbell"))
FULL = "--full" in sys.argv
JOBS = 500
# What a spreadsheet would take for a formula, beside what it must be left: numbers and plain words.
TAGS = {"=1+1": "'=1+1", "+44": "'+44", "@SUM(A1)": "'@SUM(A1)", "-cmd": "'-cmd", "-12.50": "-12.50", "7": "7",
        'Hall "B", north': 'Hall "B", north', "": ""}

passed = failed = 0


def check(name, holds, detail=""):
    global passed, failed
    passed, failed = passed + bool(holds), failed + (not holds)
    print(("ok   " if holds else "FAIL ") + name + (": " + str(detail)[:400] if detail and not holds else ""))


def run(folder, *words):
    environment = {k: v for k, v in os.environ.items() if k != "ENDBELL_CATALOG"}
    done = subprocess.run([ENDBELL, *words], capture_output=True, cwd=folder, env=environment)
    return done.returncode, done.stdout.decode("utf-8"), done.stderr.decode("utf-8")


# -- the jobs

STEADY = {
    "unit.load": "indoor blower", "unit.belt_drive": "no", "unit.shaft_points": "horizontal", "unit.outdoors": "no",
    "plate.family": "PSC", "plate.phase": "1", "plate.frequency": "60", "plate.double_shaft": "no", "plate.shaft_length": "5",
    "plate.mount": "band", "plate.enclosure": "OPAO", "plate.bearing": "sleeve", "plate.ambient": "40 C",
    "plate.protection": "thermal automatic", "plate.capacitor_volts": "370", "plate.signal": "switched line",
    "measured.line_volts": "119", "measured.shaft_needed": "4", "measured.shaft_room": "6", "measured.body_room": "8",
    "equipment.supply": "115", "equipment.fan_amps": "6.4", "controls.source": "line-voltage board", "controls.heat": "gas furnace",
    "shop.branch": "Main", "shop.as_of": "2026-01-20", "shop.currency": "USD", "shop.parts_tax": "7 %",
    "shop.electricity": "16.00", "shop.real_discount_rate": "3 %",
}
VARIED = {
    "plate.power": ["1/2", "1/2 HP", "0.5", "1/3", "1"], "plate.volts": ["115", "115", "208-230", ""],
    "plate.speed": ["1075", "1075", "1140", "825"], "plate.current": ["6.0", "4.5"],
    "plate.rotation": ["CCWLE", "CCWLE", "CWLE", "CW"], "plate.shaft_diameter": ["1/2", "0.5", "5/8"],
    "plate.body_diameter": ["5.6", "5.6", ""], "plate.capacitor": ["7.5 MFD", "7.5", "10"], "plate.speeds": ["3", "2"],
    "measured.spins_free": ["no", "no", "yes"], "measured.capacitor": ["7.5", "5.2", ""], "measured.bore": ["1/2", "5/8"],
    "measured.band_diameter": ["5.6", ""], "measured.earlier_replacements": ["", "2"],
    "equipment.remaining_years": ["", "6"], "shop.labour_rate": ["120.00", "95.00", ""], "shop.trip": ["90.00", "0.00"],
    "shop.markup": ["100 %", "45 %", ""], "shop.emergency": ["", "", "150 %"], "shop.labour_tax": ["", "5 %"],
}
BAD = {60: ("plate.power", "half a horse"), 61: ("shop.labour_rate", "much"), 250: ("plate.rotation", "sunwise"),
       499: ("measured.spins_free", "perhaps")}


def made_jobs():
    """The same jobs every time: cells by column, in order."""
    chance = random.Random(20260120)
    jobs = []
    for i in range(JOBS):
        job = {"tag": chance.choice(list(TAGS)), "unit.name": f"unit {i:03d}", **STEADY}
        for column, values in VARIED.items():
            # Most rows keep the first value, so that many of them find a part.
            job[column] = values[0] if chance.random() < 0.7 else chance.choice(values)
        # A shaft that drags with its wheel loosened is the motor's own bearing.
        job["measured.free_with_wheel_loose"] = "no" if job["measured.spins_free"] == "no" else ""
        if i in BAD:
            job[BAD[i][0]] = BAD[i][1]
        jobs.append(job)
    return jobs


def write_csv(path, jobs):
    with open(path, "w", newline="", encoding="utf-8") as f:
        writer = csv.DictWriter(f, list(jobs[0]))
        writer.writeheader()
        writer.writerows(jobs)


def write_single(path, job):
    groups = {}
    for column, value in job.items():
        if column != "tag" and value:
            group, field = column.split(".")
            groups.setdefault(group, []).append(f"{field} = {json.dumps(value)}")
    with open(path, "w", encoding="utf-8") as f:
        for group, lines in groups.items():
            f.write(f"[{group}]\n" + "\n".join(lines) + "\n\n")


# -- what must hold

def amount(money):
    return "" if money is None else money["amount"]


def single(folder, job):
    """What one run of `match` says, as the columns of a result row."""
    write_single(os.path.join(folder, "one.toml"), job)
    code, out, err = run(folder, "match", "one.toml", "--catalog", "shelf.db", "--json", "--top", "2")
    if code == 65:
        return {"outcome": "bad data", "exit_code": "65", "part_id": "", "today": "", "per_year": "", "second_part_id": "",
                "second_today": ""}
    answer = json.loads(out)
    row = {"outcome": answer["outcome"], "exit_code": str(answer["exit_code"]), "part_id": "", "today": "", "per_year": "",
           "second_part_id": "", "second_today": ""}
    if answer["exit_code"] == 0 and answer["pick"]:
        priced = {o["part"]: o for o in answer["ledger"]["options"]}
        row["part_id"] = answer["pick"]
        row["today"] = amount(priced[answer["pick"]]["today"])
        row["per_year"] = amount(priced[answer["pick"]]["per_year"])
        if len(answer["options"]) > 1:
            row["second_part_id"] = answer["options"][1]["part"]
            row["second_today"] = amount(priced.get(row["second_part_id"], {"today": None})["today"])
    row["bought"] = [(p["part"], p.get("count", 1)) for o in answer["options"][:1] if row["part_id"] for p in o["kit"]["parts"]]
    return row


def check_rows(folder, jobs, rows):
    check("one result row a job", len(rows) == JOBS, len(rows))
    check("rows keep the order of the jobs, a bad one named by its line",
          [r["job"] for r in rows] == [f"jobs.csv:{i + 2}" if i in BAD else j["unit.name"] for i, j in enumerate(jobs)])
    check("a formula in a text cell is defused, a number is left", all(r["tag"] == TAGS[j["tag"]] for r, j in zip(rows, jobs)),
          sorted({(j["tag"], r["tag"]) for r, j in zip(rows, jobs)}))
    wrong = [i for i, r in enumerate(rows) if r["outcome"] == "bad data"]
    check("exactly the spoiled rows are bad data", wrong == sorted(BAD), wrong)
    check("a bad row names its key", all(BAD[i][0] in rows[i]["problem"] for i in BAD), [rows[i]["problem"] for i in BAD])
    endings = {r["exit_code"] for r in rows}
    check("the jobs end in more than one way", {"0", "65"} < endings, endings)
    check("many rows have a total", sum(bool(r["today"]) for r in rows) > JOBS // 10, sum(bool(r["today"]) for r in rows))
    check("a part without a total says what it needs", all(r["today"] or r["problem"] for r in rows if r["part_id"]))
    chosen = range(JOBS) if FULL else sorted(set(range(0, JOBS, 5)) | set(BAD))
    different, bought = [], {}
    for i in chosen:
        wanted = single(folder, jobs[i])
        bought[i] = wanted.pop("bought", [])
        found = {key: rows[i][key] for key in wanted}
        if found != wanted:
            different.append((rows[i]["job"], {k: (wanted[k], found[k]) for k in wanted if wanted[k] != found[k]}))
    check(f"{len(chosen)} single runs say the same", not different, different[:3])
    return bought


def check_orders(rows, orders, bought):
    """Each line multiplies out; every picked part, and every kit part that the single runs bought, is on order."""
    with open(os.path.join(SHELF, "offers.csv"), newline="", encoding="utf-8") as f:
        prices = {o["part_id"]: Decimal(o["price"]) for o in csv.DictReader(f)}
    check("an order line is its count times its price",
          all(Decimal(o["total"]) == int(o["count"]) * Decimal(o["each"]) for o in orders))
    check("the price is the shelf's", all(Decimal(o["each"]) == prices[o["part_id"]] for o in orders))
    check("a part is on one line", len({o["part_id"] for o in orders}) == len(orders))
    counts = {o["part_id"]: int(o["count"]) for o in orders}
    jobs_of = {o["part_id"]: set(o["jobs"].split("; ")) for o in orders}
    picks = {}
    for row in rows:
        if row["part_id"]:
            picks[row["part_id"]] = picks.get(row["part_id"], 0) + 1
    check("every picked part is ordered as often as it is picked", all(counts.get(p, 0) == n for p, n in picks.items()),
          {p: (n, counts.get(p)) for p, n in picks.items() if counts.get(p, 0) != n})
    missing = [(rows[i]["job"], part) for i, parts in bought.items() for part, _ in parts if rows[i]["job"] not in jobs_of.get(part, ())]
    check("every kit part is ordered for its job", not missing, missing[:5])
    if FULL:
        wanted = dict(picks)
        for parts in bought.values():
            for part, count in parts:
                wanted[part] = wanted.get(part, 0) + count
        check("the whole order is what the jobs buy", wanted == counts, {p: (wanted.get(p), counts.get(p)) for p in set(wanted) | set(counts)
                                                                         if wanted.get(p) != counts.get(p)})
    short = [o["part_id"] for o in orders if int(o["short_of"] or 0) != max(0, int(o["count"]) - 3) and o["part_id"] != "psc-order"]
    check("what the stock of three does not cover is said", not short, short)


def on_terminal(folder):
    """Everything that batch writes to a standard error that is a terminal."""
    main, side = pty.openpty()
    words = [ENDBELL, "batch", "jobs.csv", "--out", "again.csv", "--catalog", "shelf.db"]
    with subprocess.Popen(words, cwd=folder, stdout=subprocess.DEVNULL, stderr=side) as program:
        os.close(side)
        seen = b""
        while True:
            try:
                block = os.read(main, 65536)
            except OSError:  # the other side is closed
                break
            if not block:
                break
            seen += block
        program.wait()
    os.close(main)
    return seen.decode("utf-8", "replace")


def bytes_of(folder, name):
    with open(os.path.join(folder, name), "rb") as f:
        return f.read()


def read_csv(folder, name):
    return list(csv.DictReader(io.StringIO(bytes_of(folder, name).decode("utf-8"), newline="")))


def main():
    with tempfile.TemporaryDirectory(prefix="endbell-batch-") as folder:
        code, out, err = run(folder, "catalog", "import", SHELF, "--into", "shelf.db")
        check("the shelf imports", code == 0, out + err)
        jobs = made_jobs()
        write_csv(os.path.join(folder, "jobs.csv"), jobs)
        code, out, err = run(folder, "batch", "jobs.csv", "--out", "results.csv", "--catalog", "shelf.db")
        check("a batch with bad rows ends in 65", code == 65, err)
        check("nothing is said of progress in a pipe", err == "", err)
        check("the summary counts jobs by tag", all(tag in out for tag in ("=1+1", "(none)")), out)
        rows = read_csv(folder, "results.csv")
        bought = check_rows(folder, jobs, rows)
        check_orders(rows, read_csv(folder, "results.orders.csv"), bought)
        seen = on_terminal(folder)
        check("a terminal sees the count of jobs and the share done", "500 jobs" in seen and "100 %" in seen and "\r" in seen, seen[-200:])
        check("the same batch gives the same bytes", bytes_of(folder, "results.csv") == bytes_of(folder, "again.csv"))
        write_csv(os.path.join(folder, "good.csv"), [j for i, j in enumerate(jobs[:40]) if i not in BAD])
        code, _, err = run(folder, "batch", "good.csv", "--out", "good-results.csv", "--catalog", "shelf.db")
        check("a batch without bad rows ends in 0", code == 0, err)
        turned = [dict(reversed(j.items())) for i, j in enumerate(jobs[:40]) if i not in BAD]
        write_csv(os.path.join(folder, "turned.csv"), turned)
        run(folder, "batch", "turned.csv", "--out", "turned-results.csv", "--catalog", "shelf.db")
        there, back = ([{k: v for k, v in r.items() if k != "job"} for r in read_csv(folder, name)]
                       for name in ("good-results.csv", "turned-results.csv"))
        check("columns may stand in any order", there == back and len(there) > 30, [p for p in zip(there, back) if p[0] != p[1]][:1])
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
