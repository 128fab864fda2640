"""Balance of the whole truck on the tilted table, and its stiffness.

Virtual work: the load on each freedom is its twist times the wrench of everything it carries, less
what springs, bars and stops take. Equilibrium is zero load on every freedom. Derivatives are exact:
d(S_j . W) = (S_k x S_j) . W + S_j . dW for a freedom k that comes before j in the chain.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics.builds import Builds, Flags, Ints
from crossfall.statics.kinematics import Pose, carry, cross, gravity_direction, place
from crossfall.statics.tyres import Contact, Discs, Patches, add_turning, contact, discs
from crossfall.truck.model import Array


@dataclass(frozen=True)
class Balance:
    """Loads on the freedoms, with everything the continuation needs.

    load: (n, B). stiffness: (n, n, B), minus d load / d x. slope: (n, B), d load / d theta.
    gaps: (g, B), positive where a tyre touches (2 p), a spring pushes (4), the bump stop is
    free (4), the droop stop is free (4). cg: (3, B) of the whole truck, table axes.
    """

    load: Array
    stiffness: Array
    slope: Array
    gaps: Array
    cg: Array
    pose: Pose
    discs: Discs
    contact: Contact

    @property
    def held(self) -> tuple[Array, ...]:
        """Where the tyres hold the table, as `Patches.history`, and (B,) whether one slips."""
        way = self.contact.way
        slips = (way != 0).any(axis=(0, 1, 2))
        return self.contact.point[:2], self.discs.arc, self.discs.ahead[:2], way, slips


def balance(
    builds: Builds, heading: Array, x: Array, theta: Array, on: Flags | None, patches: Patches
) -> Balance:
    """Loads and stiffness at x (n, B), theta (B,), with the contacts and stops of `on` (g, B).

    `on` freezes which branch of every unilateral law is used, so that the result is smooth in x
    (but whether a tyre slips is free); without it the gaps decide.
    """
    points = builds.disc_mass.shape[1]
    gravity, d_gravity = gravity_direction(heading, theta)
    pose = place(builds, x)
    disc = discs(builds, pose)
    touch = None if on is None else on[: 2 * points].reshape(2, points, -1)
    tyres = contact(builds, disc, patches, gravity, d_gravity, touch)

    cg, wrench, slopes = _wrenches(builds, pose, tyres, gravity, d_gravity)
    load, stiffness, slope = _freedoms(pose.twists, wrench, slopes)
    springs = None if on is None else on[2 * points :]
    gaps = _springs(builds, x, springs, load, stiffness)
    gaps = np.concatenate([tyres.gap.reshape(2 * points, -1), gaps])
    _constrain(builds, x, load, stiffness, slope)
    return Balance(load, stiffness, slope, gaps, cg, pose, disc, tyres)


def _wrenches(
    builds: Builds, pose: Pose, tyres: Contact, gravity: Array, d_gravity: Array
) -> tuple[Array, Array, Array]:
    """CG (3, B); weight and contact forces on every body, (6, 3, B); derivatives (6, 7, 3, B)."""
    g, dg = gravity[:, None], d_gravity[:, None]
    bare = builds.mass * pose.origin + carry(pose.turn, builds.moment)
    moment = bare.copy()
    moment[:, :2] += (builds.disc_mass * tyres.give).sum(axis=2)
    cg = moment.sum(axis=1)

    # How the first moment of the weights moves; a weight c m moves by m (v + w x c).
    arm = np.zeros((3, 7, *builds.mass.shape))
    add_turning(arm, bare)
    for k in range(3):
        arm[k, 3 + k] = builds.mass
    arm[:, :, :2] += (builds.disc_mass * tyres.d_give).sum(axis=3)

    wrench, slopes = np.empty((6, *builds.mass.shape)), np.zeros((6, 7, *builds.mass.shape))
    wrench[:3], wrench[3:] = cross(moment, g), builds.mass * g
    slopes[:3] = cross(arm, g[:, None])
    slopes[:3, 6] += cross(moment, dg)
    slopes[3:, 6] += builds.mass * dg
    wrench[:3, :2] += cross(tyres.point, tyres.force).sum(axis=2)
    wrench[3:, :2] += tyres.force.sum(axis=2)
    turning = cross(tyres.d_point, tyres.force[:, None])
    turning += cross(tyres.point[:, None], tyres.d_force)
    slopes[:3, :, :2] += turning.sum(axis=3)
    slopes[3:, :, :2] += tyres.d_force.sum(axis=3)
    return cg, wrench, slopes


def _freedoms(twists: Array, wrench: Array, slopes: Array) -> tuple[Array, Array, Array]:
    """Load (n, B), stiffness (n, n, B) and slope in theta (n, B) on the freedoms."""
    per_body = np.einsum("ajcb,acb->jcb", twists, wrench)
    by_theta = np.einsum("ajcb,acb->jcb", twists, slopes[:, 6])
    moved = np.einsum("adcb,dkcb->akcb", slopes[:, :6], twists)
    block = np.einsum("ajcb,akcb->jkcb", twists, moved)
    # (S_k x S_j) . W = w_j . (M x w_k + f x v_k) + v_j . (f x w_k) for k before j
    turning, moment, force = twists[:3], wrench[:3, None], wrench[3:, None]
    bent = np.empty_like(twists)
    bent[:3] = cross(moment, turning) + cross(force, twists[3:])
    bent[3:] = cross(force, turning)
    for j in range(1, len(block)):
        block[j, :j] += np.einsum("acb,akcb->kcb", twists[:, j], bent[:, :j])

    k = len(block) - 2  # chassis freedoms come first
    n, count = k + 4, twists.shape[-1]
    load, slope, stiffness = np.empty((n, count)), np.empty((n, count)), np.zeros((n, n, count))
    load[:k], slope[:k] = per_body[:k].sum(axis=1), by_theta[:k].sum(axis=1)
    stiffness[:k, :k] = -block[:k, :k].sum(axis=2)
    for axle in (0, 1):
        own = slice(k + 2 * axle, k + 2 * axle + 2)
        load[own], slope[own] = per_body[k:, axle], by_theta[k:, axle]
        stiffness[:k, own] = -block[:k, k:, axle]
        stiffness[own, :k] = -block[k:, :k, axle]
        stiffness[own, own] = -block[k:, k:, axle]
    return load, stiffness, slope


def _springs(builds: Builds, x: Array, on: Flags | None, load: Array, stiffness: Array) -> Array:
    """Corner springs that only push, stops and anti-roll bars; returns the gaps (12, B)."""
    n = len(x)
    heave, roll, half = x[-4::2], x[-3::2], builds.half_spacing
    travel = np.stack([heave + half * roll, heave - half * roll], axis=1)
    spring = builds.preload + builds.spring_rate * travel
    above, below = travel - builds.bump, travel + builds.droop
    gaps = np.stack([spring, -above, below])
    free = np.asarray(gaps >= 0 if on is None else on.reshape(gaps.shape))
    push, bump, droop = free
    force = np.where(push, spring, 0) + builds.stop_rate * (
        np.where(bump, 0, above) + np.where(droop, 0, below)
    )
    rate = builds.spring_rate * push + builds.stop_rate * (2.0 - bump - droop)
    (left, right), (k_left, k_right) = force.swapaxes(0, 1), rate.swapaxes(0, 1)
    q, r = np.array([n - 4, n - 2]), np.array([n - 3, n - 1])
    load[q] -= left + right
    load[r] -= half * (left - right) + builds.anti_roll * roll
    sideways = half * (k_left - k_right)
    stiffness[q, q] += k_left + k_right
    stiffness[q, r] += sideways
    stiffness[r, q] += sideways
    stiffness[r, r] += half * half * (k_left + k_right) + builds.anti_roll
    if builds.held.any():
        still = builds.held[::2] & builds.held[1::2]
        gaps[:, still[:, None].repeat(2, axis=1)] = 1.0
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
    slopes = at.contact.d_gap.reshape(7, 2 * points, -1)
    touching = gap < 2 * points
    point = np.where(touching, gap, 0)
    axle = point // points
    d_load = np.where(touching, slopes[:, point, cases], 0.0)
    by_freedom = np.einsum("ab,ajb->jb", d_load[:6], at.pose.twists[:, :, axle, cases])
    out[: n - 4] = by_freedom[:-2]
    out[n - 4 + 2 * axle, cases], out[n - 3 + 2 * axle, cases] = by_freedom[-2:]
    out[n] = d_load[6]

    which = np.where(touching, 0, gap - 2 * points)
    kind, axle, side = which // 4, which // 2 % 2, which % 2
    rate = np.stack([builds.spring_rate[axle, 0, cases], -np.ones(len(gap)), np.ones(len(gap))])
    rate = np.where(touching, 0.0, rate[kind, cases])
    arm = builds.half_spacing[axle, cases] * (1 - 2 * side)
    out[n - 4 + 2 * axle, cases] += rate
    out[n - 3 + 2 * axle, cases] += rate * arm
    return out
