"""Spoiled files of every kind, each put to a verb in a process of its own, and what must hold then.

Whatever stands in a file: no traceback, no warning, an exit status that means something, one JSON
object on standard output, and bounded memory and time. A truck that `check` accepts gets an angle
or is said to slide. By hand, ten thousand files, in slices that can be stopped and gone on with:

    python tests/fuzz/spoiling.py FIRST COUNT [--out FILE]
"""

from __future__ import annotations

import argparse
import json
import os
import re
import resource
import shutil
import struct
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager, redirect_stderr, redirect_stdout, suppress
from dataclasses import dataclass
from pathlib import Path
from random import Random

from mutations import spoiled, within

from crossfall.truck.demos import demo_folder

ROOT = Path(__file__).resolve().parents[2]
MEMORY = 300  # MB of one process, the interpreter and its libraries included
TIME = 20.0  # s of processor time
STATUSES = (0, 1, 2, 3)
NEVER = re.compile(rb"Traceback|Warning:|\x1b|[\x00-\x08]|\xc2[\x80-\x9f]|\xe2\x80[\xaa-\xae]")
NEVER_ANSWERED = re.compile(NEVER.pattern + rb"|\bnan\b|\binf\b")
NAMES = ("bramble", "thistle", "burdock")

READINGS = b"""\
title = "a weigh-in"
floor_tol_deg = 0.2
[truck]
wheelbase_mm = 313
front_track_mm = 170
rear_track_mm = 170
front_radius_mm = 56
rear_radius_mm = 56
[scale]
resolution_g = 1
accuracy_percent = 0.2
height_match_mm = 0.3
[suspension]
locked = %s
front_spring_n_per_mm = 0.3
rear_spring_n_per_mm = 0.35
tyre_n_per_mm = 5
[[reading]]
at = "front"
load_g = [1342, 1345, 1341]
[[reading]]
at = "rear"
load_g = [1290, 1288, 1291]
[[reading]]
at = "left"
load_g = 1320
[[reading]]
at = "rear"
raised = "front"
block_mm = 90
load_g = [1502, 1499, 1503]
[[reading]]
at = "each wheel"
load_g = [[670, 672, 644, 646], [671, 672, 645, 646]]
"""
BOARD = b"""\
title = "garage board"
[inclinometer]
resolution_deg = 0.1
accuracy_deg = 0.2
[[tip]]
heading_deg = 90
angle_deg = [33.2, 33.6, 33.3]
[[tip]]
heading_deg = 0
angle_deg = [44.1]
rail = true
[[tip]]
heading_deg = 180
angle_deg = [38.5, 38.9]
locked = true
[[tip]]
heading_deg = 270
angle_deg = [36]
slid = true
"""
SCENARIO = b"""\
name = "track against height"
truck = "thistle"
method = "closed form"
headings_deg = [0, 90]
repeats = 1
seed = 2
surface = "rock"
[fixed]
slope_deg = 30
"both.suspension.spring_n_per_mm" = 0.5
[[axis]]
key = "both.track_mm"
first = 160
last = 200
steps = 4
[[axis]]
key = "part.battery pack.at_mm.z"
values = [60, 80, 90]
[limits]
trial_s = 100
[[map]]
x = "both.track_mm"
y = "part.battery pack.at_mm.z"
shows = "slope"
"""
PARTS = b"""\
[materials.resin]
density_g_cm3 = 1.2
source = "a bag"
[grip.slate]
low = 0.5
likely = 0.6
high = 0.7
[[part]]
name = "crate"
on = "chassis"
mass_g = 40
shape = { kind = "box", size_mm = [30, 20, 25], wall_mm = 1 }
at_mm = [-60, 0, 140]
[[part]]
name = "roll bar"
on = "chassis"
material = "resin"
shape = { kind = "tube", outer_mm = 8, inner_mm = 6, length_mm = 120, along = "y" }
at_mm = [-20, 0, 190]
turn_deg = [0, 10, 0]
"""
CORNERS = [(x, y, z) for x in (0.0, 40.0) for y in (0.0, 30.0) for z in (0.0, 20.0)]
FACES = [(0, 1, 3), (0, 3, 2), (4, 6, 7), (4, 7, 5), (0, 4, 5), (0, 5, 1), (2, 3, 7), (2, 7, 6)]
FACES += [(0, 2, 6), (0, 6, 4), (1, 5, 7), (1, 7, 3)]


def mesh(kind: str) -> bytes:
    """A block as an ASCII or binary STL, an OBJ or a PLY file."""
    if kind == "stl":
        return (demo_folder() / "meshes" / "anvil.stl").read_bytes()
    if kind == "binary.stl":
        faces = [struct.pack("<12fH", 0, 0, 0, *sum((CORNERS[i] for i in f), ()), 0) for f in FACES]
        return b"block".ljust(80) + struct.pack("<I", len(faces)) + b"".join(faces)
    if kind == "obj":
        lines = ["v {} {} {}".format(*c) for c in CORNERS]
        lines += ["f {} {} {}".format(*(i + 1 for i in f)) for f in FACES]
        return "\n".join(lines).encode()
    head = f"ply\nformat ascii 1.0\nelement vertex {len(CORNERS)}\n"
    head += "".join(f"property float {a}\n" for a in "xyz")
    head += f"element face {len(FACES)}\nproperty list uchar int vertex_indices\nend_header\n"
    lines = ["{} {} {}".format(*c) for c in CORNERS] + ["3 {} {} {}".format(*f) for f in FACES]
    return (head + "\n".join(lines) + "\n").encode()


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
    name, data, argv = _whole(kind, rng, folder)
    (folder / name).write_bytes(spoil(rng, data))
    as_json = ("--json",) if rng.random() < 0.5 else ()
    return Case(seed, kind, folder / name, (*argv, *as_json))


def _whole(kind: str, rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    """The file to spoil, its right content, and a command for it; all it needs is in the folder."""
    for name in NAMES:
        shutil.copy(demo_folder() / f"{name}.toml", folder)
    shutil.copytree(demo_folder() / "meshes", folder / "meshes", dirs_exist_ok=True)
    name, data, argv = KINDS[kind](rng, folder)
    (folder / name).write_bytes(data)
    return name, data, argv


def _truck(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    name = f"{rng.choice(NAMES)}.toml"
    heading = str(rng.choice((0, 90, 180, 270, 45, 135, 200, 315)))
    verbs = [
        *((("check", name),) * 3),
        *((("weigh", name),) * 2),
        *((("tilt", name, "--no-trial", "--heading", heading),) * 6),
        *((("tilt", name, "--heading", heading),) * 2),
        ("urdf", name, "-o", "model.urdf"),
        ("gains", name, "--rigid"),
        ("runtime", name),
    ]
    return name, (folder / name).read_bytes(), rng.choice(verbs)


def _included(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    text = (folder / "thistle.toml").read_text()
    (folder / "thistle.toml").write_text('include = ["parts.toml"]\n' + text)
    verb = rng.choice((("weigh", "thistle.toml"), ("check", "thistle.toml")))
    return "parts.toml", PARTS, verb


def _mesh(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    kind = rng.choice(("stl", "binary.stl", "obj", "ply"))
    name = f"meshes/block.{kind.rpartition('.')[2]}"
    text = (folder / "burdock.toml").read_text()
    (folder / "burdock.toml").write_text(text.replace("meshes/anvil.stl", name))
    verbs = (("weigh", "burdock.toml"), ("check", "burdock.toml"))
    return name, mesh(kind), rng.choice(verbs)


def _changes(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    data = (demo_folder() / "bramble.changes.toml").read_bytes()
    return "bramble.changes.toml", data, ("whatif", "bramble.toml")


def _limits(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    data = (demo_folder() / "scale-trail.limits.toml").read_bytes()
    return "class.toml", data, ("limits", "bramble.toml", "class.toml")


def _scenario(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    return "s.toml", SCENARIO, ("sweep", "s.toml", "--no-page", "--workers", "1")


def _readings(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    truck = ("--truck", "bramble.toml") if rng.random() < 0.3 else ()
    data = READINGS % rng.choice((b"true", b"false"))
    return "readings.toml", data, ("weigh-in", "readings.toml", *truck)


def _board(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    return "bramble.board.toml", BOARD, ("board", "bramble.toml")


def _reconcile(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    (folder / "board.toml").write_bytes(BOARD)
    (folder / "readings.toml").write_bytes(READINGS % b"true")
    name, data = rng.choice((("board.toml", BOARD), ("readings.toml", READINGS % b"false")))
    argv = ("reconcile", "bramble.toml", "--scales", "readings.toml", "--board", "board.toml")
    return name, data, argv


KINDS = {
    "truck": _truck,
    "included": _included,
    "mesh": _mesh,
    "changes": _changes,
    "limits": _limits,
    "scenario": _scenario,
    "readings": _readings,
    "board": _board,
    "reconcile": _reconcile,
}
OFTEN = (10, 2, 4, 1, 2, 2, 4, 1, 1)  # how often each is chosen: fits and what-ifs take longest


def warm() -> None:
    """Import what the verbs import, once, so that a case costs a fork and its own work.

    No trial is run: the engine is started in the children only.
    """
    import crossfall.study.closedform
    import crossfall.trials.tilt
    from crossfall.cli import crossfall

    for kind in KINDS:
        with tempfile.TemporaryDirectory() as name, _quiet(), suppress(SystemExit):
            argv: tuple[str, ...] = ("tilt",)
            rng = Random(1)
            while argv[0] == "tilt" and "--no-trial" not in argv:
                argv = _whole(kind, rng, Path(name))[2]
            os.chdir(name)
            crossfall.main(list(argv), standalone_mode=False)
    os.chdir(ROOT)


@contextmanager
def _quiet() -> Iterator[None]:
    with open(os.devnull, "w") as sink, redirect_stdout(sink), redirect_stderr(sink):
        yield


def judge(asked: Case, folder: Path) -> Verdict:
    """Run a case in a process of its own, in its folder, and look at what came of it."""
    began = time.monotonic()
    status, used = _in_child(asked, folder)
    said = (folder / ".out").read_bytes(), (folder / ".err").read_bytes()
    seconds, megabytes = used.ru_utime + used.ru_stime, used.ru_maxrss / 1024
    faults = [*_text_faults(said, status), *_answer_faults(asked, status, said[0])]
    if status not in STATUSES:
        last = said[1].decode(errors="replace").strip().splitlines()[-1:]
        faults.append(f"ended with {status}: {' '.join(last)[:300]}")
    if seconds > TIME:
        faults.append(f"took {seconds:.1f} s")
    if megabytes > MEMORY:
        faults.append(f"took {megabytes:.0f} MB")
    return Verdict(status, time.monotonic() - began, megabytes, tuple(faults))


def _in_child(asked: Case, folder: Path) -> tuple[int, resource.struct_rusage]:
    child = os.fork()
    if child == 0:
        try:
            _become(asked, folder)
        finally:
            os._exit(99)
    _, status, used = os.wait4(child, 0)
    return os.waitstatus_to_exitcode(status), used


def _become(asked: Case, folder: Path) -> None:
    """In the child: the command line's own way in, with nothing of the parent's in its ears."""
    os.chdir(folder)
    for number, name in ((1, ".out"), (2, ".err")):
        os.dup2(os.open(name, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o644), number)
    resource.setrlimit(resource.RLIMIT_CPU, (int(TIME) + 5, int(TIME) + 6))
    resource.setrlimit(resource.RLIMIT_AS, (4 << 30, 4 << 30))
    sys.argv = ["crossfall", *asked.argv]
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


def _text_faults(said: tuple[bytes, bytes], status: int) -> list[str]:
    found = []
    for name, text in zip(("output", "error output"), said, strict=True):
        answered = name == "output" and status in (0, 1)
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
    parser = argparse.ArgumentParser(description=main.__doc__)
    parser.add_argument("first", type=int)
    parser.add_argument("count", type=int)
    parser.add_argument("--out", type=Path, help="Keep a line of JSON for every fault.")
    asked = parser.parse_args()
    warm()
    tally: Counter[str] = Counter()
    most = [0.0, 0.0]
    for seed in range(asked.first, asked.first + asked.count):
        with tempfile.TemporaryDirectory() as name:
            one = case(seed, Path(name))
            verdict = judge(one, Path(name))
        tally[f"status {verdict.status}"] += 1
        tally["faults"] += bool(verdict.faults)
        most = [max(most[0], verdict.seconds), max(most[1], verdict.megabytes)]
        if (seed - asked.first) % 100 == 99:
            print(f"{seed}: {dict(tally)}", file=sys.stderr, flush=True)
        if verdict.faults:
            line = {"seed": seed, "kind": one.kind, "argv": one.argv, "faults": verdict.faults}
            print(json.dumps(line), flush=True)
            if asked.out is not None:
                with asked.out.open("a") as kept:
                    kept.write(json.dumps(line) + "\n")
    print(f"{asked.count} files: {dict(tally)}; at most {most[0]:.1f} s, {most[1]:.0f} MB")
    return 1 if tally["faults"] else 0


if __name__ == "__main__":
    sys.exit(main())
