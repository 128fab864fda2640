"""The fits on synthetic data of known truth."""

from __future__ import annotations

import math

import numpy as np
import pytest

from crossfall.trials.fits import Approach, fit_critical_angle, fit_tangent

CRITICAL = math.radians(43.0)


def approach(rng, noise, *, count=12, truth=CRITICAL):
    """A pair's load running out in proportion to the tangent."""
    theta = np.linspace(truth - math.radians(1.5), truth - math.radians(0.05), count)
    load = (math.tan(truth) - np.tan(theta)) / 1.2
    return Approach(theta, (load + rng.normal(0.0, noise, count)) * np.cos(theta))


def test_exact_data_give_the_exact_angle():
    rng = np.random.default_rng(0)
    for fit in (fit_tangent(approach(rng, 0.0)), fit_critical_angle(approach(rng, 0.0))):
        assert fit.value == pytest.approx(CRITICAL, abs=1e-9)
        assert fit.scatter < 1e-9
        assert fit.low <= fit.value <= fit.high


def test_the_statistical_interval_covers_as_often_as_it_says():
    rng, hits, n = np.random.default_rng(7), 0, 1000
    for _ in range(n):
        fit = fit_tangent(approach(rng, 0.0005))
        hits += fit.low < CRITICAL < fit.high
    assert 0.93 < hits / n < 0.97


def test_the_whole_interval_covers_at_least_as_often():
    rng, hits, n = np.random.default_rng(8), 0, 1000
    for _ in range(n):
        fit = fit_critical_angle(approach(rng, 0.0005, count=6))
        hits += fit.low < CRITICAL < fit.high
    assert hits / n >= 0.95


def test_a_curved_path_widens_the_interval():
    rng = np.random.default_rng(3)
    straight = fit_critical_angle(approach(rng, 1e-5))
    theta = np.linspace(CRITICAL - math.radians(1.5), CRITICAL, 12)
    load = np.sqrt(np.maximum(0.0, CRITICAL - theta)) * 0.1 + 0.2 * (CRITICAL - theta)
    bent = fit_critical_angle(Approach(theta, load))
    assert bent.high - bent.low > 10 * (straight.high - straight.low)


def test_too_little_or_rising_load_gives_nothing():
    rng = np.random.default_rng(0)
    assert fit_critical_angle(approach(rng, 0.0, count=3)) is None
    rising = approach(rng, 0.0)
    assert fit_critical_angle(Approach(rising.theta, rising.load[::-1])) is None


def test_a_load_far_from_running_out_is_no_fit():
    """A truck that went over with a tenth of its weight still on the pair: no curve converges."""
    theta = [0.642335, 0.646698, 0.648443, 0.648880, 0.649207, 0.649425]
    load = [0.1166836, 0.1138725, 0.1127770, 0.1125340, 0.1123473, 0.1122023]
    fit = fit_critical_angle(Approach(np.array(theta), np.array(load)))
    assert fit is None or fit.high - fit.low > math.radians(1.0)
