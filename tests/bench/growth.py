#!/usr/bin/env python3
"""How times grow from one size of the catalog to the next: medians, of what side_by_side.py left in the folders.

usage: growth.py FOLDER FOLDER ...      the folders' names are their numbers of parts
"""
import itertools
import json
import os
import sys


def main(folders):
    sizes = []
    for folder in sorted(folders, key=lambda name: int(os.path.basename(name))):
        with open(f"{folder}/times.json", encoding="utf-8") as f:
            sizes.append((int(os.path.basename(folder)), json.load(f)))
    for (few, before), (many, after) in itertools.pairwise(sizes):
        factors = ", ".join(f"{name} {after[name][0] / before[name][0]:.1f}" for name in before)
        print(f"growth from {few} to {many} parts, {many / few:g} times as many: {factors} times as long")


if __name__ == "__main__":
    main(sys.argv[1:])
