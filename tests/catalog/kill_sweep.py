#!/usr/bin/env python3
"""Kills an import of 20,000 rows at random moments: the catalog is always the old generation or the new one, whole.

usage: tests/catalog/kill_sweep.py BUILD_DIR [--full]      12 kills, or 200; last line: "N passed, N failed"
"""
import json
import os
import random
import re
import shutil
import signal
import subprocess
import sys
import tempfile
import time

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from tools import Count, endbell, write_tables  # noqa: E402


def digest_in(text):
    return re.search(r"digest ([0-9a-f]{16})", text).group(1)


def main():
    program = endbell(sys.argv[1])
    kills = 200 if "--full" in sys.argv else 12
    count = Count()
    with tempfile.TemporaryDirectory() as home:
        write_tables(os.path.join(home, "old"), 5000, seed=1)
        write_tables(os.path.join(home, "new"), 5000, seed=2)
        catalog = os.path.join(home, "shop.db")
        fresh = os.path.join(home, "fresh.db")
        arguments = lambda tables, into: [program, "catalog", "import", os.path.join(home, tables), "--into", into]
        old = digest_in(subprocess.run(arguments("old", fresh), check=True, capture_output=True, text=True).stdout)
        began = time.monotonic()
        new = digest_in(subprocess.run(arguments("new", catalog), check=True, capture_output=True, text=True).stdout)
        whole_time = time.monotonic() - began
        count.expect(old != new, "the two generations differ")
        rng = random.Random(7)
        seen = {"old": 0, "new": 0}
        for i in range(kills):
            for name in os.listdir(home):
                if name.startswith("shop.db"):
                    os.remove(os.path.join(home, name))
            shutil.copy(fresh, catalog)
            process = subprocess.Popen(arguments("new", catalog), stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
            # Every third kill near the end, where the swap is.
            time.sleep(whole_time * (rng.uniform(0.8, 1.6) if i % 3 == 0 else rng.random()))
            process.send_signal(signal.SIGKILL)
            process.wait()
            check = subprocess.run([program, "catalog", "check", catalog], capture_output=True, text=True)
            found = digest_in(check.stdout) if check.returncode == 0 else "none"
            seen["new" if found == new else "old"] += 1
            count.expect(check.returncode == 0 and found in (old, new), f"kill {i}: exit {check.returncode}, digest {found}")
        after = subprocess.run(arguments("new", catalog), capture_output=True, text=True)
        count.expect(after.returncode == 0 and digest_in(after.stdout) == new, "the next import works")
        count.expect(not any("importing" in name for name in os.listdir(home)), "nothing is left behind")
        print(f"{kills} kills: {json.dumps(seen)}")
    return count.close()


if __name__ == "__main__":
    sys.exit(main())
