"""Newton's method for many trucks at once: balance together with one more condition per case.

All cases are stacked, and evaluated in blocks that stay in the processor's cache.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from crossfall.statics.balance import Balance, balance, gap_slopes
from crossfall.statics.builds import Builds, Flags, Index, Ints, pick
from crossfall.statics.tyres import Patches
from crossfall.truck.model import Array

np.empty(1 << 22)  # once freed, glibc keeps what smaller arrays give back instead of unmapping it


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
        return 2 * int(self.builds.disc_mass.shape[1]) + 12

    def stiffest(self) -> Array:
        """(B,) largest stiffness: what an error of position does to a load."""
        tyres = self.builds.tyre_rate.max(axis=(0, 1, 2))
        return np.maximum(tyres, self.builds.stop_rate.max(axis=(0, 1)))


def solve(matrix: Array, *columns: Array) -> tuple[Array, ...]:
    """Solve (m, m, B) systems for several (m, B) right-hand sides.

    An exactly singular one (a truck in the air) gets a hair of stiffness, and so a huge answer.
    """
    right = np.stack([c.T for c in columns], axis=-1)
    matrices = np.ascontiguousarray(matrix.transpose(2, 0, 1))
    try:
        answer = np.linalg.solve(matrices, right)
    except np.linalg.LinAlgError:
        answer = np.linalg.solve(matrices + 1e-12 * np.eye(len(matrix)), right)
    return tuple(np.asarray(answer[..., i].T) for i in range(len(columns)))


def in_blocks(work: Callable[[slice], tuple[Array, ...]], count: int) -> tuple[Array, ...]:
    """Do the work on a block of cases at a time, which stays in the cache, and join the answers."""
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
    tangent: (n + 1, B) unit, along the path, oriented like the constraint's normal. seen: where the
    tyres hold there, as `Patches.history`, and (B,) whether one slips."""

    state: Array
    good: Flags
    effort: Ints
    gaps: Array
    tangent: Array
    seen: tuple[Array, ...]


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
    """
    count = state.shape[1]
    out_state, tangent = state.copy(), np.zeros_like(state)
    gaps = np.zeros((cases.gap_count(), count))
    tolerance = ACCURACY.tolerance * (1.0 if gap is None else ACCURACY.at_gap)
    noise = ACCURACY.noise * cases.stiffest()
    good, effort = np.zeros(count, dtype=bool), np.zeros(count, dtype=np.int64)
    seen = cases.patches.history.copy(), np.zeros(count, dtype=bool)
    live, part, before = np.arange(count), cases, np.full(count, np.inf)
    for iteration in range(ACCURACY.iterations + 1):
        now = out_state[:, live]
        rows = normal[:, live], level[live], None if gap is None else gap[live]
        change, path, gap_now, residual, *patches = _newton(
            part, now, None if on is None else on[:, live], rows
        )
        size = np.abs(change).max(axis=0)
        done = (size < tolerance + noise[live]) & (residual < ACCURACY.tolerance + noise[live])
        there = live[done]
        good[there] = True
        gaps[:, there], tangent[:, there] = gap_now[:, done], path[:, done]
        for kept, own in zip(seen, patches, strict=True):
            kept[..., there] = own[..., done]
        out_state[:, there] = now[:, done] + change[:, done]
        hopeless = (iteration > 2) & (size > 0.3 * before[live])
        before[live] = size
        keep = ~done & (size < 1.0) & ~hopeless
        if not keep.any() or iteration == ACCURACY.iterations:
            break
        live = live[keep]
        out_state[:, live] = now[:, keep] + change[:, keep]
        effort[live] += 1
        part = part if keep.all() else part.take(keep)
    tangent /= np.maximum(np.sqrt((tangent**2).sum(axis=0)), 1e-300)
    tangent *= np.where((tangent * normal).sum(axis=0) < 0, -1.0, 1.0)
    return Corrected(out_state, good, effort, gaps, tangent, seen)


def _newton(
    cases: Cases, state: Array, on: Flags | None, rows: tuple[Array, Array, Ints | None]
) -> tuple[Array, ...]:
    """One correction: change (n + 1, B), tangent (n + 1, B), gaps (g, B), largest residual (B,),
    and what `Corrected.seen` holds."""
    normal, level, gap = rows

    def work(cut: slice) -> tuple[Array, ...]:
        now, part = state[:, cut], cases.take(cut)
        at = part.balance(now, None if on is None else on[:, cut])
        matrix = at.rates
        if gap is None:
            matrix[-1] = normal[:, cut]
            miss = level[cut] - (normal[:, cut] * now).sum(axis=0)
        else:
            matrix[-1] = gap_slopes(part.builds, at, gap[cut])
            miss = -at.gaps[gap[cut], np.arange(now.shape[1])]
        unit = np.zeros_like(now)
        unit[-1] = 1.0
        change, path = solve(matrix, np.concatenate([-at.load, miss[None]]), unit)
        residual = np.maximum(np.abs(at.load).max(axis=0), np.abs(miss))
        return change, path, at.gaps, residual, at.history, at.slips

    return in_blocks(work, len(cases))
