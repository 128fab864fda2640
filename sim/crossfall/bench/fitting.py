"""Changes as switches: put to the truck they were chosen for, and written into the text.

What is fitted is known from the text: a text that came out of a choice remembers the text it
began from. So undo and redo move the switches too, and an edit by hand starts afresh from there.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import degrees
from pathlib import Path
from typing import Any

from crossfall.bench.answers import finite
from crossfall.truck import document
from crossfall.truck.build import Loaded
from crossfall.truck.problems import InputError, Problem
from crossfall.truck.schema import TruckSpec
from crossfall.tuning.apply import apply, misfits, objections
from crossfall.tuning.changes import Catalogue
from crossfall.tuning.directions import DIRECTIONS
from crossfall.tuning.whatif import Ranking

SIDE = (
    ("mass", "mass", 1e3, "g"),
    ("front_share", "on the front", 1e2, "%"),
    ("cg_height", "CG height", 1e3, "mm"),
    ("width", "width", 1e3, "mm"),
    ("turning_circle", "turning circle", 1e3, "mm"),
    ("breakover", "breakover", degrees(1), "°"),
    ("run_time", "run time", 1 / 60, "min"),
)


@dataclass(frozen=True)
class Fitted:
    """A choice of changes and the text it was made on. chosen: position -> how many."""

    base: str
    chosen: tuple[tuple[int, int], ...]


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


def fitted_text(text: str, loaded: Loaded, catalogue: Catalogue, chosen: dict[int, int]) -> str:
    """The text with the changes made in it, comments kept. Raises InputError."""
    for i in chosen:
        if found := misfits(catalogue, i, loaded.spec):
            raise InputError(found)
    return rewritten(text, loaded.spec, apply(loaded.spec, catalogue, chosen))


def rewritten(text: str, old: TruckSpec, new: TruckSpec) -> str:
    """The text of `old` as a text of `new`, touching only what differs."""
    before, after = (_flat(s.model_dump(exclude_unset=True, exclude={"part"})) for s in (old, new))
    for key in [*after, *(k for k in before if k not in after)]:
        if before.get(key) != after.get(key):
            text = document.set_value(text, key, after.get(key))
    was, now = ({p.name: p.model_dump(exclude_unset=True) for p in s.part} for s in (old, new))
    for name in was:
        if name not in now or _reshaped(was[name], now[name]):
            text = document.remove_part(text, name)
    for name, part in now.items():
        if name not in was or _reshaped(was[name], part):
            text = document.add_part(text, _plain(part))
            continue
        for field in {**was[name], **part}:
            if was[name].get(field) != part.get(field):
                text = document.set_value(text, f"part.{name}.{field}", _plain(part.get(field)))
    return text


def _reshaped(was: dict[str, Any], now: dict[str, Any]) -> bool:
    return bool(was.get("shape") != now.get("shape"))


def _flat(data: Mapping[str, Any], above: str = "") -> dict[str, Any]:
    found: dict[str, Any] = {}
    for key, value in data.items():
        if isinstance(value, Mapping):
            found |= _flat(value, f"{above}{key}.")
        else:
            found[above + key] = _plain(value)
    return found


def _plain(value: Any) -> Any:
    """Tuples as lists and whole numbers whole, as a file would have them."""
    if isinstance(value, Mapping):
        return {k: _plain(v) for k, v in value.items()}
    if isinstance(value, list | tuple):
        return [_plain(v) for v in value]
    if isinstance(value, float) and value.is_integer():
        return int(value)
    return value


def listed(catalogue: Catalogue, currency: str, file: Path) -> dict[str, Any]:
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
            }
            for c in catalogue.changes
        ],
    }


def bought(catalogue: Catalogue, ranking: Ranking) -> dict[str, Any]:
    """What each change buys alone, deg for DIRECTIONS, and what it costs elsewhere."""

    def by_direction(values: Any) -> dict[str, Any]:
        found = (finite(degrees(v)) for v in values)
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
                    for f, words, factor, unit in SIDE
                    if abs(getattr(o.side, f) * factor) >= 0.05
                ],
                "words": o.words,
            }
            for o in ranking.outcomes
        },
        "impossible": {catalogue.changes[i].name: why for i, why in ranking.impossible},
    }
