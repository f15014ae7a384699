#!/usr/bin/env python3
"""The tap of each call against MiniZinc on 200 generated instances: same assignment, same score.

usage: tests/outside/tap_assignment.py BUILD_DIR [COUNT]      last line: "N passed, N failed"
"""
import os
import random
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor

HERE = os.path.dirname(os.path.abspath(__file__))
PROBE = os.path.join(os.path.abspath(sys.argv[1]), "tests", "probe_taps")
MODEL = os.path.join(HERE, "tap_assignment.mzn")
COUNT = int(sys.argv[2]) if len(sys.argv) > 2 and sys.argv[2].isdigit() else 200


def instance(chance):
    """A few calls with windows near the airflows of a few taps, so that windows overlap and stages conflict."""
    calls = []
    for kind in range(7):
        if chance.random() < 0.3:
            continue
        low = chance.randint(400, 1200)
        target = low + chance.randint(0, 250)
        calls.append((kind, low, target, target + chance.randint(0, 400), int(chance.random() < 0.4)))
    calls = calls or [(2, 1050, 1200, 1350, 0)]
    taps = [(chance.randint(400, 1700), chance.randint(0, 150)) for _ in range(chance.randint(2, 5))]
    if chance.random() < 0.2:
        taps.append(taps[0])  # two taps that move the same air: the lower number is chosen
    return calls, taps, chance.random() < 0.7


def ours(instances):
    text = ""
    for calls, taps, sharing in instances:
        text += f"{len(calls)} {len(taps)} {int(sharing)}\n"
        text += "".join(" ".join(map(str, row)) + "\n" for row in calls + taps)
    out = subprocess.run([PROBE], input=text, capture_output=True, text=True, check=True).stdout
    answers = []
    for (calls, taps, _), line in zip(instances, out.splitlines()):
        *tap, hard, soft, merged, assured, comfort = map(int, line.split())
        score = (((hard * 8 + soft) * 32 - merged) * 8 + assured) * 8000 + comfort
        answers.append(([len(taps) if t < 0 else t for t in tap], score))
    return answers


def solve(calls, taps, sharing, reached):
    kind, low, target, high, hard = map(list, zip(*calls))
    airflow, plus_minus = map(list, zip(*taps))
    data = (f"calls={len(calls)};taps={len(taps)};kind={kind};low={low};target={target};high={high};hard={hard};"
            f"airflow={airflow};plus_minus={plus_minus};reached={reached};one_call_a_tap={int(not sharing)};")
    with tempfile.NamedTemporaryFile("w", suffix=".dzn") as file:
        file.write(data)
        file.flush()
        out = subprocess.run(["minizinc", "--solver", "gecode", MODEL, file.name], capture_output=True, text=True,
                             check=True).stdout
    lines = out.splitlines()
    if "==========" not in lines:
        raise RuntimeError("the solver did not prove its answer: " + out)
    answer = [line for line in lines if line and line[0] not in "-="][-1]
    *tap, score = map(int, answer.split())
    return tap, score


def theirs(one):
    _, score = solve(*one, -1)
    tap, again = solve(*one, score)
    assert again == score
    return tap, score


def main():
    chance = random.Random(5)
    instances = [instance(chance) for _ in range(COUNT)]
    mine = ours(instances)
    passed = failed = 0
    if len(mine) != len(instances):
        print("FAIL", len(instances), "instances,", len(mine), "answers")
        failed += 1
    with ThreadPoolExecutor(os.cpu_count()) as pool:
        for one, a, b in zip(instances, mine, pool.map(theirs, instances)):
            if a == b:
                passed += 1
            else:
                failed += 1
                print("FAIL", one, "ours", a, "MiniZinc", b)
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


sys.exit(main())
