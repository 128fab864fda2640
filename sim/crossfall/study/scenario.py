"""Scenarios: files read and checked, with their truck and all their trials (see `scenario_file`).

Every mistake is found before anything runs, each with its file, line and key.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
from pydantic import ValidationError

from crossfall.study.design import Axis, Design, count, points
from crossfall.study.scenario_checks import mistakes
from crossfall.study.scenario_file import MOST_TRIALS, ScenarioSpec
from crossfall.trials.grounds import ground_file
from crossfall.trials.grounds.base import file_digest
from crossfall.truck.build import Loaded, load_truck
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.read import Source, Where, read_source
from crossfall.truck.sentences import problems, suggestion
from crossfall.truck.toml_line_index import KeyPath as Key

MOST_STORED = 200_000  # of a method slower than the closed form: a month of nights


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
        digest_of = cache(lambda name: file_digest(self.path.resolve().parent / name))
        for point in points(self.axes, self.design, self.spec.seed):
            for repeat, seed in enumerate(seeds):
                for heading in headings:
                    chosen = dict(zip(keys, point, strict=True))
                    file = ground_file({**self.spec.fixed, **chosen})
                    laid = {"ground_digest": digest_of(file)} if file else {}
                    yield {**chosen, **heading, **laid, "repeat": repeat, "seed": seed}

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
    spec = _spec_of(source.data, where)
    return _checked(spec, load_truck(_truck_of(spec, path, source, where)), where, path)


def scenario_of(loaded: Loaded, data: Mapping[str, Any]) -> Scenario:
    """The scenario of a truck in memory. data: what the file would hold, without the truck.

    Raises InputError with every mistake.
    """
    data = {**data, "truck": loaded.truck.name}
    name = str(data.get("name", "sweep"))
    where = Where(Source(name, {}, {}), {}, data)
    return _checked(_spec_of(data, where), loaded, where, Path(f"{name}.toml"))


def _spec_of(data: Mapping[str, Any], where: Where) -> ScenarioSpec:
    try:
        return ScenarioSpec.model_validate(data)
    except ValidationError as error:
        raise InputError(problems(error, ScenarioSpec, data, where.place)) from None


def _checked(spec: ScenarioSpec, loaded: Loaded, where: Where, path: Path) -> Scenario:
    if found := mistakes(spec, loaded, where, path.resolve().parent):
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


def _size_mistakes(scenario: Scenario, where: Where) -> list[Problem]:
    most = MOST_TRIALS if scenario.spec.method == "closed form" else MOST_STORED
    if scenario.total <= most:
        return []
    what = f"asks for {scenario.total} trials"
    place: Key = ("axis", 0) if scenario.axes else ("repeats",)
    return [where.problem(place, what, f"at most {most} by {scenario.spec.method}")]
