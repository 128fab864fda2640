"""A truck on its springs and tyres in Bullet: driven over ground, or held on the table."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from crossfall.engines.bullet import World
from crossfall.engines.curve import Curve
from crossfall.engines.held import engine_version
from crossfall.engines.multibody import SHARE, multibody
from crossfall.engines.scale import SimilarityScale, similar
from crossfall.engines.settings import GroundSettings, TrialSettings
from crossfall.engines.springs import (
    Stops,
    axle_forces,
    corner_springs,
    held_step,
    safe_step,
    tyre_springs,
)
from crossfall.engines.tyre_force import HeldWheels, KeptPatches, Vector
from crossfall.truck.model import ENDS, Array, Truck
from crossfall.truck.ride import tyre_loads

_Pose = tuple[tuple[float, ...], tuple[float, ...]]


class Rig:
    """The truck at ride height on turning wheels, with the forces of its springs, stops and tyres.

    They are worked out here before every step, in one batch: the engine's own spring (its "PD
    control") cannot push only, and takes 4 microseconds a joint against 1.4.
    """

    def __init__(self, truck: Truck, settings: GroundSettings, *, steering: bool = False) -> None:
        self.settings = settings
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
        self._stops = Stops(len(self._laws))

    def __enter__(self) -> Rig:
        return self

    def __exit__(self, *_: object) -> None:
        self.world.close()

    def step(self, gravity: tuple[float, float, float]) -> None:
        """One step under gravity (3,) m/s^2 in ground axes."""
        self.world.advance(gravity, self._joints, self._push)

    def _push(self, states: Sequence[tuple[float, ...]]) -> list[float]:
        forces: list[float] = []
        at = 0
        for i, law in enumerate(self._laws):
            forces += axle_forces(i, law, states[at], states[at + 1], self._stops, self.dt)
            at += 2
        for force, rate, damping in self._tyre_laws:
            state = states[at]
            forces.append(-force - rate * state[0] - damping * state[1])
            at += 1
        return forces


@dataclass(frozen=True)
class _Snapshot:
    """Everything needed to go back to a moment."""

    state: int
    stops: Stops
    holds: tuple[KeptPatches, ...]


class HeldRig:
    """The truck at ride height on the table, wheels held, in real size.

    Springs and stops are joint forces, as of any rig; the tyres are forces on the axles, so that
    the engine has no contacts to solve.
    """

    def __init__(self, truck: Truck, settings: TrialSettings) -> None:
        multibody(truck, turning=False)  # refuses what makes none, before its step is sought
        self.settings, self._wheelbase = settings, truck.wheelbase
        self.engine, self.varies = engine_version("bullet"), ("step",)
        self.dt = self._whole_step = held_step(truck, settings)
        self.world = World(truck, step=self.dt, turning=False)
        self.world.drag(settings.drag)
        loads = tyre_loads(truck).tolist()
        self.axles = [
            HeldWheels(axle, loads[2 * i : 2 * i + 2], settings.tyre_damping, self.dt)
            for i, axle in enumerate(truck.axles)
        ]
        self._links = [self.world.link[f"{end}_axle"] for end in ENDS]
        self._laws = corner_springs(truck, settings, self.dt, 1.0, settling=True)
        names = [name for law in self._laws for name in (law.heave, law.roll)]
        self._joints = [self.world.joints[name] for name in names]
        self.joint_names = tuple(self.world.moving)
        self._moving = [self.world.joints[name] for name in self.joint_names]
        self._stops = Stops(len(self._laws))
        # Axles with joints, by their place among those, and what their curve on links adds there.
        loose = [i for i, axle in enumerate(truck.axles) if not axle.suspension.locked]
        self._place = {i: at for at, i in enumerate(loose)}
        self._curves = {
            i: Curve(truck, i, SHARE) for i in loose if truck.axles[i].suspension.links is not None
        }
        self._asks = bool(self._curves) or any(axle.shaft for axle in truck.axles)
        self._more = [(0.0, 0.0)] * len(loose)

    def __enter__(self) -> HeldRig:
        return self

    def __exit__(self, *_: object) -> None:
        self.world.close()

    def grip(self, friction: Sequence[float]) -> None:
        for i, axle in enumerate(self.axles):
            axle.friction = list(friction[2 * i : 2 * i + 2])

    def refine(self, *, step: int = 1, solver: int = 1, contact: int = 1, drag: int = 1) -> None:
        """Tyres are forces here: there are no contacts to solve, or to make firmer."""
        self.dt = self._whole_step / step
        self.world.drag(self.settings.drag * drag)
        self.world.refine(self.dt)
        for axle in self.axles:
            axle.refine(step)

    def step(self, gravity: Vector, count: int = 1) -> None:
        for _ in range(count):
            self._step(gravity)

    def _step(self, gravity: Vector) -> None:
        world = self.world
        frames = world.frames(self._links)
        states = world.joint_states(self._joints) if self._asks else []
        for i, (axle, link, frame) in enumerate(zip(self.axles, self._links, frames, strict=True)):
            cg, origin, turn = frame
            at, curve, more = self._place.get(i, -1), self._curves.get(i), (0.0, 0.0)
            heave, roll = (states[2 * at + n][0] if states and at >= 0 else 0.0 for n in (0, 1))
            if curve is not None:
                curve.follow(cg, origin, turn, heave, roll)
                force, moment = axle.press(curve.origin, curve.turn, cg, gravity, roll)
                moment, more = curve.make_up(force, moment, gravity)
            else:
                force, moment = axle.press(origin, turn, cg, gravity, roll)
            if at >= 0:
                self._more[at] = more[0], more[1] + axle.torque
            world.press(link, cg, force, moment)
        world.advance(gravity, self._joints, self._push)

    def _push(self, states: Sequence[tuple[float, ...]]) -> list[float]:
        forces: list[float] = []
        for i, law in enumerate(self._laws):
            heave, roll = axle_forces(
                i, law, states[2 * i], states[2 * i + 1], self._stops, self.dt
            )
            more = self._more[i]
            forces += (heave + more[0], roll + more[1])
        return forces

    def loads(self) -> list[float]:
        return [load for axle in self.axles for load in axle.loads]

    def slips(self) -> list[float]:
        return [slip for axle in self.axles for slip in axle.slips]

    def place(self) -> tuple[float, ...]:
        at, turn = self.world.chassis()
        return (*at, *(self._wheelbase * q for q in turn))

    def gives(self) -> list[Vector]:
        return [give for axle in self.axles for give in axle.gives]

    def joint_positions(self) -> list[float]:
        return [state[0] for state in self.world.joint_states(self._moving)]

    def lean(self) -> float:
        return math.acos(max(-1.0, min(1.0, self.world.uprightness())))

    def pose(self) -> _Pose:
        return self.world.chassis()

    def poses(self, raw: Sequence[_Pose]) -> Array:
        return self.world.chassis_poses(raw)

    def save(self) -> _Snapshot:
        holds = tuple(axle.save() for axle in self.axles)
        return _Snapshot(self.world.save(), self._stops.copy(), holds)

    def restore(self, snapshot: _Snapshot) -> None:
        self.world.restore(snapshot.state)
        self._stops = snapshot.stops.copy()
        for axle, hold in zip(self.axles, snapshot.holds, strict=True):
            axle.restore(hold)

    def forget(self, snapshot: _Snapshot) -> None:
        self.world.forget(snapshot.state)
