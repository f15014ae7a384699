#!/usr/bin/env python3
"""Runs the program on every scenario and compares its answer with what the trade expects.

usage: run.py PROGRAM_OR_BUILD_FOLDER [--only TEXT] [--keep DIR] [--verbose]

A scenario is a folder: `job.toml` (its first comment lines tell the story) and `expected.json`. Parts come from `shelf/`,
one CSV a table; `"shelf": ["psc-same", ...]` in expected.json lays out only those (and their rows), so that each scenario has
a world of its own. Expected answers were worked out from the trade's rules, not from the program's output.
The jobs of demo-catalog/ are run too, on its whole catalog: each names its exit code in its first lines.

expected.json, every key but `because` optional:
  because   why the trade expects this, with the rule or table it rests on
  shelf     part ids laid out; all when absent
  exit      0, 10, 11 or 12
  pick      part id, or null for none
  fault     the diagnosis' word
  proven    true: the motor half of a two-piece motor is shown to be good
  asks      job keys that must be among the questions; a list inside means any one of them
  named     part ids that cross references name for the equipment's model
  kit       part ids that the pick's kit buys, in any order
  work      labour tasks that must be in the pick's kit
  uncured   true: some option was left with a remedy that nothing cures
  taps      {call: tap} of the pick's air plan
  effective true: in the pick's wiring every reachable state holds and the plan is proven
  relays    number of relays in the pick's wiring
  repair    what is bought instead of a motor: its cure, parts, landing, asks, may_ask, complete; other, the parts of the other
            way, or null where there is none
  verdicts  {part: verdict or [any of these]}: the part's own verdict, before the kit
  findings  {part: {rule: verdict or [any of these]}}; a verdict ending in "!" must be a caution
"""
import csv
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
SHELF = os.path.join(HERE, "shelf")
DEMO = os.path.join(HERE, "..", "..", "demo-catalog")
# Tables without a part belong to the shop and are laid out whole.
WHOLE = ("labour_tasks", "limits")


class Failure(Exception):
    """One expectation that did not hold."""


def lay_out(shelf, parts, into):
    """The shelf's tables, or only the rows of `parts`."""
    for name in sorted(os.listdir(shelf)):
        if not name.endswith(".csv"):
            continue
        with open(os.path.join(shelf, name), newline="", encoding="utf-8") as source:
            rows = list(csv.reader(source))
        if parts is not None and name[:-4] not in WHOLE:
            column = rows[0].index("part_id")
            rows = rows[:1] + [row for row in rows[1:] if row[column] in parts]
        with open(os.path.join(into, name), "w", newline="", encoding="utf-8") as target:
            csv.writer(target, lineterminator="\n").writerows(rows)


class World:
    """One catalog database, and the program that reads it."""

    def __init__(self, program, parts, folder, shelf=SHELF):
        self.program, self.database = program, os.path.join(folder, "catalog.db")
        lay_out(shelf, parts, folder)
        code, out, err = self.call("catalog", "import", folder, "--into", self.database)
        if code != 0:
            raise Failure(f"the shelf did not import: exit {code}: {err.strip() or out.strip()}")

    def call(self, *words):
        done = subprocess.run([self.program, *words], capture_output=True, text=True, errors="replace",
                              env={"PATH": os.environ.get("PATH", ""), "LC_ALL": "C.UTF-8"})
        return done.returncode, done.stdout, done.stderr

    def ask(self, *words):
        """Exit code and JSON document."""
        code, out, err = self.call(*words, "--catalog", self.database, "--json")
        try:
            return code, json.loads(out)
        except ValueError:
            raise Failure(f"{' '.join(words[:1])}: exit {code}, no JSON: {(err or out).strip()[:400]}")


def same(what, wanted, found):
    if wanted != found:
        raise Failure(f"{what}: wanted {wanted!r}, found {found!r}")


def one_of(what, wanted, found):
    allowed = wanted if isinstance(wanted, list) else [wanted]
    if found not in allowed:
        raise Failure(f"{what}: wanted {' or '.join(map(str, allowed))}, found {found}")


def option_of(answer, part):
    for option in answer["options"]:
        if option["part"] == part:
            return option
    raise Failure(f"{part} is not among the options")


def check_questions(expected, answer):
    asked = [q["key"] for q in answer["questions"]]
    for key in expected.get("asks", []):
        keys = key if isinstance(key, list) else [key]
        if not any(k in asked for k in keys):
            raise Failure(f"asks: wanted {' or '.join(keys)} among {asked}")


def check_named(expected, answer):
    if "named" in expected:
        same("named for the model", sorted(expected["named"]), sorted(c["part"] for c in answer.get("named_for_model", [])))


def check_pick(expected, answer):
    option = option_of(answer, expected["pick"])
    if "kit" in expected:
        same("kit", sorted(expected["kit"]), sorted(p["part"] for p in option["kit"]["parts"]))
    done = [w["task"] for w in option["kit"]["work"]]
    for task in expected.get("work", []):
        if task not in done:
            raise Failure(f"work: wanted {task} among {done}")
    calls = {c["call"]: c["tap"] for c in option["air"]["calls"]}
    for call, tap in expected.get("taps", {}).items():
        one_of(f"tap for {call}", tap, calls.get(call))
    if "relays" in expected:
        same("relays", expected["relays"], len(option["wiring"]["relays"]))
    if expected.get("effective"):
        same("wiring proven", True, option["wiring"]["proven"])
        broken = [row["state"] for row in option["wiring"]["truth"] if row["reachable"] and not row["holds"]]
        same("states that do not hold", [], broken)


def check_repair(expected, repair):
    if repair is None:
        raise Failure("repair: none in the answer")
    parts = lambda kit: None if kit is None else sorted(p["part"] for p in kit["parts"])
    found = {**repair, "parts": parts(repair), "other": parts(repair["other"])}
    for key, wanted in {"complete": True, **expected}.items():
        same(f"repair: {key}", wanted, found[key])


def check_part(world, job, part, expected, verdict):
    _, answer = world.ask("why", job, part)
    candidate = answer["candidate"]
    found = {f["rule"]: f for f in candidate["findings"]}
    if verdict is not None:
        one_of(f"{part}: verdict", verdict, candidate["verdict"])
    for rule, wanted in expected.items():
        if rule not in found:
            raise Failure(f"{part}: no finding of rule {rule} among {sorted(found)}")
        words = wanted if isinstance(wanted, list) else [wanted]
        verdict_word, caution = found[rule]["verdict"], found[rule]["caution"]
        if verdict_word not in words and not (caution and verdict_word + "!" in words):
            raise Failure(f"{part}: {rule}: wanted {' or '.join(words)}, found {verdict_word}{'!' if caution else ''} ({found[rule]['reason']})")


def check(program, folder, keep):
    """Every expectation of one scenario; raises Failure at the first that does not hold."""
    with open(os.path.join(folder, "expected.json"), encoding="utf-8") as f:
        expected = json.load(f)
    job = os.path.join(folder, "job.toml")
    place = os.path.join(keep, os.path.basename(folder)) if keep else tempfile.mkdtemp(prefix="scenario-")
    os.makedirs(place, exist_ok=True)
    try:
        world = World(program, expected.get("shelf"), place)
        code, answer = world.ask("match", job, "--top", "1000")
        if "exit" in expected:
            same("exit code", expected["exit"], code)
        same("exit code under --json", code, answer["exit_code"])
        if "pick" in expected:
            same("pick", expected["pick"], answer["pick"])
        if "fault" in expected:
            one_of("fault", expected["fault"], answer["diagnosis"]["fault"])
        if "proven" in expected:
            same("motor half proven good", expected["proven"], answer["diagnosis"]["motor_half_proven_good"])
        check_questions(expected, answer)
        check_named(expected, answer)
        if "repair" in expected:
            check_repair(expected["repair"], answer["repair"])
        if expected.get("pick"):
            check_pick(expected, answer)
        if "uncured" in expected:
            left = answer["options"] + answer.get("stopped", [])
            same("something left uncured", expected["uncured"], any(o["kit"]["uncured"] for o in left))
        findings, verdicts = expected.get("findings", {}), expected.get("verdicts", {})
        for part in sorted(set(findings) | set(verdicts)):
            check_part(world, job, part, findings.get(part, {}), verdicts.get(part))
    finally:
        if not keep:
            shutil.rmtree(place, ignore_errors=True)


def demo_jobs(program, folder):
    """Yields each demonstration job with the function that checks its exit code, as text and as JSON."""
    world = World(program, None, folder, os.path.join(DEMO, "tables"))
    for name in sorted(os.listdir(os.path.join(DEMO, "jobs"))):
        job = os.path.join(DEMO, "jobs", name)

        def check_job(job=job):
            with open(job, encoding="utf-8") as f:
                story = "".join(line for line in f if line.startswith("#"))
            wanted = int(re.search(r"Expect exit (\d+)", story).group(1))
            same("exit code", wanted, world.call("match", job, "--catalog", world.database)[0])
            code, answer = world.ask("match", job)
            same("exit code with --json", wanted, code)
            same("exit_code in the document", wanted, answer["exit_code"])
            if wanted in (10, 11):
                same("pick", None, answer["pick"])

        yield "demo-catalog/jobs/" + name, check_job


def main(argv):
    if not argv or argv[0].startswith("-"):
        print(__doc__.split("\n\n")[1], file=sys.stderr)
        return 64
    program = os.path.abspath(argv[0])
    for below in ("cli/endbell", "endbell"):
        if os.path.isfile(os.path.join(program, below)):
            program = os.path.join(program, below)
    value = lambda flag: argv[argv.index(flag) + 1] if flag in argv else None
    only, keep = value("--only"), value("--keep")
    names = sorted(n for n in os.listdir(HERE) if os.path.exists(os.path.join(HERE, n, "expected.json")))
    cases = [(name, lambda name=name: check(program, os.path.join(HERE, name), keep)) for name in names]
    passed = failed = 0
    with tempfile.TemporaryDirectory(prefix="demo-") as folder:
        cases += demo_jobs(program, folder)
        for name, run in cases:
            if only and only not in name:
                continue
            try:
                run()
                passed += 1
                if "--verbose" in argv:
                    print(f"ok   {name}")
            except (Failure, subprocess.TimeoutExpired, KeyError) as problem:
                failed += 1
                print(f"FAIL {name}: {problem if not isinstance(problem, KeyError) else f'no {problem} in the answer'}")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
