"""Files of every kind that a verb reads, right ones, each with a command for it; to be spoiled."""

from __future__ import annotations

import os
import re
import shutil
import struct
import subprocess
import sys
import tempfile
from functools import cache
from pathlib import Path
from random import Random

from crossfall.truck.demos import demo_folder

ROOT = Path(__file__).resolve().parents[2]
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
"both.suspension.shock_n_per_mm" = 0.5
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
FIRST = b"""\
wheelbase_mm = 313
front_track_mm = 176
rear_track_mm = 178
tyre_diameter_mm = 117
tyre_width_mm = 42
front_left_g = 830
front_right_g = 820
rear_left_g = 1000
rear_right_g = 1030
block_mm = 90
raised = "front"
raised_g = 1450
raised_repeats = 3
held = true
wheel_g = 171
body_g = 640
roof_mm = 236
pack_g = 260
pack_at_mm = [-104, -4, 126]
squash_g = 1000
squash_mm = 1.8
sag_g = 500
front_sag_mm = 9.5
rear_hang_mm = 14
anti_roll_bar = "rear"
side_g = 900
side_mm = 4.0
pull_g = 2500
[[part]]
name = "winch"
on = "chassis"
mass_g = 180
at_mm = [160, 0, 95]
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


def whole(kind: str, rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    """The file to spoil, its right content, and a command for it; all it needs is in the folder."""
    lay_out(folder)
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
        ("tilt", name, "--quick", "--engine", "mujoco", "--heading", heading),
        ("urdf", name, "-o", "model.urdf"),
        ("gains", name, "--rigid"),
        ("runtime", name),
        ("suspension", name),
        ("slope", name, "--slope", "25", "--heading", heading),
        ("slope", name, "--ramp", "20"),
        ("spread", name, "--heading", heading, "--samples", "8"),
        ("sheet", name, "-o", "sheet.html"),
    ]
    return name, (folder / name).read_bytes(), rng.choice(verbs)


def _linked(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    """A truck whose links say what they are, if they do not yet."""
    name = f"{rng.choice(NAMES)}.toml"
    kinds = "lower|upper|shock" if rng.random() < 0.5 else "lower|upper"
    text = (folder / name).read_text(encoding="utf-8")
    if "guided_by" not in text:
        own = rf'(name = "(?:front|rear) ({kinds})(?: link)?"\n)(?!link)'
        text = re.sub(own, r'\1link = "\2"\n', text)
        guided = r'\1guided_by = "links"\n'
        text = re.sub(r"(\[(?:front|rear)\.suspension\]\n)", guided, text)
    if "shock" in kinds and "shock_n_per_mm" not in text:
        text = re.sub(r"\nspring_n_per_mm", "\nshock_n_per_mm", text)
        text = re.sub(r"\nspring_spacing_mm = \d+", "", text)
    heading = str(rng.randrange(360))
    verbs = [
        ("check", name),
        ("suspension", name, "--no-moves"),
        ("tilt", name, "--no-trial", "--heading", heading),
        ("tilt", name, "--quick", "--heading", heading),
        ("tilt", name, "--quick", "--engine", "mujoco", "--heading", heading),
    ]
    return name, text.encode(), rng.choice(verbs)


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


def _plan(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    head, *each = (demo_folder() / "bramble.changes.toml").read_bytes().split(b"[[change]]")
    alone = [change for change in each if b"requires" not in change and b"needs" not in change]
    data = b"[[change]]".join([head, *rng.sample(alone, 4)])
    aim = rng.choice((("--aim", "side"), ("--heading", "0"), ("--heading", "45")))
    most = rng.choice(((), ("--budget", "60"), ("--reach", "34"), ("--added-mass", "0")))
    return "bramble.changes.toml", data, ("plan", "bramble.toml", *aim, *most)


def _fit(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    data = (demo_folder() / "bramble.changes.toml").read_bytes()
    change = rng.choice(("no spare", "tray lower", "small pack"))
    return "bramble.changes.toml", data, ("fit", "bramble.toml", change, "-o", "fitted.toml")


def _begin(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    return "first.toml", FIRST, ("begin", "made", "--readings", "first.toml")


def _record(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    """A kept trial."""
    argv = ("tilt", "bramble.toml", "--heading", "90", "--quick", "--record", "trial.npz")
    return "trial.npz", made(argv)["trial.npz"], ("refit", "trial.npz")


def _store(rng: Random, folder: Path) -> tuple[str, bytes, tuple[str, ...]]:
    """The folder of a sweep that is done; one of its files is to be spoiled."""
    begin = ("sweep", "s.toml", "--no-page", "--workers", "1")
    kept = made(begin)
    for name, data in kept.items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_bytes(data)
    names = sorted(name for name in kept if name.endswith((".db", ".parquet")))
    name = rng.choice(names)
    verbs = (("status", "s.toml"), ("report", "s.toml"), begin)
    return name, kept[name], rng.choice(verbs)


@cache
def made(argv: tuple[str, ...]) -> dict[str, bytes]:
    """Every file there is once this command is through, made once in a process of its own."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        lay_out(folder)
        main = "from crossfall.cli import main; main()"
        paths = os.pathsep.join(str(ROOT / room) for room in ("sim", "tests"))
        subprocess.run(
            [sys.executable, "-c", main, *argv],
            cwd=folder,
            env={**os.environ, "PYTHONPATH": paths},
            capture_output=True,
            check=True,
        )
        return {
            file.relative_to(folder).as_posix(): file.read_bytes()
            for file in sorted(folder.rglob("*"))
            if file.is_file() and not file.name.endswith(("-shm", "-wal"))
        }


def lay_out(folder: Path) -> None:
    """The demo trucks and a scenario, which commands name."""
    for name in NAMES:
        shutil.copy(demo_folder() / f"{name}.toml", folder)
    shutil.copytree(demo_folder() / "meshes", folder / "meshes", dirs_exist_ok=True)
    (folder / "s.toml").write_bytes(SCENARIO)


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
    "linked": _linked,
    "plan": _plan,
    "fit": _fit,
    "begin": _begin,
    "record": _record,
    "store": _store,
}
OFTEN = (
    12,
    2,
    4,
    1,
    2,
    2,
    4,
    1,
    1,
    5,
    1,
    2,
    2,
    3,
    3,
)  # how often each is chosen: fits and what-ifs take longest
