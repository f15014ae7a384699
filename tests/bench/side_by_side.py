#!/usr/bin/env python3
"""One size: the same questions to ours, SQLite, DuckDB, a plain scan and the sqlite3 command line; answers must be equal.

usage: side_by_side.py BUILD_DIR FOLDER NPM_FOLDER
"""
import csv
import hashlib
import os
import re
import resource
import statistics
import subprocess
import sys
import time


def output_of(words, **more):
    return subprocess.run(words, check=True, capture_output=True, text=True, **more).stdout.splitlines()


def split(lines):
    """The answers, and {what was timed: (median, 95th percentile)}."""
    times = {}
    for line in lines:
        if found := re.fullmatch(r"time (.+) ([\d.]+) ([\d.]+)", line):
            times[found[1]] = (float(found[2]), float(found[3]))
    answers = [line.strip() for line in lines if not line.startswith(("time ", "carried "))]
    return answers, times


def digest(answers):
    return hashlib.sha256("\n".join(answers).encode()).hexdigest()[:16]


def once(words, rounds=15):
    """Wall time of whole processes, median in microseconds, and the peak memory of one in MB."""
    times = []
    for _ in range(rounds):
        begin = time.perf_counter()
        subprocess.run(words, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False)
        times.append((time.perf_counter() - begin) * 1e6)
    timed = subprocess.run(["/usr/bin/env", "python3", "-c", "import resource,subprocess,sys;subprocess.run(sys.argv[1:],stdout=subprocess.DEVNULL);"
                            "print(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss)", *words], capture_output=True, text=True, check=True)
    return statistics.median(times), int(timed.stdout) / 1024


def job_words(folder, number):
    """Job `number` of jobs.csv as --set words."""
    with open(f"{folder}/jobs.csv", encoding="utf-8", newline="") as f:
        row = list(csv.DictReader(f))[number]
    words = []
    for key, value in row.items():
        if key != "job" and value:
            words += ["--set", f"{key}={value}"]
    return words


def main(build, folder, npm):
    parts = os.path.basename(folder)
    measure = f"{build}/tests/bench/bench_measure"
    scan = f"{build}/tests/bench/bench_scan"
    endbell = f"{build}/cli/endbell"
    database, jobs = f"{folder}/shop.db", f"{folder}/jobs.csv"

    times = {}

    def answers_of(words, **more):
        answers, timed = split(output_of(words, **more))
        times.update(timed)
        return answers

    def compare(what, ours, others):
        said = ", ".join(f"{name} {digest(answers)}" for name, answers in others.items())
        equal = all(answers == ours for answers in others.values())
        print(f"{parts} {what}: ours {digest(ours)}, {said}: {'equal' if equal else 'DIFFERENT'}")

    compare("living", answers_of([measure, "living", database, jobs]), {
        "SQLite": answers_of(["python3", "tests/bench/sqlite_peer.py", folder]),
        "scan": answers_of([scan, "living", folder])})
    compare("tallies", answers_of([measure, "tallies", database, jobs]), {
        "DuckDB": answers_of(["node", "duckdb_peer.mjs", os.path.abspath(folder)], cwd=npm),
        "scan": answers_of([scan, "tallies", folder])})
    answers_of([measure, "select", database, jobs])
    for name, (median, late) in times.items():
        print(f"{parts} {name}: median {median:.0f} us, p95 {late:.0f} us")

    command, memory = once([endbell, "--no-config", "--catalog", database, "match", "--top", "20", *job_words(folder, 0)])
    flat = "SELECT id, price FROM flat WHERE family = 'capacitor run' AND load = 'indoor blower' AND low = 115 AND poles = 6 AND size BETWEEN 8 AND 9 " \
           "AND (rotation IS NULL OR rotation <> 'CCW') AND (diameter IS NULL OR diameter <= 0.502) ORDER BY price IS NULL, price, id LIMIT 20"
    plain, _ = once(["sqlite3", "-readonly", f"{folder}/flat.db", flat])
    print(f"{parts} one shot: endbell match {command:.0f} us, {memory:.0f} MB; sqlite3 plain query {plain:.0f} us")

    results = f"{folder}/results.csv"
    many = f"{folder}/many.csv"
    with open(many, encoding="utf-8") as f:
        count = sum(1 for _ in f) - 1
    begin = time.perf_counter()
    subprocess.run([endbell, "--no-config", "--catalog", database, "batch", many, "--out", results], check=True, stdout=subprocess.DEVNULL)
    rate = count / (time.perf_counter() - begin)
    print(f"{parts} batch: {count} different jobs, {rate:.0f} jobs a second")

    def ratio(name, value):
        print(f"ratio {name}-{parts} {value:.2f}")

    ratio("living-over-sqlite-median", times["sqlite"][0] / times["living"][0])
    ratio("living-over-sqlite-p95", times["sqlite"][1] / times["living"][1])
    ratio("living-over-scan-median", times["scan"][0] / times["living"][0])
    ratio("living-over-scan-p95", times["scan"][1] / times["living"][1])
    ratio("first-job-over-sqlite-median", times["sqlite"][0] / times["first"][0])
    ratio("tallies-over-duckdb-median", times["duckdb"][0] / times["tallies"][0])
    ratio("tallies-over-scan-median", times["scan-tallies"][0] / times["tallies"][0])
    ratio("one-shot-over-sqlite3", plain / command)


if __name__ == "__main__":
    main(*sys.argv[1:])
