"""Spoiled files of every kind, each put to a verb in a process of its own, and what must hold then.

Whatever stands in a file: no traceback, no warning, an exit status that means something, one JSON
object on standard output, and bounded memory and time. A truck that `check` accepts gets an angle
or is said to slide. What is spoiled, and what it is put to, is in `right_files`. By hand, ten
thousand files, in slices that can be stopped and gone on with:

    python tests/fuzz/spoiling.py FIRST COUNT [--out FILE]
"""

from __future__ import annotations

import argparse
import json
import os
import re
import subprocess
import sys
import tempfile
import time
import warnings
from collections import Counter
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, redirect_stderr, redirect_stdout, suppress
from dataclasses import dataclass
from pathlib import Path
from random import Random

from mutations import spoiled, within
from right_files import KINDS, OFTEN, ROOT, whole

import crossfall.cli  # noqa: F401  before numpy: it says how many threads that may have

MEMORY = 300  # MB of one process, the interpreter and its libraries included
TIME = 20.0  # s of processor time, where `PLAIN` takes `PLAIN_TIME`
PLAIN = ("tilt", "bramble", "--no-trial", "--heading", "90")
PLAIN_TIME = 0.35  # s, beyond what `NOTHING` takes
NOTHING = ("weigh", "bramble")
FORKS = hasattr(os, "fork")
COMPILE = """
from crossfall.engines import axle_forces
from crossfall.statics import balance
from crossfall.truck.native import entry
for module in (axle_forces, balance):
    for function in vars(module).values():
        if hasattr(function, "kinds") and function.__module__ == module.__name__:
            entry(function)
"""
STATUSES = (0, 1, 2, 3)
NEVER = re.compile(rb"Traceback|Warning:|\x1b|[\x00-\x08]|\xc2[\x80-\x9f]|\xe2\x80[\xaa-\xae]")
NOT_A_NUMBER = rb"\bnan\b|\binf\b"
NEVER_ANSWERED = re.compile(NEVER.pattern + b"|" + NOT_A_NUMBER)


@dataclass(frozen=True)
class Case:
    """One spoiled file in its folder, and the command it is put to."""

    seed: int
    kind: str
    file: Path
    argv: tuple[str, ...]


@dataclass(frozen=True)
class Verdict:
    """What came of a case. faults: what must not be, a sentence each."""

    status: int
    seconds: float
    megabytes: float
    faults: tuple[str, ...]


def case(seed: int, folder: Path) -> Case:
    """The case of a number: always the same files and the same command."""
    rng = Random(seed)
    spoil = rng.choice((spoiled, within))
    (kind,) = rng.choices(tuple(KINDS), OFTEN)
    name, data, argv = whole(kind, rng, folder)
    (folder / name).write_bytes(spoil(rng, data))
    as_json = ("--json",) if rng.random() < 0.5 else ()
    return Case(seed, kind, folder / name, (*argv, *as_json))


def warm() -> None:
    """Import what the verbs import, once, so that a case costs a fork and its own work.

    No trial is run: the engine is started in the children only. What takes seconds is left to them.
    What is still to be compiled is so elsewhere: the compiler would stay in the memory of all.
    """
    subprocess.run([sys.executable, "-c", COMPILE], check=True)
    import crossfall.study.closedform
    import crossfall.trials.tilt
    from crossfall.cli import crossfall

    for kind in ("truck", "included", "mesh", "limits", "scenario", "readings", "begin"):
        with tempfile.TemporaryDirectory() as name, _quiet(), suppress(SystemExit):
            argv: tuple[str, ...] = ("tilt",)
            rng = Random(1)
            while argv[0] == "tilt" and "--no-trial" not in argv:
                argv = whole(kind, rng, Path(name))[2]
            os.chdir(name)
            crossfall.main(list(argv), standalone_mode=False)
    os.chdir(ROOT)


@contextmanager
def _quiet() -> Iterator[None]:
    with open(os.devnull, "w") as sink, redirect_stdout(sink), redirect_stderr(sink):
        yield


def time_allowed() -> float:
    """s of one case on this machine as it is just now: `TIME`, or more where `PLAIN`, which has the
    same kind of work to do, takes longer than it did where `TIME` was set."""
    taken = []
    for argv in (PLAIN, NOTHING):
        with tempfile.TemporaryDirectory() as name:
            plain = Case(0, "truck", Path(name), argv)
            taken.append(min(_beside_or_forked(plain, Path(name), 1e6)[1] for _ in range(3)))
    return TIME * max(1.0, (taken[0] - taken[1]) / PLAIN_TIME)


def judge(asked: Case, folder: Path, allowed: float) -> Verdict:
    """Run a case in a process of its own, in its folder, and look at what came of it. allowed: s of
    processor time."""
    status, seconds, megabytes = _beside_or_forked(asked, folder, allowed)
    said = (folder / ".out").read_bytes(), (folder / ".err").read_bytes()
    echoes = re.search(NOT_A_NUMBER, asked.file.read_bytes()) is not None
    faults = [*_text_faults(said, status, echoes), *_answer_faults(asked, status, said[0])]
    if status not in STATUSES:
        last = said[1].decode(errors="replace").strip().splitlines()[-1:]
        faults.append(f"ended with {status}: {' '.join(last)[:300]}")
    if seconds > allowed:
        faults.append(f"took {seconds:.1f} s")
    if megabytes > MEMORY:  # a fork begins with all that was imported before it
        megabytes = alone(asked)
    if megabytes > MEMORY:
        faults.append(f"took {megabytes:.0f} MB")
    return Verdict(status, seconds, megabytes, tuple(faults))


def _beside_or_forked(asked: Case, folder: Path, allowed: float) -> tuple[int, float, float]:
    return _in_child(asked, folder, allowed) if FORKS else beside(asked, folder)


def _in_child(asked: Case, folder: Path, allowed: float) -> tuple[int, float, float]:
    """Exit status, s of CPU and MB."""
    with warnings.catch_warnings():
        # Of threads that sleep: the libraries', which the child does not use before its verb does.
        warnings.filterwarnings("ignore", "This process .* is multi-threaded", DeprecationWarning)
        child = os.fork()
    if child == 0:
        try:
            _become(asked.argv, folder, allowed)
        finally:
            os._exit(99)
    _, status, used = os.wait4(child, 0)
    seconds = used.ru_utime + used.ru_stime
    return os.waitstatus_to_exitcode(status), seconds, used.ru_maxrss / 1024


def beside(asked: Case, folder: Path) -> tuple[int, float, float]:
    """The same where no process can fork: a new one, whose memory is not known (0), and whose time
    is that of a clock, with what loading takes."""
    began = time.monotonic()
    done = subprocess.run([sys.executable, __file__, "--case", str(folder), *asked.argv])
    return done.returncode, time.monotonic() - began, 0.0


def alone(asked: Case) -> float:
    """MB of the same case made anew and run in a process that is no fork of this one."""
    with tempfile.TemporaryDirectory() as name:
        argv = [sys.executable, __file__, "--case", name, *case(asked.seed, Path(name)).argv]
        child = os.posix_spawn(sys.executable, argv, os.environ)
        return os.wait4(child, 0)[2].ru_maxrss / 1024


def _become(argv: Sequence[str], folder: Path, allowed: float | None) -> None:
    """In the child: the command line's own way in, with nothing of the parent's in its ears.
    allowed: s of processor time after which it is ended, some seconds later."""
    os.chdir(folder)
    for number, name in ((1, ".out"), (2, ".err")):
        os.dup2(os.open(name, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o644), number)
    if allowed is not None:
        import resource

        resource.setrlimit(resource.RLIMIT_CPU, (int(allowed) + 5, int(allowed) + 6))
        resource.setrlimit(resource.RLIMIT_AS, (4 << 30, 4 << 30))
    sys.argv = ["crossfall", *argv]
    sys.warnoptions.append("default")  # or the command line would keep warnings to itself
    import warnings

    warnings.simplefilter("default")
    from crossfall.cli import main

    status = 0
    try:
        main()
    except SystemExit as left:
        status = left.code if isinstance(left.code, int) else 0 if left.code is None else 98
    sys.stdout.flush()
    sys.stderr.flush()
    os._exit(status)


def _text_faults(said: tuple[bytes, bytes], status: int, echoes: bool) -> list[str]:
    """echoes: the file itself has words, in a label say, that no answer may have."""
    found = []
    for name, text in zip(("output", "error output"), said, strict=True):
        answered = name == "output" and status in (0, 1) and not echoes
        wrong = NEVER_ANSWERED if answered else NEVER
        if mark := wrong.search(text):
            near = text[max(0, mark.start() - 100) : mark.end() + 200].decode(errors="replace")
            found.append(f"in the {name}: {near!r}")
    return found


def _answer_faults(asked: Case, status: int, output: bytes) -> list[str]:
    if "--json" not in asked.argv:
        return []
    try:
        answer = json.loads(output, parse_constant=lambda word: 1 / 0)
    except (ValueError, ZeroDivisionError):
        return [f"no JSON object, status {status}: {output[:80]!r}"]
    if not isinstance(answer, dict):
        return ["not one JSON object"]
    if asked.argv[0] != "tilt" or status != 0:
        return []
    return [
        f"no angle at {h['heading_deg']}, which {h['outcome']}"
        for h in answer["headings"]
        if h["goes_at_deg"] is None
        or (h["compliant_deg"] is None and h["slide_deg"]["low"] is None)
        or ("--no-trial" not in asked.argv and h["trial_deg"] is None and h["outcome"] == "tips")
    ]


def main() -> int:
    """A slice of the cases; prints what failed and a summary, and writes a line a fault."""
    if sys.argv[1:2] == ["--case"]:  # see `beside`
        _become(sys.argv[3:], Path(sys.argv[2]), None)
    parser = argparse.ArgumentParser(description=main.__doc__)
    parser.add_argument("first", type=int)
    parser.add_argument("count", type=int)
    parser.add_argument("--out", type=Path, help="Keep a line of JSON for every fault.")
    asked = parser.parse_args()
    if FORKS:
        warm()
    else:
        print("no os.fork here: slower, and memory is not looked at", file=sys.stderr)
    allowed = time_allowed()
    tally: Counter[str] = Counter()
    most, spent = [0.0, 0.0], 0.0
    for seed in range(asked.first, asked.first + asked.count):
        with tempfile.TemporaryDirectory() as name:
            one = case(seed, Path(name))
            verdict = judge(one, Path(name), allowed)
        tally[f"status {verdict.status}"] += 1
        tally["faults"] += bool(verdict.faults)
        spent += verdict.seconds
        most = [max(most[0], verdict.seconds), max(most[1], verdict.megabytes)]
        if (seed - asked.first) % 100 == 99:
            print(f"{seed}: {dict(tally)}", file=sys.stderr, flush=True)
        if verdict.faults:
            line = {"seed": seed, "kind": one.kind, "argv": one.argv, "faults": verdict.faults}
            print(json.dumps(line), flush=True)
            if asked.out is not None:
                with asked.out.open("a") as kept:
                    kept.write(json.dumps(line) + "\n")
    print(f"{asked.count} files: {dict(tally)}; {spent:.0f} s in all")
    print(f"of one: at most {most[0]:.1f} s of {allowed:.0f}, {most[1]:.0f} MB")
    return 1 if tally["faults"] else 0


if __name__ == "__main__":
    sys.exit(main())
