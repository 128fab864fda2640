"""Uncertainty carried through, against linear propagation and exact results."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy.stats import beta, norm, triang

from crossfall.answers.tips import tip_angles
from crossfall.statics import rigid
from crossfall.statics.sliding import triangular_quantile
from crossfall.study.methods import drawn
from crossfall.study.montecarlo import (
    cg_samples,
    describe,
    sobol,
    spread,
    uncertain_inputs,
    wilson,
)
from crossfall.truck.assemble import with_masses, with_shifts
from crossfall.truck.build import load_truck
from crossfall.truck.massprops import whole
from crossfall.truck.model import Grip, Truck
from crossfall.truck.weight import sensitivities

SIDE = np.pi / 2


@pytest.fixture(scope="module")
def truck() -> Truck:
    return load_truck("bramble").truck


def test_the_spread_of_the_tip_angle_is_that_of_linear_propagation(truck: Truck) -> None:
    for heading in (0.0, SIDE, 2.0):
        (found,) = spread(truck, [heading], method="closed form")
        slopes = sensitivities(truck)
        lever = np.einsum("k,krq->rq", rigid.cg_gradient(truck, heading), slopes.cg)
        linear = float(np.sqrt(np.sum((lever * slopes.sd) ** 2)))
        assert found.tip.sd == pytest.approx(linear, rel=0.03)
        middle = rigid.tip_angle(truck, [heading])[0]
        assert abs(found.tip.mean - middle) < found.tip.mean_error + 0.05 * linear
        assert found.tip.high - found.tip.low == pytest.approx(2 * 1.96 * linear, rel=0.06)


def test_shares_of_variance_are_those_of_the_linear_model(truck: Truck) -> None:
    (found,) = spread(truck, [SIDE], method="closed form", samples=2048)
    slopes = sensitivities(truck)
    lever = np.einsum("k,krq->rq", rigid.cg_gradient(truck, SIDE), slopes.cg)
    parts = (lever * slopes.sd) ** 2
    rows = {p.label: p.row for p in truck.parts}
    pack = parts[rows["battery pack"]]
    by_name = {i.name: i for i in found.by_tip}
    place = by_name["battery pack, place"]
    expected = pack[1:].sum() / parts.sum()
    assert place.first_ci[0] - 0.03 <= expected <= place.first_ci[1] + 0.03
    assert sum(i.first for i in found.by_tip) == pytest.approx(1.0, abs=0.05)
    assert all(i.first_ci[0] <= i.first <= i.first_ci[1] for i in found.by_tip)


def test_moments_of_samples_are_those_of_real_trucks(truck: Truck) -> None:
    errors = uncertain_inputs(truck)
    rng = np.random.default_rng(3)
    off = rng.standard_normal((5, len(errors.rows), 4)) * errors.sd
    mass, cg = cg_samples(truck, errors, off)
    own = {p.row: p.body.mass for p in truck.parts}
    for i in range(5):
        masses = {int(r): own[r] + off[i, j, 0] for j, r in enumerate(errors.rows)}
        shifts = {int(r): off[i, j, 1:] for j, r in enumerate(errors.rows)}
        body = whole(with_shifts(with_masses(truck, masses), shifts))
        assert mass[i] == pytest.approx(body.mass, rel=1e-12)
        np.testing.assert_allclose(cg[i], body.cg, rtol=1e-10, atol=1e-12)


def test_indices_of_a_function_with_known_ones() -> None:
    """The Ishigami function: Ishigami and Homma (1990); indices as printed in Saltelli et al.,
    Global Sensitivity Analysis: The Primer (2008), for a = 7, b = 0.1: 0.3139, 0.4424, 0 and
    totals 0.5576, 0.4424, 0.2437."""
    n = 4096
    rng = np.random.default_rng(0)
    a, b = rng.uniform(-np.pi, np.pi, (2, n, 3))

    def f(x: np.ndarray) -> np.ndarray:
        return (np.sin(x[:, 0]) + 7 * np.sin(x[:, 1]) ** 2 + 0.1 * x[:, 2] ** 4 * np.sin(x[:, 0]))[
            None
        ]

    swapped = []
    for i in range(3):
        mixed = a.copy()
        mixed[:, i] = b[:, i]
        swapped.append(f(mixed))
    (lines,) = sobol(["one", "two", "three"], f(a), f(b), np.array(swapped), n, 0)
    found = {line.name: line for line in lines}
    for name, first, total in (("one", 0.3139, 0.5576), ("two", 0.4424, 0.4424)):
        assert found[name].first == pytest.approx(first, abs=0.05)
        assert found[name].total == pytest.approx(total, abs=0.05)
    assert found["three"].first == pytest.approx(0.0, abs=0.05)
    assert found["three"].total == pytest.approx(0.2437, abs=0.05)
    assert found["one"].total_ci[0] < 0.5576 < found["one"].total_ci[1]


def test_without_doubt_about_grip_only_parts_matter(truck: Truck) -> None:
    sure = replace(truck, grips=(Grip("rock", 5.0, 5.0, 5.0),))
    (found,) = spread(sure, [SIDE], method="closed form", samples=256)
    assert found.tips_first == 1.0
    assert found.goes == found.tip
    assert not any("grip" in i.name for i in found.by_goes)


def test_a_truck_that_slides_first_depends_on_grip_alone(truck: Truck) -> None:
    slippery = replace(truck, grips=(Grip("ice", 0.1, 0.2, 0.3),))
    (found,) = spread(slippery, [SIDE], method="closed form", samples=256)
    assert found.tips_first == 0.0
    assert found.tips_first_ci[0] == 0.0
    assert 0 < found.tips_first_ci[1] < 0.02
    assert [i.name for i in found.by_goes] == ["grip on ice"]
    assert found.goes is not None
    assert np.tan(found.goes.mean) == pytest.approx(0.2, abs=0.005)


def test_all_that_is_uncertain_is_drawn_around_the_one_answer(truck: Truck) -> None:
    """The centre is what every other route gives; springs and tyres count beside the masses."""
    (soft,) = spread(truck, [SIDE], samples=16)
    (stiff,) = spread(truck, [SIDE], samples=16, method="closed form")
    assert soft.centre == pytest.approx(tip_angles(truck, [SIDE], 0.9).free[0], abs=1e-9)
    assert soft.tip.low < soft.centre < soft.tip.high < stiff.tip.low
    assert soft.tip.sd > 1.5 * stiff.tip.sd
    assert any("roll centre" in i.name for i in soft.by_tip)


def test_against_a_rail_nothing_slides(truck: Truck) -> None:
    (found,) = spread(truck, [0.0], samples=16, hold="rail")
    assert found.goes is None
    assert found.tips_first == 1.0
    assert found.tip.low > np.arctan(truck.grips[0].likely)


def test_the_same_seed_gives_the_same_answer(truck: Truck) -> None:
    asked = {"method": "closed form", "samples": 64}
    one, two, other = (spread(truck, [SIDE], seed=s, **asked) for s in (1, 1, 2))
    assert one == two
    assert one != other


def test_what_cannot_be_asked_is_said(truck: Truck) -> None:
    with pytest.raises(ValueError, match="power of two"):
        spread(truck, [SIDE], samples=100)
    parts = tuple(replace(p, mass_sd=0.0, place_sd=0.0) for p in truck.parts)
    sure = (Grip("rock", 0.9, 0.9, 0.9),)
    bare = replace(truck, grips=sure, parts=parts, uncertain=())
    with pytest.raises(ValueError, match="nothing is uncertain"):
        spread(bare, [SIDE])


def test_grip_is_triangular() -> None:
    unit = (np.arange(4000) + 0.5) / 4000
    grip = Grip("rock", 0.7, 0.9, 1.0)
    expected = triang(2 / 3, 0.7, 0.3).ppf(unit)
    np.testing.assert_allclose(triangular_quantile(unit, grip), expected, rtol=1e-12)
    assert set(triangular_quantile(unit, Grip("x", 0.8, 0.8, 0.8))) == {0.8}


def test_a_described_sample_is_pinned_down_as_well_as_it_says() -> None:
    rng = np.random.default_rng(1)
    hits = np.zeros(3)
    for _ in range(400):
        found = describe(rng.standard_normal(800))
        truths = (0.0, *norm.ppf([0.025, 0.975]))
        values = (found.mean, found.low, found.high)
        errors = (found.mean_error, found.low_error, found.high_error)
        hits += [abs(v - t) <= e for v, t, e in zip(values, truths, errors, strict=True)]
    assert hits[0] / 400 == pytest.approx(0.95, abs=0.035)
    assert np.all(hits[1:] / 400 > 0.88)


@pytest.mark.parametrize(("hits", "n"), [(0, 50), (7, 50), (50, 50)])
def test_the_interval_of_a_share_is_near_the_exact_one(hits: int, n: int) -> None:
    low, high = wilson(hits, n)
    exact_low = beta.ppf(0.025, hits, n - hits + 1) if hits else 0.0
    exact_high = beta.ppf(0.975, hits + 1, n - hits) if hits < n else 1.0
    assert low == pytest.approx(exact_low, abs=0.03)
    assert high == pytest.approx(exact_high, abs=0.03)


def test_drawn_trucks_scatter_as_their_tolerances_say(truck: Truck) -> None:
    truck = replace(truck, uncertain=())  # wheelbase and track move weight too
    cgs = np.array([whole(drawn(truck, seed)).cg for seed in range(120)])
    slopes = sensitivities(truck)
    expected = slopes.spread(slopes.cg)
    np.testing.assert_allclose(cgs.std(axis=0), expected, rtol=0.25)
    assert np.array_equal(whole(drawn(truck, 5)).cg, cgs[5])
