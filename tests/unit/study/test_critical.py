"""The critical slope from binary outcomes, against theory and a general statistics library."""

from __future__ import annotations

import itertools
from typing import Any

import numpy as np
import pytest
import statsmodels.api as sm
from scipy.stats import chi2

from crossfall.study.critical import (
    MONOTONE,
    find_critical,
    fit_logistic,
    log_likelihood,
    median_interval,
    next_angle,
    profile,
    stated,
)
from threshold_laws import LAWS


def outcomes(
    rng: np.random.Generator, angles: np.ndarray, critical: float, spread: float
) -> np.ndarray:
    return rng.random(len(angles)) < 1 / (1 + np.exp(-(angles - critical) / spread))


def overlapping(seed: int) -> tuple[np.ndarray, np.ndarray]:
    rng = np.random.default_rng(seed)
    angles = rng.uniform(30, 44, 60)
    return angles, outcomes(rng, angles, 37.0, 1.5)


@pytest.mark.parametrize("seed", range(8))
def test_the_fit_is_that_of_a_general_statistics_library(seed: int) -> None:
    angles, failed = overlapping(seed)
    theirs = sm.Logit(failed.astype(float), sm.add_constant(angles)).fit(
        disp=False, method="newton", tol=1e-12
    )
    a, b = theirs.params
    ours = fit_logistic(angles, failed)
    assert ours.angle == pytest.approx(-a / b, rel=1e-7)
    assert ours.spread == pytest.approx(1 / b, rel=1e-6)
    assert ours.log_likelihood == pytest.approx(theirs.llf, rel=1e-10)


@pytest.mark.parametrize("seed", range(4))
def test_the_profile_is_that_of_a_general_statistics_library(seed: int) -> None:
    angles, failed = overlapping(seed)
    fit = fit_logistic(angles, failed)
    for at in (fit.low, fit.high, fit.angle + 0.4):
        theirs = sm.Logit(failed.astype(float), angles - at).fit(disp=False, tol=1e-12)
        assert profile(at, angles, failed) == pytest.approx(theirs.llf, rel=1e-9)


def test_the_interval_covers_the_truth_on_synthetic_outcomes() -> None:
    """1,000 repeats of 60 trials spread over the slope; the bar is 93 to 97 %."""
    rng = np.random.default_rng(5)
    covered = 0
    for _ in range(1000):
        critical, spread = rng.uniform(25, 45), rng.uniform(0.5, 2.0)
        angles = critical + spread * rng.uniform(-4, 4, 60)
        fit = fit_logistic(angles, outcomes(rng, angles, critical, spread))
        covered += fit.low <= critical <= fit.high
    assert 930 <= covered <= 970


def test_the_interval_of_a_search_covers_the_truth() -> None:
    """A smaller version of the benchmark: 120 searches, so +-4 % of chance."""
    rng = np.random.default_rng(6)
    covered = 0
    for _ in range(120):
        critical = rng.uniform(25, 45)

        def fails(angle: float, number: int, critical: float = critical) -> bool:
            return bool(outcomes(rng, np.array([angle]), critical, 1.0)[0])

        found = find_critical(fails, 10.0, 70.0, half_width=0.0, most=30, least=30)
        covered += found.fit.low <= critical <= found.fit.high
    assert covered >= 109


def test_a_sharp_edge_is_found_by_halving() -> None:
    found = find_critical(lambda angle, _: angle > 33.3337, 10.0, 70.0, half_width=0.2)
    assert found.settled
    assert found.trials <= 32
    assert found.fit.spread == 0.0
    assert found.fit.gap[0] <= 33.3337 <= found.fit.gap[1]
    assert found.fit.low <= 33.3337 <= found.fit.high
    assert found.fit.high - found.fit.low <= 0.4


def test_a_search_that_runs_out_of_trials_says_so() -> None:
    rng = np.random.default_rng(0)
    found = find_critical(
        lambda angle, _: bool(outcomes(rng, np.array([angle]), 35.0, 5.0)[0]),
        10.0,
        70.0,
        half_width=0.1,
        most=20,
    )
    assert not found.settled
    assert found.trials == len(found.failed) == 20


def test_trials_are_numbered_for_their_seeds() -> None:
    seen: list[int] = []
    find_critical(lambda a, n: bool(seen.append(n) or a > 30), 10, 70, half_width=0.0, most=12)
    assert seen == list(range(12))


def test_outcomes_that_do_not_overlap_give_a_finite_interval_around_the_gap() -> None:
    fit = fit_logistic([30, 31, 32, 33, 36, 37, 38, 39], [0, 0, 0, 0, 1, 1, 1, 1])
    assert fit.gap == (33.0, 36.0)
    assert fit.angle == 34.5
    assert (fit.spread, fit.log_likelihood) == (0.0, 0.0)
    assert 30 < fit.low < 33
    assert 36 < fit.high < 39


def test_shifting_and_scaling_the_angles_shifts_and_scales_the_answer() -> None:
    angles, failed = overlapping(3)
    fit, other = fit_logistic(angles, failed), fit_logistic(10 + 0.02 * angles, failed)
    for name in ("angle", "low", "high"):
        assert getattr(other, name) == pytest.approx(10 + 0.02 * getattr(fit, name), rel=1e-6)
    mirrored = fit_logistic(-angles, ~failed)
    assert (mirrored.low, mirrored.high) == pytest.approx((-fit.high, -fit.low), rel=1e-6)


def test_repeats_at_one_angle_that_go_both_ways() -> None:
    angles, failed = [30] * 5 + [32] * 5 + [34] * 5, [0] * 5 + [1, 1, 1, 0, 0] + [1] * 5
    fit = fit_logistic(angles, failed)
    # As s goes to 0 the five trials at 32 alone decide: 3 log 0.6 + 2 log 0.4.
    assert fit.log_likelihood == pytest.approx(3 * np.log(0.6) + 2 * np.log(0.4))
    assert fit.angle == 32
    assert 30 < fit.low < 32 < fit.high < 34


@pytest.mark.parametrize(("failed", "side"), [([1] * 9, "low"), ([0] * 9, "high")])
def test_all_outcomes_alike_leave_the_interval_open(failed: list[int], side: str) -> None:
    fit = fit_logistic(range(30, 39), failed)
    assert np.isinf(getattr(fit, side))
    assert np.isfinite(getattr(fit, "high" if side == "low" else "low"))


def test_outcomes_that_fall_with_the_angle_bound_nothing() -> None:
    fit = fit_logistic([30, 31, 33, 34], [1, 1, 0, 0])
    assert np.isinf(fit.low)
    assert np.isinf(fit.high)
    assert np.isinf(fit.spread)


def test_the_profile_peaks_at_the_fit_and_never_exceeds_it() -> None:
    angles, failed = overlapping(1)
    fit = fit_logistic(angles, failed)
    assert profile(fit.angle, angles, failed) == pytest.approx(fit.log_likelihood, abs=1e-9)
    assert log_likelihood(fit.angle, fit.spread, angles, failed) == pytest.approx(
        fit.log_likelihood, abs=1e-9
    )
    for c in np.linspace(30, 44, 29):
        assert profile(c, angles, failed) <= fit.log_likelihood + 1e-9


def test_without_bounds_in_order_the_search_is_refused() -> None:
    with pytest.raises(ValueError, match="low < high"):
        find_critical(lambda a, n: True, 40.0, 30.0, half_width=0.1)
    with pytest.raises(ValueError, match="outcomes"):
        fit_logistic([], [])


def test_the_plain_quantile_is_approached_with_many_trials() -> None:
    rng = np.random.default_rng(2)
    angles = rng.uniform(30, 44, 20_000)
    failed = outcomes(rng, angles, 37.0, 1.5)
    fit = fit_logistic(angles, failed)
    drop = 2 * (fit.log_likelihood - profile(fit.low, angles, failed))
    assert drop == pytest.approx(chi2.ppf(0.95, 1), rel=5e-3)


def test_the_next_angle_stays_in_its_range_and_is_the_same_each_time() -> None:
    angles, failed = [40.0, 26.0, 34.0], [True, False, True]
    first = next_angle(angles, failed, 10.0, 70.0)
    assert 26.0 < first < 40.0
    assert first == next_angle(angles, failed, 10.0, 70.0)
    assert next_angle([], [], 10.0, 70.0) == pytest.approx(40.0, abs=2.0)


def enough(repeats: int) -> float:
    """Least share of 95 % intervals that hold the truth, less three standard deviations."""
    return 0.95 - 3 * (0.05 * 0.95 / repeats) ** 0.5


@pytest.mark.parametrize("law", LAWS)
def test_the_stated_interval_covers_the_median_of_any_law(law: str) -> None:
    """120 repeats of 60 trials spread over the slope."""
    rng = np.random.default_rng(8)
    covered = []
    for _ in range(120):
        truth = rng.uniform(25, 45)
        angles = truth + rng.uniform(-6, 6, 60)
        fit = stated(angles, angles > truth + np.array([LAWS[law](rng) for _ in angles]))
        covered.append(fit.low <= truth <= fit.high)
    assert np.mean(covered) >= enough(120)


@pytest.mark.parametrize("law", ["skewed to the steep", "very skewed"])
def test_a_search_covers_the_median_of_a_skewed_law(law: str) -> None:
    covered = []
    for seed in range(40):
        rng = np.random.default_rng(seed)
        truth = rng.uniform(25, 45)

        def fails(angle: float, _: int, truth: float = truth, rng: Any = rng) -> bool:
            return bool(angle > truth + LAWS[law](rng))

        fit = find_critical(fails, 10.0, 70.0, half_width=0.0, most=40, least=40).fit
        covered.append(fit.low <= truth <= fit.high)
    assert np.mean(covered) >= enough(40)


def test_the_interval_that_knows_no_law_is_that_of_all_splits() -> None:
    """Against brute force: the best rising shares on a grid, held to one half at each angle."""
    angles, failed = [1, 2, 3, 4, 5, 6], [0, 1, 0, 0, 1, 1]
    shares = np.linspace(0.0, 1.0, 13)  # holds every mean of a few outcomes but thirds and halves
    rising = np.array(list(itertools.combinations_with_replacement(shares, 6)))
    with np.errstate(divide="ignore"):
        fits = np.log(np.where(failed, rising, 1 - rising)).sum(axis=1)
    kept = []
    for k in range(7):
        held = (rising[:, :k] <= 0.5).all(axis=1) & (rising[:, k:] >= 0.5).all(axis=1)
        if 2 * (fits.max() - fits[held].max()) <= MONOTONE:
            kept.append(k)
    ends = [-np.inf, *angles, np.inf]
    assert median_interval(angles, failed) == (ends[kept[0]], ends[kept[-1] + 1])
