"""Scenario files (TOML): which truck, what is varied, which method answers.

    name = "track against approach angle"
    truck = "bramble"                  # a demo truck, or a file beside this one
    method = "closed form"             # closed form, compliant, tilt trial; or by driving across:
                                       # slope trial (at slope_deg), critical slope (finds it)
    headings_deg = [0, 90, 180, 270]   # unless heading_deg is an axis
    repeats = 1                        # each point this often, with seeds of its own
    seed = 1
    tolerances = false                 # true: each trial draws masses and places within theirs

    [fixed]                            # any value of the truck file, by dotted key
    "both.suspension.spring_n_per_mm" = 0.3

    [[axis]]
    key = "both.track_mm"              # a dotted key, or heading_deg, slope_deg, grip, and for
                                       # driving speed_mm_per_s, stone_mm, rough_mm (0: none)
    first = 160
    last = 200
    steps = 21                         # or values = [160, 180, 200]

    [design]
    kind = "grid"                      # grid, latin hypercube, sobol
    points = 512                       # not for a grid

    [[map]]                            # pictures of the summary page
    x = "both.track_mm"
    y = "heading_deg"
    shows = "tip"                      # tip, or slope: what happens on slope_deg

Every mistake is found before anything runs, each with its file, line and key.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Annotated, Any, Literal

import numpy as np
from pydantic import Field, PlainValidator, ValidationError, model_validator
from pydantic_core import PydanticKnownError

from crossfall.answers.conditions import Hold
from crossfall.study.design import Axis, Design, Kind, count, points
from crossfall.truck.build import Loaded, load_truck
from crossfall.truck.edits import get_value, set_value
from crossfall.truck.lines import Path as Key
from crossfall.truck.problems import InputError, Problem
from crossfall.truck.read import Source, Where, read_source
from crossfall.truck.schema import Angle, Line, Name, Strict, Text, TruckSpec, mistake
from crossfall.truck.sentences import problems, suggestion

MOST = 10_000_000  # trials of one scenario
MOST_NUMBER = 1e15  # of any value
MOST_STORED = 200_000  # of a method slower than the closed form: a month of nights
CONDITIONS: dict[str, tuple[float, float]] = {  # keys that are no value of a truck: their bounds
    "heading_deg": (-360.0, 360.0),
    "slope_deg": (0.0, 89.0),
    "grip": (0.01, 5.0),
    "speed_mm_per_s": (1.0, 5000.0),
    "stone_mm": (0.0, 100.0),  # 0: none, so that an axis may begin with the plane
    "rough_mm": (0.0, 30.0),
}
DRIVING = ("speed_mm_per_s", "stone_mm", "rough_mm")  # conditions of trials that drive
WEIGHTS = ("mass_g", "cg_x_mm", "cg_y_mm", "cg_z_mm", "front_share")  # of every build
MethodName = Literal["closed form", "compliant", "tilt trial", "slope trial", "critical slope"]


def _plain(value: object) -> bool | float | str:
    if isinstance(value, bool | str):
        return value
    if not isinstance(value, int | float):
        raise PydanticKnownError("float_type")
    if not -MOST_NUMBER < value < MOST_NUMBER:
        raise PydanticKnownError("finite_number")
    return float(value)


Plain = Annotated[bool | float | str, PlainValidator(_plain)]


class AxisSpec(Strict):
    """What is varied: a list of values, or from first to last in a number of steps."""

    key: Line
    values: Annotated[tuple[Plain, ...], Field(strict=False, min_length=1)] | None = None
    first: float | None = None
    last: float | None = None
    steps: Annotated[int, Field(ge=2, le=1_000_000)] | None = None

    @model_validator(mode="after")
    def _one_way(self) -> AxisSpec:
        ranged = [k for k in ("first", "last", "steps") if getattr(self, k) is not None]
        if self.values is not None and ranged:
            raise mistake(ranged[0], "is given and so is values", "keep one of the two")
        if self.values is None and (self.first is None or self.last is None):
            missing = "first" if self.first is None else "last"
            raise mistake(missing, "is missing", "give values, or first and last")
        if self.first is not None and self.last is not None and self.first >= self.last:
            raise mistake(
                "last", f"is {self.last:g}", f"it must be more than first, {self.first:g}"
            )
        return self

    def grid_values(self) -> tuple[Any, ...]:
        """All values of a grid, or the two bounds where no steps are given."""
        if self.values is not None:
            return self.values
        return tuple(np.linspace(self.first or 0.0, self.last or 0.0, self.steps or 2).tolist())


class DesignSpec(Strict):
    kind: Kind = "grid"
    points: Annotated[int, Field(ge=1, le=MOST)] | None = None

    @model_validator(mode="after")
    def _points_fit(self) -> DesignSpec:
        if self.kind == "grid" and self.points is not None:
            raise mistake("points", "has no use in a grid", "give each axis its steps")
        if self.kind != "grid" and self.points is None:
            raise mistake("points", "is missing", f"say how many points the {self.kind} has")
        if self.kind == "sobol" and self.points and self.points & (self.points - 1):
            near = 2 ** round(np.log2(self.points))
            raise mistake(
                "points",
                f"is {self.points}",
                f"a Sobol sequence is balanced only at powers of two, such as {near}",
            )
        return self


class MapSpec(Strict):
    """A picture of the results over x and y, two columns of the table.

    tip: where it tips, with the frontier to sliding first. slope: what happens on slope_deg.
    """

    x: Line
    y: Line
    shows: Literal["tip", "slope"] = "tip"
    title: Line | None = None


class LimitsSpec(Strict):
    """When a trial is given up."""

    trial_s: Annotated[float, Field(gt=0, le=86_400)] = 120.0


class ScenarioSpec(Strict):
    name: Name
    note: Text = ""
    truck: Line
    method: MethodName
    headings_deg: Annotated[tuple[Angle, ...], Field(strict=False, min_length=1)] = (
        0.0,
        90.0,
        180.0,
        270.0,
    )
    surface: Name | None = None
    hold: Hold = "brakes"
    repeats: Annotated[int, Field(ge=1, le=1_000_000)] = 1
    seed: Annotated[int, Field(ge=0, lt=2**53)] = 0
    tolerances: bool = False
    fixed: dict[str, Plain] = Field(default_factory=dict)
    axis: Annotated[tuple[AxisSpec, ...], Field(strict=False)] = ()
    design: DesignSpec = DesignSpec()
    limits: LimitsSpec = LimitsSpec()
    map: Annotated[tuple[MapSpec, ...], Field(strict=False)] = ()


@dataclass(frozen=True)
class Scenario:
    """A checked scenario with its truck. axes, design: what is varied. path: its file."""

    spec: ScenarioSpec
    loaded: Loaded
    axes: tuple[Axis, ...]
    design: Design
    path: Path

    @property
    def points(self) -> int:
        """Points of the design."""
        return count(self.axes, self.design)

    @property
    def heading_varies(self) -> bool:
        """Whether heading is an axis, so that headings_deg is not used."""
        return any(a.key == "heading_deg" for a in self.axes)

    def seed_of(self, repeat: int) -> int:
        """The seed of every trial of a repeat.

        The same for all builds, so that they meet the same ground and the same errors, and a
        difference between them is the build's.
        """
        return int(np.random.SeedSequence((self.spec.seed, repeat)).generate_state(1)[0])

    def payloads(self) -> Iterator[dict[str, Any]]:
        """What is special to each trial, in the order of the table."""
        seeds = [self.seed_of(r) for r in range(self.spec.repeats)]
        headings = [{}] if self.heading_varies else [{"heading_deg": h} for h in self.headings]
        keys = [a.key for a in self.axes]
        for point in points(self.axes, self.design, self.spec.seed):
            for repeat, seed in enumerate(seeds):
                for heading in headings:
                    chosen = dict(zip(keys, point, strict=True))
                    yield {**chosen, **heading, "repeat": repeat, "seed": seed}

    @property
    def headings(self) -> tuple[float, ...]:
        """deg, tried at every point."""
        return tuple(float(h) for h in self.spec.headings_deg)

    @property
    def total(self) -> int:
        """Trials of the whole scenario."""
        return self.points * self.spec.repeats * (1 if self.heading_varies else len(self.headings))


def load_scenario(path_or_name: str | Path) -> Scenario:
    """The scenario of a file, or a shipped one by name. Raises InputError with every mistake."""
    path = locate_scenario(path_or_name)
    source = read_source(path, str(path))
    where = Where(source, {}, source.data)
    try:
        spec = ScenarioSpec.model_validate(source.data)
    except ValidationError as error:
        raise InputError(problems(error, ScenarioSpec, source.data, where.place)) from None
    loaded = load_truck(_truck_of(spec, path, source, where))
    found = [*_key_mistakes(spec, loaded.spec, where), *_design_mistakes(spec, where)]
    if found:
        raise InputError(found)
    axes = tuple(Axis(a.key, a.grid_values()) for a in spec.axis)
    scenario = Scenario(spec, loaded, axes, Design(spec.design.kind, spec.design.points or 0), path)
    if found := _size_mistakes(scenario, where):
        raise InputError(found)
    return scenario


def scenario_folder() -> Path:
    """The folder of the shipped scenarios. Raises FileNotFoundError where there is none."""
    package = Path(__file__).resolve().parents[1]
    for folder in (package / "_data" / "scenarios", package.parents[1] / "scenarios"):
        if folder.is_dir():
            return folder
    raise FileNotFoundError(f"no scenarios beside {package}")


def scenario_names() -> tuple[str, ...]:
    """Names of the shipped scenarios."""
    try:
        return tuple(sorted(p.stem for p in scenario_folder().glob("*.toml")))
    except FileNotFoundError:
        return ()


def locate_scenario(path_or_name: str | Path) -> Path:
    """The file meant: as given, else a shipped scenario of that name. Raises InputError."""
    given = str(path_or_name)
    try:
        if Path(given).is_file() or given.endswith(".toml"):
            return Path(given)
    except (OSError, ValueError):
        raise InputError(Problem(repr(given)[:80], "is not a usable file name")) from None
    if given in scenario_names():
        return scenario_folder() / f"{given}.toml"
    hint = suggestion(given, scenario_names())
    raise InputError(Problem(given, "there is no such file, and no shipped scenario either", hint))


def _truck_of(spec: ScenarioSpec, path: Path, source: Source, where: Where) -> str | Path:
    beside = path.resolve().parent / spec.truck
    if beside.is_file():
        return beside
    try:
        from crossfall.truck.read import locate

        return locate(spec.truck)
    except InputError as error:
        (problem,) = error.problems
        raise InputError(
            where.problem(("truck",), f"'{spec.truck}': {problem.what}", problem.allowed)
        ) from None


def _key_mistakes(spec: ScenarioSpec, truck: TruckSpec, where: Where) -> Iterator[Problem]:
    """Keys that name nothing, and values that do not fit where they would go."""
    seen: dict[str, str] = {}
    for key, value in spec.fixed.items():
        yield from _value_mistakes(truck, where, ("fixed", key), key, [value])
        seen[key] = "fixed"
    for i, axis in enumerate(spec.axis):
        place: Key = ("axis", i)
        if axis.key in seen:
            yield where.problem((*place, "key"), f"'{axis.key}' is varied already", "once")
        seen[axis.key] = "axis"
        key_place = (*place, "key")
        values = axis.grid_values()
        tried = values if len(values) <= 50 else (values[0], values[-1])
        if axis.values is not None:
            for j, value in enumerate(values[:50]):
                at = (*place, "values", j)
                bad = list(_value_mistakes(truck, where, at, axis.key, [value], key_place))
                yield from bad
                if bad and bad[0].line == where.place(key_place)[1]:
                    break  # the key itself is wrong: once is enough
        else:
            yield from _value_mistakes(truck, where, key_place, axis.key, list(tried))


def _value_mistakes(
    truck: TruckSpec,
    where: Where,
    place: Key,
    key: str,
    values: list[Any],
    key_place: Key | None = None,
) -> Iterator[Problem]:
    """At most one problem: the first value that cannot stand at `key`."""
    if "." not in key:
        yield from _condition_mistakes(where, place, key, values, key_place)
        return
    try:
        get_value(truck, key)
    except InputError as error:
        (problem,) = error.problems[:1]
        yield where.problem(key_place or place, f"'{key}': {problem.what}", problem.allowed)
        return
    for value in values:
        try:
            set_value(truck, key, value)
        except InputError as error:
            problem = error.problems[0]
            yield where.problem(place, f"'{key}' {problem.what}", problem.allowed)
            return


def _condition_mistakes(
    where: Where, place: Key, key: str, values: list[Any], key_place: Key | None
) -> Iterator[Problem]:
    if key not in CONDITIONS:
        known = [*CONDITIONS, *TruckSpec.model_fields]
        hint = suggestion(key, known)
        what = f"'{key}' is neither a dotted key of the truck nor a condition"
        yield where.problem(key_place or place, what, hint)
        return
    low, high = CONDITIONS[key]
    for value in values:
        number = isinstance(value, (int, float)) and not isinstance(value, bool)
        if not number or not low <= value <= high:
            shown = f"{value:g}" if number else repr(value)
            none = ", 0 for none" if key in ("stone_mm", "rough_mm") else ""
            allowed = f"it must be {low:g} to {high:g}{none}"
            yield where.problem(place, f"{key} is {shown}", allowed)
            return


def _design_mistakes(spec: ScenarioSpec, where: Where) -> Iterator[Problem]:
    grid = spec.design.kind == "grid"
    for i, axis in enumerate(spec.axis):
        if grid and axis.values is None and axis.steps is None:
            yield where.problem(("axis", i), "has no steps", "say into how many a grid cuts it")
        if not grid and axis.values is not None:
            what, allowed = "is a list", f"a {spec.design.kind} wants first and last"
            yield where.problem(("axis", i, "values"), what, allowed)
        if not grid and axis.steps is not None:
            what, allowed = "has no use here", f"a {spec.design.kind} has points instead"
            yield where.problem(("axis", i, "steps"), what, allowed)
    if not grid and not spec.axis:
        yield where.problem(("design", "kind"), f"is '{spec.design.kind}'", "it needs an axis")
    if spec.repeats > 1 and not spec.tolerances and spec.method in ("closed form", "compliant"):
        what = f"is {spec.repeats}, but every repeat would be the same"
        yield where.problem(("repeats",), what, "1, or tolerances = true")
    if any(a.key == "heading_deg" for a in spec.axis) and "headings_deg" in spec.model_fields_set:
        what = "is given and heading_deg is varied"
        yield where.problem(("headings_deg",), what, "keep one of the two")
    if spec.method == "slope trial" and not _given(spec, "slope_deg"):
        what = "is 'slope trial', but no slope is given"
        yield where.problem(("method",), what, "vary slope_deg or fix it")
    yield from _driving_mistakes(spec, where)
    columns = [*(a.key for a in spec.axis), "heading_deg", *WEIGHTS]
    for i, wanted in enumerate(spec.map):
        for side in ("x", "y"):
            name = getattr(wanted, side)
            if name not in columns:
                hint = suggestion(name, columns)
                yield where.problem(("map", i, side), f"'{name}' is no column to draw over", hint)
        if wanted.shows == "slope" and not _given(spec, "slope_deg"):
            what = "is 'slope', but no slope is given"
            yield where.problem(("map", i, "shows"), what, "vary slope_deg or fix it")


def _driving_mistakes(spec: ScenarioSpec, where: Where) -> Iterator[Problem]:
    places: list[tuple[str, Key]] = [(k, ("fixed", k)) for k in spec.fixed]
    places += [(a.key, ("axis", i, "key")) for i, a in enumerate(spec.axis)]
    drives = spec.method in ("slope trial", "critical slope")
    if _given(spec, "stone_mm") and _given(spec, "rough_mm"):
        place = dict(places)["rough_mm"]
        yield where.problem(place, "'rough_mm' is given and so is stone_mm", "keep one of the two")
    for key, place in places:
        if key in DRIVING and not drives:
            what = f"'{key}' is for a truck that drives"
            yield where.problem(place, what, "use it with slope trial or critical slope")
        if key == "slope_deg" and spec.method in ("tilt trial", "critical slope"):
            what = f"'slope_deg' has no use in a {spec.method}"
            yield where.problem(place, what, "it finds the slope itself")


def _given(spec: ScenarioSpec, key: str) -> bool:
    return key in spec.fixed or any(a.key == key for a in spec.axis)


def _size_mistakes(scenario: Scenario, where: Where) -> list[Problem]:
    most = MOST if scenario.spec.method == "closed form" else MOST_STORED
    if scenario.total <= most:
        return []
    what = f"asks for {scenario.total} trials"
    place: Key = ("axis", 0) if scenario.axes else ("repeats",)
    return [where.problem(place, what, f"at most {most} by {scenario.spec.method}")]
