#!/usr/bin/env python3
"""The program from outside: demo jobs and their exit codes, broken input, JSON, same bytes twice.

usage: tests/cli/run.py BUILD_DIR        prints one line a check and, last, "N passed, N failed"
"""
import glob
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
ENDBELL = os.path.abspath(os.path.join(sys.argv[1], "cli", "endbell"))
WORK = tempfile.mkdtemp(prefix="endbell-cli-")
CATALOG = os.path.join(WORK, "demo.db")
JOBS = sorted(glob.glob(os.path.join(ROOT, "demo-catalog", "jobs", "*.toml")))

passed = failed = 0


def check(name, holds, detail=""):
    global passed, failed
    if holds:
        passed += 1
        print("ok   " + name)
    else:
        failed += 1
        print("FAIL " + name + (": " + detail[:400] if detail else ""))


def run(*arguments, stdin=None, env=None):
    environment = {k: v for k, v in os.environ.items() if k != "ENDBELL_CATALOG"}
    environment.update(env or {})
    done = subprocess.run([ENDBELL, *arguments], capture_output=True, input=stdin, env=environment, cwd=WORK)
    return done.returncode, done.stdout.decode("utf-8", "replace"), done.stderr.decode("utf-8", "replace")


def write(name, text):
    path = os.path.join(WORK, name)
    with open(path, "w", encoding="utf-8", newline="") as f:
        f.write(text)
    return path


def demo_copy(name):
    folder = os.path.join(WORK, name)
    shutil.copytree(os.path.join(ROOT, "demo-catalog", "tables"), folder)
    return folder


def expected_exit(job):
    """Each demo job says in its first comment lines which exit code its story ends in."""
    with open(job, encoding="utf-8") as f:
        found = re.search(r"exit(?:\s+code)?[\s:=]+(\d+)", f.read(600))
    return int(found.group(1)) if found else None


def demo_jobs():
    code, out, err = run("catalog", "import", os.path.join(ROOT, "demo-catalog", "tables"), "--into", CATALOG)
    check("the demo catalog imports", code == 0, out + err)
    endings = set()
    for job in JOBS:
        name = os.path.basename(job)
        wanted = expected_exit(job)
        check(f"{name} says how it ends", wanted is not None)
        code, out, err = run("--catalog", CATALOG, "match", job)
        check(f"match {name} ends in {wanted}", code == wanted, f"exit {code}\n{err}{out}")
        endings.add(code)
        code, out, err = run("--catalog", CATALOG, "--json", "match", job)
        try:
            answer = json.loads(out)
            check(f"match --json {name} ends in {wanted}", code == wanted == answer["exit_code"], f"exit {code}")
        except (ValueError, KeyError) as wrong:
            check(f"match --json {name} is a document", False, str(wrong) + err)
        for verb in ("sheet", "compare", "diagnose", "ask"):
            code, out, err = run("--catalog", CATALOG, verb, job)
            check(f"{verb} {name} answers", code in (0, 10, 11, 12) and len(out) > 40 and not err, f"exit {code} {err}")
        again = run("--catalog", CATALOG, "sheet", job)
        check(f"sheet {name} is the same bytes twice", again == run("--catalog", CATALOG, "sheet", job))
    check("the demo jobs end in every kind of answer", endings == {0, 10, 11, 12}, str(endings))


def one_line():
    plate = "1/2 hp 208-230 1075 3spd CCWLE 1/2x5 psc"
    code, out, err = run("--catalog", CATALOG, "match", "--plate", plate)
    check("a plate line alone gets an answer", code in (0, 10, 11) and not err, f"exit {code} {err}")
    code, out, err = run("--catalog", CATALOG, "--json", "match", "--plate", plate)
    check("a plate line alone gets JSON", json.loads(out)["command"] == "match")
    code, out, err = run("match", "--plate", plate, env={"ENDBELL_CATALOG": CATALOG})
    check("the catalog may come from the environment", code in (0, 10, 11), err)


def why():
    job = next(j for j in JOBS if expected_exit(j) == 0)
    code, out, _ = run("--catalog", CATALOG, "--json", "match", job)
    part = json.loads(out)["pick"]
    code, out, err = run("--catalog", CATALOG, "--json", "why", job, part)
    findings = json.loads(out)["candidate"]["findings"]
    rules = json.loads(run("--catalog", CATALOG, "--json", "rules")[1])["rules"]
    check("why has a finding for every rule", {r["rule"] for r in rules} <= {f["rule"] for f in findings})
    check("every finding names its source", all(f["source"] for f in findings),
          str([f["rule"] for f in findings if not f["source"]]))
    code, out, err = run("--catalog", CATALOG, "why", job, part)
    check("why prints them as text", all(r["rule"] in out.replace("\n", "") or r["rule"].split("-")[0] in out for r in rules))
    code, out, err = run("--catalog", CATALOG, "why", job, part[:-1] + "~")
    check("an unknown part is bad data with a near one named", code == 65 and "did you mean" in err, err)


def error(name, code, err, wanted_code, *pieces):
    check(name, code == wanted_code and all(p in err for p in pieces), f"exit {code}: {err}")


def broken_jobs():
    job = next(j for j in JOBS if expected_exit(j) == 0)
    with open(job, encoding="utf-8") as f:
        good = f.read()
    base = ("--catalog", CATALOG, "match")
    code, _, err = run(*base, write("key.toml", '[plate]\nrotatoin = "CCWLE"\n'))
    error("a misspelt key is named with its line and a near one", code, err, 65, "key.toml:2", "rotatoin", "rotation")
    code, _, err = run(*base, write("group.toml", '[palte]\npower = "1/2"\n'))
    error("a misspelt group is named with its line and a near one", code, err, 65, "group.toml:1", "plate")
    code, _, err = run(*base, write("value.toml", '[plate]\npower = "blue"\n'))
    error("an unreadable value is shown with what was expected", code, err, 65, "value.toml:2", "blue", "expected")
    code, _, err = run(*base, write("syntax.toml", '[plate\npower = 1\n'))
    error("a file that is not TOML is named with its line", code, err, 65, "syntax.toml:1")
    code, _, err = run(*base, write("windings.toml", '[measured]\nwindings = ["1", "2", "3", "4"]\n'))
    error("four windings are refused with the line", code, err, 65, "windings.toml:2")
    code, _, err = run(*base, os.path.join(WORK, "nowhere.toml"))
    error("a missing job file is named", code, err, 65, "nowhere.toml")
    code, _, err = run("--catalog", os.path.join(WORK, "nowhere.db"), "match", job)
    error("a missing catalog is named", code, err, 65, "nowhere.db")
    code, _, err = run("--catalog", write("not.db", "this is no database, only text " * 40), "match", job)
    error("a file that is no catalog is refused", code, err, 65, "not.db")
    code, _, err = run("match", job)
    error("no catalog at all is a usage error", code, err, 64, "--catalog")
    code, _, err = run(*base, "--set", "plate.rotatoin=CCWLE", job)
    check("a misspelt --set is a usage or data error with a near one", code in (64, 65) and "rotation" in err, err)
    code, _, err = run("match", "--colour")
    error("an unknown flag is a usage error", code, err, 64)
    code, _, err = run("matsch")
    error("an unknown command is a usage error", code, err, 64)
    check("no job file was touched", good == open(job, encoding="utf-8").read())


def broken_tables():
    before = run("--catalog", CATALOG, "--json", "match", JOBS[0])[1]

    def import_of(name, table, change):
        folder = demo_copy(name)
        path = os.path.join(folder, table)
        with open(path, encoding="utf-8", newline="") as f:
            text = f.read()
        with open(path, "w", encoding="utf-8", newline="") as f:
            f.write(change(text))
        return run("catalog", "import", folder, "--into", CATALOG)

    code, out, err = import_of("header", "motors.csv", lambda t: t.replace("shaft_diameter_in", "shaft_diametr_in", 1))
    error("an unknown column is named with a near one", code, err, 65, "motors.csv", "shaft_diametr_in", "shaft_diameter_in")
    after = run("--catalog", CATALOG, "--json", "match", JOBS[0])[1]
    check("a refused import leaves the catalog as it was", before == after)
    code, out, err = run("catalog", "import", os.path.join(WORK, "no-folder"), "--into", CATALOG)
    error("a missing folder is named", code, err, 65, "no-folder")

    folder = demo_copy("cell")
    path = os.path.join(folder, "motor_ratings.csv")
    lines = open(path, encoding="utf-8").read().splitlines(keepends=True)
    header = lines[0].strip().split(",")
    cells = lines[1].split(",")
    cells[header.index("power_hp")] = "12 parsecs"
    lines[1] = ",".join(cells)
    open(path, "w", encoding="utf-8", newline="").write("".join(lines))
    code, out, err = run("--width", "400", "catalog", "import", folder, "--into", os.path.join(WORK, "cell.db"))
    check("a wrong cell sets its row aside with line, column, value and what was expected",
          all(p in out + err for p in ("motor_ratings.csv:2", "power_hp", "12 parsecs", "expected")), f"exit {code} {out}{err}")


demo_jobs()
one_line()
why()
broken_jobs()
broken_tables()
shutil.rmtree(WORK, ignore_errors=True)
print(f"{passed} passed, {failed} failed")
sys.exit(1 if failed else 0)
