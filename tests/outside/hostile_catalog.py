#!/usr/bin/env python3
"""A catalog and a job whose every text field means harm: markup, quotes, control characters, direction marks, great length.

usage: tests/outside/hostile_catalog.py BUILD_DIR [--full]      last line: "N passed, N failed"

Needs Debian's chromium and npm. The demo tables are rewritten four times. What a cell may not hold is refused with file, line, column
and value. What it may hold must come out as text: the three HTML sheets are valid, inert and stay inside the page; text, JSON and error
messages hold no byte that drives a terminal and no mark that turns a line.
"""
import csv
import glob
import json
import os
import subprocess
import sys
import unicodedata

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "pages"))
import browser  # noqa: E402

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.path.abspath(sys.argv[1])
ENDBELL = os.path.join(BUILD, "cli", "endbell")
OUT = os.path.join(BUILD, "hostile")
TABLES = os.path.join(ROOT, "demo-catalog", "tables")

NUMBERS = {"part_id", "part_number", "old_number", "other_part_id", "motor", "program"}  # at most 100 characters: keys, the same in every table
TEXTS = {"maker", "description", "frame", "assembly", "connector", "connector_from", "connector_to", "label", "seller",
         "branch", "source", "set_by"}
LONG = "long " + "x" * 1500 + " <b>" + "y " * 700  # below the 4,000 that a cell may hold

KINDS = {
    "markup": ("<script>window.hit=1</script>", "\"><img src=x onerror=window.hit=1>", "]]>&lt;!--'--><svg onload='window.hit=1'>",
               "</title></style></main><h1>", "javascript:alert(1)`${7}`"),
    "turned": ("\u202edesrever\u202c", "\u200f\u200e\u061c", "\u2066isolated\u2069", "\u05d0\u05d1\u05d2", "\ufeff\u200b\u2028"),
    "control": ("\u009b31m", "\u0085\u0090", "\ufffd\u00a0", "\\x1b[31m", "%s%n{}{0}"),
    "long": (LONG,),
}
KEYED = {"program", "connector", "connector_from", "connector_to", "branch", "assembly"}  # texts that two sides must share
JOB_KEYS = (("unit", "name"), ("unit", "equipment_model"), ("unit", "equipment_serial"), ("plate", "frame"))

results = []


def check(ok, what, why=""):
    results.append((bool(ok), what, [why] if why else []))


def drives(text):
    """What of a text moves a terminal's cursor, hides itself or turns the line it stands in."""
    return sorted({f"U+{ord(c):04X}" for c in text if c != "\n" and unicodedata.category(c) in ("Cc", "Cf", "Zl", "Zp", "Cs")})


def run(*arguments):
    """Output of both streams as text; bytes that are no UTF-8 are a failure of their own."""
    done = subprocess.run([ENDBELL, *arguments], capture_output=True, check=False)
    what = " ".join(os.path.basename(a)[:40] for a in arguments if not a.startswith("\x00"))
    shown = "".join(c if c.isprintable() else "?" for c in what)
    for stream, raw in (("stdout", done.stdout), ("stderr", done.stderr)):
        try:
            found = drives(raw.decode("utf-8"))
        except UnicodeDecodeError as wrong:
            found = [str(wrong)]
        check(not found, f"{shown}: {stream} leaves the terminal alone", ", ".join(found[:6]))
    check(done.returncode in (0, 10, 11, 12, 64, 65), f"{shown}: ends as it should", f"exit {done.returncode}")
    return done


def rewritten(kind, folder):
    """The demo tables with the kind's texts behind every text that they hold, and in every text that is empty but free."""
    os.makedirs(folder, exist_ok=True)
    turn = 0
    ends = KINDS[kind]
    for path in sorted(glob.glob(os.path.join(TABLES, "*.csv"))):
        with open(path, newline="", encoding="utf-8") as f:
            rows = list(csv.DictReader(f))
        for row in rows:
            for column, value in row.items():
                if column in NUMBERS and value and kind != "long":
                    row[column] = value + " " + ends[len(value) % len(ends)]  # of the value alone: keys still meet
                elif column in TEXTS and value and not (column == "source" and value == "common practice"):
                    row[column] = value + " " + ends[(len(value) if column in KEYED else turn) % len(ends)]
                    turn += 1
        with open(os.path.join(folder, os.path.basename(path)), "w", newline="", encoding="utf-8") as f:
            writer = csv.DictWriter(f, rows[0].keys())
            writer.writeheader()
            writer.writerows(rows)


def toml_text(text):
    return json.dumps(text)  # a JSON string is a TOML basic string


def hostile_job(job, kind, file):
    """The job with the kind's texts in its own free texts; a text of 10,000 characters where the kind is long."""
    ends = KINDS[kind] if kind != "long" else ("z" * 10_000, "w " * 5_000)
    with open(glob.glob(os.path.join(ROOT, "demo-catalog", "jobs", job + "-*.toml"))[0], encoding="utf-8") as f:
        lines = f.read().splitlines()
    for i, line in enumerate(lines):  # so that parts still fit: the same text behind the same value as in the tables
        key, _, value = (piece.strip() for piece in line.partition("="))
        if key in KEYED and not (kind == "long" and key in NUMBERS):
            value = value.strip('"')
            lines[i] = f"{key} = {toml_text(value + ' ' + KINDS[kind][len(value) % len(KINDS[kind])])}"
    for i, (group, key) in enumerate(JOB_KEYS):
        said = toml_text("said " + ends[i % len(ends)])
        kept = [line for line in lines if line.split("=")[0].strip() != key]
        at = kept.index(f"[{group}]")
        lines = kept[:at + 1] + [f"{key} = {said}"] + kept[at + 1:]
    with open(file, "w", encoding="utf-8") as f:
        f.write("\n".join(lines) + "\n")


def refused():
    """What no cell may hold: the row is set aside, the rest goes in, and the message shows where and why."""
    folder = os.path.join(OUT, "refused")
    os.makedirs(folder, exist_ok=True)
    header = "part_id,kind,maker,part_number,status,description\n"
    for name, bad, expected in (("escape", "red \x1b[31m", "control"), ("bell", "ring \x07", "control"), ("delete", "gone \x7f", "control"),
                                ("ten thousand", "x" * 10_000, "4000"), ("no text", "caf\udce9", "UTF-8")):
        path = os.path.join(folder, "parts.csv")
        with open(path, "wb") as f:
            f.write((header + f"GOOD,motor,Maker,1,active,good\nBAD,motor,Maker,2,active,{bad}\n").encode("utf-8", "surrogateescape"))
        done = run("catalog", "import", path, "--into", os.path.join(folder, "c.db"))
        said = (done.stdout + done.stderr).decode("utf-8", "replace")
        if name == "no text":  # read as Windows text: what an old spreadsheet writes is no fault
            check("GOOD" in said or done.returncode in (0, 65), "bytes that are no UTF-8 are read or refused")
            continue
        check("parts.csv:3" in said and "description" in said and expected in said, f"a cell with {name} is refused at its place", said[:300])


def kind_runs(kind):
    """The HTML files of one kind; everything printed on the way is looked at."""
    folder = os.path.join(OUT, kind)
    rewritten(kind, folder)
    catalog = os.path.join(OUT, kind + ".db")
    done = run("catalog", "import", folder, "--into", catalog)
    check(done.returncode == 0 and b"generation" in done.stdout, f"{kind}: the tables go in", (done.stdout + done.stderr).decode()[-300:])
    run("catalog", "check", catalog)
    run("catalog", "changes", catalog)
    files = []
    for job in ("01", "05") + (("04", "08") if "--full" in sys.argv[2:] else ()):
        path = os.path.join(OUT, f"{kind}-{job}.toml")
        hostile_job(job, kind, path)
        for verb in ("match", "ask", "diagnose", "compare", "wire"):
            run("--catalog", catalog, verb, path)
        answer = run("--catalog", catalog, "--json", "match", path)
        try:
            first = (json.loads(answer.stdout)["options"] or [{"part": "NONE"}])[0]["part"]
        except ValueError as wrong:
            first = "NONE"
            check(False, f"{kind}-{job}: JSON", str(wrong))
        if kind == "markup" and first != "NONE":
            check(any(end in first for end in KINDS[kind]), f"{kind}-{job}: JSON gives the text as it is", first)
        run("--catalog", catalog, "why", path, first)
        run("catalog", "show", catalog, first)
        for reader in ("counter", "technician", "estimate"):
            run("--catalog", catalog, "sheet", path, "--for", reader)
            run("--catalog", catalog, "--json", "sheet", path, "--for", reader)
            file = os.path.join(OUT, f"{kind}-{job}-{reader}.html")
            run("--catalog", catalog, "sheet", path, "--for", reader, "--html", file)
            with open(file, encoding="utf-8") as f:
                page = f.read()
            found = drives(page)
            check(not found, f"{os.path.basename(file)} holds no mark that turns a line", ", ".join(found))
            if kind == "long":
                check("more characters]" in page, f"{os.path.basename(file)} says that a text was cut")
            files.append(file)
            check(job not in ("01", "05") or ">Take</h2>" in page, f"{os.path.basename(file)} takes a part, and says it")
    return files


def main():
    os.makedirs(OUT, exist_ok=True)
    refused()
    run("match", "--plate", "1/2 hp \x1b[31m \u202e 1075", "--catalog", os.path.join(OUT, "missing\x07.db"))
    files = [file for kind in KINDS for file in kind_runs(kind)]
    pages = browser.run(browser.installed(BUILD), "inert", OUT, files)
    if len(pages) != 4 * len(files):
        pages.append((False, f"{len(pages)} checks of {len(files)} pages ran", []))
    checks = results + pages
    failed = [c for c in checks if not c[0]]
    for _, what, why in failed[:60]:
        print(f"FAIL {what}: {'; '.join(why)}")
    print(f"{len(checks) - len(failed)} passed, {len(failed)} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
