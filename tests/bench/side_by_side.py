#!/usr/bin/env python3
"""One size: the same questions to ours, SQLite, DuckDB, a plain scan and the sqlite3 command line; answers must be equal.

usage: side_by_side.py BUILD_DIR FOLDER NPM_FOLDER
"""
import csv
import hashlib
import itertools
import json
import os
import re
import statistics
import subprocess
import sys
import time

from sqlite_peer import question


def output_of(words, **more):
    return subprocess.run(words, check=True, capture_output=True, text=True, **more).stdout.splitlines()


def split(lines):
    """The answers; and {what was timed: (median, 95th percentile), another figure: its number}."""
    times = {}
    for line in lines:
        if found := re.fullmatch(r"figure (.+) ([\d.]+)", line):
            times[found[1]] = float(found[2])
        if found := re.fullmatch(r"time (.+) ([\d.]+) ([\d.]+)", line):
            times[found[1]] = (float(found[2]), float(found[3]))
    answers = [line.strip() for line in lines if not line.startswith(("time ", "figure ", "carried "))]
    return answers, times


def digest(answers):
    return hashlib.sha256("\n".join(answers).encode()).hexdigest()[:16]


def run_once(words):
    """Wall time of a whole process, in microseconds."""
    begin = time.perf_counter()
    code = subprocess.run(words, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False).returncode
    took = (time.perf_counter() - begin) * 1e6
    if code >= 64:  # below, it says what the answer was
        raise SystemExit(f"{words[0]} ended with {code}")
    return took


def peak_memory(words):
    """Of a process, in MB: started by a small one, since a child is charged with what its parent held."""
    starter = "import resource,subprocess,sys;subprocess.run(sys.argv[1:],stdout=subprocess.DEVNULL);print(resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss)"
    return int(output_of([sys.executable, "-S", "-c", starter, *words])[0]) / 1024


def job_words(row):
    """A row of jobs.csv as --set words."""
    return [word for key, value in row.items() if key != "job" and value for word in ("--set", f"{key}={value}")]


def middle_and_late(times):
    ordered = sorted(times)
    return statistics.median(ordered), ordered[len(ordered) * 95 // 100]


def one_shots(folder, ours, jobs=20, rounds=5):
    """The first jobs, each answered by a new process: ours and sqlite3 in turn. Their times, and the most memory of ours."""
    with open(f"{folder}/jobs.csv", encoding="utf-8", newline="") as f:
        rows = list(itertools.islice(csv.DictReader(f), jobs))
    with open(f"{folder}/questions.json", encoding="utf-8") as f:
        asked = json.load(f)["questions"]
    pairs = [([*ours, *job_words(row)], ["sqlite3", "-readonly", f"{folder}/flat.db", question(fails)]) for row, fails in zip(rows, asked)]
    times = ([[] for _ in pairs], [[] for _ in pairs])
    for _ in range(rounds):
        for number, pair in enumerate(pairs):
            for side, words in zip(times, pair):
                side[number].append(run_once(words))
    medians = [middle_and_late([statistics.median(t) for t in side]) for side in times]
    return *medians, max(peak_memory(words) for words, _ in pairs)


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
        equal = all(answers == ours[:len(answers)] for answers in others.values())
        print(f"{parts} {what}: ours {digest(ours)}, {said}: {'equal' if equal else 'DIFFERENT'}")

    compare("living", answers_of([measure, "living", database, jobs]), {
        "SQLite": answers_of(["python3", "tests/bench/sqlite_peer.py", folder]),
        "scan": answers_of([scan, "living", folder])})
    peers = {"scan": answers_of([scan, "tallies", folder])}
    if int(parts) < 5000000:  # all jobs would take it ten minutes at a million parts, and an hour at five
        some = ["40"] if int(parts) >= 1000000 else []
        peers["DuckDB"] = answers_of(["node", "duckdb_peer.mjs", os.path.abspath(folder), *some], cwd=npm)
    compare("tallies", answers_of([measure, "tallies", database, jobs]), peers)
    answers_of([measure, "select", database, jobs])
    memory, bandwidth = times.pop("memory"), times.pop("bandwidth")
    for name, (median, late) in times.items():
        print(f"{parts} {name}: median {median:.0f} us, p95 {late:.0f} us")

    index = os.path.getsize(f"{database}-index")
    print(f"{parts} memory: {memory / 1e6:.0f} MB at most for living; the index file is {index / 1e6:.1f} MB")
    print(f"{parts} tallies: memory is read at {bandwidth / 1e9:.1f} GB/s, the whole index in {index / bandwidth * 1e6:.0f} us; median {times['tallies'][0]:.0f} us")

    ours, plain, most = one_shots(folder, [endbell, "--no-config", "--catalog", database, "match", "--top", "20"])
    print(f"{parts} one shot: endbell match {ours[0]:.0f} us, p95 {ours[1]:.0f} us, {most:.0f} MB; sqlite3 {plain[0]:.0f} us, p95 {plain[1]:.0f} us")

    results = f"{folder}/results.csv"
    many = f"{folder}/many.csv"
    with open(many, encoding="utf-8") as f:
        count = sum(1 for _ in f) - 1
    begin = time.perf_counter()
    subprocess.run([endbell, "--no-config", "--catalog", database, "batch", many, "--out", results], check=True, stdout=subprocess.DEVNULL)
    rate = count / (time.perf_counter() - begin)
    print(f"{parts} batch: {count} different jobs, {rate:.0f} jobs a second")

    with open(f"{folder}/times.json", "w", encoding="utf-8") as f:  # for growth.py
        json.dump({name: times[name] for name in ("living", "tallies", "select", "picks")} | {"batch": [1e6 / rate]}, f)

    def ratio(name, value):
        print(f"ratio {name}-{parts} {value:.2f}")

    ratio("living-over-sqlite-median", times["sqlite"][0] / times["living"][0])
    ratio("living-over-sqlite-p95", times["sqlite"][1] / times["living"][1])
    ratio("living-over-scan-median", times["scan"][0] / times["living"][0])
    ratio("living-over-scan-p95", times["scan"][1] / times["living"][1])
    ratio("first-job-over-sqlite-median", times["sqlite"][0] / times["first"][0])
    if "duckdb" in times:
        ratio("tallies-over-duckdb-median", times["duckdb"][0] / times["tallies"][0])
    ratio("tallies-over-scan-median", times["scan-tallies"][0] / times["tallies"][0])
    ratio("one-shot-over-sqlite3-median", plain[0] / ours[0])
    ratio("one-shot-over-sqlite3-p95", plain[1] / ours[1])


if __name__ == "__main__":
    main(*sys.argv[1:])
