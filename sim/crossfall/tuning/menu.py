"""What can be put together: set-ups, and sets of parts that go on top of them.

A change that alters the support polygon, where other parts stand, or how the truck gives (track,
wheelbase, tyres, ride height, springs, stops, ends of links that guide an axle) is part of the
set-up, and set-ups are listed one by one. All other changes only add to the sums of mass and of
mass times place, so that for a given set-up everything asked is linear in them. Changes that touch
the same part add up only together: they form a cluster whose combinations are listed; each
combination is a column, to be chosen or not. Quantities are columns too: one for each number of
units.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import product

import numpy as np
from numpy.typing import NDArray

from crossfall.truck.errors import InputError, Problem
from crossfall.truck.schema import TruckSpec
from crossfall.tuning.apply import Touches, clash, touches
from crossfall.tuning.changes import Catalogue, Change, flat

MOST_SETUPS = 5000
MOST_COLUMNS = 1500
_PLAIN = (
    *("part.", "battery.", "grip.", "clearance.", "note", "currency"),
    *("chassis.final_drive", "chassis.driven", "chassis.steering_lock_deg"),
)
_ENDS = ("front.", "rear.", "both.")
_GIVES = ("suspension.", "tyre.stiffness_n_per_mm")

_PLACES = ("on", "mirror", "link", "chassis_end_mm", "axle_end_mm")

_Names = frozenset[str]
Picks = tuple[tuple[int, int], ...]  # (position of a change, how many), in file order


@dataclass(frozen=True)
class Menu:
    """setups: every combination of set-up changes that may go together, none first.

    columns: combinations of the other changes, cluster by cluster; at most one of a cluster is
    chosen. starts: (c,) index of each cluster's first column. barred: (n, n) pairs of changes
    that may not go together. hands: what each change touches.
    """

    catalogue: Catalogue
    setups: tuple[Picks, ...]
    columns: tuple[Picks, ...]
    starts: NDArray[np.intp]
    barred: NDArray[np.bool_]
    hands: tuple[Touches, ...]

    def cluster_of(self) -> NDArray[np.intp]:
        """(columns,) number of each column's cluster."""
        sizes = np.diff([*self.starts, len(self.columns)])
        return np.repeat(np.arange(len(self.starts)), sizes)


def menu(catalogue: Catalogue, guides: _Names = frozenset()) -> Menu:
    """guides: names of the parts that guide an axle, see `guiding`. Raises InputError where there
    are too many combinations to list."""
    changes = catalogue.changes
    hands = tuple(touches(c) for c in changes)
    barred = _barred(changes, hands)
    fixed = [i for i, c in enumerate(changes) if is_setup(c, guides)]
    free = [i for i, c in enumerate(changes) if not is_setup(c, guides)]
    setups = tuple(_setups(catalogue, fixed, barred))
    columns: list[Picks] = []
    starts: list[int] = []
    for cluster in _clusters(free, hands):
        starts.append(len(columns))
        columns += _states(catalogue, cluster, barred)
        if len(columns) > MOST_COLUMNS:
            names = ", ".join(f"'{changes[i].name}'" for i in cluster[:5])
            what = f"too many changes touch the same parts: {names}"
            allowed = f"at most {MOST_COLUMNS} combinations; put them into groups"
            raise InputError(Problem(catalogue.source.file, what, allowed))
    return Menu(catalogue, setups, tuple(columns), np.array(starts, dtype=np.intp), barred, hands)


def guiding(spec: TruckSpec) -> _Names:
    """The parts whose ends say how an axle moves, in small letters."""
    return frozenset(part.name.casefold() for part in spec.part if part.link is not None)


def is_setup(change: Change, guides: _Names = frozenset()) -> bool:
    """Whether a change belongs to the set-up: it does more than add to sums of mass and place."""
    keys = [*flat(change.set), *flat(change.by)]
    plain = all(k.casefold().startswith(_PLAIN) for k in keys)
    if change.widen is not None or change.lengthen is not None or not plain:
        return True
    placed = {n.casefold() for n in change.remove} | {m.part.casefold() for m in change.move}
    placed |= {s.part.casefold() for s in change.swap if any(k in _PLACES for k in s.new)}
    named = [k.casefold().split(".") for k in keys if k.casefold().startswith("part.")]
    placed |= {steps[1] for steps in named if any(step in _PLACES for step in steps[2:])}
    return bool(placed & guides) or any(a.link is not None for a in change.add)


def only_softens(change: Change) -> bool:
    """Whether a change alters nothing but how the truck gives: springs, stops, bars, tyre rate."""
    moved = (*change.move, *change.slide)
    parts = (change.remove, change.swap, change.add, moved, change.widen, change.lengthen)
    keys = [k.casefold() for k in (*flat(change.set), *flat(change.by))]
    return not any(parts) and all(
        k.startswith(_ENDS) and k.split(".", 1)[1].startswith(_GIVES) for k in keys
    )


def _barred(changes: Sequence[Change], hands: Sequence[Touches]) -> NDArray[np.bool_]:
    out = np.zeros((len(changes), len(changes)), dtype=bool)
    excluded = [{n.casefold() for n in c.excludes} for c in changes]
    for i, a in enumerate(changes):
        for j in range(i + 1, len(changes)):
            b = changes[j]
            grouped = a.group is not None and a.group == b.group
            named = b.name.casefold() in excluded[i] or a.name.casefold() in excluded[j]
            out[i, j] = out[j, i] = grouped or named or bool(clash(hands[i], hands[j]))
    return out


def _setups(
    catalogue: Catalogue, fixed: Sequence[int], barred: NDArray[np.bool_]
) -> Iterator[Picks]:
    """Combinations in which nothing is barred and what requires another set-up change has it."""
    among = set(fixed)
    needs = {
        i: {catalogue.position(n) for n in catalogue.changes[i].requires} & among for i in fixed
    }
    found: list[Picks] = [()]
    for i in fixed:
        levels = range(1, catalogue.changes[i].most + 1)
        found += [
            (*picks, (i, n))
            for picks in found
            if not any(barred[i, j] for j, _ in picks)
            for n in levels
        ]
        if len(found) > MOST_SETUPS:
            what = f"there are more than {MOST_SETUPS} combinations of set-up changes"
            allowed = "put track, wheelbase, tyre and spring changes into groups"
            raise InputError(Problem(catalogue.source.file, what, allowed))
    for picks in found:
        there = {j for j, _ in picks}
        if all(needs[i] <= there for i in there):
            yield picks


def _clusters(free: Sequence[int], hands: Sequence[Touches]) -> list[list[int]]:
    """Changes joined by the parts they touch, or by the battery section."""
    owner: dict[str, int] = {}
    label = {i: i for i in free}

    def root(i: int) -> int:
        while label[i] != i:
            i = label[i]
        return i

    for i in free:
        for name in touched_names(hands[i]):
            j = owner.setdefault(name, i)
            a, b = sorted((root(i), root(j)))
            label[b] = a
    groups: dict[int, list[int]] = {}
    for i in free:
        groups.setdefault(root(i), []).append(i)
    return list(groups.values())


def touched_names(hands: Touches) -> frozenset[str]:
    """Parts by name, and "battery." where the battery section is set (no part's name has dots)."""
    battery = any(k.startswith("battery.") for k in hands.keys)
    return hands.parts | ({"battery."} if battery else frozenset())


def _states(
    catalogue: Catalogue, cluster: Sequence[int], barred: NDArray[np.bool_]
) -> Iterator[Picks]:
    """Every combination of a cluster but the empty one, where nothing is barred."""
    levels = [range(catalogue.changes[i].most + 1) for i in cluster]
    count = 0
    for numbers in product(*levels):
        picks = tuple((i, n) for i, n in zip(cluster, numbers, strict=True) if n)
        if picks and not any(barred[i, j] for i, _ in picks for j, _ in picks):
            count += 1
            if count > MOST_COLUMNS + 1:
                return
            yield picks
