#!/usr/bin/env python3
"""Kills an import of 20,000 rows at every stage: the catalog is always the old generation or the new one, whole.

usage: tests/catalog/kill_sweep.py BUILD_DIR [--full]      12 kills, or 200; last line: "N passed, N failed"
"""
import json
import os
import re
import shutil
import signal
import subprocess
import sys
import tempfile

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from tools import Count, Shown, endbell, write_tables  # noqa: E402


def digest_in(text):
    return re.search(r"digest ([0-9a-f]{16})", text).group(1)


def main():
    program_path = endbell(sys.argv[1])
    kills = 200 if "--full" in sys.argv else 12
    count = Count()
    with tempfile.TemporaryDirectory() as home:
        write_tables(os.path.join(home, "old"), 5000, seed=1)
        write_tables(os.path.join(home, "new"), 5000, seed=2)
        catalog = os.path.join(home, "shop.db")
        fresh = os.path.join(home, "fresh.db")
        arguments = lambda tables, into: [program_path, "catalog", "import", os.path.join(home, tables), "--into", into]
        old = digest_in(subprocess.run(arguments("old", fresh), check=True, capture_output=True, text=True).stdout)
        alone = Shown(arguments("new", catalog))
        new = digest_in(alone.end()[1])
        lines = alone.seen.count(b"\x1b[K")
        count.expect(old != new, "the two generations differ")
        seen = {"old": 0, "new": 0}
        for i in range(kills):
            for name in os.listdir(home):
                if name.startswith("shop.db"):
                    os.remove(os.path.join(home, name))
            shutil.copy(fresh, catalog)
            at_work = i == 0  # and its terminal does not let it end
            program = Shown(arguments("new", catalog), held=at_work)
            if at_work:
                program.wait_until_it_heeds(signal.SIGINT)
            else:  # every third near the end, where the swap is; the last after it
                program.wait_until_shown(lines - kills // 3 + i // 3 if i % 3 == 0 else lines * i // (kills - 1))
            program.end(signal.SIGKILL)
            check = subprocess.run([program_path, "catalog", "check", catalog], capture_output=True, text=True)
            found = digest_in(check.stdout) if check.returncode == 0 else "none"
            seen["new" if found == new else "old"] += 1
            count.expect(check.returncode == 0 and found in ((old,) if at_work else (old, new)),
                         f"kill {i}: exit {check.returncode}, digest {found}")
        after = subprocess.run(arguments("new", catalog), capture_output=True, text=True)
        count.expect(after.returncode == 0 and digest_in(after.stdout) == new, "the next import works")
        count.expect(not any("importing" in name for name in os.listdir(home)), "nothing is left behind")
        print(f"{kills} kills: {json.dumps(seen)}")
    return count.close()


if __name__ == "__main__":
    sys.exit(main())
