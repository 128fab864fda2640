"""Changing a spec in memory: values by dotted key, parts by name. Nothing is read again.

A key names what the file names: "front.track_mm", "chassis.raise_mm", "grip.rock.likely",
"part.battery pack.at_mm.z", "part.winch.mass_g", "part.tyre.shape.outer_mm". An entry of an array
is .x, .y, .z or .0, .1, ... "both." changes front and rear alike. Every function gives a new spec
and raises InputError for a key, a name or a value that does not fit.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from pydantic import BaseModel, ValidationError

from crossfall.truck import sentences
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.schema import PartSpec, TruckSpec
from crossfall.truck.toml_line_index import KeyPath

_AXES = {"x": 0, "y": 1, "z": 2}
_ENDS = ("front", "rear")


def get_value(spec: TruckSpec, key: str) -> Any:
    """The value a key names, in the file's unit; for "both." that of the front."""
    here: Any = spec
    for step in paths(spec, key)[0]:
        here = _child(here, step)
    return here


def set_value(spec: TruckSpec, key: str, value: Any) -> TruckSpec:
    """The spec with one value changed; None takes an optional value away."""
    for path in paths(spec, key):
        spec = _put(spec, path, value, spec.name)
    return spec


def set_values(spec: TruckSpec, values: Mapping[str, Any]) -> TruckSpec:
    """Several values changed, in order."""
    for key, value in values.items():
        spec = set_value(spec, key, value)
    return spec


def add_part(spec: TruckSpec, part: Mapping[str, Any] | PartSpec) -> TruckSpec:
    """The spec with one more part at the end of the list."""
    if isinstance(part, PartSpec):
        new = part
    else:
        new = _checked(PartSpec, dict(part), f"part.{part.get('name', 'new')}", spec.name)
    if find_part(spec, new.name) is not None:
        what = f"'{new.name}' is there already"
        raise InputError(Problem(spec.name, what, "choose another name", f"part.{new.name}"))
    return with_parts(spec, (*spec.part, new))


def remove_part(spec: TruckSpec, name: str) -> TruckSpec:
    """The spec without a part."""
    row = part_row(spec, name)
    return with_parts(spec, (*spec.part[:row], *spec.part[row + 1 :]))


def move_part(spec: TruckSpec, name: str, by_mm: Sequence[float]) -> TruckSpec:
    """The spec with a part shifted in its carrier's axes; a link moves with both ends.

    by_mm: (3,) mm. Raises ValueError where it is not three numbers.
    """
    part = spec.part[part_row(spec, name)]
    for field in ("at_mm", "chassis_end_mm", "axle_end_mm"):
        place = getattr(part, field)
        if place is not None:
            moved = [p + b for p, b in zip(place, by_mm, strict=True)]
            spec = set_value(spec, f"part.{name}.{field}", moved)
    return spec


def rename_part(spec: TruckSpec, name: str, new_name: str) -> TruckSpec:
    """The spec with a part called otherwise; the battery section follows."""
    row = part_row(spec, name)
    taken = find_part(spec, new_name)
    if taken is not None and taken != row:
        what = f"'{new_name}' is there already"
        raise InputError(Problem(spec.name, what, "choose another name", f"part.{name}.name"))
    old = spec.part[row].name
    spec = set_value(spec, f"part.{name}.name", new_name)
    if spec.battery is not None and spec.battery.part.casefold() == old.casefold():
        spec = set_value(spec, "battery.part", new_name)
    return spec


def with_parts(spec: TruckSpec, parts: tuple[PartSpec, ...]) -> TruckSpec:
    """The spec with another parts list, already checked one by one."""
    if not parts:
        raise InputError(Problem(spec.name, "would have no parts", "keep at least one", "part"))
    return spec.model_copy(update={"part": parts})


def find_part(spec: TruckSpec, name: str) -> int | None:
    """Row of a part by name, whatever its capitals, or None."""
    wanted = name.casefold()
    return next((i for i, p in enumerate(spec.part) if p.name.casefold() == wanted), None)


def part_row(spec: TruckSpec, name: str) -> int:
    """Row of a part by name. Raises InputError."""
    row = find_part(spec, name)
    if row is None:
        hint = sentences.suggestion(name, [p.name for p in spec.part])
        raise InputError(Problem(spec.name, "there is no such part", hint, f"part.{name}"))
    return row


def paths(spec: TruckSpec, key: str) -> tuple[KeyPath, ...]:
    """The places a key names: one, or two for "both.". Raises InputError."""
    steps = key.replace("[", ".").replace("]", "").split(".")
    starts = _ENDS if steps[0] == "both" else (steps[0],)
    return tuple(_path(spec, [start, *steps[1:]], key) for start in starts)


def _path(spec: TruckSpec, steps: list[str], key: str) -> KeyPath:
    path: KeyPath = ()
    here: Any = spec
    for i, step in enumerate(steps):
        found: str | int = step
        if path == ("part",) and not step.isdecimal():
            found = part_row(spec, step)
        elif isinstance(here, tuple):
            found = _AXES.get(step, int(step) if step.isdecimal() else -1)
            if not 0 <= found < len(here):
                what = f"'{step}' is no entry of an array of {len(here)}"
                raise InputError(Problem(spec.name, what, "x, y, z, or a number from 0", key))
        elif isinstance(here, BaseModel) and step not in type(here).model_fields:
            hint = sentences.suggestion(step, type(here).model_fields)
            raise InputError(Problem(spec.name, f"'{step}' is not a known key", hint, key))
        elif isinstance(here, dict) and step not in here and i < len(steps) - 1:
            hint = sentences.suggestion(step, here)
            raise InputError(Problem(spec.name, f"there is no '{step}'", hint, key))
        elif not isinstance(here, BaseModel | dict):
            raise InputError(Problem(spec.name, f"nothing is below '{steps[i - 1]}'", "", key))
        path += (found,)
        here = _child(here, found)
    return path


def _child(here: Any, step: str | int) -> Any:
    if isinstance(here, BaseModel):
        return getattr(here, str(step))
    if isinstance(here, dict):
        return here.get(str(step))
    return here[int(step)]


def _put(here: Any, path: KeyPath, value: Any, file: str, key: str = "") -> Any:
    """A copy of `here`, which `key` names, with the value put in; all on the way checked again."""
    step, rest = path[0], path[1:]
    child = _child(here, step)
    name = child.name if isinstance(child, PartSpec) else str(step)
    new = _put(child, rest, value, file, f"{key}.{name}" if key else name) if rest else value
    if isinstance(here, tuple):
        position = int(step)
        return (*here[:position], new, *here[position + 1 :])
    if isinstance(here, dict):
        if new is None:
            return {k: v for k, v in here.items() if k != step}
        return {**here, str(step): new}  # in its old place: the first surface counts as the usual
    if isinstance(here, TruckSpec) and _inside_a_model(child, rest):
        # Checked below, and a truck adds no rules of its own: a hundred parts are not asked again.
        return here.model_copy(update={str(step): new})
    # Only what was given counts, so that leaving out a value still means its default.
    given = {k: getattr(here, k) for k in here.model_fields_set if k != step}
    if new is not None:
        given[str(step)] = new
    return _checked(type(here), given, key, file)


def _inside_a_model(here: Any, path: KeyPath) -> bool:
    """Whether the value at `path` below `here` is part of a model, which has checked it."""
    if not path:
        return False
    return isinstance(here, BaseModel) or _inside_a_model(_child(here, path[0]), path[1:])


def _checked(model: type[Any], data: dict[str, Any], key: str, file: str) -> Any:
    try:
        return model.model_validate(data)
    except ValidationError as error:
        found = sentences.problems(error, model, data, lambda _path: (file, None))
        raise InputError(
            Problem(p.file, p.what, p.allowed, ".".join(k for k in (key, p.key) if k))
            for p in found
        ) from None
