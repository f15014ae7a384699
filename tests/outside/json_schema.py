#!/usr/bin/env python3
"""Every command under --json against docs/json/*.schema.json, by an independent validator (npm: ajv).

usage: tests/outside/json_schema.py BUILD_DIR      last line: "N passed, N failed"
"""
import glob
import json
import os
import shutil
import subprocess
import sys

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.path.abspath(sys.argv[1])
TOOLS = os.path.join(BUILD, "npm-ajv")
WORK = os.path.join(TOOLS, "answers")
ENDBELL = os.path.join(BUILD, "cli", "endbell")
TABLES = os.path.join(ROOT, "demo-catalog", "tables")
JOBS = sorted(glob.glob(os.path.join(ROOT, "demo-catalog", "jobs", "*.toml")))

# Each line of standard input: {"schema": id, "document": any}; each line of the answer: true, or what is wrong.
CHECKER = """
const Ajv = require('ajv/dist/2020').default;
const fs = require('fs');
const ajv = new Ajv({allErrors: true, strict: false});
for (const file of process.argv.slice(2)) ajv.addSchema(JSON.parse(fs.readFileSync(file)));
for (const line of fs.readFileSync(0, 'utf8').split('\\n').filter(Boolean)) {
  const {schema, document} = JSON.parse(line);
  const validate = ajv.getSchema(schema);
  console.log(JSON.stringify(validate(document) || validate.errors.slice(0, 3)));
}
"""


def prepare():
    os.makedirs(TOOLS, exist_ok=True)
    if not os.path.isdir(os.path.join(TOOLS, "node_modules", "ajv")):
        subprocess.run(["npm", "install", "--silent", "--no-audit", "--no-fund", "--prefix", TOOLS, "ajv@8"], check=True)
    with open(os.path.join(TOOLS, "check.js"), "w", encoding="utf-8") as f:
        f.write(CHECKER)
    shutil.rmtree(WORK, ignore_errors=True)
    os.makedirs(WORK)
    shutil.copytree(TABLES, os.path.join(WORK, "fewer"))
    with open(os.path.join(WORK, "fewer", "offers.csv"), encoding="utf-8") as f:
        lines = f.readlines()
    with open(os.path.join(WORK, "fewer", "offers.csv"), "w", encoding="utf-8") as f:
        f.writelines(lines[:-1])
    with open(os.path.join(WORK, "jobs.csv"), "w", encoding="utf-8") as f:
        f.write("tag,plate\nA,1/2 hp 208-230 1075 CCWLE 1/2x5 psc\nB,half a horse\n")
    with open(os.path.join(WORK, "wrong.toml"), "w", encoding="utf-8") as f:
        f.write('[plate]\npower = "blue"\nmount = "glue"\n')


def commands():
    """(kind, words), in an order that makes the catalog before it is asked."""
    yield "document", ("catalog", "import", TABLES, "--into", "parts.db")
    yield "document", ("catalog", "import", os.path.join(WORK, "fewer"), "--into", "parts.db", "--dry-run")
    yield "document", ("catalog", "import", os.path.join(WORK, "fewer"), "--into", "parts.db")
    yield "document", ("catalog", "changes", "parts.db")
    yield "document", ("catalog", "generations", "parts.db")
    yield "document", ("catalog", "restore", "parts.db", "1")
    yield "document", ("catalog", "check", "parts.db")
    yield "document", ("catalog", "show", "parts.db", "B-050-230-3R")
    yield "document", ("batch", "jobs.csv", "--out", "results.csv")
    for job in JOBS:
        for verb in ("match", "ask", "compare"):
            yield "selection", (verb, job)
        yield None, ("wire", job)  # the option, or the whole selection where there is none
        for reader in ("counter", "technician", "estimate"):
            yield "sheet", ("sheet", job, "--for", reader)
        yield "option", ("wire", job, "B-050-230-3R")
        yield "diagnosis", ("diagnose", job)
        yield "candidate", ("why", job, "B-050-230-3R")
    yield "find", ("find", "B-050-230-3R")
    yield "find", ("find", "EB-5 4410")
    yield "find", ("find", "ZZZZZZZZZZ")
    yield "problems", ("find", "---")
    yield "rules", ("rules",)
    yield "rules", ("rules", "rotation")
    yield "problems", ("match", "wrong.toml")
    yield "problems", ("match", "nowhere.toml")
    yield "problems", ("matsch",)
    yield "problems", ("catalog", "show", "parts.db", "B-050-230-3Q")
    yield "problems", ("rules", "rotatoin")


def answers():
    """(kind, words, document) of every command; what is no JSON is a document that no schema knows."""
    for kind, words in commands():
        done = subprocess.run([ENDBELL, "--no-config", "--catalog", "parts.db", "--json", *words], cwd=WORK, capture_output=True)
        try:
            document = json.loads(done.stdout)
        except ValueError:
            document = "no JSON: " + done.stdout.decode("utf-8", "replace")[:200]
        if isinstance(document, dict) and document.get("exit_code") != done.returncode:
            document = f"exit code {done.returncode}, not {document.get('exit_code')}"
        yield kind, words, document


def main():
    prepare()
    questions = []  # (schema, document, valid, what)
    first = {}
    for kind, words, document in answers():
        what = " ".join(words)
        questions.append(("answer", document, True, what))
        if kind:
            questions.append((kind, document, True, what))
            first.setdefault(kind, document)
    # The validator must be able to say no: one document of each kind with each of its fields gone in turn, with another format, and
    # under the schema of another kind.
    for kind, document in first.items():
        with open(os.path.join(ROOT, "docs", "json", kind + ".schema.json"), encoding="utf-8") as f:
            required = json.load(f)["required"]
        for field in required:
            questions.append((kind, {k: v for k, v in document.items() if k != field}, False, f"{kind} without {field}"))
        questions.append((kind, {**document, "format": 2}, False, f"{kind} of another format"))
        questions.append((kind, {**document, "exit_code": 3}, False, f"{kind} with an exit code that is none"))
        for other in first:
            if other != kind:
                questions.append((other, document, False, f"{kind} for {other}"))
    verdicts = subprocess.run(["node", os.path.join(TOOLS, "check.js"), *glob.glob(os.path.join(ROOT, "docs", "json", "*.schema.json"))],
                              input="\n".join(json.dumps({"schema": f"urn:endbell:{s}:1", "document": d}) for s, d, _, _ in questions),
                              capture_output=True, text=True)
    lines = verdicts.stdout.splitlines()
    passed = failed = 0
    for (schema, _, valid, what), line in zip(questions, lines):
        right = (line == "true") == valid
        passed, failed = passed + right, failed + (not right)
        if not right:
            print(f"FAIL {schema}: {what}: {line[:500]}")
    if len(lines) != len(questions):
        failed += 1
        print(f"FAIL the validator answered {len(lines)} of {len(questions)} questions: {verdicts.stderr[:800]}")
    print(f"{passed} passed, {failed} failed")
    return 1 if failed else 0


sys.exit(main())
