#!/usr/bin/env python3
"""A person at a terminal: two demo jobs, answered question by question to a decision in a tmux session.

The job file that is left gives the same decision by `endbell match`.
usage: tests/cli/session.py BUILD_DIR      last line: "N passed, N failed"
"""
import os
import re
import subprocess
import sys
import time

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from workshop import JOBS, Count, Workshop  # noqa: E402

count = Count()
shop = Workshop(sys.argv[1])
PARTS = ("--catalog", shop.catalog)


class Terminal:
    """80 columns and 50 lines of tmux, on a server of its own."""

    def __init__(self):
        self.socket = shop.path("tmux.socket")
        self.tmux("-f", "/dev/null", "new-session", "-d", "-s", "desk", "-x", "80", "-y", "50", "env", "-i",
                  *(f"{k}={v}" for k, v in shop.environment.items()), "PS1=desk$ ", "bash", "--noprofile", "--norc")
        self.tmux("set-option", "-g", "history-limit", "5000")

    def tmux(self, *words):
        done = subprocess.run(["tmux", "-S", self.socket, *words], capture_output=True, text=True, cwd=shop.home)
        return done.stdout

    def type(self, text):
        self.tmux("send-keys", "-t", "desk", "-l", text)
        self.tmux("send-keys", "-t", "desk", "Enter")

    def screen(self):
        """Everything that was shown, lines that the terminal folded put together again."""
        return self.tmux("capture-pane", "-t", "desk", "-p", "-J", "-S", "-").rstrip()

    def wait_for(self, pattern, beyond):
        """The text shown beyond `beyond` characters, as soon as it ends in the pattern; None when the shell has ended."""
        while self.lives():
            seen = self.screen()
            found = re.search(pattern, seen[beyond:])
            if found:
                return seen, found
            time.sleep(0.05)
        return self.screen(), None

    def lives(self):
        return self.tmux("list-sessions") != ""

    def close(self):
        self.tmux("kill-server")


def stripped(name, keys):
    """A demo job with lines left out: what nobody has told yet."""
    with open(os.path.join(JOBS, name), encoding="utf-8") as file:
        lines = file.readlines()
    return shop.write(name, "".join(line for line in lines if not re.match(rf"({'|'.join(keys)}) *=", line)))


def answered(terminal, name, answers):
    """Types each answer when its question stands at the end of the screen. answers: {key: [lines to type]}"""
    start = beyond = len(terminal.screen())
    terminal.type(f"{shop.program} --catalog parts.db ask {name} --answer; echo \"ended with $?\"")
    asked = []
    while True:
        seen, found = terminal.wait_for(r"(?:([a-z_]+\.[a-z_]+)>|ended with (\d+)\ndesk\$)$", beyond)
        if not found:
            count.check(f"{name}: the next question comes", False, seen[-1500:])
            return None, seen[start:]
        if found.group(2):
            count.check(f"{name}: every answer was asked for", set(answers) <= set(asked), asked)
            return int(found.group(2)), seen[start:]
        key = found.group(1)
        asked.append(key)
        lines = answers.get(key, ["skip"])
        line = lines.pop(0) if len(lines) > 1 else lines[0]
        beyond = len(seen)
        if len(asked) > 40:
            count.check(f"{name}: the questions come to an end", False, asked)
            return None, seen[start:]
        terminal.type(line)


def to_a_decision(terminal, name, keys, answers, wanted, shown):
    path = stripped(name, keys)
    code, seen = answered(terminal, name, answers)
    count.check(f"{name}: ends in a decision, {wanted}", code == wanted, f"{code}\n{seen[-2000:]}")
    for text in shown:
        count.check(f"{name}: shows {text!r}", text in seen, seen[-3000:])
    decided, out, err = shop.run(*PARTS, "match", path)
    count.check(f"{name}: `match` on the file that is left decides the same", decided == code, err)
    text = " ".join(out.split())
    count.check(f"{name}: in the same words", text in " ".join(seen.split()), out[:1500])
    count.check(f"{name}: it is the end of the screen", " ".join(seen.split()).endswith(text + f" ended with {code} desk$"), seen[-800:])
    with open(path, encoding="utf-8") as file:
        return file.read()


if not subprocess.run(["which", "tmux"], capture_output=True).stdout:
    sys.exit("tmux is missing: tests/prepare PRESET --for-tests")
terminal = Terminal()
left = to_a_decision(terminal, "09-inducer-unknown.toml", [], {"unit.assembly_number": ["?", "#N/A", "ASM-70418"]}, 0,
                     ["Answering unit.assembly_number", "That says nothing of it", "Written: unit.assembly_number", "Question 1:"])
count.check("the answer is in the file as it was typed", 'assembly_number = "ASM-70418"' in left, left)
# The family is not asked: 10 uF at 370 V is the run capacitor of a permanent-split motor.
left = to_a_decision(terminal, "04-wide-bore.toml", ["load", "family", "power", "volts", "speed", "phase", "mount"],
                     {"unit.load": ["indoor blwer", "indoor blower"], "plate.power": ["back", "3/4 HP"],
                      "plate.mount": ["belly band"], "plate.speed": ["1075"]}, 0,
                     ["did you mean 'indoor blower'?", "Question 2:", "Asked again", "can still fit",
                      "What can take its place"])
count.check("comments and lines of the job file stay", left.startswith("#") and "[shop]" in left, left)
terminal.close()
shop.close()
sys.exit(count.close())
