"""How the truck stands at every table angle on one heading, from level to the tip, for drawing."""

from __future__ import annotations

from typing import Any

import numpy as np

from crossfall.bench.answers import Curves, degrees, expected
from crossfall.bench.scene import mm
from crossfall.statics import rigid
from crossfall.statics.compliant_path import path
from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import GRAVITY, Array, Truck

STEPS = 40
CLOSE = 1e-3  # rad before the expected tip, where one more stance is asked for


def stances(truck: Truck, heading_deg: float, curves: Curves | None) -> dict[str, Any]:
    """Poses, loads and CG by table angle. curves: where known, they say how far to look.

    Angles in deg, loads in g as a scale would read them. poses: displacement of chassis, front
    and rear axle from ride height, x, y, z mm and a quaternion x, y, z, w, in the truck's own
    axes on the level.
    """
    heading = np.radians(heading_deg)
    guess = expected(curves, heading_deg)
    far = np.radians(guess) if guess is not None else rigid.tip_angle(truck, [heading])[0]
    # Closer together towards the tip, where loads and lean change fastest.
    thetas = far * (1 - (1 - np.linspace(0.0, 1.0, STEPS)) ** 1.6)
    found = path(truck, float(heading), np.append(thetas, far - CLOSE))
    order = np.argsort(found.theta)
    order = order[np.isfinite(found.load[order]).all(axis=1)]
    edge = rigid.EDGES[int(rigid.tip_edge(truck, [heading])[0])]
    order = order if len(order) else np.array([0])
    return {
        "heading_deg": heading_deg,
        "tip_deg": degrees(found.tip),
        "over": edge,
        "points": [
            _point(truck, found.theta[i], found.position[i], found.turn[i], found.load[i])
            for i in order
        ],
    }


def _point(truck: Truck, theta: float, position: Array, turn: Array, load: Array) -> dict[str, Any]:
    masses = [unsprung(truck, 0), unsprung(truck, 1), truck.chassis]
    centres = [p + r @ b.cg for p, r, b in zip(position, turn, masses, strict=True)]
    total = np.sum([b.mass * c for b, c in zip(masses, centres, strict=True)], axis=0)
    chassis_first = (2, 0, 1)
    return {
        "theta_deg": degrees(theta),
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
