"""The tip angles themselves, for many trucks and headings at once.

Everything that prints, plots, ranks or sweeps a tip angle gets it here, so that the same truck in
the same conditions has the same angle everywhere.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray

from crossfall.answers.conditions import Hold
from crossfall.statics import compliant, rigid
from crossfall.statics.builds import Ints
from crossfall.truck.model import Array, Flags, Truck

SLIDES = 1.2  # times its slide angle, a rigid tip from which a truck on springs mostly slides first
NEAR_SLIDE = 1e-3  # rad below atan(grip) from which the loss of balance is the truck sliding away
ROUND = np.radians(np.arange(0.0, 360.0, 15.0))  # where the search for the weakest heading begins
RIVAL = np.radians(1.5)  # a valley this little above the deepest is searched as well
RELATED = np.radians(3.0)  # the same, for trucks that are much like one whose valleys are known
_STEP = float(ROUND[1])
_ASIDE = np.radians(5.0)  # how far aside of a known valley a truck much like it is looked at
_AHEAD = np.array([0.5, 1.25, 2.0])  # such steps after one that has moved away
SIDES = np.array([[-1.0], [0.0], [1.0]])
GOES_ON = 0.6  # of how much a bracket's steeper side falls, how much more it may fall within
_ABOUT = np.array([-0.1, 0.0, 0.1])  # of a valley's width, where it is looked at next
_NARROW = np.radians(0.7)  # a valley is searched until it is this wide: good to 0.01 deg of tip
FLAT = np.radians(0.02)  # or this shallow


@dataclass(frozen=True)
class TipAngles:
    """B trucks on H headings (or (H,) for one truck; or (B,) pairs); rad.

    tip: nan where the truck slides away first. free: the same, but where it slides first, what it
    does against a rail. slide: where it slides as a whole, or rolls away on open differentials, nan
    against a rail. goes: whichever
    comes first. slides: that is a slide. first_lift: the first tyre leaves the table, nan if none
    does before the tip; lift (..., 4), per wheel, front left first. first_snap: the body first
    jumped on its springs but stood again, nan if never. slack, droop_stop, bump_stop: (..., 4) when
    each corner first did. All of the run that gives `free`.
    """

    tip: Array
    free: Array
    slide: Array
    goes: Array
    slides: NDArray[np.bool_]
    first_lift: Array
    lift: Array
    first_snap: Array
    slack: Array
    droop_stop: Array
    bump_stop: Array


def tip_angles(
    trucks: Truck | Sequence[Truck],
    headings: ArrayLike,
    grip: ArrayLike,
    hold: Hold = "brakes",
) -> TipAngles:
    """Every truck on every heading (H,) rad; grip: friction coefficient, one, (B,) or (B, H).

    It slides first where its tip is not below slide - NEAR_SLIDE; slide = atan(mu), or where it
    rolls away on open differentials.
    Source: as `statics.compliant` for the tip; Coulomb friction for the slide.
    """
    single = isinstance(trucks, Truck)
    many = [trucks] if isinstance(trucks, Truck) else list(trucks)
    psi = np.atleast_1d(np.asarray(headings, dtype=np.float64))
    shape = (len(many), len(psi))
    mu = np.asarray(grip, dtype=np.float64)
    mu = np.broadcast_to(mu[:, None] if mu.ndim == 1 else mu, shape).ravel()
    who = np.repeat(np.arange(len(many)), len(psi))
    flat = _asked(many, who, np.tile(psi, len(many)), mu, hold)
    return _shaped(flat, shape[1:] if single else shape)


def tip_pairs(
    trucks: Sequence[Truck],
    headings: ArrayLike,
    grip: ArrayLike,
    hold: Hold = "brakes",
    *,
    originals: int | None = None,
    braked: Flags | None = None,
) -> TipAngles:
    """Truck i on heading i (rad) with grip i; shapes (B,). The same truck may stand there often.

    originals: the first so many cases are those that all others are variations of, in turn. A
    variation is then asked against a rail where its original slides first, and only there, so that
    like is compared with like; `free` is nan where a variation slides and its original does not.
    braked: (B,) those whose `tip` and `slide` are wanted there too; without it, of originals only.
    Source: as `tip_angles`.
    """
    psi = np.asarray(headings, dtype=np.float64)
    mu = np.broadcast_to(np.asarray(grip, dtype=np.float64), psi.shape)
    different, who = _each_once(trucks)
    if originals is None or hold == "rail":
        return _asked(different, who, psi, mu, hold)
    wanted = np.zeros(len(psi), dtype=bool) if braked is None else braked
    return _varied(different, who, psi, mu, originals, wanted)


def held_tips(trucks: Sequence[Truck], headings: Array, grip: Array, railed: Flags) -> Array:
    """(B,) rad, the tip of truck i on heading i (rad) with grip i, against a rail or on its brakes,
    and then nan where it slides away first.

    Source: as `tip_angles`.
    """
    different, who = _each_once(trucks)
    found = compliant.tips_at(different, who, headings, grip, rail=railed)
    return np.where(_slides(found, grip)[1] & ~railed, np.nan, found.tip)


def _each_once(trucks: Sequence[Truck]) -> tuple[list[Truck], Ints]:
    """The trucks that differ, and which of them each is."""
    place: dict[int, int] = {}
    who = np.array([place.setdefault(id(t), len(place)) for t in trucks], dtype=np.int64)
    return list({id(t): t for t in trucks}.values()), who


def _asked(trucks: Sequence[Truck], who: Ints, psi: Array, mu: Array, hold: Hold) -> TipAngles:
    found = compliant.tips_at(trucks, who, psi, mu, rail=hold == "rail")
    if hold == "rail":
        slides = np.zeros(len(psi), dtype=bool)
        return _together(found, found.tip, np.full(len(psi), np.nan), slides)
    slide, slides = _slides(found, mu)
    free = found
    if slides.any():
        railed = compliant.tips_at(trucks, who[slides], psi[slides], mu[slides], rail=True)
        free = compliant.replaced(free, slides, railed)
    return _together(free, np.where(slides, np.nan, found.tip), slide, slides)


def _varied(
    trucks: Sequence[Truck], who: Ints, psi: Array, mu: Array, originals: int, braked: Flags
) -> TipAngles:
    """As of `tip_pairs`. Variations of what most likely slides first wait until that is known."""
    own = slice(0, originals)
    rigidly = [rigid.tip_angle(trucks[k], psi[i : i + 1])[0] for i, k in enumerate(who[own])]
    likely = np.array(rigidly) > SLIDES * np.arctan(mu[own])
    likely = np.tile(likely, len(psi) // originals)
    asked = ~likely | braked
    asked[own] = True
    found = compliant.tips_at(trucks, who[asked], psi[asked], mu[asked])
    found = compliant.scattered(found, asked)
    against = np.tile(_slides(found, mu)[1][own], len(psi) // originals)
    late = likely & ~against
    if late.any():  # with their originals: what changes nothing must not differ by its company
        more = compliant.tips_at(trucks, who[late], psi[late], mu[late])
        found = compliant.replaced(found, late, more)
    slide, slides = _slides(found, mu)
    free = replace(found, tip=np.where(slides, np.nan, found.tip))
    if against.any():
        railed = compliant.tips_at(trucks, who[against], psi[against], mu[against], rail=True)
        free = compliant.replaced(free, against, railed)
    return _together(free, np.where(slides, np.nan, found.tip), slide, slides)


def _slides(found: compliant.CompliantTips, mu: Array) -> tuple[Array, Flags]:
    """(B,) rad where it slides or rolls away, and whether it does so first, on its brakes."""
    slide = np.where(found.away, found.tip, np.arctan(mu))
    return slide, found.tip > slide - NEAR_SLIDE


def _together(
    free: compliant.CompliantTips, tip: Array, slide: Array, slides: NDArray[np.bool_]
) -> TipAngles:
    return TipAngles(
        tip,
        free.tip,
        slide,
        np.where(slides, slide, tip),
        slides,
        free.first_lift,
        free.lift,
        free.first_snap,
        free.slack,
        free.droop_stop,
        free.bump_stop,
    )


def taken(angles: TipAngles, index: slice) -> TipAngles:
    """Some of the cases."""
    return TipAngles(**{f.name: getattr(angles, f.name)[index] for f in fields(TipAngles)})


def _shaped(flat: TipAngles, shape: tuple[int, ...]) -> TipAngles:
    values = {f.name: getattr(flat, f.name) for f in fields(TipAngles)}
    return TipAngles(**{k: v.reshape(*shape, *v.shape[1:]) for k, v in values.items()})


@dataclass(frozen=True)
class Valleys:
    """Headings and angles (V,) rad of a truck's least tips around: where another much like it is
    looked at."""

    headings: Array
    angles: Array

    @property
    def weakest(self) -> tuple[float, float]:
        """Heading and angle, rad, the same as `weakest` finds for this truck."""
        k = int(self.angles.argmin())
        return float(self.headings[k]), float(self.angles[k])


def valleys(truck: Truck, grip: float, hold: Hold = "brakes") -> Valleys:
    """Where a truck much like this one may be weakest. grip: friction coefficient.

    Source: as `weakest`.
    """
    mu = np.array([grip])
    who, middle, angles = _coarse(tip_angles([truck], ROUND, mu, hold).free, RELATED)
    places, angles = _narrowed([truck], who, middle + _STEP * SIDES, angles, mu, hold, np.inf)
    return Valleys(places[1] % (2 * np.pi), angles[1])


def weakest(
    trucks: Sequence[Truck],
    grip: ArrayLike,
    hold: Hold = "brakes",
    like: Valleys | None = None,
) -> tuple[Array, Array]:
    """(B,) heading of the least `free` tip angle all round, and that angle, rad.

    grip: one or (B,). Looks every 15 degrees, then closer in every valley that may be the deepest,
    at the lowest point of the parabola through three headings and about it. like: only about the
    valleys of a truck like these.
    Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 5, for
    parabolic steps (from memory); when a valley is given up derived here from the slope of its
    sides.
    """
    mu = np.broadcast_to(np.asarray(grip, dtype=np.float64), (len(trucks),))
    if like is None:
        who, middle, angles = _coarse(tip_angles(trucks, ROUND, mu, hold).free, RIVAL)
        places = middle + _STEP * SIDES
    else:
        who, places, angles = _about(trucks, like.headings, mu, hold)
    places, angles = _narrowed(trucks, who, places, angles, mu, hold)
    return _deepest(len(trucks), who, places, angles)


def weakest_alike(
    trucks: Sequence[Truck], grip: ArrayLike, hold: Hold, first_round: Array
) -> tuple[Array, Array]:
    """The same as `weakest` for trucks much like the first: only that one is looked at all round,
    and the others about its valleys. first_round: its `free` tip angles on ROUND, rad.

    Source: as `weakest`.
    """
    mu = np.broadcast_to(np.asarray(grip, dtype=np.float64), (len(trucks),))
    first, middle, angles = _coarse(first_round[None], RELATED)
    places = middle + _STEP * SIDES
    if len(trucks) > 1:
        lowest = _tries(places, angles)[len(_ABOUT) // 2]
        others, *found = _about(trucks[1:], lowest, mu[1:], hold)
        first = np.append(first, others + 1)
        places, angles = (
            np.append(a, b, axis=1) for a, b in zip((places, angles), found, strict=True)
        )
    places, angles = _narrowed(trucks, first, places, angles, mu, hold)
    return _deepest(len(trucks), first, places, angles)


def slide_there(
    trucks: Sequence[Truck], headings: Array, free: Array, grip: ArrayLike, hold: Hold = "brakes"
) -> tuple[Array, Flags]:
    """(B,) rad, `slide` of truck i, whose `free` angle (rad) on heading i (rad) is known, and
    whether it slides first there: on its brakes, and free > slide - NEAR_SLIDE.

    Source: Coulomb friction, any mechanics text; open differentials as `tip_pairs`.
    """
    mu = np.broadcast_to(np.asarray(grip, dtype=np.float64), free.shape)
    if any(truck.may_roll for truck in trucks):
        found = tip_pairs(trucks, headings, mu, hold)
        return found.slide, found.slides
    slide = np.arctan(mu) if hold == "brakes" else np.full(free.shape, np.nan)
    return slide, free > slide - NEAR_SLIDE


def _deepest(count: int, who: Ints, places: Array, angles: Array) -> tuple[Array, Array]:
    """(B,) heading and angle of each truck's deepest valley."""
    out = np.empty((2, count))
    for i in range(count):
        mine = np.flatnonzero(who == i)
        k = mine[angles[1, mine].argmin()]
        out[:, i] = places[1, k] % (2 * np.pi), angles[1, k]
    return out[0], out[1]


def _coarse(all_round: Array, margin: float) -> tuple[Ints, Array, Array]:
    """Which row, heading (V,) and (3, V) angles about it, of every valley of (B, ROUND) angles that
    may be the deepest."""
    found = _found(all_round)
    left, right = np.roll(found, 1, axis=1), np.roll(found, -1, axis=1)
    deep = (found <= left) & (found <= right)
    deep &= found <= found.min(axis=1, keepdims=True) + margin
    who, at = np.nonzero(deep)
    return who, ROUND[at], np.stack([left[who, at], found[who, at], right[who, at]])


def _about(
    trucks: Sequence[Truck], headings: Array, mu: Array, hold: Hold
) -> tuple[Ints, Array, Array]:
    """Which truck, and headings and angles (3, V), about those of the given headings that may be
    the deepest."""
    who = np.repeat(np.arange(len(trucks)), len(headings))
    middle = np.tile(headings, len(trucks))
    there = _at(trucks, who, middle, mu, hold)
    near = there <= _least(who, there)[who] + RIVAL
    who, middle, there = who[near], middle[near], there[near]
    sides = middle + _ASIDE * SIDES[::2]
    ends = _at(trucks, np.tile(who, 2), sides.ravel(), mu, hold).reshape(2, -1)
    places = np.stack([sides[0], middle, sides[1]])
    angles = np.stack([ends[0], there, ends[1]])
    return who, places, angles


def _narrowed(
    trucks: Sequence[Truck],
    who: Ints,
    places: Array,
    angles: Array,
    mu: Array,
    hold: Hold,
    spare: float = 0.0,
) -> tuple[Array, Array]:
    """(3, V) headings and angles of brackets narrowed until they are NARROW or FLAT.

    A valley is given up where even going on down as steeply as its steeper side would not make it
    deeper, by more than `spare`, than its truck's deepest.
    """
    live = np.arange(len(who))
    while True:
        low, high = angles.min(axis=0), np.minimum(angles.max(axis=0), 2.0 * angles[1])
        hopeful = low - GOES_ON * (high - low) <= _least(who, low)[who] + spare
        open_ = hopeful & (places[2] - places[0] > _NARROW) & (angles.max(axis=0) - low > FLAT)
        live = live[open_[live]]
        if not len(live):
            return places, angles
        tries = _tries(places[:, live], angles[:, live])
        found = _at(trucks, np.tile(who[live], len(tries)), tries.ravel(), mu, hold)
        found = found.reshape(tries.shape)
        places[:, live], angles[:, live] = _bracket(
            np.concatenate([places[:, live], tries]), np.concatenate([angles[:, live], found])
        )


def _least(who: Ints, angles: Array) -> Array:
    """(B,) the least of the angles of each truck."""
    least = np.full(int(who.max()) + 1, np.inf)
    np.minimum.at(least, who, angles)
    return least


def _at(trucks: Sequence[Truck], who: Ints, psi: Array, mu: Array, hold: Hold) -> Array:
    """`free` of trucks[who[i]] on psi[i]."""
    return _found(_asked(trucks, who, psi, mu[who], hold).free)


def _tries(places: Array, angles: Array) -> Array:
    """(3, V) headings to try in brackets (3, V): the lowest point of the parabola, and about it;
    or further on, where the bracket's own end is lower than its middle."""
    a, b, c = places
    fa, fb, fc = angles
    with np.errstate(divide="ignore", invalid="ignore"):
        top = (b - a) ** 2 * (fb - fc) - (b - c) ** 2 * (fb - fa)
        low = b - top / (2 * ((b - a) * (fb - fc) - (b - c) * (fb - fa)))
    width = c - a
    low = np.where(np.isfinite(low), low, b)
    low = np.clip(low, a + 0.2 * width, c - 0.2 * width)
    tries = low + width * _ABOUT[:, None]
    tries = np.where(fc < fb, c + _ASIDE * _AHEAD[:, None], tries)
    return np.asarray(np.where(fa < np.minimum(fb, fc), a - _ASIDE * _AHEAD[:, None], tries))


def _bracket(places: Array, angles: Array) -> tuple[Array, Array]:
    """The least of (6, V) angles and its neighbours on either side, (3, V) each."""
    order = np.argsort(places, axis=0)
    places, angles = (np.take_along_axis(v, order, axis=0) for v in (places, angles))
    least = np.clip(angles.argmin(axis=0), 1, len(places) - 2)
    rows = least + np.array([[-1], [0], [1]])
    return np.take_along_axis(places, rows, axis=0), np.take_along_axis(angles, rows, axis=0)


def _found(angles: Array) -> Array:
    """Angles with what could not be followed put out of the way."""
    return np.where(np.isnan(angles), np.inf, angles)
