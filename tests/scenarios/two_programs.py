#!/usr/bin/env python3
"""What another program answers otherwise: every job of the demo catalog and of all scenarios, by both programs.

usage: two_programs.py BEFORE AFTER [--jobs TREE] [--each]

BEFORE and AFTER are programs or build folders. Jobs and shelves are those of this tree, or of TREE (an older checkout).
Every job is asked by every command, as data and as text. Differences of the data are counted by where they stand (numbers
of list entries left out) and by what they were and became; texts that differ are counted by command. Exit codes, picks and
verdicts that move are told one by one, those that move towards "fits" last. --each names the jobs behind every count.
Not a test: it prints, for a person to judge.
"""
import collections
import json
import os
import re
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, HERE)
from run import lay_out  # noqa: E402

COMMANDS = ("match", "diagnose", "wire", "compare", "ask", "sheet")
VERDICTS = ("fits", "fits with changes", "not shown to fit", "does not fit")
STAMP = re.compile(r'(digest|job)[ \n]+[0-9a-f]{16}|"stamp": *"[^"]*"')


def program_of(path):
    for below in ("cli/endbell", "endbell", ""):
        found = os.path.join(os.path.abspath(path), below) if below else os.path.abspath(path)
        if os.path.isfile(found):
            return found
    raise SystemExit(f"no program at {path}")


def call(program, *words):
    done = subprocess.run([program, *words], capture_output=True, text=True, errors="replace",
                          env={"PATH": os.environ.get("PATH", ""), "LC_ALL": "C.UTF-8", "ENDBELL_CONFIG": ""})
    return done.returncode, done.stdout, done.stderr


class World:
    """One shelf, imported by each program into a catalog of its own."""

    def __init__(self, programs, shelf, parts, folder):
        self.programs, self.catalogs = programs, []
        tables = os.path.join(folder, "tables")
        os.makedirs(tables)
        lay_out(shelf, parts, tables)
        for i, program in enumerate(programs):
            self.catalogs.append(os.path.join(folder, f"{i}.db"))
            code, out, err = call(program, "catalog", "import", tables, "--into", self.catalogs[-1])
            if code != 0:
                raise SystemExit(f"{program} does not import {shelf}: {err or out}")

    def both(self, *words):
        return [call(p, *words, "--catalog", c) for p, c in zip(self.programs, self.catalogs)]


def leaves(value, path=""):
    """Every scalar of a document with its place; entries of a list are told by what names them, else not."""
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from leaves(inner, f"{path}.{key}" if path else key)
    elif isinstance(value, list):
        if not value:
            yield path + "[]", "(none)"
        for inner in value:
            name = next((inner[k] for k in ("part", "rule", "test", "key") if isinstance(inner, dict) and k in inner), "")
            yield from leaves(inner, f"{path}[{name}]")
    else:
        yield path, value


def differences(before, after):
    """(place, before, after) of every leaf that only one document has: as multisets."""
    sides = [collections.Counter((p, json.dumps(v)) for p, v in leaves(d)) for d in (before, after)]
    gone, come = sides[0] - sides[1], sides[1] - sides[0]
    by_place = collections.defaultdict(lambda: ([], []))
    for side, counted in enumerate((gone, come)):
        for (place, value), times in sorted(counted.items()):
            by_place[place][side].extend([value] * times)
    for place, (old, new) in by_place.items():
        for i in range(max(len(old), len(new))):
            yield place, old[i] if i < len(old) else "-", new[i] if i < len(new) else "-"


def standings(answer):
    """What each part that was carried through comes to, and the pick."""
    found = {o["part"]: o["standing"] for o in answer.get("options", []) + answer.get("stopped", [])}
    return {**found, "pick": answer.get("pick")}


def part_moves(before, after):
    old, new = standings(before), standings(after)
    for part in sorted(set(old) | set(new)):
        if old.get(part) != new.get(part):
            yield part, (old.get(part, "(not carried)"), new.get(part, "(not carried)"))


def without_part_names(place):
    return re.sub(r"\[[^\]]*\]", lambda m: "[]" if not re.match(r"\[[a-z-]+\]$", m.group()) else m.group(), place)


def worlds(programs, tree, folder):
    """Yields (name, world, jobs)."""
    scenarios, demo = os.path.join(tree, "tests/scenarios"), os.path.join(tree, "demo-catalog")
    made = iter(range(10 ** 6))

    def world(shelf, parts=None):
        place = os.path.join(folder, str(next(made)))
        os.makedirs(place)
        return World(programs, shelf, parts, place)

    jobs = os.path.join(demo, "jobs")
    demo_world = world(os.path.join(demo, "tables"))
    yield "demo", demo_world, sorted(os.path.join(jobs, n) for n in os.listdir(jobs))
    for kind in ("wire", "compare"):
        base = os.path.join(scenarios, kind)
        names = sorted(n for n in os.listdir(base) if os.path.isfile(os.path.join(base, n, "job.toml")))
        shelf = os.path.join(base, "shelf")
        shelf = shelf if os.path.isdir(shelf) else os.path.join(scenarios, "shelf")
        yield kind, world(shelf), [os.path.join(base, n, "job.toml") for n in names]
    base = os.path.join(scenarios, "diagnose")
    yield "diagnose", demo_world, sorted(os.path.join(base, n) for n in os.listdir(base) if n.endswith(".toml"))
    for name in sorted(os.listdir(scenarios)):
        expected = os.path.join(scenarios, name, "expected.json")
        if os.path.isfile(expected):
            with open(expected, encoding="utf-8") as f:
                parts = json.load(f).get("shelf")
            yield "scenario", world(os.path.join(scenarios, "shelf"), parts), [os.path.join(scenarios, name, "job.toml")]


def main(argv):
    flags = [a for a in argv if a.startswith("--")]
    tree = argv[argv.index("--jobs") + 1] if "--jobs" in argv else os.path.join(HERE, "..", "..")
    words = [a for i, a in enumerate(argv) if not a.startswith("--") and (i == 0 or argv[i - 1] != "--jobs")]
    if len(words) != 2:
        print(__doc__.split("\n\n")[1], file=sys.stderr)
        return 64
    programs = [program_of(w) for w in words]
    groups, texts, moves, asked = collections.defaultdict(list), collections.defaultdict(list), [], 0
    with tempfile.TemporaryDirectory(prefix="two-programs-") as folder:
        for kind, world, jobs in worlds(programs, tree, folder):
            for job in jobs:
                name = os.path.relpath(job, tree).replace("tests/scenarios/", "").replace("/job.toml", "")
                for command in COMMANDS:
                    extra = ("--top", "1000") if command == "match" else ()
                    one, two = world.both(command, job, "--json", *extra)
                    asked += 1
                    if one[0] != two[0]:
                        moves.append((name, command + " exit", one[0], two[0]))
                    try:
                        before, after = json.loads(one[1]), json.loads(two[1])
                    except ValueError:
                        if STAMP.sub("", one[2]) != STAMP.sub("", two[2]):
                            groups[(command, "(no document)", "", "")].append(name)
                        continue
                    for place, was, now in differences(before, after):
                        if place.endswith("stamp") or "digest" in place:
                            continue
                        groups[(command, without_part_names(place), was, now)].append(name)
                    if command == "match":
                        moves += [(name, part, *pair) for part, pair in part_moves(before, after)]
                    one, two = world.both(command, job, *extra)
                    if STAMP.sub("", one[1] + one[2]) != STAMP.sub("", two[1] + two[2]):
                        texts[command].append(name)
    for (command, place, was, now), names in sorted(groups.items(), key=lambda g: (-len(g[1]), g[0])):
        print(f"{len(names):5d}  {command:9s} {place}: {was[:70]} -> {now[:70]}")
        if "--each" in flags:
            print("       " + ", ".join(sorted(set(names))))
    for command, names in sorted(texts.items()):
        print(f"{len(names):5d}  texts of {command}")
        if "--each" in flags:
            print("       " + ", ".join(names))

    moved = {m[0] for m in moves}
    fields = collections.Counter()
    for (command, place, was, now), names in groups.items():
        for name in names:
            if name not in moved:
                fields[place.split(".")[-1].split("[")[0] or place] += 1
    print(f"by the last word of the place, without the {len(moved)} jobs that move:")
    for field, count in fields.most_common():
        print(f"{count:7d}  {field}")

    def rank(word):
        word = str(word).strip('"')
        return VERDICTS.index(word) if word in VERDICTS else -1

    towards = [m for m in moves if rank(m[3]) >= 0 and rank(m[2]) > rank(m[3]) or str(m[3]) == "0" and m[1].endswith("exit")]
    for move in sorted(m for m in moves if m not in towards) + sorted(towards):
        print(f"{'TOWARDS FITS ' if move in towards else ''}{move[0]}: {move[1]}: {move[2]} -> {move[3]}")
    print(f"{asked} questions, {sum(map(len, groups.values()))} differences of data in {len(groups)} groups, "
          f"{len(moves)} moves, {len(towards)} of them towards fits")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
