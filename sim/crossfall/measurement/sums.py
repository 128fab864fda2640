"""Mass and CG of the whole truck from four corners and one raised end, with their uncertainty.

Level, the loads give mass, x and y (moments); raised, they give the height: the load under the
raised axle of `weigh_in_model` (equation (2) there) solved for it by the secant method. Doubt is
carried through by finite differences, from every reading by itself.

Source: ISO 10392 for the raised axle; JCGM 100:2008 (GUM), 5.1.3, for differences (from memory); x
and y derived here from moments about the ground.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import radians, sqrt, tan
from typing import Any

import numpy as np

from crossfall.measurement.readings import Readings
from crossfall.measurement.weigh_in_model import (
    Springs,
    Stand,
    TruckGeometry,
    warp_stiffness,
    wheel_loads,
)
from crossfall.truck.model import Array

_MM = _G = 1e-3
_ACCURACY = 0.002  # of a load, plus or minus: what kitchen scales mostly promise
FLOOR = radians(0.2)  # plus or minus
_RECTANGULAR = 1 / sqrt(3)
HEIGHT_MATCH = 0.0002  # m, plus or minus: the scale higher or lower than its blocks
FIRST, SECOND = 0.06, 0.14  # m, CG heights the solution starts from
_ROUNDS = 30
_CLOSE = 1e-13  # m


@dataclass(frozen=True)
class Sums:
    """SI. cg: (3,) m. covariance: (4, 4) of mass, x, y, z. causes: (words, sd of z it makes)."""

    mass: float
    cg: Array
    covariance: Array
    causes: tuple[tuple[str, float], ...]

    @property
    def sd(self) -> Array:
        """(4,) of mass kg and CG m."""
        return np.sqrt(np.diag(self.covariance))


def sums(readings: Readings, radii: tuple[float, float], radius_sd: float,
         springs: Mapping[str, tuple[float, float]], tyre: float) -> Sums:  # fmt: skip
    """Mass, CG and covariance from readings in g and mm; SI out.

    radii: (2,) m, front and rear wheel centres above the ground, and their sd. springs: of the free
    suspension, value and sd by the names of `weigh_in_model.Springs`; not asked where it was held.
    tyre: N/m, one tyre's stiffness; how far a corner is out for a scale higher than its blocks is
    `weigh_in_model.warp_stiffness` times that.
    x = L (front / M - 1/2), y = (left less right loads times track / 2) / M; covariance D D^T, D
    the changes by one sd of each reading, and what accuracy and floor add.
    """
    names, values, sds = _inputs(readings, radii, radius_sd, springs)
    steps = np.where(sds > 0, sds, 0.0)
    tried = np.column_stack([values[:, None], values[:, None] + np.diag(steps)])
    warp = _warp(readings, springs, tyre)
    found = _solved(dict(zip(names, tried, strict=True)), readings, warp)  # (4, 1 + n)
    change = found[:, 1:] - found[:, :1]
    mass, *cg = found[:, 0]
    lean = tan(FLOOR) * _RECTANGULAR * cg[2]  # moves the level loads' centre as a lean would
    scale = _ACCURACY * _RECTANGULAR * mass
    extra = np.diag([scale**2, lean**2, lean**2, 0.0])
    causes = sorted(zip(names, np.abs(change[3]).tolist(), strict=True), key=lambda c: -c[1])
    return Sums(float(mass), np.array(cg), change @ change.T + extra, tuple(causes))


def _inputs(
    readings: Readings, radii: tuple[float, float], radius_sd: float,
    springs: Mapping[str, tuple[float, float]],
) -> tuple[list[str], Array, Array]:  # fmt: skip
    scale = sqrt(readings.scatter_g**2 + readings.scale_step_g**2 / 12) * _G
    ruler = readings.ruler_tol_mm * _MM * _RECTANGULAR
    pair = sqrt(2) * readings.scatter_g  # two wheels are stood on the scale at once
    raised = sqrt((pair**2 + readings.scale_step_g**2 / 12) / readings.raised_repeats) * _G
    rows = [
        *((f"corner {i}", w * _G, scale) for i, w in enumerate(readings.corners_g)),
        ("scale over blocks", 0.0, HEIGHT_MATCH * _RECTANGULAR),
        ("raised load", readings.raised_g * _G, raised),
        ("block", readings.block_mm * _MM, ruler),
        ("wheelbase", readings.wheelbase_mm * _MM, ruler),
        ("front track", readings.front_track_mm * _MM, ruler),
        ("rear track", readings.rear_track_mm * _MM, ruler),
        ("front radius", radii[0], 0.0),
        ("rear radius", radii[1], 0.0),
        ("radii", 0.0, radius_sd),
        *(() if readings.held else ((name, v, sd) for name, (v, sd) in springs.items())),
    ]
    names, values, sds = zip(*rows, strict=True)
    return list(names), np.array(values), np.array(sds)


def _warp(readings: Readings, springs: Mapping[str, tuple[float, float]], tyre: float) -> float:
    """kg per m that each corner shows too much for a scale higher than its blocks."""
    track = (readings.front_track_mm + readings.rear_track_mm) / 2 * _MM
    if readings.corners_held:
        return warp_stiffness(track, tyre)
    free: dict[str, Any] = {name: np.array(value) for name, (value, _) in springs.items()}
    return warp_stiffness(track, tyre, Springs(**free))


def _solved(inputs: Mapping[str, Array], readings: Readings, warp: float) -> Array:
    """(4, K) mass, x, y, z for K sets of readings; warp: kg/m, as of `_warp`."""
    too_much = warp * inputs["scale over blocks"]
    corners = np.array([inputs[f"corner {i}"] - too_much for i in range(4)])
    base, front_track, rear_track = (inputs[k] for k in ("wheelbase", "front track", "rear track"))
    mass = corners.sum(axis=0)
    x = base * (corners[:2].sum(axis=0) / mass - 0.5)
    couple = (corners[0] - corners[1]) * front_track + (corners[2] - corners[3]) * rear_track
    y = couple / 2 / mass
    radii = [inputs[k] + inputs["radii"] for k in ("front radius", "rear radius")]
    springs = None
    if not readings.held:
        springs = Springs(
            rate_front=inputs["rate_front"],
            rate_rear=inputs["rate_rear"],
            spacing=inputs["spacing"],
            roll_centre=inputs["roll_centre"],
            unsprung_front=inputs["unsprung_front"],
            unsprung_rear=inputs["unsprung_rear"],
        )
    up = inputs["block"] * (1 if readings.raised == "front" else -1)
    zero = np.zeros_like(mass)
    stand = Stand(up, zero, zero, zero, zero)
    which = slice(0, 2) if readings.raised == "front" else slice(2, 4)

    def off(z: Array) -> Array:
        shape = TruckGeometry(mass, x, y, z, base, front_track, rear_track, *radii)
        load: Array = wheel_loads(shape, springs, stand)[..., which].sum(axis=-1)
        return load - inputs["raised load"]

    before, z = np.full_like(mass, FIRST), np.full_like(mass, SECOND)
    was = off(before)
    for _ in range(_ROUNDS):
        now = off(z)
        slope = (now - was) / np.where(z == before, 1.0, z - before)
        step = np.where(slope != 0, now / np.where(slope == 0, 1.0, slope), 0.0)
        before, was, z = z, now, z - step
        if np.max(np.abs(step)) < _CLOSE:
            break
    return np.array([mass, x, y, z])
