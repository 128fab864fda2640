"""How much faster a trial is than the straightforward script. Run as

    python tests/benchmarks/bench_trial.py [DEMO TRUCK ...]

Both ways in one run, turn by turn, in CPU time, so that the machine's own speed cancels. Ours has a
heading's share of opening the world and loading the truck; the script opens its own each time, as
scripts do. The slow limit is a trial with a quarter of the rates and of the bracket; the script's
tyres do not give along the ground, which it is also off by.
"""

from __future__ import annotations

import math
import sys
import time
from dataclasses import dataclass, replace
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "tests"), str(ROOT / "sim"), str(Path(__file__).parent)]

from plain_script import plain_trial  # noqa: E402

from crossfall.trials.pace import Pace  # noqa: E402
from crossfall.trials.tilt import tilt_trials  # noqa: E402
from crossfall.truck.build import load_truck  # noqa: E402
from crossfall.truck.demos import demo_names  # noqa: E402
from crossfall.truck.model import Array, Truck, frozen  # noqa: E402
from crossfall.truck.quiet import silence  # noqa: E402
from support import make_truck  # noqa: E402

GRIP = 5.0
FINE = replace(
    Pace(),
    brisk=math.radians(1.5),
    slow=math.radians(0.5),
    steady=math.radians(0.25),
    bracket=math.radians(0.01),
)


@dataclass(frozen=True)
class Timing:
    """CPU seconds per heading of both ways, and how far ours and the script's angle are from
    the slow-rate limit, (n,) rad."""

    plain: float
    ours: float
    error: Array
    plain_error: Array


def measure(truck: Truck, headings: list[float], rounds: int = 1) -> Timing:
    """Time both ways on the same truck and headings; the slow limit chooses where ours starts."""
    with silence():
        import pybullet

    limit = [t.tip for t in tilt_trials(truck, headings, grip=GRIP, pace=FINE)]
    plain = ours = 0.0
    for _ in range(rounds):
        began = time.process_time()
        fallen = [plain_trial(pybullet, truck, heading) for heading in headings]
        middle = time.process_time()
        trials = tilt_trials(truck, headings, grip=GRIP, near=limit)
        plain += middle - began
        ours += time.process_time() - middle
    count = rounds * len(headings)
    return Timing(
        plain / count,
        ours / count,
        frozen([abs(t.tip - at) for t, at in zip(trials, limit, strict=True)]),
        frozen([abs(f - at) for f, at in zip(fallen, limit, strict=True)]),
    )


def main() -> None:
    trucks = {"made up": make_truck()}
    trucks |= {name: load_truck(name).truck for name in sys.argv[1:] or demo_names()}
    print("            script    ours  ratio  off the slow limit: ours     script")
    for name, truck in trucks.items():
        seen = measure(truck, [0.0, math.pi / 2, math.pi, 3 * math.pi / 2], rounds=3)
        off, plain_off = (math.degrees(e.max()) for e in (seen.error, seen.plain_error))
        took = f"{seen.plain * 1e3:7.0f} ms {seen.ours * 1e3:4.0f} ms {seen.plain / seen.ours:6.1f}"
        print(f"{name:8} {took} {off:20.3f} deg {plain_off:6.3f} deg")


if __name__ == "__main__":
    main()
