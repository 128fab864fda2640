"""Follow the equilibrium as the table tilts, through lift-offs and stops, to its loss of stability.

Every unilateral law (contacts, push-only springs, stops) is frozen in its present branch, so the
path is smooth; it is followed by pseudo-arc-length continuation (e.g. R. Seydel, Practical
Bifurcation and Stability Analysis (2010), chapter 4) to the next event, where one gap passes zero.
There the branch is switched, and the path goes on if the stiffness keeps the sign of its
determinant. A smooth loss (fold) is where the path turns back in theta, a corner where the
determinant jumps through zero at an event. All cases of a batch advance together.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from crossfall.statics.builds import Flags, Index, Ints
from crossfall.statics.kinematics import FREEDOMS
from crossfall.statics.newton import ACCURACY, Cases, Corrected, correct, solve
from crossfall.statics.tyres import Patches
from crossfall.truck.model import Array

GOING, FOLD, CORNER, STANDS, UNRESOLVED = range(5)


@dataclass(frozen=True)
class Settings:
    """Numerical settings of the continuation; lengths over the wheelbase, angles in rad.

    step: first arc length, about 5 deg of tilt. largest_step: keeps a gap from opening and closing
    unseen within one step. looks: table angles, rad, at whose multiples it is noted where tyres that slip have got to; always
    the same ones, so that the answer is a smooth function of the truck. round_bends: of the way to
    the next look, the first arc-length step where that look cannot be had.
    fine: below this the branches are free during a step. smallest_step: a
    case that gets no further than this is lost there. together: gaps within this of zero at an
    event switch together: a symmetric truck lifts two wheels at once. flat: theta component of the
    tangent at which a fold is found, where theta is good to its square. rounds: of steps and
    events.
    """

    step: float = 0.1
    largest_step: float = 0.2
    looks: float = float(np.radians(1.0))
    round_bends: float = 0.7
    fine: float = 5e-4
    smallest_step: float = 1e-8
    together: float = 1e-8
    flat: float = 1e-4
    rounds: int = 400


SETTINGS = Settings()
THETA = np.eye(len(FREEDOMS) + 1)[-1]


@dataclass
class Track:
    """Where each of B cases has got to, updated in place.

    state: (n + 1, B). on: (g, B) branches in use. tangent: (n + 1, B). step: (B,).
    opened, closed: (g, B) rad, table angle at which each gap first did, nan before. outcome: (B,).
    other: (n + 1, B) far end of the bracket where a fold was passed; at a corner, the unit
    direction in which the lost path goes on. switched: (g, B) gaps that switched at the last event.
    slips: (B,) whether any tyre does.
    trail: (who, state, on, patches) of every point met, in order, with the branches and patches used
    after it; None where it is not wanted.
    """

    state: Array
    on: Flags
    tangent: Array
    step: Array
    opened: Array
    closed: Array
    outcome: Ints
    other: Array
    switched: Flags
    slips: Flags
    trail: list[tuple[Ints, Array, Flags, Patches]] | None = None

    def mark(self, who: Ints, cases: Cases) -> None:
        """Add the present points of the cases `who` to the trail."""
        if self.trail is not None and len(who):
            held = cases.patches.take(who)
            self.trail.append((who, self.state[:, who], self.on[:, who], held))


def start(cases: Cases, trail: bool = False) -> Track:
    """Level, at ride height, everything in touch."""
    count, n, g = len(cases), len(FREEDOMS), cases.gap_count()
    state = np.zeros((n + 1, count))
    on = cases.balance(state, np.ones((g, count), dtype=bool)).gaps >= 0
    nan = np.full((g, count), np.nan)
    track = Track(
        state,
        on,
        np.zeros_like(state),
        np.full(count, SETTINGS.step),
        nan,
        nan.copy(),
        np.full(count, GOING),
        np.zeros_like(state),
        np.zeros((g, count), dtype=bool),
        np.zeros(count, dtype=bool),
        [] if trail else None,
    )
    track.mark(np.arange(count), cases)
    _set_out(cases, track, np.arange(count), np.zeros(count, dtype=bool))
    return track


def _set_out(cases: Cases, track: Track, who: Ints, several: Flags) -> None:
    """Tangent towards larger theta with the present branches; a corner where that is unstable.

    `several` marks cases where more than one gap switched: there two signs may have changed at
    once, which the determinant does not show, so the eigenvalues are looked at.
    """
    at = cases.take(who).balance(track.state[:, who], track.on[:, who])
    matrices = np.ascontiguousarray(at.stiffness.transpose(2, 0, 1))
    sign = np.linalg.slogdet(matrices)[0]
    lost = sign <= 0
    if several.any():
        values = np.linalg.eigvals(matrices[several])
        lost[several] |= ((values.real < 0) & (np.abs(values.imag) < 1e-12)).any(axis=1)
    (rate,) = solve(at.stiffness, at.slope)
    tangent = np.concatenate([rate, np.ones((1, len(who)))]) * np.where(lost, -1.0, 1.0)
    tangent /= np.sqrt((tangent**2).sum(axis=0))
    track.tangent[:, who] = tangent
    track.outcome[who[lost]] = CORNER
    track.other[:, who[lost]] = tangent[:, lost]


def follow(cases: Cases, track: Track) -> None:
    """Advance every case that is still going until it loses stability."""
    for _ in range(SETTINGS.rounds):
        going = track.outcome == GOING
        fine = track.step < SETTINGS.fine
        _advance(cases, track, np.flatnonzero(going & ~fine))
        _creep(cases, track, np.flatnonzero(going & fine))
        if not going.any():
            return
    track.outcome[track.outcome == GOING] = UNRESOLVED


def _advance(cases: Cases, track: Track, live: Ints) -> None:
    """One arc-length step for the cases `live`, cut short at the first event.

    Where a tyre slips, from one multiple of SETTINGS.looks to the next.
    """
    if not len(live):
        return
    part = cases.take(live)
    state, on, tangent = track.state[:, live], track.on[:, live], track.tangent[:, live]
    step, target = track.step[live], _next_look(state[-1])
    with np.errstate(divide="ignore", invalid="ignore"):
        reach = (target - state[-1]) / tangent[-1]
    look = track.slips[live] & (tangent[-1] > 0) & (reach <= step)
    step = np.where(look, reach, step)
    guess = state + step * tangent
    normal = np.where(look, THETA[:, None], tangent)
    new = correct(part, guess, on, normal=normal, level=(normal * guess).sum(axis=0))
    bend = (new.tangent * tangent).sum(axis=0)
    bad = ~new.good | (bend < 0.5)
    _shorten(track, live[bad & ~look])
    # No look where the path turns back before it: go round the bend by arc length.
    track.step[live[bad & look]] = SETTINGS.round_bends * reach[bad & look]
    begins = ~bad & new.seen[-1] & ~track.slips[live]
    track.slips[live[begins]] = True
    good = ~bad & ~begins
    violated = (new.gaps >= 0) != on

    calm = good & ~violated.any(axis=0)
    passed = calm & (new.tangent[-1] <= 0)
    # Tyres that begin to slip bend the path: look closer.
    coarse = passed & (track.step[live] > 4 * SETTINGS.fine)
    _shorten(track, live[coarse])
    calm &= ~coarse
    passed &= ~coarse
    _fold(track, live[passed], new.state[:, passed])
    calm &= ~passed
    who = live[calm]
    track.state[:, who], track.tangent[:, who] = new.state[:, calm], new.tangent[:, calm]
    _remember(cases, track, live[calm & look], new.seen, calm & look)
    track.mark(who, cases)
    easy = (new.effort[calm] <= 3) & (
        look[calm] | ~track.slips[who] | (reach[calm] > 3 * step[calm])
    )
    longer = np.where(easy, 1.6, np.where(new.effort[calm] >= 5, 0.6, 1.0))
    track.step[who] = np.minimum(track.step[who] * longer, SETTINGS.largest_step)
    track.outcome[who[track.state[-1, who] > cases.limit[who]]] = STANDS

    eventful = good & violated.any(axis=0)
    if eventful.any():
        far = new.state[:, eventful], new.gaps[:, eventful]
        _meet_event(cases, track, live[eventful], *far, step[eventful])


def _next_look(theta: Array) -> Array:
    """The next multiple of SETTINGS.looks, but not one nearly reached."""
    return np.asarray(SETTINGS.looks * np.floor(theta / SETTINGS.looks + 1.01))


def _remember(cases: Cases, track: Track, who: Ints, seen: Sequence[Array], chosen: Index) -> None:
    """Note where the tyres of the cases `who` hold, seen[..., chosen], and whether one slips."""
    cases.patches.history[:, who] = seen[0][:, chosen]
    track.slips[who] = seen[-1][chosen]


def _shorten(track: Track, who: Ints) -> None:
    """Shorten the step; a case that cannot take even the smallest has come to its end."""
    track.step[who] *= 0.35
    stuck = who[track.step[who] < SETTINGS.smallest_step]
    track.outcome[stuck], track.switched[:, stuck] = CORNER, False
    track.other[:, stuck] = track.tangent[:, stuck]


def _fold(track: Track, who: Ints, beyond: Array) -> None:
    track.outcome[who] = FOLD
    track.other[:, who] = beyond


def _creep(cases: Cases, track: Track, live: Ints) -> None:
    """One short step with the branches free to switch during Newton's method.

    For where switching one gap at a time leads nowhere, as when several tyres slip and stick at
    once: the finite step settles it among them. Events are then known to within the step.
    """
    if not len(live):
        return
    part, state, tangent = cases.take(live), track.state[:, live], track.tangent[:, live]
    guess = state + track.step[live] * tangent
    new = correct(part, guess, None, normal=tangent, level=(tangent * guess).sum(axis=0))
    ahead = new.state[-1] > state[-1]
    stable = np.linalg.slogdet(part.balance(new.state).stiffness.transpose(2, 0, 1))[0] > 0
    good = new.good & ahead & stable
    _shorten(track, live[~good])
    who = live[good]
    track.state[:, who], track.tangent[:, who] = new.state[:, good], new.tangent[:, good]
    on = new.gaps[:, good] >= 0
    _note(track, who, track.on[:, who], on)
    track.on[:, who] = on
    track.step[who] *= 2.0
    _remember(cases, track, who, new.seen, good)
    track.mark(who, cases)


def _note(track: Track, who: Ints, was: Flags, now: Flags) -> None:
    """Note when gaps first opened or closed, at the present state."""
    for times, changed in ((track.opened, was & ~now), (track.closed, ~was & now)):
        old = times[:, who]
        times[:, who] = np.where(changed & np.isnan(old), track.state[-1, who], old)


def _meet_event(
    cases: Cases, track: Track, who: Ints, far: Array, far_gaps: Array, span: Array
) -> None:
    """Find the first event between the track's state and `far`, and switch its branch there.

    span: (B,) the arc length between them.
    """
    close = SETTINGS.together + ACCURACY.noise * cases.take(who).stiffest()
    near_gaps = cases.take(who).balance(track.state[:, who], track.on[:, who]).gaps
    for _ in range(6):
        on, near = track.on[:, who], track.state[:, who]
        violated = (far_gaps >= 0) != on
        back = violated & (np.abs(near_gaps) < close)
        with np.errstate(divide="ignore", invalid="ignore"):
            part = np.where(violated, near_gaps / (near_gaps - far_gaps), np.inf)
        part = np.where(violated, np.clip(part, 0.0, 1.0), np.inf)
        first = part.argmin(axis=0)
        guess = near + part.min(axis=0) * (far - near)
        normal = track.tangent[:, who]
        at = correct(cases.take(who), guess, on, normal=normal, level=np.zeros(len(who)), gap=first)
        place = (normal * (at.state - near)).sum(axis=0)
        good = at.good & (place > -1e-6) & (place < span + 1e-6)
        # A gap that has just switched and is back by the end: look closer for its second zero.
        good &= ~back.any(axis=0)
        _shorten(track, who[~good])

        zero = np.abs(at.gaps) < close
        zero[first, np.arange(len(who))] = True
        early = good & (((at.gaps >= 0) != on) & ~zero).any(axis=0)
        ready = good & ~early
        passed = ready & (at.tangent[-1] <= 0)
        _fold(track, who[passed], at.state[:, passed])
        switch = ready & ~passed
        if switch.any():
            _switch(cases, track, who[switch], at, switch, zero[:, switch])
        who, far, far_gaps = who[early], at.state[:, early], at.gaps[:, early]
        near_gaps, close, span = near_gaps[:, early], close[early], span[early]
        if not len(who):
            return
    _shorten(track, who)


def _switch(
    cases: Cases, track: Track, who: Ints, at: Corrected, switch: Flags, zero: Flags
) -> None:
    """Take the other branch of the gaps that are zero; note when they first opened or closed."""
    was = track.on[:, who]
    track.state[:, who] = at.state[:, switch]
    _note(track, who, was, was ^ zero)
    _remember(cases, track, who, at.seen, switch)
    track.on[:, who] = was ^ zero
    track.switched[:, who] = zero
    track.mark(who, cases)
    _set_out(cases, track, who, zero.sum(axis=0) > 1)


def resume(cases: Cases, track: Track, who: Ints, state: Array) -> None:
    """Carry on from a new equilibrium (n + 1, len(who))."""
    if not len(who):
        return
    track.state[:, who] = state
    on = cases.take(who).balance(state).gaps >= 0
    _note(track, who, track.on[:, who], on)
    track.on[:, who] = on
    track.mark(who, cases)
    track.step[who] = SETTINGS.step
    track.outcome[who] = GOING
    _set_out(cases, track, who, np.zeros(len(who), dtype=bool))


def polish_folds(cases: Cases, track: Track, among: Ints) -> None:
    """Move every case of `among` with a fold onto it: the point of the path where theta is largest.

    The tangent's theta component is brought to zero by regula falsi (Illinois) along the chord of
    the bracket, on the smooth path of the frozen branches. Where that leads off the path, which a
    tyre that begins to slip can do, the near end of the bracket is kept.
    """
    who = among[track.outcome[among] == FOLD]
    if not len(who):
        return
    part, on = cases.take(who), track.on[:, who]
    near, far = track.state[:, who], track.other[:, who]
    chord = far - near
    length = np.sqrt((chord**2).sum(axis=0))
    normal = chord / length
    start = track.tangent[:, who]
    best, tangent = near.copy(), start.copy()
    at = correct(part, far, on, normal=normal, level=(normal * far).sum(axis=0))
    good = at.good.copy()
    values = [track.tangent[-1, who], at.tangent[-1]]
    points = [near.copy(), far.copy()]
    live = np.arange(len(who))
    for _ in range(40):
        a, b = (v[live] for v in values)
        first, last = (p[:, live] for p in points)
        guess = first + np.clip(a / (a - b), 0.02, 0.98) * (last - first)
        across = normal[:, live]
        level = (across * guess).sum(axis=0)
        at = correct(part.take(live), guess, on[:, live], normal=across, level=level)
        best[:, live], tangent[:, live], good[live] = at.state, at.tangent, at.good
        slope = at.tangent[-1]
        up = slope > 0
        values[0][live], values[1][live] = (
            np.where(up, slope, a * 0.5),
            np.where(up, b * 0.5, slope),
        )
        points[0][:, live] = np.where(up, at.state, first)
        points[1][:, live] = np.where(up, last, at.state)
        live = live[np.abs(slope) >= SETTINGS.flat]  # each on its own, whatever runs beside it
        if not len(live):
            break
    lost = ~good | (best[-1] < near[-1]) | (best[-1] > near[-1] + length)
    track.state[:, who] = np.where(lost, near, best)
    track.other[:, who] = np.where(lost, start, tangent)
    track.mark(who, cases)
