"""What holds a truck up in a trial: corner springs, stops, anti-roll bars and tyres.

The laws are in joint coordinates, heave q and roll r per axle: a corner's compression is
c = q + (s/2) r on the left and q - (s/2) r on the right, or what `truck.axle_law` says of its
shocks, and a corner force F does work on c.
All values are those of the truck that runs in the world (a similar one, where scaled).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import ArrayLike

from crossfall.engines.multibody import disc_names, tyre_joints
from crossfall.engines.settings import TrialSettings
from crossfall.truck.axle_law import LEFT, NearLaw, law_of
from crossfall.truck.massprops import unsprung
from crossfall.truck.model import ENDS, GRAVITY, Array, Truck
from crossfall.truck.ride import spring_squeezes, sprung_loads, tyre_loads
from crossfall.truck.spring_law import spring_law


@dataclass(frozen=True)
class CornerSprings:
    """One axle's pair of corners. N, m, s, kg; stop_rate N/m, stop_damping N s/m, stop_time s.

    rate, preload: of left and right while all of its springs give; more: N/m that a corner gains
    from the compression on at which its soft spring is bound; see `truck.spring_law`. shocks:
    compression of left and right shock and its slopes; None for corners that stand upright.
    """

    heave: str
    roll: str
    rate: float
    half_spacing: float
    preload: tuple[float, float]
    damping: float
    anti_roll: float
    bump: float
    droop: float
    stop_rate: float
    stop_damping: float
    stop_time: float
    more: float = 0.0
    bound: tuple[float, float] = (math.inf, math.inf)
    shocks: NearLaw | None = None

    @cached_property
    def numbers(self) -> tuple[float, float, float, float, float]:
        """Half spacing, rate, damping and the compressions at bump and droop, at hand."""
        return self.half_spacing, self.rate, self.damping, self.bump, -self.droop


@dataclass(frozen=True)
class TyreSpring:
    """One disc on its tyre joint: pushes with force + rate * compression, damped.

    force: N at ride height: upwards the ground load less the disc's own weight, since the wheel
    stands on the ground and the tyre gives between wheel and axle; along the ground none. rate:
    N/m. damping: N s/m.
    """

    joint: str
    force: float
    rate: float
    damping: float


def corner_springs(
    truck: Truck, settings: TrialSettings, step: float, time: float, *, settling: bool
) -> tuple[CornerSprings, ...]:
    """Springs of each axle that is not locked. step: s of the world. time: factor from real to
    world seconds.

    settling: raise the damping to `settings.least_damping`, for quasi-static trials. With m the
    mass a corner moves: stop rate (turn / step)^2 m, stop damping 2 zeta (turn / step) m; least
    damping 2 zeta sqrt(k m_s), m_s the sprung mass on the corner, but no more than m / (4 step).
    Source: critical damping 2 sqrt(k m): L. Meirovitch, Elements of Vibration Analysis (McGraw-Hill
    1986) (from memory); the stops' rate derived here from the angle omega dt a step may turn by.
    """
    squeezes, sprung = spring_squeezes(truck).tolist(), sprung_loads(truck)
    out = []
    for i, axle in enumerate(truck.axles):
        s = axle.suspension
        if s.locked:
            continue
        mass = _share_of_axle(truck, i, s.spring_spacing)
        springs, damping = spring_law(s), s.damping
        left, right = squeezes[2 * i : 2 * i + 2]
        if settling:
            carried = sprung[i] / GRAVITY / 2
            least = 2 * settings.least_damping * math.sqrt(s.spring_rate * carried)
            damping = min(max(damping, least), 0.25 * mass / step)
        out.append(
            CornerSprings(
                f"{ENDS[i]}_heave",
                f"{ENDS[i]}_roll",
                springs.rate,
                s.spring_spacing / 2,
                (springs.rate * left, springs.rate * right),
                damping,
                s.anti_roll,
                s.bump,
                s.droop,
                (settings.stop_turn / step) ** 2 * mass,
                2 * settings.stop_damping * settings.stop_turn / step * mass,
                settings.stop_time * time,
                springs.more,
                (springs.bound - left, springs.bound - right),
                None if s.shocks is None else NearLaw(law_of(axle).coefficients[LEFT:]),
            )
        )
    return tuple(out)


def tyre_springs(truck: Truck, settings: TrialSettings, step: float) -> tuple[TyreSpring, ...]:
    """A spring for every way in which a disc gives, wheels in order. step: s.

    Damping 2 zeta sqrt(k N / g), N the disc's load, but no more than 0.4 m / step, m the disc's
    mass.
    Source: critical damping 2 sqrt(k m): L. Meirovitch, Elements of Vibration Analysis (McGraw-Hill
    1986) (from memory).
    """
    loads = tyre_loads(truck)
    out = []
    for wheel in range(4):
        axle = truck.axles[wheel // 2]
        names = disc_names(wheel, axle)
        load = float(loads[wheel]) / len(names)
        mass = axle.wheels[wheel % 2].mass / len(names)
        for _, joint, axis, whole in (j for name in names for j in tyre_joints(name, axle)):
            rate = whole / len(names)
            damping = 2 * settings.tyre_damping * math.sqrt(rate * load / GRAVITY)
            force = load - mass * GRAVITY if axis[2] else 0.0
            out.append(TyreSpring(joint, force, rate, min(damping, 0.4 * mass / step)))
    return tuple(out)


def safe_step(truck: Truck, settings: TrialSettings, time: float) -> float:
    """World seconds: the settings' step, or shorter where a tyre or spring is stiff. time: as
    above.

    On turning wheels the fastest motion is an axle moving against its wheels: with tyre rate k the
    greatest of three, wheel mass m and axle mass M per tyre its frequency squared is k (1/m + 1/M).
    A step dt is allowed omega dt <= settings.turn_per_step, rad.
    Source: two masses on a spring: L. Meirovitch, Elements of Vibration Analysis (McGraw-Hill
    1986); semi-implicit Euler steps need omega dt < 2: E. Hairer, C. Lubich and G. Wanner,
    Geometric Numerical Integration (Springer 2006) (both from memory).
    """
    step = settings.step * time
    for i, axle in enumerate(truck.axles):
        s, tyre = axle.suspension, axle.tyre
        corner = 0.0 if s.locked else _share_of_axle(truck, i, s.spring_spacing)
        stiffest = max(
            (k for k in (tyre.stiffness, tyre.lateral, tyre.longitudinal) if math.isfinite(k)),
            default=0.0,
        )
        if stiffest:
            wheel = min(w.mass for w in axle.wheels)
            both = 1 / wheel + (0.0 if s.locked else 1 / _share_of_axle(truck, i, axle.track))
            step = min(step, settings.turn_per_step / math.sqrt(stiffest * both))
        if not s.locked:
            rate = s.spring_rate + 2 * s.anti_roll / s.spring_spacing**2
            step = min(step, settings.turn_per_step / math.sqrt(rate / corner))
    return step


def held_step(truck: Truck, settings: TrialSettings) -> float:
    """s: the settings' step, or shorter where the truck on held wheels oscillates fast.

    By the fastest of its motions at ride height, M x'' = -K x in the six movements of the chassis
    and heave and roll of both axles: dt = turn_per_step / omega, omega^2 the greatest eigenvalue of
    M^-1 K, both (10, 10).
    Source: small oscillations: L. Meirovitch, Elements of Vibration Analysis (McGraw-Hill 1986)
    (from memory); M and K derived here from kinetic and elastic energy.
    """
    mass, rate = np.zeros((10, 10)), np.zeros((10, 10))
    bodies = [(truck.chassis, np.eye(6, 10))]
    for i, axle in enumerate(truck.axles):
        s = axle.suspension
        moves = np.eye(6, 10)  # of the axle at the truck's origin: turning, then shifting
        heave, roll = 6 + 2 * i, 7 + 2 * i
        moves[:, heave] = (0, 0, 0, math.sin(s.heave_lean), 0, math.cos(s.heave_lean))
        moves[:, roll] = (1, 0, 0, *np.cross([1, 0, 0], [-axle.x, 0, -s.roll_centre_height]))
        if s.locked:
            moves[:, heave : roll + 1] = 0.0
            rate[heave, heave] = rate[roll, roll] = mass[heave, heave] = mass[roll, roll] = 1.0
        else:
            rate[heave, heave] = 2 * s.spring_rate
            rate[roll, roll] = s.spring_rate * s.spring_spacing**2 / 2 + s.anti_roll
            rate[roll, roll] += 2 * axle.tyre.longitudinal * (axle.shaft * axle.tyre.radius) ** 2
        bodies.append((unsprung(truck, i), moves))
        tyre = axle.tyre
        for side in (1, -1):
            at = _at([axle.x, side * axle.track / 2, 0.0]) @ moves
            rate += at.T @ np.diag([tyre.longitudinal, tyre.lateral, tyre.stiffness]) @ at
    for body, moves in bodies:
        at = _at(body.cg) @ moves
        mass += body.mass * at.T @ at + moves[:3].T @ body.inertia @ moves[:3]
    fastest = math.sqrt(np.linalg.eigvals(np.linalg.solve(mass, rate)).real.max())
    return min(settings.step, settings.turn_per_step / fastest)


def _at(place: ArrayLike) -> Array:
    """(3, 6) movement of a point from a body's turning and shifting at the origin."""
    x, y, z = np.asarray(place)
    return np.array([[0, z, -y, 1, 0, 0], [-z, 0, x, 0, 1, 0], [y, -x, 0, 0, 0, 1]])


def _share_of_axle(truck: Truck, index: int, spacing: float) -> float:
    """Mass (kg) that one of two equal forces `spacing` (m) apart moves of an axle less its wheels.

    Both push alike and it heaves, or they oppose and it rolls about the roll centre: the lesser.
    """
    axle = truck.axles[index]
    body = axle.body
    arm = body.cg[2] - axle.suspension.roll_centre_height
    about = body.inertia[0, 0] + body.mass * (arm**2 + body.cg[1] ** 2)
    return float(min(body.mass / 2, 2 * about / spacing**2))


class Stops:
    """Forces (N) the bump and droop stops have taken up, two per axle; bump positive.

    A stop is a spring as stiff as the time step allows, and what it leaves of the overlap it takes
    up within `stop_time`: at rest a corner stands exactly on its stop. With overlap o and its rate
    v the force is h + k o + d v, at least 0; then h grows by k o dt / stop_time.
    Source: derived here from an augmented Lagrangian with one step of its multiplier h in a time
    step; such multipliers in J. Nocedal and S. J. Wright, Numerical Optimization (Springer 2006),
    chapter 17 (from memory).
    """

    def __init__(self, axles: int) -> None:
        self.held = [[0.0, 0.0] for _ in range(axles)]

    def copy(self) -> Stops:
        other = Stops(0)
        other.held = [list(pair) for pair in self.held]
        return other

    def force(
        self, axle: int, side: int, law: CornerSprings, c: float, v: float, dt: float
    ) -> float:
        """Stop force (N) against compression c at rate v; the held force goes on one step."""
        held = self.held[axle][side]
        sign = 1.0 if held > 0.0 or c > law.bump else -1.0
        overlap = c - law.bump if sign > 0.0 else -law.droop - c
        now = sign * held + law.stop_rate * overlap
        self.held[axle][side] = sign * max(
            0.0, sign * held + law.stop_rate * overlap * dt / law.stop_time
        )
        return sign * max(0.0, now + law.stop_damping * sign * v)


def axle_forces(
    index: int,
    law: CornerSprings,
    heave: tuple[float, ...],
    roll: tuple[float, ...],
    stops: Stops,
    dt: float,
    corners: Sequence[tuple[float, float, float]] | None = None,
) -> tuple[float, float]:
    """Joint force (N) on heave and moment (N m) on roll, from (position, velocity) of both, m and
    rad.

    index: of the axle among `stops`. dt: s. corners: of left and right, as `law.shocks` has it,
    where that is known already. Springs push only, as `truck.spring_law` says; dampers act both
    ways; stops are one-sided. -sum(F dc/dq) on heave, -sum(F dc/dr) - k_bar r on roll, over both
    corners.
    Source: derived here from virtual work.
    """
    q, qv = heave[:2]
    r, rv = roll[:2]
    half, rate, damping, bump, droop = law.numbers
    if corners is None and law.shocks is not None:
        corners = law.shocks(q, r)
    elif corners is None and law.more:
        corners = [(q + half * r, 1.0, half), (q - half * r, 1.0, -half)]
    if corners is not None:
        return _corner_forces(index, law, corners, (qv, r, rv), stops, dt)
    left, right = q + half * r, q - half * r
    left_v, right_v = qv + half * rv, qv - half * rv
    a, b = law.preload[0] + rate * left, law.preload[1] + rate * right
    a = (a if a > 0.0 else 0.0) + damping * left_v
    b = (b if b > 0.0 else 0.0) + damping * right_v
    held = stops.held[index]
    if held[0] != 0.0 or left > bump or left < droop:
        a += stops.force(index, 0, law, left, left_v, dt)
    if held[1] != 0.0 or right > bump or right < droop:
        b += stops.force(index, 1, law, right, right_v, dt)
    return -a - b, -half * (a - b) - law.anti_roll * r


def _corner_forces(
    index: int,
    law: CornerSprings,
    corners: Sequence[tuple[float, float, float]],
    moves: tuple[float, float, float],
    stops: Stops,
    dt: float,
) -> tuple[float, float]:
    """The same for corners whose ratios change along the travel, or whose soft springs bind. moves:
    heave's velocity, roll and its velocity."""
    _, rate, damping, bump, droop = law.numbers
    qv, r, rv = moves
    on_heave, on_roll = 0.0, -law.anti_roll * r
    for side, (c, by_q, by_r) in enumerate(corners):
        v = by_q * qv + by_r * rv
        force = max(0.0, law.preload[side] + rate * c) + damping * v
        if c > law.bound[side]:
            force += law.more * (c - law.bound[side])
        if stops.held[index][side] != 0.0 or c > bump or c < droop:
            force += stops.force(index, side, law, c, v, dt)
        on_heave -= force * by_q
        on_roll -= force * by_r
    return on_heave, on_roll
