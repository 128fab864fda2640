"""What the page shows about a truck: numbers, the tip map, slides, budget, where a gram helps.

Two speeds. `quick` takes a few milliseconds: everything in closed form is exact, and the compliant
curve is carried along from the last exact one by the change of the rigid curve, marked as not
exact. `exact` works the compliant curve out and takes its budget apart.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from crossfall.bench.scene import mm
from crossfall.compare import case_name
from crossfall.statics import rigid, sliding
from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import GRAVITY, Array, Grip, Truck
from crossfall.truck.ride import axle_loads, tyre_loads

HEADINGS = np.radians(np.arange(0.0, 360.0, 5.0))
QUARTERS = {"climb": 0.0, "left": 90.0, "descent": 180.0, "right": 270.0}
TEN_GRAMS = 0.010  # kg


@dataclass(frozen=True)
class Curves:
    """The rigid and compliant tip over HEADINGS, rad, as last worked out exactly.

    budget: (4, 3) rad at QUARTERS, with tyres giving, with springs extending, all of it.
    """

    rigid: Array
    compliant: Array
    budget: Array


@dataclass(frozen=True)
class Window:
    """Over `headings`, rad: both friction closures' tips, and the first lift."""

    headings: Array
    low: Array
    high: Array
    first_lift: Array


def grip_of(truck: Truck) -> Grip | None:
    """The surface shown: the first one the file lists."""
    return truck.grips[0] if truck.grips else None


def quick(truck: Truck, known: Curves | None, exact: bool = False) -> dict[str, Any]:
    """Everything for the page. known: the last exact curves, of this truck or one like it."""
    tips = rigid.tip_angle(truck, HEADINGS)
    shift = None if known is None else tips - known.rigid
    compliant = None if known is None or shift is None else np.maximum(known.compliant + shift, 0)
    grip = grip_of(truck)
    slides = None if grip is None else sliding.slide_range(truck, HEADINGS, grip)
    return {
        "exact": exact,
        "numbers": numbers(truck),
        "surface": None if grip is None else grip.surface,
        "headings_deg": np.degrees(HEADINGS).round(6).tolist(),
        "rigid_deg": degrees(tips),
        "compliant_deg": [None] * len(tips) if compliant is None else degrees(compliant),
        "slide_deg": None if slides is None else degrees(slides),
        "cases": _cases(truck, tips, compliant, slides, known, shift),
        "gain": gains(truck),
    }


def numbers(truck: Truck) -> dict[str, Any]:
    """The title block: masses in g, places in mm, loads in g as a scale reads them."""
    body = whole(truck)
    loads, corners = axle_loads(truck), tyre_loads(truck)
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


def gains(truck: Truck) -> dict[str, list[float]]:
    """Degrees per 10 g put at (x, y, z) mm, per direction: c0 + cx x + cy y + cz z, exactly.

    The derivative of the rigid answer is linear in the place, so four values say it all.
    """
    probes = np.vstack([np.zeros(3), np.eye(3)])
    found = {}
    for name, heading in QUARTERS.items():
        at = np.degrees(rigid.mass_derivative(truck, np.radians(heading), probes)) * TEN_GRAMS
        found[name] = [float(at[0]), *((at[1:] - at[0]) / 1000).tolist()]
    return found


def exact_curves(truck: Truck) -> Curves:
    """The compliant answer over all headings, about half a second, and its budget at QUARTERS."""
    from crossfall.statics import compliant

    tips = compliant.tips(truck, HEADINGS).tip
    tips = np.where(np.isnan(tips), rigid.tip_angle(truck, HEADINGS), tips)
    return Curves(rigid.tip_angle(truck, HEADINGS), tips, _budget(truck))


def expected(known: Curves | None, heading_deg: float) -> float | None:
    """Deg, where a trial at a heading may expect its tip; only used to hurry to a start."""
    if known is None:
        return None
    at = np.interp(np.radians(heading_deg), HEADINGS, known.compliant, period=2 * np.pi)
    return float(np.degrees(at))


def _budget(truck: Truck) -> Array:
    from crossfall.statics.budget import budget

    found = budget(truck, np.radians(list(QUARTERS.values())))
    return np.column_stack([found.tyres, found.extension, found.compliant])


def window(truck: Truck) -> Window:
    """Both friction closures all round, on every third of HEADINGS; a second or two."""
    from crossfall.statics import window as closures

    headings = HEADINGS[::3]
    found = closures.window(truck, headings)
    return Window(headings, found.low, found.high, found.uniform.first_lift)


def _cases(
    truck: Truck,
    tips: Array,
    compliant: Array | None,
    slides: Array | None,
    known: Curves | None,
    shift: Array | None,
) -> list[dict[str, Any]]:
    edges = rigid.tip_edge(truck, HEADINGS)
    cases = []
    for k, (name, heading) in enumerate(QUARTERS.items()):
        i = round(heading / 5)
        tip = tips[i] if compliant is None else compliant[i]
        outcome = "tips"
        if slides is not None:
            outcome = sliding.outcome(float(sliding.tips_first(slides[i], tip)[0]))
        steps: list[dict[str, Any]] = []
        if known is not None and shift is not None:
            stages = [tips[i], *(known.budget[k] + shift[i])]
            words = ("tyres squash", "body rises on its springs", "body leans and pitches")
            gained = np.degrees(np.diff(stages)).round(3).tolist()
            steps = [{"what": w, "deg": g} for w, g in zip(words, gained, strict=True)]
        cases.append(
            {
                "direction": name,
                "heading_deg": heading,
                "name": case_name(np.radians(heading)),
                "over": rigid.EDGES[int(edges[i])],
                "rigid_deg": degrees(tips[i]),
                "compliant_deg": None if compliant is None else degrees(compliant[i]),
                "slide_deg": None if slides is None else degrees(slides[i]),
                "outcome": outcome,
                "budget": steps,
            }
        )
    return cases


def degrees(angles: Array | float) -> Any:
    """rad as degrees, rounded to a ten-thousandth, in plain numbers; nan becomes None."""
    values = np.degrees(np.asarray(angles, dtype=np.float64)).round(4)
    return finite(values.tolist())


def finite(values: Any) -> Any:
    """The same numbers, nested as they are, with nan as None: JSON knows no nan."""
    if isinstance(values, list):
        return [finite(v) for v in values]
    return values if np.isfinite(values) else None
