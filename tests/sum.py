#!/usr/bin/env python3
"""What ctest ran, added up: a count for each case of a test program, and what each script says that it counted.

usage: tests/sum.py JUNIT...      files of `ctest --output-junit`, of whole outputs; last line: "N passed, N failed"
A program or a script that ends without a count, or badly after a good one, is one failure.
"""
import os
import re
import sys
import xml.etree.ElementTree as tree

SHOWN = 40  # lines of a test that failed
CASE = re.compile(r'Test case ".*" (has passed|has failed|has aborted|was aborted)')


def counted(output, ended_well):
    """Passed, failed, and whether there was a count at all."""
    said = re.findall(r"^(\d+) passed, (\d+) failed$", output, re.M)
    if said:
        passed, failed = map(int, said[-1])
    else:
        cases = CASE.findall(output)
        passed = cases.count("has passed")
        failed = len(cases) - passed
    known = bool(said) or passed + failed > 0
    if not known or (not ended_well and failed == 0):
        failed += 1
    return passed, failed, known


def lines_that_matter(output, known):
    lines = output.splitlines()
    told = [line for line in lines if re.search("fail|error|abort|seed", line, re.I) and "has passed" not in line]
    return told[:SHOWN] if known and told else lines[-15:]


def main():
    all_passed = all_failed = 0
    for path in sys.argv[1:]:
        try:
            cases = list(tree.parse(path).getroot().iter("testcase"))
        except (OSError, tree.ParseError) as wrong:
            print(f"   | {wrong}")
            cases = []
        if not cases:
            print(f"   {os.path.basename(path)}: no test was run")
            all_failed += 1
        for case in cases:
            output = case.findtext("system-out") or ""
            passed, failed, known = counted(output, case.get("status") == "run")
            all_passed += passed
            all_failed += failed
            how = "" if known else ", ended without a count"
            print(f"   {case.get('name')}: {passed} passed, {failed} failed{how} ({float(case.get('time')):.0f} s)")
            for line in re.findall("^skipped: .*", output, re.M):
                print("   | " + line)
            if failed:
                print("\n".join("   | " + line for line in lines_that_matter(output, known)))
    print(f"{all_passed} passed, {all_failed} failed")
    return 1 if all_failed else 0


if __name__ == "__main__":
    sys.exit(main())
