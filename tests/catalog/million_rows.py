#!/usr/bin/env python3
"""A long import in bounded memory: 100,000 rows, or a million with --full; peak under 150 MB either way.

usage: tests/catalog/million_rows.py BUILD_DIR [--full]      last line: "N passed, N failed"
"""
import os
import pty
import subprocess
import sys
import tempfile
import time

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from tools import Count, endbell, write_tables  # noqa: E402

PEAK = 150 * 1000  # kB


def watched(arguments, stderr):
    """Runs a program: its exit code, what it said, and the most memory it ever held."""
    process = subprocess.Popen(arguments, stdout=subprocess.PIPE, stderr=stderr, text=True)
    out = process.stdout.read()
    _, status, used = os.wait4(process.pid, 0)
    process.returncode = os.waitstatus_to_exitcode(status)
    return process.returncode, out, used.ru_maxrss


def main():
    program = endbell(sys.argv[1])
    parts = 250000 if "--full" in sys.argv else 25000
    count = Count()
    with tempfile.TemporaryDirectory() as home:
        tables = os.path.join(home, "tables")
        write_tables(tables, parts)
        size = sum(os.path.getsize(os.path.join(tables, n)) for n in os.listdir(tables))
        catalog = os.path.join(home, "shop.db")
        began = time.monotonic()
        code, out, peak = watched([program, "catalog", "import", tables, "--into", catalog], subprocess.DEVNULL)
        seconds = time.monotonic() - began
        print(f"{4 * parts} rows, {size / 1e6:.0f} MB of CSV: {seconds:.1f} s, peak {peak / 1000:.0f} MB, catalog {os.path.getsize(catalog) / 1e6:.0f} MB")
        count.expect(code == 0, f"exit 0, not {code}")
        count.expect(f"Rows in {4 * parts} = accepted {4 * parts} + set aside 0." in out, "all rows are accepted")
        count.expect(0 < peak < PEAK, f"peak under 150 MB, not {peak / 1000:.0f}")

        # Every row set aside costs no more memory.
        broken = os.path.join(home, "broken")
        os.makedirs(broken)
        with open(os.path.join(tables, "parts.csv"), encoding="utf-8") as f, open(os.path.join(broken, "parts.csv"), "w", encoding="utf-8") as g:
            for line in f:
                g.write(line.replace(",motor,", ",moter,"))
        code, out, peak = watched([program, "catalog", "import", broken, "--into", os.path.join(home, "other.db")], subprocess.DEVNULL)
        count.expect(f"accepted 0 + set aside {parts}." in out, "all rows are set aside")
        count.expect(0 < peak < PEAK, f"peak under 150 MB, not {peak / 1000:.0f}")

        # Progress on a terminal, none in a pipe.
        reading, writing = pty.openpty()
        code, _, _ = watched([program, "catalog", "import", tables, "--into", os.path.join(home, "third.db")], writing)
        os.close(writing)
        shown = b""
        try:
            while chunk := os.read(reading, 65536):
                shown += chunk
        except OSError:
            pass
        count.expect(code == 0 and shown.count(b"%") >= 4, "progress is shown on a terminal")
        piped = subprocess.run([program, "catalog", "import", tables, "--into", os.path.join(home, "third.db")], capture_output=True, text=True)
        count.expect(piped.stderr == "", "a pipe sees no progress")
    return count.close()


if __name__ == "__main__":
    sys.exit(main())
