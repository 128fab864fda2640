"""How a chassis file says how far its numbers may be out: in each table, and for all in one."""

from __future__ import annotations

from typing import Annotated, ClassVar, Self

from pydantic import Field, model_validator

from crossfall.truck.shapes import MassTolerance, NotNegative, Strict, mistake

SIGNED = ("heave_lean", "anti_dive", "anti_squat")
# Of these nothing need be left. A larger tolerance is cut there, so that a stop may be tried at 0.
_MAY_VANISH = ("contact_half_width", "roll_centre", "bump", "droop", "anti_roll")


def value_of(tolerance: str) -> str:
    """The key that a tolerance belongs to: track_tol_mm says how far track_mm may be out."""
    return tolerance.replace("_tol_", "_")


class Toleranced(Strict):
    """A table with tolerances: x_tol_mm is plus or minus, as a limit, for x_mm.

    FOLLOWS: values that may follow from others of the table, and have a tolerance all the same.
    """

    FOLLOWS: ClassVar[tuple[str, ...]] = ()

    @model_validator(mode="after")
    def _tolerances_fit(self) -> Self:
        for key in type(self).model_fields:
            tolerance, name = getattr(self, key), value_of(key)
            if "_tol_" not in key or tolerance is None:
                continue
            value = getattr(self, name)
            if value is None and name in self.FOLLOWS:
                continue
            if value is None:
                raise mistake(key, f"is given without {name}", "give both, or neither")
            if tolerance >= value and not name.startswith((*SIGNED, *_MAY_VANISH)):
                than = "more than" if tolerance > value else "as much as"
                what = f"is {tolerance:g}, {than} {name} itself"
                raise mistake(key, what, f"less than {value:g}")
        return self


Share = Annotated[float, Field(ge=0, lt=100)]  # percent of a value of which some has to be left


class ToleranceSpec(Strict):
    """Plus or minus, as limits, for whatever gives none of its own; `tolerances.DEFAULTS` beyond.

    mass_percent, mass_g (together), place_mm: of every part. tyre_percent: of the vertical
    stiffness; tyre_along_percent: of a measured lateral or longitudinal one. link_end_mm: of a
    link's chassis end, up and down, of a shock's ends, outwards, and of its length. preload_mm: of
    a collar, where a truck stands by it. steer_deg, kingpin_offset_mm: where the front wheels are
    turned. travel_mm: of bump and droop, limiters included. lean_percent: percentage points
    of anti-dive and anti-squat, and what they make of the lean where the file gives that.
    """

    mass_percent: Annotated[float, Field(ge=0, le=100)] | None = None
    mass_g: MassTolerance | None = None
    place_mm: NotNegative | None = None
    wheelbase_mm: NotNegative | None = None
    track_mm: NotNegative | None = None
    radius_mm: NotNegative | None = None
    contact_half_width_mm: NotNegative | None = None
    tyre_percent: Share | None = None
    tyre_along_percent: Share | None = None
    spring_percent: Share | None = None
    spring_spacing_mm: NotNegative | None = None
    roll_centre_mm: NotNegative | None = None
    link_end_mm: NotNegative | None = None
    preload_mm: NotNegative | None = None
    steer_deg: NotNegative | None = None
    kingpin_offset_mm: NotNegative | None = None
    travel_mm: NotNegative | None = None
    anti_roll_percent: Share | None = None
    lean_percent: NotNegative | None = None
