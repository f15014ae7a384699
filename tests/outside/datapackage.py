#!/usr/bin/env python3
"""The demonstration catalog is a valid Data Package, by an independent validator (npm: datapackage), and damaged ones are not.

usage: tests/outside/datapackage.py BUILD_DIR      last line: "N passed, N failed"
The validator is installed into BUILD_DIR/npm-datapackage.
"""
import csv
import json
import os
import shutil
import subprocess
import sys
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
TOOLS = os.path.join(os.path.abspath(sys.argv[1]), "npm-datapackage")

# One line a package: "valid FOLDER" or "invalid FOLDER WHY". Keys and links between tables are checked too.
CHECKER = """
const {Package} = require('datapackage');
async function check(folder) {
  try {
    const pack = await Package.load(folder + '/datapackage.json', {basePath: folder});
    if (!pack.valid) return 'invalid ' + folder + ' package: ' + pack.errors[0].message;
    for (const resource of pack.resources) {
      if (!resource.valid) return 'invalid ' + folder + ' ' + resource.name + ': ' + resource.errors[0].message;
      const links = (resource.schema.foreignKeys || []).length > 0;
      await resource.read({keyed: true, relations: links});
    }
    return 'valid ' + folder;
  } catch (error) {
    const why = (error.errors && error.errors.length) ? error.errors[0].message : error.message;
    return 'invalid ' + folder + ' ' + why;
  }
}
(async () => { for (const folder of process.argv.slice(2)) console.log((await check(folder)).split('\\n').join(' ')); })();
"""


def make_package(folder, tables):
    shutil.copytree(os.path.join(ROOT, "catalog-schema/tables"), os.path.join(folder, "schema"))
    shutil.copytree(tables, os.path.join(folder, "tables"))
    with open(os.path.join(ROOT, "catalog-schema/datapackage.json"), encoding="utf-8") as f:
        package = json.load(f)
    package["resources"] = [r for r in package["resources"] if os.path.exists(os.path.join(folder, r["path"]))]
    with open(os.path.join(folder, "datapackage.json"), "w", encoding="utf-8") as f:
        json.dump(package, f)


def edit(folder, table, change):
    """Lets `change` alter the rows of a table, header first."""
    path = os.path.join(folder, "tables", table + ".csv")
    with open(path, newline="", encoding="utf-8") as f:
        rows = list(csv.reader(f))
    change(rows)
    with open(path, "w", newline="", encoding="utf-8") as f:
        csv.writer(f).writerows(rows)


def set_cell(table, column, value, row=1):
    def change(rows):
        rows[row][rows[0].index(column)] = value
    return table, change


def drop_column(table, column):
    def change(rows):
        at = rows[0].index(column)
        for row in rows:
            del row[at]
    return table, change


def repeat_row(table):
    return table, lambda rows: rows.append(list(rows[1]))


def rename_column(table, column, name):
    def change(rows):
        rows[0][rows[0].index(column)] = name
    return table, change


MUTANTS = {
    "a word that is none of the kind": set_cell("parts", "kind", "moter"),
    "a part without an id": set_cell("parts", "part_id", ""),
    "an id twice": repeat_row("parts"),
    "a rating of no motor": set_cell("motor_ratings", "part_id", "NOWHERE"),
    "an efficiency above one": set_cell("motors", "efficiency", "1.5"),
    "words where a number stands": set_cell("motors", "service_factor", "about one"),
    "volts as free text": set_cell("motor_ratings", "volts", "mains"),
    "a price in words": set_cell("offers", "price", "call us"),
    "a column that is missing": drop_column("offers", "currency"),
    "a header that is misspelt": rename_column("taps", "torque_ozft", "torqe_ozft"),
}


def main():
    os.makedirs(TOOLS, exist_ok=True)
    if not os.path.isdir(os.path.join(TOOLS, "node_modules", "datapackage")):
        subprocess.run(["npm", "install", "--silent", "--no-audit", "--no-fund", "--prefix", TOOLS, "datapackage@1.1.10"], check=True)
    with open(os.path.join(TOOLS, "check.js"), "w", encoding="utf-8") as f:
        f.write(CHECKER)
    passed = failed = 0
    with tempfile.TemporaryDirectory() as home:
        wanted = {}
        demo = os.path.join(home, "demo")
        make_package(demo, os.path.join(ROOT, "demo-catalog/tables"))
        wanted[demo] = ("valid", "the demonstration catalog")
        for i, (claim, (table, change)) in enumerate(MUTANTS.items()):
            folder = os.path.join(home, f"mutant-{i}")
            shutil.copytree(demo, folder)
            edit(folder, table, change)
            wanted[folder] = ("invalid", claim)
        result = subprocess.run(["node", os.path.join(TOOLS, "check.js"), *wanted], capture_output=True, text=True)
        verdicts = {line.split(" ")[1]: line for line in result.stdout.splitlines()}
        for folder, (verdict, claim) in wanted.items():
            line = verdicts.get(folder, "nothing: " + result.stderr[-300:])
            if line.startswith(verdict + " "):
                passed += 1
            else:
                failed += 1
                print(f"FAIL {claim}: wanted {verdict}, got {line}")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
