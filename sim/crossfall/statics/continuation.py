"""Follow the equilibrium as the table tilts, through lift-offs and stops, to its loss of stability.

Every unilateral law (contacts, push-only springs, stops) is frozen in its present branch, so the
path is smooth; it is followed by pseudo-arc-length continuation to the next event, where one gap
passes zero. There the branch is switched, and the path goes on if the stiffness keeps the sign of
its determinant. A smooth loss (fold) is where the path turns back in theta, a corner where the
determinant jumps through zero at an event. All cases of a batch advance together.

Nothing here raises: a case that cannot be followed ends as UNRESOLVED.

Source: H. B. Keller, Numerical solution of bifurcation and nonlinear eigenvalue problems (1977),
and R. Seydel, Practical Bifurcation and Stability Analysis (2010), chapter 4 (both from memory),
for load(x, theta) = 0 with t . (x - x0) = s; the steps' lengths are derived here from the path's
curvature.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics.builds import Ints, pick
from crossfall.statics.case import FREEDOMS
from crossfall.statics.events import meet_event
from crossfall.statics.newton import Cases, Corrected, correct
from crossfall.statics.track import GOING, PAST, SETTINGS, STANDS, THETA, UNRESOLVED, Track
from crossfall.truck.model import Array, Flags


def start(cases: Cases, trail: bool = False) -> Track:
    """Level, at ride height, everything in touch; trail: whether points met are kept. The first
    tangent solves K dx/dtheta = d load / d theta.
    """
    count, n, g = len(cases), len(FREEDOMS), cases.gap_count()
    state = np.zeros((n + 1, count))
    on = cases.branches(cases.balance(state).gaps)
    none, nan = np.zeros(count, dtype=bool), np.full((g, count), np.nan)
    track = Track(
        state=state,
        on=on,
        tangent=np.zeros_like(state),
        step=np.full(count, SETTINGS.step),
        opened=nan,
        closed=nan.copy(),
        outcome=np.full(count, GOING),
        other=np.zeros_like(state),
        back=np.zeros_like(state),
        switched=np.zeros((g, count), dtype=bool),
        gaps=np.zeros((g, count)),
        normal=np.zeros_like(state),
        level=np.full(count, np.inf),
        past=np.full((PAST, n + 1, count), np.nan),
        home=cases.patches.anchor.copy(),
        away=none.copy(),
        crept=np.zeros(count, dtype=np.int64),
        trail=[] if trail else None,
    )
    track.mark(np.arange(count), cases)
    track.set_out(cases, np.arange(count), none)
    return track


def follow(cases: Cases, track: Track) -> None:
    """Advance every case that is still going until it loses stability.

    Each step solves load = 0 and t . (x - x0) = s.
    """
    rolls = cases.builds.open.any(axis=0)
    for _ in range(SETTINGS.rounds):
        going = track.outcome == GOING
        if not going.any():
            return
        fine = track.step < SETTINGS.fine
        _advance(cases, track, np.flatnonzero(going & ~fine))
        _creep(cases, track, np.flatnonzero(going & fine))
        if rolls.any():
            track.roll_away(cases, np.flatnonzero((track.outcome == GOING) & rolls))
    track.outcome[track.outcome == GOING] = UNRESOLVED


@dataclass(frozen=True)
class _Stride:
    """The next step of B cases: where it leads, and the plane on which it ends.

    looks: (B,) whether that is where it is noted how far tyres have slipped. length: (B,) arc
    length.
    """

    guess: Array
    normal: Array
    level: Array
    looks: Flags
    length: Array


def _stride(cases: Cases, track: Track, live: Ints) -> _Stride:
    """By arc length; where a tyre slips, not beyond the next place to note it, nor the limit."""
    state, tangent, past = (pick(v, live) for v in (track.state, track.tangent, track.past))
    normal, level = pick(track.normal, live), track.level[live]
    climb, ahead = np.maximum(tangent[-1], 1e-300), (normal * tangent).sum(axis=0)
    facing = ahead > 0.2
    reach = (level - (normal * state).sum(axis=0)) / np.where(facing, ahead, 1.0)
    reach = np.where(facing, reach, np.inf)
    limit = cases.limit[live] + 1e-9
    last = (limit - state[-1]) / climb
    ends = last < reach

    # Half the curvature, by the point before, tells where the path turns back.
    way = state - past[0]
    span = (way * tangent).sum(axis=0)
    bend = (span * tangent[-1] - way[-1]) / span**2
    turns = bend < 0
    turn = np.where(turns, climb / np.where(turns, -2.0 * bend, 1.0), np.inf)
    step = np.minimum(track.step[live], np.maximum(SETTINGS.overshoot * turn, SETTINGS.fine))
    length = np.minimum(np.minimum(reach, last), step)
    ends &= length == last
    looks = ~ends & (length == reach)

    plane = np.where(looks, normal, tangent)
    flat = (plane * state).sum(axis=0) + length * (plane * tangent).sum(axis=0)
    plane, flat = np.where(ends, THETA[:, None], plane), np.where(ends, limit, flat)
    return _Stride(_ahead(state, tangent, past, length), plane, flat, looks, length)


def _ahead(state: Array, tangent: Array, past: Array, length: Array) -> Array:
    """Where the path leads after an arc length (B,), by Newton's divided differences."""
    places = [0.0, 0.0, *(tangent * (past - state)).sum(axis=1)]
    nodes = [state, state, *past]
    guess = state + length * tangent
    table, factor = [tangent], length * length
    for k in range(PAST):
        rate = (nodes[k + 1] - nodes[k + 2]) / (places[k + 1] - places[k + 2])
        row = [rate]
        for j, old in enumerate(table):
            rate = (old - rate) / (places[k - j] - places[k + 2])
            row.append(rate)
        table = row
        near = length < -SETTINGS.trust * places[k + 2]
        guess += np.where(near, factor * rate, 0.0)
        factor = factor * (length - places[k + 2])
    return np.asarray(guess)


def _advance(cases: Cases, track: Track, live: Ints) -> None:
    """One step for the cases `live`, cut short at the first event."""
    if not len(live):
        return
    on, stride = pick(track.on, live), _stride(cases, track, live)
    looks, length = stride.looks, stride.length
    part = cases.take(live)
    new = correct(part, stride.guess, on, normal=stride.normal, level=stride.level)
    bad = ~new.good | ((new.tangent * track.tangent[:, live]).sum(axis=0) < 0.5)
    track.step[live[bad]] = length[bad]
    track.shorten(live[bad & ~looks])
    # Not in one go where the path bends before it.
    track.step[live[bad & looks]] *= SETTINGS.round_bends

    eventful = part.crossed(new.gaps, on).any(axis=0)
    calm = ~bad & ~eventful
    passed = calm & (new.tangent[-1] <= 0)
    track.turn_back(live[passed], new, passed, length[passed])
    _go_on(cases, track, live, stride, new, np.flatnonzero(calm & ~passed))
    meets = np.flatnonzero(~bad & eventful)
    if len(meets):
        meet_event(cases, track, live[meets], new, meets, length[meets])


def _go_on(
    cases: Cases, track: Track, live: Ints, stride: _Stride, new: Corrected, calm: Ints
) -> None:
    """Accept the steps `calm`, and choose the next step length."""
    who, looks, effort = live[calm], stride.looks[calm], new.effort[calm]
    track.move(who, new, calm)
    track.remember(cases, who[looks], new, calm[looks])
    track.mark(who, cases)
    longer = np.where(effort <= 3, 1.6, np.where(effort >= 5, 0.6, 1.0))
    track.step[who] = np.minimum(track.step[who] * longer, SETTINGS.largest_step)
    track.outcome[who[track.state[-1, who] > cases.limit[who]]] = STANDS


def _creep(cases: Cases, track: Track, live: Ints) -> None:
    """One short step with the branches free to switch during Newton's method.

    For where switching one gap at a time leads nowhere, as when several tyres slip and stick at
    once: the finite step settles it among them. Events are then known to within the step.
    """
    if not len(live):
        return
    track.crept[live] += 1
    track.outcome[live[track.crept[live] > SETTINGS.creeps]] = UNRESOLVED
    part, state, tangent = cases.take(live), pick(track.state, live), pick(track.tangent, live)
    guess = state + track.step[live] * tangent
    new = correct(part, guess, None, normal=tangent, level=(tangent * guess).sum(axis=0))
    ahead = new.state[-1] > state[-1]
    stable = np.linalg.slogdet(part.balance(new.state).stiffness)[0] > 0
    good = np.flatnonzero(new.good & ahead & stable)
    track.shorten(np.delete(live, good))
    who = live[good]
    track.move(who, new, good)
    track.past[:, :, who] = np.nan
    on = cases.branches(new.gaps[:, good])
    track.note(who, track.on[:, who], on)
    track.on[:, who] = on
    track.step[who] *= 2.0
    track.remember(cases, who, new, good)
    track.mark(who, cases)


def resume(cases: Cases, track: Track, who: Ints, state: Array) -> None:
    """Carry on from a new equilibrium (n + 1, len(who)), the last row theta in rad; who: (k,)
    cases.
    """
    if not len(who):
        return
    track.state[:, who] = state
    on = cases.branches(cases.take(who).balance(state).gaps)
    track.note(who, track.on[:, who], on)
    track.on[:, who] = on
    track.mark(who, cases)
    track.step[who] = SETTINGS.step
    track.outcome[who] = GOING
    track.set_out(cases, who, np.zeros(len(who), dtype=bool))
