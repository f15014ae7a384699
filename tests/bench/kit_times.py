#!/usr/bin/env python3
"""Choosing a kit from 40 accessories: the engine in process beside a whole run of MiniZinc with Gecode; equal answers.

usage: kit_times.py BUILD_DIR [INSTANCES]      INSTANCES: 40 unless given
Instances, model and comparison are those of tests/outside/kits.py; only the shelf is larger, and there is more than one remedy.
"""
import os
import random
import subprocess
import sys
import tempfile
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.dirname(os.path.abspath(__file__))), "outside"))
import kits  # noqa: E402
from side_by_side import middle_and_late, split  # noqa: E402

ACCESSORIES = 40


def main(build, count=40):
    rng = random.Random(20270103)
    instances = [kits.generate(rng, number, ACCESSORIES, least_needs=2) for number in range(int(count))]
    done = subprocess.run([f"{build}/tests/bench/bench_kits"], input=kits.as_text(instances), capture_output=True, text=True, check=True)
    lines, times = split(done.stdout.splitlines())
    ours = kits.answers_in(lines)
    theirs, took = [], []
    with tempfile.TemporaryDirectory() as folder:
        with open(os.path.join(folder, "kit.mzn"), "w", encoding="utf-8") as f:
            f.write(kits.MODEL)
        for number, case in enumerate(instances):
            begin = time.perf_counter()
            theirs.append(kits.ask_gecode(case, folder, number))
            took.append((time.perf_counter() - begin) * 1e6)
    # The total in minor units, the longest lead and the number of parts; None where no kit can be.
    equal = [answer["best"] for answer in ours] == theirs and all(best is None or kits.covers(*pair) for best, *pair in zip(theirs, instances, ours))
    median, late = times["kits"]
    others, others_late = middle_and_late(took)
    print(f"kits: {len(instances)} of {ACCESSORIES} accessories, ours and MiniZinc {'equal' if equal else 'DIFFERENT'}")
    print(f"kit choice: median {median:.1f} us, p95 {late:.1f} us; MiniZinc median {others:.0f} us, p95 {others_late:.0f} us")
    print(f"ratio kits-over-minizinc-median {others / median:.0f}")
    print(f"ratio kits-over-minizinc-p95 {others_late / late:.0f}")
    return 0 if equal else 1


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
