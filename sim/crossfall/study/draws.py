"""Trucks as they may really be: every uncertain number off by an error within its tolerance.

The inputs are the part rows' masses and places, whose errors are even within their tolerances, all
pieces of a row alike and mirrored pieces mirrored, and `Truck.uncertain`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt

import numpy as np
from numpy.typing import NDArray

from crossfall.truck.assemble import with_errors
from crossfall.truck.model import Array, Truck
from crossfall.truck.uncertain import quantile, varied

Indices = NDArray[np.intp]
LIGHTEST = 0.1  # of what a part should weigh: however loose its tolerance, it weighs something


@dataclass(frozen=True)
class Inputs:
    """What of a truck may be off.

    rows: (R,) part rows, each with four columns of a sample, mass and place along x, y, z; sd:
    (R, 4) their standard uncertainties, kg and m; labels: what each row is called. After them
    `Truck.uncertain` has a column each.
    """

    truck: Truck
    rows: Indices
    sd: Array
    labels: tuple[str, ...]

    @property
    def columns(self) -> int:
        """How many columns a sample has."""
        return 4 * len(self.rows) + len(self.truck.uncertain)

    def named(self) -> list[tuple[str, Indices]]:
        """(name, columns) of every input: a row's mass, its place, and each of the others."""
        found = [
            (f"{label}, {what}", 4 * i + np.array(own, np.intp))
            for i, label in enumerate(self.labels)
            for what, own in (("mass", [0]), ("place", [1, 2, 3]))
            if self.sd[i, own].any()
        ]
        begin = 4 * len(self.rows)
        return found + [
            (one.name, np.array([begin + i], np.intp)) for i, one in enumerate(self.truck.uncertain)
        ]


def inputs_of(truck: Truck) -> Inputs:
    """Rows with a tolerance in file order, and the truck's other uncertain numbers."""
    first = {p.row: p for p in reversed(truck.parts)}
    pieces = {r: sum(p.row == r for p in truck.parts) for r in first}
    rows = [r for r in sorted(first) if first[r].mass_sd or np.any(first[r].place_sd)]
    sd = np.array(
        [[first[r].mass_sd, *np.broadcast_to(first[r].place_sd, 3)] for r in rows]
    ).reshape(-1, 4)
    labels = [first[r].label if pieces[r] == 1 else first[r].label.rsplit(" ", 1)[0] for r in rows]
    return Inputs(truck, np.array(rows, np.intp), sd, tuple(labels))


def build_at(inputs: Inputs, unit: Sequence[float] | Array) -> Truck:
    """The truck with every input at its quantile, (columns,) in 0 to 1; 1/2 is as it should be, but
    for triangular inputs whose peak is off the middle.

    A row is off by sqrt(3) sd (2 u - 1), kg and m, and weighs LIGHTEST of its mass at least.
    Source: the quantile of a rectangle, JCGM 101:2008, 6.4 (from memory).
    """
    unit = np.asarray(unit, dtype=np.float64)
    begin = 4 * len(inputs.rows)
    off = sqrt(3.0) * (2.0 * unit[:begin].reshape(-1, 4) - 1.0) * inputs.sd
    others = zip(inputs.truck.uncertain, unit[begin:], strict=True)
    truck = varied(inputs.truck, {i: float(quantile(one, u)) for i, (one, u) in enumerate(others)})
    own = {p.row: p.body.mass for p in truck.parts}
    masses, shifts = {}, {}
    for row, (mass, *place) in zip(inputs.rows.tolist(), off, strict=True):
        if mass:
            masses[row] = max(own[row] + mass, LIGHTEST * own[row])
        if any(place):
            shifts[row] = np.array(place)
    return with_errors(truck, masses, shifts)


def drawn_truck(truck: Truck, seed: int) -> Truck:
    """The truck with every uncertain number off by an error drawn within its tolerance.

    Source: as `build_at`, at random numbers from the seed.
    """
    inputs = inputs_of(truck)
    return build_at(inputs, np.random.default_rng(seed).random(inputs.columns))
