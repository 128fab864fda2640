"""Memory over many trials: python tests/benchmarks/many_trials.py --worlds 10000

Prints how much the process has grown from a tenth of the way to the end, for whole trials that
each open and close a world, and for short tiltings with kept moments within one world.
"""

from __future__ import annotations

import argparse
import ctypes
import gc
import math
import os
import sys
import time
from collections.abc import Callable
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "sim"), str(ROOT / "tests")]

from crossfall.engines.held import usual_engine  # noqa: E402
from crossfall.engines.settings import TrialSettings  # noqa: E402
from crossfall.trials.table import Tilting, level_table  # noqa: E402
from crossfall.trials.tilt import tilt_trial  # noqa: E402
from support import make_truck, with_suspension  # noqa: E402


def resident() -> float:
    """MB in use. A world's 35 MB may stay with the allocator once freed, for the next one: it is
    asked to give back what it can first (glibc)."""
    gc.collect()
    ctypes.CDLL(None).malloc_trim(0)
    pages = int(Path("/proc/self/statm").read_text().split()[1])
    return pages * os.sysconf("SC_PAGE_SIZE") / 1e6


def grown(count: int, once: Callable[[int], None], report: bool) -> float:
    """MB from a tenth of the way to the end."""
    start, began = 0.0, time.process_time()
    for i in range(count):
        once(i)
        if i == count // 10:
            start = resident()
        if report and i % max(1, count // 20) == 0:
            spent = time.process_time() - began
            print(f"{i} trials, {resident():.1f} MB, {spent:.0f} s of CPU", file=sys.stderr)
    return resident() - start


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("--worlds", type=int, default=0, help="whole trials, a world each")
    parser.add_argument("--short", type=int, default=0, help="short tiltings in one world")
    parser.add_argument("--report", action="store_true")
    asked = parser.parse_args()
    truck = make_truck()
    locked = with_suspension(truck, locked=True)

    def whole(i: int) -> None:
        heading = math.pi / 2 * (1 + 2 * (i % 2))
        tilt_trial(locked if i % 2 else truck, heading, grip=0.9, near=math.radians(39.0))

    def short(i: int) -> None:
        run = Tilting(table, math.pi / 2)
        run.approach(math.radians(10.0), math.radians(200.0), math.radians(3.0))
        run.back(run.kept[0])
        run.end("")
        run.forget()

    if asked.worlds:
        print(f"worlds_grown_mb={grown(asked.worlds, whole, asked.report):.2f}")
    if asked.short:
        with level_table(truck, TrialSettings(), usual_engine()) as table:
            print(f"trials_grown_mb={grown(asked.short, short, asked.report):.2f}")
    left = [name for name in os.listdir("/proc/self/fd") if _deleted(name)]
    print(f"files_left={len(left)}")


def _deleted(name: str) -> bool:
    try:
        return "crossfall-" in os.readlink(f"/proc/self/fd/{name}")
    except OSError:
        return False


if __name__ == "__main__":
    main()
