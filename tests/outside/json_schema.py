#!/usr/bin/env python3
"""`endbell match --json` and `endbell sheet --json` against their schemas in docs/json, by an independent validator (npm: ajv).

usage: tests/outside/json_schema.py BUILD_DIR      last line: "N passed, N failed"
"""
import glob
import json
import os
import subprocess
import sys

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.path.abspath(sys.argv[1])
TOOLS = os.path.join(BUILD, "npm-ajv")
ENDBELL = os.path.join(BUILD, "cli", "endbell")

CHECKER = """
const Ajv = require('ajv/dist/2020').default;
const fs = require('fs');
const [folder, ...files] = process.argv.slice(2);
const schema = name => JSON.parse(fs.readFileSync(folder + '/' + name + '.schema.json'));
const ajv = new Ajv({allErrors: true, strict: false});
const answer = ajv.compile(schema('selection')), sheet = ajv.compile(schema('sheet'));
for (const file of files) {
  const validate = file.includes('sheet-') ? sheet : answer;
  const ok = validate(JSON.parse(fs.readFileSync(file)));
  console.log((ok ? 'valid ' : 'invalid ') + file + (ok ? '' : ' ' + JSON.stringify(validate.errors.slice(0, 3))));
}
"""


def main():
    os.makedirs(TOOLS, exist_ok=True)
    if not os.path.isdir(os.path.join(TOOLS, "node_modules", "ajv")):
        subprocess.run(["npm", "install", "--silent", "--no-audit", "--no-fund", "--prefix", TOOLS, "ajv@8"], check=True)
    with open(os.path.join(TOOLS, "check.js"), "w", encoding="utf-8") as f:
        f.write(CHECKER)
    catalog = os.path.join(TOOLS, "demo.db")
    subprocess.run([ENDBELL, "catalog", "import", os.path.join(ROOT, "demo-catalog/tables"), "--into", catalog],
                   check=True, stdout=subprocess.DEVNULL)
    good, bad = [], []
    for job in sorted(glob.glob(os.path.join(ROOT, "demo-catalog/jobs/*.toml"))):
        text = subprocess.run([ENDBELL, "--catalog", catalog, "--json", "match", job], capture_output=True, text=True).stdout
        name = os.path.join(TOOLS, os.path.basename(job) + ".json")
        with open(name, "w", encoding="utf-8") as f:
            f.write(text)
        good.append(name)
        reader = ("counter", "technician", "estimate")[len(good) // 2 % 3]
        text = subprocess.run([ENDBELL, "--catalog", catalog, "--json", "sheet", job, "--for", reader], capture_output=True, text=True).stdout
        name = os.path.join(TOOLS, "sheet-" + os.path.basename(job) + ".json")
        with open(name, "w", encoding="utf-8") as f:
            f.write(text)
        good.append(name)
    # The validator must be able to say no: one answer with a field gone, one with an exit code of no such meaning, a sheet with a
    # block of no such kind.
    broken = json.load(open(good[0], encoding="utf-8"))
    del broken["outcome"]
    page = json.load(open(good[1], encoding="utf-8"))
    page["blocks"].append({"picture": "none"})
    for name, change in (("broken0", broken), ("broken1", {**json.load(open(good[0], encoding="utf-8")), "exit_code": 3}),
                         ("sheet-broken", page)):
        name = os.path.join(TOOLS, name + ".json")
        with open(name, "w", encoding="utf-8") as f:
            json.dump(change, f)
        bad.append(name)
    schemas = os.path.join(ROOT, "docs/json")
    out = subprocess.run(["node", os.path.join(TOOLS, "check.js"), schemas, *good, *bad], capture_output=True, text=True)
    lines = out.stdout.splitlines()
    passed = failed = 0
    for line in lines:
        word, name = line.split(" ")[:2]
        wanted = "invalid" if name in bad else "valid"
        passed, failed = (passed + 1, failed) if word == wanted else (passed, failed + 1)
        if word != wanted:
            print("FAIL", line[:600])
    if len(lines) != len(good) + len(bad):
        print("FAIL the validator answered for", len(lines), "files", out.stderr[:600])
        failed += 1
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


sys.exit(main())
