"""What a batch has to say in the morning: what ran, what failed and why, what surprises."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from functools import partial
from pathlib import Path
from typing import Any

import numpy as np

from crossfall.answers.conditions import choose_grip
from crossfall.study.export import FAILURE, LEADING
from crossfall.study.scenario import Scenario
from crossfall.study.scenario_file import WEIGHTS, WORDS, given_values
from crossfall.study.sweep import PARQUET, STORE, batch_of
from crossfall.truck.edits import paths
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Array

SURPRISES = 8
MOST_HEADINGS = 16  # lines of the table by heading
_TRIALS = {"none": "no trial", "quick": "quick trial", "careful": "careful trial"}
_METHODS = {
    "closed form": "as a rigid block",
    "compliant": "on springs and tyres",
    "tilt trial": "by virtual trials",
    "convergence": "by virtual trials made finer",
    "slope trial": "driven across",
    "critical slope": "driven across, half of the drives fail",
}
_Columns = dict[str, Any]


@dataclass(frozen=True)
class Failure:
    """One cause of failed trials. example: what was put into the first of them."""

    cause: str
    count: int
    example: str


@dataclass(frozen=True)
class HeadingLine:
    """Tip angles found on one heading; all deg, nan where nothing tips. words: what else tells
    the lines apart, as "rail". tips_first: share of lines, or nan."""

    heading_deg: float
    words: str
    lines: int
    least: float
    median: float
    greatest: float
    tips_first: float


@dataclass(frozen=True)
class Surprise:
    """A trial that disagrees with statics; deg. place: its line in the table.

    static: the compliant answer in the same conditions. apart: trial less static.
    """

    place: int
    inputs: str
    trial: float
    static: float
    apart: float


@dataclass(frozen=True)
class ConvergenceLine:
    """One thing made finer in one engine, over all builds and conditions; deg. change: largest from
    the finest. order: median of those seen, of which there are `orders`. held: builds whose usual
    interval holds the finest. varied "engine": change is the largest between two engines, and held
    where their intervals allow it."""

    engine: str
    varied: str
    finer: float
    builds: int
    change: float
    order: float
    orders: int
    held: int


@dataclass(frozen=True)
class Morning:
    """The summary of a batch. columns: its table. took: s of worker time, or nan."""

    scenario: Scenario
    done: int
    failed: int
    total: int
    failures: tuple[Failure, ...]
    headings: tuple[HeadingLine, ...]
    surprises: tuple[Surprise, ...]
    convergence: tuple[ConvergenceLine, ...]
    versions: str
    digest: str
    took: float
    columns: _Columns


def how_asked(scenario: Scenario, method: str = "") -> str:
    """Truck, ground and method, in a few words. method: where it is not the scenario's own."""
    spec, truck = scenario.spec, scenario.loaded.truck
    words = [truck.name]
    if "grip" in spec.fixed:
        words.append(f"grip {spec.fixed['grip']:g}")
    elif all(a.key not in ("grip", "surface") for a in scenario.axes):
        grip = choose_grip(truck, spec.surface)
        words = [f"{truck.name} on {grip.surface}"]
        place = (("grip", grip.surface, "likely"),)
        named = partial(paths, scenario.loaded.spec)
        edits = {named(key): value for key, value in spec.fixed.items() if "." in key}
        if place not in [named(a.key) for a in scenario.axes if "." in a.key]:
            words.append(f"grip {edits.get(place, grip.likely):g}")
    tried = given_values(spec, "trial") or [spec.trial or "careful"]
    said = _METHODS["compliant" if tried == ["none"] else spec.method]
    if tried == ["quick"]:
        said = said.replace("by virtual", "by quick virtual")
    words.append(_METHODS[method] if method else said)
    return ", ".join(words) + (" against a rail" if spec.hold == "rail" else "")


def summarize(scenario: Scenario, folder: Path) -> Morning:
    """Read the table in `folder`. Raises InputError where there is none."""
    columns = read_columns(folder)
    causes = columns[FAILURE]
    good = np.array([c is None for c in causes], bool)
    lines, place = len(good), columns["place"]
    return Morning(
        scenario,
        _trials(place[good]),
        _trials(place[~good]),
        scenario.total,
        failures(columns, good),
        heading_lines(columns, _as_usual(columns, good)),
        surprises(columns, good),
        convergence_lines(columns, good),
        str(columns["versions"][0]) if lines else "",
        str(columns["spec"][0]) if lines else "",
        _took(scenario, folder),
        columns,
    )


def _trials(places: Any) -> int:
    """How many trials lines (n,) of a table belong to; numpy's own `unique` would take a hundred
    times as long over a million."""
    return int(np.count_nonzero(np.bincount(places)))


def read_columns(folder: Path) -> _Columns:
    """The table of a results folder, a numpy array a column; text columns are object arrays."""
    import pyarrow.parquet as pq

    path = folder / PARQUET
    if not path.exists():
        raise InputError(Problem(str(path), "no results here yet", "run the sweep first"))
    try:
        table = pq.read_table(path)
    except (OSError, ValueError) as error:
        what = f"cannot be read as a table: {error}"
        raise InputError(Problem(str(path), what)) from error
    return {name: table[name].to_numpy() for name in table.column_names}


def input_names(columns: _Columns) -> list[str]:
    """Columns that were put in, in order."""
    names = [
        n
        for n in columns
        if n not in LEADING and n not in ("batch", "repeat", "ground_digest", FAILURE)
    ]
    first = next((i for i, n in enumerate(names) if n in WEIGHTS), len(names))
    return names[:first]


def failures(columns: _Columns, good: Any) -> tuple[Failure, ...]:
    """Causes, the commonest first."""
    bad = np.flatnonzero(~good)
    counts = Counter(str(columns[FAILURE][i]) for i in bad)
    first: dict[str, int] = {}
    for i in bad:
        first.setdefault(str(columns[FAILURE][i]), int(i))
    ordered = sorted(counts.items(), key=lambda c: (-c[1], c[0]))
    return tuple(Failure(c, n, _inputs(columns, first[c])) for c, n in ordered)


def heading_lines(columns: _Columns, good: Any) -> tuple[HeadingLine, ...]:
    """Tip angles (deg) by heading and by words; where heading was swept finely, of every few.

    good: (n,) lines with an answer. Least, median and greatest of the finite ones; the share of
    lines that tip first.
    Source: R. J. Hyndman and Y. Fan, The American Statistician 50 (1996) 361-365, for sample
    quantiles, type 7 (from memory).
    """
    if "tip_deg" not in columns or "heading_deg" not in columns:
        return ()
    tips, headings = numbers(columns, "tip_deg"), numbers(columns, "heading_deg")
    first = columns.get("first")
    if "trial_outcome" in columns:
        tried = columns["trial_outcome"]
        first = np.where([outcome is None for outcome in tried], first, tried)
    found = []
    every = np.unique(headings[good])
    for heading in every[:: -(-len(every) // MOST_HEADINGS) or 1]:
        for words, alike in by_words(columns):
            here = good & alike & (headings == heading)
            some = tips[here][np.isfinite(tips[here])]
            a, b, c = map(float, np.quantile(some, [0, 0.5, 1]) if len(some) else [np.nan] * 3)
            share = float("nan") if first is None else float(np.mean(first[here] == "tips"))
            found.append(HeadingLine(float(heading), words, int(here.sum()), a, b, c, share))
    return tuple(found)


def convergence_lines(columns: _Columns, good: Any) -> tuple[ConvergenceLine, ...]:
    """The referee's table over a whole scenario, deg; empty where none was asked for.

    good: (n,) lines with an answer. Largest change from the finest, median of the orders seen, and
    how many intervals hold the finest.
    Source: as `study.convergence`.
    """
    if "varied" not in columns:
        return ()
    varied, engine, place = (columns[k] for k in ("varied", "trial_engine", "place"))
    finer, tip, low, high, order = (
        numbers(columns, k)
        for k in ("finer", "trial_deg", "trial_ci_low_deg", "trial_ci_high_deg", "observed_order")
    )
    change = numbers(columns, "change_from_finest_deg")
    found = []
    kinds = dict.fromkeys(zip(engine[good], varied[good], finer[good].astype(str), strict=True))
    for name, what, times in kinds:
        here = good & (engine == name) & (varied == what) & (finer.astype(str) == times)
        if what == "engine":
            keys = ("engines_apart_deg", "engines_apart_ci_low_deg", "engines_apart_ci_high_deg")
            apart, below, above = (numbers(columns, k)[here] for k in keys)
            held, by, orders = (below <= 0) & (above >= 0), apart, np.zeros(0)
        else:
            finest = tip - change  # of the same kind, on the same line
            held, by = ((low <= finest) & (finest <= high))[here], change[here]
            orders = order[here][np.isfinite(order[here])]
        tipped = by[np.isfinite(by)]
        found.append(
            ConvergenceLine(
                str(name),
                str(what),
                float(times),
                _trials(place[here]),
                float(np.max(np.abs(tipped))) if len(tipped) else np.nan,
                float(np.median(orders)) if len(orders) else np.nan,
                len(orders),
                int(held.sum()),
            )
        )
    return tuple(found)


def _as_usual(columns: _Columns, good: Any) -> Any:
    """Without the trials that were made finer, which say the same again."""
    if "varied" not in columns:
        return good
    return good & (columns["varied"] == "step") & (numbers(columns, "finer") == 1)


def by_words(columns: _Columns) -> list[tuple[str, Any]]:
    """The lines of each combination of words that were varied, and how it is said; all lines, and
    "", where none was."""
    varied = {key: columns[key] for key in WORDS if key in input_names(columns)}
    return same_words(varied, len(columns[FAILURE]))


def same_words(words: Mapping[str, Any], lines: int) -> list[tuple[str, Any]]:
    """The same for columns of words alone, (lines,) each."""
    found: list[tuple[str, Any]] = [("", np.ones(lines, bool))]
    for column in words.values():
        values = list(dict.fromkeys(column))
        if len(values) > 1:
            said = {v: _TRIALS.get(v, v) for v in values}
            found = [
                (f"{before}, {said[v]}".lstrip(", "), some & (column == v))
                for before, some in found
                for v in values
            ]
    return [(words, some) for words, some in found if some.any()]


def surprises(columns: _Columns, good: Any) -> tuple[Surprise, ...]:
    """Where a trial lies furthest from the statics in the same conditions, the worst first; deg.

    good: (n,) lines with an answer.
    Source: derived here: the difference of two answers.
    """
    if "trial_less_compliant_deg" not in columns:
        return ()
    apart = np.where(good, numbers(columns, "trial_less_compliant_deg"), np.nan)
    order = np.argsort(-np.nan_to_num(np.abs(apart)), kind="stable")[:SURPRISES]
    trial, static = (numbers(columns, name) for name in ("tip_deg", "compliant_deg"))
    return tuple(
        Surprise(
            int(columns["place"][i]),
            _inputs(columns, int(i)),
            float(trial[i]),
            float(static[i]),
            float(apart[i]),
        )
        for i in order
        if abs(apart[i]) > 0
    )


def numbers(columns: _Columns, name: str) -> Array:
    """A column as floats, nan where there is none."""
    column = columns[name]
    if column.dtype == object:
        return np.array([np.nan if v is None else float(v) for v in column], np.float64)
    return np.asarray(column, np.float64)


def _inputs(columns: _Columns, line: int) -> str:
    def shown(value: Any) -> str:
        return f"{value:.5g}" if isinstance(value, (float, np.floating)) else str(value)

    return ", ".join(f"{n} {shown(columns[n][line])}" for n in input_names(columns))


def _took(scenario: Scenario, folder: Path) -> float:
    """s that the trials took, as the store remembers."""
    from crossfall.study.store import batch_id, reading

    path = folder / STORE
    if not path.exists():
        return float("nan")
    with reading(path) as db:
        batch = batch_id(batch_of(scenario, folder))
        query = "SELECT total(took) FROM plan JOIN trial USING (key) WHERE batch = ?"
        return float(db.execute(query, (batch,)).fetchone()[0])
