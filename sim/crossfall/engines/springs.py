"""What holds a truck up in a trial: corner springs, stops, anti-roll bars and tyres, and how long a
step they allow. How hard corners push is in `axle_forces`.

All values are those of the truck that runs in the world (a similar one, where scaled).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from crossfall.engines.axle_forces import AXLE, AXLE_STATE, WORK, Records, press_corners
from crossfall.engines.multibody import disc_names, tyre_joints
from crossfall.engines.settings import TrialSettings
from crossfall.truck.axle_law import law_of
from crossfall.truck.massprops import unsprung
from crossfall.truck.model import ENDS, GRAVITY, Array, Truck
from crossfall.truck.native import address, entry
from crossfall.truck.ride import spring_squeezes, sprung_loads, tyre_loads
from crossfall.truck.spring_law import spring_law

_SAME = (
    "half_spacing",
    "rate",
    "preload",
    "damping",
    "anti_roll",
    "bump",
    "droop",
    "stop_rate",
    "stop_damping",
    "stop_time",
    "more",
    "bound",
)  # names in AXLE


@dataclass(frozen=True)
class CornerSprings:
    """One axle's pair of corners. N, m, s, kg; stop_rate N/m, stop_damping N s/m, stop_time s.

    rate, preload: of left and right while all of its springs give; more: N/m that a corner gains
    from the compression on at which its soft spring is bound; see `truck.spring_law`. law: (7,
    terms) of an axle whose shocks lean, `truck.axle_law`; None for corners that stand upright.
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
    law: Array | None = None


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
                None if s.shocks is None else law_of(axle).coefficients,
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


class Corners:
    """The corners of axles, to be asked in every step; see `axle_forces.press_corners`.

    position, speed, force: an engine's arrays, which stay where they are. places: (n, 2, 2) of
    heave and roll of each axle among its positions, and among its freedoms.
    """

    def __init__(
        self,
        springs: Sequence[CornerSprings],
        places: NDArray[np.int64],
        position: Array,
        speed: Array,
        force: Array,
    ) -> None:
        self._axles, self._states = np.zeros(len(springs), AXLE), np.zeros(len(springs), AXLE_STATE)
        for axle, one in zip(self._axles, springs, strict=True):
            set_corners(axle, one)
        self._laws = stacked_laws([one.law for one in springs])
        self._kept = places, position, speed, force, np.empty(WORK)
        self._press = entry(press_corners)
        self._at = [address(v) for v in (self._axles, self._states, self._laws, *self._kept)]
        self._count = len(springs), self._laws.shape[2]

    def press(self, dt: float) -> None:
        """N on heave and N m on roll of each, into `force`; their stops go on a step of dt, s."""
        self._press(*self._at, *self._count, dt)

    @property
    def stops(self) -> Array:
        """(n, 2) N that bump and droop stops have taken up; bump positive."""
        return np.asarray(self._states["stops"])

    def save(self) -> Records:
        return self._states.copy()

    def restore(self, states: Records) -> None:
        self._states[:] = states


class LooseCorners:
    """The same for who has the positions and speeds in hand, axle by axle."""

    def __init__(self, springs: Sequence[CornerSprings]) -> None:
        many = 2 * len(springs)
        self._position, self._speed, self._force = np.zeros(many), np.zeros(many), np.zeros(many)
        at = np.arange(many).reshape(-1, 2, 1).repeat(2, axis=2)
        self.corners = Corners(springs, at, self._position, self._speed, self._force)

    def forces(self, moves: Sequence[Sequence[float]], dt: float) -> list[float]:
        """N on heave and N m on roll of each axle, from (position, velocity, ...) of both, m, rad
        and s; their stops go on a step of dt, s."""
        self._position[:] = [move[0] for move in moves]
        self._speed[:] = [move[1] for move in moves]
        self.corners.press(dt)
        forces: list[float] = self._force.tolist()
        return forces


def set_corners(axle: Any, springs: CornerSprings) -> None:
    """Write them into a record of AXLE."""
    axle["sprung"] = True
    for name in _SAME:
        axle[name] = getattr(springs, name)
    axle["shocks"] = springs.law is not None


def stacked_laws(laws: Sequence[Array | None]) -> Array:
    """(n, 7, terms) coefficients of axle laws, for `axle_forces`; 0 where there is none."""
    terms = max((law.shape[1] for law in laws if law is not None), default=2)
    out = np.zeros((len(laws), 7, terms))
    for own, law in zip(out, laws, strict=True):
        if law is not None:
            own[:, : law.shape[1]] = law
    return out
