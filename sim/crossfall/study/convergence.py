"""How far the trial's angle hangs on how it was computed: step, rounds of the solver, rate, engine.

Each is made finer by twos, everything else as usual. Where the last two changes go the same way and
are larger than holding resolves, the observed order is p = log2((f1 - f2) / (f2 - f3)) of three
levels (P. J. Roache, Verification and Validation in Computational Science and Engineering, 1998,
chapter 5, from memory); elsewhere there is none to be seen. Of two engines the usual trials are set
beside each other, their intervals added as squares, since their errors have no common cause.

Source: P. J. Roache, Verification and Validation in Computational Science and Engineering (1998),
chapter 5, for the observed order; JCGM 100 (GUM), 5.1.2, for two engines (from memory).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Any, Literal

from crossfall.answers.conditions import Conditions
from crossfall.answers.tips import tip_angles
from crossfall.engines.held import EngineName
from crossfall.engines.settings import TrialSettings
from crossfall.trials.outcome import TiltTrial
from crossfall.trials.pace import PACES, Care, Pace
from crossfall.trials.table import level_table
from crossfall.trials.tilt import tilt_on
from crossfall.truck.model import Truck

Varied = Literal["step", "solver", "rate"]
AS_FINE = (1, 2, 4)  # times as fine; 1 is as trials are made


@dataclass(frozen=True)
class Level:
    """One trial. finer: times. value: s of a step, rounds to one, or rad/s. tip, low, high: rad,
    with its 95 % interval, nan where it does not tip. outcome: as of the trial."""

    finer: int
    value: float
    tip: float
    low: float
    high: float
    outcome: str


@dataclass(frozen=True)
class LevelSeries:
    """One thing made finer in one engine, the usual first. resolves: rad, to which holding does."""

    engine: str
    varied: Varied
    levels: tuple[Level, ...]
    resolves: float

    def change(self, level: Level) -> float:
        """rad, from the finest."""
        return level.tip - self.levels[-1].tip

    @property
    def order(self) -> float:
        """Observed over the last three levels, or nan."""
        steps = [a.tip - b.tip for a, b in pairwise(self.levels)][-2:]
        if len(steps) < 2 or not min(map(abs, steps)) > self.resolves or math.prod(steps) < 0:
            return math.nan
        return math.log2(steps[0] / steps[1])

    @property
    def holds(self) -> bool:
        """Whether the usual trial's interval holds the finest's angle."""
        return self.levels[0].low <= self.levels[-1].tip <= self.levels[0].high


@dataclass(frozen=True)
class EnginesApart:
    """The usual trial of the second engine less that of the first, rad, with its 95 % interval; nan
    where one of them does not tip."""

    engines: tuple[str, str]
    apart: float
    low: float
    high: float


def engines_apart(found: Sequence[LevelSeries]) -> EnginesApart | None:
    """What lies between two engines' usual trials, rad; None of one engine.

    apart = b - a; below it sqrt((b - b_low)^2 + (a_high - a)^2), above it likewise.
    """
    usual = {series.engine: series.levels[0] for series in reversed(found)}
    if len(usual) != 2:
        return None
    (first, a), (second, b) = reversed(usual.items())
    apart = b.tip - a.tip
    below = math.hypot(b.tip - b.low, a.high - a.tip)
    above = math.hypot(b.high - b.tip, a.tip - a.low)
    return EnginesApart((first, second), apart, apart - below, apart + above)


def trial_convergence(
    truck: Truck,
    one: Conditions,
    engines: Sequence[EngineName],
    care: Care = "careful",
    progress: Callable[[int, int], None] = lambda done, of: None,
) -> tuple[LevelSeries, ...]:
    """Every series of every engine, in the same conditions at the likely grip.

    Raises InputError for a truck that makes no multibody.
    """
    near = float(tip_angles(truck, [one.heading], one.grip.likely, one.hold).free[0])
    pace, usual = PACES[care], TrialSettings()
    kinds: tuple[Varied, ...] = ("step", "solver", "rate")
    most, done = len(engines) * (1 + len(kinds) * (len(AS_FINE) - 1)), 0

    def tried(engine: EngineName, varied: Varied, finer: int) -> tuple[TiltTrial, float]:
        nonlocal done
        progress(done, most)
        done += 1
        settings, own = _finer(usual, pace, varied, finer)
        guess = near if math.isfinite(near) else None
        with level_table(truck, settings, engine) as table:
            trial = tilt_on(
                table, one.heading, grip=one.grip.likely, near=guess, rail=one.rail, pace=own
            )
            return trial, table.rig.dt

    found = []
    for engine in engines:
        with level_table(truck, usual, engine) as table:
            varies = table.rig.varies
        first = tried(engine, "step", AS_FINE[0])
        for varied in kinds:
            if varied == "solver" and varied not in varies:
                continue
            made = [first, *(tried(engine, varied, finer) for finer in AS_FINE[1:])]
            levels = tuple(
                _level(varied, finer, *one) for finer, one in zip(AS_FINE, made, strict=True)
            )
            found.append(LevelSeries(first[0].engine, varied, levels, pace.bracket))
    return tuple(found)


def _level(varied: Varied, finer: int, trial: TiltTrial, step: float) -> Level:
    value = {"step": step, "solver": float(finer), "rate": trial.pace.slow}[varied]
    return Level(finer, value, trial.tip, *trial.tip_ci, trial.outcome)


def _finer(
    usual: TrialSettings, pace: Pace, varied: Varied, finer: int
) -> tuple[TrialSettings, Pace]:
    """Stops stay as stiff as they were: only the step is shorter."""
    if varied == "step":
        shorter = {n: getattr(usual, n) / finer for n in ("step", "turn_per_step", "stop_turn")}
        return replace(usual, **shorter, budget=usual.budget * finer), pace
    if varied == "solver":
        return replace(usual, solver=usual.solver * finer), pace
    slower = {n: getattr(pace, n) / finer for n in ("brisk", "slow", "steady")}
    return replace(usual, budget=usual.budget * finer), replace(pace, **slower)


def convergence_rows(found: Sequence[LevelSeries]) -> list[dict[str, Any]]:
    """The table: a row a trial, and one for what lies between two engines; angles in deg, None
    where there is no number."""
    between = dict.fromkeys(
        ("engines_apart_deg", "engines_apart_ci_low_deg", "engines_apart_ci_high_deg")
    )
    rows: list[dict[str, Any]] = []
    for series in found:
        for level in series.levels:
            unit = {"step": 1000.0, "solver": 1.0, "rate": math.degrees(1.0)}[series.varied]
            row = {
                "engine": series.engine,
                "varied": series.varied,
                "finer": level.finer,
                "step_ms": level.value * unit if series.varied == "step" else None,
                "rate_deg_per_s": level.value * unit if series.varied == "rate" else None,
                "outcome": level.outcome,
                "trial_deg": _deg(level.tip),
                "trial_ci_low_deg": _deg(level.low),
                "trial_ci_high_deg": _deg(level.high),
                "change_from_finest_deg": _deg(series.change(level)),
                "observed_order": _number(series.order),
                **between,
            }
            rows.append(row)
    if (two := engines_apart(found)) is not None:
        numbers = map(_deg, (two.apart, two.low, two.high))
        rows.append(
            {
                **dict.fromkeys(rows[0]),
                "engine": f"{two.engines[1]} less {two.engines[0]}",
                "varied": "engine",
                **dict(zip(between, numbers, strict=True)),
            }
        )
    return rows


def _deg(angle: float) -> float | None:
    return _number(math.degrees(angle))


def _number(value: float) -> float | None:
    return value if math.isfinite(value) else None
