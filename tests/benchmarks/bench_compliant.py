"""Speed and accuracy of the compliant answer, over builds that differ in everything. Run as

OMP_NUM_THREADS=1 python tests/benchmarks/bench_compliant.py [BUILDS]

CPU time of one process; packing the trucks is part of it.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "sim"), str(ROOT / "tests")]

from crossfall.statics import continuation  # noqa: E402
from crossfall.statics.compliant import CompliantTips, tips  # noqa: E402
from crossfall.truck.model import Truck  # noqa: E402
from support import make_truck  # noqa: E402

FOUR = np.radians([0.0, 90.0, 135.0, 180.0])


def varied(count: int) -> list[Truck]:
    """Trucks whose springs may go slack, whose tracks differ, whose heave axes lean."""
    u = np.random.default_rng(1).uniform
    return [
        make_truck(
            tracks=(u(0.15, 0.2), u(0.15, 0.2)),
            chassis_mass=u(1.3, 2.5),
            chassis_cg=(u(-0.03, 0.03), u(-0.01, 0.01), u(0.08, 0.12)),
            tyre_stiffness=u(3000, 15000),
            spring_rate=u(200, 1500),
            bump=u(0.01, 0.02),
            droop=u(0.005, 0.03),
            anti_roll=u(0, 1),
            heave_lean=(u(-0.2, 0.2), u(-0.2, 0.2)),
        )
        for _ in range(count)
    ]


def timed(work: Callable[[], CompliantTips]) -> tuple[CompliantTips, float]:
    begin = time.process_time()
    found = work()
    return found, time.process_time() - begin


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 500
    trucks, one = varied(count), make_truck()
    around = np.linspace(0.0, 2 * np.pi, 72, endpoint=False)
    tips(one, around)
    for grip in (5.0, 0.9, 0.6):
        _, cost = timed(lambda grip=grip: tips(one, around, grip))
        print(f"grip {grip}: all-round map of 72 headings {cost:.3f} s")
        found, cost = timed(lambda grip=grip: tips(trucks, FOUR, grip))
        print(f"grip {grip}: {found.tip.size / cost:.0f} tip angles a second, {count} builds")
    usual = tips(trucks[:50], FOUR)
    settings = continuation.SETTINGS
    continuation.SETTINGS = replace(settings, step=0.01, largest_step=0.01)
    fine = tips(trucks[:50], FOUR)
    continuation.SETTINGS = settings
    worst = np.degrees(np.abs(fine.tip - usual.tip).max())
    print(f"worst difference from a fine-step run {worst:.1e} deg over 200 tips")


if __name__ == "__main__":
    main()
