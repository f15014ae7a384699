"""What the tests of long work share: generated tables, a program on a terminal, and one way to count. No test of its own."""
import csv
import os
import pty
import random
import subprocess
import tempfile
import termios
import time

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


class Shown:
    """A program that shows its progress on a terminal: what it has shown says how far it is, on any machine.

    held: the terminal takes nothing yet, so that the program stands still at its first line of progress.
    """

    def __init__(self, arguments, held=False, **how):
        self.main, self.side = pty.openpty()
        if held:
            termios.tcflow(self.side, termios.TCOOFF)
        self.out = tempfile.TemporaryFile()  # takes all; a pipe would hold the program up
        self.program = subprocess.Popen(arguments, stdout=self.out, stderr=self.side, **how)
        self.seen = b""
        if not held:
            self.close_side()

    def close_side(self):
        if self.side is not None:
            os.close(self.side)
        self.side = None

    def wait_until_it_heeds(self, sent):
        """Until the program has a handler of its own for the signal, or has ended."""
        while self.program.poll() is None:
            with open(f"/proc/{self.program.pid}/status", encoding="ascii") as status:
                caught = [line for line in status if line.startswith("SigCgt:")]
            if caught and int(caught[0].split()[1], 16) >> (sent - 1) & 1:
                return
            time.sleep(0.001)

    def read(self):
        """What is shown next; nothing: the program has ended."""
        try:
            block = os.read(self.main, 65536)
        except OSError:  # the other side is closed
            block = b""
        self.seen += block
        return block

    def wait_until_shown(self, lines):
        while self.seen.count(b"\x1b[K") < lines and self.read():
            pass

    def end(self, sent=None):
        """Sends the signal, lets it go and waits: (exit code, stdout, what the terminal showed)."""
        if sent is not None:
            self.program.send_signal(sent)
        if self.side is not None:
            termios.tcflow(self.side, termios.TCOON)
        self.close_side()
        while self.read():
            pass
        os.close(self.main)
        code = self.program.wait()
        self.out.seek(0)
        with self.out:
            return code, self.out.read().decode(), self.seen.decode(errors="replace")


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
