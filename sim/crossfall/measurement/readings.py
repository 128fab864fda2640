"""What a scale, a ruler and a block say of a truck: the readings file of `crossfall begin`.

    wheelbase_mm = 313
    front_left_g = 921
    ...

All flat; units in the keys. Every reading has a `Question`, which the command line asks, names its
options by, and heads the file's lines with.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Annotated, Any, Literal

import tomlkit
from pydantic import Field, ValidationError, model_validator

from crossfall.truck.errors import InputError, Problem
from crossfall.truck.read import Source
from crossfall.truck.schema import Name, PartSpec, Strict, mistake
from crossfall.truck.sentences import problems
from crossfall.truck.shapes import Places
from crossfall.truck.toml_line_index import KeyPath as KeyPath
from crossfall.truck.toml_line_index import nearest_line

_Kind = Literal["mm", "g", "N/mm", "word", "yes or no", "place", "name"]

Size = Annotated[float, Field(ge=1, le=2000)]  # mm
Gap = Annotated[float, Field(gt=0, le=200)]  # mm, something gives by
Grams = Annotated[float, Field(ge=1, le=50_000)]
Percent = Annotated[float, Field(ge=-200, le=200)]
Small = Annotated[float, Field(ge=0, le=50)]


class Readings(Strict):
    """What was read off; None where it was not. mm and g, as a ruler and a kitchen scale show them.

    raised: the end whose wheels stood on a block of block_mm while raised_g was under that axle.
    held: with the suspension held still (ties round the dampers); corners_held: and so it was for
    the four corners, where a wheel a hair too high then takes the others' load. wheel_g: one whole
    wheel. body_g, roof_mm: the body shell, and the roof's height above the ground. pack_at_mm: the
    pack's middle, ahead of mid-wheelbase, left of the middle, above the ground. squash_: one wheel
    pressed on a scale. front_, rear_sag_mm: what the body sinks by with sag_g put on it over that
    axle.
    front_, rear_hang_mm: how far wheels hang below where they stand when the truck is lifted.
    side_, roll_: a held wheel pulled along its axle, and along the ground. part: parts weighed on
    their own. scale_step_g, scatter_g: of the scale, and what standing the truck on it anew changes
    (one sd). ruler_tol_mm: plus or minus, as a limit.
    """

    format: Literal[1] = 1
    name: Name
    wheelbase_mm: Size
    front_track_mm: Size
    rear_track_mm: Size
    tyre_diameter_mm: Size
    tyre_width_mm: Size
    front_left_g: Grams
    front_right_g: Grams
    rear_left_g: Grams
    rear_right_g: Grams
    raised: Literal["front", "rear"] = "front"
    block_mm: Size
    raised_g: Grams
    held: bool = True
    corners_held: bool = False
    wheel_g: Grams | None = None
    body_g: Grams | None = None
    roof_mm: Size | None = None
    pack_g: Grams | None = None
    pack_at_mm: Places | None = None
    squash_g: Grams | None = None
    squash_mm: Gap | None = None
    sag_g: Grams | None = None
    front_sag_mm: Gap | None = None
    rear_sag_mm: Gap | None = None
    front_hang_mm: Gap | None = None
    rear_hang_mm: Gap | None = None
    bump_mm: Gap | None = None
    axle_height_mm: Size | None = None
    tread_mm: Size | None = None
    front_spacing_mm: Size | None = None
    rear_spacing_mm: Size | None = None
    front_roll_centre_mm: Size | None = None
    rear_roll_centre_mm: Size | None = None
    anti_dive_percent: Percent | None = None
    anti_squat_percent: Percent | None = None
    front_axle_g: Grams | None = None
    rear_axle_g: Grams | None = None
    anti_roll_bar: Literal["none", "front", "rear", "both"] | None = None
    side_g: Grams | None = None
    side_mm: Gap | None = None
    roll_g: Grams | None = None
    roll_mm: Gap | None = None
    pull_g: Grams | None = None
    scale_step_g: Annotated[float, Field(gt=0, le=100)] = 1.0
    scatter_g: Small = 2.0
    ruler_tol_mm: Annotated[float, Field(gt=0, le=20)] = 0.5
    raised_repeats: Annotated[int, Field(ge=1, le=20)] = 1
    part: Annotated[tuple[PartSpec, ...], Field(strict=False, max_length=500)] = ()

    @model_validator(mode="after")
    def _pairs(self) -> Readings:
        for one, other in (
            ("squash_g", "squash_mm"),
            ("pack_g", "pack_at_mm"),
            ("side_g", "side_mm"),
            ("roll_g", "roll_mm"),
        ):
            missing = [k for k in (one, other) if getattr(self, k) is None]
            if len(missing) == 1:
                there = one if missing[0] == other else other
                raise mistake(missing[0], "is missing", f"it goes with {there}: give both")
        sags = [v for v in (self.front_sag_mm, self.rear_sag_mm) if v is not None]
        if bool(sags) != (self.sag_g is not None):
            absent = "sag_g" if sags else "front_sag_mm"
            raise mistake(absent, "is missing", "a sag needs the weight put on and the way it sank")
        if self.part and any(part.remainder for part in self.part):
            raise mistake("part", "has a remainder", "that part is found from the readings")
        return self

    @property
    def corners_g(self) -> tuple[float, float, float, float]:
        """Front left, front right, rear left, rear right."""
        return self.front_left_g, self.front_right_g, self.rear_left_g, self.rear_right_g


@dataclass(frozen=True)
class Question:
    """One thing to read off. words: what it is, hint: how. minutes: of work. needed: or may be
    left out. With `after`, it is only asked where that reading was given."""

    key: str
    words: str
    kind: _Kind
    hint: str = ""
    minutes: float = 0.5
    needed: bool = False
    after: str = ""


QUESTIONS = (
    Question("wheelbase_mm", "wheelbase", "mm", "wheel nut to wheel nut, along the side",
             needed=True),
    Question("front_track_mm", "front track", "mm", "between the middles of the front tyres",
             needed=True),
    Question("rear_track_mm", "rear track", "mm", "between the middles of the rear tyres",
             needed=True),
    Question("tyre_diameter_mm", "tyre diameter", "mm", "across a tyre that carries nothing",
             needed=True),
    Question("tyre_width_mm", "tyre width", "mm", "of the tread", needed=True),
    Question("front_left_g", "front left wheel on the scale", "g",
             "the other three on blocks as high as the scale, the dampers free", needed=True),
    Question("front_right_g", "front right wheel on the scale", "g", needed=True),
    Question("rear_left_g", "rear left wheel on the scale", "g", needed=True),
    Question("rear_right_g", "rear right wheel on the scale", "g", needed=True),
    Question("raised", "which end stood on a block", "word", "front or rear"),
    Question("block_mm", "height of the block", "mm",
             "from the lower wheels' ground to the raised ones', 80 to 120", needed=True),
    Question("raised_g", "load under the raised axle", "g",
             "both its wheels together, the brakes off", 4.0, needed=True),
    Question("held", "was the suspension held still", "yes or no",
             "cable ties round the dampers, after the corners"),
    Question("wheel_g", "one wheel", "g", "taken off, tyre and all", 2.0),
    Question("body_g", "the body", "g", "taken off; leave out if it stays on", 1.0),
    Question("roof_mm", "height of its roof", "mm", "above the ground", after="body_g"),
    Question("pack_g", "the pack", "g", "taken out", 1.0),
    Question("pack_at_mm", "middle of the pack", "place",
             "ahead of mid-wheelbase, left of the middle, above the ground", after="pack_g"),
    Question("squash_g", "a tyre pressed on the scale until it shows", "g", "about 1000", 2.0),
    Question("squash_mm", "by how much it gave", "mm", after="squash_g"),
    Question("sag_g", "weight put on the body over one axle", "g", "about 500", 3.0),
    Question("front_sag_mm", "what the body sank by, over the front axle", "mm", after="sag_g"),
    Question("rear_sag_mm", "the same, over the rear axle", "mm", after="sag_g"),
    Question("front_hang_mm", "how far the front wheels hang down", "mm",
             "from where they stand, the truck lifted", 1.0),
    Question("rear_hang_mm", "how far the rear wheels hang down", "mm", minutes=1.0),
    Question("bump_mm", "how far the body can be pushed down", "mm", "to the stops", 1.0),
    Question("front_spacing_mm", "between the left and right front spring", "mm",
             "where they push on the axle", 1.0),
    Question("rear_spacing_mm", "between the left and right rear spring", "mm", minutes=1.0),
    Question("anti_roll_bar", "anti-roll bars", "word", "none, front, rear or both", 0.1),
)  # fmt: skip
"""Asked in this order. Beyond them only the name is asked."""

FURTHER = (
    Question("corners_held", "were the dampers tied for the four corners as well", "yes or no"),
    Question("axle_height_mm", "wheel nut above the ground", "mm", "the truck standing", 1.0),
    Question("tread_mm", "width of the tread's print", "mm", "on paper, under its own weight", 3.0),
    Question("front_roll_centre_mm", "height of the front roll centre", "mm", "from the links"),
    Question("rear_roll_centre_mm", "height of the rear roll centre", "mm", "from the links"),
    Question("anti_dive_percent", "anti-dive", "word", "from the links"),
    Question("anti_squat_percent", "anti-squat", "word", "from the links"),
    Question("front_axle_g", "front axle without wheels", "g", "", 20.0),
    Question("rear_axle_g", "rear axle without wheels", "g", "", 20.0),
    Question("side_g", "pull along the axle at a held wheel", "g", "luggage scale", 3.0),
    Question("side_mm", "by how much it gave", "mm"),
    Question("roll_g", "pull along the ground at a held wheel", "g", "luggage scale", 3.0),
    Question("roll_mm", "by how much it gave", "mm"),
    Question("pull_g", "pull at which the truck, wheels held, slides over the ground", "g",
             "luggage scale, level, three times", 3.0),
    Question("scale_step_g", "one step of the scale", "g"),
    Question("scatter_g", "what standing the truck on the scale again changes, one sd", "g"),
    Question("ruler_tol_mm", "how far the ruler may be out, plus or minus", "mm"),
    Question("raised_repeats", "how often the raised end was weighed, raised_g their mean", "word"),
)  # fmt: skip
"""Not asked, but may be given: by option, or in the file."""


def checked(data: Mapping[str, Any], source: Source | None = None) -> Readings:
    """Readings by key, from a file or none. Raises InputError with every mistake found."""

    def where(at: KeyPath) -> tuple[str, int | None]:
        if source is None:
            return "readings", None
        key = at[0] if at else ""
        line = nearest_line(source.index, at) if key in source.data else None
        return source.file, line

    try:
        return Readings.model_validate(dict(data))
    except ValidationError as error:
        raise InputError(problems(error, Readings, dict(data), where)) from None


def missing(data: Mapping[str, Any]) -> list[Problem]:
    """What a truck file cannot do without, a problem each."""
    return [
        Problem("readings", "is missing", f"{q.words}, {q.kind}", q.key)
        for q in QUESTIONS
        if q.needed and data.get(q.key) is None
    ]


def written(readings: Readings) -> str:
    """The readings as a file's text: every reading with its question as a comment."""
    document = tomlkit.document()
    document.add(tomlkit.comment("Readings for crossfall begin: add to them and begin --again."))
    document.add("format", tomlkit.item(1))
    document.add("name", tomlkit.item(readings.name))
    asked = readings.model_fields_set
    for q in (*QUESTIONS, *FURTHER):
        value = getattr(readings, q.key)
        if value is None or (q.key not in asked and not q.needed):
            continue
        item = tomlkit.item(_plain(value))
        item.comment(q.words + (f": {q.hint}" if q.hint else ""))
        document.add(q.key, item)
    if readings.part:
        entries = tomlkit.aot()
        for part in readings.part:
            entries.append(tomlkit.item(part.model_dump(mode="json", exclude_unset=True)))
        document.add("part", entries)
    return tomlkit.dumps(document)


def _plain(value: Any) -> Any:
    """As a person would write it."""
    if isinstance(value, tuple):
        return [_plain(v) for v in value]
    return int(value) if isinstance(value, float) and value.is_integer() else value
