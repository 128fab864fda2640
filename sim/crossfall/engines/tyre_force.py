"""The tyres of held wheels on the table, as forces on their axle.

A wheel sits on its axle by three springs K = diag(k_x, k_y, k_z) along the axle's axes A. It is a
thin disc of radius R, or two at its contact half-width, each with half of its mass m and of K, held
by the brake, whose lowest point touches the table z = 0. With wheel axis e, table normal n,
s = sqrt(1 - e_z^2), C the disc's place on an axle that has not given way, Q where it touches, F0
the force in its spring at ride height and g gravity, the disc has moved on its axle by

    w = Q - C - rho,  rho = -R (n - e_z e) / s          (rho: from its middle to its lowest point)

and balances between spring and ground (its own motion is left out: it is light, and never quick)

    F = A K A^T w + F0 A_z - m g                        (F: of the table on the tyre, at Q)

Q stays where it first touched, but rolls along with a disc that pitches with its axle, by R times
the change of the angle at which the disc touches, along e x n / s. Where the part T of F along the
table would exceed mu N it slips (Coulomb): Q moves against T until it does not (return mapping,
e.g. Simo and Hughes, Computational Inelasticity, 1998, chapter 1). A disc that would be pulled down
is off, hangs on its springs (F = 0), and touches anew, pulling nowhere, where its lowest point
comes down. The axle carries the wheel's mass at its place, the weight acts at w from there: besides
F at Q the axle feels the couple w x m g.

Plain numbers rather than arrays: this is done for every disc in every step.

Source: J. C. Simo and T. J. R. Hughes, Computational Inelasticity (Springer 1998), chapter 1, for
Coulomb friction by return mapping (from memory); disc and spring derived here from the balance of a
massless disc and the geometry of its lowest point.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from copy import copy
from dataclasses import dataclass

from crossfall.truck.model import GRAVITY, Axle

Vector = tuple[float, float, float]
Stance = tuple[float, ...]
_LEVEL: Sequence[float] = (1.0, 0.0, 0.0, 0.0, 1.0, 0.0, 0.0, 0.0, 1.0)


@dataclass(slots=True)
class _Patch:
    """One disc, and where it holds the table.

    side: 0 left, 1 right. across: m along the axle from its middle, along: ahead of it. spring: N
    at ride height.
    mass: kg. x, y: m, where it touches, on: if it does. give: m, w. slip_x, slip_y: m it has
    slipped. load: N, of the table.
    """

    side: int
    across: float
    spring: float
    mass: float
    x: float
    y: float
    on: bool = True
    give: Vector = (0.0, 0.0, 0.0)
    slip_x: float = 0.0
    slip_y: float = 0.0
    load: float = 0.0
    along: float = 0.0


@dataclass(frozen=True)
class KeptPatches:
    """The patches of one axle at a moment, to come back to."""

    patches: tuple[_Patch, ...]
    angle: float
    apart: float


class HeldWheels:
    """Both wheels of one axle, held, on the table; at ride height when made. SI, table axes.

    loads: (2,) N on the ground then. damping: ratio to critical of a tyre under its load, which
    only settles it. step: s. friction: of left and right, infinite against a rail; to be set.
    torque: N m on the axle's roll, of a shaft that the motor holds.
    """

    def __init__(self, axle: Axle, loads: Sequence[float], damping: float, step: float) -> None:
        tyre, masses = axle.tyre, [wheel.mass for wheel in axle.wheels]
        offsets = (0.0,) if tyre.contact_half_width == 0.0 else (1.0, -1.0)
        self._share = share = 1.0 / len(offsets)
        self.friction = [math.inf, math.inf]
        self._along = tyre.longitudinal
        self._rates = (tyre.longitudinal * share, tyre.lateral * share, tyre.stiffness * share)
        self._radius, self._rise = tyre.radius, tyre.radius - axle.suspension.roll_centre_height
        self._angle, self._turn = 0.0, _LEVEL
        self._shaft, self.torque = axle.shaft, 0.0
        self._open, self._apart = axle.loose, 0.0
        self.patches = []
        for side in (0, 1):
            for offset in offsets:
                ahead, aside = axle.steered[side]
                across = (1 - 2 * side) * (axle.track / 2 + offset * tyre.contact_half_width)
                across += aside
                spring = (loads[side] - masses[side] * GRAVITY) * share
                self.patches.append(
                    _Patch(
                        side,
                        across,
                        spring,
                        masses[side] * share,
                        axle.x + ahead,
                        across,
                        along=ahead,
                    )
                )
        borne = sum(loads) / 2 / GRAVITY * share
        ahead, aside, up = (2 * damping * math.sqrt(rate * borne) / step for rate in self._rates)
        self._damping = (ahead + aside) / 2, up  # N for each m of movement in a step
        self._steps = 1

    @property
    def loads(self) -> tuple[float, float]:
        """N on left and right wheel."""
        loads = [0.0, 0.0]
        for patch in self.patches:
            loads[patch.side] += patch.load
        return loads[0], loads[1]

    @property
    def slips(self) -> tuple[float, float]:
        """m that left and right wheel have slipped, straight from where they began."""
        ways = [[0.0, 0.0], [0.0, 0.0]]
        for patch in self.patches:
            ways[patch.side][0] += patch.slip_x * self._share
            ways[patch.side][1] += patch.slip_y * self._share
        return math.hypot(*ways[0]), math.hypot(*ways[1])

    @property
    def gives(self) -> tuple[Vector, Vector]:
        """(3,) m that left and right wheel have moved on their axle, along its own axes."""
        xx, ex, zx, xy, ey, zy, xz, ez, zz = self._turn
        sums = [[0.0, 0.0, 0.0], [0.0, 0.0, 0.0]]
        for patch in self.patches:
            x, y, z = (v * self._share for v in patch.give)
            own = sums[patch.side]
            own[0] += x * xx + y * xy + z * xz
            own[1] += x * ex + y * ey + z * ez
            own[2] += x * zx + y * zy + z * zz
        (a, b, c), (d, e, f) = sums
        return (a, b, c), (d, e, f)

    def refine(self, factor: int) -> None:
        """From now on steps of `factor` to one."""
        along, up = self._damping
        self._damping = along * factor / self._steps, up * factor / self._steps
        self._steps = factor

    def save(self) -> KeptPatches:
        return KeptPatches(tuple(copy(p) for p in self.patches), self._angle, self._apart)

    def restore(self, hold: KeptPatches) -> None:
        self.patches, self._angle = [copy(p) for p in hold.patches], hold.angle
        self._apart = hold.apart

    def press(
        self,
        origin: Vector,
        turn: Sequence[float],
        about: Vector,
        gravity: Vector,
        roll: float = 0.0,
    ) -> tuple[Vector, Vector]:
        """Force (N) on the axle and its moment (N m) about the point `about`, table axes.

        origin: m, of the axle's frame, at its roll centre. turn: (9,) its rotation, rows first.
        gravity: m/s^2. roll: rad, of the axle against the chassis, by which a shaft turns the
        wheels. Moves the patches on by a step: call it once in each.
        """
        stance, rolled = self._stand(origin, turn, self._shaft * roll)
        if self._open and self._apart:
            for patch in self.patches:
                self._turn_on(patch, self._apart, stance)
        force, moment, left, right = self._touch(stance, rolled, about, gravity)
        level = math.hypot(stance[6], stance[7])
        self.torque = -self._shaft * self._radius * (left + right) / level
        if self._open and math.inf not in self.friction:
            # Its speed, m in a step: wheels as heavy as a step can follow on their tyres.
            firm = self._along + self._damping[0] / self._share
            self._apart += (right - left) / level / (4 * firm)
        return force, moment

    def _turn_on(self, patch: _Patch, way: float, stance: Stance) -> None:
        """An open differential lets the left wheel roll `way` (m) ahead and the right one back,
        which counts as slipping."""
        ex, ey = stance[6], stance[7]
        share = (way if patch.side == 0 else -way) / math.hypot(ex, ey)
        x, y = share * ey, -share * ex
        patch.x, patch.y = patch.x + x, patch.y + y
        patch.slip_x, patch.slip_y = patch.slip_x + x, patch.slip_y + y

    def _stand(
        self, origin: Vector, turn: Sequence[float], spin: float
    ) -> tuple[Stance, tuple[float, float]]:
        """A K A^T, wheel axis, A_z and C + rho on the axle's middle; and how far the discs roll,
        x and y."""
        self._turn = turn
        xx, ex, zx, xy, ey, zy, xz, ez, zz = turn
        square = max(1e-12, 1.0 - ez * ez)
        s = math.sqrt(square)
        angle = spin + math.atan2(-xz, xx * ey - xy * ex)  # of the disc's own x axis, both times s
        roll = self._radius * (angle - self._angle) / s
        self._angle = angle
        kx, ky, kz = self._rates
        ax, ay, az = kx * xx, kx * xy, kx * xz
        bx, by, bz = ky * ex, ky * ey, ky * ez
        cx, cy, cz = kz * zx, kz * zy, kz * zz
        rise, up = self._rise, self._radius / s
        stance = (
            ax * xx + bx * ex + cx * zx,
            ax * xy + bx * ey + cx * zy,
            ax * xz + bx * ez + cx * zz,
            ay * xy + by * ey + cy * zy,
            ay * xz + by * ez + cy * zz,
            az * xz + bz * ez + cz * zz,
            ex,
            ey,
            ez,
            zx,
            zy,
            zz,
            origin[0] + rise * zx + up * ez * ex,
            origin[1] + rise * zy + up * ez * ey,
            origin[2] + rise * zz - up * square,
        )
        return stance, (roll * ey, -roll * ex)

    def _touch(
        self, stance: Stance, rolled: tuple[float, float], about: Vector, gravity: Vector
    ) -> tuple[Vector, Vector, float, float]:
        """Force and moment of `press`, and what pulls the left and the right wheel round, N; moves
        the patches on. One loop without a call a disc, which would cost half as much again."""
        k00, k01, k02, k11, k12, k22, ex, ey, ez, zx, zy, zz, ox, oy, oz = stance
        (cx, cy, cz), (gx, gy, gz), (roll_x, roll_y) = about, gravity, rolled
        friction, (damp_along, damp_up) = self.friction, self._damping
        all_x = all_y = all_z = mx = my = mz = 0.0
        pulls = [0.0, 0.0]
        for patch in self.patches:
            mass, across, spring = patch.mass, patch.across, patch.spring
            wx, wy, wz = mass * gx, mass * gy, mass * gz
            px, py, pz = ox + across * ex, oy + across * ey, oz + across * ez
            if along := patch.along:
                px += along * (ey * zz - ez * zy)
                py += along * (ez * zx - ex * zz)
                pz += along * (ex * zy - ey * zx)
            on, was = patch.on, patch.give
            patch_x, patch_y = patch.x + roll_x, patch.y + roll_y
            if not on:
                x, y, z = was = self._hanging(spring, stance, (wx, wy, wz))
                if pz + z < 0.0:
                    on, patch_x, patch_y, was = True, px + x, py + y, (x, y, -pz)
            if on:
                x, y, z = patch_x - px, patch_y - py, -pz
                fx = k00 * x + k01 * y + k02 * z + spring * zx - wx
                fy = k01 * x + k11 * y + k12 * z + spring * zy - wy
                fz = k02 * x + k12 * y + k22 * z + spring * zz - wz
                grip = friction[patch.side]
                limit = grip * fz
                if fz > 0.0 and fx * fx + fy * fy > limit * limit:
                    sx, sy = slip(grip, (fx, fy, fz), stance)
                    patch_x, patch_y = patch_x + sx, patch_y + sy
                    patch.slip_x += sx
                    patch.slip_y += sy
                    x, y = x + sx, y + sy
                    fx = fx + k00 * sx + k01 * sy
                    fy = fy + k01 * sx + k11 * sy
                    fz = fz + k02 * sx + k12 * sy
                patch.load = 0.0
                if fz <= 0.0:
                    on = False
                    x, y, z = self._hanging(spring, stance, (wx, wy, wz))
                elif (load := fz + damp_up * (z - was[2])) >= 0.0:  # a damper alone never pulls
                    fx += damp_along * (x - was[0])
                    fy += damp_along * (y - was[1])
                    patch.load = load
                    all_x, all_y, all_z = all_x + fx, all_y + fy, all_z + load
                    rx, ry = patch_x - cx, patch_y - cy
                    pulls[patch.side] += fx * ey - fy * ex
                    mx += ry * load + cz * fy
                    my -= cz * fx + rx * load
                    mz += rx * fy - ry * fx
            patch.on, patch.x, patch.y, patch.give = on, patch_x, patch_y, (x, y, z)
            mx += y * wz - z * wy
            my += z * wx - x * wz
            mz += x * wy - y * wx
        return (all_x, all_y, all_z), (mx, my, mz), pulls[0], pulls[1]

    def _hanging(self, spring: float, stance: Stance, weight: Vector) -> Vector:
        """w of a disc in the air, A K^-1 A^T m g - F0 A_z / k_z."""
        _, _, _, _, _, _, ex, ey, ez, zx, zy, zz, *_ = stance
        xx, xy, xz = ey * zz - ez * zy, ez * zx - ex * zz, ex * zy - ey * zx
        wx, wy, wz = weight
        kx, ky, kz = self._rates
        a = (xx * wx + xy * wy + xz * wz) / kx
        b = (ex * wx + ey * wy + ez * wz) / ky
        c = (zx * wx + zy * wy + zz * wz - spring) / kz
        return a * xx + b * ex + c * zx, a * xy + b * ey + c * zy, a * xz + b * ez + c * zz


def slip(friction: float, force: Vector, stance: Stance) -> tuple[float, float]:
    """How far (m, x and y) a patch slips against friction until |T| = mu N again.

    force: (3,) N if it stuck. Moved by -c t along t = T / |T|, the force falls by c A K A^T t:
    the least c with (T - c p_T)^2 = mu^2 (N - c p_N)^2. Where there is none, as on an axle that
    leans so far that slipping takes the load away first, it slips until T is gone.
    """
    k00, k01, k02, k11, k12 = stance[:5]
    fx, fy, fz = force
    size = math.hypot(fx, fy)
    tx, ty = fx / size, fy / size
    px, py, pz = k00 * tx + k01 * ty, k01 * tx + k11 * ty, k02 * tx + k12 * ty
    square = friction * friction
    a = px * px + py * py - square * pz * pz
    b = fx * px + fy * py - square * fz * pz
    c = size * size - square * fz * fz
    inside = b * b - a * c
    least = b + math.sqrt(inside) if inside > 0.0 else 0.0
    way = c / least if least > 0.0 else size / (px * tx + py * ty)
    return -way * tx, -way * ty
