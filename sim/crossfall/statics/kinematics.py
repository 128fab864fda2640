"""Where everything is: chassis pose, joints, and how points and axes move with them.

The table's plane is z = 0 and its axes are the truck's at the start; tilting the table is the same
as turning gravity the other way. A freedom is a twist (turning rate, velocity at the chassis'
origin), a load a wrench (moment about the chassis' origin, force), so that power is their product.
Places are relative to the chassis' origin, which moves with the truck. All of it is compiled.

Source: R. Featherstone, Rigid Body Dynamics Algorithms (2008), chapter 2, for twists and wrenches;
ISO 8855 for the order of yaw, pitch and roll (both from memory); the axles' own twists are derived
here from their law.
"""

from __future__ import annotations

import math
from typing import Any

from crossfall.statics.builds import row
from crossfall.truck.axle_law import (
    BY_Q,
    BY_QQ,
    BY_QR,
    BY_RR,
    PITCH,
    VALUE,
    YAW,
    X,
    Y,
    Z,
    law_at,
)
from crossfall.truck.to_compile import inner
from crossfall.truck.vectors import crossed, put

_POINT = row("point")


@inner
def product(a: Any, b: Any) -> float:
    """The power of twist a and wrench b, (6,) each."""
    total = 0.0
    for k in range(6):
        total += a[k] * b[k]
    return total


@inner
def set_gravity(case: Any, heading: float, theta: float) -> None:
    """Direction of gravity in table axes, and its derivative in theta; rad.

    g = (sin(theta) d, -cos(theta)) with downhill d = (-cos heading, sin heading) in the truck's
    axes.
    """
    sin, cos = math.sin(theta), math.cos(theta)
    ahead, left = -math.cos(heading), math.sin(heading)
    put(case.gravity, (sin * ahead, sin * left, -cos))
    put(case.d_gravity, (cos * ahead, cos * left, sin))


@inner
def set_frames(case: Any, builds: Any, laws: Any, b: int) -> None:
    """Frames and twists at the case's x: z-y-x angles, then the joints. builds: (rows, B); laws: of
    all axles, (7, terms, 2, B).

    R = Rz(yaw) Ry(pitch) Rx(roll); an axle's frame is R times what its law says.
    """
    x, turning, chassis = case.x, case.turning, case.body[2]
    cy, cp, cr = math.cos(x[3]), math.cos(x[4]), math.cos(x[5])
    sy, sp, sr = math.sin(x[3]), math.sin(x[4]), math.sin(x[5])
    put(turning[0], (0.0, 0.0, 1.0))
    put(turning[1], (-sy, cy, 0.0))
    put(turning[2], (cy * cp, sy * cp, -sp))
    up = (cy * sp, sy * sp, cp)
    for k in range(3):
        chassis[0, k] = turning[2, k]
        chassis[1, k] = cr * turning[1, k] + sr * up[k]
        chassis[2, k] = cr * up[k] - sr * turning[1, k]
        case.origin[2, k] = 0.0
    for axle in range(2):
        law_at(laws[:, :, axle, b], x[6 + 2 * axle], x[7 + 2 * axle], case.law[axle], case.power)
        inside_axes(case, builds, b, axle)
        own = case.inside
        for n in range(16):
            p, q, r = own[n, 0], own[n, 1], own[n, 2]
            for k in range(3):
                v = chassis[0, k] * p + chassis[1, k] * q + chassis[2, k] * r
                if n < 3:
                    case.body[axle, n, k] = v
                elif n == 3:
                    case.origin[axle, k] = v
                elif n < 6:
                    case.joints[axle, n - 4, k] = v
                elif n < 8:
                    case.joints[axle, n - 6, 3 + k] = v
                elif n < 12:
                    case.bends[axle, n - 8, k] = v
                else:
                    case.bends[axle, n - 12, 3 + k] = v


@inner
def inside_axes(case: Any, builds: Any, b: int, axle: int) -> None:
    """Of an axle in chassis axes: its own axes (3), place (1), turning (2) and shifting (2) of
    heave and roll about the chassis' origin, and how those turn (4) and shift (4) with heave and
    roll: heave by heave, by roll, roll by heave, by roll.

    With A = Rz(yaw) Ry(pitch) Rx(roll), w = yaw' e_z + pitch' n + roll' a, n = Rz e_y, a = A e_x;
    the twist of a body at p about the origin shifts by p' - w x p.
    """
    law, out, roll = case.law[axle], case.inside, case.x[7 + 2 * axle]
    cy, sy = math.cos(law[YAW, VALUE]), math.sin(law[YAW, VALUE])
    cp, sp = math.cos(law[PITCH, VALUE]), math.sin(law[PITCH, VALUE])
    cr, sr = math.cos(roll), math.sin(roll)
    n, up_n, up = (-sy, cy, 0.0), (-cy, -sy, 0.0), (cy * sp, sy * sp, cp)
    ahead = (cy * cp, sy * cp, -sp)
    at = (
        builds[_POINT + axle, b] + law[X, VALUE],
        builds[_POINT + 2 + axle, b] + law[Y, VALUE],
        builds[_POINT + 4 + axle, b] + law[Z, VALUE],
    )
    for k in range(3):
        out[0, k] = ahead[k]
        out[1, k] = cr * n[k] + sr * up[k]
        out[2, k] = cr * up[k] - sr * n[k]
        out[3, k] = at[k]
        for h in range(2):  # without roll's own turn: that carries the x axis
            out[4 + h, k] = law[PITCH, BY_Q + h] * n[k] + (law[YAW, BY_Q + h] if k == 2 else 0.0)
    bend_r_q, bend_r_r = crossed(out[4], ahead), crossed(out[5], ahead)
    for k in range(3):
        out[5, k] += ahead[k]
    for h in range(2):
        shift = crossed(at, out[4 + h])
        for k in range(3):
            out[6 + h, k] = law[k, BY_Q + h] + shift[k]
    for h in range(2):
        for by in range(2):
            i = 2 * h + by
            twice = BY_QQ if i == 0 else BY_RR if i == 3 else BY_QR
            both = law[PITCH, BY_Q + h] * law[YAW, BY_Q + by]
            for k in range(3):
                turn = law[PITCH, twice] * n[k] + both * up_n[k]
                turn += law[YAW, twice] if k == 2 else 0.0
                if h == 1:
                    turn += bend_r_r[k] if by else bend_r_q[k]
                out[8 + i, k] = turn
            moved = (law[X, BY_Q + by], law[Y, BY_Q + by], law[Z, BY_Q + by])
            one, other = crossed(at, out[8 + i]), crossed(moved, out[4 + h])
            for k in range(3):
                out[12 + i, k] = law[k, twice] + one[k] + other[k]
