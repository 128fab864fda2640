"""Follow the equilibrium as the table tilts, through lift-offs and stops, to its loss of stability.

Every unilateral law (contacts, push-only springs, stops) is frozen in its present branch, so the
path is smooth; it is followed by pseudo-arc-length continuation (e.g. R. Seydel, Practical
Bifurcation and Stability Analysis (2010), chapter 4) to the next event, where one gap passes zero.
There the branch is switched, and the path goes on if the stiffness keeps the sign of its
determinant. A smooth loss (fold) is where the path turns back in theta, a corner where the
determinant jumps through zero at an event. All cases of a batch advance together.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics.builds import Flags, Ints, pick
from crossfall.statics.events import meet_event
from crossfall.statics.kinematics import FREEDOMS
from crossfall.statics.newton import Cases, Corrected, correct
from crossfall.statics.track import GOING, PAST, SETTINGS, STANDS, THETA, UNRESOLVED, Track
from crossfall.truck.model import Array


def start(cases: Cases, trail: bool = False) -> Track:
    """Level, at ride height, everything in touch."""
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
        past=np.full((PAST, n + 1, count), np.nan),
        trail=[] if trail else None,
    )
    track.mark(np.arange(count), cases)
    track.set_out(cases, np.arange(count), none)
    return track


def follow(cases: Cases, track: Track) -> None:
    """Advance every case that is still going until it loses stability."""
    for _ in range(SETTINGS.rounds):
        going = track.outcome == GOING
        if not going.any():
            return
        fine = track.step < SETTINGS.fine
        _advance(cases, track, np.flatnonzero(going & ~fine))
        _creep(cases, track, np.flatnonzero(going & fine))
    track.outcome[track.outcome == GOING] = UNRESOLVED


@dataclass(frozen=True)
class _Stride:
    """The next step of B cases: where it leads, and the plane on which it ends.

    slips: (B,) whether a tyre does. look: (B,) whether the plane is a table angle. reach, length:
    (B,) arc lengths of the way to the next such angle and of the step.
    """

    guess: Array
    normal: Array
    level: Array
    slips: Flags
    look: Flags
    reach: Array
    length: Array


def _stride(cases: Cases, track: Track, live: Ints) -> _Stride:
    """By arc length; where a tyre slips, to the next multiple of SETTINGS.looks, and not beyond
    the limit."""
    state, tangent, past = (pick(v, live) for v in (track.state, track.tangent, track.past))
    theta, climb = state[-1], tangent[-1]
    slips = ~track.on[-cases.tyres() :, live].all(axis=0)
    aim = np.minimum(np.where(slips, _next_look(theta), np.inf), cases.limit[live] + 1e-9)
    reach = (aim - theta) / np.maximum(climb, 1e-300)
    # Half the curvature, by the point before.
    way = state - past[0]
    span = (way * tangent).sum(axis=0)
    bend = (span * tangent - way) / span**2
    known = span > 0
    turns = known & (bend[-1] < 0)
    turn = np.where(turns, climb / np.where(turns, -2.0 * bend[-1], 1.0), np.inf)
    length = np.minimum(track.step[live], np.maximum(SETTINGS.overshoot * turn, SETTINGS.fine))
    look = (climb > 0) & (reach <= length)
    length = np.where(look, reach, length)
    guess = state + length * tangent
    level = (tangent * guess).sum(axis=0)
    guess += np.where(known & (length < 3.0 * span), length**2 * bend, 0.0)
    if look.any():
        at = np.flatnonzero(look)
        guess[:, at] = _at_angle(pick(state, at), pick(tangent, at), pick(past, at), aim[at])
    normal = np.where(look, THETA[:, None], tangent)
    return _Stride(guess, normal, np.where(look, aim, level), slips, look, reach, length)


def _at_angle(state: Array, tangent: Array, past: Array, theta: Array) -> Array:
    """Where the path leads at the table angle theta (B,), by Newton's divided differences in it."""
    far = theta - state[-1]
    slope = tangent / tangent[-1]
    guess = state + far * slope
    table, factor = [slope], far * far
    nodes = [state, state, *past]
    for k in range(PAST):
        row, rate = [], (nodes[k + 1] - nodes[k + 2]) / (nodes[k + 1][-1] - nodes[k + 2][-1])
        row.append(rate)
        for j, old in enumerate(table):
            rate = (old - rate) / (nodes[k - j][-1] - nodes[k + 2][-1])
            row.append(rate)
        table = row
        known = np.isfinite(rate).all(axis=0)
        guess += np.where(known, factor * rate, 0.0)
        factor = factor * (theta - nodes[k + 2][-1])
    return np.asarray(guess)


def _advance(cases: Cases, track: Track, live: Ints) -> None:
    """One step for the cases `live`, cut short at the first event."""
    if not len(live):
        return
    on, stride = pick(track.on, live), _stride(cases, track, live)
    look, length = stride.look, stride.length
    part = cases.take(live)
    new = correct(part, stride.guess, on, normal=stride.normal, level=stride.level)
    bad = ~new.good | ((new.tangent * track.tangent[:, live]).sum(axis=0) < 0.5)
    track.step[live[bad]] = length[bad]
    track.shorten(live[bad & ~look])
    # No look where the path turns back before it: go round the bend by arc length.
    track.step[live[bad & look]] *= SETTINGS.round_bends

    eventful = part.crossed(new.gaps, on).any(axis=0)
    calm = ~bad & ~eventful
    passed = calm & (new.tangent[-1] <= 0)
    track.turn_back(live[passed], new, passed, length[passed])
    _go_on(cases, track, live, stride, new, np.flatnonzero(calm & ~passed))
    eventful = np.flatnonzero(~bad & eventful)
    if len(eventful):
        meet_event(cases, track, live[eventful], new, eventful, length[eventful])


def _go_on(
    cases: Cases, track: Track, live: Ints, stride: _Stride, new: Corrected, calm: Ints
) -> None:
    """Accept the steps `calm`, and choose the next step length."""
    who, look, effort = live[calm], stride.look[calm], new.effort[calm]
    track.move(who, new, calm)
    noted = look & stride.slips[calm]
    track.remember(cases, who[noted], new, calm[noted])
    track.mark(who, cases)
    easy = look | ~stride.slips[calm] | (stride.reach[calm] > 3.0 * stride.length[calm])
    longer = np.where((effort <= 3) & easy, 1.6, np.where(effort >= 5, 0.6, 1.0))
    track.step[who] = np.minimum(track.step[who] * longer, SETTINGS.largest_step)
    track.outcome[who[track.state[-1, who] > cases.limit[who]]] = STANDS


def _next_look(theta: Array) -> Array:
    """The next multiple of SETTINGS.looks, but not the one that is reached."""
    return np.asarray(SETTINGS.looks * np.floor(theta / SETTINGS.looks + (1.0 + 1e-6)))


def _creep(cases: Cases, track: Track, live: Ints) -> None:
    """One short step with the branches free to switch during Newton's method.

    For where switching one gap at a time leads nowhere, as when several tyres slip and stick at
    once: the finite step settles it among them. Events are then known to within the step.
    """
    if not len(live):
        return
    part, state, tangent = cases.take(live), pick(track.state, live), pick(track.tangent, live)
    guess = state + track.step[live] * tangent
    new = correct(part, guess, None, normal=tangent, level=(tangent * guess).sum(axis=0))
    ahead = new.state[-1] > state[-1]
    stable = np.linalg.slogdet(part.balance(new.state).stiffness.transpose(2, 0, 1))[0] > 0
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
    """Carry on from a new equilibrium (n + 1, len(who))."""
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
