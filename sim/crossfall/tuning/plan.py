"""The best set of changes for an aim, within money, mass, run time and class limits.

The closed form's best set is found exactly (`solver`). Springs and tyres cost degrees that no
linear sum knows, and some changes do nothing else than win those back, so the set proposed is
found in rounds: the loss of every set-up (rigid less compliant, per heading) is estimated, the
best set under these losses is found exactly, its compliant answer is worked out, and the losses
are put right; until no set promises more than the best one scored. Then every set near the best
is scored with the compliant answer as well. Where all allowed sets are few enough, all of them are
scored, and the best is proven outright.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

import numpy as np

from crossfall.statics import rigid
from crossfall.statics.compliant import tips
from crossfall.truck.build import Loaded
from crossfall.truck.model import Array, Truck
from crossfall.truck.problems import InputError
from crossfall.truck.schema import TruckSpec
from crossfall.tuning.apply import apply, built
from crossfall.tuning.changes import Catalogue
from crossfall.tuning.directions import NUMERICAL, SURE, Doubt, difference_sd, doubt
from crossfall.tuning.effects import Effects, effects
from crossfall.tuning.limits import Breach, breaches
from crossfall.tuning.linear import Bounds, Model, Modeller
from crossfall.tuning.menu import Menu, Picks, menu
from crossfall.tuning.solver import Found, Search, best_angle, least_money, near_best
from crossfall.tuning.whatif import fresh_parts

BANDS = np.radians([0.05, 0.15, 0.4, 1.0])  # how far below the best to look


@dataclass(frozen=True)
class Settings:
    """rounds: of putting the losses right; a few are enough. scored: most near-best sets to score,
    and most_tips: tip angles that may take. listed: tip angles up to which all allowed sets are
    scored. steps: budgets tried for the front."""

    rounds: int = 12
    scored: int = 50
    most_tips: int = 240
    listed: int = 1200
    steps: int = 6


@dataclass(frozen=True)
class Aim:
    """What is wanted: the least tip angle over `headings` (rad) as large as can be, or, with a
    target (rad), reached for the least money. name: in words."""

    name: str
    headings: tuple[float, ...]
    target: float | None = None


@dataclass(frozen=True)
class Choice:
    """A set with its compliant answer. SI.

    value: rad, least over the aim's headings; sd: its standard uncertainty from masses and
    places. angles, rigid: (H,) rad. added_mass: kg. side: Effects less those of the truck as it
    is. tied: whether it is closer to the best than the uncertainty of their difference.
    """

    picks: Picks
    price: float
    value: float
    sd: float
    angles: Array
    rigid: Array
    added_mass: float
    side: Effects
    breaches: tuple[Breach, ...]
    tied: bool = False


@dataclass(frozen=True)
class Plan:
    """best: None where no set keeps to the bounds (or reaches the target).

    runners: the next best, scored. front: the most degrees for every price, cheapest first.
    closed_form: rad and set, the proven best of the closed form. proven: every allowed set was
    scored. scored: how many were. spread: rad, standard deviation of what the closed form with
    losses held said of the scored sets against their compliant answer. margin: rad, how far below
    the best one the listing of near-best sets reached; inf where all were scored.
    """

    aim: Aim
    now: Choice
    best: Choice | None
    runners: tuple[Choice, ...]
    front: tuple[Choice, ...]
    closed_form: tuple[float, Picks] | None
    setups: int
    proven: bool
    scored: int
    spread: float
    margin: float


@dataclass(frozen=True)
class _Scored:
    """A set's compliant answer, and what was foretold."""

    picks: Picks
    spec: TruckSpec
    truck: Truck
    angles: Array
    rigid: Array
    foretold: float

    @property
    def value(self) -> float:
        return float(self.angles.min())


def plan(
    loaded: Loaded,
    catalogue: Catalogue,
    aim: Aim,
    bounds: Bounds,
    settings: Settings | None = None,
    *,
    runners: int = 5,
) -> Plan:
    """The best set for an aim. The catalogue must fit the truck (`apply.check_fit`)."""
    settings = settings or Settings()
    return _Planner(loaded, catalogue, aim, bounds, settings).plan(runners)


class _Planner:
    """One question being answered: the models, the losses, and every set scored so far."""

    def __init__(
        self, loaded: Loaded, catalogue: Catalogue, aim: Aim, bounds: Bounds, settings: Settings
    ) -> None:
        self.loaded, self.catalogue, self.aim = loaded, catalogue, aim
        self.bounds, self.settings = bounds, settings
        self.headings = np.array(aim.headings)
        self.menu: Menu = menu(catalogue)
        modeller = Modeller(loaded, self.menu, bounds)
        made = [modeller.model(s) for s in self.menu.setups]
        self.models: list[Model] = [m for m in made if m is not None]
        self.scored: dict[Picks, _Scored] = {}
        self.impossible: set[Picks] = set()
        self.now = self._score([((), 0.0)])[0]

    # Scoring

    def _score(self, wanted: Iterable[tuple[Picks, float]]) -> list[_Scored]:
        """The compliant answer of sets not seen before, all in one call; those that can stand."""
        new: list[tuple[Picks, float, TruckSpec, Truck]] = []
        for picks, foretold in wanted:
            if picks in self.scored or picks in self.impossible:
                continue
            try:
                spec = apply(self.loaded.spec, self.catalogue, dict(picks))
                new.append((picks, foretold, spec, built(self.loaded, spec)))
            except InputError:
                self.impossible.add(picks)
        if not new:
            return []
        compliant = np.nan_to_num(tips([t for *_, t in new], self.headings, "uniform").tip)
        fresh = [
            _Scored(picks, spec, truck, angles, rigid.tip_angle(truck, self.headings), foretold)
            for (picks, foretold, spec, truck), angles in zip(new, compliant, strict=True)
        ]
        self.scored |= {s.picks: s for s in fresh}
        return fresh

    def picks(self, found: Found) -> Picks:
        """All changes of a set, in file order."""
        model = self.models[found.setup]
        chosen = np.flatnonzero(found.chosen[: len(found.chosen) - model.helpers])
        columns = [p for j in chosen for p in self.menu.columns[j]]
        return tuple(sorted((*model.setup, *columns)))

    # Losses

    def first_losses(self) -> Array:
        """(setups, H) rad: the present loss, plus what each set-up change alone adds to it."""
        singles = sorted({p for m in self.models for p in m.setup})
        trucks, known = [], []
        for pick in singles:
            spec = apply(self.loaded.spec, self.catalogue, dict([pick]))
            try:
                trucks.append(built(self.loaded, spec))
                known.append(pick)
            except InputError:
                continue
        base = self.now.rigid - self.now.angles
        more = dict(zip(known, self._losses(trucks) - base, strict=True))
        nothing = np.zeros(len(self.headings))
        return np.array(
            [base + sum((more.get(p, nothing) for p in m.setup), nothing) for m in self.models]
        ).reshape(len(self.models), len(self.headings))

    def _losses(self, trucks: Sequence[Truck]) -> Array:
        """(B, H) rad, rigid less compliant."""
        if not trucks:
            return np.zeros((0, len(self.headings)))
        compliant = np.nan_to_num(tips(trucks, self.headings, "uniform").tip)
        stiff = np.array([rigid.tip_angle(t, self.headings) for t in trucks])
        losses: Array = stiff - compliant
        return losses

    def improve(self, search: Search, steady: Array) -> None:
        """Rounds of the best set under the losses as known, its answer, and better losses."""
        offsets: list[Array] = []
        exact: dict[int, Array] = {}
        for _ in range(self.settings.rounds):
            found = self._ask(search)
            if found is None or self.picks(found) in self.scored | dict.fromkeys(self.impossible):
                return
            fresh = self._score([(self.picks(found), found.value)])
            if not fresh:
                search.losses[found.setup] += np.radians(5.0)  # cannot be built: look elsewhere
                exact[found.setup] = search.losses[found.setup]
                continue
            loss = fresh[0].rigid - fresh[0].angles
            offsets.append(loss - steady[found.setup])
            exact[found.setup] = loss
            search.losses = steady + np.mean(offsets, axis=0)
            for k, own in exact.items():
                search.losses[k] = own

    def _ask(self, search: Search) -> Found | None:
        if self.aim.target is not None:
            cheapest = min((self._price(s) for s in self._reaching()), default=1e9)
            return least_money(replace(search, most_money=cheapest - 0.01), self.aim.target)
        return best_angle(search, self._floor(search))

    def _floor(self, search: Search) -> float:
        """rad, what a set must promise to be worth scoring: more than the best one scored."""
        allowed = [s.value for s in self.scored.values() if self._allowed(s)]
        return float(max(allowed, default=0.0) + NUMERICAL)

    def _allowed(self, s: _Scored) -> bool:
        """Whether a scored set keeps to all bounds; only the truck as it is can fail to."""
        if s.picks:
            return True
        model = next((m for m in self.models if not m.setup), None)
        nothing = np.zeros((1, model.columns.shape[1])) if model is not None else None
        if model is None or nothing is None:
            return False
        # Counters of details may all stand at what is there.
        nothing[0, len(self.menu.columns) :] = model.least[_counters(model)] > 0.5
        return bool(model.allowed(nothing)[0])

    # The answer

    def plan(self, runners: int) -> Plan:
        """See `plan.plan`."""
        steady = self.first_losses()
        search = Search(self.models, self.headings, steady.copy())
        sharp = Search(self.models, self.headings, np.zeros_like(steady))
        exact = best_angle(sharp) if self.models else None
        listed = self._list_all(search)
        margin = np.inf
        if not listed and self.models:
            self.improve(search, steady)
            margin = self._look_near(search)
        ranked = self._ranked()
        front = self._front(search, listed)
        best = ranked[0] if ranked else None
        others = ranked[1 : runners + 1]
        told = [s.value - s.foretold for s in self.scored.values() if s.foretold > 0]
        return Plan(
            aim=self.aim,
            now=self._choice(self.now, None),
            best=self._choice(best, None) if best else None,
            runners=tuple(self._choice(s, best) for s in others),
            front=tuple(self._choice(s, None) for s in front),
            closed_form=(exact.value, self.picks(exact)) if exact else None,
            setups=len(self.models),
            proven=listed,
            scored=len(self.scored),
            spread=float(np.std(told)) if len(told) > 2 else float("nan"),
            margin=float(margin),
        )

    def _list_all(self, search: Search) -> bool:
        """Score every allowed set, where these are few; whether that was so."""
        most = self.settings.listed // max(len(self.headings), 1)
        sizes = np.diff([*self.menu.starts, len(self.menu.columns)]) + 1
        if len(self.models) * float(np.prod(sizes, dtype=float)) > 4 * most:
            return False
        found, whole = near_best(search, -np.inf)
        if not whole or len(found) > most:
            return False
        self._score((self.picks(f), f.value) for f in found)
        return True

    def _look_near(self, search: Search) -> float:
        """Score the sets near the best, and say how far below it that reached."""
        most = min(self.settings.scored, self.settings.most_tips // max(len(self.headings), 1))
        top = self._best_value()
        if top is None:
            return 0.0
        if self.aim.target is not None:
            top = self.aim.target
            cheapest = min((self._price(s) for s in self._reaching()), default=1e9)
            search = replace(search, most_money=cheapest)
        reach, found = 0.0, list[Found]()
        for band in BANDS:
            near, whole = near_best(search, top - band, 20 * most)
            found = near[:most]
            if not whole or len(near) > most:
                break
            reach = float(band)
        self._score((self.picks(f), f.value) for f in found)
        return reach

    def _reaching(self) -> list[_Scored]:
        target = self.aim.target or 0.0
        every = self.scored.values()
        return [s for s in every if s.value >= target - NUMERICAL / 10 and self._allowed(s)]

    def _best_value(self) -> float | None:
        return max((s.value for s in self.scored.values() if self._allowed(s)), default=None)

    def _price(self, s: _Scored) -> float:
        return float(sum(self.catalogue.changes[i].price * n for i, n in s.picks))

    def _ranked(self) -> list[_Scored]:
        """Scored sets, the best for the aim first; equal ones by money, then by fewest changes."""
        step = NUMERICAL
        if self.aim.target is not None:
            return sorted(
                self._reaching(),
                key=lambda s: (round(self._price(s), 2), -round(s.value / step), len(s.picks)),
            )
        return sorted(
            (s for s in self.scored.values() if self._allowed(s)),
            key=lambda s: (-round(s.value / step), self._price(s), len(s.picks), s.picks),
        )

    def _front(self, search: Search, listed: bool) -> list[_Scored]:
        """The most degrees for every price: the best set at several budgets, scored, and all else
        that was scored."""
        ranked = self._ranked()
        if self.models and not listed and ranked:
            ceiling = max(self._price(s) for s in ranked[:10])
            floor, promising = 0.0, list[tuple[Picks, float]]()
            for budget in np.linspace(0.0, ceiling, self.settings.steps + 1)[:-1]:
                found = best_angle(replace(search, most_money=float(budget)), floor)
                if found is not None:
                    promising.append((self.picks(found), found.value))
                    floor = found.value + np.radians(0.02)
            self._score(promising)
        front: list[_Scored] = []
        allowed = (s for s in self.scored.values() if self._allowed(s))
        for s in sorted(allowed, key=lambda s: (round(self._price(s), 2), -s.value, len(s.picks))):
            if not front or s.value > front[-1].value + NUMERICAL:
                front.append(s)
        return front

    def _doubt(self, s: _Scored) -> Doubt:
        fresh = fresh_parts([self.catalogue.changes[i] for i, _ in s.picks])
        return doubt(s.truck, float(self.headings[int(s.angles.argmin())]), fresh)

    def _choice(self, s: _Scored, best: _Scored | None) -> Choice:
        own = self._doubt(s)
        now = effects(self.loaded.truck, self.loaded.spec)
        side = effects(s.truck, s.spec, self.loaded.spec.battery).minus(now)
        tied = False
        if best is not None:
            sd = difference_sd(own, self._doubt(best))
            tied = abs(s.value - best.value) < SURE * sd + NUMERICAL
        limits = self.bounds.limits
        return Choice(
            picks=s.picks,
            price=self._price(s),
            value=s.value,
            sd=difference_sd(own, {}),
            angles=s.angles,
            rigid=s.rigid,
            added_mass=side.mass,
            side=side,
            breaches=breaches(limits, s.truck, s.spec) if limits is not None else (),
            tied=tied,
        )


def _counters(model: Model) -> Sequence[int]:
    """Rows that tie a counter column to what is there: -1 in that column and nothing in others."""
    if not model.helpers:
        return []
    block = model.rows[:, -model.helpers :]
    return [int(np.flatnonzero(block[:, h] < 0)[0]) for h in range(model.helpers)]
