"""What springs, stops, links and tyres do to an axle in a step, written to be compiled: asked in
every step, it would cost more in Python than the engine does; see `truck.native`.

Laws are records (AXLE), so is what they remember (AXLE_STATE, PATCH); vectors are tuples, rotations
(9,), rows first. SI. Functions that are `outer` take addresses of arrays, the others are theirs.

Corners: a corner's compression is c = q + (s/2) r on the left and q - (s/2) r on the right of heave
q and roll r, or what `truck.axle_law` says of its shocks, and a corner force F does work on c.

Curve: an engine steps an axle on a heave and a roll joint, straight lines that touch the path of
`truck.axle_law` at ride height. Heave and roll are true; where the axle stands at them is not, but
what acts on it is worked out where it truly stands. With W the wrench of tyres and weight on the
true axle, J its true twists by q and r and J_0 those of the joints, the engine is given

    on the axle   W less the weight where the engine has it,     on the joints   (J - J_0)^T W

so that the chassis takes W and the joints J^T W: at rest exactly the truck with its links. Only the
axle's inertia moves a little beside its place, which a truck that moves slowly does not feel.

Tyres: a held wheel sits on its axle by three springs K = diag(k_x, k_y, k_z) along the axle's axes
A. It is a thin disc of radius R, or two at its contact half-width, each with half of its mass m and
of K, held by the brake, whose lowest point touches the table z = 0. With wheel axis e, table normal
n, s = sqrt(1 - e_z^2), C the disc's place on an axle that has not given way, Q where it touches, F0
the force in its spring at ride height and g gravity, the disc has moved on its axle by

    w = Q - C - rho,  rho = -R (n - e_z e) / s          (rho: from its middle to its lowest point)

and balances between spring and ground (its own motion is left out: it is light, and never quick)

    F = A K A^T w + F0 A_z - m g                        (F: of the table on the tyre, at Q)

Q stays where it first touched, but rolls along with a disc that pitches with its axle, by R times
the change of the angle at which the disc touches, along e x n / s. Where the part T of F along the
table would exceed mu N it slips (Coulomb): Q moves against T until it does not (return mapping). A
disc that would be pulled down is off, hangs on its springs (F = 0), and touches anew, pulling
nowhere, where its lowest point comes down. The axle carries the wheel's mass at its place, the
weight acts at w from there: besides F at Q the axle feels the couple w x m g.

Source: J. C. Simo and T. J. R. Hughes, Computational Inelasticity (Springer 1998), chapter 1, for
Coulomb friction by return mapping (from memory); corners and curve derived here from virtual work
(the twists J are the derivatives of `truck.axle_law`), disc and spring from the balance of a
massless disc and the geometry of its lowest point.
"""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import numpy.typing as npt

from crossfall.truck.axle_law import BY_Q, BY_R, LEFT, PITCH, POWERS, VALUE, YAW, X, Y, law_at
from crossfall.truck.to_compile import FLOAT, WHOLE, arrays, inner, outer
from crossfall.truck.vectors import Vector, crossed

Records = npt.NDArray[np.void]
_Rows = tuple[float, ...]  # (9,)

MOVES = 14  # numbers an axle's moves are told by
VALUES = 21  # numbers of scratch memory, of a law's values and slopes
WORK = VALUES + POWERS

AXLE = np.dtype(
    [
        ("sprung", "?"),  # whether it has heave and roll; else all up to `shocks` lies idle
        ("half_spacing", "f8"),  # see `springs.CornerSprings` for these
        ("rate", "f8"),
        ("preload", "f8", 2),
        ("damping", "f8"),
        ("anti_roll", "f8"),
        ("bump", "f8"),
        ("droop", "f8"),
        ("stop_rate", "f8"),
        ("stop_damping", "f8"),
        ("stop_time", "f8"),
        ("more", "f8"),
        ("bound", "f8", 2),
        ("shocks", "?"),  # by their ends: the law's own compressions
        ("links", "?"),  # else all up to `to_cg` lies idle
        ("lean", "f8", 2),  # of the heave joint's axis: sine and cosine
        ("mass", "f8"),  # kg, of all that is unsprung
        ("share", "f8"),  # of that, which the engine has on the heave joint
        ("to_point", "f8", 3),  # m at ride height: from the roll centre to the law's point,
        ("to_centre", "f8", 3),  # and from there to roll centre
        ("to_cg", "f8", 3),  # and CG
        ("rates", "f8", 3),  # N/m of a disc, along the axle's axes
        ("radius", "f8"),
        ("rise", "f8"),  # m, of the wheels' middle over the axle's frame
        ("shaft", "f8"),  # rad a wheel turns by for each of the axle's roll
        ("open", "?"),  # differential
        ("firm", "f8"),  # N/m of a tyre lengthwise
        ("discs", "i8"),  # of a wheel
        ("damping_along", "f8"),  # N for each m that a disc moves in a step
        ("damping_up", "f8"),
        ("friction", "f8", 2),  # of left and right wheel, infinite against a rail
        ("first", "i8"),  # of its patches, and one past the last
        ("last", "i8"),
    ],
    align=True,
)
"""One axle, m N kg rad."""

AXLE_STATE = np.dtype(
    [
        ("stops", "f8", 2),  # N that the stops have taken up, left and right, bump positive
        ("angle", "f8"),  # rad at which its discs touched in the last step, times s
        ("apart", "f8"),  # m an open differential's wheels roll apart by in the next step
        ("torque", "f8"),  # N m on roll in the last step, of a shaft that the motor holds
        ("turn", "f8", 9),  # its rotation in the last step
    ],
    align=True,
)
"""What an axle remembers from step to step."""

PATCH = np.dtype(
    [
        ("wheel", "i8"),  # 0 front left to 3 rear right
        ("across", "f8"),  # m along the axle from its middle
        ("along", "f8"),  # m ahead of it
        ("spring", "f8"),  # N at ride height
        ("mass", "f8"),  # kg
        ("x", "f8"),  # m, where it touches
        ("y", "f8"),
        ("on", "?"),  # if it does
        ("give", "f8", 3),  # m, w
        ("slip", "f8", 2),  # m it has slipped
        ("load", "f8"),  # N, of the table
    ],
    align=True,
)
"""One disc, and where it holds the table."""


# --- vectors ----------------------------------------------------------------------------------


@inner
def _rotated(rows: _Rows, v: Vector) -> Vector:
    """A vector (3,) under a rotation (9,), rows first: (3,), R v, in the vector's unit."""
    a, b, c, d, e, f, g, h, i = rows
    x, y, z = v
    return a * x + b * y + c * z, d * x + e * y + f * z, g * x + h * y + i * z


@inner
def _back(rows: _Rows, x: float, y: float, z: float) -> Vector:
    a, b, c, d, e, f, g, h, i = rows
    return a * x + d * y + g * z, b * x + e * y + h * z, c * x + f * y + i * z


@inner
def _less(a: Vector, b: Vector) -> Vector:
    return a[0] - b[0], a[1] - b[1], a[2] - b[2]


@inner
def _from(origin: Vector, rows: _Rows, v: Vector) -> Vector:
    x, y, z = _rotated(rows, v)
    return origin[0] + x, origin[1] + y, origin[2] + z


@inner
def _rows(x: float, y: float, z: float, w: float) -> _Rows:
    """A quaternion's rotation."""
    s = 2.0 / (x * x + y * y + z * z + w * w)
    return (
        1.0 - s * (y * y + z * z),
        s * (x * y - w * z),
        s * (x * z + w * y),
        s * (x * y + w * z),
        1.0 - s * (x * x + z * z),
        s * (y * z - w * x),
        s * (x * z - w * y),
        s * (y * z + w * x),
        1.0 - s * (x * x + y * y),
    )


# --- where an axle is -------------------------------------------------------------------------


@inner
def true_place(
    axle: Any, at: Any, cg: Vector, origin: Vector, turn: _Rows, heave: float, roll: float
) -> Any:
    """Where an axle truly is. cg, origin, turn: where the engine has its CG and roll centre, m, and
    its axes. at: (7, 3) of its law there.

    Axes and roll centre; then for `make_up` the chassis' axes, of the law's point where it is and
    how far from the engine's roll centre, in the table's axes and the chassis', the arm from it to
    the true CG, and the engine's CG.
    """
    c, s = math.cos(roll), math.sin(roll)
    yaw, pitch = at[YAW, VALUE], at[PITCH, VALUE]
    cy, sy, cp, sp = math.cos(yaw), math.sin(yaw), math.cos(pitch), math.sin(pitch)
    # Row by row: the chassis is the engine's axle turned back by roll, and the true axle the
    # chassis turned by yaw, pitch and roll.
    a0, l0, u0, a1, l1, u1, a2, l2, u2 = turn
    l0, u0 = c * l0 - s * u0, s * l0 + c * u0
    l1, u1 = c * l1 - s * u1, s * l1 + c * u1
    l2, u2 = c * l2 - s * u2, s * l2 + c * u2
    chassis = (a0, l0, u0, a1, l1, u1, a2, l2, u2)
    a0, l0 = cy * a0 + sy * l0, cy * l0 - sy * a0
    a1, l1 = cy * a1 + sy * l1, cy * l1 - sy * a1
    a2, l2 = cy * a2 + sy * l2, cy * l2 - sy * a2
    a0, u0 = cp * a0 - sp * u0, sp * a0 + cp * u0
    a1, u1 = cp * a1 - sp * u1, sp * a1 + cp * u1
    a2, u2 = cp * a2 - sp * u2, sp * a2 + cp * u2
    l0, u0 = c * l0 + s * u0, c * u0 - s * l0
    l1, u1 = c * l1 + s * u1, c * u1 - s * l1
    l2, u2 = c * l2 + s * u2, c * u2 - s * l2
    true = (a0, l0, u0, a1, l1, u1, a2, l2, u2)
    off = (
        axle.to_point[0] + at[X, VALUE] - heave * axle.lean[0],
        axle.to_point[1] + at[Y, VALUE],
        axle.to_point[2] + heave - heave * axle.lean[1],
    )
    shift = _rotated(chassis, off)
    point = (origin[0] + shift[0], origin[1] + shift[1], origin[2] + shift[2])
    centre = (axle.to_centre[0], axle.to_centre[1], axle.to_centre[2])
    arm = _rotated(true, (axle.to_cg[0], axle.to_cg[1], axle.to_cg[2]))
    return true, _from(point, true, centre), chassis, point, shift, off, arm, cg


@inner
def make_up(
    axle: Any, at: Any, followed: Any, force: Vector, moment: Vector, gravity: Vector
) -> tuple[Vector, tuple[float, float]]:
    """For the tyres' force (N) and its moment (N m) about the engine's CG: the moment that it is
    given instead, and what besides on heave (N) and roll (N m)."""
    _, _, chassis, (px, py, pz), (sx, sy, sz), off, (ax, ay, az), cg = followed
    mass, share, yaw, pitch = axle.mass, axle.share, at[YAW, VALUE], at[PITCH, VALUE]
    wx, wy, wz = mass * gravity[0], mass * gravity[1], mass * gravity[2]
    fx, fy, fz = force
    mx, my, mz = moment
    # About the law's point: the true CG, the engine's CG and its roll centre.
    ex, ey, ez = cg[0] - px, cg[1] - py, cg[2] - pz
    rest = 1.0 - share
    dx, dy, dz = (
        ax + share * sx - rest * ex,
        ay + share * sy - rest * ey,
        az + share * sz - rest * ez,
    )
    given = (mx + dy * wz - dz * wy, my + dz * wx - dx * wz, mz + dx * wy - dy * wx)
    # The whole wrench there, in the chassis' axes.
    mx += ey * fz - ez * fy + ay * wz - az * wy
    my += ez * fx - ex * fz + az * wx - ax * wz
    mz += ex * fy - ey * fx + ax * wy - ay * wx
    mx, my, mz = _back(chassis, mx, my, mz)
    fx, fy, fz = _back(chassis, fx + wx, fy + wy, fz + wz)
    cy, sy, cp, sp = math.cos(yaw), math.sin(yaw), math.cos(pitch), math.sin(pitch)
    across = cy * my - sy * mx  # the moment about the axis of pitch
    heave = at[PITCH, BY_Q] * across + at[YAW, BY_Q] * mz
    heave += at[X, BY_Q] * fx + at[Y, BY_Q] * fy + fz
    roll = at[PITCH, BY_R] * across + at[YAW, BY_R] * mz
    roll += at[X, BY_R] * fx + at[Y, BY_R] * fy
    roll += cp * (cy * mx + sy * my) - sp * mz
    # Less what the engine's own joints take of it.
    heave -= axle.lean[0] * fx + axle.lean[1] * fz
    return given, (heave, roll - mx - off[1] * fz + off[2] * fy)


# --- corners ----------------------------------------------------------------------------------


@inner
def _corners(
    axle: Any, state: Any, at: Any, heave: Any, roll: Any, dt: float
) -> tuple[float, float]:
    """See `press_corners`; heave, roll: position and velocity. at: (7, 3), read of shocks only."""
    q, qv = heave
    r, rv = roll
    on_heave, on_roll = 0.0, -axle.anti_roll * r
    for side in range(2):
        by_q, by_r = 1.0, axle.half_spacing * (1 - 2 * side)
        c = q + by_r * r
        if axle.shocks:
            c, by_q, by_r = at[LEFT + side, VALUE], at[LEFT + side, BY_Q], at[LEFT + side, BY_R]
        v = by_q * qv + by_r * rv
        force = max(0.0, axle.preload[side] + axle.rate * c) + axle.damping * v
        if c > axle.bound[side]:
            force += axle.more * (c - axle.bound[side])
        if state.stops[side] != 0.0 or c > axle.bump or c < -axle.droop:
            force += _stop(axle, state, side, c, v, dt)
        on_heave -= force * by_q
        on_roll -= force * by_r
    return on_heave, on_roll


@inner
def _stop(axle: Any, state: Any, side: int, c: float, v: float, dt: float) -> float:
    """Stop force (N) against compression c at rate v; what is taken up goes on one step.

    A stop is a spring as stiff as the time step allows, and what it leaves of the overlap it takes
    up within `stop_time`: at rest a corner stands exactly on its stop. With overlap o and its rate
    v the force is h + k o + d v, at least 0; then h grows by k o dt / stop_time.
    Source: derived here from an augmented Lagrangian with one step of its multiplier h in a time
    step; such multipliers in J. Nocedal and S. J. Wright, Numerical Optimization (Springer 2006),
    chapter 17 (from memory).
    """
    held = state.stops[side]
    sign = 1.0 if held > 0.0 or c > axle.bump else -1.0
    overlap = c - axle.bump if sign > 0.0 else -axle.droop - c
    push = sign * held + axle.stop_rate * overlap
    taken = sign * held + axle.stop_rate * overlap * dt / axle.stop_time
    state.stops[side] = sign * max(0.0, taken)
    pushed: float = sign * max(0.0, push + axle.stop_damping * sign * v)
    return pushed


@outer("ppppppppiid")
def press_corners(
    axles: Any,
    states: Any,
    laws: Any,
    places: Any,
    position: Any,
    speed: Any,
    force: Any,
    work: Any,
    count: int,
    terms: int,
    dt: float,
) -> None:
    """Joint force (N) on heave and moment (N m) on roll of `count` axles, into `force`.

    laws: (count, 7, terms) coefficients. places: (count, 2, 2) of heave and roll, among an engine's
    positions and among its freedoms, of which position, speed and force (m, rad, s, N, N m) are.
    dt: s. Springs push only, as `truck.spring_law` says; dampers act both ways; stops are
    one-sided. -sum(F dc/dq) on heave, -sum(F dc/dr) - k_bar r on roll, over both corners.
    Source: derived here from virtual work.
    """
    many = 100  # of an engine's joints; how many there are does not matter here
    own, kept = arrays(axles, (count,), AXLE), arrays(states, (count,), AXLE_STATE)
    law, place = arrays(laws, (count, 7, terms), FLOAT), arrays(places, (count, 2, 2), WHOLE)
    at, moving = arrays(position, (many,), FLOAT), arrays(speed, (many,), FLOAT)
    given, scratch = arrays(force, (many,), FLOAT), arrays(work, (7, 3), FLOAT)
    powers = arrays(work, (WORK,), FLOAT)[VALUES:]
    for i in range(count):
        heave, v_heave = place[i, 0, 0], place[i, 0, 1]
        roll, v_roll = place[i, 1, 0], place[i, 1, 1]
        q, r = at[heave], at[roll]
        if own[i].shocks:
            law_at(law[i], q, r, scratch, powers)
        moves = (q, moving[v_heave]), (r, moving[v_roll])
        on_heave, on_roll = _corners(own[i], kept[i], scratch, moves[0], moves[1], dt)
        given[v_heave], given[v_roll] = on_heave, on_roll


# --- tyres ------------------------------------------------------------------------------------


@inner
def slip(friction: float, force: Vector, stance: tuple[float, ...]) -> tuple[float, float]:
    """How far (m, x and y) a patch slips against friction until |T| = mu N again.

    force: (3,) N if it stuck. stance: A K A^T (3, 3), row by row from its diagonal on, N/m, first.
    Moved by -c t along t = T / |T|, the force falls by c A K A^T t: the least c with
    (T - c p_T)^2 = mu^2 (N - c p_N)^2. Where there is none, as on an axle that leans so far that
    slipping takes the load away first, it slips until T is gone.
    """
    k00, k01, k02, k11, k12 = stance[0], stance[1], stance[2], stance[3], stance[4]
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


@inner
def _hanging(axle: Any, spring: float, stance: tuple[float, ...], weight: Vector) -> Vector:
    """w of a disc in the air, A K^-1 A^T m g - F0 A_z / k_z."""
    ex, ey, ez, zx, zy, zz = stance[6], stance[7], stance[8], stance[9], stance[10], stance[11]
    xx, xy, xz = ey * zz - ez * zy, ez * zx - ex * zz, ex * zy - ey * zx
    wx, wy, wz = weight
    a = (xx * wx + xy * wy + xz * wz) / axle.rates[0]
    b = (ex * wx + ey * wy + ez * wz) / axle.rates[1]
    c = (zx * wx + zy * wy + zz * wz - spring) / axle.rates[2]
    return a * xx + b * ex + c * zx, a * xy + b * ey + c * zy, a * xz + b * ez + c * zz


@inner
def _stand(
    axle: Any, state: Any, origin: Vector, turn: _Rows, spin: float
) -> tuple[tuple[float, ...], tuple[float, float]]:
    """A K A^T, wheel axis, A_z and C + rho on the axle's middle; and how far the discs roll,
    x and y."""
    for k in range(9):
        state.turn[k] = turn[k]
    xx, ex, zx, xy, ey, zy, xz, ez, zz = turn
    square = max(1e-12, 1.0 - ez * ez)
    s = math.sqrt(square)
    angle = spin + math.atan2(-xz, xx * ey - xy * ex)  # of the disc's own x axis, both times s
    roll = axle.radius * (angle - state.angle) / s
    state.angle = angle
    kx, ky, kz = axle.rates[0], axle.rates[1], axle.rates[2]
    ax, ay, az = kx * xx, kx * xy, kx * xz
    bx, by, bz = ky * ex, ky * ey, ky * ez
    cx, cy, cz = kz * zx, kz * zy, kz * zz
    rise, up = axle.rise, axle.radius / s
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


@inner
def _roll_apart(axle: Any, state: Any, patches: Any, ex: float, ey: float) -> None:
    """An open differential lets the left wheel roll ahead and the right one back, which counts as
    slipping."""
    for n in range(axle.first, axle.last):
        patch = patches[n]
        share = state.apart * (1 - 2 * (patch.wheel % 2)) / math.hypot(ex, ey)
        x, y = share * ey, -share * ex
        patch.x += x
        patch.y += y
        patch.slip[0] += x
        patch.slip[1] += y


@inner
def _touch(
    axle: Any,
    patches: Any,
    stance: tuple[float, ...],
    rolled: tuple[float, float],
    about: Vector,
    gravity: Vector,
) -> tuple[Vector, Vector, float, float]:
    """Force and moment of `press`, and what pulls the left and the right wheel round, N; moves the
    patches on."""
    k00, k01, k02, k11, k12, k22, ex, ey, ez, zx, zy, zz, ox, oy, oz = stance
    cx, cy, cz = about
    gx, gy, gz = gravity
    damp_along, damp_up = axle.damping_along, axle.damping_up
    all_x = all_y = all_z = mx = my = mz = left = right = 0.0
    for n in range(axle.first, axle.last):
        patch = patches[n]
        side = patch.wheel % 2
        mass, across, along, spring = patch.mass, patch.across, patch.along, patch.spring
        wx, wy, wz = mass * gx, mass * gy, mass * gz
        px = ox + across * ex + along * (ey * zz - ez * zy)
        py = oy + across * ey + along * (ez * zx - ex * zz)
        pz = oz + across * ez + along * (ex * zy - ey * zx)
        on, x, y, z = patch.on, patch.give[0], patch.give[1], patch.give[2]
        was_x, was_y, was_z = x, y, z
        patch_x, patch_y = patch.x + rolled[0], patch.y + rolled[1]
        if not on:
            x, y, z = _hanging(axle, spring, stance, (wx, wy, wz))
            was_x, was_y, was_z = x, y, z
            if pz + z < 0.0:
                on, patch_x, patch_y, was_z = True, px + x, py + y, -pz
        load = 0.0
        if on:
            x, y, z = patch_x - px, patch_y - py, -pz
            fx = k00 * x + k01 * y + k02 * z + spring * zx - wx
            fy = k01 * x + k11 * y + k12 * z + spring * zy - wy
            fz = k02 * x + k12 * y + k22 * z + spring * zz - wz
            grip = axle.friction[side]
            limit = grip * fz
            if fz > 0.0 and fx * fx + fy * fy > limit * limit:
                sx, sy = slip(grip, (fx, fy, fz), stance)
                patch_x, patch_y = patch_x + sx, patch_y + sy
                patch.slip[0] += sx
                patch.slip[1] += sy
                x, y = x + sx, y + sy
                fx = fx + k00 * sx + k01 * sy
                fy = fy + k01 * sx + k11 * sy
                fz = fz + k02 * sx + k12 * sy
            pressed = fz + damp_up * (z - was_z)
            if fz <= 0.0:
                on = False
                x, y, z = _hanging(axle, spring, stance, (wx, wy, wz))
            elif pressed >= 0.0:  # a damper alone never pulls
                fx += damp_along * (x - was_x)
                fy += damp_along * (y - was_y)
                load = pressed
                all_x, all_y, all_z = all_x + fx, all_y + fy, all_z + load
                rx, ry = patch_x - cx, patch_y - cy
                if side:
                    right += fx * ey - fy * ex
                else:
                    left += fx * ey - fy * ex
                mx += ry * load + cz * fy
                my -= cz * fx + rx * load
                mz += rx * fy - ry * fx
        patch.on, patch.x, patch.y, patch.load = on, patch_x, patch_y, load
        patch.give[0], patch.give[1], patch.give[2] = x, y, z
        mx += y * wz - z * wy
        my += z * wx - x * wz
        mz += x * wy - y * wx
    return (all_x, all_y, all_z), (mx, my, mz), left, right


@inner
def _press(
    axle: Any,
    state: Any,
    patches: Any,
    origin: Vector,
    turn: _Rows,
    about: Vector,
    gravity: Vector,
    roll: float,
) -> tuple[Vector, Vector]:
    stance, rolled = _stand(axle, state, origin, turn, axle.shaft * roll)
    if axle.open and state.apart != 0.0:
        _roll_apart(axle, state, patches, stance[6], stance[7])
    force, moment, left, right = _touch(axle, patches, stance, rolled, about, gravity)
    level = math.hypot(stance[6], stance[7])
    state.torque = -axle.shaft * axle.radius * (left + right) / level
    if axle.open and not (math.isinf(axle.friction[0]) or math.isinf(axle.friction[1])):
        # Its speed, m in a step: wheels as heavy as a step can follow on their tyres.
        firm = axle.firm + axle.damping_along * axle.discs
        state.apart += (right - left) / level / (4 * firm)
    return force, moment


@outer("pppppii")
def press(axles: Any, states: Any, patches: Any, moves: Any, out: Any, discs: int, i: int) -> None:
    """Tyre force (N) on the i-th axle and its moment (N m) about a point, into `out` (6,).

    moves: (19,) place of the axle's frame, at its roll centre, m; its rotation (9,); the point,
    m; gravity, m/s^2; and its roll against the chassis, rad, by which a shaft turns the wheels, all
    in table axes. Moves the patches (discs,) on by a step: call it once in each.
    """
    own, kept = arrays(axles, (2,), AXLE), arrays(states, (2,), AXLE_STATE)
    touching, m = arrays(patches, (discs,), PATCH), arrays(moves, (19,), FLOAT)
    given = arrays(out, (6,), FLOAT)
    origin, about, gravity = (m[0], m[1], m[2]), (m[12], m[13], m[14]), (m[15], m[16], m[17])
    turn = (m[3], m[4], m[5], m[6], m[7], m[8], m[9], m[10], m[11])
    force, moment = _press(own[i], kept[i], touching, origin, turn, about, gravity, m[18])
    for k in range(3):
        given[k], given[3 + k] = force[k], moment[k]


@outer("pppi")
def wheels(patches: Any, states: Any, out: Any, discs: int) -> None:
    """Of each wheel load (N), how far it has slipped, straight from where it began (m), and how far
    it has moved on its axle, along the axle's own axes (3,) m: into `out` (4, 5)."""
    touching, kept = arrays(patches, (discs,), PATCH), arrays(states, (2,), AXLE_STATE)
    given = arrays(out, (4, 5), FLOAT)
    for wheel in range(4):
        given[wheel, 0] = given[wheel, 2] = given[wheel, 3] = given[wheel, 4] = 0.0
        x = y = 0.0
        count = 0
        turn = kept[wheel // 2].turn
        for n in range(discs):
            patch = touching[n]
            if patch.wheel == wheel:
                count += 1
                x += patch.slip[0]
                y += patch.slip[1]
                given[wheel, 0] += patch.load
                for k in range(3):
                    for way in range(3):
                        given[wheel, 2 + k] += patch.give[way] * turn[3 * way + k]
        given[wheel, 1] = math.hypot(x, y) / count
        for k in range(2, 5):
            given[wheel, k] /= count


# --- a whole step -----------------------------------------------------------------------------


@inner
def _held_axle(
    axle: Any,
    state: Any,
    law: Any,
    patches: Any,
    moves: Any,
    k: int,
    gravity: Vector,
    dt: float,
    scratch: Any,
    powers: Any,
) -> tuple[Vector, Vector, float, float]:
    q, qv, r, rv = moves[k], moves[k + 1], moves[k + 2], moves[k + 3]
    cg = (moves[k + 4], moves[k + 5], moves[k + 6])
    origin = (moves[k + 7], moves[k + 8], moves[k + 9])
    turn = _rows(moves[k + 10], moves[k + 11], moves[k + 12], moves[k + 13])
    if not axle.sprung:
        force, moment = _press(axle, state, patches, origin, turn, cg, gravity, 0.0)
        return force, moment, 0.0, 0.0
    if axle.links or axle.shocks:
        law_at(law, q, r, scratch, powers)
    on_heave, on_roll = _corners(axle, state, scratch, (q, qv), (r, rv), dt)
    if axle.links:
        true = true_place(axle, scratch, cg, origin, turn, q, r)
        force, moment = _press(axle, state, patches, true[1], true[0], cg, gravity, r)
        moment, more = make_up(axle, scratch, true, force, moment, gravity)
        on_heave, on_roll = on_heave + more[0], on_roll + more[1]
    else:
        force, moment = _press(axle, state, patches, origin, turn, cg, gravity, r)
    return force, moment, on_heave, on_roll + state.torque


@outer("pppppppiid")
def step_held(
    axles: Any,
    states: Any,
    laws: Any,
    patches: Any,
    moves: Any,
    out: Any,
    work: Any,
    discs: int,
    terms: int,
    dt: float,
) -> None:
    """Of each axle, front first: force (N) and moment (N m) on it about the engine's CG, and what
    its heave (N) and roll (N m) joints are given, into `out` (16,); once a step.

    moves: (31,) for each axle heave and its speed, roll and its speed, CG and roll centre as the
    engine has them (3,) each, and its quaternion x, y, z, w; and gravity, m/s^2. laws: (2, 7,
    terms). dt: s.
    """
    own, kept = arrays(axles, (2,), AXLE), arrays(states, (2,), AXLE_STATE)
    law, touching = arrays(laws, (2, 7, terms), FLOAT), arrays(patches, (discs,), PATCH)
    m, given = arrays(moves, (2 * MOVES + 3,), FLOAT), arrays(out, (16,), FLOAT)
    scratch, powers = arrays(work, (7, 3), FLOAT), arrays(work, (WORK,), FLOAT)[VALUES:]
    gravity = (m[2 * MOVES], m[2 * MOVES + 1], m[2 * MOVES + 2])
    for i in range(2):
        force, moment, heave, roll = _held_axle(
            own[i], kept[i], law[i], touching, m, MOVES * i, gravity, dt, scratch, powers
        )
        for k in range(3):
            given[8 * i + k], given[8 * i + 3 + k] = force[k], moment[k]
        given[8 * i + 6], given[8 * i + 7] = heave, roll


@outer("pppppppii")
def step_rolling(
    axles: Any,
    laws: Any,
    discs: Any,
    moves: Any,
    gives: Any,
    out: Any,
    work: Any,
    count: int,
    terms: int,
) -> None:
    """Moment (N m) on an axle whose wheels turn, and what besides on heave (N) and roll (N m), into
    `out` (5,); see `engines.rolling`.

    discs: (count, 8), place (3,) m from the roll centre at ride height, mass, kg, tyre's rates
    along the axle's axes (3,), N/m, and force at ride height, N. moves: (17,) heave, roll, roll
    centre (3,) m, rotation (9,) and gravity (3,) m/s^2. gives: (count, 3) m of each disc up, ahead
    and aside. laws: (1, 7, terms).
    """
    axle, law = arrays(axles, (1,), AXLE)[0], arrays(laws, (7, terms), FLOAT)
    disc, m = arrays(discs, (count, 8), FLOAT), arrays(moves, (17,), FLOAT)
    gave, given = arrays(gives, (count, 3), FLOAT), arrays(out, (5,), FLOAT)
    q, r, origin, gravity = m[0], m[1], (m[2], m[3], m[4]), (m[14], m[15], m[16])
    turn = (m[5], m[6], m[7], m[8], m[9], m[10], m[11], m[12], m[13])
    to_cg = (
        axle.to_point[0] + axle.to_cg[0],
        axle.to_point[1] + axle.to_cg[1],
        axle.to_point[2] + axle.to_cg[2],
    )
    cg = _from(origin, turn, to_cg)
    scratch, powers = arrays(work, (7, 3), FLOAT), arrays(work, (WORK,), FLOAT)[VALUES:]
    at = law_at(law, q, r, scratch, powers)
    followed = true_place(axle, at, cg, origin, turn, q, r)
    ahead, up = -turn[6], -turn[8]
    down = axle.radius / math.hypot(ahead, up)
    force, true, straight = (0.0, 0.0, 0.0), (0.0, 0.0, 0.0), (0.0, 0.0, 0.0)
    for n in range(count):
        x, y, z, mass = disc[n, 0], disc[n, 1], disc[n, 2], disc[n, 3]
        dz, dx, dy = gave[n, 0], gave[n, 1], gave[n, 2]
        pushed = (disc[n, 4] * dx, disc[n, 5] * dy, disc[n, 6] * dz + disc[n, 7])
        fx, fy, fz = _rotated(turn, pushed)
        f = (fx - mass * gravity[0], fy - mass * gravity[1], fz - mass * gravity[2])
        touch = (x + dx + ahead * down, y + dy, z + dz + up * down)
        force = (force[0] + f[0], force[1] + f[1], force[2] + f[2])
        one = crossed(_less(_from(followed[1], followed[0], touch), cg), f)
        true = (true[0] + one[0], true[1] + one[1], true[2] + one[2])
        one = crossed(_less(_from(origin, turn, touch), cg), f)
        straight = (straight[0] + one[0], straight[1] + one[1], straight[2] + one[2])
    moment, more = make_up(axle, at, followed, force, true, gravity)
    turned = _less(moment, straight)
    given[0], given[1], given[2] = turned[0], turned[1], turned[2]
    given[3], given[4] = more[0], more[1]
