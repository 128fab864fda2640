"""What the page shows about a truck: numbers, the tip map, the four ways, where a gram helps.

Two speeds. `quick` takes a few milliseconds: everything in closed form is exact, and the compliant
curve is carried along from the last exact one by the change of the rigid curve, marked as not
exact; so are the degrees a gram is worth. `exact_curve` works the curve out, `four_ways` all there
is to say on the four ways, and `exact_gains` the grams. Every tip angle is the one answer's, on the
surface shown, and is sent under its keys.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from math import isfinite
from typing import Any

import numpy as np

from crossfall.answers.answer import Answers, answer
from crossfall.answers.conditions import Conditions, choose_grip
from crossfall.answers.keys import record
from crossfall.answers.tips import TipAngles, tip_angles
from crossfall.app.scene import mm
from crossfall.statics import rigid, sliding
from crossfall.statics.compliant_gradient import CARRIERS
from crossfall.truck.build import Loaded
from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import GRAVITY, Array, Grip, Truck
from crossfall.truck.ride import level_axle_loads, tyre_loads

MAP_HEADINGS = np.radians(np.arange(0.0, 360.0, 5.0))
QUARTER_HEADINGS = {"climb": 0.0, "left": 90.0, "descent": 180.0, "right": 270.0}
TEN_GRAMS = 0.010  # kg


@dataclass(frozen=True)
class TipMap:
    """The tips over HEADINGS on a ground as last worked out exactly, and the rigid truck's, rad."""

    grip: Grip
    rigid: Array
    tips: TipAngles


@dataclass(frozen=True)
class Gains:
    """Degrees per 10 g at (x, y, z) mm: c0 + cx x + cy y + cz z. rigid: (4, 1, 4), of the rigid
    truck at QUARTERS; exact: (4, 7, 4), of the truck itself, for each of CARRIERS."""

    grip: Grip
    rigid: Array
    exact: Array


@dataclass(frozen=True)
class KnownAnswers:
    """What has been worked out exactly: curve and gains of this truck or of one like it, ways of
    this very truck."""

    curve: TipMap | None = None
    ways: Answers | None = None
    gains: Gains | None = None


def shown_grip(truck: Truck, surface: str | None) -> Grip:
    """The surface shown: the one chosen, if the truck has it, else its first."""
    names = {g.surface for g in truck.grips}
    return choose_grip(truck, surface if surface in names else None)


def quick(truck: Truck, grip: Grip, known: KnownAnswers, exact: bool = False) -> dict[str, Any]:
    """Everything for the page. exact: the curve known is this very truck's."""
    stiff = rigid.tip_angle(truck, MAP_HEADINGS)
    slide = sliding.slide_range(truck, [0.0], grip)[0]
    last = known.curve
    nothing, curve, goes = [None] * len(stiff), None, None
    if last is not None and last.grip == grip:
        away = last.tips.slide if truck.may_roll else slide[1]
        curve = carried(last, stiff, away)
        if truck.may_roll:
            goes = plain_degrees(np.where(np.isnan(curve.rail), curve.tip, away))
    elif truck.may_roll:
        goes = nothing
    return {
        "exact": exact and curve is not None,
        "numbers": _numbers(truck),
        "surface": grip.surface,
        "grip_range": {"low": grip.low, "likely": grip.likely, "high": grip.high},
        "heading_deg": np.degrees(MAP_HEADINGS).round(9).tolist(),
        "rigid_deg": plain_degrees(stiff),
        "compliant_deg": nothing if curve is None else plain_degrees(curve.tip),
        "rail_deg": nothing if curve is None else plain_degrees(curve.rail),
        "first_lift_deg": nothing if curve is None else plain_degrees(curve.first_lift),
        "slide_deg": dict(zip(("low", "likely", "high"), plain_degrees(slide), strict=True)),
        "goes_at_deg": goes,
        "ways": None if known.ways is None else [record(a) for a in known.ways.answers],
        **_gains(truck, grip, known.gains),
    }


@dataclass(frozen=True)
class Carried:
    """Over HEADINGS, rad: tip, nan where it slides first; rail, where it does; first lift."""

    tip: Array
    rail: Array
    first_lift: Array


def carried(known: TipMap, stiff: Array, slide: Array | float) -> Carried:
    """The curve moved by what the rigid one has moved to `stiff`; itself where that has not.

    slide: rad, where it slides or rolls away, one or over HEADINGS."""
    shift = stiff - known.rigid
    if not shift.any():
        slides, free, lift = known.tips.slides, known.tips.free, known.tips.first_lift
    else:
        free = np.maximum(known.tips.free + shift, 0.0)
        slides, lift = free > slide, np.minimum(known.tips.first_lift + shift, free)
    return Carried(np.where(slides, np.nan, free), np.where(slides, free, np.nan), lift)


def _numbers(truck: Truck) -> dict[str, Any]:
    """The title block: masses in g, places in mm, loads in g as a scale reads them."""
    body = whole(truck)
    loads, corners = level_axle_loads(truck), tyre_loads(truck)
    off = sum(unsprung(truck, i).mass for i in (0, 1))
    return {
        "mass_g": round(body.mass * 1000, 2),
        "sprung_g": round(truck.chassis.mass * 1000, 2),
        "unsprung_g": round(off * 1000, 2),
        "cg_mm": mm(body.cg),
        "front_percent": round(100 * float(loads[0]) / (body.mass * GRAVITY), 3),
        "axle_g": np.round(loads / GRAVITY * 1000, 2).tolist(),
        "corner_g": np.round(corners / GRAVITY * 1000, 2).tolist(),
        "price": round(sum(p.price for p in truck.parts), 2),
    }


def _gains(truck: Truck, grip: Grip, last: Gains | None) -> dict[str, Any]:
    """gain: by direction and carrier, four values each as of `Gains`; gain_of: whether they are of
    the truck on its springs and tyres, exactly or nearly, or of the rigid truck."""
    stiff = rigid_gains(truck)
    if last is None or last.grip != grip:
        found, of = np.broadcast_to(stiff, (len(QUARTER_HEADINGS), len(CARRIERS), 4)), "rigid"
    else:
        found, of = last.exact + (stiff - last.rigid), "compliant"
    gain = {
        name: dict(zip(CARRIERS, found[i].tolist(), strict=True))
        for i, name in enumerate(QUARTER_HEADINGS)
    }
    return {"gain": gain, "gain_of": of}


def rigid_gains(truck: Truck) -> Array:
    """(4, 1, 4) as of `Gains`: the derivative is linear in the place, so four values say it all."""
    headings = np.radians(list(QUARTER_HEADINGS.values()))
    return _by_place(
        lambda places: np.array([[rigid.mass_derivative(truck, h, places)] for h in headings])
    )


def exact_gains(loaded: Loaded, grip: Grip) -> Gains:
    """What `crossfall gains` says of the four ways, for every carrier; a few seconds."""
    from crossfall.tuning.gains import gradients

    surface = grip.surface if loaded.truck.grips else None
    slopes = gradients(loaded, surface=surface, everywhere=False).slopes

    def at(places: Array) -> Array:
        found = np.array([slopes.per_mass(c, places)[: len(QUARTER_HEADINGS)] for c in CARRIERS])
        return np.swapaxes(found, 0, 1)

    return Gains(grip, rigid_gains(loaded.truck), _by_place(at))


def _by_place(per_mass: Callable[[Array], Array]) -> Array:
    """(..., 4) coefficients, per 10 g and mm in deg, of a function of places (n, 3) m that gives
    (..., n) rad/kg and is linear in the place."""
    at = np.degrees(per_mass(np.vstack([np.zeros(3), np.eye(3)]))) * TEN_GRAMS
    found: Array = np.concatenate([at[..., :1], (at[..., 1:] - at[..., :1]) / 1000], axis=-1)
    return found


def exact_curve(truck: Truck, grip: Grip) -> TipMap:
    """The compliant answer over HEADINGS, about a second."""
    tips = tip_angles(truck, MAP_HEADINGS, grip.likely)
    return TipMap(grip, rigid.tip_angle(truck, MAP_HEADINGS), tips)


def least_over_headings(curve: TipMap) -> float:
    """Deg, the least angle at which it tips or slides, over HEADINGS."""
    return float(np.degrees(np.nanmin(curve.tips.goes)))


def four_ways(truck: Truck, grip: Grip) -> Answers:
    """All there is to say at QUARTERS but for the trials; a second or two."""
    asked = [Conditions(float(np.radians(h)), grip) for h in QUARTER_HEADINGS.values()]
    return answer(truck, asked, trial=False)


def expected(known: TipMap | None, heading_deg: float) -> float | None:
    """Deg, where a trial at a heading may expect its tip; only used to hurry to a start."""
    if known is None:
        return None
    at = np.interp(np.radians(heading_deg), MAP_HEADINGS, known.tips.free, period=2 * np.pi)
    return float(np.degrees(at)) if np.isfinite(at) else None


def plain_degrees(angles: Array | float) -> Any:
    """rad as degrees in plain numbers; nan becomes None."""
    return without_nan(np.degrees(np.asarray(angles, dtype=np.float64)).tolist())


def without_nan(values: Any) -> Any:
    """The same, nested as it is, with None for what is not finite: JSON knows no nan."""
    if isinstance(values, dict):
        return {key: without_nan(v) for key, v in values.items()}
    if isinstance(values, list):
        return [without_nan(v) for v in values]
    return None if isinstance(values, float) and not isfinite(values) else values
