#!/usr/bin/env python3
"""The three sheets of seven demo jobs in a browser, on a phone, at a desk, in the dark and on paper.

usage: tests/outside/sheets.py BUILD_DIR      last line: "N passed, N failed"

Needs Debian's chromium, poppler-utils and npm (playwright-core, axe-core, html-validate). Each sheet: valid HTML; nothing asked for but
the file; nothing sticks out at 360 and 816 px; axe-core finds nothing serious in light and in dark; Letter and A4 take the number of
pages a person would accept. PNGs and PDFs lie in BUILD_DIR/sheets to be looked at.
"""
import glob
import os
import subprocess
import sys

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "pages"))
import browser  # noqa: E402

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.path.abspath(sys.argv[1])
ENDBELL = os.path.join(BUILD, "cli", "endbell")
OUT = os.path.join(BUILD, "sheets")
JOBS = ("01", "02", "04", "05", "07", "10", "23")  # wired, a furnace, a bushing, a module, undecided, two not to be replaced
MOST_PAGES = {"counter": 1, "estimate": 2, "technician": 5}
WITHOUT_A_PART = 2  # pages: the questions and why the rest falls take more than one
REPAIR = {"counter": 1, "estimate": 2, "technician": 1}  # nothing is replaced


def sheets():
    catalog = os.path.join(OUT, "demo.db")
    subprocess.run([ENDBELL, "catalog", "import", os.path.join(ROOT, "demo-catalog/tables"), "--into", catalog], check=True,
                   stdout=subprocess.DEVNULL)
    made = []
    for job in JOBS:
        path = glob.glob(os.path.join(ROOT, "demo-catalog", "jobs", job + "-*.toml"))[0]
        for reader in MOST_PAGES:
            file = os.path.join(OUT, f"{job}-{reader}.html")
            code = subprocess.run([ENDBELL, "--catalog", catalog, "sheet", path, "--for", reader, "--html", file], check=False).returncode
            made.append((file, (MOST_PAGES if code == 0 else REPAIR if code == 12 else dict.fromkeys(MOST_PAGES, WITHOUT_A_PART))[reader]))
    return made


def pages_of(pdf):
    text = subprocess.run(["pdfinfo", pdf], capture_output=True, text=True, check=True).stdout
    return next(int(line.split()[1]) for line in text.splitlines() if line.startswith("Pages:"))


def main():
    os.makedirs(OUT, exist_ok=True)
    modules = browser.installed(BUILD)
    made = sheets()
    files = [file for file, _ in made]
    checks = browser.run(modules, "look", OUT, files) + browser.run(modules, "spoil", OUT, files[:1])
    if len(checks) != 6 * len(files) + 6:
        checks.append((False, f"{len(checks)} checks ran", []))
    for file, most in made:
        for paper in ("Letter", "A4"):
            count = pages_of(file.replace(".html", f"-{paper}.pdf"))
            checks.append((1 <= count <= most, f"{os.path.basename(file)} on {paper}", [f"{count} pages, at most {most} wanted"]))
    failed = [c for c in checks if not c[0]]
    for _, what, why in failed:
        print(f"FAIL {what}: {'; '.join(why)}")
    print(f"{len(checks) - len(failed)} passed, {len(failed)} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
