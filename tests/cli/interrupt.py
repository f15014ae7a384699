#!/usr/bin/env python3
"""Ctrl-C at many moments of an import and of a batch: nothing is half done, nothing is left behind, exit 130.

usage: tests/cli/interrupt.py BUILD_DIR [--full]      20 tries each, or 100; last line: "N passed, N failed"
"""
import csv
import json
import os
import random
import shutil
import signal
import subprocess
import sys
import time

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path[:0] = [HERE, os.path.join(os.path.dirname(HERE), "catalog")]
from tools import write_tables  # noqa: E402
from workshop import Count, Workshop  # noqa: E402

TRIES = 100 if "--full" in sys.argv else 20
count = Count()
shop = Workshop(sys.argv[1])
chance = random.Random(20260120)


def digest(path):
    code, out, _ = shop.run("--json", "catalog", "check", path)
    return json.loads(out)["stamp"] if code == 0 else "none"


def stopped_after(words, seconds, sent):
    program = subprocess.Popen([shop.program, *words], cwd=shop.home, env=shop.environment, stdout=subprocess.PIPE,
                               stderr=subprocess.PIPE)
    time.sleep(seconds)
    program.send_signal(sent)
    asked = time.monotonic()
    out, err = program.communicate()
    return program.returncode, out.decode(), err.decode(), time.monotonic() - asked


def timed(words):
    began = time.monotonic()
    code, out, err = shop.run(*words)
    assert code in (0, 65), out + err
    return time.monotonic() - began


def sweep(name, words, prepare, whole):
    """`whole(stopped)` says whether the folder is as it should be."""
    prepare()
    long = timed(words)
    seen = {"stopped": 0, "done": 0}
    slowest = 0
    for i in range(TRIES):
        prepare()
        before = set(os.listdir(shop.home))
        sent, said = ((signal.SIGINT, 130), (signal.SIGTERM, 143))[i % 2]
        share = 0.02 + 1.5 * i / TRIES * chance.uniform(0.9, 1.1) if i + 1 < TRIES else 5  # the last comes too late
        code, out, err, wait = stopped_after(words, long * share, sent)
        # Before the program has begun to heed signals, one ends it as it ends any program.
        stopped = code in (said, -sent)
        seen["stopped" if stopped else "done"] += 1
        slowest = max(slowest, wait)
        left = {f for f in set(os.listdir(shop.home)) - before if f.endswith(".part") or "importing" in f}
        count.check(f"{name}, try {i}: exit {code}", stopped or code == 0, err)
        count.check(f"{name}, try {i}: nothing is left behind", not left, left)
        count.check(f"{name}, try {i}: {'the old' if stopped else 'the new'}, whole", whole(stopped))
        if code == said:
            count.check(f"{name}, try {i}: says that it was stopped, and nothing on stdout", "stopped" in err and not out, err + out)
    count.check(f"{name}: some were stopped, some were done", min(seen.values()) > 0, seen)
    count.check(f"{name}: it stops at once", slowest < 3, slowest)
    print(name, seen, f"{long:.2f} s alone, at most {slowest:.2f} s to stop")


# -- an import over an older generation

write_tables(shop.path("old"), 4000, seed=1)
write_tables(shop.path("new"), 4000, seed=2)
shop.run("catalog", "import", shop.path("old"), "--into", shop.path("kept.db"))
old = digest(shop.path("kept.db"))


def fresh_catalog():
    for name in os.listdir(shop.home):
        if name.startswith("shop.db"):
            os.remove(shop.path(name))
    shutil.copy(shop.path("kept.db"), shop.path("shop.db"))


IMPORT = ("catalog", "import", shop.path("new"), "--into", shop.path("shop.db"))
fresh_catalog()
shop.run(*IMPORT)
new = digest(shop.path("shop.db"))
sweep("import", IMPORT, fresh_catalog, lambda stopped: digest(shop.path("shop.db")) in ((old, new) if stopped else (new,)))

# -- a batch over older results

BATCH = 2000  # jobs: enough that a signal meets the work, not only the program's start and end

with open(shop.path("jobs.csv"), "w", newline="", encoding="utf-8") as file:
    csv.writer(file).writerows([["tag", "plate"]] + [[f"t{i}", "1/2 hp 208-230 1075 3spd CCWLE 1/2x5 psc"] for i in range(BATCH)])
OLD = "what was there before\n"


def old_results():
    shop.write("results.csv", OLD)
    shop.write("results.orders.csv", OLD)


def results_whole(stopped):
    with open(shop.path("results.csv"), encoding="utf-8") as results, open(shop.path("results.orders.csv"), encoding="utf-8") as orders:
        texts = results.read(), orders.read()
    fresh = texts[0].count("\n") == BATCH + 1 and texts[1].startswith("seller,")
    return fresh or (stopped and texts == (OLD, OLD))


sweep("batch", ("--catalog", shop.catalog, "batch", "jobs.csv", "--out", "results.csv"), old_results, results_whole)

shop.close()
sys.exit(count.close())
