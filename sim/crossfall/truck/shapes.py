"""The shapes a part of the chassis file can have, and the kinds of number they are made of."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, StringConstraints, model_validator
from pydantic_core import PydanticCustomError

# Bounds are those of anything that could be a scale model, its scale or its price: what lies beyond
# is a slip of the pen or a wrong unit, and numbers far beyond are what no method could answer.
FAR = 10_000.0  # mm; nothing of a scale model is further away
HEAVY = 100_000.0  # g

Length = Annotated[float, Field(ge=0.001, le=FAR)]
Dimension = Annotated[float, Field(ge=1, le=3000)]  # of the truck itself, mm
Place = Annotated[float, Field(ge=-FAR, le=FAR)]
Price = Annotated[float, Field(ge=0, le=1e7)]
NotNegative = Annotated[float, Field(ge=0, le=1000)]  # by how much a length or a share may be out
MassTolerance = Annotated[float, Field(ge=0, le=HEAVY)]
TyreRate = Annotated[float, Field(ge=0.01, le=1000)]  # N/mm: foam that a finger presses flat; steel
SpringRate = Annotated[float, Field(ge=0.001, le=1000)]  # N/mm
RateTolerance = Annotated[float, Field(ge=0, le=1000)]
Damping = Annotated[float, Field(ge=0, le=10_000)]  # N s/m
RollRate = Annotated[float, Field(ge=0, le=100_000)]  # N mm/deg
Angle = Annotated[float, Field(ge=-360, le=360)]
Mass = Annotated[float, Field(ge=0.001, le=HEAVY)]
# Arrays of the file arrive as lists and are kept as tuples, so that a spec can be hashed.
Places = Annotated[tuple[Place, Place, Place], Field(strict=False)]
Point = Annotated[tuple[Place, Place], Field(strict=False)]
Lengths = Annotated[tuple[Length, Length, Length], Field(strict=False)]
Angles = Annotated[tuple[Angle, Angle, Angle], Field(strict=False)]
# What a terminal obeys instead of showing: control characters, and those that turn the writing.
_OBEYED = r"\x00-\x1f\x7f-\x9f\u200e\u200f\u2028-\u202e\u2066-\u2069"
_IN_TEXT = _OBEYED.replace(r"\x00-\x1f", r"\x00-\x08\x0b\x0c\x0e-\x1f")  # lines and tabs may
Line = Annotated[str, StringConstraints(min_length=1, max_length=200, pattern=rf"^[^{_OBEYED}]*$")]
Name = Annotated[
    str, StringConstraints(min_length=1, max_length=60, pattern=rf"^[^{_OBEYED}.\[\]\"]*$")
]
Text = Annotated[str, StringConstraints(max_length=5000, pattern=rf"^[^{_IN_TEXT}]*$")]

Along = Literal["x", "y", "z"]


class Strict(BaseModel):
    """No unknown keys, no conversions, no NaN, no change after reading."""

    model_config = ConfigDict(extra="forbid", strict=True, frozen=True, allow_inf_nan=False)


def mistake(key: str, what: str, allowed: str) -> PydanticCustomError:
    """A mistake that needs more than one value to see; `key` names the one to look at."""
    return PydanticCustomError(
        "crossfall", "{what}; {allowed}", {"key": key, "what": what, "allowed": allowed}
    )


class Box(Strict):
    """A block, or with wall_mm a closed shell of that wall thickness inside size_mm."""

    kind: Literal["box"]
    size_mm: Lengths
    wall_mm: Length | None = None

    @model_validator(mode="after")
    def _wall_fits(self) -> Box:
        if self.wall_mm is not None and 2 * self.wall_mm >= min(self.size_mm):
            raise mistake(
                "wall_mm",
                f"is {self.wall_mm:g}, which leaves no room inside",
                f"it must be less than half the shortest edge, {min(self.size_mm) / 2:g}",
            )
        return self


class Plate(Strict):
    """A flat plate, its thickness along its own z."""

    kind: Literal["plate"]
    length_mm: Length
    width_mm: Length
    thickness_mm: Length


class Rod(Strict):
    """A solid round rod; on a link the length may be left out and runs from end to end."""

    kind: Literal["rod"]
    diameter_mm: Length
    length_mm: Length | None = None
    along: Along = "x"


def _bore_fits(outer: float, inner: float) -> None:
    if inner >= outer:
        raise mistake("inner_mm", f"is {inner:g}", f"it must be less than outer_mm, {outer:g}")


class Tube(Strict):
    """A round tube by its diameters; on a link the length may be left out."""

    kind: Literal["tube"]
    outer_mm: Length
    inner_mm: Length
    length_mm: Length | None = None
    along: Along = "x"

    @model_validator(mode="after")
    def _bore(self) -> Tube:
        _bore_fits(self.outer_mm, self.inner_mm)
        return self


class Cylinder(Strict):
    """A solid round body."""

    kind: Literal["cylinder"]
    diameter_mm: Length
    length_mm: Length
    along: Along = "z"


class Ring(Strict):
    """A flat ring by its diameters; it lies round the wheel's axis unless told otherwise."""

    kind: Literal["ring"]
    outer_mm: Length
    inner_mm: Length
    width_mm: Length
    along: Along = "y"

    @model_validator(mode="after")
    def _bore(self) -> Ring:
        _bore_fits(self.outer_mm, self.inner_mm)
        return self


class Sphere(Strict):
    """A ball."""

    kind: Literal["sphere"]
    diameter_mm: Length


class Strip(Strict):
    """Stick-on weight wound round a wheel, layer on layer, onto a drum of `around_mm` diameter.

    Its mass comes from g_per_m, or from the material; it counts as spread evenly round the wheel.
    """

    kind: Literal["strip"]
    around_mm: Length
    width_mm: Length
    thickness_mm: Length
    length_mm: Length
    g_per_m: Annotated[float, Field(ge=0.01, le=HEAVY)] | None = None
    along: Along = "y"


class Mesh(Strict):
    """A surface from an STL, OBJ or PLY file, placed by the file's own origin."""

    kind: Literal["mesh"]
    file: Line
    unit: Literal["mm", "cm", "m", "inch"]


AnyShape = Annotated[
    Box | Plate | Rod | Tube | Cylinder | Ring | Sphere | Strip | Mesh, Field(discriminator="kind")
]
