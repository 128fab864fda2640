"""A truck standing in a world on its springs and tyres, ready for any trial."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from crossfall.trials.scale import Scale, similar
from crossfall.trials.springs import Stops, axle_forces, corner_springs, safe_step, tyre_springs
from crossfall.trials.world import Settings, World
from crossfall.truck.model import GRAVITY, Truck


@dataclass(frozen=True)
class Snapshot:
    """Everything needed to go back to a moment."""

    state: int
    stops: Stops


class Rig:
    """The truck at ride height with the forces of its springs, stops and tyres.

    They are worked out here before every step, in one batch: the engine's own spring (its "PD
    control") cannot push only, and takes 4 microseconds a joint against 1.4.
    """

    def __init__(
        self, truck: Truck, settings: Settings, *, turning: bool = False, settling: bool = True
    ) -> None:
        self.settings = settings
        self.scale = Scale(settings.length_scale)
        big = similar(truck, self.scale)
        self.dt = safe_step(big, settings, self.scale.time)  # world seconds
        self.world = World(
            big,
            step=self.dt,
            settings=settings,
            turning=turning,
        )
        self._laws = corner_springs(big, settings, self.dt, self.scale.time, settling=settling)
        self.tyres = tyre_springs(big, settings, self.dt)
        sprung = [name for law in self._laws for name in (law.heave, law.roll)]
        names = [*sprung, *(tyre.joint for tyre in self.tyres)]
        self._joints = [self.world.joints[name] for name in names]
        self._tyre_laws = [(tyre.force, tyre.rate, tyre.damping) for tyre in self.tyres]
        self.stops = Stops(len(self._laws))

    def __enter__(self) -> Rig:
        return self

    def __exit__(self, *_: object) -> None:
        self.world.close()

    def step(self, gravity: tuple[float, float, float]) -> None:
        """One step under gravity (3,) m/s^2 in table axes."""
        self.world.advance(gravity, self._joints, self._push)

    def _push(self, states: Sequence[tuple[float, ...]]) -> list[float]:
        forces: list[float] = []
        at = 0
        for i, law in enumerate(self._laws):
            forces += axle_forces(i, law, states[at], states[at + 1], self.stops, self.dt)
            at += 2
        for force, rate, damping in self._tyre_laws:
            state = states[at]
            forces.append(-force - rate * state[0] - damping * state[1])
            at += 1
        return forces

    def save(self) -> Snapshot:
        return Snapshot(self.world.save(), self.stops.copy())

    def restore(self, snapshot: Snapshot) -> None:
        """Go back to a moment; the same snapshot may be used again."""
        self.world.restore(snapshot.state)
        self.stops = snapshot.stops.copy()

    def forget(self, snapshot: Snapshot) -> None:
        self.world.forget(snapshot.state)


def gravity_on_table(heading: float, theta: float) -> tuple[float, float, float]:
    """Gravity (3,) m/s^2 in the axes of a table tilted by theta, truck turned to heading (rad)."""
    along = GRAVITY * math.sin(theta)
    return -along * math.cos(heading), along * math.sin(heading), -GRAVITY * math.cos(theta)
