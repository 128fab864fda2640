"""The best set over all set-ups, and every set near it: exact for the closed form.

For a fixed angle everything is linear, so "is there a set that stands at theta?" is a
mixed-integer feasibility problem, and the tip angle could be found by halving. Quicker and just
as exact: maximise the least slack of the stability rows at the best angle known; a positive slack
yields a set that stands longer, whose own angle is the next to be beaten; none left proves the
best (Dinkelbach, Management Science 13 (1967) 492-498, for the ratio a / h). `loss` shifts the
angle asked of each heading, for what springs and tyres are known to cost there.

Bounds come from Lagrange multipliers of the stability and other rows: for any weights w >= 0 that
sum to 1 over the stability rows no choice has more slack than w.(constants) + sum over clusters of
the best column's w.(coefficients). They prune set-ups, and list near-best sets.

Source: W. Dinkelbach, Management Science 13 (1967) 492-498, for ratios; M. L. Fisher, Management
Science 27 (1981) 1-18, for bounds by multipliers (from memory).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from crossfall.statics import rigid
from crossfall.truck.model import Array
from crossfall.truck.quiet import silence
from crossfall.tuning.milp_model import GRAM, MilpModel

_SLACK = 1e-6  # g m; less than a ten-thousandth of a degree on anything of the class
CENT = 0.01
_LEAST_STEP = 1e-10  # rad; a set that is no better than this is no better
WIDE = 1e4  # g m; no truck of the class has that much slack
POOL = 40  # multipliers kept
LATEST = 16  # of them, those tried on all set-ups at once
FRONTIER = 60_000  # partial sets kept while listing


@dataclass(frozen=True)
class Found:
    """A set: set-up number and chosen columns (n,) 0 or 1; value: rad, money."""

    setup: int
    chosen: Array
    value: float
    money: float


@dataclass
class Search:
    """Models of all set-ups with the loss of each on every heading.

    headings: (H,) rad. losses: (setups, H) rad taken off the rigid angles. most_money: on top of
    any budget in the models. pool: multipliers met so far, to prune with. groups: the models
    stacked.
    """

    models: Sequence[MilpModel]
    headings: Array
    losses: Array
    most_money: float = 1e9
    pool: Pool = field(default_factory=lambda: Pool())
    groups: tuple[Group, ...] = ()

    def __post_init__(self) -> None:
        self.groups = self.groups or grouped(self.models, self.headings)

    def rows(self, k: int, angle: float) -> tuple[Array, Array, int]:
        """All rows of set-up k at an aim value: (r, n), (r,), and how many are stability."""
        model = self.models[k]
        thetas = np.clip(angle + self.losses[k], 0.0, np.radians(89.0))
        tip, level = model.stability(self.headings, thetas)
        left = self.most_money - model.price
        return (
            np.vstack([tip, -model.prices, model.rows]),
            np.concatenate([level, [left], model.least]),
            len(level),
        )

    def values(self, k: int, chosen: Array) -> Array:
        """(K,) rad, aim value of sets (K, n): the least over headings of angle less loss."""
        angles = self.models[k].angles(chosen, self.headings) - self.losses[k]
        least: Array = angles.min(axis=1)
        return least

    def survivors(self, angle: float) -> list[int]:
        """Set-ups that may hold a set of this aim value, the most promising first."""
        promise: list[tuple[float, int]] = []
        for group in self.groups:
            bounds = group.bounds(angle, self)
            promise += zip(-bounds, group.members, strict=True)
        affordable = (self.models[k].price <= self.most_money for _, k in promise)
        kept = [p for p, there in zip(promise, affordable, strict=True) if there]
        return [k for bound, k in sorted(kept) if -bound >= -_SLACK]


@dataclass(frozen=True)
class Group:
    """Models whose rows are alike, stacked: everything of (S, ...) for S set-ups.

    facing: which (heading, edge) give stability rows, the same for all.
    """

    members: tuple[int, ...]
    facing: tuple[NDArray[np.intp], NDArray[np.intp]]
    tilt: Array  # (S, k) n.d of each stability row
    frame: Array  # (S, k, 3) the weights of M, M_x, M_y in each of them
    sums: Array  # (S, 4)
    columns: Array  # (S, 4, n)
    money: Array  # (S, 1, n)
    price: Array  # (S,)
    rows: Array  # (S, r, n)
    least: Array  # (S, r)
    starts: NDArray[np.intp]

    def bounds(self, angle: float, search: Search) -> Array:
        """(S,) upper bounds on the least slack, by the latest multipliers; inf without any."""
        h, _ = self.facing
        losses = search.losses[list(self.members)]
        thetas = np.clip(angle + losses, 0.0, np.radians(89.0))
        up = np.tan(thetas[:, h]) * self.tilt[:, : len(h)]
        up = np.concatenate([up, np.zeros((len(up), 4))], axis=1)
        weights = np.concatenate([self.frame, -up[..., None]], axis=2) * GRAM
        rows = np.concatenate([weights @ self.columns, -self.money, self.rows], axis=1)
        level = np.einsum("ska,sa->sk", weights, self.sums)
        left = search.most_money - self.price[:, None]
        least = np.concatenate([level, left, self.least], axis=1)
        w = search.pool.fitting(least.shape[1], weights.shape[1])[-LATEST:]
        if not len(w):
            return np.full(len(self.members), np.inf)
        value = least @ w.T
        if len(self.starts):
            gains = np.maximum.reduceat(w @ rows, self.starts, axis=2)
            value = value + np.maximum(gains, 0.0).sum(axis=2)
        found: Array = value.min(axis=1)
        return found


def grouped(models: Sequence[MilpModel], headings: Array) -> tuple[Group, ...]:
    """Models stacked by the shape of their rows."""
    alike: dict[tuple[object, ...], list[int]] = {}
    for k, model in enumerate(models):
        facing = model.facing(headings)
        key = (model.rows.shape, facing[0].tobytes(), facing[1].tobytes())
        alike.setdefault(key, []).append(k)
    groups = []
    for members in alike.values():
        own = [models[k] for k in members]
        h, e = own[0].facing(headings)
        edge = np.concatenate([e, np.arange(4)])
        down = rigid.downhill(headings)
        groups.append(
            Group(
                members=tuple(members),
                facing=(h, e),
                tilt=np.array([(down @ m.normals.T)[h, e] for m in own]),
                frame=np.array([m.frame()[edge] for m in own]),
                sums=np.array([m.sums for m in own]),
                columns=np.array([m.columns for m in own]),
                money=np.array([m.prices for m in own])[:, None],
                price=np.array([m.price for m in own]),
                rows=np.array([m.rows for m in own]),
                least=np.array([m.least for m in own]),
                starts=own[0].starts,
            )
        )
    return tuple(groups)


@dataclass
class Pool:
    """Lagrange multipliers, by the number of stability rows they belong to.

    Any multipliers bound any set-up with as many stability rows, since those weights sum to 1;
    rows beyond the shorter of the two count as weighted with nothing.
    """

    weights: dict[int, Array] = field(default_factory=dict)

    def add(self, weights: Array, tips: int) -> None:
        old = self.weights.get(tips, np.zeros((0, len(weights))))
        width = max(old.shape[1], len(weights))
        both = np.zeros((len(old) + 1, width))
        both[:-1, : old.shape[1]], both[-1, : len(weights)] = old, weights
        self.weights[tips] = both[-POOL:]

    def fitting(self, count: int, tips: int) -> Array:
        """(p, count) the multipliers for a problem of `count` rows."""
        found = self.weights.get(tips, np.zeros((0, count)))
        out = np.zeros((len(found), count))
        shared = min(count, found.shape[1])
        out[:, :shared] = found[:, :shared]
        return out

    def bound(self, rows: Array, least: Array, tips: int, starts: NDArray[np.intp]) -> float:
        """An upper bound on the least slack; inf while no multipliers are known."""
        w = self.fitting(len(least), tips)
        if not len(w):
            return np.inf
        level = w @ least
        if len(starts):
            gains = np.maximum.reduceat(w @ rows, starts, axis=1)
            level = level + np.maximum(gains, 0.0).sum(axis=1)
        return float(level.min())


def best_angle(search: Search, floor: float = 0.0) -> Found | None:
    """The set with the largest aim value above `floor` (rad); None where there is none.

    At the best angle known the least slack of rows @ y + least is made as large as can be; above 0
    it gives a better set.
    """
    found: Found | None = None
    for k in search.survivors(floor):
        while True:
            at = found.value if found else floor
            rows, least, tips = search.rows(k, at)
            if search.pool.bound(rows, least, tips, search.models[k].starts) <= _SLACK:
                break
            if relaxed(search, k, rows, least, tips) <= _SLACK:
                break
            chosen = _most_slack(search, k, rows, least, tips)
            if chosen is None:
                break
            value = float(search.values(k, chosen[None])[0])
            if value <= at + _LEAST_STEP:
                break
            money = float(search.models[k].money(chosen[None])[0])
            found = Found(k, chosen, value, money)
    return found


def relaxed(search: Search, k: int, rows: Array, least: Array, tips: int) -> float:
    """Largest least slack (g m) with columns in parts, -inf where impossible; keeps its
    multipliers.

    rows: (r, n), least: (r,), of which the first `tips` are stability. Linear programming: max t
    with rows @ y + least >= t on those rows and >= 0 on the others, 0 <= y <= 1.
    """
    from scipy.optimize import linprog

    n, starts = rows.shape[1], search.models[k].starts
    share = (np.arange(len(least)) < tips).astype(float)
    each = np.zeros((len(starts), n + 1))
    cluster = np.repeat(np.arange(len(starts)), np.diff([*starts, n]))
    each[cluster, np.arange(n)] = 1.0
    left = np.vstack([np.hstack([-rows, share[:, None]]), each])
    right = np.concatenate([least, np.ones(len(starts))])
    cost = np.zeros(n + 1)
    cost[-1] = -1.0
    bounds = [(0.0, 1.0)] * n + [(-WIDE, WIDE)]
    answer = linprog(cost, A_ub=left, b_ub=right, bounds=bounds, method="highs")
    if answer.status != 0:
        return -np.inf
    weights = np.maximum(-answer.ineqlin.marginals[: len(least)], 0.0)
    total = weights[:tips].sum()
    if total > 0:
        search.pool.add(weights / total, tips)
    return -float(answer.fun)


def _problem(
    search: Search, k: int, rows: Array, least: Array, cost: Array, share: Array | None
) -> Array | None:
    """Solve over columns (0 or 1) and, with `share`, one free slack; (n,) chosen or None."""
    from scipy.optimize import Bounds, LinearConstraint, milp

    n, starts = rows.shape[1], search.models[k].starts
    if not n:
        return np.zeros(0)
    extra = 0 if share is None else 1
    each = np.zeros((len(starts), n + extra))
    each[np.repeat(np.arange(len(starts)), np.diff([*starts, n])), np.arange(n)] = 1.0
    asked = rows if share is None else np.hstack([rows, -share[:, None]])
    with silence():  # the solver prints notes of its own
        answer = milp(
            cost,
            integrality=np.concatenate([np.ones(n), np.zeros(extra)]),
            bounds=Bounds(
                np.concatenate([np.zeros(n), np.full(extra, -WIDE)]),
                np.concatenate([np.ones(n), np.full(extra, WIDE)]),
            ),
            constraints=[
                LinearConstraint(asked, -least, np.inf),
                LinearConstraint(each, -np.inf, 1.0),
            ],
            options={"mip_rel_gap": 0.0, "presolve": False},
        )
    return None if answer.x is None else np.asarray(np.round(answer.x[:n]))


def _most_slack(search: Search, k: int, rows: Array, least: Array, tips: int) -> Array | None:
    share = (np.arange(len(least)) < tips).astype(float)
    cost = np.zeros(rows.shape[1] + 1)
    cost[-1] = -1.0
    return _problem(search, k, rows, least, cost, share)


def least_money(search: Search, target: float) -> Found | None:
    """The cheapest set with an aim value of `target` (rad) or more; None where none reaches it."""
    found: Found | None = None
    for k in search.survivors(target):
        model = search.models[k]
        rows, least, tips = search.rows(k, target)
        if found is not None:  # only what is cheaper is of interest
            least[tips] = min(least[tips], found.money - model.price - CENT / 2)
        if search.pool.bound(rows, least, tips, model.starts) < -_SLACK:
            continue
        if relaxed(search, k, rows, least, tips) < -_SLACK:
            continue
        chosen = _problem(search, k, rows, least, model.prices, None)
        if chosen is None:
            continue
        value = float(search.values(k, chosen[None])[0])
        found = Found(k, chosen, value, float(model.money(chosen[None])[0]))
    return found


def near_best(search: Search, floor: float, most: float = np.inf) -> tuple[list[Found], bool]:
    """Every set with an aim value of `floor` (rad) or more, and whether none was left out.

    Stops looking once more than `most` are found.

    Sets grow cluster by cluster; a partial set is dropped as soon as no completion can keep to
    some row, or to a weighted sum of rows with the multipliers of the relaxation.
    """
    found: list[Found] = []
    complete = True
    for k in search.survivors(floor):
        model = search.models[k]
        rows, least, tips = search.rows(k, floor)
        if relaxed(search, k, rows, least, tips) < -_SLACK:
            continue
        own = search.pool.fitting(len(least), tips)[-24:]
        chosen, whole = _grown(model, rows, least, own)
        complete &= whole
        if len(chosen):
            values, money = search.values(k, chosen), model.money(chosen)
            keep = values >= floor - _LEAST_STEP
            found += [
                Found(k, c, float(v), float(m))
                for c, v, m in zip(chosen[keep], values[keep], money[keep], strict=True)
            ]
        if len(found) > most:
            complete = False
            break
    return _without_helpers(search, found), complete


def _grown(model: MilpModel, rows: Array, least: Array, weights: Array) -> tuple[Array, bool]:
    """(K, n) all choices with rows @ y + least >= 0, and whether the frontier never overflowed."""
    n = rows.shape[1]
    rows, least = np.vstack([rows, weights @ rows]), np.concatenate([least, weights @ least])
    ends = [*model.starts[1:], n] if len(model.starts) else []
    clusters = [np.arange(a, b) for a, b in zip(model.starts, ends, strict=True)]
    clusters.sort(key=lambda c: -float(np.abs(rows[:, c]).max()))
    best = [np.maximum(rows[:, c].max(axis=1), 0.0) for c in clusters]
    rest = np.cumsum([np.zeros(len(least)), *best[::-1]], axis=0)[::-1]
    state, picks, whole = least[None], np.zeros((1, 0), dtype=np.int32), True
    for i, cluster in enumerate(clusters):
        options = np.vstack([np.zeros(len(least)), rows[:, cluster].T])
        grown = state[:, None] + options
        alive = (grown + rest[i + 1] >= -_SLACK).all(axis=2)
        who, what = np.nonzero(alive)
        if len(who) > FRONTIER:
            promise = (grown + rest[i + 1])[who, what].min(axis=1)
            order = np.argsort(-promise, kind="stable")[:FRONTIER]
            who, what, whole = who[order], what[order], False
        state = grown[who, what]
        number = np.where(what > 0, cluster[np.maximum(what - 1, 0)], -1)
        picks = np.hstack([picks[who], number[:, None].astype(np.int32)])
    chosen = np.zeros((len(picks), n))
    row, column = np.nonzero(picks >= 0)
    chosen[row, picks[row, column]] = 1.0
    return chosen, whole


def _without_helpers(search: Search, found: list[Found]) -> list[Found]:
    """Each set once, the best first, then the cheapest, however its counters are set."""
    seen: set[tuple[int, bytes]] = set()
    once = []
    for f in sorted(found, key=lambda f: (-round(f.value, 9), f.money, sum(f.chosen), f.setup)):
        columns = len(f.chosen) - search.models[f.setup].helpers
        key = (f.setup, f.chosen[:columns].tobytes())
        if key not in seen:
            seen.add(key)
            once.append(f)
    return once
