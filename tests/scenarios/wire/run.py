#!/usr/bin/env python3
"""Wires a part on every scenario and compares the plan with what the trade's tables ask for.

usage: run.py PROGRAM_OR_BUILD_FOLDER [--only TEXT] [--verbose]

A scenario is a folder: `job.toml` (its first comment lines tell the story) and `expected.json`; parts come from `shelf/`.
Expected states, taps and relays were worked out by hand from the thermostat convention's energised sets (the heat-pump
rows from a published thermostat matrix), the airflow of each tap, and the least number of coils that tells the wanted taps apart.
Every plan given is also held to what must be true of any plan (`hold_always`), and is printed once as text.

expected.json, every key but `because`, `part` and `exit` optional:
  because             why
  part                the part to wire
  exit                0 a plan, 10 refused, 11 readings are missing, 65 the job is bad data
  relays              coils of the plan
  alternative_relays  coils of the plan offered beside it
  alternative_refusal why another way is not offered
  condition           what the plan holds under; "" where absent
  states              {state: wanted tap}, 0 for off: exactly the reachable states, each obeyed
  provisional         {tap: what chose it}: exactly the speed leads that no airflow shows to be right
  two_live            states in which more than one tap is live; none where absent
  live                {state: signals live together, sorted}
  made_by             {state: who makes it}, among those of its row
  kept_away           {signals live together: what keeps that row away}
  unshown             {state that no row stands for: what sees to its air}, where nobody has shown it; none where absent
  idle                {terminal: why it commands nothing}: exactly these
  two_live_away       signals of rows that are kept away with more than one tap live; they do not hold
  signals             the plan's signals, sorted
  cautions, no_cautions, checks, no_checks   words that must and must not be there
  wires, no_wires     [from, to] pairs that must and must not be there
  line_coils, line_contacts   of every relay
  settings            {what: done}, also of a refused plan
  refusal, rescues, lacking   why not, what would make it possible, what to ask for
  refused_calls, refused_terminals   that the refusal is about: exactly these
  air                 what the air plan must hold: its calls by name, numbers within 0.1 %, of lists of words these among others
  says_text           what the printed answer must hold
  refused_at, says    for exit 65: the text of the job's line that is named, and what the message holds
"""
import json
import os
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
LINE_PLACES, LOW_PLACES = ("L1", "L2", "N"), ("R", "C")


class Failure(Exception):
    """One expectation that did not hold."""


def same(what, wanted, found):
    if wanted != found:
        raise Failure(f"{what}: wanted {wanted!r}, found {found!r}")


def all_in(what, wanted, found):
    missing = [w for w in wanted if w not in found]
    if missing:
        raise Failure(f"{what}: {missing} not among {found}")


def none_in(what, unwanted, found):
    there = [w for w in unwanted if w in found]
    if there:
        raise Failure(f"{what}: {there} must not be there")


class World:
    """One catalog database, and the program that reads it."""

    def __init__(self, program, folder):
        self.program, self.database = program, os.path.join(folder, "catalog.db")
        code, out, err = self.call("catalog", "import", os.path.join(HERE, "shelf"), "--into", self.database)
        if code != 0:
            raise SystemExit(f"the shelf did not import: exit {code}: {err.strip() or out.strip()}")

    def call(self, *words):
        done = subprocess.run([self.program, *words], capture_output=True, text=True, errors="replace",
                              env={"PATH": os.environ.get("PATH", ""), "LC_ALL": "C.UTF-8"})
        return done.returncode, done.stdout, done.stderr

    def wire(self, job, part, *words):
        return self.call("wire", job, part, "--catalog", self.database, *words)


def holds(where, wanted, found):
    """What is wanted is part of what is found."""
    if isinstance(wanted, dict):
        for key, value in wanted.items():
            if not isinstance(found, dict) or key not in found:
                raise Failure(f"{where}: no {key}")
            holds(f"{where}.{key}", value, found[key])
    elif isinstance(wanted, list) and wanted and isinstance(wanted[0], dict):
        same(f"{where}: how many", len(wanted), len(found))
        for one, other in zip(wanted, found):
            holds(where, one, other)
    elif isinstance(wanted, list):
        all_in(where, wanted, found)
    elif isinstance(wanted, (int, float)) and not isinstance(wanted, bool):
        if found is None or abs(found - wanted) > abs(wanted) * 1e-3:
            raise Failure(f"{where}: wanted {wanted}, found {found}")
    else:
        same(where, wanted, found)


def names(row):
    """A state may have several names: "cool 1 / heat 1"."""
    return row["state"].split(" / ")


def hold_always(plan):
    """What must be true of every plan, whatever the job."""
    same("first check", "lock out", plan["checks"][0])
    for wire in plan["wires"]:
        if wire["from"] == "earth" and wire["note"] != "earth":
            raise Failure(f"{wire}: earth is no conductor of the control")
    if plan["method"] == "plug for plug":  # no tap is chosen, and nothing is simulated by state
        return
    same("proven", True, plan["proven"])
    same("fewest relays", True, plan["fewest_relays"])
    same("states simulated", 2 ** len(plan["signals"]), len(plan["truth"]))
    strict = plan["tap_rule"] != "highest tap wins" and not plan["condition"]
    for row in plan["truth"]:
        where = " ".join(row["signals"]) or "no signal"
        away = row["kept_away_by"]
        same(f"{where}: is reached, or something keeps it away", row["reachable"], not away)
        same(f"{where}: is reached, and somebody makes it", row["reachable"], bool(row["made_by"]))
        if row["holds"] and len(row["live_taps"]) > 1 and plan["tap_rule"] != "highest tap wins":
            raise Failure(f"{where}: holds with taps {row['live_taps']} live")
        if not row["holds"] and not (plan["condition"] and plan["condition"] == away):
            raise Failure(f"{where}: does not hold, and no condition keeps it away")
        if row["reachable"]:
            same(f"{where}: tap obeyed", row["wanted_tap"], row["effective_tap"])
        if strict and len(row["live_taps"]) > 1:
            raise Failure(f"{where}: taps {row['live_taps']} live together")
    for fault in plan["faults"]:
        # No wiring parts coils that have lost what they return to.
        if strict and (fault["two_taps"] or (fault["back_feed"] and fault["kind"] != "lost common")):
            raise Failure(f"{fault['kind']} {fault['where']}: two taps, or one call feeds another")
    if not plan["faults"] or not plan["wires"] or not plan["taps"]:
        raise Failure("faults, wires or taps are missing")
    for wire in plan["wires"]:
        ends = (wire["from"], wire["to"])
        if any(e in LINE_PLACES for e in ends) and any(e in LOW_PLACES for e in ends):
            raise Failure(f"{ends} joins line voltage to 24 V")
    all_in("checks", ["lock out", "absence of voltage", "earth continuous", "rotation", "amps at or below plate"], plan["checks"])


def check_states(expected, plan):
    rows = [(name, row) for row in plan["truth"] if row["reachable"] for name in names(row)]
    if "states" in expected:
        same("states", expected["states"], {name: row["effective_tap"] for name, row in rows})
        two = sorted(name for name, row in rows if len(row["live_taps"]) > 1)
        if plan["tap_rule"] != "highest tap wins" or "two_live" in expected:
            same("states with two live taps", sorted(expected.get("two_live", [])), two)
    for state, maker in expected.get("made_by", {}).items():
        all_in(f"makers of {state}", [maker], [m for name, row in rows if name == state for m in row["made_by"]])
    away = {" ".join(row["signals"]): row for row in plan["truth"] if not row["reachable"]}
    for live, by in expected.get("kept_away", {}).items():
        same(f"what keeps {live} away", by, away[live]["kept_away_by"] if live in away else None)
    same("rows kept away with two taps", sorted(expected.get("two_live_away", [])),
         sorted(live for live, row in away.items() if not row["holds"]))
    for state, live in expected.get("live", {}).items():
        same(f"signals of {state}", [live], [sorted(row["signals"]) for name, row in rows if name == state])


def check_settings(expected, plan):
    done = {s["what"]: s["done"] for s in plan["settings"]}
    for what, wanted in expected.get("settings", {}).items():
        same(f"setting of {what}", wanted, done.get(what))


def check_plan(expected, plan):
    same("possible", True, plan["possible"])
    check_settings(expected, plan)
    hold_always(plan)
    offered = [p for p in plan["alternatives"] if p["possible"]]
    for other in offered:
        same("the other plan is proven", True, other["proven"])
    check_states(expected, plan)
    if "relays" in expected:
        same("relays", expected["relays"], len(plan["relays"]))
    if "alternative_relays" in expected:
        same("relays of the other plan", [expected["alternative_relays"]], [len(p["relays"]) for p in offered])
    if "alternative_refusal" in expected:
        same("refusal of the other way", [expected["alternative_refusal"]], [p["refusal"] for p in plan["alternatives"] if not p["possible"]])
    if "signals" in expected:
        same("signals", expected["signals"], sorted(plan["signals"]))
    same("condition", expected.get("condition", ""), plan["condition"])
    same("provisional", expected.get("provisional", {}), {str(t["tap"]): t["provisional"] for t in plan["taps"] if t["provisional"]})
    unshown = {x["state"]: x["kept_away_by"] for x in plan["kept_away"] if not x["shown"]}
    same("states nobody has shown to be kept away", bool(plan["condition"]), bool(unshown))
    if "unshown" in expected:
        same("states nobody has shown to be kept away", expected["unshown"], unshown)
    if "idle" in expected:
        same("idle terminals", expected["idle"], {x["terminal"]: x["because"] for x in plan["idle_terminals"]})
    wires = [[w["from"], w["to"]] for w in plan["wires"]]
    for what, found in (("cautions", plan["cautions"]), ("checks", plan["checks"]), ("wires", wires)):
        all_in(what, expected.get(what, []), found)
        none_in(what, expected.get("no_" + what, []), found)
    for key, field in (("line_coils", "line_coil"), ("line_contacts", "line_contacts")):
        if key in expected:
            same(key, {expected[key]}, {relay[field] for relay in plan["relays"]})


def check_text(expected, plan, text):
    """The same plan as a person reads it: what holds on a condition says so wherever it says that it is proven."""
    flat = " ".join(text.split())
    if plan["method"] == "plug for plug":
        all_in("text", ["Wiring", "Before and after power-on", "Plug for plug: each pin carries what it carried before"], flat)
    else:
        all_in("text", ["Wiring", "Truth table", "If one thing breaks", "Before and after power-on", "on the part", "two taps live"], flat)
        for p in [plan] + [a for a in plan["alternatives"] if a["possible"]]:
            proof = f"Proven only while {p['condition']}: all" if p["condition"] else "Proven: all"
            all_in("text", [proof], flat)
        if plan["condition"] and not any(not a["condition"] and a["possible"] for a in plan["alternatives"]):
            none_in("text", ["Proven: all"], flat)
    for terminal in plan["idle_terminals"]:
        all_in("text", [f"{terminal['terminal']}: {terminal['because']}"], flat)
    all_in("text", expected.get("says_text", []), flat)
    lines = text.splitlines()
    for wire in plan["wires"]:
        if not any(line.split()[:1] == wire["from"].split()[:1] and wire["to"] in line for line in lines):
            raise Failure(f"text: no line for the wire {wire['from']} to {wire['to']}")
    for relay in plan["relays"]:
        all_in("text", [f"Relay {relay['relay']}: coil from {relay['coil']}"], flat)
    if not plan["relays"] and plan["truth"]:
        all_in("text", ["No isolation relay is needed."], flat)
    if text.count("CAUTION:") < len(plan["cautions"]):
        raise Failure("text: a caution is missing")


def check_refusal(expected, plan, text):
    same("possible", False, plan["possible"])
    same("refusal", expected["refusal"], plan["refusal"])
    check_settings(expected, plan)
    for key in ("rescues", "lacking"):
        all_in(key, expected.get(key, []), plan[key])
    for key in ("refused_calls", "refused_terminals"):
        if key in expected:
            same(key, expected[key], plan[key])
    named = plan["refused_calls"] + plan["refused_terminals"]
    all_in("text", ["No wiring is given:", *named, *expected.get("says_text", [])], " ".join(text.split()))


def check_bad_data(expected, job, said):
    with open(job, encoding="utf-8") as f:
        lines = f.read().splitlines()
    number = next(i for i, line in enumerate(lines, 1) if line.startswith(expected["refused_at"]))
    all_in("message", [f"job.toml:{number}:", *expected["says"]], said)


def check(world, folder):
    with open(os.path.join(folder, "expected.json"), encoding="utf-8") as f:
        expected = json.load(f)
    job = os.path.join(folder, "job.toml")
    code, out, err = world.wire(job, expected["part"], "--json")
    same(f"exit code ({err.strip()[:200]})", expected["exit"], code)
    if code == 65:
        return check_bad_data(expected, job, err)
    option = json.loads(out)["option"]
    plan, air = option["wiring"], option["air"]
    holds("air", expected.get("air", {}), {**air, "calls": {c["call"]: c for c in air["calls"]}})
    _, text, _ = world.wire(job, expected["part"], "--width", "160")
    if code == 0:
        check_plan(expected, plan)
        check_text(expected, plan, text)
    else:
        check_refusal(expected, plan, text)


def main(argv):
    if not argv or argv[0].startswith("-"):
        print(__doc__.split("\n\n")[1], file=sys.stderr)
        return 64
    program = os.path.abspath(argv[0])
    for below in ("cli/endbell", "endbell"):
        if os.path.isfile(os.path.join(program, below)):
            program = os.path.join(program, below)
    only = argv[argv.index("--only") + 1] if "--only" in argv else ""
    scenarios = sorted(n for n in os.listdir(HERE) if os.path.exists(os.path.join(HERE, n, "expected.json")))
    passed = failed = 0
    with tempfile.TemporaryDirectory(prefix="wire-") as folder:
        world = World(program, folder)
        for name in scenarios:
            if only not in name:
                continue
            try:
                check(world, os.path.join(HERE, name))
                passed += 1
                if "--verbose" in argv:
                    print(f"ok   {name}")
            except (Failure, subprocess.TimeoutExpired, KeyError, ValueError) as problem:
                failed += 1
                print(f"FAIL {name}: {problem if not isinstance(problem, KeyError) else f'no {problem} in the answer'}")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
