"""The gain map against finite differences of the full answers."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest

from crossfall.statics import rigid
from crossfall.statics.compliant import tips
from crossfall.statics.compliant_gradient import added
from crossfall.truck.assemble import with_masses, with_shifts
from crossfall.truck.build import load_truck
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Carrier, Truck
from crossfall.tuning.directions import DIRECTIONS, ROUND
from crossfall.tuning.gains import field, gradients, part_gains
from support import make_truck

Answer = Callable[[Truck], Array]
PLACES: tuple[tuple[Carrier, tuple[float, float, float]], ...] = (
    ("chassis", (0.10, 0.02, 0.05)),
    ("chassis", (-0.15, -0.04, 0.20)),
    ("front axle", (0.15, 0.03, 0.06)),
    ("rear axle", (-0.16, 0.0, 0.05)),
    ("rear left", (-0.15, 0.09, 0.06)),
)


@pytest.fixture(scope="module")
def bramble() -> Truck:
    return load_truck("bramble").truck


def rigid_answer(truck: Truck) -> Array:
    return rigid.tip_angle(truck, ROUND)


def compliant_answer(truck: Truck) -> Array:
    return tips(truck, ROUND, "uniform").tip


def slope(answer: Answer, truck: Truck, carrier: Carrier, place: Array, step: float) -> Array:
    """Central difference over a mass of +-step kg."""
    up, down = (answer(added(truck, carrier, place, m)) for m in (step, -step))
    return (up - down) / (2 * step)


@pytest.mark.parametrize(("carrier", "place"), PLACES)
def test_rigid_field_is_the_slope_of_the_answer(
    bramble: Truck, carrier: Carrier, place: tuple[float, float, float]
) -> None:
    at = np.array(place)
    exact = gradients(bramble, "rigid").per_mass(carrier, at[None])[:, 0]
    found = slope(rigid_answer, bramble, carrier, at, 1e-4)
    np.testing.assert_allclose(found, exact, rtol=1e-6, atol=1e-7 * np.abs(exact).max())


@pytest.mark.parametrize(("carrier", "place"), PLACES)
def test_compliant_field_is_the_slope_of_the_answer(
    bramble: Truck, carrier: Carrier, place: tuple[float, float, float]
) -> None:
    """Relative 1e-3 of the largest slope over headings: some slopes are nearly nothing."""
    at = np.array(place)
    exact = gradients(bramble, "compliant").per_mass(carrier, at[None])[:, 0]
    found = slope(compliant_answer, bramble, carrier, at, 2e-4)
    np.testing.assert_allclose(found, exact, atol=1e-3 * np.abs(exact).max())


@pytest.mark.parametrize("name", ["cab", "winch", "tyre", "front knuckle", "rear lower link"])
def test_numbers_per_part_are_slopes_of_the_rigid_answer(bramble: Truck, name: str) -> None:
    """10 g on the part, spread over its pieces, and the part moved along x, y and z."""
    found = gradients(bramble, "rigid")
    gain = next(g for g in part_gains(found) if g.name == name)
    governing = found.angles.governing[0]
    pieces = [p for p in bramble.parts if p.row == gain.row]
    mass, step = pieces[0].body.mass, 1e-5
    up, down = (rigid_answer(with_masses(bramble, {gain.row: mass + m})) for m in (step, -step))
    by_mass = ((up - down) / (2 * step * len(pieces)))[governing]
    np.testing.assert_allclose(by_mass, gain.per_mass, rtol=1e-6, atol=1e-9)
    for axis in range(3):
        shift = np.zeros(3)
        shift[axis] = 1e-6
        up, down = (rigid_answer(with_shifts(bramble, {gain.row: s})) for s in (shift, -shift))
        by_move = ((up - down) / 2e-6)[governing]
        np.testing.assert_allclose(by_move, gain.per_move[:, axis], rtol=1e-5, atol=1e-8)


def test_numbers_per_part_are_slopes_of_the_compliant_answer(bramble: Truck) -> None:
    found = gradients(bramble, "compliant")
    governing = found.angles.governing[0]
    for name in ("cab", "tyre", "rear lower link"):
        gain = next(g for g in part_gains(found) if g.name == name)
        pieces = [p for p in bramble.parts if p.row == gain.row]
        mass, step = pieces[0].body.mass, 1e-4
        up, down = (
            compliant_answer(with_masses(bramble, {gain.row: mass + m})) for m in (step, -step)
        )
        by_mass = ((up - down) / (2 * step * len(pieces)))[governing]
        np.testing.assert_allclose(by_mass, gain.per_mass, atol=1e-3 * np.abs(by_mass).max())


def test_field_of_all_at_once_is_the_least(bramble: Truck) -> None:
    places = np.random.default_rng(3).uniform((-0.2, -0.1, 0.0), (0.2, 0.1, 0.25), (40, 3))
    found = gradients(bramble, "compliant")
    four = np.stack([field(found, [h])(places) for h in (0, 2, 4, 6)])
    np.testing.assert_array_equal(field(found, (0, 2, 4, 6))(places), four.min(axis=0))
    assert np.any(four.min(axis=0) > 0)
    assert np.any(four.min(axis=0) < 0)


def test_wedge_line_is_where_a_gram_changes_nothing(bramble: Truck) -> None:
    """On the line through tip line and CG; below it a gram helps, above it hurts."""
    found = gradients(bramble, "rigid")
    foot, top = rigid.wedge_lines(bramble)[0]
    climb = field(found, [0])
    for share in (0.2, 0.7, 1.4):
        x, z = foot + share * (top - foot)
        on, below, above = climb(np.array([[x, 0, z], [x, 0, z - 0.01], [x, 0, z + 0.01]]))
        assert abs(on) < 1e-12
        assert below > 0 > above


def test_worst_direction_has_the_slope_of_the_heading_that_decides() -> None:
    truck = replace(make_truck(chassis_cg=(-0.01, 0.004, 0.110)), parts=())
    found = gradients(truck, "compliant")
    worst = DIRECTIONS.index("worst")
    assert found.angles.by_direction[0, worst] == found.angles.all_round[0].min()
    assert found.angles.governing[0, worst] == found.angles.all_round[0].argmin()
    assert whole(truck).cg[1] > 0
    assert ROUND[found.angles.governing[0, DIRECTIONS.index("side")]] == pytest.approx(np.pi / 2)
