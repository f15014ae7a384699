#!/usr/bin/env python3
"""Ctrl-C at many stages of an import and of a batch: nothing is half done, nothing is left behind, exit 130.

usage: tests/cli/interrupt.py BUILD_DIR [--full]      20 tries each, or 100; last line: "N passed, N failed"
"""
import csv
import json
import os
import shutil
import signal
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path[:0] = [HERE, os.path.join(os.path.dirname(HERE), "catalog")]
from tools import Shown, write_tables  # noqa: E402
from workshop import Count, Workshop  # noqa: E402

TRIES = 100 if "--full" in sys.argv else 20
SIGNALS = ((signal.SIGINT, 130), (signal.SIGTERM, 143), (signal.SIGHUP, 129))
count = Count()
shop = Workshop(sys.argv[1])


def digest(path):
    code, out, _ = shop.run("--json", "catalog", "check", path)
    return json.loads(out)["stamp"] if code == 0 else "none"


def begun(words, held=False):
    return Shown([shop.program, *words], held, cwd=shop.home, env=shop.environment)


def sweep(name, words, prepare, whole):
    """`whole(stopped)` says whether the folder is as it should be."""
    def ended(what, program, sent, said):
        code, out, shown = program.end(sent)
        # Before the program has begun to heed signals, one ends it as it ends any program.
        stopped = sent is not None and code in (said, -sent)
        left = {f for f in set(os.listdir(shop.home)) - before if f.endswith(".part") or "importing" in f}
        count.check(f"{name}, {what}: exit {code}", stopped or code == 0, shown)
        count.check(f"{name}, {what}: nothing is left behind", not left, left)
        count.check(f"{name}, {what}: {'the old' if stopped else 'the new'}, whole", whole(stopped))
        if code == said:
            count.check(f"{name}, {what}: says that it was stopped, and nothing on stdout", "stopped" in shown and not out, shown + out)
        return code

    prepare()
    before = set(os.listdir(shop.home))
    alone = begun(words)
    count.check(f"{name}: alone it is done", ended("alone", alone, None, None) == 0)
    lines = alone.seen.count(b"\x1b[K")

    for sent, said in SIGNALS:  # the work has begun, and its terminal does not let it end
        prepare()
        before = set(os.listdir(shop.home))
        program = begun(words, held=True)
        program.wait_until_it_heeds(sent)
        count.check(f"{name}: {sent.name} at work stops it", ended(f"{sent.name} at work", program, sent, said) == said)

    seen = {"stopped": 0, "done": 0}
    for i in range(TRIES):  # at each stage; whether the signal still comes in time is not ours to say
        prepare()
        before = set(os.listdir(shop.home))
        sent, said = SIGNALS[i % len(SIGNALS)]
        program = begun(words)
        program.wait_until_shown(lines * i // TRIES)
        code = ended(f"try {i}", program, sent, said)
        seen["done" if code == 0 else "stopped"] += 1
    print(name, seen, f"{lines} lines of progress")


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

BATCH = 2000  # jobs: four lots, after each of which the program shows how far it is

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
