#!/usr/bin/env python3
"""`endbell ask JOB --answer` with its answers from a pipe: what it takes, what it refuses, and what it leaves in the job file.

Keys are taken out of demo jobs; each question is answered with what the demo job said, until there is a decision.
usage: tests/cli/ask.py BUILD_DIR      last line: "N passed, N failed"
"""
import glob
import json
import os
import random
import re
import subprocess
import sys
import tomllib

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from workshop import JOBS, Count, Workshop  # noqa: E402

count = Count()
shop = Workshop(sys.argv[1])
PARTS = ("--catalog", shop.catalog)
chance = random.Random(20260120)


def read(path):
    with open(path, encoding="utf-8", newline="") as file:
        return file.read()


def facts(text):
    """{"plate.power": "1/2"}: what a job says, as text."""
    said = {}
    for group, fields in tomllib.loads(text).items():
        for name, value in fields.items():
            if isinstance(value, list):
                value = "; ".join(" | ".join(row) if isinstance(row, list) else str(row) for row in value)
            elif isinstance(value, dict):
                value = "; ".join(f"{k} = {v}" for k, v in value.items())
            said[f"{group}.{name}"] = {True: "yes", False: "no"}.get(value, str(value)) if isinstance(value, bool) else str(value)
    return said


def answered(path, answers, *words):
    """The whole dialogue with a program that waits for each answer. (exit code, transcript)."""
    program = subprocess.Popen([shop.program, *PARTS, "ask", path, "--answer", *words], cwd=shop.home, env=shop.environment,
                               stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.STDOUT)
    seen = b""
    asked = 0
    while True:
        block = os.read(program.stdout.fileno(), 65536)
        if not block:
            break
        seen += block
        prompt = re.search(rb"\n([a-z_]+\.[a-z_]+)> $", seen)
        if not prompt:
            continue
        asked += 1
        answer = answers(prompt.group(1).decode(), asked)
        if answer is None:
            program.stdin.close()
            answers = lambda *_: None  # noqa: E731
            continue
        program.stdin.write(answer.encode("utf-8") + b"\n")
        program.stdin.flush()
    return program.wait(), seen.decode("utf-8", "replace")


def without(text, keys):
    """The job's text with single-line keys taken out."""
    group, kept = "", []
    for line in text.splitlines(keepends=True):
        head = re.match(r"\[(\w+)\]", line)
        group = head.group(1) if head else group
        name = re.match(r"(\w+) *=", line)
        if not (name and f"{group}.{name.group(1)}" in keys):
            kept.append(line)
    return "".join(kept)


def takes_demo_jobs_to_their_decisions():
    decided = 0
    for job in sorted(glob.glob(os.path.join(JOBS, "*.toml"))):
        text, name = read(job), os.path.basename(job)
        said = facts(text)
        single = [k for k in said if re.search(rf"(?m)^{k.split('.')[1]} *= *[^\[{{\n]*$", text) and k.split(".")[0] in ("unit", "plate", "measured", "controls", "equipment")]
        taken = set(chance.sample(single, min(5, len(single))))
        path = shop.write(name, without(text, taken))
        before = read(path)
        given = []

        def answer(key, asked):
            given.append(key)
            return said.get(key, "skip") if asked < 40 else "quit"

        code, seen = answered(path, answer)
        after, match = read(path), shop.run(*PARTS, "match", path)
        count.check(f"{name}: `match` on the file that is left decides the same", code == match[0] and seen.endswith(match[1]),
                    f"exit {code}, match {match[0]}\n{seen[-300:]}")
        told = {k: v for k, v in facts(after).items() if k not in facts(before)}
        count.check(f"{name}: each answer is in the file as it was given", all(said[k] == v for k, v in told.items()) and
                    set(told) == {k for k in given if k in said and k not in facts(before)}, (told, given))
        kept = [line for line in before.splitlines() if line.strip()]
        rest = iter(after.splitlines())
        count.check(f"{name}: every line that was there still is, in its order", all(line in rest for line in kept), after)
        decided += code in (0, 10, 12)
    count.check("most of them end in a decision", decided >= 15, decided)


JOB = """# the phone rang twice
[unit]
load = "indoor blower"   # he is sure

[plate]   # as read out
family = "PSC"
power = "1/3"
volts = "115/230"
speed = "1075"
rotation = "CW"
shaft_diameter = "1/2"
body_diameter = "5.6"
mount = "band"

# the end
"""


def puts_up_with_people():
    path = shop.write("phone.toml", JOB)
    code, out, err = shop.run(*PARTS, "ask", path, "--answer", stdin="")
    count.check("the end of input stops it: 11, and what is open is told", code == 11 and "Stopped" in out and "still open" in out and not err, err)
    count.check("and nothing was written", read(path) == JOB)
    code, out, err = shop.run(*PARTS, "ask", path, "--answer", stdin="?\n\nblue\n115/230\nN/A\nquit\n")
    count.check("? explains", "Bare number" in out and "For example" in out, out)
    count.check("an empty line is told what may stand there", "An answer, or one of" in out)
    count.check("what cannot be read is refused with the reason, and asked again",
                "equipment.supply = 'blue': expected" in out and out.count("equipment.supply> ") == 6, out)
    count.check("nothing of that was written", code == 11 and read(path) == JOB)

    code, out, err = shop.run(*PARTS, "ask", path, "--answer", stdin="skip\nback\nback\nskip\nquit\n")
    count.check("back undoes a skip, and says when there is nothing before", out.count("Question 1: equipment.supply") == 2 and
                "no question before" in out and read(path) == JOB, out)

    low = shop.write("low.toml", '[unit]\nload = "indoor blower"\n')
    code, out, err = shop.run(*PARTS, "ask", low, "--answer", stdin="PSC\nquit\n")
    first = re.search(r"Question 1: (\S+)", out).group(1)
    code, out, err = shop.run(*PARTS, "ask", low, "--answer", stdin="quit\n")
    text = read(low)
    code, out, err = shop.run(*PARTS, "ask", shop.write("low.toml", '[unit]\nload = "indoor blower"\n'), "--answer", stdin="PSC\nback\nquit\n")
    count.check("back takes the last answer out of the file again", first in out and read(low) == '[unit]\nload = "indoor blower"\n', text)

    path = shop.write("crlf.toml", JOB.replace("\n", "\r\n"))
    os.chmod(path, 0o640)
    code, out, err = shop.run(*PARTS, "ask", path, "--answer", stdin="115 V, single\n115\nquit\n")
    text = read(path)
    count.check("line ends and permissions are the file's own", text.count("\r\n") == text.count("\n") and os.stat(path).st_mode & 0o777 == 0o640 and
                'supply = "115"' in text and text.startswith(JOB.replace("\n", "\r\n")), text)

    path = shop.path("new.toml")
    code, out, err = shop.run(*PARTS, "ask", path, "--answer", stdin="quit\n")
    count.check("a new job that nobody answered leaves no file", code == 11 and not os.path.exists(path), err)
    code, out, err = shop.run(*PARTS, "ask", path, "--answer", stdin="outdoor fan\nquit\n")
    count.check("the first answer makes it", code == 11 and read(path) == '[unit]\nload = "outdoor fan"\n', out)
    code, out, err = shop.run(*PARTS, "ask", shop.path("newer.toml"), "--answer", stdin="outdoor fan\nback\nquit\n")
    count.check("back takes it away again", code == 11 and "Asked again" in out and not os.path.exists(shop.path("newer.toml")), out)
    path = shop.write("empty.toml", "")
    shop.run(*PARTS, "ask", path, "--answer", stdin="quit\n")
    count.check("an empty file that was there stays", os.path.exists(path))

    path = shop.write("flat.toml", 'unit = { load = "indoor blower" }\nplate.family = "PSC"\n')
    code, out, err = shop.run(*PARTS, "ask", path, "--answer", stdin="1/2\nquit\n")
    count.check("a group that is not written on a line of its own is told of, not guessed at", code == 11 and
                ("on a line of its own" in out or "Written" in out), out)
    path = shop.write("wrong.toml", '[plate]\nmount = "glue"\n')
    code, out, err = shop.run(*PARTS, "ask", path, "--answer", stdin="x\n")
    count.check("a job file that is wrong is said first", code == 65 and "wrong.toml:2" in err and "glue" in err, err)
    for words in ((), ("--plate", "1/2 hp", "x.toml"), ("--set", "plate.power=1/2", "x.toml")):
        code, out, err = shop.run(*PARTS, "ask", "--answer", *words)
        count.check(f"answers go into a job file alone: {words[:1]}", code == 64 and "--answer" in err and not out and not os.path.exists(shop.path("x.toml")), err)
    code, out, err = shop.run("ask", "y.toml", "--answer")
    count.check("without a catalog no file is made", code == 64 and not os.path.exists(shop.path("y.toml")), err)

    path = shop.write("json.toml", JOB)
    code, out, err = shop.run("--json", *PARTS, "ask", path, "--answer", stdin="115\n")
    answer = json.loads(out)
    count.check("under --json the dialogue goes to stderr, the answer to stdout", answer["command"] == "ask" and answer["exit_code"] == code and
                "Question 1" in err, err)
    decided = shop.run("--json", *PARTS, "match", path)
    count.check("and it is the answer of match", json.loads(decided[1])["pick"] == answer["pick"] and decided[0] == code)
    code, out, err = shop.run(*PARTS, "ask", shop.write("esc.toml", JOB), "--answer", stdin="\x1b[2J\u202e\n\x07\nquit\n")
    count.check("what is typed cannot drive the terminal", not re.search("[\x00-\x08\x0b-\x1f\u202e]", out), repr(out[-600:]))


takes_demo_jobs_to_their_decisions()
puts_up_with_people()
shop.close()
sys.exit(count.close())
