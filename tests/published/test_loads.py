"""Axle and wheel loads from textbooks: standing, on a grade, speeding, braking and turning.

"Seen", "worked" and "memory" as in test_tipping. Books use their own g; forces are compared in
parts of the weight, or scaled by it.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from vehicles import FOOT, POUND_FORCE, mass_of, vehicle

import driving_loads
from crossfall.statics import rigid
from crossfall.statics.sliding import load_pattern, load_shares
from crossfall.truck import ride
from crossfall.truck.massprops import combine, whole
from crossfall.truck.model import GRAVITY, Body, frozen
from support import block


def test_level_car_with_its_cg_behind_the_middle() -> None:
    """NCERT Physics XI, exercise on rotational motion. Seen: 1800 kg, wheelbase 1.8 m, CG 1.05 m
    behind the front axle: 3675 N on each front wheel, 5145 N on each rear, with g 9.8.
    """
    car = vehicle(height=0.5, wheelbase=1.8, behind_front=1.05, mass=1800.0)
    found = ride.tyre_loads(car) * 9.8 / GRAVITY
    np.testing.assert_allclose(found, [3675, 3675, 5145, 5145], rtol=1e-12)


def test_level_car_from_vehicle_dynamics() -> None:
    """Jazar, Vehicle Dynamics (2008), section 2.1 example. Seen: 890 kg, a1 0.78 m, l 2.35 m:
    2916.5 N under each front wheel, 1449 N under each rear, g 9.81.
    """
    car = vehicle(height=0.5, wheelbase=2.35, behind_front=0.78, mass=890.0)
    found = ride.tyre_loads(car) * 9.81 / GRAVITY
    np.testing.assert_allclose(found, [2916.5, 2916.5, 1449, 1449], atol=0.5)


def test_cg_from_wheel_loads() -> None:
    """Jazar, Vehicle Dynamics (2008), example 40. Seen: l 2.34 m, 2000 and 1800 N under each
    front and rear wheel: a1 = 1.1084 m, a2 = 1.2316 m.
    """
    car = vehicle(height=0.5, wheelbase=2.34, behind_front=1.1084, mass=mass_of(7600.0))
    np.testing.assert_allclose(ride.level_axle_loads(car), [4000.0, 3600.0], rtol=2e-4)
    assert car.front.x - whole(car).cg[0] + 1.2316 == pytest.approx(2.34, abs=1e-4)


def test_cg_from_axle_loads() -> None:
    """Textbook exercise. Seen: axle loads 7.8 and 5.5 kN, wheelbase 2.5 m: CG 1.034 m behind the
    front axle.
    """
    car = vehicle(height=0.5, wheelbase=2.5, behind_front=1.034, mass=mass_of(13300.0))
    np.testing.assert_allclose(ride.level_axle_loads(car), [7800.0, 5500.0], atol=2.0)


def test_forklift() -> None:
    """Wickert and Lewis, Introduction to Mechanical Engineering, forklift example. Results seen:
    3500 lb truck with an 800 lb container: 1262 lb on each front wheel, 888 lb on each rear; a
    6125 lb container tips it. Distances 24, 42 and 72 in from memory of the figure.
    """
    inch, wheelbase = 0.0254, 72 * 0.0254
    truck = vehicle(height=0.5, wheelbase=wheelbase, behind_front=42 * inch, mass=3500.0)
    ahead = (wheelbase / 2 + 24 * inch, 0.0, 0.5)
    size = (0.3, 0.3, 0.3)

    laden = replace(truck, chassis=combine((truck.chassis, block(800.0, ahead, size))))
    found = ride.tyre_loads(laden) / GRAVITY  # pounds stand for kilograms here
    np.testing.assert_allclose(found, [1262, 1262, 888, 888], atol=0.6)

    tipping = replace(truck, chassis=combine((truck.chassis, block(6125.0, ahead, size))))
    assert ride.level_axle_loads(tipping)[1] == pytest.approx(0.0, abs=1e-9)
    assert rigid.tip_angle(tipping, np.pi) == pytest.approx(0.0, abs=1e-12)


def test_standing_on_a_slope() -> None:
    """Worked example 31.6, Stability of a vehicle on a slope, in an automobile engineering text
    (what-when-how.com). Inputs seen, worked: 49 050 N, nose up 10 deg: 15 790.5 N in front and
    32 514.3 N behind.
    """
    car = vehicle(height=1.5, wheelbase=2.25, behind_front=1.25, mass=mass_of(49050.0))
    grade = np.radians(10.0)
    np.testing.assert_allclose(driving_loads.grade_loads(car, grade), [15790.5, 32514.3], atol=0.1)
    np.testing.assert_allclose(rigid.axle_loads(car, 0.0, grade), [15790.5, 32514.3], atol=0.1)


def test_speeding_up_a_grade() -> None:
    """Meriam and Kraige, Engineering Mechanics: Dynamics, sample problem 6/1. Worked.

    3220 lb, CG 24 in up and 60 in from each axle, 10 % grade, 44 ft/s in 200 ft from rest, rear
    drive: F 804 lb, front 1441 lb, rear 1763 lb, F/N 0.456 (g = 32.2 ft/s^2).
    """
    g = 32.2 * FOOT
    car = vehicle(height=2 * FOOT, wheelbase=10 * FOOT, mass=mass_of(3220 * POUND_FORCE, g))
    grade, gain = np.arctan(0.1), 44**2 / (2 * 200) * FOOT
    gain *= GRAVITY / g  # the same part of g
    to_book = g / GRAVITY / POUND_FORCE
    assert driving_loads.driving_force(car, grade, gain) * to_book == pytest.approx(804, abs=1)
    found = driving_loads.grade_loads(car, grade, gain) * to_book
    np.testing.assert_allclose(found, [1441, 1763], atol=1)
    assert driving_loads.grip_needed(car, grade, gain, "rear") == pytest.approx(0.456, abs=5e-4)


def test_hard_braking() -> None:
    """Halliday, Resnick and Walker, Fundamentals of Physics, 8th ed., ch. 12. Inputs seen, answers
    from memory and worked: mu 0.40, L 4.2 m, CG 1.8 m behind the front axle and 0.75 m up, 11 kN:
    3.9 m/s^2, 2.0 kN on each rear wheel, 3.5 kN on each front.
    """
    car = vehicle(height=0.75, wheelbase=4.2, behind_front=1.8, mass=mass_of(11000.0))
    slowing = -0.40 * GRAVITY
    assert slowing == pytest.approx(-3.9, abs=0.05)
    front, rear = driving_loads.grade_loads(car, 0.0, slowing)
    assert rear / 2 == pytest.approx(2.0e3, abs=50)
    assert front / 2 == pytest.approx(3.5e3, abs=50)
    assert driving_loads.grip_needed(car, 0.0, slowing, "both") == pytest.approx(-0.40)


@pytest.mark.parametrize(
    ("driven", "acceleration"), [("front", 2.889), ("rear", 3.022), ("both", 5.886)]
)
def test_greatest_acceleration(driven: str, acceleration: float) -> None:
    """Example 31.7 of an automobile engineering text (what-when-how.com). Inputs seen, worked:
    wheelbase 2.75 m, CG 0.85 m up and 1.15 m behind the front axle, adhesion 0.6, g 9.81.
    """
    car = vehicle(height=0.85, wheelbase=2.75, behind_front=1.15)
    gain = acceleration * GRAVITY / 9.81
    assert driving_loads.grip_needed(car, 0.0, gain, driven) == pytest.approx(0.6, abs=2e-4)


def test_car_on_a_curve() -> None:
    """Tayal, Engineering Mechanics, ch. 15. Seen: 10 kN, CG 1 m up, track 1.5 m, 100 m radius at
    10 m/s: overturns at 27.125 m/s (0.75 g), and 4660.21 N inside, 5339.79 N outside. g 9.81.

    The printed loads carry half the couple that the printed overturning speed needs: they are
    those of a CG 0.5 m up. Worked for 1 m: 5000 -+ 10 000 x 100 / 981 / 1.5 N.
    """
    car, low = (
        vehicle(height=h, wheelbase=3.0, track=1.5, mass=mass_of(10000.0)) for h in (1.0, 0.5)
    )
    same_pull = np.sqrt(GRAVITY / 9.81)
    assert driving_loads.rollover_speed(car, 100.0) / same_pull == pytest.approx(27.125, abs=0.002)
    assert np.tan(rigid.tip_angle(car, driving_loads.RIGHT_DOWN)) == pytest.approx(0.75)
    found = driving_loads.turn_loads(car, 10.0 * same_pull, 100.0)
    np.testing.assert_allclose(found, [4320.42, 5679.58], atol=0.01)
    found = driving_loads.turn_loads(low, 10.0 * same_pull, 100.0)
    np.testing.assert_allclose(found, [4660.21, 5339.79], atol=0.01)


def test_overturning_in_a_tight_bend() -> None:
    """Course exercise quoted at physicsforums.com 174374. Seen: 20 m radius, track 1.3 m, CG 0.6 m
    up: 14.58 m/s, g 9.81.
    """
    car = vehicle(height=0.6, wheelbase=2.5, track=1.3)
    found = driving_loads.rollover_speed(car, 20.0) * np.sqrt(9.81 / GRAVITY)
    assert found == pytest.approx(14.58, abs=0.005)


@pytest.mark.parametrize("lift", [0.05, 0.12])
def test_raised_axle_formula_reads_the_height_back(lift: float) -> None:
    """Axle-lift method of the ISO 10392 and SAE J874 family. Formula seen, no numbers found:
    h = (b - L R_f / W) cot(asin(H / L)) + r, front axle raised by H, R_f the front scale.

    Scales read vertically through the wheel centres, so that the car stands as on a table through
    its axles, tilted nose up, whose normal load is cos of the scale's.
    """
    base, back, h, r = 0.313, 0.17, 0.11, 0.057
    over_axles = vehicle(height=h - r, wheelbase=base, behind_front=back, mass=2.8)
    theta = np.arcsin(lift / base)
    scale = rigid.axle_loads(over_axles, 0.0, theta)[0] / np.cos(theta)
    weight = 2.8 * GRAVITY
    b = base - back
    assert (b - base * scale / weight) / np.tan(theta) + r == pytest.approx(h, rel=1e-12)


def test_statically_indeterminate() -> None:
    """Jazar, Vehicle Dynamics (2008), example 45. Seen: with more than three wheels the loads of
    single wheels need the tyres' stiffness. Here: a load pattern that force and moments cannot
    see, and stiffer front tyres take more of a roll.
    """
    car = vehicle(height=0.5, wheelbase=2.5, track=1.4, left_of_middle=0.1)
    stiff = replace(car.front, tyre=replace(car.front.tyre, stiffness=4e5))
    pattern = load_pattern(car)
    points = rigid.tip_points(car)
    np.testing.assert_allclose([pattern.sum(), *(points.T @ pattern)], 0.0, atol=1e-15)
    even = load_shares(car, 0.0)[0][0]
    other = load_shares(replace(car, front=stiff), 0.0)[0][0]
    assert even[0] - even[1] == pytest.approx(even[2] - even[3])
    assert other[0] - other[1] == pytest.approx(2 * (other[2] - other[3]))


def test_bodies_carry_their_weight_where_they_are() -> None:
    """Hibbeler, Engineering Mechanics: Statics, section 9.1: x = sum(x W) / sum(W). Memory."""
    car = vehicle(height=0.5, wheelbase=2.0, mass=100.0)
    pack = Body(20.0, frozen([0.4, 0.2, 0.1]), frozen(np.eye(3)))
    both = whole(replace(car, chassis=combine((car.chassis, pack))))
    np.testing.assert_allclose(both.cg, [8 / 120, 4 / 120, 52 / 120], rtol=1e-12)
