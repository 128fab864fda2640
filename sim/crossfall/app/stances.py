"""How the truck stands at every table angle on one heading, from level to the tip, for drawing."""

from __future__ import annotations

from typing import Any

import numpy as np

from crossfall.answers.keys import deg
from crossfall.answers.tips import tip_angles
from crossfall.app.answers import MAP_HEADINGS, TipMap, plain_degrees
from crossfall.app.scene import mm
from crossfall.statics import rigid
from crossfall.statics.compliant_path import EquilibriumPath, equilibrium_path
from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import GRAVITY, Array, Grip, Truck

_STEPS = 40
_CLOSE = 1e-3  # rad before it goes, where one more stance is asked for


def stances(truck: Truck, grip: Grip, heading_deg: float, known: TipMap | None) -> dict[str, Any]:
    """Poses, loads and CG by table angle on one of HEADINGS. known: where the tips are known.

    Angles under the answer's keys in deg, loads in g as a scale would read them. poses:
    displacement of chassis, front and rear axle from ride height, x, y, z mm and a quaternion
    x, y, z, w, in the truck's own axes on the level. Where it slides first, it stands against a
    rail from there on.
    """
    heading = np.radians(heading_deg)
    if known is None:
        tips, at = tip_angles(truck, [heading], grip.likely), 0
    else:
        tips, at = known.tips, int(np.abs(MAP_HEADINGS - heading).argmin())
    free, slides = float(tips.free[at]), bool(tips.slides[at])
    far = free if np.isfinite(free) else float(rigid.tip_angle(truck, [heading])[0])
    # Closer together towards the tip, where loads and lean change fastest.
    thetas = np.append(far * (1 - (1 - np.linspace(0.0, 1.0, _STEPS)) ** 1.6), far - _CLOSE)
    goes = float(tips.goes[at]) if np.isfinite(tips.goes[at]) else far
    held = equilibrium_path(truck, float(heading), thetas[thetas < goes], grip.likely)
    found = [held]
    if slides:
        found.append(
            equilibrium_path(truck, float(heading), thetas[thetas >= goes], grip.likely, rail=True)
        )
    return {
        "heading_deg": heading_deg,
        "surface": grip.surface,
        "compliant_deg": deg(float(tips.tip[at])),
        "rail_deg": deg(free) if slides else None,
        "slide_deg": deg(float(tips.slide[at])),
        "goes_at_deg": deg(goes),
        "over": rigid.EDGES[int(rigid.tip_edge(truck, [heading])[0])],
        "points": [point for one in found for point in _points(truck, one)],
    }


def _points(truck: Truck, found: EquilibriumPath) -> list[dict[str, Any]]:
    order = np.argsort(found.theta)
    order = order[np.isfinite(found.load[order]).all(axis=1)]
    return [
        _point(truck, found.theta[i], found.position[i], found.turn[i], found.load[i])
        for i in order
    ]


def _point(truck: Truck, theta: float, position: Array, turn: Array, load: Array) -> dict[str, Any]:
    masses = [unsprung(truck, 0), unsprung(truck, 1), truck.chassis]
    centres = [p + r @ b.cg for p, r, b in zip(position, turn, masses, strict=True)]
    total = np.sum([b.mass * c for b, c in zip(masses, centres, strict=True)], axis=0)
    chassis_first = (2, 0, 1)
    return {
        "theta_deg": plain_degrees(theta),
        "poses": [
            [*mm(position[i]), *np.round(_quaternion(turn[i]), 7).tolist()] for i in chassis_first
        ],
        "cg_mm": mm(total / whole(truck).mass),
        "load_g": np.round(load / GRAVITY * 1000, 2).tolist(),
    }


def _quaternion(turn: Array) -> Array:
    """(4,) x, y, z, w of a rotation (3, 3) of less than half a turn."""
    w = np.sqrt(max(1 + float(np.trace(turn)), 1e-12)) / 2
    x, y, z = (turn[j, k] - turn[k, j] for j, k in ((2, 1), (0, 2), (1, 0)))
    return np.array([x / (4 * w), y / (4 * w), z / (4 * w), w])
