#!/usr/bin/env python3
"""Taps chosen by the old motor's measured duty, and by its plate alone, in 300 invented houses whose truth is known here.

usage: tests/outside/old_duty.py BUILD_DIR      last line: "N passed, N failed"

A house is a blower, a duct and a capacitor-run motor on its high speed, solved here and in nothing of the engine's: the motor
by Kloss' curve, the blower by the fan laws. Its readings carry the noise of a clamp meter, a tachometer, a flow grid and a
manometer. A five-tap motor of the same size goes in; each tap holds its torque within 5 %. Of the tap that is chosen for
cooling the true airflow is worked out on the true blower and duct: it lies in 350 to 450 cfm a ton, or the choice was wrong.
Spreads below are two standard deviations and common practice, as in engine/airflow/assumptions.hpp.
"""
import math
import os
import random
import subprocess
import sys

PROBE = os.path.join(os.path.abspath(sys.argv[1]), "tests", "probe_duty")
HOUSES = 300
SIZES = {2.0: (1 / 5, 1 / 4, 1 / 3), 2.5: (1 / 4, 1 / 3), 3.0: (1 / 3, 1 / 2), 3.5: (1 / 2,), 4.0: (1 / 2, 3 / 4), 5.0: (3 / 4,)}
SYNCHRONOUS = 1200.0


def root(rising, low, high):
    for _ in range(80):
        middle = (low + high) / 2
        low, high = (middle, high) if rising(middle) < 0 else (low, middle)
    return (low + high) / 2


class Blower:
    """static = A n2 - C q2, torque = c n2 + a n q + b q2 (lb-ft), n in 1,000 rpm and q in 1,000 cfm."""

    def __init__(self, chance, q, static, n, torque):
        internal = chance.uniform(0.7, 1.6) * static  # what the cabinet itself takes of the wheel's pressure
        own, cross = chance.uniform(0.12, 0.24), chance.uniform(0.55, 0.72)
        self.A, self.C = (static + internal) / n**2, internal / q**2
        self.c, self.a = own * torque / n**2, cross * torque / (n * q)
        self.b = (1 - own - cross) * torque / q**2

    def speed(self, q, static):
        return math.sqrt((static + self.C * q * q) / self.A)

    def torque(self, q, static):
        n = self.speed(q, static)
        return self.c * n * n + self.a * n * q + self.b * q * q


def noise(chance, spread):
    return 1 + chance.gauss(0, spread / 2)


def house(chance):
    """The truth of one house, and what was read of it."""
    tons = chance.choice(sorted(SIZES))
    hp = chance.choice(SIZES[tons])
    plate_rpm = chance.choice((1050, 1075, 1075, 1075, 1100))
    rated = 5252.113 * hp / plate_rpm
    breakdown_slip = chance.uniform(0.22, 0.35)
    rated_slip = 1 - plate_rpm / SYNCHRONOUS
    made = noise(chance, 0.06)  # one motor against another of its plate
    breakdown = made * rated * (rated_slip / breakdown_slip + breakdown_slip / rated_slip) / 2
    torque = chance.uniform(0.60, 1.0) * rated

    def slip_for(t):  # the stable root of Kloss' curve
        ratio = t / breakdown
        return breakdown_slip * (1 - math.sqrt(1 - ratio * ratio)) / ratio

    n = SYNCHRONOUS * (1 - slip_for(torque)) / 1000
    q = tons * 0.4 * chance.uniform(0.88, 1.12)
    static = chance.uniform(0.30, 0.85)
    fixed = chance.uniform(0, 0.08)
    blower = Blower(chance, q, static, n, torque)
    duct = (fixed, (static - fixed) / (q * q))

    volts = chance.uniform(112, 122)
    efficiency = 0.70 * noise(chance, 0.10) * n * 1000 / SYNCHRONOUS
    watts = torque * n * 1000 / 5252.113 * 745.7 / efficiency
    amps = watts / (volts * min(0.99, 0.90 * noise(chance, 0.15)))
    read = {"airflow": 1000 * q * noise(chance, 0.07), "static": static + chance.gauss(0, 0.01),
            "rpm": 1000 * n * noise(chance, 0.005), "amps": amps * noise(chance, 0.03),
            "watts": watts * noise(chance, 0.02)}
    # The new motor: the same size, five taps, each next one at 0.86 of the torque.
    top = 16 * 5252.113 * hp / 1050
    taps = [top * 0.86**k for k in range(4, -1, -1)]
    held = [t * noise(chance, 0.05) for t in taps]
    return tons, hp, plate_rpm, volts, read, taps, held, blower, duct


def true_airflow(blower, duct, ounce_feet, hp):
    """The tap's torque, or the rated power where that is reached first."""

    def static(q):
        return duct[0] + duct[1] * q * q

    by_torque = root(lambda q: blower.torque(q, static(q)) - ounce_feet / 16, 1e-6, 20.0)
    by_power = root(lambda q: blower.torque(q, static(q)) * blower.speed(q, static(q)) * 1000 / 5252.113 - hp, 1e-6, 20.0)
    return 1000 * min(by_torque, by_power)


def right(one, tap):
    tons, hp, *_, held, blower, duct = one
    return 350 * tons <= true_airflow(blower, duct, held[tap - 1], hp) <= 450 * tons


def chosen(houses, what):
    """(tap or 0, method) of each house by the readings named in `what`."""
    text = ""
    for tons, hp, plate_rpm, volts, read, taps, *_ in houses:
        rest = [read[key] if key in what else 0 for key in ("rpm", "amps", "watts")]
        numbers = [hp, plate_rpm, tons, volts, read["airflow"], read["static"], *rest, hp, len(taps), *taps]
        text += " ".join(f"{x:.10g}" for x in numbers) + "\n"
    out = subprocess.run([PROBE], input=text, capture_output=True, text=True, check=True).stdout.splitlines()
    return [(int(line.split()[0]), line.split(maxsplit=3)[3]) for line in out]


def judge(houses, what):
    """How many taps were chosen, and how many of them move what the call wants."""
    taps = [tap for tap, _ in chosen(houses, what)]
    return sum(map(bool, taps)), sum(right(one, tap) for one, tap in zip(houses, taps) if tap)


def main():
    chance = random.Random(20)
    houses = []
    while len(houses) < HOUSES:  # a house of which no tap is right says nothing of the choice
        one = house(chance)
        if any(right(one, tap) for tap in range(1, 6)):
            houses.append(one)
    rows = [("amps and speed", ("rpm", "amps"), 0.95), ("watts and speed", ("rpm", "watts"), 0.95),
            ("watts, amps and speed", ("rpm", "amps", "watts"), 0.95), ("speed alone", ("rpm",), None),
            ("amps alone", ("amps",), None), ("plate power alone", (), None)]
    passed = failed = 0
    shares = {}
    for name, what, least in rows:
        picked, met = judge(houses, what)
        shares[name] = met / picked if picked else 0
        print(f"| {name} | {picked} | {met} | {100 * shares[name]:.1f} % |")
        good = picked >= 200 and (least is None or shares[name] >= least)
        passed, failed = passed + good, failed + (not good)
        if not good:
            print("FAIL", name)
    better = shares["amps and speed"] > shares["plate power alone"]
    passed, failed = passed + better, failed + (not better)
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


sys.exit(main())
