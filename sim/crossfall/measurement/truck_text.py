"""The truck file's text, every line saying whether it was measured or how it was filled in."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import tomlkit

from crossfall.measurement.begin import (
    SUSPENSION_UNITS,
    TYRE_UNITS,
    Beginning,
    PartLump,
    end_lines,
    grip,
)
from crossfall.measurement.setup import End
from crossfall.truck.model import ENDS

_HEAD = """\
# {name}: a first truck file, made by crossfall begin from readings of scale, ruler and block.
# It gives every reading back. What was not measured is typical of the class and says so; tolerances
# (_tol_, plus or minus) are as wide as that. Axes: x forward, y left, z up from the ground, origin
# midway between the axles. Parts on an axle count from its centre, on a wheel from the wheel's.
# To take a part out of the rest: add it as a [[part]] to {file}.readings.toml and begin again, or
# add it here and take its mass, and its mass times place, off "chassis and drive".
"""


def truck_text(begun: Beginning, stem: str) -> str:
    """The whole file. stem: of its name."""
    r, made = begun.readings, begun.setup
    surface, how = grip(r)
    lines = [
        _HEAD.format(name=_comment(r.name), file=stem),
        "format = 1",
        f"name = {_toml(r.name)}",
    ]
    lines += ["", "[chassis]", f"wheelbase_mm = {_toml(r.wheelbase_mm)}"]
    lines.append(f"wheelbase_tol_mm = {_toml(made.wheelbase.tol)}")
    for name, end in zip(ENDS, made.ends, strict=True):
        lines += _end(name, end)
    lines += ["", f"[grip.ground]  # {how}"]
    lines += [f"{k} = {_toml(v)}" for k, v in surface.items()]
    for lump in begun.lumps:
        lines += _part(lump)
    return "\n".join(lines) + "\n"


def _end(name: str, end: End) -> list[str]:
    lines = ["", f"[{name}]", f"track_mm = {_toml(end.track.value)}"]
    lines += [f"track_tol_mm = {_toml(end.track.tol)}", "", f"[{name}.tyre]"]
    for key, value, tol, how in end_lines(end.tyre, TYRE_UNITS):
        lines += _valued(key, value, tol, how)
    lines += ["", f"[{name}.suspension]"]
    for key, value, tol, how in end_lines(end.in_file, SUSPENSION_UNITS):
        lines += _valued(key, value, tol, how)
    return lines


def _valued(key: str, value: float, tol: tuple[str, float] | None, how: str) -> list[str]:
    line = f"{key} = {_toml(value)}"
    found = [f"{line:<36}# {how}"]
    return [*found, f"{tol[0]} = {_toml(tol[1])}"] if tol else found


def _part(lump: PartLump) -> list[str]:
    lines = ["", "[[part]]", f"# {lump.how}"]
    return [*lines, *(f"{key} = {_toml(value)}" for key, value in lump.entries.items())]


def _toml(value: Any) -> str:
    if isinstance(value, Mapping):
        return "{ " + ", ".join(f"{k} = {_toml(v)}" for k, v in value.items()) + " }"
    if isinstance(value, list | tuple):
        return "[" + ", ".join(_toml(v) for v in value) + "]"
    if isinstance(value, float):
        return repr(int(value)) if value == int(value) else repr(value)
    return str(tomlkit.item(value).as_string())


def _comment(text: str) -> str:
    return text.replace("\n", " ")
