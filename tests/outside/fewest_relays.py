#!/usr/bin/env python3
"""The number of isolation relays against MiniZinc on generated state tables of two to six signals.

usage: tests/outside/fewest_relays.py BUILD_DIR [COUNT]      last line: "N passed, N failed"
"""
import os
import random
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor

HERE = os.path.dirname(os.path.abspath(__file__))
PROBE = os.path.join(os.path.abspath(sys.argv[1]), "tests", "probe_relays")
MODEL = os.path.join(HERE, "fewest_relays.mzn")
COUNT = int(sys.argv[2]) if len(sys.argv) > 2 and sys.argv[2].isdigit() else 160


def table(chance, number):
    """Wishes for some states. Half are priority lists, as real controls are: the highest live signal decides."""
    signals = 2 + number % 5
    taps = chance.randint(2, 5)
    own = [chance.randint(0, taps) for _ in range(signals)]
    priority = chance.random() < 0.5
    share = chance.choice([0.15, 0.35, 0.6])
    wanted = [-1] * 2**signals
    for state in range(1, 2**signals):
        if chance.random() < share:
            top = max(s for s in range(signals) if state >> s & 1)
            wanted[state] = own[top] if priority else chance.randint(0, taps)
    wanted[0] = 0
    must_run = 2 ** chance.randrange(signals) if chance.random() < 0.3 else 0
    feed = int(chance.random() < 0.8)
    return {"one_tap": number // 5 % 2, "supply": 1, "feed": feed, "signals": signals, "taps": taps,
            "must_run": must_run, "wanted": wanted}


def ours(tables):
    keys = ("one_tap", "supply", "feed", "signals", "taps", "must_run")
    text = "".join(" ".join(str(t[k]) for k in keys) + " " + " ".join(map(str, t["wanted"])) + "\n" for t in tables)
    out = subprocess.run([PROBE], input=text, capture_output=True, text=True, check=True).stdout
    return [int(line) for line in out.split()]


def solved(t):
    """MiniZinc's minimum; -1 where it proves that there is none."""
    data = "".join(f"{k}={str(bool(t[k])).lower()};" for k in ("one_tap", "supply", "feed"))
    data += f"signals={t['signals']};taps={t['taps']};must_run={t['must_run']};"
    data += f"wanted=array1d(0..{len(t['wanted']) - 1},{t['wanted']});"
    with tempfile.NamedTemporaryFile("w", suffix=".dzn") as file:
        file.write(data)
        file.flush()
        out = subprocess.run(["minizinc", "--solver", "gecode", MODEL, file.name], capture_output=True, text=True,
                             check=True)
    if "UNSATISFIABLE" in out.stdout:
        return -1
    if "==========" not in out.stdout:
        raise RuntimeError("the solver did not prove its answer: " + out.stdout + out.stderr)
    return int([line for line in out.stdout.splitlines() if line.startswith("coils ")][-1].split()[1])


def main():
    chance = random.Random(20)
    tables = [table(chance, i) for i in range(COUNT)]
    counts = ours(tables)
    with ThreadPoolExecutor(max_workers=2) as pool:
        minima = list(pool.map(solved, tables))
    failed = 0
    for t, count, minimum in zip(tables, counts, minima):
        if count != minimum:
            failed += 1
            print("differs: ours", count, "minimum", minimum, t)
    print(f"{len(tables) - failed} passed, {failed} failed")
    return failed != 0


if __name__ == "__main__":
    sys.exit(main())
