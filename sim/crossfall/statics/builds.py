"""Many trucks stacked into arrays for the compliant equilibrium.

Everything is made dimensionless with each truck's own wheelbase and weight (so gravity and total
mass are 1), which makes one set of tolerances fit every truck. The last axis is always the build.

Source: derived here from dimensions: x / L, F / W, m / M, k L / W, with W = M g.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from crossfall.truck.axle_law import law_of
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.linkage import LinkageError
from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import GRAVITY, Array, Flags, Truck, Tyre
from crossfall.truck.ride import spring_squeezes, tyre_loads
from crossfall.truck.spring_law import spring_law

Ints = NDArray[np.int64]
Index = Ints | Flags | slice

_NEVER = 1e3  # wheelbases of compression, which no spring is pressed by
_FIRM = 30.0  # of the vertical stiffness: gives a hundredth of a degree of tip


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
    moment: Array  # (3, 3, B), mass times CG from the axle's point (chassis: from the origin)
    point: Array  # (3, 2, B), of each axle, whose way its law gives
    law: Array  # (7, terms, 2, B), coefficients: see `truck.axle_law`
    disc_mass: Array  # (2, p, B), the wheel's, shared among its contact points
    disc_centre: Array  # (3, 2, p, B), from the axle's point
    radius: Array  # (2, 1, B)
    tyre_rate: Array  # (3, 2, 1, B), of one contact point along the axle's x, y and z
    tyre_load: Array  # (2, p, B), ground load of each point at ride height
    spring_rate: Array  # (2, 1, B), while all of a corner's springs give
    preload: Array  # (2, 2, B), at ride height if it were so from free on
    stage_rate: Array  # (s, 2, 1, B), gained once a soft spring is bound; s = 0 where none has one
    stage_at: Array  # (s, 2, 2, B), compression at which it is
    bump: Array  # (2, 1, B)
    droop: Array  # (2, 1, B)
    anti_roll: Array  # (2, B)
    shaft: Array  # (2, B), see `Axle.shaft`
    open: Flags  # (2, B), where the motor holds the axle's wheels through an open differential
    stop_rate: Array  # (2, 1, B)
    held: Flags  # (4, B)
    tied: Flags  # (B,)

    def __len__(self) -> int:
        return len(self.weight)

    @property
    def corner_gaps(self) -> int:
        """How many gaps there are of corners: a spring's, both stops', and its second stage's."""
        return 4 * (3 + len(self.stage_rate))

    def take(self, index: Index) -> Builds:
        """The builds at `index` (integers, repeats allowed, or a mask)."""
        return Builds(**{f.name: pick(getattr(self, f.name), index) for f in fields(self)})


def pick(values: NDArray[Any], index: Index) -> Any:
    """values[..., index], laid out with the last axis contiguous, as `[...]` does not.

    values: (..., B). Raises IndexError where an index is beyond them.
    """
    if isinstance(index, slice):
        return values[..., index]
    if index.dtype == bool:
        return values.compress(index, axis=-1)
    return values.take(index, axis=-1)


def stacked(trucks: Sequence[Truck], stop_ratio: float = 100.0) -> Builds:
    """Stack trucks. `stop_ratio`: stiffness of the bump and droop stops over the corner spring's,
    a numerical stand-in for metal on metal.

    Raises InputError where an axle's links bind within its travel, ValueError without any truck.
    """
    points = 2 if any(a.tyre.contact_half_width > 0 for t in trucks for a in t.axles) else 1
    stages = int(any(a.suspension.soft_rate for t in trucks for a in t.axles))
    columns = [_column(truck, points, stages, stop_ratio) for truck in trucks]
    most = max(c["law"].shape[1] for c in columns)
    for column in columns:
        column["law"] = _padded(column["law"], most)
    return Builds(**{name: np.stack([c[name] for c in columns], axis=-1) for name in columns[0]})


def _padded(law: Array, terms: int) -> Array:
    """The law with as many terms; those beyond its own degree are nothing."""
    return np.pad(law, ((0, 0), (0, terms - law.shape[1]), *[(0, 0)] * (law.ndim - 2)))


def _column(truck: Truck, points: int, stages: int, stop_ratio: float) -> dict[str, Any]:
    """One truck's dimensionless arrays, without the build axis."""
    body = whole(truck)
    mass, length, weight = body.mass, truck.wheelbase, body.mass * GRAVITY
    rate = weight / length
    springs, tyres = [a.suspension for a in truck.axles], [a.tyre for a in truck.axles]
    try:
        laws = [law_of(axle) for axle in truck.axles]
    except LinkageError as error:  # as the file has it they did not, or it would not be here
        way = "give them less travel, or ends that are surer"
        raise InputError(Problem(truck.name, f"within its tolerances {error}", way)) from None
    ways = [law.in_units(length) for law in laws]
    most = max(way.shape[1] for way in ways)
    point = np.array([law.point for law in laws]).T
    spread = np.array([0.0]) if points == 1 else np.array([1.0, -1.0])

    def per_point(values: Any) -> Array:  # (..., 2 axles, 2 sides) to (..., 2, 2 * points)
        return np.repeat(np.asarray(values, dtype=np.float64), points, axis=-1)

    hub = per_point(np.array([axle.hubs for axle in truck.axles]).transpose(2, 0, 1))
    half_width = np.array([t.contact_half_width for t in tyres])
    hub[1] += half_width[:, None] * np.tile(spread, 2)
    bodies = [unsprung(truck, 0), unsprung(truck, 1), truck.chassis]
    moment = np.array([b.mass * b.cg for b in bodies]).T
    moment[:, :2] -= point * [b.mass for b in bodies[:2]]
    return {
        "wheelbase": np.float64(length),
        "weight": np.float64(weight),
        "mass": np.array([b.mass for b in bodies]) / mass,
        "moment": moment / (mass * length),
        "point": point / length,
        "law": np.stack([_padded(way, most) for way in ways], axis=-1),
        "disc_mass": per_point([[w.mass for w in a.wheels] for a in truck.axles]) / mass / points,
        "disc_centre": (hub - point[:, :, None]) / length,
        "radius": np.array([[t.radius] for t in tyres]) / length,
        "tyre_rate": np.array(
            [[[k] for k in kind] for kind in zip(*map(_rates, tyres), strict=True)]
        )
        / rate
        / points,
        "tyre_load": per_point(tyre_loads(truck).reshape(2, 2)) / weight / points,
        **_spring_column(truck, stages),
        "bump": np.array([[s.bump] for s in springs]) / length,
        "droop": np.array([[s.droop] for s in springs]) / length,
        "shaft": np.array([a.shaft for a in truck.axles]),
        "open": np.array([a.loose for a in truck.axles]),
        "anti_roll": np.array([s.anti_roll for s in springs]) / (weight * length),
        "stop_rate": np.array([[s.spring_rate] for s in springs]) * stop_ratio / rate,
        "held": np.repeat([s.locked for s in springs], 2),
        "tied": np.bool_(False),
    }


def _spring_column(truck: Truck, stages: int) -> dict[str, Any]:
    """The corners' springs, dimensionless; stages: 1 where any build's soft springs bind."""
    length, weight = truck.wheelbase, whole(truck).mass * GRAVITY
    laws = [spring_law(axle.suspension) for axle in truck.axles]
    rates = np.array([[law.rate] for law in laws])
    squeezes = spring_squeezes(truck).reshape(2, 2)
    more = np.array([[[law.more] for law in laws]]) * length / weight
    at = np.array([[law.bound] for law in laws]) - squeezes
    return {
        "spring_rate": rates * length / weight,
        "preload": rates * squeezes / weight,
        "stage_rate": more[:stages],
        "stage_at": np.minimum(at / length, _NEVER)[None][:stages],
    }


def _rates(tyre: Tyre) -> tuple[float, float, float]:
    return tyre.longitudinal, tyre.lateral, tyre.stiffness


def locked_builds(builds: Builds) -> Builds:
    """The same builds with both suspensions locked: only the tyres give.

    held = all of the four joints.
    """
    return replace(builds, held=np.ones_like(builds.held))


def _staged(builds: Builds, stages: int) -> Builds:
    """The same builds with so many second stages; those they lack never come."""
    lacking = stages - len(builds.stage_rate)
    rate = np.zeros((lacking, *builds.spring_rate.shape))
    at = np.full((lacking, *builds.preload.shape), _NEVER)
    return replace(
        builds,
        stage_rate=np.concatenate([builds.stage_rate, rate]),
        stage_at=np.concatenate([builds.stage_at, at]),
    )


def joined_builds(parts: Sequence[Builds]) -> Builds:
    """Several stacks as one, in order. Raises ValueError where there is none."""
    most = max(p.law.shape[1] for p in parts)
    stages = max(len(p.stage_rate) for p in parts)
    parts = [_staged(replace(p, law=_padded(p.law, most)), stages) for p in parts]
    return Builds(
        **{f.name: np.concatenate([getattr(p, f.name) for p in parts], -1) for f in fields(Builds)}
    )


def firm(builds: Builds) -> Builds:
    """The same builds with tyres that hardly give along the ground.

    k along the ground = 30 times that upwards.
    """
    rate = builds.tyre_rate.copy()
    rate[:2] = _FIRM * rate[2]
    return replace(builds, tyre_rate=rate)


def rise_only(builds: Builds) -> Builds:
    """The same builds with axles that heave equally and do not roll: the body can only rise.

    Where one axle is locked the other heaves alone.
    """
    held = builds.held.copy()
    held[[1, 3]] = True
    return replace(builds, held=held, tied=~(held[0] | held[2]))
