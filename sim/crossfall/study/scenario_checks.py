"""What is wrong in a scenario file that reads well: keys that name nothing, values that do not fit,
words that contradict each other."""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from crossfall.answers.conditions import choose_grip
from crossfall.engines.held import installed, usual_engine
from crossfall.study.responses import COLUMNS, FUNCTIONS, fault
from crossfall.study.scenario_file import (
    CONDITIONS,
    DRIVES,
    DRIVING,
    TILTS,
    WEIGHTS,
    WORDS,
    ScenarioSpec,
    given_values,
)
from crossfall.trials.grounds import ground_keys, ground_of, grounds
from crossfall.truck.build import Loaded
from crossfall.truck.edits import get_value, set_value
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Truck
from crossfall.truck.read import Where
from crossfall.truck.schema import TruckSpec
from crossfall.truck.sentences import suggestion
from crossfall.truck.toml_line_index import KeyPath as Key

_GOES_WITH_TILTS = f"it goes with {' and '.join(TILTS)}"
_OF_TURNING = ("chassis.steer_deg", "front.kingpin_offset_mm")
MOST_LAID = 50  # grounds that are read before a sweep begins


def mistakes(spec: ScenarioSpec, loaded: Loaded, where: Where, folder: Path) -> list[Problem]:
    """All of them, each with its file, line and key. folder: of the scenario."""
    return [
        *_key_mistakes(spec, loaded.spec, where),
        *_design_mistakes(spec, where),
        *_driving_mistakes(spec, where),
        *_word_mistakes(spec, where),
        *_laid_mistakes(spec, where, folder),
        *_ground_mistakes(spec, loaded.truck, where),
        *_map_mistakes(spec, where),
        *_response_mistakes(spec, where),
        *_front_mistakes(spec, where),
        *_keep_mistakes(spec, where),
    ]


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
        if key in WORDS:
            known = WORDS[key] or tuple(truck.grip)
            yield from _unknown_words(where, place, key, values, known)
        else:
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


def _unknown_words(
    where: Where, place: Key, key: str, values: list[Any], known: tuple[str, ...]
) -> Iterator[Problem]:
    if place[0] == "fixed":
        yield where.problem(place, f"'{key}' is no value of the truck", f"write {key} at the top")
        return
    for value in values:
        if not isinstance(value, str):
            yield where.problem(place, f"'{key}' is given by numbers", "list its values, all words")
            return
        if value not in known:
            yield where.problem(place, f"{key} is '{value}'", suggestion(value, known))
            return


def _condition_mistakes(
    where: Where, place: Key, key: str, values: list[Any], key_place: Key | None
) -> Iterator[Problem]:
    ground = ground_keys().get(key)
    if ground is not None and ground.file:
        for value in values:
            if not isinstance(value, str):
                yield where.problem(place, f"{key} is {value!r}", "it must be the name of a file")
                return
        return
    if key not in CONDITIONS:
        known = [*CONDITIONS, *WORDS, *DRIVING, *TruckSpec.model_fields]
        hint = suggestion(key, known)
        what = f"'{key}' is neither a dotted key of the truck nor a condition"
        yield where.problem(key_place or place, what, hint)
        return
    low, high = CONDITIONS[key]
    for value in values:
        number = isinstance(value, (int, float)) and not isinstance(value, bool)
        if not number or not low <= value <= high:
            shown = f"{value:g}" if number else repr(value)
            none = ", 0 for none" if ground is not None else ""
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


def _map_mistakes(spec: ScenarioSpec, where: Where) -> Iterator[Problem]:
    columns = [*(a.key for a in spec.axis), "heading_deg", *WEIGHTS]
    for i, wanted in enumerate(spec.map):
        for side in ("x", "y"):
            name = getattr(wanted, side)
            if name in WORDS and name in columns:
                what = f"'{name}' is a word, and each of its values has a panel already"
                yield where.problem(("map", i, side), what, "draw over numbers")
            elif name not in columns:
                hint = suggestion(name, columns)
                yield where.problem(("map", i, side), f"'{name}' is no column to draw over", hint)
        place = ("map", i, "shows")
        if wanted.shows == "slope" and not _given(spec, "slope_deg"):
            yield where.problem(
                place, "is 'slope', but no slope is given", "vary slope_deg or fix it"
            )
        answers = ["tip", "slope", *COLUMNS, *spec.responses]
        if wanted.shows not in answers:
            hint = suggestion(wanted.shows, answers)
            yield where.problem(place, f"'{wanted.shows}' is no column to show", hint)


def _response_mistakes(spec: ScenarioSpec, where: Where) -> Iterator[Problem]:
    own = _known(spec)
    for i, one in enumerate(spec.response):
        if one.name in COLUMNS or one.name in own:
            what = f"'{one.name}' is a column already"
            yield where.problem(("response", i, "name"), what, "choose another name")
        elif found := fault(one.expression, own):
            what, word = found
            names = [*COLUMNS, *sorted(own), *FUNCTIONS]
            yield where.problem(("response", i, "is"), what, suggestion(word, names))
        own[one.name] = 1.0


def _known(spec: ScenarioSpec) -> dict[str, Any]:
    """Columns of the scenario's own, each with one of its values."""
    return {**{a.key: a.grid_values()[0] for a in spec.axis}, **spec.fixed}


def _keep_mistakes(spec: ScenarioSpec, where: Where) -> Iterator[Problem]:
    if spec.keep is None:
        return
    if spec.method not in ("tilt trial", "slope trial"):
        what = f"has no use in {spec.method}"
        yield where.problem(("keep",), what, "it goes with tilt trial and slope trial")
        return
    own = _known(spec)
    if found := fault(spec.keep, own):
        what, word = found
        names = [*COLUMNS, *sorted(own), *FUNCTIONS]
        yield where.problem(("keep",), what, suggestion(word, names))


def _front_mistakes(spec: ScenarioSpec, where: Where) -> Iterator[Problem]:
    columns = [*COLUMNS, *(a.key for a in spec.axis), *spec.responses]
    for i, front in enumerate(spec.front):
        for name in front.aims:
            if name in WORDS:
                what = f"'{name}' is a word, of which none is higher"
                yield where.problem(("front", i, "aims", name), what, "aim at numbers")
            elif name not in columns:
                hint = suggestion(name, columns)
                yield where.problem(("front", i, "aims", name), f"'{name}' is no column", hint)


def _driving_mistakes(spec: ScenarioSpec, where: Where) -> Iterator[Problem]:
    places: list[tuple[str, Key]] = [(k, ("fixed", k)) for k in spec.fixed]
    places += [(a.key, ("axis", i, "key")) for i, a in enumerate(spec.axis)]
    drives = spec.method in DRIVES
    for key, place in places:
        if key in DRIVING and not drives:
            what = f"'{key}' is for a truck that drives"
            yield where.problem(place, what, "use it with slope trial or critical slope")
        if key == "slope_deg" and spec.method in (*TILTS, "critical slope"):
            what = f"'slope_deg' has no use in a {spec.method}"
            yield where.problem(place, what, "it finds the slope itself")
        if drives and key in _OF_TURNING:
            what = f"'{key}' has no use in a {spec.method}"
            allowed = "it drives straight ahead, not with its front wheels turned"
            yield where.problem(place, what, allowed)


def _word_mistakes(spec: ScenarioSpec, where: Where) -> Iterator[Problem]:
    """Conditions in words: said twice, or of no use to the method."""
    drives = spec.method in DRIVES
    for key in WORDS:
        axis = any(a.key == key for a in spec.axis)
        place: Key = _place_of(spec, key) if axis else (key,)
        what = f"'{key}' is varied" if axis else "is given"
        if axis and getattr(spec, key) is not None and key in spec.model_fields_set:
            yield where.problem((key,), "is given and is varied", "keep one of the two")
        if not axis and getattr(spec, key) is None:
            continue
        if key == "surface" and _given(spec, "grip"):
            yield where.problem(place, f"{what} and so is grip", "keep one of the two")
        if key in ("engine", "trial") and spec.method not in TILTS:
            what = f"'{key}' is varied but has" if axis else "has"
            yield where.problem(place, f"{what} no use in {spec.method}", _GOES_WITH_TILTS)
        tried = given_values(spec, key) or [getattr(spec, key)]
        if key == "trial" and spec.method == "convergence" and "none" in tried:
            yield where.problem(place, "is 'none', but convergence tries", "careful or quick")
        if key == "hold" and drives and "rail" in tried:
            yield where.problem(place, "is 'rail', but the truck drives", "leave it out")
    for engine in given_values(spec, "engine") or [spec.engine]:
        if engine in WORDS["engine"] and not installed(engine):
            place = _place_of(spec, "engine") if spec.engine is None else ("engine",)
            what = f"is '{engine}', which is not installed here"
            yield where.problem(place, what, f"choose {usual_engine()}, or leave it out")


def _laid_mistakes(spec: ScenarioSpec, where: Where, folder: Path) -> Iterator[Problem]:
    """Two grounds at once, sizes of a ground that is not there, and files that hold none."""
    order = [*spec.fixed, *(a.key for a in spec.axis)]
    asked = [kind for kind in grounds().values() if kind.keys and kind.keys[0].key in order]
    asked.sort(key=lambda kind: order.index(kind.keys[0].key))
    if len(asked) > 1:
        first, second = (kind.keys[0].key for kind in asked[:2])
        what = f"'{second}' is given and so is {first}"
        yield where.problem(_place_of(spec, second), what, "keep one of the two")
        return
    for kind in grounds().values():
        for key in kind.keys[1:]:
            if kind not in asked and _given(spec, key.key):
                what = f"'{key.key}' is given without {kind.keys[0].key}"
                yield where.problem(_place_of(spec, key.key), what, f"give {kind.keys[0].key} too")
    for kind in asked:
        keys = [k.key for k in kind.keys if _given(spec, k.key)]
        tried = itertools.product(*(given_values(spec, k)[:MOST_LAID] for k in keys))
        for values in itertools.islice(tried, MOST_LAID):
            try:
                ground_of(dict(zip(keys, values, strict=True)), folder)
            except InputError as error:
                problem = error.problems[0]
                place = _place_of(spec, keys[0])
                yield where.problem(place, f"{problem.file}: {problem.what}", problem.allowed)
                return
            except (ValueError, TypeError):
                continue  # said of the value itself


def _place_of(spec: ScenarioSpec, key: str) -> Key:
    if key in spec.fixed:
        return "fixed", key
    return "axis", [a.key for a in spec.axis].index(key), "key"


def _ground_mistakes(spec: ScenarioSpec, truck: Truck, where: Where) -> Iterator[Problem]:
    if spec.surface is not None:
        try:
            choose_grip(truck, spec.surface)
        except InputError as error:
            (problem,) = error.problems
            yield where.problem(("surface",), problem.what, problem.allowed)
    if spec.ranges and spec.method not in ("compliant", "tilt trial"):
        what = f"has no use in {spec.method}"
        yield where.problem(("ranges",), what, "it goes with compliant and tilt trial")


def _given(spec: ScenarioSpec, key: str) -> bool:
    return key in spec.fixed or any(a.key == key for a in spec.axis)
