#!/usr/bin/env python3
"""The files beside a catalog change no byte of any answer: with them, without them, and where none can be made.

usage: tests/cli/side_files.py BUILD_DIR        prints one line a check and, last, "N passed, N failed"
"""
import glob
import os
import shutil
import subprocess
import sys
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
ENDBELL = os.path.abspath(os.path.join(sys.argv[1], "cli", "endbell"))
JOBS = sorted(glob.glob(os.path.join(ROOT, "demo-catalog", "jobs", "*.toml")))
SIDE_FILES = ("shop.db-index", "shop.db-prices", "shop.db-names")


def run(folder, *words):
    done = subprocess.run([ENDBELL, "--no-config", "--catalog", "shop.db", *words], cwd=folder, capture_output=True)
    return done.returncode, done.stdout, done.stderr


def batch(folder):
    """What `batch` writes: every job of the bench, one after the other."""
    jobs = os.path.join(folder, "jobs.csv")
    with open(jobs, "w", encoding="utf-8") as f:
        f.write("tag,plate,unit.load,equipment.supply,controls.source,controls.heat\n")
        for number, horsepower in enumerate(("1/6", "1/5", "1/4", "1/3", "1/2", "3/4", "1")):
            f.write(f"J{number},{horsepower} HP 208-230V 1PH 60HZ 1075RPM CWSE PSC,indoor blower,230,thermostat,heat pump\n")
    code, out, err = run(folder, "batch", jobs, "--out", os.path.join(folder, "results.csv"))
    written = []
    for name in ("results.csv", "results.orders.csv"):
        with open(os.path.join(folder, name), "rb") as f:
            written.append(f.read())
    return code, out, err, written


def answers(folder, before):
    """Every command that asks the catalog, for every demo job; `before` is called before each."""
    said = {}
    for job in JOBS:
        name = os.path.basename(job)
        for words in (("match", job), ("match", "--json", job), ("ask", "--json", job), ("compare", "--json", job), ("sheet", job)):
            before(folder)
            said[f"{' '.join(words[:-1])} {name}"] = run(folder, *words)
    for text in ("EB-5 4410", "8-O5O-Z3O-3R", "1117", "blower motor"):
        before(folder)
        said[f"find {text}"] = run(folder, "find", text)
    before(folder)
    said["batch"] = batch(folder)
    return said


def keep(_):
    pass


def delete(folder):
    for name in SIDE_FILES:
        if os.path.exists(os.path.join(folder, name)):
            os.remove(os.path.join(folder, name))


def stand_in_the_way(folder):
    """A folder of the file's name: nothing can be written there, and the rules answer alone."""
    for name in SIDE_FILES:
        path = os.path.join(folder, name)
        if os.path.isfile(path):
            os.remove(path)
        os.makedirs(path, exist_ok=True)


def main():
    passed = failed = 0
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run([ENDBELL, "--no-config", "catalog", "import", os.path.join(ROOT, "demo-catalog", "tables"), "--into", "shop.db"],
                       cwd=folder, check=True, capture_output=True)
        expected = answers(folder, keep)
        for how, before in (("deleted before each", delete), ("none can be made", stand_in_the_way)):
            for name, answer in answers(folder, before).items():
                same = answer == expected[name]
                passed += same
                failed += not same
                print(f"{'ok  ' if same else 'FAIL'} {name}, side files {how}")
        for name in SIDE_FILES:
            shutil.rmtree(os.path.join(folder, name))
    print(f"{passed} passed, {failed} failed")
    return failed > 0


if __name__ == "__main__":
    sys.exit(main())
