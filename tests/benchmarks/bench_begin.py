"""Truck files from fourteen readings against the trucks read off, by hand: python bench_begin.py.

60 random builds, each read off with scale and ruler errors. Prints, at each of four headings, how
often the truck's own angle lies in the file's 95 % range, and by how much the file's angle is out.
"""

from __future__ import annotations

import sys
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1]))

from crossfall.answers.conditions import Conditions
from crossfall.answers.ranges import ranges
from crossfall.answers.tips import tip_angles
from crossfall.measurement.begin import begin
from crossfall.measurement.readings import checked
from crossfall.truck.build import build
from crossfall.truck.model import Array, Grip
from crossfall.truck.schema import TruckSpec
from measured_builds import random_builds, readings

HEADINGS = np.radians([0.0, 90.0, 180.0, 270.0])
GRIP = Grip("any", 0.9, 0.9, 0.9)


def tried(count: int, seed: int) -> Array:
    """(count, 4, 4) deg: true, found, low and high, for each build and heading."""
    rows = []
    for i, one in enumerate(random_builds(count, seed)):
        truck = build(TruckSpec.model_validate(begin(checked(readings(one, i))).data))[0]
        found, spans = ranges(truck, [Conditions(float(h), GRIP, "rail") for h in HEADINGS])
        true = tip_angles(one.truck, HEADINGS, GRIP.likely, "rail").free
        low, high = np.array([s.tip for s in spans]).T
        rows.append(np.degrees([true, found.free, low, high]).T)
    return np.array(rows)


def main() -> None:
    count, seed = (int(v) for v in [*sys.argv[1:], "60", "5"][:2])
    found = tried(count, seed)
    true, told, low, high = np.moveaxis(found, 2, 0)
    inside = (low <= true) & (true <= high)
    for h, heading in enumerate(np.degrees(HEADINGS)):
        off = np.abs(told - true)[:, h]
        half = (high - low)[:, h] / 2
        print(
            f"heading {heading:3.0f}: inside {inside[:, h].mean() * 100:5.1f} %, out by median "
            f"{np.median(off):.2f}, mean {(told - true)[:, h].mean():+.2f}, worst {off.max():.2f}; "
            f"median +-{np.median(half):.2f} deg"
        )
    for i, h in np.argwhere(~inside):
        t, f, a, b = found[i, h]
        print(
            f"  build {i} at {np.degrees(HEADINGS[h]):.0f}: "
            f"{t:.2f}, told {f:.2f} [{a:.2f}, {b:.2f}]"
        )


if __name__ == "__main__":
    main()
