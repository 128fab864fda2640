"""Slide angles, and which comes first, from textbooks; friction tables as sources of ranges.

"Seen", "worked" and "memory" as in test_tipping.
"""

from __future__ import annotations

import numpy as np
import pytest
from vehicles import vehicle

import driving_loads
from crossfall.statics import rigid
from crossfall.statics.sliding import outcome, slide, slide_range, tips_first
from crossfall.truck.model import GRAVITY, Grip

CLIMB, LEFT_DOWN, DESCENT, RIGHT_DOWN = rigid.QUARTERS
REAR_HELD = (False, False, True, True)
FRONT_HELD = (True, True, False, False)


def first(truck: rigid.Truck, heading: float, mu: float) -> str:
    slides = slide_range(truck, heading, Grip("as given", mu, mu, mu))
    return outcome(float(tips_first(slides, rigid.tip_angle(truck, heading))[0]))


def slide_degrees(truck: rigid.Truck, heading: float, mu: float, **how: object) -> float:
    return float(np.degrees(slide(truck, heading, mu, **how).angle[0]))  # type: ignore[arg-type]


def test_cube_slides_or_tips() -> None:
    """Halliday, Resnick and Walker, Fundamentals of Physics, statics problems. Inputs seen, worked.

    Cube of 1.2 m, CG 0.90 m up: mu 0.60 slides at 30.96 deg; mu 0.70 tips at 33.69 before it
    would slide at 34.99.
    """
    cube = vehicle(height=0.90, wheelbase=1.2, track=1.2)
    assert slide_degrees(cube, CLIMB, 0.60) == pytest.approx(30.96, abs=0.005)
    assert slide_degrees(cube, CLIMB, 0.70) == pytest.approx(34.99, abs=0.005)
    assert first(cube, CLIMB, 0.60) == "slides"
    assert first(cube, CLIMB, 0.70) == "tips"


def test_tall_block_tips_first() -> None:
    """Wolfson, Essential University Physics, 3rd ed., ch. 12 problem 48. Seen: would slide at
    32.2 deg with mu 0.63, tips at 26.56, so it tips first.
    """
    block = vehicle(height=1.0, wheelbase=1.0, track=1.0)
    assert slide_degrees(block, LEFT_DOWN, 0.63) == pytest.approx(32.2, abs=0.05)
    assert first(block, LEFT_DOWN, 0.63) == "tips"


def test_angle_of_repose() -> None:
    """Hibbeler, Engineering Mechanics: Statics, example 8.2. Seen: slips at 25 deg, mu = 0.466."""
    box = vehicle(height=0.2)
    assert slide_degrees(box, RIGHT_DOWN, 0.466) == pytest.approx(25.0, abs=0.02)


def test_all_wheels_braked_on_a_slope() -> None:
    """Worked example 31.6 of an automobile engineering text (what-when-how.com). Inputs seen,
    worked: mu 0.35 slides at 19.29 deg, before it overturns at 33.69.
    """
    car = vehicle(height=1.5, wheelbase=2.25, behind_front=1.25)
    assert slide_degrees(car, CLIMB, 0.35) == pytest.approx(19.29, abs=0.005)
    assert first(car, CLIMB, 0.35) == "slides"


@pytest.mark.parametrize("mu", [0.4, 0.6, 0.8])
def test_parked_uphill_on_one_axle(mu: float) -> None:
    """Jazar, Vehicle Dynamics: Theory and Application (2008), examples 46 to 49. Formulas seen.

    Facing uphill, a1 and a2 from CG to front and rear axle: rear brake
    tan(phi) = a1 mu / (l - mu h), as in ratio (2.69). For the front brake the book's balance
    (2.65) gives a2 mu / (l + mu h); its (2.68) prints a minus there, against its own balance.
    All brakes: tan(phi) = mu (2.86). With a1 < a2 the CG is forward, yet uphill the rear gains.
    """
    a1, a2, h = 1.10, 1.24, 0.40
    base = a1 + a2
    car = vehicle(height=h, wheelbase=base, behind_front=a1)
    rear = np.degrees(np.arctan(a1 * mu / (base - mu * h)))
    front = np.degrees(np.arctan(a2 * mu / (base + mu * h)))
    assert slide_degrees(car, CLIMB, mu, held=REAR_HELD) == pytest.approx(rear, abs=1e-4)
    assert slide_degrees(car, CLIMB, mu, held=FRONT_HELD) == pytest.approx(front, abs=1e-4)
    assert slide_degrees(car, CLIMB, mu) == pytest.approx(np.degrees(np.arctan(mu)), abs=1e-4)
    # Solve (2.63) to (2.65) themselves, unknowns Fz1, Fz2 and tan(phi), forces per mg cos(phi).
    balance = np.array([[2.0, 2.0, 0.0], [2 * mu, 0.0, -1.0], [2 * (a1 + mu * h), -2 * a2, 0.0]])
    tangent = np.linalg.solve(balance, [1.0, 0.0, 0.0])[2]
    assert np.degrees(np.arctan(tangent)) == pytest.approx(front, abs=1e-9)


def test_turn_skids_before_it_overturns() -> None:
    """Physics tutorial exercise (clay6.com 52661). Seen: radius 50 m, wheels 2 m apart, CG 0.8 m
    up, mu 0.4: would overturn at 24.76 m/s, skids at 14 m/s. The g of the source is 9.81.

    The sideways pull at the skid is the table's at its slide angle.
    """
    car = vehicle(height=0.8, wheelbase=3.0, track=2.0)
    to_book = np.sqrt(9.81 / GRAVITY)
    assert driving_loads.rollover_speed(car, 50.0) * to_book == pytest.approx(24.76, abs=0.005)
    pull = np.tan(slide(car, LEFT_DOWN, 0.4).angle[0])
    assert np.sqrt(pull * 9.81 * 50.0) == pytest.approx(14.0, abs=0.05)
    assert first(car, LEFT_DOWN, 0.4) == "slides"


# Where ranges of grip may come from. (low, high), source.
FRICTION = {
    "dry concrete": (0.7, 1.0, "OpenStax, College Physics, table 5.1: static 1.0, kinetic 0.7"),
    "dry concrete, another": (0.8, 1.0, "Serway and Beichner, 5th ed., table 5.2"),
    "wet concrete": (0.5, 0.7, "OpenStax, College Physics, table 5.1"),
    "wet concrete, measured": (0.25, 0.30, "Boal, Simon Fraser University, lecture 6, 2001"),
    "off-road tyres": (0.58, 0.88, "static stability tests of four ATVs, 2007, finding 1"),
    "gravel or dirt": (0.35, 0.35, "Noon, Engineering Analysis of Vehicular Accidents, 1994"),
}


@pytest.mark.parametrize("surface", FRICTION)
def test_friction_tables_as_slide_ranges(surface: str) -> None:
    """Sources beside the values above; the first five seen, the last from memory of a listing.

    A range of friction is a range of slide angles, every wheel held: atan of its ends. On dry
    concrete that is 35 to 45 deg, where the trucks of this class tip: neither first for sure.
    """
    low, high, source = FRICTION[surface]
    assert source
    truck = vehicle(height=0.1, wheelbase=0.313, track=0.17)
    found = np.degrees(slide_range(truck, LEFT_DOWN, Grip(surface, low, high, high)))[0]
    np.testing.assert_allclose(found, np.degrees(np.arctan([low, high, high])), atol=1e-9)
    call = first(truck, LEFT_DOWN, high)
    assert call == ("tips" if high > 0.85 else "slides")
