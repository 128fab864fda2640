"""Find where the path turns back: the table angle at which the equilibrium is lost smoothly.

Source: derived here from cubic Hermite interpolation between two points with tangents: its top
solves 3 (u + d - 2 r) s^2 + 2 (3 r - 2 u - d) s + u = 0, with rise r and slopes u, d at the ends.
"""

from __future__ import annotations

import numpy as np

from crossfall.statics.builds import Ints, pick
from crossfall.statics.newton import Cases, correct
from crossfall.statics.track import FOLD, SETTINGS, Track, between
from crossfall.truck.model import Array


def polish_folds(cases: Cases, track: Track, among: Ints) -> None:
    """Move every case of `among` with a fold onto it: the point of the path where theta is largest.

    The next point is the top of the cubic through the bracket's ends, with their tangents, or where
    those tangents meet, in turn: a tyre that begins to slip there makes the top a corner. They
    meet above the path, which tells how good it is. Where that leads off the smooth path of the
    frozen branches, the near end of the bracket is kept.

    among: (k,) cases. Good to 1e-11 rad (`SETTINGS.top`). Raises nothing.
    """
    who = among[track.outcome[among] == FOLD]
    if not len(who):
        return
    part, on = cases.take(who), pick(track.on, who)
    near, start = pick(track.state, who), pick(track.tangent, who)
    best, tangent, good = near.copy(), start.copy(), np.zeros(len(who), dtype=bool)
    ends = np.stack([near, pick(track.other, who)])
    slopes = np.stack([start, pick(track.back, who)])
    longest = np.sqrt(((ends[1] - ends[0]) ** 2).sum(axis=0))
    live = np.arange(len(who))
    for turn in range(40):
        way = ends[1] - ends[0]
        length = np.sqrt((way**2).sum(axis=0))
        meet = _meeting(way[-1], length * slopes[0, -1], length * slopes[1, -1])
        top = _top(way[-1], length * slopes[0, -1], length * slopes[1, -1])
        share = np.clip(meet if turn % 2 else top, 0.02, 0.98)
        guess = between(ends[0], ends[1], slopes[0], slopes[1], share)
        across = way / np.maximum(length, 1e-300)
        level = (across * (ends[0] + share * way)).sum(axis=0)
        at = correct(part, guess, on, normal=across, level=level)
        good[live] = at.good
        side, here = (at.tangent[-1] <= 0).astype(np.int64), np.arange(len(live))
        ends[side, :, here], slopes[side, :, here] = at.state.T, at.tangent.T
        higher = (ends[1, -1] > ends[0, -1]).astype(np.int64)
        best[:, live], tangent[:, live] = ends[higher, :, here].T, slopes[higher, :, here].T
        way = ends[1] - ends[0]
        length = np.sqrt((way**2).sum(axis=0))
        meet = _meeting(way[-1], length * slopes[0, -1], length * slopes[1, -1])
        above = ends[0, -1] + meet * length * slopes[0, -1] - best[-1, live]
        keep = np.flatnonzero(at.good & (above > SETTINGS.top))
        if not len(keep):
            break
        # Each goes on by itself, whatever runs beside it.
        live, part, on = live[keep], part.take(keep), pick(on, keep)
        ends, slopes = pick(ends, keep), pick(slopes, keep)
    lost = ~good | (best[-1] < near[-1]) | (best[-1] > near[-1] + longest)
    track.state[:, who] = np.where(lost, near, best)
    track.other[:, who] = np.where(lost, start, tangent)
    track.mark(who, cases)


def _top(rise: Array, up: Array, down: Array) -> Array:
    """(B,) where, between 0 and 1, a cubic that rises by `rise`, with the slopes up > 0 at 0 and
    down < 0 at 1, is highest."""
    linear, square = 2.0 * (3.0 * rise - 2.0 * up - down), 3.0 * (up + down - 2.0 * rise)
    root = np.sqrt(np.maximum(linear**2 - 4.0 * square * up, 0.0))
    return np.asarray(2.0 * up / np.maximum(root - linear, 1e-300))


def _meeting(rise: Array, up: Array, down: Array) -> Array:
    """(B,) where, between 0 and 1, its tangents at 0 and 1 meet."""
    return np.asarray(np.clip((rise - down) / np.maximum(up - down, 1e-300), 0.0, 1.0))
