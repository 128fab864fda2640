"""Many trucks stacked into arrays for the compliant equilibrium.

Everything is made dimensionless with each truck's own wheelbase and weight (so gravity and total
mass are 1), which makes one set of tolerances fit every truck. The last axis is always the build.

Source: derived here from dimensions: x / L, F / W, m / M, k L / W, with W = M g.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache
from math import prod
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


class _Part:
    """A part of the builds' table, with a shape of its own in front of the build's axis.

    shape: of it, where "points" stands for the contact points of an axle, "terms" for the terms of
    an axle's law.
    """

    def __init__(self, *shape: int | str) -> None:
        self.shape = shape

    def __set_name__(self, owner: type[Builds], name: str) -> None:
        self.name = name

    def of(self, builds: Builds) -> Array:
        rows, shape = layout(builds.points, builds.terms)[self.name]
        return builds.table[rows].reshape(*shape, -1)


class _Rows(_Part):
    def __get__(self, builds: Builds, owner: type[Builds]) -> Array:
        return self.of(builds)


class _Marks(_Part):
    def __get__(self, builds: Builds, owner: type[Builds]) -> Flags:
        return np.asarray(self.of(builds) != 0.0)


@dataclass(frozen=True)
class Builds:
    """B trucks; lengths over the wheelbase, forces over the weight, masses over the total.

    table: (rows, B), all that is known of them; its parts, below, are views of it. points: p,
    contact points of an axle, left first: one per tyre on its centre plane, or two per tyre where
    any build has a contact half-width. terms: of the axles' laws.

    Axes in front of the build: 3 components, 3 bodies (front axle with its wheels, rear axle,
    chassis) or 2 axles, 2 sides (left, right) or the p contact points of one axle. `held` marks the
    joints (front heave, front roll, rear heave, rear roll) that cannot move and `tied` the builds
    whose axles heave equally.
    """

    table: Array
    points: int
    terms: int

    wheelbase = _Rows()  # m
    weight = _Rows()  # N
    mass = _Rows(3)
    moment = _Rows(3, 3)  # of the bodies, mass times CG from the axle's point (chassis: the origin)
    point = _Rows(3, 2)  # of each axle, whose way its law gives
    radius = _Rows(2)
    tyre_rate = _Rows(3, 2)  # of one contact point along the axle's x, y and z
    spring_rate = _Rows(2)  # while all of a corner's springs give
    preload = _Rows(2, 2)  # at ride height if it were so from free on
    stage_rate = _Rows(2)  # gained once a soft spring is bound
    stage_at = _Rows(2, 2)  # compression at which it is
    bump = _Rows(2)
    droop = _Rows(2)
    anti_roll = _Rows(2)
    shaft = _Rows(2)  # see `Axle.shaft`
    open = _Marks(2)  # where the motor holds the axle's wheels through an open differential
    stop_rate = _Rows(2)
    held = _Marks(4)
    tied = _Marks()
    disc_mass = _Rows(2, "points")  # the wheel's, shared among its contact points
    disc_centre = _Rows(3, 2, "points")  # from the axle's point
    tyre_load = _Rows(2, "points")  # ground load of each point at ride height
    law = _Rows(7, "terms", 2)  # coefficients: see `truck.axle_law`

    def __len__(self) -> int:
        return int(self.table.shape[1])

    def take(self, index: Index) -> Builds:
        """The builds at `index` (integers, repeats allowed, or a mask)."""
        return replace(self, table=pick(self.table, index))


_PARTS = {name: part for name, part in vars(Builds).items() if isinstance(part, _Part)}


@cache
def layout(points: int, terms: int) -> dict[str, tuple[slice, tuple[int, ...]]]:
    """Which rows of the table every part of `Builds` has, and its shape."""
    known, found, at = {"points": points, "terms": terms}, {}, 0
    for name, part in _PARTS.items():
        shape = tuple(known[n] if isinstance(n, str) else n for n in part.shape)
        found[name] = slice(at, at + prod(shape)), shape
        at += prod(shape)
    return found


def row(name: str) -> int:
    """The first row of a part that lies in front of all whose size varies. KeyError for others."""
    fixed = [n for n, part in _PARTS.items() if all(isinstance(k, int) for k in part.shape)]
    return int({n: layout(0, 0)[n][0].start for n in fixed}[name])


def with_rows(builds: Builds, **parts: Array | Flags) -> Builds:
    """The same builds with some of their parts different, each of its own shape with B last."""
    table = builds.table.copy()
    for name, values in parts.items():
        rows, shape = layout(builds.points, builds.terms)[name]
        table[rows] = np.reshape(values, (prod(shape), -1))
    return replace(builds, table=table)


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
    per_tyre = 2 if any(a.tyre.contact_half_width > 0 for t in trucks for a in t.axles) else 1
    columns = [_column(truck, per_tyre, stop_ratio) for truck in trucks]
    terms = max(c["law"].shape[1] for c in columns)
    for column in columns:
        column["law"] = _padded(column["law"], terms)
    rows = [np.stack([c[name] for c in columns], -1).reshape(-1, len(trucks)) for name in _PARTS]
    return Builds(np.concatenate(rows), 2 * per_tyre, terms)


def _padded(law: Array, terms: int) -> Array:
    """The law with as many terms; those beyond its own degree are nothing."""
    return np.pad(law, ((0, 0), (0, terms - law.shape[1]), *[(0, 0)] * (law.ndim - 2)))


def _column(truck: Truck, per_tyre: int, stop_ratio: float) -> dict[str, Any]:
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
    spread = np.array([0.0]) if per_tyre == 1 else np.array([1.0, -1.0])

    def per_point(values: Any) -> Array:  # (..., 2 axles, 2 sides) to (..., 2, 2 * per_tyre)
        return np.repeat(np.asarray(values, dtype=np.float64), per_tyre, axis=-1)

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
        "disc_mass": per_point([[w.mass for w in a.wheels] for a in truck.axles]) / mass / per_tyre,
        "disc_centre": (hub - point[:, :, None]) / length,
        "radius": np.array([t.radius for t in tyres]) / length,
        "tyre_rate": np.array([_rates(t) for t in tyres]).T / rate / per_tyre,
        "tyre_load": per_point(tyre_loads(truck).reshape(2, 2)) / weight / per_tyre,
        **_spring_column(truck),
        "bump": np.array([s.bump for s in springs]) / length,
        "droop": np.array([s.droop for s in springs]) / length,
        "shaft": np.array([a.shaft for a in truck.axles]),
        "open": np.array([a.loose for a in truck.axles]),
        "anti_roll": np.array([s.anti_roll for s in springs]) / (weight * length),
        "stop_rate": np.array([s.spring_rate for s in springs]) * stop_ratio / rate,
        "held": np.repeat([s.locked for s in springs], 2),
        "tied": np.bool_(False),
    }


def _spring_column(truck: Truck) -> dict[str, Any]:
    """The corners' springs, dimensionless; soft ones that there are not never bind."""
    length, weight = truck.wheelbase, whole(truck).mass * GRAVITY
    laws = [spring_law(axle.suspension) for axle in truck.axles]
    rates = np.array([law.rate for law in laws])
    squeezes = spring_squeezes(truck).reshape(2, 2)
    more = np.array([law.more for law in laws]) * length / weight
    at = np.array([[law.bound] for law in laws]) - squeezes
    return {
        "spring_rate": rates * length / weight,
        "preload": rates[:, None] * squeezes / weight,
        "stage_rate": more,
        "stage_at": np.minimum(at / length, _NEVER),
    }


def _rates(tyre: Tyre) -> tuple[float, float, float]:
    return tyre.longitudinal, tyre.lateral, tyre.stiffness


def locked_builds(builds: Builds) -> Builds:
    """The same builds with both suspensions locked: only the tyres give.

    held = all of the four joints.
    """
    return with_rows(builds, held=np.ones((4, len(builds))))


def joined_builds(parts: Sequence[Builds]) -> Builds:
    """Several stacks laid out alike as one, in order. Raises ValueError where they are not."""
    return replace(parts[0], table=np.concatenate([p.table for p in parts], axis=1))


def firm(builds: Builds) -> Builds:
    """The same builds with tyres that hardly give along the ground.

    k along the ground = 30 times that upwards.
    """
    rate = builds.tyre_rate.copy()
    rate[:2] = _FIRM * rate[2]
    return with_rows(builds, tyre_rate=rate)


def rise_only(builds: Builds) -> Builds:
    """The same builds with axles that heave equally and do not roll: the body can only rise.

    Where one axle is locked the other heaves alone.
    """
    held = builds.held.copy()
    held[[1, 3]] = True
    return with_rows(builds, held=held, tied=~(held[0] | held[2]))
