"""Changes as switches: put to the truck they were chosen for, and written into the text.

A choice remembers the text it was made on (`steps.Fitted`). Another choice is made on that same
text, and what was edited by hand since is put on top of it again: no change is made twice, and no
edit is lost.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping
from math import degrees
from pathlib import Path
from typing import Any

from crossfall.app.answers import without_nan
from crossfall.app.history import Fitted
from crossfall.truck import document
from crossfall.truck.build import Loaded
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.schema import TruckSpec
from crossfall.tuning.apply import apply, misfits, objections
from crossfall.tuning.change_text import change_words
from crossfall.tuning.changes import Catalogue
from crossfall.tuning.directions import DIRECTIONS
from crossfall.tuning.whatif import Ranking

_SIDE = (
    ("mass", "mass", 1e3, "g"),
    ("front_share", "on the front", 1e2, "%"),
    ("cg_height", "CG height", 1e3, "mm"),
    ("width", "width", 1e3, "mm"),
    ("turning_circle", "turning circle", 1e3, "mm"),
    ("breakover", "breakover", degrees(1), "°"),
    ("run_time", "run time", 1 / 60, "min"),
)


def choice(catalogue: Catalogue, asked: Mapping[str, Any]) -> dict[int, int]:
    """Changes by name, with how many of each. Raises InputError for what may not go together."""
    chosen = {}
    for name, many in asked.items():
        if type(many) is not int:
            raise InputError(Problem("changes", f"'{name}' needs a whole number"))
        if many:
            chosen[catalogue.position(str(name))] = many
    if why := objections(catalogue, chosen):
        raise InputError(Problem("changes", sentence) for sentence in why)
    return chosen


def refitted(
    text: str,
    fitted: Fitted | None,
    catalogue: Catalogue,
    chosen: dict[int, int],
    load: Callable[[str], Loaded],
) -> tuple[str, Fitted | None]:
    """The text with a choice of changes in place of the one fitted, and what is then fitted.

    Raises InputError, also where the changes fitted are no longer in the catalogue.
    """
    base = text if fitted is None else fitted.base
    began = load(base)
    result = fitted_text(base, began, catalogue, chosen)
    if fitted is not None:
        was = {catalogue.position(name): many for name, many in fitted.chosen}
        made = load(fitted_text(base, began, catalogue, was)).spec
        there = {p.name for p in load(result).spec.part}
        result = rewritten(result, made, load(text).spec, there)
    kept = tuple((catalogue.changes[i].name, many) for i, many in chosen.items())
    return result, Fitted(base, kept) if chosen else None


def fitted_text(text: str, loaded: Loaded, catalogue: Catalogue, chosen: dict[int, int]) -> str:
    """The text with the changes made in it, comments kept. Raises InputError."""
    if not chosen:
        return text
    for i in chosen:
        if found := misfits(catalogue, i, loaded.spec):
            raise InputError(found)
    return rewritten(text, loaded.spec, apply(loaded.spec, catalogue, chosen))


def rewritten(
    text: str, old: TruckSpec, new: TruckSpec, there: Collection[str] | None = None
) -> str:
    """The text of `old` as a text of `new`, touching only what differs.

    there: the parts the text has, where it is not the text of `old` itself; what differs in other
    parts is left out.
    """
    before, after = (_flat(s.model_dump(exclude_unset=True, exclude={"part"})) for s in (old, new))
    for key in [*after, *(k for k in before if k not in after)]:
        if before.get(key) != after.get(key):
            text = document.text_with_value(text, key, after.get(key))
    was, now = ({p.name: p.model_dump(exclude_unset=True) for p in s.part} for s in (old, new))
    here = set(was if there is None else there)
    for name in was:
        if name in here and (name not in now or _reshaped(was[name], now[name])):
            text = document.text_without_part(text, name)
            here.remove(name)
    for name, part in now.items():
        if name not in was or _reshaped(was[name], part):
            if name not in here:
                text = document.text_with_part(text, document.plain_value(part))
            continue
        if name in here:
            text = _fields(text, name, was[name], part)
    return text


def _fields(text: str, name: str, was: dict[str, Any], now: dict[str, Any]) -> str:
    """The text with a part's values changed as they differ; of a list only the numbers that do."""
    for field in {**was, **now}:
        old, new = document.plain_value(was.get(field)), document.plain_value(now.get(field))
        key = f"part.{name}.{field}"
        if isinstance(old, list) and isinstance(new, list) and len(old) == len(new):
            for i, (a, b) in enumerate(zip(old, new, strict=True)):
                if a != b:
                    text = document.text_with_value(text, f"{key}.{i}", b)
        elif old != new:
            text = document.text_with_value(text, key, new)
    return text


def _reshaped(was: dict[str, Any], now: dict[str, Any]) -> bool:
    return bool(was.get("shape") != now.get("shape"))


def _flat(data: Mapping[str, Any], above: str = "") -> dict[str, Any]:
    found: dict[str, Any] = {}
    for key, value in data.items():
        if isinstance(value, Mapping):
            found |= _flat(value, f"{above}{key}.")
        else:
            found[above + key] = document.plain_value(value)
    return found


def listed_changes(catalogue: Catalogue, currency: str, file: Path) -> dict[str, Any]:
    """The change file as the page shows it."""
    return {
        "file": file.name,
        "currency": catalogue.currency or currency,
        "changes": [
            {
                "name": c.name,
                "label": c.label,
                "price": c.price,
                "most": c.most,
                "group": c.group,
                "requires": list(c.requires),
                "note": c.note,
                "does": change_words(c),
            }
            for c in catalogue.changes
        ],
    }


def bought(catalogue: Catalogue, ranking: Ranking) -> dict[str, Any]:
    """What each change buys alone, deg for DIRECTIONS, and what it costs elsewhere."""

    def by_direction(values: Any) -> dict[str, Any]:
        found = (without_nan(degrees(v)) for v in values)
        return dict(zip(DIRECTIONS, found, strict=True))

    return {
        "now_deg": by_direction(ranking.now),
        "changes": {
            catalogue.changes[o.change].name: {
                "place": o.place,
                "many": o.many,
                "on_top_of": [catalogue.changes[i].name for i in o.on_top_of],
                "gain_deg": by_direction(o.gain),
                "gain_sd_deg": by_direction(o.gain_sd),
                "per_100g_deg": by_direction(o.per_100g),
                "turns": dict(zip(DIRECTIONS, o.turns.tolist(), strict=True)),
                "side": [
                    {"what": words, "by": round(getattr(o.side, f) * factor, 2), "unit": unit}
                    for f, words, factor, unit in _SIDE
                    if abs(getattr(o.side, f) * factor) >= 0.05
                ],
                "words": o.words,
            }
            for o in ranking.outcomes
        },
        "impossible": {catalogue.changes[i].name: why for i, why in ranking.impossible},
    }
