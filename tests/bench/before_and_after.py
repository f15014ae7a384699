#!/usr/bin/env python3
"""Two builds of ours on the same catalog and jobs, in turn in one run. A benchmark: it asserts nothing about time.

usage: before_and_after.py BEFORE AFTER FOLDER [ROUNDS]

BEFORE and AFTER are programs or build folders, FOLDER is what bench_generate wrote (tables/ and many.csv), ROUNDS are 7 unless
given. Timed are whole processes, by the processor time that the operating system counts: an import, one `match` of each demo
job against the imported catalog, and a batch of all of FOLDER's jobs. Every round runs both, and begins with the other one.
Prints a table and lines `ratio NAME VALUE`: the time after over the time before, the median of the rounds' own ratios.
"""
import os
import resource
import statistics
import subprocess
import sys
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))


def program_of(path):
    below = os.path.join(os.path.abspath(path), "cli", "endbell")
    return below if os.path.isfile(below) else os.path.abspath(path)


def seconds(*commands):
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    for command in commands:
        done = subprocess.run(command, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True,
                              env={"PATH": os.environ.get("PATH", ""), "LC_ALL": "C.UTF-8", "ENDBELL_CONFIG": ""})
        if not 0 <= done.returncode < 64:  # an answer of any kind; anything else is not the work that is to be timed
            sys.exit(f"{' '.join(command)} ended with {done.returncode}: {done.stderr}")
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def compare(name, rounds, work):
    """`work(side)` gives the seconds of one side's work."""
    work(0), work(1)  # not counted: what is read first is read from the disk
    pairs = []
    for n in range(rounds):
        first = n % 2
        times = {first: work(first)}
        times[1 - first] = work(1 - first)
        pairs.append((times[0], times[1]))
    ratios = [after / before for before, after in pairs]
    print(f"{name:10s} before {statistics.median(p[0] for p in pairs):8.3f} s   after {statistics.median(p[1] for p in pairs):8.3f} s"
          f"   ratios {min(ratios):.3f} to {max(ratios):.3f}")
    print(f"ratio {name} {statistics.median(ratios):.3f}", flush=True)


def main(argv):
    if len(argv) not in (3, 4):
        print(__doc__.split("\n\n")[1], file=sys.stderr)
        return 64
    programs, folder = [program_of(argv[0]), program_of(argv[1])], argv[2]
    rounds = int(argv[3]) if len(argv) == 4 else 7
    jobs = os.path.join(ROOT, "demo-catalog", "jobs")
    jobs = [os.path.join(jobs, name) for name in sorted(os.listdir(jobs))]
    with tempfile.TemporaryDirectory(prefix="before-and-after-") as place:
        catalogs = [os.path.join(place, f"{side}.db") for side in (0, 1)]

        def import_into(side):
            for left in os.listdir(place):
                if left.startswith(f"{side}.db"):
                    os.remove(os.path.join(place, left))
            return seconds([programs[side], "catalog", "import", os.path.join(folder, "tables"), "--into", catalogs[side]])

        compare("import", rounds, import_into)
        compare("one-shot", rounds, lambda side: seconds(
            *([programs[side], "--catalog", catalogs[side], "match", job] for job in jobs)))
        compare("batch", rounds, lambda side: seconds(
            [programs[side], "--catalog", catalogs[side], "batch", os.path.join(folder, "many.csv"),
             "--out", os.path.join(place, f"{side}.csv")]))
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
