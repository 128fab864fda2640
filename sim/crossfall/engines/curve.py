"""What straight joints leave out of an axle's curved path, as forces.

An engine steps an axle on a heave and a roll joint, straight lines that touch the path of
`truck.axle_law` at ride height. Heave q and roll r are true; where the axle stands at them is not,
but what acts on it is worked out where it truly stands. With W the wrench of tyres and weight on
the true axle, J its true twists by q and r and J_0 those of the joints, the engine is given

    on the axle   W less the weight where the engine has it,     on the joints   (J - J_0)^T W

so that the chassis takes W and the joints J^T W: at rest exactly the truck with its links. Only the
axle's inertia moves a little beside its place, which a truck that moves slowly does not feel.

Plain numbers rather than arrays: this is done for every axle in every step.

Source: derived here from virtual work: the twists J are the derivatives of `truck.axle_law`.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from crossfall.truck.axle_law import LEFT, RIGHT, NearLaw, Z, law_of
from crossfall.truck.massprops import unsprung
from crossfall.truck.model import Truck

_Vector = tuple[float, float, float]
_FREE = [f for f in range(LEFT) if f != Z]  # along z an axle on links goes by its heave, no more


class Curve:
    """One axle on its true path. share: of its mass, that the engine has on the heave joint.

    After `follow`: origin (3,) m and turn (9,) rows first, where the axle's roll centre and axes
    truly are, in table axes. corners: of left and right, how far it is pressed and its slopes by
    heave and roll; None for corners that stand upright.
    """

    def __init__(self, truck: Truck, index: int, share: float) -> None:
        axle, body = truck.axles[index], unsprung(truck, index)
        law, s = law_of(axle), axle.suspension
        self._at = NearLaw(law.coefficients[_FREE if s.shocks is None else [*_FREE, LEFT, RIGHT]])
        self._lean = math.sin(s.heave_lean), math.cos(s.heave_lean)
        self._mass, self._share = body.mass, share
        # At ride height: from the centre to the law's point, and from there to centre and CG.
        point, centre = law.point, (axle.x, 0.0, s.roll_centre_height)
        self._to_point: list[float] = (point - centre).tolist()
        self._to_centre: list[float] = (centre - point).tolist()
        self._to_cg: list[float] = (body.cg - point).tolist()

    def follow(
        self, cg: _Vector, origin: _Vector, turn: Sequence[float], heave: float, roll: float
    ) -> None:
        """From where the engine has the axle: its CG and roll centre, m, and axes, (9,)."""
        (x, _, _), (y, _, _), (yaw, _, _), (pitch, _, _), *corners = now = self._at(heave, roll)
        self._now, self.corners = now[:4], corners or None
        c, s = math.cos(roll), math.sin(roll)
        cy, sy, cp, sp = math.cos(yaw), math.sin(yaw), math.cos(pitch), math.sin(pitch)
        self._turns = cy, sy, cp, sp
        # Row by row: the chassis is the engine's axle turned back by roll, and the true axle the
        # chassis turned by yaw, pitch and roll.
        a0, l0, u0, a1, l1, u1, a2, l2, u2 = turn
        l0, u0 = c * l0 - s * u0, s * l0 + c * u0
        l1, u1 = c * l1 - s * u1, s * l1 + c * u1
        l2, u2 = c * l2 - s * u2, s * l2 + c * u2
        self._chassis = chassis = a0, l0, u0, a1, l1, u1, a2, l2, u2
        a0, l0 = cy * a0 + sy * l0, cy * l0 - sy * a0
        a1, l1 = cy * a1 + sy * l1, cy * l1 - sy * a1
        a2, l2 = cy * a2 + sy * l2, cy * l2 - sy * a2
        a0, u0 = cp * a0 - sp * u0, sp * a0 + cp * u0
        a1, u1 = cp * a1 - sp * u1, sp * a1 + cp * u1
        a2, u2 = cp * a2 - sp * u2, sp * a2 + cp * u2
        l0, u0 = c * l0 + s * u0, c * u0 - s * l0
        l1, u1 = c * l1 + s * u1, c * u1 - s * l1
        l2, u2 = c * l2 + s * u2, c * u2 - s * l2
        self.turn = true = a0, l0, u0, a1, l1, u1, a2, l2, u2
        ahead, left, up = self._to_point
        lean, upright = self._lean
        # Of the law's point: from the engine's roll centre, in the chassis' axes and the table's.
        self._off = off = ahead + x - heave * lean, left + y, up + heave - heave * upright
        self._shift = shift = rotated(chassis, off)
        self._point = point = origin[0] + shift[0], origin[1] + shift[1], origin[2] + shift[2]
        x, y, z = rotated(true, self._to_centre)
        self.origin = point[0] + x, point[1] + y, point[2] + z
        self._arm = rotated(true, self._to_cg)
        self._cg = cg

    def make_up(
        self, force: _Vector, moment: _Vector, gravity: _Vector
    ) -> tuple[_Vector, tuple[float, float]]:
        """For the tyres' force (N) and its moment (N m) about the engine's CG: the moment that it
        is given instead, and what besides on heave (N) and roll (N m)."""
        mass, share = self._mass, self._share
        wx, wy, wz = mass * gravity[0], mass * gravity[1], mass * gravity[2]
        (fx, fy, fz), (mx, my, mz) = force, moment
        # About the law's point: the true CG, the engine's CG and its roll centre.
        (ax, ay, az), (px, py, pz), (sx, sy, sz) = self._arm, self._point, self._shift
        ex, ey, ez = self._cg[0] - px, self._cg[1] - py, self._cg[2] - pz
        rest = 1.0 - share
        dx, dy, dz = (
            ax + share * sx - rest * ex,
            ay + share * sy - rest * ey,
            az + share * sz - rest * ez,
        )
        given = mx + dy * wz - dz * wy, my + dz * wx - dx * wz, mz + dx * wy - dy * wx
        # The whole wrench there, in the chassis' axes.
        mx += ey * fz - ez * fy + ay * wz - az * wy
        my += ez * fx - ex * fz + az * wx - ax * wz
        mz += ex * fy - ey * fx + ax * wy - ay * wx
        mx, my, mz = _back(self._chassis, mx, my, mz)
        fx, fy, fz = _back(self._chassis, fx + wx, fy + wy, fz + wz)
        (_, xq, xr), (_, yq, yr), (_, yaw_q, yaw_r), (_, pitch_q, pitch_r) = self._now
        cy, sy, cp, sp = self._turns
        across = cy * my - sy * mx  # the moment about the axis of pitch
        heave = pitch_q * across + yaw_q * mz + xq * fx + yq * fy + fz
        roll = pitch_r * across + yaw_r * mz + xr * fx + yr * fy
        roll += cp * (cy * mx + sy * my) - sp * mz
        # Less what the engine's own joints take of it.
        (_, dy, dz), (lean, upright) = self._off, self._lean
        return given, (heave - lean * fx - upright * fz, roll - mx - dy * fz + dz * fy)


def rotated(rows: Sequence[float], v: Sequence[float]) -> _Vector:
    """A vector (3,) under a rotation (9,), rows first: (3,), R v, in the vector's unit."""
    a, b, c, d, e, f, g, h, i = rows
    x, y, z = v
    return a * x + b * y + c * z, d * x + e * y + f * z, g * x + h * y + i * z


def _back(rows: Sequence[float], x: float, y: float, z: float) -> _Vector:
    a, b, c, d, e, f, g, h, i = rows
    return a * x + d * y + g * z, b * x + e * y + h * z, c * x + f * y + i * z
