"""Where a truck goes that has lost its balance: it falls over, or stands again elsewhere.

Springs that go slack let the body jump up to the droop stop, and it may stand there as firmly as
before. So a loss of stability is a tip only if the truck does not settle.

Source: the steps, C. T. Kelley and D. E. Keyes, SIAM Journal on Numerical Analysis 35 (1998)
508-523 (abstract read 2026): pseudo-transient continuation, implicit Euler steps (D + K) dx = Q
with D let go as it comes to rest; how D is chosen, and when a truck has fallen, is derived here.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from crossfall.statics.balance import Picture
from crossfall.statics.builds import Ints
from crossfall.statics.newton import Cases, solve
from crossfall.truck.model import Array, Flags


@dataclass(frozen=True)
class Settling:
    """Numerical settings of the fall; lengths over the wheelbase, angles in rad.

    nudge: first displacement in the direction of the loss. stride: largest movement in one step.
    fallen: how far the weight has passed outside all four wheels when the truck is over; some
    10 deg of body roll, from which none comes back. past: how far a cut step passes a meeting.
    away: how far one that rolls has gone. still: movement left when it has settled. swing: a truck
    that turns further than this on the way has not stood its ground. stiffest: the drag beyond
    which nothing moves. steps: a limit never met in practice.
    """

    nudge: float = 0.005
    stride: float = 0.03
    fallen: float = 0.05
    past: float = 1e-5
    away: float = 0.6
    still: float = 1e-8
    swing: float = 0.1
    stiffest: float = 1e12
    steps: int = 600


SETTLING = Settling()


def outside(at: Picture, height: Array) -> Array:
    """(B,) how far the line of the weight passes outside the four wheels on the table, over the
    wheelbase; negative inside.

    height: (B,) of the chassis' origin over the table. The line meets the table at r - g (r_z /
    g_z), r the CG and g gravity; what counts is its greatest distance outside an edge between
    neighbouring patches (plane geometry).
    """
    gravity = at.gravity
    foot = at.cg - gravity * ((at.cg[2] + height) / gravity[2])
    p = at.point
    around = (p[:, 0, 0], p[:, 1, 0], p[:, 1, -1], p[:, 0, -1], p[:, 0, 0])  # left seen from above
    beyond = []
    for a, b in pairwise(around):
        edge = b - a
        away = edge[1] * (foot[0] - a[0]) - edge[0] * (foot[1] - a[1])
        beyond.append(away / np.hypot(edge[0], edge[1]))
    return np.asarray(np.max(beyond, axis=0))


def settle(
    cases: Cases, state: Array, direction: Array, beyond: Array
) -> tuple[Array, Flags, Flags]:
    """Overdamped motion from state (n + 1, B), nudged along direction (n + 1, B), theta (B,) rad
    beyond.

    A little beyond the loss there is nothing to fall back to.

    Implicit Euler steps (drag + K) dx = Q. The drag (inverse of the step length) is kept a little
    above the growth rate of the motion, -dx.K.dx / dx.dx, where it runs away, and is lowered where
    it comes to rest. A step that the forces have turned against by its end is cut where it first
    meets a stop, a spring's end or a tyre's lift, or else, like one along which they do no work,
    taken again with more drag. Returns the states, (B,) whether each stands again, and (B,) whether
    it goes away on its wheels rather than over; the history in `cases` moves on.

    Raises nothing: who neither rests nor falls in 600 steps does not stand.
    """
    how = SETTLING
    count = len(cases)
    out = state.copy()
    stands: Flags = np.zeros(count, dtype=bool)
    ends: Flags = np.zeros(count, dtype=bool)
    rolls: Flags = np.asarray(cases.builds.open.any(axis=0))
    move = direction[:-1] / np.maximum(np.sqrt((direction[:-1] ** 2).sum(axis=0)), 1e-12)
    out[:-1] += how.nudge * move
    out[-1] += beyond
    load, stiffness, gaps, *_ = _look(cases, out)
    drag, reach = _drag(np.full(count, 0.1), move, stiffness), np.ones(count)
    live, part, laws = np.arange(count), cases, -cases.tyres()
    for _ in range(how.steps):
        move, length = _step(stiffness, drag, load, reach, how.stride)
        trial = out[:, live]
        trial[:-1] += move
        new_load, new_stiffness, new_gaps, out_by, seen = _look(part, trial)
        work, after = (load * move).sum(axis=0), (new_load * move).sum(axis=0)
        still = (length < how.still) & (drag < 1e-2)
        against = after < -0.5 * work
        good = ((work >= 0) & (~against | (reach < 1))) | still
        if still.any():
            sign = np.linalg.slogdet(new_stiffness[still])[0]
            swung = _swung(out, state, live[still])
            stands[live[still]] = (sign > 0) & ~swung
            ends[live[still]] = rolls[live[still]] & swung
        keep = ~still & ~(good & (out_by > how.fallen))
        out[:, live[good]] = trial[:, good]
        cases.patches.history[:, live[good]] = seen[:, good]
        ends[live] |= keep & rolls[live] & (np.hypot(*out[:2, live]) > how.away)
        keep &= ~ends[live]
        met = _first_meeting(gaps[:laws], new_gaps[:laws])
        cut = ~good & (work >= 0) & (met < 1)
        load, gaps = np.where(good, new_load, load), np.where(good, new_gaps, gaps)
        stiffness = np.where(good[:, None, None], new_stiffness, stiffness)
        easier = np.where(reach < 1, 3.0 * drag, _drag(drag, move, stiffness))
        drag = np.where(good, easier, np.where(cut, drag, np.minimum(drag * 4.0, how.stiffest)))
        reach = np.where(cut, np.minimum(met + how.past / length, 1 - 1e-9), 1.0)
        if not keep.any():
            break
        live, drag, reach = live[keep], drag[keep], reach[keep]
        part = cases.take(live)
        load, gaps, stiffness = load[:, keep], gaps[:, keep], stiffness[keep]
    return out, stands & ~ends, ends


def _look(cases: Cases, state: Array) -> tuple[Array, ...]:
    """Loads (n, B), stiffness (B, n, n), gaps (g, B), how far `outside` (B,), and the patches."""
    at = cases.picture(state)
    return at.load, at.stiffness, at.gaps, outside(at, state[2]), at.history


def _swung(out: Array, state: Array, who: Ints) -> Flags:
    """Whether a truck has turned to another heading."""
    return np.asarray(np.abs(out[3, who] - state[3, who]) > SETTLING.swing)


def _step(
    stiffness: Array, drag: Array, load: Array, reach: Array, stride: float
) -> tuple[Array, Array]:
    """Implicit Euler movement (n, B), held to the largest stride, and its full length (B,)."""
    braked = stiffness + drag[:, None, None] * np.eye(len(load))
    move = solve(braked, load.T[:, :, None])[:, :, 0].T
    length = np.abs(move).max(axis=0)
    return move * reach * np.minimum(1.0, stride / length.clip(stride)), length


def _first_meeting(before: Array, after: Array) -> Array:
    """(B,) fraction of the step at which the first gap (g, B) changes sign; 1 where none does."""
    crossed = (before >= 0) != (after >= 0)
    share = before / np.where(crossed, before - after, 1.0)
    return np.asarray(np.where(crossed, share, 1.0).min(axis=0))


def _drag(drag: Array, move: Array, stiffness: Array) -> Array:
    growth = -np.einsum("ib,bij,jb->b", move, stiffness, move)
    growth /= np.maximum((move**2).sum(axis=0), 1e-300)
    return np.where(growth > 0, 1.5 * growth, np.maximum(0.2 * drag, 1e-6))
