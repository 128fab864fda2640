"""The board file beside a chassis file: tip angles measured on a real board (TOML, degrees).

[inclinometer]
resolution_deg = 0.1          # one step of the display
accuracy_deg = 0.2            # plus or minus, the same for every reading

[[tip]]
heading_deg = 90              # 0 climb, 90 left side down, 180 descent, 270 right side down
angle_deg = [41.2, 41.6, 41.3]
locked = false                # suspension held still
rail = false                  # a strip kept the downhill tyres from sliding
slid = false                  # it slid at this angle and did not tip
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import radians
from os import PathLike
from pathlib import Path
from typing import Annotated, Any

import numpy as np
import tomlkit
from pydantic import Field, ValidationError, model_validator

from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically
from crossfall.truck.read import given_source
from crossfall.truck.schema import Line, Strict, Text, mistake
from crossfall.truck.sentences import problems
from crossfall.truck.toml_line_index import KeyPath as KeyPath
from crossfall.truck.toml_line_index import nearest_line

_HEAD = """\
# Tip angles measured on a real board, beside the chassis file of {name}.
# heading_deg: 0 climb, 90 left side down, 180 descent, 270 right side down.

[inclinometer]
resolution_deg = 0.1          # one step of the display
accuracy_deg = 0.2            # plus or minus, the same for every reading
"""

Tip = Annotated[float, Field(ge=0.1, lt=90)]


@dataclass(frozen=True)
class BoardReading:
    """Repeats of one tip (or slide) angle. heading, angles: rad. line: where in its file."""

    heading: float
    angles: tuple[float, ...]
    locked: bool = False
    rail: bool = False
    slid: bool = False
    line: int | None = None


@dataclass(frozen=True)
class BoardReadings:
    """All angles of one truck. resolution, accuracy: rad, the inclinometer's step and limit."""

    readings: tuple[BoardReading, ...]
    resolution: float
    accuracy: float
    file: str = "board"

    @property
    def tips(self) -> tuple[BoardReading, ...]:
        """Those at which it tipped."""
        return tuple(r for r in self.readings if not r.slid)


class InclinometerSpec(Strict):
    """What measures the board's angle; how far it may be out, either way."""

    resolution_deg: Annotated[float, Field(ge=1e-4, le=5)] = 0.1
    accuracy_deg: Annotated[float, Field(ge=0, le=5)] = 0.2


class TipSpec(Strict):
    """One heading; see the module."""

    heading_deg: Annotated[float, Field(ge=-360, le=360)]
    angle_deg: Annotated[tuple[Tip, ...], Field(strict=False, min_length=1, max_length=100)]
    locked: bool = False
    rail: bool = False
    slid: bool = False
    note: Text = ""

    @model_validator(mode="after")
    def _one_end(self) -> TipSpec:
        if self.slid and self.rail:
            raise mistake("slid", "is true and so is rail", "behind a rail it cannot slide")
        return self


class BoardSpec(Strict):
    """A whole board file; see the module."""

    title: Line = "board"
    note: Text = ""
    inclinometer: InclinometerSpec = Field(default_factory=InclinometerSpec)
    tip: Annotated[tuple[TipSpec, ...], Field(strict=False, max_length=500)] = ()


def read_board(given: str | PathLike[str] | Mapping[str, Any]) -> BoardReadings:
    """A board file, or a mapping with its keys. Raises InputError with every mistake found."""
    source = given_source(given, "board")

    def where(at: KeyPath) -> tuple[str, int | None]:
        return source.file, nearest_line(source.index, at)

    try:
        spec = BoardSpec.model_validate(source.data)
    except ValidationError as error:
        raise InputError(_deepest(problems(error, BoardSpec, source.data, where))) from None
    readings = tuple(
        BoardReading(
            radians(t.heading_deg % 360),
            tuple(radians(a) for a in t.angle_deg),
            t.locked,
            t.rail,
            t.slid,
            nearest_line(source.index, ("tip", i)),
        )
        for i, t in enumerate(spec.tip)
    )
    meter = spec.inclinometer
    return BoardReadings(
        readings, radians(meter.resolution_deg), radians(meter.accuracy_deg), source.file
    )


def add_reading(
    path: str | Path,
    truck: str,
    heading_deg: float,
    angles_deg: Sequence[float],
    *,
    locked: bool = False,
    rail: bool = False,
    slid: bool = False,
) -> None:
    """Put one more reading at the end of a board file, made if it is not there.

    What stands in the file stays as it is. Raises InputError where the result would not be a
    board file, and then nothing is written.
    """
    path = Path(path)
    if path.exists():
        read_board(path)
        text = path.read_text(encoding="utf-8")
    else:
        text = _HEAD.format(name=truck)
    flags = [k for k, on in (("locked", locked), ("rail", rail), ("slid", slid)) if on]
    entry = [
        "[[tip]]",
        f"heading_deg = {heading_deg:g}",
        f"angle_deg = [{', '.join(f'{float(a):g}' for a in angles_deg)}]",
        *(f"{k} = true" for k in flags),
    ]
    new = text.rstrip("\n") + "\n\n" + "\n".join(entry) + "\n"
    _check(new, path)
    write_atomically(path, new)


def remove_reading(path: str | Path, number: int, angles_deg: Sequence[float]) -> None:
    """Take the `number`-th reading, from 0, out of a board file; the rest stays as it is.

    angles_deg: its angles, so that no other is taken should the file have changed meanwhile.
    Raises InputError, and then nothing is written.
    """
    path = Path(path)
    board = read_board(path)
    there = 0 <= number < len(board.readings)
    if not there or not np.allclose(
        np.degrees(board.readings[number].angles), angles_deg[: len(board.readings[number].angles)]
    ):
        raise InputError(Problem(str(path), "has no such reading any more"))
    document = tomlkit.parse(path.read_text(encoding="utf-8"))
    tips = document["tip"]
    assert isinstance(tips, list)
    del tips[number]
    if not tips:  # an empty array could not be added to as [[tip]]
        del document["tip"]
    text = tomlkit.dumps(document)
    _check(text, path)
    write_atomically(path, text)


def _check(text: str, path: Path) -> None:
    import tomllib

    data = tomllib.loads(text)
    try:
        BoardSpec.model_validate(data)
    except ValidationError as error:
        found = problems(error, BoardSpec, data, lambda at: (str(path), None))
        raise InputError(_deepest(found)) from None


def _deepest(found: Sequence[Problem]) -> list[Problem]:
    """Without problems of an array that only echo those of its entries."""
    keys = [p.key for p in found]
    return [p for p in found if not any(k.startswith(f"{p.key}[") for k in keys)]


def board_file_of(spec: Path, cwd: Path | None = None) -> Path:
    """The board file that belongs to a chassis file: next to it, or here for a demo truck."""
    from crossfall.truck.demos import find_demo

    demo = find_demo(spec.stem)
    home = (cwd or Path.cwd()) if demo is not None and demo == spec else spec.parent
    return home / f"{spec.stem}.board.toml"
