"""Driving across slopes, held against statics and against what must be so."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from crossfall.statics.compliant import tips
from crossfall.trials.drive import Drive
from crossfall.trials.grounds.plane import Plane
from crossfall.trials.grounds.rough import Rough
from crossfall.trials.grounds.stone import Stone
from crossfall.trials.slope import SlopeTrial, cross_slope
from crossfall.truck.build import load_text, load_truck
from crossfall.truck.demos import demo_folder
from crossfall.truck.model import Truck
from numbered_files import numbered_text
from support import make_truck

SIDE = math.pi / 2
BAR = math.radians(0.5)
UNTWISTED = Drive(shaft_ratio=1e9)  # shafts have a handedness, and braked statics no shafts


def soft() -> Truck:
    """Its springs go slack on the way up, and it snaps to its droop stops."""
    return make_truck(contact_half_width=0.006, spring_rate=200.0, chassis_cg=(-0.01, 0.0, 0.13))


def creep(truck: Truck, slope: float, **options: object) -> SlopeTrial:
    return cross_slope(truck, slope, speed=0.05, distance=0.06, **options)  # type: ignore[arg-type]


@pytest.mark.parametrize("truck", ["bramble", "thistle", "burdock", soft()])
def test_creeping_across_a_plane_it_rolls_within_half_a_degree_of_the_compliant_answer(
    truck: str | Truck,
) -> None:
    if isinstance(truck, str):
        truck = load_text(numbered_text(truck), demo_folder() / f"{truck}.toml").truck
    tip = float(tips(truck, np.array([SIDE])).tip[0])
    assert creep(truck, tip - BAR, drive=UNTWISTED).outcome == "crossed"
    assert creep(truck, tip + BAR, drive=UNTWISTED).outcome == "rolled over"


@pytest.mark.parametrize("name", ["bramble", "thistle", "burdock"])
def test_on_links_too_it_rolls_near_the_compliant_answer(name: str) -> None:
    """Burdock would go over a degree later were its axles driven on straight lines. The 0.7 deg
    were set after looking at these three, of which bramble goes over 0.6 early."""
    truck = load_truck(name).truck
    tip = float(tips(truck, np.array([SIDE])).tip[0])
    bar = math.radians(0.7)
    assert creep(truck, tip - bar, drive=UNTWISTED).outcome == "crossed"
    assert creep(truck, tip + bar, drive=UNTWISTED).outcome == "rolled over"


def test_it_slides_where_its_grip_ends() -> None:
    """At atan(mu), whatever the loads; wheels that roll across a slope hold as if they stood."""
    truck, mu = make_truck(), 0.5
    slides = math.atan(mu)
    assert creep(truck, slides - math.radians(1.0), grip=mu).outcome == "crossed"
    slid = creep(truck, slides + math.radians(1.0), grip=mu)
    assert slid.outcome == "slid"
    assert slid.slid > 0.05
    assert slid.journey.sideways[-1] > 0.05  # heading 90 has downhill on the left


def test_steeper_leaves_less_load_uphill_and_less_margin() -> None:
    trials = [creep(make_truck(), math.radians(s)) for s in (0.0, 15.0, 30.0)]
    loads = [t.least_load for t in trials]
    margins = [t.least_margin for t in trials]
    assert loads == sorted(loads, reverse=True)
    assert trials[2].least_wheel in (1, 3)  # heading 90 has the right side uphill
    # The truck leans as well, so that it loses more than the slope itself.
    assert margins[0] - margins[1] > math.radians(14.0)
    assert margins[1] - margins[2] > math.radians(14.5)


def test_the_other_side_is_the_mirror_image() -> None:
    truck = make_truck()
    left = creep(truck, 0.4, drive=UNTWISTED)
    right = creep(truck, 0.4, heading=-SIDE, drive=UNTWISTED)
    swapped = right.journey.record.loads[:, [1, 0, 3, 2]]
    assert swapped[-1] == pytest.approx(left.journey.record.loads[-1], rel=0.02, abs=0.05)
    assert right.least_margin == pytest.approx(left.least_margin, abs=math.radians(0.2))


def test_a_stone_under_the_uphill_wheels_costs_margin_and_in_the_end_the_truck() -> None:
    truck, slope = make_truck(), math.radians(26.0)

    def over(ground: Plane | Stone) -> SlopeTrial:
        return cross_slope(truck, slope, speed=0.25, distance=0.22, ground=ground, grip=1.5)

    plane, small, big = over(Plane()), over(Stone(0.010)), over(Stone(0.035))
    assert plane.outcome == small.outcome == "crossed"
    assert small.least_margin < plane.least_margin - math.radians(2.0)
    assert small.least_load < plane.least_load
    assert big.outcome == "rolled over"


def test_rough_ground_is_the_same_every_time_and_takes_load_off_wheels() -> None:
    def over(seed: int) -> SlopeTrial:
        ground = Rough(0.004, seed=seed)
        return cross_slope(make_truck(), 0.2, speed=0.4, distance=0.15, ground=ground, grip=1.0)

    first, again = over(2), over(2)
    assert first.outcome == "crossed"
    assert np.array_equal(first.journey.record.loads, again.journey.record.loads)
    assert np.array_equal(first.journey.record.chassis, again.journey.record.chassis)
    plane = cross_slope(make_truck(), 0.2, speed=0.4, distance=0.15, grip=1.0)
    assert first.least_load < plane.least_load


def test_a_truck_too_weak_for_its_stone_is_stuck() -> None:
    trial = cross_slope(
        make_truck(),
        0.1,
        speed=0.3,
        distance=0.25,
        ground=Stone(0.03),
        drive=Drive(thrust=0.05),
        grip=1.0,
    )
    assert trial.outcome == "stuck"
    assert trial.travelled < 0.1


@pytest.mark.parametrize("driven", [(True, False), (False, True)])
def test_one_driven_axle_gets_across_as_well(driven: tuple[bool, bool]) -> None:
    trial = creep(replace(make_truck(), driven=driven), 0.3, grip=0.8)
    assert trial.outcome == "crossed"
    free = slice(2, 4) if driven[0] else slice(0, 2)
    assert not trial.journey.torque[-5:, free].any()


@pytest.mark.parametrize("wrong", [{"speed": 0.0}, {"slope": -0.1}, {"slope": 2.0}])
def test_what_is_no_crossing_is_refused(wrong: dict[str, float]) -> None:
    with pytest.raises(ValueError, match="no way across"):
        cross_slope(make_truck(), **{"slope": 0.2, **wrong})
