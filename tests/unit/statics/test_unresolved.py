"""Where the equilibrium cannot be followed there is an answer all the same."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from crossfall.answers.conditions import conditions
from crossfall.answers.ranges import check_followed
from crossfall.statics import compliant
from crossfall.statics.compliant import REASONS, tips
from crossfall.truck.errors import InputError
from support import make_truck


def test_tyres_that_stick_and_slip_without_end_leave_an_angle_between_its_neighbours() -> None:
    """Hard springs on soft tyres that hold at any slope: on this very heading the path ends."""
    truck = make_truck(
        wheelbase=0.40392769038218346,
        tracks=(0.19676826690078136, 0.2574735826599283),
        chassis_mass=0.9772472133173916,
        chassis_cg=(0.006777378379830029, -0.007902843380910698, 0.22322984809059238),
        axle_mass=0.7166022206069304,
        wheel_mass=0.09175137302856361,
        radius=0.07905101182314103,
        contact_half_width=0.021961670457235453,
        tyre_stiffness=54249.15341843557,
        tangential=0.15221574394459408,
        spring_rate=18510.580098676666,
        spring_spacing=0.0634248414005689,
        roll_centre_height=0.0596655052579022,
        bump=0.0072129492665198745,
        droop=0.041073939250165364,
        heave_lean=(-0.22531552410535005, -0.11890955155589639),
    )
    heading = np.radians(350.4453181242808)
    found = tips(truck, heading + np.array([-0.02, 0.0, 0.02]), 5.0)
    (low, high), at = sorted(found.tip[[0, 2]]), found.tip[1]
    assert low < at < high
    assert REASONS[found.reason[1]] != "unresolved"
    lifts = found.lift[1][np.isfinite(found.lift[1])]
    assert (lifts < at).all()


def test_where_most_are_lost_none_is_looked_for_aside(monkeypatch) -> None:
    """On tyres as hard as iron that took minutes, and was no better."""
    truck, asked, missing = make_truck(), [], [0]

    def lost(builds, headings, grip, railed, who):
        asked.append(len(headings))
        found = followed(builds, headings, grip, railed, who)
        return replace(
            found, tip=np.where(np.arange(len(headings)) < missing[0], np.nan, found.tip)
        )

    followed = compliant._followed
    monkeypatch.setattr(compliant, "_followed", lost)
    headings = np.radians(np.arange(0.0, 360.0, 15.0))
    for missing[0], calls in ((20, [24]), (3, [24, 3, 3, 3, 3])):
        asked.clear()
        compliant.tips(truck, headings, 5.0)
        assert asked == calls


def test_a_truck_whose_way_cannot_be_followed_is_refused_in_a_sentence() -> None:
    truck = make_truck(tyre_stiffness=4e5)
    asked = conditions(truck, [0.0, np.pi / 2])
    check_followed(truck, asked, np.array([0.7, 0.6]))
    with pytest.raises(InputError, match=r"without end at heading 90.*400 N/mm"):
        check_followed(truck, asked, np.array([0.7, np.nan]))
