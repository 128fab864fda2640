"""The tip angles themselves, for many trucks and headings at once.

Everything that prints, plots, ranks or sweeps a tip angle gets it here, so that the same truck in
the same conditions has the same angle everywhere.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields

import numpy as np
from numpy.typing import ArrayLike, NDArray

from crossfall.answers.conditions import Hold
from crossfall.statics import compliant
from crossfall.statics.builds import Ints
from crossfall.truck.model import Array, Truck

NEAR_SLIDE = 1e-3  # rad below atan(grip) from which the loss of balance is the truck sliding away
ROUND = np.radians(np.arange(0.0, 360.0, 15.0))  # where the search for the weakest heading begins
RIVAL = np.radians(1.5)  # a valley this little above the deepest is searched as well
RELATED = np.radians(3.0)  # the same, for trucks that are much like one whose valleys are known
ABOUT = np.array([-0.16, -0.05, 0.0, 0.05, 0.16])  # of a valley's width, where it is looked at next
NARROW = np.radians(0.7)  # a valley is searched until it is this wide: good to 0.01 deg of tip


@dataclass(frozen=True)
class TipAngles:
    """B trucks on H headings (or (H,) for one truck; or (B,) pairs); rad.

    tip: nan where the truck slides away first. free: the same, but where it slides first, what it
    does against a rail. slide: where it slides as a whole, nan against a rail. goes: whichever
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
    """Every truck on every heading (H,) rad; grip: friction coefficient, one, (B,) or (B, H)."""
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
    trucks: Sequence[Truck], headings: ArrayLike, grip: ArrayLike, hold: Hold = "brakes"
) -> TipAngles:
    """Truck i on heading i (rad) with grip i; shapes (B,)."""
    psi = np.asarray(headings, dtype=np.float64)
    mu = np.broadcast_to(np.asarray(grip, dtype=np.float64), psi.shape)
    return _asked(trucks, np.arange(len(trucks)), psi, mu, hold)


def _asked(trucks: Sequence[Truck], who: Ints, psi: Array, mu: Array, hold: Hold) -> TipAngles:
    if hold == "rail":
        found = compliant.tips_at(trucks, who, psi, mu, rail=True)
        slides = np.zeros(len(psi), dtype=bool)
        return _together(found, found.tip, np.full(len(psi), np.nan), slides)
    found = compliant.tips_at(trucks, who, psi, mu)
    slide = np.arctan(mu)
    slides = found.tip > slide - NEAR_SLIDE
    free = found
    if slides.any():
        railed = compliant.tips_at(trucks, who[slides], psi[slides], mu[slides], rail=True)
        free = compliant.replaced(found, slides, railed)
    return _together(free, np.where(slides, np.nan, found.tip), slide, slides)


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
    """Headings (V,) rad at whose neighbours on ROUND a truck tips later: where to look closer."""

    headings: Array


def valleys(truck: Truck, grip: float, hold: Hold = "brakes") -> Valleys:
    """Where a truck much like this one may be weakest."""
    return Valleys(ROUND[_valleys(_found(tip_angles([truck], ROUND, grip, hold).free), RELATED)[1]])


def _valleys(coarse: Array, margin: float) -> tuple[Ints, Ints, Array]:
    """Row and column of every valley of (B, ROUND) that may be deepest, and (3, V) its angles."""
    left, right = np.roll(coarse, 1, axis=1), np.roll(coarse, -1, axis=1)
    deep = (coarse <= left) & (coarse <= right)
    deep &= coarse <= coarse.min(axis=1, keepdims=True) + margin
    who, at = np.nonzero(deep)
    return who, at, np.stack([left[who, at], coarse[who, at], right[who, at]])


def weakest(
    trucks: Sequence[Truck],
    grip: ArrayLike,
    hold: Hold = "brakes",
    like: Valleys | None = None,
) -> tuple[Array, Array]:
    """(B,) heading of the least `free` tip angle all round, and that angle, rad.

    grip: one or (B,). Looks every 15 degrees, then closer in every valley that may be the deepest.
    like: only in the valleys of a truck like these.
    """
    mu = np.broadcast_to(np.asarray(grip, dtype=np.float64), (len(trucks),))
    step = float(ROUND[1])
    if like is None:
        coarse = _found(tip_angles(trucks, ROUND, mu, hold).free)
        who, at, angles = _valleys(coarse, RIVAL)
        middle = ROUND[at]
    else:
        who = np.repeat(np.arange(len(trucks)), len(like.headings))
        middle = np.tile(like.headings, len(trucks))
        step /= 2
        around = middle + step * np.array([[-1.0], [0.0], [1.0]])
        angles = _at(trucks, np.tile(who, 3), around.ravel(), mu, hold).reshape(3, -1)
    places = middle + step * np.array([[-1.0], [0.0], [1.0]])
    live = np.arange(len(who))
    while len(live):
        tries = _tries(places[:, live], angles[:, live])
        found = _at(trucks, np.tile(who[live], len(tries)), tries.ravel(), mu, hold)
        found = found.reshape(tries.shape)
        places[:, live], angles[:, live] = _bracket(
            np.concatenate([places[:, live], tries]), np.concatenate([angles[:, live], found])
        )
        live = live[places[2, live] - places[0, live] > NARROW]
    out = np.empty((2, len(trucks)))
    for i in range(len(trucks)):
        mine = np.flatnonzero(who == i)
        k = mine[angles[1, mine].argmin()]
        out[:, i] = places[1, k] % (2 * np.pi), angles[1, k]
    return out[0], out[1]


def _at(trucks: Sequence[Truck], who: Ints, psi: Array, mu: Array, hold: Hold) -> Array:
    """`free` of trucks[who[i]] on psi[i]."""
    return _found(_asked(trucks, who, psi, mu[who], hold).free)


def _tries(places: Array, angles: Array) -> Array:
    """(5, V) headings to try in brackets (3, V): the lowest point of the parabola, and about it."""
    a, b, c = places
    fa, fb, fc = angles
    with np.errstate(divide="ignore", invalid="ignore"):
        top = (b - a) ** 2 * (fb - fc) - (b - c) ** 2 * (fb - fa)
        low = b - top / (2 * ((b - a) * (fb - fc) - (b - c) * (fb - fa)))
    width = c - a
    low = np.where(np.isfinite(low), low, b)
    low = np.clip(low, a + 0.2 * width, c - 0.2 * width)
    return np.asarray(low + width * ABOUT[:, None])


def _bracket(places: Array, angles: Array) -> tuple[Array, Array]:
    """The least of (8, V) angles and its neighbours on either side, (3, V) each."""
    order = np.argsort(places, axis=0)
    places, angles = (np.take_along_axis(v, order, axis=0) for v in (places, angles))
    least = np.clip(angles.argmin(axis=0), 1, len(places) - 2)
    rows = least + np.array([[-1], [0], [1]])
    return np.take_along_axis(places, rows, axis=0), np.take_along_axis(angles, rows, axis=0)


def _found(angles: Array) -> Array:
    """Angles with what could not be followed put out of the way."""
    return np.where(np.isnan(angles), np.inf, angles)
