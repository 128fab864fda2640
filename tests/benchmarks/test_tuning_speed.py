"""CPU time of the tuner's questions, with everything imported."""

from __future__ import annotations

import time
from collections.abc import Callable

import numpy as np
import pytest
import scipy.optimize  # noqa: F401 - imported before the clock starts

from crossfall.truck.build import Loaded, load_truck
from crossfall.tuning.changes import Catalogue, beside, read_changes
from crossfall.tuning.linear import Bounds
from crossfall.tuning.plan import Aim, plan
from crossfall.tuning.whatif import what_if


@pytest.fixture(scope="module")
def bramble() -> Loaded:
    return load_truck("bramble")


@pytest.fixture(scope="module")
def catalogue(bramble: Loaded) -> Catalogue:
    return read_changes(beside(bramble.path))


def cpu_seconds(work: Callable[[], object], times: int) -> float:
    """The best of a few, CPU time of this process."""
    best = np.inf
    for _ in range(times):
        start = time.process_time()
        work()
        best = min(best, time.process_time() - start)
    return best


def test_25_changes_in_all_directions(bramble: Loaded, catalogue: Catalogue) -> None:
    """Eight headings, compliant, with uncertainties and side effects: under a second of CPU."""
    some = Catalogue(catalogue.changes[:25], catalogue.currency, catalogue.source)
    assert len(some.changes) == 25
    seconds = cpu_seconds(lambda: what_if(bramble, some, "side"), 3)
    assert seconds < 1.0, f"{seconds:.2f} s"


def test_40_changes_planned(bramble: Loaded, catalogue: Catalogue) -> None:
    """768 set-ups, the proven closed form, the rounds with springs, runners-up and the front."""
    assert len(catalogue.changes) == 40
    aim = Aim("side", (np.pi / 2, 3 * np.pi / 2))
    seconds = cpu_seconds(lambda: plan(bramble, catalogue, aim, Bounds(budget=150.0)), 3)
    assert seconds < 5.0, f"{seconds:.2f} s"
