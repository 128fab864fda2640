"""How much cheaper a trial is than the straightforward script of the same engine. Run as

    python tests/benchmarks/bench_trial.py [--engine mujoco] [DEMO TRUCK ...]

All ways in one run, turn by turn, in CPU time, so that the machine's own speed cancels. Ours has a
heading's share of opening the world and loading the truck; the scripts open their own each time, as
scripts do. The slow limit is a trial with a quarter of the rates and of the bracket. Bullet's
script has tyres that do not give along the ground, which it is also off by; MuJoCo's has the model
that ours has, at 1 ms.
"""

from __future__ import annotations

import argparse
import math
import sys
import time
from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "tests"), str(ROOT / "sim"), str(Path(__file__).parent)]

from plain_mujoco import plain_mujoco  # noqa: E402
from plain_script import plain_trial  # noqa: E402

from crossfall.engines.held import EngineName  # noqa: E402
from crossfall.trials.pace import QUICK, Pace  # noqa: E402
from crossfall.trials.tilt import tilt_trials  # noqa: E402
from crossfall.truck.build import load_truck  # noqa: E402
from crossfall.truck.demos import demo_names  # noqa: E402
from crossfall.truck.model import Array, Truck, frozen  # noqa: E402
from crossfall.truck.quiet import silence  # noqa: E402
from support import make_truck  # noqa: E402

GRIP = 5.0
FINE = replace(
    Pace(),
    brisk=math.radians(1.25),
    slow=math.radians(0.5),
    steady=math.radians(0.25),
    bracket=math.radians(0.01),
)
PACES = {"careful": Pace(), "quick": QUICK}


@dataclass(frozen=True)
class Timing:
    """CPU seconds per heading, and how far the angle is from the slow limit, (n,) rad."""

    cost: float
    error: Array


def script(engine: EngineName) -> Callable[[Truck, float], float]:
    """The straightforward way: table angle (rad) at which it has fallen."""
    if engine == "mujoco":
        return plain_mujoco
    with silence():
        import pybullet

    return lambda truck, heading: plain_trial(pybullet, truck, heading)


def measure(
    truck: Truck, headings: list[float], engine: EngineName, rounds: int = 1
) -> dict[str, Timing]:
    """Time every way on the same truck and headings; the slow limit chooses where ours start."""
    plain = script(engine)
    limit = [t.tip for t in tilt_trials(truck, headings, grip=GRIP, pace=FINE, engine=engine)]
    spent = dict.fromkeys(("script", *PACES), 0.0)
    found: dict[str, list[float]] = {}
    for _ in range(rounds):
        began = time.process_time()
        found["script"] = [plain(truck, heading) for heading in headings]
        spent["script"] += time.process_time() - began
        for name, pace in PACES.items():
            began = time.process_time()
            trials = tilt_trials(truck, headings, grip=GRIP, near=limit, pace=pace, engine=engine)
            spent[name] += time.process_time() - began
            found[name] = [t.tip for t in trials]
    return {
        name: Timing(spent[name] / rounds / len(headings), frozen(np.abs(np.subtract(at, limit))))
        for name, at in found.items()
    }


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--engine", choices=["bullet", "mujoco"], default="bullet")
    parser.add_argument("trucks", nargs="*")
    given = parser.parse_args()
    trucks = {name: load_truck(name).truck for name in given.trucks or demo_names()}
    if not given.trucks:
        trucks["made up"] = make_truck()
    ratios: dict[str, list[float]] = {name: [] for name in PACES}
    for name, truck in trucks.items():
        seen = measure(truck, [0.0, math.pi / 2, math.pi, 3 * math.pi / 2], given.engine)
        said = []
        for way, one in seen.items():
            off = f"{math.degrees(float(np.median(one.error))):.3f}"
            said.append(f"{way} {one.cost * 1e3:.0f} ms, off by {off} deg")
            if way in ratios:
                ratios[way].append(seen["script"].cost / one.cost)
                said[-1] += f", {ratios[way][-1]:.1f} times cheaper"
        print(f"{name}: {'; '.join(said)}", flush=True)
    for way, all_of in ratios.items():
        print(f"{way}: median {np.median(all_of):.1f} times cheaper than the script")


if __name__ == "__main__":
    main()
