#!/usr/bin/env python3
"""Runs `endbell diagnose` on every job beside this file and compares what it concludes.

usage: run.py BUILD_FOLDER        prints one line a job and, last, "N passed, N failed"

The first line of a job says what the trade expects, worked out from service manuals and not from the program:
    # expect: fault=module exit=0 missing=
  fault          the diagnosis' word, quoted where it has blanks
  exit           0; 11 readings are missing; 12 replace nothing; 65 refused
  missing        job keys in the order in which to take them, separated by commas
  cause          a cause of death that must be named
  contradiction  job keys that must be named together
  names          a word that a refusal must name
"""
import glob
import json
import os
import shlex
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(os.path.dirname(HERE)))
PROGRAM = os.path.join(os.path.abspath(sys.argv[1]), "cli", "endbell")


def run(*arguments):
    done = subprocess.run([PROGRAM, *arguments], capture_output=True)
    return done.returncode, done.stdout.decode("utf-8"), done.stderr.decode("utf-8")


def expectation(path):
    with open(path, encoding="utf-8") as file:
        first = file.readline()
    mark = "# expect:"
    if not first.startswith(mark):
        raise ValueError("the first line has no expectation")
    return dict(word.split("=", 1) for word in shlex.split(first[len(mark):]))


def differences(expect, code, out, err):
    """What the program said otherwise than expected, one line each."""
    wrong = []

    def same(what, found, wanted):
        if found != wanted:
            wrong.append(f"{what}: {found!r}, expected {wanted!r}")

    same("exit", code, int(expect["exit"]))
    if expect["exit"] == "65":
        if expect["names"] not in err:
            wrong.append(f"the refusal does not name {expect['names']}: {err.strip()!r}")
        if out and set(json.loads(out)) != {"format", "command", "stamp", "exit_code", "problems"}:
            wrong.append("a refusal printed a result")
        return wrong
    diagnosis = json.loads(out)["diagnosis"]
    same("fault", diagnosis["fault"], expect["fault"])
    same("missing", ",".join(m["key"] for m in diagnosis["missing"]), expect["missing"])
    if "cause" in expect and expect["cause"] not in [c["cause"] for c in diagnosis["causes"]]:
        wrong.append(f"cause {expect['cause']!r} is not named: {diagnosis['causes']}")
    same("contradictions", diagnosis["contradictions"], [expect["contradiction"]] if "contradiction" in expect else [])
    return wrong


def main():
    passed = failed = 0
    with tempfile.TemporaryDirectory(prefix="endbell-diagnose-") as work:
        catalog = os.path.join(work, "catalog.db")
        # Any catalog will do: a diagnosis asks it for the limits in force only.
        code, _, err = run("catalog", "import", os.path.join(ROOT, "demo-catalog", "tables"), "--into", catalog)
        if code != 0:
            print("the demonstration catalog was not imported: " + err)
            print("0 passed, 1 failed")
            return 1
        for path in sorted(glob.glob(os.path.join(HERE, "*.toml"))):
            try:
                answer = run("diagnose", path, "--catalog", catalog, "--json")
                wrong = differences(expectation(path), *answer)
            except (KeyError, ValueError) as error:
                wrong = [f"{type(error).__name__}: {error}"]
            passed, failed = (passed + 1, failed) if not wrong else (passed, failed + 1)
            print(("FAIL " if wrong else "ok   ") + os.path.basename(path) + "".join("\n     " + line for line in wrong))
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
