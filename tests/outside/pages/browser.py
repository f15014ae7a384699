"""Headless Chromium for scripts of the folder above: installs its packages once, runs pages.js beside it, counts its answers."""
import json
import os
import subprocess

HERE = os.path.dirname(os.path.abspath(__file__))
PACKAGES = ("playwright-core@1", "axe-core@4", "html-validate@9")


def installed(build):
    """The folder of the npm packages."""
    tools = os.path.join(build, "npm-sheets")
    modules = os.path.join(tools, "node_modules")
    if not all(os.path.isdir(os.path.join(modules, name.split("@")[0])) for name in PACKAGES):
        os.makedirs(tools, exist_ok=True)
        subprocess.run(["npm", "install", "--silent", "--no-audit", "--no-fund", "--prefix", tools, *PACKAGES], check=True)
    return modules


def run(modules, task, out, files):
    """Each check as (ok, what, why)."""
    result = subprocess.run(["node", os.path.join(HERE, "pages.js"), task, out, *files], capture_output=True, text=True, check=False,
                            env={**os.environ, "NODE_PATH": modules})
    checks = [json.loads(line) for line in result.stdout.splitlines()]
    if result.returncode != 0:
        checks.append({"ok": False, "what": f"pages.js {task}", "why": [result.stderr.strip()[:600]]})
    return [(c["ok"], c["what"], c["why"]) for c in checks]
