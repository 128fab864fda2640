"""What straight joints leave out of a driven axle's curved path on its links.

As `engines.curve` for held wheels; but here the engine itself finds what the ground does, where the
straight joints have the wheels. How hard each disc is pushed follows from how its tyre gives, and
with the same forces where the axle truly stands the axle is given the moment, and its joints the
forces, that are missing. On the ground's own slope beneath each wheel; as at rest: what tyres are
damped by, and what it takes to speed a wheel up, is not counted.

Each disc is in balance: K w + F_0 - m g is what the ground pushes it with.
Source: derived here from virtual work, as `engines.curve`, and from the balance of each disc.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from crossfall.engines.curve import Curve, rotated
from crossfall.engines.multibody import SHARE, disc_places
from crossfall.engines.springs import TyreSpring
from crossfall.truck.massprops import unsprung
from crossfall.truck.model import Truck

_Vector = tuple[float, float, float]


class RollingCurve:
    """One axle on links whose wheels turn. tyres: the springs of its discs, three for each, in the
    order of `multibody.tyre_joints`."""

    def __init__(self, truck: Truck, index: int, tyres: Sequence[TyreSpring]) -> None:
        axle, body = truck.axles[index], unsprung(truck, index)
        share = SHARE * axle.body.mass / body.mass
        self._curve = Curve(truck, index, share)
        centre = (axle.x, 0.0, axle.suspension.roll_centre_height)
        self._to_cg: list[float] = (body.cg - centre).tolist()
        self._radius = axle.tyre.radius
        self._discs: list[tuple[_Vector, float, list[TyreSpring]]] = []
        for wheel in (2 * index, 2 * index + 1):
            places = disc_places(wheel, axle)
            mass = axle.wheels[wheel % 2].mass / len(places)
            for at in places:
                x, y, z = (at - centre).tolist()
                first = 3 * len(self._discs)
                self._discs.append(((x, y, z), mass, list(tyres[first : first + 3])))

    def missing(
        self,
        origin: _Vector,
        turn: Sequence[float],
        joints: Sequence[Sequence[float]],
        gives: Sequence[Sequence[float]],
        gravity: _Vector,
    ) -> tuple[_Vector, tuple[float, float]]:
        """Moment (N m) on the axle, and what besides on heave (N) and roll (N m).

        origin: m, the engine's roll centre of the axle. turn: (9,) its rotation, rows first.
        joints: state of heave and roll. gives: states of the tyres' joints.
        """
        curve = self._curve
        cg = _from(origin, turn, self._to_cg)
        curve.follow(cg, origin, turn, joints[0][0], joints[1][0])
        ahead, up = -turn[6], -turn[8]
        down = self._radius / math.hypot(ahead, up)
        patch = ahead * down, up * down
        force, true, straight = [0.0] * 3, [0.0] * 3, [0.0] * 3
        for i, (place, mass, springs) in enumerate(self._discs):
            dz, dx, dy = (state[0] for state in gives[3 * i : 3 * i + 3])
            pushed = (
                springs[1].rate * dx,
                springs[2].rate * dy,
                springs[0].rate * dz + springs[0].force,
            )
            f = [v - mass * g for v, g in zip(rotated(turn, pushed), gravity, strict=True)]
            touch = place[0] + dx + patch[0], place[1] + dy, place[2] + dz + patch[1]
            _add(force, f)
            _add(straight, _cross(_less(_from(origin, turn, touch), cg), f))
            _add(true, _cross(_less(_from(curve.origin, curve.turn, touch), cg), f))
        given, more = curve.make_up(
            (force[0], force[1], force[2]), (true[0], true[1], true[2]), gravity
        )
        return _less(given, straight), more


def _from(origin: Sequence[float], rows: Sequence[float], v: Sequence[float]) -> _Vector:
    x, y, z = rotated(rows, v)
    return origin[0] + x, origin[1] + y, origin[2] + z


def _less(a: Sequence[float], b: Sequence[float]) -> _Vector:
    return a[0] - b[0], a[1] - b[1], a[2] - b[2]


def _cross(a: Sequence[float], b: Sequence[float]) -> _Vector:
    return a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]


def _add(to: list[float], v: Sequence[float]) -> None:
    for i in (0, 1, 2):
        to[i] += v[i]
