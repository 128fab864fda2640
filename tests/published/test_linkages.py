"""Linkages against worked values and constructions of the handbooks.

Four-bar angles: R. L. Norton, Design of Machinery, example 4-1: ground 100, crank 40, coupler 120,
rocker 80 (mm), crank at 40 deg: coupler at 20.298 deg, rocker at 57.325 deg. Roll axis: through the
points where each pair of links meets in plan, taken at their height in side view, as in W. F.
Milliken and D. L. Milliken, Race Car Vehicle Dynamics (1995), chapter 17; anti-squat of a solid
axle: slope from the contact to the side-view instant centre over CG height by wheelbase, T. D.
Gillespie, Fundamentals of Vehicle Dynamics (1992), chapter 7. A leaning spring's rate at the wheel
goes with the cosine of its lean squared: J. C. Dixon, Suspension Geometry and Computation (2009).
All from memory. A track bar's roll centre is where it crosses the middle: Sport Truck, Rear
Suspension Design (sporttruck.com, 0804st, read 2026). Parallel links neither squat nor rise where
the tangent of their angle is CG height over wheelbase: W. Shope, Mostly Suspensions, page 19
(home.earthlink.net/~whshope/id8.html, read 2026).
"""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.truck.axle_law import BY_Q, LEFT, law_of
from crossfall.truck.linkage import geometry, linkage_poses
from crossfall.truck.model import Array, Axle, Body, Links, Shocks, Suspension, Tyre, frozen

GROUND, CRANK, COUPLER, ROCKER = 100.0, 40.0, 120.0, 80.0
NOTHING = Body(0.0, frozen(np.zeros(3)), frozen(np.zeros((3, 3))))


def four_bar(crank_deg: float) -> tuple[Array, Array]:
    """Where crank and rocker end, (2,) each, by the intersection of two circles."""
    a = CRANK * np.array([np.cos(np.radians(crank_deg)), np.sin(np.radians(crank_deg))])
    o = np.array([GROUND, 0.0])
    apart = o - a
    d = np.hypot(*apart)
    along = (d * d + COUPLER**2 - ROCKER**2) / (2 * d)
    across = np.sqrt(COUPLER**2 - along**2)
    return a, a + (along * apart + across * np.array([-apart[1], apart[0]])) / d


def angle(a: Array, b: Array) -> float:
    return float(np.degrees(np.arctan2(b[1] - a[1], b[0] - a[0])))


def spread(points: list[Array], ys: list[float]) -> Array:
    """(2 n, 3) m: every point (x, z) in mm at +y and -y."""
    return (
        np.array([[p[0], s * y, p[1]] for p, y in zip(points, ys, strict=True) for s in (1, -1)])
        / 1e3
    )


def made(chassis: Array, axle: Array) -> Links:
    return Links(frozen(chassis), frozen(axle), ("",) * len(axle), 0.02, 0.02, 0.1)


@pytest.mark.parametrize("start_deg", [35.0, 45.0, 55.0])
def test_an_axle_on_links_is_the_handbooks_four_bar(start_deg: float) -> None:
    """The crank as lower and the rocker as upper links, the coupler as axle."""
    a, b = four_bar(start_deg)
    centre = (a + b) / 2
    chassis = spread([np.zeros(2) - centre, np.array([GROUND, 0.0]) - centre], [40.0, 10.0])
    axle = spread([a - centre, b - centre], [15.0, 40.0])
    there_a, there_b = four_bar(40.0)
    heave = ((there_a + there_b) / 2 - centre)[1] / 1e3
    at = linkage_poses(chassis[None], axle[None], np.array([heave]), np.zeros(1))
    assert at.closed.all()
    coupler = angle(a, b) - np.degrees(at.pitch[0])  # pitch turns z towards x
    assert coupler == pytest.approx(20.298, abs=6e-4)
    turn = np.radians(coupler)
    middle = centre + np.array([at.place[0, 0], heave]) * 1e3
    end = middle + COUPLER / 2 * np.array([np.cos(turn), np.sin(turn)])
    assert angle(np.array([GROUND, 0.0]), end) == pytest.approx(57.325, abs=6e-4)


def test_the_roll_axis_goes_through_where_each_pair_of_links_meets() -> None:
    """Lower links meet 200 mm ahead of the axle at -20 mm, upper links 100 mm behind it at 40."""
    lower, upper = np.array([200.0, 0.0, -20.0]), np.array([-100.0, 0.0, 40.0])
    ends = np.array([[0.0, 45.0, -10.0], [0.0, 20.0, 25.0]])
    chassis, axle = [], []
    for apex, end, share in ((lower, ends[0], 0.6), (upper, ends[1], -0.8)):
        for side in (1.0, -1.0):
            flip = np.array([1.0, side, 1.0])
            axle.append(flip * end)
            chassis.append(flip * (end + share * (apex - end)))
    own = made(np.array(chassis) / 1e3, np.array(axle) / 1e3)
    got = geometry(own, -0.15, 0.06, np.zeros(1), np.zeros(1))
    slope = (lower[2] - upper[2]) / (lower[0] - upper[0])
    height = 60.0 + upper[2] - slope * upper[0]
    assert got.roll_axis[0] == pytest.approx(slope, rel=1e-9)
    assert got.roll_centre[0] * 1e3 == pytest.approx(height, rel=1e-9)
    # Where the axis falls towards the front the axle steers with roll by as much.
    assert got.roll_axis[0] < 0


def test_full_anti_squat_where_the_instant_centre_lies_on_the_line_to_the_cg_height() -> None:
    """Rear axle at x = 0, wheelbase 300, CG 100 up: instant centre at (150, 50) mm gives 100 %."""
    radius, centre = 57.0, np.array([150.0, 50.0 - 57.0])
    points = [np.array([0.0, -12.0]), np.array([4.0, 26.0])]
    inner = [p + share * (centre - p) for p, share in zip(points, (0.5, 0.4), strict=True)]
    own = made(spread(inner, [30.0, 12.0]), spread(points, [45.0, 30.0]))
    got = geometry(own, 0.0, radius / 1e3, np.zeros(1), np.zeros(1))
    assert got.instant_centre[0] * 1e3 == pytest.approx([150.0, 50.0], rel=1e-9)
    assert -np.tan(got.lean[0]) / (100.0 / 300.0) == pytest.approx(1.0, rel=1e-9)


@pytest.mark.parametrize("fall", [0.0, 12.0])
def test_a_track_bars_roll_centre_is_where_it_crosses_the_middle(fall: float) -> None:
    """Three links straight along the truck, and a bar 100 mm long across it, falling so many mm."""
    axle = np.array([[0.0, 40.0, -8.0], [0.0, -40.0, -8.0], [0.0, 0.0, 26.0], [0.0, -60.0, 20.0]])
    inwards = np.array([[-90.0, 0.0, 0.0]] * 3 + [[0.0, 100.0, fall]])
    got = geometry(made((axle + inwards) / 1e3, axle / 1e3), 0.15, 0.057, np.zeros(1), np.zeros(1))
    crosses = 57.0 + 20.0 + 0.6 * fall
    assert got.roll_centre[0] * 1e3 == pytest.approx(crosses, rel=1e-9)
    assert got.roll_axis[0] == pytest.approx(0.0, abs=1e-12)  # level links steer nothing


@pytest.mark.parametrize("share", [0.5, 1.0, 1.4])
def test_parallel_links_keep_the_rear_up_at_cg_height_over_wheelbase(share: float) -> None:
    """Links that rise towards the middle of the truck by a share of that: as much anti-squat."""
    height, wheelbase = 110.0, 313.0
    points = [np.array([0.0, -10.0]), np.array([2.0, 24.0])]
    way = 80.0 * np.array([1.0, share * height / wheelbase])
    own = made(spread([p + way for p in points], [30.0, 12.0]), spread(points, [45.0, 30.0]))
    got = geometry(own, -wheelbase / 2e3, 0.057, np.zeros(1), np.zeros(1))
    assert -np.tan(got.lean[0]) / (height / wheelbase) == pytest.approx(share, rel=1e-9)
    assert not np.isfinite(got.instant_centre[0]).all() or abs(got.instant_centre[0, 0]) > 1e3


@pytest.mark.parametrize(("lean_deg", "left"), [(14.0, 0.941), (30.0, 0.75), (45.0, 0.5)])
def test_a_leaning_shock_gives_the_square_of_its_cosine(lean_deg: float, left: float) -> None:
    lean = np.radians(lean_deg)
    foot = np.array([[0.0, 0.05, 0.01], [0.0, -0.05, 0.01]])
    head = foot + 0.1 * np.array([0.0, 0.0, np.cos(lean)]) + [0.1 * np.sin(lean), 0.0, 0.0]
    shocks = Shocks(frozen(head), frozen(foot))
    suspension = Suspension(300.0, 0.1, 8.0, 0.08, 0.02, 0.02, shocks=shocks)
    tyre = Tyre(0.057, 0.04, 0.0, 5000.0, 3000.0, 3000.0)
    axle = Axle(0.15, 0.176, tyre, suspension, NOTHING, (NOTHING, NOTHING))
    ratio = law_of(axle).at(np.zeros(1), np.zeros(1))[LEFT, BY_Q, 0]
    assert ratio**2 == pytest.approx(left, abs=1e-3)
