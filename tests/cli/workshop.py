"""What the tests of the shell share: a workshop with the demo catalog, and one way to count. No test of its own."""
import os
import pty
import shutil
import subprocess
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
JOBS = os.path.join(ROOT, "demo-catalog", "jobs")
TABLES = os.path.join(ROOT, "demo-catalog", "tables")


class Count:
    def __init__(self):
        self.passed = self.failed = 0

    def check(self, name, holds, detail=""):
        self.passed, self.failed = self.passed + bool(holds), self.failed + (not holds)
        print(("ok   " if holds else "FAIL ") + name + (": " + str(detail)[:700] if detail and not holds else ""), flush=True)

    def close(self):
        print(f"{self.passed} passed, {self.failed} failed")
        return 1 if self.failed else 0


class Workshop:
    """A folder of its own with parts.db; nothing of the user's environment gets in."""

    def __init__(self, build):
        self.program = os.path.abspath(os.path.join(build, "cli", "endbell"))
        self.home = tempfile.mkdtemp(prefix="endbell-shell-")
        self.environment = {"PATH": os.environ["PATH"], "HOME": self.home, "TERM": "xterm", "LANG": "C.UTF-8"}
        self.catalog = os.path.join(self.home, "parts.db")
        code, out, err = self.run("catalog", "import", TABLES, "--into", self.catalog)
        assert code == 0, out + err

    def close(self):
        shutil.rmtree(self.home, ignore_errors=True)

    def path(self, *names):
        return os.path.join(self.home, *names)

    def write(self, name, text):
        path = self.path(name)
        os.makedirs(os.path.dirname(path), exist_ok=True)
        with open(path, "wb") as file:
            file.write(text if isinstance(text, bytes) else text.encode("utf-8"))
        return path

    def run(self, *words, stdin="", env=None, stdout=subprocess.PIPE):
        done = subprocess.run([self.program, *words], input=stdin.encode("utf-8"), stdout=stdout, stderr=subprocess.PIPE,
                              cwd=self.home, env={**self.environment, **(env or {})})
        return done.returncode, (done.stdout or b"").decode("utf-8", "replace"), done.stderr.decode("utf-8", "replace")

    def on_terminal(self, *words, env=None, columns=80, stderr_too=False):
        """(exit code, what a terminal of so many columns got on stdout; on stderr too, if asked)."""
        main, side = pty.openpty()
        import fcntl
        import struct
        import termios
        fcntl.ioctl(side, termios.TIOCSWINSZ, struct.pack("HHHH", 24, columns, 0, 0))
        program = subprocess.Popen([self.program, *words], stdin=subprocess.DEVNULL, stdout=side,
                                   stderr=side if stderr_too else subprocess.DEVNULL, cwd=self.home,
                                   env={**self.environment, **(env or {})})
        os.close(side)
        seen = b""
        while True:
            try:
                block = os.read(main, 65536)
            except OSError:  # the other side is closed
                break
            if not block:
                break
            seen += block
        os.close(main)
        return program.wait(), seen.decode("utf-8", "replace").replace("\r\n", "\n")


if __name__ == "__main__":
    print("0 passed, 0 failed")
