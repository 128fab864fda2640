"""Every change alone: what it buys in each direction, and what it costs elsewhere."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from crossfall.answers.conditions import Hold, choose_grip
from crossfall.answers.tips import tip_pairs
from crossfall.truck.build import Loaded
from crossfall.truck.errors import InputError
from crossfall.truck.model import Array, Flags, Grip, Truck
from crossfall.truck.schema import TruckSpec
from crossfall.tuning.apply import apply, built
from crossfall.tuning.changes import SLOT, Catalogue, Change, requirements
from crossfall.tuning.corners import WORTH_SAYING, Corner, at_corners, corners, turns
from crossfall.tuning.directions import (
    DIRECTIONS,
    NUMERICAL,
    SURE,
    AngleErrors,
    Direction,
    DirectionAngles,
    angle_errors,
    angles,
    difference_sd,
)
from crossfall.tuning.effects import Effects, effects
from crossfall.tuning.limits import Breach, ClassLimits, breaches
from crossfall.tuning.whatif_words import outcome_words

LEAST_MASS = 3e-3  # kg; below it "per 100 g" means nothing

_Key = frozenset[tuple[int, int]]  # a set of changes: position and how many


@dataclass(frozen=True)
class ChangeOutcome:
    """One change at its full quantity, on top of what it requires. Arrays are (4,) for DIRECTIONS.

    change: position in the catalogue; many: units. on_top_of: positions of what it requires.
    price: all units of this change alone. heading: rad, which decides with the change; angle: rad,
    there; slides: whether it then slides away first. was_heading, was, slid: the same without it,
    with what is required. gain: rad, angle less was; against a rail for both where only one slides.
    gain_sd: rad, standard uncertainty from masses and places. per_100g: rad per 100 g added or
    taken away, nan without a change of mass. per_money: rad per unit of money, nan for a free
    change. corners: (c, 4) rad, the gain at the ranking's corners, nan where not worked out. turns:
    whether its sign is another one at some corner. side: Effects, the difference. place: from 1,
    shared by ties; places: (c,) at the corners. overtaken: (corner, change) of those that come
    before it there and surely after it here. words: what a tuner should know, or "". breaches:
    limits of the class that the truck breaks with it.
    """

    change: int
    many: int
    on_top_of: tuple[int, ...]
    price: float
    heading: Array
    angle: Array
    slides: Flags
    was_heading: Array
    was: Array
    slid: Flags
    gain: Array
    gain_sd: Array
    per_100g: Array
    per_money: Array
    corners: Array
    turns: Flags
    side: Effects
    place: int = 0
    places: tuple[int, ...] = ()
    overtaken: tuple[tuple[int, int], ...] = ()
    words: str = ""
    breaches: tuple[Breach, ...] = ()


@dataclass(frozen=True)
class Ranking:
    """All changes, the best for the aim first.

    now: (4,) rad for DIRECTIONS, the truck as it is, on now_heading (4,) rad; now_slide: (4,) rad,
    where it slides or rolls away there; now_slides: whether it does so first, so that `now` is the
    angle against a rail. impossible: position and reason.
    """

    aim: Direction
    grip: Grip
    hold: Hold
    now: Array
    now_heading: Array
    now_slide: Array
    now_slides: Flags
    corners: tuple[Corner, ...]
    effects: Effects
    outcomes: tuple[ChangeOutcome, ...]
    impossible: tuple[tuple[int, str], ...]


@dataclass(frozen=True)
class _Build:
    spec: TruckSpec
    truck: Truck
    fresh: frozenset[str]
    grip: Grip


def rank_changes(
    loaded: Loaded,
    catalogue: Catalogue,
    aim: Direction = "side",
    limits: ClassLimits | None = None,
    *,
    surface: str | None = None,
    hold: Hold = "brakes",
) -> Ranking:
    """Every change of the catalogue at its full quantity, ranked by what it does for the aim. rad.

    A slot is looked at in the place that is best for the aim. limits: a class's, checked on every
    truck that comes out. surface: by name, the truck's first if not given, as it is on each build.

    Two changes share a place where their gains are closer than 1.96 sd of their difference +
    NUMERICAL. All builds are answered in a few large batches. The catalogue must fit the truck
    (`apply.check_fit`). Raises InputError where the truck as it is cannot be built, or has no such
    surface.
    Source: gains are differences of `answers.tips`; uncertainties as `directions.difference_sd`.
    """
    grip = choose_grip(loaded.truck, surface)
    builds: dict[_Key, _Build] = {}
    nothing = _add(builds, loaded, catalogue, {}, grip)
    pairs: list[tuple[int, _Key, _Key]] = []
    impossible = []
    counts: dict[int, int] = {}
    for i, change in enumerate(catalogue.changes):
        first = dict.fromkeys(requirements(catalogue, change.name), 1)
        try:
            before = _add(builds, loaded, catalogue, first, grip)
            many = _best_place(loaded, catalogue, first, i, aim, grip, hold)
            after = _add(builds, loaded, catalogue, first | {i: many}, grip)
        except InputError as error:
            impossible.append((i, error.problems[0].what))
        else:
            pairs.append((i, before, after))
            counts[i] = many
    weighed = _Weighed(builds, loaded, grip, hold, aim)
    weighed.hold_alike([(before, after) for _, before, after in pairs])
    outcomes = [_outcome(catalogue, weighed, *pair, counts[pair[0]], limits) for pair in pairs]
    now, names = weighed.keys[nothing], [c.name for c in catalogue.changes]
    toward = DIRECTIONS.index(aim)
    ranked = _ranked(outcomes, pairs, weighed, toward)
    return Ranking(
        aim,
        grip,
        hold,
        weighed.found.angle[now],
        weighed.found.heading[now],
        weighed.found.slide[now],
        weighed.found.slides[now],
        weighed.corners,
        effects(loaded.truck, loaded.spec),
        tuple(replace(o, words=outcome_words(o, toward, weighed.corners, names)) for o in ranked),
        tuple(impossible),
    )


class _Weighed:
    """The builds with their angles; angle errors and effects worked out when first asked for."""

    def __init__(
        self, builds: Mapping[_Key, _Build], loaded: Loaded, grip: Grip, hold: Hold, aim: Direction
    ) -> None:
        self.builds, self.hold, self.weighed = builds, hold, loaded.truck
        self.keys = {key: k for k, key in enumerate(builds)}
        every = list(builds.values())
        self.found: DirectionAngles = angles(
            [b.truck for b in every], [b.grip.likely for b in every], hold
        )
        self.corners = corners(grip, loaded.truck)
        asked = [(b.truck, b.grip) for b in every]
        wanted = [name for name in DIRECTIONS if name != "worst" or name == aim]
        self.there = at_corners(asked, self.found, hold, self.corners, wanted)
        self.railed: dict[tuple[int, int], float] = {}
        self.measured_on = loaded.spec.battery
        self._angle_errors: dict[tuple[int, int], AngleErrors] = {}
        self._effects: dict[int, Effects] = {}

    def hold_alike(self, pairs: Sequence[tuple[_Key, _Key]]) -> None:
        """Work out, where one build of a pair slides first and the other tips, what that one does
        against a rail too."""
        wanted = {
            (self.keys[key], int(d))
            for pair in pairs
            for d in np.flatnonzero(self.slides(pair[0]) ^ self.slides(pair[1]))
            for key in pair
            if not self.slides(key)[d]
        }
        if not wanted:
            return
        order, every = sorted(wanted), list(self.builds.values())
        found = tip_pairs(
            [every[k].truck for k, _ in order],
            [self.found.heading[k, d] for k, d in order],
            [every[k].grip.likely for k, _ in order],
            "rail",
        )
        self.railed = dict(zip(order, found.free.tolist(), strict=True))

    def angle(self, key: _Key) -> Array:
        row: Array = self.found.angle[self.keys[key]]
        return row

    def slides(self, key: _Key) -> Flags:
        row: Flags = self.found.slides[self.keys[key]]
        return row

    def gain(self, before: _Key, after: _Key) -> Array:
        """(4,) rad, of two builds that are held alike."""
        apart = self.slides(before) ^ self.slides(after)
        ends = []
        for key in (before, after):
            k, own = self.keys[key], self.angle(key).copy()
            for d in np.flatnonzero(apart):
                own[d] = self.railed.get((k, int(d)), own[d])
            ends.append(own)
        return ends[1] - ends[0]

    def gain_there(self, before: _Key, after: _Key) -> Array:
        """(c, 4) rad, at the corners; nan where the two are not held alike."""
        gain: Array = self.there[:, self.keys[after]] - self.there[:, self.keys[before]]
        gain[:, self.slides(before) ^ self.slides(after)] = np.nan
        return gain

    def angle_errors(self, key: _Key, direction: int) -> AngleErrors:
        k = self.keys[key]
        if (k, direction) not in self._angle_errors:
            build, heading = self.builds[key], float(self.found.heading[k, direction])
            own = angle_errors(build.truck, heading, build.fresh, self.weighed)
            self._angle_errors[k, direction] = own
        return self._angle_errors[k, direction]

    def effects(self, key: _Key) -> Effects:
        k = self.keys[key]
        if k not in self._effects:
            build = self.builds[key]
            self._effects[k] = effects(build.truck, build.spec, self.measured_on)
        return self._effects[k]


def _add(
    builds: dict[_Key, _Build],
    loaded: Loaded,
    catalogue: Catalogue,
    chosen: dict[int, int],
    grip: Grip,
) -> _Key:
    key = frozenset(chosen.items())
    if key not in builds:
        spec = apply(loaded.spec, catalogue, chosen)
        truck = built(loaded, spec) if chosen else loaded.truck
        fresh = fresh_parts([catalogue.changes[i] for i in chosen])
        builds[key] = _Build(spec, truck, fresh, grip_there(truck, grip))
    return key


def grip_there(truck: Truck, grip: Grip) -> Grip:
    """The grip of a build on the surface of the truck as it is, which changes may set."""
    return choose_grip(truck, grip.surface) if truck.grips else grip


def _best_place(
    loaded: Loaded,
    catalogue: Catalogue,
    first: dict[int, int],
    i: int,
    aim: Direction,
    grip: Grip,
    hold: Hold,
) -> int:
    """How many of a change to look at: all, or of a slot the step that is best for the aim."""
    change = catalogue.changes[i]
    if not change.slide:
        return change.most
    trucks, steps = [], []
    for step in range(1, change.most + 1):
        try:
            trucks.append(built(loaded, apply(loaded.spec, catalogue, first | {i: step})))
        except InputError:
            continue  # the truck cannot stand with the part there
        steps.append(step)
    if not steps:
        return change.most
    grips = [grip_there(truck, grip).likely for truck in trucks]
    found = angles(trucks, grips, hold).angle[:, DIRECTIONS.index(aim)]
    return steps[int(np.nanargmax(found))]


def best_slots(
    loaded: Loaded,
    catalogue: Catalogue,
    chosen: Mapping[int, int],
    slots: Collection[int],
    surface: str | None = None,
    hold: Hold = "brakes",
    aim: Direction = "worst",
) -> dict[int, int]:
    """The choice with its slots in the best place for an aim, given everything else in it.

    Slots are put right one after the other until none moves. Raises InputError where the truck
    cannot be built in any place.
    Source: coordinate descent, any text on optimisation, e.g. J. Nocedal and S. J. Wright,
    Numerical Optimization (Springer 2006), chapter 9 (from memory).
    """
    grip = choose_grip(loaded.truck, surface)
    found = dict(chosen)
    for _ in range(SLOT):
        before = dict(found)
        for i in sorted(slots):
            rest = {j: n for j, n in found.items() if j != i}
            found[i] = _best_place(loaded, catalogue, rest, i, aim, grip, hold)
        if found == before:
            break
    return found


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
    before: _Key,
    after: _Key,
    many: int,
    limits: ClassLimits | None,
) -> ChangeOutcome:
    change, build = catalogue.changes[i], weighed.builds[after]
    gain, there = weighed.gain(before, after), weighed.gain_there(before, after)
    sd = np.array(
        [
            difference_sd(weighed.angle_errors(after, d), weighed.angle_errors(before, d))
            for d in range(4)
        ]
    )
    side = weighed.effects(after).minus(weighed.effects(before))
    price = change.cost(many)
    grams = abs(side.mass) / 0.1 if abs(side.mass) > LEAST_MASS else np.nan
    return ChangeOutcome(
        change=i,
        many=many,
        on_top_of=tuple(sorted(j for j, _ in before)),
        price=price,
        heading=weighed.found.heading[weighed.keys[after]],
        angle=weighed.angle(after),
        slides=weighed.slides(after),
        was_heading=weighed.found.heading[weighed.keys[before]],
        was=weighed.angle(before),
        slid=weighed.slides(before),
        gain=gain,
        gain_sd=sd,
        per_100g=gain / grams,
        per_money=gain / price if price > 0 else np.full(4, np.nan),
        corners=there,
        turns=turns(gain, there),
        side=side,
        breaches=() if limits is None else breaches(limits, build.truck, build.spec),
    )


def _ranked(
    outcomes: list[ChangeOutcome],
    pairs: list[tuple[int, _Key, _Key]],
    weighed: _Weighed,
    aim: int,
) -> tuple[ChangeOutcome, ...]:
    """The best first; a change that the leader of its place does not surely beat shares it."""
    afters = {i: (before, after) for i, before, after in pairs}
    unknown = [np.isnan(o.gain[aim]) for o in outcomes]
    order = sorted(
        range(len(outcomes)), key=lambda k: (unknown[k], -outcomes[k].gain[aim], outcomes[k].change)
    )
    ranked: list[ChangeOutcome] = []
    leader = None
    for count, k in enumerate(order, start=1):
        own = outcomes[k]
        if leader is None or not _tied(leader, own, afters, weighed, aim):
            leader = replace(own, place=count)
            ranked.append(leader)
        else:
            ranked.append(replace(own, place=leader.place))
    return tuple(_placed_there(ranked, aim))


def _placed_there(ranked: list[ChangeOutcome], aim: int) -> list[ChangeOutcome]:
    """With the place of each at every corner, and what overtakes it there beyond doubt."""
    if not ranked:
        return []
    here = np.array([o.gain[aim] for o in ranked])
    there = np.stack([o.corners[:, aim] for o in ranked], axis=1)
    out = []
    for k, own in enumerate(ranked):
        with np.errstate(invalid="ignore"):
            ahead = there > there[:, k : k + 1] + WORTH_SAYING  # (c, n)
            behind = here < here[k] - WORTH_SAYING
        behind &= np.array([o.place > own.place for o in ranked])
        places = tuple(int(n) + 1 for n in ahead.sum(axis=1))
        over = tuple(
            (int(c), ranked[j].change) for c, j in zip(*np.nonzero(ahead & behind), strict=True)
        )
        out.append(replace(own, places=places, overtaken=over))
    return out


def _tied(
    a: ChangeOutcome,
    b: ChangeOutcome,
    builds: Mapping[int, tuple[_Key, _Key]],
    weighed: _Weighed,
    aim: int,
) -> bool:
    """Whether two gains are closer than the uncertainty of their difference."""
    one, other = (_gain_errors(o, builds, weighed, aim) for o in (a, b))
    sd = difference_sd(one, other)
    return bool(abs(a.gain[aim] - b.gain[aim]) < SURE * sd + NUMERICAL)


def _gain_errors(
    outcome: ChangeOutcome,
    builds: Mapping[int, tuple[_Key, _Key]],
    weighed: _Weighed,
    aim: int,
) -> AngleErrors:
    before, after = (weighed.angle_errors(key, aim) for key in builds[outcome.change])
    nothing = np.zeros(4)
    names = before.keys() | after.keys()
    return {n: after.get(n, nothing) - before.get(n, nothing) for n in names}
