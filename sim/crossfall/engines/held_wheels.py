"""The tyres of a truck's held wheels on the table, as forces on its axles; see `axle_forces`.

Their damping is 2 zeta sqrt(k N / g), N the load of a disc.
Source: critical damping 2 sqrt(k m): L. Meirovitch, Elements of Vibration Analysis (McGraw-Hill
1986) (from memory).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from crossfall.engines.axle_forces import (
    AXLE,
    PATCH,
    STATE,
    Records,
    press,
    wheel_gives,
    wheel_slips,
)
from crossfall.engines.held import Vector
from crossfall.truck.model import GRAVITY, Truck


@dataclass(frozen=True)
class KeptWheels:
    """Patches and what the axles remember at a moment, to come back to."""

    patches: Records
    states: Records


class HeldWheels:
    """All wheels of a truck, held, on the table; at ride height when made. SI, table axes.

    axles: records of AXLE, of which this sets the tyres. states: of STATE. patches: of PATCH,
    front left first. loads: (4,) N on the ground at ride height. damping: ratio to critical of a
    tyre under its load, which only settles it. step: s.
    """

    def __init__(self, truck: Truck, loads: Sequence[float], damping: float, step: float) -> None:
        self.axles, self.states = np.zeros(2, AXLE), np.zeros(2, STATE)
        patches: list[tuple[Any, ...]] = []
        for i, axle in enumerate(truck.axles):
            tyre, own = axle.tyre, self.axles[i]
            offsets = (0.0,) if tyre.contact_half_width == 0.0 else (1.0, -1.0)
            share = 1.0 / len(offsets)
            rates = (tyre.longitudinal * share, tyre.lateral * share, tyre.stiffness * share)
            borne = sum(loads[2 * i : 2 * i + 2]) / 2 / GRAVITY * share
            ahead, aside, up = (2 * damping * math.sqrt(rate * borne) / step for rate in rates)
            own["rates"], own["radius"] = rates, tyre.radius
            own["rise"] = tyre.radius - axle.suspension.roll_centre_height
            own["shaft"], own["open"], own["firm"] = axle.shaft, axle.loose, tyre.longitudinal
            own["discs"], own["friction"] = len(offsets), math.inf
            own["damping_along"], own["damping_up"] = (ahead + aside) / 2, up
            own["first"], own["last"] = len(patches), len(patches) + 2 * len(offsets)
            for side in (0, 1):
                wheel, mass = 2 * i + side, axle.wheels[side].mass
                along, aside = axle.steered[side]
                for offset in offsets:
                    across = (1 - 2 * side) * (axle.track / 2 + offset * tyre.contact_half_width)
                    across += aside
                    spring = (loads[wheel] - mass * GRAVITY) * share
                    place = (axle.x + along, across, True, (0.0,) * 3, (0.0,) * 2, 0.0)
                    patches.append((wheel, across, along, spring, mass * share, *place))
            self.states[i]["turn"] = np.eye(3).ravel()
        self.patches = np.array(patches, PATCH)
        self._steps = 1

    def grip(self, friction: Sequence[float]) -> None:
        """Friction coefficient of each wheel (4,), infinite against a rail."""
        self.axles["friction"] = np.reshape(friction, (2, 2))

    @property
    def loads(self) -> list[float]:
        """(4,) N."""
        loads: list[float] = np.bincount(self.patches["wheel"], self.patches["load"], 4).tolist()
        return loads

    @property
    def slips(self) -> list[float]:
        """(4,) m that each wheel has slipped, straight from where it began."""
        return list(wheel_slips(self.patches))

    @property
    def gives(self) -> list[Vector]:
        """(4, 3) m that each wheel has moved on its axle, along the axle's own axes."""
        return [(x, y, z) for x, y, z in wheel_gives(self.patches, self.states).tolist()]

    def refine(self, factor: int) -> None:
        """From now on steps of `factor` to one."""
        for name in ("damping_along", "damping_up"):
            self.axles[name] *= factor / self._steps
        self._steps = factor

    def save(self) -> KeptWheels:
        return KeptWheels(self.patches.copy(), self.states.copy())

    def restore(self, kept: KeptWheels) -> None:
        self.patches[:], self.states[:] = kept.patches, kept.states

    def press(
        self,
        i: int,
        origin: Vector,
        turn: Sequence[float],
        about: Vector,
        gravity: Vector,
        roll: float = 0.0,
    ) -> tuple[Vector, Vector]:
        """Force (N) on an axle and its moment (N m); see `axle_forces.press`."""
        rows = tuple(turn)
        return press(self.axles, self.states, self.patches, i, origin, rows, about, gravity, roll)
