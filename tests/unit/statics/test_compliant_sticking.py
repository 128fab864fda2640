"""The sticking closure: friction with a history."""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.statics import continuation, sticking
from crossfall.statics.balance import balance
from crossfall.statics.builds import pack
from crossfall.statics.compliant import lose, tips
from crossfall.statics.newton import Cases
from crossfall.truck.model import Array, Truck
from support import make_truck


def tip_with(truck: Truck, headings: Array, friction: float, ratio: float) -> Array:
    """Tip angles, deg, with other settings of the closure."""
    builds = pack([truck] * len(headings))
    cases = Cases(builds, headings, sticking.fresh(builds, friction, ratio))
    track = continuation.start(cases)
    lose(cases, track)
    return np.degrees(track.state[-1])


def test_on_grades_and_like_axles_friction_hardly_matters() -> None:
    truck = make_truck(spring_rate=600.0, droop=0.008)
    headings = np.radians([0.0, 90.0, 180.0, 270.0])
    difference = np.degrees(tips(truck, headings, "sticking").tip - tips(truck, headings).tip)
    assert np.abs(difference[[0, 2]]).max() < 0.05
    assert np.abs(difference[[1, 3]]).max() < 0.4


def test_on_diagonals_and_unlike_axles_it_decides() -> None:
    """Wheels that hold the table cannot spread as the axles lean: the truck stands longer."""
    diagonal = np.radians([135.0])
    truck = make_truck(spring_rate=600.0, droop=0.008)
    gain = np.degrees(tips(truck, diagonal, "sticking").tip - tips(truck, diagonal).tip)
    assert 0.5 < gain[0] < 2.5
    side, unlike = np.radians([90.0]), make_truck(tracks=(0.16, 0.19), spring_rate=600.0)
    gain = np.degrees(tips(unlike, side, "sticking").tip - tips(unlike, side).tip)
    assert 0.5 < gain[0] < 3.0


def test_settings_stand_for_hard_sticking() -> None:
    headings = np.radians([0.0, 90.0, 135.0, 180.0])
    truck = make_truck(spring_rate=600.0, droop=0.008)
    usual = tip_with(truck, headings, sticking.FRICTION, sticking.RATIO)
    harder = tip_with(truck, headings, sticking.FRICTION, 4 * sticking.RATIO)
    np.testing.assert_allclose(harder, usual, atol=0.3)
    np.testing.assert_allclose(harder[[0, 1, 3]], usual[[0, 1, 3]], atol=0.02)


def test_no_tyre_pulls_more_than_its_grip() -> None:
    rng = np.random.default_rng(3)
    builds = pack([make_truck(), make_truck(contact_half_width=0.01)])
    closure = sticking.fresh(builds, friction=0.8)
    x = rng.normal(size=(10, 2)) * 0.02
    at = balance(builds, np.array([1.0, 4.0]), x, np.array([0.3, 0.5]), None, closure)
    force = at.contact.force
    assert force is not None
    pull, load = np.hypot(force[0], force[1]), force[2]
    assert (load >= 0).all()
    assert (pull <= 0.8 * load + 1e-12).all()
    assert (pull > 0.79 * load).any()


def test_rolling_does_not_pull() -> None:
    """Pitch about a point on the table carries the hubs on by radius times pitch, which is how far
    held wheels roll with the body: no tyre slips. The same way without turning does slip."""
    truck, pitch = make_truck(locked=True), 1e-4
    builds = pack([truck])
    closure = sticking.fresh(builds)
    on = np.ones((16, 1), dtype=bool)
    way = truck.front.tyre.radius * pitch / truck.wheelbase

    def slip(x: Array) -> Array:
        force = balance(builds, np.zeros(1), x, np.zeros(1), on, closure).contact.force
        assert force is not None
        return np.asarray(-force[0] / closure.rate)

    turned, pushed = np.zeros((10, 1)), np.zeros((10, 1))
    turned[4], pushed[0] = pitch, way
    assert np.abs(slip(turned)).max() < 0.001 * way
    np.testing.assert_allclose(slip(pushed), way, rtol=1e-9)


def test_it_starts_afresh_where_a_wheel_comes_down_again() -> None:
    builds = pack([make_truck()])
    closure = sticking.fresh(builds)
    on = np.ones((16, 1), dtype=bool)
    x = np.zeros((10, 1))
    x[1] = 1e-4  # pushed sideways: every tyre pulls back
    at = balance(builds, np.zeros(1), x, np.zeros(1), on, closure)
    closure.remember(np.arange(1), at, np.arange(1))
    assert (closure.pull[1] < 0).all()
    on[0] = False  # front left in the air
    closure.remember(
        np.arange(1), balance(builds, np.zeros(1), x, np.zeros(1), on, closure), np.arange(1)
    )
    assert closure.pull[1, 0, 0] == 0.0
    on[0] = True
    again = balance(builds, np.zeros(1), x, np.zeros(1), on, closure)
    assert again.contact.force is not None
    assert again.contact.force[1, 0, 0, 0] == pytest.approx(0.0, abs=1e-12)
    assert again.contact.force[1, 0, 1, 0] < 0
