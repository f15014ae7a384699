#!/usr/bin/env python3
"""Runs `endbell diagnose` on every job beside this file and compares what it concludes.

usage: run.py BUILD_FOLDER        prints one line a job and, last, "N passed, N failed"

The first line of a job says what the trade expects, worked out from service manuals and not from the program:
    # expect: fault=module exit=0 missing= decides=windings next=
  fault          the diagnosis' word, quoted where it has blanks
  exit           0; 11 readings are missing; 12 replace nothing; 65 refused
  missing        job keys in the order in which to take them, separated by commas
  cause          a cause of death that must be named
  contradiction  job keys that must be named together
  culprit        what is at fault outside the motor; left out: nothing is named
  decides        the reading that decides: the conclusion stands on it or, where nothing is concluded, a next test takes it
  next           the next five tests, in their order; a bare name is one of [measured]
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
    same("culprit", diagnosis["culprit"], expect.get("culprit"))
    same("next", [n["key"] for n in diagnosis["next"]], keys_of(expect["next"]))
    concluded = diagnosis["fault"] != "not shown yet"
    deciding = [e["key"] for e in diagnosis["evidence"] if e["carries"]] if concluded else [n["key"] for n in diagnosis["next"]]
    (decides,) = keys_of(expect["decides"])
    if not any(decides in key.split(" and ") for key in deciding):
        wrong.append(f"{decides} does not decide: {deciding}")
    classes = ["nothing opened", "power off", "24 V", "live"]
    order = [(classes.index(n["danger"]), n["minutes"]) for n in diagnosis["next"]]
    same("order of danger and minutes", order, sorted(order))
    if len(order) > 5 or any(not n["decides"] or not n["follows"] or not n["source"] for n in diagnosis["next"]):
        wrong.append("a next test too many, or one that does not say what it decides")
    same("contradictions", diagnosis["contradictions"], [expect["contradiction"]] if "contradiction" in expect else [])
    return wrong


def keys_of(names):
    return [name if "." in name else "measured." + name for name in names.split(",") if name]


# A set that one answer could pass would show nothing: how many scenarios there are at least of each kind.
AT_LEAST = {"in all": 80, "not the motor": 20, "contradicting readings": 10}


def kinds_of(expect):
    yield "in all"
    if expect.get("fault") in ("capacitor", "supply", "control signal", "airflow", "wheel", "rotation", "flooded"):
        yield "not the motor"
    if "contradiction" in expect:
        yield "contradicting readings"


def main():
    passed = failed = 0
    counted = dict.fromkeys(AT_LEAST, 0)
    faults = {}
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
                expect = expectation(path)
                for kind in kinds_of(expect):
                    counted[kind] += 1
                faults[expect.get("fault")] = faults.get(expect.get("fault"), 0) + 1
                wrong = differences(expect, *answer)
            except (KeyError, ValueError) as error:
                wrong = [f"{type(error).__name__}: {error}"]
            passed, failed = (passed + 1, failed) if not wrong else (passed, failed + 1)
            print(("FAIL " if wrong else "ok   ") + os.path.basename(path) + "".join("\n     " + line for line in wrong))
    few = [f"{counted[kind]} of {least} {kind}" for kind, least in AT_LEAST.items() if counted[kind] < least]
    if max(faults.values()) * 2 > sum(faults.values()):
        few.append("half of them have one answer: " + str(faults))
    passed, failed = (passed + 1, failed) if not few else (passed, failed + 1)
    print("FAIL too few scenarios: " + "; ".join(few) if few else "ok   scenarios of each kind " + str(counted))
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
