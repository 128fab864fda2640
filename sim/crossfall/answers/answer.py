"""The one answer: what a truck does on the tilted table in given conditions, three methods side by
side.

Nothing here averages or tunes: each method reads the same truck in the same conditions, and their
differences are shown as an angle budget with a remainder.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import degrees, isfinite, nan
from typing import TYPE_CHECKING

import numpy as np

from crossfall.answers.conditions import Conditions, case_name
from crossfall.answers.ranges import Range, ranges
from crossfall.answers.tips import tip_angles, weakest
from crossfall.statics import rigid, sliding
from crossfall.statics.budget import budget
from crossfall.truck.digest import truck_digest
from crossfall.truck.model import Array, Grip, Truck, frozen

if TYPE_CHECKING:
    from crossfall.engines.held import EngineName
    from crossfall.trials.outcome import TiltTrial
    from crossfall.trials.pace import Care

_Progress = Callable[[int, int], None]


@dataclass(frozen=True)
class AngleBudget:
    """Where the degrees go, from the rigid promise to the trial. All rad; each stage is a tip
    angle with one more thing allowed to give, all but the last two against a rail.

    rigid: nothing gives. tyres: the tyres squash. ground: and they give along the ground.
    extension: and the body rises on its springs as the normal load falls. compliant: and it leans
    and pitches. trial: the virtual trial, or nan.

    Source: derived here: each step is the difference of two stages, as `statics.budget`.
    """

    rigid: float
    tyres: float
    ground: float
    extension: float
    compliant: float
    trial: float

    @property
    def steps(self) -> tuple[tuple[str, float], ...]:
        """(name, rad gained) per stage, loss negative; the last is the unexplained remainder."""
        return (
            ("tyres squash", self.tyres - self.rigid),
            ("tyres give along the ground", self.ground - self.tyres),
            ("body rises on its springs", self.extension - self.ground),
            ("body leans and pitches", self.compliant - self.extension),
            ("remainder: trial less statics", self.trial - self.compliant),
        )


@dataclass(frozen=True)
class TipAnswer:
    """Everything said about one truck in one set of conditions. Angles in rad.

    over: the tyres the rigid truck goes over. compliant: the tip, nan where it slides away first.
    rail: what it does against a rail: where it slides first, or where that was asked, else nan.
    range: of the tip (of `rail` where it slides first), of where it goes, how likely a tip comes
    first, and which inputs are behind it. first_lift, lift (4,): when the first and each wheel
    leaves the table, nan if not before the tip. first_snap: when the body first jumped on its
    springs but stood again, nan if never. slide: (3,) at low, likely and high grip. goes: tip or
    slide, whichever comes first. outcome: tips / slides / too close to call. other: the same trial
    in a second engine.
    """

    conditions: Conditions
    case: str
    over: str
    rigid: float
    compliant: float
    rail: float
    range: Range
    first_lift: float
    lift: Array
    first_snap: float
    slide: Array
    goes: float
    outcome: str
    budget: AngleBudget
    trial: TiltTrial | None
    verdict: str = ""
    other: TiltTrial | None = None

    @property
    def tip(self) -> float:
        """The tip where it tips, else what it does against a rail; never nan but where the
        statics finds none."""
        return self.compliant if isfinite(self.compliant) else self.rail

    @property
    def engines_apart(self) -> float:
        """rad, how far the two engines' trials are apart in where it goes; nan unless both show
        the same end."""
        one, two = self.trial, self.other
        if one is None or two is None or one.outcome != two.outcome:
            return nan
        return abs(one.tip - two.tip) if one.outcome == "tips" else abs(one.slide - two.slide)

    @property
    def slides_first(self) -> bool:
        return not self.conditions.rail and not isfinite(self.compliant)


@dataclass(frozen=True)
class Answers:
    """The answers for one truck, in the order they were asked. grip and hold are all one."""

    truck: str
    digest: str
    answers: tuple[TipAnswer, ...]
    versions: tuple[tuple[str, str], ...]

    @property
    def surface(self) -> str:
        return self.answers[0].conditions.grip.surface

    @property
    def weakest(self) -> TipAnswer:
        """Of the headings asked, the one with the least tip angle."""
        return min(self.answers, key=lambda a: (not isfinite(a.tip), a.tip))


def answer(
    truck: Truck,
    asked: Sequence[Conditions],
    *,
    trial: bool = True,
    engines: Sequence[EngineName] | None = None,
    care: Care = "careful",
    progress: _Progress = lambda done, of: None,
) -> Answers:
    """All methods in every one of the conditions, which share grip and hold. Angles in rad.

    trial: False leaves the virtual trial out. engines: it is made in, one or two; None for the
    usual one. care: how it is made. progress: called with trials done and to do. Raises InputError
    for a truck that makes no multibody, where a trial is asked for.
    Source: those of the methods: `statics.rigid`, `statics.compliant`, `statics.sliding`,
    `answers.ranges` and `trials.outcome`.
    """
    psi = np.array([c.heading for c in asked])
    grip = asked[0].grip
    found, how_sure = ranges(truck, asked)
    stages = budget(truck, psi, grip.likely)
    edges, stiff = rigid.tip_edge(truck, psi), rigid.tip_angle(truck, psi)
    slides = slide_angles(truck, psi, grip)
    tries = _trials(truck, asked, found.free, engines, care, progress) if trial else [()] * len(psi)
    out = []
    for i, one in enumerate(asked):
        tried, other = (*tries[i], None, None)[:2]
        chance = 1.0 if one.rail else how_sure[i].tips_first
        first = bool(found.slides[i])
        made = TipAnswer(
            conditions=one,
            case=case_name(degrees(one.heading)),
            over=rigid.EDGES[edges[i]],
            rigid=float(stiff[i]),
            compliant=float(found.tip[i]),
            rail=float(found.free[i]) if first or one.rail else nan,
            range=how_sure[i],
            first_lift=float(found.first_lift[i]),
            lift=frozen(found.lift[i]),
            first_snap=float(found.first_snap[i]),
            slide=frozen(slides[i]),
            goes=float(found.goes[i]),
            outcome=sliding.outcome(chance),
            budget=AngleBudget(
                float(stiff[i]),
                float(stages.tyres[i]),
                float(stages.ground[i]),
                float(stages.extension[i]),
                float(found.free[i]),
                tried.tip if tried else nan,
            ),
            trial=tried,
            other=other,
        )
        out.append(made)
    from crossfall.answers.verdict import with_verdict

    return Answers(truck.name, truck_digest(truck), tuple(map(with_verdict, out)), versions())


def slide_angles(truck: Truck, psi: Array, grip: Grip) -> Array:
    """(H, 3) rad at low, likely and high grip, headings psi (H,) rad: where it slides as a whole,
    which is the angle of friction, theta = atan(mu), or open differentials let go.

    Source: Coulomb friction, any mechanics text; open differentials as `statics.compliant`.
    """
    if not truck.may_roll:
        return sliding.slide_range(truck, psi, grip)
    each = [tip_angles(truck, psi, mu).slide for mu in (grip.low, grip.likely, grip.high)]
    return np.column_stack(each)


def weakest_heading(truck: Truck, asked: Conditions) -> Conditions:
    """The same conditions at the truck's weakest heading, rad, searched for all round.

    Source: as `answers.tips.weakest`.
    """
    from dataclasses import replace

    heading, _ = weakest([truck], asked.grip.likely, asked.hold)
    return replace(asked, heading=float(heading[0]))


def _trials(
    truck: Truck,
    asked: Sequence[Conditions],
    near: Array,
    engines: Sequence[EngineName] | None,
    care: Care,
    progress: _Progress,
) -> list[tuple[TiltTrial, ...]]:
    """A trial per heading and engine, after the predictions, which only choose where each one
    starts. The truck is loaded once an engine."""
    from crossfall.engines.held import usual_engine
    from crossfall.engines.settings import TrialSettings
    from crossfall.trials.pace import PACES
    from crossfall.trials.table import level_table
    from crossfall.trials.tilt import tilt_on

    chosen = engines or (usual_engine(),)
    of = len(asked) * len(chosen)
    out: list[list[TiltTrial]] = [[] for _ in asked]
    for n, engine in enumerate(chosen):
        with level_table(truck, TrialSettings(), engine) as table:
            for i, (one, guess) in enumerate(zip(asked, near, strict=True)):
                progress(n * len(asked) + i, of)
                tried = tilt_on(
                    table,
                    one.heading,
                    near=float(guess) if isfinite(guess) else None,
                    grip=one.grip.likely,
                    rail=one.rail,
                    pace=PACES[care],
                )
                out[i].append(tried)
    progress(of, of)
    return [tuple(tries) for tries in out]


def versions() -> tuple[tuple[str, str], ...]:
    """Name and version of what the numbers depend on."""
    from importlib.metadata import PackageNotFoundError, version
    from platform import python_version

    found = [("python", python_version())]
    for name in ("crossfall", "numpy", "scipy", "numba", "pybullet", "mujoco"):
        try:
            found.append((name, version(name)))
        except PackageNotFoundError:
            found.append((name, "absent"))
    return tuple(found)
