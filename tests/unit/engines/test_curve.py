"""What makes up for straight joints: the true pose, and the true work on heave and roll."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from crossfall.engines.axle_forces import AXLE, make_up, true_place
from crossfall.engines.curve import set_curve
from crossfall.truck.axle_law import axle_law_values, law_at, law_of
from crossfall.truck.massprops import unsprung
from crossfall.truck.model import Array
from linkages import linked
from support import make_truck

SHARE = 0.01
TRUCK = linked(make_truck(), "three links and a track bar", "wishbone")
TURN = Rotation.from_rotvec([0.1, -0.3, 0.7]).as_matrix()
BASE, GRAVITY = np.array([0.02, -0.05, 0.01]), np.array([3.0, 1.0, -9.0])
HEAVE, ROLL = 0.011, -0.12


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


class Curve:
    """An axle on its true path, and what its joints are given."""

    def __init__(self, index: int, heave: float, roll: float) -> None:
        self.axle = np.zeros(1, AXLE).view(np.recarray)[0]
        law = set_curve(self.axle, TRUCK, index, SHARE)
        turn, origin, cg = straight(index, heave, roll)
        self.at = law_at(law, heave, roll, np.empty((7, 3)), np.empty(16))
        places = tuple(cg.tolist()), tuple(origin.tolist()), tuple(turn.ravel().tolist())
        self.true = true_place(self.axle, self.at, *places, heave, roll)
        self.turn, self.origin = self.true[:2]

    def make_up(self, *given: Array) -> tuple[tuple[float, ...], tuple[float, float]]:
        return make_up(self.axle, self.at, self.true, *(tuple(v.tolist()) for v in given))


def true(index: int, point: Array, heave: float, roll: float) -> Array:
    """Where a point of the axle is on its links, table axes."""
    turn, shift = law_of(TRUCK.axles[index]).motion(heave, roll)
    return np.asarray(BASE + TURN @ (turn @ point + shift))


@pytest.mark.parametrize("index", [0, 1])
def test_it_stands_where_its_links_have_it(index: int) -> None:
    curve, axle = Curve(index, HEAVE, ROLL), TRUCK.axles[index]
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
    curve = Curve(index, HEAVE, ROLL)
    given, more = curve.make_up(force, moment, GRAVITY)

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
    given, _ = Curve(0, HEAVE, ROLL).make_up(np.zeros(3), np.zeros(3), GRAVITY)
    engine = np.cross(origin, SHARE * weight) + np.cross(cg, (1 - SHARE) * weight)
    wanted = np.cross(true(0, body.cg, HEAVE, ROLL), weight)
    assert engine + given == pytest.approx(wanted, abs=1e-12)


@pytest.mark.parametrize("terms", [2, 5, 9, 14, 20])
def test_a_law_worked_out_here_is_the_law(terms: int) -> None:
    rng = np.random.default_rng(terms)
    coefficients, q, r = rng.normal(size=(7, terms)), 0.4, -0.7
    exact = axle_law_values(coefficients, np.array(q), np.array(r))
    found = law_at(coefficients, q, r, np.empty((7, 6)), np.empty(16))
    assert found == pytest.approx(exact, rel=1e-12)
    narrow = law_at(coefficients, q, r, np.empty((7, 3)), np.empty(16))
    np.testing.assert_array_equal(narrow, found[:, :3])
