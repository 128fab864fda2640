"""A truck on its springs and tyres in Bullet: driven over ground, or held on the table.

Source: the laws are those of `engines.axle_forces`, `springs`, `rolling` and `scale`, each with its
own.
"""

from __future__ import annotations

import math
import struct
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from crossfall.engines.axle_forces import MOVES, WORK, step_held
from crossfall.engines.bullet import World
from crossfall.engines.curve import set_curve
from crossfall.engines.held import engine_version
from crossfall.engines.held_wheels import HeldWheels, KeptWheels
from crossfall.engines.multibody import SHARE, disc_names, multibody
from crossfall.engines.rolling import RollingCurve
from crossfall.engines.scale import SimilarityScale, similar
from crossfall.engines.settings import EngineError, GroundSettings, TrialSettings, endless
from crossfall.engines.springs import (
    LooseCorners,
    corner_springs,
    held_step,
    safe_step,
    set_corners,
    stacked_laws,
    tyre_springs,
)
from crossfall.truck.model import ENDS, Array, Truck
from crossfall.truck.native import address, entry
from crossfall.truck.ride import tyre_loads
from crossfall.truck.vectors import Vector

_Pose = tuple[tuple[float, ...], tuple[float, ...]]
_MOVES = struct.Struct(f"{2 * MOVES + 3}d")
_LOST = "the engine lost the truck: its step is too long for this one"


class Rig:
    """The truck at ride height on turning wheels, with the forces of its springs, stops and tyres.

    They are worked out here before every step, in one batch: the engine's own spring (its "PD
    control") cannot push only, and takes 4 microseconds a joint against 1.4. dt: s of the world,
    which is `scale.time` times as long as the real one. Raises InputError for a truck that makes no
    multibody.
    """

    def __init__(self, truck: Truck, settings: GroundSettings, *, steering: bool = False) -> None:
        self.settings, self._name, self._taken = settings, truck.name, 0
        self.scale = SimilarityScale(settings.length_scale)
        big = similar(truck, self.scale)
        self.dt = safe_step(big, settings, self.scale.time)  # world seconds
        self.world = World(big, step=self.dt, ground=settings, steering=steering)
        self._laws = corner_springs(big, settings, self.dt, self.scale.time, settling=False)
        self.tyres = tyre_springs(big, settings, self.dt)
        sprung = [name for law in self._laws for name in (law.heave, law.roll)]
        names = [*sprung, *(tyre.joint for tyre in self.tyres)]
        self._joints = [self.world.joints[name] for name in names]
        self._tyre_laws = [(tyre.force, tyre.rate, tyre.damping) for tyre in self.tyres]
        self._corners = LooseCorners(self._laws)
        self._rolling = self._curves(big)
        self._axles = [self.world.link[f"{end}_axle"] for end in ENDS]

    def _curves(self, big: Truck) -> list[tuple[int, int, int, int, RollingCurve]]:
        """Of each axle on links: its number, where its joints and tyres begin and end among the
        states, and the curve. Tyres that are rigid some way tell nothing, and it goes without."""
        found, at, begin = [], 0, 2 * len(self._laws)
        for i, axle in enumerate(big.axles):
            names = {name for w in (2 * i, 2 * i + 1) for name in disc_names(w, axle)}
            own = [t for t in self.tyres if t.joint.partition("_tyre")[0] in names]
            if axle.suspension.links is not None and len(own) == 3 * len(names):
                curve = RollingCurve(big, i, own)
                found.append((i, at, begin, begin + len(own), curve))
            at += 0 if axle.suspension.locked else 2
            begin += len(own)
        return found

    def __enter__(self) -> Rig:
        return self

    def __exit__(self, *_: object) -> None:
        self.world.close()

    def step(self, gravity: tuple[float, float, float]) -> None:
        """One step under gravity (3,) m/s^2 in ground axes; InputError past the budget."""
        self._taken += 1
        if self._taken > self.settings.budget:
            dt = self.dt / self.scale.time
            raise endless(self._name, "its drive", self._taken - 1, dt)
        states = self.world.joint_states(self._joints)
        forces = self._push(states)
        frames = self.world.frames(self._axles) if self._rolling else []
        for i, at, begin, end, curve in self._rolling:
            cg, origin, turn = frames[i]
            moment, more = curve.missing(
                origin, turn, states[at : at + 2], states[begin:end], gravity
            )
            forces[at] += more[0]
            forces[at + 1] += more[1]
            self.world.press(self._axles[i], cg, (0.0, 0.0, 0.0), moment)
        self.world.advance(gravity, self._joints, forces)

    def _push(self, states: Sequence[tuple[float, ...]]) -> list[float]:
        at = 2 * len(self._laws)
        forces = self._corners.forces(states[:at], self.dt)
        for force, rate, damping in self._tyre_laws:
            state = states[at]
            forces.append(-force - rate * state[0] - damping * state[1])
            at += 1
        return forces


@dataclass(frozen=True)
class _Snapshot:
    """Everything needed to go back to a moment."""

    state: int
    wheels: KeptWheels


class HeldRig:
    """The truck at ride height on the table, wheels held, in real size. SI; see `HeldTruck`.

    Springs and stops are joint forces, as of any rig; the tyres are forces on the axles, so that
    the engine has no contacts to solve. Raises InputError for a truck that makes no multibody, and
    EngineError where the engine loses it.
    """

    def __init__(self, truck: Truck, settings: TrialSettings) -> None:
        multibody(truck, turning=False)  # refuses what makes none, before its step is sought
        self.settings, self._wheelbase = settings, truck.wheelbase
        self.engine, self.varies = engine_version("bullet"), ("step",)
        self.dt = self._whole_step = held_step(truck, settings)
        self.world = World(truck, step=self.dt, turning=False)
        self.drag(1.0)
        loads = tyre_loads(truck).tolist()
        self.wheels = HeldWheels(truck, loads, settings.tyre_damping, self.dt)
        self._links = [self.world.link[f"{end}_axle"] for end in ENDS]
        self.joint_names = tuple(self.world.moving)
        self._moving = [self.world.joints[name] for name in self.joint_names]
        laws: list[Array | None] = [None, None]
        self._joints: list[int] = []
        springs = iter(corner_springs(truck, settings, self.dt, 1.0, settling=True))
        for i, (axle, own) in enumerate(zip(truck.axles, self.wheels.axles, strict=True)):
            if axle.suspension.locked:
                continue
            corners = next(springs)
            set_corners(own, corners)
            laws[i] = corners.law
            if axle.suspension.links is not None:
                laws[i] = set_curve(own, truck, i, SHARE)
            self._joints += [self.world.joints[name] for name in (corners.heave, corners.roll)]
        self._laws, self._work = stacked_laws(laws), np.empty(WORK)
        self._moved, self._out = np.empty(2 * MOVES + 3), np.empty(16)
        held = self.wheels
        of_wheels = held.axles, held.states, self._laws, held.patches
        arrays = (*of_wheels, self._moved, self._out, self._work)
        self._at = [address(array) for array in arrays]
        self._counts = len(held.patches), self._laws.shape[2]
        self._press = entry(step_held)
        self._sprung = [not axle.suspension.locked for axle in truck.axles]

    def __enter__(self) -> HeldRig:
        return self

    def __exit__(self, *_: object) -> None:
        self.world.close()

    def grip(self, friction: Sequence[float]) -> None:
        self.wheels.grip(friction)

    def refine(self, *, step: int = 1, solver: int = 1, contact: int = 1) -> None:
        """Tyres are forces here: there are no contacts to solve, or to make firmer."""
        self.dt = self._whole_step / step
        self.world.refine(self.dt)
        self.wheels.refine(step)

    def drag(self, times: float) -> None:
        self.world.drag(self.settings.drag * times)

    def step(self, gravity: Vector, count: int = 1) -> None:
        for _ in range(count):
            self._step(gravity)

    def _step(self, gravity: Vector) -> None:
        world, links = self.world, self._links
        front, rear = self._moves(world.joint_states(self._joints))
        there, here = world.places(links)
        _MOVES.pack_into(self._moved.data, 0, *front, *there, *rear, *here, *gravity)
        self._press(*self._at, *self._counts, self.dt)
        out: list[float] = self._out.tolist()
        if not math.isfinite(sum(out)):
            raise EngineError(_LOST)
        x, y, z, mx, my, mz, *front_joints = out[:8]
        world.press(links[0], (there[0], there[1], there[2]), (x, y, z), (mx, my, mz))
        x, y, z, mx, my, mz, *rear_joints = out[8:]
        world.press(links[1], (here[0], here[1], here[2]), (x, y, z), (mx, my, mz))
        both = zip((front_joints, rear_joints), self._sprung, strict=True)
        world.advance(gravity, self._joints, [f for joints, own in both if own for f in joints])

    def _moves(self, states: Sequence[tuple[float, ...]]) -> list[tuple[float, ...]]:
        """Of each axle, heave and its speed, roll and its speed."""
        moves: list[tuple[float, ...]] = [(0.0,) * 4] * 2
        at = 0
        for i in (0, 1):
            if self._sprung[i]:
                heave, roll = states[at], states[at + 1]
                moves[i] = heave[0], heave[1], roll[0], roll[1]
                at += 2
        return moves

    def loads(self) -> list[float]:
        return [wheel[0] for wheel in self.wheels.told()]

    def slips(self) -> list[float]:
        return [wheel[1] for wheel in self.wheels.told()]

    def place(self) -> tuple[float, ...]:
        at, turn = self.world.chassis()
        return (*at, *(self._wheelbase * q for q in turn))

    def gives(self) -> list[Vector]:
        return [(x, y, z) for _, _, x, y, z in self.wheels.told()]

    def joint_positions(self) -> list[float]:
        return [state[0] for state in self.world.joint_states(self._moving)]

    def lean(self) -> float:
        return math.acos(max(-1.0, min(1.0, self.world.uprightness())))

    def pose(self) -> _Pose:
        place, turn = self.world.chassis()
        if not all(map(math.isfinite, place)):
            raise EngineError(_LOST)
        return place, turn

    def poses(self, raw: Sequence[_Pose]) -> Array:
        return self.world.chassis_poses(raw)

    def save(self) -> _Snapshot:
        return _Snapshot(self.world.save(), self.wheels.save())

    def restore(self, snapshot: _Snapshot) -> None:
        self.world.restore(snapshot.state)
        self.wheels.restore(snapshot.wheels)

    def forget(self, snapshot: _Snapshot) -> None:
        self.world.forget(snapshot.state)
