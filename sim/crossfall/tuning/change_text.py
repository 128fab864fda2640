"""Changing a change file as text, comments kept, and making a change out of two trucks.

Every function gives the new text or entry and raises InputError; nothing is written.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from typing import Any

from crossfall.truck import document
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.schema import PartSpec, TruckSpec
from crossfall.tuning.changes import Change, flat

CHANGE_FIELDS = ("name", "label", "price", "most", "group", "requires", "note")
_PLACES = ("at_mm", "chassis_end_mm", "axle_end_mm")


def empty_text(truck: str, currency: str) -> str:
    """A change file without changes yet: no valid one until the first is added."""
    head = {"format": 1, "truck": truck} | ({"currency": currency} if currency else {})
    text = f"# What one could do to {truck}, and what it would cost.\n\n"
    for key, value in head.items():
        text = document.text_with_value(text, key, value)
    return text


def set_field(text: str, name: str, field: str, value: Any) -> str:
    """The text with one of a change's CHANGE_FIELDS set, or with None taken out. Other changes
    follow a new name."""
    if field not in CHANGE_FIELDS:
        raise InputError(Problem("changes", f"a change has no '{field}'"))
    text = document.text_with_value(text, f"change.{name}.{field}", value)
    return _followed(text, name, str(value)) if field == "name" else text


def _followed(text: str, old: str, new: str) -> str:
    for change in tomllib.loads(text).get("change", []):
        for field in ("requires", "excludes"):
            names = change.get(field, [])
            if any(n.casefold() == old.casefold() for n in names):
                named = [new if n.casefold() == old.casefold() else n for n in names]
                text = document.text_with_value(text, f"change.{change['name']}.{field}", named)
    return text


def remove_change(text: str, name: str) -> str:
    """The change file's text without a change. Raises InputError where it cannot be done."""
    return document.text_without_entry(text, "change", name)


def add_change(text: str, entry: Mapping[str, Any]) -> str:
    """The change file's text with one more change at its end."""
    return document.text_with_entry(text, "change", entry)


def difference(old: TruckSpec, new: TruckSpec) -> dict[str, Any]:
    """The actions of a change that makes `new` out of `old`, as a change file has them.

    Raises InputError where nothing differs, or where a value was taken away: a change can set
    values, but not make them absent.
    """
    was, now = ({p.name: p for p in spec.part} for spec in (old, new))
    found: dict[str, Any] = {}
    if gone := [name for name in was if name not in now]:
        found["remove"] = gone
    swaps, moves = [], []
    for name, part in now.items():
        if name in was and part != was[name]:
            shift = _shift(was[name], part)
            if shift is None:
                swaps.append({"part": name, "new": _differing(was[name], part)})
            else:
                moves.append({"part": name, "by_mm": shift})
    if swaps:
        found["swap"] = swaps
    if fresh := [p for name, p in now.items() if name not in was]:
        found["add"] = [_entry(p) for p in fresh]
    if values := _values(old, new):
        found["set"] = values
    if moves:
        found["move"] = moves
    if not found:
        raise InputError(Problem("changes", "nothing differs", "change something first"))
    return found


def _shift(old: PartSpec, new: PartSpec) -> list[float] | None:
    """By what a part was moved, all its places alike; None where more than that differs."""
    here, there = _entry(old), _entry(new)
    places = [k for k in _PLACES if k in there]
    if any(here.get(k) != there.get(k) for k in {*here, *there} if k not in places):
        return None
    if any(k not in here for k in places):
        return None
    shifts = {
        tuple(document.tidy_number(b - a) for a, b in zip(here[k], there[k], strict=True))
        for k in places
    }
    return list(shifts.pop()) if len(shifts) == 1 else None


def _differing(old: PartSpec, new: PartSpec) -> dict[str, Any]:
    here, there = _entry(old), _entry(new)
    differing = {k: v for k, v in there.items() if here.get(k) != v}
    lost = set(here) - set(there)
    if "shape" in differing or "material" in differing:
        lost -= {"mass_g", "inertia_kg_mm2", "mass_tol_g"}
        if "mass_g" in there:
            differing["mass_g"] = there["mass_g"]
    if lost:
        what = f"has no {', '.join(sorted(lost))} any more"
        raise InputError(Problem("changes", what, "a change sets values", f"part.{new.name}"))
    # A new mass, shape or material means that the old one's tolerance and inertia do not count.
    kept = {"mass_tol_g", "inertia_kg_mm2"} & set(there)
    if {"mass_g", "shape", "material"} & set(differing):
        differing |= {k: there[k] for k in kept}
    return differing


def _entry(part: PartSpec) -> dict[str, Any]:
    found: dict[str, Any] = document.plain_value(part.model_dump(exclude_unset=True))
    return found


def _values(old: TruckSpec, new: TruckSpec) -> dict[str, Any]:
    before, after = (
        flat(document.plain_value(s.model_dump(exclude_unset=True, exclude={"part"})))
        for s in (old, new)
    )
    for key in before:
        if key not in after:
            raise InputError(Problem("changes", "is gone", "a change sets values", key))
    return {k: v for k, v in after.items() if before.get(k) != v}


def change_words(change: Change) -> str:
    """What a change does, short."""
    found = [f"removes {n}" for n in change.remove]
    found += [f"{s.part}: {_listed(s.new)}" for s in change.swap]
    found += [f"adds {p.name}" for p in change.add]
    found += [f"{k} = {_short(v)}" for k, v in flat(change.set).items()]
    found += [f"{k} by {v:+g}" for k, v in flat(change.by).items()]
    found += [f"moves {m.part} by {_short(m.by_mm)} mm" for m in change.move]
    found += [f"slides {s.part} up to {_short(s.along_mm)} mm" for s in change.slide]
    for name in ("widen", "lengthen"):
        if (by := getattr(change, name)) is not None:
            found.append(f"{name}s by {by.front_mm:g} front, {by.rear_mm:g} mm rear")
    return "; ".join(found)


def _listed(new: Mapping[str, Any]) -> str:
    found = []
    for key, value in new.items():
        if "_tol_" not in key:
            name, unit = key, ""
            for end in ("_g", "_mm"):
                if key.endswith(end):
                    name, unit = key.removesuffix(end), f" {end[1:]}"
            found.append(f"{name.replace('_', ' ')} {_short(value)}{unit}")
    return ", ".join(found)


def _short(value: Any) -> str:
    if isinstance(value, Mapping):
        return str(value.get("kind", "as listed"))
    if isinstance(value, list | tuple):
        return f"[{', '.join(map(_short, value))}]"
    if isinstance(value, bool):
        return "yes" if value else "no"
    return f"{value:g}" if isinstance(value, int | float) else str(value)
