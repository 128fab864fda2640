"""Tip angles of builds by direction, with one friction closure throughout, and their doubt.

Comparisons of builds use the uniform closure everywhere, so that a difference between two builds
is a difference of the builds and never of how friction is shared.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np

from crossfall.statics import rigid
from crossfall.statics.compliant import tips
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Truck

Direction = Literal["side", "climb", "descent", "worst"]
DIRECTIONS: tuple[Direction, ...] = ("side", "climb", "descent", "worst")
ROUND = np.radians(np.arange(0.0, 360.0, 45.0))  # all directions a ranking looks at
_MEMBERS = {"side": (2, 6), "climb": (0,), "descent": (4,), "worst": tuple(range(8))}
NUMERICAL = np.radians(2e-4)  # what the compliant answer itself may be off by, twice over
SURE = 2.0  # standard uncertainties; about 95 %

Doubt = dict[str, Array]  # by part: (4,) rad, what its mass and place x, y, z may do to an angle


@dataclass(frozen=True)
class Angles:
    """Tip angles of n builds. all_round: (n, 8) rad on the headings of ROUND, compliant, uniform.

    by_direction: (n, 4) rad for DIRECTIONS; side is the weaker side, worst the weakest of the
    eight headings. governing: (n, 4) index into ROUND of the heading that decided.
    """

    all_round: Array
    by_direction: Array
    governing: np.typing.NDArray[np.intp]


def angles(trucks: Sequence[Truck]) -> Angles:
    """All builds on all headings in one call."""
    return grouped(tips(list(trucks), ROUND, "uniform").tip)


def grouped(all_round: Array) -> Angles:
    """Directions out of (n, 8) angles."""
    found, governing = [], []
    for name in DIRECTIONS:
        members = np.array(_MEMBERS[name])
        own = all_round[:, members]
        least = np.where(np.isnan(own), -np.inf, own).argmin(axis=1)
        governing.append(members[least])
        found.append(own[np.arange(len(own)), least])
    return Angles(all_round, np.stack(found, axis=1), np.stack(governing, axis=1))


def doubt(truck: Truck, heading: float, fresh: frozenset[str] = frozenset()) -> Doubt:
    """What the uncertainty of each part's mass and place may do to the tip angle, one sd each.

    By the exact derivatives of the rigid answer: the tolerances' share hardly depends on the
    springs. `fresh` names rows that are other things than the same names on another build, so
    that their errors have nothing to do with each other.
    """
    gradient = rigid.cg_gradient(truck, heading)
    total = whole(truck).mass
    places = np.array([p.body.cg for p in truck.parts])
    by_mass = rigid.mass_derivative(truck, heading, places)
    found: Doubt = {}
    for part, slope in zip(truck.parts, by_mass, strict=True):
        by_place = part.body.mass / total * gradient
        if part.mirrored:
            by_place = by_place * (1.0, -1.0, 1.0)
        name = row_name(part.label)
        name = f"{name}*" if name.casefold() in fresh else name
        own = np.array([slope * part.mass_sd, *(by_place * part.place_sd)])
        found[name] = found.get(name, 0.0) + own
    return found


def row_name(label: str) -> str:
    """A part's name from a piece's label, which is that name and perhaps a running number."""
    head, _, tail = label.rpartition(" ")
    return head if head and tail.isdecimal() else label


def difference_sd(a: Doubt, b: Doubt) -> float:
    """rad, standard uncertainty of the difference of two builds' angles; shared errors cancel."""
    nothing = np.zeros(4)
    total = 0.0
    for name in a.keys() | b.keys():
        d = a.get(name, nothing) - b.get(name, nothing)
        total += float(d @ d)
    return float(np.sqrt(total))
