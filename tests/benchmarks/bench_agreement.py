"""Trial against statics in the same conditions, every case, by hand: python bench_agreement.py.

The demo trucks on 24 headings and two surfaces each, and 40 random builds on 8 headings. Prints the
median and worst difference where neither sees a snap within a degree of its tip, and every case
beyond 0.3 deg with what the verdict says of it.
"""

from __future__ import annotations

import sys
from dataclasses import replace
from math import degrees, isfinite, radians
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1]))

from crossfall.answers.answer import TipAnswer, answer
from crossfall.answers.conditions import Conditions, conditions
from crossfall.truck.build import load_truck
from crossfall.truck.model import Grip, Truck
from support import make_truck

BAR = 0.3  # deg
NEAR = 1.0  # deg, of a snap to the tip


def random_builds(count: int = 40, seed: int = 11) -> list[Truck]:
    """Trucks of the class that differ in everything; some snap, some lean."""
    u = np.random.default_rng(seed).uniform
    builds = []
    for _ in range(count):
        truck = make_truck(
            wheelbase=u(0.28, 0.34),
            tracks=(u(0.15, 0.2), u(0.15, 0.2)),
            chassis_mass=u(1.3, 2.6),
            chassis_cg=(u(-0.03, 0.03), u(-0.01, 0.01), u(0.08, 0.13)),
            tyre_stiffness=u(2500, 9000),
            tangential=u(0.3, 1.0),
            contact_half_width=float(np.random.default_rng(len(builds)).choice([0.0, 0.008])),
            spring_rate=u(150, 900),
            droop=u(0.005, 0.025),
            anti_roll=u(0, 0.5),
            heave_lean=(u(-0.15, 0.15), u(-0.15, 0.15)),
        )
        builds.append(replace(truck, name=f"random {len(builds)}"))
    return builds


def cases() -> list[tuple[Truck, tuple[Conditions, ...]]]:
    found = []
    for name in ("bramble", "thistle", "burdock"):
        truck = load_truck(name).truck
        psi = np.radians(np.arange(0.0, 360.0, 15.0))
        for grip in truck.grips[:2]:
            found.append((truck, conditions(truck, psi, grip.surface)))
    eighths = np.radians(np.arange(0.0, 360.0, 45.0))
    for i, truck in enumerate(random_builds()):
        mu = (0.9, 1.3)[i % 2]
        found.append((truck, tuple(Conditions(float(h), Grip("any", mu, mu, mu)) for h in eighths)))
    return found


def apart(one: TipAnswer) -> tuple[float, bool]:
    """deg between the trial and the statics, tip or slide; whether a snap is near."""
    trial = one.trial
    assert trial is not None
    seen = trial.tip if trial.outcome == "tips" else trial.slide
    near = isfinite(one.first_snap) and abs(one.goes - one.first_snap) < radians(NEAR)
    near = near or abs(seen - one.first_snap) < radians(NEAR)
    return degrees(seen - one.goes), near


def main() -> None:
    calm, snapped, misses = [], [], []
    for truck, asked in cases():
        for one in answer(truck, asked).answers:
            off, near = apart(one)
            (snapped if near else calm).append(abs(off))
            if not abs(off) <= BAR:
                misses.append((truck.name, one, off, near))
    print(f"{len(calm)} cases without a snap: median {np.median(calm):.3f}, worst {max(calm):.3f}")
    if snapped:
        print(f"{len(snapped)} with one: median {np.median(snapped):.3f}, worst {max(snapped):.3f}")
    for name, one, off, near in misses:
        where = f"{name} at {degrees(one.conditions.heading):.0f}, {one.conditions.grip.surface}"
        print(f"  {where}: {off:+.2f}{' (snap near)' if near else ''}: {one.verdict}")


if __name__ == "__main__":
    main()
