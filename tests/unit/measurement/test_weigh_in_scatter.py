"""Scatter, scale steps and intervals, against simulation and tables."""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.measurement.scatter import (
    changing_variance,
    interval,
    pooled,
    scatter,
    scatter_sd,
    shared_variance,
    welch_satterthwaite,
)


@pytest.mark.parametrize("sd", [0.05, 0.15, 0.3, 0.6])
def test_rounding_splits_into_shared_and_changing_variance(sd: float) -> None:
    """Loads anywhere within a step, many repeats of each: spread between loads and within."""
    rng = np.random.default_rng(3)
    loads = rng.uniform(0, 1, 2000)
    errors = np.round(loads[:, None] + rng.normal(0, sd, (2000, 400))) - loads[:, None]
    within = np.mean(np.var(errors, axis=1, ddof=1))
    between = np.var(np.mean(errors, axis=1)) - within / 400
    assert changing_variance(sd, 1.0) == pytest.approx(within, rel=0.03, abs=2e-4)
    assert shared_variance(sd, 1.0) == pytest.approx(between, rel=0.06, abs=4e-4)


def test_without_scatter_the_whole_step_is_shared() -> None:
    """JCGM 100, F.2.2.1: a display's step q gives variance q^2 / 12."""
    assert shared_variance(0.0, 0.005) == pytest.approx(0.005**2 / 12, rel=1e-12)
    assert changing_variance(0.0, 0.005) == pytest.approx(0.0, abs=1e-20)


def test_scatter_comes_back_from_the_variance_it_causes() -> None:
    for sd in (0.1, 0.4, 0.9, 3.0):
        assert scatter_sd(changing_variance(sd, 1.0), 1.0) == pytest.approx(sd, rel=1e-6)


def test_pooled_variance_is_about_each_own_mean() -> None:
    assert pooled([[1.0, 3.0], [10.0, 10.0, 13.0], [5.0]]) == (pytest.approx(8.0 / 3), 3.0)


def test_stated_scatter_counts_as_its_worth() -> None:
    found = scatter([[0.0, 2.0]], 0.0, (1.0, 3.0))  # sample variance 2, one degree of freedom
    assert found.changing == pytest.approx((1 * 2.0 + 3 * 1.0) / 4)
    assert found.dof == 4.0


def test_effective_degrees_of_freedom_of_the_end_gauge() -> None:
    """JCGM 100:2008, H.1.6: 25, 9.7, 2.9, 16.6 nm with 18, 25.6, 50, 2: 16.7 (from memory)."""
    parts = [(25.0, 18.0), (9.7, 25.6), (2.9, 50.0), (16.6, 2.0)]
    assert welch_satterthwaite(parts) == pytest.approx(16.7, abs=0.1)


@pytest.mark.parametrize(
    ("normal", "sampled", "rectangular", "half"),
    [
        (1.0, [], [], 1.960),
        (0.0, [(1.0, 2.0)], [], 4.303),  # Student's t, tables
        (0.0, [(1.0, 10.0)], [], 2.228),
        (0.0, [], [1.0], 0.95 * np.sqrt(3)),
        (0.0, [], [1.0, 1.0], np.sqrt(3) * 2 * (1 - np.sqrt(0.05))),  # triangle
    ],
)
def test_interval_of_one_kind_of_error(
    normal: float, sampled: list[tuple[float, float]], rectangular: list[float], half: float
) -> None:
    assert interval(normal, sampled, rectangular) == pytest.approx(half, rel=0.025)
