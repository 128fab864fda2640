"""Balance of the whole truck on the tilted table, and its stiffness.

Virtual work: the load on each freedom is its twist times the wrench of everything it carries, less
what springs, bars and stops take. Equilibrium is zero load on every freedom. Derivatives are exact:
d(S_j . W) = (S_k x S_j) . W + S_j . dW for a freedom k that comes before j in the chain.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

import numpy as np

from crossfall.statics.builds import Builds, Flags, Index, Ints
from crossfall.statics.kinematics import Pose, cross, gravity_direction, place
from crossfall.statics.tyres import Contact, Discs, _add_turning, discs, uniform
from crossfall.truck.model import Array


class Closure(Protocol):
    """How the table holds the tyres."""

    @property
    def freedoms(self) -> int: ...

    def take(self, index: Index) -> Closure: ...

    def contact(
        self, builds: Builds, discs: Discs, gravity: Array, d_gravity: Array, touch: Flags | None
    ) -> Contact: ...


@dataclass(frozen=True)
class Uniform:
    """Every contact force anti-parallel to gravity; table-plane motion and yaw do not matter."""

    freedoms: int = 7

    def take(self, index: Index) -> Uniform:
        return self

    def contact(
        self, builds: Builds, discs: Discs, gravity: Array, d_gravity: Array, touch: Flags | None
    ) -> Contact:
        return uniform(builds, discs, gravity, d_gravity, touch)


@dataclass(frozen=True)
class Balance:
    """Loads on the freedoms, with everything the continuation needs.

    load: (n, B). stiffness: (n, n, B), minus d load / d x. slope: (n, B), d load / d theta.
    gaps: (g, B), positive where a contact presses (2 p), a spring pushes (4), the bump stop is
    free (4), the droop stop is free (4).
    """

    load: Array
    stiffness: Array
    slope: Array
    gaps: Array
    pose: Pose
    discs: Discs
    contact: Contact


def balance(
    builds: Builds, heading: Array, x: Array, theta: Array, on: Flags | None, closure: Closure
) -> Balance:
    """Loads and stiffness at x (n, B), theta (B,), with the contacts and stops of `on` (g, B).

    `on` freezes which branch of every unilateral law is used, so the result is smooth in x;
    without it the gaps decide.
    """
    points = builds.disc_mass.shape[1]
    gravity, d_gravity = gravity_direction(heading, theta)
    pose = place(builds, x)
    disc = discs(builds, pose)
    touch = None if on is None else on[: 2 * points].reshape(2, points, -1)
    contact = closure.contact(builds, disc, gravity, d_gravity, touch)

    n = len(x)
    load, full = np.zeros((n, len(theta))), np.zeros((n, n + 1, len(theta)))
    for axle in (0, 1):
        wrench, slopes = _axle_wrench(builds, pose, disc, contact, gravity, d_gravity, axle)
        twists = np.concatenate([pose.base, pose.joint[:, :, axle]], axis=1)
        index = np.r_[: n - 4, n - 4 + 2 * axle, n - 3 + 2 * axle]
        _add(load, full, index, twists, wrench, slopes)
    cg = pose.origin + np.einsum("ijb,jb->ib", pose.turn, builds.chassis_cg)
    wrench, slopes = _weight(builds.chassis_mass, builds.chassis_mass * cg, gravity, d_gravity)
    _add(load, full, np.arange(n - 4), pose.base, wrench, slopes)

    stiffness, slope = -full[:, :n], full[:, n]
    gaps = _springs(builds, x, None if on is None else on[2 * points :], load, stiffness)
    gaps = np.concatenate([contact.load.reshape(2 * points, -1), gaps])
    _constrain(builds, x, load, stiffness, slope)
    return Balance(load, stiffness, slope, gaps, pose, disc, contact)


def _weight(mass: Array, moment: Array, gravity: Array, d_gravity: Array) -> tuple[Array, Array]:
    """Wrench (6, B) of a weight with first moment (3, B) about the table's origin, and (6, 7, B)
    derivatives: the CG moves by v + w x c."""
    wrench = np.concatenate([cross(moment, gravity), mass * gravity])
    arm = np.zeros((3, 7, len(mass)))
    _add_turning(arm, moment)
    for k in range(3):
        arm[k, 3 + k] = mass
    slopes = np.zeros((6, 7, len(mass)))
    slopes[:3] = cross(arm, gravity[:, None])
    slopes[:3, 6] = cross(moment, d_gravity)
    slopes[3:, 6] = mass * d_gravity
    return wrench, slopes


def _axle_wrench(
    builds: Builds,
    pose: Pose,
    disc: Discs,
    contact: Contact,
    gravity: Array,
    d_gravity: Array,
    axle: int,
) -> tuple[Array, Array]:
    """Weight of axle and wheels, and contact forces, on one axle: (6, B) and (6, 7, B)."""
    along = disc.along[:, axle, 0]
    own = np.einsum("ijb,jb->ib", pose.axle_turn[:, :, axle], builds.axle_cg[:, axle])
    wheels = builds.disc_mass[axle]
    mass = builds.axle_mass[axle] + wheels.sum(axis=0)
    moment = builds.axle_mass[axle] * (pose.roll_centre[:, axle] + own)
    moment = moment + (wheels * disc.wheel[:, axle]).sum(axis=1)
    moment = moment + along * (wheels * contact.travel[axle]).sum(axis=0)
    wrench, slopes = _weight(mass, moment, gravity, d_gravity)
    lift = (wheels * contact.d_travel[:, axle]).sum(axis=1)
    slopes[:3] += cross(along, gravity)[:, None] * lift

    force, d_force = contact.force[:, axle], contact.d_force[:, :, axle]
    point, d_point = disc.point[:, axle], disc.d_point[:, :, axle]
    wrench[:3] += cross(point, force).sum(axis=1)
    wrench[3:] += force.sum(axis=1)
    turning = cross(d_point, force[:, None]) + cross(point[:, None], d_force)
    slopes[:3] += turning.sum(axis=2)
    slopes[3:] += d_force.sum(axis=2)
    return wrench, slopes


def _add(
    load: Array, full: Array, index: Ints, twists: Array, wrench: Array, slopes: Array
) -> None:
    """Add one body's wrench to the loads, and its derivatives, by the freedoms that carry it."""
    load[index] += np.einsum("ajb,ab->jb", twists, wrench)
    moment, force = wrench[:3], wrench[3:]
    moved = np.einsum("acb,ckb->akb", slopes[:, :6], twists)
    block = np.einsum("ajb,akb->jkb", twists, moved)
    # (S_k x S_j) . W = w_j . (M x w_k + f x v_k) + v_j . (f x w_k)
    turning, sliding = twists[:3], twists[3:]
    bent = np.concatenate(
        [
            cross(moment[:, None], turning) + cross(force[:, None], sliding),
            cross(force[:, None], turning),
        ]
    )
    for j in range(1, len(index)):
        block[j, :j] += np.einsum("ab,akb->kb", twists[:, j], bent[:, :j])
    full[index[:, None], index] += block
    full[index, -1] += np.einsum("ajb,ab->jb", twists, slopes[:, 6])


def _springs(builds: Builds, x: Array, on: Flags | None, load: Array, stiffness: Array) -> Array:
    """Corner springs that only push, stops and anti-roll bars; returns the gaps (12, B)."""
    n = len(x)
    heave, roll, half = x[-4::2], x[-3::2], builds.half_spacing
    travel = np.stack([heave + half * roll, heave - half * roll], axis=1)
    spring = builds.preload + builds.spring_rate * travel
    above, below = travel - builds.bump, travel + builds.droop
    gaps = np.stack([spring, -above, below])
    push, bump, droop = np.asarray(gaps >= 0) if on is None else on.reshape(gaps.shape)
    force = np.where(push, spring, 0) + builds.stop_rate * (
        np.where(bump, 0, above) + np.where(droop, 0, below)
    )
    rate = builds.spring_rate * push + builds.stop_rate * (2.0 - bump - droop)
    for axle in (0, 1):
        q, r = n - 4 + 2 * axle, n - 3 + 2 * axle
        left, right, h = force[axle, 0], force[axle, 1], half[axle]
        load[q] -= left + right
        load[r] -= h * (left - right) + builds.anti_roll[axle] * roll[axle]
        left, right = rate[axle]
        stiffness[q, q] += left + right
        stiffness[q, r] += h * (left - right)
        stiffness[r, q] += h * (left - right)
        stiffness[r, r] += h * h * (left + right) + builds.anti_roll[axle]
    gaps[:, builds.held.reshape(2, 2, -1).all(axis=1)[:, None].repeat(2, axis=1)] = 1.0
    return gaps.reshape(12, -1)


def _constrain(builds: Builds, x: Array, load: Array, stiffness: Array, slope: Array) -> None:
    """Exact constraints: held joints stay at zero, tied axles heave equally."""
    n = len(x)
    if builds.tied.any():
        front, rear, tied = n - 4, n - 2, builds.tied
        for rows in (load, stiffness, slope):
            rows[front, ..., tied] += rows[rear, ..., tied]
            rows[rear, ..., tied] = 0.0
        load[rear, tied] = x[front, tied] - x[rear, tied]
        stiffness[rear, front, tied] = -1.0
        stiffness[rear, rear, tied] = 1.0
    if builds.held.any():
        for joint in range(4):
            row, held = n - 4 + joint, builds.held[joint]
            load[row, held] = -x[row, held]
            slope[row, held] = 0.0
            stiffness[row][:, held] = 0.0
            stiffness[row, row, held] = 1.0


def gap_slopes(builds: Builds, at: Balance, gap: Ints) -> Array:
    """(n + 1, B) derivatives of one gap per case, by the unknowns and theta; gap: (B,) int."""
    n, cases = len(at.load), np.arange(len(gap))
    points = builds.disc_mass.shape[1]
    out = np.zeros((n + 1, len(gap)))
    slopes = at.contact.d_load.reshape(7, 2 * points, -1)
    touching = gap < 2 * points
    point = np.where(touching, gap, 0)
    axle = point // points
    d_load = np.where(touching, slopes[:, point, cases], 0.0)
    out[: n - 4] = np.einsum("ab,ajb->jb", d_load[:6], at.pose.base)
    for joint in (0, 1):
        twist = at.pose.joint[:, joint, axle, cases]
        out[n - 4 + 2 * axle + joint, cases] = (d_load[:6] * twist).sum(axis=0)
    out[n] = d_load[6]

    which = np.where(touching, 0, gap - 2 * points)
    kind, axle, side = which // 4, which // 2 % 2, which % 2
    rate = np.stack([builds.spring_rate[axle, 0, cases], -np.ones(len(gap)), np.ones(len(gap))])
    rate = np.where(touching, 0.0, rate[kind, cases])
    arm = builds.half_spacing[axle, cases] * (1 - 2 * side)
    out[n - 4 + 2 * axle, cases] += rate
    out[n - 3 + 2 * axle, cases] += rate * arm
    return out
