"""Sweeps at the front door."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal

from crossfall.front.asking import is_one, result_of
from crossfall.front.results import Result, Results
from crossfall.front.vehicle import Vehicle, vehicle_of
from crossfall.verbs.tilt import FOUR

if TYPE_CHECKING:
    from crossfall.study.scenario import Scenario
    from crossfall.study.sensitivity import Sensitivity

SENSITIVITY_SHOWN = ("heading_deg", "response", "mean_deg", "sd_deg", "mean", "sd", "answers")


class Sweep(Results):
    """The rows of a sweep's table. files: the table, as Parquet and as CSV. complete: nothing is
    left to do. how: truck, ground and method in words. `to_frame` gives all columns."""

    __slots__ = ("complete", "files", "how")
    how: str
    files: tuple[Path, ...]
    complete: bool

    def __init__(
        self,
        rows: Sequence[Result],
        shown: Sequence[str] = (),
        files: Sequence[Path] = (),
        complete: bool = True,
        how: str = "",
    ) -> None:
        super().__init__(rows, shown)
        object.__setattr__(self, "how", how)
        object.__setattr__(self, "files", tuple(files))
        object.__setattr__(self, "complete", complete)

    def __reduce__(self) -> tuple[Any, ...]:
        return Sweep, (self._rows, self._shown, self.files, self.complete, self.how)


class Indices(Results):
    """What `sensitivity` found, a row a heading; `crossfall.plot.indices` draws it. name: of
    what was asked. found: in SI, for the pictures. how: truck, ground and method in words."""

    __slots__ = ("found", "how", "name")
    how: str
    found: tuple[Sensitivity, ...]
    name: str

    def __init__(
        self,
        rows: Sequence[Result],
        shown: Sequence[str] = (),
        found: Sequence[Sensitivity] = (),
        name: str = "",
        how: str = "",
    ) -> None:
        super().__init__(rows, shown)
        object.__setattr__(self, "how", how)
        object.__setattr__(self, "found", tuple(found))
        object.__setattr__(self, "name", name)

    def __repr__(self) -> str:
        return "\n\n".join(map(repr, self)) or "no rows"

    def _repr_html_(self) -> str:
        return "".join(row._repr_html_() for row in self)

    def __reduce__(self) -> tuple[Any, ...]:
        return Indices, (self._rows, self._shown, self.found, self.name, self.how)


def sweep(
    what: Vehicle | str | PathLike[str],
    axes: Mapping[str, Iterable[float | str]] | None = None,
    *,
    heading: float | Iterable[float] | None = None,
    method: str = "compliant",
    folder: str | PathLike[str] | None = None,
    workers: int | None = None,
    responses: Mapping[str, str] | None = None,
    **more: Any,
) -> Sweep:
    """Try many builds, on all cores; what was done before in the same folder is not done again.

    what: a scenario (a file, or a shipped one by name), with everything in it. Or a truck, with
    axes: the values of each dotted key, of heading_deg, slope_deg, grip, or of a condition in
    words: surface, hold, engine, trial, as {"hold": ["brakes", "rail"]}. heading: deg, tried at
    every point; the four cases if not given. method: "closed form", "compliant", "tilt trial",
    "convergence", or by driving "slope trial", "critical slope". responses: columns of your own by
    name, each an expression of the others, as {"in_hand_deg": "goes_at_deg - 25"}. more: any other
    key of a scenario file, as surface, hold, ranges, repeats, tolerances, seed, fixed, design.
    folder: for the results; one under crossfall-out if not given. workers: processes; one a core if
    not given.

    >>> import crossfall, tempfile
    >>> rows = crossfall.sweep("bramble", {"both.track_mm": [170, 180]}, heading=90,
    ...                        folder=tempfile.mkdtemp())
    >>> [round(v, 1) for v in rows.tip_deg]
    [31.6, 33.3]

    Raises InputError for a mistake in keys or values; study.store.StoreError, study.pool.PoolError
    where the work cannot be done or kept.
    """
    from crossfall.study.summary import how_asked
    from crossfall.study.sweep import default_folder
    from crossfall.study.sweep import run_scenario as run

    scenario = _scenario(what, axes, heading, method, responses, more)
    done = run(scenario, Path(folder) if folder else default_folder(scenario), workers=workers)
    table = next(f for f in done.files if f.suffix == ".parquet")
    shown = (*(a.key for a in scenario.axes), "heading_deg", "tip_deg", "goes_at_deg", "first")
    return Sweep(
        _rows(table), tuple(dict.fromkeys(shown)), done.files, done.complete, how_asked(scenario)
    )


def sensitivity(
    what: Vehicle | str | PathLike[str],
    axes: Mapping[str, Iterable[float | str]] | None = None,
    *,
    heading: float | Iterable[float] | None = None,
    method: Literal["closed form", "compliant"] = "compliant",
    how: Literal["sobol", "morris"] = "sobol",
    response: str | None = None,
    samples: int | None = None,
    responses: Mapping[str, str] | None = None,
    **more: Any,
) -> Indices:
    """Which axis matters over the whole of its range, a `Result` a heading, under the keys of
    `crossfall sensitivity --json`; `axes` of each has the strongest first.

    what, axes, heading, more: as for `sweep`, an axis by its least and greatest value; one of
    words gives a `Result` for each. how:
    "sobol", shares of the variance (Saltelli et al. 2010), or "morris", mean effects (Morris 1991).
    response: tip_deg, goes_at_deg, rigid_deg, first_lift_deg, or one of your own by its name, with
    its expression among responses: {"in_hand": "goes_at_deg - 25"}. samples: Sobol, a power of two;
    Morris, trajectories. Raises InputError for a mistake in keys or values, ValueError for response
    or samples.

    >>> import crossfall
    >>> axes = {"both.track_mm": (160, 200), "part.battery pack.at_mm.z": (60, 160)}
    >>> found = crossfall.sensitivity("bramble", axes, heading=90, method="closed form", samples=64)
    >>> found[0].axes[0].key
    'both.track_mm'
    """
    from crossfall.study.sensitivity import how_answered
    from crossfall.study.sensitivity import sobol_sensitivity as indices
    from crossfall.verbs.common import plain_json
    from crossfall.verbs.sensitivity import sensitivity_record

    scenario = _scenario(what, axes, heading, method, responses, more)
    found = indices(scenario, how, response=response, samples=samples)
    rows = [
        result_of(
            {"response": s.response, **plain_json(sensitivity_record(s))},
            (*SENSITIVITY_SHOWN, *s.words, "axes"),
        )
        for s in found
    ]
    by = how_answered(scenario, found[0].response)
    return Indices(rows, SENSITIVITY_SHOWN, found, scenario.spec.name, by)


def _scenario(
    what: Vehicle | str | PathLike[str],
    axes: Mapping[str, Iterable[float | str]] | None,
    heading: float | Iterable[float] | None,
    method: str,
    responses: Mapping[str, str] | None,
    more: Mapping[str, Any],
) -> Scenario:
    """A scenario's own, or that of a truck swept over axes."""
    from crossfall.study.scenario import load_scenario, scenario_of

    if axes is None:
        if (
            isinstance(what, Vehicle)
            or heading is not None
            or more
            or responses
            or method != "compliant"
        ):
            raise ValueError("a truck is swept over axes; a scenario has all that in its file")
        return load_scenario(what if isinstance(what, str) else Path(what))
    vehicle = vehicle_of(what)
    given: Any = FOUR if heading is None else (heading,) if is_one(heading) else heading
    data = {
        "name": f"sweep of {vehicle.name}",
        "method": method,
        "axis": [{"key": k, "values": [_number(v) for v in vs]} for k, vs in axes.items()],
        **({} if "heading_deg" in axes else {"headings_deg": [_number(h) for h in given]}),
        **({"response": [{"name": k, "is": v} for k, v in responses.items()]} if responses else {}),
        **more,
    }
    return scenario_of(vehicle.loaded, data)


def _number(value: Any) -> Any:
    return value.item() if hasattr(value, "item") else value


def _rows(table: Path) -> list[Result]:
    import pyarrow.parquet

    return [Result(row) for row in pyarrow.parquet.read_table(table).to_pylist()]
