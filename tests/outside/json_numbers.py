#!/usr/bin/env python3
"""Every number that the text of `match`, `wire` and `sheet` shows stands in their JSON.

usage: tests/outside/json_numbers.py BUILD_DIR [--full]      last line: "N passed, N failed"

The text is read as a person reads it: each number with its decimals. It must be the JSON's number rounded to those decimals, or
a hundred times it before a percent sign, or stand so in a text of the JSON (a name, a plate as written, a finding's sentence).
The JSON of a sheet repeats the sheet in its `blocks`: of these only what is data by itself counts, name beside value and the
figures of a chart. Numbers of fixed sentences ("5 minutes"), of steps and of the titles of sources, which `rules --json` holds,
are the program's words and no answers: FIXED names the sentences.
"""
import glob
import json
import os
import re
import subprocess
import sys
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.path.abspath(sys.argv[1])
FULL = "--full" in sys.argv[2:]
ENDBELL = os.path.join(BUILD, "cli", "endbell")
SHELVES = {"demo": (os.path.join(ROOT, "demo-catalog", "tables"), os.path.join(ROOT, "demo-catalog", "jobs", "*.toml")),
           "wire": (os.path.join(ROOT, "tests", "scenarios", "wire", "shelf"), os.path.join(ROOT, "tests", "scenarios", "wire", "*", "job.toml")),
           "shelf": (os.path.join(ROOT, "tests", "scenarios", "shelf"), os.path.join(ROOT, "tests", "scenarios", "*", "job.toml"))}
EVERY = 1 if FULL else 4  # of the scenarios

TITLES = []  # of sources
FIXED = [r"29 CFR 1910\.\d+(?:,\s+1910\.\d+)?", r"1910\.\d+", r"NFPA\s+70E(?:\s+120)?", r"parts\s+above\s+50 V", r"[Aa]bout\s+0 V", r"5 minutes", r"about 20 kilohm, 2 W", r"CAT III", r"within 10 %", r"plate, within 10 %", r"\b24 V\b", r"W per 1,000 cfm",
         r"12 to 33 V ac", r"^\s*\d+\. ", r"\d+ more reasons: ask with match"]
NUMBER = re.compile(r"\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?")
# What has letters and figures joined is a name: a part number, a terminal, a rule's source.
NAME = re.compile(r"[A-Za-z_][\w./+-]*\d[\w./+-]*|\d[\w./+-]*[A-Za-z_][\w./+-]*")


def numbers_of(text):
    """(value, decimals, percent) of each number."""
    for title in TITLES:
        text = text.replace(title, " ")
    for fixed in FIXED:
        text = re.sub(fixed, " ", text)
    text = NAME.sub(lambda m: " " if not re.fullmatch(r"[\d.]+(?:hp|V|A|W|cfm|rpm|kW|x)", m.group()) else m.group(), text)
    for found in NUMBER.finditer(text):
        figures = found.group().replace(",", "")
        decimals = len(figures.partition(".")[2])
        yield float(figures), decimals, text[found.end():found.end() + 2].strip().startswith("%")


def held_by(document, held, texts):
    if isinstance(document, dict):
        for value in document.values():
            held_by(value, held, texts)
    elif isinstance(document, list):
        held.add(float(len(document)))
        for value in document:
            held_by(value, held, texts)
    elif isinstance(document, bool) or document is None:
        return
    elif isinstance(document, (int, float)):
        held.add(abs(float(document)))
    else:
        texts.append(document)


class Json:
    def __init__(self, document):
        held, texts = set(), []
        held_by(document, held, texts)
        for text in texts:
            for found in NUMBER.finditer(text):
                held.add(float(found.group().replace(",", "")))
        self.held = held

    def has(self, value, decimals, percent):
        near = 0.5 * 10 ** -decimals * (1 + 1e-9)
        return any(abs(x - value) <= near or (percent and abs(x * 100 - value) <= near) for x in self.held)


def call(catalog, *words):
    done = subprocess.run([ENDBELL, *words, "--catalog", catalog], capture_output=True, text=True, errors="replace",
                          env={"PATH": os.environ.get("PATH", ""), "LC_ALL": "C.UTF-8"})
    return done.returncode, done.stdout


def asked(job, catalog):
    """Each command with its text and its JSON."""
    code, out = call(catalog, "match", job, "--json")
    if code not in (0, 10, 11, 12):
        return
    answer = json.loads(out)
    yield ("match", job), call(catalog, "match", job, "--width", "400")[1], answer
    commands = [("sheet", job, "--for", kind) for kind in ("counter", "technician", "estimate")]
    if answer["options"]:
        commands.append(("wire", job, answer["options"][0]["part"]))
    for command in commands:
        code, out = call(catalog, *command, "--json")
        if code in (0, 10, 11, 12):
            yield command, call(catalog, *command, "--width", "400")[1], json.loads(out)


def missing(text, document):
    """Lines with the numbers in them that the JSON does not hold. The last line is the stamp."""
    document = dict(document)
    document["blocks"] = [b for b in document.get("blocks", []) if "values" in b or "chart" in b]
    found = Json(document)
    for line in text.rstrip().splitlines()[:-1]:
        lost = [f"{v:.{d}f}" for v, d, p in numbers_of(line) if not found.has(v, d, p)]
        if lost:
            yield lost, line.strip()


def is_blind(text, document):
    """Whether nothing is missed where the option's air is left out: then the check itself is worth nothing."""
    option = document.get("option")
    if not option or not option["air"]["computed"]:
        return False
    return not list(missing(text, {**document, "option": {**option, "air": {}}, "start_up": []}))


def main():
    passed = failed = 0
    told = 0
    with tempfile.TemporaryDirectory() as folder:
        for name, (tables, jobs) in SHELVES.items():
            catalog = os.path.join(folder, name + ".db")
            subprocess.run([ENDBELL, "catalog", "import", tables, "--into", catalog], check=True, capture_output=True)
            if not TITLES:
                rules = json.loads(call(catalog, "rules", "--json")[1])
                TITLES.extend(sorted({row["title"] for row in rules["limits"]}, key=len, reverse=True))
            for number, job in enumerate(sorted(glob.glob(jobs))):
                if name != "demo" and number % EVERY:
                    continue
                for command, text, document in asked(job, catalog):
                    told += sum(1 for _ in numbers_of(text))
                    lost = list(missing(text, document))
                    if command[0] == "wire" and is_blind(text, document):
                        lost.append((["none"], "was missed though the air was left out"))
                    passed, failed = passed + (not lost), failed + bool(lost)
                    for numbers, line in lost:
                        print("FAIL", command[0], *command[2:], os.path.relpath(job, ROOT), ", ".join(numbers), "|", line[:200])
    print(f"{told} numbers read")
    if told < 10000:
        print("FAIL too few numbers were read")
        failed += 1
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


sys.exit(main())
