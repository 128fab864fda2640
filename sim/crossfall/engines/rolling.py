"""What straight joints leave out of a driven axle's curved path on its links.

As `engines.curve` for held wheels; but here the engine itself finds what the ground does, where the
straight joints have the wheels. How hard each disc is pushed follows from how its tyre gives, and
with the same forces where the axle truly stands the axle is given the moment, and its joints the
forces, that are missing. On the ground's own slope beneath each wheel; as at rest: what tyres are
damped by, and what it takes to speed a wheel up, is not counted.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from crossfall.engines.curve import Curve
from crossfall.engines.multibody import SHARE, disc_names
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
        for side in (0, 1):
            outward = 1.0 - 2.0 * side
            count = len(disc_names(2 * index + side, axle))
            for offset in (1.0, -1.0)[:count]:
                across = axle.track / 2 + (
                    offset * axle.tyre.contact_half_width if count > 1 else 0
                )
                place = 0.0, outward * across, axle.tyre.radius - centre[2]
                at = 3 * len(self._discs)
                mass = axle.wheels[side].mass / count
                self._discs.append((place, mass, list(tyres[at : at + 3])))

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
            f = [v - mass * g for v, g in zip(_carried(turn, pushed), gravity, strict=True)]
            touch = place[0] + dx + patch[0], place[1] + dy, place[2] + dz + patch[1]
            _add(force, f)
            _add(straight, _cross(_less(_from(origin, turn, touch), cg), f))
            _add(true, _cross(_less(_from(curve.origin, curve.turn, touch), cg), f))
        given, more = curve.make_up(
            (force[0], force[1], force[2]), (true[0], true[1], true[2]), gravity
        )
        return _less(given, straight), more


def _carried(rows: Sequence[float], v: Sequence[float]) -> _Vector:
    a, b, c, d, e, f, g, h, i = rows
    x, y, z = v
    return a * x + b * y + c * z, d * x + e * y + f * z, g * x + h * y + i * z


def _from(origin: Sequence[float], rows: Sequence[float], v: Sequence[float]) -> _Vector:
    x, y, z = _carried(rows, v)
    return origin[0] + x, origin[1] + y, origin[2] + z


def _less(a: Sequence[float], b: Sequence[float]) -> _Vector:
    return a[0] - b[0], a[1] - b[1], a[2] - b[2]


def _cross(a: Sequence[float], b: Sequence[float]) -> _Vector:
    return a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]


def _add(to: list[float], v: Sequence[float]) -> None:
    for i in (0, 1, 2):
        to[i] += v[i]
