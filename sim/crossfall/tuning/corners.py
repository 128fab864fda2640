"""What is known least: the ends of the range of grip, and of how tyres give along the ground.

What a change does is worked out at every one of them, so that a change whose sign turns in between
can be told from one that does not.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np

from crossfall.answers.conditions import Hold
from crossfall.answers.tips import tip_pairs
from crossfall.truck.model import Array, Flags, Grip, Truck, UncertainInput
from crossfall.truck.uncertain import varied
from crossfall.tuning.directions import DIRECTIONS, Direction, DirectionAngles

WORTH_SAYING = np.radians(0.05)  # what no tuner would notice needs no words
_ALONG = (".tyre.lateral", ".tyre.longitudinal")

_Kind = Literal["grip low", "grip high", "tyres soft", "tyres stiff"]


@dataclass(frozen=True)
class Corner:
    """One end of a range. words: where it is, for a sentence: 'at the lowest grip, 0.75'."""

    kind: _Kind
    words: str


def corners(grip: Grip, truck: Truck) -> tuple[Corner, ...]:
    """Both ends of the grip, unless it is exact; and of the tyres' stiffness along the ground,
    where that is assumed and not measured."""
    found: list[Corner] = []
    if grip.high > grip.low:
        found += [
            Corner("grip low", f"at the lowest grip, {grip.low:g}"),
            Corner("grip high", f"at the highest grip, {grip.high:g}"),
        ]
    if _assumed(truck):
        found += [
            Corner("tyres soft", "if the tyres give more along the ground than assumed"),
            Corner("tyres stiff", "if the tyres give less along the ground than assumed"),
        ]
    return tuple(found)


def _assumed(truck: Truck) -> dict[int, UncertainInput]:
    """The uncertain inputs, by number, that are tyre stiffnesses nobody measured."""
    return {
        i: one
        for i, one in enumerate(truck.uncertain)
        if one.basis == "assumed" and all(f.endswith(_ALONG) for f in one.fields)
    }


def grip_at(corner: Corner, grip: Grip) -> float:
    """The friction coefficient there."""
    return {"grip low": grip.low, "grip high": grip.high}.get(corner.kind, grip.likely)


def truck_at(corner: Corner, truck: Truck) -> Truck:
    """The truck with its tyres as they are there; the very same one where that is no matter."""
    if corner.kind not in ("tyres soft", "tyres stiff"):
        return truck
    soft = corner.kind == "tyres soft"
    return varied(truck, {i: u.low if soft else u.high for i, u in _assumed(truck).items()})


def at_corners(
    builds: Sequence[tuple[Truck, Grip]],
    found: DirectionAngles,
    hold: Hold,
    where: Sequence[Corner],
    wanted: Sequence[Direction],
) -> Array:
    """(c, n, 4) rad, the angles of all builds at every corner.

    nan in directions not wanted, and with other grip where a build stands against a rail: grip then
    moves nothing but the tyres uphill, and no gain of the demo changes by 0.005 deg.
    Source: as `answers.tips`, at the ends of the ranges.
    """
    out = np.full((len(where), len(builds), len(DIRECTIONS)), np.nan)
    aimed = np.isin(DIRECTIONS, wanted)
    railed = found.slides | (hold == "rail")
    asked = np.array([aimed & ~(railed & _of_grip(c)) for c in where], dtype=np.bool_)
    varied_trucks = [[truck_at(c, truck) for truck, _ in builds] for c in where]
    for rail in (False, True):
        places = np.argwhere(asked.reshape(len(where), *railed.shape) & (railed == rail))
        if len(places):
            c, n, d = np.transpose(places)
            trucks = [varied_trucks[i][k] for i, k, _ in places.tolist()]
            grips = [grip_at(where[i], builds[k][1]) for i, k, _ in places.tolist()]
            there = found.heading[n, d]
            out[c, n, d] = tip_pairs(trucks, there, grips, "rail" if rail else "brakes").free
    return out


def _of_grip(corner: Corner) -> bool:
    return corner.kind in ("grip low", "grip high")


def turns(gain: Array, there: Array) -> Flags:
    """Whether a gain (...,) rad has the other sign at some corner (c, ...), by more than a hair,
    WORTH_SAYING either way.

    Source: derived here from the sign of a gain; the hair is common practice, no source.
    """
    with np.errstate(invalid="ignore"):
        most = np.fmax.reduce(there, axis=0, initial=-np.inf)
        least = np.fmin.reduce(there, axis=0, initial=np.inf)
        up, down = np.fmax(most, gain), np.fmin(least, gain)
        flags: Flags = (up > WORTH_SAYING) & (down < -WORTH_SAYING)
    return flags
