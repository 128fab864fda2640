"""Every change alone: what it buys in each direction, and what it costs elsewhere."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np

from crossfall.truck.build import Loaded
from crossfall.truck.model import Array, Truck
from crossfall.truck.problems import InputError
from crossfall.truck.schema import TruckSpec
from crossfall.tuning.apply import apply, built
from crossfall.tuning.changes import Catalogue, Change, requirements
from crossfall.tuning.directions import (
    DIRECTIONS,
    NUMERICAL,
    ROUND,
    SURE,
    Angles,
    Direction,
    Doubt,
    angles,
    difference_sd,
    doubt,
)
from crossfall.tuning.effects import Effects, effects
from crossfall.tuning.limits import Breach, Limits, breaches

LEAST_MASS = 3e-3  # kg; below it "per 100 g" means nothing
WORTH_SAYING = np.radians(0.05)  # what no tuner would notice needs no words

Key = frozenset[tuple[int, int]]  # a set of changes: position and how many
_WORDS = {"side": "the side slope", "climb": "the climb", "descent": "the descent"}


@dataclass(frozen=True)
class Outcome:
    """One change at its full quantity, on top of what it requires.

    change: position in the catalogue; many: units. on_top_of: positions of what it requires.
    price: all units of this change alone. gain, gain_sd: (4,) rad for DIRECTIONS, and standard
    uncertainty. per_100g: (4,) rad per 100 g added or taken away, nan without a change of mass.
    per_money: (4,) rad per unit of money, nan for a free change. before: of the truck with what
    is required. side: Effects, the difference. place: from 1, shared by ties. words: what a tuner
    should know, or "". breaches: limits of the class that the truck breaks with it.
    """

    change: int
    many: int
    on_top_of: tuple[int, ...]
    price: float
    angle: Array
    gain: Array
    gain_sd: Array
    per_100g: Array
    per_money: Array
    side: Effects
    place: int
    words: str
    breaches: tuple[Breach, ...] = ()


@dataclass(frozen=True)
class Ranking:
    """All changes, the best for the aim first. impossible: position and reason."""

    aim: Direction
    now: Array  # (4,) rad for DIRECTIONS, the truck as it is
    effects: Effects
    outcomes: tuple[Outcome, ...]
    impossible: tuple[tuple[int, str], ...]


@dataclass(frozen=True)
class _Build:
    spec: TruckSpec
    truck: Truck
    fresh: frozenset[str]


def what_if(
    loaded: Loaded,
    catalogue: Catalogue,
    aim: Direction = "side",
    limits: Limits | None = None,
) -> Ranking:
    """Every change of the catalogue at its full quantity, ranked by what it does for the aim.

    limits: a class's, checked on every truck that comes out.

    All builds are answered in one batch, with the uniform friction closure. The catalogue must
    fit the truck (`apply.check_fit`). Raises InputError where the truck as it is cannot be built.
    """
    builds: dict[Key, _Build] = {}
    nothing = _add(builds, loaded, catalogue, {})
    pairs: list[tuple[int, Key, Key]] = []
    impossible = []
    for i, change in enumerate(catalogue.changes):
        first = dict.fromkeys(requirements(catalogue, change.name), 1)
        try:
            before = _add(builds, loaded, catalogue, first)
            after = _add(builds, loaded, catalogue, first | {i: change.most})
        except InputError as error:
            impossible.append((i, error.problems[0].what))
        else:
            pairs.append((i, before, after))
    keys = {key: k for k, key in enumerate(builds)}
    found = angles([b.truck for b in builds.values()])
    weighed = _Weighed(builds, keys, found, loaded)
    outcomes = [_outcome(catalogue, weighed, *pair, limits) for pair in pairs]
    return Ranking(
        aim,
        found.by_direction[keys[nothing]],
        effects(loaded.truck, loaded.spec),
        _ranked(outcomes, pairs, weighed, DIRECTIONS.index(aim)),
        tuple(impossible),
    )


class _Weighed:
    """The builds with their angles; doubts and effects worked out when first asked for."""

    def __init__(
        self,
        builds: Mapping[Key, _Build],
        keys: Mapping[Key, int],
        found: Angles,
        loaded: Loaded,
    ) -> None:
        self.builds, self.keys, self.found = builds, keys, found
        self.measured_on = loaded.spec.battery
        self._doubts: dict[tuple[int, int], Doubt] = {}
        self._effects: dict[int, Effects] = {}

    def angle(self, key: Key) -> Array:
        row: Array = self.found.by_direction[self.keys[key]]
        return row

    def doubt(self, key: Key, direction: int) -> Doubt:
        k, heading = self.keys[key], int(self.found.governing[self.keys[key], direction])
        if (k, heading) not in self._doubts:
            build = self.builds[key]
            self._doubts[k, heading] = doubt(build.truck, float(ROUND[heading]), build.fresh)
        return self._doubts[k, heading]

    def effects(self, key: Key) -> Effects:
        k = self.keys[key]
        if k not in self._effects:
            build = self.builds[key]
            self._effects[k] = effects(build.truck, build.spec, self.measured_on)
        return self._effects[k]


def _add(
    builds: dict[Key, _Build],
    loaded: Loaded,
    catalogue: Catalogue,
    chosen: dict[int, int],
) -> Key:
    key = frozenset(chosen.items())
    if key not in builds:
        spec = apply(loaded.spec, catalogue, chosen)
        truck = built(loaded, spec) if chosen else loaded.truck
        builds[key] = _Build(spec, truck, fresh_parts([catalogue.changes[i] for i in chosen]))
    return key


def fresh_parts(changes: list[Change]) -> frozenset[str]:
    """Names of parts that are other things than before: swapped in, or of another material."""
    names = {s.new.get("name", s.part).casefold() for c in changes for s in c.swap}
    for change in changes:
        for key in change.set:
            steps = key.casefold().split(".")
            if steps[0] == "part" and steps[-1] not in ("at_mm", "turn_deg"):
                names.add(steps[1])
    return frozenset(names)


def _outcome(
    catalogue: Catalogue,
    weighed: _Weighed,
    i: int,
    before: Key,
    after: Key,
    limits: Limits | None,
) -> Outcome:
    change, build = catalogue.changes[i], weighed.builds[after]
    gain = weighed.angle(after) - weighed.angle(before)
    sd = np.array(
        [difference_sd(weighed.doubt(after, d), weighed.doubt(before, d)) for d in range(4)]
    )
    side = weighed.effects(after).minus(weighed.effects(before))
    price = change.price * change.most
    grams = abs(side.mass) / 0.1 if abs(side.mass) > LEAST_MASS else np.nan
    return Outcome(
        change=i,
        many=change.most,
        on_top_of=tuple(sorted(j for j, _ in before)),
        price=price,
        angle=weighed.angle(after),
        gain=gain,
        gain_sd=sd,
        per_100g=gain / grams,
        per_money=gain / price if price > 0 else np.full(4, np.nan),
        side=side,
        place=0,
        words=_words(gain, np.maximum(SURE * sd + NUMERICAL, WORTH_SAYING)),
        breaches=() if limits is None else breaches(limits, build.truck, build.spec),
    )


def _words(gain: Array, least: Array) -> str:
    """A sentence where a change helps one direction and hurts another, beyond doubt."""
    named = list(zip(_WORDS.values(), gain[:3], least[:3], strict=True))
    up = [f"{w} {np.degrees(g):+.2f}°" for w, g, sure in named if g > sure]
    down = [f"{w} {np.degrees(g):+.2f}°" for w, g, sure in named if g < -sure]
    if not up or not down:
        return ""
    return f"helps {' and '.join(up)}; costs {' and '.join(down)}"


def _ranked(
    outcomes: list[Outcome],
    pairs: list[tuple[int, Key, Key]],
    weighed: _Weighed,
    aim: int,
) -> tuple[Outcome, ...]:
    """The best first; a change that the leader of its place does not surely beat shares it."""
    afters = {i: (before, after) for i, before, after in pairs}
    unknown = [np.isnan(o.gain[aim]) for o in outcomes]
    order = sorted(
        range(len(outcomes)), key=lambda k: (unknown[k], -outcomes[k].gain[aim], outcomes[k].change)
    )
    ranked: list[Outcome] = []
    leader = None
    for count, k in enumerate(order, start=1):
        own = outcomes[k]
        if leader is None or not _tied(leader, own, afters, weighed, aim):
            leader = replace(own, place=count)
            ranked.append(leader)
        else:
            ranked.append(replace(own, place=leader.place))
    return tuple(ranked)


def _tied(
    a: Outcome,
    b: Outcome,
    builds: Mapping[int, tuple[Key, Key]],
    weighed: _Weighed,
    aim: int,
) -> bool:
    """Whether two gains are closer than the uncertainty of their difference."""
    one, other = (_gain_doubt(o, builds, weighed, aim) for o in (a, b))
    sd = difference_sd(one, other)
    return bool(abs(a.gain[aim] - b.gain[aim]) < SURE * sd + NUMERICAL)


def _gain_doubt(
    outcome: Outcome,
    builds: Mapping[int, tuple[Key, Key]],
    weighed: _Weighed,
    aim: int,
) -> Doubt:
    before, after = (weighed.doubt(key, aim) for key in builds[outcome.change])
    nothing = np.zeros(4)
    names = before.keys() | after.keys()
    return {n: after.get(n, nothing) - before.get(n, nothing) for n in names}
