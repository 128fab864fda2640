"""A million builds in closed form, measured against plain array work in the same process."""

from __future__ import annotations

import time
import tracemalloc
from collections.abc import Callable

import numpy as np

from crossfall.statics.rigid import rigid_tip_angles

BUILDS = 1_000_000


def builds() -> list[np.ndarray]:
    rng = np.random.default_rng(1)
    half = rng.uniform(0.07, 0.10, BUILDS)
    x = rng.uniform(-0.05, 0.05, BUILDS)
    y = rng.uniform(-0.01, 0.01, BUILDS)
    front = np.full(BUILDS, 0.1565)
    return [half, half + 0.005, front, -front, x, y, rng.uniform(0.07, 0.13, BUILDS)]


def cpu_seconds(work: Callable[[], object]) -> float:
    """The best of three, CPU time of this process."""
    best = np.inf
    for _ in range(3):
        start = time.process_time()
        work()
        best = min(best, time.process_time() - start)
    return best


def plain_tip_angles(
    front: np.ndarray,
    rear: np.ndarray,
    xf: np.ndarray,
    xr: np.ndarray,
    x: np.ndarray,
    y: np.ndarray,
    h: np.ndarray,
) -> np.ndarray:
    """(n, 4) rad, written straight down: every edge of every truck by whole-array work."""
    corners = [(xf, front), (xr, rear), (xr, -rear), (xf, -front)]  # from front left, anticlockwise
    answers = []
    for dx, dy in ((-1.0, 0.0), (0.0, 1.0), (1.0, 0.0), (0.0, -1.0)):
        least = np.full(len(h), np.inf)
        for (ax, ay), (bx, by) in zip(corners, corners[1:] + corners[:1], strict=True):
            away = (by - ay) * dx - (bx - ax) * dy
            lever = (by - ay) * (ax - x) - (bx - ax) * (ay - y)
            with np.errstate(divide="ignore", invalid="ignore"):
                least = np.where(away > 0, np.minimum(least, lever / (h * away)), least)
        answers.append(np.arctan(least))
    return np.stack(answers, axis=1)


def test_a_million_builds_cost_no_more_than_plain_array_work() -> None:
    columns = builds()
    own = cpu_seconds(lambda: rigid_tip_angles(*columns))
    reference = cpu_seconds(lambda: plain_tip_angles(*columns))
    np.testing.assert_allclose(rigid_tip_angles(*columns), plain_tip_angles(*columns), rtol=1e-9)
    assert own < 2.0
    assert own < reference, f"{own:.3f} s against {reference:.3f} s"


def test_a_million_builds_need_little_more_memory_than_their_answer() -> None:
    columns = builds()
    tracemalloc.start()
    answer = rigid_tip_angles(*columns)
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert peak < 1.25 * answer.nbytes
