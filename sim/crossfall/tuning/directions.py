"""The four aims of a tuner, the tip angles of builds by them, and the uncertainty of a difference.

Every angle is the one answer's (`answers.tips`): the tip with the wheels held, or, where a build
slides away first, what it would do against a rail, so that there is always a number to compare.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike

from crossfall.answers.conditions import Hold
from crossfall.answers.tips import ROUND, slide_there, tip_pairs, weakest_alike
from crossfall.statics import rigid
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Flags, Part, Truck

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
    return DirectionAngles(made[0], made[1], made[2], made[3].astype(bool))


def angle_errors(
    truck: Truck, heading: float, fresh: frozenset[str] = frozenset(), weighed: Truck | None = None
) -> AngleErrors:
    """What the uncertainty of each part's mass and place may do to the tip angle, (4,) rad, one sd
    each.

    heading: rad. By the exact derivatives of the rigid answer, dtheta/dm u(m) and m / M dtheta/dc
    u(r): the tolerances' share hardly depends on the springs. `fresh` names rows that are other
    other. weighed: the truck as the scale had it, if this is another. A remainder was found there
    from what the other rows were taken to be, so it carries minus their errors of mass and moment
    wherever they have gone since; on that truck itself the two cancel.
    Source: JCGM 100 (GUM), 5.1.2 and 5.2.2 for pieces of a row, wholly correlated (from memory);
    the remainder's share derived here: conservation of mass and of first moments.
    """
    found: AngleErrors = {}
    for part, own in _part_errors(truck, heading, truck.parts, np.zeros(3)):
        name = row_name(part.label)
        name = f"{name}*" if name.casefold() in fresh else name
        found[name] = found.get(name, 0.0) + own
    before = (weighed or truck).parts
    if not any(p.taken_up for p in before):
        return found
    lump = next(p for p in before if p.taken_up is None)
    now = next((p for p in truck.parts if p.label == lump.label), None)
    if now is None or lump.label.casefold() in fresh:
        return found  # with the remainder gone, nothing carries their errors
    hidden = [p for p in before if p.taken_up is not None]
    for part, own in _part_errors(truck, heading, hidden, now.body.cg - lump.body.cg):
        name = row_name(part.label)
        found[name] = found.get(name, 0.0) - own
    return found


def _part_errors(
    truck: Truck, heading: float, parts: Sequence[Part], shift: Array
) -> Iterator[tuple[Part, Array]]:
    """Each part, `shift` (3,) m from its place, with what its own errors do there, (4,) rad."""
    gradient = rigid.cg_gradient(truck, heading)
    total = whole(truck).mass
    places = np.array([p.body.cg + shift for p in parts])
    for part, slope in zip(parts, rigid.mass_derivative(truck, heading, places), strict=True):
        mass_sd, place_sd = part.taken_up or (part.mass_sd, part.place_sd)
        by_place = part.body.mass / total * gradient
        if part.mirrored:
            by_place = by_place * (1.0, -1.0, 1.0)
        yield part, np.array([slope * mass_sd, *(by_place * np.asarray(place_sd))])


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
