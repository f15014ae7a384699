#!/usr/bin/env python3
"""The Debian packages: made, judged by lintian, unpacked into an empty root, and used from there.

usage: tests/outside/package.py BUILD_DIR      last line: "N passed, N failed"

Works for root and for anyone else: a package is unpacked, not installed, and apt only simulates the installation. The
program then runs from the unpacked root; man, groff and the three shells judge what was made for them; and the example
of docs/examples is built against the unpacked library.
"""
import functools
import glob
import gzip
import json
import os
import re
import shutil
import subprocess
import sys
import tempfile

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
BUILD = os.path.abspath(sys.argv[1])
WORK = tempfile.mkdtemp(prefix="endbell-package-")
TREE = os.path.join(WORK, "root")
USR = os.path.join(TREE, "usr")
ENDBELL = os.path.join(USR, "bin", "endbell")
ENV = {**{k: v for k, v in os.environ.items() if not k.startswith(("ENDBELL_", "XDG_"))},
       "HOME": WORK, "LC_ALL": "C.UTF-8"}
passed = failed = 0


def check(name, holds, detail=""):
    global passed, failed
    passed, failed = (passed + 1, failed) if holds else (passed, failed + 1)
    if not holds:
        print("FAIL " + name + "\n" + str(detail)[:2000])
    return holds


def run(*command, **more):
    return subprocess.run(command, capture_output=True, text=True, env=ENV,
                          **{"cwd": WORK, "stdin": subprocess.DEVNULL, **more})


def packages():
    done = run("cpack", "-G", "DEB", "--config", os.path.join(BUILD, "CPackConfig.cmake"), "-B", WORK)
    made = {re.match(r"[a-z-]+", os.path.basename(f)).group(0): f for f in glob.glob(os.path.join(WORK, "*.deb"))}
    check("two packages are made", done.returncode == 0 and set(made) == {"endbell", "libendbell-dev"},
          done.stdout + done.stderr)
    return made


def judge(name, deb):
    done = run("lintian", "--no-cfg", "--fail-on", "error,warning", deb)
    check(f"lintian finds no error and no warning in {name}", done.returncode == 0, done.stdout + done.stderr)
    fields = run("dpkg-deb", "--field", deb).stdout
    version = run(os.path.join(BUILD, "cli", "endbell"), "--version").stdout.split()[-1]
    check(f"{name} has the program's version", f"\nVersion: {version}-1\n" in fields, fields)
    simulated = run("apt-get", "install", "--simulate", "--no-download", deb)
    check(f"{name} can be installed here", simulated.returncode == 0 and f"Inst {name} " in simulated.stdout,
          simulated.stdout + simulated.stderr)
    check(f"{name} unpacks", run("dpkg-deb", "--extract", deb, TREE).returncode == 0)
    changelog = os.path.join(USR, "share/doc", name, "changelog.Debian.gz")
    parsed = run("dpkg-parsechangelog", "-l", changelog, "-S", "Version")
    check(f"{name}'s changelog begins with its version", parsed.stdout.strip() == f"{version}-1", parsed.stderr)


def program():
    libraries = run("ldd", ENDBELL).stdout
    check("every shared library is found", "not found" not in libraries and "libsqlite3" in libraries, libraries)
    depends = run("dpkg-deb", "--field", packages_made["endbell"], "Depends").stdout
    for library in ("libc6", "libcsv3", "libfmt9", "libsqlite3-0", "libstdc++6", "libtomlplusplus3"):
        check(f"the package depends on {library}", library in depends, depends)
    demo = os.path.join(USR, "share/endbell/demo-catalog")
    catalog = os.path.join(WORK, "parts.db")
    done = run(ENDBELL, "catalog", "import", os.path.join(demo, "tables"), "--into", catalog)
    check("the demo catalog imports", done.returncode == 0 and "set aside 0" in done.stdout, done.stdout + done.stderr)
    job = os.path.join(demo, "jobs", "01-heat-pump-five-tap.toml")
    packed = run(ENDBELL, "--catalog", catalog, "--json", "match", job)
    built = run(os.path.join(BUILD, "cli", "endbell"), "--catalog", catalog, "--json", "match", job)
    check("a job ends in a pick", packed.returncode == 0 and json.loads(packed.stdout)["outcome"] == "something fits",
          packed.stderr)
    check("the packed program answers as the built one", packed.stdout == built.stdout)
    return catalog, job


@functools.cache
def help_of(path):
    return run(ENDBELL, *path, "--help").stdout


@functools.cache
def verbs(path=()):
    """Every verb, from the help itself."""
    section = help_of(path).partition("Subcommands:\n")[2].partition("\n\n")[0]
    below = re.findall(r"^  ([a-z-]+)", section, re.M)
    return [verb for name in below for verb in verbs((*path, name))] or [path]


def options_of(path):
    return set(re.findall(r"(--[a-z-]+)", help_of(path).partition("\nExamples:")[0])) - {"--help"}


def man_pages():
    pages = {os.path.basename(f)[:-3]: f for f in glob.glob(os.path.join(USR, "share/man/man*/*.gz"))}
    wanted = {"endbell.1", "endbell-job.5"} | {"-".join(("endbell", *v)) + ".1" for v in verbs()}
    check("there is a page for each verb and for the job file", set(pages) == wanted, set(pages) ^ wanted)
    for name, path in pages.items():
        with gzip.open(path, "rt", encoding="utf-8") as f:
            text = f.read()
        troff = run("groff", "-ww", "-man", "-Tutf8", "-z", input=text, stdin=None)
        check(f"groff has nothing to say of {name}", troff.returncode == 0 and not troff.stderr, troff.stderr)
    for path in verbs():
        name = "-".join(("endbell", *path))
        shown = run("man", "-M", os.path.join(USR, "share/man"), "-P", "cat", name)
        missing = [o for o in options_of(path) if o not in shown.stdout]
        check(f"man shows {name} with its options", shown.returncode == 0 and not missing, f"{missing} {shown.stderr}")
    keys = run("man", "-M", os.path.join(USR, "share/man"), "-P", "cat", "5", "endbell-job").stdout
    check("the page of the job file has groups and keys", "[measured]" in keys and "static_return" in keys, keys[:500])


def bash_offers(*words):
    script = f"compopt() {{ :; }}; . {USR}/share/bash-completion/completions/endbell\n" \
             "COMP_WORDS=(\"$@\"); COMP_CWORD=$(($# - 1)); _endbell; printf '%s\\n' \"${COMPREPLY[@]}\""
    done = run("bash", "--norc", "-c", script, "bash", "endbell", *words)
    check(f"bash completes {words} without a word", not done.stderr, done.stderr)
    return done.stdout.split()


def fish_offers(*words):
    line = " ".join(("endbell", *words))
    done = run("fish", "--no-config", "-c",
               f"source {USR}/share/fish/vendor_completions.d/endbell.fish; complete -C '{line}'")
    check(f"fish completes {words} without a word", not done.stderr, done.stderr)
    return [offer.split("\t")[0] for offer in done.stdout.splitlines()]


def zsh_offers(awaited, *words):
    """Types the words and ^D at an interactive zsh in a terminal of its own: what it lists until `awaited` is there."""
    # The prompt is put together, so that it is not read in the echo of the line that sets it.
    script = (f"zmodload zsh/zpty; zpty shell zsh -f -i; zpty -w shell \"fpath=({USR}/share/zsh/vendor-completions"
              " \\$fpath); autoload -Uz compinit; compinit -u -D; LISTMAX=9999; PS1=RE''ADY%#\"; "
              f"zpty -r shell out '*READY[#%]*'; zpty -n -w shell $'{' '.join(('endbell', *words))}\\C-D'; shown=; "
              f"until [[ $shown == *{awaited}* ]]; do zpty -r -t shell out; case $? in 0) shown+=$out;; 2) break;; "
              "*) sleep 0.1;; esac; done; print -r -- $shown; zpty -d shell")
    return run("zsh", "-f", "-c", script).stdout


def completion(offers, shell):
    first = {path[0] for path in verbs()}
    check(f"{shell} offers every command", first <= set(offers("")), offers(""))
    check(f"{shell} goes on with a command", set(offers("compa")) == {"compare"}, offers("compa"))
    inner = {path[1] for path in verbs() if path[0] == "catalog"}
    check(f"{shell} offers what stands under catalog", inner <= set(offers("catalog", "")), offers("catalog", ""))
    for path in verbs():
        missing = options_of(path) - set(offers(*path, "--"))
        check(f"{shell} offers the options of {' '.join(path)}", not missing, missing)
    check(f"{shell} offers the readers of a sheet", set(offers("sheet", "job.toml", "--for", "")) ==
          {"counter", "technician", "estimate"}, offers("sheet", "job.toml", "--for", ""))
    check(f"{shell} offers rules", "shaft-diameter" in offers("rules", "sha"), offers("rules", "sha"))
    check(f"{shell} offers job keys", offers("match", "--set", "plate.rot") == ["plate.rotation="],
          offers("match", "--set", "plate.rot"))
    os.makedirs(os.path.join(WORK, "here"), exist_ok=True)
    open(os.path.join(WORK, "here", "attic.toml"), "w", encoding="utf-8").close()
    check(f"{shell} offers files", "here/attic.toml" in offers("--catalog", "parts.db", "match", "here/at"),
          offers("--catalog", "parts.db", "match", "here/at"))


def shells():
    for name, command in (("bash", ("bash", "-n")), ("zsh", ("zsh", "-n")), ("fish", ("fish", "-n"))):
        file = {"bash": "bash-completion/completions/endbell", "zsh": "zsh/vendor-completions/_endbell",
                "fish": "fish/vendor_completions.d/endbell.fish"}[name]
        done = run(*command, os.path.join(USR, "share", file))
        check(f"{name} can read its completion", done.returncode == 0 and not done.stderr, done.stderr)
    completion(bash_offers, "bash")
    completion(fish_offers, "fish")
    shown = zsh_offers("--width", "sheet", "--")
    check("zsh offers options with their help", "--html" in shown and "--plate" in shown, shown)
    shown = zsh_offers("show", "catalog", "")
    check("zsh offers what stands under catalog", "restore" in shown and "generations" in shown, shown)


def library(catalog, job):
    headers = glob.glob(os.path.join(USR, "include/endbell/engine/**/*.hpp"), recursive=True)
    for path in headers:
        with open(path, encoding="utf-8") as f:
            text = f.read()
        gone = [h for h in re.findall(r'#include "([^"]+)"', text)
                if not os.path.exists(os.path.join(USR, "include/endbell", h))]
        foreign = [h for h in re.findall(r"#include <([^>]+)>", text) if re.search(r"[./]", h)]
        check(f"{os.path.basename(path)} includes only what is installed", not gone and not foreign, gone + foreign)
    example = os.path.join(WORK, "example")
    done = run("cmake", "-S", os.path.join(ROOT, "docs/examples"), "-B", example, "-G", "Ninja",
               "-DCMAKE_PREFIX_PATH=" + USR)
    check("find_package finds the library", done.returncode == 0, done.stdout + done.stderr)
    check("and it is the unpacked one", TREE in open(os.path.join(example, "CMakeCache.txt"), encoding="utf-8").read())
    done = run("cmake", "--build", example)
    if check("the example builds", done.returncode == 0, done.stdout[-1500:] + done.stderr):
        shown = run(os.path.join(example, "pick"), catalog, job)
        answer = json.loads(run(ENDBELL, "--catalog", catalog, "--json", "match", job).stdout)
        check("the example takes the same part", shown.stdout.splitlines()[1].startswith(answer["pick"] + ":"), shown.stdout)


def files_below(folder):
    return {os.path.relpath(os.path.join(where, name), folder) for where, _, names in os.walk(folder) for name in names}


def plain_install():
    prefix = os.path.join(WORK, "plain")
    done = run("cmake", "--install", BUILD, "--prefix", prefix)
    check("cmake --install works", done.returncode == 0, done.stderr)
    other = files_below(prefix) ^ files_below(USR)
    check("and installs the files of the two packages", not other, sorted(other)[:20])


packages_made = packages()
for package, file in packages_made.items():
    judge(package, file)
if os.path.exists(ENDBELL):
    demo_catalog, demo_job = program()
    man_pages()
    shells()
    library(demo_catalog, demo_job)
    plain_install()
shutil.rmtree(WORK, ignore_errors=True)
print(f"{passed} passed, {failed} failed")
sys.exit(1 if failed else 0)
