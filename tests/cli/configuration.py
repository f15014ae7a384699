#!/usr/bin/env python3
"""The configuration file: where it is found, what it says, and who comes first: flag, environment, file.

usage: tests/cli/configuration.py BUILD_DIR      last line: "N passed, N failed"
"""
import csv
import os
import shutil
import sys
import tomllib

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from workshop import JOBS, Count, Workshop  # noqa: E402

count = Count()
shop = Workshop(sys.argv[1])
JOB = os.path.join(JOBS, "04-wide-bore.toml")
HOME_FILE = ".config/endbell/config.toml"


def stamp(out):
    """Which catalog answered: the three below differ in their generation."""
    return next((word for word in ("generation 1", "generation 2", "generation 3") if word in " ".join(out.split())), out[-200:])


def widest(out):
    return max(len(line) for line in out.splitlines())


# Three catalogs that differ in their generation: 1 by flag, 2 in the environment, 3 in the file.
def generation(name, number):
    path = shop.path(name)
    shutil.copy(shop.catalog, path)
    for _ in range(number - 1):
        code, out, err = shop.run("catalog", "restore", path, "1") if _ else swap(path)
        assert code == 0, out + err
    return path


def swap(path):
    """Another content, so that there is something to restore."""
    tables = shop.path("other")
    shutil.copytree(os.path.join(os.path.dirname(JOBS), "tables"), tables, dirs_exist_ok=True)
    with open(os.path.join(tables, "offers.csv"), encoding="utf-8") as file:
        lines = file.readlines()
    with open(os.path.join(tables, "offers.csv"), "w", encoding="utf-8") as file:
        file.writelines(lines[:-1])
    return shop.run("catalog", "import", tables, "--into", path)


flag, env, file = generation("flag.db", 1), generation("env.db", 2), generation("file.db", 3)

code, out, err = shop.run("match", JOB)
count.check("no file, no environment, no flag: the catalog is asked for", code == 64 and "--catalog" in err and not out, err)
config = shop.write(HOME_FILE, f'catalog = "{file}"\n')
code, out, err = shop.run("match", JOB)
count.check("the file in the home names the catalog", code == 0 and stamp(out) == "generation 3", stamp(out) + err)
code, out, err = shop.run("match", JOB, env={"ENDBELL_CATALOG": env})
count.check("the environment comes before the file", stamp(out) == "generation 2", stamp(out) + err)
code, out, err = shop.run("match", JOB, "--catalog", flag, env={"ENDBELL_CATALOG": env})
count.check("a flag comes before both", stamp(out) == "generation 1", stamp(out) + err)
code, out, err = shop.run("--no-config", "match", JOB)
count.check("--no-config leaves the file aside", code == 64 and "--catalog" in err, err)

xdg = shop.write("xdg/endbell/config.toml", f'catalog = "{env}"\n')
code, out, err = shop.run("match", JOB, env={"XDG_CONFIG_HOME": shop.path("xdg")})
count.check("XDG_CONFIG_HOME comes before the home", stamp(out) == "generation 2", stamp(out) + err)
code, out, err = shop.run("match", JOB, env={"XDG_CONFIG_HOME": "xdg"})
count.check("a relative XDG_CONFIG_HOME counts for nothing", stamp(out) == "generation 3", stamp(out) + err)
code, out, err = shop.run("match", JOB, env={"XDG_CONFIG_HOME": shop.path("empty")})
count.check("a folder without the file is fine", code == 64 and "--catalog" in err, err)
named = shop.write("named/any.toml", 'catalog = "../flag.db"\n')
code, out, err = shop.run("match", JOB, env={"ENDBELL_CONFIG": named, "XDG_CONFIG_HOME": shop.path("xdg")})
count.check("ENDBELL_CONFIG names another file; its relative paths start at its folder", stamp(out) == "generation 1", stamp(out) + err)
code, out, err = shop.run("match", JOB, env={"ENDBELL_CONFIG": ""})
count.check("an empty ENDBELL_CONFIG is none at all", code == 64 and "--catalog" in err, err)
code, out, err = shop.run("match", JOB, env={"ENDBELL_CONFIG": shop.path("nowhere.toml")})
count.check("a file that is named must be there", code == 65 and "nowhere.toml" in err and not out, err)
code, out, err = shop.run("rules", env={"HOME": ""})
count.check("no home is fine", code == 0 and not err, err)

shop.write(HOME_FILE, 'catalog = "~/file.db"\n')
code, out, err = shop.run("match", JOB)
count.check("~ is the home", stamp(out) == "generation 3", stamp(out) + err)

# Width: flag, environment, file, else 80.
shop.write(HOME_FILE, 'catalog = "~/file.db"\nwidth = 60\n')
found = [widest(shop.run("ask", JOB.replace("04-wide-bore", "09-inducer-unknown"), *words, env=variables)[1])
         for words, variables in ((("--width", "50"), {"ENDBELL_WIDTH": "70"}), ((), {"ENDBELL_WIDTH": "70"}), ((), {}), (("--no-config", "--catalog", file), {}))]
count.check("width: flag, environment, file, 80", all(low < seen <= high for seen, low, high in zip(found, (40, 60, 50, 70), (50, 70, 60, 80))), found)
code, out, err = shop.run("rules", env={"ENDBELL_WIDTH": "wide"})
count.check("a width in the environment that is none is said", code == 64 and "wide" in err and not out, err)

# The shop's file: its limits are in force.
shop.write("north.toml", '[limits]\n"static.repair_first" = 0.61\n')
shop.write("config/south.toml", '[limits]\n"static.repair_first" = 0.62\n')
conf = shop.write("config/endbell.toml", 'shop = "south.toml"\n')
code, out, err = shop.run("--json", "rules", env={"ENDBELL_CONFIG": conf})
count.check("the file names the shop's file", code == 0 and '"value": 0.62' in out, err)
code, out, err = shop.run("--json", "rules", "--shop", "north.toml", env={"ENDBELL_CONFIG": conf})
count.check("a flag names another", code == 0 and '"value": 0.61' in out and '"value": 0.62' not in out, err)

shop.write("never.toml", '[shop]\nexclude_makers = ["Quillby", "Brindlewick"]\n')
with open(JOB, encoding="utf-8") as job:
    facts = [f"{group}.{name}" for group, fields in tomllib.loads(job.read()).items() for name in fields if group != "shop"]
    said = tomllib.loads(open(JOB, encoding="utf-8").read())
    cells = ["; ".join(v) if isinstance(v, list) else v for v in (said[f.split(".")[0]][f.split(".")[1]] for f in facts)]
with open(shop.path("jobs.csv"), "w", newline="", encoding="utf-8") as jobs:
    csv.writer(jobs).writerows([facts, cells])
picks = []
for words in ((), ("--shop", "never.toml")):
    code, out, err = shop.run("--catalog", flag, "batch", "jobs.csv", "--out", "results.csv", *words)
    with open(shop.path("results.csv"), newline="", encoding="utf-8") as results:
        picks.append(next(csv.DictReader(results))["part_id"])
count.check("a batch is under the shop's file too", picks[0] and picks[0] != picks[1], picks)

# What is wrong with it is said, with its place.
WRONG = [
    ('catalgo = "x"\n', ("config.toml:1:1", "catalgo", "did you mean 'catalog'")),
    ('\n  widht = 80\n', ("config.toml:2:3", "widht", "did you mean 'width'")),
    ('width = "80"\n', ("config.toml:1", "width", "80", "whole number from 40 to 400")),
    ('width = 20\n', ("config.toml:1", "20", "from 40 to 400")),
    ('width = 80.5\n', ("config.toml:1", "80.5", "whole number")),
    ('catalog = 7\n', ("config.toml:1", "7", "a path in quotes")),
    ('[display]\nwidth = 80\n', ("config.toml:2", "width", "outside any group")),
    ('colour = true\n', ("config.toml:1", "colour", "catalog, shop, width")),
    ('catalog = \n', ("config.toml:1", "TOML")),
    ('catalgo = "a"\nwidth = 1\n', ("config.toml:1", "config.toml:2")),
]
for text, pieces in WRONG:
    shop.write(HOME_FILE, text)
    code, out, err = shop.run("rules")
    count.check("wrong: " + repr(text), code == 65 and not out and all(piece in err for piece in pieces), f"exit {code} {err}")
code, out, err = shop.run("--help")
count.check("help does not read the file", code == 0 and not err, err)
code, out, err = shop.run("--no-config", "rules")
count.check("--no-config gets by it", code == 0 and not err, err)
code, out, err = shop.run("rules", "--width", "80", "--shop", "north.toml", "--catalog", flag)
count.check("nothing left to say for it: it is not read", code == 0 and not err, err)

shop.close()
sys.exit(count.close())
