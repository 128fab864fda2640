"""Find where a gap passes zero on the path, and take its other branch there.

Source: derived here: the zero of a gap by Newton's method on load = 0 and gap = 0, begun at the
secant's; see R. Seydel, Practical Bifurcation and Stability Analysis (2010), chapter 5, for test
functions (from memory).
"""

from __future__ import annotations

import numpy as np

from crossfall.statics.builds import Ints, pick
from crossfall.statics.newton import ACCURACY, Cases, Corrected, correct
from crossfall.statics.track import SETTINGS, Track, between
from crossfall.truck.model import Array, Flags


def meet_event(
    cases: Cases, track: Track, who: Ints, far: Corrected, chosen: Ints, span: Array
) -> None:
    """Find the first event between the track's state and far[chosen], and switch its branch there.

    who: (B,) cases, chosen: (B,) their places in `far`. span: (B,) the arc length between. The
    guess is at gap0 / (gap0 - gap1) of the way. Raises nothing: where none is found the step is
    shortened.
    """
    close = SETTINGS.together + ACCURACY.noise * cases.take(who).stiffest()
    end, arrive, end_gaps = (pick(v, chosen) for v in (far.state, far.tangent, far.gaps))
    for _ in range(6):
        part, near, near_gaps = cases.take(who), pick(track.state, who), pick(track.gaps, who)
        on, leave = pick(track.on, who), pick(track.tangent, who)
        crossed = part.crossed(end_gaps, on)
        back = crossed & (np.abs(near_gaps) < close)
        apart = np.where(crossed, near_gaps - end_gaps, 1.0)
        share = np.where(crossed, np.clip(near_gaps / apart, 0.0, 1.0), np.inf)
        first = share.argmin(axis=0)
        guess = between(near, end, leave, arrive, share.min(axis=0))
        at = correct(part, guess, on, normal=leave, level=np.zeros(len(who)), gap=first)
        place = (leave * (at.state - near)).sum(axis=0)
        good = at.good & (place > -1e-6) & (place < span + 1e-6)
        # A gap that has just switched and is back by the end: look closer for its second zero.
        good &= ~back.any(axis=0)
        track.shorten(who[~good])

        zero = np.abs(at.gaps) < close
        zero[-part.tyres() :] &= on[-part.tyres() :]
        zero[first, np.arange(len(who))] = True
        early = good & (part.crossed(at.gaps, on) & ~zero).any(axis=0)
        ready = good & ~early
        passed = ready & (at.tangent[-1] <= 0)
        track.turn_back(who[passed], at, passed, place[passed])
        switch = np.flatnonzero(ready & ~passed)
        if len(switch):
            _switch(cases, track, who[switch], at, switch, pick(zero, switch))
        early = np.flatnonzero(early)
        if not len(early):
            return
        who, close, span = who[early], close[early], span[early]
        end, arrive, end_gaps = (pick(v, early) for v in (at.state, at.tangent, at.gaps))
    track.shorten(who)


def _switch(
    cases: Cases, track: Track, who: Ints, at: Corrected, switch: Ints, zero: Flags
) -> None:
    """Take the other branch of the gaps that are zero; note when they first opened or closed."""
    was, tyres = pick(track.on, who), cases.tyres()
    track.state[:, who] = at.state[:, switch]
    track.note(who, was, was ^ zero)
    track.remember(cases, who, at, switch)
    on = was ^ zero
    # A tyre off the table does not slip, one that comes down may at once.
    on[-tyres:] |= ~on[:tyres]
    on[-tyres:] &= was[:tyres] | ~on[:tyres]
    track.on[:, who] = on
    track.switched[:, who] = zero
    track.mark(who, cases)
    track.set_out(cases, who, zero.sum(axis=0) > 1)
