"""Newton's method for many trucks at once: balance together with one more condition per case.

All cases are stacked, and evaluated in blocks that stay in the processor's cache.

Source: Newton's method as in C. T. Kelley, Solving Nonlinear Equations with Newton's Method (2003)
(from memory), J dx = -f, bordered by one condition a case as in `continuation`; tolerances were
chosen here by trial.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from crossfall.statics.balance import Balance, balance, gap_slopes
from crossfall.statics.builds import Builds, Index, Ints, pick
from crossfall.statics.tyres import AT_LIMIT, Patches
from crossfall.truck.model import Array, Flags

np.empty(
    1 << 21
)  # once freed, glibc keeps what smaller arrays give back; of 32 MB it takes no notice


@dataclass(frozen=True)
class Accuracy:
    """Numerical settings of Newton's method; lengths over the wheelbase, loads over the weight.

    tolerance: of the last correction, which is still applied and quadratically convergent, so that
    points are good to 1e-10 and better; also of the loads. at_gap: the same, times this, where a
    gap is to be zero, because events are looked for once and kept. noise: of the loads, times the
    largest stiffness. iterations: corrections before it gives up. block: cases evaluated together,
    enough to keep numpy busy and few enough for the cache.
    """

    tolerance: float = 1e-6
    at_gap: float = 1e-3
    noise: float = 1e-14
    iterations: int = 7
    block: int = 256


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

    def balance(self, state: Array, on: Flags | None = None) -> Balance:
        """Balance at state (n + 1, B): unknowns and theta; see `balance.balance` for `on`."""
        return balance(self.builds, self.heading, state[:-1], state[-1], on, self.patches)

    def gap_count(self) -> int:
        return 2 * self.tyres() + self.builds.corner_gaps

    def tyres(self) -> int:
        return int(2 * self.builds.disc_mass.shape[1])

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
        tyres = self.builds.tyre_rate.max(axis=(0, 1, 2))
        return np.asarray(np.maximum(tyres, self.builds.stop_rate.max(axis=(0, 1))))


def solve(matrix: Array, right: Array) -> Array:
    """Solve (m, m, B) systems for several right-hand sides each, (k, m, B).

    An exactly singular one (a truck in the air) gets a hair of stiffness, and so a huge answer.

    Raises nothing for that; shapes that do not fit raise numpy's ValueError.
    """
    matrices = np.ascontiguousarray(matrix.transpose(2, 0, 1))
    columns = right.transpose(2, 1, 0)
    try:
        answer = np.linalg.solve(matrices, columns)
    except np.linalg.LinAlgError:
        matrices[np.linalg.slogdet(matrices)[0] == 0] += 1e-12 * np.eye(len(matrix))
        answer = np.linalg.solve(matrices, columns)
    return np.ascontiguousarray(answer.transpose(2, 1, 0))


def in_blocks(work: Callable[[slice], tuple[Array, ...]], count: int) -> tuple[Array, ...]:
    """Do the work on a block of cases at a time, which stays in the cache, and join the answers.

    count: cases; work gives arrays (..., cases). Raises what the work raises.
    """
    cuts = range(0, max(count, 1), ACCURACY.block)
    parts = [work(slice(cut, cut + ACCURACY.block)) for cut in cuts]
    return (
        parts[0]
        if len(parts) == 1
        else tuple(np.concatenate(p, axis=-1) for p in zip(*parts, strict=True))
    )


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

    def work(part: _Task) -> tuple[Array, ...]:
        now, cases = part.state, part.cases
        at = cases.balance(now, part.on)
        matrix = at.rates
        if part.gap is None:
            matrix[-1] = part.normal
            miss = part.level - (part.normal * now).sum(axis=0)
        else:
            matrix[-1] = gap_slopes(cases.builds, at, part.gap)
            miss = -at.gaps[part.gap, np.arange(len(part))]
        right = np.zeros((2, *now.shape))
        np.negative(at.load, out=right[0, :-1])
        right[0, -1] = miss
        right[1, -1] = 1.0
        change, path = solve(matrix, right)
        residual = np.maximum(np.abs(at.load).max(axis=0), np.abs(miss))
        return change, residual, path, at.gaps, at.history

    if len(task) <= ACCURACY.block:
        return work(task)
    return in_blocks(lambda cut: work(task.take(cut)), len(task))
