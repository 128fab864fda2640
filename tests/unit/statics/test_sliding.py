"""Sliding against closed forms and against linear programming over the contact forces."""

from __future__ import annotations

from dataclasses import replace
from typing import Literal

import numpy as np
import pytest
from scipy import stats
from scipy.optimize import linprog

from crossfall.statics import sliding
from crossfall.statics.rigid import downhill, tip_angle, tip_points
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Grip, Truck
from crossfall.truck.steering import swung
from support import make_truck

HEADINGS = np.radians(np.arange(0.0, 360.0, 30.0))
FRONT_FREE = (False, False, True, True)
REAR_FREE = (True, True, False, False)
ALL_FREE = (False,) * 4
SPLITS: tuple[sliding.Split, ...] = ("least", "elastic", "greatest")
FACETS = 120


def odd_truck() -> Truck:
    return make_truck(
        tracks=(0.150, 0.185), contact_half_width=0.008, chassis_cg=(0.012, 0.006, 0.095)
    )


# What statics cannot see


@pytest.mark.parametrize("turn", [0.0, 30.0, -20.0])
def test_the_pattern_has_no_force_and_no_moment(turn: float) -> None:
    """Turned wheels stand fore and aft of their axle: that once left 10 mm of its height."""
    truck = odd_truck()
    steered = swung(np.radians(turn), 0.024)
    truck = replace(truck, front=replace(truck.front, steered=steered))
    pattern, points = sliding.load_pattern(truck), tip_points(truck)
    assert pattern.sum() == pytest.approx(0.0, abs=1e-12)
    assert pattern @ points == pytest.approx([0.0, 0.0], abs=1e-12)
    assert np.sign(pattern).tolist() == [1, -1, -1, 1]
    if turn == 0.0:
        front, rear = points[0, 1], points[2, 1]
        expected = np.array([rear, -rear, -front, front]) / (front + rear)
        assert pattern == pytest.approx(expected, abs=1e-12)


# Closed forms


@pytest.mark.parametrize("split", SPLITS)
def test_one_grip_and_all_held_slides_at_its_angle(split: sliding.Split) -> None:
    truck = odd_truck()
    for mu in (0.3, 0.7, 1.0):
        # A grip that differs in the last place goes the long way round.
        nearly = np.array([mu, mu, mu, mu * (1 + 1e-15)])
        assert nearly[3] != mu
        general = sliding.slide(truck, HEADINGS, nearly, split=split)
        np.testing.assert_allclose(general.angle, np.arctan(mu), atol=1e-9)
        np.testing.assert_allclose(general.motion[:, :2], downhill(HEADINGS), atol=1e-6)
        assert set(general.swings) == {"neither"}
        plain = sliding.slide(truck, HEADINGS, mu, split=split)
        np.testing.assert_array_equal(plain.angle, np.arctan(mu))


@pytest.mark.parametrize("mu", [0.2, 0.5, 0.8])
@pytest.mark.parametrize("held", [FRONT_FREE, REAR_FREE])
def test_one_axle_held_on_the_grade(mu: float, held: sliding.Held) -> None:
    """The held axle's share moves with the slope: mu l / (L -+ mu h), - where it stands downhill.

    l is the distance of the CG from the other axle. Balance of force along the grade and of
    moment about the free axle.
    """
    truck = make_truck(chassis_cg=(0.01, 0.0, 0.08))
    x, _, h = whole(truck).cg
    rear_held = held[2]
    lever = truck.front.x - x if rear_held else x - truck.rear.x
    toward = mu * lever / (truck.wheelbase - mu * h)  # held axle downhill, gaining load
    away = mu * lever / (truck.wheelbase + mu * h)
    expected = np.arctan([toward, away] if rear_held else [away, toward])
    angles = sliding.slide(truck, [0.0, np.pi], mu, held).angle
    np.testing.assert_allclose(angles, expected, atol=1e-8)


def test_free_wheels_hold_across_but_not_along() -> None:
    truck = make_truck(chassis_cg=(0.0, 0.0, 0.08))
    climb, side = sliding.slide(truck, [0.0, np.pi / 2], 0.6, ALL_FREE).angle
    assert climb == pytest.approx(0.0, abs=1e-9)
    assert side == pytest.approx(np.arctan(0.6), abs=1e-9)
    # A little off the side slope nothing but its axles' direction holds it: it rolls away.
    assert sliding.slide(truck, [np.radians(80)], 0.6, ALL_FREE).angle[0] < 1e-6


def test_the_end_with_less_grip_swings_first() -> None:
    truck = make_truck(chassis_cg=(0.0, 0.0, 0.08))
    side = [np.pi / 2, 3 * np.pi / 2]
    weak_front = sliding.slide(truck, side, (0.3, 0.3, 0.9, 0.9))
    weak_rear = sliding.slide(truck, side, (0.9, 0.9, 0.3, 0.3))
    assert weak_front.swings == ("front", "front")
    assert weak_rear.swings == ("rear", "rear")
    # More than the weak end alone could hold, since the strong end takes some of the turning.
    assert np.all(weak_front.angle > np.arctan(0.3))
    assert np.all(weak_front.angle < np.arctan(0.6))


# Linear programming over all contact forces in balance


def balance(truck: Truck, heading: float) -> tuple[Array, Array]:
    """Rows of A u = b over u = (t, N, Fx, Fy) per W cos(theta), with t = tan(theta)."""
    body, d, points = whole(truck), downhill(heading), tip_points(truck)
    x, y, h = body.cg
    a, b = np.zeros((6, 13)), np.zeros(6)
    a[0, 1:5], b[0] = 1.0, 1.0
    a[1, 1:5], a[1, 0], b[1] = points[:, 0], -h * d[0], x
    a[2, 1:5], a[2, 0], b[2] = points[:, 1], -h * d[1], y
    a[3, 5:9], a[3, 0] = 1.0, d[0]
    a[4, 9:13], a[4, 0] = 1.0, d[1]
    a[5, 5:9], a[5, 9:13], a[5, 0] = -points[:, 1], points[:, 0], x * d[1] - y * d[0]
    return a, b


def friction_rows(mu: Array, held: sliding.Held, kind: Literal["inner", "outer"]) -> Array:
    """Rows of A u <= 0: each tyre's grip as a polygon within the circle, or round it."""
    angles = np.arange(FACETS) * 2 * np.pi / FACETS
    reach = np.cos(np.pi / FACETS) if kind == "inner" else 1.0
    rows = []
    for i in range(4):
        block = np.zeros((FACETS, 13))
        block[:, 5 + i], block[:, 9 + i], block[:, 1 + i] = (
            np.cos(angles),
            np.sin(angles),
            -mu[i] * reach,
        )
        rows.append(block)
        if not held[i]:
            rolls = np.zeros((2, 13))
            rolls[:, 5 + i] = 1.0, -1.0
            rows.append(rolls)
    return np.vstack(rows)


def greatest_tangent(
    truck: Truck, heading: float, mu: Array, held: sliding.Held, kind: Literal["inner", "outer"]
) -> float:
    """The greatest tan(theta) at which any admissible contact forces are in balance."""
    a, b = balance(truck, heading)
    cost = np.zeros(13)
    cost[0] = -1.0
    bounds = [(0, None)] * 5 + [(None, None)] * 8
    grip = friction_rows(mu, held, kind)
    found = linprog(cost, grip, np.zeros(len(grip)), a, b, bounds, method="highs")
    assert found.status == 0
    return float(found.x[0])


def holds(
    truck: Truck, heading: float, t: float, loads: Array, mu: Array, held: sliding.Held
) -> bool:
    """Whether friction can balance at tan(theta) = t with the loads given."""
    a, b = balance(truck, heading)
    bounds = [(t, t)] + [(n, n) for n in loads] + [(None, None)] * 8
    grip = friction_rows(mu, held, "outer")
    # The loads balance already; only the plane's three rows remain.
    found = linprog(np.zeros(13), grip, np.zeros(len(grip)), a[3:], b[3:], bounds, method="highs")
    return bool(found.status == 0)


CASES = [
    (0.0, (0.4, 0.4, 0.7, 0.7), sliding.HELD),
    (40.0, (0.4, 0.4, 0.7, 0.7), sliding.HELD),
    (90.0, (0.3, 0.3, 0.7, 0.7), sliding.HELD),
    (130.0, (0.7, 0.7, 0.35, 0.35), sliding.HELD),
    (215.0, (0.5, 0.3, 0.6, 0.4), sliding.HELD),
    (270.0, (0.7, 0.7, 0.4, 0.4), sliding.HELD),
    (10.0, (0.5,) * 4, FRONT_FREE),
    (60.0, (0.5,) * 4, FRONT_FREE),
    (150.0, (0.5,) * 4, FRONT_FREE),
    (20.0, (0.5,) * 4, REAR_FREE),
    (200.0, (0.6,) * 4, REAR_FREE),
    (300.0, (0.4, 0.4, 0.6, 0.6), (True, False, False, True)),
]


@pytest.mark.parametrize(("degrees", "grip", "held"), CASES)
def test_greatest_is_the_best_of_all_admissible_forces(
    degrees: float, grip: tuple[float, ...], held: sliding.Held
) -> None:
    truck, heading, mu = odd_truck(), np.radians(degrees), np.array(grip)
    angle = float(sliding.slide(truck, heading, mu, held, "greatest").angle[0])
    assert angle < tip_angle(truck, heading)
    inner = greatest_tangent(truck, heading, mu, held, "inner")
    outer = greatest_tangent(truck, heading, mu, held, "outer")
    assert inner - 1e-7 < np.tan(angle) < outer + 1e-7
    assert outer - inner < 1e-3


@pytest.mark.parametrize(("degrees", "grip", "held"), CASES)
def test_least_and_elastic_are_where_their_loads_stop_holding(
    degrees: float, grip: tuple[float, ...], held: sliding.Held
) -> None:
    truck, heading, mu = odd_truck(), np.radians(degrees), np.array(grip)
    m0, m1 = sliding.load_shares(truck, heading)
    pattern = sliding.load_pattern(truck)

    def splits(t: float) -> list[Array]:
        elastic = (m0 + m1 * t)[0]
        ends = -elastic / pattern
        low, high = max(ends[0], ends[3]), min(ends[1], ends[2])
        amounts = np.append(np.linspace(low, high, 9), np.clip(0.0, low, high))
        return [np.maximum(elastic + s * pattern, 0.0) for s in amounts]

    margin = 1e-3
    least, elastic = (
        float(np.tan(sliding.slide(truck, heading, mu, held, split).angle[0]))
        for split in ("least", "elastic")
    )
    below, above = least * (1 - margin), least * (1 + margin)
    assert all(holds(truck, heading, below, n, mu, held) for n in splits(below))
    assert not all(holds(truck, heading, above, n, mu, held) for n in splits(above))
    below, above = elastic * (1 - margin), elastic * (1 + margin)
    assert holds(truck, heading, below, splits(below)[-1], mu, held)
    assert not holds(truck, heading, above, splits(above)[-1], mu, held)


def test_the_shares_balance_gravity() -> None:
    truck = odd_truck()
    x, y, h = whole(truck).cg
    m0, m1 = sliding.load_shares(truck, HEADINGS)
    points = tip_points(truck)
    for t in (0.0, 0.4):
        loads = m0 + m1 * t
        np.testing.assert_allclose(loads.sum(axis=1), 1.0, rtol=1e-12)
        np.testing.assert_allclose(
            loads @ points, np.array([x, y]) + h * t * downhill(HEADINGS), atol=1e-14
        )
    pattern = sliding.load_pattern(truck)
    np.testing.assert_allclose([pattern.sum(), *(pattern @ points)], 0.0, atol=1e-16)


# Order, and past the tip


def test_more_grip_never_hurts_and_a_freed_wheel_never_helps() -> None:
    truck = odd_truck()
    for split in SPLITS:
        base = sliding.slide(truck, HEADINGS, (0.4, 0.4, 0.6, 0.6), split=split).angle
        more = sliding.slide(truck, HEADINGS, (0.5, 0.4, 0.6, 0.6), split=split).angle
        freed = sliding.slide(
            truck, HEADINGS, (0.4, 0.4, 0.6, 0.6), (True, False, True, True), split
        ).angle
        assert np.all(more >= base - 1e-9)
        assert np.all(freed <= base + 1e-9)
        assert np.any(more > base + 1e-3)
        assert np.any(freed < base - 1e-3)


def test_past_the_tip_the_truck_is_held_upright() -> None:
    """Grip far beyond the tip: one mu still slides at atan(mu), and grip still counts."""
    truck = odd_truck()
    mu = np.array([2.5, 2.5, 2.5, 2.5 * (1 + 1e-15)])
    for split in SPLITS:
        angles = sliding.slide(truck, HEADINGS, mu, split=split).angle
        assert np.all(angles > tip_angle(truck, HEADINGS) - 1e-9)
        np.testing.assert_allclose(angles, np.arctan(2.5), atol=1e-8)


def test_the_range_is_in_order_and_ends_at_the_grips() -> None:
    truck = odd_truck()
    rock, wet = Grip("rock", 0.6, 0.8, 0.9), Grip("wet rock", 0.3, 0.45, 0.6)
    one = sliding.slide_range(truck, HEADINGS, rock)
    np.testing.assert_allclose(one, np.tile(np.arctan([0.6, 0.8, 0.9]), (12, 1)), rtol=1e-12)
    mixed = sliding.slide_range(truck, HEADINGS, (wet, rock))
    assert np.all(np.diff(mixed, axis=1) > 0)
    assert np.all(mixed[:, 0] >= np.arctan(0.3) - 1e-9)
    assert np.all(mixed[:, 2] <= np.arctan(0.9) + 1e-9)


# Tips or slides


def test_triangular_cdf_is_that_of_a_statistics_library() -> None:
    x = np.linspace(0.2, 1.3, 57)
    for low, likely, high in ((0.4, 0.7, 1.1), (0.4, 0.4, 1.1), (0.4, 1.1, 1.1)):
        scale = high - low
        other = stats.triang((likely - low) / scale, low, scale).cdf(x)
        np.testing.assert_allclose(sliding.triangular_cdf(x, low, likely, high), other, atol=1e-12)
    np.testing.assert_array_equal(sliding.triangular_cdf([0.6, 0.8], 0.7, 0.7, 0.7), [0.0, 1.0])


def test_probability_is_that_of_drawn_grips() -> None:
    grip = Grip("rock", 0.7, 0.9, 1.0)
    tip, spread = np.radians(41.0), np.radians(1.5)
    slides = np.arctan([[grip.low, grip.likely, grip.high]])
    rng = np.random.default_rng(3)
    mu = rng.triangular(grip.low, grip.likely, grip.high, 200_000)
    tips = tip + spread * rng.uniform(-1, 1, mu.size)
    drawn = float(np.mean(np.tan(tips) < mu))
    assert sliding.tips_first(slides, tip, spread)[0] == pytest.approx(drawn, abs=0.005)


def test_outcomes() -> None:
    slides = np.radians([35.0, 40.0, 45.0])
    tips = np.radians([30.0, 34.9, 40.0, 45.1, 50.0])
    chances = [float(sliding.tips_first(slides, t, 0.0)[0]) for t in tips]
    assert chances[0] == chances[1] == 1.0
    assert chances[3] == chances[4] == 0.0
    calls = [sliding.outcome(c) for c in chances]
    assert calls == ["tips", "tips", "too close to call", "slides", "slides"]
    # Uncertainty of the tip alone can make it too close.
    sure = float(sliding.tips_first(slides, np.radians(34.0), 0.0)[0])
    unsure = float(sliding.tips_first(slides, np.radians(34.0), np.radians(9.0))[0])
    assert sliding.outcome(sure) == "tips"
    assert sliding.outcome(unsure) == "too close to call"
