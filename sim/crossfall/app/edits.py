"""Edits as the page sends them: checked for form, then put on the text or tried on the spec."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from crossfall.truck import document
from crossfall.truck import edits as spec_edits
from crossfall.truck.build import build
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.schema import TruckSpec
from crossfall.truck.take_out import left_over

# One axis of a place by itself, so that an edit leaves alone what another tab did to the others.
LINK_ENDS = tuple(f"{end}_end_mm.{axis}" for end in ("chassis", "axle") for axis in "xyz")
PART_KEYS = (*LINK_ENDS, "name", "mass_g", "at_mm", "at_mm.x", "at_mm.y", "at_mm.z", "on", "price")

# Numbers of the truck that have a slider: words, unit, and how far and finely it slides.
MEASURES: dict[str, tuple[str, str, float, float, float]] = {
    "chassis.wheelbase_mm": ("Wheelbase", "mm", 250, 380, 1),
    "front.track_mm": ("Front track", "mm", 130, 240, 1),
    "rear.track_mm": ("Rear track", "mm", 130, 240, 1),
    "chassis.raise_mm": ("Body up or down", "mm", -25, 25, 0.5),
    "front.suspension.spring_n_per_mm": ("Front springs", "N/mm", 0.05, 1.0, 0.01),
    "rear.suspension.spring_n_per_mm": ("Rear springs", "N/mm", 0.05, 1.0, 0.01),
    "front.suspension.shock_n_per_mm": ("Front springs, on the shock", "N/mm", 0.05, 2.0, 0.01),
    "rear.suspension.shock_n_per_mm": ("Rear springs, on the shock", "N/mm", 0.05, 2.0, 0.01),
    "front.suspension.droop_mm": ("Front droop", "mm", 0, 40, 0.5),
    "rear.suspension.droop_mm": ("Rear droop", "mm", 0, 40, 0.5),
    "chassis.steer_deg": ("Front wheels turned to the left", "°", -40, 40, 1),
    **{
        f"{end}.suspension.{key}": (f"{end.capitalize()} {words}", "mm", low, high, 0.5)
        for end in ("front", "rear")
        for key, words, low, high in (
            ("preload_mm", "collars' preload", 0, 20),
            ("shock_length_mm", "shocks, extended", 60, 140),
            ("shaft_travel_mm", "shocks' stroke", 10, 60),
            ("droop_limiter_mm", "droop limiters", 0, 20),
            ("bump_limiter_mm", "bump limiters", 0, 20),
        )
    },
}
LIMITERS = ("droop_limiter_mm", "bump_limiter_mm")  # 0 where none stands in the file

# What can be chosen of how the truck stands: words, and the choices.
CHOICES: dict[str, tuple[str, tuple[str, ...]]] = {
    "chassis.held_by": ("Held on a slope by", ("brakes", "motor")),
    "front.differential": ("Front differential", ("locked", "open")),
    "rear.differential": ("Rear differential", ("locked", "open")),
}


@dataclass(frozen=True)
class Set:
    """A value by dotted key, as `truck.edits` names it."""

    key: str
    value: Any


@dataclass(frozen=True)
class Rename:
    part: str
    name: str


@dataclass(frozen=True)
class Remove:
    part: str


@dataclass(frozen=True)
class Add:
    part: dict[str, Any]


Edit = Set | Rename | Remove | Add


def understood(spec: TruckSpec, given: Sequence[dict[str, Any]], folder: Path) -> tuple[Edit, ...]:
    """The page's edits, each {"do": "set" | "measure" | "remove" | "add", ...}.

    "set" and "remove" name their part, as it is called before any of these edits: a row's number
    would be another part's once a row above it is gone. "add" with "out_of" also takes the part's
    mass out of that lump, so that no sum changes. folder: of the truck's meshes. Raises InputError.
    """
    found: list[Edit] = []
    for one in given:
        found.append(_understood(spec, one))
        if one.get("out_of"):
            after = on_spec(spec, found)
            placed = build(after, folder)[0].parts
            name, lump = str(one["part"].get("name")), str(one["out_of"])
            found += [Set(k, v) for k, v in left_over(after, placed, name, lump).items()]
    return tuple(found)


def _understood(spec: TruckSpec, edit: dict[str, Any]) -> Edit:
    act, key, value = edit["do"], edit.get("key"), _plain(edit.get("value"))
    if act == "add":
        return Add({k: _plain(v) for k, v in edit["part"].items()})
    if act == "measure":
        if key not in MEASURES and key not in CHOICES:
            allowed = ", ".join([*MEASURES, *CHOICES])
            raise _wrong(f"'{key}' is not a measure of the truck", allowed)
        return Set(str(key), value)
    name = edit["part"]
    if name not in {p.name for p in spec.part}:
        named = f"there is no part '{name[:80]}' in this truck"
        raise _wrong(named, "another tab may have removed or renamed it")
    if act == "remove":
        if spec.battery is not None and spec.battery.part.casefold() == name.casefold():
            raise _wrong(
                f"'{name}' is the pack that run time is counted from", "lighten or move it"
            )
        return Remove(name)
    if key not in PART_KEYS:
        raise _wrong("that is not an edit", f"set one of {', '.join(PART_KEYS)}")
    return Rename(name, str(value)) if key == "name" else Set(f"part.{name}.{key}", value)


def on_text(text: str, edits: Sequence[Edit]) -> str:
    """The text with the edits put down, comments kept. Raises InputError."""
    for edit in edits:
        match edit:
            case Set(key, value):
                text = document.text_with_value(text, key, value)
            case Rename(part, name):
                text = document.text_with_name(text, part, name)
            case Remove(part):
                text = document.text_without_part(text, part)
            case Add(part):
                text = document.text_with_part(text, part)
    return text


def on_spec(spec: TruckSpec, edits: Sequence[Edit]) -> TruckSpec:
    """The spec with the edits tried on it; nothing is parsed, so it is quick. Raises InputError."""
    for edit in edits:
        match edit:
            case Set(key, value):
                spec = spec_edits.set_value(spec, key, value)
            case Rename(part, name):
                spec = spec_edits.rename_part(spec, part, name)
            case Remove(part):
                spec = spec_edits.remove_part(spec, part)
            case Add(part):
                spec = spec_edits.add_part(spec, part)
    return spec


def _plain(value: Any) -> Any:
    """Whole numbers stay whole, so that a file keeps the look its owner gave it."""
    if isinstance(value, list):
        return [_plain(v) for v in value[:16]]
    if isinstance(value, dict):
        return {str(k): _plain(v) for k, v in list(value.items())[:16] if v is not None}
    if isinstance(value, float) and value.is_integer() and abs(value) < 1e9:
        return int(value)
    return value if isinstance(value, int | float | str | bool) else None


def _wrong(what: str, allowed: str) -> InputError:
    return InputError(Problem("edit", what, allowed))
