"""The fits on synthetic data of known truth."""

from __future__ import annotations

import math

import numpy as np
import pytest

from crossfall.trials.fits import Approach, fit_critical_angle, fit_tangent

CRITICAL = math.radians(43.0)
RATES = math.radians(2.0), math.radians(6.0)


def approach(rng, rate, noise, *, lag=0.0, count=80, truth=CRITICAL):
    """A pair's load running out in proportion to the tangent, the truck behind its table by lag."""
    theta = np.linspace(truth - math.radians(1.5), truth - math.radians(0.1), count)
    load = (math.tan(truth) - np.tan(theta - lag * rate)) / 1.2
    measured = (load + rng.normal(0.0, noise, count)) * np.cos(theta)
    return Approach(theta, measured, np.full(count, rate))


def test_exact_data_give_the_exact_angle():
    fit = fit_tangent(approach(np.random.default_rng(0), RATES[0], 0.0))
    assert fit.value == pytest.approx(CRITICAL, abs=1e-9)
    assert fit.scatter < 1e-9


def test_two_rates_take_the_lag_out():
    rng = np.random.default_rng(0)
    slow, brisk = (approach(rng, r, 0.0, lag=0.02) for r in RATES)
    fit = fit_critical_angle(slow, brisk)
    assert fit.value == pytest.approx(CRITICAL, abs=math.radians(0.001))
    alone = fit_critical_angle(slow)
    assert alone.value == pytest.approx(CRITICAL + 0.02 * RATES[0], abs=math.radians(0.001))
    assert alone.low < CRITICAL < alone.high


def test_the_statistical_interval_covers_as_often_as_it_says():
    rng, hits, n = np.random.default_rng(7), 0, 1000
    for _ in range(n):
        fit = fit_tangent(approach(rng, RATES[0], 0.0005))
        hits += fit.low < CRITICAL < fit.high
    assert 0.93 < hits / n < 0.97


def test_the_whole_interval_covers_at_least_as_often():
    rng, hits, n = np.random.default_rng(8), 0, 300
    for _ in range(n):
        slow, brisk = (
            approach(rng, r, 0.0005, lag=0.02, count=c)
            for r, c in zip(RATES, (80, 27), strict=True)
        )
        fit = fit_critical_angle(slow, brisk)
        hits += fit.low < CRITICAL < fit.high
    assert hits / n >= 0.95


def test_a_curved_path_widens_the_interval():
    rng = np.random.default_rng(3)
    straight = fit_critical_angle(approach(rng, RATES[0], 1e-5))
    theta = np.linspace(CRITICAL - math.radians(1.5), CRITICAL, 80)
    load = np.sqrt(np.maximum(0.0, CRITICAL - theta)) * 0.1 + 0.2 * (CRITICAL - theta)
    bent = fit_critical_angle(Approach(theta, load, np.full(80, RATES[0])))
    assert bent.high - bent.low > 2 * (straight.high - straight.low)


def test_too_little_or_rising_load_gives_nothing():
    rng = np.random.default_rng(0)
    assert fit_critical_angle(approach(rng, RATES[0], 0.0, count=5)) is None
    rising = approach(rng, RATES[0], 0.0)
    assert fit_critical_angle(Approach(rising.theta, rising.load[::-1], rising.rate)) is None
