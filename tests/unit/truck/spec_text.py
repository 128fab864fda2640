"""A small complete chassis file for the tests of this room, and ways to change and read it."""

from __future__ import annotations

from pathlib import Path

from crossfall.truck.build import Loaded, load_truck
from crossfall.truck.errors import InputError, Problem

SAMPLE = """\
format = 1
name = "sample"
note = \"\"\"
Several lines, with a trap: [front]
track_mm = 1
\"\"\"
currency = "EUR"

[chassis]
wheelbase_mm = 313
steering_lock_deg = 40
final_drive = 30.5
driven = "both"

[front]
track_mm = 170

[front.tyre]
radius_mm = 57
width_mm = 40
contact_half_width_mm = 4
stiffness_n_per_mm = 5

[front.suspension]
spring_n_per_mm = 0.2
spring_spacing_mm = 110
damping_n_s_per_m = 8
roll_centre_mm = 78
bump_mm = 20
droop_mm = 15
anti_dive_percent = 10

[rear]
track_mm = 172

[rear.tyre]
radius_mm = 57
width_mm = 40
contact_half_width_mm = 4
stiffness_n_per_mm = 5

[rear.suspension]
spring_n_per_mm = 0.21
spring_spacing_mm = 110
damping_n_s_per_m = 8
roll_centre_mm = 78
bump_mm = 20
droop_mm = 15
heave_lean_deg = -3

[grip.rock]
low = 0.7
likely = 0.85
high = 1.0

[clearance]
nose_mm = [220, 90]
belly_mm = [0, 75]
tail_mm = [-220, 90]

[battery]
part = "pack"
cells = 3
capacity_mah = 2200

[tolerance]
mass_percent = 2
place_mm = 2

[materials.resin]
density_g_cm3 = 1.15
source = "weighed a cube"

[[part]]
name = "frame"
on = "chassis"
mass_g = 1500
shape = { kind = "box", size_mm = [300, 90, 60] }
at_mm = [
  -5,    # a little to the rear
  0,
  110,
]

[[part]]
name = "pack"
on = "chassis"
mass_g = 250
shape = { kind = "box", size_mm = [100, 34, 24] }
at_mm = [20, 0, 100]
mass_tol_g = 1
place_tol_mm = 3

[[part]]
name = "cover"
on = "chassis"
mirror = true
material = "resin"
shape = { kind = "plate", length_mm = 60, width_mm = 40, thickness_mm = 2 }
at_mm = [0, 50, 140]
turn_deg = [15, 0, 0]

[[part]]
name = "axle tube"
on = "each axle"
material = "aluminium"
shape = { kind = "tube", outer_mm = 18, inner_mm = 10, length_mm = 120, along = "y" }
at_mm = [0, 0, 0]

[[part]]
name = "link"
on = "rear link"
mirror = true
chassis_end_mm = [-30, 30, 85]
axle_end_mm = [0, 40, -6]
unsprung = 0.5
material = "steel"
shape = { kind = "rod", diameter_mm = 6 }

[[part]]
name = "wheel"
on = "every wheel"
mass_g = 150
shape = { kind = "ring", outer_mm = 114, inner_mm = 50, width_mm = 40 }
at_mm = [0, 0, 0]
"""


def changed(*swaps: tuple[str, str], text: str = SAMPLE) -> str:
    """The sample with pieces of its text swapped; each must be there (the first one counts)."""
    for old, new in swaps:
        assert old in text, old
        text = text.replace(old, new, 1)
    return text


def load(folder: Path, text: str = SAMPLE) -> Loaded:
    """The truck of a text, through a real file."""
    path = folder / "truck.toml"
    path.write_text(text, encoding="utf-8")
    return load_truck(path)


def mistakes(folder: Path, text: str | bytes) -> tuple[Problem, ...]:
    """Every problem of a text that must not load."""
    path = folder / "truck.toml"
    path.write_bytes(text if isinstance(text, bytes) else text.encode("utf-8"))
    try:
        load_truck(path)
    except InputError as error:
        return error.problems
    raise AssertionError("the file was accepted")


def line_of(text: str, snippet: str) -> int:
    """1-based line of the first place where a snippet stands."""
    return text[: text.index(snippet)].count("\n") + 1
