"""The best set of changes for an aim, within money, mass, run time and class limits.

The closed form's best set is found exactly (`solver`). Springs and tyres cost degrees that no
linear sum knows, and some changes do nothing else than win those back, so the set proposed is
found in rounds: the loss of every set-up (rigid less compliant, per heading) is estimated, the
best set under these losses is found exactly, its compliant answer is worked out, and the losses
are put right; until no set promises more than the best one scored. Then every set near the best
is scored with the compliant answer as well. Where all allowed sets are few enough, all of them are
scored, and the best is proven outright.

The compliant answer is the one answer (`answers.tips`) at the surface's grip; where a set slides
first, what it would do against a rail. Where the weakest heading of all is asked for, the rounds
look at the headings on which the truck as it is is weak, and at the four ways; those only bound a
set's weakest heading from above, so the weakest of every set that may still be the best, or on the
front, is then searched for all round.

Source: derived here from the bound that the closed form gives; the closed form's best as `solver`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from crossfall.answers.conditions import Hold
from crossfall.statics import rigid
from crossfall.truck.build import Loaded
from crossfall.truck.errors import InputError
from crossfall.truck.model import Array, Flags, Grip
from crossfall.tuning.apply import apply, built
from crossfall.tuning.changes import Catalogue
from crossfall.tuning.corners import WORTH_SAYING, Corner
from crossfall.tuning.directions import AIMS, NUMERICAL, SURE, Direction, difference_sd
from crossfall.tuning.effects import Effects, effects
from crossfall.tuning.limits import Breach, breaches
from crossfall.tuning.menu import Menu, Picks, guiding, menu
from crossfall.tuning.milp_model import Bounds, MilpModel, Modeller
from crossfall.tuning.scores import Scored, Scores
from crossfall.tuning.solver import Found, Search, best_angle, least_money, near_best

BANDS = np.radians([0.05, 0.15, 0.4, 1.0])  # how far below the best to look
AGAIN = 3  # times a target is aimed at anew, where a set's weakest heading fell short of it


@dataclass(frozen=True)
class SolverSettings:
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
    target (rad), reached for the least money. No headings: the weakest of all. name: in words."""

    name: str
    headings: tuple[float, ...]
    target: float | None = None


def aim_at(name: Direction, target: float | None = None) -> Aim:
    """One of DIRECTIONS as an aim."""
    return Aim(name, AIMS[name], target)


@dataclass(frozen=True)
class Choice:
    """A set with its answer. SI.

    value: rad, least over the aim's headings; sd: its standard uncertainty from masses and
    places. headings: (H,) rad, the aim's, or the weakest; angles, rigid: (H,) rad there; slide:
    (H,) rad, where it slides or rolls away, and slides: whether it does so first, so that the angle
    is the one against a rail. there: (c,) rad, the value at the plan's corners; nan for what is
    only on the front. added_mass: kg. side: Effects less those of the truck as it is. tied: whether
    it is closer to the best than the uncertainty of their difference.
    """

    picks: Picks
    price: float
    value: float
    sd: float
    headings: Array
    angles: Array
    slide: Array
    slides: Flags
    rigid: Array
    there: Array
    added_mass: float
    side: Effects
    breaches: tuple[Breach, ...]
    tied: bool = False


@dataclass(frozen=True)
class BuildPlan:
    """best: None where no set keeps to the bounds (or reaches the target).

    runners: the next best, scored. front: the most degrees for every price, cheapest first.
    overtaken: (corner, runner) of those that surely beat the best there. closed_form: rad and set,
    the proven best of the closed form. proven: every allowed set was scored. scored: how many were.
    spread: rad, standard deviation of what the closed form with losses held said of the scored sets
    against their compliant answer. margin: rad, how far below the best one the listing of near-best
    sets reached; inf where all were scored.
    """

    aim: Aim
    grip: Grip
    hold: Hold
    now: Choice
    best: Choice | None
    runners: tuple[Choice, ...]
    front: tuple[Choice, ...]
    corners: tuple[Corner, ...]
    overtaken: tuple[tuple[int, int], ...]
    closed_form: tuple[float, Picks] | None
    setups: int
    proven: bool
    scored: int
    spread: float
    margin: float


def plan(
    loaded: Loaded,
    catalogue: Catalogue,
    aim: Aim,
    bounds: Bounds,
    settings: SolverSettings | None = None,
    *,
    runners: int = 5,
    surface: str | None = None,
    hold: Hold = "brakes",
) -> BuildPlan:
    """The best set for an aim. The catalogue must fit the truck (`apply.check_fit`).

    surface: by name, the truck's first if not given. Raises InputError where it has no such one.
    """
    settings = settings or SolverSettings()
    return _Planner(loaded, catalogue, aim, bounds, settings, surface, hold).plan(runners)


class _Planner:
    """One question being answered: the models, the losses, and every set scored so far."""

    def __init__(
        self,
        loaded: Loaded,
        catalogue: Catalogue,
        aim: Aim,
        bounds: Bounds,
        settings: SolverSettings,
        surface: str | None,
        hold: Hold,
    ) -> None:
        self.loaded, self.catalogue, self.aim = loaded, catalogue, aim
        self.bounds, self.settings = bounds, settings
        self.scores = Scores(loaded, catalogue, aim.headings, surface, hold)
        self.headings = self.scores.headings
        self.short = 0.0  # rad, by how much more than the target is aimed at
        self.menu: Menu = menu(catalogue, guiding(loaded.spec))
        modeller = Modeller(loaded, self.menu, bounds)
        made = [modeller.model(s) for s in self.menu.setups]
        self.models: list[MilpModel] = [m for m in made if m is not None]

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
        base = self.scores.now.rigid - self.scores.now.angles
        more = dict(zip(known, self.scores.losses(trucks) - base, strict=True))
        nothing = np.zeros(len(self.headings))
        return np.array(
            [base + sum((more.get(p, nothing) for p in m.setup), nothing) for m in self.models]
        ).reshape(len(self.models), len(self.headings))

    def improve(self, search: Search, steady: Array) -> None:
        """Rounds of the best set under the losses as known, its answer, and better losses."""
        offsets: list[Array] = []
        exact: dict[int, Array] = {}
        for _ in range(self.settings.rounds):
            found = self._ask(search)
            if found is None or self.scores.knows(self.picks(found)):
                return
            fresh = self.scores.score([(self.picks(found), found.value)])
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
            cheapest = min((self.scores.price(s) for s in self._reaching()), default=1e9)
            wanted = self.aim.target + self.short
            return least_money(replace(search, most_money=cheapest - 0.01), wanted)
        return best_angle(search, self._floor(search))

    def _floor(self, search: Search) -> float:
        """rad, what a set must promise to be worth scoring: more than the best one scored."""
        allowed = [s.value for s in self.scores.all if self._allowed(s)]
        return float(max(allowed, default=0.0) + NUMERICAL)

    def _allowed(self, s: Scored) -> bool:
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

    def plan(self, runners: int) -> BuildPlan:
        """See `plan.plan`."""
        steady = self.first_losses()
        search = Search(self.models, self.headings, steady.copy())
        sharp = Search(self.models, self.headings, np.zeros_like(steady))
        exact = best_angle(sharp) if self.models else None
        listed = self._list_all(search)
        margin = np.inf
        for _ in range(AGAIN):
            if not listed and self.models:
                self.improve(search, steady)
                margin = self._look_near(search)
            ranked, front = self._settled(search, listed, runners)
            if ranked or listed or not self._fell_short():
                break
        best = ranked[0] if ranked else None
        shown = [self.scores.now, *ranked[: runners + 1]]
        where, there = self.scores.at_corners(shown)
        unasked = np.full(len(where), np.nan)
        values = {s.picks: unasked for s in front}
        values |= {s.picks: row for s, row in zip(shown, there.T, strict=True)}
        others = ranked[1 : runners + 1]
        misses = [float(s.angles.min()) - s.predicted for s in self.scores.all if s.predicted > 0]
        return BuildPlan(
            aim=self.aim,
            grip=self.scores.grip,
            hold=self.scores.hold,
            now=self._choice(shown[0], None, values),
            best=self._choice(best, None, values) if best else None,
            runners=tuple(self._choice(s, best, values) for s in others),
            front=tuple(self._choice(s, None, values) for s in front),
            corners=where,
            overtaken=self._overtaken(best, others, values) if best else (),
            closed_form=(exact.value, self.picks(exact)) if exact else None,
            setups=len(self.models),
            proven=listed,
            scored=len(self.scores.all),
            spread=float(np.std(misses)) if len(misses) > 2 else float("nan"),
            margin=float(margin),
        )

    def _settled(
        self, search: Search, listed: bool, runners: int
    ) -> tuple[list[Scored], list[Scored]]:
        """Sets in order and the front, once no set that only has a bound is among them."""
        self._score_budgets(search, listed)
        while True:
            ranked, front = self._ranked(), self._front()
            if not self.scores.search_weakest(
                list({s.picks: s for s in (*ranked[: runners + 1], *front)}.values())
            ):
                return ranked, front

    def _fell_short(self) -> bool:
        """Whether sets looked as if they reached the target until their weakest heading was found;
        the next ones are then asked to reach it by as much more."""
        target = self.aim.target
        searched = [s for s in self.scores.all if s.weakest is not None and s.picks]
        if target is None or not searched:
            return False
        self.short = max(float(s.angles.min()) - s.value for s in searched)
        return any(s.angles.min() >= target > s.value for s in searched)

    def _overtaken(
        self, best: Scored, others: Sequence[Scored], values: dict[Picks, Array]
    ) -> tuple[tuple[int, int], ...]:
        """(corner, runner) where one that is surely behind the best here is before it there."""
        found = []
        for k, s in enumerate(others):
            if s.value < best.value - WORTH_SAYING:
                more = values[s.picks] - values[best.picks]
                found += [(int(c), k) for c in np.flatnonzero(more > WORTH_SAYING)]
        return tuple(sorted(found))

    def _list_all(self, search: Search) -> bool:
        """Score every allowed set, where these are few; whether that was so."""
        most = self.settings.listed // max(len(self.headings), 1)
        sizes = np.diff([*self.menu.starts, len(self.menu.columns)]) + 1
        if len(self.models) * float(np.prod(sizes, dtype=float)) > 4 * most:
            return False
        found, whole = near_best(search, -np.inf)
        if not whole or len(found) > most:
            return False
        self.scores.score((self.picks(f), f.value) for f in found)
        return True

    def _look_near(self, search: Search) -> float:
        """Score the sets near the best, and say how far below it that reached."""
        most = min(self.settings.scored, self.settings.most_tips // max(len(self.headings), 1))
        top = self._best_value()
        if top is None:
            return 0.0
        if self.aim.target is not None:
            top = self.aim.target + self.short
            cheapest = min((self.scores.price(s) for s in self._reaching()), default=1e9)
            search = replace(search, most_money=cheapest)
        reach, found = 0.0, list[Found]()
        for band in BANDS:
            near, whole = near_best(search, top - band, 20 * most)
            found = near[:most]
            if not whole or len(near) > most:
                break
            reach = float(band)
        self.scores.score((self.picks(f), f.value) for f in found)
        return reach

    def _reaching(self) -> list[Scored]:
        target = self.aim.target or 0.0
        every = self.scores.all
        return [s for s in every if s.value >= target - NUMERICAL / 10 and self._allowed(s)]

    def _best_value(self) -> float | None:
        return max((s.value for s in self.scores.all if self._allowed(s)), default=None)

    def _ranked(self) -> list[Scored]:
        """Scored sets, the best for the aim first; equal ones by money, then by fewest changes."""
        step, price = NUMERICAL, self.scores.price
        if self.aim.target is not None:
            return sorted(
                self._reaching(),
                key=lambda s: (
                    round(self.scores.price(s), 2),
                    -round(s.value / step),
                    len(s.picks),
                ),
            )
        return sorted(
            (s for s in self.scores.all if self._allowed(s)),
            key=lambda s: (-round(s.value / step), price(s), len(s.picks), s.picks),
        )

    def _score_budgets(self, search: Search, listed: bool) -> None:
        """Score the best set at several budgets, where not all sets are scored."""
        ranked = self._ranked()
        if not self.models or listed or not ranked:
            return
        ceiling = max(self.scores.price(s) for s in ranked[:10])
        floor, promising = 0.0, list[tuple[Picks, float]]()
        for budget in np.linspace(0.0, ceiling, self.settings.steps + 1)[:-1]:
            found = best_angle(replace(search, most_money=float(budget)), floor)
            if found is not None:
                promising.append((self.picks(found), found.value))
                floor = found.value + np.radians(0.02)
        self.scores.score(promising)

    def _front(self) -> list[Scored]:
        """The most degrees for every price, of all that was scored."""
        front: list[Scored] = []
        allowed = (s for s in self.scores.all if self._allowed(s))
        for s in sorted(
            allowed, key=lambda s: (round(self.scores.price(s), 2), -s.value, len(s.picks))
        ):
            if not front or s.value > front[-1].value + NUMERICAL:
                front.append(s)
        return front

    def _choice(self, s: Scored, best: Scored | None, values: dict[Picks, Array]) -> Choice:
        own, headings = self.scores.angle_errors(s), s.own_headings
        now = effects(self.loaded.truck, self.loaded.spec)
        side = effects(s.truck, s.spec, self.loaded.spec.battery).minus(now)
        tied = False
        if best is not None:
            sd = difference_sd(own, self.scores.angle_errors(best))
            tied = abs(s.value - best.value) < SURE * sd + NUMERICAL
        limits = self.bounds.limits
        slide, slides = s.own_slide
        return Choice(
            picks=s.picks,
            price=self.scores.price(s),
            value=s.value,
            sd=difference_sd(own, {}),
            headings=headings,
            angles=s.angles if s.weakest is None else s.weakest[1:],
            slide=slide,
            slides=slides,
            rigid=rigid.tip_angle(s.truck, headings),
            there=values[s.picks],
            added_mass=side.mass,
            side=side,
            breaches=breaches(limits, s.truck, s.spec) if limits is not None else (),
            tied=tied,
        )


def _counters(model: MilpModel) -> Sequence[int]:
    """Rows that tie a counter column to what is there: -1 in that column and nothing in others."""
    if not model.helpers:
        return []
    block = model.rows[:, -model.helpers :]
    return [int(np.flatnonzero(block[:, h] < 0)[0]) for h in range(model.helpers)]
