#!/usr/bin/env python3
"""Every example that the help shows runs as it stands, in a folder that holds the files it names.

usage: tests/cli/examples.py BUILD_DIR        prints one line a failure and, last, "N passed, N failed"
"""
import csv
import os
import re
import shutil
import subprocess
import sys
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.path.abspath(sys.argv[1])
WORK = tempfile.mkdtemp(prefix="endbell-examples-")
ENV = {**os.environ, "PATH": os.path.join(BUILD, "cli") + os.pathsep + os.environ["PATH"],
       "ENDBELL_CATALOG": "parts.db"}

passed = failed = 0


def check(name, holds, detail=""):
    global passed, failed
    passed, failed = (passed + 1, failed) if holds else (passed, failed + 1)
    if not holds:
        print("FAIL " + name + ": " + detail[:800])


def shell(command):
    done = subprocess.run(["bash", "-c", command], cwd=WORK, env=ENV, capture_output=True, text=True,
                          stdin=subprocess.DEVNULL)
    return done.returncode, done.stdout, done.stderr


def set_up():
    demo = os.path.join(ROOT, "demo-catalog")
    shutil.copytree(os.path.join(demo, "tables"), os.path.join(WORK, "tables"))
    shutil.copy(os.path.join(demo, "tables", "offers.csv"), WORK)
    shutil.copy(os.path.join(demo, "jobs", "04-wide-bore.toml"), os.path.join(WORK, "job.toml"))
    with open(os.path.join(WORK, "jobs.csv"), "w", newline="", encoding="utf-8") as file:
        csv.writer(file).writerows([["unit.name", "plate"], ["Attic", "1/2 hp 208-230 1075 CCWLE 1/2x5 psc"]])
    with open(os.path.join(WORK, "numbers.txt"), "w", encoding="utf-8") as file:
        file.write("B-050-230-3R\nEB54410\n")
    with open(os.path.join(WORK, "supplier.csv"), "w", newline="", encoding="utf-8") as file:
        csv.writer(file).writerows([["Our no.", "Item", "Brand"], ["B-050-230-3R", "B3-1075-X", "Quillby"]])
    with open(os.path.join(WORK, "supplier.toml"), "w", encoding="utf-8") as file:
        file.write(SUPPLIER_MAP)
    code, out, err = shell("endbell catalog import tables --into parts.db")
    check("the tables import", code == 0, out + err)


SUPPLIER_MAP = '''[tables.parts]
file = "supplier.csv"
[tables.parts.columns]
part_id = "Our no."
part_number = "Item"
maker = "Brand"
kind = { value = "motor" }
'''


def subcommands(help_text):
    section = help_text.partition("Subcommands:\n")[2].partition("\n\n")[0]
    return re.findall(r"^  ([\w-]+)", section, re.M)


def verbs(path=()):
    """Every verb that does something: ("catalog", "import"), from the help itself."""
    code, out, err = shell(" ".join(["endbell", *path, "--help"]))
    check(" ".join(path) + " --help", code == 0 and not err, err)
    below = subcommands(out)
    if not below:
        yield path, out
    for name in below:
        yield from verbs((*path, name))


set_up()
seen = 0
for path, text in verbs():
    examples = re.findall(r"^  (endbell .*)$", text.partition("\nExamples:\n")[2], re.M)
    check(" ".join(path) + " has examples that name it",
          examples and all(" ".join(path) in e for e in examples), text)
    for example in examples:
        code, out, err = shell(example)
        seen += 1
        check(example, code in (0, 10, 11, 12) and not err, f"exit {code} {err}{out}")
check("the help shows examples of every verb", seen >= 15, str(seen))
shutil.rmtree(WORK, ignore_errors=True)
print(f"{passed} passed, {failed} failed")
sys.exit(1 if failed else 0)
