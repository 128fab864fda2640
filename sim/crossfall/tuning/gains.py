"""Where a gram helps: exact derivatives of the tip angle, as fields and as numbers per part.

Rigid by `rigid.mass_derivative` and `rigid.cg_gradient`, compliant by
`compliant_gradient.tip_gradient`. Springs count as adjusted again, so that the truck still sits
level; heave axes keep their lean.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np

from crossfall.statics import rigid
from crossfall.statics.compliant_gradient import TipGradient, tip_gradient
from crossfall.truck.model import Array, Carrier, Part, Truck
from crossfall.tuning.directions import ROUND, Angles, grouped, row_name

Method = Literal["rigid", "compliant"]
Field = Callable[[Array], Array]  # (n, 3) m, truck axes -> (n,) rad/kg


@dataclass(frozen=True)
class Gradients:
    """Derivatives on the eight headings of ROUND, by method. angles: (1, 8) and by direction."""

    truck: Truck
    method: Method
    angles: Angles
    exact: TipGradient | None

    def per_mass(self, carrier: Carrier, places: Array) -> Array:
        """(8, n) rad/kg for a small mass on `carrier` at places (n, 3) m."""
        if self.exact is not None:
            return self.exact.per_mass(carrier, places)
        return np.array([rigid.mass_derivative(self.truck, h, places) for h in ROUND])

    def per_move(self, carrier: Carrier, mass: float) -> Array:
        """(8, 3) rad/m for moving a mass (kg) on `carrier`."""
        if self.exact is not None:
            return self.exact.per_move(carrier, mass)
        return np.array([rigid.move_derivative(self.truck, h, mass) for h in ROUND])


def gradients(truck: Truck, method: Method) -> Gradients:
    """All derivatives of a truck by one of the two methods."""
    if method == "rigid":
        return Gradients(truck, method, grouped(rigid.tip_angle(truck, ROUND)[None]), None)
    exact = tip_gradient(truck, ROUND)
    return Gradients(truck, method, grouped(exact.tip[None]), exact)


def field(found: Gradients, headings: Sequence[int], carrier: Carrier = "chassis") -> Field:
    """The field of a direction, or of several at once: the least of their derivatives.

    headings: indices into ROUND. A gram counts as carried by `carrier` wherever it is.
    """

    def least(places: Array) -> Array:
        values: Array = found.per_mass(carrier, np.asarray(places))[list(headings)].min(axis=0)
        return values

    return least


@dataclass(frozen=True)
class PartGain:
    """One row of the parts list. mass: kg, all its pieces.

    per_mass: (4,) rad/kg for DIRECTIONS, mass added evenly to its pieces (removed: the other
    sign). per_move: (4, 3) rad/m, all pieces moved along x, y, z; mirrored pieces and right-hand
    wheels move the other way across.
    """

    name: str
    row: int
    mass: float
    per_mass: Array
    per_move: Array


def part_gains(found: Gradients) -> tuple[PartGain, ...]:
    """Every row of the truck's parts, the strongest pull in any direction first."""
    rows: dict[int, list[Part]] = {}
    for part in found.truck.parts:
        rows.setdefault(part.row, []).append(part)
    governing = found.angles.governing[0]
    gains = []
    for row, members in rows.items():
        by_mass = np.mean([_piece_mass(found, p) for p in members], axis=0)
        by_move = np.sum([_piece_move(found, p) for p in members], axis=0)
        name = members[0].label if len(members) == 1 else row_name(members[0].label)
        mass = sum(p.body.mass for p in members)
        gains.append(PartGain(name, row, mass, by_mass[governing], by_move[governing]))
    return tuple(sorted(gains, key=lambda g: (-float(np.abs(g.mass * g.per_mass).max()), g.row)))


def _piece_mass(found: Gradients, part: Part) -> Array:
    """(8,) rad/kg; a link's mass rides on axle and chassis by its unsprung fraction."""
    at = part.body.cg[None]
    own = part.unsprung if part.carrier != "chassis" else 1.0
    value = own * found.per_mass(part.carrier, at)[:, 0]
    if own < 1.0:
        value = value + (1.0 - own) * found.per_mass("chassis", at)[:, 0]
    return np.asarray(value)


def _piece_move(found: Gradients, part: Part) -> Array:
    """(8, 3) rad/m along the row's axes."""
    mass = part.body.mass
    own = part.unsprung if part.carrier != "chassis" else 1.0
    value = own * found.per_move(part.carrier, mass)
    if own < 1.0:
        value = value + (1.0 - own) * found.per_move("chassis", mass)
    return np.asarray(value * ([1.0, -1.0, 1.0] if part.mirrored else 1.0))
