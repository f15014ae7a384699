#!/usr/bin/env python3
"""Every command shown in README.md and the documents is run, and must print what is shown.

A block fenced as ```console holds lines "$ COMMAND" with the output below each. A block whose fence names a file
(```toml my-job.toml) is that file: it is written where the reader stands. The blocks of one page run in order in
one shell, which begins in the root of the checkout with `endbell` on the PATH and an empty home folder.
usage: tests/docs/run.py BUILD_DIR [--write] [PAGE ...]     (--write puts the real output into the pages)
"""
import glob
import os
import re
import subprocess
import sys
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.path.abspath(sys.argv[1])
WRITE = "--write" in sys.argv
NAMED = [os.path.abspath(a) for a in sys.argv[2:] if not a.startswith("--")]
BLOCK = re.compile(r"^```(?:console|\w+ (?P<file>[\w.-]+))\n(?P<body>.*?)^```$", re.S | re.M)
MARK = "-- step %d of the page --"


def pages():
    folders = ("", "docs", "docs/**", "catalog-schema", "demo-catalog")
    found = {p for folder in folders for p in glob.glob(os.path.join(ROOT, folder, "*.md"), recursive=True)}
    return NAMED or sorted(found)


def steps(body):
    """[(command, shown output)]; a command goes on behind a backslash at its line's end."""
    found = []
    for line in body.splitlines():
        if line.startswith("$ "):
            found.append([line[2:], []])
        elif found and found[-1][0].endswith("\\") and not found[-1][1]:
            found[-1][0] += "\n" + line
        elif found:
            found[-1][1].append(line)
    return [(command, "\n".join(out)) for command, out in found]


def environment(home):
    kept = {k: v for k, v in os.environ.items() if not k.startswith(("ENDBELL_", "XDG_")) and k != "COLUMNS"}
    return {**kept, "HOME": home, "PATH": os.path.join(BUILD, "cli") + os.pathsep + os.environ["PATH"]}


def tidy(text):
    return "\n".join(line.rstrip() for line in text.rstrip("\n").splitlines())


def outputs(text):
    """What each command of a page prints, in order."""
    script, count = [], 0
    for block in BLOCK.finditer(text):
        if block["file"]:
            script.append(f"cat >{block['file']} <<'END OF FILE'\n{block['body']}END OF FILE")
            continue
        for command, _ in steps(block["body"]):
            script.append(f"{{ {command}\n}} </dev/null\nprintf '\\n%s\\n' '{MARK % count}'")
            count += 1
    with tempfile.TemporaryDirectory() as home:
        done = subprocess.run(["bash", "-c", "\n".join(script)], cwd=ROOT, env=environment(home),
                              stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.STDOUT)
    rest, printed = done.stdout.decode("utf-8", "replace"), []
    for i in range(count):
        one, found, rest = rest.partition(f"\n{MARK % i}\n")
        printed.append(tidy(one) if found else "(the shell ended before this command)\n" + tidy(one))
    return printed


passed = failed = 0


def check_made_pages():
    """The pages of docs/reference that endbell-manual makes are the ones in the checkout."""
    global passed, failed
    for made in sorted(glob.glob(os.path.join(BUILD, "cli", "manual", "made", "reference", "*.md"))):
        page = os.path.join(ROOT, "docs", "reference", os.path.basename(made))
        with open(made, encoding="utf-8") as f:
            text = f.read()
        shown = open(page, encoding="utf-8").read() if os.path.exists(page) else ""
        if text == shown:
            passed += 1
            continue
        failed += 1
        print(f"FAIL {os.path.relpath(page, ROOT)} is not what the program makes: run this with --write")
        if WRITE:
            with open(page, "w", encoding="utf-8") as f:
                f.write(text)


check_made_pages()
os.makedirs(os.path.join(ROOT, "build"), exist_ok=True)
for path in pages():
    with open(path, encoding="utf-8") as f:
        text = f.read()
    if not any(block["file"] is None for block in BLOCK.finditer(text)):
        continue
    printed = iter(outputs(text))

    def block_with_output(block):
        global passed, failed
        if block["file"]:
            return block.group(0)
        lines = []
        for command, shown in steps(block["body"]):
            real = next(printed)
            if real == tidy(shown):
                passed += 1
            else:
                failed += 1
                print(f"FAIL {os.path.relpath(path, ROOT)}: {command}\n--- shown\n{shown}\n--- printed\n{real}\n")
            lines += ["$ " + command] + ([real] if real else [])
        return "```console\n" + "\n".join(lines) + "\n```"

    new = BLOCK.sub(block_with_output, text)
    if WRITE and new != text:
        with open(path, "w", encoding="utf-8") as f:
            f.write(new)
print(f"{passed} passed, {failed} failed")
sys.exit(1 if failed and not WRITE else 0)
