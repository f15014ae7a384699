#!/usr/bin/env python3
"""Every command shown in README.md and docs/ is run, and must print what is shown.

A block fenced as ```console holds lines "$ COMMAND" with the output below each. Commands run in order, in the
root of the checkout, with `endbell` on the PATH.
usage: tests/docs/run.py BUILD_DIR [--write]     (--write puts the real output into the documents)
"""
import glob
import os
import re
import subprocess
import sys

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.path.abspath(sys.argv[1])
WRITE = "--write" in sys.argv
BLOCK = re.compile(r"^```console\n(.*?)^```$", re.S | re.M)
ENV = {**os.environ, "PATH": os.path.join(BUILD, "cli") + os.pathsep + os.environ["PATH"]}
ENV.pop("ENDBELL_CATALOG", None)

passed = failed = 0


def steps(block):
    """[(command, shown output)]; a command goes on behind a backslash at its line's end."""
    found = []
    for line in block.splitlines():
        if line.startswith("$ "):
            found.append([line[2:], []])
        elif found and found[-1][0].endswith("\\") and not found[-1][1]:
            found[-1][0] += "\n" + line
        elif found:
            found[-1][1].append(line)
    return [(command, "\n".join(out)) for command, out in found]


def real(command):
    done = subprocess.run(["bash", "-c", command], cwd=ROOT, env=ENV, stdout=subprocess.PIPE, stderr=subprocess.STDOUT,
                          stdin=subprocess.DEVNULL, timeout=300)
    return "\n".join(line.rstrip() for line in done.stdout.decode("utf-8", "replace").rstrip("\n").splitlines())


def block_with_output(match):
    global passed, failed
    lines = []
    for command, shown in steps(match.group(1)):
        printed = real(command)
        if printed == "\n".join(line.rstrip() for line in shown.splitlines()):
            passed += 1
        else:
            failed += 1
            print(f"FAIL {command}\n--- shown\n{shown}\n--- printed\n{printed}\n")
        lines += ["$ " + command] + ([printed] if printed else [])
    return "```console\n" + "\n".join(lines) + "\n```"


os.makedirs(os.path.join(ROOT, "build"), exist_ok=True)
for path in [os.path.join(ROOT, "README.md"), *sorted(glob.glob(os.path.join(ROOT, "docs", "*.md")))]:
    with open(path, encoding="utf-8") as f:
        text = f.read()
    new = BLOCK.sub(block_with_output, text)
    if WRITE and new != text:
        with open(path, "w", encoding="utf-8") as f:
            f.write(new)
print(f"{passed} passed, {failed} failed")
sys.exit(1 if failed and not WRITE else 0)
