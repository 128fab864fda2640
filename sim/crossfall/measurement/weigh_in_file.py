"""The readings file of a weigh-in (TOML; mm, g, deg; units in the keys).

    [truck]                       # what the ruler says; may come from a chassis file instead
    wheelbase_mm = 313
    front_track_mm = 170          # between the tyres' middles
    rear_track_mm = 170
    front_radius_mm = 56          # wheel centre above the ground, under load
    rear_radius_mm = 56
    [scale]
    resolution_g = 1
    [suspension]
    locked = true
    [[reading]]
    at = "front"                  # a wheel, an axle, a side, "all", or "each wheel" (four scales)
    load_g = [1342, 1345, 1341]   # repeats, the truck lifted off in between
    [[reading]]
    at = "rear"
    raised = "front"
    block_mm = 90
    load_g = [1502, 1499, 1503]

Every tolerance is plus or minus a limit.
"""

from __future__ import annotations

from collections.abc import Mapping
from math import radians
from os import PathLike
from typing import Annotated, Any, Literal

import numpy as np
from pydantic import Field, ValidationError, model_validator

from crossfall.measurement.weigh_in_session import (
    Free,
    Measured,
    Repeats,
    Ruler,
    Session,
    WeighingScale,
)
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.massprops import unsprung
from crossfall.truck.model import GRAVITY, WHEELS, Truck
from crossfall.truck.read import given_source
from crossfall.truck.ride import axle_squeezes, wheel_rates
from crossfall.truck.sentences import problems
from crossfall.truck.shapes import (
    Dimension,
    Line,
    SpringRate,
    Strict,
    Text,
    TyreRate,
    mistake,
)
from crossfall.truck.toml_line_index import KeyPath as KeyPath
from crossfall.truck.toml_line_index import nearest_line

_MM = _G = 1e-3
SPRING_TOLERANCE = 0.2  # of what a chassis file says of springs and unsprung mass
SAG = 0.012  # m, springs not given: a corner's load over this, from a third to nearly twice it

_At = Literal[
    "front left",
    "front right",
    "rear left",
    "rear right",
    "front",
    "rear",
    "left",
    "right",
    "all",
    "each wheel",
]
_End = Literal["front", "rear", "left", "right"]
_MOST = 200  # repeats
LIGHTEST, HEAVIEST = 0.1, 100_000.0  # g, of any reading

Load = Annotated[float, Field(ge=LIGHTEST, le=HEAVIEST)]
_Step = Annotated[float, Field(ge=1e-4, le=1000)]  # g: from a laboratory's to a bathroom's
Off = Annotated[float, Field(ge=0, le=100)]  # mm


class RulerSpec(Strict):
    """Lengths; radii are wheel centres' heights under load."""

    wheelbase_mm: Dimension | None = None
    wheelbase_tol_mm: Off = 0.5
    front_track_mm: Dimension | None = None
    rear_track_mm: Dimension | None = None
    track_tol_mm: Off = 0.5
    front_radius_mm: Dimension | None = None
    rear_radius_mm: Dimension | None = None
    radius_tol_mm: Off = 0.5


class ScaleSpec(Strict):
    """resolution_g: one step. height_match_mm: how well the blocks match the scale's height."""

    resolution_g: _Step
    accuracy_percent: Annotated[float, Field(ge=0, le=20)] = 0.2
    height_match_mm: Annotated[float, Field(ge=0, le=20)] = 0.2
    placement_g: _Step | None = None


class _SuspensionSpec(Strict):
    """locked: held still (cable ties round the dampers). Springs are for readings that are not."""

    locked: bool
    front_spring_n_per_mm: SpringRate | None = None
    rear_spring_n_per_mm: SpringRate | None = None
    spring_spacing_mm: Dimension | None = None
    roll_centre_mm: Annotated[float, Field(ge=0.001, le=3000)] | None = None
    front_unsprung_g: Load | None = None
    rear_unsprung_g: Load | None = None
    tol_percent: Annotated[float, Field(ge=0, le=100)] = 20.0
    tyre_n_per_mm: TyreRate | None = None


class ReadingSpec(Strict):
    """One place of the scale: repeats in load_g, four at a time for "each wheel"."""

    at: _At
    load_g: Any
    raised: _End | None = None
    block_mm: Dimension | None = None
    block_tol_mm: Off = 0.5
    turned: bool = False
    locked: bool | None = None
    note: Text = ""

    @model_validator(mode="after")
    def _fits_together(self) -> ReadingSpec:
        if (self.raised is None) != (self.block_mm is None):
            missing = "block_mm" if self.block_mm is None else "raised"
            raise mistake(missing, "is missing", "a raised end needs both raised and block_mm")
        if self.at == "all" and self.raised is not None:
            raise mistake("raised", "has no use when the whole truck is on the scale", "leave out")
        if not self.rows:
            wanted = "repeats of four, [[front left, front right, rear left, rear right], ...]"
            allowed = wanted if self.at == "each wheel" else "a load in g, or an array of repeats"
            raise mistake("load_g", f"is no load for at = '{self.at}'", f"give {allowed}")
        return self

    @property
    def rows(self) -> tuple[tuple[float, ...], ...]:
        """(repeats, 1) or, for "each wheel", (repeats, 4) g; empty where the loads are no such."""
        width = 4 if self.at == "each wheel" else 1
        given = self.load_g if isinstance(self.load_g, list) else [self.load_g]
        rows = [r if isinstance(r, list) else [r] for r in given]
        nested = isinstance(given[0], list) if given else False
        good = 0 < len(rows) <= _MOST and nested == (width == 4)
        fine = good and all(len(r) == width and all(map(_is_load, r)) for r in rows)
        return tuple(tuple(float(v) for v in r) for r in rows) if fine else ()


def _is_load(value: object) -> bool:
    number = isinstance(value, int | float) and not isinstance(value, bool)
    return number and LIGHTEST <= value <= HEAVIEST  # type: ignore[operator]


class ReadingsSpec(Strict):
    """A whole readings file."""

    title: Line = "weigh-in"
    note: Text = ""
    floor_tol_deg: Annotated[float, Field(ge=0, le=10)] = 0.2
    truck: RulerSpec = Field(default_factory=RulerSpec)
    scale: ScaleSpec
    suspension: _SuspensionSpec
    reading: Annotated[tuple[ReadingSpec, ...], Field(strict=False, min_length=1, max_length=500)]


def read_session(
    given: str | PathLike[str] | Mapping[str, Any], truck: Truck | None = None
) -> Session:
    """The session of a readings file, or of a mapping with its keys; lengths and springs it leaves
    out come from `truck`.

    Raises InputError with every mistake found.
    """
    source = given_source(given, "readings")

    def where(at: KeyPath) -> tuple[str, int | None]:
        return source.file, nearest_line(source.index, at)

    try:
        spec = ReadingsSpec.model_validate(source.data)
    except ValidationError as error:
        raise InputError(problems(error, ReadingsSpec, source.data, where)) from None
    line = [nearest_line(source.index, ("reading", i)) for i in range(len(spec.reading))]
    ruler = _ruler(spec.truck, truck, source.file, nearest_line(source.index, ("truck",)))
    readings = tuple(r for i, s in enumerate(spec.reading) for r in _readings(s, spec, line[i]))
    _raises_fit(readings, ruler, source.file)
    stiffness = spec.suspension.tyre_n_per_mm
    session = Session(
        ruler,
        WeighingScale(
            spec.scale.resolution_g * _G,
            spec.scale.accuracy_percent / 100,
            spec.scale.height_match_mm * _MM,
            None if spec.scale.placement_g is None else spec.scale.placement_g * _G,
        ),
        readings,
        None,
        radians(spec.floor_tol_deg),
        stiffness / _MM if stiffness else truck.front.tyre.stiffness if truck else 5000.0,
        source.file,
    )
    if all(r.locked for r in readings):
        return session
    return Session(**{**session.__dict__, "free": _free(spec.suspension, truck, session)})


def _ruler(spec: RulerSpec, truck: Truck | None, file: str, line: int | None) -> Ruler:
    """The lengths given, else the truck's."""
    known: dict[str, float] = {}
    if truck is not None:
        known = {
            "wheelbase_mm": truck.wheelbase / _MM,
            "front_track_mm": truck.front.track / _MM,
            "rear_track_mm": truck.rear.track / _MM,
            "front_radius_mm": truck.front.tyre.radius / _MM,
            "rear_radius_mm": truck.rear.tyre.radius / _MM,
        }
    given = spec.model_dump(exclude_none=True)
    names = ("wheelbase", "front_track", "rear_track", "front_radius", "rear_radius")
    missing = [f"{n}_mm" for n in names if f"{n}_mm" not in {**known, **given}]
    if missing:
        allowed = "measure it, or name the truck's own file"
        raise InputError(
            [Problem(file, "is missing", allowed, f"truck.{k}", line) for k in missing]
        )
    both = {**known, **given}
    tolerances = (
        spec.wheelbase_tol_mm,
        *(spec.track_tol_mm,) * 2,
        *(spec.radius_tol_mm,) * 2,
    )
    return Ruler(
        *(Measured(both[f"{n}_mm"] * _MM, t * _MM) for n, t in zip(names, tolerances, strict=True))
    )


def _readings(spec: ReadingSpec, whole: ReadingsSpec, line: int | None) -> list[Repeats]:
    locked = whole.suspension.locked if spec.locked is None else spec.locked
    block = Measured(
        (spec.block_mm or 0.0) * _MM, spec.block_tol_mm * _MM if spec.block_mm else 0.0
    )
    together = spec.at == "each wheel"
    return [
        Repeats(
            at,
            tuple(v * _G for v in column),
            spec.raised or "",
            block,
            together,
            spec.turned,
            locked,
            line,
        )
        for at, column in zip(
            WHEELS if together else (spec.at,), zip(*spec.rows, strict=True), strict=True
        )
    ]


def _raises_fit(readings: tuple[Repeats, ...], ruler: Ruler, file: str) -> None:
    """No wheels that would touch, and no block so tall that the truck would stand on end."""
    found = []
    reach = (ruler.radius_front.value + ruler.radius_rear.value) / _MM
    if ruler.wheelbase.value / _MM <= reach:
        what = f"is {ruler.wheelbase.value / _MM:g}, so front and rear tyres would touch"
        allowed = f"more than both radii together, {reach:g}"
        raise InputError(Problem(file, what, allowed, "truck.wheelbase_mm"))
    for r in readings:
        ends = r.raised in ("front", "rear")
        tracks = min(ruler.track_front.value, ruler.track_rear.value)
        most = 0.7 * (ruler.wheelbase.value if ends else tracks)
        if r.raised and r.block.value > most:
            what = f"is {r.block.value / _MM:g}, nearly on end"
            allowed = f"at most {most / _MM:.0f} for this truck"
            found.append(Problem(file, what, allowed, "reading.block_mm", r.line))
    if found:
        raise InputError(found)


def _free(spec: _SuspensionSpec, truck: Truck | None, session: Session) -> Free:
    """Springs as given, else the truck's, else guesses wide enough to hold any such truck."""
    mass = float(4 * np.mean([np.mean(r.loads) / _wheels(r) for r in session.readings]))
    rate = 0.3 * mass * GRAVITY / 2 / SAG
    track = (session.ruler.track_front.value + session.ruler.track_rear.value) / 2
    guess = {
        "rate_front": Measured(rate, 0.65 * rate),
        "rate_rear": Measured(rate, 0.65 * rate),
        "spacing": Measured(0.62 * track, 0.15 * track),
        "roll_centre": Measured(1.3 * session.ruler.radius_front.value, 0.02),
        "unsprung_front": Measured(0.2 * mass, 0.08 * mass),
        "unsprung_rear": Measured(0.2 * mass, 0.08 * mass),
    }
    anti_roll = 0.0
    if truck is not None:
        front, rear = (a.suspension for a in truck.axles)
        anti_roll = front.anti_roll + rear.anti_roll
        exact = {
            "rate_front": _wheel_rate(truck, 0),
            "rate_rear": _wheel_rate(truck, 1),
            "spacing": (front.spring_spacing + rear.spring_spacing) / 2,
            "roll_centre": (front.roll_centre_height + rear.roll_centre_height) / 2,
            "unsprung_front": unsprung(truck, 0).mass,
            "unsprung_rear": unsprung(truck, 1).mass,
        }
        guess = {k: Measured(v, SPRING_TOLERANCE * v) for k, v in exact.items()}
    part = spec.tol_percent / 100
    given: dict[str, Any] = {
        "rate_front": (spec.front_spring_n_per_mm, 1 / _MM),
        "rate_rear": (spec.rear_spring_n_per_mm, 1 / _MM),
        "spacing": (spec.spring_spacing_mm, _MM),
        "roll_centre": (spec.roll_centre_mm, _MM),
        "unsprung_front": (spec.front_unsprung_g, _G),
        "unsprung_rear": (spec.rear_unsprung_g, _G),
    }
    stated = {k: Measured(v * s, part * v * s) for k, (v, s) in given.items() if v is not None}
    both = {**guess, **stated}
    known = truck is not None or {"rate_front", "rate_rear"} <= set(stated)
    return Free(**both, anti_roll=anti_roll, known=known)


def _wheel_rate(truck: Truck, i: int) -> float:
    """N/m at one wheel of an axle (0 front, 1 rear), standing level."""
    squeeze = float(np.mean(axle_squeezes(truck, i)))
    return float(wheel_rates(truck.axles[i], squeeze, np.zeros(1))[0])


def _wheels(reading: Repeats) -> int:
    from crossfall.measurement.weigh_in_model import UNDER

    return len(UNDER[reading.at])
