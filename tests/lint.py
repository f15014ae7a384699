#!/usr/bin/env python3
"""How C++ is laid out and what a linter finds: in the files that the last commits changed, or in all.

usage: tests/lint.py format|tidy|headers [--all]      last line: "N passed, N failed"
  format   clang-format would change nothing
  tidy     clang-tidy finds nothing; of many changed files, those that were changed last
  headers  each header compiles by itself, by g++ and by clang++ (always all)
"""
import concurrent.futures
import os
import subprocess
import sys

ROOT = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
COMMITS = 20
MOST_TIDIED = 40  # sources take a linter seconds each; `tests/run --full` has it read all
CLANG_BUILD = os.path.join(ROOT, "build", "clang")  # how each source is compiled, by clang and with nothing precompiled
ALL = "--all" in sys.argv


def run(*command):
    return subprocess.run(command, cwd=ROOT, capture_output=True, text=True)


def every_source():
    found = []
    for top in ("engine", "cli", "tests"):
        for folder, _, names in os.walk(os.path.join(ROOT, top)):
            found += [os.path.relpath(os.path.join(folder, name), ROOT) for name in names if name.endswith((".cpp", ".hpp"))]
    return sorted(found)


def changed_sources():
    """Those of the last commits that are still there, the newest first; None without a history."""
    log = run("git", "log", f"-{COMMITS}", "--name-only", "--diff-filter=d", "-M100%", "--format=")
    if log.returncode != 0:
        print("skipped: no git history says what was changed last:", log.stderr.strip().split("\n")[0])
        return None
    there = set(every_source())
    return [path for path in dict.fromkeys(log.stdout.split()) if path in there]


def at_once(check, items):
    """What each check complains of, by as many at once as there are cores."""
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        return [complaint for complaint in pool.map(check, items) if complaint]


def layout(path):
    with open(os.path.join(ROOT, path), encoding="utf-8") as file:  # --dry-run also complains of what it would leave as it is
        return "" if run("clang-format", path).stdout == file.read() else f"{path} is not as clang-format lays it out"


def findings(path):
    done = run("clang-tidy", "--quiet", "-p", CLANG_BUILD, path)
    return done.stdout.strip() or done.stderr.strip() if done.returncode != 0 else ""


def alone(header):
    complaints = []
    for compiler in ("g++", "clang++"):
        done = run(compiler, "-std=c++20", "-fsyntax-only", "-I.", "-DFMT_SHARED", "-DENDBELL_ROOT=\"\"", "-DENDBELL_SAMPLE=1",
                   "-DBOOST_TEST_DYN_LINK", "-x", "c++", header)
        if done.returncode != 0:
            complaints.append(f"{compiler} {header}: {done.stderr.strip()}")
    return "\n".join(complaints)


def counted(what, complaints, files):
    print("\n".join(complaints))
    print(f"{what}: {len(files)} files")
    print(f"{int(not complaints)} passed, {int(bool(complaints))} failed")
    return 1 if complaints else 0


def main():
    what = sys.argv[1]
    files = every_source() if ALL or what == "headers" else changed_sources()
    if files is None:
        print("0 passed, 0 failed")
        return 0
    if what == "format":
        return counted("clang-format", at_once(layout, files), files)
    if what == "headers":
        files = [path for path in files if path.endswith(".hpp")]
        return counted("headers alone", at_once(alone, files), files)
    configured = run("cmake", "--preset", "clang")
    if configured.returncode != 0:
        return counted("clang-tidy", [configured.stderr], [])
    sources = [path for path in files if path.endswith(".cpp")]
    if not ALL and len(sources) > MOST_TIDIED:
        print(f"skipped: {len(sources) - MOST_TIDIED} of {len(sources)} changed sources, which --full lints with all others")
        sources = sources[:MOST_TIDIED]
    return counted("clang-tidy", at_once(findings, sources), sources)


if __name__ == "__main__":
    sys.exit(main())
