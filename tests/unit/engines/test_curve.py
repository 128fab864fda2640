"""What makes up for straight joints: the true pose, and the true work on heave and roll."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from crossfall.engines.curve import Curve
from crossfall.truck.axle_law import NEAR, law_of
from crossfall.truck.massprops import unsprung
from crossfall.truck.model import Array
from linkages import linked
from support import make_truck

SHARE = 0.01
TRUCK = linked(make_truck(), "three links and a track bar", "wishbone")
TURN = Rotation.from_rotvec([0.1, -0.3, 0.7]).as_matrix()
BASE, GRAVITY = np.array([0.02, -0.05, 0.01]), np.array([3.0, 1.0, -9.0])
HEAVE, ROLL = 110 * NEAR[0], -60 * NEAR[1]  # in the middle of a cell, where the series is exact


def straight(index: int, heave: float, roll: float) -> tuple[Array, Array, Array]:
    """Where an engine's joints have the axle: its axes, its roll centre and its CG, table axes."""
    axle = TRUCK.axles[index]
    s, body = axle.suspension, unsprung(TRUCK, index)
    centre = np.array([axle.x, 0.0, s.roll_centre_height])
    along = np.array([np.sin(s.heave_lean), 0.0, np.cos(s.heave_lean)])
    turn = TURN @ Rotation.from_rotvec([roll, 0.0, 0.0]).as_matrix()
    origin = BASE + TURN @ (centre + heave * along)
    own = (body.cg - SHARE * centre) / (1 - SHARE)  # less the share that stays on the roll axis
    return turn, origin, origin + turn @ (own - centre)


def followed(index: int, heave: float, roll: float) -> Curve:
    curve = Curve(TRUCK, index, SHARE)
    turn, origin, cg = straight(index, heave, roll)
    curve.follow(tuple(cg), tuple(origin), turn.ravel().tolist(), heave, roll)
    return curve


def true(index: int, point: Array, heave: float, roll: float) -> Array:
    """Where a point of the axle is on its links, table axes."""
    turn, shift = law_of(TRUCK.axles[index]).motion(heave, roll)
    return np.asarray(BASE + TURN @ (turn @ point + shift))


@pytest.mark.parametrize("index", [0, 1])
def test_it_stands_where_its_links_have_it(index: int) -> None:
    curve, axle = followed(index, HEAVE, ROLL), TRUCK.axles[index]
    centre = np.array([axle.x, 0.0, axle.suspension.roll_centre_height])
    turn, _ = law_of(axle).motion(HEAVE, ROLL)
    assert curve.origin == pytest.approx(true(index, centre, HEAVE, ROLL), abs=1e-12)
    assert np.reshape(curve.turn, (3, 3)) == pytest.approx(TURN @ turn, abs=1e-12)


@pytest.mark.parametrize("index", [0, 1])
def test_the_joints_get_the_work_that_tyres_and_weight_do_on_the_true_path(index: int) -> None:
    force, place = np.array([1.0, -4.0, 7.0]), np.array([0.13, 0.08, 0.0])
    body, step = unsprung(TRUCK, index), 1e-6
    turn, origin, cg = straight(index, HEAVE, ROLL)
    touched = true(index, place, HEAVE, ROLL)
    moment = np.cross(touched - cg, force)
    curve = followed(index, HEAVE, ROLL)
    given, more = curve.make_up(tuple(force), tuple(moment), tuple(GRAVITY))

    def apart(by: Array, at: Array, engine: bool) -> Array:
        """Rate of a point, of the engine's axle or of the true one, by heave and roll."""
        ends = []
        for sign in (1, -1):
            q, r = np.array([HEAVE, ROLL]) + sign * step * by
            if engine:
                turned, now, _ = straight(index, q, r)
                ends.append(now + turned @ turn.T @ (at - origin))
            else:
                ends.append(true(index, at, q, r))
        return (ends[0] - ends[1]) / (2 * step)

    weight = body.mass * GRAVITY
    for by, extra in zip(np.eye(2), more, strict=True):
        wanted = apart(by, place, False) @ force + apart(by, body.cg, False) @ weight
        # The engine: the force at the axle's CG with its moment, as a couple of two forces.
        spin = apart(by, cg + np.eye(3)[0], True), apart(by, cg + np.eye(3)[1], True)
        still = apart(by, cg, True)
        turning = np.array([0.0, -(spin[0] - still)[2], (spin[0] - still)[1]])
        turning[0] = (spin[1] - still)[2]
        got = still @ force + turning @ np.array(given) + still @ ((1 - SHARE) * weight)
        got += apart(by, origin, True) @ (SHARE * weight)
        # `given` holds the weight's couple already, so that only the curve is left.
        assert got + extra == pytest.approx(wanted, abs=1e-7)


def test_the_chassis_takes_the_weight_where_it_truly_is() -> None:
    _, origin, cg = straight(0, HEAVE, ROLL)
    body = unsprung(TRUCK, 0)
    weight = body.mass * GRAVITY
    given, _ = followed(0, HEAVE, ROLL).make_up((0.0,) * 3, (0.0,) * 3, tuple(GRAVITY))
    engine = np.cross(origin, SHARE * weight) + np.cross(cg, (1 - SHARE) * weight)
    wanted = np.cross(true(0, body.cg, HEAVE, ROLL), weight)
    assert engine + given == pytest.approx(wanted, abs=1e-12)
