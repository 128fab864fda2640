"""The two stability measures against their vector definitions and against brute force."""

from __future__ import annotations

import numpy as np
import pytest

import stability_measures as stability
from crossfall.statics import rigid
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Array, Truck
from support import make_truck

HEADINGS = np.radians([0.0, 25.0, 90.0, 140.0, 180.0, 245.0, 270.0])
ENDS = ((3, 2), (2, 0), (0, 1), (1, 3))  # corners of the rear, left, front, right edge


def odd_truck() -> Truck:
    return make_truck(
        tracks=(0.150, 0.185), contact_half_width=0.008, chassis_cg=(0.012, 0.006, 0.105)
    )


def corners(truck: Truck) -> Array:
    return np.column_stack([rigid.tip_points(truck), np.zeros(4)])


@pytest.mark.parametrize("heading", HEADINGS)
@pytest.mark.parametrize("degrees", [0.0, 20.0, 60.0])
def test_force_angle_by_its_vectors(heading: float, degrees: float) -> None:
    truck = odd_truck()
    body, points = whole(truck), corners(truck)
    pull = stability.table_gravity(heading, np.radians(degrees)) + np.array([0.5, -0.3, 0.2])
    force = body.mass * pull
    found = stability.force_angle(truck, pull)
    for i, (start, end) in enumerate(ENDS):
        along = points[end] - points[start]
        along /= np.linalg.norm(along)
        square = np.eye(3) - np.outer(along, along)
        leg, f = square @ (points[end] - body.cg), square @ force
        leg_unit, f_unit = leg / np.linalg.norm(leg), f / np.linalg.norm(f)
        turn = np.cross(leg_unit, f_unit) @ along
        outward = np.append(rigid.normals(truck)[i], 0.0)
        # The force lies inward of the leg: stable, angle positive.
        sign = np.sign(turn) * np.sign(np.cross(outward, [0, 0, -1.0]) @ along)
        angle = sign * np.arccos(f_unit @ leg_unit)
        arm = np.linalg.norm(-leg + (leg @ f_unit) * f_unit)
        assert found.angle[i] == pytest.approx(angle, abs=1e-9)
        assert found.arm[i] == pytest.approx(arm, abs=1e-12)
        assert found.force[i] == pytest.approx(np.linalg.norm(f), rel=1e-12)
    assert found.measure == pytest.approx(np.min(found.angle * found.arm * found.force))


@pytest.mark.parametrize("heading", HEADINGS)
def test_both_vanish_at_the_tip_and_only_there(heading: float) -> None:
    truck = odd_truck()
    tip = float(rigid.tip_angle(truck, heading))
    for share in (0.0, 0.5, 0.99):
        pull = stability.table_gravity(heading, share * tip)
        assert stability.force_angle(truck, pull).measure > 0
        assert np.all(stability.energy_margin(truck, heading, share * tip) > 0)
    edge = int(rigid.tip_edge(truck, heading))
    at_tip = stability.force_angle(truck, stability.table_gravity(heading, tip))
    assert at_tip.angle[edge] == pytest.approx(0.0, abs=1e-12)
    assert stability.energy_margin(truck, heading, tip)[edge] == pytest.approx(0.0, abs=1e-15)
    past = stability.force_angle(truck, stability.table_gravity(heading, tip + 0.05))
    assert past.measure < 0
    assert stability.energy_margin(truck, heading, tip + 0.05)[edge] == 0.0


@pytest.mark.parametrize("heading", HEADINGS)
@pytest.mark.parametrize("degrees", [0.0, 20.0])
def test_energy_margin_is_the_climb_of_the_cg(heading: float, degrees: float) -> None:
    """Turn the CG about each edge in small steps and see how far it must rise."""
    truck, theta = odd_truck(), np.radians(degrees)
    body, points = whole(truck), corners(truck)
    up = -stability.table_gravity(heading, theta) / GRAVITY
    margin = stability.energy_margin(truck, heading, theta)
    turns = np.linspace(0.0, np.pi / 2, 20_001)
    for i, (start, end) in enumerate(ENDS):
        along = points[end] - points[start]
        along /= np.linalg.norm(along)
        leg = body.cg - points[start]
        outward = np.append(rigid.normals(truck)[i], 0.0)
        if np.cross(along, leg) @ outward < 0:
            along = -along
        # Rodrigues' rotation about the edge, outward.
        flat = leg - (leg @ along) * along
        moved = (
            np.cos(turns)[:, None] * flat
            + np.sin(turns)[:, None] * np.cross(along, flat)
            + (leg @ along) * along
        )
        rise = np.max(moved @ up) - leg @ up
        assert margin[i] == pytest.approx(body.mass * GRAVITY * rise, abs=1e-6)
