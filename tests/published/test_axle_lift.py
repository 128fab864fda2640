"""CG from axle loads and from a raised axle, against published numbers and formulas."""

from __future__ import annotations

import numpy as np
import pytest

from axle_scales import (
    behind_front_axle,
    raised_front_load,
    raised_height,
)
from crossfall.measurement.weigh_in import weigh_in
from crossfall.measurement.weigh_in_session import Measured, Repeats, Ruler, Session, WeighingScale


def exact(value: float) -> Measured:
    return Measured(value, 0.0)


def session(wheelbase: float, readings: tuple[Repeats, ...], radius: float = 0.3) -> Session:
    ruler = Ruler(*(exact(v) for v in (wheelbase, 1.5, 1.5, radius, radius)))
    return Session(ruler, WeighingScale(1e-6), readings)


def test_loads_on_each_wheel_of_a_car() -> None:
    """NCERT Physics XI, rotational motion: 1800 kg, wheelbase 1.8 m, CG 1.05 m behind the front
    axle, g 9.8: 3675 N on each front wheel, 5145 N on each back wheel."""
    fronts = tuple(Repeats(w, (3675 / 9.8,)) for w in ("front left", "front right"))
    rears = tuple(Repeats(w, (5145 / 9.8,)) for w in ("rear left", "rear right"))
    answer = weigh_in(session(1.8, fronts + rears))
    assert answer.mass.value == pytest.approx(1800, abs=1e-6)
    assert 0.9 - answer.x.value == pytest.approx(1.05, abs=1e-9)
    assert answer.y.value == pytest.approx(0.0, abs=1e-9)
    assert behind_front_axle(2 * 3675, 2 * 5145, 1.8) == pytest.approx(1.05, rel=1e-12)


def test_cg_from_two_axle_loads() -> None:
    """Textbook exercise: axle loads 7.8 and 5.5 kN, wheelbase 2.5 m: 1.034 m from the front."""
    assert behind_front_axle(7.8, 5.5, 2.5) == pytest.approx(1.034, abs=5e-4)
    loads = (Repeats("front", (780.0,)), Repeats("rear", (550.0,)))
    assert 1.25 - weigh_in(session(2.5, loads)).x.value == pytest.approx(1.034, abs=5e-4)


def test_share_of_measured_vehicles_gives_their_listed_cg() -> None:
    """US NHTSA static stability factor data 2004: wheelbase and CG aft of the front axle, in."""
    for wheelbase, behind in ((122.6, 50.5), (125.9, 56.4), (102.9, 42.8)):
        rear = 4000 * behind / wheelbase
        found = behind_front_axle(4000 - rear, rear, wheelbase)
        assert found == pytest.approx(behind, abs=0.05)


@pytest.mark.parametrize("end", ["front", "rear"])
@pytest.mark.parametrize("height", [0.05, 0.08, 0.1, 0.14])
@pytest.mark.parametrize("block", [0.03, 0.09, 0.15])
def test_weigh_in_inverts_the_axle_lift_formula(end: str, height: float, block: float) -> None:
    """h = (b - L R_f / W) cot(asin(H / L)) + r, ISO 10392 / SAE J874 family; exact readings."""
    base, mass, radius = 0.313, 2.75, 0.056
    ahead = 0.14 if end == "front" else base - 0.14  # of the wheels that stay down
    up = raised_front_load(height, mass, ahead, base, block, radius)
    assert raised_height(up, mass, ahead, base, block, radius) == pytest.approx(height, rel=1e-9)
    front = mass * 0.14 / base
    readings = (
        Repeats("front", (front,)),
        Repeats("rear", (mass - front,)),
        Repeats(end, (up,), end, exact(block)),
    )
    ruler = Ruler(*(exact(v) for v in (base, 0.17, 0.17, radius, radius)))
    answer = weigh_in(Session(ruler, WeighingScale(0.001), readings))
    assert answer.z.value == pytest.approx(height, rel=1e-9)


def test_the_hub_height_is_added_and_no_more() -> None:
    """The same readings on tyres 10 mm larger give a CG 10 mm higher: the formula's + r."""
    args = (1.2, 2.75, 0.14, 0.313, 0.09)
    small, large = raised_height(*args, 0.056), raised_height(*args, 0.066)
    assert large - small == pytest.approx(0.010, rel=1e-12)


def test_linear_form_for_small_raises() -> None:
    """Workshop form h = L^2 dR / (W H) + r (racing practice, e.g. Milliken and Milliken, Race Car
    Vehicle Dynamics, ch. 18, from memory) is the same to second order in H / L."""
    base, mass, ahead, radius, height = 2.5, 1000.0, 1.2, 0.3, 0.55
    for block in (0.05, 0.10):
        up = raised_front_load(height, mass, ahead, base, block, radius)
        change = mass * ahead / base - up
        linear = base**2 * change / (mass * block) + radius
        assert linear == pytest.approx(height, abs=(height - radius) * (block / base) ** 2)
        assert np.sign(linear - height) == 1
