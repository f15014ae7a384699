#!/usr/bin/env python3
"""An import that does not fit: a clear error, and the old catalog whole.

usage: tests/catalog/full_disk.py BUILD_DIR      last line: "N passed, N failed"
The small disk is a 4 MiB tmpfs where one may be mounted; else a limit on the size of files, which fails the same calls.
"""
import os
import re
import resource
import subprocess
import sys
import tempfile

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from tools import ROOT, Count, endbell, write_tables  # noqa: E402

SMALL = 4 * 1024 * 1024


def run(arguments, limited):
    def limit():
        # A write beyond the limit fails with EFBIG: the signal that comes with it is ignored.
        import signal
        signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
        resource.setrlimit(resource.RLIMIT_FSIZE, (SMALL // 2, SMALL // 2))
    return subprocess.run(arguments, capture_output=True, text=True, preexec_fn=limit if limited else None)


def main():
    program = endbell(sys.argv[1])
    count = Count()
    with tempfile.TemporaryDirectory() as home:
        disk = os.path.join(home, "disk")
        os.makedirs(disk)
        mounted = subprocess.run(["mount", "-t", "tmpfs", "-o", "size=4m", "tmpfs", disk], capture_output=True).returncode == 0
        try:
            tables = os.path.join(home, "tables")
            write_tables(tables, 40000)
            catalog = os.path.join(disk, "shop.db")
            small = os.path.join(ROOT, "tests/catalog/fixtures/small")
            first = run([program, "catalog", "import", small, "--into", catalog], False)
            count.expect(first.returncode == 0, "the small catalog fits")
            before = open(catalog, "rb").read()
            full = run([program, "catalog", "import", tables, "--into", catalog], not mounted)
            count.expect(full.returncode == 65, f"exit 65, not {full.returncode}")
            said = full.stdout + full.stderr
            count.expect(re.search(r"room on the disk|reads and writes", said) is not None, "the error names the disk: " + said[-300:])
            count.expect("the old catalog is whole" in said or not mounted, "the error says that the old catalog is whole")
            count.expect(open(catalog, "rb").read() == before, "the old catalog is as it was")
            count.expect(sorted(os.listdir(disk)) == ["shop.db", "shop.db-index", "shop.db-prices"], f"nothing is left behind: {os.listdir(disk)}")
            check = run([program, "catalog", "check", catalog], False)
            count.expect(check.returncode == 0, "the old catalog is sound")
            print("on a 4 MiB tmpfs" if mounted else "with a limit on file size (no tmpfs could be mounted)")
        finally:
            if mounted:
                subprocess.run(["umount", disk], check=False)
    return count.close()


if __name__ == "__main__":
    sys.exit(main())
