"""Many trucks stacked into arrays for the compliant equilibrium.

Everything is made dimensionless with each truck's own wheelbase and weight (so gravity and total
mass are 1), which makes one set of tolerances fit every truck. The last axis is always the build.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import GRAVITY, Array, Truck, Tyre
from crossfall.truck.ride import spring_preloads, tyre_loads

Flags = NDArray[np.bool_]
Ints = NDArray[np.int64]
Index = Ints | Flags | slice

FIRM = 30.0  # of the vertical stiffness: gives a hundredth of a degree of tip


@dataclass(frozen=True)
class Builds:
    """B trucks; lengths over the wheelbase, forces over the weight, masses over the total.

    Axes in front of the build: 3 components, 3 bodies (front axle with its wheels, rear axle,
    chassis) or 2 axles, 2 sides (left, right) or the p contact points of one axle, left first: one
    per tyre on its centre plane, or two per tyre where any build has a contact half-width. `held`
    marks the joints (front heave, front roll, rear heave, rear roll) that cannot move and `tied`
    the builds whose axles heave equally.
    """

    wheelbase: Array  # (B,) m
    weight: Array  # (B,) N
    mass: Array  # (3, B)
    moment: Array  # (3, 3, B), mass times CG from the roll centre (chassis: from the origin)
    roll_centre: Array  # (3, 2, B)
    heave_axis: Array  # (3, 2, B)
    disc_mass: Array  # (2, p, B), the wheel's, shared among its contact points
    disc_centre: Array  # (3, 2, p, B), from the roll centre
    radius: Array  # (2, 1, B)
    tyre_rate: Array  # (3, 2, 1, B), of one contact point along the axle's x, y and z
    tyre_load: Array  # (2, p, B), ground load of each point at ride height
    spring_rate: Array  # (2, 1, B)
    half_spacing: Array  # (2, B)
    preload: Array  # (2, 2, B)
    bump: Array  # (2, 1, B)
    droop: Array  # (2, 1, B)
    anti_roll: Array  # (2, B)
    stop_rate: Array  # (2, 1, B)
    held: Flags  # (4, B)
    tied: Flags  # (B,)

    def __len__(self) -> int:
        return len(self.weight)

    def take(self, index: Index) -> Builds:
        """The builds at `index` (integers, repeats allowed, or a mask)."""
        return Builds(**{f.name: pick(getattr(self, f.name), index) for f in fields(self)})


def pick(values: NDArray[Any], index: Index) -> Any:
    """values[..., index], laid out with the last axis contiguous, as `[...]` does not."""
    if isinstance(index, slice):
        return values[..., index]
    if index.dtype == bool:
        return values.compress(index, axis=-1)
    return values.take(index, axis=-1)


def pack(trucks: Sequence[Truck], stop_ratio: float = 100.0) -> Builds:
    """Stack trucks. `stop_ratio`: stiffness of the bump and droop stops over the corner spring's,
    a numerical stand-in for metal on metal."""
    points = 2 if any(a.tyre.contact_half_width > 0 for t in trucks for a in t.axles) else 1
    columns = [_column(truck, points, stop_ratio) for truck in trucks]
    return Builds(**{name: np.stack([c[name] for c in columns], axis=-1) for name in columns[0]})


def _column(truck: Truck, points: int, stop_ratio: float) -> dict[str, Any]:
    """One truck's dimensionless arrays, without the build axis."""
    body = whole(truck)
    mass, length, weight = body.mass, truck.wheelbase, body.mass * GRAVITY
    rate = weight / length
    springs, tyres = [a.suspension for a in truck.axles], [a.tyre for a in truck.axles]
    centre = np.array([(a.x, 0.0, s.roll_centre_height) for a, s in _pairs(truck)]).T
    spread = np.array([0.0]) if points == 1 else np.array([1.0, -1.0])

    def per_point(values: Any) -> Array:  # (..., 2 axles, 2 sides) to (..., 2, 2 * points)
        return np.repeat(np.asarray(values, dtype=np.float64), points, axis=-1)

    hub = np.array([[(a.x, y * a.track / 2, a.tyre.radius) for y in (1, -1)] for a in truck.axles])
    hub = per_point(hub.transpose(2, 0, 1))
    half_width = np.array([t.contact_half_width for t in tyres])
    hub[1] += half_width[:, None] * np.tile(spread, 2)
    bodies = [unsprung(truck, 0), unsprung(truck, 1), truck.chassis]
    moment = np.array([b.mass * b.cg for b in bodies]).T
    moment[:, :2] -= centre * [b.mass for b in bodies[:2]]
    lean = np.array([s.heave_lean for s in springs])
    return {
        "wheelbase": np.float64(length),
        "weight": np.float64(weight),
        "mass": np.array([b.mass for b in bodies]) / mass,
        "moment": moment / (mass * length),
        "roll_centre": centre / length,
        "heave_axis": np.array([np.sin(lean), 0 * lean, np.cos(lean)]),
        "disc_mass": per_point([[w.mass for w in a.wheels] for a in truck.axles]) / mass / points,
        "disc_centre": (hub - centre[:, :, None]) / length,
        "radius": np.array([[t.radius] for t in tyres]) / length,
        "tyre_rate": np.array(
            [[[k] for k in kind] for kind in zip(*map(_rates, tyres), strict=True)]
        )
        / rate
        / points,
        "tyre_load": per_point(tyre_loads(truck).reshape(2, 2)) / weight / points,
        "spring_rate": np.array([[s.spring_rate] for s in springs]) / rate,
        "half_spacing": np.array([s.spring_spacing for s in springs]) / 2 / length,
        "preload": spring_preloads(truck).reshape(2, 2) / weight,
        "bump": np.array([[s.bump] for s in springs]) / length,
        "droop": np.array([[s.droop] for s in springs]) / length,
        "anti_roll": np.array([s.anti_roll for s in springs]) / (weight * length),
        "stop_rate": np.array([[s.spring_rate] for s in springs]) * stop_ratio / rate,
        "held": np.repeat([s.locked for s in springs], 2),
        "tied": np.bool_(False),
    }


def _rates(tyre: Tyre) -> tuple[float, float, float]:
    return tyre.longitudinal, tyre.lateral, tyre.stiffness


def _pairs(truck: Truck) -> list[tuple[Any, Any]]:
    return [(a, a.suspension) for a in truck.axles]


def lock(builds: Builds) -> Builds:
    """The same builds with both suspensions locked: only the tyres give."""
    return replace(builds, held=np.ones_like(builds.held))


def joined(parts: Sequence[Builds]) -> Builds:
    """Several stacks as one."""
    return Builds(
        **{f.name: np.concatenate([getattr(p, f.name) for p in parts], -1) for f in fields(Builds)}
    )


def firm(builds: Builds) -> Builds:
    """The same builds with tyres that hardly give along the ground."""
    rate = builds.tyre_rate.copy()
    rate[:2] = FIRM * rate[2]
    return replace(builds, tyre_rate=rate)


def rise_only(builds: Builds) -> Builds:
    """The same builds with axles that heave equally and do not roll: the body can only rise.

    Where one axle is locked the other heaves alone.
    """
    held = builds.held.copy()
    held[[1, 3]] = True
    return replace(builds, held=held, tied=~(held[0] | held[2]))
