"""Balance of the whole truck on the tilted table, and its stiffness.

Virtual work: the load on each freedom is its twist times the wrench of everything it carries, less
what springs, bars and stops take. Equilibrium is zero load on every freedom. Derivatives are exact:
d(S_j . W) = (S_k x S_j) . W + S_j . dW for a freedom k that turns or shifts the freedom j.

Lengths over the wheelbase, forces over the weight: see `Builds`.

Source: virtual work, e.g. H. Goldstein, Classical Mechanics, chapter 1, with twists and wrenches of
R. Featherstone, Rigid Body Dynamics Algorithms (2008), chapter 2 (both from memory); the
derivatives are derived here from these.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from crossfall.statics.builds import Builds, Ints
from crossfall.statics.differentials import shared
from crossfall.statics.kinematics import Pose, carry, cross, frames_at, gravity_direction, skew
from crossfall.statics.tyres import Contact, Discs, Patches, contact, discs, history
from crossfall.truck.axle_law import BY_Q, BY_QQ, BY_QR, BY_R, BY_RR, VALUE
from crossfall.truck.model import Array, Flags


@dataclass(frozen=True)
class Balance:
    """Loads on the freedoms, with everything the continuation needs.

    load: (n, B). rates: (n + 1, n + 1, B) its derivatives by the unknowns and theta; the last row
    is free. gaps: (g, B), positive where a tyre touches (2 p), a spring pushes (4), the bump stop
    is free (4), the droop stop is free (4), a soft spring is not bound (4, if any build has one), a
    tyre sticks (2 p). moment: (3, B) first moment of all weights, from the chassis' origin.
    gravity, d_gravity: (3, B), its direction and that by theta.
    """

    load: Array
    rates: Array
    gaps: Array
    moment: Array
    gravity: Array
    d_gravity: Array
    pose: Pose
    discs: Discs
    contact: Contact
    friction: Array
    ahead: Array

    @property
    def stiffness(self) -> Array:
        """(n, n, B), minus d load / d x."""
        return -self.rates[:-1, :-1]

    @property
    def slope(self) -> Array:
        """(n, B), d load / d theta."""
        return self.rates[:-1, -1]

    @property
    def history(self) -> Array:
        """Where the tyres hold the table, as `Patches.history`."""
        return history(self.contact.point[:2], self.contact.way, self.discs)


def balance(
    builds: Builds, heading: Array, x: Array, theta: Array, on: Flags | None, patches: Patches
) -> Balance:
    """Loads and stiffness at x (n, B), theta (B,), with the contacts and stops of `on` (g, B).

    `on` freezes which branch of every unilateral law is used, so that the result is smooth in x;
    but a tyre that does not stick may do either. Without it the gaps decide.

    heading, theta: (B,) rad. load_j = sum S_j . W - springs, stops and bars: all of it is 0 at
    rest. Shapes that do not fit raise numpy's ValueError.
    """
    shape = builds.disc_mass.shape
    points = shape[0] * shape[1]
    corners = slice(points, points + builds.corner_gaps)
    gravity, d_gravity = gravity_direction(heading, theta)
    pose = frames_at(builds, x)
    disc = discs(builds, pose)
    if builds.shaft.any():
        disc = replace(disc, arc=disc.arc + (builds.shaft * x[7::2])[:, None])
    touch = None if on is None else on[:points].reshape(shape)
    stick = None if on is None or len(on) <= corners.stop else on[corners.stop :].reshape(shape)
    touching = builds, pose, disc, patches, gravity, d_gravity, touch, stick
    tyres = shared(*touching) if builds.open.any() else contact(*touching)

    moment, wrench, slopes = _wrenches(builds, pose, disc, tyres, gravity, d_gravity)
    load, rates = _freedoms(pose, wrench, slopes)
    if builds.shaft.any():
        _shafts(builds, pose, tyres, patches.ahead, load, rates)
    gaps = np.empty((points + corners.stop, shape[-1]))
    gaps[:points], gaps[corners.stop :] = (
        tyres.gap.reshape(points, -1),
        tyres.spare.reshape(points, -1),
    )
    pushing = None if on is None else on[corners]
    _springs(builds, x, pose.corners, pushing, load, rates, gaps[corners])
    _constrain(builds, x, load, rates)
    return Balance(
        load,
        rates,
        gaps,
        moment,
        gravity,
        d_gravity,
        pose,
        disc,
        tyres,
        patches.friction,
        patches.ahead,
    )


def _wrenches(
    builds: Builds, pose: Pose, disc: Discs, tyres: Contact, gravity: Array, d_gravity: Array
) -> tuple[Array, Array, Array]:
    """First moment of all weights, (3, B); weight and contact forces on every body about the
    chassis' origin, (6, 3, B); derivatives by their twists and theta, (6, 7, 3, B)."""
    mass, g, dg, across = builds.mass, gravity[:, None], d_gravity[:, None], skew(gravity)
    moment = carry(pose.turn, builds.moment)
    moment += mass * pose.origin
    # Weights that twist with their body: not the wheels that stand, whose give undoes it.
    down = builds.disc_mass * tyres.touch
    up = builds.disc_mass - down
    lost = down.sum(axis=1)
    turned, moved = moment.copy(), mass.copy()
    turned[:, :2] += (up * tyres.give - down * disc.point).sum(axis=2)
    moved[:2] -= lost
    moment[:, :2] += (builds.disc_mass * tyres.give).sum(axis=2)

    wrench, slopes = np.empty((6, *mass.shape)), np.empty((6, 7, *mass.shape))
    force, arms = tyres.force, skew(tyres.arm)
    wrench[:3] = cross(moment, g)
    wrench[:3, :2] += np.einsum("ijapb,japb->iab", arms, force)
    np.multiply(mass, g, out=wrench[3:])
    wrench[3:, :2] += force.sum(axis=2)
    np.einsum("ijb,jkcb->ikcb", across, skew(turned), out=slopes[:3, :3])
    np.multiply(-moved, across[:, :, None], out=slopes[:3, 3:6])
    slopes[:3, 6] = cross(moment, dg)
    slopes[:3, :, :2] += np.einsum("ijapb,jkapb->ikab", arms, tyres.d_force)
    slopes[:3, :, :2] -= np.einsum("ijapb,jkapb->ikab", skew(tyres.spring)[:, :2], tyres.d_point)
    rolling = (disc.ahead[:, None] * tyres.turning)[:, :, :, 0] * lost
    slopes[:3, :2, :2] += np.einsum("ijb,jkab->ikab", across[:, :2], rolling)
    if up.any():
        hanging = (up * builds.disc_mass).sum(axis=1) * tyres.soft[:, :, :, 0]
        swing = np.einsum("ijb,jkab->ikab", across, hanging)
        slopes[:3, :3, :2] -= np.einsum("ijab,jkb->ikab", swing, across)
        slopes[:3, 6, :2] -= carry(swing, dg)
    slopes[3:, :, 2] = 0.0
    np.sum(tyres.d_force, axis=3, out=slopes[3:, :, :2])
    slopes[3:, 6] += mass * dg
    return moment.sum(axis=1), wrench, slopes


def _freedoms(pose: Pose, wrench: Array, slopes: Array) -> tuple[Array, Array]:
    """Load (n, B) on the freedoms, and its derivatives (n + 1, n + 1, B)."""
    turning, joints, count = pose.turning, pose.joints, wrench.shape[-1]
    # How the wrenches move by x, y, z, yaw, pitch, roll, the own heave and roll, and theta.
    moves = np.empty((6, 9, 3, count))
    moves[:, :3] = slopes[:, 3:6]
    moves[:3, :3] += skew(wrench[3:])  # shifting it all shifts the chassis' origin
    np.einsum("ijcb,jkb->ikcb", slopes[:, :3], turning, out=moves[:, 3:6])
    own = np.einsum("ijab,jkab->ikab", slopes[:, :6, :2], joints)
    moves[:, 6:8, :2], moves[:, 8] = own, slopes[:, 6]

    n = 10
    load, rates = np.empty((n, count)), np.zeros((n + 1, n + 1, count))
    total = wrench.sum(axis=1)
    load[:3] = total[3:]
    load[3:6] = np.einsum("ijb,ib->jb", turning, total[:3])
    load[6:].reshape(2, 2, count)[:] = np.einsum("ikab,iab->akb", joints, wrench[:, :2])

    whole = np.empty((6, n + 1, count))
    whole[:, :6] = moves[:, :6].sum(axis=2)
    whole[:, 6:10].reshape(6, 2, 2, count)[:] = own.swapaxes(1, 2)
    whole[:, 10] = moves[:, 8].sum(axis=1)
    rates[:3] = whole[3:]
    np.einsum("ijb,ikb->jkb", turning, whole[:3], out=rates[3:6])
    rows = np.einsum("mkab,mjab->akjb", joints, moves[:, :, :2]).reshape(4, 9, count)
    rates[6:n, :6], rates[6:n, n] = rows[:, :6], rows[:, 8]
    rates[6:8, 6:8], rates[8:n, 8:n] = rows[:2, 6:8], rows[2:, 6:8]

    # Freedoms that come before turn and shift those that come after.
    bent = np.einsum("ikb,ijb->kjb", turning, cross(turning, total[:3, None]))
    rates[4, 3] += bent[0, 1]
    rates[5, 3:5] += bent[:2, 2]
    bent = cross(joints[3:], wrench[3:, None, :2]) + cross(joints[:3], wrench[:3, None, :2])
    rates[6:n, 3:6] += np.einsum("ikb,ijab->ajkb", turning, bent).reshape(4, 3, count)
    bent = np.einsum("ijkab,iab->ajkb", pose.bends, wrench[:, :2])
    rates[6:8, 6:8] += bent[0]
    rates[8:n, 8:n] += bent[1]
    return load, rates


def _shafts(
    builds: Builds, pose: Pose, tyres: Contact, ahead: Array, load: Array, rates: Array
) -> None:
    """Wheels that turn by `builds.shaft` as their axle rolls: what that adds to loads and rates.

    A disc that turns rolls its patch ahead by R, which gives its tyre as much as shifting the axle
    back would, and takes the force along at R: by virtual work, and that is the shaft's torque.
    """
    way = np.broadcast_to(builds.radius * ahead, (2, *tyres.touch.shape))
    force = -np.einsum("ikapb,kapb->iapb", tyres.d_force[:, 3:5], way)
    point = np.zeros_like(force)
    point[:2] = way - np.einsum("ikapb,kapb->iapb", tyres.d_point[:, 3:5], way)
    point *= tyres.touch
    turns = cross(tyres.arm, force) + cross(point, tyres.spring)
    wrench = builds.shaft * np.concatenate([turns, force]).sum(axis=2)
    torque = -builds.shaft * (way * tyres.force[:2]).sum(axis=(0, 2))
    by = -builds.shaft * np.einsum("iapb,ikapb->kab", way, tyres.d_force[:2])
    own = -(builds.shaft**2) * (way * force[:2]).sum(axis=(0, 2))
    for axle, roll in enumerate((7, 9)):
        joints, moved = pose.joints[:, :, axle], by[:, axle]
        load[roll] += torque[axle]
        rates[roll, :3] += moved[3:6]
        rates[roll, 3:6] += np.einsum("ikb,ib->kb", pose.turning, moved[:3])
        rates[roll, roll - 1 : roll + 1] += np.einsum("ikb,ib->kb", joints, moved[:6])
        rates[roll, 10] += moved[6]
        rates[roll, roll] += own[axle]
        rates[:3, roll] += wrench[3:, axle]
        rates[3:6, roll] += np.einsum("ikb,ib->kb", pose.turning, wrench[:3, axle])
        rates[roll - 1 : roll + 1, roll] += np.einsum("ikb,ib->kb", joints, wrench[:, axle])


def _springs(
    builds: Builds,
    x: Array,
    corners: Array,
    on: Flags | None,
    load: Array,
    rates: Array,
    gaps: Array,
) -> None:
    """Corner springs that only push, stops and anti-roll bars; fills in the gaps (12 or 16, B)."""
    gaps = gaps.reshape(-1, 2, 2, gaps.shape[-1])  # what, axle, side
    corners = corners.transpose(1, 2, 0, 3)
    travel = corners[VALUE]
    np.multiply(builds.spring_rate, travel, out=gaps[0])
    gaps[0] += builds.preload
    np.subtract(builds.bump, travel, out=gaps[1])
    np.add(travel, builds.droop, out=gaps[2])
    np.subtract(builds.stage_at, travel, out=gaps[3:])
    free = np.asarray(gaps >= 0 if on is None else on.reshape(gaps.shape))
    push, stopped = free[0], ~free[1:3]
    force = gaps[0] * push
    rate = builds.spring_rate * push
    if stopped.any():
        pressed = gaps[1:3] * stopped
        force += builds.stop_rate * (pressed[1] - pressed[0])
        rate += builds.stop_rate * stopped.sum(axis=0)
    if len(builds.stage_rate):
        more = (builds.stage_rate * ~free[3:]).sum(axis=0)
        force -= more * gaps[3]
        rate += more
    by_q, by_r = corners[BY_Q], corners[BY_R]
    load[-4::2] -= (force * by_q).sum(axis=1)
    load[-3::2] -= (force * by_r).sum(axis=1) + builds.anti_roll * x[-3::2]
    heave = (rate * by_q * by_q + force * corners[BY_QQ]).sum(axis=1)
    mixed = (rate * by_q * by_r + force * corners[BY_QR]).sum(axis=1)
    turn = (rate * by_r * by_r + force * corners[BY_RR]).sum(axis=1) + builds.anti_roll
    for axle, q in enumerate((6, 8)):
        rates[q, q] -= heave[axle]
        rates[q, q + 1] -= mixed[axle]
        rates[q + 1, q] -= mixed[axle]
        rates[q + 1, q + 1] -= turn[axle]
    if builds.held.any():
        still = builds.held[::2] & builds.held[1::2]
        gaps[:, still[:, None].repeat(2, axis=1)] = 1.0


def _constrain(builds: Builds, x: Array, load: Array, rates: Array) -> None:
    """Exact constraints: held joints stay at zero, tied axles heave equally."""
    n = len(x)
    if builds.tied.any():
        front, rear, tied = n - 4, n - 2, builds.tied
        for rows in (load, rates):
            rows[front, ..., tied] += rows[rear, ..., tied]
            rows[rear, ..., tied] = 0.0
        load[rear, tied] = x[front, tied] - x[rear, tied]
        rates[rear, front, tied] = 1.0
        rates[rear, rear, tied] = -1.0
    if builds.held.any():
        for joint in range(4):
            row, held = n - 4 + joint, builds.held[joint]
            load[row, held] = -x[row, held]
            rates[row][:, held] = 0.0
            rates[row, row, held] = -1.0


def gap_slopes(builds: Builds, at: Balance, gap: Ints) -> Array:
    """(n + 1, B) derivatives of one gap per case, by the unknowns and theta; gap: (B,) int, its row
    in `Balance.gaps`. Chain rule through the twists: d gap / dx_j = S_j . (d gap / d twist).
    """
    n, cases = len(at.load), np.arange(len(gap))
    points, corners = 2 * builds.disc_mass.shape[1], builds.corner_gaps
    out = np.zeros((n + 1, len(gap)))
    for who, slopes in (
        (np.flatnonzero(gap < points), _touch_slopes),
        (np.flatnonzero(gap >= points + corners), _stick_slopes),
    ):
        if len(who):
            axle, point = np.divmod(gap[who] % (points + corners), points // 2)
            rates, own = slopes(builds, at, (axle, point, who)), 6 + 2 * axle
            out[:3, who], out[n, who] = rates[3:6], rates[6]
            out[3:6, who] = np.einsum("ikb,ib->kb", at.pose.turning[:, :, who], rates[:3])
            joints = at.pose.joints[:, :, axle, who]
            out[own, who], out[own + 1, who] = np.einsum("ikb,ib->kb", joints, rates[:6])
            if slopes is _stick_slopes:
                way = builds.radius[axle, 0, who] * at.ahead[:, axle, 0, who]
                out[own + 1, who] -= builds.shaft[axle, who] * (way * rates[3:5]).sum(axis=0)

    which = np.clip(gap - points, 0, corners - 1)
    kind, axle, side = which // 4, which // 2 % 2, which % 2
    one = np.ones(len(gap))
    rate = np.stack([builds.spring_rate[axle, 0, cases], -one, one, -one])
    rate = np.where(which == gap - points, rate[kind, cases], 0.0)
    for freedom, by in ((n - 4, BY_Q), (n - 3, BY_R)):
        out[freedom + 2 * axle, cases] += rate * at.pose.corners[side, by, axle, cases]
    return out


def _touch_slopes(builds: Builds, at: Balance, tyre: tuple[Ints, Ints, Ints]) -> Array:
    """(7, B) derivatives, by its axle's twist and theta, of how far a tyre each is pressed."""
    axle, _, who = tyre
    soft, arm = at.contact.soft[2][:, axle, 0, who], at.discs.point[:, *tyre]
    arm = arm + at.contact.hang[:, *tyre]
    mass, rise = builds.disc_mass[tyre], np.zeros((7, len(who)))
    rise[:3] = mass * cross(soft, at.gravity[:, who])
    rise[0] += arm[1]
    rise[1] -= arm[0]
    rise[5] = 1.0
    rise[6] = mass * (soft * at.d_gravity[:, who]).sum(axis=0)
    return np.asarray(-builds.tyre_rate[2, axle, 0, who] * rise)


def _stick_slopes(builds: Builds, at: Balance, tyre: tuple[Ints, Ints, Ints]) -> Array:
    """(7, B) derivatives, by its axle's twist and theta, of the spare grip of a tyre each."""
    force, slopes = at.contact.force[:2, *tyre], at.contact.d_force[:, :, *tyre]
    way = force / np.maximum(np.hypot(force[0], force[1]), 1e-300)
    return np.asarray(at.friction[tyre] * slopes[2] - (way[:, None] * slopes[:2]).sum(axis=0))
