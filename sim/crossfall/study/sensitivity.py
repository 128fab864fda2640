"""Which axis of a scenario matters, over the whole of its range.

Sobol's indices say what share of a response's variance an axis explains by itself (first) and with
all that it does together with others (total); Saltelli's samples, intervals by bootstrap. Morris'
elementary effects need far fewer answers and rank many axes: mu_star, the mean size of the effect
of moving an axis over its whole range, and sigma, how unlike these effects are from place to place.

Both by SALib. I. M. Sobol', Math. Comput. Simul. 55 (2001) 271-280; A. Saltelli et al., Comput.
Phys. Commun. 181 (2010) 259-270; M. D. Morris, Technometrics 33 (1991) 161-174.

Source: the three above, and F. Campolongo, J. Cariboni and A. Saltelli, Environmental Modelling and
Software 22 (2007) 1509-1518, for mu_star (from memory).
"""

from __future__ import annotations

import itertools
import math
import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Literal

import numpy as np

from crossfall.study.methods import NoAnswer, ahead, compliant_rows
from crossfall.study.responses import COLUMNS, with_responses
from crossfall.study.scenario import Scenario
from crossfall.study.scenario_file import CONDITIONS, WEIGHTS, WORDS
from crossfall.study.summary import how_asked
from crossfall.study.sweep import common_of
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Array

How = Literal["sobol", "morris"]
_Progress = Callable[[int, int], None]
_Case = tuple[float, dict[str, str]]  # heading, deg or nan, and words
RESPONSES = ("tip_deg", "goes_at_deg", "rigid_deg", "first_lift_deg")
TRAJECTORIES, LEVELS = 32, 6  # of Morris' design, if nothing else is said
_SAMPLES = 128
_STACK = 32  # builds answered at once
_LEVEL = 0.95


@dataclass(frozen=True)
class AxisIndex:
    """One axis. Sobol: first and total, shares of variance, with the half width of their 95 %
    intervals. Morris: mean effect, mu_star and its half width, sigma, in the response's unit."""

    key: str
    first: float = math.nan
    first_pm: float = math.nan
    total: float = math.nan
    total_pm: float = math.nan
    effect: float = math.nan
    mu_star: float = math.nan
    mu_star_pm: float = math.nan
    sigma: float = math.nan


@dataclass(frozen=True)
class Sensitivity:
    """On one heading, deg; nan where heading is an axis. words: the values of axes that hold words,
    which have no range but an answer each. axes: the strongest first. answers: how many it rests
    on, of which `lost` had none and count as the mean. mean, sd: of the response."""

    heading: float
    words: Mapping[str, str]
    response: str
    how: How
    axes: tuple[AxisIndex, ...]
    mean: float
    sd: float
    answers: int
    lost: int

    @property
    def said(self) -> tuple[str, ...]:
        """Heading and words as a title has them."""
        heading = () if math.isnan(self.heading) else (f"heading {self.heading:g}",)
        return *heading, *self.words.values()


def how_answered(scenario: Scenario, response: str) -> str:
    """Truck, ground and the method that the response was answered by, in a few words.

    Source: derived here: rigid_deg is the closed form, all other answers are on springs.
    """
    expression = scenario.spec.responses.get(response, response)
    used = set(re.findall(r"\w+", expression)) & set(COLUMNS) - {*WEIGHTS, *CONDITIONS, *WORDS}
    return how_asked(scenario, "closed form" if used == {"rigid_deg"} else "compliant")


def sobol_sensitivity(
    scenario: Scenario,
    how: How = "sobol",
    *,
    response: str | None = None,
    samples: int | None = None,
    progress: _Progress = lambda done, of: None,
) -> tuple[Sensitivity, ...]:
    """The indices of every axis of numbers, on every heading of a scenario and for every value of
    its axes of words, by the compliant answer.

    response: one of RESPONSES or of the scenario's own; rigid_deg where the scenario's method is
    the closed form, else tip_deg, if not given. Axes count as even between their least and greatest
    value; their steps and the design have no say here. samples: Sobol, a power of two (samples
    (axes + 2) answers a heading); Morris, trajectories (samples (axes + 1) answers). Raises
    InputError for a scenario this cannot be asked of, ValueError for samples or a response that
    cannot be.
    """
    count = samples or (_SAMPLES if how == "sobol" else TRAJECTORIES)
    if response is None:
        response = "rigid_deg" if scenario.spec.method == "closed form" else "tip_deg"
    known = (*RESPONSES, *scenario.spec.responses)
    if response not in known:
        raise ValueError(f"the response is {response}; it may be {', '.join(known)}")
    if how == "sobol" and (count < 16 or count & (count - 1)):
        raise ValueError(f"samples is {count}; it must be a power of two from 16")
    if how == "morris" and not 4 <= count <= 10_000:
        raise ValueError(f"samples is {count}; 4 to 10000 trajectories can be drawn")
    bounds = _bounds(scenario)
    problem = {"num_vars": len(bounds), "names": list(bounds), "bounds": list(bounds.values())}
    seed = scenario.spec.seed + 1  # the library takes 0 for no seed
    drawn = _drawn(problem, how, count, seed)
    headings = [math.nan] if scenario.heading_varies else list(scenario.headings)
    said = [[(a.key, v) for v in a.values] for a in scenario.axes if a.key in WORDS]
    cases = [(h, dict(words)) for h in headings for words in itertools.product(*said)]
    values = _answers(scenario, list(bounds), drawn, cases, response, progress)
    return tuple(
        _indices(problem, how, case, response, drawn, v, seed)
        for case, v in zip(cases, values, strict=True)
    )


def _bounds(scenario: Scenario) -> dict[str, tuple[float, float]]:
    found: dict[str, tuple[float, float]] = {}
    name = str(scenario.path)
    if scenario.spec.method not in ("closed form", "compliant"):
        what = f"its method is '{scenario.spec.method}'"
        raise InputError(Problem(name, what, "sensitivity is asked of closed form or compliant"))
    for axis in scenario.axes:
        if axis.key in WORDS:
            continue
        if not all(isinstance(v, float) for v in axis.values) or min(axis.values) == max(
            axis.values
        ):
            what = f"axis '{axis.key}' has no range of numbers"
            raise InputError(Problem(name, what, "give it a first and a last"))
        found[axis.key] = (float(min(axis.values)), float(max(axis.values)))
    if len(found) < 2:
        what = f"has {len(found)} axis of numbers"
        raise InputError(Problem(name, what, "two or more can be compared"))
    return found


def _drawn(problem: dict[str, Any], how: How, count: int, seed: int) -> Array:
    if how == "sobol":
        from SALib.sample import sobol

        return np.asarray(sobol.sample(problem, count, calc_second_order=False, seed=seed))
    from SALib.sample import morris

    return np.asarray(morris.sample(problem, count, num_levels=LEVELS, seed=seed))


def _answers(
    scenario: Scenario,
    keys: Sequence[str],
    drawn: Array,
    cases: Sequence[_Case],
    response: str,
    progress: _Progress,
) -> Array:
    """(C, N) in the response's unit, nan where there is no answer."""
    own = scenario.spec.responses
    common, seed = common_of(scenario) | {"method": "compliant"}, scenario.seed_of(0)
    out = np.full((len(cases), len(drawn)), np.nan)
    for begin in range(0, len(drawn), _STACK):
        progress(begin * len(cases), out.size)
        some = range(begin, min(begin + _STACK, len(drawn)))
        tasks = [
            (c, i, dict(zip(keys, map(float, drawn[i]), strict=True)) | at | {"seed": seed})
            for c, at in enumerate(map(_at, cases))
            for i in some
        ]
        ahead(common, [payload for _, _, payload in tasks])
        for c, i, payload in tasks:
            try:
                row = {**common["fixed"], **payload, **compliant_rows(common, payload)[0]}
                value = with_responses(row, own)[response] if response in own else row[response]
            except (NoAnswer, InputError):
                continue
            out[c, i] = np.nan if value is None else value
    progress(out.size, out.size)
    return out


def _at(case: _Case) -> dict[str, Any]:
    heading, words = case
    return {**words, **({} if math.isnan(heading) else {"heading_deg": heading})}


def _indices(
    problem: dict[str, Any],
    how: How,
    case: _Case,
    response: str,
    drawn: Array,
    values: Array,
    seed: int,
) -> Sensitivity:
    lost = np.isnan(values)
    if lost.all():
        raise InputError(Problem("sensitivity", "no build in the range has an answer", "narrow it"))
    mean, sd = float(values[~lost].mean()), float(values[~lost].std())
    axes = _analysed(problem, how, drawn, np.where(lost, mean, values), seed)
    return Sensitivity(*case, response, how, axes, mean, sd, len(values), int(lost.sum()))


def _analysed(
    problem: dict[str, Any], how: How, drawn: Array, values: Array, seed: int
) -> tuple[AxisIndex, ...]:
    names = problem["names"]
    if values.std() < 1e-12:
        still = {"first": 0.0, "total": 0.0} if how == "sobol" else {"mu_star": 0.0, "sigma": 0.0}
        return tuple(AxisIndex(name, **still) for name in names)
    if how == "sobol":
        from SALib.analyze import sobol

        found = sobol.analyze(
            problem,
            values,
            calc_second_order=False,
            conf_level=_LEVEL,
            num_resamples=400,
            seed=seed,
        )
        axes = [
            AxisIndex(name, *map(float, numbers))
            for name, *numbers in zip(
                names, found["S1"], found["S1_conf"], found["ST"], found["ST_conf"], strict=True
            )
        ]
        return tuple(sorted(axes, key=lambda a: -a.total))
    from SALib.analyze import morris

    found = morris.analyze(
        problem, drawn, values, num_levels=LEVELS, conf_level=_LEVEL, num_resamples=400, seed=seed
    )
    axes = [
        AxisIndex(name, effect=float(mu), mu_star=float(star), mu_star_pm=float(pm), sigma=float(s))
        for name, mu, star, pm, s in zip(
            names, found["mu"], found["mu_star"], found["mu_star_conf"], found["sigma"], strict=True
        )
    ]
    return tuple(sorted(axes, key=lambda a: -a.mu_star))
