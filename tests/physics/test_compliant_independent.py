"""The compliant answer against a second, plain way of working it out.

Positions only: every load is virtual work by finite differences, the rim's lowest point is found
by its angle, equilibria come from scipy.optimize.root, and whether the truck stands is seen by
letting it move, overdamped, with scipy.integrate.solve_ivp. No derivative, flag, step or equation
of the package is used; only the truck and its level loads are the same.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pytest
from scipy.integrate import solve_ivp
from scipy.optimize import root

from crossfall.statics.compliant import tips
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Array, Truck
from crossfall.truck.ride import spring_preloads, tyre_loads
from support import make_truck

STEP = 1e-6


def turned(axis: int, angle: Array) -> Array:
    """(..., 3, 3) rotations about x (0), y (1) or z (2)."""
    out = np.zeros((*np.shape(angle), 3, 3))
    i, j = ((1, 2), (2, 0), (0, 1))[axis]
    out[..., axis, axis] = 1.0
    out[..., i, i] = out[..., j, j] = np.cos(angle)
    out[..., j, i] = np.sin(angle)
    out[..., i, j] = -out[..., j, i]
    return out


@dataclass(frozen=True)
class Plain:
    """A truck on a heading, its tyres holding where they touched; SI.

    x is x, y, z, yaw, pitch, roll, then heave and roll of each axle. A tyre pulls until the load on
    it is gone: with a grip of 50 in the package, which comes to the same.
    """

    truck: Truck
    heading: float

    def gravity(self, theta: float) -> Array:
        down = np.array([-np.cos(self.heading), np.sin(self.heading), 0.0])
        return np.sin(theta) * down - np.cos(theta) * np.array([0.0, 0.0, 1.0])

    def frames(self, x: Array) -> tuple[Array, Array]:
        """(..., 3, 3, 3) turns and (..., 3, 3) shifts of front axle, rear axle and chassis at
        x (..., 10): a point p at ride height is now at turn p + shift."""
        body = turned(2, x[..., 3]) @ turned(1, x[..., 4]) @ turned(0, x[..., 5])
        turns, shifts = np.empty((*body.shape[:-2], 3, 3, 3)), np.zeros((*body.shape[:-2], 3, 3))
        turns[..., 2, :, :] = body
        for i, axle in enumerate(self.truck.axles):
            s = axle.suspension
            centre = np.array([axle.x, 0.0, s.roll_centre_height])
            along = np.array([np.sin(s.heave_lean), 0.0, np.cos(s.heave_lean)])
            inner = turned(0, x[..., 7 + 2 * i])
            inside = centre + x[..., 6 + 2 * i, None] * along - inner @ centre
            turns[..., i, :, :] = body @ inner
            shifts[..., i, :] = (body @ inside[..., None])[..., 0]
        shifts += x[..., None, :3]
        return turns, shifts

    def wheels(self, x: Array, theta: float) -> list[tuple[int, Array, Array]]:
        """(axle, point in the axle's axes, force on it) of every tyre and of every wheel."""
        g, found, (turns, shifts) = self.gravity(theta), [], self.frames(x)
        for w, ground in enumerate(tyre_loads(self.truck)):
            i, side = w // 2, 1 - 2 * (w % 2)
            axle = self.truck.axles[i]
            wheel, r = axle.wheels[w % 2], axle.tyre.radius
            k = np.array([axle.tyre.longitudinal, axle.tyre.lateral, axle.tyre.stiffness])
            hub = np.array([axle.x, side * axle.track / 2, r])
            turn, shift = turns[i], shifts[i]
            weight = wheel.mass * GRAVITY
            angle = np.arctan2(-turn[2, 2], -turn[2, 0])  # of the rim's lowest point
            rolled = -(angle + np.pi / 2)  # nose down positive
            low = r * np.array([np.cos(angle), 0.0, np.sin(angle)])
            rim = turn @ (hub + low) + shift
            # Where it touched, but that a held wheel rolls along as its axle pitches.
            ahead = np.array([np.cos(x[3]), np.sin(x[3]), 0.0])
            touch = np.array([hub[0], hub[1], 0.0]) + r * rolled * ahead
            give = turn.T @ (touch - rim)
            spring = k * give + np.array([0.0, 0.0, ground - weight])
            force = turn @ spring - weight * g
            if force[2] < 0:
                give = (weight * (turn.T @ g) - np.array([0.0, 0.0, ground - weight])) / k
                force = np.zeros(3)
            found.append((i, hub + low + give, force))
            found.append((i, wheel.cg + give, weight * g))
        return found

    def spring_force(self, x: Array) -> Array:
        """(10,) what springs, stops and bars do."""
        out, preload = np.zeros(10), spring_preloads(self.truck)
        for c in range(4):
            i, side = c // 2, 1 - 2 * (c % 2)
            s = self.truck.axles[i].suspension
            travel = x[6 + 2 * i] + side * s.spring_spacing / 2 * x[7 + 2 * i]
            stop = 100.0 * s.spring_rate
            force = max(0.0, preload[c] + s.spring_rate * travel)
            force += stop * (max(0.0, travel - s.bump) + min(0.0, travel + s.droop))
            out[6 + 2 * i] -= force
            out[7 + 2 * i] -= force * side * s.spring_spacing / 2
        for i in (0, 1):
            out[7 + 2 * i] -= self.truck.axles[i].suspension.anti_roll * x[7 + 2 * i]
        return out

    def loads(self, x: Array, theta: float) -> Array:
        """(10,) by virtual work of every force on a point that moves with its body."""
        g, t = self.gravity(theta), self.truck
        tyred = self.wheels(x, theta)
        bodies = [2, 0, 1, *(i for i, _, _ in tyred)]
        points = np.array([t.chassis.cg, *(a.body.cg for a in t.axles), *(w[1] for w in tyred)])
        weights = [GRAVITY * m * g for m in (t.chassis.mass, *(a.body.mass for a in t.axles))]
        forces = np.array([*weights, *(f for _, _, f in tyred)])
        turns, shifts = self.frames(np.concatenate([x + STEP * np.eye(10), x - STEP * np.eye(10)]))
        places = np.einsum("mbij,bj->mbi", turns[:, bodies], points) + shifts[:, bodies]
        work = np.einsum("mbi,bi->m", places, forces)
        return self.spring_force(x) + (work[:10] - work[10:]) / (2 * STEP)

    def scaled(self, x: Array, theta: float) -> Array:
        """Loads over weight and wheelbase, on unknowns over the wheelbase."""
        size = whole(self.truck).mass * GRAVITY * np.where(self.units() == 1.0, 0.3, 1.0)
        return self.loads(x * self.units(), theta) / size

    def slopes(self, x: Array, theta: float) -> Array:
        """(10, 10) derivatives of the scaled loads."""
        h = 1e-5 * np.eye(10)
        both = [self.scaled(x + e, theta) - self.scaled(x - e, theta) for e in h]
        return np.array(both).T / 2e-5

    def units(self) -> Array:
        return np.array([0.3, 0.3, 0.3, 1, 1, 1, 0.3, 1, 0.3, 1])

    def let_go(self, x: Array, theta: float) -> tuple[bool, Array]:
        """Whether it comes to rest when released at x, and where."""

        def over(_: float, y: Array) -> float:
            return float(-self.frames(y)[0][2, :, 2] @ self.gravity(theta) - 0.3)

        over.terminal = True  # type: ignore[attr-defined]
        run = solve_ivp(
            lambda _, y: self.scaled(y, theta),
            (0.0, 100.0),
            x,
            method="Radau",
            jac=lambda _, y: self.slopes(y, theta),
            events=over,
            rtol=1e-4,
            atol=1e-7,
        )
        end = run.y[:, -1]
        rest = bool(run.status == 0 and np.abs(self.scaled(end, theta)).max() < 1e-4)
        return rest, end


def climb_to(plain: Plain, x: Array, start: float, end: float) -> Array:
    """Tilt in steps that shorten; a general-purpose solver, or else rest, after each."""
    for theta in end - (end - start) * np.array([0.8, 0.6, 0.4, 0.25, 0.15, 0.08, 0.03, 0.01, 0.0]):
        before = x
        answer = root(plain.scaled, x, args=(theta,), tol=1e-10, options={"eps": 1e-10})
        stands, x = True, answer.x
        if np.abs(answer.fun).max() > 1e-7:
            stands, x = plain.let_go(before, theta)
        assert stands
    return x


@pytest.mark.parametrize(
    ("truck", "heading"),
    [
        (make_truck(spring_rate=900.0, droop=0.008, chassis_cg=(-0.01, 0.004, 0.11)), 90.0),
        (
            make_truck(tracks=(0.16, 0.18), heave_lean=(0.1, -0.1), droop=0.006, anti_roll=0.2),
            215.0,
        ),
        (make_truck(tyre_stiffness=2500.0, spring_rate=700.0, droop=0.005), 0.0),
    ],
)
def test_the_tip_is_where_it_stops_standing(truck: Truck, heading: float) -> None:
    found = tips(truck, np.radians([heading]), 50.0)
    assert found.snaps[0] == 0
    plain, tip, close = Plain(truck, np.radians(heading)), float(found.tip[0]), np.radians(0.02)
    x = climb_to(plain, np.zeros(10), 0.0, tip - close)
    stands, end = plain.let_go(x, tip - close)
    assert stands
    np.testing.assert_allclose(end, x, atol=2e-3)
    stands, _ = plain.let_go(x, tip + close)
    assert not stands


def test_a_snap_is_no_tip() -> None:
    """Springs go slack, the body jumps to the droop stop and stands; it tips ten degrees later."""
    truck = make_truck(chassis_cg=(-0.01, 0.0, 0.1))
    found = tips(truck, np.radians([180.0]), 50.0)
    snap, tip = float(found.first_snap[0]), float(found.tip[0])
    plain, close = Plain(truck, np.pi), np.radians(0.02)
    x = climb_to(plain, np.zeros(10), 0.0, snap - close)
    stands, end = plain.let_go(x, snap + close)
    assert stands
    assert np.abs(end - x).max() > 0.02
    x = climb_to(plain, end, snap + close, tip - close)
    stands, _ = plain.let_go(x, tip + close)
    assert not stands
