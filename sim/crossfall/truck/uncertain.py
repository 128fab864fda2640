"""The numbers of a truck that nobody knows exactly, beside its parts: their spread, and the truck
with other values in their place.

Part rows carry their own errors (`Part.mass_sd`, `Part.place_sd`). What is here is shared by both
sides of an axle. No file is read: a varied truck costs a fraction of a millisecond.

Source: JCGM 100:2008, 4.3.7 for the rectangular distribution; S. Kotz and J. R. van Dorp, Beyond
Beta (2004), chapter 1, for the triangular one (both from memory). How the truck follows a number is
derived here from where its parts are carried.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from math import degrees, radians, sqrt, tan
from typing import Any

import numpy as np
from numpy.typing import ArrayLike

from crossfall.truck.assemble import with_carriers_moved, with_parts_moved, with_weight_shifted
from crossfall.truck.axle_law import law_of
from crossfall.truck.guides import guided, with_spacing
from crossfall.truck.linkage import LinkageError
from crossfall.truck.model import Array, Axle, Part, Truck, UncertainInput, frozen
from crossfall.truck.steering import steering, swung

_ENDS = ("front", "rear")
# Stiffnesses and their ratio change by a factor, lengths and angles by a difference.
_FACTORS = ("N/m", "N m/rad", "1")
_SHOWN = {
    "m": ("mm", 1e3),
    "kg": ("g", 1e3),
    "N/m": ("N/mm", 1e-3),
    "N m/rad": ("N mm/deg", 1e3 * radians(1)),
    "rad": ("deg", degrees(1)),
    "1": ("", 1.0),
}


def quantile(one: UncertainInput, unit: ArrayLike) -> Array:
    """The values below which an input lies with the chances `unit` (0 to 1, any shape).

    low + u (high - low), or of a triangle low + sqrt(u (high - low) (likely - low)) below the peak
    and high - sqrt((1 - u) (high - low) (high - likely)) above. Raises ZeroDivisionError for a
    triangle of no width.
    """
    u = np.asarray(unit, dtype=np.float64)
    low, likely, high = one.low, one.likely, one.high
    if one.shape == "rectangular":
        return np.asarray(low + u * (high - low))
    left = (likely - low) / (high - low)
    rising = low + np.sqrt(u * (high - low) * (likely - low))
    falling = high - np.sqrt((1 - u) * (high - low) * (high - likely))
    return np.where(u < left, rising, falling)


def mean(one: UncertainInput) -> float:
    """Its mean, in its own unit: (low + high) / 2, or of a triangle (low + likely + high) / 3."""
    if one.shape == "rectangular":
        return (one.low + one.high) / 2
    return (one.low + one.likely + one.high) / 3


def sd(one: UncertainInput) -> float:
    """Its standard deviation, in its own unit.

    (high - low) / sqrt(12), or of a triangle
    sqrt((high - low)^2 - (likely - low) (high - likely)) / sqrt(18).
    """
    low, likely, high = one.low, one.likely, one.high
    if one.shape == "rectangular":
        return (high - low) / sqrt(12)
    return sqrt((high - low) ** 2 - (likely - low) * (high - likely)) / sqrt(18)


def shown(one: UncertainInput) -> tuple[str, float, float, float]:
    """Its unit in a chassis file, and low, likely and high in that unit."""
    unit, scale = _SHOWN[one.unit]
    return unit, one.low * scale, one.likely * scale, one.high * scale


def varied(truck: Truck, changes: Mapping[int, float]) -> Truck:
    """The truck with inputs of `truck.uncertain`, by number, at other values, SI.

    A change counts from the likely value, so that a truck changed since it was built keeps its
    changes; and so a varied truck must not be varied again. The track moves the wheels out, the
    wheelbase the axles apart by half each, the radius lifts axle and wheels, all with what is on
    them and links by half. The chassis stays, with the ends of links and shocks on it: its heights
    are measured from the ground.

    Factors are value / likely, shifts value - likely. Raises IndexError for a number there is not.
    Where its links then bind, whoever asks for the axle's law is told.
    """
    factors: dict[str, float] = {}
    shifts: dict[str, float] = {}
    for number, value in changes.items():
        one = truck.uncertain[number]
        if value == one.likely:
            continue
        for name in one.fields:
            if one.unit in _FACTORS:
                factors[name] = factors.get(name, 1.0) * value / one.likely
            else:
                shifts[name] = shifts.get(name, 0.0) + value - one.likely
    if not factors and not shifts:
        return truck
    for name in [n for n in shifts if ".unsprung." in n]:
        end, _, row = name.split(".")
        truck = with_weight_shifted(truck, end, int(row), shifts.pop(name))
    lifts = [shifts.pop(f"{name}.stands", 0.0) for name in _ENDS]
    if any(lifts):
        truck = _lifted(truck, lifts)
    front, rear = (
        _axle(name, axle, factors, shifts) for name, axle in zip(_ENDS, truck.axles, strict=True)
    )
    stretch = shifts.get("wheelbase", 0.0) / 2
    if stretch:
        front, rear = replace(front, x=front.x + stretch), replace(rear, x=rear.x - stretch)
    front, rear = _chassis_still(front, truck.front), _chassis_still(rear, truck.rear)
    moved = _moved(shifts)
    changed = replace(truck, front=front, rear=rear)
    return with_carriers_moved(changed, moved) if moved else changed


def _axle(name: str, axle: Axle, factors: Mapping[str, float], shifts: Mapping[str, float]) -> Axle:
    """One axle with its numbers changed, its bodies still where they were."""
    values: dict[str, dict[str, Any]] = {}
    own: dict[str, dict[str, float]] = {"links": {}, "shocks": {}, "steered": {}}
    for change, among in ((float.__mul__, factors), (float.__add__, shifts)):
        for key, by in among.items():
            end, _, rest = key.partition(".")
            if end != name:
                continue
            table, _, field = rest.rpartition(".")
            if table in own:
                own[table][field] = by
                continue
            old = float(getattr(getattr(axle, table) if table else axle, field))
            values.setdefault(table, {})[field] = change(old, by)
    new = axle
    if "tyre" in values:
        new = replace(new, tyre=replace(axle.tyre, **values["tyre"]))
    if "suspension" in values:
        new = replace(new, suspension=replace(axle.suspension, **values["suspension"]))
    new = replace(new, **values[""]) if "" in values else new
    if own["steered"]:
        turn, offset = steering(axle)
        more = own["steered"]
        new = replace(
            new, steered=swung(turn + more.get("turn", 0.0), offset + more.get("offset", 0.0))
        )
    links, shocks = new.suspension.links, new.suspension.shocks
    if own["shocks"] and shocks is not None:
        ends = {
            end: frozen(getattr(shocks, end) + np.multiply.outer((1, -1), (0.0, out, 0.0)))
            for end, out in own["shocks"].items()
        }
        suspension = replace(new.suspension, shocks=replace(shocks, **ends))
        new = _spaced(replace(new, suspension=suspension))
    if own["links"] and links is not None:
        chassis = links.chassis.copy()
        for first, by_z in own["links"].items():
            chassis[[n == links.names[int(first)] for n in links.names], 2] += by_z
        new = guided(new, replace(links, chassis=frozen(chassis)))
    return new


def _chassis_still(axle: Axle, before: Axle) -> Axle:
    """The axle with the chassis' ends of its links and shocks, which count from its centre, where
    they were before it went there."""
    away = np.array([axle.x - before.x, 0.0, axle.tyre.radius - before.tyre.radius])
    links, shocks = axle.suspension.links, axle.suspension.shocks
    if not away.any():
        return axle
    if shocks is not None:
        ends = replace(shocks, chassis=frozen(shocks.chassis - away))
        axle = replace(axle, suspension=replace(axle.suspension, shocks=ends))
    if links is not None:
        axle = guided(axle, replace(links, chassis=frozen(links.chassis - away)))
    return axle if shocks is None else _spaced(axle)


def _spaced(axle: Axle) -> Axle:
    """The axle with the spacing that follows from its shocks; as it was where its links bind."""
    try:
        return with_spacing(axle)
    except LinkageError:
        return axle


def _lifted(truck: Truck, lifts: Sequence[float]) -> Truck:
    """The truck with all that is on its chassis lifted over the axles, m front and rear, to first
    order: between and beyond on the line through both. An axle goes ahead as it leans."""
    turn = (lifts[0] - lifts[1]) / truck.wheelbase  # nose up
    middle, low = sum(lifts) / 2, sum(a.tyre.radius for a in truck.axles) / 2
    leans = [tan(a.suspension.heave_lean) for a in truck.axles]
    ahead = [-up * lean for up, lean in zip(lifts, leans, strict=True)]
    back = sum(ahead) / 2

    def by(at: Array) -> Array:
        return np.array([-turn * (at[2] - low) - back, 0.0, middle + turn * at[0]])

    def part_by(part: Part) -> Array:
        share = _on_axle(part)
        own = 0.0 if part.carrier == "chassis" else ahead[part.carrier.startswith("rear")] - back
        return (1.0 - share) * by(part.body.cg) + share * np.array([own, 0.0, 0.0])

    axles = []
    for axle, up, on in zip(truck.axles, lifts, ahead, strict=True):
        s, centre = axle.suspension, np.array([axle.x, 0.0, axle.tyre.radius])
        ratio = float(law_of(axle).ratios()[0, 0])
        links, shocks = s.links, s.shocks
        if links is not None:
            heads = [p + by(p + centre) - [on - back, 0.0, 0.0] for p in links.chassis]
            links = replace(links, chassis=frozen(heads))
        if shocks is not None:
            heads = [p + by(p + centre) - [on - back, 0.0, 0.0] for p in shocks.chassis]
            shocks = replace(shocks, chassis=frozen(heads))
        moved = replace(s, shocks=shocks, droop=s.droop - up * ratio, bump=s.bump + up * ratio)
        axle = replace(axle, x=axle.x + on - back, suspension=moved)
        axle = axle if links is None else guided(axle, links)
        axles.append(axle if shocks is None else _spaced(axle))
    raised = replace(truck, front=axles[0], rear=axles[1])
    return with_parts_moved(raised, part_by)


def _on_axle(part: Part) -> float:
    """Which share of it goes with its axle: a link's middle by half."""
    if part.carrier == "chassis":
        return 0.0
    return 0.5 if 0 < part.unsprung < 1 else 1.0


def _moved(shifts: Mapping[str, float]) -> dict[str, Array]:
    """(3,) m by which each body moves along, those that stay left out."""
    along = shifts.get("wheelbase", 0.0) / 2
    found: dict[str, Array] = {}
    for name, ahead in zip(_ENDS, (along, -along), strict=True):
        out = shifts.get(f"{name}.track", 0.0) / 2
        up = shifts.get(f"{name}.tyre.radius", 0.0)
        for place, across in (("axle", 0.0), ("left", out), ("right", -out)):
            by = np.array([ahead, across, up])
            if by.any():
                found[f"{name} {place}"] = by
    return found
