"""Uncertainty carried through, against linear propagation, exact results and the one answer."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy.stats import beta, norm, triang

from crossfall.answers.conditions import conditions
from crossfall.answers.ranges import ranges
from crossfall.answers.tips import tip_angles
from crossfall.statics import rigid
from crossfall.statics.sliding import triangular_quantile
from crossfall.study.draws import build_at, drawn_truck, inputs_of
from crossfall.study.montecarlo import HeadingSpread, monte_carlo, sample_spread, sobol, wilson
from crossfall.truck.build import load_truck
from crossfall.truck.massprops import whole
from crossfall.truck.model import Grip, Truck
from crossfall.truck.uncertain import quantile, varied
from crossfall.truck.weight import sensitivities

SIDE = np.pi / 2


@pytest.fixture(scope="module")
def truck() -> Truck:
    return load_truck("bramble").truck


@pytest.fixture(scope="module")
def weighed(truck: Truck) -> Truck:
    """Only its parts' masses and places are uncertain."""
    return replace(truck, uncertain=(), grips=(Grip("rock", 5.0, 5.0, 5.0),))


@pytest.fixture(scope="module")
def three(truck: Truck) -> tuple[HeadingSpread, ...]:
    """Up the slope it slides first; across and half across it tips."""
    return monte_carlo(truck, conditions(truck, [0.0, SIDE, 1.05]), samples=64)


def stiffly(truck: Truck, heading: float, samples: int, seed: int = 0) -> HeadingSpread:
    asked = conditions(truck, [heading])
    (found,) = monte_carlo(truck, asked, method="closed form", samples=samples, seed=seed)
    return found


def test_the_spread_of_the_tip_angle_is_that_of_linear_propagation(weighed: Truck) -> None:
    headings = (0.0, SIDE, 2.0)
    asked = conditions(weighed, headings)
    by_heading = monte_carlo(weighed, asked, method="closed form", samples=256)
    for heading, found in zip(headings, by_heading, strict=True):
        slopes = sensitivities(weighed)
        lever = np.einsum("k,krq->rq", rigid.cg_gradient(weighed, heading), slopes.cg)
        linear = float(np.sqrt(np.sum((lever * slopes.sd) ** 2)))
        assert found.tip.sd == pytest.approx(linear, rel=0.07)
        middle = rigid.tip_angle(weighed, [heading])[0]
        assert found.centre == pytest.approx(middle)
        assert abs(found.tip.mean - middle) < found.tip.mean_error + 0.05 * linear
        assert found.tip.high - found.tip.low == pytest.approx(2 * 1.96 * linear, rel=0.12)


def test_shares_of_variance_are_those_of_the_linear_model(weighed: Truck) -> None:
    found = stiffly(weighed, SIDE, 256)
    slopes = sensitivities(weighed)
    lever = np.einsum("k,krq->rq", rigid.cg_gradient(weighed, SIDE), slopes.cg)
    parts = (lever * slopes.sd) ** 2
    rows = {p.label: p.row for p in weighed.parts}
    pack = parts[rows["battery pack"]]
    by_name = {i.name: i for i in found.by_tip}
    place = by_name["battery pack, place"]
    expected = pack[1:].sum() / parts.sum()
    assert place.first_ci[0] - 0.03 <= expected <= place.first_ci[1] + 0.03
    assert sum(i.first for i in found.by_tip) == pytest.approx(1.0, abs=0.1)
    assert all(i.first_ci[0] <= i.first <= i.first_ci[1] for i in found.by_tip)


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


def test_the_centre_is_the_one_answer(truck: Truck, three: tuple[HeadingSpread, ...]) -> None:
    for one in three:
        alone = tip_angles(truck, [one.conditions.heading], one.conditions.grip.likely)
        assert one.centre == pytest.approx(alone.free[0], abs=1e-9)
        assert one.centre_goes == pytest.approx(alone.goes[0], abs=1e-9)
        assert one.slides_first == alone.slides[0]
        assert one.lost == 0


def test_the_range_is_that_of_every_answer(truck: Truck, three: tuple[HeadingSpread, ...]) -> None:
    """Within a tenth of its width, and what the samples leave open."""
    _, said = ranges(truck, [one.conditions for one in three])
    for one, other in zip(three, said, strict=True):
        for drawn_range, ends in ((one.tip, other.tip), (one.goes, other.goes)):
            allowed = 0.1 * (ends[1] - ends[0])
            assert abs(drawn_range.low - ends[0]) < allowed + drawn_range.low_error
            assert abs(drawn_range.high - ends[1]) < allowed + drawn_range.high_error


def test_springs_and_tyres_count_beside_the_masses(three: tuple[HeadingSpread, ...]) -> None:
    climb, side, _ = three
    names = [i.name for i in side.by_tip]
    assert any("along the ground" in name for name in names[:3])
    assert [i.name for i in climb.by_goes] == ["grip on rock"]
    assert climb.tips_first == 0.0
    assert side.tips_first == 1.0


def test_without_doubt_about_grip_only_the_truck_matters(truck: Truck) -> None:
    found = stiffly(replace(truck, grips=(Grip("rock", 5.0, 5.0, 5.0),)), SIDE, 64)
    assert found.tips_first == 1.0
    assert found.goes == found.tip
    assert not any("grip" in i.name for i in found.by_goes)


def test_a_truck_that_slides_first_depends_on_grip_alone(truck: Truck) -> None:
    found = stiffly(replace(truck, grips=(Grip("ice", 0.1, 0.2, 0.3),)), SIDE, 64)
    assert found.slides_first
    assert found.tips_first == 0.0
    assert found.tips_first_ci[0] == 0.0
    assert 0 < found.tips_first_ci[1] < 0.05
    assert [i.name for i in found.by_goes] == ["grip on ice"]
    assert np.tan(found.goes.mean) == pytest.approx(0.2, abs=0.005)


@pytest.mark.parametrize("method", ["compliant", "closed form"])
def test_against_a_rail_nothing_slides(truck: Truck, method: str) -> None:
    asked = conditions(truck, [0.0], hold="rail")
    (found,) = monte_carlo(truck, asked, samples=16, method=method)  # type: ignore[arg-type]
    assert found.goes == found.tip
    assert found.tips_first == 1.0
    assert not found.slides_first
    assert found.tip.low > np.arctan(truck.grips[0].likely)


def test_a_toss_up_tells_of_the_trucks_that_tip(truck: Truck) -> None:
    """Where grip decides, the tip is that of the draws that tip, and no steeper than grip lets."""
    tip = tip_angles(truck, [SIDE], 0.9).free[0]
    mu = float(np.tan(tip))
    edge = replace(truck, grips=(Grip("edge", 0.8 * mu, 1.05 * mu, 1.2 * mu),))
    (found,) = monte_carlo(edge, conditions(edge, [SIDE]), samples=32)
    assert not found.slides_first
    assert 0.2 < found.tips_first < 0.8
    assert found.tip.high < np.arctan(1.2 * mu)
    assert {"grip on edge"} < {i.name for i in found.by_goes}


def test_the_same_seed_gives_the_same_answer(truck: Truck) -> None:
    one, two, other = (stiffly(truck, SIDE, 16, seed) for seed in (1, 1, 2))
    assert one == two
    assert one != other


def test_progress_is_told_of_all_answers(truck: Truck) -> None:
    told: list[tuple[int, int]] = []
    asked = conditions(truck, [0.0, SIDE])
    monte_carlo(truck, asked, samples=16, method="closed form", progress=lambda *n: told.append(n))
    assert told[0][0] == 0
    assert told[-1][0] == told[-1][1] == 2 * 16 * (2 + 6 + 1 + 1)


def test_what_cannot_be_asked_is_said(truck: Truck) -> None:
    with pytest.raises(ValueError, match="power of two"):
        stiffly(truck, SIDE, 100)
    parts = tuple(replace(p, mass_sd=0.0, place_sd=0.0) for p in truck.parts)
    sure = (Grip("rock", 0.9, 0.9, 0.9),)
    with pytest.raises(ValueError, match="nothing is uncertain"):
        stiffly(replace(truck, grips=sure, parts=parts, uncertain=()), SIDE, 16)


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
        found = sample_spread(rng.standard_normal(800))
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


# The draws


def test_drawn_trucks_scatter_as_their_tolerances_say(weighed: Truck) -> None:
    cgs = np.array([whole(drawn_truck(weighed, seed)).cg for seed in range(120)])
    slopes = sensitivities(weighed)
    expected = slopes.spread(slopes.cg)
    np.testing.assert_allclose(cgs.std(axis=0), expected, rtol=0.25)
    assert np.array_equal(whole(drawn_truck(weighed, 5)).cg, cgs[5])


def test_no_draw_is_beyond_its_tolerance(truck: Truck) -> None:
    own = {p.row: p for p in truck.parts}
    inputs = inputs_of(truck)
    for seed in range(20):
        found = drawn_truck(replace(truck, uncertain=()), seed)
        for p in found.parts:
            limit = np.sqrt(3.0) * own[p.row].mass_sd
            assert abs(p.body.mass - own[p.row].body.mass) <= limit * (1 + 1e-9)
    ends = build_at(inputs, np.ones(inputs.columns))
    assert ends.front.track == pytest.approx(
        next(i for i in truck.uncertain if i.name == "front track").high
    )


def test_the_middle_of_every_input_is_the_truck_as_it_is(truck: Truck) -> None:
    inputs = inputs_of(truck)
    middle = build_at(inputs, np.full(inputs.columns, 0.5))
    triangular = {
        i: float(quantile(one, 0.5))
        for i, one in enumerate(truck.uncertain)
        if one.shape == "triangular"
    }
    assert whole(middle).mass == pytest.approx(whole(truck).mass, rel=1e-12)
    np.testing.assert_allclose(whole(middle).cg, whole(truck).cg, atol=1e-12)
    assert middle.front.tyre.lateral == pytest.approx(varied(truck, triangular).front.tyre.lateral)


def test_every_column_has_one_name(truck: Truck) -> None:
    inputs = inputs_of(truck)
    columns = np.concatenate([c for _, c in inputs.named()])
    assert len(set(columns.tolist())) == len(columns)
    assert columns.max() == inputs.columns - 1
