"""What is known least: the ends of the range of grip, and of how tyres give along the ground.

What a change does is worked out at every one of them, so that a change whose sign turns in between
can be told from one that does not.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Literal

import numpy as np

from crossfall.answers.conditions import Hold
from crossfall.truck.model import TANGENTIAL_RATIO, Array, Axle, Grip, Truck
from crossfall.truck.schema import TruckSpec, TyreSpec
from crossfall.tuning.directions import DIRECTIONS, Angles, Direction, Flags, again

WORTH_SAYING = np.radians(0.05)  # what no tuner would notice needs no words

Kind = Literal["grip low", "grip high", "tyres soft", "tyres stiff"]


@dataclass(frozen=True)
class Corner:
    """One end of a range. words: where it is, for a sentence: 'at the lowest grip, 0.75'."""

    kind: Kind
    words: str


def corners(grip: Grip, spec: TruckSpec) -> tuple[Corner, ...]:
    """Both ends of the grip, unless it is exact; and of the tyres' stiffness along the ground,
    unless the file has it measured."""
    found: list[Corner] = []
    if grip.high > grip.low:
        found += [
            Corner("grip low", f"at the lowest grip, {grip.low:g}"),
            Corner("grip high", f"at the highest grip, {grip.high:g}"),
        ]
    if any(_assumed(end.tyre) for end in (spec.front, spec.rear)):
        found += [
            Corner("tyres soft", "if the tyres give more along the ground than assumed"),
            Corner("tyres stiff", "if the tyres give less along the ground than assumed"),
        ]
    return tuple(found)


def _assumed(tyre: TyreSpec) -> tuple[str, ...]:
    """Which of `Tyre`'s stiffnesses along the ground nobody measured."""
    known = {"lateral": tyre.lateral_n_per_mm, "longitudinal": tyre.longitudinal_n_per_mm}
    return tuple(name for name, value in known.items() if value is None)


def grip_at(corner: Corner, grip: Grip) -> float:
    """The friction coefficient there."""
    return {"grip low": grip.low, "grip high": grip.high}.get(corner.kind, grip.likely)


def truck_at(corner: Corner, truck: Truck, spec: TruckSpec) -> Truck:
    """The truck with its tyres as they are there; the very same one where that is no matter."""
    if corner.kind not in ("tyres soft", "tyres stiff"):
        return truck
    ratio = TANGENTIAL_RATIO[0 if corner.kind == "tyres soft" else 2]

    def axle(one: Axle, tyre: TyreSpec) -> Axle:
        along = dict.fromkeys(_assumed(tyre), ratio * one.tyre.stiffness)
        return replace(one, tyre=replace(one.tyre, **along))

    front, rear = axle(truck.front, spec.front.tyre), axle(truck.rear, spec.rear.tyre)
    return replace(truck, front=front, rear=rear)


def at_corners(
    builds: Sequence[tuple[Truck, TruckSpec, Grip]],
    found: Angles,
    hold: Hold,
    where: Sequence[Corner],
    wanted: Sequence[Direction],
) -> Array:
    """(c, n, 4) rad, the angles of all builds at every corner; nan in directions not wanted."""
    out = np.full((len(where), len(builds), len(DIRECTIONS)), np.nan)
    which = [DIRECTIONS.index(name) for name in wanted]
    many = [truck_at(corner, truck, spec) for corner in where for truck, spec, _ in builds]
    grips = [grip_at(corner, grip) for corner in where for *_, grip in builds]
    times = Angles(
        *(np.tile(v, (len(where), 1)) for v in (found.heading, found.angle)),
        slides=(np.tile(found.slides, (len(where), 1))),
    )
    if many:
        tips = again(many, times, grips, hold, which)
        out[:, :, which] = tips.reshape(len(where), len(builds), len(which))
    return out


def turns(gain: Array, there: Array) -> Flags:
    """Whether a gain (...,) has the other sign at some corner (c, ...), by more than a hair."""
    with np.errstate(invalid="ignore"):
        most = np.fmax.reduce(there, axis=0, initial=-np.inf)
        least = np.fmin.reduce(there, axis=0, initial=np.inf)
        up, down = np.fmax(most, gain), np.fmin(least, gain)
        flags: Flags = (up > WORTH_SAYING) & (down < -WORTH_SAYING)
    return flags
