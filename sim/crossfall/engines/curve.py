"""What straight joints leave out of an axle's curved path, as forces.

An engine steps an axle on a heave and a roll joint, straight lines that touch the path of
`truck.axle_law` at ride height. Heave q and roll r are true; where the axle stands at them is not,
but what acts on it is worked out where it truly stands. With W the wrench of tyres and weight on
the true axle, J its true twists by q and r and J_0 those of the joints, the engine is given

    on the axle   W less the weight where the engine has it,     on the joints   (J - J_0)^T W

so that the chassis takes W and the joints J^T W: at rest exactly the truck with its links. Only the
axle's inertia moves a little beside its place, which a truck that moves slowly does not feel.

Plain numbers rather than arrays: this is done for every axle in every step.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from crossfall.truck.axle_law import LEFT, law_of, plain_law
from crossfall.truck.massprops import unsprung
from crossfall.truck.model import Truck

_Vector = tuple[float, float, float]
_Rows = tuple[_Vector, _Vector, _Vector]


class Curve:
    """One axle on its true path. share: of its mass, that the engine has on the heave joint.

    After `follow`: origin (3,) m and turn (9,) rows first, where the axle's roll centre and axes
    truly are, in table axes.
    """

    def __init__(self, truck: Truck, index: int, share: float) -> None:
        axle, body = truck.axles[index], unsprung(truck, index)
        law, s = law_of(axle), axle.suspension
        self._at = plain_law(law.coefficients[:LEFT])
        self._point: _Vector = tuple(law.point.tolist())
        self._centre = (axle.x, 0.0, s.roll_centre_height)
        self._heave = (math.sin(s.heave_lean), 0.0, math.cos(s.heave_lean))
        self._mass, self._share = body.mass, share
        self._cg: _Vector = tuple(body.cg.tolist())

    def follow(
        self, cg: _Vector, origin: _Vector, turn: Sequence[float], heave: float, roll: float
    ) -> None:
        """From where the engine has the axle: its CG and roll centre, m, and axes, (9,)."""
        c, s = math.cos(roll), math.sin(roll)
        straight = ((1.0, 0.0, 0.0), (0.0, c, -s), (0.0, s, c))
        rows = (tuple(turn[:3]), tuple(turn[3:6]), tuple(turn[6:]))
        self._chassis = chassis = _product(rows, _transposed(straight))  # type: ignore[arg-type]
        x, y, z = self._centre
        a, b, d = self._heave
        self._joint = joint = (x + heave * a, y + heave * b, z + heave * d)
        self._base = _minus(origin, _carry(chassis, joint))
        self._engine = cg, origin
        self._now = now = self._at(heave, roll)
        place, yaw, pitch = [row[0] for row in now[:3]], now[3][0], now[4][0]
        cy, sy, cp, sp = math.cos(yaw), math.sin(yaw), math.cos(pitch), math.sin(pitch)
        self._across, self._ahead = (-sy, cy, 0.0), (cy * cp, sy * cp, -sp)
        own = _product(((cy * cp, -sy, cy * sp), (sy * cp, cy, sy * sp), (-sp, 0.0, cp)), straight)
        px, py, pz = self._point
        self._place = (px + place[0], py + place[1], pz + place[2])
        true = _product(chassis, own)
        self.turn = (*true[0], *true[1], *true[2])
        self.origin = self._moved(own, self._centre)
        self._true_cg = self._moved(own, self._cg)

    def _moved(self, own: _Rows, point: _Vector) -> _Vector:
        """Where a point of the axle at ride height truly is, in table axes."""
        inside = _plus(self._place, _carry(own, _minus(point, self._point)))
        return _plus(self._base, _carry(self._chassis, inside))

    def make_up(
        self, force: _Vector, moment: _Vector, gravity: _Vector
    ) -> tuple[_Vector, tuple[float, float]]:
        """For the tyres' force (N) and its moment (N m) about the engine's CG: the moment that it
        is given instead, and what besides on heave (N) and roll (N m)."""
        (cg, origin), mass, share = self._engine, self._mass, self._share
        weight = (mass * gravity[0], mass * gravity[1], mass * gravity[2])
        shift = tuple(
            t - share * o - (1.0 - share) * e
            for t, o, e in zip(self._true_cg, origin, cg, strict=True)
        )
        given = _plus(moment, _cross(shift, weight))  # type: ignore[arg-type]
        # The whole wrench in the chassis' axes about its origin.
        back = _transposed(self._chassis)
        turning = _plus(moment, _cross(_minus(cg, self._base), force))
        turning = _plus(turning, _cross(_minus(self._true_cg, self._base), weight))
        w, f = _carry(back, turning), _carry(back, _plus(force, weight))
        heave, roll = (self._work(k, w, f) for k in (1, 2))
        straight = w[0] + _dot(_cross(self._joint, (1.0, 0.0, 0.0)), f)
        return given, (heave - _dot(self._heave, f), roll - straight)

    def _work(self, by: int, moment: _Vector, force: _Vector) -> float:
        """Of a wrench on the true twist by heave (1) or roll (2)."""
        x, y, z, yaw, pitch = (row[by] for row in self._now)
        a, b, c = self._across
        spin = (pitch * a, pitch * b, pitch * c + yaw)
        if by == 2:
            spin = _plus(spin, self._ahead)
        shift = _plus((x, y, z), _cross(self._place, spin))
        return _dot(spin, moment) + _dot(shift, force)


def _plus(a: _Vector, b: _Vector) -> _Vector:
    return a[0] + b[0], a[1] + b[1], a[2] + b[2]


def _minus(a: _Vector, b: _Vector) -> _Vector:
    return a[0] - b[0], a[1] - b[1], a[2] - b[2]


def _dot(a: _Vector, b: _Vector) -> float:
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def _cross(a: _Vector, b: _Vector) -> _Vector:
    return a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]


def _carry(rows: _Rows, v: _Vector) -> _Vector:
    return _dot(rows[0], v), _dot(rows[1], v), _dot(rows[2], v)


def _transposed(rows: _Rows) -> _Rows:
    (a, b, c), (d, e, f), (g, h, i) = rows
    return (a, d, g), (b, e, h), (c, f, i)


def _product(a: _Rows, b: _Rows) -> _Rows:
    x, y, z = _transposed(b)
    return (
        (_dot(a[0], x), _dot(a[0], y), _dot(a[0], z)),
        (_dot(a[1], x), _dot(a[1], y), _dot(a[1], z)),
        (_dot(a[2], x), _dot(a[2], y), _dot(a[2], z)),
    )
