"""The four aims of a tuner, the tip angles of builds by them, and the uncertainty of a difference.

Every angle is the one answer's (`answers.tips`): the tip with the wheels held, or, where a build
slides away first, what it would do against a rail, so that there is always a number to compare.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike

from crossfall.answers.conditions import Hold
from crossfall.answers.tips import ROUND, slide_there, tip_pairs, weakest_alike
from crossfall.statics import rigid
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Flags, Truck

Direction = Literal["side", "climb", "descent", "worst"]
DIRECTIONS: tuple[Direction, ...] = ("side", "climb", "descent", "worst")
AIMS: dict[Direction, tuple[float, ...]] = {
    "side": (np.pi / 2, 3 * np.pi / 2),
    "climb": (0.0,),
    "descent": (np.pi,),
    "worst": (),
}
"""Headings (rad) of which the weaker counts; none: the weakest of all, searched for all round."""
NUMERICAL = np.radians(2e-4)  # what the answer itself may be off by, twice over
SURE = 1.96  # standard uncertainties; 95 %

AngleErrors = dict[
    str, Array
]  # by part: (4,) rad, what its mass and place x, y, z may do to an angle


@dataclass(frozen=True)
class DirectionAngles:
    """n builds, all (n, 4) for DIRECTIONS. heading: rad, the one that decides. angle: rad, there.
    slide: rad, where it slides or rolls away there, nan against a rail. slides: whether it does so
    first, so that the angle is the one against a rail."""

    heading: Array
    angle: Array
    slide: Array
    slides: Flags


def angles(trucks: Sequence[Truck], grip: ArrayLike, hold: Hold = "brakes") -> DirectionAngles:
    """All builds by DIRECTIONS, rad; grip: friction coefficient, one or (n,).

    The builds are taken to be much like the first: the weakest heading of each is looked for near
    the first one's valleys.
    Source: as `answers.tips`; of two headings the weaker counts.
    """
    count = len(trucks)
    mu = np.broadcast_to(np.asarray(grip, dtype=np.float64), (count,))
    fixed = [h for name in DIRECTIONS for h in AIMS[name]]
    found = tip_pairs(
        [t for t in trucks for _ in fixed] + [trucks[0]] * len(ROUND),
        np.append(np.tile(fixed, count), ROUND),
        np.append(np.repeat(mu, len(fixed)), np.full(len(ROUND), mu[0])),
        hold,
    )
    ends = slice(0, count * len(fixed))
    free, slide, slides = (
        v[ends].reshape(count, -1) for v in (found.free, found.slide, found.slides)
    )
    made = [np.empty((count, 4)) for _ in range(4)]
    at = 0
    for d, name in enumerate(DIRECTIONS):
        own = slice(at, at + len(AIMS[name]))
        at = own.stop
        if AIMS[name]:
            tips = free[:, own]
            least = np.where(np.isnan(tips), np.inf, tips).argmin(axis=1)
            rows = np.arange(count)
            made[0][:, d] = np.array(AIMS[name])[least]
            made[1][:, d] = tips[rows, least]
            made[2][:, d] = slide[:, own][rows, least]
            made[3][:, d] = slides[:, own][rows, least]
        else:
            heading, least_of_all = weakest_alike(trucks, mu, hold, found.free[ends.stop :])
            made[0][:, d], made[1][:, d] = heading, least_of_all
            there = slide_there(trucks, heading, least_of_all, mu, hold)
            made[2][:, d], made[3][:, d] = there
    return DirectionAngles(*made[:3], made[3].astype(bool))


def angle_errors(truck: Truck, heading: float, fresh: frozenset[str] = frozenset()) -> AngleErrors:
    """What the uncertainty of each part's mass and place may do to the tip angle, (4,) rad, one sd
    each.

    heading: rad. By the exact derivatives of the rigid answer, dtheta/dm u(m) and m / M dtheta/dc
    u(r): the tolerances' share hardly depends on the springs. `fresh` names rows that are other
    things than the same names on another build, so that their errors have nothing to do with each
    other.
    Source: JCGM 100 (GUM), 5.1.2 and 5.2.2 for pieces of a row, wholly correlated (from memory).
    """
    gradient = rigid.cg_gradient(truck, heading)
    total = whole(truck).mass
    places = np.array([p.body.cg for p in truck.parts])
    by_mass = rigid.mass_derivative(truck, heading, places)
    found: AngleErrors = {}
    for part, slope in zip(truck.parts, by_mass, strict=True):
        by_place = part.body.mass / total * gradient
        if part.mirrored:
            by_place = by_place * (1.0, -1.0, 1.0)
        name = row_name(part.label)
        name = f"{name}*" if name.casefold() in fresh else name
        own = np.array([slope * part.mass_sd, *(by_place * np.asarray(part.place_sd))])
        found[name] = found.get(name, 0.0) + own
    return found


def row_name(label: str) -> str:
    """A part's name from a piece's label, which is that name and perhaps a running number."""
    head, _, tail = label.rpartition(" ")
    return head if head and tail.isdecimal() else label


def difference_sd(a: AngleErrors, b: AngleErrors) -> float:
    """rad, standard uncertainty of the difference of two builds' angles; shared errors cancel:
    sqrt(sum((a_i - b_i)^2)) over all parts.

    Source: JCGM 100 (GUM), 5.2.2, errors of one name wholly correlated (from memory).
    """
    nothing = np.zeros(4)
    total = 0.0
    for name in a.keys() | b.keys():
        d = a.get(name, nothing) - b.get(name, nothing)
        total += float(d @ d)
    return float(np.sqrt(total))
