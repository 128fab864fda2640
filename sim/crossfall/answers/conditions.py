"""What a tip angle is asked for: a heading, the ground's grip, and what holds the wheels."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Grip, Truck

Hold = Literal["brakes", "rail"]

ASSUMED = Grip("any ground", 0.5, 0.8, 1.1)
"""Where the file names no surface: from loose dirt to dry rock. An assumption."""

_CASES = {
    0: "climb",
    90: "side-hill, left side down",
    180: "descent",
    270: "side-hill, right side down",
}


@dataclass(frozen=True)
class Conditions:
    """heading: rad. grip: what the tyres hold the ground with, low, likely and high; answers are
    for the likely one, ranges for all of it. hold: "brakes", every wheel held, or "rail": besides,
    the tyres it would tip over stand against a rail of no height and cannot slide."""

    heading: float
    grip: Grip
    hold: Hold = "brakes"

    @property
    def rail(self) -> bool:
        return self.hold == "rail"


def conditions(
    truck: Truck,
    headings: Sequence[float],
    surface: str | None = None,
    *,
    grip: float | None = None,
    hold: Hold = "brakes",
) -> tuple[Conditions, ...]:
    """Conditions for every heading (rad), on a surface of the truck's by name (None: its first).

    grip: one friction coefficient instead, taken as exact. Raises InputError where the truck has
    no such surface, or both are given.
    """
    if grip is not None and surface is not None:
        raise InputError(Problem(truck.name, "a surface and a grip are given", "give one of them"))
    ground = choose_grip(truck, surface) if grip is None else one_grip(grip)
    return tuple(Conditions(float(h), ground, hold) for h in headings)


def choose_grip(truck: Truck, surface: str | None) -> Grip:
    """The grip of a surface by name, or of the first, or ASSUMED where the file has none.

    Raises InputError where the truck has no surface of that name.
    """
    if surface is None:
        return truck.grips[0] if truck.grips else ASSUMED
    for grip in truck.grips:
        if grip.surface == surface:
            return grip
    names = ", ".join(g.surface for g in truck.grips) or "none"
    raise InputError(Problem(truck.name, f"no surface '{surface}'", f"it has {names}", key="grip"))


def one_grip(coefficient: float) -> Grip:
    """One friction coefficient, taken as exact. Raises InputError unless it is in (0, 5]."""
    if not 0.0 < coefficient <= 5.0:
        raise InputError(Problem("grip", f"is {coefficient:g}", "must be above 0 and at most 5"))
    return Grip(f"grip {coefficient:g}", coefficient, coefficient, coefficient)


def case_name(heading_deg: float) -> str:
    """What a tuner calls a heading (deg): one of the four cases, or the diagonal between two."""
    degrees = round(heading_deg % 360.0, 6)
    if degrees in _CASES:
        return _CASES[int(degrees)]
    if degrees < 90:
        return "diagonal climb, left side down"
    if degrees < 180:
        return "diagonal descent, left side down"
    if degrees < 270:
        return "diagonal descent, right side down"
    return "diagonal climb, right side down"
