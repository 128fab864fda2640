"""Where a gram helps: derivatives of the tip angle, as fields and as numbers per part.

Rigid by `rigid.mass_derivative` and `rigid.move_derivative`, compliant by
`compliant_gradient.tip_gradient`, at the surface's grip. Springs count as adjusted again, so that
the truck still sits level; heave axes that are given as a percentage lean by the new CG height.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import Literal

import numpy as np

from crossfall.answers.conditions import Hold, choose_grip
from crossfall.answers.tips import slide_there, tip_angles, weakest
from crossfall.statics import rigid
from crossfall.statics.compliant_gradient import TipGradient, tip_gradient
from crossfall.truck.build import Loaded
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Carrier, Flags, Grip, Part, Truck
from crossfall.truck.schema import TruckSpec
from crossfall.tuning.corners import Corner, corners, grip_at, truck_at
from crossfall.tuning.directions import row_name

_Method = Literal["rigid", "compliant"]
_Field = Callable[[Array], Array]  # (n, 3) m, truck axes -> (n,) rad/kg
CLIMB, LEFT, DESCENT, RIGHT, WEAKEST = range(5)  # the headings, in this order
RISE = 2e-3  # m, of the CG, for what the lean of heave axes makes of it
LEAST_PER_MASS = np.radians(0.002) / 0.010  # rad/kg: less has no sign worth a word
LEAST_PER_MOVE = np.radians(0.005) / 0.010  # rad/m


@dataclass(frozen=True)
class Slopes:
    """Derivatives on some headings (H,) rad: rigid (by truck and headings) or `exact`.

    by_height: (H,) rad/m, what leaning heave axes make of a CG that rises.
    """

    truck: Truck
    headings: Array
    exact: TipGradient | None
    by_height: Array

    def per_mass(self, carrier: Carrier, places: Array) -> Array:
        """(H, n) rad/kg for a small mass on `carrier` at places (n, 3) m."""
        if self.exact is not None:
            body = whole(self.truck)
            rise = (np.atleast_2d(places)[:, 2] - body.cg[2]) / body.mass
            return np.asarray(self.exact.per_mass(carrier, places) + self.by_height[:, None] * rise)
        return np.array([rigid.mass_derivative(self.truck, h, places) for h in self.headings])

    def per_move(self, carrier: Carrier, mass: float) -> Array:
        """(H, 3) rad/m for moving a mass (kg) on `carrier`."""
        if self.exact is not None:
            rise = np.array([0.0, 0.0, mass / whole(self.truck).mass])
            return np.asarray(self.exact.per_move(carrier, mass) + self.by_height[:, None] * rise)
        return np.array([rigid.move_derivative(self.truck, h, mass) for h in self.headings])


@dataclass(frozen=True)
class Gradients:
    """All derivatives of a truck by one of the two methods.

    headings, angles, slide, slides: (5,) climb, left down, descent, right down and the weakest;
    slide: rad, where it slides or rolls away; where it `slides` first the angle (rad) and its
    derivatives are against a rail. governing: (4,) which of them
    counts, for DIRECTIONS. there: the slopes on those at the corners, where they were asked for.
    """

    truck: Truck
    method: _Method
    grip: Grip
    hold: Hold
    headings: Array
    angles: Array
    slide: Array
    slides: Flags
    slopes: Slopes
    corners: tuple[Corner, ...] = ()
    there: tuple[Slopes, ...] = ()

    @property
    def governing(self) -> list[int]:
        return governing(self.angles)


def gradients(
    loaded: Loaded,
    method: _Method = "compliant",
    *,
    surface: str | None = None,
    hold: Hold = "brakes",
    everywhere: bool = True,
) -> Gradients:
    """Derivatives on a surface by name, the first if not given; everywhere: at the corners too.
    rad/kg and rad/m.

    Raises InputError where the truck has no such surface.
    Source: as `statics.rigid` and `statics.compliant_gradient`; what leaning heave axes add derived
    here by central differences over +-RISE.
    """
    truck, grip = loaded.truck, choose_grip(loaded.truck, surface)
    if method == "rigid":
        headings = np.append(rigid.QUARTERS, rigid_weakest(truck))
        tips = rigid.tip_angle(truck, headings)
        nothing = np.zeros(5, dtype=bool)
        slopes = Slopes(truck, headings, None, np.zeros(5))
        slide = slide_there([truck] * 5, headings, tips, grip.likely, hold)[0]
        return Gradients(truck, method, grip, hold, headings, tips, slide, nothing, slopes)
    headings = np.append(rigid.QUARTERS, weakest([truck], grip.likely, hold)[0])
    found = tip_angles(truck, headings, grip.likely, hold)
    railed = found.slides | (hold == "rail")
    slopes = _slopes(loaded, truck, headings, grip.likely, railed)
    where = corners(grip, truck) if everywhere else ()
    own = governing(found.free)
    there = []
    for corner in where:
        other, mu = truck_at(corner, truck), grip_at(corner, grip)
        there.append(_slopes(loaded, other, headings[own], mu, railed[own]))
    return Gradients(
        truck,
        method,
        grip,
        hold,
        headings,
        found.free,
        found.slide,
        found.slides,
        slopes,
        where,
        tuple(there),
    )


def _slopes(loaded: Loaded, truck: Truck, headings: Array, grip: float, railed: Flags) -> Slopes:
    exact = tip_gradient(truck, headings, grip, rail=railed.astype(np.float64))
    by_height = np.zeros(len(headings))
    high, low = (leaning(truck, loaded.spec, rise) for rise in (RISE, -RISE))
    if high is not truck:
        for rail in (False, True):
            at = np.flatnonzero(railed == rail)
            if len(at):
                hold: Hold = "rail" if rail else "brakes"
                tips = tip_angles([high, low], headings[at], grip, hold).free
                by_height[at] = (tips[0] - tips[1]) / (2 * RISE)
    return Slopes(truck, headings, exact, by_height)


def leaning(truck: Truck, spec: TruckSpec, rise: float) -> Truck:
    """The truck with its heave axes leaning as if its CG were `rise` (m) higher; the very same one
    where no percentage is given (`build` has the rule): tan(lean) +- percent / 100 rise / L.

    Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE 1992), chapter 7, anti-squat and
    anti-dive of solid axles (from memory).
    """
    percent = spec.front.suspension.percent, spec.rear.suspension.percent
    if percent == (None, None):
        return truck
    made = []
    for axle, own, way in zip(truck.axles, percent, (1.0, -1.0), strict=True):
        if own is not None:
            lean = np.tan(axle.suspension.heave_lean) + way * own / 100 * rise / truck.wheelbase
            suspension = replace(axle.suspension, heave_lean=float(np.arctan(lean)))
            axle = replace(axle, suspension=suspension)
        made.append(axle)
    return replace(truck, front=made[0], rear=made[1])


def governing(angles: Array) -> list[int]:
    """(4,) for DIRECTIONS, which of the five headings counts, by their angles (5,) rad.

    Source: derived here: of both sides the weaker.
    """
    return [LEFT if angles[LEFT] <= angles[RIGHT] else RIGHT, CLIMB, DESCENT, WEAKEST]


def rigid_weakest(truck: Truck) -> float:
    """rad, the heading on which the rigid truck tips first: straight over one of its edges.

    psi = atan2(n_y, -n_x) of the edge normals.
    Source: derived here from tan(theta) = a / (h n.d), least where n.d = 1.
    """
    normals = rigid.normals(truck)
    straight = np.arctan2(normals[:, 1], -normals[:, 0]) % (2 * np.pi)
    return float(straight[rigid.tip_angle(truck, straight).argmin()])


def field(found: Gradients, headings: Sequence[int], carrier: Carrier = "chassis") -> _Field:
    """The field of a direction, or of several at once: the least of their derivatives. (n, 3) m to
    (n,) rad/kg.

    headings: indices into the gradients' own. A gram counts as carried by `carrier` wherever it is.
    Source: as `gradients`.
    """

    def least(places: Array) -> Array:
        slopes = found.slopes.per_mass(carrier, np.asarray(places))
        values: Array = slopes[list(headings)].min(axis=0)
        return values

    return least


@dataclass(frozen=True)
class PartGain:
    """One row of the parts list, or what of it is on one axle.

    end: "front" or "rear" where the row has pieces on both axles, else "". mass: kg, all its
    pieces. per_mass: (4,) rad/kg for DIRECTIONS, mass added evenly to its pieces (removed: the
    other sign). per_move: (4, 3) rad/m, all pieces moved along x, y, z; mirrored pieces and
    right-hand wheels move the other way across. mass_turns, move_turns: the same shapes, whether
    the sign is another one at some corner.
    """

    name: str
    row: int
    end: str
    mass: float
    per_mass: Array
    per_move: Array
    mass_turns: Flags
    move_turns: Flags


def part_gains(found: Gradients) -> tuple[PartGain, ...]:
    """Every row of the truck's parts, the strongest pull in any direction first.

    A row's mass counts as added evenly, the mean over its pieces; its move as the sum over them; a
    link's by its unsprung share on the axle and the rest on the chassis.
    Source: as `gradients`; the chain rule.
    """
    gains = [
        _part_gain(found, name, end, members) for name, end, members in _rows(found.truck.parts)
    ]
    return tuple(sorted(gains, key=lambda g: (-float(np.abs(g.mass * g.per_mass).max()), g.row)))


def _rows(parts: Sequence[Part]) -> list[tuple[str, str, list[Part]]]:
    """Pieces by row, and by axle where a row has some on both."""
    rows: dict[int, list[Part]] = {}
    for part in parts:
        rows.setdefault(part.row, []).append(part)
    out: list[tuple[str, str, list[Part]]] = []
    for members in rows.values():
        name = members[0].label if len(members) == 1 else row_name(members[0].label)
        ends: dict[str, list[Part]] = {}
        for part in members:
            ends.setdefault(part.carrier.partition(" ")[0], []).append(part)
        if len(ends) == 1:
            out.append((name, "", members))
        else:
            out += [(f"{name} ({end})", end, own) for end, own in ends.items()]
    return out


def _part_gain(found: Gradients, name: str, end: str, pieces: Sequence[Part]) -> PartGain:

    def both(slopes: Slopes) -> tuple[Array, Array]:
        by_mass = np.mean([_piece_mass(slopes, p) for p in pieces], axis=0)
        by_move = np.sum([_piece_move(slopes, p) for p in pieces], axis=0)
        return by_mass, by_move

    by_mass, by_move = (slopes[found.governing] for slopes in both(found.slopes))
    elsewhere = [both(slopes) for slopes in found.there]
    return PartGain(
        name,
        pieces[0].row,
        end,
        sum(p.body.mass for p in pieces),
        by_mass,
        by_move,
        _turns([by_mass, *(m for m, _ in elsewhere)], LEAST_PER_MASS),
        _turns([by_move, *(m for _, m in elsewhere)], LEAST_PER_MOVE),
    )


def _turns(slopes: Sequence[Array], least: float) -> Flags:
    """Whether there are both signs, by more than `least`."""
    every = np.array(slopes)
    return np.asarray((every > least).any(axis=0) & (every < -least).any(axis=0))


def _piece_mass(slopes: Slopes, part: Part) -> Array:
    """(H,) rad/kg; a link's mass rides on axle and chassis by its unsprung fraction."""
    at = part.body.cg[None]
    own = part.unsprung if part.carrier != "chassis" else 1.0
    value = own * slopes.per_mass(part.carrier, at)[:, 0]
    if own < 1.0:
        value = value + (1.0 - own) * slopes.per_mass("chassis", at)[:, 0]
    return np.asarray(value)


def _piece_move(slopes: Slopes, part: Part) -> Array:
    """(H, 3) rad/m along the row's axes."""
    mass = part.body.mass
    own = part.unsprung if part.carrier != "chassis" else 1.0
    value = own * slopes.per_move(part.carrier, mass)
    if own < 1.0:
        value = value + (1.0 - own) * slopes.per_move("chassis", mass)
    return np.asarray(value * ([1.0, -1.0, 1.0] if part.mirrored else 1.0))
