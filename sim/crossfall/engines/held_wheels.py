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
    AXLE_STATE,
    PATCH,
    Records,
    press,
    wheels,
)
from crossfall.truck.model import GRAVITY, Truck
from crossfall.truck.native import address, entry
from crossfall.truck.vectors import Vector


@dataclass(frozen=True)
class KeptWheels:
    """Patches and what the axles remember at a moment, to come back to."""

    patches: Records
    states: Records


class HeldWheels:
    """All wheels of a truck, held, on the table; at ride height when made. SI, table axes.

    axles: records of AXLE, of which this sets the tyres. states: of AXLE_STATE. patches: of PATCH,
    front left first. loads: (4,) N on the ground at ride height. damping: ratio to critical of a
    tyre under its load, which only settles it. step: s.
    """

    def __init__(self, truck: Truck, loads: Sequence[float], damping: float, step: float) -> None:
        self.axles, self.states = np.zeros(2, AXLE), np.zeros(2, AXLE_STATE)
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
        self._tell = entry(wheels)
        self._moves, self._out, self._told = np.empty(19), np.empty(6), np.empty((4, 5))
        arrays = (self.axles, self.states, self.patches, self._moves, self._out)
        self._pressing = [address(v) for v in arrays]
        self._telling = [address(v) for v in (self.patches, self.states, self._told)]

    def grip(self, friction: Sequence[float]) -> None:
        """Friction coefficient of each wheel (4,), infinite against a rail."""
        self.axles["friction"] = np.reshape(friction, (2, 2))

    def told(self) -> list[list[float]]:
        """(4, 5) of each wheel load, N, m that it has slipped, straight from where it began, and
        (3,) m that it has moved on its axle, along the axle's own axes."""
        self._tell(*self._telling, len(self.patches))
        told: list[list[float]] = self._told.tolist()
        return told

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
        origin: Sequence[float],
        turn: Sequence[float],
        about: Sequence[float],
        gravity: Sequence[float],
        roll: float = 0.0,
    ) -> tuple[Vector, Vector]:
        """Force (N) on an axle and its moment (N m); see `axle_forces.press`."""
        self._moves[:] = [*origin, *turn, *about, *gravity, roll]
        entry(press)(*self._pressing, len(self.patches), i)
        fx, fy, fz, mx, my, mz = self._out.tolist()
        return (fx, fy, fz), (mx, my, mz)
