"""CPU time of the tuner's questions, with everything imported.

The bars are for the machine they were set on; a piece of plain work in the same process says how
much slower this one is just now.
"""

from __future__ import annotations

import time
from collections.abc import Callable

import numpy as np
import pytest
import scipy.optimize  # noqa: F401 - imported before the clock starts

from crossfall.truck.build import Loaded, load_truck
from crossfall.tuning.changes import Catalogue, change_file_of, read_changes
from crossfall.tuning.milp_model import Bounds
from crossfall.tuning.plan import aim_at, plan
from crossfall.tuning.whatif import rank_changes


@pytest.fixture(scope="module")
def bramble() -> Loaded:
    return load_truck("bramble")


@pytest.fixture(scope="module")
def catalogue(bramble: Loaded) -> Catalogue:
    return read_changes(change_file_of(bramble.path))


def cpu_seconds(work: Callable[[], object], times: int) -> float:
    """The best of a few, CPU time of this process."""
    best = np.inf
    for _ in range(times):
        start = time.process_time()
        work()
        best = min(best, time.process_time() - start)
    return best


def small_sums() -> None:
    """Plain work of the same kind: short arrays and small objects."""
    a = np.linspace(0.1, 1.0, 40)
    for i in range(20_000):
        found = {"x": float((np.sin(a) * a)[0]), "y": i}
        a = a * (1 + 1e-9 * found["x"])


def slowness() -> float:
    """1 on the machine the bars were set on, more on a slower or busier one."""
    return max(1.0, cpu_seconds(small_sums, 3) / 0.087)


def test_40_changes_in_all_directions(bramble: Loaded, catalogue: Catalogue) -> None:
    """The one answer for side, climb, descent and weakest heading, the ends of grip and of the
    tyres' give, uncertainties and side effects: 3 s of CPU with the machine to itself."""
    assert len(catalogue.changes) == 40
    seconds = cpu_seconds(lambda: rank_changes(bramble, catalogue, "side"), 2)
    assert seconds < 4.5 * slowness(), f"{seconds:.2f} s"


def test_40_changes_planned(bramble: Loaded, catalogue: Catalogue) -> None:
    """768 set-ups, the proven closed form, the rounds with springs, runners-up and the front."""
    assert len(catalogue.changes) == 40
    aim = aim_at("side")
    seconds = cpu_seconds(lambda: plan(bramble, catalogue, aim, Bounds(budget=150.0)), 2)
    assert seconds < 5.0 * slowness(), f"{seconds:.2f} s"
