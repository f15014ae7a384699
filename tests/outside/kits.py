#!/usr/bin/env python3
"""The kit chosen by the engine against two solvers that share nothing with it: MiniZinc with Gecode, and CBC.

usage: tests/outside/kits.py BUILD_DIR [--full]      last line: "N passed, N failed"

Needs Debian's minizinc, flatzinc and coinor-cbc. An instance is a set of needs and of accessories with price, lead,
stock and exclusions, drawn so that ties and impossible ones are frequent. Both solvers give the best tuple (price,
longest lead, number of parts); the engine must reach exactly it, with a kit that really covers every need. At the end
one price of the engine's copy is falsified in each of 40 instances: the comparison must notice.
"""
import os
import random
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor

BUILD = os.path.abspath(sys.argv[1])
COUNT = 1000 if "--full" in sys.argv[2:] else 300
PROBE = os.path.join(BUILD, "tests", "probe_kit")

# The order of importance as weights: a price unit outweighs any lead, a day of lead any number of parts. Prices stay
# so small that no sum passes Gecode's 2^31.
PART, DAY, PRICE = 1, 32, 32 * 32

MODEL = """
int: needs; int: items;
array[1..items] of int: price; array[1..items] of int: lead; array[1..items] of int: stock;
array[1..items, 1..needs] of bool: cures;
array[1..items, 1..items] of bool: excludes;
array[1..items] of var 0..1: use;
var 0..31: slowest;
constraint forall(n in 1..needs)(sum(i in 1..items where cures[i, n])(use[i]) >= 1);
constraint forall(i in 1..items where stock[i] = 0)(use[i] = 0);
constraint forall(a, b in 1..items where a != b /\\ excludes[a, b])(use[a] + use[b] <= 1);
constraint forall(i in 1..items)(slowest >= lead[i] * use[i]);
solve minimize sum(i in 1..items)((%d * price[i] + %d) * use[i]) + %d * slowest;
output ["\\(sum(i in 1..items)(price[i] * use[i])) \\(slowest) \\(sum(use))\\n"];
""" % (PRICE, PART, DAY)


def generate(rng, number, count=None, least_needs=1):
    """Every third instance has few distinct prices (ties), every fifth few accessories (often impossible) unless `count` says how many."""
    needs = rng.randint(least_needs, 8)
    count = count or (rng.randint(1, 6) if number % 5 == 0 else rng.randint(6, 24))
    items = []
    for i in range(count):
        items.append({
            "cures": [n for n in range(needs) if rng.random() < rng.choice((0.15, 0.3, 0.5))],
            "price": rng.randint(1, 3) * 100 if number % 3 == 0 else rng.randint(0, 3000),
            "lead": rng.choice((0, 0, 1, 2, 7)),
            "stock": 0 if rng.random() < 0.2 else rng.randint(1, 9),
            "excludes": [j for j in range(count) if j != i and rng.random() < 0.05],
        })
    return {"needs": needs, "items": items}


def listed(numbers):
    return ",".join(str(n) for n in numbers) or "-"


def as_text(instances):
    """For the engine. An accessory out of stock is one that the shop's cap on lead bars: 1,000 days."""
    lines = []
    for case in instances:
        lines.append(f"{case['needs']} {len(case['items'])}")
        for it in case["items"]:
            lead = it["lead"] if it["stock"] else 1000
            lines.append(f"{listed(it['cures'])} {it['price']} {lead} {it['stock']} {listed(it['excludes'])}")
    return "\n".join(lines) + "\n"


def answers_in(lines):
    answers = []
    for line in lines:
        uncured, price, lead, parts, *chosen = (int(word) for word in line.split())
        answers.append({"best": None if uncured else (price, lead, parts), "items": chosen})
    return answers


def ask_engine(instances):
    return answers_in(subprocess.run([PROBE], input=as_text(instances), capture_output=True, text=True, check=True).stdout.splitlines())


def truth(value):
    return "true" if value else "false"


def ask_gecode(case, folder, number):
    items, needs = case["items"], case["needs"]
    n = len(items)
    data = [f"needs={needs}; items={n};"]
    for name in ("price", "lead", "stock"):
        data.append(f"{name}=[{','.join(str(it[name]) for it in items)}];")
    cures = ",".join(truth(d in it["cures"]) for it in items for d in range(needs))
    excludes = ",".join(truth(j in it["excludes"]) for it in items for j in range(n))
    data.append(f"cures=array2d(1..{n},1..{needs},[{cures}]);")
    data.append(f"excludes=array2d(1..{n},1..{n},[{excludes}]);")
    path = os.path.join(folder, f"{number}.dzn")
    with open(path, "w") as f:
        f.write("\n".join(data))
    out = subprocess.run(["minizinc", "--solver", "gecode", os.path.join(folder, "kit.mzn"), path],
                         stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True).stdout
    if "=====UNSATISFIABLE=====" in out:
        return None
    assert "==========" in out and "ERROR" not in out, out
    best = [line for line in out.splitlines() if line and line[0].isdigit()][-1]
    return tuple(int(word) for word in best.split())


def ask_cbc(case, folder, number):
    items, needs = case["items"], case["needs"]
    usable = [i for i, it in enumerate(items) if it["stock"]]
    rows = ["Minimize", " cost: " + " + ".join([f"{PRICE * items[i]['price'] + PART} u{i}" for i in usable] + [f"{DAY} slowest"]),
            "Subject To"]
    for d in range(needs):
        able = [f"u{i}" for i in usable if d in items[i]["cures"]]
        if not able:
            return None
        rows.append(f" need{d}: " + " + ".join(able) + " >= 1")
    for i in usable:
        if items[i]["lead"]:
            rows.append(f" lead{i}: slowest - {items[i]['lead']} u{i} >= 0")
        rows += [f" not{i}_{j}: u{i} + u{j} <= 1" for j in items[i]["excludes"] if j in usable]
    rows += ["Bounds", " slowest >= 0", "Binary", " " + " ".join(f"u{i}" for i in usable), "End"]
    path = os.path.join(folder, f"{number}.lp")
    with open(path, "w") as f:
        f.write("\n".join(rows) + "\n")
    result = path + ".out"
    subprocess.run(["cbc", path, "solve", "solution", result], stdout=subprocess.DEVNULL, check=True)
    with open(result) as f:
        verdict = f.readline()
    if verdict.startswith("Infeasible") or verdict.startswith("Integer infeasible"):
        return None
    assert verdict.startswith("Optimal"), verdict
    cost = round(float(verdict.split()[-1]))
    return (cost // PRICE, cost % PRICE // DAY, cost % DAY)


def covers(case, answer):
    """The chosen items, judged by the statement of the problem alone."""
    chosen = [case["items"][i] for i in answer["items"]]
    cured = {n for it in chosen for n in it["cures"]}
    clash = any(j in it["excludes"] for it in chosen for j in answer["items"])
    total = (sum(it["price"] for it in chosen), max((it["lead"] for it in chosen), default=0), len(chosen))
    return cured == set(range(case["needs"])) and not clash and all(it["stock"] for it in chosen) and total == answer["best"]


def main():
    rng = random.Random(20261125)
    instances = [generate(rng, number) for number in range(COUNT)]
    ours = ask_engine(instances)
    with tempfile.TemporaryDirectory() as folder:
        with open(os.path.join(folder, "kit.mzn"), "w") as f:
            f.write(MODEL)
        with ThreadPoolExecutor(2) as pool:
            gecode = list(pool.map(lambda n: ask_gecode(instances[n], folder, n), range(COUNT)))
            cbc = list(pool.map(lambda n: ask_cbc(instances[n], folder, n), range(COUNT)))
    passed = failed = impossible = 0
    for number, (case, answer, first, second) in enumerate(zip(instances, ours, gecode, cbc)):
        good = answer["best"] == first == second and (first is None or covers(case, answer))
        impossible += first is None
        passed, failed = passed + good, failed + (not good)
        if not good:
            print(f"FAIL instance {number}: engine {answer}, Gecode {first}, CBC {second}")
    ties = sum(1 for n in range(COUNT) if n % 3 == 0 and gecode[n] is not None)
    print(f"{COUNT} instances: {impossible} impossible, {ties} with few distinct prices")

    wrong, right = [], []
    for case, answer, best in zip(instances, ours, gecode):
        if best and answer["items"] and len(wrong) < 40:
            items = [dict(it) for it in case["items"]]
            items[answer["items"][0]]["price"] += 1
            wrong.append({"needs": case["needs"], "items": items})
            right.append((case, best))
    seen = sum(1 for (case, best), answer in zip(right, ask_engine(wrong)) if answer["best"] != best or not covers(case, answer))
    print(f"{seen} of {len(wrong)} falsified prices noticed")
    passed, failed = passed + (seen > 0), failed + (seen == 0)
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
