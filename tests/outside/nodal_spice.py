#!/usr/bin/env python3
"""Wiring plans as circuits, solved by ngspice, against their truth tables and against the engine's own witness by volts.

usage: tests/outside/nodal_spice.py BUILD_DIR [--full]      last line: "N passed, N failed"

Needs Debian's ngspice. Plans come as data: of the jobs of tests/scenarios/wire by `endbell wire --json`, and of generated jobs by
probe_nodal. Every set of signals with every position of the relays is a circuit of resistances, hundreds in one deck: V2/VA
at rated volts for coils and calls, an a.c. circuit by its r.m.s. values. ngspice gives volts, and here they are made into
relays that draw in, stay half-drawn or let go, from every start. Then:
  - each plan does what its truth table says, from every start, feeds no idle call and leaves no relay half-drawn;
  - the engine's volts and its answer for each set of signals are the same, with the common in place and lost;
  - of netlists spoiled on purpose, each in which ngspice sees a tap change or an idle call fed is caught by the engine.
The idle resistances (wires, contacts, sources, leakage) are not the engine's: nothing may hang on them.
"""
import json
import os
import random
import struct
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.path.abspath(sys.argv[1])
FULL = "--full" in sys.argv[2:]
PROBE = os.path.join(BUILD, "tests", "probe_nodal")
ENDBELL = os.path.join(BUILD, "cli", "endbell")
SCENARIOS = os.path.join(ROOT, "tests", "scenarios", "wire")

PLANS = 240 if FULL else 28       # generated ones; those of the scenarios come on top
BY_JSON = 1000 if FULL else 6     # plans of the scenarios
FEWEST = 200 if FULL else 20      # that are left when the largest are put aside
SPOILED = 2000 if FULL else 100

WIRE, CONTACT, SOURCE, LEAK, INSULATION = 0.002, 0.005, 0.05, 3e8, 3e10  # ohm
# Limits of the program, said once more: volts and VA of coils, calls and taps, and what counts.
LOADS = {"control": 24, "line": 120, "coil": 6, "call": 1.2, "tap": 0.02, "motor": 5, "pull_in": 0.85, "drop_out": 0.1}
LARGEST = 7 + 5                   # signals and relays of a plan that is solved in every position
ELEMENTS = 60000                  # of a deck
NEAR = 0.003                      # a share this near to a limit decides nothing
APART = 0.01                      # of rated volts: what wires and sources take is not the same


class Net:
    def __init__(self, name=""):
        self.name, self.signals, self.relays, self.taps, self.wires, self.rows = name, [], [], [], [], []
        self.line_signals = self.line_taps = False
        self.loads, self.labels, self.rule, self.lost = dict(LOADS), ["", "", ""], "", None

    def copy(self):
        new = Net(self.name)
        new.__dict__.update(self.__dict__)
        new.wires = [list(w) for w in self.wires]
        return new

    def text(self, volts=False):
        """As probe_nodal reads it."""
        lines = [["plan", self.name], ["signals", *self.signals], ["lines", int(self.line_signals), int(self.line_taps)],
                 ["loads", *(f"{k}={v}" for k, v in self.loads.items())], ["labels", *self.labels]]
        lines += [["relay", r["name"], r["poles"], r["bodies"], int(r["line_coil"])] for r in self.relays]
        lines += [["tap", t] for t in self.taps] + [["wire", *w] for w in self.wires]
        lines += [["row", live, ",".join(map(str, taps)) or "-"] for live, taps in self.rows]
        lines += ([["lost", self.lost]] if self.lost else []) + ([["volts"]] if volts else []) + [["end"]]
        return "".join("\t".join(map(str, line)) + "\n" for line in lines)

    def rated(self, line):
        return self.loads["line" if line else "control"]

    def size(self):
        return len(self.signals) + len(self.relays)

    def returns(self):
        """The panel's returns that control hangs on."""
        line = self.line_signals or self.line_taps
        used = {end for wire in self.wires for end in wire}
        return [place for place in ("C", "L2", "N") if place in used and (place == "C" or line)]


def parse(text):
    nets, net = [], Net()
    for line in text.splitlines():
        what, *rest = line.split("\t")
        if what == "plan":
            net = Net(rest[0])
        elif what == "signals":
            net.signals = rest
        elif what == "lines":
            net.line_signals, net.line_taps = (x == "1" for x in rest)
        elif what == "rule":
            net.rule = rest[0]
        elif what == "loads":
            net.loads = {k: float(v) for k, v in (x.split("=") for x in rest)}
        elif what == "labels":
            net.labels = rest
        elif what == "relay":
            net.relays.append({"name": rest[0], "poles": int(rest[1]), "bodies": int(rest[2]), "line_coil": rest[3] == "1"})
        elif what == "tap":
            net.taps.append(int(rest[0]))
        elif what == "wire":
            net.wires.append(rest)
        elif what == "row":
            net.rows.append((int(rest[0]), [] if rest[1] == "-" else [int(t) for t in rest[1].split(",")]))
        elif what == "end":
            nets.append(net)
    return nets


def from_json(name, plan):
    net = Net(name)
    notes = {w["note"]: w["to"].removeprefix("motor ") for w in plan["wires"] if w["to"].startswith("motor ")}
    net.signals = plan["signals"]
    net.relays = [{"name": r["relay"], **{k: r[k] for k in ("poles", "bodies", "line_coil")}} for r in plan["relays"]]
    net.taps = [t["tap"] for t in plan["taps"]]
    net.wires = [[w["from"], w["to"]] for w in plan["wires"] if w["note"] != "parked"]
    net.line_taps = "same transformer" not in notes
    net.line_signals = any(r["line_coil"] for r in net.relays) if net.relays else net.line_taps
    net.labels = [notes.get("same transformer", ""), notes.get("constant line power", ""),
                  notes.get("second line conductor", notes.get("neutral", ""))]
    net.loads["tap_runs"] = 0.9 if net.line_taps else 0.5
    net.loads["tap"] = 5 if net.line_taps and not net.labels[1] else 0.02
    bit = {signal: 1 << i for i, signal in enumerate(net.signals)}
    net.rows = [(sum(bit[s] for s in row["signals"]), row["live_taps"]) for row in plan["truth"]]
    return net


def plans_by_json(most):
    nets = []
    with tempfile.TemporaryDirectory() as folder:
        catalog = os.path.join(folder, "catalog.db")
        subprocess.run([ENDBELL, "catalog", "import", os.path.join(SCENARIOS, "shelf"), "--into", catalog], check=True, capture_output=True)
        for name in sorted(os.listdir(SCENARIOS)):
            expected = os.path.join(SCENARIOS, name, "expected.json")
            if not os.path.exists(expected) or len(nets) >= most:
                continue
            with open(expected, encoding="utf-8") as f:
                part = json.load(f).get("part")
            if not part:
                continue
            out = subprocess.run([ENDBELL, "wire", os.path.join(SCENARIOS, name, "job.toml"), part, "--catalog", catalog, "--json"],
                                 capture_output=True, text=True, check=False).stdout
            plan = find_wiring(json.loads(out)) if out else None
            for which, each in enumerate([plan] + (plan["alternatives"] if plan else [])):
                if each and each["possible"] and each["truth"]:
                    nets.append(from_json(f"{name} {which}", each))
    return nets


def find_wiring(answer):
    if isinstance(answer, dict):
        if "truth" in answer and "wires" in answer:
            return answer
        answer = list(answer.values())
    for each in answer if isinstance(answer, list) else []:
        if (found := find_wiring(each)) is not None:
            return found
    return None


def is_return(place, signals):
    """A return of the panel: the transformer's common, the neutral, a line conductor but the first, before a contactor or behind it."""
    behind = place.endswith((" T2", " T3")) and not place.startswith("motor ")
    return place in ("C", "L2", "L3", "N") or (behind and place not in signals)


class Circuits:
    """The circuits of one net: where its places stand, and the elements of each set of signals and position of relays."""

    def __init__(self, net):
        self.net, self.at = net, {}
        used = {end for wire in net.wires for end in wire}
        returns = ["C", "L2", "N", *sorted(p for p in used - {"C", "L2", "N"} if is_return(p, net.signals))]
        for place in ["R", "L1", *returns, *net.signals, *(e for w in net.wires for e in w), *(f"tap {t}" for t in net.taps)]:
            self.node(place)
        volts = {True: net.loads["line"], False: net.loads["control"]}
        line_back = next((p for p in returns if p in {w[0] for w in net.wires} and (p == "L2" or p.endswith(" T2"))), "N")
        motor_return = self.node("motor " + net.labels[2] if net.labels[2] else line_back)
        self.tap_return = motor_return if net.line_taps else self.node("motor " + net.labels[0] if net.labels[0] else "C")
        self.returned = "0" if net.line_signals else "c"
        self.tap_at = {int(p[4:]): n for p, n in self.at.items() if p.startswith("tap ")}
        always = [(a, b, WIRE) for a, b in ((self.node(x), self.node(y)) for x, y in net.wires) if a != b]
        always += [(n, self.tap_return, volts[net.line_taps] / net.loads["tap"]) for n in self.tap_at.values() if n != self.tap_return]
        if net.labels[1]:
            always.append((self.node("motor " + net.labels[1]), motor_return, volts[True] / net.loads["motor"]))
        self.coils = []
        for relay in net.relays:
            feed, back = self.node(relay["name"] + ".A1"), self.node(relay["name"] + ".A2")
            self.coils.append((feed, back, volts[relay["line_coil"]]))
            always.append((feed, back, volts[relay["line_coil"]] ** 2 / net.loads["coil"] / relay["bodies"]))
        self.poles = [[tuple(self.node(f"{r['name']}.{side}{p}") for side in ("COM", "NO", "NC")) for p in range(1, r["poles"] + 1)]
                      for r in net.relays]
        always += [(self.at[s], self.returned, volts[net.line_signals] ** 2 / net.loads["call"]) for s in net.signals]
        always += [(self.at[p], "c" if p == "C" else "0", WIRE) for p in returns if p != net.lost]
        self.always, self.volts = always, volts

    def node(self, place):
        return self.at.setdefault(place, f"n{len(self.at)}")

    def all(self):
        for live, _ in self.net.rows:
            for drawn in range(2 ** len(self.net.relays)):
                yield live, drawn

    def elements(self, prefix, live, drawn):
        """Lines of a deck; ground is the line's return, and the transformer's is tied to it by its insulation alone."""
        full = lambda node: "0" if node == "0" else prefix + node
        joins = list(self.always)
        for r, poles in enumerate(self.poles):
            joins += [(common, up if drawn >> r & 1 else down, CONTACT) for common, up, down in poles]
        feed = self.at["L1" if self.net.line_signals else "R"]
        joins += [(feed, self.at[s], CONTACT if live >> i & 1 else LEAK) for i, s in enumerate(self.net.signals)]
        joins += [("e24", self.at["R"], SOURCE), ("eline", self.at["L1"], SOURCE), ("c", "0", LEAK)]
        lines = [f"r{prefix}{k} {full(a)} {full(b)} {ohm!r}" for k, (a, b, ohm) in enumerate(joins)]
        return lines + [f"v{prefix}a {prefix}e24 {prefix}c {self.volts[False]}", f"v{prefix}b {prefix}eline 0 {self.volts[True]}"]

    def read(self, prefix, found):
        """Volts across the coils, the taps and the calls."""
        at = lambda node: 0.0 if node == "0" else found[prefix + node]
        across = lambda a, b: abs(at(a) - at(b))
        return ([across(a, b) for a, b, _ in self.coils], {t: across(n, self.tap_return) for t, n in sorted(self.tap_at.items())},
                [across(self.at[s], self.returned) for s in self.net.signals])


def raw_volts(path):
    with open(path, "rb") as f:
        data = f.read()
    head, body = data.split(b"Binary:\n", 1)
    lines = head.decode().split("Variables:\n")[1].split("\n")
    names = [line.split("\t")[2] for line in lines if line.startswith("\t")]
    values = struct.unpack(f"<{len(names)}d", body[:8 * len(names)])
    return {name[2:-1] if name.startswith("v(") else name: value for name, value in zip(names, values)}


def run_deck(lines):
    with tempfile.TemporaryDirectory() as folder:
        deck, raw = os.path.join(folder, "deck.cir"), os.path.join(folder, "out.raw")
        with open(deck, "w", encoding="ascii") as f:
            f.write("plans\n" + "\n".join(lines) + f"\n.options rshunt={INSULATION}\n.op\n.end\n")
        done = subprocess.run(["ngspice", "-b", deck, "-r", raw], capture_output=True, text=True, check=False)
        if not os.path.exists(raw):
            raise SystemExit("ngspice gave nothing: " + (done.stderr or done.stdout)[-2000:])
        return raw_volts(raw)


def solved(nets):
    """Of each net: {(live, drawn): volts}, by ngspice. Circuits of many nets share a deck."""
    answers, batch, size = [{} for _ in nets], [], 0
    jobs = []
    for i, net in enumerate(nets):
        circuits = Circuits(net)
        for live, drawn in circuits.all():
            batch.append((i, circuits, live, drawn))
            size += len(circuits.always) + 12
            if size > ELEMENTS:
                jobs.append(batch)
                batch, size = [], 0
    jobs.append(batch)

    def work(job):
        lines = []
        for k, (_, circuits, live, drawn) in enumerate(job):
            lines += circuits.elements(f"x{k}_", live, drawn)
        found = run_deck(lines) if lines else {}
        return [(i, (live, drawn), circuits.read(f"x{k}_", found)) for k, (i, circuits, live, drawn) in enumerate(job)]

    with ThreadPoolExecutor(max_workers=2) as pool:
        for part in pool.map(work, jobs):
            for i, key, volts in part:
                answers[i][key] = volts
    return answers


class Answer:
    """What a set of signals comes to from every start of the relays."""

    def __init__(self, net, volts, live):
        loads, count = net.loads, len(net.relays)
        rated = [net.rated(r["line_coil"]) for r in net.relays]
        tap, call = net.rated(net.line_taps), net.rated(net.line_signals)
        self.outcomes, self.fed, self.undecided, self.half, self.chatters, self.near = set(), 0, 0, False, False, False
        go = {}
        for drawn in range(2 ** count):
            coils, taps, calls = volts[live, drawn]
            shares = [v / r for v, r in zip(coils, rated)]
            sure = sum(1 << r for r, s in enumerate(shares) if s >= loads["pull_in"])
            either = sum(1 << r for r, s in enumerate(shares) if loads["drop_out"] <= s < loads["pull_in"])
            self.near = self.near or any(abs(s - loads[k]) < NEAR for s in shares for k in ("pull_in", "drop_out"))
            self.undecided |= either
            go[drawn] = (sure, either)
            if drawn & ~either != sure:
                continue
            at_taps, at_calls = {t: v / tap for t, v in taps.items()}, [v / call for v in calls]
            self.outcomes.add(tuple(t for t, s in at_taps.items() if s >= loads["tap_runs"]))
            self.half = self.half or any(loads["drop_out"] <= s < loads["tap_runs"] for s in at_taps.values())
            self.fed |= sum(1 << i for i, s in enumerate(at_calls) if not live >> i & 1 and s >= loads["drop_out"])
            self.near = self.near or any(abs(s - loads[k]) < NEAR for s in at_taps.values() for k in ("tap_runs", "drop_out"))
            self.near = self.near or any(abs(s - loads["drop_out"]) < NEAR for s in at_calls)
        for start in go if not self.undecided else ():
            way, here = set(), start
            while go[here][0] != here and not self.chatters:
                self.chatters = here in way
                way.add(here)
                here = go[here][0]

    def key(self):
        chatters = self.chatters if not self.undecided else None
        return self.outcomes, self.fed, self.undecided, self.half, chatters

    def holds(self, taps):
        return self.key() == ({tuple(taps)}, 0, 0, False, False)

    def changes(self, taps):
        """An energised tap changes, or an idle call is fed."""
        return self.outcomes != {tuple(taps)} or self.fed != 0


def engine(nets, volts):
    """Of each net: how many rows its witness does not agree with, its answers, its volts."""
    out = subprocess.run([PROBE, "solve"], input="".join(n.text(volts) for n in nets), capture_output=True, text=True, check=True).stdout
    found = []
    for line in out.splitlines():
        what, *rest = line.split("\t")
        if what == "plan":
            found.append((int(rest[1]), {}, {}))
        elif what == "state":
            live, fed, undecided, half, chatters = map(int, rest[:5])
            outcomes = {tuple(int(t) for t in o.split(",")) if o != "-" else () for o in rest[5:]}
            found[-1][1][live] = (outcomes, fed, undecided, bool(half), bool(chatters) if not undecided else None)
        elif what == "volts":
            found[-1][2][int(rest[0]), int(rest[1])] = [float(v) for v in rest[2:]]
    return found


def spoil(net, chance):
    """One wire moved, two exchanged, one gone, one too many, or the two throws of a pole exchanged."""
    bad, w = net.copy(), chance.randrange(len(net.wires))
    places = ["R", "C"] + [end for wire in net.wires for end in wire]
    way = chance.randrange(6)
    if way < 2:
        bad.wires[w][way] = chance.choice(places)
    elif way == 2:
        other = chance.randrange(len(net.wires))
        bad.wires[w][1], bad.wires[other][1] = bad.wires[other][1], bad.wires[w][1]
    elif way == 3:
        del bad.wires[w]
    elif way == 4 or not net.relays:
        bad.wires.append([chance.choice(places), chance.choice(places)])
    else:
        relay = chance.choice(net.relays)
        pole = chance.randint(1, max(1, relay["poles"]))
        a, b = (f"{relay['name']}.{side}{pole}" for side in ("NO", "NC"))
        bad.wires = [[{a: b, b: a}.get(end, end) for end in wire] for wire in bad.wires]
    return bad


class Tally:
    def __init__(self):
        self.passed = self.failed = 0

    def check(self, good, what):
        self.passed, self.failed = self.passed + bool(good), self.failed + (not good)
        if not good:
            print("FAIL", what)


def check_plans(nets, tally):
    """The plans as they are, then each with a common lost."""
    worst, states, circuits, skipped = 0.0, 0, 0, 0
    lost = []
    for net in nets:
        for place in net.returns():
            lost.append(net.copy())
            lost[-1].lost = place
    for group, sound in ((nets, True), (lost, False)):
        for net, volts, (rows, answers, ours) in zip(group, solved(group), engine(group, True)):
            wrong = []
            circuits += len(volts)
            for live, taps in net.rows:
                states += 1
                theirs = Answer(net, volts, live)
                if sound and not theirs.holds(taps):
                    wrong.append(f"signals {live}: {theirs.key()}, not tap {taps}")
                if theirs.near and not sound:
                    skipped += 1
                elif theirs.key() != answers[live]:
                    wrong.append(f"signals {live}: ngspice {theirs.key()}, engine {answers[live]}")
            for key, (coils, taps, calls) in volts.items():
                rated = [net.rated(r["line_coil"]) for r in net.relays] + [net.rated(net.line_taps)] * len(taps)
                rated += [net.rated(net.line_signals)] * len(calls)
                for a, b, full in zip([*coils, *taps.values(), *calls], ours[key], rated, strict=True):
                    worst = max(worst, abs(a - b) / full)
                    if abs(a - b) > APART * full:
                        wrong.append(f"signals, relays {key}: {a:.3f} V, engine {b:.3f} V")
            if sound and rows:
                wrong.append(f"{rows} rows that the engine's witness does not agree with")
            tally.check(not wrong, f"{net.name}{'' if sound else ' without ' + net.lost}: {'; '.join(wrong[:3])}")
    print(f"{len(nets)} plans, {len(lost)} with a common lost: {states} sets of signals, {circuits} circuits, volts at most "
          f"{100 * worst:.2f} % of rated apart, {skipped} sets of a lost common too near a limit to compare")


def check_spoiled(nets, count, tally):
    chance = random.Random(19)
    small = [net for net in nets if net.size() <= 7 and net.wires]
    changed = caught = doubted = 0
    for first in range(0, count, 200):
        pairs = [(net, spoil(net, chance)) for net in (chance.choice(small) for _ in range(min(200, count - first)))]
        bad = [spoiled for _, spoiled in pairs]
        for spoiled, volts, (rows, _, _) in zip(bad, solved(bad), engine(bad, False)):
            changes = any(Answer(spoiled, volts, live).changes(taps) for live, taps in spoiled.rows)
            changed += changes
            caught += changes and rows > 0
            doubted += not changes and rows > 0
            if changes and not rows:
                tally.check(False, f"spoiled {spoiled.name}: {spoiled.text()}")
    tally.check(changed > count // 3, "enough of the spoiled netlists change something")
    tally.passed += caught
    print(f"{count} spoiled netlists: {changed} change a tap or feed an idle call, {caught} of them caught; {doubted} more doubted")


def main():
    tally = Tally()
    by_json = plans_by_json(BY_JSON)
    generated = parse(subprocess.run([PROBE, "plans", "77", str(PLANS)], capture_output=True, text=True, check=True).stdout)
    for net in generated:
        expected = {k: v for k, v in LOADS.items() if k not in ("line", "tap", "motor")}
        tally.check(all(net.loads[k] == v for k, v in expected.items()), f"{net.name}: loads {net.loads}")
    small = [net for net in by_json + generated if net.size() <= (LARGEST if FULL else 7)]
    tally.check(len(small) >= FEWEST, f"{len(small)} plans")
    check_plans(small, tally)
    check_spoiled(small, SPOILED, tally)
    print(f"{tally.passed} passed, {tally.failed} failed")
    return tally.failed != 0


if __name__ == "__main__":
    sys.exit(main())
