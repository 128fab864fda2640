"""A course: its way straightened out, and what becomes of a truck on it."""

from __future__ import annotations

from math import degrees, hypot, pi, radians, tan

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from crossfall.app.replay import body_poses
from crossfall.trials.course import Course, beside, drive_course, straightened
from crossfall.trials.drive import Drive
from crossfall.trials.grounds.stone import stone_foot
from crossfall.trials.grounds.strewn import Hump, LaidStone, Strewn
from crossfall.trials.slope import cross_slope
from crossfall.truck.assemble import BODIES
from crossfall.truck.build import load_truck

BRAMBLE = load_truck("bramble").truck


def across(slope_deg: float, ground: Strewn | None = None, length: float = 0.6) -> Course:
    """Straight across with the left side down, as `cross_slope` drives."""
    along = np.array([0.0, length])
    return Course(radians(slope_deg), along, np.full(2, pi / 2), ground or Strewn(), 0.15)


@pytest.mark.parametrize(
    ("to", "heading_deg"),
    [((0, 1), 0), ((-1, 0), 90), ((0, -1), 180), ((1, 0), 270), ((-1, 1), 45)],
)
def test_a_way_has_the_headings_of_the_table(to: tuple[float, float], heading_deg: float) -> None:
    along, heading, places = straightened(np.array([(0.0, 0.0), to]))
    assert np.allclose(np.degrees(heading) % 360, heading_deg)
    assert along[-1] == pytest.approx(hypot(*to))
    assert places[-1] == pytest.approx(to)


def test_corners_are_rounded_off_inside_them() -> None:
    corners = np.array([(0.0, 0.0), (1.0, 0.0), (1.0, 1.0)])
    along, heading, places = straightened(corners)
    assert np.hypot(2, 0) > along[-1] > hypot(1, 1), (
        "shorter than round the corner, longer than not"
    )
    assert np.abs(np.diff(heading)).max() < radians(15), "no jump"
    assert places.max() <= 1.0 + 1e-12
    assert degrees(heading[-1] - heading[0]) == pytest.approx(90, abs=3)


def test_a_way_back_over_north_has_no_jump() -> None:
    _, heading, _ = straightened(np.array([(0.0, 0.0), (0.2, 1.0), (-0.2, 2.0), (-1.0, 1.5)]))
    assert np.abs(np.diff(heading)).max() < radians(30)


def test_a_place_beside_the_way_is_found_again() -> None:
    way = straightened(np.array([(0.0, 0.0), (1.0, 1.0)]))
    at, left, heading = beside(np.array([0.5 - 0.1, 0.5 + 0.1]), *way)
    assert at == pytest.approx(hypot(0.5, 0.5), abs=1e-9)
    assert left == pytest.approx(hypot(0.1, 0.1), abs=1e-9)
    assert degrees(heading) % 360 == pytest.approx(315)


@pytest.mark.bullet
@pytest.mark.parametrize("slope_deg", [20.0, 40.0])
def test_straight_across_it_ends_as_a_drive_across_does(slope_deg: float) -> None:
    """Well below and well above where it goes over, the two ways to drive end alike."""
    mine = drive_course(BRAMBLE, across(slope_deg), grip=0.9).outcome
    theirs = cross_slope(BRAMBLE, radians(slope_deg), distance=0.6, grip=0.9).outcome
    assert (mine, theirs) in {("comes through", "crossed"), ("goes over", "rolled over")}


@pytest.mark.bullet
def test_it_slides_where_the_grip_does_not_hold() -> None:
    """tan 25 deg = 0.47: no truck stands on a grip of 0.35 there, and every one on 0.9."""
    assert tan(radians(25)) > 0.35
    found = drive_course(BRAMBLE, across(25.0), grip=0.35)
    assert found.outcome == "slides"
    assert found.events[-1].what == "slides"
    assert found.journey.sideways[-1] > 0.05, "m, downhill, which is to its left"


@pytest.mark.bullet
@pytest.mark.parametrize("name", ["bramble", "burdock", "thistle"])
def test_it_is_steered_along_its_line(name: str) -> None:
    """Without a hand on the wheel the thistle creeps 20 mm and more downhill here. The 10 mm, a
    third of a tyre's width, were set after looking."""
    truck = load_truck(name).truck
    found = drive_course(truck, across(24.0, length=1.6), grip=0.9)
    assert found.outcome == "comes through"
    assert np.abs(found.journey.sideways).max() < 0.010
    steered = [n for n in found.journey.record.joint_names if n.endswith("_steer")]
    assert steered == ["front_left_steer", "front_right_steer"]


def test_steered_wheels_turn_about_their_middles_in_a_replay() -> None:
    angle, still = 0.3, np.array([[0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 1.0]])
    joints = {"front_left_steer": np.array([angle])}
    poses = body_poses(BRAMBLE, still, joints, np.zeros((1, 4, 3)))[0]
    left, right = (BODIES.index(f"front {side}") for side in ("left", "right"))
    assert np.allclose(poses[right], still[0])
    turn, axle = Rotation.from_quat(poses[left, 3:]), BRAMBLE.front
    assert np.allclose(turn.as_rotvec(), (0.0, 0.0, angle)), "to the left is anticlockwise"
    hub = (axle.x, axle.track / 2, axle.tyre.radius)
    assert np.allclose(turn.apply(hub) + poses[left, :3], hub)


@pytest.mark.bullet
def test_wheels_lift_over_a_stone_and_where_they_do_is_told() -> None:
    """A stone nearly as high as the wheel's middle under the uphill front wheel: the wheel behind
    it comes off, and over it goes."""
    ahead, side = 0.4, -BRAMBLE.front.track / 2
    stone = LaidStone((ahead, side), 0.055, 0.05)
    assert drive_course(BRAMBLE, across(20.0), grip=0.9).events == ()
    found = drive_course(BRAMBLE, across(20.0, Strewn(stones=(stone,))), grip=0.9)
    assert found.outcome == "goes over"
    first, *_, last = found.events
    assert (first.what, first.wheel, last.what) == ("lifts", 3, "goes over")
    front = first.at + BRAMBLE.front.x
    reach = stone_foot(stone.height) + BRAMBLE.front.tyre.radius
    assert ahead - reach < front < ahead + reach
    assert all(event.end > event.begin for event in found.events)


@pytest.mark.bullet
def test_over_a_hump_the_truck_rises_by_its_height() -> None:
    hump = Hump((0.45, 0.0), 0.0, radians(20), 0.2, 0.15, 0.5)
    found = drive_course(BRAMBLE, across(0.0, Strewn(humps=(hump,)), 1.0), grip=0.9)
    assert found.outcome == "comes through"
    # Its middle stands lower than its wheels do by what a top shorter than the wheelbase lacks.
    rise = 0.2 * tan(hump.angle)
    highest = found.journey.record.chassis[:, 2].max()
    assert 0.5 * rise < highest < rise + 0.01
    x = found.journey.record.chassis[found.journey.record.chassis[:, 2].argmax(), 0]
    assert x == pytest.approx(0.45, abs=0.1)


@pytest.mark.bullet
def test_a_hump_lies_askew_as_it_is_turned() -> None:
    """The wheel whose end of an oblique foot is nearer rises first."""
    hump = Hump((0.5, 0.0), radians(25), radians(20), 0.2, 0.2, 0.6)
    untwisted = Drive(shaft_ratio=1e9)  # setting off, its shafts alone lean it by a degree
    course = across(0.0, Strewn(humps=(hump,)), 0.35)
    found = drive_course(BRAMBLE, course, grip=0.9, drive=untwisted)
    w, x = found.journey.record.chassis[:, 6], found.journey.record.chassis[:, 3]
    roll = 2 * np.arctan2(x, w)
    first = roll[np.abs(roll) > radians(1)][0]
    assert first > 0, "turned to the left, its foot comes nearer on the left: left side up"


def test_what_makes_no_course_is_refused() -> None:
    with pytest.raises(ValueError, match="no length"):
        straightened(np.array([(0.0, 0.0), (0.0, 0.0)]))
    with pytest.raises(ValueError, match="does not go on"):
        Course(0.1, np.array([0.0, 0.0]), np.zeros(2), Strewn(), 0.2)
    with pytest.raises(ValueError, match="no stone"):
        LaidStone((0, 0), -0.01, 0.05)
    with pytest.raises(ValueError, match="no ramp"):
        Hump((0, 0), 0, radians(70), 0.1, 0.1, 0.1)
