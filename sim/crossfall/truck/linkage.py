"""Where a solid axle goes on its links: exact pose, and all that follows from it.

Links are rods of fixed length with a ball at either end; a wishbone is two that share one. Four of
them leave the axle two freedoms, which are named here by heave (how far the axle's centre rises
against the chassis) and roll (positive when the left wheel rises). The other four coordinates of
its pose solve |p + R a - c|^2 = l^2 for every link, with chassis end c, axle end a, both from the
axle's centre at ride height, and R = Rz(yaw) Ry(pitch) Rx(roll).

Arrays are stacked over cases: the first axis is the case.

Source: for the terms W. F. Milliken and D. L. Milliken, Race Car Vehicle Dynamics (SAE, 1995),
chapter 17, and J. C. Dixon, Suspension Geometry and Computation (Wiley, 2009) (both from memory);
poses and twists are derived here from rods of fixed length.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from crossfall.truck.model import Array, Links, Shocks, frozen

FREE = 4  # x, y, yaw, pitch: what the links decide
CLOSED = 1e-12  # of a link's length, to which they close
_LAST = 2e-6, 0.01  # of it, and rad: what Newton's method squares by its last correction
_ROUNDS = 14  # Newton corrections before it is said that they do not
_FAR = 0.6  # rad of yaw or pitch, beyond which it is another way of putting the links together
LEAST_HOLD = 0.02  # of the strongest: links that hold a freedom less do not hold it


class LinkageError(ValueError):
    """Links that make no suspension; its text is one clear sentence. row: of the part, if it is of
    one only."""

    def __init__(self, text: str, row: int | None = None) -> None:
        super().__init__(text)
        self.row = row


@dataclass(frozen=True)
class Placed:
    """The axle at K heaves and rolls.

    place: (K, 3) m, its centre from that at ride height; yaw, pitch: (K,) rad, roll is the given
    one. closed: (K,) whether the links reach.
    """

    place: Array
    yaw: Array
    pitch: Array
    closed: NDArray[np.bool_]


def rotations(yaw: Array, pitch: Array, roll: Array) -> Array:
    """(..., 3, 3) Rz(yaw) Ry(pitch) Rx(roll).

    rad, of shapes that broadcast, or numpy's ValueError.
    """
    (cy, sy), (cp, sp), (cr, sr) = ((np.cos(a), np.sin(a)) for a in (yaw, pitch, roll))
    out = np.empty((*np.broadcast_shapes(cy.shape, cp.shape, cr.shape), 3, 3))
    out[..., 0, 0], out[..., 1, 0], out[..., 2, 0] = cy * cp, sy * cp, -sp
    out[..., 0, 1] = cy * sp * sr - sy * cr
    out[..., 1, 1] = sy * sp * sr + cy * cr
    out[..., 2, 1] = cp * sr
    out[..., 0, 2] = cy * sp * cr + sy * sr
    out[..., 1, 2] = sy * sp * cr - cy * sr
    out[..., 2, 2] = cp * cr
    return out


def linkage_poses(chassis: Array, axle: Array, heave: Array, roll: Array) -> Placed:
    """Poses of K axles, each on its own four links (K, 4, 3), at heave (K,) m and roll (K,) rad.

    Newton's method from where the movement at ride height leads to.

    chassis, axle: m. Solves |p + R a - c|^2 = l^2 for x, y, yaw, pitch. Raises nothing where links
    do not reach: `Placed.closed`.
    """
    heave, roll = np.broadcast_arrays(np.asarray(heave, float), np.asarray(roll, float))
    length = ((axle - chassis) ** 2).sum(axis=-1)
    by_q, by_r = np.moveaxis(_rates(chassis, axle), -1, 0)
    free, closed = _close(
        chassis, axle, length, heave, roll, by_q * heave[:, None] + by_r * roll[:, None]
    )
    at = np.stack([free[:, 0], free[:, 1], heave], axis=1)
    return Placed(at, free[:, 2], free[:, 3], closed)


def _rates(chassis: Array, axle: Array) -> Array:
    """(K or 1, 4, 2) of x, y, yaw, pitch by heave and roll, at ride height."""
    if chassis.strides[0] == 0:  # one axle at many places
        chassis, axle = chassis[:1], axle[:1]
    still = np.zeros(len(chassis))
    rod, slopes = _slopes(chassis, axle, still, still, np.zeros((len(chassis), FREE)))
    about_x = axle[..., 1] * rod[..., 2] - axle[..., 2] * rod[..., 1]
    own = np.stack([rod[..., 2], about_x], axis=-1)
    return np.asarray(-np.linalg.solve(slopes + _hair(slopes), own))


def shock_ratio(links: Links, shocks: Shocks) -> float:
    """How far the left shock is pressed by a little heave of the axle, for each of that, at ride
    height.

    -(u . v), u along the shock, v how its foot moves for a heave of 1. Links that do not hold the
    axle give a huge number, no error.
    """
    (x, y, yaw, pitch), _ = np.moveaxis(_rates(links.chassis[None], links.axle[None])[0], -1, 0)
    foot = shocks.axle[0]
    along = (foot - shocks.chassis[0]) / shocks.lengths[0]
    fx, fy, fz = foot.tolist()
    moved = x + pitch * fz - yaw * fy, y + yaw * fx, 1.0 - pitch * fx
    return -float(along @ moved)


def _close(
    chassis: Array, axle: Array, length: Array, heave: Array, roll: Array, free: Array
) -> tuple[Array, NDArray[np.bool_]]:
    small = np.zeros(len(heave), dtype=bool)
    for _ in range(_ROUNDS):
        rod, slopes = _slopes(chassis, axle, heave, roll, free)
        miss = ((rod**2).sum(axis=-1) - length) / 2
        small = np.abs(miss).max(axis=1) < CLOSED * length.max(axis=1)
        if small.all():
            break
        change = np.linalg.solve(slopes + _hair(slopes), miss[..., None])[..., 0]
        most = np.abs(change[:, 2:]).max(axis=1, keepdims=True)
        free = free - change * np.minimum(1.0, 0.3 / np.maximum(most, 1e-300))
        free[:, 2:] = np.clip(free[:, 2:], -1.5, 1.5)
        small = (np.abs(miss).max(axis=1) < _LAST[0] * length.max(axis=1)) & (most[:, 0] < _LAST[1])
        if small.all():
            break
    return free, small & (np.abs(free[:, 2:]).max(axis=1) < _FAR)


def _hair(slopes: Array) -> Array:
    """A hair of stiffness, so that links that bind exactly give a huge step and no error."""
    scale = np.abs(slopes).max(axis=(1, 2), keepdims=True)
    return np.asarray(1e-14 * scale * np.eye(FREE))


def _slopes(
    chassis: Array, axle: Array, heave: Array, roll: Array, free: Array
) -> tuple[Array, Array]:
    """Rods (K, 4, 3) from chassis to axle end, and the derivatives (K, 4, 4) of half their squares
    by x, y, yaw, pitch."""
    yaw, pitch = free[:, 2], free[:, 3]
    arm = axle @ rotations(yaw, pitch, roll).swapaxes(1, 2)
    rod = arm - chassis
    rod[:, :, :2] += free[:, None, :2]
    rod[:, :, 2] += heave[:, None]
    by_yaw = rod[..., 1] * arm[..., 0] - rod[..., 0] * arm[..., 1]  # rod . (z x arm)
    # rod . (w x arm) = w . (arm x rod), written out: this is most of reading a file with links.
    about_x = arm[..., 1] * rod[..., 2] - arm[..., 2] * rod[..., 1]
    about_y = arm[..., 2] * rod[..., 0] - arm[..., 0] * rod[..., 2]
    slopes = np.empty((*rod.shape[:2], FREE))
    slopes[..., :2], slopes[..., 2] = rod[..., :2], by_yaw
    slopes[..., 3] = np.cos(yaw)[:, None] * about_y - np.sin(yaw)[:, None] * about_x
    return rod, slopes


def refuse(links: Links, end: str) -> None:
    """Raises LinkageError where the links leave the axle of `end` other than its two freedoms.

    Also raises where a rod has no length, where there are not four, and where the smallest singular
    value of what they hold is below LEAST_HOLD of the largest.
    """
    count = len(links.axle)
    names = f"the {end} links"
    short = np.flatnonzero(links.lengths == 0.0)
    if len(short):
        raise LinkageError(f"{links.names[short[0]]} has both ends at the same place")
    if count != FREE:
        freedoms = 6 - count
        left = "one freedom" if freedoms == 1 else f"{max(freedoms, 0) or 'no'} freedoms"
        raise LinkageError(
            f"{names} hold the axle with {count} rods, which leaves it {left} instead of two"
        )
    rod, slopes = _slopes(
        links.chassis[None], links.axle[None], np.zeros(1), np.zeros(1), np.zeros((1, FREE))
    )
    reach = np.abs(links.axle).max()
    hold = slopes[0] / np.linalg.norm(rod[0], axis=1, keepdims=True) / [1.0, 1.0, reach, reach]
    _, sizes, ways = np.linalg.svd(hold)
    if sizes[-1] < LEAST_HOLD * sizes[0]:
        loose = ("forwards", "sideways", "in yaw", "in pitch")[int(np.argmax(np.abs(ways[-1])))]
        raise LinkageError(f"{names} leave the axle a third freedom: nothing holds it {loose}")


@dataclass(frozen=True)
class Geometry:
    """What the links amount to at K heaves and rolls; (K,) unless said otherwise, m and rad.

    centre: (K, 3) of the axle from that at ride height. yaw, pitch. instant_centre: (K, 2) x and z
    in side view about which the axle turns when it heaves, truck axes on the chassis; infinite for
    parallel links. lean: angle from upright of the way the held wheel's lowest point goes when the
    axle heaves, positive forwards: the angle that anti-squat and anti-dive are the tangent of.
    roll_centre: height above the ground (at ride height) where the axle's middle does not go
    sideways when it rolls. roll_axis: slope of the line of such points, falling forwards if
    negative; the same number is the roll steer, rad of yaw for each of roll. heave_steer: rad/m.
    castor: rad/m, by which the axle tips back as it rises. wheelbase: m/m, how far the axle goes
    forwards as it rises.
    """

    centre: Array
    yaw: Array
    pitch: Array
    instant_centre: Array
    lean: Array
    roll_centre: Array
    roll_axis: Array
    heave_steer: Array
    castor: Array
    wheelbase: Array


def geometry(links: Links, x: float, radius: float, heave: Array, roll: Array) -> Geometry:
    """What the links of an axle at x (m) on wheels of `radius` (m) amount to at heave and roll.

    From the twists that four rods leave: a rod allows those in which both ends move alike along
    it. Raises LinkageError where they do not reach.

    heave: (K,) m, roll: (K,) rad. Instant centre: where v = 0 by heave, x + 1/w_y, z - v_x/w_y;
    lean = atan(v_x - R w_y); roll centre: where v_y = 0 by roll, R + z + v_y/w_x; roll axis
    w_z/w_x. Raises LinAlgError where the rods hold less than four freedoms.
    """
    heave, roll = np.broadcast_arrays(np.asarray(heave, float), np.asarray(roll, float))
    count = heave.shape[0]
    ends = (np.broadcast_to(e, (count, *e.shape)) for e in (links.chassis, links.axle))
    chassis, axle = ends
    if heave.any() or roll.any():
        at = linkage_poses(chassis, axle, heave, roll)
    else:  # at ride height
        still = np.zeros(count)
        at = Placed(np.zeros((count, 3)), still, still, np.ones(count, dtype=bool))
    if not at.closed.all():
        raise LinkageError(f"the links bind at {_where(heave, roll, at.closed)}")
    free = np.column_stack([at.place[:, :2], at.yaw, at.pitch])
    rod, slopes = _slopes(chassis, axle, heave, roll, free)
    # By heave a rod grows with its z, by roll with the turn about the axle's own x axis.
    turn = rotations(at.yaw, at.pitch, roll)
    arm = np.einsum("kij,knj->kni", turn, axle)
    own = np.stack(
        [rod[..., 2], np.einsum("kni,ki->kn", np.cross(arm, rod), turn[..., 0])], axis=-1
    )
    rates = -np.linalg.solve(slopes, own)  # (K, 4, 2) of x, y, yaw, pitch by heave and roll
    (dx, _, yaw_q, pitch_q), (_, dy, yaw_r, pitch_r) = rates[..., 0].T, rates[..., 1].T
    across = np.stack([-np.sin(at.yaw), np.cos(at.yaw), 0 * at.yaw], axis=1)
    up = np.array([0.0, 0.0, 1.0])
    spin_q = yaw_q[:, None] * up + pitch_q[:, None] * across
    spin_r = yaw_r[:, None] * up + pitch_r[:, None] * across + turn[..., 0]
    with np.errstate(divide="ignore", invalid="ignore"):  # level links meet nowhere
        ahead = 1.0 / spin_q[:, 1]
        above = -dx / spin_q[:, 1]
    middle = np.array([x, 0.0, radius]) + at.place
    contact_x = dx - radius * spin_q[:, 1]  # a wheel's lowest point is its radius below its centre
    height = radius + at.place[:, 2] + dy / spin_r[:, 0]
    return Geometry(
        centre=frozen(at.place),
        yaw=at.yaw,
        pitch=at.pitch,
        instant_centre=np.stack([middle[:, 0] + ahead, middle[:, 2] + above], axis=1),
        lean=np.arctan(contact_x),
        roll_centre=height,
        roll_axis=spin_r[:, 2] / spin_r[:, 0],
        heave_steer=yaw_q,
        castor=-spin_q[:, 1],
        wheelbase=dx,
    )


def _where(heave: Array, roll: Array, closed: NDArray[np.bool_]) -> str:
    first = int(np.argmax(~closed))
    return f"{heave[first] * 1e3:.0f} mm of heave and {np.degrees(roll[first]):.0f} deg of roll"
