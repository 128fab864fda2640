"""Where a truck stands on shocks whose length and preload are known: how high, and at what rake.

A spring is pressed by its preload, and by as much as the shock is pushed in from full extension;
at rest that must be what the load asks for. Either end of the chassis is lifted until it is, and
its axle goes where its guides take it: a little forwards or back, so that the wheelbase changes,
and it turns.

Source: derived here: at rest preload + push-in = what the load squeezes the springs by, found end
by end with over / (d press / d heave), and again until it holds within 1e-7 m.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import asin, atan2, cos, hypot, sin, sqrt, tan

import numpy as np

from crossfall.truck import schema
from crossfall.truck.axle_law import law_of
from crossfall.truck.errors import InputError
from crossfall.truck.linkage import linkage_poses
from crossfall.truck.model import ENDS, Axle, Truck
from crossfall.truck.read import Where
from crossfall.truck.ride import axle_squeezes
from crossfall.truck.solids import MM

_CLOSE = 1e-7  # m along a shaft
_ROUNDS = 12
_Place = tuple[float, ...]


@dataclass(frozen=True)
class _Went:
    """Where an axle has gone against the chassis, which is lifted over it, mm and rad: up, how far
    the chassis is; ahead, how far forwards the axle; pitch, as of `linkage.Placed`."""

    up: float = 0.0
    ahead: float = 0.0
    pitch: float = 0.0


def standing_truck(
    spec: schema.TruckSpec, build: Callable[[schema.TruckSpec], Truck], where: Where
) -> schema.TruckSpec:
    """The spec with its chassis lifted to where its springs hold it.

    An end without a preload keeps its height. build: makes a truck of a spec, whatever its
    preloads. Raises InputError where it does not stand between its stops, and as `build` does.
    """
    ups, tried, first = [0.0, 0.0], spec, build(spec)
    truck = first
    for _ in range(_ROUNDS):
        worst = 0.0
        for i, (end, given) in enumerate(zip(ENDS, (spec.front, spec.rear), strict=True)):
            s = given.suspension
            if s.preload_mm is None:
                continue
            axle, limiter = truck.axles[i], s.droop_limiter_mm * MM
            pushed = axle.suspension.droop + limiter
            needed = float(axle_squeezes(truck, i).mean())
            over = s.preload_mm * MM + pushed - needed
            if pushed - over < limiter:
                most = (needed - limiter) / MM
                what = f"is {s.preload_mm:g}, which lifts the {end} until its shocks are out"
                raise InputError(
                    where.problem((end, "suspension", "preload_mm"), what, f"less than {most:.1f}")
                )
            ups[i] += over / float(law_of(axle).ratios()[0, 0])
            worst = max(worst, abs(over))
        if worst < _CLOSE:
            return tried
        went = [_went(axle, up) for axle, up in zip(first.axles, ups, strict=True)]
        tried = _lifted(spec, went[0], went[1])
        truck = build(tried)
    end = "front" if spec.front.suspension.preload_mm is not None else "rear"
    what = "is given, and the truck finds no height at which its springs hold it"
    allowed = "stiffer springs, or shocks that stand more upright"
    raise InputError(where.problem((end, "suspension", "preload_mm"), what, allowed))


def _went(axle: Axle, up: float) -> _Went:
    """Where the guides take an axle as the chassis is lifted by `up`, m."""
    links = axle.suspension.links
    if links is None:
        return _Went(up / MM, -up * tan(axle.suspension.heave_lean) / MM)
    at = linkage_poses(links.chassis[None], links.axle[None], np.array([-up]), np.zeros(1))
    return _Went(up / MM, float(at.place[0, 0]) / MM, float(at.pitch[0]))


def _lifted(spec: schema.TruckSpec, front: _Went, rear: _Went) -> schema.TruckSpec:
    """The spec with its axles there and level again, and all that is fixed to chassis and axles.

    Parts keep their own turn: what a degree of rake changes in their inertia decides nothing.
    """
    length = spec.chassis.wheelbase_mm
    high = spec.front.tyre.radius_mm, spec.rear.tyre.radius_mm
    ahead, step = length + front.ahead - rear.ahead, high[0] - high[1]
    fall = step - (front.up - rear.up)  # from rear to front axle, in axes fixed to the chassis
    rake = asin(step / hypot(ahead, fall)) - atan2(fall, ahead)  # nose up
    middle = (front.ahead + rear.ahead) / 2, (sum(high) - front.up - rear.up) / 2

    lift = spec.chassis.raise_mm  # of all that is sprung, which the places do not have in them

    def risen(at: _Place) -> _Place:
        x, z = _turned(at[0] - middle[0], at[2] + lift - middle[1], rake)
        return x, at[1], z + sum(high) / 2 - lift

    def gone(at: _Place, went: _Went) -> _Place:
        x, z = _turned(at[0], at[2], rake - went.pitch)
        return x, at[1], z

    def moved(part: schema.PartSpec) -> schema.PartSpec:
        new: dict[str, _Place] = {}
        went = front if part.on.startswith("front") else rear
        if part.chassis_end_mm is not None and part.axle_end_mm is not None:
            new = {
                "chassis_end_mm": risen(part.chassis_end_mm),
                "axle_end_mm": gone(part.axle_end_mm, went),
            }
        elif part.at_mm is not None and part.on == "chassis":
            new = {"at_mm": risen(part.at_mm)}
        elif part.at_mm is not None and part.on in ("front axle", "rear axle"):
            new = {"at_mm": gone(part.at_mm, went)}
        return part.model_copy(update=new) if new else part

    chassis = {"wheelbase_mm": sqrt(ahead**2 + fall**2 - step**2)}
    clearance = spec.clearance
    if clearance is not None:
        points = {}
        for name in ("nose_mm", "belly_mm", "tail_mm"):
            x, z = getattr(clearance, name)
            x, _, z = risen((x, 0.0, z))
            points[name] = (x, z)
        clearance = clearance.model_copy(update=points)
    return spec.model_copy(
        update={
            "chassis": spec.chassis.model_copy(update=chassis),
            "clearance": clearance,
            "part": tuple(moved(part) for part in spec.part),
        }
    )


def _turned(x: float, z: float, nose_up: float) -> tuple[float, float]:
    c, s = cos(nose_up), sin(nose_up)
    return c * x - s * z, s * x + c * z
