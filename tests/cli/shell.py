#!/usr/bin/env python3
"""What a person at a shell meets: near words for misspelt ones, JSON from every command, widths, pipes, a full disk,
and text that tries to drive the terminal.

usage: tests/cli/shell.py BUILD_DIR      last line: "N passed, N failed"
"""
import csv
import json
import os
import re
import shutil
import sqlite3
import subprocess
import sys

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from workshop import JOBS, TABLES, Count, Workshop  # noqa: E402

count = Count()
shop = Workshop(sys.argv[1])
JOB = os.path.join(JOBS, "04-wide-bore.toml")
OPEN_JOB = os.path.join(JOBS, "09-inducer-unknown.toml")
PARTS = ("--catalog", shop.catalog)


def near_words():
    shop.write("key.toml", '[plate]\nrotatoin = "CWLE"\n')
    shop.write("group.toml", '[plat]\npower = "1/2"\n')
    shop.write("value.toml", '[plate]\nmount = "studz"\n')
    shop.write("header.csv", "plate.rotatoin\nCWLE\n")
    shop.write("row.csv", "plate.mount\nstudz\n")
    shop.write("header2.csv", "plaet\n1/2 hp\n")
    shop.write("shop.toml", '[limits]\n"static.repair_frist" = 0.5\n')
    for words, code, near in [
        (("matsch", JOB), 64, "match"),
        (("catalog", "improt", "x"), 64, "import"),
        (("catalog", "generation", "x"), 64, "generations"),
        (("match", JOB, "--tpo", "3"), 64, "--top"),
        (("match", JOB, "--widht", "90"), 64, "--width"),
        (("catalog", "import", TABLES, "--inot", "x.db"), 64, "--into"),
        (("sheet", JOB, "--for", "technicain"), 64, "technician"),
        (("catalog", "import", TABLES, "--into", "x.db", "--mode", "row"), 64, "rows"),
        (("rules", "rotatoin"), 64, "rotation"),
        (("match", JOB, "--set", "plate.rotatoin=CW"), 64, "plate.rotation"),
        (("match", JOB, "--set", "plate.mount=studz"), 65, "studs"),
        (("match", "key.toml"), 65, "rotation"),
        (("match", "group.toml"), 65, "plate"),
        (("match", "value.toml"), 65, "studs"),
        (("batch", "header.csv", "--out", "r.csv"), 65, "plate.rotation"),
        (("batch", "header2.csv", "--out", "r.csv"), 65, "plate"),
        (("match", JOB, "--shop", "shop.toml"), 65, "static.repair_first"),
        (("why", JOB, "B-050-230-3Q"), 65, "B-050-230-3R"),       # one letter off
        (("why", JOB, "8-O5O-Z3O-3R"), 65, "B-050-230-3R"),       # misread: 8/B, O/0, Z/2
        (("catalog", "show", "parts.db", "B050-2303-R X"), 65, "B-050-230-3R"),
    ]:
        got, out, err = shop.run(*PARTS, *words)
        count.check(f"did you mean: {' '.join(words[-2:])}", got == code and re.search(r"did you mean '?" + re.escape(near) + r"'?\?", err) and not out,
                    f"exit {got} {err}")
    shop.run(*PARTS, "batch", "row.csv", "--out", "r.csv")
    with open(shop.path("r.csv"), encoding="utf-8") as file:
        count.check("a batch row names the near word too", "did you mean 'studs'?" in file.read())
    for words in (("match", JOB, "one", "too"), ("why", JOB, "zzzzzzzzzz"), ("xyzzy",), ("--frobnicate-it-all", "match", JOB)):
        code, out, err = shop.run(*PARTS, *words)
        count.check(f"nothing near: {' '.join(words[-2:])} gets no guess", code in (64, 65) and "did you mean" not in err and err and not out, err)
    code, out, err = shop.run(*PARTS, "batch", "row.csv", "--out", "./row.csv")
    with open(shop.path("row.csv"), encoding="utf-8") as file:
        count.check("results are never written over the jobs", code == 64 and "--out" in err and file.read() == "plate.mount\nstudz\n", err)
    code, out, err = shop.run(*PARTS, "why", JOB, "b0502303r")
    count.check("case and dashes of a part number do not matter", code == 0 and "B-050-230-3R" in out, err)
    for words in (("match", JOB), ("catalog", "check", "parts.db")):
        code, out, err = shop.run(*PARTS, *words, "--as-of", "2026-02-30")
        count.check(f"a day that is none is refused: {words[0]}", code == 65 and "2026-02-30" in err and "YYYY-MM-DD" in err and not out, err)
    code, out, err = shop.run("match", "--top", "many")
    count.check("a number that is none is named", code == 64 and "whole number from 1 to 1000" in err and "many" in err, err)


def json_everywhere():
    shutil.copytree(TABLES, shop.path("fewer"))
    with open(shop.path("fewer/offers.csv"), encoding="utf-8") as file:
        lines = file.readlines()
    shop.write("fewer/offers.csv", "".join(lines[:-1]))
    shop.write("jobs.csv", "plate\n1/2 hp 208-230 1075 CCWLE 1/2x5 psc\n")
    for words in [("match", JOB), ("match", OPEN_JOB), ("why", JOB, "B-050-230-3R"), ("ask", OPEN_JOB), ("diagnose", JOB),
                  ("wire", JOB), ("compare", JOB), ("sheet", JOB), ("sheet", JOB, "--html", "s.html"), ("batch", "jobs.csv", "--out", "r.csv"),
                  ("find", "B-050-230-3R"), ("find", "nobody knows"), ("rules",), ("rules", "rotation"), ("catalog", "import", TABLES, "--into", "again.db"),
                  ("catalog", "import", shop.path("fewer"), "--into", "again.db"), ("catalog", "restore", "again.db", "1"),
                  ("catalog", "check", "parts.db"), ("catalog", "show", "parts.db", "B-050-230-3R"), ("catalog", "changes", "again.db"),
                  ("catalog", "generations", "again.db")]:
        code, out, err = shop.run("--json", *PARTS, *words)
        try:
            answer = json.loads(out)
            count.check(f"--json {' '.join(words[:2])[:30]}: one document", code in (0, 10, 11, 12) and not err and
                        answer["format"] == 1 and " ".join(words).startswith(answer["command"]), f"exit {code} {err}{out[:200]}")
            count.check(f"--json {' '.join(words[:2])[:30]}: its exit code is the program's", answer.get("exit_code", 0) == code, code)
        except (ValueError, KeyError) as wrong:
            count.check(f"--json {' '.join(words[:2])[:30]} is a document", False, f"{wrong} exit {code} {out[:200]} {err}")
    for words, wanted in [(("match", "nowhere.toml"), 65), (("matsch",), 64), (("match", JOB, "--tpo"), 64), (("catalog", "check", "none.db"), 65),
                          (("catalog", "restore", "parts.db", "77"), 65), (("rules", "rotatoin"), 64), (("match", "--set", "plate.power=blue"), 65)]:
        code, out, err = shop.run(*PARTS, "--json", *words)
        try:
            answer = json.loads(out)
            problem = answer["problems"][0]
            count.check(f"--json {' '.join(words)[-30:]}: an error is a document too", code == wanted == answer["exit_code"] and
                        problem["text"] in err, f"exit {code} {err}{out}")
        except (ValueError, KeyError, IndexError) as wrong:
            count.check(f"--json {' '.join(words)[-30:]}: an error is a document too", False, f"{wrong} exit {code} {out} {err}")
    shop.write("two.toml", '[plate]\npower = "blue"\nmount = "glue"\n')
    code, out, err = shop.run(*PARTS, "match", "two.toml", "--json")
    found = json.loads(out)["problems"]
    count.check("every problem has its place", [(p["file"], p["line"], p["subject"], p["value"]) for p in found] ==
                [("two.toml", 2, "plate.power", "blue"), ("two.toml", 3, "plate.mount", "glue")], out)


def numbers():
    code, out, err = shop.run(*PARTS, "find", "EB-5", "4410")
    count.check("an old number of two words names its parts, and whose word it is", code == 0 and "T-050-230-5H" in out and
                "interchange list" in out and not err, out + err)
    code, out, err = shop.run(*PARTS, "find", "8-O5O-Z3O-3R")
    count.check("a look-alike is named as such", code == 0 and "looks alike" in out and "No number of this catalog is exactly 8-O5O-Z3O-3R" in out, out)
    code, out, err = shop.run(*PARTS, "find", "WWWWWWWWWWW")
    count.check("a number that nobody knows is said so", code == 0 and "Nobody knows WWWWWWWWWWW" in out, out)
    code, out, err = shop.run(*PARTS, "--json", "find", "-", stdin="B-050-230-3R\n\n  EB54410\n")
    answers = json.loads(out)["answers"]
    count.check("lines of stdin are answered in their order", code == 0 and [a["text"] for a in answers] == ["B-050-230-3R", "EB54410"] and
                answers[0]["parts"][0]["part_id"] == "B-050-230-3R", out[:300])
    for words, stdin, wanted, said in [((*PARTS, "find", "---"), "", 64, "---"), ((*PARTS, "find"), "", 64, "TEXT"),
                                       ((*PARTS, "find", "-"), "B-050\n///\n", 65, "///"), (("find", "B-050"), "", 64, "--catalog"),
                                       (("--catalog", "none.db", "find", "B-050"), "", 65, "none.db")]:
        code, out, err = shop.run(*words, stdin=stdin)
        count.check(f"find refuses {said}", code == wanted and said in err and not out, f"exit {code} {err}{out}")


def widest(out):
    return max(len(line) for line in out.splitlines())


def widths_and_looks():
    words = (*PARTS, "ask", OPEN_JOB)
    plain = shop.run(*words)[1]
    count.check("a pipe has 80 columns whatever COLUMNS says", shop.run(*words, env={"COLUMNS": "50"})[1] == plain and 60 < widest(plain) <= 80)
    for columns in (50, 100):
        code, seen = shop.on_terminal(*words, columns=columns, env={"NO_COLOR": "1"})
        count.check(f"a terminal of {columns} columns is filled, not overrun", columns - 20 < widest(seen) <= columns, widest(seen))
    code, seen = shop.on_terminal(*words, columns=100, env={"NO_COLOR": "1", "COLUMNS": "60"})
    count.check("COLUMNS comes before the terminal's own size", widest(seen) <= 60, widest(seen))
    code, seen = shop.on_terminal(*words, columns=300, env={"NO_COLOR": "1"})
    count.check("a very wide terminal is not filled", widest(seen) <= 120, widest(seen))
    code, seen = shop.on_terminal(*words, columns=100, env={"NO_COLOR": "1"}, stderr_too=True)
    count.check("--width comes before all", widest(shop.on_terminal(*words, "--width", "44", columns=100, env={"NO_COLOR": "1"})[1]) <= 44)

    code, bold = shop.on_terminal(*words)
    count.check("a terminal gets bold heads", "\x1b[1mWhat to measure next\x1b[0m" in bold, bold[:80])
    count.check("bold is all that is added", re.sub("\x1b\\[[01]m", "", bold) == plain, bold[:200])
    for env, why in (({"NO_COLOR": "1"}, "NO_COLOR"), ({"TERM": "dumb"}, "a dumb terminal"), ({"TERM": ""}, "no terminal type")):
        count.check(f"not with {why}", shop.on_terminal(*words, env=env)[1] == plain)
    count.check("an empty NO_COLOR counts for nothing", shop.on_terminal(*words, env={"NO_COLOR": ""})[1] == bold)
    code, seen = shop.on_terminal(*words, "--json")
    count.check("JSON is never bold", "\x1b" not in seen and json.loads(seen)["command"] == "ask")

    importing = ("catalog", "import", TABLES, "--into", "progress.db")
    code, seen = shop.on_terminal(*importing, stderr_too=True)
    count.check("an import tells its progress on a terminal, and wipes it", "rows  100 %" in seen and "\r\x1b[K" in seen, seen[:300])
    code, out, err = shop.run(*importing)
    count.check("and nowhere else", code == 0 and not err and "\r" not in out, err)


def pipes():
    command = f"{shop.program} --catalog {shop.catalog} match {JOB}"
    done = subprocess.run(["bash", "-c", f"{command} | head -n 1; echo ${{PIPESTATUS[0]}}"], capture_output=True, text=True, env=shop.environment)
    count.check("a reader that has enough ends it quietly", done.stdout.splitlines()[1] in ("0", "141") and not done.stderr, done.stdout + done.stderr)
    long = f"{shop.program} --catalog {shop.catalog} --json match {JOB} --top 1000"
    ignored = f"trap '' PIPE; {long} | true; echo ${{PIPESTATUS[0]}}"
    for script in (f"{long} | true; echo ${{PIPESTATUS[0]}}", ignored):
        done = subprocess.run(["bash", "-c", script], capture_output=True, text=True, env=shop.environment)
        count.check("a reader that is gone too: 141, and not a word", done.stdout.strip() == "141" and not done.stderr, done.stdout + done.stderr)
    for words in (("match", JOB), ("--json", "match", JOB), ("--help",), ("rules",), ("catalog", "show", "parts.db", "B-050-230-3R")):
        with open("/dev/full", "wb") as full:
            code, _, err = shop.run(*PARTS, *words, stdout=full)
        count.check(f"a full disk under {' '.join(words)[:20]}: 74, and said", code == 74 and "output" in err and "No space" in err, f"exit {code} {err}")
    code, out, err = shop.run(*PARTS, "sheet", JOB, "--html", "/dev/full")
    count.check("a sheet that cannot be written is said", code == 65 and "/dev/full" in err and not out and not os.path.exists("/dev/full.part"), err)
    code, out, err = shop.run(*PARTS, "sheet", JOB, "--html", "no/such/folder.html")
    count.check("so is one in no folder", code == 65 and "no/such/folder.html" in err, err)
    shop.write("sheets/real.html", "old")
    os.chmod(shop.path("sheets/real.html"), 0o640)
    os.symlink("sheets/real.html", shop.path("link.html"))
    shop.run(*PARTS, "sheet", JOB, "--html", "link.html")
    with open(shop.path("sheets/real.html"), encoding="utf-8") as file:
        text = file.read()
    count.check("a link stays a link, and its file keeps its permissions", os.path.islink(shop.path("link.html")) and text.startswith("<!") and
                os.stat(shop.path("sheets/real.html")).st_mode & 0o777 == 0o640, text[:20])


ATTACK = "\x1b[2J\x1b]0;owned\x07\x9b31m\u202egnp\u2066\u200f\x7f"


def inert(text):
    return not re.search("[\x00-\x08\x0b-\x1f\x7f-\x9f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]", text)


def hostile_text():
    tables = shop.path("hostile")
    shutil.copytree(TABLES, tables)
    path = os.path.join(tables, "parts.csv")
    with open(path, encoding="utf-8", newline="") as file:
        rows = list(csv.reader(file))
    for column in ("description", "maker"):
        rows[1][rows[0].index(column)] = ATTACK
    with open(path, "w", encoding="utf-8", newline="") as file:
        csv.writer(file).writerows(rows)
    code, out, err = shop.run("catalog", "import", tables, "--into", "hostile.db")
    count.check("an import of hostile text sets it aside, inert", code == 0 and "\\x1b[2J" in out and inert(out + err), repr(out + err))
    # A catalog file from elsewhere may hold what no import lets in.
    part = "B-050-230-3R"
    with sqlite3.connect(shop.path("hostile.db")) as db:
        db.execute("UPDATE parts SET description = ?, maker = ?, part_number = part_number || ? WHERE part_id = ?", (ATTACK, ATTACK, ATTACK, part))
        db.execute("UPDATE offers SET branch = branch || ? WHERE part_id = ?", (ATTACK, part))
    db.close()
    kept = "\\x1b[2J" in shop.run("--width", "400", "catalog", "show", "hostile.db", part)[1]
    hostile = ("--catalog", "hostile.db")
    job = shop.write("hostile.toml", '[unit]\nname = "' + "".join(f"\\u{ord(c):04x}" for c in ATTACK) + '"\nload = "indoor blower"\n')
    typo = shop.write("typo\x1b[31m\u202e.toml", '[plate]\nmount = "' + "".join(f"\\u{ord(c):04x}" for c in ATTACK) + '"\n"a\\u001bb" = 1\n')
    for words in [("catalog", "show", "hostile.db", part), ("why", JOB, part), ("match", JOB, "--top", "100"), ("match", job), ("ask", job), ("sheet", job),
                  ("match", typo), ("match", "nowhere\x1b[2J.toml"), ("match", JOB, "--set", "plate.mount=" + ATTACK), ("match", "--plate", ATTACK),
                  ("match" + ATTACK,), ("match", "--" + ATTACK), ("rules", ATTACK), ("why", JOB, part + ATTACK), ("sheet", JOB, "--for", ATTACK),
                  ("catalog", "changes", "hostile.db"), ("catalog", "check", "hostile.db"), ("catalog", "check", "none\x1b.db"),
                  ("sheet", JOB, "--html", "no\x1b[2J/x.html"), ("batch", typo, "--out", "r.csv")]:
        code, out, err = shop.run(*hostile, *words)
        count.check(f"inert: {' '.join(words)[:40]!r}", code in (0, 10, 11, 12, 64, 65) and (out or err) and inert(out + err), repr(f"exit {code} {out}{err}")[:600])
    count.check("catalog show shows what is there, as escapes", kept)
    code, seen = shop.on_terminal("catalog", "import", tables, "--into", "hostile\x1b[5m.db", stderr_too=True)
    count.check("progress is inert", inert(seen.replace("\r", "").replace("\x1b[K", "").replace("\x1b[1m", "").replace("\x1b[0m", "")), repr(seen))
    done = subprocess.run([shop.program, *PARTS, "match", "--plate", b"\x9b31m \xff\xfe 1/2 hp"], capture_output=True, env=shop.environment)
    try:
        (done.stdout + done.stderr).decode("utf-8")
        count.check("bytes that are no UTF-8 come out as UTF-8", True)
    except UnicodeDecodeError as wrong:
        count.check("bytes that are no UTF-8 come out as UTF-8", False, wrong)


near_words()
json_everywhere()
numbers()
widths_and_looks()
pipes()
hostile_text()
shop.close()
sys.exit(count.close())
