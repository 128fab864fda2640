"""When a truck with springs and tyres tips: the compliant quasi-static answer.

The equilibrium is followed from the level as the table tilts; the tip is the last loss of
stability from which the truck does not stand again. See `balance` for the equations,
`continuation` for the method and `relaxation` for what happens after a loss.

Source: that equilibrium is lost where the stiffness K is singular (det K = 0): J. M. T. Thompson
and G. W. Hunt, A General Theory of Elastic Stability (1973) (from memory); that a tip is the last
loss from which it does not stand again is a definition made here.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from crossfall.statics import continuation
from crossfall.statics.balance import standing_patches
from crossfall.statics.builds import Builds, Ints, stacked
from crossfall.statics.folds import polish_folds
from crossfall.statics.newton import Cases
from crossfall.statics.relaxation import settle
from crossfall.statics.track import CORNER, FOLD, STANDS, UNRESOLVED, Track
from crossfall.truck.model import Array, Flags, Truck
from crossfall.truck.support import downhill_pair

NO_SLIDE = 5.0  # a grip that holds to 78 deg; light wheels may still slip
_SLIDES = 2e-4  # rad before it slides as a whole, where it is no longer followed
STANDING = float(np.radians(89.0))  # nothing stands further
REASONS = {FOLD: "fold", CORNER: "corner", STANDS: "stands", UNRESOLVED: "unresolved"}
STEP_ASIDE = 0.005  # a movement (rad, or of the wheelbase) less than this is no snap
BEYOND = 1e-5, 1e-3  # rad past a loss at which the truck is let go: at first, and at most
_ASIDE = 0.01, 0.03  # rad; tips between are midway to some hundredths of a degree
_FEW = 8  # of which all may be lost and looked for aside; of more only half
MOST_LOSSES = 60  # a limit that stick and slip come near, snaps never
_MOST = 4096  # cases advanced together; more would only take memory


@dataclass(frozen=True)
class CompliantTips:
    """Tip angles of B trucks on H headings (or one row of pairs: then all shapes are (B,)).

    tip: rad, nan where unresolved; where it still stands at the end of the way (`on_the_level`)
    that angle: 89 deg, or where it would slide. first_lift: rad, when the first wheel leaves the
    table, nan if none does before the tip. lift: (..., 4) rad per wheel, front left first; nan =
    not before the tip. reason: code of REASONS: a smooth fold, a corner (a wheel lifts, a spring
    goes slack, a stop engages), or stands. snaps: how often it lost its balance before the tip and
    stood again. away: the loss is none of balance: open differentials let it roll away there.
    first_snap: rad, nan if never. slack, droop_stop, bump_stop: (..., 4) rad, when each corner's
    spring first went slack or met its stop.
    """

    tip: Array
    first_lift: Array
    lift: Array
    reason: Ints
    snaps: Ints
    away: Flags
    first_snap: Array
    slack: Array
    droop_stop: Array
    bump_stop: Array


def tips(
    trucks: Truck | Sequence[Truck],
    headings: Array,
    grip: float | Array = NO_SLIDE,
    *,
    rail: bool = False,
) -> CompliantTips:
    """Tip angles of every truck (B) on every heading (H,) rad; shapes (B, H), or (H,) for one.

    grip: friction coefficient, one or (B,) or (B, H). rail: the tyres each truck would tip over
    cannot slip.

    theta at which det K = 0 for the last time. Raises InputError as `builds.stacked` does,
    ValueError where shapes do not fit.
    """
    single = isinstance(trucks, Truck)
    many = [trucks] if isinstance(trucks, Truck) else list(trucks)
    headings = np.atleast_1d(np.asarray(headings, dtype=np.float64))
    count = len(headings)
    who = np.repeat(np.arange(len(many)), count)
    shape = (len(many), count)
    mu = np.asarray(grip, dtype=np.float64)
    mu = np.broadcast_to(mu[:, None] if mu.ndim == 1 else mu, shape).ravel()
    flat = tips_at(many, who, np.tile(headings, len(many)), mu, rail=rail)
    return _reshaped(flat, (count,) if single else shape)


def tips_at(
    trucks: Sequence[Truck], who: Ints, headings: Array, grip: Array, *, rail: bool | Flags = False
) -> CompliantTips:
    """Tips of trucks[who[i]] on headings[i] (rad) with friction coefficient grip[i]; shapes (B,).
    rail: of all, or (B,) which of them. Raises as `tips` does.
    """
    against = np.broadcast_to(rail, headings.shape)
    railed = railed_tyres(trucks, who, headings) & against if against.any() else None
    return tips_of_builds(stacked(trucks), headings, grip, railed, who)


def scattered(found: CompliantTips, where: Flags) -> CompliantTips:
    """`found` as the cases of the mask `where` (B,), in order; the others are not known.

    Raises ValueError where the count of true is not that of `found`.
    """
    values = {}
    for name in CompliantTips.__dataclass_fields__:
        own = getattr(found, name)
        unknown = np.nan if own.dtype == np.float64 else 0
        values[name] = np.full((len(where), *own.shape[1:]), unknown, dtype=own.dtype)
        values[name][where] = own
    return CompliantTips(**values)


def replaced(old: CompliantTips, where: Flags, new: CompliantTips) -> CompliantTips:
    """`old` (B,) with the cases of the mask `where` taken from `new`, in order.

    The latter (count of true,). Raises ValueError where the counts differ.
    """
    values = {}
    for name in CompliantTips.__dataclass_fields__:
        values[name] = getattr(old, name).copy()
        values[name][where] = getattr(new, name)
    return CompliantTips(**values)


def railed_tyres(trucks: Sequence[Truck], who: Ints, headings: Array) -> Flags:
    """(2, 2, B) axle and side of the tyres against a rail.

    who: (B,) of the trucks; headings: (B,) rad. Those of `support.downhill_pair`.
    """
    out = np.zeros((4, len(headings)), dtype=bool)
    for case, (i, heading) in enumerate(zip(who, headings, strict=True)):
        out[list(downhill_pair(trucks[i], float(heading))), case] = True
    return out.reshape(2, 2, -1)


def tips_of_builds(
    builds: Builds,
    headings: Array,
    grip: Array,
    railed: Flags | None = None,
    who: Ints | None = None,
) -> CompliantTips:
    """Tips of builds[who[i]] (each once if not given) on headings[i] (rad), with friction
    coefficient grip[i], (B,) each; in blocks.

    railed: (2, 2, B) axle and side of the tyres that cannot slip. What cannot be followed on a
    heading, as where tyres slip and stick without end, is taken midway between those aside of it;
    but where most of them cannot, as on tyres as hard as iron, aside is no better.
    """
    who = np.arange(len(headings)) if who is None else who
    found = _followed(builds, headings, grip, railed, who)
    for aside in _ASIDE:
        lost = np.isnan(found.tip)
        if not lost.any() or lost.sum() > max(_FEW, len(lost) / 2):
            break
        stood = None if railed is None else railed[..., lost]
        one, other = (
            _followed(builds, headings[lost] + way, grip[lost], stood, who[lost])
            for way in (-aside, aside)
        )
        found = replaced(found, lost, _midway(one, other))
    return found


def _midway(one: CompliantTips, other: CompliantTips) -> CompliantTips:
    """Angles in the middle of two that are much alike; nan where either has none."""
    values = {n: getattr(other, n) for n in CompliantTips.__dataclass_fields__}
    middle = {
        n: (getattr(one, n) + v) / 2
        for n, v in values.items()
        if n not in ("reason", "snaps", "away")
    }
    reason = np.where(np.isnan(middle["tip"]), UNRESOLVED, other.reason)
    return CompliantTips(**{**values, **middle, "reason": reason})


def _followed(
    builds: Builds, headings: Array, grip: Array, railed: Flags | None, who: Ints
) -> CompliantTips:
    parts = []
    for block in _blocks(len(headings)):
        stood = None if railed is None else railed[..., block]
        cases = on_the_level(builds.take(who[block]), headings[block], grip[block], stood)
        track = continuation.start(cases)
        snaps, first = lose(cases, track)
        parts.append(_result(cases, track, snaps, first))
    return _joined(parts)


def on_the_level(
    builds: Builds, headings: Array, grip: Array, railed: Flags | None = None
) -> Cases:
    """Every build standing level on its heading, with its grip, (B,) each; railed as above.

    headings rad, grip friction coefficients. Followed to where it would slide as a whole,
    atan(grip) less 2e-4 rad; against a rail, to 89 deg.
    """
    points = builds.points
    friction = np.broadcast_to(np.asarray(grip, dtype=np.float64), (2, points, len(builds))).copy()
    limit = np.minimum(np.arctan(friction[0, 0]) - _SLIDES, STANDING)
    if railed is not None:
        friction[np.repeat(railed, points // 2, axis=1)] = np.inf
        limit[railed.any(axis=(0, 1))] = STANDING
    return Cases(
        builds, np.asarray(headings, dtype=float), standing_patches(builds, friction), limit
    )


def lose(cases: Cases, track: Track) -> tuple[Ints, Array]:
    """Follow every case to its tip, through snaps; returns (B,) snaps and (B,) first snap, rad.

    A tyre may stick and slip in turn, many small losses one after the other: each is let go a
    little further beyond, so that they are soon behind.
    """
    snaps, first = np.zeros(len(cases), dtype=np.int64), np.full(len(cases), np.nan)
    fresh, beyond = np.arange(len(cases)), np.full(len(cases), BEYOND[0])
    for _ in range(MOST_LOSSES):
        continuation.follow(cases, track)
        polish_folds(cases, track, fresh)
        fresh = fresh[np.isin(track.outcome[fresh], (FOLD, CORNER)) & ~track.away[fresh]]
        if not len(fresh):
            return snaps, first
        part, state = cases.take(fresh), track.state[:, fresh]
        new, stands, track.away[fresh] = settle(part, state, track.other[:, fresh], beyond[fresh])
        cases.patches.history[:, fresh] = part.patches.history
        moved = np.abs(new - state).max(axis=0)[stands] > STEP_ASIDE
        fresh, new = fresh[stands], new[:, stands]
        snaps[fresh] += moved
        first[fresh] = np.where(moved & (snaps[fresh] == 1), new[-1], first[fresh])
        beyond[fresh] = np.where(moved, BEYOND[0], np.minimum(4.0 * beyond[fresh], BEYOND[1]))
        continuation.resume(cases, track, fresh, new)
    track.outcome[fresh] = UNRESOLVED
    return snaps, first


def _blocks(count: int) -> Iterator[slice]:
    for begin in range(0, max(count, 1), _MOST):
        yield slice(begin, min(begin + _MOST, count))


def _result(cases: Cases, track: Track, snaps: Ints, first_snap: Array) -> CompliantTips:
    count, points = len(cases), cases.builds.points
    # A wheel is off when all its points are; one that never leaves (nan) keeps the wheel on.
    lift = track.opened[: 2 * points].reshape(4, points // 2, count).max(axis=1)
    tip = np.where(track.outcome == UNRESOLVED, np.nan, track.state[-1])
    lift = np.where(lift < tip - 1e-9, lift, np.nan)
    slack, bump, droop = track.opened[2 * points : 2 * points + 12].reshape(3, 4, count)
    first_lift = np.fmin.reduce(lift, axis=0)
    return CompliantTips(
        tip,
        first_lift,
        lift.T,
        track.outcome,
        snaps,
        track.away,
        first_snap,
        slack.T,
        droop.T,
        bump.T,
    )


def _joined(parts: Sequence[CompliantTips]) -> CompliantTips:
    return CompliantTips(
        **{
            name: np.concatenate([getattr(p, name) for p in parts])
            for name in CompliantTips.__dataclass_fields__
        }
    )


def _reshaped(flat: CompliantTips, shape: tuple[int, ...]) -> CompliantTips:
    return CompliantTips(
        **{
            name: getattr(flat, name).reshape(*shape, *getattr(flat, name).shape[1:])
            for name in CompliantTips.__dataclass_fields__
        }
    )
