#!/usr/bin/env python3
"""Ten thousand random invoices against Python's decimal arithmetic.

usage: tests/outside/invoices.py BUILD_DIR [--full]      last line: "N passed, N failed"

Each line of an invoice is worked out here from its definition in exact decimals and rounded once, half away from zero;
tax is rounded once over parts and work together. Every line and the total must agree to the minor unit.
"""
import os
import random
import subprocess
import sys
from decimal import ROUND_HALF_UP, Decimal, getcontext

PROBE = os.path.join(os.path.abspath(sys.argv[1]), "tests", "probe_invoice")
COUNT = 100_000 if "--full" in sys.argv[2:] else 10_000
DIGITS = {"USD": 2, "CAD": 2, "EUR": 2, "JPY": 0, "KWD": 3}
MILLION = Decimal(1_000_000)
getcontext().prec = 60


def generate(rng):
    case = {"currency": rng.choice(list(DIGITS)), "part": rng.randint(0, 300_000), "lead": rng.choice((0, 0, 3)),
            "hours": rng.choice((500, 1000, 1250, 2500, rng.randint(1, 9999))), "rate": rng.randint(1, 40_000)}
    if rng.random() < 0.7:
        case["kit"] = [rng.randint(1, 20_000) for _ in range(rng.randint(1, 4))]
    if rng.random() < 0.6:
        case["work"] = [rng.choice((100, 125, 250, 333)) for _ in range(rng.randint(1, 4))]
    pricing = rng.choice(("markup", "margin", None))
    if pricing:
        top = 3_000_000 if pricing == "markup" else 950_000
        case[pricing] = rng.choice((500_000, 600_000, rng.randint(0, top)))
    for key, low, high in (("trip", 0, 20_000), ("diagnosis", 0, 20_000), ("emergency", 1_000_000, 2_500_000),
                           ("parts_tax", 0, 130_000), ("labour_tax", 0, 130_000), ("core", 1, 5_000), ("again", 0, 2_000)):
        if rng.random() < 0.6:
            case[key] = rng.randint(low, high)
    if case["lead"] and "trip" not in case and "again" not in case:
        case["trip"] = 9_500
    return case


def unit(case):
    return Decimal(1).scaleb(-DIGITS[case["currency"]])


def rounded(amount, case):
    return amount.quantize(unit(case), ROUND_HALF_UP)


def price(cost, case):
    """A markup is a share of the cost, a margin a share of the price."""
    if "markup" in case:
        return cost * (1 + case["markup"] / MILLION)
    return cost / (1 - case["margin"] / MILLION) if "margin" in case else cost


def expect(case):
    def money(key):
        return Decimal(case[key]) * unit(case)

    lines = {}

    def add(kind, exact):
        lines[kind] = lines.get(kind, Decimal(0)) + rounded(exact, case)

    add("part", price(money("part"), case))
    for cost in case.get("kit", []):
        add("kit_part", price(cost * unit(case), case))
    for thousandths in case.get("work", []) + [case["hours"]]:
        add("labour", money("rate") * thousandths / 1000)
    if "emergency" in case:
        add("emergency", lines["labour"] * (case["emergency"] / MILLION - 1))
    for kind in ("trip", "diagnosis"):
        if kind in case:
            add(kind, money(kind))
    if case["lead"]:
        again = rounded(money("rate") * case["again"] / 1000, case) if "again" in case else 0
        add("second_visit", (money("trip") if "trip" in case else 0) + Decimal(again))
    parts = lines["part"] + lines.get("kit_part", 0)
    work = sum(lines.values()) - parts
    tax = rounded(parts * (case.get("parts_tax", 0) / MILLION) + work * (case.get("labour_tax", 0) / MILLION), case)
    if tax:
        lines["tax"] = tax
    if "core" in case:
        lines["core_credit"] = -money("core")
    return lines, sum(lines.values())


def written(case):
    return " ".join(f"{k}={','.join(map(str, v)) if isinstance(v, list) else v}" for k, v in case.items())


def main():
    rng = random.Random(135)
    cases = [generate(rng) for _ in range(COUNT)]
    out = subprocess.run([PROBE], input="\n".join(map(written, cases)) + "\n", capture_output=True, text=True, check=True).stdout
    answers = out.splitlines()
    passed, failed = 0, abs(len(answers) - len(cases))
    for case, answer in zip(cases, answers):
        words = answer.split()
        lines = {}
        for word in (w for w in words if ":" in w):
            kind, minor = word.split(":")
            lines[kind] = lines.get(kind, Decimal(0)) + int(minor) * unit(case)
        today = words[0].removeprefix("today=")
        wanted, total = expect(case)
        if today != "none" and int(today) * unit(case) == total and lines == wanted:
            passed += 1
        else:
            failed += 1
            if failed < 10:
                print("FAIL", written(case), "\n  engine", answer, "\n  decimal", total, {k: str(v) for k, v in wanted.items()})
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


sys.exit(main())
