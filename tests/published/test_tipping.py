"""Tip angles, stability factors and tilt-table ratios from books, data and standards.

Each test names its source. "Seen" means read in a stored copy of the source, "worked" that the
inputs were seen and the result follows from them by hand, "memory" that it is recalled.
"""

from __future__ import annotations

import numpy as np
import pytest
from vehicles import INCH, vehicle

import driving_loads
from crossfall.statics import rigid
from stability_measures import static_stability_factor, tilt_table_ratio

CLIMB, LEFT_DOWN, DESCENT, RIGHT_DOWN = rigid.QUARTERS


def degrees(truck: rigid.Truck, heading: float) -> float:
    return float(np.degrees(rigid.tip_angle(truck, heading)))


def test_parked_truck() -> None:
    """Hibbeler, Engineering Mechanics: Statics, 14th ed., problem 11-43. Seen: 23.2 deg.

    Half-track 1.5 m, mass centre 3.5 m up.
    """
    assert degrees(vehicle(height=3.5, track=3.0), LEFT_DOWN) == pytest.approx(23.2, abs=0.05)


def test_loaded_truck_on_a_side_slope() -> None:
    """Giancoli, Physics: Principles with Applications, 6th ed., ch. 9 problem 63. Worked.

    2.4 m wide, CG 2.2 m up: tan(theta) = 1.2 / 2.2, 28.61 deg.
    """
    assert degrees(vehicle(height=2.2, track=2.4), RIGHT_DOWN) == pytest.approx(28.61, abs=0.005)


def test_cube_tips() -> None:
    """Halliday, Resnick and Walker, Fundamentals of Physics, statics problems. Worked.

    A cube of edge 1.2 m with its CG 0.90 m up tips at 33.69 deg, over every side.
    """
    cube = vehicle(height=0.90, wheelbase=1.2, track=1.2)
    for heading in rigid.QUARTERS:
        assert degrees(cube, heading) == pytest.approx(33.69, abs=0.005)


def test_vehicle_overturns_backward_on_a_slope() -> None:
    """Worked example 31.6, Stability of a vehicle on a slope, in an automobile engineering text
    (what-when-how.com). Inputs seen, worked: CG 1.0 m ahead of the rear axle and 1.5 m up.
    """
    car = vehicle(height=1.5, wheelbase=2.25, behind_front=1.25)
    assert degrees(car, CLIMB) == pytest.approx(33.69, abs=0.005)


def test_block_twice_as_high_as_wide() -> None:
    """Wolfson, Essential University Physics, 3rd ed., ch. 12 problem 48. Seen: 26.56 deg."""
    block = vehicle(height=1.0, wheelbase=1.0, track=1.0)
    assert degrees(block, CLIMB) == pytest.approx(26.56, abs=0.01)


def test_cylinder_topples() -> None:
    """OCR Mechanics 2, 2007, question 1. Seen: tan(alpha) = 6/10 for 20 cm high, 12 cm across.

    A round foot tips over the point of its rim downhill; a square foot of that width square on.
    """
    cylinder = vehicle(height=0.10, wheelbase=0.12, track=0.12)
    assert tilt_table_ratio(rigid.tip_angle(cylinder, CLIMB)) == pytest.approx(0.6)


# US NHTSA, New Car Assessment Program 2004, static stability factor data (open data). Data seen,
# angles worked. Inches: average track, wheelbase, CG aft of front axle, CG height; listed SSF.
MEASURED = [
    (59.1, 122.6, 50.5, 26.33, 1.123, 48.30),
    (58.7, 125.9, 56.4, 27.51, 1.067, 46.85),
    (58.2, 102.9, 42.8, 22.48, 1.295, 52.31),
]


@pytest.mark.parametrize(("track", "base", "aft", "height", "listed", "tip"), MEASURED)
def test_measured_vehicles(
    track: float, base: float, aft: float, height: float, listed: float, tip: float
) -> None:
    car = vehicle(
        height=height * INCH,
        wheelbase=base * INCH,
        behind_front=aft * INCH,
        track=track * INCH,
    )
    factor = static_stability_factor(track * INCH, height * INCH)
    assert factor == pytest.approx(listed, abs=0.004)
    assert degrees(car, LEFT_DOWN) == pytest.approx(tip, abs=0.005)
    share = driving_loads.grade_loads(car, 0.0)[0] / driving_loads.grade_loads(car, 0.0).sum()
    assert share == pytest.approx(1 - aft / base)
    assert rigid.cg_height(car, LEFT_DOWN, np.radians(tip)) / INCH == pytest.approx(
        height, rel=3e-4
    )


@pytest.mark.parametrize(("ratio", "angle"), [(0.55, 28.81), (0.80, 38.66)])
def test_tilt_table_ratios_of_quad_bikes(ratio: float, angle: float) -> None:
    """Australian quad bike safety standard 2019, published guidance. Seen."""
    assert tilt_table_ratio(np.radians(angle)) == pytest.approx(ratio, abs=2e-4)
    bike = vehicle(height=0.5, wheelbase=1.2, track=2 * ratio * 0.5)
    assert degrees(bike, LEFT_DOWN) == pytest.approx(angle, abs=0.005)


def test_half_a_g_on_the_tilt_table() -> None:
    """SAE J2180, abstract: 0.5 g corresponds to a table angle of less than about 27 deg. Seen."""
    wagon = vehicle(height=1.0, wheelbase=6.0, track=1.0)
    angle = degrees(wagon, LEFT_DOWN)
    assert tilt_table_ratio(np.radians(angle)) == pytest.approx(0.5)
    assert 26.5 < angle < 27.0


@pytest.mark.parametrize(("limit", "factor"), [(28.0, 0.532), (35.0, 0.700)])
def test_bus_stability_limits(limit: float, factor: float) -> None:
    """Singapore Road Traffic (Motor Vehicles, Construction and Use) Rules, regulation 57. Seen:
    double-deckers must stand 28 deg to either side, single-deckers 35. Worked: that is a T/2h of
    0.532 and 0.700; a bus exactly that low on its wheels has just that limit.
    """
    bus = vehicle(height=1.0, wheelbase=5.5, track=2 * factor)
    for side in (LEFT_DOWN, RIGHT_DOWN):
        assert degrees(bus, side) == pytest.approx(limit, abs=0.03)
