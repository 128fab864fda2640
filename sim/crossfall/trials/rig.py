"""A truck standing in a world on its springs and tyres, ready for any trial."""

from __future__ import annotations

import math
from dataclasses import dataclass

from crossfall.trials.scale import Scale, similar
from crossfall.trials.springs import (
    CornerSprings,
    Stops,
    axle_forces,
    corner_springs,
    linear,
    safe_step,
    tyre_springs,
)
from crossfall.trials.world import Settings, World
from crossfall.truck.model import GRAVITY, Truck

CHECK = 4  # steps between looks at whether the springs are still linear


@dataclass(frozen=True)
class Snapshot:
    """Everything needed to go back to a moment."""

    state: int
    stops: Stops
    normal: float


class Rig:
    """The truck at ride height, gravity to be set before each step.

    Linear springs run inside the engine; while a corner is near slack or a stop, the suspension's
    forces are worked out here each step instead. The tyre joint carries the axle but not the
    wheel, while the tyre carries both, so the wheel's weight is taken off the tyre's force.
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
            iterations=settings.iterations,
            residual=settings.residual,
            turning=turning,
        )
        names = self.world.joints
        self.laws: tuple[CornerSprings, ...] = corner_springs(
            big, settings, self.dt, self.scale.time, settling=settling
        )
        self._suspension = [names[j] for law in self.laws for j in (law.heave, law.roll)]
        self.tyres = tyre_springs(big, settings, self.dt)
        self._tyre_joints = [names[t.joint] for t in self.tyres]
        self.stops = Stops(len(self.laws))
        self._explicit = False
        self._normal = GRAVITY
        self._since_check = 0
        self._set_suspension()
        self._set_tyres()

    def __enter__(self) -> Rig:
        return self

    def __exit__(self, *_: object) -> None:
        self.world.close()

    @property
    def explicit(self) -> bool:
        """Whether the suspension's forces are being worked out step by step."""
        return self._explicit

    def step(self, gravity: tuple[float, float, float]) -> None:
        """One step under gravity (3,) m/s^2 in table axes."""
        self.world.gravity(*gravity)
        self._since_check += 1
        if self._since_check >= CHECK:
            self._since_check = 0
            self._normal = -gravity[2]
            self._set_tyres()
            self._choose()
        if self._explicit:
            self._push()
        self.world.step()

    def save(self) -> Snapshot:
        return Snapshot(self.world.save(), self.stops.copy(), self._normal)

    def restore(self, snapshot: Snapshot) -> None:
        """Go back to a moment; the same snapshot may be used again."""
        self.world.restore(snapshot.state)
        self.stops = snapshot.stops.copy()
        self._normal = snapshot.normal
        self._since_check = 0
        self._set_tyres()
        self._choose()

    def forget(self, snapshot: Snapshot) -> None:
        self.world.forget(snapshot.state)

    def _states(self) -> list[tuple[float, float]]:
        return self.world.joint_states(self._suspension)

    def _choose(self) -> None:
        """Leave the engine's springs before they are wrong, and come back when they are right."""
        if not self.laws:
            return
        states = self._states()
        ahead = CHECK * self.dt
        fine = self.stops.idle and all(
            linear(law, states[2 * i], states[2 * i + 1], ahead) for i, law in enumerate(self.laws)
        )
        if fine == self._explicit:
            self._explicit = not fine
            self._set_suspension()

    def _push(self) -> None:
        states = self._states()
        forces: list[float] = []
        for i, law in enumerate(self.laws):
            forces += axle_forces(i, law, states[2 * i], states[2 * i + 1], self.stops, self.dt)
        self.world.torques(self._suspension, forces)

    def _set_suspension(self) -> None:
        """Both corners' linear springs seen at the joints: they do not couple heave and roll."""
        rates, dampings, rests = [], [], []
        for law in self.laws:
            half = law.half_spacing
            left, right = law.preload
            heave, roll = 2 * law.rate, 2 * half**2 * law.rate + law.anti_roll
            rates += [heave, roll]
            dampings += [2 * law.damping, 2 * half**2 * law.damping]
            rests += [-(left + right) / heave, -half * (left - right) / roll]
        if self._explicit:
            rates, dampings, rests = ([0.0] * len(rates) for _ in range(3))
        if self.laws:
            self.world.springs(self._suspension, rates, dampings, rests)

    def _set_tyres(self) -> None:
        if self.tyres:
            self.world.springs(
                self._tyre_joints,
                [t.rate for t in self.tyres],
                [t.damping for t in self.tyres],
                [(t.mass * self._normal - t.load) / t.rate for t in self.tyres],
            )


def gravity_on_table(heading: float, theta: float) -> tuple[float, float, float]:
    """Gravity (3,) m/s^2 in the axes of a table tilted by theta, truck turned to heading (rad)."""
    along = GRAVITY * math.sin(theta)
    return -along * math.cos(heading), along * math.sin(heading), -GRAVITY * math.cos(theta)
