"""The compliant answer against a second, plain way of working it out.

Positions only: every load is virtual work by finite differences, the rim's lowest point is found
by its angle, and equilibria come from plain Newton steps on differences. No derivative, flag, step
or equation of the package is used; only the truck and its level loads are the same. Where it stops
standing is held against another engine in test_reference_statics.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pytest

from crossfall.statics.compliant import tips
from crossfall.statics.compliant_path import equilibrium_path
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
            rolled = angle + np.pi / 2  # nose down positive
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


def climb(plain: Plain, thetas: Array) -> Array:
    """(n, 10) equilibria at rising table angles (n,): Newton's method with halved steps."""
    x, found = np.zeros(10), []
    for theta in thetas:
        miss = plain.scaled(x, theta)
        for _ in range(60):
            if np.abs(miss).max() < 1e-9:
                break
            step = np.linalg.solve(plain.slopes(x, theta), miss)
            for share in 0.5 ** np.arange(12):
                new = plain.scaled(x - share * step, theta)
                if np.abs(new).max() < np.abs(miss).max():
                    break
            x, miss = x - share * step, new
        assert np.abs(miss).max() < 1e-7
        found.append(x * plain.units())
    return np.array(found)


@pytest.mark.parametrize(
    ("truck", "heading"),
    [
        (make_truck(spring_rate=900.0, droop=0.008, chassis_cg=(-0.01, 0.004, 0.11)), 90.0),
        (
            make_truck(tracks=(0.16, 0.18), heave_lean=(0.1, -0.1), anti_roll=0.2),
            215.0,
        ),
        (make_truck(tyre_stiffness=2500.0, spring_rate=700.0, tangential=0.3), 20.0),
    ],
)
def test_the_same_poses_and_loads_on_the_way(truck: Truck, heading: float) -> None:
    """With a grip of 50 no tyre slips before it has nearly lifted."""
    psi = float(np.radians(heading))
    answer = tips(truck, np.array([psi]), 50.0)
    end = 0.85 * float(np.fmin(answer.first_lift, answer.tip)[0])
    thetas = np.linspace(0.0, end, 25)[1:]
    found, plain = equilibrium_path(truck, psi, thetas, 50.0), Plain(truck, psi)
    for i, x in enumerate(climb(plain, thetas)):
        turns, shifts = plain.frames(x)
        np.testing.assert_allclose(found.turn[i], turns, atol=1e-4)
        np.testing.assert_allclose(found.position[i], shifts, atol=3e-5)
        np.testing.assert_allclose(found.heave[i], x[[6, 8]], atol=3e-5)
        loads = [force[2] for _, _, force in plain.wheels(x, thetas[i])[::2]]
        np.testing.assert_allclose(found.load[i], loads, atol=0.01)
