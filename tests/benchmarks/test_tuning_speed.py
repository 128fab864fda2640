"""CPU time of the tuner's questions, with everything imported, against others of the same kind."""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import replace

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


@pytest.fixture(scope="module")
def all_40(bramble: Loaded, catalogue: Catalogue) -> float:
    """s for the one answer for side, climb, descent and weakest heading, the ends of grip and of
    the tyres' give, uncertainties and side effects."""
    assert len(catalogue.changes) == 40
    return cpu_seconds(lambda: rank_changes(bramble, catalogue, "side"), 2)


def test_40_changes_in_all_directions(bramble: Loaded, catalogue: Catalogue, all_40: float) -> None:
    """One change by itself costs a third of all 40: they share the truck as it is, and batches."""
    alone = replace(catalogue, changes=catalogue.changes[:1])
    one = cpu_seconds(lambda: rank_changes(bramble, alone, "side"), 2)
    assert all_40 < 5.0 * one, f"{all_40:.2f} s, {one:.2f} s for one"


def test_40_changes_planned(bramble: Loaded, catalogue: Catalogue, all_40: float) -> None:
    """768 set-ups, the proven closed form, the rounds with springs, runners-up and the front, in
    less than what ranking the changes takes."""
    aim = aim_at("side")
    seconds = cpu_seconds(lambda: plan(bramble, catalogue, aim, Bounds(budget=150.0)), 2)
    assert seconds < 1.6 * all_40, f"{seconds:.2f} s, {all_40:.2f} s to rank them"
