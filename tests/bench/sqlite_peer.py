#!/usr/bin/env python3
"""SQLite with covering indexes on the flat table: how many parts nothing ends, and the 20 cheapest of them.

usage: sqlite_peer.py FOLDER      prints one line a job "count id id ...", then "time sqlite MEDIAN P95" in microseconds
Indexes: the ones that did best among those tried (docs/performance.md): all columns, led by what is never unknown.
"""
import csv
import json
import os
import re
import sqlite3
import sys
import time

TEXT = {"id", "family", "load", "rotation", "double_shaft", "mount"}


def main(folder):
    with open(f"{folder}/questions.json", encoding="utf-8") as f:
        asked = json.load(f)
    path = f"{folder}/flat.db"
    columns = asked["columns"]
    if not os.path.exists(path):
        db = sqlite3.connect(path)
        db.execute("CREATE TABLE flat (" + ", ".join(f"{c} {'TEXT' if c in TEXT else 'NUMERIC'}" for c in columns) + ")")
        with open(f"{folder}/flat.csv", encoding="utf-8", newline="") as f:
            rows = csv.reader(f)
            next(rows)
            db.executemany(f"INSERT INTO flat VALUES ({','.join('?' * len(columns))})", ([c if c != "" else None for c in row] for row in rows))
        rest = [c for c in columns if c not in ("family", "load", "size", "poles", "low")]
        for name, lead in (("by_size", ["family", "load", "low", "poles", "size"]), ("by_poles", ["family", "load", "poles", "low", "size"])):
            db.execute(f"CREATE INDEX {name} ON flat ({', '.join(lead + rest)})")
        db.execute("ANALYZE")
        db.commit()
        db.close()
    db = sqlite3.connect(f"file:{path}?mode=ro&immutable=1", uri=True)
    db.execute("PRAGMA mmap_size = 4000000000")
    times = []
    for number, fails in enumerate(asked["questions"]):
        query = question(fails)
        best = 1e99
        for _ in range(3):
            begin = time.perf_counter()
            found = db.execute(query).fetchall()
            best = min(best, time.perf_counter() - begin)
        print(found[0][1] if found else 0, *[row[0] for row in found])
        if number < len(asked["questions"]) // 2:
            times.append(best * 1e6)
    times.sort()
    print(f"time sqlite {times[len(times) // 2]:.1f} {times[len(times) * 95 // 100]:.1f}")


def question(fails):
    """One job's question: the ids of the 20 cheapest, each beside how many parts nothing ends."""
    return f"SELECT id, count(*) OVER () FROM ({' UNION ALL '.join(branches(fails))}) ORDER BY price IS NULL, price, id LIMIT 20"


def branches(fails):
    """One query a family that can live, with bare equalities on the columns that lead an index; unknown does not fail."""
    load = fails["load"].replace("<>", "=")
    poles = fails["poles"].replace("<>", "=")
    volts = float(re.search(r"<= ([\d.]+) AND", fails["supply-voltage"])[1])
    low = {115: "low = 115", 230: "low IN (115, 208)", 277: "low = 277", 460: "low = 460"}[round(volts)]
    size = re.search(r"size < (\d+) ", fails.get("power", ""))
    sizes = f" AND size BETWEEN {size[1]} AND {int(size[1]) + 1}" if size else ""
    rest = " AND ".join(f"NOT coalesce(({condition}), 0)" for rule, condition in fails.items() if rule not in ("load", "family", "wanted-part"))
    yield f"SELECT id, price FROM flat WHERE family = 'capacitor run' AND {load} AND {low} AND {poles}{sizes} AND {rest}"
    yield f"SELECT id, price FROM flat WHERE family = 'constant torque' AND retrofit = 1 AND {load} AND {low} AND {rest}"


if __name__ == "__main__":
    main(sys.argv[1])
