#!/usr/bin/env python3
"""Import against `sqlite3 .import` of the same files, alternately in one run. A benchmark: it asserts nothing about time.

usage: tests/bench/import.py BUILD_DIR [PARTS [ROUNDS]]      PARTS: 1000000 and ROUNDS: 3 unless given

Peers: `typed`, tables whose columns have types and nothing else, and `same`, the tables of catalog-schema/schema.sql with
their keys and checks. Neither reads units, asks for parents, makes the search keys of numbers or a digest: we do.
Prints a table and lines `ratio NAME VALUE`: the peer's time over ours, so that 1 and more means that we are not slower.
"""
import os
import re
import resource
import statistics
import subprocess
import sys
import tempfile
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.dirname(os.path.abspath(__file__))), "catalog"))
from tools import ROOT, endbell, write_tables  # noqa: E402

TABLES = ["parts", "motors", "motor_ratings", "offers"]


def schema():
    with open(os.path.join(ROOT, "catalog-schema", "schema.sql"), encoding="utf-8") as f:
        return f.read()


def column_types(table):
    """The columns of a table with their types, as schema.sql has them."""
    body = re.search(rf"CREATE TABLE {table} \((.*?)\n\) STRICT", schema(), re.DOTALL).group(1)
    return dict(re.findall(r"^    (\w+) +(TEXT|INTEGER|REAL)\b", body, re.MULTILINE))


def header(path):
    with open(path, encoding="utf-8") as f:
        return f.readline().strip().split(",")


def peer_sql(folder, tables, kind):
    """`.import` wants the columns in the file's order, and all of them: each table is made to the file's header."""
    lines = [".bail on"]
    for table in tables:
        path = os.path.join(folder, table + ".csv")
        types = column_types(table)
        names = header(path)
        if kind == "typed":
            columns = ", ".join(f"{name} {types[name]}" for name in names)
            lines.append(f"CREATE TABLE {table} ({columns});")
        else:
            body = re.search(rf"CREATE TABLE {table} \((.*?)\n\) STRICT", schema(), re.DOTALL).group(1)
            split = re.split(r"\n    (?=\w)", body)
            columns = {c.split()[0]: c.strip().rstrip(",") for c in split if c.strip()}
            chosen = [re.sub(r" REFERENCES \w+ \(\w+\)", "", columns[n]) for n in names]
            # .import converts nothing: "1/2" stays text, so there is no STRICT and no check of the one column with such cells.
            chosen = [re.sub(r" CONSTRAINT.*", "", c) if c.startswith("shaft_diameter_in") else c for c in chosen]
            key = [columns["PRIMARY"]] if "PRIMARY" in columns else []
            lines.append(f"CREATE TABLE {table} (" + ",\n".join(chosen + key) + ") WITHOUT ROWID;")
        lines.append(f".import --csv --skip 1 '{path}' {table}")
    return "\n".join(lines) + "\n"


def timed(arguments, text=None):
    """Seconds by the clock, and of the processors: the second holds on a busy machine too."""
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    began = time.monotonic()
    done = subprocess.run(arguments, input=text, capture_output=True, text=True)
    seconds = time.monotonic() - began
    now = resource.getrusage(resource.RUSAGE_CHILDREN)
    if done.returncode != 0:
        raise SystemExit(f"{arguments}: exit {done.returncode}\n{done.stdout[:500]}{done.stderr[:500]}")
    return seconds, now.ru_utime + now.ru_stime - used.ru_utime - used.ru_stime


def rows_in(database, tables):
    return [subprocess.run(["sqlite3", database, f"SELECT count(*) FROM {t}"], capture_output=True, text=True).stdout.strip() for t in tables]


def remove(path):
    for name in os.listdir(os.path.dirname(path)):
        if name.startswith(os.path.basename(path)):
            os.remove(os.path.join(os.path.dirname(path), name))


def p95(times):
    return sorted(times)[min(len(times) - 1, int(0.95 * len(times)))]


class Case:
    """One set of files, read by us and by the peers in turn."""

    def __init__(self, name, folder, tables, ours, before=None):
        self.name, self.folder, self.tables, self.ours, self.before = name, folder, tables, ours, before
        self.times = {"ours": [], "typed": [], "same": []}

    def round(self, home):
        catalog = os.path.join(home, "ours.db")
        if self.before:
            self.before(catalog)
        self.times["ours"].append(timed(self.ours(catalog)))
        counts = rows_in(catalog, self.tables)
        remove(catalog)
        for kind in ("typed", "same"):
            database = os.path.join(home, "peer.db")
            self.times[kind].append(timed(["sqlite3", database], peer_sql(self.folder, self.tables, kind)))
            if rows_in(database, self.tables) != counts:
                raise SystemExit(f"{self.name}: {kind} holds other rows than ours")
            remove(database)

    def show(self, rows):
        for who, times in self.times.items():
            clock, work = [t[0] for t in times], [t[1] for t in times]
            print(f"{self.name:16} {who:6} {rows:9} {statistics.median(clock):8.2f} {p95(clock):8.2f} {statistics.median(work):11.2f}")

    def ratios(self):
        for kind in ("typed", "same"):
            name = f"import-{self.name}-over-{kind}"
            clock = {who: [t[0] for t in self.times[who]] for who in ("ours", kind)}
            work = {who: [t[1] for t in self.times[who]] for who in ("ours", kind)}
            print(f"ratio {name} {statistics.median(clock[kind]) / statistics.median(clock['ours']):.2f}")
            print(f"ratio {name}-p95 {p95(clock[kind]) / p95(clock['ours']):.2f}")
            print(f"ratio {name}-processor {statistics.median(work[kind]) / statistics.median(work['ours']):.2f}")


def main():
    program = endbell(sys.argv[1])
    parts = int(sys.argv[2]) if len(sys.argv) > 2 else 1000000
    rounds = int(sys.argv[3]) if len(sys.argv) > 3 else 3
    with tempfile.TemporaryDirectory() as home:
        tables = os.path.join(home, "tables")
        write_tables(tables, parts)
        quarter = os.path.join(home, "quarter")
        write_tables(quarter, parts // 4)
        base = os.path.join(home, "base.db")
        subprocess.run([program, "catalog", "import", tables, "--into", base], check=True, capture_output=True)
        nightly = os.path.join(home, "nightly")
        write_tables(nightly, parts, seed=1, price_step=1)
        offers = os.path.join(nightly, "offers.csv")

        def whole(folder):
            return lambda catalog: [program, "catalog", "import", folder, "--into", catalog]

        def copy_base(catalog):
            remove(catalog)
            for side in ("", "-index", "-prices"):  # as last night left them
                subprocess.run(["cp", base + side, catalog + side], check=True)

        cases = [
            (Case("four-tables", quarter, TABLES, whole(quarter)), parts // 4 * 4),
            (Case("whole-catalog", tables, TABLES, whole(tables)), parts * 4),
            (Case("nightly-offers", nightly, ["offers"],
                  lambda catalog: [program, "catalog", "import", offers, "--into", catalog, "--mode", "tables"], copy_base), parts),
        ]
        for _ in range(rounds):
            for case, _ in cases:
                case.round(home)
        print(f"{'case':16} {'who':6} {'rows':>9} {'median s':>8} {'p95 s':>8} {'processor s':>11}")
        for case, rows in cases:
            case.show(rows)
        for case, _ in cases:
            case.ratios()
    return 0


if __name__ == "__main__":
    sys.exit(main())
