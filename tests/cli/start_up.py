#!/usr/bin/env python3
"""A start-up is kept in a file, and a later job of the same unit is read against it.

usage: tests/cli/start_up.py BUILD_DIR        prints one line a check and, last, "N passed, N failed"
"""
import json
import os
import re
import sys

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from workshop import JOBS, Count, Workshop


def job(serial, more=""):
    with open(os.path.join(JOBS, "02-furnace-blower.toml"), encoding="utf-8") as file:
        text = file.read()
    return text.replace("[unit]\n", f'[unit]\nequipment_model = "FX080-4"\nequipment_serial = "{serial}"\n{more}', 1)


def fill(form, readings):
    """Between the quotes, as a person writes it; each key of every group that has it."""
    for key, found in readings.items():
        form = re.sub(rf'^{key} = ""', f'{key} = "{found}"', form, flags=re.M)
    return form


def main():
    count, shop = Count(), Workshop(sys.argv[1])
    run = lambda *words: shop.run(*words, "--catalog", shop.catalog)
    try:
        shop.write("first.toml", job("0612 34518"))
        code, out, err = run("start-up", "first.toml")
        count.check("the form is printed", code == 0 and "Rotation first" in out and "3rd" in out, out + err)
        code, out, err = run("start-up", "first.toml", "--record", "kept.toml")
        count.check("the form is written", code == 0 and os.path.exists(shop.path("kept.toml")), out + err)
        form = open(shop.path("kept.toml"), encoding="utf-8").read()
        for text in ('equipment_serial = "0612 34518"', 'part = "', 'program = "endbell ', "# expected:", 'static_total = ""'):
            count.check(f"it has {text}", text in form, form)
        code, _, err = run("start-up", "first.toml", "--record", "kept.toml")
        count.check("it is never written over", code == 65 and open(shop.path("kept.toml"), encoding="utf-8").read() == form, err)
        count.check("nothing half written is left", not [n for n in os.listdir(shop.home) if n.endswith(".part")])
        code, out, _ = run("start-up", "first.toml", "--json")
        answer = json.loads(out)
        count.check("as JSON", code == 0 and answer["command"] == "start-up" and answer["exit_code"] == 0, out)

        shop.write("kept.toml", fill(form, {"static_total": "0.53; 0.52; 0.52", "amps": "6.1", "line_volts": "119"}))
        later = job("0612-34518", 'baseline = "kept.toml"\n').replace('static_supply = "0.28"', 'static_supply = "0.48"').replace(
            'static_return = "-0.17"', 'static_return = "-0.33"')
        shop.write("later/job.toml", later.replace('"kept.toml"', '"../kept.toml"'))
        for words in (("diagnose", "later/job.toml"), ("sheet", "later/job.toml"), ("match", "later/job.toml")):
            _, out, err = run(*words)
            said = " ".join(out.split())
            count.check(f"{words[0]} reads it", "Static 0.52 in. w.c. at start-up" in said and "0.81 now: filter, coil or duct has closed up" in said, out + err)
        _, out, _ = run("diagnose", "later/job.toml", "--json")
        since = json.loads(out)["diagnosis"]["since_start_up"]
        static = [s for s in since if s["quantity"] == "static total"]
        count.check("JSON has both", bool(static) and abs(static[0]["then"] - 0.52) < 1e-9 and abs(static[0]["now"] - 0.81) < 1e-9
                    and static[0]["change"] == "higher", since)
        volts = [s for s in since if s["quantity"] == "line volts"]
        count.check("118 V after 119 V is no change", bool(volts) and volts[0]["change"] == "as then", since)

        shop.write("other.toml", job("0612 34519", 'baseline = "kept.toml"\n'))
        code, _, err = run("diagnose", "other.toml")
        count.check("another unit's serial number is an error", code == 65 and "0612 34518" in err and "0612 34519" in err, err)
        shop.write("none.toml", job("0612 34518", 'baseline = "gone.toml"\n'))
        code, _, err = run("diagnose", "none.toml")
        count.check("a file that is not there is an error", code == 65 and "unit.baseline" in err and "gone.toml" in err, err)
        code, _, err = run("sheet", "first.toml", "--set", "unit.baseline=kept.toml")
        count.check("it may be named with --set", code == 0, err)
        shop.write("kept.toml", fill(form, {"static_total": "much"}))
        code, _, err = run("diagnose", "later/job.toml")
        count.check("a reading that is none is told with file, line, key and value",
                    code == 65 and re.search(r"kept\.toml:\d+:\d+: \w+\.static_total = 'much': expected up to three readings in in\. w\.c\.", err), err)
    finally:
        shop.close()
    return count.close()


if __name__ == "__main__":
    sys.exit(main())
