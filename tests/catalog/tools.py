"""What the catalog's long tests share: generated tables, and one way to count. No test of its own."""
import csv
import os
import random

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))

class Count:
    def __init__(self):
        self.passed = self.failed = 0

    def expect(self, holds, claim):
        if holds:
            self.passed += 1
        else:
            self.failed += 1
            print("FAIL " + claim)

    def close(self):
        print(f"{self.passed} passed, {self.failed} failed")
        return 1 if self.failed else 0


def endbell(build):
    return os.path.join(os.path.abspath(build), "cli", "endbell")


def write_tables(folder, parts, seed=1, price_step=0):
    """Capacitor-run motors with one rating and one offer each: 4 rows a part, all acceptable."""
    os.makedirs(folder, exist_ok=True)
    rng = random.Random(seed)
    powers = [("1/6", 0.9), ("1/4", 1.3), ("1/3", 1.9), ("1/2", 2.6), ("3/4", 4.0), ("1", 5.5)]
    files = {}
    writers = {}
    heads = {
        "parts": ["part_id", "kind", "maker", "part_number", "status", "description"],
        "motors": ["part_id", "family", "loads", "phase", "poles", "rotation", "shaft_diameter_in", "shaft_length_in",
                   "body_diameter_in", "mount", "enclosure", "bearing", "capacitor_uf", "capacitor_v", "speeds", "signal"],
        "motor_ratings": ["part_id", "rating", "power_hp", "volts", "amps", "speed_rpm"],
        "offers": ["part_id", "seller", "branch", "price", "currency", "stock", "lead_days", "as_of"],
    }
    for name, head in heads.items():
        files[name] = open(os.path.join(folder, name + ".csv"), "w", newline="", encoding="utf-8")
        writers[name] = csv.writer(files[name])
        writers[name].writerow(head)
    for i in range(parts):
        part = f"G-{i:07d}"
        hp, amps = rng.choice(powers)
        writers["parts"].writerow([part, "motor", "Generated Example Works", f"{i:08d}-X", "active", f"{hp} hp example motor"])
        writers["motors"].writerow([part, "capacitor run", "outdoor fan", 1, rng.choice([6, 8]), "reversible", "1/2", rng.choice([4, 5, 6]),
                                    5.6, "band", "TEAO", "ball", 5, 370, 1, "switched line"])
        writers["motor_ratings"].writerow([part, 1, hp, "208-230", amps, rng.choice([825, 1075])])
        writers["offers"].writerow([part, "Example Supply", rng.choice(["East", "West"]),
                                    f"{rng.randrange(4000, 40000) / 100 + price_step:.2f}", "USD", rng.randrange(5), 2, "2026-01-15"])
    for file in files.values():
        file.close()


if __name__ == "__main__":
    print("0 passed, 0 failed")
