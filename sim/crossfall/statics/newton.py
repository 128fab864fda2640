"""Newton's method for many trucks at once: balance together with one more condition per case.

Source: Newton's method as in C. T. Kelley, Solving Nonlinear Equations with Newton's Method (2003)
(from memory), J dx = -f, bordered by one condition a case as in `continuation`; tolerances were
chosen here by trial.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics.balance import Balance, Picture, balance, picture
from crossfall.statics.builds import Builds, Index, Ints, pick
from crossfall.statics.case import CORNER_GAPS
from crossfall.statics.tyres import AT_LIMIT, Patches
from crossfall.truck.model import Array, Flags


@dataclass(frozen=True)
class Accuracy:
    """Numerical settings of Newton's method; lengths over the wheelbase, loads over the weight.

    tolerance: of the last correction, which is still applied and quadratically convergent, so that
    points are good to 1e-10 and better; also of the loads. at_gap: the same, times this, where a
    gap is to be zero, because events are looked for once and kept. noise: of the loads, times the
    largest stiffness. iterations: corrections before it gives up.
    """

    tolerance: float = 1e-6
    at_gap: float = 1e-3
    noise: float = 1e-14
    iterations: int = 7


ACCURACY = Accuracy()


@dataclass(frozen=True)
class Cases:
    """B builds, each on its own heading, (B,) rad, followed up to its limit, (B,) rad."""

    builds: Builds
    heading: Array
    patches: Patches
    limit: Array

    def __len__(self) -> int:
        return len(self.heading)

    def take(self, index: Index) -> Cases:
        return Cases(
            self.builds.take(index),
            pick(self.heading, index),
            self.patches.take(index),
            pick(self.limit, index),
        )

    def balance(self, state: Array, on: Flags | None = None, gap: Ints | None = None) -> Balance:
        """Balance at state (n + 1, B): unknowns and theta; see `balance.balance` for the rest."""
        return balance(self.builds, self.heading, state[:-1], state[-1], on, self.patches, gap)

    def picture(self, state: Array, on: Flags | None = None) -> Picture:
        """The same, with where everything is."""
        return picture(self.builds, self.heading, state[:-1], state[-1], on, self.patches)

    def gap_count(self) -> int:
        return 2 * self.tyres() + CORNER_GAPS

    def tyres(self) -> int:
        return 2 * self.builds.points

    def branches(self, gaps: Array) -> Flags:
        """(g, B) the branches that gaps (g, B), found without any, are on."""
        on: Flags = gaps >= 0
        on[-self.tyres() :] = gaps[-self.tyres() :] >= AT_LIMIT
        return on

    def crossed(self, gaps: Array, on: Flags) -> Flags:
        """(g, B) whether gaps (g, B) have passed zero; a tyre that may slip may also stick."""
        out: Flags = (gaps >= 0) != on
        out[-self.tyres() :] &= on[-self.tyres() :]
        return out

    def stiffest(self) -> Array:
        """(B,) largest stiffness: what an error of position does to a load."""
        tyres = self.builds.tyre_rate.max(axis=(0, 1))
        return np.asarray(np.maximum(tyres, self.builds.stop_rate.max(axis=0)))


def solve(matrix: Array, right: Array) -> Array:
    """Solve systems (B, m, m) for several right-hand sides each, (B, m, k): answers (B, m, k).

    An exactly singular one (a truck in the air) gets a hair of stiffness, and so a huge answer.

    Raises nothing for that; shapes that do not fit raise numpy's ValueError.
    """
    try:
        return np.asarray(np.linalg.solve(matrix, right))
    except np.linalg.LinAlgError:
        hair = np.where(np.linalg.slogdet(matrix)[0] == 0, 1e-12, 0.0)
        stiffer = matrix + hair[:, None, None] * np.eye(matrix.shape[1])
        return np.asarray(np.linalg.solve(stiffer, right))


@dataclass(frozen=True)
class Corrected:
    """state: (n + 1, B). good: (B,) converged. effort: (B,) Newton corrections. gaps: (g, B).
    tangent: (n + 1, B) unit, along the path, oriented like the constraint's normal. history:
    where the tyres hold there, of `Patches`."""

    state: Array
    good: Flags
    effort: Ints
    gaps: Array
    tangent: Array
    history: Array


def correct(
    cases: Cases,
    state: Array,
    on: Flags | None,
    *,
    normal: Array,
    level: Array,
    gap: Ints | None = None,
) -> Corrected:
    """Newton's method on balance and one more condition per case.

    The condition is normal . state = level (a plane across the path), or the gap numbered `gap`
    being zero. The tangent solves the linearised balance with normal . tangent > 0.

    state, normal: (n + 1, B), theta in rad last; level: (B,). on: (g, B) branches, or None to let
    gaps decide; gap: (B,) int. Rows d load / dx and the normal (or d gap / dx), with -load and what
    the condition misses. Raises nothing: `Corrected.good` says what converged.
    """
    count = state.shape[1]
    tolerance = ACCURACY.tolerance * (1.0 if gap is None else ACCURACY.at_gap)
    noise = ACCURACY.noise * cases.stiffest()
    good, effort = np.zeros(count, dtype=bool), np.zeros(count, dtype=np.int64)
    found = [
        state.copy(),
        np.zeros_like(state),
        np.zeros((cases.gap_count(), count)),
        np.zeros_like(cases.patches.history),
    ]
    live, before = np.arange(count), np.full(count, np.inf)
    task = _Task(cases, state, on, normal, level, gap)
    for iteration in range(ACCURACY.iterations + 1):
        change, residual, *seen = _newton(task)
        size = np.abs(change).max(axis=0)
        done = (size < tolerance + noise) & (residual < ACCURACY.tolerance + noise)
        task.state = task.state + change
        if done.any():
            chosen = np.flatnonzero(done)
            good[live[chosen]] = True
            for kept, own in zip(found, (task.state, *seen), strict=True):
                kept[..., live[chosen]] = pick(own, chosen)
        keep = ~done & (size < 1.0)
        if iteration > 2:
            keep &= size <= 0.3 * before
        if iteration == ACCURACY.iterations or not keep.any():
            break
        if not keep.all():
            chosen = np.flatnonzero(keep)
            live, size, noise = live[chosen], size[chosen], noise[chosen]
            task = task.take(chosen)
        effort[live] += 1
        before = size
    out, tangent, gaps, history = found
    tangent /= np.maximum(np.sqrt((tangent**2).sum(axis=0)), 1e-300)
    tangent *= np.where((tangent * normal).sum(axis=0) < 0, -1.0, 1.0)
    return Corrected(out, good, effort, gaps, tangent, history)


@dataclass
class _Task:
    """What `correct` is asked, for those that it has not settled yet."""

    cases: Cases
    state: Array
    on: Flags | None
    normal: Array
    level: Array
    gap: Ints | None

    def __len__(self) -> int:
        return len(self.level)

    def take(self, index: Index) -> _Task:
        return _Task(
            self.cases.take(index),
            pick(self.state, index),
            None if self.on is None else pick(self.on, index),
            pick(self.normal, index),
            pick(self.level, index),
            None if self.gap is None else pick(self.gap, index),
        )


def _newton(task: _Task) -> tuple[Array, ...]:
    """One correction: change (n + 1, B), largest residual (B,), and for `Corrected` the path's
    direction, the gaps and the history."""
    now = task.state
    at = task.cases.balance(now, task.on, task.gap)
    if task.gap is None:
        at.rates[:, -1] = task.normal.T
        miss = task.level - (task.normal * now).sum(axis=0)
    else:
        miss = -at.gaps[task.gap, np.arange(len(task))]
    right = np.zeros((len(task), len(now), 2))
    np.negative(at.load.T, out=right[:, :-1, 0])
    right[:, -1, 0], right[:, -1, 1] = miss, 1.0
    change, path = solve(at.rates, right).transpose(2, 1, 0)
    residual = np.maximum(np.abs(at.load).max(axis=0), np.abs(miss))
    return change, residual, path, at.gaps, at.history
