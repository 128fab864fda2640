"""Class limits: what a scrutineer would look at. A file of limits, checked on every result."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Annotated, Literal

from pydantic import Field, ValidationError, model_validator

from crossfall.truck import sentences
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.model import Truck
from crossfall.truck.read import read_source
from crossfall.truck.ride import level_axle_loads
from crossfall.truck.schema import TruckSpec
from crossfall.truck.shapes import Length, Line, Mass, Name, Strict, Text, mistake
from crossfall.truck.toml_line_index import nearest_line
from crossfall.tuning.effects import outside_width

_SLACK = 1e-9  # kg or m: what arithmetic may add to a value that stands exactly on its limit


class ClassLimits(Strict):
    """A class's limits; whatever is left out is free. Widths are over the tyres, diameters those of
    tyres that carry nothing, as on a bench."""

    format: Literal[1]
    name: Name
    note: Text = ""
    least_mass_g: Mass | None = None
    most_mass_g: Mass | None = None
    most_width_mm: Length | None = None
    least_wheelbase_mm: Length | None = None
    most_wheelbase_mm: Length | None = None
    least_tyre_diameter_mm: Length | None = None
    most_tyre_diameter_mm: Length | None = None
    least_details: Annotated[int, Field(ge=1, le=100)] | None = None
    details: Annotated[tuple[Line, ...], Field(strict=False, max_length=100)] = ()

    @model_validator(mode="after")
    def _can_be_met(self) -> ClassLimits:
        for what in ("mass_g", "wheelbase_mm", "tyre_diameter_mm"):
            low, high = getattr(self, f"least_{what}"), getattr(self, f"most_{what}")
            if low is not None and high is not None and low > high:
                raise mistake(f"least_{what}", f"is {low:g}", f"at most most_{what}, {high:g}")
        if self.least_details is not None and self.least_details < len(self.details):
            what = f"is {self.least_details}, fewer than the {len(self.details)} named in details"
            raise mistake("least_details", what, "leave it out or raise it")
        return self


@dataclass(frozen=True)
class Breach:
    """A limit that is broken. value and limit in the unit of the name; details have none."""

    name: str
    value: float
    limit: float
    sentence: str


def read_limits(path: str | Path) -> ClassLimits:
    """The checked limits of a file. Raises InputError with every mistake found."""
    source = read_source(Path(path), str(path))
    try:
        return ClassLimits.model_validate(source.data)
    except ValidationError as error:
        raise InputError(
            sentences.problems(
                error,
                ClassLimits,
                source.data,
                lambda place: (source.file, nearest_line(source.index, place)),
            )
        ) from None


def details(spec: TruckSpec) -> frozenset[str]:
    """Names of the scale details on board, small letters."""
    return frozenset(p.detail.casefold() for p in spec.part if p.detail)


def free_diameter(radius: float, stiffness: float, axle_load: float) -> float:
    """m across a tyre that carries nothing: d = 2 (r + F / (2 k)), r its loaded radius, m, k its
    vertical stiffness, N/m, F the level load on its axle, N.

    Source: derived here: the tyre a linear spring, as the statics has it, and half of F on each.
    """
    return 2 * (radius + axle_load / 2 / stiffness)


def breaches(limits: ClassLimits, truck: Truck, spec: TruckSpec) -> tuple[Breach, ...]:
    """Every limit that is broken, in the order of the class's fields."""
    found = []
    base = truck.wheelbase
    tyres, loads = [a.tyre for a in truck.axles], level_axle_loads(truck)
    diameters = [
        free_diameter(t.radius, t.stiffness, load) for t, load in zip(tyres, loads, strict=True)
    ]
    measured = (
        ("mass_g", whole(truck).mass, whole(truck).mass),
        ("width_mm", outside_width(truck), outside_width(truck)),
        ("wheelbase_mm", base, base),
        ("tyre_diameter_mm", min(diameters), max(diameters)),
    )
    for what, least, most in measured:
        words, unit = what.rsplit("_", 1)
        words = words.replace("tyre", "free tyre's").replace("_", " ")
        low = getattr(limits, f"least_{what}", None)
        high = getattr(limits, f"most_{what}", None)
        if low is not None and least * 1e3 < low - _SLACK * 1e3:
            text = f"the {words} is {least * 1e3:.1f} {unit}, at least {low:g} are asked"
            found.append(Breach(f"least_{what}", least * 1e3, low, text))
        if high is not None and most * 1e3 > high + _SLACK * 1e3:
            text = f"the {words} is {most * 1e3:.1f} {unit}, at most {high:g} are allowed"
            found.append(Breach(f"most_{what}", most * 1e3, high, text))
    return (*found, *_details(limits, details(spec)))


def _details(limits: ClassLimits, there: frozenset[str]) -> list[Breach]:
    found = [
        Breach("details", 0.0, 1.0, f"the detail '{name}' is missing")
        for name in limits.details
        if name.casefold() not in there
    ]
    least = limits.least_details
    if least is not None and len(there) < least:
        text = f"there are {len(there)} scale details, at least {least} are asked"
        found.append(Breach("least_details", float(len(there)), float(least), text))
    return found
