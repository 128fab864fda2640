"""A truck on its springs and tyres in Bullet: driven over ground, or held on the table.

Source: the laws are those of `engines.springs`, `tyre_force`, `curve`, `rolling` and `scale`, each
with its own.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from crossfall.engines.bullet import World
from crossfall.engines.curve import Curve
from crossfall.engines.held import engine_version
from crossfall.engines.multibody import SHARE, disc_names, multibody
from crossfall.engines.rolling import RollingCurve
from crossfall.engines.scale import SimilarityScale, similar
from crossfall.engines.settings import EngineError, GroundSettings, TrialSettings, endless
from crossfall.engines.springs import (
    CornerSprings,
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
        self._stops = Stops(len(self._laws))
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
        self.axles = [
            HeldWheels(axle, loads[2 * i : 2 * i + 2], settings.tyre_damping, self.dt)
            for i, axle in enumerate(truck.axles)
        ]
        self._links = [self.world.link[f"{end}_axle"] for end in ENDS]
        self.joint_names = tuple(self.world.moving)
        self._moving = [self.world.joints[name] for name in self.joint_names]
        # Of each axle with joints: which of those that have some it is, its springs, and what its
        # curve on links adds.
        self._own: list[tuple[int, CornerSprings, Curve | None] | None] = []
        laws = iter(enumerate(corner_springs(truck, settings, self.dt, 1.0, settling=True)))
        for i, axle in enumerate(truck.axles):
            s = axle.suspension
            curve = None if s.locked or s.links is None else Curve(truck, i, SHARE)
            self._own.append(None if s.locked else (*next(laws), curve))
        loose = [own[1] for own in self._own if own]
        names = [name for law in loose for name in (law.heave, law.roll)]
        self._joints = [self.world.joints[name] for name in names]
        self._stops = Stops(len(loose))

    def __enter__(self) -> HeldRig:
        return self

    def __exit__(self, *_: object) -> None:
        self.world.close()

    def grip(self, friction: Sequence[float]) -> None:
        for i, axle in enumerate(self.axles):
            axle.friction = list(friction[2 * i : 2 * i + 2])

    def refine(self, *, step: int = 1, solver: int = 1, contact: int = 1) -> None:
        """Tyres are forces here: there are no contacts to solve, or to make firmer."""
        self.dt = self._whole_step / step
        self.world.refine(self.dt)
        for axle in self.axles:
            axle.refine(step)

    def drag(self, times: float) -> None:
        self.world.drag(self.settings.drag * times)

    def step(self, gravity: Vector, count: int = 1) -> None:
        try:
            for _ in range(count):
                self._step(gravity)
        except (ValueError, OverflowError):  # what plain numbers say to nan and infinity
            raise EngineError(_LOST) from None

    def _step(self, gravity: Vector) -> None:
        world = self.world
        states = world.joint_states(self._joints)
        forces: list[float] = []
        frames = world.frames(self._links)
        for axle, link, frame, own in zip(self.axles, self._links, frames, self._own, strict=True):
            cg, origin, turn = frame
            if own is None:
                world.press(link, cg, *axle.press(origin, turn, cg, gravity))
                continue
            at, law, curve = own
            heave, roll = states[2 * at], states[2 * at + 1]
            if curve is None:
                on_heave, on_roll = axle_forces(at, law, heave, roll, self._stops, self.dt)
                force, moment = axle.press(origin, turn, cg, gravity, roll[0])
            else:
                curve.follow(cg, origin, turn, heave[0], roll[0])
                corners = curve.corners
                on_heave, on_roll = axle_forces(at, law, heave, roll, self._stops, self.dt, corners)
                force, moment = axle.press(curve.origin, curve.turn, cg, gravity, roll[0])
                moment, more = curve.make_up(force, moment, gravity)
                on_heave, on_roll = on_heave + more[0], on_roll + more[1]
            forces += (on_heave, on_roll + axle.torque)
            world.press(link, cg, force, moment)
        world.advance(gravity, self._joints, forces)

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
        place, turn = self.world.chassis()
        if not all(map(math.isfinite, place)):
            raise EngineError(_LOST)
        return place, turn

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
